"""Work that goes on beside the pages: what was asked for, who makes it at the moment, how far it is, how it ended."""

import uuid
from datetime import timedelta
from typing import Self

from django.conf import settings
from django.db import models
from django.db.models import Q
from django.utils import timezone
from django.utils.translation import gettext_lazy as _

from accounts.models import User

KEPT = timedelta(hours=1)  # a booklet that is ready, and what was said of one that could not be made
KEPT_UNFINISHED = timedelta(days=1)
LEASE = timedelta(seconds=60)
ATTEMPTS = 3


class JobQuerySet(models.QuerySet["Job"]):
    def of(self, user: User) -> Self:
        return self.filter(owner=user)

    def booklets(self) -> Self:
        return self.filter(kind=Job.Kind.BOOKLET)

    def imports(self) -> Self:
        return self.filter(kind=Job.Kind.IMPORT)

    def holding_words(self) -> Self:
        """Those whose files, ready or being made, are full of people's words."""
        return self.filter(kind__in=HOLDING_WORDS)

    def unfinished(self) -> Self:
        return self.filter(state__in=[Job.State.WAITING, Job.State.RUNNING])

    def to_be_taken(self) -> Self:
        """What waits, and what was begun by a process that has said nothing for as long as its lease."""
        now = timezone.now()
        # A lease that ends far beyond any that is given now was taken before the clock was put back.
        run_out = Q(claimed_until__lt=now) | Q(claimed_until__gt=now + 2 * LEASE)
        return self.filter(Q(state=Job.State.WAITING) | Q(state=Job.State.RUNNING) & run_out).order_by("pk")

    def still_kept(self) -> Self:
        now = timezone.now()
        forgotten = Q(ended_at=None, kind__in=HOLDING_WORDS, asked_at__lt=now - KEPT_UNFINISHED)
        return self.exclude(Q(ended_at__isnull=False, ended_at__lt=now - KEPT) | forgotten)

    def remove_outdated(self) -> None:
        """Asks first: most often there is nothing to remove, and then nobody has to wait for a writer."""
        outdated = self.exclude(pk__in=Job.objects.still_kept().values("pk"))
        if outdated.exists():
            outdated.delete()

    def claimed(self, claim: uuid.UUID) -> Self:
        return self.filter(claim=claim, state=Job.State.RUNNING)


class Job(models.Model):
    """One piece of work. Whoever makes it holds `claim` until `claimed_until`, and says in time that it still does.

    `title` are the words it is shown under; `payload` holds nothing but ids, hashes and choices, so that what may be seen
    is decided again when it is made, and the part it is at, where it has several. `done` of `total` says how far it is;
    `said` is a sentence for its owner.
    """

    class Kind(models.TextChoices):
        BOOKLET = "booklet", _("booklet")
        IMPORT = "import", _("import")
        LOOKING = "looking", _("look")
        ERASING = "erasing", _("removal")
        OWN_WORDS = "words", _("file of one’s own words")

    class State(models.TextChoices):
        WAITING = "waiting", _("waiting")
        RUNNING = "running", _("being made")
        DONE = "done", _("done")
        FAILED = "failed", _("failed")

    key = models.UUIDField(default=uuid.uuid4, unique=True, editable=False)
    kind = models.CharField(max_length=8, choices=Kind.choices)
    owner = models.ForeignKey(settings.AUTH_USER_MODEL, on_delete=models.CASCADE, related_name="+")
    title = models.CharField(max_length=120)
    payload = models.JSONField(default=dict)
    state = models.CharField(max_length=7, choices=State.choices, default=State.WAITING)
    done = models.PositiveIntegerField(default=0)
    total = models.PositiveIntegerField(default=0)
    said = models.TextField(blank=True)
    attempts = models.PositiveSmallIntegerField(default=0)
    claim = models.UUIDField(null=True, editable=False)
    claimed_until = models.DateTimeField(null=True, editable=False)
    asked_at = models.DateTimeField(default=timezone.now)
    ended_at = models.DateTimeField(null=True)

    objects = JobQuerySet.as_manager()

    class Meta:
        ordering = ["pk"]
        indexes = [models.Index(fields=["kind", "state"], name="job_kind_state")]
        constraints = [
            models.CheckConstraint(
                condition=~Q(state="running") | Q(claim__isnull=False, claimed_until__isnull=False),
                name="job_running_is_claimed",
                violation_error_message=_("Work that goes on is somebody's."),
            )
        ]

    def __str__(self) -> str:
        return f"{self.kind} {self.title}"

    @property
    def is_waiting(self) -> bool:
        return self.state == self.State.WAITING

    @property
    def is_done(self) -> bool:
        return self.state == self.State.DONE

    @property
    def has_failed(self) -> bool:
        return self.state == self.State.FAILED

    @property
    def finished(self) -> bool:
        return self.is_done or self.has_failed

    @property
    def was_interrupted(self) -> bool:
        """Begun by a process that is gone; another goes on with it when the lease has run out."""
        until = self.claimed_until  # a job that is being made always has one: job_running_is_claimed
        return self.state == self.State.RUNNING and until is not None and until < timezone.now()

    def before(self) -> int:
        """How many of its kind come before this one."""
        return Job.objects.unfinished().filter(kind=self.kind, pk__lt=self.pk).count() if self.is_waiting else 0


HOLDING_WORDS = (Job.Kind.BOOKLET, Job.Kind.OWN_WORDS)


class JobFile(models.Model):
    """What a job has made, apart from its row, so that asking how far it is never reads it."""

    job = models.OneToOneField(Job, on_delete=models.CASCADE, primary_key=True, related_name="file")
    content = models.BinaryField()

    def __str__(self) -> str:
        return f"file of {self.job_id}"
