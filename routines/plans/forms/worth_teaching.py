"""Which counts are wanted: for a grade, an area or one of the standards of the school's list."""

from collections.abc import Mapping

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.languages import LANGUAGES
from accounts.models import School
from accounts.offered import offer_choices
from grade_bands.models import Area, Grade, Standard
from routines.counting import Style, Wanted
from routines.plans.forms.fields import choice

MOST_STANDARDS = 300
LONGEST_SUMMARY = 90


class WorthForm(forms.Form):
    """What is not on offer gives way to the first that is: a grade's own area, when the grade was changed."""

    grade = choice(_("Grade"), [], required=False)
    about = choice(_("Area or standard"), [], required=False)
    language = choice(_("Language"), LANGUAGES.items(), required=False)

    def __init__(self, asked: Mapping[str, str], *, grades: list[Grade], taught: Grade | None, school: School) -> None:
        self.school = school
        named = {grade.name: grade for grade in grades}
        self.chosen_grade = named.get(asked.get("grade", "")) or taught or grades[0]
        listed = Standard.objects.filter(grade=self.chosen_grade).exclude(count_features="").in_reading_order()
        self.standards = {str(standard.pk): standard for standard in listed[:MOST_STANDARDS]}
        expected = [area for area in Area if self.chosen_grade.expects(area)]
        areas = [*expected, *(area for area in Area if area not in expected)]
        about = asked.get("about", "")
        self.about_chosen = about if about in self.standards or about in Area.values else str(areas[0].value)
        spoken = [code for code in LANGUAGES if code in school.languages] or ["en"]
        self.language_chosen = asked.get("language", "") if asked.get("language", "") in spoken else spoken[0]
        super().__init__(
            {"grade": self.chosen_grade.name, "about": self.about_chosen, "language": self.language_chosen}
        )
        offer_choices(
            self, "grade", [(grade.name, gettext("Grade %(name)s") % {"name": grade.name}) for grade in grades]
        )
        offer_choices(self, "language", [(code, LANGUAGES[code]) for code in spoken])
        self.fields["about"].choices = [  # type: ignore[attr-defined]
            (gettext("Areas"), [(area.value, area.label) for area in areas]),
            (gettext("Standards of this grade"), [(key, _named(one)) for key, one in self.standards.items()]),
        ][: 2 if self.standards else 1]
        self.several_languages = len(spoken) > 1

    @property
    def standard(self) -> Standard | None:
        return self.standards.get(self.about_chosen)

    @property
    def area(self) -> str:
        return self.standard.area if self.standard else self.about_chosen

    def wanted(self) -> Wanted:
        """For an area the standards of the grade say what counts are to be like, where one count can serve them."""
        if self.standard:
            return self._wanted(Area.RATIOS if self.area == Area.RATIOS else "", self.standard.count_features)
        asked = [one.count_features for one in self.standards.values() if one.area == self.area]
        return self._wanted(self.area, *asked)

    def _wanted(self, area: str, *features: str) -> Wanted:
        school = self.school
        style = Style(
            decimal_mark=school.decimal_mark, thousands=school.thousands, currency=school.currency, clock=school.clock
        )
        return Wanted(self.chosen_grade.level, features, area, style, school.unit_system)


def _named(standard: Standard) -> str:
    summary = standard.summary
    short = summary if len(summary) <= LONGEST_SUMMARY else f"{summary[:LONGEST_SUMMARY].rsplit(' ', 1)[0]} …"
    return f"{standard.code}: {short}"
