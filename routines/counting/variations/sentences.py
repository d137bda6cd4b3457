"""What changes in a next count, and why, in English and Spanish."""

from collections.abc import Mapping

# name: (what changes, why)
SENTENCES: Mapping[str, Mapping[str, tuple[str, str]]] = {
    "en": {
        "hard place": (
            "The same jumps, but only {terms} counts, from {start}.",
            "The jump from {before} to {hard} comes early and in a short count, so there is time to look at it twice.",
        ),
        "fold": (
            "The same count in lines of {length}.",
            "In lines of {length} it lines up, where it can be seen at one glance: {shows}",
        ),
        "fewer": (
            "The same count, but only the first {terms}, as far as {last}.",
            "With less on the board there is less to look through, and time to look at each line.",
        ),
        "multiples": (
            "The same jumps of {size}, starting at {start}.",
            "From {start} every count is a multiple of {size}, so the jumps are ones the class knows.",
        ),
        "first jumps": (
            "The same jumps of {size} with smaller, well-known numbers, starting at {start}.",
            "With numbers that need no effort, the class can look at what the jumps do.",
        ),
        "full hour": (
            "The same jumps of {size}, starting at {start}.",
            "From a full hour the minutes are easier to follow.",
        ),
        "round number more": (
            "The same start, by {size}: {round} more in each jump.",
            "What is left past each {landmark} is as it was in every cell. What else stays, and what changes?",
        ),
        "other start": (
            "The same jumps of {size} and the same lines, starting at {start}.",
            "It looks different, and yet from line to line it is still {kept}. Does the class expect that?",
        ),
        "back again": (
            "The same numbers the other way, from {start} to {last} by {size}.",
            "What was seen going one way is looked for going the other way.",
        ),
        "two in one": (
            "Jumps of {size}, in lines of {length}.",
            "One jump does what two did, and from line to line it is still {kept}: what became of the numbers between?",
        ),
        "landmark": (
            "The same jumps of {size}, starting at {start}, so that the count passes {landmark}.",
            "What was seen is put to the test where the numbers change their look.",
        ),
        "nearly round": (
            "Jumps of {size} in place of {old}.",
            "{size} is nearly {round}: going by {round} and putting it right is a way the class can find.",
        ),
        "finer": (
            "Jumps of {size} in place of {old}.",
            "Each jump is a tenth as long as before: which patterns come back one place further right?",
        ),
        "several parts": (
            "Jumps of {size} in place of {old}.",
            "The parts are the same, and a jump takes several of them: which counts land on a whole now?",
        ),
        "unfriendly": (
            "Jumps of {size} in place of {old}.",
            "Jumps of {size} do not fill {round} evenly, so it is crossed in the middle of a jump.",
        ),
        "by tens": (
            "Jumps of {size} in place of {old}.",
            "One jump of {size} does what {many} jumps of {old} did: where does the class see the old counts?",
        ),
        "one more": (
            "The same count in lines of {length}.",
            "From line to line it is now {across}: what lined up before now slides, and the class says why.",
        ),
        "other fold": (
            "The same count in lines of {length}.",
            "The numbers are known, so all eyes are free for what the lines do.",
        ),
    },
    "es": {
        "hard place": (
            "Los mismos saltos, pero solo {terms} números, desde {start}.",
            "El salto de {before} a {hard} llega pronto y en un conteo corto, y queda tiempo para mirarlo dos veces.",
        ),
        "fold": (
            "El mismo conteo en líneas de {length}.",
            "En líneas de {length} queda alineado y se ve de una mirada: {shows}",
        ),
        "fewer": (
            "El mismo conteo, pero solo los primeros {terms}, hasta {last}.",
            "Con menos en la pizarra hay menos que mirar y tiempo para mirar cada línea.",
        ),
        "multiples": (
            "Los mismos saltos de {size}, desde {start}.",
            "Desde {start} cada número es un múltiplo de {size}, con saltos que la clase conoce.",
        ),
        "first jumps": (
            "Los mismos saltos de {size} con números más pequeños y conocidos, desde {start}.",
            "Con números que no cuestan, la clase puede mirar lo que hacen los saltos.",
        ),
        "full hour": (
            "Los mismos saltos de {size}, desde {start}.",
            "Desde una hora en punto es más fácil seguir los minutos.",
        ),
        "round number more": (
            "El mismo comienzo, de {size} en {size}: {round} más en cada salto.",
            "Lo que queda después de cada {landmark} es igual que antes en cada celda. ¿Qué más se queda y qué cambia?",
        ),
        "other start": (
            "Los mismos saltos de {size} y las mismas líneas, desde {start}.",
            "Se ve distinto, y aun así de línea a línea siguen siendo {kept}. ¿Lo espera la clase?",
        ),
        "back again": (
            "Los mismos números al revés, desde {start} hasta {last} de {size} en {size}.",
            "Lo que se vio en una dirección se busca en la otra.",
        ),
        "two in one": (
            "Saltos de {size}, en líneas de {length}.",
            "Un salto hace lo que hacían dos y de línea a línea siguen siendo {kept}: ¿qué pasó con los números de en medio?",
        ),
        "landmark": (
            "Los mismos saltos de {size}, desde {start}, para que el conteo pase por {landmark}.",
            "Lo que se vio se pone a prueba donde los números cambian de aspecto.",
        ),
        "nearly round": (
            "Saltos de {size} en vez de {old}.",
            "{size} es casi {round}: contar de {round} en {round} y corregir es un camino que la clase puede encontrar.",
        ),
        "finer": (
            "Saltos de {size} en vez de {old}.",
            "Cada salto mide un décimo del anterior: ¿qué patrones vuelven un lugar más a la derecha?",
        ),
        "several parts": (
            "Saltos de {size} en vez de {old}.",
            "Las partes son las mismas y un salto toma varias: ¿qué números caen ahora en un entero?",
        ),
        "unfriendly": (
            "Saltos de {size} en vez de {old}.",
            "Los saltos de {size} no llenan {round} sin que sobre: se cruza en medio de un salto.",
        ),
        "by tens": (
            "Saltos de {size} en vez de {old}.",
            "Un salto de {size} hace lo que hacían {many} saltos de {old}: ¿dónde ve la clase los números de antes?",
        ),
        "one more": (
            "El mismo conteo en líneas de {length}.",
            "De línea a línea ahora son {across}: lo que estaba alineado se desliza y la clase dice por qué.",
        ),
        "other fold": (
            "El mismo conteo en líneas de {length}.",
            "Los números son conocidos y todos pueden mirar lo que hacen las líneas.",
        ),
    },
}
