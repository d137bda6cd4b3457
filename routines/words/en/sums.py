"""English sentences about sums and opposites."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "corners.statement": (
        "opposite corners of every 2 by 2 block add to the same",
        "in every 2 by 2 block both diagonals add to the same",
    ),
    "corners.core": ("in a little square, both crosses add to the same",),
    "corners.says": ("adding crosswise in a little square, I get the same",),
    "pair.reason-short": ("{a} + {d} = {b} + {c}",),
    "corners.reason": ("{a} + {d} = {sum} and {b} + {c} = {sum}",),
    "ends.statement": (
        "first and last add to the same as the next two in",
        "pairs from both ends add to the same",
    ),
    "ends.core": ("pairs from both ends add to the same",),
    "ends.says": ("if I pair them from both ends, the sums are equal",),
    "ends.reason": (
        "{a} + {d} = {sum} and {b} + {c} = {sum}",
        "{a} + {d} = {sum}; one side moves {up} {step}, the other {down} {step}, and {b} + {c} = {sum}",
    ),
    "mean.statement": (
        "the middle of every 3 by 3 block is its mean",
        "in every 3 by 3 block, 9 × the middle is the total",
    ),
    "mean.core": ("the middle of nine is the fair share",),
    "mean.reason": ("the block's 9 counts add to {sum}, and 9 × {factor} = {sum}",),
    "totals.row.statement": (
        "each row adds to {diff} {more} than the row above",
        "row totals go {up} {diff} from row to row",
    ),
    "totals.column.statement": (
        "each column adds to {diff} {more} than the one before",
        "column totals go {up} {diff} from column to column",
    ),
    "totals.open.statement": ("line totals change by the same each time",),
    "totals.open.core": ("the totals of the lines change by the same",),
    "totals.core": ("each {line} adds to {diff} {more} than the one before",),
    "totals.says": ("if I add up a {line}, the next has {diff} {more}",),
    "totals.reason": (
        "{k} counts, each {each} {more}, make {diff} {more}: {k} × {each} = {diff}",
        "{k} counts in a {line}, each {each} {more} than in the {line} before, and {k} × {each} = {diff}",
    ),
    "totals.reason-short": ("{k} × {each} = {diff}",),
    "opposites.statement": ("{pairs}: opposites pair up", "the opposites here are {pairs}"),
    "opposites.pair": ("{a} and {b}",),
    "opposites.core": (
        "{a} and {b} are equally far from zero",
        "{a} and {b} match, one on each side of zero",
    ),
    "opposites.reason": (
        "from {low} to 0 is {far}, and from 0 to {high} is {far}",
        "{low} is {far} below 0 and {high} is {far} above 0",
    ),
    "opposites.until": ("; at {until} another pair comes",),
    "opposites.note": ("at {until} one more pair comes, {low} and {high}",),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "sums": (
        "Try it in another place. What stays the same, and what moves?",
        "Which numbers did you add? Show us where they stand.",
    ),
    "opposites": (
        "Does every one here have a partner? How can you tell?",
        "How far is each of the two from zero? Show the jumps.",
    ),
}
