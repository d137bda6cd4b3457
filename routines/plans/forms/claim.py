"""A claim from the floor, chosen from lists: ends in, goes up by, lands on, how many in each."""

from collections.abc import Mapping
from fractions import Fraction
from typing import Any

from django import forms
from django.utils.translation import gettext
from django.utils.translation import gettext_lazy as _

from accounts.offered import offer_choices
from accounts.translated import Translated
from accounts.typed_numbers import typed_whole
from routines.counting import Claim, CountError, Grid
from routines.counting.count import LARGEST_VALUE, MOST_TERMS
from routines.errors import say
from routines.plans.forms.fields import choice, short_text
from routines.plans.forms.marks import in_mark, turned

SAYINGS = {
    "ends": _("ends in"),
    "jump": _("goes up by"),
    "lands": _("lands on"),
    "many": _("how many in each"),
    "rest": _("is so much more than a multiple"),
}
WHERE = {
    "count": _("all along the count"),
    "row": _("in each row"),
    "column": _("in each column"),
}
DIRECTIONS = {
    "count": _("from each count to the next"),
    "right": _("to the right"),
    "down": _("down a column"),
    "down-right": _("down and right"),
    "down-left": _("down and left"),
}
LIES = {
    "": _("somewhere"),
    "row": _("in one row"),
    "column": _("in one column"),
    "rows": _("as whole rows"),
    "columns": _("as whole columns"),
    "down-right": _("on a diagonal down right"),
    "down-left": _("on a diagonal down left"),
}
DIGIT_PLACES = {"0": _("ones"), "1": _("tens"), "2": _("hundreds"), "-1": _("tenths"), "-2": _("hundredths")}


class ClaimForm(forms.Form):
    """`prefix` keeps these fields apart from the plan's own. `claim` is there once the form is valid."""

    prefix = "claim"

    saying = choice(_("What they say"), SAYINGS.items())
    reading = choice(_("Which digit or part"), [], required=False)
    digits = short_text(_("Is"), 60, placeholder=_("always the same"), size=12)
    where = choice(_("Where"), WHERE.items(), required=False)
    line = short_text(_("Only line"), 3, placeholder=_("all"), size=3)
    direction = choice(_("Direction"), DIRECTIONS.items(), required=False)
    jump = short_text(_("Goes up by"), 40, placeholder="30", size=6)
    multiple = short_text(_("Multiples of"), 40, placeholder="10", size=6)
    lie = choice(_("They stand"), LIES.items(), required=False)
    many = short_text(_("So many in each"), 60, placeholder="1, 2, 2", size=8)
    rest = short_text(_("So much more"), 40, placeholder=_("the same"), size=8)

    claim: Claim

    def __init__(self, posted: Mapping[str, str], grid: Grid, *, is_asked: bool = True) -> None:
        asked = {name: text for name, text in posted.items() if name.startswith("claim-")}
        self.mark, kind = grid.count.style.decimal_mark, grid.count.kind
        typed_in = asked.get("claim-mark", "") or self.mark
        for name in ("claim-jump", "claim-multiple", "claim-rest"):
            if name in asked:
                asked[name] = turned(asked[name], typed_in, self.mark, kind)
        chosen = {"claim-saying": "ends", "claim-where": "column", "claim-direction": "down", **asked}
        if is_asked:
            super().__init__(chosen)
        else:  # the fields as chosen so far, with nothing to say about what is still empty
            super().__init__(initial={name.removeprefix("claim-"): text for name, text in chosen.items()})
        self.grid = grid
        self.sayings = sayings_of(grid)
        offer_choices(self, "saying", self.sayings.items())
        offer_choices(self, "reading", readings_of(grid))
        for field in self.fields.values():
            field.widget.attrs["class"] = "blank"

    @property
    def chosen_saying(self) -> str:
        asked = self["saying"].value()
        return asked if asked in self.sayings else "ends"

    def asked_fields(self) -> list[str]:
        """The fields that this kind of claim needs, in the order of its sentence."""
        return {
            "ends": ["reading", "digits", "where", "line"],
            "jump": ["jump", "direction"],
            "lands": ["multiple", "lie", "line"],
            "many": ["many", "multiple"],
            "rest": ["rest", "multiple", "where", "line"],
        }[self.chosen_saying]

    def asked(self) -> list[forms.BoundField]:
        return [self[name] for name in self.asked_fields()]

    def clean(self) -> dict[str, Any]:
        super().clean()
        cleaned = self.cleaned_data
        if not self.errors:
            try:
                self.claim = getattr(self, f"_{cleaned['saying']}")(cleaned)
            except CountError as error:
                self.refuse(error)
        return cleaned

    def refuse(self, error: CountError) -> None:
        """Say what the engine refuses beside the field it is about."""
        self.add_error(self._field_of(error.field), say(error))

    def _field_of(self, field: str) -> str:
        """The field of this form that a parameter of the claim was read from."""
        names = {"blocks": "digits", "block": "many", "difference": "jump", "modulus": "multiple", "lines": "line"}
        names |= {"place": "reading", "part": "reading", "along": "where"}
        asked = self.asked_fields()
        name = names.get(field, field)
        return name if name in asked else asked[0]

    def _ends(self, cleaned: dict[str, Any]) -> Claim:
        kind, _, name = cleaned["reading"].partition(":")
        place = {"place": int(name)} if kind == "place" else {"part": name}
        block = _whole_numbers(cleaned["digits"], "digits") if cleaned["digits"].strip() else None
        return Claim.from_dict({"family": "digit", **place, **self._along(cleaned, block)})

    def _jump(self, cleaned: dict[str, Any]) -> Claim:
        difference = self._jump_size(cleaned["jump"])
        if cleaned["direction"] == "count":
            return Claim.from_dict({"family": "step", "difference": difference})
        direction = cleaned["direction"] or "down"
        return Claim.from_dict({"family": "neighbour", "direction": direction, "difference": difference})

    def _lands(self, cleaned: dict[str, Any]) -> Claim:
        line, lie = self._line(cleaned["line"]), cleaned["lie"]
        lines = [line] if lie in ("row", "column") and line is not None else None
        multiple = self._value(cleaned["multiple"])
        return Claim.from_dict({"family": "landmarks", "multiple": multiple, "lie": lie or None, "lines": lines})

    def _many(self, cleaned: dict[str, Any]) -> Claim:
        block = _whole_numbers(cleaned["many"], "many")
        return Claim.from_dict({"family": "how-many", "multiple": self._value(cleaned["multiple"]), "block": block})

    def _rest(self, cleaned: dict[str, Any]) -> Claim:
        rest = [self._value(cleaned["rest"], "rest")] if cleaned["rest"].strip() else None
        modulus = self._value(cleaned["multiple"])
        return Claim.from_dict({"family": "remainder", "modulus": modulus, **self._along(cleaned, rest)})

    def _along(self, cleaned: dict[str, Any], block: list[int] | list[Fraction] | None) -> dict[str, Any]:
        """Where it is said. Without a block each line keeps one of its own; one block said of every line is each line's."""
        where, line = cleaned["where"] or "count", self._line(cleaned["line"])
        if where == "count":
            line = None
        lines = {} if line is None else {"lines": [line]}
        if block is None:
            return {"along": where, "length": 1, **lines}
        times = 1 if line is not None else len(self.grid.lines(where))
        return {"along": where, "blocks": [block] * times, **lines}

    def _line(self, text: str) -> int | None:
        if not text.strip():
            return None
        line = typed_whole(text, 1, MOST_TERMS)
        if line is None:
            raise CountError("line", "no-line")
        return line

    def _value(self, text: str, field: str = "multiple") -> Fraction:
        try:
            return self.grid.count.read(self._number(text))
        except CountError as error:
            raise error.on(field) from error

    def _number(self, text: str) -> str:
        return in_mark(text.strip(), self.mark, self.grid.count.kind)

    def _jump_size(self, text: str) -> Fraction:
        """A jump; on a clock that is a length of time."""
        count = self.grid.count
        try:
            return type(count.form).read_step(self._number(text), count.style).value
        except CountError as error:
            raise error.on("jump") from error


def sayings_of(grid: Grid) -> dict[str, Translated]:
    """What can be said of this kind of count: on a clock the same minutes come back, and nobody asks how many in each."""
    left_out = {"many"} if grid.count.wrap is not None else set()
    return {name: words for name, words in SAYINGS.items() if name not in left_out}


def readings_of(grid: Grid) -> list[tuple[str, str]]:
    """The digits and parts that can be read off this count's writing."""
    parts = grid.count.part_names()
    if parts:
        return [(f"part:{name}", name) for name in parts]
    usual = (0, 1, 2) if grid.count.kind in ("whole", "money") else (-1, 0, 1, -2)
    places = [place for place in usual if place >= 0 or _is_written(place, grid)]
    return [(f"place:{place}", gettext("%(place)s digit") % {"place": DIGIT_PLACES[str(place)]}) for place in places]


def _is_written(place: int, grid: Grid) -> bool:
    """Whether a decimal place stands in any count of the grid."""
    return any(grid.count.span(n, place=place) is not None for n in range(1, grid.terms + 1))


def _whole_numbers(text: str, field: str) -> list[int]:
    numbers = [typed_whole(piece, 0, LARGEST_VALUE) for piece in text.replace(",", " ").split()]
    read = [number for number in numbers if number is not None]
    if not read or len(read) < len(numbers):
        raise CountError(field, "no-whole-numbers")
    return read
