"""The words that the pictures say, in each language."""

from routines.counting import Count

from ..numerals import MINUS

NAMES = {
    "en": {
        "line": "Number line",
        "time-line": "Time line",
        "clock": "Clocks",
        "ruler": "Ruler",
        "scale": "Scales",
        "jugs": "Measuring jugs",
        "coins": "Coins and notes",
        "bars": "Fraction bars",
    },
    "es": {
        "line": "Recta numérica",
        "time-line": "Línea de tiempo",
        "clock": "Relojes",
        "ruler": "Regla",
        "scale": "Básculas",
        "jugs": "Jarras medidoras",
        "coins": "Monedas y billetes",
        "bars": "Barras de fracciones",
    },
}
_TITLE = {"en": "{name}: from {first} to {last}", "es": "{name}: de {first} a {last}"}
_JUMP = {
    ("en", True): "Each jump is {step} more.",
    ("en", False): "Each jump is {step} less.",
    ("es", True): "Cada salto es de {step} más.",
    ("es", False): "Cada salto es de {step} menos.",
}


def title(name: str, count: Count, first: int, last: int, language: str) -> str:
    told = _TITLE[language].format(name=NAMES[language][name], first=count.text(first), last=count.text(last))
    return told.replace("-", MINUS)


def description(count: Count, first: int, last: int, language: str) -> str:
    """The values in counting order and the jump between them."""
    values = ", ".join(count.text(n) for n in range(first, last + 1))
    step = count.difference_text(abs(count.step))
    return f"{values}. {_JUMP[language, count.step > 0].format(step=step)}".replace("-", MINUS)


_SINCE = {
    ("en", True): "{step} later",
    ("en", False): "{step} earlier",
    ("es", True): "{step} después",
    ("es", False): "{step} antes",
}


def since(count: Count, language: str) -> str:
    """What passed between the term before and this one."""
    return _SINCE[language, count.step > 0].format(step=count.difference_text(abs(count.step)))


WHOLES = {"en": "{n} wholes", "es": "{n} enteros"}
_PARTS_KEY = {
    ("en", True): ("before the jump", "the jump"),
    ("en", False): ("what is left", "taken away"),
    ("es", True): ("antes del salto", "el salto"),
    ("es", False): ("lo que queda", "quitado"),
}


def parts_key(forward: bool, language: str) -> tuple[str, str]:
    """What dark parts and what the bracketed parts are, in a count forward or backward."""
    return _PARTS_KEY[language, forward]
