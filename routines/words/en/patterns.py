"""English sentences about patterns and verdicts, by what they are about."""

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
