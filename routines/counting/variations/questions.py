"""What the class may be asked about a next count, by language and level band (K-1, 2-3, 4-5, 6 and up).

Between braces: {start}, {last}, {before} counts of the new one, {landmark} what is passed, {a_mark} what is round there
("a ten", "a full hour"), {jump} a jump with its size, {size} and {old} the sizes now and before, {round} what it is
nearly or does not fill, {many} how many, {length} of a line, {kept} and {across} from line to line.
"""

from collections.abc import Mapping

# Changes that ask what another one asks.
ASKED_LIKE = {"smaller place": "hard place", "first jumps": "multiples", "other fold": "fold"}

QUESTIONS: Mapping[str, Mapping[str, tuple[str, str, str, str]]] = {
    "en": {
        "hard place": (
            "We said {before}. What do we say next? Show us.",
            "What comes after {before}, and which part of it changes? Show on the grid how you know.",
            "What does {jump} do to {before}? Show two ways on the grid to be sure.",
            "What has to change in the count after {before}, and what cannot? Make a rule, and test it on the counts "
            "around it.",
        ),
        "hard to write": (
            "We said {before}. How do we write the next one? Show us.",
            "How do we write the number after {before}, and what does each digit or part of it tell us?",
            "How do we write what comes after {before}? Compare it with its neighbors, and say what each part tells us.",
            "How is each count here written, and what does each part tell us? Make a rule, and test it on all of them.",
        ),
        "fold": (
            "Look down the lines. What do you see now? Point to it.",
            "Each line has {length} numbers now. What lines up, and why does it line up here?",
            "The numbers are the same, with {length} in each line. What lines up now, and why does {length} make it so?",
            "Which line lengths would make it line up, and which would not? Make a conjecture, and test it with another "
            "fold.",
        ),
        "fewer": (
            "Look at one line. What do you see? Point to it.",
            "Look at one line and then at the next. What stays, what changes, and why?",
            "Take two lines only. What does one have to do with the other, and how many jumps of {size} lie between?",
            "With so few counts on the board, what can you say for certain about the next line? Test it before we write.",
        ),
        "multiples": (
            "We start at {start}. What comes next? Do you know these numbers?",
            "Where have we met these numbers before, and how are they like those of our first count?",
            "Each count is some jumps of {size} from nothing. What was left over in our first count, and where do we see "
            "it?",
            "Compare each count with the one in the same place of our first count. Is the difference always the same? Test "
            "it, and say why.",
        ),
        "round start": (
            "We start at {start}. What comes next? Show us.",
            "We start at {start}. When do we come to {a_mark} again, and how do you know?",
            "How many jumps of {size} lead past {a_mark}, and what is left over there? Show it on the grid.",
            "When will a count land exactly on {a_mark} again? Make a rule, and test it with another start.",
        ),
        "round number more": (
            "Look at the ends of the numbers. What stays the same? Point.",
            "Each jump is {round} more than before. What stays the same in every place, and what changes?",
            "Compare each count with the one that stood in its place. What is left past {a_mark}, and why is it the same?",
            "Which part of every count stays as it was when each jump grows by {round}? Say why, for any start.",
        ),
        "other start": (
            "We start at {start} now. What is still the same? Point to it.",
            "We start at {start} now. What is still the same from line to line, and why?",
            "From line to line it was {kept} before. Is it so from {start} on, and why? Show it on the grid.",
            "Which things we found depend on the start, and which do not? Make a conjecture, and test it from {start}.",
        ),
        "going on": (
            "We go on from {start}. What will we see again? Point.",
            "We go on from {start}. Will we see the same things again? Which ones, and why?",
            "We go on from {start}. Which of the things we found will go on, and which will end? Why?",
            "Which things we found will go on from {start}, and which will end? Make a conjecture, and test it.",
        ),
        "back again": (
            "Now we count the other way, from {start}. What comes next?",
            "We count the other way now. Which of the things we saw are still there, and which turn round?",
            "We count from {start} to {last} now. What stays true when the jumps turn round, and what goes the other way?",
            "Which of our rules still hold when every jump is turned round, and which must be said anew? Test one.",
        ),
        "two in one": (
            "Which numbers are gone now? Where would they be? Show us.",
            "One jump does what two did. Which of our old numbers are still here, and where are the others?",
            "One jump of {size} does what two did. Which counts are still here, and where would the others stand?",
            "Which counts stay and which are left out when the jump is doubled? Say it as a rule, and test it further on.",
        ),
        "landmark": (
            "We will pass {landmark}. What will we say after it?",
            "Before we pass {landmark}: what will change in the numbers, and what will stay? How do you know?",
            "Before we pass {landmark}: which of the things we found will still be there on the other side, and why?",
            "Which of our rules will still hold past {landmark}, and which will break? Make a conjecture, and test it.",
        ),
        "nearly round": (
            "Each jump is nearly {round}. What comes next? Show us.",
            "{size} is nearly {round}. How can that help us to find the next number?",
            "{size} is nearly {round}. How could we use that for each jump, and what must we put right each time?",
            "How does it show in the digits that {size} is so near to {round}, and for how long? Make a conjecture, and "
            "test it.",
        ),
        "ten times": (
            "Each jump is longer now. What looks the same? Point to it.",
            "Each jump is ten times as long. What looks like our first count, and what is new?",
            "Each jump of {size} is ten times as long as before. Which patterns come back, and in which place?",
            "When each jump is ten times as long, which of our rules stay true, and in which place? Test one.",
        ),
        "finer": (
            "Each jump is smaller now. What looks the same? Point to it.",
            "Each jump is a tenth as long. What looks like our first count, and what is new?",
            "Each jump of {size} is a tenth as long as before. Which patterns come back, and in which place?",
            "When each jump is a tenth as long, which of our rules stay true, and in which place? Test one.",
        ),
        "several parts": (
            "Each jump takes more parts now. Where is a whole? Point.",
            "Each jump takes several parts now. When will we land on a whole, and how do you know?",
            "Each jump is {size} now. Which counts will land on a whole, and which will jump over it? How can you tell?",
            "Which jumps would land on every whole, on some, or on none? Make a conjecture, and test it here.",
        ),
        "unfriendly": (
            "Each jump is {size} now. What comes next? Show us.",
            "Jumps of {size} do not fill {round} evenly. Where will we cross it, and what is left?",
            "Where will jumps of {size} cross a multiple of {round}, and how much of the jump is left past it?",
            "After how many jumps of {size} will a count land on a multiple of {round}? Make a rule, and test it.",
        ),
        "by tens": (
            "Now each jump is ten. What stays the same? Point to it.",
            "Each jump is {size} now. Which digit changes and which one stays, and why?",
            "Each jump of {size} does what {many} jumps of {old} did. What changes in the numbers, what stays, and why?",
            "Which digits can a jump of {size} never change? Make a conjecture, and test it on the grid.",
        ),
        "one more": (
            "There is one more in each line. What moved? Point to it.",
            "There is one more in each line now. What slides, which way does it go, and why?",
            "What stood in one line slides now that there are {length} in each. Which way, how far, and why?",
            "What does one more in each line do to every pattern that lined up? Make a rule, and test it.",
        ),
    },
    "es": {
        "hard place": (
            "Dijimos {before}. ¿Qué decimos después? Muéstralo.",
            "¿Qué viene después de {before} y qué parte cambia? Muestra en la cuadrícula cómo lo sabes.",
            "¿Qué le hace {jump} a {before}? Muestra dos caminos en la cuadrícula para estar seguro.",
            "¿Qué tiene que cambiar en el número después de {before} y qué no puede? Haz una regla y pruébala con los "
            "números de alrededor.",
        ),
        "hard to write": (
            "Dijimos {before}. ¿Cómo escribimos el siguiente? Muéstralo.",
            "¿Cómo escribimos el número después de {before} y qué nos dice cada cifra o parte?",
            "¿Cómo escribimos lo que sigue a {before}? Compáralo con sus vecinos y di qué nos dice cada parte.",
            "¿Cómo se escribe cada número y qué nos dice cada parte? Haz una regla y pruébala con todos.",
        ),
        "fold": (
            "Mira las líneas hacia abajo. ¿Qué ves ahora? Señálalo.",
            "Cada línea tiene ahora {length} números. ¿Qué queda alineado y por qué aquí?",
            "Son los mismos números, con {length} en cada línea. ¿Qué queda alineado ahora y por qué lo logra {length}?",
            "¿Qué largos de línea lo alinean y cuáles no? Haz una conjetura y pruébala con otra forma de doblar el conteo.",
        ),
        "fewer": (
            "Mira una sola línea. ¿Qué ves? Señálalo.",
            "Mira una línea y después la otra. ¿Qué se queda, qué cambia y por qué?",
            "Toma solo dos líneas. ¿Qué tiene que ver una con la otra y cuántos saltos de {size} hay entre ellas?",
            "Con tan pocos números en la pizarra, ¿qué puedes decir con certeza de la línea que sigue? Pruébalo antes de "
            "escribirla.",
        ),
        "multiples": (
            "Empezamos en {start}. ¿Qué sigue? ¿Conoces estos números?",
            "¿Dónde vimos antes estos números y en qué se parecen a los del primer conteo?",
            "Cada número está a unos saltos de {size} de la nada. ¿Qué sobraba en el primer conteo y dónde se ve?",
            "Compara cada número con el que estaba en su lugar en el primer conteo. ¿Es siempre la misma diferencia? "
            "Ponlo a prueba y di por qué.",
        ),
        "round start": (
            "Empezamos en {start}. ¿Qué viene después? Muéstralo.",
            "Empezamos en {start}. ¿Cuándo llegamos otra vez a {a_mark} y cómo lo sabes?",
            "¿Cuántos saltos de {size} pasan por {a_mark} y qué sobra ahí? Muéstralo en la cuadrícula.",
            "¿Cuándo caerá otra vez un número justo en {a_mark}? Haz una regla y pruébala con otro comienzo.",
        ),
        "round number more": (
            "Mira el final de los números. ¿Qué se queda igual? Señálalo.",
            "Cada salto tiene {round} más que antes. ¿Qué se queda igual en cada lugar y qué cambia?",
            "Compara cada número con el que estaba en su lugar. ¿Qué sobra después de {a_mark} y por qué es igual?",
            "¿Qué parte de cada número se queda como estaba cuando cada salto crece {round}? Di por qué, para cualquier "
            "comienzo.",
        ),
        "other start": (
            "Ahora empezamos en {start}. ¿Qué sigue siendo igual? Señálalo.",
            "Ahora empezamos en {start}. ¿Qué sigue siendo igual de línea a línea y por qué?",
            "De línea a línea la diferencia era {kept}. ¿Es así desde {start} y por qué? Muéstralo en la cuadrícula.",
            "¿Qué cosas de las que vimos dependen del comienzo y cuáles no? Haz una conjetura y pruébala desde {start}.",
        ),
        "going on": (
            "Seguimos desde {start}. ¿Qué veremos otra vez? Señálalo.",
            "Seguimos desde {start}. ¿Veremos otra vez lo mismo? ¿Qué cosas y por qué?",
            "Seguimos desde {start}. ¿Qué cosas de las que vimos seguirán y cuáles se acabarán? ¿Por qué?",
            "¿Qué cosas de las que vimos seguirán desde {start} y cuáles se acabarán? Haz una conjetura y pruébala.",
        ),
        "back again": (
            "Contamos al revés, desde {start}. ¿Qué viene después?",
            "Ahora contamos al revés. ¿Qué cosas de las que vimos siguen ahí y cuáles dan la vuelta?",
            "Contamos desde {start} hasta {last}. ¿Qué se cumple todavía con los saltos al revés y qué cambia de "
            "dirección?",
            "¿Qué reglas se cumplen todavía con todos los saltos al revés y cuáles hay que decir de nuevo? Prueba una.",
        ),
        "two in one": (
            "¿Qué números faltan ahora? ¿Dónde estarían? Muéstralo.",
            "Un salto hace lo que hacían dos. ¿Qué números de antes siguen aquí y dónde están los otros?",
            "Un salto de {size} hace lo que hacían dos. ¿Qué números siguen aquí y dónde estarían los otros?",
            "¿Qué números se quedan y cuáles faltan cuando el salto se duplica? Dilo como regla y pruébala más adelante.",
        ),
        "landmark": (
            "Vamos a pasar por {landmark}. ¿Qué diremos después?",
            "Antes de pasar por {landmark}: ¿qué va a cambiar en los números y qué se queda? ¿Cómo lo sabes?",
            "Antes de pasar por {landmark}: ¿qué cosas de las que vimos seguirán del otro lado y por qué?",
            "¿Qué reglas se cumplirán todavía después de {landmark} y cuáles no? Haz una conjetura y pruébala.",
        ),
        "nearly round": (
            "Cada salto es casi {round}. ¿Qué viene después? Muéstralo.",
            "{size} es casi {round}. ¿Cómo nos ayuda eso a encontrar el número que sigue?",
            "{size} es casi {round}. ¿Cómo podemos usarlo en cada salto y qué hay que corregir cada vez?",
            "¿Cómo se ve en las cifras que {size} es casi {round} y hasta cuándo? Haz una conjetura y pruébala.",
        ),
        "ten times": (
            "Cada salto es más largo. ¿Qué se ve igual? Señálalo.",
            "Cada salto es diez veces más largo. ¿Qué se parece al primer conteo y qué es nuevo?",
            "Cada salto de {size} es diez veces el de antes. ¿Qué patrones vuelven y en qué lugar?",
            "Cuando cada salto es diez veces el de antes, ¿qué reglas se cumplen y en qué lugar? Prueba una.",
        ),
        "finer": (
            "Cada salto es más pequeño. ¿Qué se ve igual? Señálalo.",
            "Cada salto mide un décimo del de antes. ¿Qué se parece al primer conteo y qué es nuevo?",
            "Cada salto de {size} mide un décimo del de antes. ¿Qué patrones vuelven y en qué lugar?",
            "Cuando cada salto mide un décimo del de antes, ¿qué reglas se cumplen y en qué lugar? Prueba una.",
        ),
        "several parts": (
            "Cada salto toma más partes. ¿Dónde hay un entero? Señálalo.",
            "Ahora cada salto toma varias partes. ¿Cuándo caeremos en un entero y cómo lo sabes?",
            "Ahora cada salto es {size}. ¿Qué números caen en un entero y cuáles lo saltan? ¿Cómo lo sabes?",
            "¿Qué saltos caerían en todos los enteros, en algunos o en ninguno? Haz una conjetura y pruébala aquí.",
        ),
        "unfriendly": (
            "Ahora cada salto es {size}. ¿Qué viene después? Muéstralo.",
            "Los saltos de {size} no llenan {round} sin que sobre. ¿Dónde lo cruzamos y qué queda?",
            "¿Dónde cruzan los saltos de {size} un múltiplo de {round} y cuánto del salto queda después?",
            "¿Después de cuántos saltos de {size} cae un número en un múltiplo de {round}? Haz una regla y pruébala.",
        ),
        "by tens": (
            "Ahora cada salto es diez. ¿Qué se queda igual? Señálalo.",
            "Ahora cada salto es {size}. ¿Qué cifra cambia, cuál se queda y por qué?",
            "Cada salto de {size} hace lo que hacían {many} saltos de {old}. ¿Qué cambia en los números, qué se queda y "
            "por qué?",
            "¿Qué cifras no puede cambiar nunca un salto de {size}? Haz una conjetura y pruébala en la cuadrícula.",
        ),
        "one more": (
            "Hay uno más en cada línea. ¿Qué se movió? Señálalo.",
            "Ahora hay uno más en cada línea. ¿Qué se desliza, hacia dónde y por qué?",
            "Lo que estaba alineado se desliza, ahora que hay {length} en cada línea. ¿Hacia dónde, cuánto y por qué?",
            "¿Qué le hace uno más en cada línea a todo patrón que estaba alineado? Haz una regla y pruébala.",
        ),
    },
}


def question(name: str, language: str, band: int) -> str:
    """The question that goes with a change, still with its braces."""
    return QUESTIONS[language][ASKED_LIKE.get(name, name)][band]
