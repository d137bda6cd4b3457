"""Spanish sentences about landmarks and how many counts lie between them."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "lie.column.statement": ("{the_marks} están en la columna {i}", "en la columna {i} están {the_marks}"),
    "lie.row.statement": ("{the_marks} están en la fila {i}", "en la fila {i} están {the_marks}"),
    "lie.columns.statement": ("{the_marks} forman las columnas {i}", "las columnas {i} tienen {the_marks}"),
    "lie.rows.statement": ("{the_marks} forman las filas {i}", "las filas {i} tienen {the_marks}"),
    "lie.down-right.statement": (
        "{the_marks} bajan en diagonal hacia la derecha",
        "{the_marks} van bajando en diagonal hacia la derecha, como escalera",
    ),
    "lie.down-left.statement": (
        "{the_marks} bajan en diagonal hacia la izquierda",
        "{the_marks} van bajando en diagonal hacia la izquierda, como escalera",
    ),
    "lie.up-left.statement": (
        "{the_marks} suben en diagonal hacia la izquierda",
        "{the_marks} van subiendo en diagonal hacia la izquierda, como escalera",
    ),
    "lie.up-right.statement": (
        "{the_marks} suben en diagonal hacia la derecha",
        "{the_marks} van subiendo en diagonal hacia la derecha, como escalera",
    ),
    "lie.scattered.statement": (
        "cada {k} números caemos en {a_mark}, desde el {nth} número",
        "{the_marks} llegan cada {k} números, desde el {nth} número",
    ),
    "lie.scattered-first.statement": ("cada {k} números caemos en {a_mark}", "{the_marks} llegan cada {k} números"),
    "lie.column.core": (
        "{the_marks} están en la columna {i}",
        "en la columna {i} están siempre {the_marks}",
        "la columna {i} tiene {the_marks}",
    ),
    "lie.row.core": (
        "{the_marks} están en la fila {i}",
        "en la fila {i} están siempre {the_marks}",
        "la fila {i} tiene {the_marks}",
    ),
    "lie.columns.core": (
        "las columnas {i} tienen {the_marks}",
        "en las columnas {i} solo hay {marks}",
        "{the_marks} llenan columnas de arriba abajo",
    ),
    "lie.rows.core": (
        "las filas {i} tienen {the_marks}",
        "en las filas {i} solo hay {marks}",
        "{the_marks} llenan filas de lado a lado",
    ),
    "lie.down-right.core": (
        "{the_marks} bajan como una escalera hacia la derecha",
        "{the_marks} bajan hacia la derecha",
    ),
    "lie.down-left.core": (
        "{the_marks} bajan como una escalera hacia la izquierda",
        "{the_marks} bajan hacia la izquierda",
    ),
    "lie.up-left.core": (
        "{the_marks} suben como una escalera hacia la izquierda",
        "{the_marks} suben hacia la izquierda",
    ),
    "lie.up-right.core": (
        "{the_marks} suben como una escalera hacia la derecha",
        "{the_marks} suben hacia la derecha",
    ),
    "lie.scattered.core": ("desde el {nth} número, cada {k} números caemos en {a_mark}",),
    "lie.scattered-first.core": ("cada {k} números caemos en {a_mark}",),
    "lie.long-name.line": ("veo {marks} en la {line} {i}",),
    "lie.long-name.lines": ("veo {marks} en {lines} enteras",),
    "lie.long-name.diagonal": ("veo {marks} en diagonal",),
    "lie.scattered.says": ("cada {k} números decimos {a_mark}",),
    "lie.scattered-first.says": ("cada {k} números decimos {a_mark}",),
    "lie.scattered.ending.core": ("uno de cada {k} termina en {ending}",),
    "lie.scattered-first.ending.core": ("uno de cada {k} termina en {ending}",),
    "lie.reason-line": ("{n} por {fills}: {made}",),
    "lie.reason-times": ("{made}, y {n} por {fills} son {times} veces {k}: por eso no salen de sus {stay_in}",),
    "lie.reason-times-short": ("{k} saltos hacen {total}, y {n} por {fills} son {times} veces {k}",),
    "lie.reason-lines": ("{k} lugares son {across} {line_names}: {made}",),
    "lie.reason-one-more": ("{made}, y {k} es 1 más que los {n} de una {fills}",),
    "lie.reason-one-less": ("{made}, y {k} es 1 menos que los {n} de una {fills}",),
    "lie.note-outside": ("{until:en} también caemos en {a_mark}, pero va en la fila {row}, columna {column}",),
    "many.from": ("a partir {edge:del}, {statement}",),
    "many.below": ("por debajo {edge:del}, {statement}",),
    "many.one.statement": ("de cada {stretch} decimos {k} números",),
    "many.one-only.statement": ("de cada {stretch} decimos 1 número",),
    "many.turns.statement": ("de {a_stretch} {to_the_next} decimos {series} números, una y otra vez",),
    "many.lines.statement": ("de cada {stretch} decimos {k} números, una {line} entera",),
    "many.crossing.statement": ("hay {series} números de {a_stretch} {to_the_next}, una y otra vez",),
    "many.crossing-one.statement": ("hay 1 número de {a_stretch} {to_the_next}",),
    "many.crossing.core": ("decimos {k} por {stretch}",),
    "many.crossing-one.core": ("decimos solo uno por {stretch}",),
    "many.one.core": ("de cada {stretch} decimos siempre {k} números",),
    "many.one.says": ("decimos {k} números de cada {stretch}",),
    "many.one-only.core": ("de cada {stretch} decimos solo un número",),
    "many.one-only.says": ("decimos solo uno de cada {stretch}",),
    "many.turns.says": ("de {a_stretch} {to_the_next} decimos {then}, y otra vez",),
    "many.then": (", luego ",),
    "many.turns.core": (
        "{stretch} por {stretch} decimos {series}, y otra vez {series}",
        "{stretch} por {stretch} decimos {series}, una y otra vez",
    ),
    "many.long.core": ("se repite cuántos decimos en cada {stretch}",),
    "many.lines.core": ("de cada {stretch} decimos {k}, una {line} entera",),
    "many.tens.core": ("decimos {tens}",),
    "many.in-tens": ("{k} en los {tens_name}",),
    "many.one-in-tens": ("solo uno en los {tens_name}",),
    "many.evidence": ("desde {a} y antes de {b} decimos {some}", "a partir de {a} y antes de {b} decimos {some}"),
    "many.evidence-long": (
        "desde {a} y antes de {b} decimos {n}, primero {first} y al final {last}",
        "a partir de {a} y antes de {b} decimos {n}, de {first} a {last}",
    ),
    "many.evidence-short": ("decimos {n} desde {a} y antes de {b}",),
    "many.note": ("{until:en} cambia", "eso cambia {until:en}"),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "landmarks": (
        "Toca esos lugares mientras contamos. ¿Cuántos saltos hay de uno al siguiente?",
        "¿Dónde estará el próximo? Muéstranos cómo lo sabes.",
    ),
    "how-many": (
        "Encierra los de un tramo. ¿Cuántos habrá en el tramo siguiente?",
        "¿Dónde termina un tramo y empieza otro? Cuenta ahí otra vez.",
    ),
}
