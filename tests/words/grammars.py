"""With which rules each sort of text is read."""

from tests.words import (
    rules_of_folds,
    rules_of_next_counts,
    rules_of_places,
    rules_of_slips,
    rules_of_standards,
    rules_of_stops,
    rules_of_stories,
    rules_of_worth,
)
from tests.words.sentence_checker import SentenceChecker
from tests.words.sentence_rules import RULES

GRAMMARS = {
    "pattern": RULES,
    "place": rules_of_places.RULES,
    "fold": rules_of_folds.RULES,
    "slip": rules_of_slips.RULES,
    "stop": (*rules_of_stops.RULES, *RULES),
    "probe": (*rules_of_stops.PROBES,),
    "next": (*rules_of_next_counts.RULES, *RULES),
    "story": rules_of_stories.RULES,
    "standard": rules_of_standards.RULES,
    "worth": rules_of_worth.RULES,
}
UNCLAIMED = {
    "stop": "look along the rows and down the columns|mira a lo largo de las filas y las columnas|es hora de"
    r"|the [a-z ,]+ and [ap]\.m\., now|(?:el|la|los|las) [a-záéíóúüñ ,]+ y [ap]\. m\., ahora"
    r"|the [a-z ]+, \d+ to \d+|(?:el|la|los|las) [a-záéíóúüñ ]+, de \d+ a \d+"
}
CHECKERS = {
    (sort, language): SentenceChecker(rules, language, UNCLAIMED.get(sort, ""))
    for sort, rules in GRAMMARS.items()
    for language in ("en", "es")
}
