"""Spanish sentences about what is asked and answered at a stop, by level band, and why it is there."""

from ..language import Stops

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
            "¿Qué notas y por qué lo produce {jump}? Úsalo para decir qué estará en {place}.",
            "¿Qué estará en {place}? Busca dos caminos para estar seguro antes de llegar con {jump}.",
        ),
        (
            "Di como regla lo que notas y predice con ella qué hay en {place}. ¿Cómo probarías si sirve en todas "
            "partes?",
            "Haz una conjetura sobre adónde lleva {jump} desde cualquier celda y úsala para predecir {place}. ¿Cómo "
            "la probarías?",
        ),
    ),
    "hard": (
        (
            "Dijimos {a}. ¿Qué decimos justo después?",
            "Señala {a} con el dedo. ¿Qué viene después?",
        ),
        (
            "Paramos después de {a}. ¿Qué sigue y qué te ayuda en la cuadrícula?",
            "¿Qué viene después de {a} y qué {parts} van a cambiar? ¿Cómo lo sabes?",
        ),
        (
            "Vamos por {a}. ¿Adónde lleva {jump} y qué partes cambian? Muéstralo de dos maneras.",
            "Antes de seguir desde {a}: ¿qué sigue, qué cambia ahí y qué celda te ayuda?",
        ),
        (
            "El salto desde {a} no es como los de antes. ¿Qué cambia y por qué? Predícelo y ponlo a prueba por otro "
            "camino en la cuadrícula.",
            "¿Qué tiene que cambiar después de {a} y qué no puede cambiar? Haz tu conjetura antes de contar.",
        ),
    ),
    "dies": (
        (
            "¿Qué vimos cada vez hasta ahora? ¿Seguirá en el siguiente?",
            "¿Va a seguir así? ¿Qué viene después?",
        ),
        (
            "«{idea}» Después de {a}, ¿será todavía así? ¿Por qué?",
            "Vimos algo que se cumple hasta {a}. ¿Se cumplirá en el que sigue? ¿Por qué?",
        ),
        (
            "«{idea}» Hasta {a} es así. ¿Qué le hace ahora {jump} y por qué?",
            "Algo se cumplió hasta {a}. ¿Se cumplirá después de {jump} y cómo lo puedes saber?",
        ),
        (
            "«{idea}» Se cumple hasta {a}. ¿Es eso una prueba? Predice lo que sigue y compruébalo.",
            "Una regla nuestra se cumplió hasta {a}. ¿Queda probada con eso? Predice el que sigue y compruébala.",
        ),
    ),
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
            "Si seguimos con {jump}, ¿diríamos {probe}? ¿En qué fila y columna? Busca dos caminos para estar seguro.",
            "¿Diríamos {probe} si seguimos? Di dónde estaría y qué te ayuda, sin contar todo el camino.",
        ),
        (
            "Decide si diríamos {probe}, sin escribir los números que faltan. ¿Qué regla te lo dice y sirve para "
            "cualquier número?",
            "¿Diríamos {probe}? Da una regla que responda para cualquier número y pruébala con uno que ves.",
        ),
    ),
}

ANSWERS = {
    "target": "{idea} Por eso en {place} tendremos {far}.",
    "beside": "{idea} En {place} tendremos {far}.",
    "place": "En {place} tendremos {far}.",
    "hard": "A continuación: {next}.",
    "dies": "Con {next} termina: {idea_lower}",
}

REASONS = {
    "target": "Ya hay bastante en la pizarra para ver: {idea}",
    "hard": "El salto siguiente, de {a} a {next}, pasa por {landmark}.",
    "hard on": "El salto siguiente, desde {a}, llega a {landmark}.",
    "hard back": "El salto siguiente, de {a} a {next}, deja atrás {landmark}.",
    "dies": "{idea} El número siguiente, {next}, es el primero que no encaja.",
    "end": "Ya está toda la cuadrícula: es hora de mirarla y de pensar más allá de su final.",
}

PARTS = ("cifras", "partes")

STOPS = Stops(QUESTIONS, ANSWERS, REASONS, PARTS)
