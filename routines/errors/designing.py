"""About the limits in which grids are looked for."""

from django.utils.translation import gettext_lazy as _

SENTENCES = {
    "no-limits": _("Give the limits as Limits."),
    "no-wanted-claims": _("Give what is wanted as a list of Claims."),
    "no-pair-of-limits": _("Give a lowest and a highest."),
    "no-off-multiple": _("Say whether the start is off the multiples of the step: True, False or None."),
    "no-grain": _("Choose a grain above 0, of which starts and steps are multiples."),
    "no-largest-number": _("Choose a largest number of 0 or more."),
    "no-grids-asked": _("Ask for 1 grid or more."),
    "limit-not-exact": _("Give the %(name)s as text, a whole number or an exact fraction."),
    "limits-not-exact": _("Give the limits of the %(name)s as whole numbers or exact fractions."),
    "limits-out-of-range": _("Choose whole numbers from %(least)s to %(most)s."),
    "too-much-to-look-through": _("That is more than can be looked through. Say more of what the grid should show."),
    "too-many-starts": _(
        "%(many)s starts are more than can be looked through here. "
        "Bring the lowest and the highest start closer together, or let them go in larger jumps."
    ),
    "too-many-steps": _(
        "%(many)s steps are more than can be looked through here. "
        "Bring the lowest and the highest step closer together, or let them go in larger jumps."
    ),
    "too-many-terms": _(
        "%(many)s numbers of counts are more than can be looked through here. "
        "Bring the lowest and the highest number of counts closer together."
    ),
    "too-many-line-lengths": _(
        "%(many)s line lengths are more than can be looked through here. "
        "Bring the lowest and the highest line length closer together."
    ),
}
