"""The words that stand in the bank's search and begin as one that is looked for, and how far one goes to meet each."""

from dataclasses import dataclass

from django.db import connection

from .search_word import LAST_SIGN, SearchWord
from .searched_words import Asked

MOST_SPELLINGS = 16
"""Of a word looked for; one that more words begin with is looked up where counts are come by."""

LOOKED_AHEAD = 200
"""Counts by which it is told how often a word is met."""

# Each word is found from the one before, so that nothing of the counts that have it is read; then one count of it, so many
# from the newest. (The bench and the tests of plans know a query by its SELECT.)
_SPELLED = """\
SELECT word, titled, elsewhere FROM (
    WITH RECURSIVE spelled(word) AS (
        SELECT MIN(word) FROM {table} WHERE word >= %s AND word <= %s
        UNION ALL
        SELECT (SELECT MIN(word) FROM {table} WHERE word > spelled.word AND word <= %s)
        FROM spelled WHERE spelled.word IS NOT NULL
    )
    SELECT word, {titled} AS titled, {elsewhere} AS elsewhere
    FROM spelled WHERE word IS NOT NULL LIMIT {most}
) found"""
_REACH = (
    "(SELECT routine_id FROM {table} WHERE word = spelled.word AND in_title = {flag}"
    " ORDER BY routine_id DESC LIMIT 1 OFFSET {ahead})"
)


@dataclass(frozen=True, slots=True)
class Spelling:
    """A word as it stands in titles or elsewhere.

    reach: the key of a count so far from the newest that `LOOKED_AHEAD` counts newer than it have the word; 0 where fewer
    have it at all. So the lower it is the more seldom the word is met.
    """

    word: str
    in_title: bool
    reach: int


def spellings_of(asked: Asked) -> list[Spelling] | None:
    """Where counts have what is looked for, each word in titles and elsewhere; None of one that too many words begin with."""
    last = asked.word if asked.whole else asked.word + LAST_SIGN
    table = SearchWord._meta.db_table
    titled, elsewhere = (_REACH.format(table=table, flag=flag, ahead=LOOKED_AHEAD) for flag in ("TRUE", "FALSE"))
    sql = _SPELLED.format(table=table, titled=titled, elsewhere=elsewhere, most=MOST_SPELLINGS + 1)
    with connection.cursor() as cursor:
        cursor.execute(sql, [asked.word, last, last])
        found = cursor.fetchall()
    if len(found) > MOST_SPELLINGS:
        return None
    return [
        Spelling(word, in_title, reach or 0)
        for word, *reaches in found
        for in_title, reach in zip((True, False), reaches, strict=True)
    ]
