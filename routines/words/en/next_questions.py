"""English questions about a next count, by level band."""

QUESTIONS: dict[str, tuple[str, str, str, str]] = {
    "hard place": (
        "We said {before}. What do we say next? Show us.",
        "What comes after {before}, and what changes in it? Show on the grid how you know.",
        "What does {jump} do to {before}? Show two ways on the grid to be sure.",
        "What changes in the count after {before}, and how do you know? Make a rule for {jump}, and test it on the "
        "counts around it.",
    ),
    "hard to write": (
        "We said {before}. How do we write the next one? Show us.",
        "How do we write the number after {before}, and what does each digit or part of it tell us?",
        "How do we write what comes after {before}? Compare it with its neighbors, and say what each part tells us.",
        "How is each count here written, and what does each part tell us? Make a rule, and test it on all of them.",
    ),
    "fold": (
        "Look {along}. What do you see now? Point to it.",
        "Each line has {length} numbers now. What lines up, and why does it line up here?",
        "The numbers are the same, with {length} in each line. What lines up now, and why does {length} make it so?",
        "What lines up now, and why does {length} make it so? Say it with jumps of {size}, and test it on every line.",
    ),
    "fewer": (
        "Look at one line. What do you see? Point to it.",
        "Look at one line and then at the next. What stays, what changes, and why?",
        "Take two lines only. How are they alike, and how many jumps of {size} lead from one count to the one just {beside} it?",
        "With so few counts on the board, what can you say for certain about the next line? Test it before we write.",
    ),
    "multiples": (
        "We start at {start}. What comes next? What do you know about these numbers?",
        "Where have we met these numbers before, and how are they like those of our first count?",
        "Each count is a whole number of jumps of {size} from zero. Was that so in our first count, and where do we see it?",
        "Compare each count with the one in the same place of our first count. Is the difference always the same? Test "
        "it, and say why.",
    ),
    "friendlier jump": (
        "Now each jump is {size}. What comes next? Show us.",
        "Each jump is {size} now. When do we land on {a_mark}, and how do you know?",
        "After how many jumps of {size} do we land on {a_mark} again, and why? Show it on the grid.",
        "Which jumps land on every {landmark}, and which do not? Make a rule, and test it with another jump.",
    ),
    "round start": (
        "We start at {start}. What comes next? Show us.",
        "We start at {start}. When do we come to {a_mark} again, and how do you know?",
        "Which jumps of {size} pass {a_mark}, and how much is left over each time? Show it on the grid.",
        "When will a count land exactly on {a_mark} again? Make a rule, and test it with another start.",
    ),
    "round number more": (
        "Look at the ends of the numbers. What stays the same? Point.",
        "Each jump is {round} more than before. What stays the same in every place, and what changes?",
        "Compare each count with the one that stood in its place. What is left past {a_mark}, and why is it the same?",
        "Which part of every count stays as it was when each jump grows by {round}? Say why, for any start.",
    ),
    "other start": (
        "We start at {start} now. What is still the same? Point to it.",
        "We start at {start} now. What is still the same from line to line, and why?",
        "{one} and the one just {beside} it were {kept} apart before. Are they so from {start} on, and why? Show it "
        "on the grid.",
        "Which things we found depend on the start, and which do not? Make a conjecture, and test it from {start}.",
    ),
    "going on": (
        "We go on from {start}. What will we see again? Tell us.",
        "We go on from {start}. Will we see the same things again? Which ones, and why?",
        "We go on from {start}. Which of the things we found will go on, and which will end? Why?",
        "Which things we found will go on from {start}, and which will end? Make a conjecture, and test it.",
    ),
    "back again": (
        "Now we count the other way, from {start}. What comes next?",
        "We count the other way now. Which of the things we saw are still there, and which turn around?",
        "We count from {start} to {last} now. What stays true when the jumps turn around, and what goes the other way?",
        "Which of our rules still hold when every jump is turned around, and which must be said anew? Test one.",
    ),
    "two in one": (
        "Which numbers are gone now? Where would they be? Show us.",
        "One jump does what two did. Which of our old numbers are still here, and where are the others?",
        "One jump of {size} does what two did. Which counts are still here, and where would the others stand?",
        "Which counts stay and which are left out when the jump is doubled? Say it as a rule, and test it further on.",
    ),
    "landmark": (
        "We will pass {landmark}. What will we say after it?",
        "Before we pass {landmark}: what will change in the numbers, and what will stay? How do you know?",
        "Before we pass {landmark}: which of the things we found will still be there on the other side, and why?",
        "Which of our rules will still hold past {landmark}, and which will break? Make a conjecture, and test it.",
    ),
    "landmark reached": (
        "We will come to {landmark}. What will we say after it?",
        "Before we reach {landmark}: what will change in the numbers, and what will stay? How do you know?",
        "Before we reach {landmark}: which of the things we found will still be there on the other side, and why?",
        "Which of our rules will still hold past {landmark}, and which will break? Make a conjecture, and test it.",
    ),
    "nearly round": (
        "Each jump is nearly {round}. What comes next? Show us.",
        "{size} is nearly {round}. How can that help us to find the next number?",
        "{size} is nearly {round}. How could we use that for each jump, and what must we put right each time?",
        "{size} is nearly {round}. What happens to the last digits now, and why? Make a conjecture, and test it.",
    ),
    "ten times": (
        "Each jump is {size} now. What looks the same? Point to it.",
        "Each jump is {size} now. What looks like our first count, what is new, and why?",
        "Each jump of {size} is ten times as long as before. Which patterns come back, and in which place?",
        "When each jump is ten times as long, which of our rules stay true, and in which place? Test one.",
    ),
    "finer": (
        "Each jump is smaller now. What looks the same? Point to it.",
        "Each jump is a tenth as long. What looks like our first count, and what is new?",
        "Each jump of {size} is a tenth as long as before. Which patterns come back, and in which place?",
        "When each jump is a tenth as long, which of our rules stay true, and in which place? Test one.",
    ),
    "several parts": (
        "Each jump takes more parts now. Where is a whole? Point.",
        "Each jump takes several parts now. When will we land on a whole, and how do you know?",
        "Each jump is {size} now. Which wholes do we land on, and which do we jump over? How can you tell?",
        "Which jumps would land on every whole, on some, or on none? Make a conjecture, and test it here.",
    ),
    "unfriendly": (
        "Each jump is {size} now. What comes next? Show us.",
        "Jumps of {size} do not fit evenly into {round}. Where will we cross it, and what is left?",
        "Where will jumps of {size} cross {a_mark}, and how much of the jump is left past it?",
        "After how many jumps of {size} will a count land on {a_mark}? Make a rule, and test it.",
    ),
    "unfriendly landing": (
        "Each jump is {size} now. What comes next? Show us.",
        "Where do we land right on {a_mark} now, and where do we jump over one?",
        "Which jumps of {size} land right on {a_mark}, and which go over one? How can you tell?",
        "After how many jumps of {size} will a count land on {a_mark} again? Make a rule, and test it.",
    ),
    "unfriendly once": (
        "Each jump is {size} now. What comes next? Show us.",
        "Where do we land right on {a_mark} now, and where do we jump over one?",
        "Which jump of {size} lands right on {a_mark}, and which go over one? How can you tell?",
        "After how many jumps of {size} will a count land on {a_mark} again? Make a rule, and test it.",
    ),
    "by tens": (
        "Now each jump is {size}. What stays the same? Point to it.",
        "Each jump is {size} now. Which digit changes and which one stays, and why?",
        "Each jump of {size} does what {many} jumps of {old} did. What changes in the numbers, what stays, and why?",
        "Which digits can a jump of {size} never change? Make a conjecture, and test it on the grid.",
    ),
    "one more": (
        "There is one more in each line. What moved? Point to it.",
        "There is one more in each line now. What moved, what lines up, and why?",
        "Now that there are {length} in each line, what lines up, what slides and how far, and why?",
        "What does one more in each line do to each pattern in the lines? Make a rule, and test it.",
    ),
}
