"""What is asked and answered at a stop, by language and level band (K-1, 2-3, 4-5, 6 and up).

Between braces: {a} the last count on the board, {next} the one after it, {place} and {far} a cell further on and the
count in it, {jump} a jump with its size, {idea} what is seen so far, {probe} a number past the end, {landmark} what is
passed. Several of each, so that plans do not read alike. "So" is said only where what is seen makes the answer so.
"""

from collections.abc import Mapping

Bands = tuple[tuple[str, ...], ...]

QUESTIONS: Mapping[str, Mapping[str, Bands]] = {
    "en": {
        "target": (
            (
                "What do you see? Which number goes in {place}?",
                "What stays the same? Point, and say what goes in {place}.",
            ),
            (
                "What do you notice so far? Which number will stand in {place}, and how do you know?",
                "Look along the rows and down the columns: what will stand in {place}, and why?",
            ),
            (
                "What do you notice, and why does {jump} make it so? Use it to say which count will stand in {place}.",
                "Which count will stand in {place}? Find two ways to be sure before we get there by {jump}.",
            ),
            (
                "Say what you notice as a rule, and use your rule to predict {place}. How could we test whether it "
                "works everywhere?",
                "Make a conjecture about where {jump} leads from any cell, and use it to predict {place}. How would you "
                "test it?",
            ),
        ),
        "hard": (
            (
                "We said {a}. What do we say next?",
                "Point to {a}. Which number comes next?",
            ),
            (
                "Stop at {a}. Which number comes next, and which number on the grid can help you?",
                "What comes after {a}, and which digits or parts will change? How do you know?",
            ),
            (
                "We are at {a}. What does {jump} lead to, and which parts of the number change? Show it in two ways.",
                "Before we go on from {a}: which count comes next, what changes in it, and which count helps you?",
            ),
            (
                "The jump from {a} is not like those before it. What changes, and why? Predict it, and test it with "
                "another way through the grid.",
                "What must change in the next count after {a}, and what cannot? Make your conjecture before we count.",
            ),
        ),
        "dies": (
            (
                "What did we see each time so far? Will the next one fit?",
                "Will it go on like this? What comes next?",
            ),
            (
                "“{idea}” Will the next count, after {a}, still say so? Why?",
                "We saw something that was true up to {a}. Will the next count still fit? Why?",
            ),
            (
                "“{idea}” Up to {a} that is so. What does {jump} do to it next, and why?",
                "Something has been true up to {a}. Will it still be true after {jump}, and how can you tell?",
            ),
            (
                "“{idea}” It is true of every count up to {a}. Is that a proof? Predict the next count, and test it.",
                "A rule of ours has been true up to {a}. Does that prove it? Predict the next count, and test the rule.",
            ),
        ),
        "end": (
            (
                "If we go on, will we say {probe}? Show us.",
                "We could go on. Will we say {probe}?",
            ),
            (
                "If we kept counting, would we ever say {probe}? Where would it be, and how do you know?",
                "Is {probe} one of our counts if we go on? In which row and column, and why?",
            ),
            (
                "If we kept on by {jump}, would {probe} come? In which row and column? Find two ways to be sure.",
                "Would {probe} be one of our counts? Say where it would stand and which count helps you, without "
                "counting all the way.",
            ),
            (
                "Decide whether {probe} would come, without writing the counts between. Which rule tells you, and "
                "would it work for any number?",
                "Would {probe} be counted? Give a rule that answers this for any number, and test it on a count you "
                "can see.",
            ),
        ),
    },
    "es": {
        "target": (
            (
                "¿Qué ves? ¿Qué número va en {place}?",
                "¿Qué se repite? Señala y di qué va en {place}.",
            ),
            (
                "¿Qué notas hasta ahora? ¿Qué número estará en {place} y cómo lo sabes?",
                "Mira a lo largo de las filas y las columnas: ¿qué estará en {place} y por qué?",
            ),
            (
                "¿Qué notas y por qué lo produce {jump}? Úsalo para decir qué número estará en {place}.",
                "¿Qué número estará en {place}? Busca dos caminos para estar seguro antes de llegar con {jump}.",
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
                "Dijimos {a}. ¿Qué número decimos después?",
                "Señala {a}. ¿Qué número viene después?",
            ),
            (
                "Paramos en {a}. ¿Qué número sigue y qué número de la cuadrícula te ayuda?",
                "¿Qué viene después de {a} y qué cifras o partes van a cambiar? ¿Cómo lo sabes?",
            ),
            (
                "Estamos en {a}. ¿Adónde lleva {jump} y qué partes del número cambian? Muéstralo de dos maneras.",
                "Antes de seguir desde {a}: ¿qué número sigue, qué cambia en él y qué número te ayuda?",
            ),
            (
                "El salto desde {a} no es como los de antes. ¿Qué cambia y por qué? Predícelo y ponlo a prueba por otro "
                "camino en la cuadrícula.",
                "¿Qué tiene que cambiar en el número después de {a} y qué no puede cambiar? Haz tu conjetura antes de "
                "contar.",
            ),
        ),
        "dies": (
            (
                "¿Qué vimos cada vez hasta ahora? ¿Seguirá en el siguiente?",
                "¿Seguirá así? ¿Qué número viene después?",
            ),
            (
                "«{idea}» ¿Lo dirá todavía el número después de {a}? ¿Por qué?",
                "Vimos algo que se cumple hasta {a}. ¿Se cumplirá en el que sigue? ¿Por qué?",
            ),
            (
                "«{idea}» Hasta {a} es así. ¿Qué le hace ahora {jump} y por qué?",
                "Algo se cumplió hasta {a}. ¿Se cumplirá después de {jump} y cómo lo puedes saber?",
            ),
            (
                "«{idea}» Se cumple hasta {a}. ¿Es eso una prueba? Predice el número que sigue y compruébalo.",
                "Una regla nuestra se cumplió hasta {a}. ¿Queda probada con eso? Predice el que sigue y compruébala.",
            ),
        ),
        "end": (
            (
                "Si seguimos, ¿diremos {probe}? Muéstranos.",
                "Podemos seguir. ¿Vamos a decir {probe}?",
            ),
            (
                "Si seguimos contando, ¿diremos alguna vez {probe}? ¿Dónde estaría y cómo lo sabes?",
                "¿Diremos {probe} si seguimos? ¿En qué fila y columna, y por qué?",
            ),
            (
                "Si seguimos con {jump}, ¿diríamos {probe}? ¿En qué fila y columna? Busca dos caminos para estar seguro.",
                "¿Diríamos {probe} si seguimos? Di dónde estaría y qué número te ayuda, sin contar todo el camino.",
            ),
            (
                "Decide si diríamos {probe}, sin escribir los números que faltan. ¿Qué regla te lo dice y sirve para "
                "cualquier número?",
                "¿Diríamos {probe}? Da una regla que responda para cualquier número y pruébala con uno que ves.",
            ),
        ),
    },
}

ANSWERS: Mapping[str, Mapping[str, str]] = {
    "en": {
        "target": "{idea} So {far} stands in {place}.",
        "beside": "{idea} In {place} we will have {far}.",
        "place": "{far} stands in {place}.",
        "hard": "{next} comes next.",
        "dies": "{next} comes next, and there it ends: {idea_lower}",
    },
    "es": {
        "target": "{idea} Por eso en {place} tendremos {far}.",
        "beside": "{idea} En {place} tendremos {far}.",
        "place": "En {place} tendremos {far}.",
        "hard": "Sigue {next}.",
        "dies": "Sigue {next}, y ahí termina: {idea_lower}",
    },
}

REASONS: Mapping[str, Mapping[str, str]] = {
    "en": {
        "target": "Enough is on the board to see: {idea}",
        "hard": "The next jump, from {a} to {next}, passes {landmark}.",
        "hard on": "The next jump, from {a}, reaches {landmark}.",
        "hard back": "The next jump, from {a} to {next}, leaves {landmark} behind.",
        "dies": "{idea} The next count, {next}, is the first that does not fit.",
        "end": "The whole grid is there: time to look at it and to think past its end.",
    },
    "es": {
        "target": "Ya hay bastante en la pizarra para ver: {idea}",
        "hard": "El salto siguiente, de {a} a {next}, pasa por {landmark}.",
        "hard on": "El salto siguiente, desde {a}, llega a {landmark}.",
        "hard back": "El salto siguiente, de {a} a {next}, deja atrás {landmark}.",
        "dies": "{idea} El número siguiente, {next}, es el primero que no encaja.",
        "end": "Ya está toda la cuadrícula: es hora de mirarla y de pensar más allá de su final.",
    },
}
