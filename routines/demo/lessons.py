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
    DemoLesson(
        "tens-by-six", "adeyemi", "3 Ferry", 2, 1, "as-planned",
        seen="The tens in the first column, already at 80. One pair explained it by five jumps.",
        stuck="After 98 the voice went thin; 104 was said by a few only.",
        next_step="Same step from 16, to see the tens move to another column.",
        sharing="team-coach",
        slips=((15, "94"),), voices=((1, 13, "strong"), (14, 17, "faded")),
        noticed=("straight down is thirty", "it is always even"), targets=((0, "seen"), (1, "not-yet")),
    ),
)  # fmt: skip

# Colleagues' notes: (routine, who, text).
NOTES: tuple[tuple[str, str, str], ...] = (
    (
        "tens-by-six",
        "lindqvist",
        "I wrote the first row with a gap after 44 and asked for the next one before we counted it.",
    ),
)
