"""Design from a wanted pattern: which patterns, and within which limits to look."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from django import forms
from django.utils.translation import gettext_lazy as _

from accounts.offered import offer_choices
from accounts.translated import Translated
from accounts.typed_numbers import typed_whole
from routines.counting import Claim, CountError, Fill, Kind, Limits, Style
from routines.counting.claims import DigitClaim, OppositesClaim, TableClaim
from routines.errors import say
from routines.models.facts import FILLS
from routines.plans.forms.fields import choice, short_text
from routines.plans.forms.marks import POINT, in_mark, turned
from routines.plans.forms.number_kinds import BELOW_ZERO, KINDS, LIMITS, USUAL

WANTED = {
    "column": _("landmarks stand in one column"),
    "row": _("landmarks stand in one row"),
    "diagonal": _("landmarks walk down a diagonal"),
    "ends": _("each column keeps its last digit or part"),
    "turns": _("last digits or parts take turns in each column"),
    "many": _("landmarks come in a rhythm"),
    "table": _("a times table"),
    "opposites": _("opposites: a number and its negative"),
}
NUMBERS = ("multiple", "start_low", "start_high", "step_low", "step_high", "grain")
OFF = {"": _("anywhere"), "on": _("on a multiple of the step"), "off": _("off the multiples of the step")}
FILLS_TRIED: dict[str, Translated] = {
    "": _("across or down"),
    Fill.ACROSS: FILLS[Fill.ACROSS],
    Fill.DOWN: FILLS[Fill.DOWN],
}
MOST_LOOKED_AT = 500
# After the pattern start, step and length are asked; these stand under "More limits".
FURTHER_LIMITS = ("multiple", "grain", "off", "terms_low", "terms_high", "fill")
COMMON = {"length_low": "3", "length_high": "8", "terms_low": "18", "terms_high": "24"}


class DesignForm(forms.Form):
    """`limits` and `wanted` are there once the form is valid. Until a pattern is chosen nothing else is asked."""

    prefix = "design"

    wanted_pattern = choice(_("Show"), WANTED.items())
    kind = choice(_("Kind of number"), KINDS.items())
    multiple = short_text(_("Landmarks"), 40, size=5)
    start_low = short_text(_("Start from"), 40, size=5)
    start_high = short_text(_("Start to"), 40, size=5)
    step_low = short_text(_("Step from"), 40, size=5)
    step_high = short_text(_("Step to"), 40, size=5)
    grain = short_text(_("In jumps of"), 40, size=5)
    length_low = short_text(_("Line from"), 3, size=3)
    length_high = short_text(_("Line to"), 3, size=3)
    terms_low = short_text(_("Counts from"), 3, size=3)
    terms_high = short_text(_("Counts to"), 3, size=3)
    fill = choice(_("How it is filled"), FILLS_TRIED.items(), required=False)
    off = choice(_("Start"), OFF.items(), required=False)

    wanted: Claim
    limits: Limits

    def __init__(
        self, posted: Mapping[str, str], style: Mapping[str, Any], *, kind: str = Kind.WHOLE, below_zero: bool = False
    ) -> None:
        """kind: what is counted unless something else was chosen here. below_zero: starts may lie below zero."""
        asked = {name: text for name, text in posted.items() if name.startswith("design-")}
        self.is_begun = bool({"design-wanted_pattern", "design-before"} & set(asked))
        kind, wanted = asked.get("design-kind", kind), asked.get("design-wanted_pattern", "column")
        self.mark = style.get("decimal_mark", POINT)
        limits = dict(zip(LIMITS, USUAL.get(kind, USUAL[Kind.WHOLE]), strict=True))
        usual = {**COMMON, **limits, "wanted_pattern": "column", "kind": kind}
        if wanted == "opposites" or below_zero:
            usual |= {"start_low": BELOW_ZERO.get(kind, usual["start_low"])}
        usual |= {name: turned(usual[name], POINT, self.mark, kind) for name in NUMBERS}
        if asked.get("design-before") != f"{kind} {wanted}":
            kept = ("design-wanted_pattern", "design-kind", "design-fill", "design-off")
            asked = {name: text for name, text in asked.items() if name in kept}
        typed_in = asked.get("design-mark", "") or self.mark
        for name in NUMBERS:
            if text := asked.get(f"design-{name}", ""):
                asked[f"design-{name}"] = in_mark(turned(text, typed_in, self.mark, kind), self.mark, kind)
        super().__init__({**{f"design-{name}": text for name, text in usual.items()}, **asked})
        self.before = f"{kind} {wanted}"
        self.style = style
        offer_choices(self, "wanted_pattern", wanted_of(kind).items())
        for field in self.fields.values():
            field.widget.attrs["class"] = "blank"

    @property
    def patterns(self) -> list[tuple[str, Translated, bool]]:
        """What may be wished for: value, words, and whether it is what was chosen."""
        chosen = self["wanted_pattern"].value() if self.is_begun else ""
        return [(value, words, value == chosen) for value, words in wanted_of(self["kind"].value()).items()]

    @property
    def asks_landmark(self) -> bool:
        """Whether the pattern is about landmarks, or about what is left past them."""
        wanted, kind = self["wanted_pattern"].value(), self["kind"].value()
        ends = wanted in ("ends", "turns") and kind not in (Kind.WHOLE, Kind.DECIMAL)
        return ends or wanted in ("column", "row", "diagonal", "many")

    @property
    def has_further_errors(self) -> bool:
        """Whether something is wrong among the limits that are folded away."""
        return any(name in self.errors for name in FURTHER_LIMITS)

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        if self.errors:
            return cleaned
        try:
            self.limits = self._limits(cleaned)
            self.wanted = self._claim(cleaned)
        except CountError as error:
            self.refuse(error)
        return cleaned

    def refuse(self, error: CountError) -> None:
        fields = {"start": "start_low", "step": "step_low", "line_length": "length_low", "terms": "terms_low"}
        name = fields.get(error.field, error.field)
        self.add_error(name if name in self.fields else "wanted_pattern", say(error))

    def _limits(self, cleaned: dict[str, Any]) -> Limits:
        return Limits.parse(
            kind=cleaned["kind"],
            grain=cleaned["grain"] or "1",
            starts=(cleaned["start_low"], cleaned["start_high"]),
            steps=(cleaned["step_low"], cleaned["step_high"]),
            line_lengths=(_whole(cleaned["length_low"], "length_low"), _whole(cleaned["length_high"], "length_high")),
            terms=(_whole(cleaned["terms_low"], "terms_low"), _whole(cleaned["terms_high"], "terms_high")),
            fills=(Fill(cleaned["fill"]),) if cleaned["fill"] else (Fill.ACROSS, Fill.DOWN),
            off_multiple={"": None, "on": False, "off": True}[cleaned["off"]],
            at_most=MOST_LOOKED_AT,
            style=Style(**dict(self.style)),
        )

    def _claim(self, cleaned: dict[str, Any]) -> Claim:
        wanted = cleaned["wanted_pattern"]
        if wanted == "table":
            return TableClaim()
        if wanted == "opposites":
            return OppositesClaim()
        if wanted in ("ends", "turns"):
            return self._kept(cleaned, 1 if wanted == "ends" else 2)
        multiple = self._multiple(cleaned)
        if wanted == "many":
            return Claim.from_dict({"family": "how-many", "multiple": multiple})
        lie = "down-right" if wanted == "diagonal" else wanted
        return Claim.from_dict({"family": "landmarks", "multiple": multiple, "lie": lie})

    def _kept(self, cleaned: dict[str, Any], length: int) -> Claim:
        """The last digit of whole numbers and decimals; of others the part past the landmark."""
        place = {Kind.WHOLE: 0, Kind.DECIMAL: -1}.get(cleaned["kind"])
        if place is not None:
            return DigitClaim(place=place, along="column", length=length)
        modulus = self._multiple(cleaned)
        return Claim.from_dict({"family": "remainder", "modulus": modulus, "along": "column", "length": length})

    def _multiple(self, cleaned: dict[str, Any]) -> Fraction:
        kind_of_length = {"clock": "elapsed"}.get(cleaned["kind"], cleaned["kind"])
        value = Limits.parse(kind=kind_of_length, starts=(cleaned["multiple"],) * 2, style=Style()).starts[0]
        return Fraction(value)


def wanted_of(kind: str) -> dict[str, Translated]:
    """What can be wished for of a kind: opposites need numbers below zero, and a clock comes round again."""
    left_out = set() if kind in BELOW_ZERO else {"opposites"}
    if kind == Kind.CLOCK:
        left_out |= {"many", "table"}
    return {name: words for name, words in WANTED.items() if name not in left_out}


def _whole(text: str, field: str) -> int:
    number = typed_whole(text, 0, 999)
    if number is None:
        raise CountError(field, "no-typed-whole-number")
    return number
