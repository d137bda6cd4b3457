"""Times of the day as they are said, in English and Spanish."""

from fractions import Fraction

from .number_words import cardinal

NOON = 720

# From which minute of the day each part of the day runs, by language.
# Source: Unicode CLDR, day period rules (Babel 2.18).
PARTS_OF_DAY: dict[str, tuple[tuple[int, str], ...]] = {
    "en": ((0, "morning"), (NOON, "afternoon"), (18 * 60, "evening"), (21 * 60, "night")),
    "es": ((0, "madrugada"), (6 * 60, "mañana"), (NOON, "tarde"), (20 * 60, "noche")),
}


def part_of_day(minute_of_day: Fraction | int, language: str) -> str:
    """The name of the part of the day at a number of minutes after midnight.

    >>> part_of_day(260, "en"), part_of_day(260, "es"), part_of_day(17 * 60 + 30, "en")
    ('morning', 'madrugada', 'afternoon')
    """
    return next(name for start, name in reversed(PARTS_OF_DAY[language]) if start <= minute_of_day)


def half_of_day(minute_of_day: int, language: str) -> str:
    """What is written after a time on a 12-hour clock.

    Source: NIST, Time Questions and Answers (noon and midnight are best written as words).
    """
    if minute_of_day in (0, NOON):
        names = {"en": ("midnight", "noon"), "es": ("medianoche", "mediodía")}[language]
        return names[minute_of_day == NOON]
    dots = {"en": ("a.m.", "p.m."), "es": ("a. m.", "p. m.")}[language]
    return dots[minute_of_day >= NOON]


def say_time(hour: int, minute: int, language: str, saying: str, clock: int, minute_of_day: int | None) -> str:
    """A written time in words: "half past two", "seven fifty p.m.", "las dos y media".

    With a.m. or p.m. English reads hour and minutes ("eleven forty-five p.m.", "six a.m."): common practice, no source.
    hour: as written. saying: "counted" reads the digits, "renamed" also uses quarters of an hour.
    minute_of_day: minutes after midnight where the half of the day is said, else None.
    """
    if clock == 24 and hour == minute == 0:
        return half_of_day(0, language)
    if minute_of_day in (0, NOON):
        return half_of_day(minute_of_day, language)
    quarters = saying == "renamed" and clock == 12
    halves = saying != "counted" and clock == 12
    if language == "es":
        said = _spanish(hour, minute, halves, quarters)
        return said if minute_of_day is None else f"{said} de la {part_of_day(minute_of_day, 'es')}"
    if minute_of_day is None:
        return _english(hour, minute, halves, quarters)
    digits = f" {_minutes(minute)}" if minute else ""
    return f"{cardinal(hour, 'en')}{digits} {half_of_day(minute_of_day, 'en')}"


def _english(hour: int, minute: int, halves: bool, quarters: bool) -> str:
    said = cardinal(hour, "en")
    if minute == 0:
        return f"{said} o'clock"
    if minute == 30 and halves:
        return f"half past {said}"
    if minute == 15 and quarters:
        return f"quarter past {said}"
    if minute == 45 and quarters:
        return f"quarter to {cardinal(hour % 12 + 1, 'en')}"
    return f"{said} {_minutes(minute)}"


def _minutes(minute: int) -> str:
    return f"{'oh ' if minute < 10 else ''}{cardinal(minute, 'en')}"


def _spanish(hour: int, minute: int, halves: bool, quarters: bool) -> str:
    if minute == 45 and quarters:
        return f"{_spanish_hour(hour % 12 + 1)} menos cuarto"
    said = _spanish_hour(hour)
    if minute == 0:
        return said
    if minute == 30 and halves:
        return f"{said} y media"
    if minute == 15 and quarters:
        return f"{said} y cuarto"
    return f"{said} y {cardinal(minute, 'es')}"


def _spanish_hour(hour: int) -> str:
    return f"{'la' if hour == 1 else 'las'} {cardinal(hour, 'es', 'feminine')}"
