"""The article before a count in a Spanish sentence: el 19, del 3/4, a las 9:05; an amount has none: 50 g, $2.60."""

import re

_TIME = re.compile(r"las? ")
_NUMBER = re.compile(r"-?\d[\d.,\s]*(?:/\d+)?(?: = .+)?")
_ONE = re.compile(r"\$?1(?:[.,]0+)?(?![\d.,/]|\s\d)|0[.,]\d|\d+/\d+")
_TWO_UNITS = re.compile(r"\S+ [^\d(]+ \d")
_BEFORE = {
    "el": ("el ", "", ""),
    "del": ("del ", "de ", "de "),
    "al": ("al ", "a ", "a "),
    "en": ("en el ", "a ", "en "),
}


class Said(str):
    """A count inside a sentence; `{a:el}`, `{a:del}`, `{a:al}` and `{a:en}` write it after its article.

    `{a:va}` and `{a:es}` are the verbs that agree with it: amounts are several, unless they are one or a part of one.

    >>> "{0:del} {1:al}, {2:en}, {3:el}".format(Said("19"), Said("30"), Said("las 9:05"), Said("50 g"))
    'del 19 al 30, a las 9:05, 50 g'
    >>> "{0:va}, {1:va}".format(Said("las 9:05"), Said("la 1:05"))
    'van, va'
    >>> "{0:es}, {1:es}, {2:es}, {3:es}".format(Said("420"), Said("4,000 mL"), Said("3/4 de taza"), Said("1 ft 2 in"))
    'es, son, es, son'
    """

    __slots__ = ()

    def __str__(self) -> str:
        return self

    def __format__(self, spec: str) -> str:
        if spec == "va":
            return "van" if self.startswith("las ") else "va"
        if spec == "es":
            one_amount = _ONE.match(self) and not _TWO_UNITS.match(self)
            one = _NUMBER.fullmatch(self) or one_amount or self.startswith("la ")
            return "es" if one else "son"
        if spec not in _BEFORE:
            return super().__format__(spec)
        number, time, amount = _BEFORE[spec]
        return (number if _NUMBER.fullmatch(self) else time if _TIME.match(self) else amount) + str(self)
