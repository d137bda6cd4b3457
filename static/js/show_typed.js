// A passphrase may be looked at while it is typed. The button beside it is on the page and hidden until scripts run. What is
// shown is hidden again when it is sent, so that no browser offers it later as something once typed, and when the page is left.
(() => {
  "use strict";
  const BUTTONS = "button[data-shows]";
  const fieldOf = (button) => document.getElementById(button.dataset.shows);

  function show(button, shown) {
    fieldOf(button).type = shown ? "text" : "password";
    button.setAttribute("aria-pressed", String(shown));
  }

  const offerAll = () => document.querySelectorAll(BUTTONS).forEach((button) => { button.hidden = false; });
  const hideAll = () => document.querySelectorAll(BUTTONS).forEach((button) => show(button, false));

  document.addEventListener("DOMContentLoaded", offerAll);
  document.addEventListener("click", (event) => {
    const button = event.target.closest(BUTTONS);
    if (button) show(button, button.getAttribute("aria-pressed") !== "true");
  });
  document.addEventListener("submit", hideAll);
  window.addEventListener("pagehide", hideAll);
})();
