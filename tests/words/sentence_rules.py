"""The grammar of the sentences about patterns: every phrase that may hold a number, and when it is so.

Rules are tried in this order; a longer phrase comes before one that it contains.
"""

from tests.words import rules_of_jumps, rules_of_landmarks, rules_of_lines, rules_of_reasons, rules_of_sums
from tests.words.sentence_checker import Rule

RULES: tuple[Rule, ...] = (
    *rules_of_reasons.RULES,
    *rules_of_jumps.RULES,
    *rules_of_sums.RULES,
    *rules_of_landmarks.RULES,
    *rules_of_lines.RULES,
)
