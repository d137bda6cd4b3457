"""Making booklets beside everything else: what was asked for is a row, and so is the PDF; any server process makes it.

A ready booklet is kept for an hour. One booklet for each person: starting another drops the one before.
"""

import json
import uuid
from collections.abc import Sequence

from django.db import connection
from django.utils.translation import gettext as _

from accounts.models import User
from routines.jobs.claim import Claim, Lost, Refused
from routines.jobs.queue import ask
from routines.models import Job, RoutineVersion
from routines.paper.booklet import pages_expected
from routines.paper.process import Answer, GivenUp, Process, TookTooLong

TIME_LIMIT = 600.0  # seconds

writing = Process("routines.paper.booklet_worker", after_others=True)  # the class in front of the board goes first


def start_booklet(
    *, owner: User, title: str, versions: Sequence[RoutineVersion], contents: Sequence[str], language: str = ""
) -> Job:
    """Ask for it; the answer says under which key to ask how far it is. Raises QueueFull."""
    payload = {
        "versions": [[version.routine_id, version.pk] for version in versions],
        "contents": list(contents),
        "language": language,
    }
    total = pages_expected(len(versions), contents)
    return ask(Job.Kind.BOOKLET, owner=owner, title=title, total=total, payload=payload)


def find_booklet(key: uuid.UUID | str, *, owner: User) -> Job | None:
    """The booklet of this person, or None."""
    return Job.objects.of(owner).booklets().still_kept().filter(key=key).first()


def booklet_of(owner: User) -> Job | None:
    """The one that this person has, ready or not."""
    return Job.objects.of(owner).booklets().still_kept().first()


def drop_booklet(key: uuid.UUID | str, *, owner: User) -> None:
    Job.objects.of(owner).booklets().filter(key=key).delete()


def make_booklet(claim: Claim) -> None:
    """It is written in a process of its own, started for it and ended with it; here is heard how far it is.

    Ending that process gives back whatever laying out many pages took of memory.
    """
    order = {"database": str(connection.settings_dict["NAME"]), "job": claim.job.pk}
    part = ""

    def told(answer: Answer) -> None:
        nonlocal part
        if answer["part"] != part:
            part = answer["part"]
            claim.begin_part(part, answer["total"])
        if answer["done"] > claim.job.done:  # the pages are laid out again once their numbers are known
            claim.progress(answer["done"])

    try:
        last, pdf = writing.ask(json.dumps(order).encode() + b"\n", time_limit=TIME_LIMIT, on_answer=told)
    except TookTooLong as error:
        raise Refused(_("This booklet took too long to make. Try it with fewer counts.")) from error
    except GivenUp as error:
        raise Lost from error
    finally:
        writing.stop()
    if last["refused"]:
        raise Refused(last["refused"])
    claim.finish(said=last["said"], content=pdf)
