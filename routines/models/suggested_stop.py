"""A stop that the engine suggests, as it stands in a plan when it is taken: what only a teacher writes is empty."""

from routines.models.plan_document import Stop
from routines.words import SpokenStop


def suggested_stop(offered: SpokenStop) -> Stop:
    return Stop(
        after=offered.after,
        question=offered.question,
        answer=offered.answer,
        routes=tuple(offered.routes),
        think=offered.think,
        partner=offered.partner,
        share=offered.share,
    )
