"""Number words: cardinals and the names of equal parts, in each language in which numbers are said."""

from .said import SAID


def cardinal(value: int, language: str, form: str = "alone") -> str:
    """A whole number of 0 or more in words.

    form: "alone" (uno), "masculine" (un libro) or "feminine" (una hora); English has one form.

    >>> cardinal(101, "en"), cardinal(521, "es"), cardinal(521, "es", "masculine"), cardinal(521, "es", "feminine")
    ('one hundred one', 'quinientos veintiuno', 'quinientos veintiún', 'quinientas veintiuna')
    """
    return SAID[language].cardinal(value, form)


def counted(value: int, name: str, language: str, form: str = "alone") -> str:
    """So many of something: "three feet"; "un millón de pies".

    >>> counted(10**6, "pies", "es", "masculine"), counted(1_000_001, "libras", "es", "feminine")
    ('un millón de pies', 'un millón una libras')
    """
    return f"{cardinal(value, language, form)}{SAID[language].before_what_is_counted(value)}{name}"


def equal_parts(top: int, bottom: int, language: str) -> str:
    """So many of the equal parts of one: "two thirds", "dos tercios". top >= 0, bottom >= 2.

    >>> equal_parts(30, 100, "en"), equal_parts(1, 2, "en"), equal_parts(21, 12, "es")
    ('thirty hundredths', 'one half', 'veintiún doceavos')
    """
    return counted(top, SAID[language].part_of(bottom, several=top != 1), language, "masculine")


def decimal_parts(top: int, places: int, language: str) -> str:
    """So many tenths, hundredths, ... as a decimal is read: "five tenths", "cinco décimas".

    >>> decimal_parts(21, 2, "es")
    'veintiuna centésimas'
    """
    name = SAID[language].decimal_places[places]
    return counted(top, f"{name}{'' if top == 1 else 's'}", language, "feminine")


def negative(words: str, language: str) -> str:
    """The words of a value below zero, from the words of its size."""
    return SAID[language].joints.below_zero.format(words)


def joined(whole: str, part: str, language: str) -> str:
    """A whole and a part as one value: "two and one third", "dos y un tercio"."""
    return SAID[language].joints.and_a_part.format(whole, part)
