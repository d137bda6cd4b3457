// Menus are <details data-menu>: they work alone. With scripts, Escape and a click outside close them too.
(function () {
  "use strict";
  document.addEventListener("click", function (event) {
    document.querySelectorAll("details[data-menu][open]").forEach(function (menu) {
      if (!menu.contains(event.target)) menu.open = false;
    });
  });
  document.addEventListener("keydown", function (event) {
    if (event.key !== "Escape") return;
    document.querySelectorAll("details[data-menu][open]").forEach(function (menu) {
      menu.open = false;
      menu.querySelector("summary").focus();
    });
  });
})();
