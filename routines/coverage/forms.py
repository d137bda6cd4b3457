"""From which day to which day coverage looks, and at which grades or which class."""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from datetime import date
from typing import Any
from urllib.parse import urlencode

from django import forms
from django.db.models import QuerySet
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.compiled_once import compiled_once
from accounts.models import User
from accounts.templatetags.dates import day as written
from accounts.typed_numbers import typed_id
from grade_bands.models import ClassGroup, Grade, GradeBand, SchoolYear, Term
from routines.coverage.queries import grades_seen_by

INVALID = {"invalid": _("Write the day as year-month-day, such as 2026-11-20.")}


@dataclass(frozen=True, slots=True)
class Window:
    """Days of one school year, both included. `chosen`: whether the reader chose them; else it is the year so far.

    band, class_group: the grades or the class that are looked at alone.
    """

    year: SchoolYear
    first: date
    last: date
    chosen: bool = False
    band: GradeBand | None = None
    class_group: ClassGroup | None = None

    @property
    def query(self) -> str:
        """What keeps it in an address: nothing where nothing was chosen."""
        parts: dict[str, object] = {"first": self.first, "last": self.last} if self.chosen else {}
        if self.band:
            parts["band"] = self.band.pk
        if self.class_group:
            parts["class"] = self.class_group.pk
        return urlencode(parts)

    @property
    def by_grade(self) -> "Window":
        """The same days and grades for what is taken along, where no class stands by itself."""
        return replace(self, class_group=None)

    def is_same_as(self, other: "Window") -> bool:
        """The same days, chosen alike."""
        return (self.first, self.last, self.chosen) == (other.first, other.last, other.chosen)

    @property
    def file_name(self) -> str:
        return f"coverage-{self.first}-to-{self.last}"


@compiled_once
def bands_looked_at(user: User, year: SchoolYear) -> QuerySet[GradeBand]:
    """Bands of the grades of which the user sees the coverage in this year."""
    return GradeBand.objects.filter(grades__in=grades_seen_by.queryset(user, year)).distinct()


def bands_of(grades: Iterable[Grade]) -> list[GradeBand]:
    """The bands of these grades, which were read with them, in their own order."""
    return sorted({grade.band for grade in grades}, key=lambda band: band.order)


@compiled_once
def classes_looked_at(user: User, year: SchoolYear) -> QuerySet[ClassGroup]:
    """Classes of the year of which the user may see the coverage by itself: her own, all for a coach, else none."""
    classes = ClassGroup.objects.in_year(year).in_grade_order()
    if user.is_administrator:
        return classes.none()
    return classes if user.is_coach else classes.taught_by(user)


class DaysForm(forms.Form):
    """From which day to which, both of which may be left empty."""

    first = forms.DateField(
        required=False, label=_("From"), widget=forms.DateInput(attrs={"type": "date"}), error_messages=INVALID
    )
    last = forms.DateField(
        required=False, label=_("To"), widget=forms.DateInput(attrs={"type": "date"}), error_messages=INVALID
    )


class WindowForm(DaysForm):
    """A window inside one school year, which its days decide: classes, and so numbers of lessons, belong to a year.

    `years` are the school's, the latest first, at least one of them; empty fields mean this year so far. A band or class
    that is not on offer is left out, as of a year before, and so is a band that the class is not of.
    """

    def __init__(self, query: Mapping[str, Any], *, years: Sequence[SchoolYear], today: date, user: User) -> None:
        super().__init__(query)
        self.years, self.today, self.user = years, today, user
        self.this_year = next((year for year in years if year.starts_on <= today), years[-1])

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        first, last = cleaned.get("first"), cleaned.get("last")
        if first and last and last < first:
            self.add_error("last", gettext("Choose a last day that is not before the first."))
            return cleaned
        for name, chosen in (("first", first), ("last", last)):
            if chosen and self._year_of(chosen) is None:
                self.add_error(name, self._outside())
        year = self._year_of(first) if first else None
        if year and last and self._year_of(last) not in (None, year):
            words = gettext("Choose a last day in the same school year, which ends on %(end)s.")
            self.add_error("last", words % {"end": written(year.ends_on)})
        return cleaned

    def window(self) -> Window:
        """The window that was asked for; this year so far where nothing was, or nothing that can be shown."""
        kept = self.cleaned_data if self.is_valid() else {}
        first, last = kept.get("first"), kept.get("last")
        year = self._year_of(first or last) or self.this_year
        so_far = self._so_far(year)
        first = first or so_far.first
        band, group = self._chosen_band(year), self._chosen_class(year)
        return Window(
            year,
            first,
            last or max(first, so_far.last),
            chosen=any(kept.values()),
            band=None if group and band != group.grade.band else band,
            class_group=group,
        )

    def _chosen_band(self, year: SchoolYear) -> GradeBand | None:
        asked = typed_id(self.data.get("band", ""))
        return bands_looked_at.queryset(self.user, year).filter(pk=asked).first() if asked else None

    def _chosen_class(self, year: SchoolYear) -> ClassGroup | None:
        asked = typed_id(self.data.get("class", ""))
        classes = classes_looked_at.queryset(self.user, year).select_related("grade__band")
        return classes.filter(pk=asked).first() if asked else None

    def left_out(self, window: Window) -> str:
        """What of grades and class that were asked for `window` does not keep; empty where it keeps both."""
        if self.data.get("class") and not window.class_group:
            words = gettext("The class that was asked for is not among those of %(year)s here: all are shown.")
            return words % {"year": window.year.name}
        if self.data.get("band") and not window.band:
            if window.class_group:
                words = gettext("%(group)s is not of the grades that were chosen: the class is shown.")
                return words % {"group": window.class_group.name}
            words = gettext("The grades that were asked for are not among those of %(year)s here: all are shown.")
            return words % {"year": window.year.name}
        return ""

    def offered(self) -> list[tuple[str, str, Window]]:
        """This term and this year so far, and the whole of the year before: its name, what it is, its window."""
        year = self.this_year
        offers = [(year.name, gettext("This year"), self._so_far(year))]
        if found := self._this_term():
            of_year, term = found
            name = gettext("%(number)s of %(terms)s") % {"number": term.number, "terms": len(of_year.terms)}
            window = Window(of_year, term.first, min(self.today, term.last), chosen=True)
            offers.insert(0, (name, gettext("This term"), window))
        before = next((one for one in self.years if one.starts_on < year.starts_on), None)
        if before:
            offers.append((before.name, gettext("Last year"), replace(self._so_far(before), chosen=True)))
        return offers

    def _this_term(self) -> tuple[SchoolYear, Term] | None:
        """The term that today lies in, else the last one that began; None in a school without terms."""
        begun = [(year, term) for year in self.years for term in year.terms if term.first <= self.today]
        return max(begun, key=lambda found: found[1].first, default=None)

    def _so_far(self, year: SchoolYear) -> Window:
        return Window(year, year.starts_on, max(year.starts_on, min(self.today, year.ends_on)))

    def _year_of(self, day: date | None) -> SchoolYear | None:
        return next((year for year in self.years if day and year.starts_on <= day <= year.ends_on), None)

    def _outside(self) -> str:
        words = gettext("Choose a day of a school year; %(year)s is from %(start)s to %(end)s.")
        year = self.this_year
        return words % {"year": year.name, "start": written(year.starts_on), "end": written(year.ends_on)}
