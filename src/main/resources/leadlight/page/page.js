"use strict";
(() => {
  const root = document.documentElement;
  const tabs = [...document.querySelectorAll(".tab")];
  const panels = [...document.querySelectorAll(".pin")];
  const spots = [...document.querySelectorAll(".spot")];
  const pinOf = (element) => Number(element.id.split("-")[1]);
  const panel = (pin) => document.getElementById("pin-" + pin);
  const order = tabs.map(pinOf);
  const hands = order.filter((pin) => panel(pin).dataset.hands === "true");
  let current = 0;

  root.classList.add("js");
  document.querySelectorAll(".js-only, .switches").forEach((e) => (e.hidden = false));

  function show(pin, focus) {
    if (!panel(pin)) return;
    current = pin;
    panels.forEach((p) => p.classList.toggle("shown", pinOf(p) === pin));
    spots.forEach((spot) => spot.classList.toggle("on", pinOf(spot) === pin));
    tabs.forEach((tab) => {
      const on = pinOf(tab) === pin;
      tab.setAttribute("aria-selected", on);
      tab.tabIndex = on ? 0 : -1;
      if (on && focus) {
        tab.focus({ preventScroll: true });
        tab.scrollIntoView({ block: "nearest", inline: "nearest" });
      }
    });
  }

  function step(by, list) {
    if (!list.length) return;
    const at = list.indexOf(current);
    const from = at >= 0 ? at : by > 0 ? -1 : 0;
    show(list[(from + by + list.length) % list.length], true);
  }

  const filtered = () => document.getElementById("filter")?.getAttribute("aria-pressed") === "true";
  const shownPins = () => (filtered() && hands.length ? hands : order);

  function press(button) {
    const on = button.getAttribute("aria-pressed") !== "true";
    button.setAttribute("aria-pressed", on);
    return on;
  }

  const actions = {
    marks: (on) => root.classList.toggle("no-marks", !on),
    filter: (on) => {
      tabs.forEach((tab) => tab.classList.toggle("off", on && !hands.includes(pinOf(tab))));
      if (on && hands.length && !hands.includes(current)) show(hands[0], false);
    },
    turn: (on) => root.classList.toggle("turned", on),
    theme: (on) => (root.dataset.theme = on ? "dark" : "bright"),
  };
  for (const [id, act] of Object.entries(actions)) {
    const button = document.getElementById(id);
    button?.addEventListener("click", () => act(press(button)));
  }
  const theme = document.getElementById("theme");
  theme.setAttribute("aria-pressed", matchMedia("(prefers-color-scheme: dark)").matches);

  tabs.forEach((tab) => {
    tab.addEventListener("click", (event) => {
      event.preventDefault();
      show(pinOf(tab), true);
    });
    tab.addEventListener("pointerenter", (event) => {
      if (event.pointerType === "mouse") show(pinOf(tab), false);
    });
  });
  spots.forEach((spot) =>
    spot.addEventListener("click", (event) => {
      event.preventDefault();
      show(pinOf(spot), !root.classList.contains("turned"));
    }),
  );
  document.querySelectorAll(".step").forEach((button) =>
    button.addEventListener("click", () => {
      const list = shownPins();
      const at = Math.max(0, list.indexOf(current));
      show(list[(at + Number(button.dataset.step) + list.length) % list.length], false);
      panel(current).querySelector(`[data-step="${button.dataset.step}"]`).focus();
    }),
  );
  document.querySelectorAll(".go").forEach((link) =>
    link.addEventListener("click", (event) => {
      event.preventDefault();
      show(Number(link.textContent), true);
      document.querySelector(root.classList.contains("turned") ? ".whole" : ".row").scrollIntoView({ block: "start" });
    }),
  );

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.target.closest("select")) return;
    const keys = {
      ArrowRight: () => step(1, shownPins()),
      ArrowLeft: () => step(-1, shownPins()),
      Home: () => show(shownPins()[0], true),
      End: () => show(shownPins().at(-1), true),
      h: () => step(1, hands),
      m: () => document.getElementById("marks")?.click(),
      f: () => document.getElementById("filter")?.click(),
      t: () => document.getElementById("turn")?.click(),
      d: () => theme.click(),
    };
    const act = keys[event.key] ?? keys[event.key.toLowerCase()];
    if (act && (tabs.length || event.key.toLowerCase() === "d")) {
      act();
      event.preventDefault();
    }
  });

  document.getElementById("symptom")?.addEventListener("change", (event) => {
    const chosen = event.target.selectedOptions[0];
    const pins = event.target.value.split(" ").map(Number);
    tabs.forEach((tab) => tab.classList.toggle("symptom", pins.includes(pinOf(tab))));
    document.querySelectorAll(".said div").forEach((said) =>
      said.classList.toggle("shown", said.querySelector("dt").textContent === chosen.textContent),
    );
  });

  if (order.length) {
    const asked = Number(location.hash.replace("#pin-", ""));
    show(order.includes(asked) ? asked : (hands[0] ?? order[0]), false);
  }
})();
