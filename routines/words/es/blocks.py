"""Spanish sentences about what stays or comes back: digit, digit-sum, remainder."""

SENTENCES: dict[str, tuple[str, ...]] = {
    "always.statement": ("{the_feats} siempre son {x}", "en todos los números {the_feats} son {x}"),
    "always.shown.statement": ("{the_feat} {stay} {x}",),
    "always.core": ("{the_short} siempre son {x}",),
    "always.says": (
        "en cada número que decimos {the_feats} son {x}",
        "en todos los que decimos {the_feats} son {x}",
    ),
    "turns.statement": ("{the_feats} se alternan: {series}",),
    "turns.core": (
        "{the_short} se alternan: primero {x} y luego {y}",
        "{the_feats} se alternan, primero {x} y luego {y}",
        "{the_feats} van {x}, {y}, y otra vez {x}, {y}",
        "{the_short} se alternan",
    ),
    "repeat.statement": ("{the_feats} se repiten cada {k} números: {series}",),
    "repeat.core": (
        "{the_short} vuelven a salir cada {k} números",
        "{the_feats} vuelven a salir cada {k} números",
        "después de {k} números {the_feats} empiezan otra vez igual",
        "{the_short} se repiten cada {k}",
    ),
    "keep.statement": (
        "{the_feats} se quedan en su {line}: {series}",
        "cada {line} conserva {the_feat}: {series}",
    ),
    "keep.core": (
        "en cada {line} {the_short} no cambian",
        "{the_feats} son iguales en cada {line}",
        "en cada {line} {the_feats} no cambian",
        "{per_line} {the_short} no cambian",
    ),
    "turns-line.statement": ("{the_feats} se alternan {each_way}: {series} {in_line}",),
    "turns-same.statement": (
        "{the_feats} se alternan {each_way}: {series}",
        "en cada {line} se alternan {the_feats}: {series}",
    ),
    "turns-line.core": (
        "{within} se alternan {the_short}",
        "{per_line} se alternan {the_short}",
        "{the_feats} se alternan {each_way}",
    ),
    "repeat-line.statement": ("{the_feats} se repiten cada {k} números {each_way}: {series} {in_line}",),
    "repeat-same.statement": (
        "{the_feats} se repiten cada {k} números {each_way}: {series}",
        "en cada {line} se repiten {the_feats} después de {k}: {series}",
    ),
    "repeat-line.core": (
        "{the_short} vuelven tras {k} en cada {line}",
        "{each_way}, {the_feats} vuelven a salir después de {k}",
        "{the_feats} vuelven después de {k} {each_way}",
    ),
    "any-keep.statement": ("{the_feats} se quedan en su {line}", "cada {line} conserva {the_feat}"),
    "any-turns.statement": ("{the_feats} se alternan {each_way}",),
    "any-repeat.statement": ("{the_feats} se repiten cada {k} números {each_way}",),
    "any-always.statement": ("{the_feats} nunca cambian",),
    "any-turns-count.statement": ("{the_feats} se alternan",),
    "any-repeat-count.statement": ("{the_feats} se repiten cada {k} números",),
    "any.statement": ("{the_feats} forman un patrón {each_way}",),
    "any-count.statement": ("{the_feats} forman un patrón",),
    "lines.statement": ("{statement} ({lines} {numbers})",),
    "reason.pure": (
        "{jumps}, o sea, {pure}",
        "{jumps}, y con {total} {more} {the_feats} no cambian",
    ),
    "reason.jumps": ("{jumps}, y por eso vuelven {the_feats}", "{jumps}, y así {the_feats} quedan como estaban"),
    "reason.span": (
        "{in_line}, de {a} a {b}, {the_feats} siguen en {x}",
        "de {a} a {b} {in_line} {the_short} siguen en {x}",
    ),
    "reason.span-count": ("de {a} a {b} {the_feats} siguen en {x}",),
    "reason.list": (
        "{in_line}, {the_feats} de {some} son {series}",
        "{in_line}, {the_feats} son {series}",
        "{in_line}, {the_short} son {series}",
    ),
    "reason.list-count": ("{the_feats} de {some} son {series}", "al principio {the_feats} son {series}"),
    "reason.sums": ("{sums}",),
    "all.statement": ("todos los números son {marks}", "todos son {marks}"),
    "all.core": ("todos los números que decimos son {marks}", "todos los que decimos son {marks}"),
    "all.reason": ("{a} es {pure_a}, y cada salto de {d} es {pure_d}",),
    "past.statement": ("cada número es {r} más que {a_mark}",),
    "past.core": ("cada uno es {r} más que {a_mark}", "cada uno que decimos es {r} más que {a_mark}"),
    "past.says": ("siempre nos pasamos {r} de {a_mark}",),
    "past.reason": ("de {m_a} a {a} hay {r}, y cada salto de {d} es {pure_d}", "de {m_a} a {a} hay {r}, y {jumps}"),
    "parity.all.statement": ("todos los números son {x_all}",),
    "parity.all.core": ("todos los números que decimos son {x_all}", "cada número que decimos es {x}, siempre"),
    "parity.all.says": ("solo decimos números {x_all}",),
    "parity.all.reason": ("{a} es {x} y cada salto es de {d}", "{a} es {x}, y un salto de {d} es par"),
    "parity.turns.statement": ("pares e impares se alternan: {x}, {y}",),
    "parity.turns.core": (
        "van alternando: {x}, {y}, {x}, {y}, y así siempre",
        "vamos {x}, {y}, {x}, {y}, hasta el final",
    ),
    "parity.turns.reason": (
        "{a} es {x}, y un salto de {d} es impar, por eso {b} es {y}",
        "un salto de {d} es impar: de {a}, {x}, llegamos a {b}, {y}",
    ),
    "parity.keep.statement": ("en cada {line} todos son pares o todos impares: {series}",),
    "parity.keep.core": (
        "en cada {line} todos son pares o todos son impares",
        "si miras una {line}, todos son pares o todos impares",
    ),
    "parity.keep.reason": ("{jumps}, y {total} es par", "{jumps}, y con {total} {more} un par sigue siendo par"),
    "parity.turns-line.statement": ("pares e impares se alternan {each_way}",),
    "parity.turns-line.core": (
        "pares e impares se alternan {each_way}",
        "{each_way} van {x}, {y}, {x}, {y}",
    ),
    "parity.turns-line.reason": ("{jumps}, y {total} es impar", "{jumps}, y con {total} {more} un par pasa a impar"),
    "note.digit": ("{until:en} {the_feat} {be} {y}, no {x}", "{until:en} {the_feat} {be} {y} y tocaba {x}"),
    "note.restart": ("{until:en} {the_feat} {restart} {y}",),
    "note.plain": ("deja de cumplirse {until:en}",),
}

# What a teacher may ask back. Wording: common practice, no source.
ASKED_BACK: dict[str, tuple[str, ...]] = {
    "digit": (
        "¿A qué cifra te refieres? Síguela con el dedo, línea por línea.",
        "¿Cuál será esa cifra en la próxima línea? ¿Cómo lo sabes?",
    ),
    "digit of a part": (
        "¿A qué parte de cada uno te refieres? Síguela con el dedo.",
        "¿Cuál será esa parte en la próxima línea? ¿Cómo lo sabes?",
    ),
    "digit-sum": (
        "Suma las cifras de uno más. ¿Cuánto da ahí?",
        "Elige uno de otra línea y suma sus cifras. ¿Qué notas?",
    ),
    "remainder": (
        "¿En cuáles de la cuadrícula se ve? ¿Cómo será el próximo?",
        "¿Cómo lo sabes de uno que todavía no está escrito?",
    ),
}
