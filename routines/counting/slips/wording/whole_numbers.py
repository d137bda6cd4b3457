"""What is said about slips in counts of whole numbers."""

from .slip_words import InTwo, SlipWords

WORDS = {
    "W01": SlipWords(
        InTwo(
            "After {a} the pattern of the number words is run past nine; a new ten is due.",
            "Después de {a} se sigue la serie más allá del nueve; toca otra decena.",
        ),
        InTwo("Which ten comes after the nine in {a}?", "¿Qué decena viene después del nueve de {a}?"),
        InTwo("Which ten comes after {a}?", "¿Qué decena viene después de {a}?"),
    ),
    "W02": SlipWords(
        InTwo(
            "The order of the tens is not yet sure: after {a} another ten is said than {b}.",
            "El orden de las decenas aún no es seguro: después de {a} se dice otra decena y no {b}.",
        ),
        InTwo("Which tens have we said so far, in order?", "¿Qué decenas hemos dicho hasta ahora, en orden?"),
        InTwo("Which tens have we said before {a}?", "¿Qué decenas dijimos antes de {a}?"),
    ),
    "W03": SlipWords(
        InTwo(
            "{b} is left out: its word has no ones part to count.",
            "Se deja fuera {b}: su palabra no tiene unidades que contar.",
        ),
        InTwo("Is there a number between {a} and that one?", "¿Hay un número entre {a} y ese?"),
        InTwo("Did we skip one after {a}?", "¿Nos saltamos uno después de {a}?"),
    ),
    "W04": SlipWords(
        InTwo(
            "{a} is said again while the next word is being looked for.",
            "Se repite {a} mientras se busca la palabra siguiente.",
        ),
        InTwo("We have just said {a}: what is one more?", "Acabamos de decir {a}: ¿cuál es uno más?"),
        InTwo("We said {a}: what is one more?", "Ya dijimos {a}: ¿cuál es uno más?"),
    ),
    "W05": SlipWords(
        InTwo(
            "The end of the word for {b} sounds like that of a ten, so the tens are counted on.",
            "El final de la palabra de {b} suena como el de una decena.",
        ),
        InTwo("How many ones does the next number have?", "¿Cuántas unidades tiene el número que sigue?"),
        InTwo("How many ones come with the ten?", "¿Cuántas unidades van con la decena?"),
    ),
    "W06": SlipWords(
        InTwo(
            "The word for {a} sounds like ninety, so the count goes on from there.",
            "La palabra de {a} suena como noventa y el conteo sigue desde ahí.",
        ),
        InTwo("How many tens does {a} have?", "¿Cuántas decenas tiene {a}?"),
        InTwo("How many tens are in {a}?", "¿Cuántas decenas hay en {a}?"),
    ),
    "W07": SlipWords(
        InTwo(
            "In the word for {b} the ones are said first, so they are written first.",
            "En la palabra de {b} se oyen primero las unidades y se escriben primero.",
        ),
        InTwo(
            "Which digit tells how many tens, and which one tells the ones?",
            "¿Qué cifra dice cuántas decenas hay y cuál dice las unidades?",
        ),
        InTwo("Which digit shows the ten?", "¿Qué cifra muestra la decena?"),
        of_writing=True,
    ),
    "W08": SlipWords(
        InTwo(
            "After {a} ten tens are not yet renamed as one hundred.",
            "Después de {a} las diez decenas aún no se llaman una centena.",
        ),
        InTwo(
            "What new name do we give to ten tens after {a}?",
            "¿Qué nombre nuevo damos a diez decenas después de {a}?",
        ),
        InTwo("What do ten tens make after {a}?", "¿Qué forman diez decenas después de {a}?"),
    ),
    "W09": SlipWords(
        InTwo(
            "After {a} the hundreds are counted on instead of the ones.",
            "Después de {a} se cuentan centenas y no unidades.",
        ),
        InTwo(
            "We are counting by ones: what is just one more than {a}?",
            "Contamos de uno en uno: ¿cuál es solo uno más que {a}?",
        ),
        InTwo("What is one more than {a}?", "¿Cuál es uno más que {a}?"),
    ),
    "W10": SlipWords(
        InTwo(
            "The nine at the end of {a} is taken for the end of the hundred.",
            "El nueve del final de {a} se toma por el final de la centena.",
        ),
        InTwo(
            "Which place of {a} changes when we count one more: the tens or the hundreds?",
            "¿Qué lugar de {a} cambia al contar uno más: las decenas o las centenas?",
        ),
        InTwo("Which ten comes after {a}?", "¿Qué decena viene después de {a}?"),
    ),
    "W11": SlipWords(
        InTwo(
            "After {a} the pattern of the number words is run past nine.",
            "Después de {a} se sigue la serie más allá del nueve.",
        ),
        InTwo(
            "When the ones have reached nine in {a}, which place changes next?",
            "Cuando las unidades llegan a nueve en {a}, ¿qué lugar cambia después?",
        ),
        InTwo("Which ten comes after {a}?", "¿Qué decena viene después de {a}?"),
    ),
    "W12": SlipWords(
        InTwo("The nines in {a} are taken to lead to a thousand.", "Los nueves de {a} parecen llevar a un millar."),
        InTwo(
            "The tens and the ones of {a} are full: which place goes up by one?",
            "Las decenas y unidades de {a} están completas: ¿qué lugar sube uno?",
        ),
    ),
    "W13": SlipWords(
        InTwo(
            "After {a} the last three digits go on by themselves, without a new thousand.",
            "Después de {a} siguen solo las tres últimas cifras, sin otro millar.",
        ),
        InTwo(
            "When the last three digits of {a} are all nines, which place must change?",
            "Si las tres últimas cifras de {a} son nueves, ¿qué lugar tiene que cambiar?",
        ),
    ),
    "W14": SlipWords(
        InTwo(
            "After {a} the tens digit turns over, but the hundreds digit is left as it was.",
            "Después de {a} las decenas vuelven a empezar, pero la centena queda como estaba.",
        ),
        InTwo(
            "The tens go past nine after {a}: what else in the number must change?",
            "Las decenas pasan de nueve después de {a}: ¿qué más tiene que cambiar?",
        ),
    ),
    "W15": SlipWords(
        InTwo(
            "After {a} the next hundred is said instead of the next ten.",
            "Después de {a} se dice la centena siguiente y no la decena.",
        ),
        InTwo(
            "We jump by a ten, not by a hundred: what changes in {a}?",
            "Saltamos de diez en diez y no de cien en cien: ¿qué cambia en {a}?",
        ),
        InTwo("What is ten more than {a}?", "¿Cuál es diez más que {a}?"),
    ),
    "W16": SlipWords(
        InTwo(
            "After {a} the hundreds go over into a thousand, and their place is lost or counted on.",
            "Después de {a} las centenas forman un millar y su lugar se pierde o se sigue contando.",
        ),
        InTwo(
            "Which places does a number past a thousand have, and what stands in each?",
            "¿Qué lugares tiene un número que pasa de mil y qué hay en cada uno?",
        ),
    ),
    "W17": SlipWords(
        InTwo(
            "After {a} the next thousand is said instead of the next hundred.",
            "Después de {a} se dice el millar siguiente y no la centena.",
        ),
        InTwo(
            "We jump by a hundred: which digit of {a} changes, and which ones stay?",
            "Saltamos de cien en cien: ¿qué cifra de {a} cambia y cuáles se quedan?",
        ),
    ),
    "W18": SlipWords(
        InTwo(
            "Each spoken part of {b} is written out in full.",
            "Cada parte que se oye de {b} se escribe completa.",
        ),
        InTwo(
            "How many hundreds, tens and ones do you hear in that number?",
            "¿Cuántas centenas, decenas y unidades oyes en ese número?",
        ),
        of_writing=True,
    ),
    "W19": SlipWords(
        InTwo(
            "The jump from {a} is split at the ten, and one is counted too many.",
            "El salto desde {a} se parte en la decena y se cuenta uno de más.",
        ),
        InTwo(
            "How much of the jump from {a} reaches the ten, and what is left?",
            "¿Cuánto del salto desde {a} llega a la decena y cuánto queda?",
        ),
    ),
    "W20": SlipWords(
        InTwo(
            "The well-known multiples of {size} take over, though the count began at {start}.",
            "Se imponen los múltiplos conocidos de {size}, aunque el conteo empezó en {start}.",
        ),
        InTwo(
            "How far is it from {a} to that number: is it one of our jumps?",
            "¿Cuánto hay desde {a} hasta ese número: es uno de nuestros saltos?",
        ),
        InTwo("Is that our jump from {a}?", "¿Es ese nuestro salto desde {a}?"),
    ),
    "W21": SlipWords(
        InTwo(
            "Up a ten and down a one does not work from {a}: it has no ones to lower.",
            "Subir diez y bajar uno no se ve en {a}: no tiene unidades que bajar.",
        ),
        InTwo(
            "Nine is nearly ten: how does that help when {a} ends in zero?",
            "Nueve es casi diez: ¿cómo ayuda eso cuando {a} termina en cero?",
        ),
    ),
    "W22": SlipWords(
        InTwo("The matching digits are carried on past {a}.", "Se siguen las cifras iguales más allá de {a}."),
        InTwo(
            "The digits have matched up to {a}: does a jump of eleven keep them so?",
            "Las cifras fueron iguales hasta {a}: ¿siguen así con un salto de once?",
        ),
    ),
    "W23": SlipWords(
        InTwo(
            "After {a} the nine is found, but the ten is not lowered.",
            "Después de {a} se encuentra el nueve, pero no baja la decena.",
        ),
        InTwo(
            "We are counting back: is that number less than {a}, or more?",
            "Contamos hacia atrás: ¿es ese número menor que {a}, o mayor?",
        ),
        InTwo("Is that less than {a}?", "¿Es ese menor que {a}?"),
    ),
    "W24": SlipWords(
        InTwo(
            "After {a} the word for the ten below is said, one ten too early.",
            "Después de {a} se dice la decena de abajo, diez antes de tiempo.",
        ),
        InTwo(
            "What is just one less than {a}, and which ten does it belong to?",
            "¿Cuál es solo uno menos que {a} y en qué decena está?",
        ),
        InTwo("What is one less than {a}?", "¿Cuál es uno menos que {a}?"),
    ),
    "W25": SlipWords(
        InTwo(
            "After {a} the nines are found, but the hundred is not lowered.",
            "Después de {a} se encuentran los nueves, pero no baja la centena.",
        ),
        InTwo(
            "We are counting back from {a}: how many hundreds can be left?",
            "Contamos hacia atrás desde {a}: ¿cuántas centenas pueden quedar?",
        ),
    ),
    "W26": SlipWords(
        InTwo(
            "After {a} the hundred drops, but the tens stay at zero.",
            "Después de {a} baja la centena, pero las decenas se quedan en cero.",
        ),
        InTwo(
            "To take ten from {a} we open a hundred: how many tens does it give?",
            "Para quitar diez de {a} abrimos una centena: ¿cuántas decenas da?",
        ),
    ),
    "W27": SlipWords(
        InTwo(
            "After {a} the nine hundred is found, but the thousand is not lowered.",
            "Después de {a} se encuentra el novecientos, pero no baja el millar.",
        ),
        InTwo(
            "We are counting back from {a}: can there still be as many thousands?",
            "Contamos hacia atrás desde {a}: ¿puede haber aún los mismos millares?",
        ),
    ),
    "W28": SlipWords(
        InTwo(
            "The jump of {size} from {a} crosses a hundred, and the hundreds digit is left as it was.",
            "El salto de {size} desde {a} pasa de una centena y la cifra de las centenas queda igual.",
        ),
        InTwo(
            "Does the jump from {a} cross a hundred, and where would we see it?",
            "¿Pasa de una centena el salto desde {a} y dónde se vería?",
        ),
    ),
    "W29": SlipWords(
        InTwo(
            "The jump back of {size} from {a} crosses a hundred, and the hundreds digit is left as it was.",
            "El salto atrás de {size} desde {a} pasa de una centena y la cifra de las centenas queda igual.",
        ),
        InTwo(
            "When we jump back from {a}, do we stay in the same hundred?",
            "Al saltar atrás desde {a}, ¿nos quedamos en la misma centena?",
        ),
    ),
    "W30": SlipWords(
        InTwo(
            "The ones of {a} and of {size} make a new ten, and it is lost.",
            "Las unidades de {a} y de {size} forman otra decena y se pierde.",
        ),
        InTwo(
            "What do the ones make together in the jump from {a}?",
            "¿Qué forman juntas las unidades en el salto desde {a}?",
        ),
    ),
    "W31": SlipWords(
        InTwo(
            "The ones are taken the other way round in the jump back from {a}: the smaller from the larger.",
            "Las unidades se restan al revés en el salto atrás desde {a}: la menor de la mayor.",
        ),
        InTwo(
            "Can we take away all the ones from {a} without opening a ten?",
            "¿Podemos quitar todas las unidades de {a} sin abrir una decena?",
        ),
    ),
}
