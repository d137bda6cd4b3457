"""What is said in Spanish about slips of the Spanish number words. They are foreseen where a class counts in Spanish."""

from ...language import SlipWords

WORDS = {
    "S01": SlipWords(
        "Sesenta y setenta suenan parecido: después {a:del} se dice una palabra por la otra.",
        "¿Cuántas decenas tiene el número después {a:del} y cómo se dice?",
        "Cuenta despacio desde {a:el}. ¿Qué decena toca?",
    ),
    "S02": SlipWords(
        "Después {a:del} se siguen las palabras que empiezan con dieci-.",
        "¿Qué forman dos decenas después {a:del}?",
        "¿Qué forman dos decenas?",
    ),
    "S03": SlipWords(
        "La palabra para {b:el} se forma como dieciséis.",
        "¿Qué palabra especial aprendimos para el que sigue?",
        "¿Qué palabra especial sigue?",
    ),
    "S04": SlipWords(
        "Se deja fuera la y entre decenas y unidades en la palabra {b:del}.",
        "¿Qué palabrita une las decenas y las unidades?",
        "¿Qué palabrita las une?",
    ),
    "S05": SlipWords(
        "La palabra de las centenas de {b} se forma con su cifra, como en ochocientos.",
        "¿Decimos {made_up}, o hay una palabra propia? ¿Y en este número?",
    ),
    "S06": SlipWords(
        "Se dice cien aunque el número sigue, y {b} empieza con ciento.",
        "¿Cómo cambia la palabra cien cuando viene algo más? ¿Cómo decimos cien más uno? ¿Y este?",
        "¿Cómo cambia cien si sigue algo?",
    ),
    "S07": SlipWords(
        "Las partes de {b} se nombran como lugares en una fila: terceros y no tercios.",
        "¿Cómo llamamos a una parte cuando la unidad se corta en tres partes iguales?",
    ),
}
WORDS["S08"] = WORDS["S01"]
