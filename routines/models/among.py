"""A lookup: one of many keys."""

from typing import Any

from django.core.exceptions import EmptyResultSet
from django.db.backends.base.base import BaseDatabaseWrapper
from django.db.models.lookups import In
from django.db.models.sql.compiler import SQLCompiler


class Among(In):
    """`pk__among=[7, 9]`, as `pk__in`; PostgreSQL is given them as one array, for it takes long to read ten thousand numbers."""

    lookup_name = "among"

    def as_postgresql(self, compiler: SQLCompiler, connection: BaseDatabaseWrapper) -> tuple[str, list[Any]]:
        if not self.rhs:
            raise EmptyResultSet
        column, params = self.process_lhs(compiler, connection)
        return f"{column} = ANY(%s::bigint[])", [*params, list(self.rhs)]
