"""Spanish.

A clock time always takes its article ("las 9:30", "la 1:50"), a number where a sentence asks for it (`articles`);
sentences reach a count with words that need not agree with it ("hay", "llegar a").
"""

import re
from collections.abc import Sequence
from dataclasses import replace

from routines.counting.kinds.said import CoinName
from routines.counting.kinds.unit_names import NAMES

from ..language import Feature, Language, Noun
from . import names
from .answers import ANSWERS
from .articles import Said
from .folds import FOLDS
from .locating import LOCATING
from .next_counts import NEXT_COUNTS
from .paper import PAPER
from .patterns import ASKED_BACK, PATTERNS
from .probes import PROBES
from .replies import REPLIES
from .ringed import COINS, RINGED
from .rules import RULES
from .standards import STANDARDS
from .stops import STOPS
from .worth_teaching import WORTH_TEACHING

# Said with an o first: a word, 8, 80, 800 and their thousands, and 11.
SOUNDS_LIKE_O = re.compile(r"h?o|8|11(?:\D?\d{3})*(?!\d)", re.IGNORECASE)


class Spanish(Language):
    """Spanish as bilingual classrooms in the Americas speak it."""

    code = "es"
    conjunction, disjunction = "y", "o"
    and_so_on, none = "y los que siguen", "ninguno"
    more, less, up, down = "más", "menos", "sube", "baja"
    later, earlier, after, before = "más tarde", "antes", "después", "antes"
    landmark_nouns = names.LANDMARKS
    clock_landmarks = names.CLOCK_LANDMARKS
    times_passed = names.TIMES_PASSED
    stretch_nouns = names.STRETCHES
    decades = names.DECADES
    places = names.PLACES
    part_features = names.PARTS
    terms_of_fractions = names.TERMS_OF_FRACTIONS
    clock_parts = names.CLOCK_PARTS
    digit_sum = names.DIGIT_SUM
    small_coins = names.SMALL_COINS
    cell = "la fila {row}, columna {column}"
    answers = ANSWERS
    asked_back = ASKED_BACK
    paper = PAPER
    patterns = PATTERNS
    locating = LOCATING
    probes = PROBES
    rules = RULES
    replies = REPLIES
    stops = STOPS
    next_counts = NEXT_COUNTS
    folds = FOLDS
    standards = STANDARDS
    worth_teaching = WORTH_TEACHING
    past, below = "el primero después de cada {amount}", "el primero por debajo de cada {amount}"
    ringed = RINGED
    ringed_coins = COINS
    lines = {
        "row": Noun("fila", "filas", feminine=True),
        "column": Noun("columna", "columnas", feminine=True),
        "count": Noun("número", "números"),
    }
    directions = {
        "right": "al pasar un lugar a la derecha",
        "down": "al bajar un lugar",
        "down-right": "en diagonal hacia abajo y a la derecha",
        "down-left": "en diagonal hacia abajo y a la izquierda",
        "up": "al subir un lugar",
        "up-left": "en diagonal hacia arriba y a la izquierda",
        "up-right": "en diagonal hacia arriba y a la derecha",
    }

    going = {
        "right": "si paso un lugar a la derecha",
        "down": "si bajo un lugar",
        "down-right": "si bajo en diagonal hacia la derecha",
        "down-left": "si bajo en diagonal hacia la izquierda",
        "up": "si subo un lugar",
        "up-left": "si subo en diagonal hacia la izquierda",
        "up-right": "si subo en diagonal hacia la derecha",
    }

    def value(self, text: str, *, clock: bool) -> str:
        if not clock:
            return Said(text)
        told = text.replace(" mediodía", " del mediodía").replace(" medianoche", " de la medianoche")
        return Said(f"{'la' if re.match(r'0?1:', told) else 'las'} {told}")

    def ordinal(self, n: int, *, feminine: bool = False, before_noun: bool = False) -> str:
        if feminine:
            return f"{n}.ª"
        shortened = before_noun and (n % 10 == 3 or (n % 10 == 1 and n % 100 != 11))
        return f"{n}.er" if shortened else f"{n}.º"

    def nth(self, n: int) -> str:
        return self.ordinal(n, before_noun=True)

    def many_jumps(self, times: int, step: str) -> str:
        return f"{times} {'salto' if times == 1 else 'saltos'} de {step}"

    def turn(self, turn: int) -> str:
        return f"en la {self.ordinal(turn, feminine=True)}"

    def units(self, symbol: str) -> str:
        name = NAMES[symbol, "es"]
        return f"{'las' if name.form == 'feminine' else 'los'} {name.several}"

    def coins(self, name: str) -> str:
        return f"los {name}" if name else "las monedas pequeñas"

    def line(self, along: str, number: int) -> str:
        return f"la {'columna' if along == 'column' else 'fila'} {number}"

    def jumps(self, k: int, step: str, total: str) -> str:
        return f"cada salto es de {step}" if k == 1 else f"{k} saltos de {step} hacen {total}"

    def multiple(self, text: str) -> Noun:
        return Noun(f"múltiplo de {text}", f"múltiplos de {text}")

    def counted_by(self, text: str) -> Noun:
        return Noun(f"número de {text} en {text}", f"números de {text} en {text}")

    def ending_in(self, digits: Sequence[str]) -> Noun:
        ending = self.either(digits)
        return Noun(f"número que termina en {ending}", f"números que terminan en {ending}")

    def those_ending(self, digits: Sequence[str]) -> str:
        return f"los que terminan en {self.either(digits)}"

    def stretch(self, text: str) -> Noun:
        return Noun(f"tramo de {text}", f"tramos de {text}")

    def rises(self, *, downwards: bool, plural: bool) -> str:
        return f"{'baja' if downwards else 'sube'}{'n' if plural else ''}"

    def parity(self, *, odd: bool, plural: bool) -> str:
        return f"{'impar' if odd else 'par'}{'es' if plural else ''}"

    def place_digit(self, place: int) -> Feature:
        return self._digit(names.PLACES[place])

    def _digit(self, of: Noun) -> Feature:
        whose = f"de {self.the_many(of)}"
        return Feature(Noun(f"cifra {whose}", f"cifras {whose}", feminine=True))

    def place_amount(self, many: int, place: int) -> str:
        name = names.PLACES[place]
        return f"{many} {name.one if many == 1 else name.many}"

    def small_coin_digit(self, place: int, coin: CoinName) -> Feature:
        one, many = (("última cifra", "últimas cifras"), ("primera cifra", "primeras cifras"))[place]
        whose = f"de {self.the_many(_noun(coin))}"
        return Feature(Noun(f"{one} {whose}", f"{many} {whose}", feminine=True), brief=Noun(one, many, feminine=True))

    def large_coin_digit(self, place: int, coin: CoinName) -> Feature:
        if place == 0:
            return self._digit(_noun(coin))
        name = names.PLACES[place]
        feature = self._digit(Noun(name.one, f"{name.many} de {coin.several}", name.feminine))
        return replace(feature, brief=self._digit(name).noun)

    def whole_number_of(self, unit: Noun) -> Feature:
        whole = ("entera", "enteras") if unit.feminine else ("entero", "enteros")
        one, many = f"número de {unit.many} {whole[1]}", f"{unit.many} {whole[1]}"
        return Feature(Noun(one, f"números de {many}"), brief=Noun(one, many, unit.feminine))

    def whole_units(self, unit: CoinName) -> Noun:
        feminine = unit.gender == "feminine"
        whole = ("entera", "enteras") if feminine else ("entero", "enteros")
        return Noun(f"{unit.one} {whole[0]}", f"{unit.several} {whole[1]}", feminine)

    def remainder(self, modulus: str, mark: Noun | None) -> Feature:
        brief = Noun("parte que sobra", "partes que sobran", feminine=True)
        if mark is None:
            return Feature(
                Noun(f"residuo al dividir entre {modulus}", f"residuos al dividir entre {modulus}"), brief=brief
            )
        # "media hora" stands without an article.
        past = f"de {mark.one if mark.one.startswith(('medio ', 'media ')) else self.a(mark)}"
        return Feature(Noun(f"parte que pasa {past}", f"partes que pasan {past}", feminine=True), brief=brief)

    def either(self, items: Sequence[str]) -> str:
        """Write "3 u 8": before the sound of an o, as in ocho and once, the word is u."""
        written = items[0]
        for item in items[1:]:
            written += f" {'u' if SOUNDS_LIKE_O.match(item) else self.disjunction} {item}"
        return written

    def a(self, noun: Noun) -> str:
        if len(noun.parts) == 2:
            return " o ".join(map(self.a, noun.parts))  # "un medio o un entero"; of three the article is said once
        return f"{'una' if noun.feminine else 'un'} {noun.one}"

    def another(self, noun: Noun) -> str:
        return f"{'otra' if noun.feminine else 'otro'} {noun.one}"

    def to_the_next(self, noun: Noun) -> str:
        return "a la siguiente" if noun.feminine else "al siguiente"

    def the_one(self, noun: Noun) -> str:
        if noun.one == noun.many:
            return self.the_many(noun)
        # "el número de tazas enteras", though they are "las tazas enteras".
        return f"{'la' if noun.feminine and not noun.one.startswith('número ') else 'el'} {noun.one}"

    def the_many(self, noun: Noun) -> str:
        if noun.parts:  # "los medios y los enteros"
            *first, last = map(self.the_many, noun.parts)
            return f"{', '.join(first)} y {last}"
        return f"{'las' if noun.feminine else 'los'} {noun.many}"

    def be(self, *, plural: bool) -> str:
        return "son" if plural else "es"

    def stay(self, *, plural: bool) -> str:
        return "se quedan en" if plural else "se queda en"

    def restart(self, *, plural: bool) -> str:
        return "vuelven a empezar en" if plural else "vuelve a empezar en"

    def each_way(self, along: str, *, upwards: bool) -> str:
        if along == "count":
            return "cada vez"
        if along == "row":
            return "a lo largo de cada fila"
        return f"al {'subir' if upwards else 'bajar'} cada columna"

    def within(self, along: str) -> str:
        return "cada vez" if along == "count" else f"en cada {self.lines[along].one}"

    def per_line(self, along: str) -> str:
        return "cada vez" if along == "count" else f"por {self.lines[along].one}"

    def in_line(self, along: str, number: int) -> str:
        return f"en {self.line(along, number)}"


def _noun(coin: CoinName) -> Noun:
    return Noun(coin.one, coin.several, coin.gender == "feminine")


SPANISH = Spanish()
