"""The plan document: everything a teacher decides about one routine, as one JSON document with a schema version.

The same document is what a saved version freezes, what a draft holds, what is copied, exported and imported, and what
a lesson was taught from. Numbers stay as they were typed and are read by the counting engine, so nothing is lost.
"""

from collections.abc import Mapping
from dataclasses import asdict, dataclass, field, fields, replace
from typing import Any, Self

from accounts.text import DEEPEST, is_text, mended
from routines.counting import Audience, Claim, Count, CountError, Fill, Grid, Kind, Outcome, Style

SCHEMA = 1

TITLE_LIMIT = 120
SENTENCE_LIMIT = 400
TEXT_LIMIT = 2000
LIST_LIMIT = 40

SORTS = ("easy", "deeper", "not-for-long", "not-so", "slip", "own")
LANGUAGES = ("en", "es", "both")
STYLE_NAMES = frozenset(field.name for field in fields(Style))


class PlanError(ValueError):
    """A plan document that cannot be read. `field` is the path of the part at fault, `str()` says what to do."""

    def __init__(self, field: str, message: str) -> None:
        super().__init__(message)
        self.field = field


@dataclass(frozen=True, slots=True)
class CountTyped:
    """A count as the teacher typed it. `style` holds the engine's style keywords."""

    kind: str = Kind.WHOLE.value
    start: str = "0"
    step: str = "1"
    terms: int = 20
    style: Mapping[str, Any] = field(default_factory=dict)

    def count(self) -> Count:
        """Read the typed count. Raises CountError with the field at fault."""
        return Count.parse(
            kind=self.kind, start=self.start, step=self.step, terms=self.terms, style=Style.from_dict(self.style)
        )


@dataclass(frozen=True, slots=True)
class Fold:
    line_length: int = 5
    fill: str = Fill.ACROSS.value
    lead: int = 0

    def grid(self, count: Count) -> Grid:
        """The count folded so. Raises CountError with the field at fault."""
        return Grid(count, line_length=self.line_length, fill=self.fill, lead=self.lead)


@dataclass(frozen=True, slots=True)
class Target:
    """A pattern the teacher wants the class to see: a claim of the engine and, if she likes, her own words for it."""

    claim: Mapping[str, Any]
    words: str = ""


@dataclass(frozen=True, slots=True)
class ExpectedAnswer:
    """What students will probably say. `sort` is one of SORTS, `n` the term it is about (0 when none)."""

    words: str
    reply: str = ""
    sort: str = "own"
    n: int = 0


@dataclass(frozen=True, slots=True)
class Stop:
    """A chosen place to pause: after the `after`-th count. Times are in seconds."""

    after: int
    question: str
    answer: str = ""
    routes: tuple[str, ...] = ()
    think: int = 20
    partner: int = 60
    share: int = 90


@dataclass(frozen=True, slots=True)
class NextCount:
    """What to count next, by how it went (an Outcome)."""

    outcome: str
    why: str = ""
    count: CountTyped | None = None
    fold: Fold | None = None

    def grid(self) -> Grid | None:
        """The next grid, where a count and its fold are given. Raises CountError with the field at fault."""
        if self.count is None or self.fold is None:
            return None
        return self.fold.grid(self.count.count())


@dataclass(frozen=True, slots=True)
class Story:
    """The word problem a count answers: groups with a label and what each holds, and a goal as typed (may be "")."""

    text: str = ""
    group: str = ""
    goal: str = ""


@dataclass(frozen=True, slots=True)
class Plan:
    title: str
    grade: str
    area: str
    count: CountTyped
    fold: Fold
    language: str = "en"
    story: Story = Story()
    landmark: str = ""
    targets: tuple[Target, ...] = ()
    expected: tuple[ExpectedAnswer, ...] = ()
    stops: tuple[Stop, ...] = ()
    next_counts: tuple[NextCount, ...] = ()
    standards: tuple[str, ...] = ()
    notes: str = ""

    def grid(self) -> Grid:
        """The folded grid. Raises CountError with the field at fault."""
        return self.fold.grid(self.count.count())

    def claims(self) -> list[Claim]:
        return [Claim.from_dict(dict(target.claim)) for target in self.targets]

    def audience(self, level: int) -> Audience:
        return Audience(level=level, language="es" if self.language == "es" else "en")

    def minutes(self) -> int:
        """Estimated length in whole minutes: five seconds a count and the times of the stops (common practice, no source)."""
        seconds = 5 * self.count.terms + sum(stop.think + stop.partner + stop.share for stop in self.stops)
        return max(1, -(-seconds // 60))

    def changed(self, **changes: Any) -> Self:
        return replace(self, **changes)

    def as_dict(self) -> dict[str, Any]:
        """The JSON document: plain lists, dicts, strings and integers, keys always all present."""
        return {"schema": SCHEMA, **_plain(asdict(self))}

    @classmethod
    def from_dict(cls, document: Any) -> Self:
        """Read a document field by field. Raises PlanError naming the part that is wrong; never drops a part silently."""
        root = _mapping(document, "plan")
        _require_text(root)
        if root.get("schema") != SCHEMA:
            raise PlanError(
                "schema",
                f"This plan has schema {str(root.get('schema'))[:20]}; this school's Countfold reads {SCHEMA}.",
            )
        known = {"schema", *cls.__dataclass_fields__}
        for key in root:
            if key not in known:
                raise PlanError(str(key)[:60], f'A plan has no part called "{str(key)[:60]}".')
        plan = cls(
            title=_text(root, "title", TITLE_LIMIT).strip(),
            grade=_text(root, "grade", 20),
            area=_text(root, "area", 20),
            count=_count(root.get("count"), "count"),
            fold=_fold(root.get("fold"), "fold"),
            language=_choice(root, "language", LANGUAGES, "en"),
            story=_story(root.get("story", {})),
            landmark=_text(root, "landmark", 40),
            targets=tuple(_target(item, f"targets.{i}") for i, item in enumerate(_list(root, "targets"))),
            expected=tuple(_answer(item, f"expected.{i}") for i, item in enumerate(_list(root, "expected"))),
            stops=tuple(_stop(item, f"stops.{i}") for i, item in enumerate(_list(root, "stops"))),
            next_counts=tuple(_next(item, f"next_counts.{i}") for i, item in enumerate(_list(root, "next_counts"))),
            standards=tuple(_plain_text(item, f"standards.{i}", 60) for i, item in enumerate(_list(root, "standards"))),
            notes=_text(root, "notes", TEXT_LIMIT),
        )
        if not plan.title:
            raise PlanError("title", "Give the count a title, so that colleagues can find it.")
        try:
            plan.grid()
            plan.claims()
            for following in plan.next_counts:
                following.grid()
        except CountError as error:
            raise PlanError(error.field, str(error)) from error
        for stop in plan.stops:
            if not 1 <= stop.after <= plan.count.terms:
                raise PlanError(
                    "stops", f"A stop comes after count {stop.after}, but there are {plan.count.terms} counts."
                )
        return plan


def _require_text(value: Any, path: str = "", depth: int = DEEPEST) -> None:
    """Every text of a document is one (see `accounts.text`), in parts that are read and in parts that are only kept."""
    if isinstance(value, str) and not is_text(value):
        raise PlanError(mended(path), f'"{mended(path)}" holds signs that cannot be shown; type it again.')
    parts = value.items() if isinstance(value, Mapping) else enumerate(value) if isinstance(value, list) else ()
    for name, part in parts:
        here = f"{path}.{name}" if path else str(name)
        if not depth:
            raise PlanError(mended(here[:60]), "This plan holds parts inside parts that no plan has.")
        if isinstance(name, str):
            _require_text(name, here, depth)
        _require_text(part, here, depth - 1)


def _plain(value: Any) -> Any:
    if isinstance(value, Mapping):
        return {key: _plain(item) for key, item in value.items()}
    if isinstance(value, (list, tuple)):
        return [_plain(item) for item in value]
    return value


def _mapping(value: Any, path: str, parts: type | None = None) -> Mapping[str, Any]:
    """A group of named parts; where `parts` is given, it holds none but the fields of that class."""
    if not isinstance(value, Mapping):
        raise PlanError(path, f'"{path}" should be a group of named parts.')
    if parts is not None:
        known = {field.name for field in fields(parts)}
        for name in value:
            if name not in known:
                raise PlanError(f"{path}.{name}", f'"{path}" has no part called "{name}".')
    return value


def _list(root: Mapping[str, Any], key: str) -> list[Any]:
    value = root.get(key, [])
    if not isinstance(value, list) or len(value) > LIST_LIMIT:
        raise PlanError(key, f'"{key}" should be a list of at most {LIST_LIMIT}.')
    return value


def _plain_text(value: Any, path: str, limit: int) -> str:
    if not isinstance(value, str):
        raise PlanError(path, f'"{path}" should be text.')
    if len(value) > limit:
        raise PlanError(path, f'"{path}" is {len(value)} characters long; {limit} is the most.')
    return value


def _text(root: Mapping[str, Any], key: str, limit: int, path: str = "") -> str:
    return _plain_text(root.get(key, ""), f"{path}{key}", limit)


def _number(root: Mapping[str, Any], key: str, path: str, low: int, high: int, default: int) -> int:
    value = root.get(key, default)
    if isinstance(value, bool) or not isinstance(value, int) or not low <= value <= high:
        raise PlanError(f"{path}{key}", f'"{path}{key}" should be a whole number from {low} to {high}.')
    return value


def _choice(root: Mapping[str, Any], key: str, choices: tuple[str, ...], default: str, path: str = "") -> str:
    value = root.get(key, default)
    if value not in choices:
        raise PlanError(f"{path}{key}", f'"{path}{key}" should be one of {", ".join(choices)}.')
    return str(value)


def _count(value: Any, path: str) -> CountTyped:
    part = _mapping(value, path, CountTyped)
    style = dict(_mapping(part.get("style", {}), f"{path}.style"))
    for name in style:
        if name not in STYLE_NAMES:
            raise PlanError("style", f'There is no style called "{name}".')
    return CountTyped(
        kind=_text(part, "kind", 20, f"{path}."),
        start=_text(part, "start", 40, f"{path}."),
        step=_text(part, "step", 40, f"{path}."),
        terms=_number(part, "terms", f"{path}.", 2, 200, 20),
        style=style,
    )


def _fold(value: Any, path: str) -> Fold:
    part = _mapping(value, path, Fold)
    return Fold(
        line_length=_number(part, "line_length", f"{path}.", 1, 200, 5),
        fill=_choice(part, "fill", tuple(Fill), Fill.ACROSS, f"{path}."),
        lead=_number(part, "lead", f"{path}.", 0, 199, 0),
    )


def _story(value: Any) -> Story:
    part = _mapping(value, "story", Story)
    return Story(
        text=_text(part, "text", TEXT_LIMIT, "story."),
        group=_text(part, "group", 40, "story."),
        goal=_text(part, "goal", 40, "story."),
    )


def _target(value: Any, path: str) -> Target:
    part = _mapping(value, path, Target)
    return Target(
        claim=dict(_mapping(part.get("claim"), f"{path}.claim")), words=_text(part, "words", SENTENCE_LIMIT, f"{path}.")
    )


def _answer(value: Any, path: str) -> ExpectedAnswer:
    part = _mapping(value, path, ExpectedAnswer)
    return ExpectedAnswer(
        words=_text(part, "words", SENTENCE_LIMIT, f"{path}."),
        reply=_text(part, "reply", SENTENCE_LIMIT, f"{path}."),
        sort=_choice(part, "sort", SORTS, "own", f"{path}."),
        n=_number(part, "n", f"{path}.", 0, 400, 0),
    )


def _stop(value: Any, path: str) -> Stop:
    part = _mapping(value, path, Stop)
    dotted = f"{path}."
    return Stop(
        after=_number(part, "after", dotted, 1, 200, 1),
        question=_text(part, "question", SENTENCE_LIMIT, dotted),
        answer=_text(part, "answer", SENTENCE_LIMIT, dotted),
        routes=tuple(_plain_text(item, f"{dotted}routes", SENTENCE_LIMIT) for item in _list(part, "routes")),
        think=_number(part, "think", dotted, 0, 600, 20),
        partner=_number(part, "partner", dotted, 0, 1200, 60),
        share=_number(part, "share", dotted, 0, 1800, 90),
    )


def _next(value: Any, path: str) -> NextCount:
    part = _mapping(value, path, NextCount)
    dotted = f"{path}."
    count, fold = part.get("count"), part.get("fold")
    return NextCount(
        outcome=_choice(part, "outcome", tuple(Outcome), Outcome.AS_PLANNED, dotted),
        why=_text(part, "why", SENTENCE_LIMIT, dotted),
        count=None if count is None else _count(count, f"{dotted}count"),
        fold=None if fold is None else _fold(fold, f"{dotted}fold"),
    )
