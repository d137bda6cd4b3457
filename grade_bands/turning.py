"""Turning the year: the next one's name and dates proposed, and last year's classes to carry over."""

import re
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from django import forms
from django.core.paginator import Page, Paginator
from django.db import transaction
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.models import School, User
from accounts.offered import offer_choices

from .models import ClassGroup, Grade, SchoolYear
from .teachers import Everybody, TeachersField, named_in, offer_teachers

CLASSES_AT_ONCE = 100
A_YEAR_OF_WEEKS = timedelta(weeks=52)  # the same day of the week
# What changes a name that speaks of years: "2026-27", "2026/2027", "School year 2026".
_YEAR_NUMBER = re.compile(r"(?<!\d)(?:\d{4}|\d{2})(?!\d)")


def proposed_year(last: SchoolYear | None, school: School | None, today: date) -> dict[str, Any]:
    """Name, first and last day and terms of the year after `last`, to be looked over by a person.

    The days are a year of weeks later, so that a Monday stays one; where a year has no place, none are proposed.
    """
    if last is None:
        if school is None:
            return {}
        starts_on = date(today.year, school.year_starts_month, school.year_starts_day)
        return {"name": f"{starts_on.year}-{(starts_on.year + 1) % 100:02}", "starts_on": starts_on}
    starts_on = max(last.starts_on + A_YEAR_OF_WEEKS, last.ends_on + timedelta(days=1))
    terms = {f"term{term.number}": max(starts_on, term.first + A_YEAR_OF_WEEKS) for term in last.terms}
    return {"name": next_name(last), "starts_on": starts_on, "ends_on": last.ends_on + A_YEAR_OF_WEEKS, **terms}


def next_name(last: SchoolYear) -> str:
    """The name with each year in it one later.

    >>> next_name(SchoolYear(name="2026-27")), next_name(SchoolYear(name="Year 1999/00")), next_name(SchoolYear(name="2099"))
    ('2027-28', 'Year 2000/01', '2100')
    """
    return _YEAR_NUMBER.sub(lambda found: str(int(found[0]) + 1).zfill(len(found[0]))[-len(found[0]) :], last.name)


class CarriedClassForm(forms.Form):
    """One class of last year: whether it goes on, and what it is called, is taught by whom and in which grade then."""

    carried = forms.BooleanField(label=_("Carry over"), required=False)
    name = forms.CharField(label=_("New name"), max_length=40, required=False)
    grade = forms.TypedChoiceField(label=_("Grade"), coerce=int, required=False, empty_value=None)
    teachers = TeachersField()

    def __init__(self, data: Any, *, group: ClassGroup, grades: Sequence[Grade], everybody: Everybody, **kwargs: Any):
        here = everybody.named
        teachers = list(group.teachers.all())
        initial = {
            "carried": True,
            "name": group.name,
            "grade": group.grade_id,
            "teachers": [teacher.pk for teacher in teachers if teacher.pk in here],
        }
        super().__init__(data, prefix=f"class{group.pk}", initial=initial, **kwargs)
        self.group = group
        self.left = [teacher.display_name for teacher in teachers if teacher.pk not in here]
        offer_choices(self, "grade", [(str(grade.pk), grade.name) for grade in grades])
        offer_teachers(self, everybody, {teacher.pk: here[teacher.pk] for teacher in teachers if teacher.pk in here})

    @property
    def teachers_now(self) -> list[str]:
        """The names of those who are ticked, and those that are typed."""
        return named_in(self["teachers"])

    def clean(self) -> dict[str, Any]:
        """Only of what is ticked is anything asked: a class that came in meanwhile has no fields on the page."""
        super().clean()
        if self.cleaned_data.get("carried"):
            for name, words in (
                ("name", gettext("Write a name for the class.")),
                ("grade", gettext("Choose a grade.")),
            ):
                if not self.cleaned_data.get(name) and name not in self.errors:
                    self.add_error(name, words)
        return self.cleaned_data


@dataclass
class CarriedClasses:
    """The classes of one year as a form each, some at a time, to be kept in another.

    there: names that the other year has already. page: which of the classes these are.
    """

    forms: list[CarriedClassForm]
    there: frozenset[str]
    page: Page[ClassGroup]
    everybody: Everybody

    @classmethod
    def of(
        cls, source: SchoolYear | None, target: SchoolYear | None, data: Any, *, part: str | None = None
    ) -> "CarriedClasses":
        """Nobody's data: every class ticked that the other year has not, under its own name. part: the page, as asked."""
        there = frozenset(target.class_groups.values_list("name", flat=True)) if target else frozenset()
        groups = source.class_groups.with_people().in_grade_order() if source else ClassGroup.objects.none()
        page = Paginator(groups, CLASSES_AT_ONCE).get_page(part)
        grades = list(Grade.objects.order_by("order"))
        everybody = Everybody(User.objects.active().in_name_order())
        made = [CarriedClassForm(data, group=group, grades=grades, everybody=everybody) for group in page]
        for form in made:
            form.initial["carried"] = form.group.name not in there
        return cls(made, there, page, everybody)

    def is_valid(self) -> bool:
        """Whether each can be kept; else a sentence stands at what is wrong."""
        wrong = [form for form in self.forms if not form.is_valid()]
        names = set(self.there)
        for form in self.chosen():
            name = form.cleaned_data.get("name", "")
            if name and name in names:
                form.add_error("name", gettext("This year already has a class with this name."))
                wrong.append(form)
            names.add(name)
        return not wrong

    def chosen(self) -> list[CarriedClassForm]:
        return [form for form in self.forms if form.cleaned_data.get("carried")]

    def keep_in(self, year: SchoolYear) -> list[ClassGroup]:
        """Make the ticked classes in this year, or none of them. Nothing of the other year changes."""
        with transaction.atomic():
            return [_carry(form, year) for form in self.chosen()]


def _carry(form: CarriedClassForm, year: SchoolYear) -> ClassGroup:
    said = form.cleaned_data
    group = ClassGroup.objects.create(
        name=said["name"], grade_id=said["grade"], year=year, languages=form.group.languages
    )
    group.teachers.set(said["teachers"])
    return group
