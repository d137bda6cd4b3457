"""Does a text look as if it named a child? Asked about before it is kept; the teacher decides."""

import re

# "Maya said", "Luis:", "Ana thinks": a capitalised word followed by a verb of saying or a colon. Words that begin a
# sentence about the lesson itself are left out.
SAYING = r"(?:said|says|saw|thinks?|thought|noticed|asked|told|showed|counted|explained|dijo|vio|piensa|pensó|notó)"
NOT_NAMES = {
    "they", "she", "he", "it", "we", "i", "you", "someone", "somebody", "everyone", "everybody", "nobody", "some", "one",
    "most", "many", "few", "several", "half", "children", "students", "class", "kids", "two", "three", "four", "five",
    "who", "partners", "teacher", "others", "all", "both", "stop", "step", "count", "next", "then", "first", "last",
    "row", "column", "note", "question", "answer", "idea", "ellos", "ellas", "alguien", "todos", "algunos", "muchos",
}  # fmt: skip
NAME = "[A-ZÁÉÍÓÚÑ][a-záéíóúñü]+"
NAMED = re.compile(rf"\b({NAME})(?:\s+{SAYING}\b|:)")


def as_script() -> dict[str, str | list[str]]:
    """The same rule for a page that asks without the server: static/js/lesson/lectern/names.js."""
    return {"name": NAME, "saying": SAYING, "not_names": sorted(NOT_NAMES)}


def look_like_names(text: str) -> list[str]:
    """The words that look like a child's name, each once, in the order of the text.

    >>> look_like_names("Maya said the tens go up. They said so too.")
    ['Maya']
    """
    found = [word for word in NAMED.findall(text) if word.casefold() not in NOT_NAMES]
    return list(dict.fromkeys(found))
