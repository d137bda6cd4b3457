"""About what a standard asks of a count, as its file says it."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "amounts-unreadable": _('Write amounts as in "1|10", "1..9", "any" or "0|step": “%(typed)s” is none.'),
    "features-too-long": _("Shorten the features to %(most)s characters."),
    "no-fit": _('Say "fit=direct" or "fit=support".'),
    "feature-unreadable": _('Write each feature as "key=value": “%(typed)s” is none.'),
    "condition-unreadable": _('After "if" stands one condition: “%(typed)s” is none.'),
    "value-unreadable": _('“%(typed)s” cannot stand after "%(key)s%(sign)s".'),
    "unknown-feature": _('There is no feature called "%(key)s".'),
}
