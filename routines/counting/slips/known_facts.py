"""The multiples a class knows by heart: those of the tables, of tens and hundreds, and of what fills a hundred.

Common practice, no source.
"""

from fractions import Fraction

LAST_FACT = 12
# Twos, fives and tens are counted to a hundred long before the tables are learned.
COUNTED_EARLY, AS_FAR_AS = (2, 5, 10), 100


def knows_multiples_of(size: Fraction) -> bool:
    """Whether the multiples of a whole number are known by heart.

    >>> [number for number in (7, 12, 17, 25, 30, 35, 370) if knows_multiples_of(Fraction(number))]
    [7, 12, 25, 30]
    """
    if size.denominator > 1 or size < 1:
        return False
    digits = str(size).rstrip("0")
    return size <= LAST_FACT or len(digits) == 1 or 100 % size == 0


def is_known_multiple(value: Fraction, size: Fraction) -> bool:
    """Whether a multiple of `size` is one of those known: up to the twelfth, and to a hundred by twos, fives and tens.

    >>> is_known_multiple(Fraction(36), Fraction(3)), is_known_multiple(Fraction(1002), Fraction(3))
    (True, False)
    """
    last = max(LAST_FACT * size, Fraction(AS_FAR_AS if size in COUNTED_EARLY else 0))
    return knows_multiples_of(size) and value <= last and value % size == 0
