// The log: a tapped cell opens its slip of paper under its line; what is picked is drawn by the server, as the board has it.
// The form is whole without this: it only makes it a matter of taps. What is ticked later was said later: order in the page.
import { drawVoices, tapVoices } from "./log_voices.js";

const form = document.querySelector("[data-log]");
if (form) begin(form);

function begin(form) {
  const figure = form.querySelector("[data-figure]");
  const slips = form.querySelector("[data-cell-slips]");
  let last = 0;
  form.classList.add("log-tapped");
  slips.open = true;
  for (const hidden of form.querySelectorAll("[data-done], [data-voice-tools], [data-take-away]")) hidden.hidden = false;

  const cellOf = (n) => figure.querySelector('[data-n="' + n + '"][data-place]');
  const openSlip = () => slips.querySelector(".cell-slip[open]");
  const voices = tapVoices(form, () => drawVoices(figure, voices.stretches()));
  drawVoices(figure, voices.stretches());

  function show(cell) {
    close(false);
    const slip = slips.querySelector('[data-cell="' + cell.dataset.n + '"]');
    if (!slip) return;
    slip.open = true;
    place(slip, cell);
    cell.setAttribute("aria-pressed", "true");
    slip.querySelector("input").focus({ preventScroll: true });
    slip.scrollIntoView({ block: "nearest" });
  }

  function place(slip, cell) {
    const bottom = cell.querySelector(".g-hit").getBoundingClientRect().bottom;
    slip.style.top = bottom - figure.getBoundingClientRect().top + "px";
  }

  function close(back) {
    const slip = openSlip();
    if (!slip) return;
    takeOther(slip);
    slip.open = false;
    const cell = cellOf(slip.dataset.cell);
    if (!cell) return;
    cell.setAttribute("aria-pressed", "false");
    if (back) cell.focus();
  }

  // Words that were typed become a chip like the others, picked.
  function takeOther(slip) {
    const field = slip.querySelector("[data-other]");
    const text = field.value.trim();
    if (!text) return;
    field.value = "";
    const chips = slip.querySelector("[data-said-chips]");
    const chip = document.createElement("label");
    chip.className = "chip chip-said";
    const box = Object.assign(document.createElement("input"), { type: "checkbox", name: field.name, value: text, checked: true });
    const words = document.createElement("span");
    words.append(Object.assign(document.createElement("s"), { textContent: text }));
    chip.append(box, words);
    afterPicked(chips, chip);
    draw();
  }

  function afterPicked(chips, chip) {
    const picked = [...chips.children].filter((other) => other !== chip && other.querySelector("input").checked);
    if (picked.length) picked.at(-1).after(chip);
    else chips.prepend(chip);
  }

  async function draw() {
    const turn = ++last;
    try {
      const answer = await fetch(location.pathname, {
        method: "POST",
        body: new FormData(form),
        headers: { "HX-Request": "true" },
      });
      const text = answer.ok ? await answer.text() : "";
      if (turn !== last || !text.includes("log-grid")) return;
      const scroll = figure.querySelector(".log-scroll");
      const had = document.activeElement && document.activeElement.dataset.n;
      const stop = figure.querySelector('[data-place][tabindex="0"]').dataset.n;
      scroll.innerHTML = text;
      keepStop(stop);
      drawVoices(figure, voices.stretches());
      const slip = openSlip();
      if (slip) cellOf(slip.dataset.cell).setAttribute("aria-pressed", "true");
      else if (had && cellOf(had)) cellOf(had).focus();
    } catch {
      // Without a connection the chips themselves say what is picked; it is drawn with the next pick.
    }
  }

  // The Tab key comes back to the cell that it left, in the grid drawn anew too.
  function keepStop(n) {
    for (const cell of figure.querySelectorAll("[data-n][data-place]")) cell.tabIndex = cell.dataset.n === n ? 0 : -1;
  }

  function tap(cell) {
    if (voices.wants(cell.dataset.n)) return;
    const slip = openSlip();
    if (slip && slip.dataset.cell === cell.dataset.n) close(true);
    else show(cell);
  }

  figure.addEventListener("click", (event) => {
    const cell = event.target.closest("[data-n][data-place]");
    if (cell) {
      event.stopPropagation();
      tap(cell);
    } else if (event.target.closest("[data-done]")) close(true);
  });

  figure.addEventListener("keydown", (event) => {
    const cell = event.target.closest("[data-n][data-place]");
    if (cell && (event.key === "Enter" || event.key === " ")) {
      event.preventDefault();
      event.stopPropagation();
      tap(cell);
    } else if (event.key === "Escape" && openSlip()) {
      close(true);
    } else if (event.key === "Enter" && event.target.matches("[data-other]")) {
      event.preventDefault();
      takeOther(openSlip());
    }
  });

  slips.addEventListener("change", (event) => {
    const chips = event.target.closest("[data-said-chips]");
    if (chips && event.target.checked) {
      afterPicked(chips, event.target.closest(".chip"));
      event.target.focus();
    }
    if (!event.target.matches("[data-other]")) draw();
  });

  // Kept from wherever the focus is: the button stands after everything that can be written.
  form.addEventListener("keydown", (event) => {
    if (event.key !== "Enter" || !event.ctrlKey) return;
    event.preventDefault();
    event.stopPropagation();
    close(false);
    form.requestSubmit();
  }, true);

  form.addEventListener("submit", () => close(false));
}
