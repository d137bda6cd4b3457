"""English sentences about where a value is counted, and why, by level band; and the ways to it."""

from ..language import Locating

SENTENCES: dict[str, tuple[str, ...]] = {
    "start": (
        "Yes, {value} is where we start. Point to it.",
        "Yes. {value} is where the count starts: row {row}, column {column}. What do we count next?",
        "{value} is the start itself: row {row}, column {column}. It needs no jump, so it is the {nth} count.",
        "{value} is the start itself: row {row}, column {column}. It takes 0 jumps, so it is the {nth} count.",
    ),
    "here": (
        "Yes, {value} is there: row {row}, column {column}. Point to it.",
        "Yes. From {start}, {jumps} {make} {total}: {value} is in row {row}, column {column}. Is there another way?",
        "From {start} to {value} is {total}, and {jumps} {make} {total}. So {value} is the {nth} count: row {row}, "
        "column {column}.",
        "{value} is {total} away from {start}, and {jumps} {make} exactly {total}: a whole number of jumps. So {value} "
        "is the {nth} count, in row {row}, column {column}.",
    ),
    "later": (
        "Yes, if we go on: {value} comes in {where}.",
        "Yes, if we go on. From {start}, {jumps} {make} {total}: {value} comes in {where}.",
        "It is not on the board yet. From {start} to {value} is {total}, and {jumps} {make} {total}. So {value} would "
        "be the {nth} count: {where}.",
        "It is past the board. {value} is {total} away from {start}, and {jumps} {make} exactly {total}, so {value} "
        "must be the {nth} count: {where}.",
    ),
    "here, on a clock": (
        "Yes, {value} is there: row {row}, column {column}. Point to it.",
        "Yes. {jumps} from {start} {lead} to {value} {part}: row {row}, column {column}. Is there another way?",
        "From {start} to {value} {part} is {total}, and {jumps} {make} {total}. So it is the {nth} count: row {row}, "
        "column {column}.",
        "{value} {part} is {total} away from {start}, and {jumps} {make} exactly {total}. So it is the {nth} count, in "
        "row {row}, column {column}.",
    ),
    "later, on a clock": (
        "Yes, if we go on: {value} comes {part}, in {where}.",
        "Yes, if we go on: {jumps} from {start} {lead} to {value} {part}, in {where}.",
        "It is not on the board yet. The first {asked} comes {part}: {jumps} {make} {total}, so it is the {nth} count, "
        "{turn} time around the clock, {where}.",
        "It is past the board. The first {asked} comes {part}: {jumps} {make} {total}, and no fewer will do. It is the "
        "{nth} count, {turn} time around the clock, {where}.",
    ),
    "behind": (
        "No. We start at {start} and go {way}, away from {value}.",
        "No. The count starts at {start} and goes {way}, so {value} is behind it. Which way would we have to count?",
        "No. The count starts at {start} and goes {way} by {step}, so it never comes back to {value}, {total} behind "
        "the start.",
        "No. {value} lies {total} behind {start}, and every jump of {step} leads further away from it, however long "
        "the count goes on.",
    ),
    "skipped": (
        "No. We say {before}, then {after}. We jump over {value}.",
        "No. {mark} We say {before}, then {after}. We jump over {value}.",
        "No. {mark} From {start}, {jumps} {lead} to {before} and one more to {after}, so {value} is jumped over.",
        "No. {mark} {value} is {total} away from {start}. From {start}, {jumps} {lead} to {before} and one more to {after}, "
        "so it is jumped over.",
    ),
    "skipped at once": (
        "No. We say {before}, then {after}. We jump over {value}.",
        "No. {mark} We say {before}, then {after}. We jump over {value}.",
        "No. {mark} The very first jump leads from {before} to {after}, so {value} is jumped over.",
        "No. {mark} {value} is {total} away from {start}, less than one jump of {step}, so the first jump passes it.",
    ),
    "skipped, on a clock": (
        "No. We say {before}, then {after}. We jump over {value}.",
        "No. {mark} We say {before}, then {after}. Would going on help?",
        "No. {mark} We say {before}, then {after}, and going around the clock again never changes that.",
        "No. {mark} We say {before}, then {after}; a full turn of the clock changes nothing about it, so {value} never "
        "comes.",
    ),
}

MARKS = {
    "even": "Every count here is even, and {value} is odd.",
    "odd": "Every count here is odd, and {value} is even.",
    "ending, one": "Every count here ends in {shown}; {value} ends in {own}.",
    "ending": "The endings here are only {shown}; {value} ends in {own}.",
    "part, one": "The {part} here are always {shown}; {value} has {own}.",
    "part": "The {part} here are only {shown}; {value} has {own}.",
    "left, one": "Past its last whole, every count here has {shown} left; {value} has {own}.",
    "left": "Past the last whole, the counts here have only {shown} left; {value} has {own}.",
    "remainder": "Every count here is {shown} more than a multiple of {modulus}; {value} is {own} more.",
    "multiple": "Every count here is a multiple of {modulus}; {value} is {own} more than a multiple.",
    "not multiple": "{value} is a multiple of {modulus}; every count here is {shown} more than a multiple.",
}

PARTS_OF_DAY = {
    "morning": "in the morning",
    "noon": "at noon",
    "afternoon": "in the afternoon",
    "evening": "in the evening",
    "night": "at night",
    "midnight": "at midnight",
}

WAYS = {
    "down": ("row down", "rows down"),
    "up": ("row up", "rows up"),
    "right": ("right", "right"),
    "left": ("left", "left"),
}

LOCATING = Locating(
    SENTENCES,
    MARKS,
    PARTS_OF_DAY,
    WAYS,
    way="From {known}: {moves}.",
    known="{value}, the {nth} count",
    down_to_zero="Down to 0, ",
    make=("makes", "make"),
    lead=("leads", "lead"),
    above=(
        "column {column}, in today's top line",
        "column {column}, 1 line above today's top line",
        "column {column}, {lines} lines above today's top line",
    ),
    forwards=("up", "down"),
)
