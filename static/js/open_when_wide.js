// Filters stand open in the margin of a wide page and folded on a phone.
(function () {
  "use strict";
  const wide = window.matchMedia("(min-width: 52.01rem)");
  function fit() {
    document.querySelectorAll("details.filters-fold, details[data-open-when-wide]").forEach(function (fold) {
      fold.open = wide.matches;
    });
  }
  fit();
  wide.addEventListener("change", fit);
})();
