"""What is said in English about slips of the Spanish number words. They are foreseen where a class counts in Spanish."""

from ...language import SlipWords

WORDS = {
    "S01": SlipWords(
        "Sesenta and setenta sound alike, so after {a} the other of the two is said.",
        "How many tens does {a} have, and which word goes with the next one?",
        "Which ten comes after {a}?",
    ),
    "S02": SlipWords(
        "After {a} the words that begin with dieci- are run on.",
        "What do two tens make after {a}?",
        "What do two tens make?",
    ),
    "S03": SlipWords(
        "The word for {b} is made up like dieciséis.",
        "Which special word did we learn for the next one?",
        "Which special word comes next?",
    ),
    "S04": SlipWords(
        "The y between tens and ones is left out in the word for {b}.",
        "Which little word joins the tens and the ones?",
        "Which little word joins them?",
    ),
    "S05": SlipWords(
        "The word for the hundreds of {b} is built from its digit, as the other hundreds are.",
        "Which hundreds have a word of their own, unlike the others we have said?",
    ),
    "S06": SlipWords(
        "Cien is kept where the number goes on: {b} begins with ciento.",
        "How does the word for a hundred change when more comes after it?",
        "How does cien change when more comes?",
    ),
    "S07": SlipWords(
        "The parts of {b} are named like places in a row: terceros for tercios.",
        "What do we call one part when the whole is cut into three equal parts?",
    ),
}
WORDS["S08"] = WORDS["S01"]
