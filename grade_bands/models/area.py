"""The areas of mathematics that a count can belong to."""

from django.core.exceptions import ValidationError
from django.db import models


class Area(models.TextChoices):
    WHOLE = "whole", "whole numbers"
    INTEGERS = "integers", "integers"
    DECIMALS = "decimals", "decimals"
    FRACTIONS = "fractions", "fractions"
    RATIOS = "ratios", "ratios"
    MEASUREMENT = "measurement", "measurement"
    MONEY = "money", "money"
    TIME = "time", "time"


def require_known_areas(areas: list[str]) -> None:
    if not isinstance(areas, list) or set(areas) - set(Area.values) or len(areas) != len(set(areas)):
        raise ValidationError(f"Choose each area once, from: {', '.join(Area.labels)}.")
