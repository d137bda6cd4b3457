"""Why the engine refuses what was typed, said in the language of the page: a sentence for each code of a CountError.

Its values stand in the sentences by name: `%(most)s`.
"""

from collections.abc import Mapping

from django.utils.functional import Promise

from routines.counting import CountError
from routines.counting.standards import read_features

from . import claims, counts, designing, features, forms, numbers, rules, styles, teaching
from .names import called

SUBJECTS = (numbers, styles, counts, claims, rules, designing, teaching, features, forms)
SENTENCES: Mapping[str, str | Promise] = {
    code: sentence for subject in SUBJECTS for code, sentence in subject.SENTENCES.items()
}


def say(error: CountError) -> str:
    """The sentence of an error: what to do, for a teacher, beside the field at fault.

    >>> say(CountError("terms", "terms-out-of-range", least=2, most=200))
    'Choose from 2 to 200 counts.'
    """
    return str(SENTENCES[error.code] % {name: called(name, value) for name, value in error.values.items()})


def fault_in_features(text: str) -> str:
    """What keeps a standard's features from being read; "" where they can be."""
    try:
        read_features(text)
    except CountError as error:
        return say(error)
    return ""
