"""Pieces that phrases share."""


def more(name: str) -> str:
    """More or less, later or earlier, under a name of its own."""
    return rf"(?P<{name}_W>more|less|later|earlier|más tarde|más|menos|antes)"


MORE = more("more")
AFTER = r"(?P<after_W>after|before|después|antes)"
LINE_EN = r"(?P<line_W>row|column) <i:N>"
LINE_ES = r"(?P<line_W>fila|columna) <i:N>"
