"""What children may say, and questions that send them back to the grid, in Spanish. They never say whether something is so.

Wording: common practice, no source. Where there are two, no two children are answered alike.
"""

from collections.abc import Mapping

ANSWERS: Mapping[str, tuple[str, ...]] = {
    "write on": (
        "Mira {place}. ¿Todavía es así?",
        "¿Es así también en {place}? Miremos ahí.",
    ),
    "write past the end": (
        "Sigamos hasta {value:el}. ¿Dónde iría y sería todavía así?",
        "Sigan contando hasta {value:el}. ¿Dónde va? ¿Todavía es así?",
    ),
    "table": (
        "Estamos diciendo la tabla del {step}.",
        "Mira, es la tabla del {step}.",
    ),
    "table reply": ("¿Entre qué dos números estaría {multiple}?",),
    "lands": (
        "Vamos a llegar {value:al}.",
        "Creo que llegamos {value:al}.",
    ),
    "lands reply": (
        "¿Cuáles quedan cerca? ¿Qué te dicen?",
        "¿Entre qué dos va? Muéstranos.",
    ),
    "lands why": ("No: {line}, {marks} van de {apart} en {apart}: {a} y luego {b}. Saltamos por encima de {value}.",),
    "every even": (
        "Decimos todos los números pares.",
        "No dejamos fuera ningún número par.",
    ),
    "every even reply": ("¿Qué número par viene justo después del {value}? ¿Está en la cuadrícula?",),
    "below zero": (
        "Por debajo de 0 los números crecen otra vez.",
        "Después del 0 los números vuelven a crecer.",
    ),
    "below zero reply": ("Mira {a:el} y luego {b:el}. ¿Cuál es menor y cómo lo sabes?",),
    "below zero why": ("No: {a:del} {b:al} seguimos bajando {step}. Por debajo de 0, más lejos del 0 es menos.",),
    "line way": ("bajo un lugar", "paso un lugar a la derecha", "subo un lugar"),
    "line": (
        "Si {way}, hay {value} más.",
        "Mira, de {line} en {line} hay {value} más.",
    ),
    "line back": (
        "Si {way}, hay {value} menos.",
        "Mira, de {line} en {line} hay {value} menos.",
    ),
    "line later": (
        "Si {way}, es {value} más tarde.",
        "Mira, de {line} en {line} es {value} más tarde.",
    ),
    "line earlier": (
        "Si {way}, es {value} antes.",
        "Mira, de {line} en {line} es {value} antes.",
    ),
    "line reply": (
        "Empieza con {first:el}. ¿Cuántos saltos hay hasta el mismo lugar de la {line} siguiente?",
        "Señala {first:el} y el mismo lugar de la {line} siguiente. ¿Cuántos saltos hay?",
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
}
