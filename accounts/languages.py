"""The languages that mathematics is spoken in, by the code under which `routines.counting` says numbers in them."""

from django.utils.translation import gettext_lazy as _

LANGUAGES = {"en": _("English"), "es": _("Spanish")}
