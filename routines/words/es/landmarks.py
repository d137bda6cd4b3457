"""Spanish sentences about landmarks and how many counts lie between them."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "lie.column.statement": ("{the_marks} están en la columna {i}", "en la columna {i} están {the_marks}"),
    "lie.row.statement": ("{the_marks} están en la fila {i}", "en la fila {i} están {the_marks}"),
    "lie.columns.statement": ("{the_marks} forman las columnas {i}", "las columnas {i} tienen {the_marks}"),
    "lie.rows.statement": ("{the_marks} forman las filas {i}", "las filas {i} tienen {the_marks}"),
    "lie.down-right.statement": (
        "{the_marks} bajan en diagonal hacia la derecha",
        "{the_marks} bajan hacia la derecha, paso a paso",
    ),
    "lie.down-left.statement": (
        "{the_marks} bajan en diagonal hacia la izquierda",
        "{the_marks} bajan hacia la izquierda, paso a paso",
    ),
    "lie.scattered.statement": (
        "cada {k} números hay {a_mark}, desde el {nth} número",
        "{the_marks} llegan cada {k} números, desde el {nth} número",
    ),
    "lie.scattered-first.statement": ("cada {k} números hay {a_mark}", "{the_marks} llegan cada {k} números"),
    "lie.column.core": (
        "{the_marks} están en la columna {i}",
        "en la columna {i} están siempre {the_marks}",
    ),
    "lie.row.core": (
        "{the_marks} están en la fila {i}",
        "en la fila {i} están siempre {the_marks}",
    ),
    "lie.columns.core": (
        "las columnas {i} tienen {the_marks}",
        "en las columnas {i} solo hay {marks}",
        "{the_marks} llenan columnas enteras",
    ),
    "lie.rows.core": (
        "las filas {i} tienen {the_marks}",
        "en las filas {i} solo hay {marks}",
        "{the_marks} llenan filas enteras",
    ),
    "lie.down-right.core": (
        "{the_marks} bajan como una escalera hacia la derecha",
        "{the_marks} bajan hacia la derecha",
    ),
    "lie.down-left.core": (
        "{the_marks} bajan como una escalera hacia la izquierda",
        "{the_marks} bajan hacia la izquierda",
    ),
    "lie.scattered.core": ("cada {k} números hay {a_mark}",),
    "lie.scattered.says": (
        "cada {k} números llegamos a {a_mark}",
        "cada {k} números decimos {a_mark}",
    ),
    "lie.reason-line": ("{n} por {fills}: {made}",),
    "lie.reason-lines": ("{k} números son {across} {line_names}: {made}",),
    "lie.reason-one-more": ("{made}, y {k} es 1 más que los {n} de una {fills}",),
    "lie.reason-one-less": ("{made}, y {k} es 1 menos que los {n} de una {fills}",),
    "lie.note-outside": ("{until:en} también hay {a_mark}, en la fila {row}, columna {column}",),
    "many.from": ("a partir {edge:del}, {statement}",),
    "many.below": ("debajo {edge:del}, {statement}",),
    "many.one.statement": ("en cada {stretch} hay {k} números", "en cada {stretch} caben {k} números"),
    "many.one-only.statement": ("en cada {stretch} hay 1 número", "en cada {stretch} cabe 1 número"),
    "many.turns.statement": ("en cada {stretch} hay {series} números, una y otra vez",),
    "many.one.core": ("en cada {stretch} siempre hay {k} números",),
    "many.one.says": ("decimos {k} números en cada {stretch}",),
    "many.one-only.core": ("en cada {stretch} hay solo un número",),
    "many.one-only.says": ("decimos solo un número en cada {stretch}",),
    "many.turns.core": ("en cada {stretch} hay {series}, una y otra vez",),
    "many.turns.says": ("contamos cuántos hay en cada {stretch}, y se repite",),
    "many.evidence": ("desde {a} y antes de {b} decimos {some}", "a partir de {a} y antes de {b} decimos {some}"),
    "many.evidence-long": (
        "desde {a} y antes de {b} decimos {n}, primero {first} y al final {last}",
        "a partir de {a} y antes de {b} decimos {n}, de {first} a {last}",
    ),
    "many.evidence-short": ("hay {n} desde {a} y antes de {b}",),
    "many.note": ("{until:en} cambia", "eso cambia {until:en}"),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "landmarks": (
        "Toca uno de esos números y luego el próximo así. ¿Cuántos saltos hay?",
        "¿Dónde estará el próximo? Muéstranos cómo lo sabes.",
    ),
    "how-many": (
        "Enciérralos en un tramo. ¿Cuántos tendrá el siguiente?",
        "¿Dónde termina un tramo y empieza otro? Cuenta ahí otra vez.",
    ),
}
