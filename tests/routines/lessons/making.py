"""Lessons and events for tests."""

import uuid

from routines.lessons.events import append_events
from routines.lessons.recording import start_lesson
from routines.lessons.roles import Participant, Role
from routines.models import LessonPass
from tests.routines.making import TAUGHT_ON, make_routine

AT = "2026-11-03T14:05:09.250Z"
A_SECRET = "a secret of a device in a classroom"


def open_lesson(teacher, *, routine=None, practice=False, **fields):
    """A lesson on the board, opened just now; it holds the event that opened it."""
    routine = routine or make_routine(teacher)
    return start_lesson(
        version=routine.current_version,
        class_group=teacher.class_groups.select_related("grade", "year").get(),
        teacher=teacher,
        taught_on=TAUGHT_ON,
        surface="board",
        practice=practice,
        **fields,
    )


def event(t=1, kind="term.write", data=None, *, device="d1", identity=None, **changes):
    """An event as a device sends it; without data a written term."""
    return {
        "v": 1,
        "id": identity or str(uuid.uuid4()),
        "t": t,
        "device": device,
        "at": AT,
        "ms": 5,
        "kind": kind,
        "data": {"n": 1, "text": "4", "over": None} if data is None else data,
        **changes,
    }


def identity() -> str:
    return str(uuid.uuid4())


def data_of_every_kind(about: str | None = None) -> dict[str, dict]:
    """Good data for each kind; `about` is the event meant by those that are about one."""
    meant = about or identity()
    return {
        "lesson.open": {
            "version": 1, "plan": "x", "class_group": 1, "teacher": 1,
            "taught_on": "2026-11-03", "practice": False, "surface": "board",
        },
        "term.write": {"n": 1, "text": "4", "over": None},
        "term.correct": {"n": 1, "text": "5", "over": meant},
        "term.left-out": {"n": 2, "over": None},
        "filled": {"from": 1, "to": 20},
        "recount": {"from": 1, "to": 5},
        "mark.add": {"n": 3, "mark": "ring", "place": None},
        "mark.remove": {"event": meant},
        "jump.add": {"from": 5, "to": 1},
        "phrase.add": {"text": "it ends in five", "cells": [1, 6]},
        "predict": {"n": 70, "text": "487"},
        "cover": {"n": 3},
        "uncover": {"n": 3},
        "think": {"seconds": 20},
        "stop.enter": {"stop": 0},
        "stop.leave": {"stop": 0},
        "show": {"line": 0},
        "notice.add": {"text": "the planted noticing", "expected": None},
        "notice.edit": {"event": meant, "text": "the planted edit"},
        "voice": {"from": 1, "to": 5, "how": "faded"},
        "target": {"position": 0, "seen": "not-yet"},
        "undo": {"event": meant},
        "lesson.end": {},
        "lesson.reopen": {},
    }  # fmt: skip


def teacher_of(lesson) -> Participant:
    return Participant(Role.TEACHER, lesson.teacher)


BOARD, SUBSTITUTE = Participant(Role.BOARD), Participant(Role.SUBSTITUTE)


def append(lesson, *events, sender=None):
    return append_events(lesson=lesson, events=events, sender=sender or teacher_of(lesson))


def paired(client, lesson, role="board"):
    """This browser has a pass to the lesson, and nobody is signed in on it."""
    held, secret = LessonPass.objects.wait(address="127.0.0.1")
    held.tie(lesson=lesson, role=role, by=lesson.teacher)
    client.cookies["countfold_pass"] = secret
    return client
