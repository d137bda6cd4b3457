"""Reads the small QR codes that the server prints for a phone's camera, without the library that made them.

Of ISO/IEC 18004 what such a code needs: versions 1 and 2, whose data stand in one block, in byte mode, undamaged.
"""

MASKS = (
    lambda row, column: (row + column) % 2,
    lambda row, column: row % 2,
    lambda row, column: column % 3,
    lambda row, column: (row + column) % 3,
    lambda row, column: (row // 2 + column // 3) % 2,
    lambda row, column: row * column % 2 + row * column % 3,
    lambda row, column: (row * column % 2 + row * column % 3) % 2,
    lambda row, column: ((row + column) % 2 + row * column % 3) % 2,
)
"""A module is turned over where it gives 0 (ISO/IEC 18004, data mask patterns)."""

MASK_OF_FORMAT = 0b101
"""The three bits of the mask are themselves masked with the third to fifth of 101010000010010."""


def modules_of(printed: list[str]) -> list[list[int]]:
    """Rows of 0 and 1 (dark) without the quiet zone, of lines in which a block is light and a space is dark, two rows each."""
    rows = []
    for line in printed:
        rows.append([int(sign in " ▄") for sign in line])
        rows.append([int(sign in " ▀") for sign in line])
    top = next(at for at, row in enumerate(rows) if any(row))
    left = rows[top].index(1)
    size = len(rows[top]) - 2 * left  # two corners stand in the top row, from end to end
    return [row[left : left + size] for row in rows[top : top + size]]


def read_qr(modules: list[list[int]]) -> str:
    size = len(modules)
    assert size in (21, 25), size
    mask = MASKS[(modules[8][2] << 2 | modules[8][3] << 1 | modules[8][4]) ^ MASK_OF_FORMAT]
    bits = [modules[row][column] ^ (mask(row, column) == 0) for row, column in _in_reading_order(size)]
    assert _number(bits[:4]) == 0b0100, "not in byte mode"
    length = _number(bits[4:12])
    return bytes(_number(bits[at : at + 8]) for at in range(12, 12 + 8 * length, 8)).decode()


def _in_reading_order(size: int):
    """Up and down in columns of two from the right, past what is no data."""
    upward = True
    for right in [*range(size - 1, 6, -2), 5, 3, 1]:
        for row in reversed(range(size)) if upward else range(size):
            for column in (right, right - 1):
                if not _is_no_data(row, column, size):
                    yield row, column
        upward = not upward


def _is_no_data(row: int, column: int, size: int) -> bool:
    """The three corners with what surrounds them, the two lines of the rhythm, and the small square of version 2."""
    corner = (row < 9 and column < 9) or (row < 9 and column >= size - 8) or (row >= size - 8 and column < 9)
    square = size == 25 and 16 <= row <= 20 and 16 <= column <= 20
    return corner or square or row == 6 or column == 6


def _number(bits: list[int]) -> int:
    return int("".join(map(str, map(int, bits))), 2)
