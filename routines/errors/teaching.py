"""About what the teaching part is asked: tapped counts, slips, audiences, values to look for."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "no-level": _("Choose a grade from kindergarten to 8."),
    "no-language": _('Choose "en" or "es" as the language.'),
    "no-tapped-counts": _("Give the numbers of the tapped counts."),
    "tapped-out-of-range": _("Tap counts from 1 to %(most)s."),
    "nothing-to-look-for": _("Give a whole number or an exact fraction to look for."),
    "too-far-to-look-for": _("Look for a number between -1,000,000,000,000 and 1,000,000,000,000."),
    "no-grid": _("Fold a count into a grid first."),
    "no-audience": _("Give the audience as an Audience: a level and a language."),
    "position-too-far": _("Choose a count by its number, from 1 to %(most)s."),
    "said-not-text": _("Write what was said as text, such as 76 or seventy-six."),
    "not-a-list": _("Give the %(name)s as a list."),
    "earlier-not-in-pairs": _("Give what was said before as texts, or as pairs of a count's number and a text."),
    "no-claims": _("Give each of the %(name)s as a claim, its data, or a pattern."),
    "unknown-outcome": _("Choose how it went from: %(choices)s."),
}
