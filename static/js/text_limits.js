// Says how much room a text has left when it nears its limit, and by how much it is too long. Nothing typed is ever cut.
(() => {
  "use strict";
  const NEAR = 0.8;
  const CODE = 10; // a text of a few letters, such as a currency, is always near its limit

  const words = () => JSON.parse(document.getElementById("page-words").textContent); // translated with the page

  function sentence(most, length) {
    const blanks = { most, over: length - most, left: most - length };
    const name = length > most ? "too-long" : most > CODE && length >= most * NEAR ? "room-left" : "";
    return name && words()[name].replace(/\{(\w+)\}/g, (_whole, blank) => blanks[blank]);
  }

  function say(field) {
    if (field.type === "password" || field.classList.contains("blank")) return;
    const most = Number(field.dataset.limit);
    const text = sentence(most, field.value.length);
    let note = field.nextElementSibling;
    if (!note || !note.hasAttribute("data-limit-says")) {
      if (!text) return;
      note = document.createElement("span");
      note.dataset.limitSays = "";
      note.className = "hint limit-says";
      field.after(note);
    }
    // Read out once it is too long; until then it is only to be seen.
    if (field.value.length > most) note.setAttribute("role", "status");
    else note.removeAttribute("role");
    note.textContent = text;
  }

  const sayAll = () => document.querySelectorAll("[data-limit]").forEach(say);
  document.addEventListener("input", (event) => {
    if (event.target.matches && event.target.matches("[data-limit]")) say(event.target);
  });
  document.addEventListener("DOMContentLoaded", sayAll);
  document.addEventListener("htmx:afterSettle", sayAll);
})();
