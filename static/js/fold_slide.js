// When a drawn grid is replaced by the same count in another fold, its cells slide to their new places (200 ms), so that
// the eye sees what lines up. A grid that is replaced by its like stays still: its thread does not run again.
(function () {
  "use strict";
  const GRIDS = "svg.g-root[role][data-size]"; // not a card's, which only stands beside its words
  const still = window.matchMedia("(prefers-reduced-motion: reduce)");
  let before = [];

  function read(svg) {
    const box = svg.getBoundingClientRect();
    const places = new Map();
    svg.querySelectorAll("[data-n]").forEach(function (cell) {
      const at = cell.getBoundingClientRect();
      places.set(cell.dataset.n, { x: at.x + at.width / 2 - box.x, y: at.y + at.height / 2 - box.y, text: cell.textContent });
    });
    return { size: svg.dataset.size, told: svg.querySelector("desc").textContent, places: places };
  }

  function remember() {
    before = Array.from(document.querySelectorAll(GRIDS), read);
  }

  function slide(svg, was) {
    const now = read(svg);
    if (now.told === was.told) {
      svg.classList.add("g-still");
      return;
    }
    const width = svg.getBoundingClientRect().width;
    if (still.matches || !width) return;
    const scale = svg.viewBox.baseVal.width / width;
    svg.querySelectorAll("[data-n]").forEach(function (cell) {
      const from = was.places.get(cell.dataset.n);
      const to = now.places.get(cell.dataset.n);
      if (!from || from.text !== to.text) return;
      const x = (from.x - to.x) * scale;
      const y = (from.y - to.y) * scale;
      if (Math.abs(x) + Math.abs(y) < 2) return;
      cell.animate([{ transform: "translate(" + x + "px, " + y + "px)" }, { transform: "none" }], { duration: 200, easing: "ease-out" });
    });
  }

  function compare() {
    document.querySelectorAll(GRIDS).forEach(function (svg, index) {
      const was = before[index];
      if (was && was.size === svg.dataset.size) slide(svg, was);
    });
    before = [];
  }

  document.addEventListener("htmx:beforeSwap", remember);
  document.addEventListener("htmx:afterSwap", function () {
    if (before.length) compare();
  });
})();
