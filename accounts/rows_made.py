"""A row of the database as an object, as Model.from_db makes it, in a fifth of the time.

What it leaves out is what no model of ours has: a constructor of its own, and somebody who waits for pre_init or post_init
(tests/accounts/test_rows_made.py holds them to it).
"""

from collections.abc import Callable, Sequence
from operator import itemgetter
from typing import Any

from django.db.models import Model
from django.db.models.base import ModelState

Values = Sequence[Any]


def maker_of(model: type[Model], names: Sequence[str], db: str) -> Callable[[Values], Model]:
    """What makes an object of the values of these columns, given in their order. The other columns are read when asked for."""

    def make(values: Values) -> Model:
        made = model.__new__(model)
        made._state = ModelState()
        made._state.adding, made._state.db = False, db
        made.__dict__.update(zip(names, values, strict=True))
        return made

    return make


def joiner_of(populator: Any) -> Callable[[Values, Model | None], None]:
    """As RelatedPopulator.populate: what puts the row of `select_related` beside that which names it."""
    make = maker_of(populator.model_cls, populator.init_list, populator.db)
    columns = populator.reorder_for_init or itemgetter(slice(populator.cols_start, populator.cols_end))
    key, further = populator.pk_idx, [joiner_of(one) for one in populator.related_populators]

    def join(row: Values, to: Model | None) -> None:
        values = columns(row)
        made = None if values[key] is None else make(values)
        if made is not None:
            for one in further:
                one(row, made)
        populator.local_setter(to, made)
        if made is not None:
            populator.remote_setter(made, to)

    return join
