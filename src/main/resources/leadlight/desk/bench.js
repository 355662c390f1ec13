"use strict";
(() => {
  const by = (id) => document.getElementById(id);
  const SVG = "http://www.w3.org/2000/svg";
  let words = {};
  let state = null;
  let shot = null;
  let at = 0;
  let stream = null;
  let glancing = false;
  let stamp = "";
  let live = true;
  let queued = Promise.resolve();
  let away = "";
  let seeking = false;

  const say = (key, ...values) => values.reduce((text, value, i) => text.replaceAll(`{${i}}`, value), words[key] ?? key);

  /** What was said last to the person; what is away (server, camera) is said as long as it is. */
  function trouble(text) {
    const shown = text || (away ? say(away) : "");
    by("trouble").textContent = shown;
    by("trouble").hidden = !shown;
  }

  /** Something is away, or back. */
  function gone(key, isGone) {
    if ((away === key) === isGone || (isGone && away === "lost-server")) return;
    away = isGone ? key : by("camera").hidden ? "" : "lost-camera";
    trouble("");
  }

  async function get(path) {
    const answer = await fetch(path);
    if (!answer.ok) throw new Error(await answer.text());
    return camel(await answer.json());
  }

  /** Names as the script has them: "width_px" is widthPx. Keys that are numbers or words stay. */
  function camel(tree) {
    if (Array.isArray(tree)) return tree.map(camel);
    if (tree === null || typeof tree !== "object") return tree;
    return Object.fromEntries(Object.entries(tree).map(([key, value]) => [key.replace(/_([a-z])/g, (m, c) => c.toUpperCase()), camel(value)]));
  }

  async function post(path, body, type) {
    let answer;
    try {
      answer = await fetch(path, { method: "POST", body: type ? body : JSON.stringify(body), headers: { "Content-Type": type ?? "application/json" } });
    } catch {
      gone("lost-server", true);
      return null;
    }
    if (!answer.ok) {
      trouble(await answer.text());
      return null;
    }
    trouble("");
    return answer.status === 204 ? {} : answer.json();
  }

  function fill(list, lines) {
    list.replaceChildren(...lines.map((line) => Object.assign(document.createElement("li"), { textContent: line })));
    list.hidden = lines.length === 0;
  }

  // --- the bench as a whole -------------------------------------------------------------------

  async function refresh(show) {
    const before = state?.changes;
    try {
      state = { boards: [], presets: [], preset: "", lamp: "", last: [], open: [], facts: [], heats: {}, ...(await get("state")) };
      gone("lost-server", false);
    } catch {
      gone("lost-server", true);
      return;
    }
    if (before !== undefined && before === state.changes && show === undefined) return;
    const subject = state.subject;
    by("job").textContent = subject ? `${subject.job} · ${subject.boardWords}` : say("choose");
    by("stage").textContent = subject ? subject.words + (state.preset ? ` · ${state.preset}` : "") + (state.lamp ? ` · ${say("lamp", state.lamp)}` : "") : "";
    by("who").textContent = state.person;
    by("life").hidden = !subject;
    by("ends").hidden = !subject;
    by("welcome").hidden = !!subject && state.last.length > 0;
    by("welcome").textContent = say(subject ? "focus" : "welcome");
    // offered first only where the decision is all that stands open: never over joints not judged
    by("b-yes").classList.toggle("main", state.mayBeHandedBack && state.open.length === 1);
    fill(by("facts"), [...state.facts, ...heats()]);
    fill(by("points"), state.open);
    by("take").disabled = !subject || !state.hasRow;
    if (subject && !state.hasRow) by("hint").textContent = say("row-first");
    last();
    const wanted = show || shot?.scoring || state.last[0]?.scoring;
    if (state.last.some((thumb) => thumb.scoring === wanted)) await open(wanted, show !== undefined && show !== 0);
    else close();
    document.body.dataset.changes = state.changes;
  }

  const heats = () => {
    const pins = Object.entries(state.heats);
    return pins.length ? [say("heats", pins.map(([pin, n]) => `${pin}: ${n}`).join(", "), state.mostHeats)] : [];
  };

  function last() {
    by("last").replaceChildren(
      ...state.last.map((thumb) => {
        const item = document.createElement("li");
        const button = document.createElement("button");
        button.type = "button";
        button.dataset.scoring = thumb.scoring;
        const img = document.createElement("img");
        img.src = `picture/${thumb.scoring}.jpg`;
        img.alt = "";
        button.append(img, `${thumb.stage}: ${thumb.word}`);
        button.addEventListener("click", () => open(thumb.scoring, true));
        item.append(button);
        return item;
      }),
    );
  }

  // --- one photo ------------------------------------------------------------------------------

  async function open(scoring, shown) {
    try {
      shot = { counts: [], pins: [], steps: [], hints: [], ...(await get(`shot/${scoring}`)) };
      shot.pins = shot.pins.map((pin) => ({ what: [], how: [], said: [], with: "", title: "", ...pin }));
    } catch (e) {
      trouble(e.message);
      return;
    }
    document.querySelectorAll("#last button").forEach((b) => b.setAttribute("aria-current", Number(b.dataset.scoring) === shot.scoring));
    by("verdict").hidden = false;
    by("verdict").dataset.scoring = shot.scoring;
    by("verdict-sign").setAttribute("href", `#sign-${shot.verdict}`);
    by("verdict-word").textContent = shot.word;
    by("counts").textContent = [...shot.counts, ...(shot.pins.length ? [] : shot.hints)].join(" · ");
    if (!order().includes(at)) at = order()[0] ?? 0;
    if (shown) showShot(true);
    draw();
    step();
  }

  function close() {
    shot = null;
    by("verdict").hidden = true;
    by("counts").textContent = "";
    by("step").hidden = true;
    showShot(false);
  }

  function showShot(on) {
    live = !on;
    by("shot").toggleAttribute("hidden", !on);
    by("video").hidden = on || !state?.camera;
    by("newest").hidden = on || state?.camera !== false || !stamp;
    by("live").hidden = !on;
    by("turn").hidden = !on || !shot?.pins.length;
    by("fit").hidden = on;
  }

  const all = () => by("all").getAttribute("aria-pressed") === "true";
  const order = () => (!shot ? [] : all() || !shot.steps.length ? shot.pins.map((p) => p.spot.pin) : shot.steps);
  const pinOf = (pin) => shot?.pins.find((p) => p.spot.pin === pin);

  function element(name, attributes, ...children) {
    const made = document.createElementNS(SVG, name);
    Object.entries(attributes).forEach(([key, value]) => made.setAttribute(key, value));
    made.append(...children);
    return made;
  }

  function draw() {
    const turned = by("turn").getAttribute("aria-pressed") === "true";
    const a = turned ? shot.turnDeg : 0;
    const cx = shot.widthPx / 2;
    const cy = shot.heightPx / 2;
    const place = element("g", { transform: `rotate(${a} ${cx} ${cy})` });
    place.append(element("image", { href: `picture/${shot.scoring}.jpg`, width: shot.widthPx, height: shot.heightPx }));
    for (const pin of shot.pins) {
      const s = pin.spot;
      const upright = (x, y) => `rotate(${-a} ${x} ${y})`;
      const line = { x1: s.x, y1: s.y, x2: s.signX, y2: s.signY };
      const spot = element(
        "g",
        { class: "spot", "data-pin": s.pin },
        element("line", { class: "lead under", ...line }),
        element("line", { class: "lead", ...line }),
        element("g", { transform: upright(s.signX, s.signY) }, element("use", { href: `#sign-${s.verdict}`, x: s.signX - s.size / 2, y: s.signY - s.size / 2, width: s.size, height: s.size })),
        element("g", { class: "no" }, element("g", { transform: upright(s.noX, s.noY) }, Object.assign(element("text", { x: s.noX, y: s.noY + 0.36 * s.size, "font-size": s.size }), { textContent: s.pin }))),
      );
      // the lit number is larger and stands further out, not over its sign
      spot.style.setProperty("--out", `translate(${0.4 * (s.noX - s.signX)}px, ${0.4 * (s.noY - s.signY)}px)`);
      spot.addEventListener("click", () => go(s.pin));
      place.append(spot);
    }
    by("shot").replaceChildren(place);
    by("shot").setAttribute("viewBox", turned ? around(a, cx, cy) : `0 0 ${shot.widthPx} ${shot.heightPx}`);
    light();
  }

  /** The row with its numbers, turned, as a box. */
  function around(a, cx, cy) {
    const r = (a * Math.PI) / 180;
    const points = shot.pins.flatMap((p) => [[p.spot.x, p.spot.y], [p.spot.noX, p.spot.noY], [2 * p.spot.x - p.spot.noX, 2 * p.spot.y - p.spot.noY]]);
    const turned = points.map(([x, y]) => [cx + (x - cx) * Math.cos(r) - (y - cy) * Math.sin(r), cy + (x - cx) * Math.sin(r) + (y - cy) * Math.cos(r)]);
    const xs = turned.map((p) => p[0]);
    const ys = turned.map((p) => p[1]);
    const size = shot.pins[0].spot.size * 1.5;
    const left = Math.min(...xs) - size;
    const top = Math.min(...ys) - size;
    return `${left} ${top} ${Math.max(...xs) + size - left} ${Math.max(...ys) + size - top}`;
  }

  function light() {
    document.querySelectorAll("#shot .spot").forEach((spot) => spot.classList.toggle("on", Number(spot.dataset.pin) === at));
  }

  function step() {
    const pin = pinOf(at);
    by("step").hidden = !pin;
    by("step").dataset.pin = at;
    if (!pin) return;
    by("step-at").textContent = say("step", order().indexOf(at) + 1, order().length);
    by("step-title").textContent = say("pin", at) + (pin.title ? `: ${pin.title}` : "") + (pin.with ? ` (${pin.with})` : "");
    by("step-sign").setAttribute("href", `#sign-${pin.spot.verdict}`);
    by("step-verdict").textContent = pin.word;
    by("step-source").textContent = pin.source === "tool" ? "" : say(`by-${pin.source}`, pin.tool);
    fill(by("step-what"), pin.what);
    by("step-how").textContent = pin.how.join(" ");
    fill(by("step-said"), pin.said);
    by("b-back").disabled = !pin.opinion && !pin.bench;
    light();
  }

  function go(pin) {
    at = pin;
    if (!order().includes(pin)) {
      by("all").setAttribute("aria-pressed", true);
    }
    step();
  }

  function move(by1) {
    const list = order();
    if (list.length) go(list[(list.indexOf(at) + by1 + list.length) % list.length]);
  }

  // --- what hands say -------------------------------------------------------------------------

  async function said(button) {
    if (!pinOf(at)) return;
    let other;
    if (button.dataset.result === "short") {
      other = await ask(say("short-to", at), say("other-pin"), at < shot.pins.length ? at + 1 : at - 1);
      if (other === null) return;
      if (!pinOf(Number(other)) || Number(other) === at) return trouble(say("no-such-pin"));
    }
    await done("bench", { scoring: shot.scoring, pin: at, test: button.dataset.test, result: button.dataset.result, ...(other ? { other: Number(other) } : {}) });
  }

  /** One thing after the other, and none is lost; by the time of the press the server knows a key that bounced. */
  function done(path, body) {
    const said = pressed(body);
    const next = async () => {
      if (await post(path, said)) await refresh(0);
    };
    queued = queued.then(next, next);
    return queued;
  }

  const pressed = (body) => ({ ...body, pressed_ms: Date.now() });
  const note = (kind, text, pins, good) => done("note", { kind, words: text, pins, ...(good === undefined ? {} : { good }) });

  async function looked() {
    if (!pinOf(at)) return;
    const why = await ask(say("looked-title", at), say("looked-how"), "");
    if (why !== null) await done("opinion", { scoring: shot.scoring, pin: at, verdict: "acceptable", reason: why });
  }

  function takeBack() {
    const pin = pinOf(at);
    if (pin && (pin.opinion || pin.bench)) return done("back", { scoring: shot.scoring, pin: at, opinion: !pin.bench });
  }

  const heated = () => pinOf(at) && note("heat", pinOf(at).with || say("iron"), [at]);

  function ask(title, label, text) {
    by("asker-title").textContent = title;
    by("asker-words").textContent = label;
    by("asker-text").value = text;
    const dialog = by("asker");
    dialog.returnValue = "";
    dialog.showModal();
    by("asker-text").select();
    return new Promise((resolve) =>
      dialog.addEventListener("close", () => resolve(dialog.returnValue === "ok" ? by("asker-text").value : null), { once: true }),
    );
  }

  async function noted(kind, title, good) {
    const text = await ask(title, say("words-" + kind), "");
    if (text !== null) await note(kind, text, [], good);
  }

  // --- the chooser ----------------------------------------------------------------------------

  function choose() {
    by("jobs").replaceChildren(...[...new Set(state.boards.map((b) => b.job))].map((job) => Object.assign(document.createElement("option"), { value: job })));
    by("c-preset").replaceChildren(...["", ...state.presets].map((word) => Object.assign(document.createElement("option"), { value: word, textContent: word || say("as-started") })));
    by("c-preset").value = state.preset;
    by("l-preset").hidden = state.presets.length === 0;
    if (state.subject) {
      by("c-job").value = state.subject.job;
      by("c-board").value = state.subject.board;
      by("c-stage").value = state.subject.stage;
      by("c-attempt").value = state.subject.attempt;
      by("c-port").value = state.subject.port ?? "";
    }
    for (const field of ["complaint", "serial", "part"]) by("c-" + field).value = "";
    by("chooser").returnValue = "";
    by("chooser").showModal();
  }

  /** The board of a job that has one. */
  function boardOf() {
    const boards = state.boards.filter((b) => b.job === by("c-job").value.trim());
    if (boards.length === 1) by("c-board").value = boards[0].board;
  }

  async function chosen() {
    if (by("chooser").returnValue !== "ok") return;
    const body = { job: by("c-job").value, board: by("c-board").value, stage: by("c-stage").value, attempt: Number(by("c-attempt").value), port: by("c-port").value };
    if (!(await post("subject", body))) return;
    if (state.presets.length) await post("preset", { word: by("c-preset").value });
    for (const field of ["complaint", "serial", "part"]) {
      if (by("c-" + field).value.trim()) await post("note", pressed({ kind: field, words: by("c-" + field).value, pins: [] }));
    }
    shot = null;
    pushed("");
    showShot(false);
    await refresh(0);
    showShot(false);
  }

  // --- the camera -----------------------------------------------------------------------------

  async function camera() {
    if (seeking || stream) return;
    seeking = true;
    try {
      stream = await navigator.mediaDevices.getUserMedia({ video: { width: { ideal: 4096 }, height: { ideal: 2160 }, resizeMode: "none" }, audio: false });
      stream.getVideoTracks()[0].addEventListener("ended", lost);
      by("video").srcObject = stream;
      await by("video").play();
      by("camera").hidden = true;
      gone("lost-camera", false);
    } catch (e) {
      lost();
    }
    seeking = false;
  }

  function lost() {
    stream?.getTracks().forEach((track) => track.stop());
    stream = null;
    by("camera").hidden = false;
    gone("lost-camera", true);
  }

  /** A camera that was plugged in again, or let go by another tab, is taken without a key. */
  async function seek() {
    if (!state?.camera || stream || document.hidden) return;
    const devices = await navigator.mediaDevices.enumerateDevices();
    if (devices.some((device) => device.kind === "videoinput")) await camera();
  }

  function picture() {
    const video = by("video");
    if (!stream || !video.videoWidth) return Promise.resolve(null);
    const canvas = document.createElement("canvas");
    canvas.width = video.videoWidth;
    canvas.height = video.videoHeight;
    canvas.getContext("2d").drawImage(video, 0, 0);
    return new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", 0.95));
  }

  function fitness(glance) {
    const set = (id, yes, text) => {
      by(id).className = yes ? "yes" : "no";
      by(id).textContent = text;
    };
    set("fit-row", glance.row, glance.leads ? say("fit.leads", glance.leads) : say(glance.row ? "fit.row" : "fit.no-row"));
    set("fit-near", glance.near, say(glance.near ? "fit.near" : "fit.far"));
    set("fit-sharp", glance.sharp, say(glance.sharp ? "fit.sharp" : "fit.soft"));
    by("hint").textContent = glance.hints?.[0] ?? "";
  }

  async function look() {
    if (!state?.hasRow || !live || glancing || document.hidden) return;
    glancing = true;
    try {
      if (state.camera) {
        const frame = await picture();
        const answer = frame && (await fetch("glance", { method: "POST", body: frame, headers: { "Content-Type": "image/jpeg" } }));
        if (answer?.ok) fitness(camel(await answer.json()));
      } else {
        const newest = await get("newest");
        if (newest.stamp && newest.stamp !== stamp) {
          stamp = newest.stamp;
          by("newest").src = "newest.jpg?" + encodeURIComponent(stamp);
          by("newest").hidden = false;
          fitness(newest.glance);
        }
      }
    } catch {
      // The next look tells; a lost server is said by what is asked for.
    }
    glancing = false;
  }

  async function take() {
    if (by("take").disabled) return;
    by("take").disabled = true;
    pushed("");
    by("hint").textContent = say("scoring");
    const frame = state.camera ? await picture() : new Blob([]);
    const taken = frame ? await post("take", frame, "image/jpeg") : null;
    if (!frame) lost();
    by("hint").textContent = "";
    by("take").disabled = false;
    if (taken) {
      at = 0;
      await refresh(taken.scoring);
    }
  }

  /** What a pushed lead did, below the picture of it. */
  function pushed(text) {
    by("pushed").textContent = text;
    by("pushed").hidden = !text;
  }

  async function push() {
    if (!shot) return;
    pushed("");
    const frame = await picture();
    if (!frame) return lost();
    const lines = await post(`nudge/${shot.scoring}`, frame, "image/jpeg");
    if (lines) {
      pushed(lines.join(" "));
      await refresh(0);
    }
  }

  function press(id, act) {
    by(id).addEventListener("click", () => {
      by(id).setAttribute("aria-pressed", by(id).getAttribute("aria-pressed") !== "true");
      act();
    });
  }

  const click = (id) => () => !by(id).hidden && !by(id).disabled && by(id).click();
  const KEYS = {
    " ": click("take"), PageDown: click("take"), Enter: click("take"), ArrowRight: () => move(1), ArrowLeft: () => move(-1),
    1: click("b-firm"), 2: click("b-moves"), 3: click("b-ok"), 4: click("b-short"), 5: click("b-open"), 6: click("b-heat"), 7: click("b-look"),
    z: click("b-back"), l: click("live"), t: click("turn"), a: click("all"), n: click("push"), j: click("job"),
  };

  document.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey || event.repeat) return;
    if (event.target.closest("dialog, input, select")) return;
    if (event.target.closest("button, a, summary") && [" ", "Enter"].includes(event.key)) return;
    const act = KEYS[event.key] ?? KEYS[event.key.toLowerCase()];
    if (act) {
      event.preventDefault();
      act();
    }
  });

  async function start() {
    words = await (await fetch("words")).json();
    document.querySelectorAll("#tests [data-test]").forEach((button) => button.addEventListener("click", () => said(button)));
    const clicks = {
      "b-heat": heated, "b-look": looked, "b-back": takeBack, previous: () => move(-1), next: () => move(1), take, push, camera, job: choose,
      live: () => showShot(false), "b-pass": () => noted("function-test", say("test-pass"), true), "b-fail": () => noted("function-test", say("test-fail"), false),
      "b-looked-all": () => noted("looked", say("looked-all")), "b-yes": () => noted("hand-back", say("hand-back"), true), "b-no": () => noted("hand-back", say("not-back"), false),
      "c-no": () => by("chooser").close(""), "asker-no": () => by("asker").close(""),
    };
    Object.entries(clicks).forEach(([id, act]) => by(id).addEventListener("click", act));
    press("turn", draw);
    press("all", () => { if (!order().includes(at)) at = order()[0] ?? 0; step(); });
    by("chooser").addEventListener("close", chosen);
    by("c-job").addEventListener("change", boardOf);
    await refresh(0);
    showShot(false);
    if (state.camera) await camera();
    navigator.mediaDevices?.addEventListener("devicechange", seek);
    setInterval(seek, 3000);
    setInterval(look, state.glanceMs);
    setInterval(() => refresh(), 2000);
    document.documentElement.classList.add("ready");
  }

  start();
})();
