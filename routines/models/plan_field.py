"""What is declared of a field of the plan document beside its type. Pydantic, which reads plans, finds its rules here.

It is not imported: it takes 9 MB, and what stands as plans are written is taken without it (`plan_taking.py`).
"""

from dataclasses import dataclass
from typing import Any

READ_AS_THEY_ARE = ("str", "int")
"""What stands in its place is never made of something else, such as a number of its digits."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Field:
    """Bounds of a text, number or list, and what forms and the published schema say of it. `example` is what may be written."""

    title: str = ""
    description: str = ""
    example: str = ""
    ge: int | None = None
    le: int | None = None
    min_length: int | None = None
    max_length: int | None = None
    strip_whitespace: bool | None = None

    def __get_pydantic_core_schema__(self, source: Any, handler: Any) -> dict[str, Any]:
        schema: dict[str, Any] = handler(source)
        names = ("ge", "le", "min_length", "max_length", "strip_whitespace")
        bounds = {name: bound for name in names if (bound := getattr(self, name)) is not None}
        strict = {"strict": True} if schema["type"] in READ_AS_THEY_ARE else {}
        return schema | strict | bounds

    def __get_pydantic_json_schema__(self, core_schema: Any, handler: Any) -> dict[str, Any]:
        example = [self.example] if core_schema["type"] == "tuple" else self.example
        said = {"title": self.title, "description": self.description, "examples": [example] if self.example else ""}
        schema: dict[str, Any] = handler(core_schema)
        return schema | {name: words for name, words in said.items() if words}
