"""What is said in Spanish about slips in counts of money."""

from ...language import SlipWords

WORDS = {
    "M01": SlipWords(
        "Después {a:del} los {smalls} siguen y no se cambian por 1 {large} más.",
        "¿Cuántos {smalls} hacen 1 {large}, y ya los tenemos?",
    ),
    "M02": SlipWords(
        "Se deja fuera el lugar vacío en los {smalls} de {b}.",
        "¿Cuántos {smalls} muestra esa cantidad y cuántos queremos decir?",
    ),
    "M03": SlipWords(
        "Se deja fuera el cero del final de {b}: es la misma cantidad.",
        "¿Cuántas cifras escribimos para los {smalls}, para que todos lean lo mismo?",
    ),
    "M04": SlipWords(
        "Se usan juntos la marca decimal y el signo de los {smalls} para {b:el}.",
        "¿Qué cuenta ese signo, y es esto menos de 1 {small}?",
    ),
    "M05": SlipWords(
        "Después {a:del} se duplica el salto de {size}.",
        "¿Cuánto saltamos desde {a:el} y cuánto saltamos antes?",
    ),
    "M06": SlipWords(
        "Después {a:del} los {smalls} vuelven a empezar, pero no se quita 1 {large}.",
        "Contamos hacia atrás: ¿es esa cantidad menor que {a:el}, o mayor?",
    ),
    "M07": SlipWords(
        "Después {a:del} se escriben tres cifras de {smalls}.",
        "¿Qué podemos hacer con los {smalls} cuando completan 1 {large} más?",
    ),
    "M08": SlipWords(
        "En el salto hacia atrás desde {a:el} se descompone 1 {large}, pero no se quita.",
        "Al saltar hacia atrás desde {a:el}, ¿nos quedan los mismos {larges}?",
    ),
}
