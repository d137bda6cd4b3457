"""How a lesson went, by which the next counts are chosen."""

from enum import StrEnum


class Outcome(StrEnum):
    """In the order in which next counts are listed."""

    NOT_YET = "not-yet"
    AS_PLANNED = "as-planned"
    READY_FOR_MORE = "ready-for-more"
