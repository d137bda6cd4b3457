"""The table of slips, its expressions, and the counts they are tried on.

Source: tests/reference/common_slips.csv (its own sources are in tests/reference/SOURCES.md).
"""

import csv
from fractions import Fraction
from math import floor, gcd, lcm
from pathlib import Path

from routines.counting import Count, Grid, Style

TABLE = Path(__file__).parents[2] / "reference" / "common_slips.csv"
# Ratios take two counts.
NOT_OURS = {"R01", "R02"}
# The tables are learned in grade 3; before it W45 hears the same by twos, fives, tens and hundreds.
# Source: Common Core State Standards for Mathematics, 3.OA.C.7 and 2.NBT.A.2.
LATER = {"W20": {"grade_low": "3"}}

# How many of the engine's base units make the unit the table's values are in; one where the two agree.
IN_THE_TABLE = {"L06": 12, "L07": 32}


def rows() -> dict[str, dict[str, str]]:
    with TABLE.open(encoding="utf-8") as file:
        return {
            row["id"]: {**row, **LATER.get(row["id"], {})} for row in csv.DictReader(file) if row["id"] not in NOT_OURS
        }


def level(grade: str) -> int:
    return 0 if grade == "K" else int(grade)


def unit_of(identity: str, count: Count, places: int) -> Fraction:
    """The table's unit in the engine's; what it says of ones below zero is said of the last decimal place too."""
    if identity[0] == "N" and count.kind == "decimal":
        return Fraction(1, 10**places)
    return Fraction(IN_THE_TABLE.get(identity, 1))


def since_midnight(count: Count, n: int) -> Fraction:
    """The n-th count as the table takes it: in minutes since midnight on a clock.

    Source: the ruling that a bare 12-hour start from 7:00 to 11:59 is a.m., else p.m.
    """
    bare = count.kind == "clock" and count.style.clock == 12 and not count.style.halves
    return count.value(n) + (720 if bare and not 7 <= count.start % 1440 / 60 < 12 else 0)


def is_narrower(identity: str, count: Count, n: int) -> bool:
    """Where we foresee less than the table: far from what a class knows, and where parts that are alike stand there.

    W14: a hundred that is not there yet is not kept. W20: the tables end at the twelfth multiple; by twos, fives and tens
    a class counts to a hundred. F12: parts are unlike where neither name is at home in the denominator of the board, and
    only between two fractions. Common practice, no source.
    """
    before, step = count.value(n - 1), count.step
    if identity == "W14":
        return before < 100
    if identity == "W20":
        known = step <= 12 or set(str(step)[1:]) == {"0"} or step in (25, 50)
        last = 100 if step in (2, 5, 10) else 12 * step
        return not known or (before // step + 1) * step > max(last, 12 * step)
    if identity == "F12":
        board = lcm(count.scale, count.style.over)
        alike = count.style.fractions == "kept" and board in (count.start.denominator, step.denominator)
        return alike or before.denominator in (1, step.denominator)
    return False


def fires(row: dict[str, str], count: Count, places: int = 0) -> set[int]:
    """The counts at which the table's own expression is true of the count before and this one."""
    unit = unit_of(row["id"], count, places)
    names = {
        "F": Fraction,
        "floor": floor,
        "gcd": gcd,
        "abs": abs,
        "int": int,
        "s": count.step / unit,
        "start": count.start / unit,
        "d": lcm(count.scale, count.style.over),
        "p": places,
    }
    return {
        n
        for n in range(2, count.terms + 1)
        if eval(
            row["check_rule"],
            {**names, "a": since_midnight(count, n - 1) / unit, "b": since_midnight(count, n) / unit},
        )
        and not is_narrower(row["id"], count, n)
    }


def _counts(kind: str, starts: str, steps: str, terms: int = 30, **style: object) -> list[Count]:
    found = []
    for start in starts.split("; "):
        for step in steps.split("; "):
            below = kind not in ("whole", "decimal", "fraction", "clock") and step.startswith("-")
            found.append(
                Count.parse(kind=kind, start=start, step=step, terms=4 if below else terms, style=Style(**style))
            )
    return found


def counts_for(identity: str) -> list[tuple[Count, int]]:
    """Counts of the rule's area, up and down, with the decimal places they are written with."""
    area = identity[0]
    if area == "W":
        ups = _counts("whole", "0; 1; 7; 55; 97; 374; 580; 960; 3,940", "1; 2; 5; 6; 9; 10; 11; 50; 100", 70)
        downs = _counts("whole", "130; 624; 1,325; 7,230", "-1; -3; -10", 40)
        return [(count, 0) for count in ups + downs + _counts("whole", "7,200; 12,050", "-100", 40)]
    if area == "N":
        found = _counts("whole", "14; 2; 21; -47", "-1; -3; -6") + _counts("whole", "-45; -20; -7", "1; 3; 8")
        tenths = _counts("decimal", "1.5; 0.2; -1.8", "-0.4; -0.1; -0.3", 25) + _counts(
            "decimal", "-2.3", "0.1; 0.7", 40
        )
        hundredths = _counts("decimal", "0.03; -0.18", "-0.01; 0.01; -0.07", 40)
        decimals = [*((count, 1) for count in tenths), *((count, 2) for count in hundredths)]
        fractions = _counts("fraction", "3/4; -1; -2 1/4", "1/4; -1/2; -3/4", 20) if identity < "N06" else []
        tried = [*((count, 0) for count in found + fractions), *decimals]
        return [entry for entry in tried if min(entry[0].start, entry[0].value(entry[0].terms)) < 0]
    if area == "F":
        downs = _counts("fraction", "5; 6 2/3; 4 1/5", "-1/6; -1/5; -2/3", 8)
        ups = _counts("fraction", "0; 1/8; 2/3; 3/10; 5/6", "1/8; 2/3; 1/10; 3/4; 1/3; 2/6")
        simplest = _counts("fraction", "2 1/4; 1/2", "1/8; 2/3; -1/6", 4, fractions="simplified")
        return [(count, 0) for count in ups + downs + (simplest if identity == "F12" else [])]
    if area == "D":
        tenths = _counts("decimal", "0.0; 2.7; 3.4", "0.1; 0.3; -0.1; 1.2", 12)
        hundredths = _counts("decimal", "0.05; 5.90; 1.40", "0.01; 0.03; 0.2; -0.05", 25)
        downs = _counts("decimal", "6.2", "-0.1; -0.3", 15)
        mixed = _counts("decimal", "1.4; 2.0", "0.03; 0.007", 40)
        thousandths = _counts("decimal", "1.240; 0.985", "0.001", 40)
        return [
            *((count, 1) for count in tenths + downs if count.value(count.terms) >= 0),
            *((count, 2) for count in hundredths if count.value(count.terms) >= 0),
            *((count, 3 if count.scale == 1000 else 2) for count in mixed),
            *((count, 3) for count in thousandths),
        ]
    if area == "M":
        ups = _counts("money", "$0.05; $2.85; $1.83; $0.00", "5c; 10c; 25c; $0.35; $1.20")
        return [(count, 0) for count in ups + _counts("money", "$7.10; $3.00", "-5c; -35c; -25c")]
    if identity == "T09":
        return [(count, 0) for count in _counts("elapsed", "1 h 35 min; 2 h", "35 min; 20 min; 1 h 10 min")]
    if area == "T":
        return [
            (count, 0)
            for count in _counts(
                "clock", "10:50; 9:45 am; 11:35 pm; 8:10 pm; 12:15; 6:30", "5 min; 20 min; 25 min; -5 min", 60
            )
        ]
    pair = {
        "L01": ("2 ft 4 in; 0 ft 9 in", "4 in; 1 in; 9 in; 1 ft 2 in; -3 in"),
        "L04": ("2 lb 6 oz; 0 lb 9 oz", "3 oz; 1 oz; 1 lb 2 oz; -2 oz"),
        "L06": ("4 yd 1 ft; 2 yd", "1 ft; 2 ft; 1 yd 1 ft"),
        "L07": ("2 gal 2 qt; 5 gal", "1 qt; 3 qt; 2 gal 1 qt"),
        "L08": ("1 m 75 cm; 3 m", "15 cm; 40 cm; 1 m 5 cm"),
        "L09": ("3 kg; 2 kg 940 g", "40 g; 170 g; 1 kg 10 g"),
        "L10": ("1 L 700 mL; 2 L", "150 mL; 425 mL; 1 L 50 mL"),
    }
    same = {"L02": "L01", "L03": "L01", "L05": "L04"}
    starts, steps = pair[same.get(identity, identity)]
    kind = {"kg": "mass", "lb": "mass", "gal": "capacity", "L": "capacity"}.get(starts.split()[1].strip(";"), "length")
    return [(count, 0) for count in _counts(kind, starts, steps, 30, units="two")]


def grid_of(count: Count) -> Grid:
    return Grid(count, line_length=min(4, count.terms))


def _grid(kind: str, start: str, step: str, fill: str = "across", terms: int = 12, **style: object) -> Grid:
    return Grid(Count.parse(kind=kind, start=start, step=step, terms=terms, style=Style(**style)), 4, fill)


EXAMPLE_GRIDS = [
    _grid("whole", "15", "1", terms=24),
    _grid("whole", "96", "1"),
    _grid("whole", "374", "10"),
    _grid("whole", "1,325", "-50", terms=16),
    _grid("whole", "52", "6", fill="down"),
    _grid("whole", "62", "-1", terms=16),
    _grid("whole", "14", "-6", fill="across-up"),
    _grid("whole", "-23", "1"),
    _grid("whole", "480", "20"),
    _grid("decimal", "2.7", "0.1"),
    _grid("decimal", "5.90", "0.03", fill="down"),
    _grid("decimal", "6,2", "-0,1", decimal_mark=","),
    _grid("fraction", "1/8", "1/8"),
    _grid("fraction", "3 1/5", "-1/5"),
    _grid("fraction", "1/2", "1/3", shape="top-heavy"),
    _grid("money", "$2.85", "5c"),
    _grid("money", "$7.10", "-$0.05"),
    _grid("money", "0,85", "0,25", currency="EUR", decimal_mark=","),
    _grid("clock", "10:50", "20 min"),
    _grid("clock", "11:35 p.m.", "5 min"),
    _grid("clock", "23:35", "25 min", clock=24),
    _grid("clock", "8:10", "-5 min"),
    _grid("elapsed", "1 h 35 min", "35 min"),
    _grid("length", "1 ft 3 in", "9 in"),
    _grid("length", "9 ft 2 in", "-9 in"),
    _grid("mass", "2 lb 6 oz", "5 oz"),
    _grid("mass", "3 kg 10 g", "30 g"),
    _grid("capacity", "1 L 700 mL", "150 mL"),
    _grid("capacity", "2 gal 2 qt", "1 qt"),
]
