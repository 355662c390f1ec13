"use strict";
(() => {
  const $ = (id) => document.getElementById(id);
  const SVG = "http://www.w3.org/2000/svg";
  const LARGEST = 6;
  /** Share of the window's height that a joint's picture takes at most, in per cent. */
  const TALL = 74;
  let words = {};
  let state, specimen, pin, picks, zoom, shownAt;
  let before = Promise.resolve();
  let giving = false;

  /** A sentence in the page's language; the server has them all. */
  const say = (key, ...values) => values.reduce((text, value, i) => text.replaceAll(`{${i}}`, value), words[key] ?? key);

  /** One request after the other, so that no specimen is closed before its last answer is there. */
  function ask(path, body) {
    const mine = before.then(() => request(path, body));
    before = mine.catch(() => null);
    return mine;
  }

  async function request(path, body) {
    const answer = await fetch(path, {
      method: body ? "POST" : "GET",
      headers: body ? { "Content-Type": "application/json" } : {},
      body: body && JSON.stringify(body),
    }).catch(() => null);
    if (!answer?.ok) {
      const why = answer ? await answer.text() : say("stopped");
      $("trouble").textContent = why + " " + say("kept");
      $("trouble").hidden = false;
      throw new Error(why);
    }
    $("trouble").hidden = true;
    return answer.status === 204 ? null : answer.json();
  }

  function element(name, text, parent) {
    const made = document.createElement(name);
    made.textContent = text ?? "";
    parent?.append(made);
    return made;
  }

  function drawn(name, attributes, parent) {
    const made = document.createElementNS(SVG, name);
    for (const [key, value] of Object.entries(attributes)) made.setAttribute(key, value);
    parent.append(made);
    return made;
  }

  function sign(verdict, parent) {
    const svg = drawn("svg", { class: "sign", "aria-hidden": "true" }, parent);
    drawn("use", { href: signOf(verdict) }, svg);
  }

  /** What is too close to a limit has the sign of what is to be watched. */
  const signOf = (verdict) => "#sign-" + (verdict === "limit" ? "process-indicator" : verdict);

  function key(text, parent) {
    const kbd = element("kbd", text, parent);
    kbd.setAttribute("aria-hidden", "true");
  }

  const show = (id) => ["work", "result", "bye"].forEach((s) => ($(s).hidden = s !== id));
  const isRow = () => specimen.spots.length > 1;
  const told = () => specimen.told ?? [];
  const spot = () => specimen.spots.find((s) => s.pin === pin);

  // The choices ------------------------------------------------------------------------------

  function choice(verdict, finding, keyName, words, parent) {
    const button = element("button", "", parent);
    button.type = "button";
    button.dataset.verdict = verdict;
    button.dataset.finding = finding ?? "";
    button.dataset.key = keyName.toLowerCase();
    if (!finding) sign(verdict, button);
    element("span", words, button);
    key(keyName, button);
    button.addEventListener("click", () => pick(verdict, finding));
  }

  function choices() {
    choice("acceptable", null, "S", say("sound"), $("choices"));
    const group = element("p", say("defect"), $("choices"));
    group.className = "group";
    const faults = element("div", "", $("choices"));
    faults.className = "faults";
    state.choices.forEach((c) => choice("defect", c.id, c.key, c.words, faults));
    choice("unjudged", null, "U", say("unjudged"), $("choices"));
  }

  /** Goes on at once, so that quick fingers are not lost; what could not be kept is open again. */
  async function pick(verdict, finding) {
    const mine = pin;
    picks.set(mine, { verdict, finding });
    const body = { specimen: specimen.specimen, pin, verdict, took_ms: Math.round(performance.now() - shownAt) };
    if (finding && finding !== "other") body.finding = finding;
    const kept = ask("answer", body);
    drawPicks();
    onToNext();
    try {
      await kept;
    } catch {
      picks.delete(mine);
      look(mine);
    }
  }

  function onToNext() {
    const open = specimen.spots.filter((s) => !picks.has(s.pin));
    const at = specimen.spots.indexOf(spot());
    const next = open.find((s) => specimen.spots.indexOf(s) > at) ?? open[0];
    if (next) look(next.pin);
    else $("give").focus();
  }

  function drawPicks() {
    const picked = picks.get(pin);
    document.querySelectorAll("#choices button").forEach((b) => {
      const on = picked?.verdict === b.dataset.verdict && (picked?.finding ?? "") === b.dataset.finding;
      b.setAttribute("aria-pressed", on);
    });
    $("give").disabled = picks.size < specimen.spots.length;
    drawPins();
  }

  // The picture ------------------------------------------------------------------------------

  function drawPicture() {
    const svg = $("picture");
    svg.replaceChildren();
    svg.setAttribute("viewBox", `0 0 ${specimen.width} ${specimen.height}`);
    const href = `picture/${specimen.specimen}.jpg`;
    drawn("image", { href, width: specimen.width, height: specimen.height }, svg);
    drawn("g", { id: "overlay" }, svg);
    svg.setAttribute("aria-label", say(isRow() ? "picture.row" : "picture.joint"));
  }

  function pointer(x, width, overlay) {
    for (const [from, to] of [[0, 26], [specimen.height, specimen.height - 26]]) {
      const d = `M${x - width} ${from}L${x} ${to}L${x + width} ${from}`;
      drawn("path", { class: "here-halo", d }, overlay);
      drawn("path", { class: "here", d }, overlay);
    }
  }

  function drawOverlay() {
    const overlay = $("overlay");
    overlay.replaceChildren();
    pointer(spot().x, 20, overlay);
    const marks = told().find((t) => t.pin === pin)?.marks ?? [];
    for (const m of marks) {
      const box = { x: m.x_px, y: m.y_px, width: m.width_px, height: m.height_px, rx: 8 };
      drawn("rect", { ...box, class: "mark-halo" }, overlay);
      drawn("rect", { ...box, class: "mark" }, overlay);
    }
    $("marks").hidden = marks.length === 0;
  }

  function drawPins() {
    const box = $("pins");
    box.replaceChildren();
    if (!isRow()) return;
    box.classList.toggle("told", told().length > 0);
    for (const s of specimen.spots) {
      const button = element("button", "", box);
      button.type = "button";
      button.style.left = (100 * (s.x - s.half)) / specimen.width + "%";
      button.style.width = (200 * s.half) / specimen.width + "%";
      element("span", s.pin, button);
      const t = told().find((one) => one.pin === s.pin);
      const mine = t?.you ?? picks.get(s.pin)?.verdict;
      if (mine) sign(mine, button);
      if (t) {
        sign(t.other, button);
        button.classList.toggle("differs", !t.good);
      }
      button.setAttribute("aria-current", s.pin === pin);
      button.setAttribute("aria-label", t ? say("told", say("pin", s.pin), t.headline) : mine ? say("answered", say("pin", s.pin)) : say("pin", s.pin));
      button.addEventListener("click", () => look(s.pin));
    }
  }

  function size(to) {
    zoom = Math.max(1, Math.min(LARGEST, to));
    const least = isRow() ? specimen.spots.length * 3.2 : 0;
    const frame = $("frame");
    const centre = (frame.scrollLeft + frame.clientWidth / 2) / Math.max(1, frame.scrollWidth);
    const middle = (frame.scrollTop + frame.clientHeight / 2) / Math.max(1, frame.scrollHeight);
    const fits = isRow() ? "100%" : `min(100%, ${(specimen.width / specimen.height) * TALL}vh)`;
    $("stage").style.width = `max(calc(${zoom} * ${fits}), ${least * zoom}rem)`;
    frame.scrollLeft = centre * frame.scrollWidth - frame.clientWidth / 2;
    frame.scrollTop = middle * frame.scrollHeight - frame.clientHeight / 2;
  }

  function look(at) {
    pin = at;
    shownAt = performance.now();
    drawOverlay();
    if (told().length) drawTold();
    else {
      $("question").textContent = isRow() ? say("question.pin", pin) : say("question");
      drawPicks();
    }
    drawPins();
    const frame = $("frame");
    const x = (spot().x / specimen.width) * $("stage").clientWidth;
    if (isRow() && (x < frame.scrollLeft + 30 || x > frame.scrollLeft + frame.clientWidth - 30)) {
      frame.scrollLeft = x - frame.clientWidth / 2;
    }
  }

  // A specimen ------------------------------------------------------------------------------------

  async function open(number) {
    specimen = await ask(`specimen/${number}`);
    picks = new Map((specimen.given ?? []).map((g) => [g.pin, g]));
    show("work");
    $("work").classList.toggle("row", isRow());
    const isTold = told().length > 0;
    $("ask").hidden = isTold;
    $("told").hidden = !isTold;
    drawPicture();
    pin = specimen.spots[0].pin;
    size(1);
    const first = isTold ? told().find((t) => !t.good) : specimen.spots.find((s) => !picks.has(s.pin));
    look((first ?? specimen.spots[0]).pin);
    count();
    window.scrollTo(0, 0);
    (isTold ? $("next") : $("frame")).focus({ preventScroll: true });
  }

  function count() {
    const done = (state.closed ?? []).length;
    $("count").textContent = state.own_work ? say("count", specimen.spots.length) : say(`count.${state.word}`, specimen.specimen, state.specimens);
    $("progress").value = done / state.specimens;
  }

  function drawTold() {
    const t = told().find((one) => one.pin === pin);
    $("headline").textContent = (isRow() ? `${say("pin", pin)}. ` : "") + t.headline;
    $("told-sign").setAttribute("href", signOf(t.other));
    $("lines").replaceChildren();
    for (const line of t.lines ?? []) {
      const row = element("div", "", $("lines"));
      element("dt", line.name, row);
      element("dd", line.text, row);
    }
    const overview = $("overview");
    overview.replaceChildren();
    if (isRow()) {
      const differ = told().filter((one) => !one.good);
      const what = say(state.own_work ? "look-again" : "not-right");
      overview.append(differ.length ? what + " " : say("all-alike"));
      differ.forEach((one) => {
        const go = element("button", one.pin, overview);
        go.type = "button";
        go.setAttribute("aria-label", say("told", say("pin", one.pin), one.headline));
        go.addEventListener("click", () => look(one.pin));
      });
    }
    $("hint").textContent = isRow() ? say(state.own_work ? "hint.own" : "hint") : "";
    const last = state.next === 0;
    $("next").textContent = say(last ? "result" : `next.${state.word}`) + " ";
    key(say("enter"), $("next"));
  }

  async function give() {
    if (giving) return;
    giving = true;
    try {
      await ask("close", { specimen: specimen.specimen });
      state = await ask("state");
      await (state.tell_at_end ? onward() : open(specimen.specimen));
    } finally {
      giving = false;
    }
  }

  const onward = () => (state.next ? open(state.next) : result());

  // The result --------------------------------------------------------------------------------

  async function result() {
    const all = await ask("result");
    show("result");
    $("count").textContent = "";
    $("progress").value = 1;
    $("result-title").textContent = all.headline;
    $("figures").replaceChildren();
    for (const f of all.figures ?? []) {
      const box = element("div", "", $("figures"));
      element("dt", f.name, box);
      element("dd", f.value, box);
      element("dd", f.range, box);
    }
    $("specimens").replaceChildren();
    $("specimens-title").textContent = say(state.word === "row" ? "rows" : "joints");
    $("specimens-title").hidden = all.specimens.length < 2;
    for (const c of all.specimens) {
      const button = element("button", "", element("li", "", $("specimens")));
      button.type = "button";
      button.classList.toggle("bad", !c.good);
      element("b", all.specimens.length > 1 ? c.specimen : "", button);
      element("span", all.specimens.length > 1 ? c.headline : say("look-row"), button);
      button.addEventListener("click", () => open(c.specimen));
    }
    $("summary").textContent = all.summary;
    window.scrollTo(0, 0);
    ($("specimens").querySelector("button.bad") ?? $("leave")).focus({ preventScroll: true });
  }

  async function leave() {
    await ask("leave", {});
    show("bye");
    $("bye").querySelector("h2").focus();
  }

  // Keys --------------------------------------------------------------------------------------

  function step(by) {
    if (!isRow()) return false;
    const at = specimen.spots.indexOf(spot()) + by;
    if (at >= 0 && at < specimen.spots.length) look(specimen.spots[at].pin);
    return true;
  }

  function marks() {
    const off = document.documentElement.classList.toggle("no-marks");
    $("marks").setAttribute("aria-pressed", !off);
  }

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || $("work").hidden) return;
    const name = event.key.toLowerCase();
    const asking = !$("ask").hidden;
    const chosen = asking && document.querySelector(`#choices button[data-key="${CSS.escape(name)}"]`);
    const acts = {
      "+": () => size(zoom * 1.5),
      "=": () => size(zoom * 1.5),
      "-": () => size(zoom / 1.5),
      0: () => size(1),
      m: () => !$("marks").hidden && marks(),
      arrowleft: () => step(-1),
      arrowright: () => step(1),
      enter: () => {
        if (event.target.closest("button")) return false;
        (asking ? $("give") : $("next")).click();
        return true;
      },
    };
    if (chosen) {
      chosen.click();
      event.preventDefault();
    } else if (acts[name] && acts[name]() !== false) {
      event.preventDefault();
    }
  });

  $("give").addEventListener("click", give);
  $("next").addEventListener("click", onward);
  $("leave").addEventListener("click", leave);
  $("larger").addEventListener("click", () => size(zoom * 1.5));
  $("smaller").addEventListener("click", () => size(zoom / 1.5));
  $("whole").addEventListener("click", () => size(1));
  $("marks").addEventListener("click", marks);

  (async () => {
    words = await ask("words");
    state = await ask("state");
    $("set").textContent = state.own_work ? say("own", state.set) : state.set;
    $("who").textContent = `${state.person}; ${state.about}`;
    document.title = say("tab", state.set);
    choices();
    onward();
  })();
})();
