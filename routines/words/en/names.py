"""English names of landmarks, places and parts. Keys of landmarks: base unit or kind, and the multiple."""

from ..language import Feature, Noun

LANDMARKS: dict[tuple[str, str], Noun] = {
    ("whole", "2"): Noun("even number", "even numbers", counts=False),
    ("whole", "10"): Noun("ten", "tens"),
    ("whole", "100"): Noun("hundred", "hundreds"),
    ("whole", "1000"): Noun("thousand", "thousands"),
    ("decimal", "1/10"): Noun("tenth", "tenths"),
    ("decimal", "1/2"): Noun("half", "halves", among=Noun("half or whole", "halves and wholes")),
    ("decimal", "1"): Noun("whole", "wholes"),
    ("decimal", "10"): Noun("ten", "tens"),
    ("decimal", "100"): Noun("hundred", "hundreds"),
    ("fraction", "1/2"): Noun("half", "halves", among=Noun("half or whole", "halves and wholes")),
    ("fraction", "1"): Noun("whole", "wholes"),
    ("in", "1"): Noun("whole inch", "whole inches"),
    ("in", "6"): Noun("half foot", "half feet", among=Noun("half or whole foot", "half and whole feet")),
    ("in", "12"): Noun("whole foot", "whole feet"),
    ("in", "36"): Noun("whole yard", "whole yards"),
    ("cm", "1"): Noun("whole centimeter", "whole centimeters"),
    ("cm", "50"): Noun("half meter", "half meters", among=Noun("half or whole meter", "half and whole meters")),
    ("cm", "100"): Noun("whole meter", "whole meters"),
    ("oz", "8"): Noun("half pound", "half pounds", among=Noun("half or whole pound", "half and whole pounds")),
    ("oz", "16"): Noun("whole pound", "whole pounds"),
    ("g", "500"): Noun(
        "half kilogram", "half kilograms", among=Noun("half or whole kilogram", "half and whole kilograms")
    ),
    ("g", "1000"): Noun("whole kilogram", "whole kilograms"),
    ("fl oz", "8"): Noun("full cup", "full cups"),
    ("fl oz", "16"): Noun("full pint", "full pints"),
    ("fl oz", "32"): Noun("full quart", "full quarts"),
    ("fl oz", "128"): Noun("full gallon", "full gallons"),
    ("mL", "250"): Noun(
        "quarter liter", "quarter liters", among=Noun("quarter, half or full liter", "quarter, half and full liters")
    ),
    ("mL", "500"): Noun("half liter", "half liters", among=Noun("half or full liter", "half and full liters")),
    ("mL", "1000"): Noun("full liter", "full liters"),
    ("min", "15"): Noun(
        "quarter hour", "quarter hours", among=Noun("quarter, half or full hour", "quarter, half and full hours")
    ),
    ("min", "30"): Noun("half hour", "half hours", among=Noun("half or full hour", "half and full hours")),
    ("min", "60"): Noun("full hour", "full hours"),
    ("min", "720"): Noun("noon or midnight", "noons and midnights"),
}

PLACES: dict[int, Noun] = {
    -3: Noun("thousandth", "thousandths"),
    -2: Noun("hundredth", "hundredths"),
    -1: Noun("tenth", "tenths"),
    0: Noun("one", "ones"),
    1: Noun("ten", "tens"),
    2: Noun("hundred", "hundreds"),
    3: Noun("thousand", "thousands"),
    4: Noun("ten-thousand", "ten-thousands"),
    5: Noun("hundred-thousand", "hundred-thousands"),
    6: Noun("million", "millions"),
    7: Noun("ten-million", "ten-millions"),
    8: Noun("hundred-million", "hundred-millions"),
    9: Noun("billion", "billions"),
}

# What a stretch from one multiple to the next is called, where that is not the name of the multiple.
STRETCHES: dict[tuple[str, str], Noun] = {}

# The counts from 20 to 29, from 30 to 39, ...
DECADES = ("twenties", "thirties", "forties", "fifties", "sixties", "seventies", "eighties", "nineties")

PARTS: dict[str, Feature] = {
    "top": Feature(Noun("top number", "top numbers")),
    "bottom": Feature(Noun("bottom number", "bottom numbers")),
    "whole": Feature(Noun("whole part", "whole parts")),
}

TERMS_OF_FRACTIONS: dict[str, Feature] = {
    "top": Feature(Noun("numerator", "numerators")),
    "bottom": Feature(Noun("denominator", "denominators")),
}

# Times of day that are landmarks, by the minutes they are multiples of; the others are called as lengths of time are.
CLOCK_LANDMARKS: dict[str, Noun] = {
    "30": Noun(
        "half past time", "half past times", among=Noun("half past or o'clock time", "half past and o'clock times")
    ),
    "60": Noun("o'clock time", "o'clock times"),
}

# What is left is left past a full hour, on a clock too.
TIMES_PASSED: dict[str, Noun] = {}

CLOCK_PARTS: dict[str, Feature] = {"hours": Feature(Noun("hour", "hours"))}

DIGIT_SUM = Feature(Noun("digit sum", "digit sums"))

# Where a currency's smaller coins have no name here.
SMALL_COINS = Feature(Noun("small coins", "small coins"), plural=True)
