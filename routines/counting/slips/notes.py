"""One line for the teacher about what was heard, in English and Spanish."""

from ..locate.wording import filled
from ..texts.numbers import ordinal


def right(language: str) -> str:
    return _in(language, "This is the count.", "Es el número que toca.")


def equal_name(correct: str, language: str) -> str:
    return _in(
        language,
        f"Another name for {correct}: which names does the class know for it?",
        f"Otro nombre de {correct}: ¿qué nombres conoce la clase?",
    )


def unreadable(language: str) -> str:
    return _in(language, "This is no number of this kind as written.", "Así escrito no es un número de esta clase.")


def repeated(said: str, language: str) -> str:
    facts = {"said": said}
    return _in(language, f"{said} was said just before.", filled("Se acaba de decir {said}.", facts))


def carried(since: int, language: str) -> str:
    return _in(
        language,
        f"The jump is as it should be; it goes on from the {ordinal(since, 'en')} count.",
        f"El salto es el debido; viene desde el {ordinal(since, 'es', before_noun=True)} número.",
    )


def skipped(by: int, language: str) -> str:
    if by == 1:
        return _in(language, "One count was left out.", "Se dejó fuera un número.")
    return _in(language, f"{by} counts were left out.", f"Se dejaron fuera {by} números.")


def wrong_way(step: str, language: str) -> str:
    return _in(language, f"The jump of {step} went the other way.", f"El salto de {step} fue en la otra dirección.")


def jumps(by: int, step: str, language: str) -> str:
    many = abs(by)
    english = f"{many} jump{'s' if many > 1 else ''} of {step} {'too many' if by > 0 else 'more to go'}."
    spanish = (
        f"{'Sobra' if by > 0 else 'Falta'}{'n' if many > 1 else ''} {many} salto{'s' if many > 1 else ''} de {step}."
    )
    return _in(language, english, spanish)


def swapped(language: str) -> str:
    return _in(language, "Two digits have changed places.", "Dos cifras cambiaron de lugar.")


def half_of_the_day(language: str) -> str:
    return _in(
        language,
        "The time is right, but in the other half of the day.",
        "La hora es esa, pero en la otra mitad del día.",
    )


def mark(size: str, more: bool, language: str) -> str:
    return _in(
        language,
        f"All the digits have moved to other places: {size} too {'much' if more else 'little'}.",
        f"Todas las cifras se corrieron de lugar: {size} de {'más' if more else 'menos'}.",
    )


def place(size: str, more: bool, language: str) -> str:
    return _in(
        language,
        f"A digit or the jump is one place off: {size} too {'much' if more else 'little'}.",
        f"Una cifra o el salto está un lugar corrido: {size} de {'más' if more else 'menos'}.",
    )


def one_in_a_place(size: str, more: bool, language: str) -> str:
    return _in(
        language,
        f"One too {'many' if more else 'few'} in one place: {size} too {'much' if more else 'little'}.",
        f"Uno de {'más' if more else 'menos'} en un lugar: {size} de {'más' if more else 'menos'}.",
    )


def difference(size: str, more: bool, language: str) -> str:
    return _in(
        language,
        f"{size} too {'much' if more else 'little'}.",
        f"{size} de {'más' if more else 'menos'}.",
    )


def _in(language: str, english: str, spanish: str) -> str:
    return spanish if language == "es" else english
