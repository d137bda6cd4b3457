"""The one error of the counting engine: a sentence that a teacher reads beside the field at fault."""


class CountError(ValueError):
    """Something typed or asked for cannot be a count; `field` names where, `str()` says what to do.

    >>> error = CountError("step", "Choose a step other than 0.")
    >>> error.field, str(error)
    ('step', 'Choose a step other than 0.')
    """

    def __init__(self, field: str, message: str) -> None:
        super().__init__(message)
        self.field = field
        self.message = message

    def __reduce__(self) -> tuple[type["CountError"], tuple[str, str]]:
        return type(self), (self.field, self.message)
