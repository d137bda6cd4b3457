// Cells of an interactive grid are tapped, or walked with the arrow keys and chosen with Enter or Space. The chosen terms
// are written into the field [data-chosen-cells] of the same [data-taps] part, and told by the event "cells-chosen".
(function () {
  "use strict";
  const STEPS = { ArrowLeft: [0, -1], ArrowRight: [0, 1], ArrowUp: [-1, 0], ArrowDown: [1, 0] };

  function toggle(cell) {
    cell.setAttribute("aria-pressed", String(cell.getAttribute("aria-pressed") !== "true"));
    const part = cell.closest("[data-taps]");
    if (!part) return;
    const chosen = Array.from(part.querySelectorAll('[data-n][aria-pressed="true"]'), (other) => other.dataset.n);
    const field = part.querySelector("[data-chosen-cells]");
    if (field) {
      field.value = chosen.join(" ");
      field.dispatchEvent(new Event("input", { bubbles: true }));
    }
    part.dispatchEvent(new CustomEvent("cells-chosen", { bubbles: true, detail: chosen.map(Number) }));
  }

  function walk(cell, step) {
    const [row, column] = cell.dataset.place.split(" ").map(Number);
    const place = (row + step[0]) + " " + (column + step[1]);
    const next = cell.ownerSVGElement.querySelector('[data-place="' + place + '"]');
    if (!next) return;
    cell.setAttribute("tabindex", "-1");
    next.setAttribute("tabindex", "0");
    next.focus();
  }

  document.addEventListener("click", function (event) {
    const cell = event.target.closest("[data-n][data-place]");
    if (cell) toggle(cell);
  });

  document.addEventListener("keydown", function (event) {
    const cell = event.target.closest && event.target.closest("[data-n][data-place]");
    if (!cell || event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key in STEPS) {
      event.preventDefault();
      walk(cell, STEPS[event.key]);
    } else if (event.key === "Enter" || event.key === " ") {
      event.preventDefault();
      toggle(cell);
    }
  });
})();
