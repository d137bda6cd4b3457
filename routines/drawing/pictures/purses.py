"""The coins and notes of a currency, and an amount in them.

Source: from memory, common knowledge: what is in everyday use, with coin diameters in millimetres (rounded to halves);
nobody here has read them off a published table. A currency that is not listed is not drawn in coins. The US half dollar
and the dollar coin are seldom in a purse: the half dollar is used only where the count steps by it, the dollar is a note.
"""

from dataclasses import dataclass

NOTE = 0.0


@dataclass(frozen=True, slots=True)
class Denomination:
    """value: in the currency's smallest unit. across: a coin's diameter in mm, NOTE for a note. warm: copper or brass."""

    value: int
    across: float
    warm: bool = False
    seldom: bool = False

    @property
    def is_note(self) -> bool:
        return self.across == NOTE


@dataclass(frozen=True, slots=True)
class Purse:
    """What a currency pays with, and how its own coins and notes write their value."""

    unit: int
    small: str
    main: str
    denominations: tuple[Denomination, ...]

    def face(self, value: int) -> str:
        """The value as written on a coin or note: 25¢, $5."""
        return self.main.format(value // self.unit) if value >= self.unit else self.small.format(value)


def _coins(*coins: tuple[int, float], warm: tuple[int, ...] = ()) -> tuple[Denomination, ...]:
    return tuple(Denomination(value, across, value in warm) for value, across in coins)


def _notes(*values: int) -> tuple[Denomination, ...]:
    return tuple(Denomination(value, NOTE) for value in values)


_HALF_DOLLAR = Denomination(50, 30.5, seldom=True)
PURSES = {
    "USD": Purse(
        100, "{}¢", "${}",
        (*_coins((1, 19), (5, 21), (10, 18), (25, 24.5), warm=(1,)), _HALF_DOLLAR, *_notes(100, 500, 1000, 2000)),
    ),
    "CAD": Purse(
        100, "{}¢", "${}",
        (*_coins((5, 21), (10, 18), (25, 24), (100, 26.5), (200, 28), warm=(100, 200)), *_notes(500, 1000, 2000, 5000)),
    ),
    "AUD": Purse(
        100, "{}c", "${}",
        (
            *_coins((5, 19.5), (10, 23.5), (20, 28.5), (50, 31.5), (100, 25), (200, 20.5), warm=(100, 200)),
            *_notes(500, 1000, 2000, 5000),
        ),
    ),
    "NZD": Purse(
        100, "{}c", "${}",
        (*_coins((10, 20.5), (20, 21.5), (50, 25), (100, 23), (200, 26.5), warm=(10, 100, 200)), *_notes(500, 1000, 2000, 5000)),
    ),
    "EUR": Purse(
        100, "{}c", "€{}",
        (
            *_coins((1, 16.5), (2, 18.5), (5, 21.5), (10, 19.5), (20, 22.5), (50, 24.5), warm=(1, 2, 5, 10, 20, 50)),
            *_coins((100, 23.5), (200, 25.5)),
            *_notes(500, 1000, 2000, 5000),
        ),
    ),
    "GBP": Purse(
        100, "{}p", "£{}",
        (
            *_coins((1, 20.5), (2, 26), (5, 18), (10, 24.5), (20, 21.5), (50, 27.5), (100, 23.5), (200, 28.5), warm=(1, 2)),
            *_notes(500, 1000, 2000, 5000),
        ),
    ),
    "MXN": Purse(
        100, "{}¢", "${}",
        (
            *_coins((50, 17), (100, 21), (200, 23), (500, 25.5), (1000, 28), warm=(100, 200, 500)),
            *_notes(2000, 5000, 10000, 20000, 50000),
        ),
    ),
    "JPY": Purse(
        1, "{}", "¥{}",
        (*_coins((1, 20), (5, 22), (10, 23.5), (50, 21), (100, 22.5), (500, 26.5), warm=(5, 10)), *_notes(1000, 5000, 10000)),
    ),
}  # fmt: skip


def change(purse: Purse, amount: int, step: int) -> list[tuple[Denomination, int]] | None:
    """An amount in as few of the largest pieces as they come, each with how many; None where it cannot be paid exactly."""
    usable = [piece for piece in purse.denominations if not piece.seldom or piece.value == abs(step)]
    rest, paid = amount, []
    for piece in sorted(usable, key=lambda piece: -piece.value):
        many, rest = divmod(rest, piece.value)
        if many:
            paid.append((piece, many))
    return paid if rest == 0 else None
