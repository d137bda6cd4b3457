from .area import Area
from .class_group import ClassGroup, classes_in_year, classes_of, hold_classes_of
from .grade import Grade, GradeBand
from .school_year import SchoolYear
from .standard import Standard
from .term import Term

__all__ = [
    "Area",
    "ClassGroup",
    "Grade",
    "GradeBand",
    "SchoolYear",
    "Standard",
    "Term",
    "classes_in_year",
    "classes_of",
    "hold_classes_of",
]
