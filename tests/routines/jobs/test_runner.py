"""The threads of a server: they begin at once, stop cleanly, keep the lease, and outlive every fault."""

import threading

import pytest
from django.db import DatabaseError, connection

from routines.jobs import runner
from routines.jobs.queue import ask
from routines.models import Job

pytestmark = pytest.mark.django_db(transaction=True)


@pytest.fixture
def running(monkeypatch):
    """A runner whose booklets are made by a function of the test."""
    here = runner.Runner()

    def start(make, give_up=lambda: None) -> runner.Runner:
        work = runner.Work(make, give_up, "It could not be made.")
        monkeypatch.setattr(runner, "works", dict.fromkeys(Job.Kind, work))
        here.start()
        return here

    yield start
    here.stop()
    assert not any(thread.is_alive() for thread in here.threads)


def booklet(owner) -> Job:
    return ask(Job.Kind.BOOKLET, owner=owner, title="Plums", total=1)


def test_what_is_asked_for_is_made_at_once(owner, running, monkeypatch):
    monkeypatch.setattr(runner, "LOOK_EVERY", 600)
    made = threading.Event()
    running(lambda claim: (claim.finish(), made.set()))
    booklet(owner)
    assert made.wait(20)


def test_what_other_processes_were_asked_for_is_found(owner, running, monkeypatch):
    monkeypatch.setattr(runner, "LOOK_EVERY", 0.1)
    made = threading.Event()
    running(lambda claim: (claim.finish(), made.set()))
    Job.objects.create(kind="booklet", owner=owner, title="Plums")
    assert made.wait(20)


def test_closing_hands_back_what_is_being_made(owner, running):
    begun, ended = threading.Event(), threading.Event()

    def make(claim) -> None:
        begun.set()
        assert ended.wait(20)

    here = running(make, give_up=ended.set)
    booklet(owner)
    assert begun.wait(20)
    here.stop()
    job = Job.objects.get()
    assert (job.state, job.attempts) == ("waiting", 0)


def test_the_lease_is_renewed_while_it_is_made(owner, monkeypatch):
    monkeypatch.setattr(runner, "RENEW_EVERY", 0.5)
    renewed = threading.Event()
    monkeypatch.setattr(runner.Claim, "renew", lambda self: renewed.set())

    def make(claim) -> None:
        assert renewed.wait(20)
        claim.finish()

    monkeypatch.setattr(runner, "works", {Job.Kind.BOOKLET: runner.Work(make, lambda: None, "")})

    booklet(owner)
    assert runner.do_next(Job.Kind.BOOKLET)
    assert Job.objects.get().is_done


def test_what_is_dropped_is_ended_from_outside(owner, monkeypatch):
    """While one page is laid out nothing is asked; the lease is, and ends the printing."""
    monkeypatch.setattr(runner, "RENEW_EVERY", 0.5)
    given_up = threading.Event()

    def make(claim) -> None:
        Job.objects.all().delete()
        assert given_up.wait(20)
        raise OSError

    monkeypatch.setattr(runner, "works", {Job.Kind.BOOKLET: runner.Work(make, given_up.set, "")})

    booklet(owner)
    assert runner.do_next(Job.Kind.BOOKLET)
    assert not Job.objects.exists()


def test_a_fault_is_said_and_the_next_job_is_made(owner, teammate, running):
    made = threading.Event()

    def make(claim) -> None:
        if claim.job.owner == owner:
            raise ZeroDivisionError
        claim.finish()
        made.set()

    first = booklet(owner)
    running(make)
    booklet(teammate)
    assert made.wait(20)
    first.refresh_from_db()
    assert (first.state, first.said) == ("failed", "It could not be made.")


def test_a_database_that_is_gone_for_a_while_ends_no_runner_and_is_told_once(owner, running, monkeypatch, caplog):
    monkeypatch.setattr(runner, "LOOK_EVERY", 0.1)
    faults, made = [], threading.Event()
    look = runner.do_next

    def gone_at_first(kind, *words) -> bool:
        if faults.count(kind) < 4:
            faults.append(kind)
            raise DatabaseError("gone")
        return look(kind, *words)

    monkeypatch.setattr(runner, "do_next", gone_at_first)
    here = running(lambda claim: (claim.finish(), made.set()))
    booklet(owner)
    assert made.wait(20)
    here.stop()
    told = [record.getMessage() for record in caplog.records if record.name == runner.logger.name]
    assert told.count("Looking for jobs failed, and is tried again: booklet") == 1
    assert told.count("Looking for jobs goes on: booklet") == 1


def test_left_unfinished_by_the_database_it_is_tried_again_later(owner, monkeypatch):
    def make(claim) -> None:
        raise DatabaseError("gone")

    monkeypatch.setattr(runner, "works", {Job.Kind.BOOKLET: runner.Work(make, lambda: None, "")})
    booklet(owner)
    assert runner.do_next(Job.Kind.BOOKLET)
    assert Job.objects.get().state == "running"


def test_no_thread_runs_unless_somebody_serves():
    assert runner.runner.threads == []
    assert not [thread for thread in threading.enumerate() if thread.name.startswith("jobs:") and thread.is_alive()]
    assert connection.vendor in ("sqlite", "postgresql")
