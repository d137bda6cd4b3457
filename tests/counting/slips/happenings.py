"""What happens in the numbers where each rule fires, in the words of the rulings (and a few of the table's own).

Read off the columns `when_it_happens` and `why` of tests/reference/common_slips.csv, and of the rules beyond it.
"""

_OF = {
    "a ten crossed": "W01 W02 W03 W04 W10 W11 W19 W47 W21 W23 W24 W30 W31 W42 N06 N07 C01 C12",
    "a hundred crossed": "W08 W09 W10 W12 W14 W15 W22 W25 W26 W28 W29 W32 W44 L16 C02 C10 C13",
    "a thousand crossed": "W13 W16 W17 W27 W41 W48 C03",
    "a whole crossed": "F04 F05 F06 F11 F13 F14 F15 F16 F17 D01 D02 D03 D04 D05 D09 D10 D11 A03 C04 C06 U06",
    "a unit crossed": (
        "C05 M01 M06 M07 M08 T01 T02 T03 T08 T09 T10 T11 T12 T13 T14 L01 L02 L04 L05 L06 L07 L08 L10 L11 L12 L13 L14"
        " U01 U02 U03 U04 U05 A01 A02 L17 T15 T16"
    ),
    "a zero inside": "W16 W18 W40 M02 T07 L09 Z02 Z03 Z04 Z05 Z06 Z07 Z08",
    "digits swapped": "W07 Z01",
    "a jump by ones": "W36 F07 D08 J01 J02 C09",
    "a jump by a friendlier step": "W09 W15 W49 W17 W20 W26 W37 W38 W45 M05 J03 C08 C09 T17",
    "direction lost": "W34 N04 N08 N09 N13 J04 J05",
    "sign lost": "N05 N08 N13 U07",
    "zero crossed": "N01 N02 N03 N08 N10 N11 N12 N13",
    "teen and ty": "W05 W06 W33 W35",
    "the bottom number is counted": "F02",
    "add across": "F01 F12 F19",
    "inches as tenths": "L03",
}
HAPPENINGS = tuple(_OF)


def happenings_of(rule: str) -> set[str]:
    return {what for what, rules in _OF.items() if rule in rules.split()}
