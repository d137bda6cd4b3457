"""The few words that a drawing of a grid says itself, in each language."""

UNTIL = {"en": "until", "es": "hasta"}
SAID = {
    "en": {
        "rows": "rows",
        "columns": "columns",
        "always": "always holds",
        "while": "holds for a while",
        "empty": "empty",
    },
    "es": {"rows": "filas", "columns": "columnas", "always": "siempre", "while": "por un rato", "empty": "vacía"},
}
