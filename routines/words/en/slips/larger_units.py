"""What is said in English about slips of counts in two units and of clocks that the table leaves to other grades."""

from ...language import SlipWords
from . import integers, measurement, time

WORDS = {
    "U01": measurement.WORDS["L01"]._replace(show="How many {smalls} make one {large}?"),
    "U02": SlipWords(
        "After {a} the minutes run on past the end of the hour.",
        "How many minutes are there from {a} until the hour is full, and which hour begins?",
        "How many minutes fill an hour?",
    ),
    "U03": SlipWords(
        "In the jump back from {a} the hour is broken apart into a hundred minutes.",
        "How many minutes do we get when we break one hour apart?",
    ),
    "U04": measurement.WORDS["L13"],
    "U05": SlipWords(
        "The minutes stood unrenamed at {a}, and now a hundred of them are taken for an hour.",
        time.WORDS["T09"].ask,
    ),
    "U06": SlipWords(
        "The decimal digits of {a} are read as a whole number that goes on.",
        "What do all the parts after the mark make now, and where do we write it?",
    ),
    "U07": integers.WORDS["N05"],
}
