// A sentence of the plan with its fractions stacked, as on paper and board. All else stands as it was written.

import { setNumeral } from "../board/numeral.js";

const FRACTION = /(?<![\d/])([-\u2212]?(?:\d+ )?\d+\/\d+)(?![\d/])/;

// The pieces of a sentence: every second one is a fraction.
export function pieces(sentence) {
  return sentence.split(FRACTION);
}

export function typeset(sentence) {
  return pieces(sentence).map((piece, at) => (at % 2 ? setNumeral(piece) : piece)).filter((piece) => piece !== "");
}
