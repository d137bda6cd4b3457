"""In a made-up language, every visible string of a lesson's pages is translated, but for people's words and numbers."""

import pytest
from django.urls import reverse

from routines.lessons.recording import end_lesson, state_of
from routines.lessons.shown_count import shown_of
from routines.lessons.words import board_words, lectern_words, log_words, replay_words, status_words
from routines.plans.forms.claim import ClaimForm
from routines.words import check, locate
from tests.pseudo_locale import ReadAloud, speak_in_brackets, untranslated
from tests.routines.lessons.making import append, event, open_lesson
from tests.routines.lessons.pseudo_locale import people_and_plan
from tests.routines.making import make_routine

PARTS_ONLY = {"{text}"}


@pytest.fixture
def lesson(owner):
    """One with something on every part of its pages."""
    lesson = open_lesson(owner, routine=make_routine(owner))
    said = event(t=2, data={"n": 2, "text": "12", "over": None})
    other = event(t=6, data={"n": 3, "text": "17", "over": None}, device="d2")
    append(
        lesson,
        event(t=1, data={"n": 1, "text": "4", "over": None}),
        said,
        event(t=3, kind="term.correct", data={"n": 2, "text": "11", "over": said["id"]}),
        event(t=4, data={"n": 3, "text": "19", "over": None}),
        event(t=5, kind="term.left-out", data={"n": 4, "over": None}),
        other,
        event(t=7, data={"n": 5, "text": "36", "over": None}),
        event(t=8, data={"n": 6, "text": "43", "over": None}),
        event(t=9, kind="predict", data={"n": 15, "text": "102"}),
        event(t=10, kind="phrase.add", data={"text": "zigzag", "cells": [1, 6]}),
        event(t=11, kind="recount", data={"from": 1, "to": 3}),
        event(t=12, kind="stop.enter", data={"stop": 0}),
        event(t=13, kind="stop.leave", data={"stop": 0}),
        event(t=14, kind="notice.add", data={"text": "quince idea", "expected": None}),
        event(t=15, kind="voice", data={"from": 1, "to": 4, "how": "faded"}),
        event(t=16, kind="target", data={"position": 0, "seen": "seen"}),
    )
    return lesson


def left_bare(page: str, peoples) -> list[str]:
    read = ReadAloud(page)
    bare = [left for text in read.texts if (left := untranslated(text, peoples))]
    for words in read.words.values():
        bare += [text for text in words.values() if text not in PARTS_ONLY and untranslated(text, ())]
    return bare


def pages(lesson):
    return {
        "board": reverse("lesson_board", args=[lesson.key]),
        "lectern": reverse("lesson_lectern", args=[lesson.key]),
        "log": lesson.get_absolute_url(),
        "paper": reverse("lesson_taught", args=[lesson.routine_id]),
        "replay": reverse("lesson_replay", args=[lesson.key]) + "?moment=3",
        "replay's end": reverse("lesson_replay", args=[lesson.key]) + "?moment=99",
        "teach": reverse("lesson_teach", args=[lesson.routine_id]),
        "lessons": reverse("lessons"),
        "delete": reverse("lesson_delete", args=[lesson.key]),
    }


@pytest.mark.parametrize(
    "name", ["board", "lectern", "log", "paper", "replay", "replay's end", "teach", "lessons", "delete"]
)
@pytest.mark.parametrize("ended", [False, True])
def test_every_visible_string_of_a_page_is_translated(name, ended, owner, visit, lesson, monkeypatch):
    if ended:
        end_lesson(lesson=lesson)
    peoples = people_and_plan(lesson, state_of(lesson))
    speak_in_brackets(monkeypatch)
    answer = visit(owner).get(pages(lesson)[name])
    assert answer.status_code == 200
    assert "⟦" in answer.text
    assert left_bare(answer.text, peoples) == []


def test_a_refused_form_of_the_log_too(owner, visit, lesson, monkeypatch):
    peoples = people_and_plan(lesson, state_of(lesson))
    speak_in_brackets(monkeypatch)
    sent = {
        "class_group": lesson.class_group_id, "taught_on": "2199-01-01", "sharing": "only-me", "noticed": "x" * 300,
        "heard-2": ["Rosalind said 12", "1" * 41], "voice-from": ["1"], "voice-to": ["99"], "voice-how": ["strong"],
        "stuck": "Rosalind: at ten",
    }  # fmt: skip
    answer = visit(owner).post(pages(lesson)["log"], sent)
    assert answer.status_code == 422
    assert answer.text.count("field-error") >= 5
    assert (
        left_bare(answer.text, {*peoples, "Rosalind said 12", "Rosalind: at ten", "Rosalind", "x" * 40, "x" * 300})
        == []
    )


def test_what_a_colleague_reads_too(owner, teammate, visit, lesson, monkeypatch):
    lesson.sharing = lesson.Sharing.TEAM
    lesson.save()
    peoples = people_and_plan(lesson, state_of(lesson)) | {teammate.display_name}
    speak_in_brackets(monkeypatch)
    for address in (lesson.get_absolute_url(), pages(lesson)["replay"]):
        assert left_bare(visit(teammate).get(address).text, peoples) == []


@pytest.mark.parametrize(
    "asked",
    [
        {"value": "18"},
        {"value": "19"},
        {"claim-saying": "jump", "claim-jump": "7", "claim-direction": "count", "check": "1"},
        {
            "claim-saying": "ends",
            "claim-reading": "place:0",
            "claim-digits": "4, 1",
            "claim-where": "column",
            "check": "1",
        },
        {"claim-saying": "lands", "claim-multiple": "10", "check": "1"},
        {"claim-saying": "many", "claim-many": "", "claim-multiple": "10", "check": "1"},
    ],
)
def test_the_lecterns_questions_too(owner, visit, lesson, monkeypatch, asked):
    shown = shown_of(lesson)
    peoples = people_and_plan(lesson, state_of(lesson))
    if "value" in asked:
        found = locate(shown.grid, asked["value"], shown.audience)
        peoples |= {found.reason, *map(str, found.routes)}
    elif (form := ClaimForm(asked, shown.grid)).is_valid():
        peoples.add(check(form.claim, shown.grid, audience=shown.audience).because)
    speak_in_brackets(monkeypatch)
    answer = visit(owner).post(reverse("lesson_ask", args=[lesson.key]), asked, headers={"HX-Request": "true"})
    assert left_bare(answer.text, peoples) == []


def test_all_words_of_the_scripts_are_translated(monkeypatch):
    speak_in_brackets(monkeypatch)
    for words in (status_words(), board_words(), lectern_words(), log_words(), replay_words()):
        assert [text for text in words.values() if text not in PARTS_ONLY and untranslated(text, ())] == []


def test_a_string_that_is_not_translated_is_found(monkeypatch):
    speak_in_brackets(monkeypatch)
    page = '<main><p>⟦Kept⟧ by you</p><b aria-label="next count"></b><p>⟦{n} of ⟦ten⟧⟧, 3rd, Z</p></main>'
    assert left_bare(page, ()) == ["by you", "next count"]
