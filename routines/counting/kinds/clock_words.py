"""Times of the day as they are said, in English and Spanish."""

from .number_words import cardinal

NOON = 720


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
    """A written time in words: "half past two", "seven fifty", "las dos y media".

    hour: as written. saying: "counted" reads the digits, "renamed" also uses quarters of an hour.
    minute_of_day: minutes after midnight where the half of the day is said, else None.
    """
    if clock == 24 and hour == minute == 0:
        return half_of_day(0, language)
    if minute_of_day in (0, NOON):
        return half_of_day(minute_of_day, language)
    quarters = saying == "renamed" and clock == 12
    halves = saying != "counted" and clock == 12
    said = (_spanish if language == "es" else _english)(hour, minute, halves, quarters)
    if minute_of_day is None:
        return said
    return f"{said} {_spanish_part_of_day(minute_of_day) if language == 'es' else half_of_day(minute_of_day, 'en')}"


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
    return f"{said} {'oh ' if minute < 10 else ''}{cardinal(minute, 'en')}"


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


def _spanish_part_of_day(minute_of_day: int) -> str:
    """Where the parts of the day begin: 6:00, 12:00, 20:00 (common practice, no source)."""
    hour = minute_of_day // 60
    if hour < 6:
        return "de la madrugada"
    if hour < 12:
        return "de la mañana"
    return "de la tarde" if hour < 20 else "de la noche"
