"""A term of lessons at the demo school, with reflections at different sharing levels and gaps that a coach would notice."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class DemoLesson:
    """Week counts from 0 at the start of the year, weekday from 0 (Monday). `slips` are (term, what was said);
    `voices` (first, last, how); `targets` (position in the plan, "seen" or "not-yet"). No outcome: nothing was written.
    """

    routine: str
    teacher: str
    class_name: str
    week: int
    weekday: int
    outcome: str = ""
    seen: str = ""
    stuck: str = ""
    next_step: str = ""
    to_next_year: str = ""
    sharing: str = "only-me"
    slips: tuple[tuple[int, str], ...] = ()
    voices: tuple[tuple[int, int, str], ...] = ()
    noticed: tuple[str, ...] = ()
    targets: tuple[tuple[int, str], ...] = ()
    practice: bool = False


LESSONS: tuple[DemoLesson, ...] = (
    # Kindergarten
    DemoLesson("ten-and-some", "haddad", "K Willow", 1, 1, "not-yet", seen="The tens at the end of each row.", stuck="Thirteen and thirty sound alike to many.", next_step="Two rows only, said slowly.", sharing="team-coach", slips=((13, "thirty"), (20, "nineteen-ten")), voices=((1, 12, "strong"), (13, 20, "faded")), noticed=("the end ones are tens",), targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("ten-and-some", "haddad", "K Willow", 3, 2, "as-planned", seen="Under 4 is 14 and then 24.", sharing="team", voices=((1, 30, "strong"),), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("back-from-twenty", "haddad", "K Willow", 6, 0, "not-yet", stuck="Going back over 13 and 12.", slips=((8, "thirty"),), voices=((1, 7, "strong"), (8, 12, "mixed")), targets=((0, "not-yet"),)),
    DemoLesson("tens-to-hundred", "haddad", "K Willow", 9, 3, "as-planned", seen="Cover the zeros and it is counting to ten.", sharing="team-coach", noticed=("they all have a zero", "the front goes 1, 2, 3"), targets=((0, "seen"), (1, "not-yet"))),
    # Grade 1
    DemoLesson("past-one-hundred", "okeefe", "1 Bridge", 1, 2, "as-planned", seen="Why we left a gap in front.", sharing="team-coach", slips=((17, "two hundred"),), voices=((1, 16, "strong"), (17, 18, "faded")), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("twos-in-fives", "quiroga", "1 Arroyo", 1, 4, "as-planned", seen="Each row ends with a ten.", sharing="team", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("cinco-en-cinco", "quiroga", "1 Arroyo", 3, 0, "not-yet", seen="Terminan en cinco o en cero.", stuck="Sesenta y setenta se confunden.", next_step="Hasta 50, con las manos.", sharing="team-coach", slips=((12, "setenta"),), voices=((1, 11, "strong"), (12, 14, "mixed")), targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("ten-more-below", "okeefe", "1 Bridge", 4, 1, "ready-for-more", seen="The four stays, and next door is forty more.", next_step="Elevens from 4.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("half-hours", "okeefe", "1 Bridge", 6, 3, "as-planned", seen="One side is o’clock, the other half past.", targets=((0, "seen"),)),
    DemoLesson("cinco-en-cinco", "quiroga", "1 Arroyo", 8, 2, "as-planned", seen="Abajo siempre son veinte más.", sharing="team", voices=((1, 20, "strong"),), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("half-hours", "quiroga", "1 Arroyo", 10, 1, "as-planned", sharing="team", targets=((0, "seen"), (1, "seen"))),
    # Grade 2
    DemoLesson("fives-off-the-five", "marsh", "2 Heron", 0, 3, "as-planned", seen="3, 8, 3, 8 in every row.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("fives-off-the-five", "tran", "2 Otter", 1, 1, "not-yet", stuck="Most wanted to say the fives they know.", slips=((4, "20"),), voices=((1, 3, "strong"), (4, 8, "mixed")), sharing="team", targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("hundreds-over-the-thousand", "tran", "2 Otter", 3, 4, "as-planned", stuck="1,040 was written as 1,400 first.", slips=((9, "1,400"),), sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("quarters-on-two-dimes", "marsh", "2 Heron", 4, 2, "as-planned", seen="The cents stay in their column.", sharing="team-coach", slips=((5, "$1.25"),), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("nickels-to-the-dollar", "tran", "2 Otter", 5, 0, "ready-for-more", seen="Ten dimes below: a dollar more.", next_step="Quarters from a nickel.", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("fives-on-the-clock", "tran", "2 Otter", 7, 2, "not-yet", stuck="9:60 was said by nearly all.", slips=((6, "9:60"),), voices=((1, 5, "strong"), (6, 7, "faded")), sharing="team-coach", targets=((0, "not-yet"), (1, "seen"))),
    DemoLesson("quarters-on-two-dimes", "tran", "2 Otter", 8, 3, "as-planned", sharing="team", targets=((0, "seen"),)),
    DemoLesson("hundreds-over-the-thousand", "marsh", "2 Heron", 9, 1, "as-planned", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("fives-on-the-clock", "tran", "2 Otter", 11, 2, "as-planned", seen="A row is half an hour.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    # Grade 3
    DemoLesson("tens-by-six", "adeyemi", "3 Ferry", 2, 1, "as-planned", seen="The tens in the first column, already at 80. One pair explained it by five jumps.", stuck="After 98 the voice went thin; 104 was said by a few only.", next_step="Same step from 16, to see the tens move to another column.", to_next_year="Write the first row with a gap and ask first.", sharing="team-coach", slips=((15, "94"),), voices=((1, 13, "strong"), (14, 17, "faded")), noticed=("straight down is thirty", "it is always even"), targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("tens-by-six-later", "lindqvist", "3 Mill", 3, 1, "as-planned", seen="The tens moved, and they said why.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("back-by-eights", "lindqvist", "3 Mill", 4, 3, "not-yet", stuck="Crossing 130 downward.", slips=((5, "126"), (9, "94")), sharing="team", voices=((1, 4, "strong"), (5, 10, "mixed")), targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("thirds-with-wholes", "adeyemi", "3 Ferry", 5, 2, "as-planned", seen="Every third one is a whole.", sharing="team-coach", slips=((4, "1/3"),), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("nines-and-their-digits", "adeyemi", "3 Ferry", 7, 0, "ready-for-more", seen="They wanted to know where the nine stops, and found 99.", next_step="Nineteens.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("ferries-every-forty", "lindqvist", "3 Mill", 8, 4, "as-planned", seen="10, 50, 30 comes again.", slips=((3, "7:90"),), sharing="team", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("tens-by-six", "lindqvist", "3 Mill", 9, 2, "as-planned", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("thirds-with-wholes", "lindqvist", "3 Mill", 11, 1, "not-yet", stuck="Past one whole.", slips=((4, "1/3"),), sharing="team-coach", targets=((0, "seen"), (1, "not-yet"))),
    # Grade 4
    DemoLesson("three-fourths", "mori", "4 Quay", 1, 0, "not-yet", stuck="3/4 and 3/4 was called 1 1/4.", slips=((2, "1 1/4"),), sharing="team-coach", targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("four-digit-fifties", "mori", "4 Quay", 2, 3, "as-planned", seen="25 and 75 swap, and down a column is 200 less.", sharing="team-coach", slips=((10, "925"),), voices=((1, 8, "strong"), (9, 11, "mixed")), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("crates-of-twelve", "ferrer", "4 Puente", 3, 2, "as-planned", sharing="team", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("tenths-past-one", "ferrer", "4 Puente", 5, 1, "not-yet", stuck="0.10 after 0.8.", slips=((5, "0.10"),), sharing="team-coach", targets=((0, "not-yet"), (1, "seen"))),
    DemoLesson("shelves", "mori", "4 Quay", 6, 2, "as-planned", seen="Ten inches are two less than a foot.", sharing="team-coach", slips=((3, "3 ft"),), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("cintas", "ferrer", "4 Puente", 7, 3, "as-planned", seen="Cada cuatro cintas hay metros enteros.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("three-fourths", "ferrer", "4 Puente", 9, 0, "ready-for-more", seen="The wholes and why 1 and 2 are skipped.", sharing="team", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("practice-times", "mori", "4 Quay", 10, 4, "as-planned", targets=((0, "seen"),)),
    DemoLesson("four-digit-fifties", "ferrer", "4 Puente", 11, 3, "as-planned", practice=True),
    # Grade 5: no measurement yet, which a coach would notice
    DemoLesson("twentyfives", "bell", "5 Lantern", 1, 3, "as-planned", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("back-by-halves-of-five", "sorensen", "5 Harbor", 3, 1, "not-yet", stuck="Opening a whole into fifths.", slips=((2, "7 2/5"),), sharing="team-coach", targets=((0, "seen"), (1, "not-yet"))),
    DemoLesson("twentyfive-hundredths", "bell", "5 Lantern", 5, 4, "as-planned", seen="It is counting by fourths.", sharing="team", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("back-by-halves-of-five", "sorensen", "5 Harbor", 8, 1, "as-planned", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("twentyfive-hundredths", "sorensen", "5 Harbor", 10, 2, "ready-for-more", targets=((0, "seen"), (1, "seen"))),
    # Grade 6: no ratios at all
    DemoLesson("down-through-zero", "kaya", "6 Beacon", 2, 2, "as-planned", seen="The multiples of 3 go on below zero.", sharing="team-coach", slips=((8, "3"),), targets=((0, "seen"), (1, "seen"))),
    DemoLesson("opposites-in-the-fold", "kaya", "6 Beacon", 4, 4, "ready-for-more", seen="They asked which starts give a mirror.", sharing="team-coach", targets=((0, "seen"), (1, "seen"))),
    DemoLesson("thousandths-back", "kaya", "6 Beacon", 9, 0, "as-planned", targets=((0, "seen"), (1, "not-yet"))),
)  # fmt: skip

# Colleagues' notes: (routine, who, text).
NOTES: tuple[tuple[str, str, str], ...] = (
    ("tens-by-six", "lindqvist", "I wrote the first row with a gap after 44 and asked for the next one before we counted it."),
    ("three-fourths", "ferrer", "Fraction strips under the board helped: four strips of three fourths make three."),
    ("cinco-en-cinco", "okeefe", "Works in English, too. Sixty and seventy were no trouble there."),
    ("shelves", "calloway", "Ask for the inches before the feet. The drop by two is easy to hear."),
    ("opposites-in-the-fold", "bell", "We tried it at the end of grade 5 with a number line on the floor."),
)
