"""English sentences about landmarks and how many counts lie between them."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "lie.column.statement": ("the {marks} stand in column {i}", "all the {marks} are in column {i}"),
    "lie.row.statement": ("the {marks} lie in row {i}", "all the {marks} are in row {i}"),
    "lie.columns.statement": ("the {marks} make columns {i}", "columns {i} hold the {marks}"),
    "lie.rows.statement": ("the {marks} make rows {i}", "rows {i} hold the {marks}"),
    "lie.down-right.statement": ("the {marks} walk down to the right", "the {marks} go down and right, one by one"),
    "lie.down-left.statement": ("the {marks} walk down to the left", "the {marks} go down and left, one by one"),
    "lie.scattered.statement": (
        "every {kth} count lands on {a_mark}, from the {nth} on",
        "{marks} come every {k} counts, from the {nth} on",
    ),
    "lie.scattered-first.statement": ("every {kth} count lands on {a_mark}", "{marks} come every {k} counts"),
    "lie.column.core": (
        "the {marks} are all in column {i}",
        "all the {marks} stand in column {i}",
    ),
    "lie.row.core": (
        "the {marks} are all in row {i}",
        "all the {marks} lie in row {i}",
    ),
    "lie.columns.core": (
        "the {marks} make columns {i}",
        "columns {i} have only {marks} in them",
        "the {marks} fill whole columns",
    ),
    "lie.rows.core": (
        "the {marks} make rows {i}",
        "rows {i} have only {marks} in them",
        "the {marks} fill whole rows",
    ),
    "lie.down-right.core": (
        "the {marks} go down like stairs to the right",
        "the {marks} move one down and one right",
    ),
    "lie.down-left.core": (
        "the {marks} go down like stairs to the left",
        "the {marks} move one down and one left",
    ),
    "lie.scattered.core": ("every {kth} one we say lands on {a_mark}",),
    "lie.scattered.says": ("we land on {a_mark} every {k} counts",),
    "lie.reason-line": ("{n} in a {fills}: {made}",),
    "lie.reason-lines": ("{k} counts are {across} {line_names}: {made}",),
    "lie.reason-one-more": ("{made}, and {k} is 1 more than the {n} in a {fills}",),
    "lie.reason-one-less": ("{made}, and {k} is 1 less than the {n} in a {fills}",),
    "lie.note-outside": ("{until} lands on {a_mark} too, in row {row}, column {column}",),
    "many.from": ("from {edge} on, {statement}",),
    "many.below": ("below {edge}, {statement}",),
    "many.one.statement": ("each {stretch} holds {k} counts",),
    "many.one-only.statement": ("each {stretch} holds 1 count",),
    "many.turns.statement": ("each {stretch} in turn holds {series} counts, over and over",),
    "many.one.core": ("every {stretch} has {k} of our counts in it",),
    "many.one.says": ("we say {k} in each {stretch}, every time",),
    "many.one-only.core": ("every {stretch} has one of our counts in it",),
    "many.one-only.says": ("we say just one in each {stretch}",),
    "many.turns.core": ("each {stretch} in turn holds {series}, then again",),
    "many.turns.says": ("how many we say in each {stretch} makes a pattern",),
    "many.evidence": ("from {a} to just before {b} we say {some}", "starting at {a} and before {b} we say {some}"),
    "many.evidence-long": (
        "from {a} to just before {b} we say {n}, first {first} and last {last}",
        "starting at {a} and before {b} we say {n}, from {first} to {last}",
    ),
    "many.evidence-short": ("there are {n} from {a} to just before {b}",),
    "many.note": ("it is different at {until}", "that changes at {until}"),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "landmarks": (
        "Find them as we say them. How many jumps from one to the next?",
        "Where will the next one stand? Show us how you know.",
    ),
    "how-many": (
        "Circle them in one stretch. How many will the next one have?",
        "Where does one stretch end and the next begin? Count again there.",
    ),
}
