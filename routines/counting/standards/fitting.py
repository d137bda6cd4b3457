"""Which standards a count serves, direct fits first."""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

from ..audience import Audience
from ..grid import Grid
from ..kinds.names import Kind
from .conditions import Facts, meets
from .features import Features, read_features

_LEVELS = {"K": 0, **{str(grade): grade for grade in range(1, 9)}}
RATIOS = "ratios"
_MOST_GRADES_AWAY = 2


@dataclass(frozen=True, slots=True)
class StandardFit:
    """A standard that a count serves.

    fit: "direct" (the count does what it names) or "support" (it rehearses the numbers). hints: what the standard
    suggests to look for, ask or show, by name. features: what it asks of a count.
    """

    code: str
    grade: str
    area: str
    summary: str
    fit: str
    hints: Mapping[str, str]
    features: Features


def suggest_standards(
    grid: Grid, standards: Iterable[Any], grade: int | None = None, *, audience: Audience | None = None
) -> list[StandardFit]:
    """The standards a grid's count serves: direct fits first, then the most particular.

    standards: rows with code, grade, area, summary and count_features, as mappings or objects; rows without features
    are left out, as are ratios, which take two counts.
    grade: a level 0 (K) to 8, in place of the audience's. Its standards and those of the grades next to it come first,
    direct fits first, the nearest grade first; those more than two grades away are left out where a nearer one fits
    directly.
    Raises: CountError on `count_features` for features that cannot be read.
    """
    facts = Facts(grid.count, grid.terms)
    grade = audience.level if grade is None and audience else grade
    fits: list[tuple[int, StandardFit, int]] = []
    for row in standards:
        text = _part(row, "count_features")
        if not text or _part(row, "area") == RATIOS:
            continue
        features = read_features(text)
        fit = fit_of(features, facts)
        if fit is None:
            continue
        found = StandardFit(
            code=_part(row, "code"),
            grade=_part(row, "grade"),
            area=_part(row, "area"),
            summary=_part(row, "summary"),
            fit=fit,
            hints=features.hints,
            features=features,
        )
        away = abs(_LEVELS.get(found.grade, grade) - grade) if grade is not None else 0
        fits.append((away, found, _particular(features)))
    near = [entry for entry in fits if entry[0] <= _MOST_GRADES_AWAY]
    chosen = near if any(found.fit == "direct" for _, found, _ in near) else fits
    return [found for _, found, _ in sorted(chosen, key=_order)]


def _order(entry: tuple[int, StandardFit, int]) -> tuple[bool, bool, int, int, str]:
    away, found, particular = entry
    return away > 1, found.fit != "direct", away, -particular, found.code


def fit_of(features: Features, facts: Facts) -> str | None:
    """How a count serves a standard: "direct", "support", or not at all (None).

    A second count, or a landmark that is not passed, leaves a direct standard one that is only supported.
    """
    if not features.with_key("kind") and not _plain(facts):
        return None
    if takes_two_counts(features):
        return None
    if not all(meets(condition, facts) for condition in features.conditions if condition.key not in ("cross", "pair")):
        return None
    passes = all(meets(condition, facts) for condition in features.with_key("cross"))
    return "direct" if features.is_served_directly and passes else "support"


def takes_two_counts(features: Features) -> bool:
    """Whether they ask for two counts side by side, and for nothing that one of them could show by itself."""
    return bool(features.with_key("pair")) and not _particular(features)


def _plain(facts: Facts) -> bool:
    """Whether the count is what features without a kind speak of: whole numbers, none below zero."""
    return facts.count.kind == Kind.WHOLE and facts.low >= 0


def _particular(features: Features) -> int:
    """How many of its conditions narrow the count down."""
    return sum(
        condition.value not in ("any", "both") and condition.key not in ("pair", "min", "max")
        for condition in features.conditions
    )


def _part(row: Any, name: str) -> str:
    value = row.get(name, "") if isinstance(row, Mapping) else getattr(row, name, "")
    return str(value or "").strip()
