// Small helpers for the lectern's parts: an element in one line, and drawing again without losing the focus.

import { typeset } from "./typeset.js";

// `text` is set as it is, with its fractions stacked.
export function made(tag, { className = "", text = "", children = [], act = null, ...attributes } = {}) {
  const element = document.createElement(tag);
  if (className) element.className = className;
  if (text) element.append(...typeset(text));
  for (const [name, value] of Object.entries(attributes)) {
    if (value !== null && value !== false) element.setAttribute(name, value === true ? "" : value);
  }
  element.append(...children);
  if (tag === "button") element.type = "button";
  if (act) element.addEventListener("click", act);
  return element;
}

// `key` names the button over drawings, so that the focus stays on it.
export function button(words, act, { key, className = "button", ...more } = {}) {
  const children = typeof words === "string" ? [made("span", { text: words })] : words;
  return made("button", { className, act, children, "data-key": key ?? null, ...more });
}

// Draws a part anew where what it shows changed. Keeps the focus on what has the same key; where that is gone, on the part.
export function redraw(root, shown, draw) {
  const now = JSON.stringify(shown);
  if (root.dataset.shown === now) return;
  root.dataset.shown = now;
  const held = root.contains(document.activeElement) ? document.activeElement.dataset.key ?? "" : null;
  root.replaceChildren(...draw());
  if (held === null) return;
  const same = held && root.querySelector(`[data-key="${CSS.escape(held)}"]`);
  (same || root.querySelector("button, a, input") || root).focus({ preventScroll: true });
}
