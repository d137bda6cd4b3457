"""The fixed words on paper, by key, in Spanish."""

from collections.abc import Mapping

from routines.counting.outcome import Outcome

PAPER: Mapping[str, str] = {
    # On every page
    "foot": "escriba la idea, no quién la dijo",
    "planned_by": "planeado por {name}",
    "version": "versión {number}",
    "grade": "Grado {grade}",
    "about_minutes": "unos {minutes} min",
    "counts_to": "{line} {terms} números, hasta {last}.",
    "rule": "El número n es {rule}",
    # The count in one line
    "by": "De {step} en {step} desde {start}",
    "back_by": "Hacia atrás de {step} en {step} desde {start}",
    "fold_across": "en filas de {length}",
    "fold_down": "en columnas de {length}",
    "fold_across-up": "en filas de {length}, empezando por la de abajo",
    # Plan page
    "listen_for": "Lo que puede oír",
    "also_there": "También se ve",
    "always": "siempre se cumple",
    "shown": "por un rato",
    "flag": "termina aquí",
    "landmark": "punto de referencia: {name}",
    "landmark_plain": "punto de referencia",
    "stops": "Paradas",
    "after": "Después de {text}, el {nth} número",
    "after_last": "Después de {text}, al final",
    "think": "pensar {time}",
    "partner": "en parejas {time}",
    "share": "compartir {time}",
    "may_say": "Quizá digan",
    "may_slip": "Quizá se equivoquen",
    "heard_as": "{text}, el {nth} número: se oye",
    "next_counts": "Próximos conteos",
    Outcome.NOT_YET: "si todavía no lo vieron",
    Outcome.AS_PLANNED: "si salió como se planeó",
    Outcome.READY_FOR_MORE: "si están listos para más",
    "notes": "Notas",
    "remember": "Para el próximo año",
    "standards": "Estándares",
    "story_each": "Cada {group}: {each}.",
    "goal_met": "La meta, {goal}, se alcanza en {label}.",
    "goal_passed": "La meta, {goal}, se pasa en {label}, por {by}.",
    "count_number": "el número {n}",
    "line_by_line": "El conteo, línea por línea",
    # The substitute's page
    "substitute": "Para quien cubre la clase",
    "what_is": (
        "En un conteo a coro toda la clase cuenta en voz alta y usted escribe cada número en una cuadrícula "
        "que todos ven. En algunos lugares se detienen, y la clase dice qué ve en la cuadrícula y qué cree "
        "que vendrá."
    ),
    "you_need": "Necesita el pizarrón o una hoja grande de papel y un marcador. Ni computadora ni teléfono.",
    "the_grid": "La cuadrícula ya completa",
    "the_grid_how": (
        "Escríbala con esta forma, un número a la vez y bien grande. Las señales y los colores son solo para usted."
    ),
    "whole_count": "El conteo completo y cómo se dice",
    "hard_marked": "En negrita: donde la clase suele tropezar.",
    "step_by_step": "Paso a paso",
    "minute": "minuto\u00a0{minute}",
    "begin": "Comience",
    "begin_say": (
        "Diga: «Hoy contamos juntos, {count}. Yo escribo, ustedes dicen». Escriba {first} en la primera "
        "celda y díganlo juntos."
    ),
    "lead": "Deje vacías las primeras {lead} celdas de la primera línea.",
    "count_on": "Cuenten juntos desde {first} hasta {last}.",
    "write_across": "{length} números en cada fila, de izquierda a derecha; la siguiente fila va debajo.",
    "write_down": "{length} números en cada columna, de arriba abajo; la siguiente columna va a la derecha.",
    "write_across-up": (
        "{length} números en cada fila, de izquierda a derecha. Empiece por la fila de abajo; la siguiente va encima."
    ),
    "stop_ask": "Deténgase después de {text}. Pregunte:",
    "they_find": "Lo que pueden encontrar:",
    "ways": "Caminos:",
    "end": "Termine",
    "end_say": (
        "Lean juntos una vez más la última línea. Agradezca las ideas y deje la cuadrícula puesta para su "
        "maestra o maestro."
    ),
    "if_they": "Si oye esto, pregunte aquello",
    "instead_of": "en vez de {text}",
    "please_not": "Por favor, no",
    "not_names": "escriba nombres junto a las ideas ni en esta página. Escriba la idea, no quién la dijo.",
    "not_correct": "diga «correcto», «bien» o «mal». Pregunte «¿Cómo lo sabes?» y «¿Quién lo ve de otra manera?»",
    "not_tell": "dé la respuesta. Si nadie la tiene, lean juntos dos líneas de la cuadrícula y pregunte otra vez.",
    "not_phone": "use teléfonos ni tome fotos. Todo lo que necesita está en este papel.",
    "leave_for": "Para su maestra o maestro",
    "got_to": "Contamos hasta",
    "they_saw": "Lo que vio la clase (ideas, no nombres)",
    # Posters
    "our_count": "Nuestro conteo",
    "as_it_happened": "tal como fue",
    # Sheets for students
    "fill_in": "Completa el conteo. Usa lo que hay para encontrar lo que falta.",
    "you_see": "¿Qué ves?",
    "ideas_not_name": "Escribe tus ideas, no tu nombre.",
    "given_most": "casi todo dado",
    "given_some": "una parte dada",
    "given_few": "poco dado",
    # Follow-up
    "missing": "Números que faltan",
    "missing_how": "Encuentra los números de las celdas con marco. No hace falta llenar las demás.",
    "which_cell": "{letter}. Fila {row}, columna {column}: ¿qué número va ahí? ¿Cómo lo sabes?",
    "will_come": "{letter}. ¿Llegará {value} si seguimos? ¿Cómo lo sabes?",
    "key": "Respuestas",
    "key_for": "Para la maestra o el maestro: guarde esta página.",
    "cell_answer": "{letter}. {text}",
    "yes_at": "{letter}. Sí, {value} es el {nth} número.",
    "no_not": "{letter}. No, {value} no llega.",
    # Booklets
    "contents": "Contenido",
    "booklet_of": "{counts} conteos",
}
