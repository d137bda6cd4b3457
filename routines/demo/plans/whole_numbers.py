"""Whole-number counts of the demo school, K to 5."""

from routines.demo.notation import DemoPlan, say, slip, stop, target, then, written

PLANS = [
    DemoPlan(
        key="tens-by-six",
        owner="adeyemi",
        plan=written(
            "Tens come home every fifth time",
            grade="3",
            area="whole",
            start="20",
            step="6",
            terms=25,
            line=5,
            landmark="10",
            standards=("3.OA.D.9",),
            targets=(
                target("landmarks", multiple="10", every=5, first=1, lie="column", lines=[1]),
                target("digit-run", place=1, along="column", change=3),
            ),
            expected=(
                say(
                    "easy",
                    "It goes up by 6 every time.",
                    "Show me one jump of 6. Does it work from the end of a row, too?",
                ),
                say("deeper", "Going straight down is 30 more.", "Where can you see five sixes on the way down?"),
                say(
                    "not-for-long",
                    "The tens digit goes up by 3 when you go down.",
                    "Let us write the next row. What does the tens digit say now?",
                ),
                say(
                    "not-so",
                    "We are saying the six times table.",
                    "Where would 18 be? Look around the 20 and tell your partner.",
                ),
                slip(5, "34", "Show the jump from 38 with your hands. Which ten do we pass?"),
                slip(15, "94", "We left 98. What comes after ninety-nine?"),
            ),
            stops=(
                stop(
                    10,
                    "What happens when you look straight down a column?",
                    "30 more, in every column.",
                    "5 jumps of 6 make 30",
                    "20, 50: three tens more",
                ),
                stop(
                    15,
                    "What will we write under 80? How can you know without counting?",
                    "110.",
                    "80 and 30 more",
                    "104 and one jump of 6",
                ),
                stop(
                    25,
                    "If we went on, would we write 200?",
                    "Yes, it is the 31st count.",
                    "170 and 30 more is 200",
                    "6 jumps of 6 from 164 make 200",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Same column of tens, smaller numbers: start at 0.", "0", "6", 25, 5),
                then("as-planned", "Start off the tens: do they still line up, and in which column?", "16", "6", 25, 5),
                then("ready-for-more", "Seven in a line lets the tens slide. Where do they go?", "20", "6", 28, 7),
            ),
        ),
    ),
]
