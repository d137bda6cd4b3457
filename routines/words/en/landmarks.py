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
        "{the_marks} are all in column {i}",
        "{the_marks} stand in column {i}",
    ),
    "lie.row.core": (
        "{the_marks} are all in row {i}",
        "{the_marks} lie in row {i}",
    ),
    "lie.columns.core": (
        "{the_marks} make columns {i}",
        "columns {i} have only {marks} in them",
        "{the_marks} fill whole columns",
    ),
    "lie.rows.core": (
        "{the_marks} make rows {i}",
        "rows {i} have only {marks} in them",
        "{the_marks} fill whole rows",
    ),
    "lie.down-right.core": (
        "{the_marks} go down like stairs to the right",
        "{the_marks} move one down and one right",
        "{the_marks} go down like stairs",
    ),
    "lie.down-left.core": (
        "{the_marks} go down like stairs to the left",
        "{the_marks} move one down and one left",
        "{the_marks} go down like stairs",
    ),
    "lie.scattered.core": ("from the {nth} on, every {kth} one lands on {a_mark}",),
    "lie.scattered-first.core": ("every {kth} one we say lands on {a_mark}",),
    "lie.scattered.says": ("we land on {a_mark} every {k} counts",),
    "lie.scattered-first.says": ("we land on {a_mark} every {k} counts",),
    "lie.scattered.ending.core": ("from the {nth} on, every {kth} ends in {ending}",),
    "lie.scattered-first.ending.core": ("every {kth} ends in {ending}",),
    "lie.reason-line": ("{n} in a {fills}: {made}",),
    "lie.reason-times": ("{made}, and {n} in a {fills} is {times} times {k}, so they stay in their {stay_in}",),
    "lie.reason-times-short": ("every {kth} one, and {n} in a {fills} is {times} times {k}",),
    "lie.reason-lines": ("{k} counts are {across} {line_names}: {made}",),
    "lie.reason-one-more": ("{made}, and {k} is 1 more than the {n} in a {fills}",),
    "lie.reason-one-less": ("{made}, and {k} is 1 less than the {n} in a {fills}",),
    "lie.note-outside": ("{until} lands on {a_mark} too, in row {row}, column {column}",),
    "many.from": ("from {edge} on, {statement}",),
    "many.below": ("below {edge}, {statement}",),
    "many.one.statement": ("each {stretch} has {k} counts",),
    "many.one-only.statement": ("each {stretch} has 1 count",),
    "many.turns.statement": ("there are {series} counts from one {stretch} to the next, over and over",),
    "many.lines.statement": ("each {stretch} has {k} counts, one {line} each",),
    "many.crossing-one.statement": ("there is 1 count from one {stretch} to the next",),
    "many.crossing.core": ("we say {k} to a {stretch}",),
    "many.crossing-one.core": ("we say one to a {stretch}",),
    "many.one.core": ("every {stretch} has {k} of our counts",),
    "many.one.says": ("we say {k} in each {stretch}",),
    "many.one-only.core": ("every {stretch} has one of our counts",),
    "many.one-only.says": ("we say just one in each {stretch}",),
    "many.turns.core": (
        "we say {series}, then {series} again, {stretch} by {stretch}",
        "we say {series}, over and over, {stretch} by {stretch}",
    ),
    "many.turns.says": ("we say {series} to a {stretch}, over and over",),
    "many.long.core": ("how many in each {stretch} comes around again",),
    "many.lines.core": ("every {stretch} has {k} of our counts, one {line}",),
    "many.tens.core": ("we say {tens}",),
    "many.in-tens": ("{k} in the {tens_name}",),
    "many.one-in-tens": ("only one in the {tens_name}",),
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
        "Circle the ones in one stretch. How many are in the stretch after it?",
        "Where does one stretch end and the next begin? Count again there.",
    ),
}
