// Steps through a lesson's moments by arrow keys or taps without leaving the page; the links work without this. Plays only
// when asked to.

import { wordsOf } from "./words.js";

const STEPS = { ArrowLeft: "before", ArrowRight: "after", End: "end" };
const part = () => document.querySelector("[data-replay]");
const say = wordsOf();
let playing = 0, turn = 0;

ready();

function ready() {
  part().querySelector("[data-playing]").hidden = false;
  const button = part().querySelector("[data-play]");
  button.textContent = say(playing ? "stop" : "play");
}

async function go(link, focus) {
  const mine = ++turn;
  const url = link.href;
  try {
    const answer = await fetch(url, { headers: { "HX-Request": "true" } });
    if (!answer.ok) throw new Error(answer.status);
    const text = await answer.text();
    if (mine !== turn) return;
    const speed = part().querySelector("[data-speed]").value;
    part().outerHTML = text;
    part().querySelector("[data-speed]").value = speed;
    history.replaceState(null, "", url);
    ready();
    if (focus) (part().querySelector('[data-step="' + focus + '"]') || part().querySelector('[aria-current="step"]')).focus();
  } catch {
    location.href = url;
  }
}

function stop() {
  clearTimeout(playing);
  playing = 0;
  ready();
}

function play() {
  playing = setTimeout(async () => {
    const next = part().querySelector('[data-step="after"]');
    if (!next) return stop();
    await go(next, "");
    if (playing) play();
  }, 1000 * part().querySelector("[data-speed]").value);
  ready();
}

document.addEventListener("click", (event) => {
  const link = event.target.closest("[data-replay] [data-step]");
  if (link && !event.ctrlKey && !event.metaKey && !event.shiftKey) {
    event.preventDefault();
    go(link, link.dataset.step);
  } else if (event.target.closest("[data-play]")) {
    if (playing) stop();
    else play();
    part().querySelector("[data-play]").focus();
  }
});

document.addEventListener("keydown", (event) => {
  if (event.ctrlKey || event.metaKey || event.altKey || event.target.matches("select, input, textarea")) return;
  const link = STEPS[event.key] && part().querySelector('[data-step="' + STEPS[event.key] + '"]');
  if (!link) return;
  event.preventDefault();
  go(link, link.dataset.step);
});
