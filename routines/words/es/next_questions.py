"""Spanish questions about a next count, by level band."""

QUESTIONS: dict[str, tuple[str, str, str, str]] = {
    "hard place": (
        "Dijimos {before:el}. ¿Qué decimos después? Muéstralo.",
        "¿Qué viene después {before:del} y qué parte cambia? Muestra en la cuadrícula cómo lo sabes.",
        "¿Qué pasa al dar {jump} desde {before:el}? Muéstralo de dos maneras en la cuadrícula, para comprobarlo.",
        "¿Qué parte cambia en el número después {before:del} y cómo lo sabes? Formula una regla y pruébala con otros "
        "saltos.",
    ),
    "hard to write": (
        "Dijimos {before:el}. ¿Cómo escribimos el siguiente? Muéstralo.",
        "¿Cómo escribimos el número después {before:del} y qué nos dice cada cifra o parte?",
        "¿Cómo escribimos lo que sigue {before:al}? Compáralo con sus vecinos y di qué nos dice cada parte.",
        "¿Cómo se escribe cada número y qué nos dice cada parte? Formula una regla y pruébala con todos.",
    ),
    "fold": (
        "Mira {along}. ¿Qué ves ahora? Señálalo.",
        "Cada línea tiene ahora {length} números. ¿Qué queda alineado y por qué aquí?",
        "Son los mismos números. ¿Qué queda alineado ahora y por qué se alinea con {length} en cada línea?",
        "¿Qué queda alineado ahora y por qué con {length} en cada línea? Explícalo con saltos de {size} y ponlo a prueba.",
    ),
    "fewer": (
        "Mira una sola línea. ¿Qué ves? Señálalo.",
        "Mira una línea y después la otra. ¿Qué se queda, qué cambia y por qué?",
        "Toma solo dos líneas. ¿En qué se parecen y cuántos saltos de {size} hay de {one_to_the} que está justo {beside}?",
        "Con tan pocos números en la pizarra, ¿qué puedes decir con certeza de la línea que sigue? Pruébalo antes de "
        "escribirla.",
    ),
    "multiples": (
        "Empezamos {start:en}. ¿Qué sigue? ¿Qué sabes de estos números?",
        "¿Dónde vimos antes estos números y en qué se parecen a los del primer conteo?",
        "Cada número está a un número exacto de saltos de {size} de cero. ¿Sobraba algo en el primer conteo? ¿Dónde se ve?",
        "Compara cada número con el que estaba en su lugar en el primer conteo. ¿Es siempre la misma diferencia? "
        "Ponlo a prueba y di por qué.",
    ),
    "friendlier jump": (
        "Ahora cada salto es de {size}. ¿Qué sigue? Muéstralo.",
        "Ahora cada salto es de {size}. ¿Cuándo llegamos a {a_mark} y cómo lo sabes?",
        "¿Cada cuántos saltos de {size} llegamos otra vez a {a_mark} y por qué? Muéstralo en la cuadrícula.",
        "¿Con qué saltos se llega a cada {landmark} y con cuáles no? Formula una regla y pruébala con otro salto.",
    ),
    "round start": (
        "Empezamos {start:en}. ¿Qué viene después? Muéstralo.",
        "Empezamos {start:en}. ¿Cuándo llegamos otra vez a {a_mark} y cómo lo sabes?",
        "¿Qué saltos de {size} pasan por encima de {a_mark} y cuánto sobra cada vez? Muéstralo en la cuadrícula.",
        "¿Cuándo caerá otra vez un número justo en {a_mark}? Formula una regla y pruébala con otro comienzo.",
    ),
    "round number more": (
        "Mira el final de los números. ¿Qué se queda igual? Señálalo.",
        "Cada salto es {round} más largo que antes. ¿Qué se queda igual en cada lugar y qué cambia?",
        "Compara cada número con el que estaba en su lugar. ¿Qué sobra después de {a_mark} y por qué es igual?",
        "¿Qué parte de cada número se queda como estaba cuando cada salto crece {round}? Di por qué, para cualquier "
        "comienzo.",
    ),
    "other start": (
        "Ahora empezamos {start:en}. ¿Qué sigue siendo igual? Señálalo.",
        "Ahora empezamos {start:en}. ¿Qué sigue siendo igual al pasar de una línea a la siguiente y por qué?",
        "De {one_to_the} que está justo {beside} la diferencia era {kept}. ¿Es así desde {start:el} y "
        "por qué? Muéstralo en la cuadrícula.",
        "¿Qué cosas de las que vimos dependen del comienzo y cuáles no? Formula una conjetura y pruébala desde {start:el}.",
    ),
    "going on": (
        "Seguimos desde {start:el}. ¿Qué veremos otra vez? Dinos.",
        "Seguimos desde {start:el}. ¿Veremos otra vez lo mismo? ¿Qué cosas y por qué?",
        "Seguimos desde {start:el}. ¿Qué cosas de las que vimos seguirán y cuáles se acabarán? ¿Por qué?",
        "¿Qué cosas de las que vimos seguirán desde {start:el} y cuáles se acabarán? Formula una conjetura y pruébala.",
    ),
    "back again": (
        "Contamos al revés, desde {start:el}. ¿Qué viene después?",
        "Ahora contamos al revés. ¿Qué cosas de las que vimos siguen ahí y cuáles dan la vuelta?",
        "Contamos desde {start:el} hasta {last:el}. ¿Qué se cumple todavía con los saltos al revés y qué cambia de "
        "dirección?",
        "¿Qué reglas se cumplen todavía con todos los saltos al revés y cuáles hay que decir de nuevo? Prueba una.",
    ),
    "two in one": (
        "¿Qué números faltan ahora? ¿Dónde estarían? Muéstralo.",
        "Un salto hace lo que hacían dos. ¿Qué números de antes siguen aquí y dónde están los otros?",
        "Un salto de {size} hace lo que hacían dos. ¿Qué números siguen aquí y dónde estarían los otros?",
        "¿Qué números se quedan y cuáles faltan cuando el salto se duplica? Formula una regla y pruébala más adelante.",
    ),
    "landmark": (
        "Vamos a pasar por {landmark:el}. ¿Qué diremos después?",
        "Antes de pasar por {landmark:el}: ¿qué va a cambiar en los números y qué se queda? ¿Cómo lo sabes?",
        "Antes de pasar por {landmark:el}: ¿qué cosas de las que vimos seguirán del otro lado y por qué?",
        "¿Qué reglas se cumplirán todavía después {landmark:del} y cuáles no? Formula una conjetura y pruébala.",
    ),
    "landmark reached": (
        "Vamos a llegar {landmark:al}. ¿Qué diremos después?",
        "Antes de llegar {landmark:al}: ¿qué va a cambiar en los números y qué se queda? ¿Cómo lo sabes?",
        "Antes de llegar {landmark:al}: ¿qué cosas de las que vimos seguirán del otro lado y por qué?",
        "¿Qué reglas se cumplirán todavía después {landmark:del} y cuáles no? Formula una conjetura y pruébala.",
    ),
    "nearly round": (
        "Cada salto es casi {round}. ¿Qué viene después? Muéstralo.",
        "{size} es casi {round}. ¿Cómo nos ayuda eso a encontrar el número que sigue?",
        "{size} es casi {round}. ¿Cómo podemos usarlo en cada salto y qué hay que corregir cada vez?",
        "{size} es casi {round}. ¿Qué pasa ahora con las últimas cifras y por qué? Formula una conjetura y pruébala.",
    ),
    "ten times": (
        "Ahora cada salto es de {size}. ¿Qué se ve igual? Señálalo.",
        "Ahora cada salto es de {size}. ¿Qué se parece al primer conteo, qué es nuevo y por qué?",
        "Cada salto de {size} es diez veces el de antes. ¿Qué patrones vuelven y en qué lugar?",
        "Cuando cada salto es diez veces el de antes, ¿qué reglas se cumplen y en qué lugar? Prueba una.",
    ),
    "finer": (
        "Cada salto es más pequeño. ¿Qué se ve igual? Señálalo.",
        "Cada salto mide la décima parte del de antes. ¿Qué se parece al primer conteo y qué es nuevo?",
        "Cada salto de {size} mide la décima parte del de antes. ¿Qué patrones vuelven y en qué lugar?",
        "Cuando cada salto mide la décima parte del de antes, ¿qué reglas se cumplen y en qué lugar? Prueba una.",
    ),
    "several parts": (
        "Cada salto toma más partes. ¿Dónde hay un entero? Señálalo.",
        "Ahora cada salto toma varias partes. ¿Cuándo caeremos en un entero y cómo lo sabes?",
        "Ahora cada salto es de {size}. ¿En qué enteros caemos y cuáles saltamos? ¿Cómo lo sabes?",
        "¿Qué saltos caerían en todos los enteros, en algunos o en ninguno? Formula una conjetura y pruébala aquí.",
    ),
    "unfriendly": (
        "Ahora cada salto es de {size}. ¿Qué viene después? Muéstralo.",
        "Los saltos de {size} no caben justos en {round}. ¿Dónde lo cruzamos y qué queda?",
        "¿Dónde cruzan los saltos de {size} {a_mark} y cuánto del salto queda después?",
        "¿Después de cuántos saltos de {size} cae un número justo en {a_mark}? Formula una regla y pruébala.",
    ),
    "unfriendly landing": (
        "Ahora cada salto es de {size}. ¿Qué viene después? Muéstralo.",
        "¿Dónde caemos ahora justo en {a_mark} y dónde saltamos por encima?",
        "¿Qué saltos de {size} caen justo en {a_mark} y cuáles pasan por encima? ¿Cómo lo sabes?",
        "¿Después de cuántos saltos de {size} caemos otra vez en {a_mark}? Formula una regla y ponla a prueba.",
    ),
    "unfriendly once": (
        "Ahora cada salto es de {size}. ¿Qué viene después? Muéstralo.",
        "¿Dónde caemos ahora justo en {a_mark} y dónde saltamos por encima?",
        "¿Qué salto de {size} cae justo en {a_mark} y cuáles pasan por encima? ¿Cómo lo sabes?",
        "¿Después de cuántos saltos de {size} caemos otra vez en {a_mark}? Formula una regla y ponla a prueba.",
    ),
    "by tens": (
        "Ahora cada salto es de {size}. ¿Qué se queda igual? Señálalo.",
        "Ahora cada salto es de {size}. ¿Qué cifra cambia, cuál se queda y por qué?",
        "Cada salto de {size} hace lo que hacían {many} saltos de {old}. ¿Qué cambia en los números, qué se queda y "
        "por qué?",
        "¿Qué cifras no puede cambiar nunca un salto de {size}? Formula una conjetura y pruébala en la cuadrícula.",
    ),
    "one more": (
        "Hay uno más en cada línea. ¿Qué se movió? Señálalo.",
        "Ahora hay uno más en cada línea. ¿Qué se alinea, qué se desliza y por qué?",
        "Ahora hay {length} en cada línea. ¿Qué se alinea, qué se desliza, hacia dónde y por qué?",
        "¿Qué pasa con los patrones alineados cuando hay uno más en cada línea? Formula una regla y pruébala.",
    ),
}
