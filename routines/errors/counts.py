"""About counts, their folds and their goals."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "no-position": _("Number the counts from 1 on, in whole numbers."),
    "terms-not-whole": _("Choose a whole number of counts, from %(least)s to %(most)s."),
    "terms-out-of-range": _("Choose from %(least)s to %(most)s counts."),
    "zero-step": _("Choose a step other than 0."),
    "round-the-clock": _("Choose a step that does not bring the clock back to the same time."),
    "too-far": _("Choose fewer counts or a smaller step: this one goes past 1,000,000,000."),
    "starts-below-zero": _("Start at 0 or more: the 1st count would be below zero."),
    "other-system": _("Write the value in %(system)s units, as this count is: %(first)s."),
    "too-large": _("Choose a %(name)s between -1,000,000,000 and 1,000,000,000."),
    "no-line-lengths": _("Choose whole numbers as the line lengths to compare."),
    "no-fills": _("Choose the ways of filling to compare as a list."),
    "unknown-fill": _("Choose how to fill the grid from: %(choices)s."),
    "no-count": _("Fold a Count."),
    "no-line-length": _("Choose a line length of 1 or more."),
    "line-too-long": _("Choose a line length of at most %(most)s, the number of counts."),
    "lead-out-of-range": _("Leave from 0 to %(most)s cells empty before the first count."),
    "nothing-shown": _("Show 1 count or more."),
    "unknown-along": _("Choose along from: %(choices)s."),
    "shown-out-of-range": _("Show from 1 to %(most)s counts."),
    "goal-below-zero": _("Choose a goal of 0 or more: this count never goes below zero."),
    "no-group": _("Name what is counted, such as crate, in at most %(most)s letters."),
    "goal-not-text": _("Type the goal as text, such as %(last)s."),
    "second-below-zero": _("Choose a smaller step or a larger start: count 2 would be below zero."),
    "goes-below-zero": _("Choose at most %(most)s counts or a larger start: count %(n)s would be below zero."),
    "not-as-text": _("Type the %(name)s as text, such as 7 or 2/3."),
    "floating-point": _("Type the %(name)s as text, such as 7 or 2/3; floating-point numbers are not exact."),
}
