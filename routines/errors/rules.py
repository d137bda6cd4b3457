"""About a rule for the n-th count, as it is typed."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "rule-without-place": _("Write n, or the place, in the rule: such as 6n + 4, or 6 times the place, plus 4."),
    "rule-too-long": _("Shorten the rule to at most %(most)s signs."),
    "rule-unknown-word": _("Leave out \u201c%(typed)s\u201d; write the rule with numbers, n, +, -, \u00d7 and \u00f7."),
    "rule-unknown-sign": _("Leave out the sign %(typed)s; write the rule with numbers, n, +, -, \u00d7 and \u00f7."),
    "rule-unexpected": _("Look again at \u201c%(typed)s\u201d; the rule cannot be read there."),
    "rule-unfinished": _("Write the rule to its end."),
    "rule-x-is-times": _("Write n for the number of the place; an x is read as times."),
    "rule-bracket-open": _("Close each bracket that was opened."),
    "rule-nested-too-deep": _("Use at most %(most)s brackets inside each other."),
    "rule-number-too-long": _("Write numbers of at most %(most)s digits."),
    "rule-degree-too-high": _("Multiply n by itself to at most %(most)s factors, such as n × n × n."),
    "rule-divides-by-zero": _("Divide by another number than 0."),
    "rule-divides-by-place": _("Divide by a number only, not by n."),
    "rule-on-a-clock": _("Times on a clock come round again and have no rule in n; count lengths of time instead."),
}
