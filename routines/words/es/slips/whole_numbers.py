"""What is said in Spanish about slips in counts of whole numbers."""

from ...language import SlipWords

WORDS = {
    "W01": SlipWords(
        "Después {a:del} se sigue la serie más allá del nueve, y ahí empieza otra decena.",
        "¿Qué decena viene después del nueve {a:del}?",
        "¿Qué decena viene después {a:del}?",
    ),
    "W02": SlipWords(
        "El orden de las decenas aún no es seguro: después {a:del} se dice otra decena y no {b}.",
        "¿En qué decena está {a:el} y cuál viene después?",
        "¿Es esa la decena que sigue {a:al}?",
    ),
    "W03": SlipWords(
        "Se olvida decir {b:el}: después de nueve números con unidades que se oyen viene uno sin ellas.",
        "¿Hay un número entre {a:el} y ese?",
        "¿Nos saltamos uno después {a:del}?",
    ),
    "W04": SlipWords(
        "Se repite {a:el} mientras se busca la palabra siguiente.",
        "Acabamos de decir {a:el}: ¿cuál es uno más?",
        "Ya dijimos {a:el}: ¿cuál es uno más?",
    ),
    "W05": SlipWords(
        "El final de la palabra {b:del} suena como el de una decena.",
        "¿Cuántas unidades tiene el número que sigue?",
        "¿Cuántas unidades van con la decena?",
    ),
    "W06": SlipWords(
        "La palabra {a:del} suena como noventa y el conteo sigue desde ahí.",
        "¿Cuántas decenas tiene {a}?",
        "¿Cuántas decenas hay en {a}?",
    ),
    "W07": SlipWords(
        "En la palabra {b:del} se oyen primero las unidades y se escriben primero.",
        "¿Qué cifra dice cuántas decenas hay y cuál dice las unidades?",
        "¿Qué cifra muestra la decena?",
    ),
    "W08": SlipWords(
        "Después {a:del} las diez decenas aún no se llaman una centena.",
        "¿Qué nombre nuevo damos a diez decenas después {a:del}?",
        "¿Cómo se llaman diez decenas juntas?",
    ),
    "W09": SlipWords(
        "Después {a:del} se cuentan centenas y no unidades.",
        "Contamos de uno en uno: ¿cuál es solo uno más que {a:el}?",
        "¿Cuál es uno más que {a:el}?",
    ),
    "W10": SlipWords(
        "El nueve del final de {a} se toma por el final de la centena.",
        "¿Qué lugar de {a} cambia al contar uno más: las decenas o las centenas?",
        "¿Qué decena viene después {a:del}?",
    ),
    "W11": SlipWords(
        "Después {a:del} se sigue la serie más allá del nueve.",
        "Cuando las unidades llegan a nueve en {a}, ¿qué lugar cambia después?",
        "¿Qué decena viene después {a:del}?",
    ),
    "W12": SlipWords(
        "Los nueves de {a} parecen llevar a un millar.",
        "Las decenas y unidades de {a} están completas: ¿qué lugar sube uno?",
    ),
    "W13": SlipWords(
        "Después {a:del} siguen solo las tres últimas cifras, sin otro millar.",
        "Si las tres últimas cifras de {a} son nueves, ¿qué lugar tiene que cambiar?",
    ),
    "W14": SlipWords(
        "Después {a:del} las decenas vuelven a empezar, pero la centena queda como estaba.",
        "Las decenas pasan de nueve después {a:del}: ¿qué más tiene que cambiar?",
    ),
    "W15": SlipWords(
        "Después {a:del} se dice la centena siguiente y no la decena.",
        "Saltamos de diez en diez y no de cien en cien: ¿qué cambia en {a}?",
        "¿Qué número es diez más que {a:el}?",
    ),
    "W16": SlipWords(
        "En {b} no se oyen centenas: la cifra que sigue se escribe en su lugar, o se siguen contando centenas.",
        "¿Qué lugares tiene un número que pasa de mil? ¿Qué cifra va en cada uno?",
    ),
    "W17": SlipWords(
        "Después {a:del} se dice el millar siguiente y no la centena.",
        "Saltamos de cien en cien: ¿qué cifra de {a} cambia y cuáles se quedan?",
    ),
    "W18": SlipWords(
        "Cada parte que se oye de {b} se escribe completa.",
        "¿Cuántas centenas, decenas y unidades oyes en ese número?",
    ),
    "W19": SlipWords(
        "El salto desde {a:el} se parte en la decena y se cuenta uno de más.",
        "¿Cuánto hay desde {a:el} hasta la decena que sigue y cuánto queda de nuestro salto?",
    ),
    "W20": SlipWords(
        "Se imponen los múltiplos conocidos de {size}, aunque el conteo empezó con {start}.",
        "¿Cuánto hay desde {a:el} hasta ese número y de cuánto es nuestro salto?",
        "¿Es ese nuestro salto desde {a:el}?",
    ),
    "W21": SlipWords(
        "Subir diez y bajar uno no se ve en {a}: no tiene unidades que bajar.",
        "Nueve es casi diez: ¿cómo ayuda eso cuando {a} termina en cero?",
    ),
    "W22": SlipWords(
        "Se siguen las cifras iguales más allá {a:del}.",
        "Las cifras fueron iguales hasta {a:el}: ¿siguen así con un salto de once?",
    ),
    "W23": SlipWords(
        "Después {a:del} se encuentra el nueve, pero no baja la decena.",
        "Contamos hacia atrás: ¿es ese número menor que {a:el}, o mayor?",
        "¿Es ese menor que {a:el}?",
    ),
    "W24": SlipWords(
        "Después {a:del} se dice la decena de abajo, diez antes de tiempo.",
        "¿Cuál es solo uno menos que {a:el} y en qué decena está?",
        "¿Cuál es uno menos que {a:el}?",
    ),
    "W25": SlipWords(
        "Después {a:del} se encuentran los nueves, pero no baja la centena.",
        "Contamos hacia atrás desde {a:el}: ¿cuántas centenas pueden quedar?",
    ),
    "W26": SlipWords(
        "Después {a:del} baja la centena, pero las decenas se quedan en cero.",
        "Para quitar diez de {a} descomponemos una centena: ¿cuántas decenas da?",
    ),
    "W27": SlipWords(
        "Después {a:del} se encuentra el novecientos, pero no baja el millar.",
        "Contamos hacia atrás desde {a:el}: ¿puede haber aún los mismos millares?",
    ),
    "W28": SlipWords(
        "El salto de {size} desde {a:el} cruza una centena y la cifra de las centenas queda igual.",
        "¿Cruzamos una centena al saltar desde {a:el}? ¿Dónde se ve?",
    ),
    "W29": SlipWords(
        "El salto hacia atrás de {size} desde {a:el} cruza una centena y la cifra de las centenas queda igual.",
        "Al saltar hacia atrás desde {a:el}, ¿nos quedamos en la misma centena?",
    ),
    "W30": SlipWords(
        "Las unidades de {a} y de {size} forman otra decena y se pierde.",
        "¿Qué forman juntas las unidades en el salto desde {a:el}?",
    ),
    "W31": SlipWords(
        "Las unidades se restan al revés en el salto hacia atrás desde {a:el}: la menor de la mayor.",
        "¿Qué hay que descomponer en {a} para tener suficientes unidades y quitar {size}?",
    ),
}
WORDS["W16 named"] = WORDS["W16"]._replace(
    why="{b} se dice en centenas, como los números de antes: es el mismo número."
)
WORDS["W19 landed"] = SlipWords(
    "El salto desde {a:el} se cuenta de uno en uno hasta la decena completa, y se cuenta uno de más.",
    "¿Cuánto hay desde {a:el} hasta la decena que sigue y de cuánto es nuestro salto?",
)
