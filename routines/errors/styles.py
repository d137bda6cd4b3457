"""About how a count is to be written."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "no-style": _("Give the style as a Style."),
    "style-not-named-choices": _("Give the style as named choices."),
    "same-marks": _("Choose different marks for decimals and for thousands."),
    "places-out-of-range": _("Choose from 0 to %(most)s decimal places."),
    "no-kept-denominator": _("Keep a denominator that is a whole number of 1 or more."),
    "halves-not-true-or-false": _('Choose "halves" from: True, False.'),
    "decimals-not-true-or-false": _('Choose "decimals" from: True, False.'),
    "no-currency-code": _("Give the currency by its three letters, such as USD."),
    "unknown-style": _("Leave “%(typed)s” out: a style is made of %(choices)s."),
    "style-not-offered": _('Choose "%(style)s" from: %(choices)s.'),
    "unknown-style-unit": _("Choose the %(size)s unit from: %(choices)s."),
    "units-do-not-go-together": _("Choose a large unit that is made of whole small units, not %(unit)s."),
}
