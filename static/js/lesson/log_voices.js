// The voice of a stretch: pick how it was, tap its first cell and its last; it is drawn as a line under the cells.

import { wordsOf } from "./words.js";

export function tapVoices(form, changed) {
  const say = wordsOf();
  const part = form.querySelector("[data-voices-of]");
  const says = part.querySelector("[data-voice-says]");
  const empty = part.querySelector("[data-voice-empty]");
  const tools = [...part.querySelectorAll("[data-how]")];
  let how = "", first = 0;

  function hold(next) {
    how = next;
    first = 0;
    for (const tool of tools) tool.setAttribute("aria-pressed", String(tool.dataset.how === how));
    says.textContent = how ? say("voice-first") : "";
  }

  function add(from, to) {
    const row = empty.cloneNode(true);
    row.removeAttribute("data-voice-empty");
    row.querySelector('[name="voice-from"]').value = Math.min(from, to);
    row.querySelector('[name="voice-to"]').value = Math.max(from, to);
    row.querySelector("select").value = how;
    empty.before(row);
  }

  part.addEventListener("click", (event) => {
    const tool = event.target.closest("[data-how]");
    if (tool) hold(tool.dataset.how === how ? "" : tool.dataset.how);
    const away = event.target.closest("[data-take-away]");
    if (away) {
      away.closest(".voice-row").remove();
      changed();
    }
  });
  part.addEventListener("change", changed);

  return {
    // Whether a tapped cell was meant as an end of a stretch.
    wants(n) {
      if (!how) return false;
      if (!first) {
        first = Number(n);
        says.textContent = say("voice-last");
      } else {
        add(first, Number(n));
        hold("");
        changed();
      }
      return true;
    },
    stretches() {
      return [...part.querySelectorAll(".voice-row:not([data-voice-empty])")].map((row) => ({
        from: Number(row.querySelector('[name="voice-from"]').value),
        to: Number(row.querySelector('[name="voice-to"]').value),
        how: row.querySelector("select").value,
      }));
    },
  };
}

// Where stretches overlap the later one holds.
export function drawVoices(figure, stretches) {
  for (const old of figure.querySelectorAll(".g-voice")) old.remove();
  for (const cell of figure.querySelectorAll("[data-n][data-place]")) {
    const n = Number(cell.dataset.n);
    const stretch = stretches.filter((one) => one.how && one.from <= n && n <= one.to).at(-1);
    if (!stretch) continue;
    const box = cell.querySelector(".g-hit").getBBox();
    const heights = stretch.how === "alone" ? [4, 9] : [6];
    for (const height of heights) {
      const line = document.createElementNS("http://www.w3.org/2000/svg", "path");
      line.setAttribute("class", "g-voice g-voice-" + stretch.how);
      line.setAttribute("d", "M" + box.x + " " + (box.y + box.height - height) + "h" + box.width);
      cell.append(line);
    }
  }
}
