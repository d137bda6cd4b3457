"""Spanish names of landmarks, places and parts. Keys of landmarks: base unit or kind, and the multiple."""

from ..language import Feature, Noun

LANDMARKS: dict[tuple[str, str], Noun] = {
    ("whole", "2"): Noun("número par", "números pares", counts=False),
    ("whole", "10"): Noun("decena completa", "decenas completas", feminine=True),
    ("whole", "100"): Noun("centena completa", "centenas completas", feminine=True),
    ("whole", "1000"): Noun("millar completo", "millares completos"),
    ("decimal", "1/10"): Noun("décima", "décimas", feminine=True),
    ("decimal", "1/2"): Noun("medio", "medios", among=Noun("medio o entero", "medios y enteros")),
    ("decimal", "1"): Noun("entero", "enteros"),
    ("decimal", "10"): Noun("decena completa", "decenas completas", feminine=True),
    ("decimal", "100"): Noun("centena completa", "centenas completas", feminine=True),
    ("fraction", "1/2"): Noun("medio", "medios", among=Noun("medio o entero", "medios y enteros")),
    ("fraction", "1"): Noun("entero", "enteros"),
    ("in", "1"): Noun("pulgada entera", "pulgadas enteras", feminine=True),
    ("in", "6"): Noun("medio pie", "medios pies", among=Noun("medio pie o pie entero", "medios pies y pies enteros")),
    ("in", "12"): Noun("pie entero", "pies enteros"),
    ("in", "36"): Noun("yarda entera", "yardas enteras", feminine=True),
    ("cm", "1"): Noun("centímetro entero", "centímetros enteros"),
    ("cm", "50"): Noun(
        "medio metro", "medios metros", among=Noun("medio metro o metro entero", "medios metros y metros enteros")
    ),
    ("cm", "100"): Noun("metro entero", "metros enteros"),
    ("oz", "8"): Noun(
        "media libra",
        "medias libras",
        feminine=True,
        among=Noun("media libra o libra entera", "medias libras y libras enteras", feminine=True),
    ),
    ("oz", "16"): Noun("libra entera", "libras enteras", feminine=True),
    ("g", "500"): Noun(
        "medio kilogramo",
        "medios kilogramos",
        among=Noun("medio kilogramo o kilogramo entero", "medios kilogramos y kilogramos enteros"),
    ),
    ("g", "1000"): Noun("kilogramo entero", "kilogramos enteros"),
    ("fl oz", "8"): Noun("taza entera", "tazas enteras", feminine=True),
    ("fl oz", "16"): Noun("pinta entera", "pintas enteras", feminine=True),
    ("fl oz", "32"): Noun("cuarto de galón entero", "cuartos de galón enteros"),
    ("fl oz", "128"): Noun("galón entero", "galones enteros"),
    ("mL", "250"): Noun(
        "cuarto de litro",
        "cuartos de litro",
        among=Noun("cuarto, medio o litro entero", "cuartos, medios y litros enteros"),
    ),
    ("mL", "500"): Noun(
        "medio litro", "medios litros", among=Noun("medio litro o litro entero", "medios litros y litros enteros")
    ),
    ("mL", "1000"): Noun("litro entero", "litros enteros"),
    ("min", "15"): Noun(
        "cuarto de hora",
        "cuartos de hora",
        among=Noun("cuarto, media u hora entera", "cuartos, medias y horas enteras"),
    ),
    ("min", "30"): Noun(
        "media hora",
        "medias horas",
        feminine=True,
        among=Noun("media hora u hora entera", "medias horas y horas enteras", feminine=True),
    ),
    ("min", "60"): Noun("hora entera", "horas enteras", feminine=True),
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
        among=Noun("cuarto, media u hora en punto", "cuartos, medias y horas en punto"),
    ),
    "30": Noun(
        "media hora",
        "medias horas",
        feminine=True,
        among=Noun("media hora u hora en punto", "medias horas y horas en punto", feminine=True),
    ),
    "60": Noun("hora en punto", "horas en punto", feminine=True),
}

CLOCK_PARTS: dict[str, Feature] = {"hours": Feature(Noun("hora", "horas", feminine=True))}

DIGIT_SUM = Feature(Noun("suma de las cifras", "sumas de las cifras", feminine=True))

# Where a currency's smaller coins have no name here.
SMALL_COINS = Feature(Noun("monedas pequeñas", "monedas pequeñas", feminine=True), plural=True)
