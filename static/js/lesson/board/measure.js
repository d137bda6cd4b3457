// How wide a value is when it is set, of the font's size. Measured on a canvas, so that no text that is not written yet
// ever stands in the page.

import { piecesOf } from "./numeral.js";

const TRY = 100; // px
const STACKED = 0.74, SMALL = 0.62, OVERHANG = 0.12;
const GAPS = { unit: 0.07, fraction: 0.12, equals: 0.2 };
const AFTER_A_PART = 0.28;

export async function makeRuler(family, page = document) {
  const wanted = `${TRY}px ${family}`;
  try {
    await Promise.all([page.fonts.load(wanted, "0123"), page.fonts.load(`bold ${wanted}`, "0123")]);
  } catch { /* another font of the family is measured */ }
  const canvas = page.createElement("canvas").getContext("2d");
  return (text, { bold = false } = {}) => {
    canvas.font = bold ? `bold ${wanted}` : wanted;
    return widthOf(text, (words) => canvas.measureText(words).width / TRY);
  };
}

export function widthOf(text, measured) {
  let width = 0, before = "";
  for (const piece of piecesOf(text)) {
    if (before) width += gap(before, piece.kind);
    if (piece.kind === "fraction") width += STACKED * Math.max(measured(piece.top), measured(piece.bottom)) + OVERHANG;
    else width += measured(piece.text) * (piece.kind === "unit" ? SMALL : 1);
    before = piece.kind;
  }
  return width;
}

function gap(before, kind) {
  if (before === "equals") return GAPS.equals;
  if (kind in GAPS) return GAPS[kind];
  return before === "unit" || before === "fraction" ? AFTER_A_PART : 0;
}
