"""Texts that look as if they named a child are noticed; ordinary sentences about a lesson are not."""

import pytest

from accounts.names_of_children import look_like_names


@pytest.mark.parametrize(
    ("text", "names"),
    [
        ("Maya said the tens go up", ["Maya"]),
        ("Luis: it is always even", ["Luis"]),
        ("then Ana noticed and José: no", ["Ana", "José"]),
        ("Íñigo pensó que era par", ["Íñigo"]),
        ("“It is even,” said Maya.", ["Maya"]),
        ("Maya and Luis noticed the column", ["Maya", "Luis"]),
        ("Mary-Ann thinks so", ["Mary-Ann"]),
        ("Maya R. said so", ["Maya"]),
        ("We liked Maya’s idea and Luis's way", ["Maya", "Luis"]),
        ("according to Ana it repeats", ["Ana"]),
        ("Then O’Brien also said ten", ["O’Brien"]),
        ("Lucía dice que termina en cinco", ["Lucía"]),
        ("Iván y Sofía contaron; Sofía preguntó por qué", ["Iván", "Sofía"]),
        ("«Noventa», contestó Mateo.", ["Mateo"]),
        ("Según Ximena sube de diez en diez", ["Ximena"]),
        ("La idea de Tomás fue mirar la columna", ["Tomás"]),
        ("Maya: ten. Maya: twenty.", ["Maya"]),
        ("They said it goes up by 6.", []),
        ("Ellos dijeron que sube de 6 en 6. Alguien notó la columna.", []),
        ("Todos vieron lo mismo. Pregunta: ¿qué sigue?", []),
        ("Why: the tens go up. Example: 46.", []),
        ("Monday: we count again. Today’s question: what comes next?", []),
        ("Ask which number comes next, said twice.", []),
        ("Half saw it. Tens: they go up. Another said no.", []),
        ("At 10:30 we began; Row 2: even.", []),
        ("It’s even. That’s the rule. Let’s count.", []),
        ("Someone said ninety-ten.", []),
        ("Stop 2: nobody saw the column.", []),
        ("We asked whether 200 would come.", []),
        ("the tens stand in column 1", []),
        ("", []),
    ],
)
def test_names_are_found_and_sentences_left_alone(text, names):
    assert look_like_names(text) == names
