// Lights patterns in a drawn grid without asking the server. Inside [data-lights] every [data-light="key"] control shows
// or hides the drawing's groups [data-pattern="key"]. Two at most stay lit; of two of one kind the earlier goes out.
// Without scripts the same controls are links to ?lit=key. What the folded part of a list lights is drawn when it is first
// opened; where that does not come, its controls stay the links that they are.
(function () {
  "use strict";
  const AT_MOST = 2;

  function controlsOf(desk) {
    return Array.from(desk.querySelectorAll("[data-light]"));
  }

  function litKeys(desk) {
    return (desk.dataset.lit || "").split(" ").filter(Boolean);
  }

  function kindOf(desk, key) {
    const layer = layerOf(desk, key);
    return layer ? layer.dataset.holds : "";
  }

  function next(desk, key) {
    const lit = litKeys(desk);
    if (lit.includes(key)) return lit.filter((other) => other !== key);
    if (lit.length < AT_MOST) return lit.concat(key);
    const alike = lit.find((other) => kindOf(desk, other) === kindOf(desk, key)) || lit[0];
    return lit.filter((other) => other !== alike).concat(key);
  }

  // A for-a-while thread is left out where it would run under an always shape (the drawing for paper does the same).
  function thin(desk, lit) {
    const covered = new Set();
    lit.forEach(function (key) {
      desk.querySelectorAll('[data-pattern="' + CSS.escape(key) + '"][data-holds="always"][data-cells]').forEach(function (layer) {
        layer.dataset.cells.split(" ").forEach((n) => covered.add(n));
      });
    });
    desk.querySelectorAll('[data-holds="while"] [data-from]').forEach(function (part) {
      part.classList.toggle("g-off", covered.has(part.dataset.from) && covered.has(part.dataset.to));
    });
  }

  function show(desk, lit) {
    desk.dataset.lit = lit.join(" ");
    desk.querySelectorAll("[data-pattern]").forEach(function (layer) {
      layer.classList.toggle("g-off", !lit.includes(layer.dataset.pattern));
    });
    thin(desk, lit);
    controlsOf(desk).forEach(function (control) {
      const on = lit.includes(control.dataset.light);
      control.setAttribute("aria-pressed", String(on));
      control.textContent = on ? "lit" : "light up";
    });
  }

  function remember(lit) {
    const address = new URL(location.href);
    address.searchParams.delete("lit");
    (lit.length ? lit : [""]).forEach((key) => address.searchParams.append("lit", key));
    address.hash = "";
    history.replaceState(history.state, "", address);
  }

  function start(desk) {
    if (desk.dataset.lit !== undefined) return;
    const lit = controlsOf(desk).filter((c) => c.getAttribute("aria-pressed") === "true").map((c) => c.dataset.light);
    desk.dataset.lit = lit.join(" ");
  }

  function layerOf(desk, key) {
    return desk.querySelector('[data-pattern="' + CSS.escape(key) + '"]');
  }

  // The same drawings with every layer in them take the place of those that stand; what is lit stays lit, and still.
  function putIn(desk, text) {
    const drawn = new DOMParser().parseFromString(text, "text/html");
    desk.querySelectorAll("svg[data-size]").forEach(function (drawing) {
      const other = drawn.querySelector('svg[data-size="' + drawing.dataset.size + '"]');
      if (other) drawing.replaceWith(document.adoptNode(other));
    });
    start(desk);
    litKeys(desk).forEach(function (key) {
      desk.querySelectorAll('[data-pattern="' + CSS.escape(key) + '"]').forEach((layer) => layer.classList.add("g-still"));
    });
    show(desk, litKeys(desk));
  }

  const whole = new WeakMap();

  function drawWhole(desk) {
    if (!whole.has(desk)) {
      const headers = { "HX-Request": "true", "HX-Target": desk.id };
      const asked = fetch(location.pathname + "?layers=all&lit=", { headers }).then(function (answer) {
        if (!answer.ok) throw new Error(answer.status);
        return answer.text();
      });
      whole.set(desk, asked.then((text) => putIn(desk, text)).catch(() => whole.delete(desk)));
    }
    return whole.get(desk);
  }

  document.addEventListener("toggle", function (event) {
    const desk = event.target.open && event.target.closest("[data-lights]");
    const waiting = desk && Array.from(event.target.querySelectorAll("[data-light]"));
    if (waiting && waiting.some((control) => !layerOf(desk, control.dataset.light))) drawWhole(desk);
  }, true);

  function choose(desk, control) {
    start(desk);
    const lit = next(desk, control.dataset.light);
    show(desk, lit);
    if (desk.dataset.lights !== "here-only") remember(lit);
  }

  document.addEventListener("click", function (event) {
    const control = event.target.closest("[data-light]");
    const desk = control && control.closest("[data-lights]");
    if (!desk || event.metaKey || event.ctrlKey) return;
    const here = layerOf(desk, control.dataset.light);
    if (!here && !whole.has(desk)) return;
    event.preventDefault();
    if (here) choose(desk, control);
    else whole.get(desk).then(() => (layerOf(desk, control.dataset.light) ? choose(desk, control) : location.assign(control.href)));
  });

  // A link dressed as a button answers the space bar as buttons do.
  document.addEventListener("keydown", function (event) {
    if (event.key === " " && event.target.matches && event.target.matches('a[role="button"]')) {
      event.preventDefault();
      event.target.click();
    }
  });
})();
