// Does a text look as if it named a child? The rule comes from the server (accounts/names_of_children.py) with the page, so
// that it is asked without network too; a test holds both to the same answers.

// In a browser \b knows English letters only.
const LETTER = String.raw`[\p{L}\p{N}_]`;
const EDGE = `(?:(?<=${LETTER})(?!${LETTER})|(?<!${LETTER})(?=${LETTER}))`;

export function namesIn(text, { forms, not_names: notNames }) {
  const usual = new Set(notNames);
  const found = [];
  for (const form of forms) {
    for (const match of text.matchAll(new RegExp(form.replaceAll(String.raw`\b`, EDGE), "dgu"))) {
      match.slice(1).forEach((word, group) => {
        if (word && !usual.has(word.toLowerCase())) found.push({ word, at: match.indices[group + 1][0] });
      });
    }
  }
  found.sort((a, b) => a.at - b.at);
  return [...new Set(found.map(({ word }) => word))];
}
