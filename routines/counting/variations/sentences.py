"""What changes in a next count, and why, in English and Spanish: for the teacher, and so the same at all grades."""

from collections.abc import Mapping

# name: (what changes, why)
SENTENCES: Mapping[str, Mapping[str, tuple[str, str]]] = {
    "en": {
        "hard place": (
            "The same jumps, but only {terms} counts, from {start}.",
            "The jump from {before} to {hard} comes early and in a short count, so there is time to look at it twice.",
        ),
        "hard to write": (
            "The same jumps, but only {terms} counts, from {start}.",
            "{hard} comes early and in a short count, so there is time to look at how it and its neighbors are written.",
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
        "round start": (
            "The same jumps of {size}, starting at {start}.",
            "So it is easier to follow what is left over past each {landmark}.",
        ),
        "smaller place": (
            "The same jumps, starting at {start}: past {landmark} in place of {larger}.",
            "The jump from {before} to {hard} is the hard one again, with numbers that are easier to picture.",
        ),
        "round number more": (
            "The same start, by {size}: {round} more in each jump.",
            "What is left past each {landmark} is as it was in every cell.",
        ),
        "other start": (
            "The same jumps of {size} and the same lines, starting at {start}.",
            "It looks different, and yet from line to line it is still {kept}.",
        ),
        "going on": (
            "The same jumps of {size}, going on from {end}, where the board ended.",
            "What was seen is looked for further on, where from line to line it is still {kept}.",
        ),
        "back again": (
            "The same numbers the other way, from {start} to {last} by {size}.",
            "What was seen going one way is looked for going the other way.",
        ),
        "two in one": (
            "Jumps of {size}, in lines of {length}.",
            "One jump does what two did, and from line to line it is still {kept}.",
        ),
        "landmark": (
            "The same jumps of {size}, starting at {start}, so that the count passes {landmark}.",
            "What was seen is put to the test where the numbers change their look.",
        ),
        "nearly round": (
            "Jumps of {size} instead of {old}.",
            "{size} is nearly {round}: going by {round} and putting it right is a way the class can find.",
        ),
        "ten times": (
            "Jumps of {size} instead of {old}.",
            "Each jump is ten times as long as before: patterns come back one place further left.",
        ),
        "finer": (
            "Jumps of {size} instead of {old}.",
            "Each jump is a tenth as long as before: patterns come back one place further right.",
        ),
        "several parts": (
            "Jumps of {size} instead of {old}.",
            "The parts are the same, and a jump takes several of them, so that not every whole is landed on.",
        ),
        "unfriendly": (
            "Jumps of {size} instead of {old}.",
            "Jumps of {size} do not fill {round} evenly, so it is crossed in the middle of a jump.",
        ),
        "by tens": (
            "Jumps of {size} instead of {old}.",
            "One jump of {size} does what {many} jumps of {old} did.",
        ),
        "one more": (
            "The same count in lines of {length}.",
            "From line to line it is now {across}, so what lined up before slides.",
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
        "hard to write": (
            "Los mismos saltos, pero solo {terms} números, desde {start}.",
            "{hard} llega pronto y en un conteo corto, y queda tiempo para mirar cómo se escriben él y sus vecinos.",
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
        "round start": (
            "Los mismos saltos de {size}, desde {start}.",
            "Así es más fácil seguir lo que sobra después de cada {landmark}.",
        ),
        "smaller place": (
            "Los mismos saltos, desde {start}: pasan por {landmark} en vez de {larger}.",
            "El salto de {before} a {hard} es otra vez el difícil, con números más fáciles de imaginar.",
        ),
        "round number more": (
            "El mismo comienzo, de {size} en {size}: {round} más en cada salto.",
            "Lo que queda después de cada {landmark} es igual que antes en cada celda.",
        ),
        "other start": (
            "Los mismos saltos de {size} y las mismas líneas, desde {start}.",
            "Se ve distinto, y aun así de línea a línea siguen siendo {kept}.",
        ),
        "going on": (
            "Los mismos saltos de {size}, siguiendo desde {end}, donde terminó la pizarra.",
            "Lo que se vio se busca más adelante, donde de línea a línea siguen siendo {kept}.",
        ),
        "back again": (
            "Los mismos números al revés, desde {start} hasta {last} de {size} en {size}.",
            "Lo que se vio en una dirección se busca en la otra.",
        ),
        "two in one": (
            "Saltos de {size}, en líneas de {length}.",
            "Un salto hace lo que hacían dos y de línea a línea siguen siendo {kept}.",
        ),
        "landmark": (
            "Los mismos saltos de {size}, desde {start}, para que el conteo pase por {landmark}.",
            "Lo que se vio se pone a prueba donde los números cambian de aspecto.",
        ),
        "nearly round": (
            "Saltos de {size} en vez de {old}.",
            "{size} es casi {round}: contar de {round} en {round} y corregir es un camino que la clase puede encontrar.",
        ),
        "ten times": (
            "Saltos de {size} en vez de {old}.",
            "Cada salto es diez veces el de antes: los patrones vuelven un lugar más a la izquierda.",
        ),
        "finer": (
            "Saltos de {size} en vez de {old}.",
            "Cada salto mide un décimo del anterior: los patrones vuelven un lugar más a la derecha.",
        ),
        "several parts": (
            "Saltos de {size} en vez de {old}.",
            "Las partes son las mismas y un salto toma varias, y no todos los enteros se alcanzan.",
        ),
        "unfriendly": (
            "Saltos de {size} en vez de {old}.",
            "Los saltos de {size} no llenan {round} sin que sobre: se cruza en medio de un salto.",
        ),
        "by tens": (
            "Saltos de {size} en vez de {old}.",
            "Un salto de {size} hace lo que hacían {many} saltos de {old}.",
        ),
        "one more": (
            "El mismo conteo en líneas de {length}.",
            "De línea a línea ahora son {across}, y lo que estaba alineado se desliza.",
        ),
        "other fold": (
            "El mismo conteo en líneas de {length}.",
            "Los números son conocidos y todos pueden mirar lo que hacen las líneas.",
        ),
    },
}
