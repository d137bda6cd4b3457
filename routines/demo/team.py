"""What colleagues at the demo school plan, suggest and write for each other."""

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class DemoPlanned:
    """A count in the week. `week` counts from the one that is planned now (0), `weekday` from Monday (0)."""

    routine: str
    teacher: str
    class_name: str
    week: int
    weekday: int


PLANNED: tuple[DemoPlanned, ...] = (
    # Two weeks ago, as it was taught then; one of them a day later than it was planned.
    DemoPlanned("fives-on-the-clock", "tran", "2 Otter", -2, 2),
    DemoPlanned("thirds-with-wholes", "lindqvist", "3 Mill", -2, 0),
    DemoPlanned("ten-and-some", "haddad", "K Willow", 0, 1),
    DemoPlanned("inch-by-inch", "haddad", "K Willow", 0, 4),
    DemoPlanned("half-hours", "okeefe", "1 Bridge", 0, 2),
    DemoPlanned("quarters-on-two-dimes", "marsh", "2 Heron", 0, 1),
    DemoPlanned("hundreds-over-the-thousand", "tran", "2 Otter", 0, 3),
    DemoPlanned("tens-by-six", "adeyemi", "3 Ferry", 0, 1),
    DemoPlanned("tickets-at-one-fifteen", "adeyemi", "3 Ferry", 0, 3),
    DemoPlanned("back-by-eights", "lindqvist", "3 Mill", 0, 0),
    DemoPlanned("nines-and-their-digits", "lindqvist", "3 Mill", 0, 3),
    DemoPlanned("shelves", "mori", "4 Quay", 0, 1),
    DemoPlanned("cintas", "ferrer", "4 Puente", 0, 2),
    DemoPlanned("cups-to-quarts", "bell", "5 Lantern", 0, 2),
    DemoPlanned("twentyfive-hundredths", "sorensen", "5 Harbor", 0, 4),
    DemoPlanned("opposites-in-the-fold", "kaya", "6 Beacon", 0, 0),
    DemoPlanned("ferries-every-forty", "adeyemi", "3 Ferry", 1, 0),
    DemoPlanned("crates-of-twelve", "mori", "4 Quay", 1, 2),
)


@dataclass(frozen=True, slots=True)
class DemoSuggestion:
    """To a teacher ("adeyemi"), the team of a grade ("grade 5") or of a band ("team K-1"). days: until when, from today."""

    routine: str
    by: str
    to: str
    why: str
    days: int = 0
    taken_by: str = ""


SUGGESTIONS: tuple[DemoSuggestion, ...] = (
    DemoSuggestion(
        "shelves",
        "calloway",
        "grade 5",
        "No measurement was taught in grade 5 yet. The inches drop by two under each foot: start it at 2 ft and ask why.",
        days=16,
    ),
    DemoSuggestion(
        "fives-off-the-five",
        "calloway",
        "adeyemi",
        "Yours saw the tens stay. Here the ones take turns, 3 and 8: what makes the difference?",
        days=9,
    ),
    DemoSuggestion(
        "twos-in-fives",
        "calloway",
        "team K-1",
        "Each row ends with a ten, and even the youngest can hear it.",
        taken_by="okeefe",
    ),
    DemoSuggestion(
        "thirds-with-wholes",
        "lindqvist",
        "mori",
        "Before your three fourths: every third count is a whole, and they say so themselves.",
    ),
)
