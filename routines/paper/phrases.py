"""The fixed words on paper, in English and Spanish, by key. Blanks are filled by the print that says them."""

from routines.counting import Outcome

PHRASES: dict[str, tuple[str, str]] = {
    # On every page
    "foot": ("write the idea, not who said it", "escriba la idea, no quién la dijo"),
    "planned_by": ("planned by {name}", "planeado por {name}"),
    "version": ("version {number}", "versión {number}"),
    "grade": ("Grade {grade}", "Grado {grade}"),
    "about_minutes": ("about {minutes} min", "unos {minutes} min"),
    "counts_to": ("{line} {terms} counts, to {last}.", "{line} {terms} números, hasta {last}."),
    "rule": ("The n-th count is {rule}", "El número n es {rule}"),
    # The count in one line
    "by": ("By {step} from {start}", "De {step} en {step} desde {start}"),
    "back_by": ("Back by {step} from {start}", "Hacia atrás de {step} en {step} desde {start}"),
    "fold_across": ("across, {length} in a line", "en filas de {length}"),
    "fold_down": ("down, {length} in a line", "en columnas de {length}"),
    "fold_across-up": (
        "across, bottom line first, {length} in a line",
        "en filas de {length}, empezando por la de abajo",
    ),
    # Plan page
    "listen_for": ("Listen for", "Lo que puede oír"),
    "also_there": ("Also there", "También se ve"),
    "always": ("always holds", "siempre se cumple"),
    "shown": ("for a while", "por un rato"),
    "flag": ("stops here", "termina aquí"),
    "landmark": ("landmark: {name}", "punto de referencia: {name}"),
    "landmark_plain": ("landmark", "punto de referencia"),
    "stops": ("Stops", "Paradas"),
    "after": ("After {text}, the {nth}", "Después de {text}, el {nth} número"),
    "after_last": ("After {text}, the end", "Después de {text}, al final"),
    "think": ("think {time}", "pensar {time}"),
    "partner": ("partner {time}", "en parejas {time}"),
    "share": ("share {time}", "compartir {time}"),
    "may_say": ("They may say", "Quizá digan"),
    "may_slip": ("They may slip", "Quizá se equivoquen"),
    "heard_as": ("{text}, the {nth}: heard as", "{text}, el {nth} número: se oye"),
    "next_counts": ("Next counts", "Próximos conteos"),
    Outcome.NOT_YET: ("if it was not there yet", "si todavía no lo vieron"),
    Outcome.AS_PLANNED: ("if it went as planned", "si salió como se planeó"),
    Outcome.READY_FOR_MORE: ("if they are ready for more", "si están listos para más"),
    "notes": ("Notes", "Notas"),
    "remember": ("Next year, remember", "Para el próximo año"),
    "standards": ("Standards", "Estándares"),
    "story_each": ("Each {group}: {each}.", "Cada {group}: {each}."),
    "goal_met": ("The goal, {goal}, is met at {label}.", "La meta, {goal}, se alcanza en {label}."),
    "goal_passed": (
        "The goal, {goal}, is passed at {label}, by {by}.",
        "La meta, {goal}, se pasa en {label}, por {by}.",
    ),
    "count_number": ("count {n}", "el número {n}"),
    "line_by_line": ("The count, line by line", "El conteo, línea por línea"),
    # The substitute's page
    "substitute": ("For a substitute teacher", "Para quien cubre la clase"),
    "what_is": (
        "In a choral count the whole class counts aloud together while you write each count into a grid that all can see. "
        "At a few places you stop, and the class says what it sees in the grid and what it thinks will come.",
        "En un conteo a coro toda la clase cuenta en voz alta y usted escribe cada número en una cuadrícula que todos ven. "
        "En algunos lugares se detienen, y la clase dice qué ve en la cuadrícula y qué cree que vendrá.",
    ),
    "you_need": (
        "You need the board or a large sheet of paper, and a marker. No computer and no phone.",
        "Necesita el pizarrón o una hoja grande de papel y un marcador. Ni computadora ni teléfono.",
    ),
    "the_grid": ("The grid when it is full", "La cuadrícula ya completa"),
    "the_grid_how": (
        "Write it in this shape, one count at a time, large enough for the back row. The signs and colours are for you alone.",
        "Escríbala con esta forma, un número a la vez y bien grande. Las señales y los colores son solo para usted.",
    ),
    "whole_count": ("The whole count, and how to say it", "El conteo completo y cómo se dice"),
    "hard_marked": ("Bold: places where a class often stumbles.", "En negrita: donde la clase suele tropezar."),
    "step_by_step": ("Step by step", "Paso a paso"),
    "minute": ("minute\u00a0{minute}", "minuto\u00a0{minute}"),
    "begin": ("Begin", "Comience"),
    "begin_say": (
        "Say: “Today we count together, {count}. I write, you say.” Write {first} in the first cell and say it together.",
        "Diga: «Hoy contamos juntos, {count}. Yo escribo, ustedes dicen». Escriba {first} en la primera celda y díganlo juntos.",
    ),
    "lead": (
        "Leave the first {lead} cells of the first line empty.",
        "Deje vacías las primeras {lead} celdas de la primera línea.",
    ),
    "count_on": ("Count together from {first} to {last}.", "Cuenten juntos desde {first} hasta {last}."),
    "write_across": (
        "{length} counts in each row, left to right, the next row underneath.",
        "{length} números en cada fila, de izquierda a derecha; la siguiente fila va debajo.",
    ),
    "write_down": (
        "{length} counts in each column, top to bottom, the next column to the right.",
        "{length} números en cada columna, de arriba abajo; la siguiente columna va a la derecha.",
    ),
    "write_across-up": (
        "{length} counts in each row, left to right. Begin with the bottom row; the next row goes above.",
        "{length} números en cada fila, de izquierda a derecha. Empiece por la fila de abajo; la siguiente va encima.",
    ),
    "stop_ask": ("Stop after {text}. Ask:", "Deténgase después de {text}. Pregunte:"),
    "they_find": ("What they may find:", "Lo que pueden encontrar:"),
    "ways": ("Ways there:", "Caminos:"),
    "end": ("End", "Termine"),
    "end_say": (
        "Read the last line of the grid together once more. Thank the class and leave the grid up for their teacher.",
        "Lean juntos una vez más la última línea. Agradezca las ideas y deje la cuadrícula puesta para su maestra o maestro.",
    ),
    "if_they": ("If you hear this, ask that", "Si oye esto, pregunte aquello"),
    "instead_of": ("instead of {text}", "en vez de {text}"),
    "please_not": ("Please do not", "Por favor, no"),
    "not_names": (
        "write names beside ideas, or on this page. Write the idea, not who said it.",
        "escriba nombres junto a las ideas ni en esta página. Escriba la idea, no quién la dijo.",
    ),
    "not_correct": (
        "say “correct”, “good” or “wrong”. Ask “How do you know?” and “Who sees it another way?”",
        "diga «correcto», «bien» o «mal». Pregunte «¿Cómo lo sabes?» y «¿Quién lo ve de otra manera?»",
    ),
    "not_tell": (
        "give the answer. If nobody has one, read two lines of the grid together and ask again.",
        "dé la respuesta. Si nadie la tiene, lean juntos dos líneas de la cuadrícula y pregunte otra vez.",
    ),
    "not_phone": (
        "use phones or take photographs. Everything you need is on this paper.",
        "use teléfonos ni tome fotos. Todo lo que necesita está en este papel.",
    ),
    "leave_for": ("For their teacher", "Para su maestra o maestro"),
    "got_to": ("We counted as far as", "Contamos hasta"),
    "they_saw": ("What the class saw (ideas, not names)", "Lo que vio la clase (ideas, no nombres)"),
    # Posters
    "our_count": ("Our count", "Nuestro conteo"),
    "as_it_happened": ("as it happened", "tal como fue"),
    # Sheets for students
    "fill_in": (
        "Fill in the count. Use what is there to find what is not.",
        "Completa el conteo. Usa lo que hay para encontrar lo que falta.",
    ),
    "you_see": ("What do you see?", "¿Qué ves?"),
    "ideas_not_name": ("Write your ideas, not your name.", "Escribe tus ideas, no tu nombre."),
    "given_most": ("most given", "casi todo dado"),
    "given_some": ("some given", "una parte dada"),
    "given_few": ("few given", "poco dado"),
    # Follow-up
    "missing": ("Missing counts", "Números que faltan"),
    "missing_how": (
        "Find the counts in the framed cells. You need not fill in the rest.",
        "Encuentra los números de las celdas con marco. No hace falta llenar las demás.",
    ),
    "which_cell": (
        "{letter}. Row {row}, column {column}: what stands there? How do you know?",
        "{letter}. Fila {row}, columna {column}: ¿qué número va ahí? ¿Cómo lo sabes?",
    ),
    "will_come": (
        "{letter}. Will {value} come if we go on? How do you know?",
        "{letter}. ¿Llegará {value} si seguimos? ¿Cómo lo sabes?",
    ),
    "key": ("Answers", "Respuestas"),
    "key_for": ("For the teacher: keep this page.", "Para la maestra o el maestro: guarde esta página."),
    "cell_answer": ("{letter}. {text}", "{letter}. {text}"),
    "yes_at": ("{letter}. Yes, {value} is the {nth} count.", "{letter}. Sí, {value} es el {nth} número."),
    "no_not": ("{letter}. No, {value} does not come.", "{letter}. No, {value} no llega."),
    # Booklets
    "contents": ("What is in here", "Contenido"),
    "booklet_of": ("{counts} counts", "{counts} conteos"),
}
