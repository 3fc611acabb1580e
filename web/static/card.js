// A card at the desk: who won, the loser's points, the winner in words, one press; or numbers, Enter, Enter. Without it the
// same form is read back by the next page.
const form = document.querySelector("form.card-form");
const fine = !matchMedia("(pointer: coarse)").matches; // keys are at hand, or a mouse

for (const each of document.querySelectorAll("[data-settle]")) {
  each.addEventListener("change", () => { each.form.querySelector(".button-main").textContent = each.dataset.settle; });
}

if (form) {
  const inputs = [...form.querySelectorAll(".two-sides input")];
  const main = form.querySelector(".button-main");
  const asIs = main.textContent;
  if (fine) (form.querySelector("[aria-invalid=true]") ?? inputs[0]).focus();
  inputs.forEach((input, at) => {
    input.addEventListener("keydown", (key) => {
      if (key.key !== "Enter" && key.key !== "-") return;
      key.preventDefault();
      if (inputs[at + 1]) inputs[at + 1].focus();
      else if (key.key === "Enter") main.focus();
    });
  });
  if (form.dataset.pad) pad(inputs, main, asIs);
}

function pad(inputs, main, asIs) {
  const sides = [...form.querySelectorAll(".side")];
  const keys = [...form.querySelectorAll("[data-lost]")];
  const pages = [...form.querySelectorAll(".pad-keys")];
  const echo = form.querySelector(".echo");
  const winsAgainst = new Map(keys.map((each) => [each.dataset.lost, each.dataset.wins]));
  const confirmed = Object.assign(document.createElement("input"), { type: "hidden", name: "confirmed", value: "yes" });
  let winner = -1; // 0 home, 1 away

  form.classList.add("has-pad");
  for (const each of form.querySelectorAll(".with-pad")) each.hidden = false;
  if (!fine) for (const each of inputs) each.inputMode = "none";
  sides.forEach((side, at) => {
    side.addEventListener("click", (press) => { if (!fine || press.target !== inputs[at]) win(at); });
  });
  for (const key of keys) key.addEventListener("click", () => lose(key.dataset.lost));
  form.querySelector(".more-points")?.addEventListener("click", () => {
    const shown = pages.findIndex((each) => !each.hidden);
    pages.forEach((each, at) => { each.hidden = at !== (shown + 1) % pages.length; });
  });
  form.addEventListener("input", () => show(false));
  show(false);

  function win(at) {
    const lost = winner >= 0 ? inputs[1 - winner].value : "";
    winner = at;
    inputs[1 - at].value = lost;
    inputs[at].value = winsAgainst.get(lost) ?? keys[0].dataset.wins;
    show(true);
  }

  function lose(points) {
    if (winner < 0) return;
    inputs[1 - winner].value = points;
    inputs[winner].value = winsAgainst.get(points);
    show(true);
    main.scrollIntoView({ block: "nearest" });
  }

  // What the two numbers say; only a score that ends a game is said, everything else is asked of the service.
  function show(pressed) {
    const [home, away] = inputs.map((each) => each.value.trim());
    const played = form.querySelector("[name=how]:checked")?.value === "played";
    const said = played && home !== "" && away !== "" && winsAgainst.get(String(Math.min(home, away))) === String(Math.max(home, away));
    if (said && !pressed) winner = Number(home) > Number(away) ? 0 : 1;
    const side = sides[winner];
    const score = said ? `${Math.max(home, away)}-${Math.min(home, away)}` : "";
    sides.forEach((each, at) => each.classList.toggle("won", at === winner));
    for (const key of keys) key.classList.toggle("chosen", winner >= 0 && key.dataset.lost === inputs[1 - winner].value);
    const points = form.querySelector(".pad h2");
    points.textContent = side ? sides[1 - winner].dataset.points : points.dataset.before;
    echo.textContent = said ? side.dataset.won.replace("{score}", score) : "";
    main.textContent = said ? side.dataset.record.replace("{score}", score) : asIs;
    if (said) form.append(confirmed);
    else confirmed.remove();
  }
}
