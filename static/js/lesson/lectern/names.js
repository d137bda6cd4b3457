// Does a text look as if it named a child? The rule comes from the server (routines/names_of_children.py) with the page, so
// that it is asked without network too; a test holds both to the same answers.

const LETTER = String.raw`[\p{L}\p{N}_]`;

export function namesIn(text, { name, saying, not_names: notNames }) {
  const named = new RegExp(String.raw`(?<!${LETTER})(${name})(?:\s+${saying}(?!${LETTER})|:)`, "gu");
  const usual = new Set(notNames);
  const found = [...text.matchAll(named)].map(([, word]) => word).filter((word) => !usual.has(word.toLowerCase()));
  return [...new Set(found)];
}
