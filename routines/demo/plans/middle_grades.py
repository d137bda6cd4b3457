"""Whole-number counts for grades 2 to 5."""

from routines.demo.notation import DemoPlan, say, slip, stop, target, then, written
from routines.models.plan_document import Story

PLANS = [
    DemoPlan(
        key="fives-off-the-five",
        owner="marsh",
        plan=written(
            "Fives that start on three",
            grade="2",
            area="whole",
            start="3",
            step="5",
            terms=24,
            line=6,
            landmark="",
            standards=("2.NBT.A.2",),
            targets=(
                target("digit", place=0, along="count", blocks=[[3, 8]]),
                target("neighbour", direction="down", difference="30"),
            ),
            expected=(
                say("easy", "They end in 3, 8, 3, 8.", "Read one row aloud. Does the next row begin the same way?"),
                say(
                    "deeper", "Straight down is 30 more, and the ending stays.", "How many fives fit between 8 and 38?"
                ),
                say(
                    "not-so",
                    "It is the same as counting by fives.",
                    "Say the fives you know. Which of ours is among them?",
                ),
                slip(4, "20", "Where did the 3 or 8 go? Show the jump from 13."),
                slip(20, "108", "We are at 93. How far is it to one hundred?"),
            ),
            stops=(
                stop(
                    8,
                    "What can you say about the endings?",
                    "3, 8, 3, 8.",
                    "two fives make ten, so the ending comes back",
                    "8 and 5 is 13",
                ),
                stop(13, "What will we write under 38?", "68.", "8, 38: 30 more", "6 jumps of 5 make 30"),
                stop(
                    24,
                    "Will we ever say 145?",
                    "No. We say 143 and 148.",
                    "145 ends in 5, ours end in 3 or 8",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Fives from 5 with the same rows, to hear 5, 0, 5, 0.", "5", "5", 24, 6),
                then("as-planned", "Fives from 4: what will the endings be?", "4", "5", 24, 6),
                then("ready-for-more", "Fives back from 118.", "118", "-5", 24, 6),
            ),
        ),
    ),
    DemoPlan(
        key="hundreds-over-the-thousand",
        owner="tran",
        plan=written(
            "Hundreds over the thousand",
            grade="2",
            area="whole",
            start="240",
            step="100",
            terms=12,
            line=4,
            landmark="",
            standards=("2.NBT.A.2", "2.NBT.B.8"),
            targets=(
                target("digit", place=1, along="count", blocks=[[4]]),
                target("neighbour", direction="down", difference="400"),
            ),
            expected=(
                say("easy", "The 40 stays the same.", "Read only the last two digits of each. What changes then?"),
                say(
                    "deeper",
                    "Down a column is four hundred more.",
                    "Say the four hundreds from 340 down to the next row.",
                ),
                say(
                    "not-for-long",
                    "Only the first digit changes.",
                    "Let us write the one after 940. How many digits are new?",
                ),
                slip(9, "ten hundred forty", "What do we call ten hundreds?"),
                slip(9, "1,400", "Where do the 40 and the empty hundreds stand?"),
                slip(10, "2,040", "We are at 1,040. Is the next one a hundred more or a thousand more?"),
            ),
            stops=(
                stop(5, "What stays and what changes?", "The 40 stays, the hundreds go up by one.", "240, 340, 440"),
                stop(
                    8,
                    "What comes after 940, and how do we write it?",
                    "1,040.",
                    "9 hundreds and 1 more are ten hundreds",
                    "640 and 400 is 1,040",
                ),
                stop(12, "Would we say 2,000?", "No. Each one keeps its 40.", "1,940, then 2,040", think=30),
            ),
            next_counts=(
                then("not-yet", "Hundreds from 200, to hear the thousand alone.", "200", "100", 12, 4),
                then("as-planned", "Hundreds back from 1,340.", "1340", "-100", 12, 4),
                then("ready-for-more", "By 110 from 240: now two digits move.", "240", "110", 12, 4),
            ),
        ),
    ),
    DemoPlan(
        key="back-by-eights",
        owner="lindqvist",
        plan=written(
            "Forty less next door",
            grade="3",
            area="whole",
            start="160",
            step="-8",
            terms=20,
            line=5,
            fill="down",
            landmark="10",
            standards=("3.NBT.A.2",),
            targets=(
                target("neighbour", direction="right", difference="-40"),
                target("digit", place=0, along="row", blocks=[[0], [2], [4], [6], [8]]),
            ),
            expected=(
                say("easy", "Each one is 8 less.", "Show the jump from 128. Which ten do we cross?"),
                say("deeper", "Across a row it is always 40 less.", "Why 40? Count the eights on the way around."),
                say("not-so", "We will land on 100.", "Look at the row of zeros. Which numbers does it meet?"),
                slip(5, "126", "From 136, take 6 to the ten and then two more."),
                slip(9, "94", "Stand on 104. How far is it down to one hundred?"),
            ),
            stops=(
                stop(
                    7,
                    "What do you see when you look across a row?",
                    "40 less, and the ending stays.",
                    "5 jumps of 8 make 40",
                    "160, 120",
                ),
                stop(12, "What comes beside 104?", "64.", "104 less 40", "72 and one jump of 8 back"),
                stop(
                    20,
                    "If we went on, would we say 0?",
                    "Yes, it is the next count.",
                    "8 less 8",
                    "40 less 40",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Eights up from 0, to hear the row of zeros.", "0", "8", 20, 5, fill="down"),
                then("as-planned", "Nines back from 180: what will be next door?", "180", "-9", 20, 5, fill="down"),
                then("ready-for-more", "Eights back from 163: no tens to lean on.", "163", "-8", 20, 5, fill="down"),
            ),
        ),
    ),
    DemoPlan(
        key="nines-and-their-digits",
        owner="adeyemi",
        plan=written(
            "Nines, and what their digits add to",
            grade="3",
            area="whole",
            start="9",
            step="9",
            terms=10,
            line=5,
            landmark="",
            standards=("3.OA.D.9", "3.OA.C.7"),
            targets=(
                target("digit-sum", along="count", blocks=[[9]]),
                target("digit-run", place=0, along="count", change=-1),
            ),
            expected=(
                say("easy", "The ones go down: 9, 8, 7, 6.", "What do the tens do at the same time?"),
                say("deeper", "Nine more is ten more and one back.", "Show it from 36 with two moves of your hand."),
                say(
                    "not-for-long", "The two digits always add to 9.", "What is the next one after 90? Add its digits."
                ),
                slip(8, "73", "Stand on 63. Ten more, then one back."),
            ),
            stops=(
                stop(
                    4,
                    "What do the ones digits do, and what do the tens do?",
                    "Ones go down by 1, tens go up by 1.",
                    "9 more is 10 more and 1 back",
                ),
                stop(8, "Add the digits of each. What do you notice?", "They add to 9 each time.", "7 and 2, 6 and 3"),
                stop(
                    10,
                    "Will the digits add to 9 in the next one, too?",
                    "No. 99 gives 18.",
                    "90 and 9 more is 99",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Nines beside tens: 10, 20, 30.", "10", "10", 10, 5),
                then("as-planned", "Nines from 9 for 20 counts: where does the sum break?", "9", "9", 20, 5),
                then("ready-for-more", "Nineteens: two tens more and one back.", "19", "19", 10, 5),
            ),
        ),
    ),
    DemoPlan(
        key="four-digit-fifties",
        owner="mori",
        plan=written(
            "Back by fifty over the thousand",
            grade="4",
            area="whole",
            start="1,425",
            step="-50",
            terms=16,
            line=4,
            landmark="",
            standards=("4.NBT.B.4", "4.OA.C.5"),
            targets=(
                target("neighbour", direction="down", difference="-200"),
                target("remainder", modulus="50", along="count", blocks=[["25"]]),
            ),
            expected=(
                say("easy", "They end in 25, 75, 25, 75.", "Why do only two endings come? Look at two jumps together."),
                say("deeper", "Down a column is 200 less.", "Which four jumps make that 200?"),
                say("not-for-long", "They always have four digits.", "Let us write the one after 1,025."),
                say("not-so", "We will land on 500.", "What are the endings? Where would 500 have to stand?"),
                slip(10, "925", "We are at 1,025. How far is it to one thousand?"),
            ),
            stops=(
                stop(5, "What is under 1,425, and how far did we come?", "1,225: 200 less.", "4 jumps of 50 make 200"),
                stop(9, "What will the next two counts be?", "975 and 925.", "1,025 less 50", "1,175 less 200 is 975"),
                stop(
                    16,
                    "If we went on, would we say 475?",
                    "Yes, it is the 20th count.",
                    "675 less 200 is 475",
                    "4 jumps of 50 from 675",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Fifties back from 1,400, to hear the hundreds.", "1,400", "-50", 16, 4),
                then("as-planned", "Fifties up from 775, over the thousand the other way.", "775", "50", 16, 4),
                then("ready-for-more", "Back by 150: which endings come now?", "1,425", "-150", 9, 3),
            ),
        ),
    ),
    DemoPlan(
        key="crates-of-twelve",
        owner="ferrer",
        plan=written(
            "Crates of twelve on the quay",
            grade="4",
            area="whole",
            start="12",
            step="12",
            terms=20,
            line=5,
            landmark="10",
            story=Story("Each crate on the quay holds 12 lemons. How many crates make 180 lemons?", "crate", "180"),
            standards=("4.OA.B.4", "4.OA.C.5"),
            targets=(
                target("landmarks", multiple="10", every=5, first=5, lie="column", lines=[5]),
                target("table", step="12"),
            ),
            expected=(
                say("easy", "Every fifth crate ends in zero.", "Which crates are those? What do they hold?"),
                say("deeper", "The tenth crate is double the fifth.", "Check it with the third and the sixth crate."),
                say("not-for-long", "They are all under 100.", "How many crates are that? Count the next one."),
                slip(9, "118", "Crate 8 has 96. Ten more, and then two more."),
            ),
            stops=(
                stop(
                    5,
                    "What do five crates hold, and what will ten hold?",
                    "60 and 120.",
                    "5 jumps of 12 make 60",
                    "double 60",
                ),
                stop(
                    12,
                    "How could you find the 13th crate without counting?",
                    "156.",
                    "the tenth is 120, and three more crates are 36",
                    "13 times 12",
                ),
                stop(
                    20,
                    "At which crate do we have 180 lemons?",
                    "The 15th.",
                    "60, 120, 180: every fifth crate",
                    "15 times 12",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Crates of ten first.", "10", "10", 20, 5),
                then("as-planned", "Crates of 15: which crate ends in zero now?", "15", "15", 20, 5),
                then("ready-for-more", "Start with 7 loose lemons: 7, 19, 31.", "7", "12", 20, 5),
            ),
        ),
    ),
    DemoPlan(
        key="twentyfives",
        owner="bell",
        plan=written(
            "Twenty-fives from ten",
            grade="5",
            area="whole",
            start="10",
            step="25",
            terms=20,
            line=4,
            landmark="",
            standards=("4.OA.C.5",),
            targets=(
                target("neighbour", direction="down", difference="100"),
                target("remainder", modulus="100", along="column", blocks=[["10"], ["35"], ["60"], ["85"]]),
            ),
            expected=(
                say("easy", "Down a column is 100 more.", "Which jumps make that hundred?"),
                say(
                    "deeper",
                    "Each column keeps its last two digits.",
                    "Will it do so in rows of five? Say first, then test.",
                ),
                say("not-so", "We will say every hundred.", "Read the endings. Which ending would a hundred need?"),
                slip(5, "100", "From 85: how far is it to 100, and what is left?"),
            ),
            stops=(
                stop(5, "What will the column under 35 look like?", "135, 235, 335.", "4 jumps of 25 make 100"),
                stop(10, "Where will 385 stand, if it comes?", "Row 4, column 4.", "85, 185, 285, 385", think=30),
                stop(
                    20, "Would we ever say 1,000?", "No. The endings are 10, 35, 60, 85.", "985, then 1,010", think=30
                ),
            ),
            next_counts=(
                then("not-yet", "From 0, to hear the quarters of a hundred.", "0", "25", 20, 4),
                then("as-planned", "Rows of five: where do the endings go?", "10", "25", 20, 5),
                then("ready-for-more", "By 125 from 10.", "10", "125", 16, 4),
            ),
        ),
    ),
    DemoPlan(
        key="tens-by-six-later",
        owner="lindqvist",
        copy_of="tens-by-six",
        plan=written(
            "Tens in another column",
            grade="3",
            area="whole",
            start="16",
            step="6",
            terms=25,
            line=5,
            landmark="10",
            standards=("3.OA.D.9",),
            targets=(
                target("landmarks", multiple="10", every=5, first=5, lie="column", lines=[5]),
                target("neighbour", direction="down", difference="30"),
            ),
            expected=(
                say(
                    "easy",
                    "The tens are in the last column now.",
                    "Why there? How many jumps from 16 to the first ten?",
                ),
                say(
                    "deeper", "Going straight down is still 30 more.", "What is the same as last week, and what is not?"
                ),
                say(
                    "not-so", "Every column has a ten in it.", "Look down the second column. Which endings do you read?"
                ),
                slip(4, "32", "Stand on 28. Two more to the ten, then the rest."),
                slip(15, "90", "From 94, how far is it to one hundred?"),
            ),
            stops=(
                stop(
                    10,
                    "Last week the tens stood first. Where are they now, and why?",
                    "In column 5, because the fifth count is the first ten.",
                    "16 and 4 jumps of 6 make 40",
                ),
                stop(14, "What comes after 94?", "100.", "70 and 30 more is 100", "94 and 6"),
                stop(
                    25,
                    "Will 200 come?",
                    "No. The tens are 40, 70, 100, 130, 160, 190, 220.",
                    "190, then 220: 30 more each time",
                    think=30,
                ),
            ),
            next_counts=(
                then("not-yet", "Back to 20, with the tens in front.", "20", "6", 25, 5),
                then("as-planned", "Six in a line: do the tens still line up?", "16", "6", 24, 6),
                then("ready-for-more", "By 16 from 16.", "16", "16", 25, 5),
            ),
        ),
    ),
]
