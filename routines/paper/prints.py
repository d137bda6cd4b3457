"""The prints of one routine by name, in the order in which they are offered."""

from routines.paper.document import Document
from routines.paper.follow_up import FOLLOW_UP
from routines.paper.foreseeing import foreseen
from routines.paper.picture import text_room
from routines.paper.plan_page import PLAN_PAGE
from routines.paper.poster import POSTER
from routines.paper.print import Print, Wishes
from routines.paper.recording import RECORDING
from routines.paper.subject import Subject
from routines.paper.substitute import SUBSTITUTE

PRINTS: dict[str, Print] = {
    "plan": PLAN_PAGE,
    "substitute": SUBSTITUTE,
    "poster": POSTER,
    "recording": RECORDING,
    "follow-up": FOLLOW_UP,
}


def document_of(name: str, subject: Subject, wishes: Wishes) -> Document:
    chosen = PRINTS[name]
    sheets = chosen.sheets(subject, wishes)
    # What children get says nothing of the plan's title: it may give away what is to be seen.
    return Document(
        title=subject.phrase("our_count") if chosen.for_children(wishes) else subject.plan.title,
        author=subject.routine.owner.display_name,
        language=subject.say.main,
        paper=subject.school.paper,
        sheets=sheets,
        fit=chosen.fit or foreseen(sheets[0], text_room(subject.school)),
    )
