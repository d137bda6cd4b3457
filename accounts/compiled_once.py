"""Querysets whose SQL is written once: Django writes it anew at each view, which takes ten times as long as the database does.

    @compiled_once
    def lessons_since(teacher: User, first: date) -> QuerySet[Lesson]:
        return Lesson.objects.taught_by(teacher).filter(taught_on__gte=first)

    lessons_since(user, today)            a list of lessons, as list(...) of the queryset would give
    lessons_since.queryset(user, today)   the queryset itself
    lessons_since.how_many(user, today)   the number of its rows

The function is asked with stand-ins, twice with different ones, and from then on their places in the SQL are filled. So
whole numbers, days, moments, rows and lists of values that differ may only be values in the query. What it decides by is text,
True, None, how long a list is, of a row the columns that its model names in `SHAPES_QUERIES`, and whatever is given by name.
All else is refused when it is first asked: another column of a row, a query of its own, arithmetic. It must not look at the
clock. Tests compare each such query with the one that is written anew (tests/conftest.py).
"""

from collections.abc import Callable, Hashable, Mapping, Sequence
from dataclasses import dataclass
from datetime import UTC, date, datetime, timedelta
from functools import lru_cache, partial, update_wrapper
from itertools import chain, count
from operator import itemgetter
from typing import Any, Generic, NamedTuple, ParamSpec, TypeVar

from django.core.exceptions import EmptyResultSet
from django.db import DEFAULT_DB_ALIAS, connection, connections
from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.models import Model, QuerySet
from django.db.models.query import FlatValuesListIterable, ModelIterable, ValuesListIterable, get_related_populators
from django.db.models.sql.compiler import SQLCompiler
from django.utils import timezone
from django.utils.translation import get_language

from .rows_made import joiner_of, maker_of

P = ParamSpec("P")
Row = TypeVar("Row")

QUERIES_REMEMBERED = 500
# Stand-ins fit the smallest column: Django leaves a comparison out that none of its numbers could meet.
STAND_INS = (10_001, 20_002)
DAY, MOMENT = date(1000, 1, 1), datetime(1000, 1, 1, 5, 17, tzinfo=UTC)
# What is larger is asked for in the ordinary way, which knows what each column can hold.
LARGEST = 2**31 - 1


class CompiledOnce(Generic[P, Row]):
    """A function that makes a queryset, as one that gives its rows."""

    def __init__(self, make: Callable[P, QuerySet[Any, Row]]) -> None:
        self.queryset = make
        update_wrapper(self, make)

    def __call__(self, *args: P.args, **options: P.kwargs) -> list[Row]:
        values = values_of(args)
        if any(isinstance(value, int) and abs(value) > LARGEST for value in values):
            return list(self.queryset(*args, **options))
        kept = self.compiled(args, options)
        return [] if kept is None else kept.rows(values)

    def how_many(self, *args: P.args, **options: P.kwargs) -> int:
        kept = self.compiled(args, options)
        return 0 if kept is None else kept.how_many(values_of(args))

    def compiled(self, args: Sequence[Any], options: Mapping[str, Hashable]) -> "Compiled | None":
        """None where such arguments find nothing. Raises TypeError where the function does what it may not."""
        shapes = tuple(map(_shape, args))
        return _compiled(
            self.queryset, shapes, tuple(options.items()), get_language(), timezone.get_current_timezone_name()
        )


compiled_once = CompiledOnce


def hold(row: Model, name: str, found: list[Any]) -> None:
    """Let `row.name.all()` be what was found, as after `prefetch_related`."""
    queryset = getattr(row, name).all()
    queryset._result_cache = found
    queryset._prefetch_done = True
    row._prefetched_objects_cache = {**getattr(row, "_prefetched_objects_cache", {}), name: queryset}  # type: ignore[attr-defined]


def held(row: Model, name: str) -> list[Any] | None:
    """What `row.name.all()` was let be, None where nothing was."""
    found = getattr(row, "_prefetched_objects_cache", {}).get(name)
    return None if found is None else list(found)


class Shape(NamedTuple):
    """All that the SQL may follow from in an argument. kind: "as it is" with its value, "row" with its columns, "many", "one"."""

    kind: str
    type: type[Any]
    says: Any = None


@dataclass(frozen=True, slots=True)
class Compiled:
    """places: of each parameter which value stands there, None for one that stands there always.

    converters: by the place of a column, what makes its value of what the database gives. read: makes a result of a row.
    """

    sql: str
    params: tuple[Any, ...]
    places: tuple[int | None, ...]
    converters: tuple[tuple[int, tuple[Sequence[Callable[[Any, Any, Any], Any]], Any]], ...]
    read: Callable[[Sequence[Any]], Any]

    def filled(self, values: Sequence[Any]) -> tuple[Any, ...]:
        """The parameters with these values."""
        return tuple(
            param if place is None else _as_stored(values[place], param)
            for param, place in zip(self.params, self.places, strict=True)
        )

    def rows(self, values: Sequence[Any]) -> list[Any]:
        own = connections[DEFAULT_DB_ALIAS]  # each thread has its own
        with own.cursor() as cursor:
            cursor.execute(self.sql, self.filled(values))
            found = cursor.fetchall()
        if self.converters:
            found = [self._converted(row, own) for row in found]
        return [self.read(row) for row in found]

    def _converted(self, row: Sequence[Any], own: BaseDatabaseWrapper) -> list[Any]:
        values = list(row)
        for at, (converters, expression) in self.converters:
            value = values[at]
            for convert in converters:
                value = convert(value, expression, own)
            values[at] = value
        return values

    def how_many(self, values: Sequence[Any]) -> int:
        with connection.cursor() as cursor:
            cursor.execute(f"SELECT COUNT(*) FROM ({self.sql}) counted", self.filled(values))  # noqa: S608
            return int(cursor.fetchone()[0])


@lru_cache(maxsize=QUERIES_REMEMBERED)
def _compiled(
    make: Callable[..., QuerySet[Any, Any]],
    shapes: tuple[Shape, ...],
    options: tuple[tuple[str, Hashable], ...],
    language: str | None,
    zone: str,
) -> Compiled | None:
    """The language and the time zone of the page are in what some queries say."""
    (first, one), (second, other) = (_written(make, shapes, dict(options), number) for number in STAND_INS)
    if one is None or other is None:
        return None
    (queryset, compiler, sql, params), (_, _, again, changed) = one, other
    if sql != again or queryset._known_related_objects:
        raise TypeError(f"{make.__qualname__} makes another query of each argument.")
    places = tuple(
        None if param == turned else _place(param, turned, first, second)
        for param, turned in zip(params, changed, strict=True)
    )
    converters = compiler.get_converters([column for column, *_ in compiler.select[: compiler.col_count]])
    return Compiled(sql, tuple(params), places, tuple(converters.items()), _reader(make, queryset, compiler))


def _reader(
    make: Callable[..., Any], queryset: QuerySet[Any, Any], compiler: SQLCompiler
) -> Callable[[Sequence[Any]], Any]:
    """What the queryset itself would do with each row, prepared once: that takes it longer than the database does."""
    way = queryset._iterable_class
    if queryset._prefetch_related_lookups:  # type: ignore[attr-defined]
        raise TypeError(f"{make.__qualname__} fetches further rows, which are to be asked for by themselves.")
    if way is FlatValuesListIterable:
        return itemgetter(0)
    if way is ValuesListIterable:
        columns = compiler.col_count  # behind them stand those that it is only ordered by
        return lambda row: tuple(row[:columns])
    if way is ModelIterable:
        return _model_reader(compiler, queryset.db)
    return partial(_refuse_rows, make.__qualname__)


def _refuse_rows(name: str, row: Sequence[Any]) -> None:
    raise TypeError(f"{name} gives neither rows of a model nor a list of values: it can only be counted.")


def _model_reader(compiler: SQLCompiler, db: str) -> Callable[[Sequence[Any]], Model]:
    known: dict[str, Any] = compiler.klass_info
    model, fields = known["model"], known["select_fields"]
    columns = slice(fields[0], fields[-1] + 1)
    names = [column.target.attname for column, *_ in compiler.select[columns]]
    make = maker_of(model, names, db)
    populators = get_related_populators(known, compiler.select, db)  # type: ignore[call-arg]  # the stubs know the next Django
    joined = [joiner_of(one) for one in populators]
    annotations = tuple((compiler.annotation_col_map or {}).items())

    def read(row: Sequence[Any]) -> Model:
        found = make(row[columns])
        for join in joined:
            join(row, found)
        for name, at in annotations:
            setattr(found, name, row[at])
        return found

    return read


def _place(param: Any, turned: Any, first: Sequence[Any], second: Sequence[Any]) -> int:
    """Which stand-in became this parameter, and in the other set that one."""
    for place, (one, other) in enumerate(zip(first, second, strict=True)):
        if (_as_stored(one, param), _as_stored(other, turned)) == (param, turned):
            return place
    raise TypeError(f"An argument is changed before it is asked for: {param}.")


def _written(
    make: Callable[..., QuerySet[Any, Any]], shapes: Sequence[Shape], options: dict[str, Any], number: int
) -> tuple[list[Any], Any]:
    """The values of a set of stand-ins, and what is written with them."""
    numbers = count(number)
    args = [_stand_in(shape, numbers) for shape in shapes]
    with connection.execute_wrapper(_refuse):
        queryset = make(*args, **options)
        compiler = queryset.query.get_compiler(queryset.db)
        try:
            sql, params = compiler.as_sql()
        except EmptyResultSet:
            return values_of(args), None
    return values_of(args), (queryset, compiler, sql, params)


def _refuse(*args: Any) -> None:
    raise TypeError("A queryset that is compiled once asks the database before it is whole.")


def _shape(arg: Any) -> Shape:
    if arg is None or isinstance(arg, str | bool):
        return Shape("as it is", type(arg), arg)
    if isinstance(arg, Model):
        model = arg.__class__  # a request's person is of another type until she is read
        return Shape("row", model, tuple((name, getattr(arg, name)) for name in getattr(model, "SHAPES_QUERIES", ())))
    if isinstance(arg, list | tuple):
        return Shape("many", type(arg[0]) if arg else int, len(arg))
    return Shape("one", type(arg))


def values_of(args: Sequence[Any]) -> list[Any]:
    """The values of the arguments in the order of their stand-ins."""
    return list(chain.from_iterable(map(_values, args)))


def _values(arg: Any) -> Sequence[Any]:
    if arg is None or isinstance(arg, str | bool):
        return ()
    if isinstance(arg, Model):
        return (arg.pk,)
    return arg if isinstance(arg, list | tuple) else (arg,)


def _stand_in(shape: Shape, numbers: "count[int]") -> Any:
    if shape.kind == "as it is":
        return shape.says
    if shape.kind == "many":
        return [_stand_in(Shape("one", shape.type), numbers) for _ in range(shape.says)]
    number = next(numbers)
    if shape.kind == "row":
        return _row(shape.type, {shape.type._meta.pk.attname: number, **dict(shape.says)})
    if shape.type is int:
        return number
    if shape.type is str:
        return f"a stand-in, number {number}"
    if shape.type is date:
        return DAY + timedelta(days=number)
    if shape.type is datetime:
        return MOMENT + timedelta(days=number)
    raise TypeError(f"There is no stand-in for {shape.type}.")


def _row(model: type[Model], known: dict[str, Any]) -> Model:
    """Whoever looks at another column asks the database for it, which is refused."""
    names = [field.attname for field in model._meta.concrete_fields if field.attname in known]
    return model.from_db(None, names, [known[name] for name in names])


def _as_stored(value: Any, param: Any) -> Any:
    """A value as this database is given it in the place of a parameter."""
    if isinstance(value, datetime):
        return connection.ops.adapt_datetimefield_value(value)
    if isinstance(value, date):
        return connection.ops.adapt_datefield_value(value)
    return type(param)(value) if isinstance(value, int) and isinstance(param, int) else value
