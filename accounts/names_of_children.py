"""Does a text look as if it named a child? Asked about before it is kept; the teacher decides.

Looked for is a capitalised word where a person stands: before or after a verb of saying, before a colon, as the owner
of an idea, in English and Spanish. A name in the middle of another sentence is not told from any other word that
begins with a capital; a question at each of those would soon be ticked away unread.
"""

import re

NAME = r"(?:[A-Z][’'])?[A-ZÁÉÍÓÚÜÑ][a-záéíóúüñ]+(?:[-’'][A-ZÁÉÍÓÚÜÑ][a-záéíóúüñ]+)*"
SAYING = (
    r"(?:said|says|saw|sees|thinks?|thought|noticed|notices|asked|asks|told|tells|showed|shows|counted|explained|explains|"
    r"answered|wondered|shouted|whispered|wrote|guessed|found|"
    r"dijo|dice|vio|ve|piensa|pensó|notó|preguntó|pregunta|contó|cuenta|explicó|explica|mostró|respondió|contestó|cree|"
    r"creyó|escribió|adivinó|encontró|dijeron|vieron|pensaron|notaron|contaron|preguntaron|explicaron)"
)
SAID = r"(?:said|says|asked|told|explained|answered|dijo|dice|preguntó|explicó|respondió|contestó)"
OF_SOMEONE = r"(?:idea|way|answer|method|strategy|thinking|explanation|question|rule|mistake|guess|slip|turn|words)"
BY_SOMEONE = (
    r"(?:[Aa]ccording to|[Tt]hanks to|[Cc]redit to|[Hh]elped by|[Ss]egún|[Gg]racias a|"
    r"(?:[Ii]dea|[Rr]espuesta|[Rr]egla|[Pp]regunta|[Mm]anera) de)"
)

QUOTE = '"'

# A capitalised word of these begins a sentence about the lesson, or stands for nobody in particular.
SENTENCES_BEGIN_SO = """
they she he it we i you someone somebody everyone everybody nobody anybody anyone some one most many few several
half children students class kids partners teacher others all both another each neither no none nothing who whoever
two three four five six seven eight nine ten eleven twelve twenty thirty forty fifty sixty seventy eighty ninety
hundred thousand zero ones tens hundreds thousands numbers number digit digits odd even evens odds stop step count
counts next then first second third last row rows column columns line lines cell cells board grid note notes
question questions answer answers idea ideas reply goal story target targets pattern patterns rule slip slips
example examples remember time minutes later before after now also not try say ask look see why what which how where
when because there here this that these those the a an if so and but or at in on for with from by to as of lesson
group groups pair pairs table grade math maths english spanish kindergarten today tomorrow yesterday monday tuesday
wednesday thursday friday saturday sunday january february march april may june july august september october
november december my our your his her their its whole whatever only just ellos ellas ella él alguien nadie todos
todas algunos algunas muchos muchas varios varias uno una dos tres cuatro cinco seis siete ocho nueve diez nosotros
niños niñas niño niña estudiantes estudiante clase grupo grupos pareja parejas maestra maestro pregunta preguntas
respuesta respuestas nota notas fila filas columna columnas paso parada primero luego después ahora hoy mañana ayer
por qué cómo dónde cuál cuándo quién casi otro otra otros otras ejemplo regla el la los las un si y pero en de con
para lunes martes miércoles jueves viernes ninguno cada
"""
NOT_NAMES = frozenset(SENTENCES_BEGIN_SO.split())
# Written so that Python and browsers read them alike: the lectern asks without the server, too.
FORMS = (
    rf"\b({NAME})(?:\s+[A-Z]\.)?(?:\s+(?:and|y|e|&)\s+({NAME}))?(?:\s+(?:also|then|también)?\s*{SAYING}\b|\s*:(?![0-9]))",
    rf"\b{SAID}\s+({NAME})(?:\s+(?:and|y|e|&)\s+({NAME}))?(?=\s*(?:[.,;:!?»”’)]|{QUOTE}|(?![\s\S])|{SAID}))",
    rf"\b({NAME})[’']s?\s+{OF_SOMEONE}\b",
    rf"\b{BY_SOMEONE}\s+({NAME})\b",
)
COMPILED = tuple(map(re.compile, FORMS))


def as_script() -> dict[str, list[str]]:
    """The same rule for a page that asks without the server: static/js/lesson/names.js."""
    return {"forms": list(FORMS), "not_names": sorted(NOT_NAMES)}


def look_like_names(text: str) -> list[str]:
    """The words that look like a child's name, each once, in the order of the text.

    >>> look_like_names("Maya said the tens go up. They said so too.")
    ['Maya']
    >>> look_like_names("Fue idea de Luis, y «siete», dijo Ana.")
    ['Luis', 'Ana']
    """
    found = [
        (match.start(group), match[group])
        for form in COMPILED
        for match in form.finditer(text)
        for group in range(1, form.groups + 1)
        if match[group] and match[group].casefold() not in NOT_NAMES
    ]
    return list(dict.fromkeys(word for _, word in sorted(found)))
