"""Spanish names of landmarks, places and parts. Keys of landmarks: base unit or kind, and the multiple."""

import re

from ..language import Feature, Noun


def _together(*parts: Noun) -> Noun:
    """Several under one name: "media hora u hora entera", "cuartos, medias y horas enteras"."""
    *first, last = parts
    disjunction = "u" if re.match("h?o", last.one) else "o"
    one = f"{', '.join(part.one for part in first)} {disjunction} {last.one}"
    return Noun(one, f"{', '.join(part.many for part in first)} y {last.many}", parts[0].feminine, parts=parts)


_WHOLE = Noun("entero", "enteros")
_WHOLE_FOOT = Noun("pie entero", "pies enteros")
_WHOLE_METER = Noun("metro entero", "metros enteros")
_WHOLE_POUND = Noun("libra entera", "libras enteras", feminine=True)
_WHOLE_KILOGRAM = Noun("kilogramo entero", "kilogramos enteros")
_WHOLE_LITER = Noun("litro entero", "litros enteros")
_WHOLE_HOUR = Noun("hora entera", "horas enteras", feminine=True)
_O_CLOCK = Noun("hora en punto", "horas en punto", feminine=True)
_QUARTER, _HALF = Noun("cuarto", "cuartos"), Noun("medio", "medios")
# "Un cuarto, media hora o una hora", but "los cuartos, las medias y las horas".
_HALF_OF_AN_HOUR = Noun("media hora", "medias", feminine=True)

LANDMARKS: dict[tuple[str, str], Noun] = {
    ("whole", "2"): Noun("número par", "números pares", counts=False),
    ("whole", "10"): Noun("decena completa", "decenas completas", feminine=True),
    ("whole", "100"): Noun("centena completa", "centenas completas", feminine=True),
    ("whole", "1000"): Noun("millar completo", "millares completos"),
    ("decimal", "1/10"): Noun("décima", "décimas", feminine=True),
    ("decimal", "1/2"): Noun("medio", "medios", among=_together(_HALF, _WHOLE)),
    ("decimal", "1"): _WHOLE,
    ("decimal", "10"): Noun("decena completa", "decenas completas", feminine=True),
    ("decimal", "100"): Noun("centena completa", "centenas completas", feminine=True),
    ("fraction", "1/2"): Noun("medio", "medios", among=_together(_HALF, _WHOLE)),
    ("fraction", "1"): _WHOLE,
    ("in", "1"): Noun("pulgada entera", "pulgadas enteras", feminine=True),
    ("in", "6"): Noun("medio pie", "medios pies", among=_together(Noun("medio pie", "medios pies"), _WHOLE_FOOT)),
    ("in", "12"): _WHOLE_FOOT,
    ("in", "36"): Noun("yarda entera", "yardas enteras", feminine=True),
    ("cm", "1"): Noun("centímetro entero", "centímetros enteros"),
    ("cm", "50"): Noun(
        "medio metro", "medios metros", among=_together(Noun("medio metro", "medios metros"), _WHOLE_METER)
    ),
    ("cm", "100"): _WHOLE_METER,
    ("oz", "8"): Noun(
        "media libra",
        "medias libras",
        feminine=True,
        among=_together(Noun("media libra", "medias libras", feminine=True), _WHOLE_POUND),
    ),
    ("oz", "16"): _WHOLE_POUND,
    ("g", "500"): Noun(
        "medio kilogramo",
        "medios kilogramos",
        among=_together(Noun("medio kilogramo", "medios kilogramos"), _WHOLE_KILOGRAM),
    ),
    ("g", "1000"): _WHOLE_KILOGRAM,
    ("fl oz", "8"): Noun("taza entera", "tazas enteras", feminine=True),
    ("fl oz", "16"): Noun("pinta entera", "pintas enteras", feminine=True),
    ("fl oz", "32"): Noun("cuarto de galón entero", "cuartos de galón enteros"),
    ("fl oz", "128"): Noun("galón entero", "galones enteros"),
    ("mL", "250"): Noun(
        "cuarto de litro",
        "cuartos de litro",
        among=_together(_QUARTER, _HALF, _WHOLE_LITER),
    ),
    ("mL", "500"): Noun(
        "medio litro", "medios litros", among=_together(Noun("medio litro", "medios litros"), _WHOLE_LITER)
    ),
    ("mL", "1000"): _WHOLE_LITER,
    ("min", "15"): Noun(
        "cuarto de hora",
        "cuartos de hora",
        among=_together(_QUARTER, _HALF_OF_AN_HOUR, _WHOLE_HOUR),
    ),
    ("min", "30"): Noun(
        "media hora",
        "medias horas",
        feminine=True,
        among=_together(Noun("media hora", "medias horas", feminine=True), _WHOLE_HOUR),
    ),
    ("min", "60"): _WHOLE_HOUR,
    ("min", "720"): Noun("mediodía o medianoche", "mediodías y medianoches"),
}

PLACES: dict[int, Noun] = {
    -3: Noun("milésima", "milésimas", feminine=True),
    -2: Noun("centésima", "centésimas", feminine=True),
    -1: Noun("décima", "décimas", feminine=True),
    0: Noun("unidad", "unidades", feminine=True),
    1: Noun("decena", "decenas", feminine=True),
    2: Noun("centena", "centenas", feminine=True),
    3: Noun("millar", "millares"),
    4: Noun("decena de millar", "decenas de millar", feminine=True),
    5: Noun("centena de millar", "centenas de millar", feminine=True),
    6: Noun("millón", "millones"),
    7: Noun("decena de millón", "decenas de millón", feminine=True),
    8: Noun("centena de millón", "centenas de millón", feminine=True),
    9: Noun("millar de millón", "millares de millón"),
}

# What a stretch from one multiple to the next is called, where that is not the name of the multiple.
STRETCHES: dict[tuple[str, str], Noun] = {
    (kind, str(10**place)): PLACES[place] for kind in ("whole", "decimal") for place in (1, 2, 3)
}

# The counts from 20 to 29, from 30 to 39, ...
DECADES = ("veintes", "treintas", "cuarentas", "cincuentas", "sesentas", "setentas", "ochentas", "noventas")

PARTS: dict[str, Feature] = {
    "top": Feature(Noun("número de arriba", "números de arriba")),
    "bottom": Feature(Noun("número de abajo", "números de abajo")),
    "whole": Feature(Noun("parte entera", "partes enteras", feminine=True)),
}

TERMS_OF_FRACTIONS: dict[str, Feature] = {
    "top": Feature(Noun("numerador", "numeradores")),
    "bottom": Feature(Noun("denominador", "denominadores")),
}

# Times of day that are landmarks, by the minutes they are multiples of; the others are called as lengths of time are.
CLOCK_LANDMARKS: dict[str, Noun] = {
    "15": Noun(
        "cuarto de hora",
        "cuartos de hora",
        among=_together(_QUARTER, _HALF_OF_AN_HOUR, _O_CLOCK),
    ),
    "30": Noun(
        "media hora",
        "medias horas",
        feminine=True,
        among=_together(Noun("media hora", "medias horas", feminine=True), _O_CLOCK),
    ),
    "60": _O_CLOCK,
}

# What a clock passes is a time too: una hora en punto, and not the length of an hour.
TIMES_PASSED = {"60": _O_CLOCK}

CLOCK_PARTS: dict[str, Feature] = {"hours": Feature(Noun("hora", "horas", feminine=True))}

DIGIT_SUM = Feature(Noun("suma de las cifras", "sumas de las cifras", feminine=True))

# Where a currency's smaller coins have no name here.
SMALL_COINS = Feature(Noun("monedas pequeñas", "monedas pequeñas", feminine=True), plural=True)
