"""A chosen stop with its question, its answer and the routes to it, for a level and a language."""

from fractions import Fraction
from functools import partial

from ..audience import Audience
from ..checking import judge
from ..claims import Claim
from ..grid import Grid
from ..locate import locate
from ..locate.routes import routes_to
from ..locate.wording import filled
from ..probes import probes
from ..slips.integers import BELOW_ZERO_FROM
from ..slips.jump import Jump
from ..slips.replies import jump_phrase, written
from ..texts import describe
from ..texts.words import STUDENT_BANDS, band_of, capital, first_that_fits
from .choosing import Choice
from .sentences import ANSWERS, QUESTIONS, REASONS
from .suggestion import StopSuggestion

# Seconds to think, to talk with a partner and to share, by level band. Common practice, no source.
TIMES = ((10, 30, 60), (20, 60, 90), (30, 60, 120), (45, 90, 150))

# What is seen tells which count stands in a cell further on only where it says how far it is from one to another.
LEADS_TO_A_CELL = ("step", "neighbour", "table")


def ask(grid: Grid, choice: Choice, audience: Audience) -> StopSuggestion:
    """Put a stop into words. Every number in it comes from the count."""
    language, band = audience.language, band_of(audience.level)
    fields = _fields(grid, choice, audience)
    if choice.reason == "end":
        question, answer, routes = _past_the_end(grid, fields, audience)
    else:
        question = _question(choice, fields, audience)
        target = choice.after + 1 if choice.reason != "target" else int(fields["far_n"])
        answer = _answer(choice, fields, language)
        routes = tuple(route.text for route in routes_to(_view(grid, choice.after), target, audience))
    think, partner, share = TIMES[band]
    return StopSuggestion(
        choice.after, question, answer, routes, _why(grid, choice, fields, language), think, partner, share
    )


def _why(grid: Grid, choice: Choice, fields: dict[str, str], language: str) -> str:
    key = choice.reason
    if choice.spot is not None and key == "hard":
        back, landed = grid.count.step < 0, grid.count.value(choice.spot.n) == choice.spot.landmark
        key = "hard back" if back else "hard on" if landed else "hard"
    reasons = [key, "target"] if choice.spot is not None and fields["idea"] else [key]
    return " ".join(capital(filled(REASONS[language][reason], fields)) for reason in reasons)


def _view(grid: Grid, n: int) -> Grid:
    return grid if n >= grid.terms else grid.cut(n)


def _fields(grid: Grid, choice: Choice, audience: Audience) -> dict[str, str]:
    language, count = audience.language, grid.count
    here = Jump(grid, choice.after + 1)
    far_n = choice.after + max(grid.line_length, 2)
    if count.value(far_n) < 0 and not _goes_below_zero(grid, audience):
        far_n = choice.after + 1
    fields = {
        "a": written(here, here.said, language),
        "next": written(here, here.due, language),
        "jump": jump_phrase(here, language),
        "far": written(here, count.text(far_n), language),
        "far_n": str(far_n),
        "place": _place(grid.grown(max(far_n, grid.terms)), far_n, language),
        "idea": "",
        "landmark": "",
    }
    if choice.claim is not None:
        fields["idea"] = _sentence(_statement(grid, choice, choice.claim, audience))
        fields["idea_lower"] = fields["idea"][:1].lower() + fields["idea"][1:]
    if choice.spot is not None:
        fields["landmark"] = written(here, count.text_of(choice.spot.landmark), language)
    return fields


def _statement(grid: Grid, choice: Choice, claim: Claim, audience: Audience) -> str:
    """What is seen, and until when; of what dies with the next count, as a class would say it before."""
    if choice.reason == "dies":
        return describe(claim, _view(grid, choice.after), "always", None, audience).statement
    _, judged = judge(claim, grid)
    if not judged.true:  # one that dies in view is told as it stands on the board at the stop
        _, judged = judge(claim, _view(grid, choice.after))
    breaks_at = judged.breaks_at if judged.true else None
    return describe(claim, grid, "always" if breaks_at is None else "shown", breaks_at, audience).statement


def _place(grid: Grid, n: int, language: str) -> str:
    row, column = grid.place(n)
    return f"la fila {row}, columna {column}" if language == "es" else f"row {row}, column {column}"


def _sentence(statement: str) -> str:
    return statement if statement.endswith((".", "!", "?")) else f"{statement}."


def _question(choice: Choice, fields: dict[str, str], audience: Audience) -> str:
    band = band_of(audience.level)
    wordings = QUESTIONS[audience.language][choice.reason][band]
    if not fields["idea"] or band == 0:
        wordings = tuple(wording for wording in wordings if "{idea}" not in wording)
    turned = wordings if choice.after % 2 or choice.reason == "dies" else wordings[::-1]
    least, most = STUDENT_BANDS[band]
    return first_that_fits((partial(_with_capital, wording, fields) for wording in turned), least, most)


def _with_capital(wording: str, fields: dict[str, str]) -> str:
    return capital(filled(wording, fields))


def _answer(choice: Choice, fields: dict[str, str], language: str) -> str:
    key = choice.reason
    if key == "target":
        follows = choice.claim is not None and choice.claim.family in LEADS_TO_A_CELL
        key = "target" if follows else "beside" if fields["idea"] else "place"
    return capital(filled(ANSWERS[language][key], fields))


def _past_the_end(grid: Grid, fields: dict[str, str], audience: Audience) -> tuple[str, str, tuple[str, ...]]:
    """A number that comes past the end; on a clock that has shown every time already, the cell after the last."""
    coming = _value_past_the_end(grid, audience)
    if coming is None:
        answer = filled(ANSWERS[audience.language]["place"], fields)
        routes = routes_to(grid, int(fields["far_n"]), audience)
        return _question(Choice(grid.terms, "target"), fields, audience), capital(answer), tuple(map(str, routes))
    here = Jump(grid, grid.terms + 1)
    fields["probe"] = written(here, grid.count.text_of(coming), audience.language)
    location = locate(grid, coming, audience)
    return (
        _question(Choice(grid.terms, "end"), fields, audience),
        location.reason,
        tuple(route.text for route in location.routes),
    )


def _value_past_the_end(grid: Grid, audience: Audience) -> Fraction | None:
    """What to ask about: a number that comes, but none below zero where the class does not know of them yet.

    A count that has come down to nothing is asked for a number that never comes.
    """
    count = grid.count
    below = _goes_below_zero(grid, audience)
    asked = [probe for probe in probes(grid, audience) if below or probe.value >= 0]
    ends_here = not below and count.value(grid.terms + 1) < 0
    found = next((probe.value for probe in asked if probe.appears or ends_here), None)
    if found is None and not below and count.step < 0:
        # The last one before zero; where that stands on the board, one that lies behind the start.
        return count.start - count.step if ends_here else count.start % -count.step
    return found


def _goes_below_zero(grid: Grid, audience: Audience) -> bool:
    """Whether a count may be gone on with below zero in this class; a clock only ever turns."""
    count = grid.count
    if count.wrap is not None or min(count.value(1), count.value(grid.terms)) < 0:
        return True
    return count.form.goes_below_zero and audience.level >= BELOW_ZERO_FROM
