"""The areas of mathematics that a count can belong to."""

from django.core.exceptions import ValidationError
from django.db import models
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _


class Area(models.TextChoices):
    WHOLE = "whole", _("whole numbers")
    INTEGERS = "integers", _("integers")
    DECIMALS = "decimals", _("decimals")
    FRACTIONS = "fractions", _("fractions")
    RATIOS = "ratios", _("ratios")
    MEASUREMENT = "measurement", _("measurement")
    MONEY = "money", _("money")
    TIME = "time", _("time")


def require_known_areas(areas: list[str]) -> None:
    if not isinstance(areas, list) or set(areas) - set(Area.values) or len(areas) != len(set(areas)):
        raise ValidationError(
            gettext("Choose each area once, from: %(areas)s.") % {"areas": ", ".join(map(str, Area.labels))}
        )
