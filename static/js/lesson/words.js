// The words of a page come from its template (<script type="application/json" id="words">), so that they are translated
// with it. `say("many-waiting", {count: 12})` fills the blanks.

export function wordsOf(page = document) {
  const words = JSON.parse(page.getElementById("words").textContent);
  return (name, blanks = {}) => filled(words[name] ?? name, blanks);
}

export function filled(sentence, blanks) {
  return sentence.replace(/\{(\w+)\}/g, (whole, name) => (name in blanks ? String(blanks[name]) : whole));
}
