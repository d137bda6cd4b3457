"""The sentences about one slip at one count, for a level and a language."""

from ..audience import Audience
from ..grid import Fill, Grid
from ..kinds.currency import currency_named
from ..kinds.names import Kind
from ..kinds.unit_names import NAMES
from ..locate.wording import filled
from ..texts.words import STUDENT_BANDS, band_of, capital
from .jump import Jump
from .measurement import two_units
from .wording import WORDS
from .wording.endings import ABOUT_A_JUMP, ABOUT_WRITING
from .wording.forms import FORMS
from .wording.slip_words import SlipWords

_JOINED = {"en": ("added", "taken away"), "es": ("suman", "quitan")}


def why(rule: str, jump: Jump, language: str) -> str:
    """Why this slip happens here, for the teacher."""
    return capital(filled(_words(rule).why.in_language(language), _fields(jump, language)))


def reply(rule: str, jump: Jump, audience: Audience) -> str:
    """What the teacher may ask: a question, and the way back to the grid. It never holds the count that is due."""
    words, band = _words(rule), band_of(audience.level)
    fields = _fields(jump, audience.language)
    question = words.show if band == 0 and words.show else words.ask
    asked = question.in_language(audience.language)
    endings = (ABOUT_WRITING if words.of_writing else ABOUT_A_JUMP)[audience.language][band]
    replies = [capital(filled(f"{asked} {ending}", fields)) for ending in endings]
    least, most = STUDENT_BANDS[band]
    fitting = [text for text in replies[:-1] if least <= text.count(" ") + 1 <= most] or replies[-1:]
    return fitting[jump.n % len(fitting)]


def is_of_writing(rule: str) -> bool:
    """Whether a slip is about how one number is written or named, not about the jump to it."""
    return _words(rule).of_writing


def _words(rule: str) -> SlipWords:
    return WORDS[rule] if rule in WORDS else FORMS[rule]


def line_of(grid: Grid, n: int, language: str) -> str:
    """The line that the fill runs along, through the n-th count: "row 3"."""
    row, column = grid.place(n)
    if language == "es":
        return f"la columna {column}" if grid.fill is Fill.DOWN else f"la fila {row}"
    return f"column {column}" if grid.fill is Fill.DOWN else f"row {row}"


def jump_phrase(jump: Jump, language: str) -> str:
    """The jump with its size, never its end: "a jump back of 50"."""
    size = jump.count.difference_text(jump.s)
    if language == "es":
        return f"un salto de {size}" if jump.s > 0 else f"un salto atrás de {size}"
    return f"a jump of {size}" if jump.s > 0 else f"a jump back of {size}"


def written(jump: Jump, text: str, language: str) -> str:
    """A count inside a sentence: clock times take an article in Spanish."""
    if language == "es" and jump.count.kind == Kind.CLOCK:
        return f"la {text}" if text.startswith(("1:", "01:")) else f"las {text}"
    return text


def _fields(jump: Jump, language: str) -> dict[str, str]:
    fields = {
        "a": written(jump, jump.said, language),
        "b": written(jump, jump.due, language),
        "start": jump.count.text(1),
        "line": line_of(jump.grid, jump.n - 1, language),
        "jump": jump_phrase(jump, language),
        "size": jump.count.difference_text(jump.s),
        "joined": _JOINED[language][jump.s < 0],
    }
    return fields | _unit_names(jump, language)


def _unit_names(jump: Jump, language: str) -> dict[str, str]:
    if jump.count.kind == Kind.MONEY:
        currency = currency_named(jump.count.style.currency, language)
        cent = currency.small.one or {"en": "cent", "es": "céntimo"}[language]
        cents = currency.small.several or f"{cent}s"
        return {"small": cent, "smalls": cents, "large": currency.main.one, "larges": currency.main.several}
    units = two_units(jump.grid)
    if units is None:
        return {}
    large, small = (NAMES[unit.symbol, language] for unit in units)
    return {"small": small.one, "smalls": small.several, "large": large.one, "larges": large.several}
