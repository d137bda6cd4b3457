"""What loading a file of standards would do, before anything of it is stored."""

from collections.abc import Sequence
from dataclasses import dataclass

from .models import Grade, Standard
from .standards import StandardRow

COMPARED = ("area", "summary", "number_limits", "count_features")


@dataclass(frozen=True, slots=True)
class LookedAt:
    """rows: each with the school's grade it goes to (None where there is none), and "new", "changed" or "same".

    unknown_grades: as the file names them. left: how many standards of the same name stand that the file does not have;
    they stay as they are.
    """

    rows: tuple[tuple[StandardRow, Grade | None, str], ...]
    unknown_grades: tuple[str, ...]
    left: int

    @property
    def new(self) -> int:
        return self._number("new")

    @property
    def changed(self) -> int:
        return self._number("changed")

    @property
    def same(self) -> int:
        return self._number("same")

    @property
    def without_grade(self) -> int:
        return sum(grade is None for _row, grade, _what in self.rows)

    def _number(self, what: str) -> int:
        return sum(one == what for _row, _grade, one in self.rows)


def look_at(rows: Sequence[StandardRow], framework: str) -> LookedAt:
    grades = {grade.name: grade for grade in Grade.objects.all()}
    stored = {standard.code: standard for standard in Standard.objects.filter(framework=framework)}
    looked = tuple((row, grade := grades.get(row.grade), _what(row, grade, stored.get(row.code))) for row in rows)
    unknown = dict.fromkeys(row.grade for row, grade, _ in looked if grade is None and row.grade)
    return LookedAt(looked, tuple(unknown), len(stored.keys() - {row.code for row in rows}))


def _what(row: StandardRow, grade: Grade | None, stored: Standard | None) -> str:
    if stored is None:
        return "new"
    alike = stored.grade_id == (grade.pk if grade else None) and all(
        getattr(stored, name) == getattr(row, name) for name in COMPARED
    )
    return "same" if alike else "changed"
