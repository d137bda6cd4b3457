"""Spanish sentences about what is asked and answered at a stop, by level band, and why it is there."""

from routines.counting.grid import Fill

from ..language import PastTheEnd, Stops

QUESTIONS = {
    "target": (
        (
            "¿Qué ves? ¿Qué va en {place}?",
            "¿Qué se repite? Señala y di qué va en {place}.",
        ),
        (
            "¿Qué notas hasta ahora? ¿Qué estará en {place} y cómo lo sabes?",
            "Mira a lo largo de las filas y las columnas: ¿qué estará en {place} y por qué?",
        ),
        (
            "¿Qué notas y por qué pasa con {jumps}? Úsalo para decir qué estará en {place}.",
            "¿Qué estará en {place}? Busca dos maneras de comprobarlo antes de llegar con {jumps}.",
        ),
        (
            "Di como regla lo que notas y predice con ella qué hay en {place}. ¿Cómo comprobarías si sirve en todas "
            "partes?",
            "Formula una conjetura sobre adónde lleva {jump} desde cualquier celda y úsala para predecir {place}. ¿Cómo "
            "la comprobarías?",
        ),
    ),
    "hard": (
        (
            "Dijimos {a:el}. ¿Qué decimos justo después?",
            "Señala {a:el} con el dedo. ¿Qué viene después?",
        ),
        (
            "Paramos después {a:del}. ¿Qué sigue y qué te ayuda en la cuadrícula?",
            "¿Qué viene después {a:del} y qué {parts} van a cambiar? ¿Cómo lo sabes?",
            "Dijimos {a:el}. ¿Qué decimos después y cómo lo sabes antes de contar?",
            "Paramos después {a:del}. ¿Qué sigue y cómo mostrarías que tiene que ser así?",
        ),
        (
            "Vamos por {a:el}. ¿Adónde lleva {jump}? Muéstralo de dos maneras: con el salto y en la cuadrícula.",
            "Antes de seguir desde {a:el}: ¿qué viene después y qué número de la cuadrícula te ayuda?",
            "Vamos por {a:el}. ¿Adónde lleva {jump} y cómo lo sabes antes de decirlo?",
            "¿Qué viene después {a:del}? Di cómo lo sabes y cómo se lo mostrarías a alguien que no lo crea.",
        ),
        (
            "Mira el salto desde {a:el}. ¿Adónde lleva y por qué? Predícelo y ponlo a prueba por otro "
            "camino en la cuadrícula.",
            "¿Qué {parts} cambian después {a:del} y cómo lo sabes? Formula tu conjetura antes de contar.",
            "¿Adónde lleva el salto desde {a:el} y cómo lo sabes antes de contar? Di qué tan seguro es y por qué.",
            "¿Qué viene después {a:del} y por qué? Da una razón que sirva para cualquier salto de este conteo.",
        ),
    ),
    "from zero": (
        ("Dijimos {a:el}. ¿Qué decimos justo después?",),
        ("Paramos después {a:del}. ¿Qué sigue, y está por encima o por debajo de cero? ¿Cómo lo sabes?",),
        (
            "Vamos por {a:el}. ¿Adónde lleva {jump} y de qué lado del cero queda? Muéstralo de dos maneras.",
            "Vamos por {a:el}. ¿Adónde lleva {jump} y de qué lado del cero queda? ¿Cómo lo sabes?",
        ),
        (
            "Mira el salto desde {a:el}. ¿De qué lado del cero termina y a qué distancia? Predícelo y ponlo a prueba por "
            "otro camino en la cuadrícula.",
            "Mira el salto desde {a:el}. ¿De qué lado del cero termina y a qué distancia? Predícelo y di por qué.",
        ),
    ),
    "to zero": (
        ("Dijimos {a:el}. ¿Qué decimos justo después?",),
        ("Paramos después {a:del}. ¿Cuánto falta para llegar a cero y qué número sigue? ¿Cómo lo sabes?",),
        (
            "Vamos por {a:el}. ¿Cuánto falta para llegar a cero y adónde lleva {jump}? Muéstralo de dos maneras.",
            "Vamos por {a:el}. ¿Cuánto falta para llegar a cero y adónde lleva {jump}? ¿Cómo lo sabes?",
        ),
        (
            "Después {a:del}, ¿cuánto falta para llegar a cero y adónde lleva {jump}? Predícelo y ponlo a prueba por otro "
            "camino en la cuadrícula.",
            "Después {a:del}, ¿cuánto falta para llegar a cero y adónde lleva {jump}? Predícelo y di por qué es así.",
        ),
    ),
    "first whole": (
        ("Dijimos {a:el}. ¿Qué decimos justo después?",),
        ("Paramos después {a:del}. ¿Cuánto falta para el próximo entero y qué número sigue? ¿Cómo lo sabes?",),
        (
            "Vamos por {a:el}. ¿Cuánto falta para el próximo entero y adónde lleva {jump}? Muéstralo de dos maneras.",
            "Vamos por {a:el}. ¿Cuánto falta para el próximo entero y adónde lleva {jump}? ¿Cómo lo sabes?",
        ),
        (
            "Después {a:del}, ¿cuánto falta para el próximo entero y adónde lleva {jump}? Predícelo y ponlo a prueba por "
            "otro camino en la cuadrícula.",
            "Después {a:del}, ¿cuánto falta para el próximo entero y adónde lleva {jump}? Predícelo y di por qué es así.",
        ),
    ),
    "dies": (
        (
            "«{idea}» ¿Y el siguiente?",
            "¿Qué vimos hasta ahora? ¿Seguirá así en el siguiente?",
        ),
        (
            "«{idea}» Después {a:del}, ¿será todavía así? ¿Por qué?",
            "Vimos algo que se cumple hasta {a:el}. ¿Se cumplirá en el que sigue? ¿Por qué?",
        ),
        (
            "«{idea}» Hasta {a:el} es así. ¿Qué pasa ahora con {jump} y por qué?",
            "Algo se cumplió hasta {a:el}. ¿Se cumplirá después de {jump} y cómo lo puedes saber?",
        ),
        (
            "«{idea}» Se cumple hasta {a:el}. ¿Basta para demostrarlo? Predice lo que sigue y compruébalo.",
            "Una regla nuestra se cumplió hasta {a:el}. ¿Queda probada con eso? Predice el que sigue y compruébala.",
        ),
    ),
    # Of those who have not met digits.
    "dies at its end": (("«{idea}» ¿En qué termina el siguiente?",),),
    "dies in front": (("«{idea}» ¿Con qué empieza el siguiente?",),),
    "end": (
        (
            "Si seguimos contando, ¿diremos {probe}? Muéstranos.",
            "Podemos seguir. ¿Vamos a decir {probe}?",
        ),
        (
            "Si seguimos contando, ¿diremos alguna vez {probe}? ¿Dónde estaría y cómo lo sabes?",
            "¿Diremos {probe} si seguimos? ¿En qué fila y columna, y por qué?",
        ),
        (
            "Si siguiéramos con {jumps}, ¿diríamos {probe}? ¿En qué fila y columna? Busca dos maneras de comprobarlo.",
            "¿Diríamos {probe} si siguiéramos? Di dónde estaría y qué te ayuda, sin contar todo el camino.",
        ),
        (
            "Decide si diríamos {probe}, sin escribir los números que faltan. ¿Qué regla te lo dice y sirve para "
            "cualquier número?",
            "¿Diríamos {probe} si siguiéramos? Da una regla que responda para cualquier número y pruébala con uno que ves.",
        ),
    ),
}

ANSWERS = {
    "target": (
        "{far:el}, porque {by_lower}",
        "Ahí va {far:el}, porque {by_lower}",
        "Digo {far:el}, porque {by_lower}",
    ),
    "target short": ("{far:el}: {by_lower}",),
    "by jumps": ("{far:el}: {k} saltos más desde {a:el}.",),
    "along": ("{far:el}: {beside} {known:del}, {change}.",),
    "hard": ("{next:el}: {how}.", "Ahora decimos {next:el}: {how}.", "Decimos {next:el}: {how}."),
    "plain": ("Llegamos {next:al}.", "Ahora decimos {next:el}.", "Decimos {next:el}."),
    "dies": (
        "Llegamos {next:al}, y ahí ya no se cumple: «{idea}»",
        "Ahora decimos {next:el}, y ahí ya no se cumple: «{idea}»",
        "Decimos {next:el}, y ahí ya no se cumple: «{idea}»",
    ),
    "starts again": ("{next:el} termina en {y}: después del {x} se empieza otra vez.",),
    "ends otherwise": ("{next:el} termina en {y}: después del {x} viene el {y}.",),
    "is longer": ("{next:el} empieza con {y}: diez {places} hacen {a_larger}.",),
    "begins otherwise": ("{next:el} empieza con {y}, no con {due}.",),
    "dies plain": ("Con {next:el} ya no se cumple.", "Ya no con {next:el}.", "Hasta aquí, con {next:el} ya no."),
    "dies why": (
        "{next:el} ya no: {how}.",
        "Con {next:el} ya no: {how}.",
        "Ahora decimos {next:el} y ya no: {how}.",
    ),
}

PAST_THE_END = PastTheEnd(
    (
        ("Sí, {value}: {beyond}, {change}.",),
        (
            "Sí, en {where}: {beyond}, {change}.",
            "Sí, en {where}: {change} que {known:el}.",
            "Sí, {value}: {beyond}, {change}.",
        ),
        (
            "Sí, en {where}: {beyond}, {change}; o {jumps} desde {start:el}.",
            "Sí, en {where}: {beyond}, {change}; o {n} saltos desde {start:el}.",
            "Sí, en {where}: {change} que {known:el}; o {n} saltos desde {start:el}.",
            "Sí, en {where}: {change} que {known}; o {n} saltos desde {start}.",
            "Sí, {value}: {beyond}, {change}; o {n} saltos desde {start:el}.",
        ),
        (
            "Sí, en {where}: {beyond}, {change}; como regla, {jumps} {make} {total}.",
            "Sí, en {where}: {change} que {known:el}; como regla, {jumps} {make} {total}.",
            "Sí, {value}: {beyond}, {change}; como regla, {jumps} {make} {total}.",
        ),
    ),
    (
        "Sí. Regla: avanzar a saltos completos de {step} desde {start:el}; {value} {value:es} {total} {more}, {n} × {step}.",
        "Sí. Regla: retroceder a saltos completos de {step} desde {start:el}; {value} {value:es} {total} {more}, {n} × {step}.",
    ),
    "Sí, {value}: {k} saltos más desde {last:el}.",
    {
        Fill.ACROSS: ("debajo {known:del}", "{k} filas debajo {known:del}"),
        Fill.DOWN: ("al lado {known:del}", "{k} columnas después {known:del}"),
        Fill.ACROSS_UP: ("encima {known:del}", "{k} filas encima {known:del}"),
    },
)

HOWS = {
    "to zero": "con {by} más llegamos a cero",
    "from zero": "eso es {by} por debajo de cero",
    "below zero": "{rest} y {by} son {sum}, por debajo de cero",
    "filled": "{rest} y {by} son {sum}",
    "filled in units": "{rest} y {by} más son {many}, o sea, {sum}",
    "over": "{to} hasta {landmark:el} y luego {on} más",
    "over back": "{to} menos hasta {landmark:el} y luego {on} menos",
    "opened": "{full} menos {by} son {rest}",
    "opened like ten": "{full} son {rest} y {by}; {a} son {next} y {by}",
    "both digits": "cambian las dos cifras",
    "all digits": "cambian las {k} cifras",
    "some digits": "cambian {k} de {many} cifras",
    "more digits": "ahora hay {many} cifras",
    "along": "{next:va} {beside} {known:del}, {change}",
    "two ways": "{first}; o {beside} {known:del}, {change}",
    "both": "{first}; {second}",
    "larger": "{a} son {larger}",
    "larger, on": "{larger} y {by} son {made}",
    "one part": "{part}, de {x} a {y}",
    "half of the day": "{x}, ahora {y}",
    "changes": "{part} pasa de {x} a {y}",
    "changes of several": "{part} pasan de {x} a {y}",
    "becomes": "{part} pasa a {y}",
    "becomes of several": "{part} pasan a {y}",
    "stays": "{part} sigue en {x}",
    "stays of several": "{part} siguen en {x}",
    "sum": "las cifras suman {y}, no {x}",
    "in its line": "en {line}, {before:del} {next:al}",
}

REASONS = {
    "target": "Con lo que hay en la pizarra ya se ve que {idea_lower}",
    "by": "Con lo que hay en la pizarra ya se ve que {idea_lower} Lo que se pide aquí sale de que {by_lower}",
    "hard": "El salto siguiente, {a:del} {next:al}, pasa por {landmark:el}.",
    "hard on": "El salto siguiente, desde {a:el}, llega {landmark:al}.",
    "hard back": "El salto siguiente, {a:del} {next:al}, retrocede más allá {landmark:del}: {how}.",
    "hard below": "El salto siguiente, {a:del} {next:al}, baja {landmark:del}: {how}.",
    "dies": "Hasta {a:el} se cumple: «{idea}» Con {next:el} deja de cumplirse por primera vez.",
    "end": "Ya está toda la cuadrícula: es hora de mirarla y de pensar más allá de su final.",
}

BESIDE = {Fill.ACROSS: "debajo", Fill.DOWN: "al lado", Fill.ACROSS_UP: "encima"}

PARTS = ("cifras", "partes")

STOPS = Stops(QUESTIONS, ANSWERS, HOWS, REASONS, PARTS, PAST_THE_END, BESIDE)
