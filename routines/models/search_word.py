"""The bank's search as rows: each word of a count's texts once, found by how it begins, on every database alike.

The words are those of two columns of the routine, so whoever writes these calls `write_words` in the same transaction.
"""

from collections.abc import Iterable
from typing import Any, Self

from django.db import models
from django.db.backends.base.base import BaseDatabaseWrapper

from .searched_words import Asked, words_in

LAST_SIGN = "\U0010ffff"


class PlainOrderField(models.CharField):  # type: ignore[type-arg]
    """Text in the order of its code points, so that all words with one beginning stand together.

    SQLite compares so by itself; PostgreSQL would go by the language that its database was made with.
    """

    def db_parameters(self, connection: BaseDatabaseWrapper) -> Any:
        collation = "C" if connection.vendor == "postgresql" else None
        return super().db_parameters(connection) | {"collation": collation}


class SearchWordQuerySet(models.QuerySet["SearchWord"]):
    def meeting(self, asked: Asked) -> Self:
        """The rows of a word that is looked for."""
        if asked.whole:
            return self.filter(word=asked.word)
        return self.filter(word__gte=asked.word, word__lt=asked.word + LAST_SIGN)


class SearchWord(models.Model):
    routine = models.ForeignKey(
        "routines.Routine", on_delete=models.CASCADE, related_name="search_words", db_index=False
    )
    word = PlainOrderField(max_length=40)
    in_title = models.BooleanField()

    objects = SearchWordQuerySet.as_manager()

    class Meta:
        # Of each word the counts that have it, in titles and elsewhere apart, in the order in which a search shows them.
        indexes = [models.Index(fields=["word", "in_title", "routine"], name="searchword_by_word")]
        constraints = [
            models.UniqueConstraint(fields=["routine", "word"], name="searchword_once_a_routine"),
        ]

    def __str__(self) -> str:
        return f"{self.word} of {self.routine_id}"


def words_of(title: str, search_text: str) -> dict[str, bool]:
    """Each word of a routine's texts, and whether it stands in the title."""
    in_title = words_in(title)
    return {word: word in in_title for word in words_in(search_text) | in_title}


def write_words(routine: Any) -> None:
    """Bring the rows of a routine to its texts as they are."""
    wanted = words_of(routine.title, routine.search_text)
    rows = SearchWord.objects.filter(routine=routine)
    kept = dict(rows.values_list("word", "in_title"))
    gone = [word for word, in_title in kept.items() if wanted.get(word) is not in_title]
    new = [word for word, in_title in wanted.items() if kept.get(word) is not in_title]
    if gone:
        rows.filter(word__in=gone).delete()
    SearchWord.objects.bulk_create(rows_of(routine.pk, {word: wanted[word] for word in new}))


def rows_of(routine: int, words: dict[str, bool]) -> Iterable[SearchWord]:
    return [SearchWord(routine_id=routine, word=word, in_title=in_title) for word, in_title in words.items()]
