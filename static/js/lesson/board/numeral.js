// Sets a written value in figures, as routines/drawing/numerals.py does on paper: stacked fractions, small units, a true
// minus. What is no value ("a hundred and six") stands as it was typed. Each piece knows at which character it starts.

const MINUS = "\u2212";
const NUMBER = String.raw`[$£€¥]?(?:\d[\d.,:\u00a0\u202f ]*\d|\d)[¢%]?`;
const WORD = String.raw`[A-Za-zÀ-ÿ]{1,4}\.?`;
const VALUE = new RegExp(String.raw`^[-\u2212]?(?:${NUMBER}|\d+ \d+/\d+|\d+/\d+)(?: ${WORD}| \d+/\d+| ${NUMBER}| = )*$`);
const PIECES = new RegExp(String.raw`(?<sign>^[-\u2212])|(?<top>\d+)/(?<bottom>\d+)|(?<equals>=)|(?<number>[^\s/=A-Za-zÀ-ÿ-]+)|(?<unit>${WORD})`, "gu");

export function piecesOf(text) {
  if (!VALUE.test(text)) return [{ kind: "words", text, at: 0 }];
  const pieces = [];
  for (const match of text.matchAll(PIECES)) {
    const { sign, top, bottom, equals, number, unit } = match.groups;
    const at = match.index;
    if (sign) pieces.push({ kind: "sign", text: MINUS, at });
    else if (top) pieces.push({ kind: "fraction", top, bottom, at });
    else if (equals) pieces.push({ kind: "equals", text: "=", at });
    else if (number) pieces.push({ kind: "number", text: number, at });
    else pieces.push({ kind: "unit", text: unit, at });
  }
  return pieces;
}

export function isStacked(text) {
  return piecesOf(text).some((piece) => piece.kind === "fraction");
}

// The numeral as HTML. The white between pieces is in the style sheet.
export function setNumeral(text, page = document) {
  const numeral = page.createElement("span");
  numeral.className = "numeral";
  for (const piece of piecesOf(text)) {
    if (piece.kind === "fraction") numeral.append(setFraction(piece, page));
    else numeral.append(span(`n-${piece.kind}`, piece.text, piece.at, page));
  }
  return numeral;
}

function setFraction({ top, bottom, at }, page) {
  const fraction = span("n-fraction", "", null, page);
  fraction.append(span("n-top", top, at, page), span("n-bottom", bottom, at + top.length + 1, page));
  return fraction;
}

function span(name, text, at, page) {
  const made = page.createElement("span");
  made.className = name;
  made.textContent = text;
  if (at !== null) made.dataset.at = at;
  return made;
}

// Where the character at `place` of the written text is drawn, in page coordinates; null when there is none.
export function characterBox(numeral, place) {
  for (const piece of numeral.querySelectorAll("[data-at]")) {
    const inside = place - Number(piece.dataset.at);
    if (inside < 0 || inside >= piece.textContent.length) continue;
    const range = document.createRange();
    range.setStart(piece.firstChild, inside);
    range.setEnd(piece.firstChild, inside + 1);
    return range.getBoundingClientRect();
  }
  return null;
}

// Which character of the written text is drawn at x, for a finger on a digit; the last one when none is.
export function characterAt(numeral, text, x, y) {
  let nearest = null;
  for (let place = 0; place < text.length; place += 1) {
    const box = characterBox(numeral, place);
    if (!box?.width) continue;
    const away = Math.hypot(Math.max(box.left - x, 0, x - box.right), Math.max(box.top - y, 0, y - box.bottom) / 2);
    if (nearest === null || away < nearest.away) nearest = { place, away };
  }
  return nearest?.place ?? text.length - 1;
}

// Places that hold a digit, the last first: the order in which the key U goes through them.
export function digitPlaces(text) {
  return [...text].map((sign, place) => ({ sign, place })).filter(({ sign }) => /\d/.test(sign))
    .map(({ place }) => place).reverse();
}
