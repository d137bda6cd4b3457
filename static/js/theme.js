// Keeps the ground a person chose, paper or slate. Runs before the page is painted, so that it never flashes.
(function () {
  "use strict";
  const KEY = "countfold-theme";
  const root = document.documentElement;
  let kept = null;
  try { kept = localStorage.getItem(KEY); } catch { /* storage is closed: paper */ }
  if (kept === "slate" && !root.dataset.theme) root.dataset.theme = "slate";

  // The button's words come from the page, translated with it: {"paper": what leads to paper, "slate": what leads to slate}.
  function say(button) {
    const words = JSON.parse(document.getElementById("page-words").textContent);
    button.hidden = false;
    button.textContent = root.dataset.theme === "slate" ? words.paper : words.slate;
  }

  document.addEventListener("DOMContentLoaded", function () {
    document.querySelectorAll("[data-switch-theme]").forEach(say);
  });
  document.addEventListener("click", function (event) {
    const button = event.target.closest("[data-switch-theme]");
    if (!button) return;
    root.dataset.theme = root.dataset.theme === "slate" ? "paper" : "slate";
    try { localStorage.setItem(KEY, root.dataset.theme); } catch { /* kept for this page only */ }
    document.querySelectorAll("[data-switch-theme]").forEach(say);
  });

  // Paper is white: what is light on slate would not be seen on it.
  let before;
  addEventListener("beforeprint", function () {
    if (root.dataset.theme === "print") return;
    before = root.dataset.theme;
    root.dataset.theme = "print";
  });
  addEventListener("afterprint", function () {
    if (before) root.dataset.theme = before;
    else delete root.dataset.theme;
  });
})();
