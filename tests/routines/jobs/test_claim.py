"""One job, one maker: taken in order, held by a lease, lost when it ran out, and given up after a few attempts."""

import uuid
from datetime import timedelta

import pytest
from django.utils import timezone

from routines.jobs.claim import Claim, Lost
from routines.jobs.queue import ask
from routines.models import Job, JobFile
from routines.models.job import ATTEMPTS
from tests.factories import UserFactory

BOOKLET, IMPORT = Job.Kind.BOOKLET, Job.Kind.IMPORT


@pytest.fixture
def asked(school):
    def of(kind: Job.Kind = BOOKLET, owner=None) -> Job:
        return ask(kind, owner=owner or UserFactory(), title="Plums", total=3)

    return of


def let_the_lease_run_out() -> None:
    Job.objects.update(claimed_until=timezone.now() - timedelta(seconds=1))


def test_first_come_first_made_and_each_kind_by_itself(asked):
    first, second, other = asked(), asked(), asked(IMPORT)
    assert Claim.take(BOOKLET).job == first
    assert Claim.take(BOOKLET).job == second
    assert Claim.take(BOOKLET) is None
    assert Claim.take(IMPORT).job == other


def test_what_is_being_made_is_nobody_elses_until_its_lease_ran_out(asked):
    job = asked()
    first = Claim.take(BOOKLET)
    assert Claim.take(BOOKLET) is None
    let_the_lease_run_out()
    second = Claim.take(BOOKLET)
    assert (second.job, second.job.attempts) == (job, 2)
    assert second.key != first.key


def test_what_was_begun_before_the_clock_was_put_back_does_not_wait_for_that_time_again(asked):
    job = asked()
    Claim.take(BOOKLET)
    Job.objects.update(claimed_until=timezone.now() + timedelta(days=365))
    assert Claim.take(BOOKLET).job == job


@pytest.mark.parametrize(
    "write",
    [
        lambda claim: claim.renew(),
        lambda claim: claim.progress(2),
        lambda claim: claim.finish(content=b"x"),
        lambda claim: claim.fail("No."),
        lambda claim: claim.hand_back(),
        lambda claim: claim.held().__enter__(),
    ],
)
@pytest.mark.parametrize("lost", ["dropped", "taken over"])
def test_what_is_lost_is_not_written_to(asked, write, lost):
    asked()
    claim = Claim.take(BOOKLET)
    if lost == "dropped":
        Job.objects.all().delete()
    else:
        let_the_lease_run_out()
        assert Claim.take(BOOKLET)
    before = list(Job.objects.values())
    with pytest.raises(Lost):
        write(claim)
    assert list(Job.objects.values()) == before
    assert not JobFile.objects.exists()


def test_renewing_and_progress_hold_the_lease(asked):
    asked()
    claim = Claim.take(BOOKLET)
    for hold in (claim.renew, lambda: claim.progress(1)):
        let_the_lease_run_out()
        hold()
        assert Claim.take(BOOKLET) is None


def test_progress_is_written_at_most_twice_a_second_and_all_of_it_at_the_end(asked, django_assert_num_queries):
    asked()
    claim = Claim.take(BOOKLET)
    with django_assert_num_queries(1):
        for page in range(1, 60):
            claim.progress(page)
    assert Job.objects.get().done == 1
    claim.finish()
    assert Job.objects.get().done == 59


def test_what_stops_the_server_again_and_again_ends_with_a_sentence(asked):
    job, next_one = asked(), asked()
    for _ in range(ATTEMPTS):
        assert Claim.take(BOOKLET).job == job
        let_the_lease_run_out()
    assert Claim.take(BOOKLET).job == next_one
    job.refresh_from_db()
    assert job.has_failed
    assert job.said == "The server stopped 3 times while it was at this. Try it with less at a time."


def test_handed_back_it_is_free_at_once_and_no_attempt_is_counted(asked):
    asked()
    Claim.take(BOOKLET).hand_back()
    assert Claim.take(BOOKLET).job.attempts == 1


def test_a_person_has_one_of_each_kind(asked, owner):
    asked(owner=owner)
    kept = asked(owner=owner), asked(IMPORT, owner=owner)
    assert set(Job.objects.of(owner)) == set(kept)


def test_an_idle_look_takes_no_lock(asked, django_assert_num_queries):
    with django_assert_num_queries(1):
        assert Claim.take(BOOKLET) is None
    with django_assert_num_queries(1):
        Job.objects.remove_outdated()


def test_running_without_a_claim_is_refused_by_the_database(asked):
    from django.db import IntegrityError

    job = asked()
    with pytest.raises(IntegrityError):
        Job.objects.filter(pk=job.pk).update(state="running")


def test_a_key_may_be_given(owner):
    key = uuid.uuid4()
    assert ask(IMPORT, owner=owner, title="x" * 500, total=1, key=key).key == key
