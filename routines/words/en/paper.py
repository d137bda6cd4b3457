"""The fixed words on paper, by key, in English. Blanks are filled by the print that says them."""

from collections.abc import Mapping

from routines.counting.outcome import Outcome

PAPER: Mapping[str, str] = {
    # On every page
    "foot": "write the idea, not who said it",
    "planned_by": "planned by {name}",
    "version": "version {number}",
    "grade": "Grade {grade}",
    "about_minutes": "about {minutes} min",
    "counts_to": "{line} {terms} counts, to {last}.",
    "rule": "The n-th count is {rule}",
    # The count in one line
    "by": "By {step} from {start}",
    "back_by": "Back by {step} from {start}",
    "fold_across": "across, {length} in a line",
    "fold_down": "down, {length} in a line",
    "fold_across-up": "across, bottom line first, {length} in a line",
    # Plan page
    "listen_for": "Listen for",
    "also_there": "Also there",
    "always": "always holds",
    "shown": "for a while",
    "flag": "stops here",
    "landmark": "landmark: {name}",
    "landmark_plain": "landmark",
    "stops": "Stops",
    "after": "After {text}, the {nth}",
    "after_last": "After {text}, the end",
    "think": "think {time}",
    "partner": "partner {time}",
    "share": "share {time}",
    "may_say": "They may say",
    "may_slip": "They may slip",
    "heard_as": "{text}, the {nth}: heard as",
    "next_counts": "Next counts",
    Outcome.NOT_YET: "if it was not there yet",
    Outcome.AS_PLANNED: "if it went as planned",
    Outcome.READY_FOR_MORE: "if they are ready for more",
    "notes": "Notes",
    "remember": "Next year, remember",
    "standards": "Standards",
    "story_each": "Each {group}: {each}.",
    "goal_met": "The goal, {goal}, is met at {label}.",
    "goal_passed": "The goal, {goal}, is passed at {label}, by {by}.",
    "count_number": "count {n}",
    "line_by_line": "The count, line by line",
    # The substitute's page
    "substitute": "For a substitute teacher",
    "what_is": (
        "In a choral count the whole class counts aloud together while you write each count into a grid that "
        "all can see. At a few places you stop, and the class says what it sees in the grid and what it "
        "thinks will come."
    ),
    "you_need": "You need the board or a large sheet of paper, and a marker. No computer and no phone.",
    "the_grid": "The grid when it is full",
    "the_grid_how": (
        "Write it in this shape, one count at a time, large enough for the back row. The signs and colours "
        "are for you alone."
    ),
    "whole_count": "The whole count, and how to say it",
    "hard_marked": "Bold: places where a class often stumbles.",
    "step_by_step": "Step by step",
    "minute": "minute\u00a0{minute}",
    "begin": "Begin",
    "begin_say": (
        "Say: “Today we count together, {count}. I write, you say.” Write {first} in the first cell and say "
        "it together."
    ),
    "lead": "Leave the first {lead} cells of the first line empty.",
    "count_on": "Count together from {first} to {last}.",
    "write_across": "{length} counts in each row, left to right, the next row underneath.",
    "write_down": "{length} counts in each column, top to bottom, the next column to the right.",
    "write_across-up": "{length} counts in each row, left to right. Begin with the bottom row; the next row goes above.",
    "stop_ask": "Stop after {text}. Ask:",
    "they_find": "What they may find:",
    "ways": "Ways there:",
    "end": "End",
    "end_say": (
        "Read the last line of the grid together once more. Thank the class and leave the grid up for their teacher."
    ),
    "if_they": "If you hear this, ask that",
    "instead_of": "instead of {text}",
    "please_not": "Please do not",
    "not_names": "write names beside ideas, or on this page. Write the idea, not who said it.",
    "not_correct": "say “correct”, “good” or “wrong”. Ask “How do you know?” and “Who sees it another way?”",
    "not_tell": "give the answer. If nobody has one, read two lines of the grid together and ask again.",
    "not_phone": "use phones or take photographs. Everything you need is on this paper.",
    "leave_for": "For their teacher",
    "got_to": "We counted as far as",
    "they_saw": "What the class saw (ideas, not names)",
    # Posters
    "our_count": "Our count",
    "as_it_happened": "as it happened",
    # Sheets for students
    "fill_in": "Fill in the count. Use what is there to find what is not.",
    "you_see": "What do you see?",
    "ideas_not_name": "Write your ideas, not your name.",
    "given_most": "most given",
    "given_some": "some given",
    "given_few": "few given",
    # Follow-up
    "missing": "Missing counts",
    "missing_how": "Find the counts in the framed cells. You need not fill in the rest.",
    "which_cell": "{letter}. Row {row}, column {column}: what stands there? How do you know?",
    "will_come": "{letter}. Will {value} come if we go on? How do you know?",
    "key": "Answers",
    "key_for": "For the teacher: keep this page.",
    "cell_answer": "{letter}. {text}",
    "yes_at": "{letter}. Yes, {value} is the {nth} count.",
    "no_not": "{letter}. No, {value} does not come.",
    # Booklets
    "contents": "What is in here",
    "booklet_of": "{counts} counts",
}
