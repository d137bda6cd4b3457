"""Spanish sentences about patterns and verdicts, by what they are about."""

from . import blocks, clocks, frames, landmarks, steps, sums, verdicts

PATTERNS: dict[str, tuple[str, ...]] = {
    **steps.SENTENCES,
    **clocks.SENTENCES,
    **blocks.SENTENCES,
    **landmarks.SENTENCES,
    **sums.SENTENCES,
    **verdicts.SENTENCES,
    **frames.SENTENCES,
}

# By the family of the pattern that a child named; of a part where that is read off a part, not off a digit.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    **steps.ASKED_BACK,
    **blocks.ASKED_BACK,
    **landmarks.ASKED_BACK,
    **sums.ASKED_BACK,
}
