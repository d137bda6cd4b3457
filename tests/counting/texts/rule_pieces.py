"""Pieces that phrases share."""

MORE = r"(?P<more_W>more|less|más|menos)"
LINE_EN = r"(?P<line_W>row|column) <i:N>"
LINE_ES = r"(?P<line_W>fila|columna) <i:N>"
