"""What children may say, and questions that send them back to the grid, in Spanish. They never say whether something is so.

Wording: common practice, no source. Where there are two, no two children are answered alike.
"""

from collections.abc import Mapping

ANSWERS: Mapping[str, tuple[str, ...]] = {
    "write on": (
        "Vamos al {nth} número. ¿Todavía es así?",
        "¿Será así también en el {nth} número? Miremos ahí.",
    ),
    "table": (
        "Estamos contando la tabla del {step}.",
        "Mira, es la tabla del {step}.",
    ),
    "table reply": ("¿Dónde estaría {multiple}? Mira entre sus vecinos.",),
    "lands": (
        "Vamos a llegar {value:al}.",
        "Creo que llegamos {value:al}.",
    ),
    "lands reply": (
        "¿Cuáles quedan cerca? ¿Qué te dicen?",
        "¿Entre cuáles dos va? Muéstranos.",
    ),
    "every even": (
        "Decimos todos los números pares.",
        "No dejamos fuera ningún número par.",
    ),
    "every even reply": ("¿Qué número par viene justo después del {value}? ¿Está en la cuadrícula?",),
    "line": (
        "Si paso a la {line} siguiente, hay {value} más.",
        "Mira, de {line} en {line} hay {value} más.",
    ),
    "line back": (
        "Si paso a la {line} siguiente, hay {value} menos.",
        "Mira, de {line} en {line} hay {value} menos.",
    ),
    "line later": (
        "Si paso a la {line} siguiente, es {value} más tarde.",
        "Mira, de {line} en {line} es {value} más tarde.",
    ),
    "line earlier": (
        "Si paso a la {line} siguiente, es {value} antes.",
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
