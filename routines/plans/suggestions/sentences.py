"""The words of suggestions: questions that send children back to the grid. They never say whether something is so.

Wording: common practice, no source. At most 14 words, so that they are short enough for the youngest; of each there are
two, so that no two children are answered alike.
"""

from routines.counting import Claim

REPLIES: dict[str, dict[str, tuple[str, ...]]] = {
    "en": {
        "step": (
            "Show me one jump. Is it the same from one line to the next?",
            "Put a finger on two neighbors. What happens between them?",
        ),
        "neighbour": (
            "Point to two cells where you see it. Which jumps lie between them?",
            "Try it from another cell. How many jumps is it each time?",
        ),
        "digit": (
            "Which digit do you mean? Follow it with your finger, line by line.",
            "What will that digit be in the next line? How can you tell?",
        ),
        "digit-run": (
            "Which digit do you follow? What will it be in the next cell?",
            "Where is that digit in each one? What comes when it gets to 9?",
        ),
        "digit of a part": (
            "Which part of each one do you mean? Follow it with your finger.",
            "What will that part be in the next line? How can you tell?",
        ),
        "digit-run of a part": (
            "Which part of each one do you follow? What comes in the next cell?",
            "Where is that part in each one? How far can it go?",
        ),
        "digit-sum": (
            "Add the digits of one more. What do you get there?",
            "Choose one from another line and add its digits. What do you notice?",
        ),
        "remainder": (
            "Which ones on the grid show it? What will the next one be?",
            "How can you tell for one that is not on the board yet?",
        ),
        "landmarks": (
            "Touch each of them. How many jumps from one to the next?",
            "Where will the next one stand? Show us how you know.",
        ),
        "how-many": (
            "Circle them in one stretch. How many will the next one have?",
            "Where does one stretch end and the next begin? Count again there.",
        ),
        "sums": (
            "Try it in another place. What stays the same, and what moves?",
            "Which numbers did you add? Show us where they stand.",
        ),
        "table": (
            "Which one is it in our count? How many jumps make it?",
            "Pick another one. How many jumps is it from zero?",
        ),
        "opposites": (
            "Where would the next pair stand?",
            "How far is each of the two from zero? Show the jumps.",
        ),
    },
    "es": {
        "step": (
            "Muéstrame un salto. ¿Es igual de una línea a la siguiente?",
            "Pon el dedo en dos vecinos. ¿Qué pasa entre ellos?",
        ),
        "neighbour": (
            "Señala dos celdas donde se ve. ¿Qué saltos hay entre ellas?",
            "Prueba desde otra celda. ¿Cuántos saltos hay cada vez?",
        ),
        "digit": (
            "¿Qué dígito dices? Síguelo con el dedo, línea por línea.",
            "¿Cuál será ese dígito en la próxima línea? ¿Cómo lo sabes?",
        ),
        "digit-run": (
            "¿Qué dígito sigues? ¿Cuál será en la próxima celda?",
            "¿Dónde está ese dígito en cada uno? ¿Qué viene después del 9?",
        ),
        "digit of a part": (
            "¿Qué parte de cada uno dices? Síguela con el dedo.",
            "¿Cuál será esa parte en la próxima línea? ¿Cómo lo sabes?",
        ),
        "digit-run of a part": (
            "¿Qué parte de cada uno sigues? ¿Qué viene en la próxima celda?",
            "¿Dónde está esa parte en cada uno? ¿Hasta dónde puede llegar?",
        ),
        "digit-sum": (
            "Suma los dígitos de uno más. ¿Cuánto da ahí?",
            "Elige uno de otra línea y suma sus dígitos. ¿Qué notas?",
        ),
        "remainder": (
            "¿En cuáles de la cuadrícula se ve? ¿Cómo será el próximo?",
            "¿Cómo lo sabes de uno que todavía no está escrito?",
        ),
        "landmarks": (
            "Toca cada lugar. ¿Cuántos saltos hay de uno al siguiente?",
            "¿Dónde estará el próximo? Muéstranos cómo lo sabes.",
        ),
        "how-many": (
            "Enciérralos en un tramo. ¿Cuántos tendrá el siguiente?",
            "¿Dónde termina un tramo y empieza otro? Cuenta ahí otra vez.",
        ),
        "sums": (
            "Prueba en otro lugar. ¿Qué se queda igual y qué cambia?",
            "¿Qué números sumaste? Muéstranos dónde están.",
        ),
        "table": (
            "¿Qué lugar tiene en el conteo y cuántos saltos lo forman?",
            "Elige otro. ¿A cuántos saltos está de cero?",
        ),
        "opposites": (
            "¿Dónde estaría la próxima pareja?",
            "¿A qué distancia está cada uno de cero? Muestra los saltos.",
        ),
    },
}

SAID: dict[str, dict[str, tuple[str, ...]]] = {
    "en": {
        "write on": (
            "Let us go on to the {nth} count. What do you see there?",
            "Will that go on? Let us write as far as the {nth} count.",
        ),
        "table": ("We are counting the {step} times table.", "Look, this is the {step} times table."),
        "table reply": ("Where would {multiple} be? Look between its neighbors.",),
        "lands": ("We will land on {value}.", "I think we get to {value}."),
        "lands reply": (
            "Which counts come near it? What do they tell you?",
            "Between which two does it belong? Show us.",
        ),
        "every even": ("We say all the even numbers.", "Here we leave out no even number."),
        "every even reply": ("Show us an even number that is next to {value}. Do we say it?",),
        "line": ("When I go one {line} on, it is {value} more.", "Look, from {line} to {line} it is {value} more."),
        "line back": (
            "When I go one {line} on, it is {value} less.",
            "Look, from {line} to {line} it is {value} less.",
        ),
        "line later": (
            "When I go one {line} on, it is {value} later.",
            "Look, from {line} to {line} it is {value} later.",
        ),
        "line earlier": (
            "When I go one {line} on, it is {value} earlier.",
            "Look, from {line} to {line} it is {value} earlier.",
        ),
        "line reply": (
            "Start at {first} and count the jumps. Where do you stop?",
            "Point from {first} to where the next {line} begins. How many jumps?",
        ),
        "double": ("I think the {far} count is double the {near}.", "Our {far} count must be double the {near}."),
        "double reply": ("What are the {near} and the {far} count? Where does each begin?",),
        "double why": ("No: the {near} count is {a}, the {far} is {b}, and double {a} is {twice}.",),
        "will we": ("If we went on, would we say {value}? How can you know without counting?",),
        "yes": ("Yes. {reason}",),
        "no": ("No. {reason}",),
    },
    "es": {
        "write on": (
            "Sigamos hasta el {nth} número. ¿Qué ves ahí?",
            "¿Seguirá así? Escribamos hasta el {nth} número.",
        ),
        "table": ("Estamos contando la tabla del {step}.", "Mira, es la tabla del {step}."),
        "table reply": ("¿Dónde estaría {multiple}? Mira entre sus vecinos.",),
        "lands": ("Vamos a llegar a {value}.", "Creo que llegamos a {value}."),
        "lands reply": (
            "¿Qué números quedan cerca? ¿Qué te dicen?",
            "¿Entre cuáles dos va? Muéstranos.",
        ),
        "every even": ("Decimos todos los números pares.", "No dejamos fuera ningún número par."),
        "every even reply": ("Muestra un número par al lado de {value}. ¿Lo decimos?",),
        "line": ("Si paso a otra {line}, hay {value} más.", "Mira, de {line} en {line} hay {value} más."),
        "line back": ("Si paso a otra {line}, hay {value} menos.", "Mira, de {line} en {line} hay {value} menos."),
        "line later": (
            "Si paso a otra {line}, es {value} más tarde.",
            "Mira, de {line} en {line} es {value} más tarde.",
        ),
        "line earlier": ("Si paso a otra {line}, es {value} antes.", "Mira, de {line} en {line} es {value} antes."),
        "line reply": (
            "Empieza en {first} y cuenta los saltos. ¿Dónde paras?",
            "Señala desde {first} hasta donde empieza otra {line}. ¿Cuántos saltos hay?",
        ),
        "double": (
            "Creo que el {far} número es el doble del {near}.",
            "Nuestro {far} número debe ser el doble del {near}.",
        ),
        "double reply": ("¿Cuáles son el {near} y el {far} número? ¿Desde dónde contamos?",),
        "double why": ("No: el {near} número es {a}, el {far} es {b}, y el doble de {a} es {twice}.",),
        "will we": ("Si siguiéramos, ¿diríamos {value}? ¿Cómo lo sabes sin contar?",),
        "yes": ("Sí. {reason}",),
        "no": ("No. {reason}",),
    },
}


def replies_to(claim: Claim, language: str) -> tuple[str, ...]:
    """What to ask back, in every wording."""
    return REPLIES[language][f"{claim.family} of a part" if "part" in claim.subject else claim.family]


def said(name: str, language: str, **values: object) -> str:
    """The first wording of a sentence."""
    return ways(name, language, **values)[0]


def ways(name: str, language: str, **values: object) -> tuple[str, ...]:
    """Every wording of a sentence."""
    return tuple(wording.format(**values) for wording in SAID[language][name])
