"""Where a field of the coverage leads: to a look in the bank, a design of one's own, a suggestion, a day of the week."""

from dataclasses import dataclass
from typing import Self

from django.urls import reverse
from django.utils.http import urlencode

from grade_bands.models import Grade, Standard
from routines.coverage.by_standard import kind_for


@dataclass(frozen=True, slots=True)
class Ways:
    """Addresses that keep the grade, and the area or standard. `about`: what counts worth teaching are to be for."""

    find: str
    design: str
    suggest: str
    week: str
    about: str

    @classmethod
    def for_area(cls, grade: Grade, area: str) -> Self:
        kept = urlencode({"grade": grade.name, "area": area})
        return cls(
            find=f"{reverse('bank')}?{kept}",
            design=f"{reverse('plan_new')}?{kept}&design=1#tool-design",
            suggest=reverse("suggest_for_gap", args=[grade.pk, area]),
            week=reverse("planned_for_gap", args=[grade.pk, area]),
            about=area,
        )

    @classmethod
    def for_standard(cls, grade: Grade, standard: Standard) -> Self:
        kept = {
            "grade": grade.name,
            "area": standard.area,
            "kind": kind_for(standard),
            "standards": standard.code,
            "design": "1",
        }
        return cls(
            find=f"{reverse('bank')}?{urlencode({'grade': grade.name, 'standard': standard.code})}",
            design=f"{reverse('plan_new')}?{urlencode(kept)}#tool-design",
            suggest=reverse("suggest_for_standard", args=[grade.pk, standard.pk]),
            week=reverse("planned_for_standard", args=[grade.pk, standard.pk]),
            about=str(standard.pk) if standard.count_features.strip() else standard.area,
        )
