"""About what a form asks of the engine in its own way: a claim put together from fields, limits in two of them."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "no-typed-whole-number": _("Write a whole number."),
    "no-whole-numbers": _("Write whole numbers with commas between them, such as 2, 8."),
    "no-line": _("Write the number of one row or column, or leave it empty for all."),
}
