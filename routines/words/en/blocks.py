"""English sentences about what stays or comes back: digit, digit-sum, remainder."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "always.statement": ("{feats} are always {x}", "the {feats} are {x} in every count"),
    "always.shown.statement": ("the {feat} {stay} {x}",),
    "always.core": ("the {feat} {be} always {x}",),
    "always.says": (
        "here the {feat} {be} always {x}",
        "in all the ones we say the {feats} are {x}",
    ),
    "turns.statement": ("{feats} take turns: {series}",),
    "turns.core": (
        "the {short} take turns, {x} and {y}",
        "the {feats} take turns, first {x}, then {y}",
        "the {feats} go {x}, {y}, then {x}, {y} again",
        "the {feats} take turns",
    ),
    "repeat.statement": ("{feats} repeat every {k} counts: {series}",),
    "repeat.core": (
        "the {short} come back after every {k} counts",
        "the {feats} come around again every {k} counts",
        "after {k} counts the {feats} start over the same way",
    ),
    "keep.statement": ("{feats} stay in their {line}: {series}", "each {line} keeps its {feat}: {series}"),
    "keep.core": (
        "in each {line} the {short} stay the same",
        "the {feats} stay the same in each {line}",
        "in each {line} the {feats} stay the same",
    ),
    "turns-line.statement": ("{feats} take turns {each_way}: {series} {in_line}",),
    "turns-same.statement": (
        "{feats} take turns {each_way}: {series}",
        "in every {line} the {feats} take turns: {series}",
    ),
    "turns-line.core": (
        "{each_way} the {short} take turns",
        "the {feats} take turns when we go {each_way}",
        "{each_way} the {feats} take turns",
    ),
    "repeat-line.statement": ("{feats} repeat every {k} counts {each_way}: {series} {in_line}",),
    "repeat-same.statement": (
        "{feats} repeat every {k} counts {each_way}: {series}",
        "every {line} repeats its {feats} after {k}: {series}",
    ),
    "repeat-line.core": (
        "{each_way} the {short} come back after {k}",
        "{each_way} the {feats} come around again after {k}",
        "the {feats} come back after {k} {each_way}",
    ),
    "any-keep.statement": ("{feats} stay in their {line}", "each {line} keeps its {feat}"),
    "any-turns.statement": ("{feats} take turns {each_way}",),
    "any-repeat.statement": ("{feats} repeat every {k} counts {each_way}",),
    "any-always.statement": ("{feats} never change",),
    "any-turns-count.statement": ("{feats} take turns",),
    "any-repeat-count.statement": ("{feats} repeat every {k} counts",),
    "any.statement": ("{feats} make a pattern {each_way}",),
    "any-count.statement": ("{feats} make a pattern",),
    "lines.statement": ("{statement} ({lines} {numbers})",),
    "reason.pure": (
        "{jumps}, and {total} is {pure}",
        "{jumps}, and {total} {more} leaves the {feats} alone",
    ),
    "reason.jumps": ("{jumps}, so the {feats} come back", "{jumps}, and that leaves the {feats} as they were"),
    "reason.span": (
        "{in_line}, from {a} to {b}, the {feats} stay {x}",
        "from {a} to {b} {in_line} the {short} stay {x}",
    ),
    "reason.span-count": ("from {a} to {b} the {feats} stay {x}",),
    "reason.list": (
        "{in_line} the {feats} of {some} are {series}",
        "{in_line} the {feats} are {series}",
        "{in_line} the {short} are {series}",
    ),
    "reason.list-count": ("the {feats} of {some} are {series}", "at the start the {feats} are {series}"),
    "reason.sums": ("{sums}",),
    "all.statement": ("every count lands on {a_mark}", "all counts are {marks}"),
    "all.core": ("every one we say lands on {a_mark}", "all the ones we say are {marks}"),
    "all.reason": ("{a} is {pure_a}, and each jump of {d} is {pure_d}",),
    "past.statement": ("every count is {r} past {a_mark}",),
    "past.core": ("every one is {r} past {a_mark}", "each one we say is {r} past {a_mark}"),
    "past.says": ("we are always {r} past {a_mark}",),
    "past.reason": ("{a} is {r} past {m_a}, and each jump of {d} is {pure_d}", "{a} is {r} past {m_a}, and {jumps}"),
    "parity.all.statement": ("every count is {x}",),
    "parity.all.core": (
        "all the numbers here are {x}",
        "every number we say is {x}",
    ),
    "parity.all.says": ("we only say {x} numbers",),
    "parity.all.reason": ("{a} is {x} and each jump is {d}", "{a} is {x}, and a jump of {d} is even"),
    "parity.turns.statement": ("{x} and {y} take turns",),
    "parity.turns.core": (
        "{x} and {y} take turns: {x}, {y}, {x}, {y}",
        "it goes {x}, {y}, {x}, {y}, all the way",
    ),
    "parity.turns.reason": (
        "{a} is {x}, and a jump of {d} is odd, so {b} is {y}",
        "a jump of {d} is odd: from {a}, {x}, we come to {b}, {y}",
    ),
    "parity.keep.statement": ("each {line} is all even or all odd: {series}", "{lines} are {series} all through"),
    "parity.keep.core": ("each {line} is all even or all odd", "in a {line} they are all even or all odd"),
    "parity.keep.reason": ("{jumps}, and {total} is even", "{jumps}, and {total} {more} keeps even numbers even"),
    "parity.turns-line.statement": ("even and odd take turns {each_way}",),
    "parity.turns-line.core": (
        "even and odd take turns when we go {each_way}",
        "{each_way} it goes {x}, {y}, {x}, {y}",
    ),
    "parity.turns-line.reason": ("{jumps}, and {total} is odd", "{jumps}, and {total} {more} turns even into odd"),
    "note.digit": ("at {until} the {feat} {be} {y}, not {x}", "at {until} the {feat} {be} {y} where {x} was due"),
    "note.restart": ("at {until} the {feat} {restart} {y}",),
    "note.plain": ("it stops at {until}",),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "digit": (
        "Which digit do you mean? Follow it with your finger, line by line.",
        "What will that digit be in the next line? How can you tell?",
    ),
    "digit of a part": (
        "Which part of each one do you mean? Follow it with your finger.",
        "What will that part be in the next line? How can you tell?",
    ),
    "digit-sum": (
        "Add the digits of one more. What do you get there?",
        "Choose one from another line and add its digits. What do you notice?",
    ),
    "remainder": (
        "Which ones on the grid show it? What will the next one be?",
        "How can you tell for one that is not on the board yet?",
    ),
}
