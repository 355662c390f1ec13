// Plays a day at the bench in headless Chromium with a fake camera and prints what it saw as JSON;
// BenchDayTest says what must hold. Everything is done by keyboard, as with a foot switch and gloves.
// Usage: node bench.mjs CHROMIUM SHOTS_FOLDER ADDRESS PLAN.json
import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { faults as faultsOf } from "./faults.mjs";

const [chromiumPath, shots, address, planFile] = process.argv.slice(2);
const plan = JSON.parse(readFileSync(planFile, "utf8"));
const seen = { console: [], requests: [], axe: [], overflow: {}, refused: [], inSight: [], taken: [], pushed: [], words: [], small: [], cut: [], tabs: [], camera: [] };
const args = ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync", "--use-fake-ui-for-media-stream", "--use-fake-device-for-media-stream"];

async function open(picture, options = {}) {
  const browser = await chromium.launch({ executablePath: chromiumPath, args: [...args, `--use-file-for-fake-video-capture=${picture}`] });
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 }, permissions: ["camera"], ...options });
  const page = await context.newPage();
  page.on("console", (m) => m.type() === "error" && seen.console.push(m.text()));
  page.on("pageerror", (e) => seen.console.push(e.message));
  page.on("request", (r) => r.url().startsWith(address) || r.url().startsWith("data:") || seen.requests.push(r.url()));
  await page.goto(address);
  await page.waitForSelector("html.ready");
  return { browser, page };
}

const changes = (page) => page.evaluate(() => Number(document.body.dataset.changes));

async function changed(page, act) {
  const before = await changes(page);
  await act();
  await page.waitForFunction((n) => Number(document.body.dataset.changes) > n, before);
}

async function choose(page, job) {
  await page.keyboard.press("j");
  await page.waitForSelector("#chooser[open]");
  await page.locator("#c-job").fill(job.job);
  await page.locator("#c-stage").selectOption(job.stage);
  await page.locator("#c-attempt").fill(String(job.attempt ?? 1));
  await page.locator("#c-preset").selectOption(job.preset);
  if (job.complaint) await page.locator("#c-complaint").fill(job.complaint);
  if (job.serial) await page.locator("#c-serial").fill(job.serial);
  if (job.part) await page.locator("#c-part").fill(job.part);
  await changed(page, () => page.locator("#c-part").press("Enter"));
  await page.waitForFunction((name) => document.getElementById("job").textContent.startsWith(name), job.job);
  await page.evaluate(() => document.activeElement.blur());
}

async function at(page, pin) {
  if ((await page.locator("#all").getAttribute("aria-pressed")) !== "true") await page.keyboard.press("a");
  for (let i = 0; i < 60; i++) {
    if ((await page.locator("#step").getAttribute("data-pin")) === String(pin)) return;
    await page.keyboard.press("ArrowRight");
  }
  throw new Error("pin " + pin + " is not reached by the arrow keys");
}

async function asked(page, key, text) {
  await page.keyboard.press(key);
  await page.waitForSelector("#asker[open]");
  if (text !== undefined) await page.locator("#asker-text").fill(String(text));
  await page.keyboard.press("Enter");
}

async function button(page, id, text) {
  await page.locator("#" + id).focus();
  await page.keyboard.press("Enter");
  await page.waitForSelector("#asker[open]");
  await page.locator("#asker-text").fill(text);
  await page.keyboard.press("Enter");
}

const inSight = (page, id) =>
  page.evaluate((what) => {
    const box = document.getElementById(what).getBoundingClientRect();
    return box.height > 0 && box.top >= 0 && box.bottom <= innerHeight;
  }, id);

const KEYS = { firm: "1", moves: "2", ok: "3", open: "5", heat: "6", back: "z" };

const ACTS = {
  async take(page, name) {
    await page.waitForFunction(() => document.getElementById("video").videoWidth > 0);
    await page.waitForFunction(() => document.querySelector("#fit li.yes, #fit li.no"), null, { timeout: 20000 });
    seen.words.push(await page.locator("#fit").innerText());
    if (name) await shot(page, name + "-live");
    await changed(page, () => page.keyboard.press(" "));
    await page.waitForSelector("#shot:not([hidden])");
    seen.taken.push({ scoring: Number(await page.locator("#verdict").getAttribute("data-scoring")), word: await page.locator("#verdict-word").innerText() });
    if (name) {
      await shot(page, name);
      await page.keyboard.press("t");
      await shot(page, name + "-turned");
      await page.keyboard.press("t");
    }
  },
  /** One key twice at once, and in a second tab, too; then what both tabs show. */
  async twice(page, key, pin) {
    const tab = await page.context().newPage();
    await tab.goto(address);
    await tab.waitForSelector("html.ready");
    await tab.locator("#last button").first().click();
    await at(tab, pin);
    await page.bringToFront();
    await at(page, pin);
    await changed(page, () => Promise.all([page.keyboard.press(key).then(() => page.keyboard.press(key)), tab.keyboard.press(key)]));
    const now = await changes(page);
    await tab.waitForFunction((n) => Number(document.body.dataset.changes) >= n, now);
    const shown = (p) => p.evaluate(() => ["job", "stage", "facts", "points", "verdict-word", "step-verdict", "step-said"].map((id) => document.getElementById(id).textContent));
    seen.tabs.push([await shown(page), await shown(tab)]);
    await tab.close();
  },
  /** The camera's plug is drawn and put in again. */
  async lost(page) {
    await page.evaluate(() => {
      navigator.mediaDevices.enumerateDevices = async () => [];
      const track = document.getElementById("video").srcObject.getVideoTracks()[0];
      track.stop();
      track.dispatchEvent(new Event("ended"));
    });
    seen.camera.push(await page.locator("#trouble").innerText(), await page.locator("#camera").isVisible());
    await shot(page, "lost");
    await page.evaluate(() => {
      delete navigator.mediaDevices.enumerateDevices;
      navigator.mediaDevices.dispatchEvent(new Event("devicechange"));
    });
    await page.waitForFunction(() => document.getElementById("trouble").hidden && document.getElementById("video").srcObject.active);
    seen.camera.push(await page.locator("#camera").isVisible());
  },
  async short(page, pin, other) {
    await at(page, pin);
    await changed(page, () => asked(page, "4", other));
  },
  async seen(page, pin, how) {
    await at(page, pin);
    await changed(page, () => asked(page, "7", how));
  },
  async yes(page, words) {
    await changed(page, () => button(page, "b-yes", words));
  },
  async refused(page, words) {
    await button(page, "b-yes", words);
    await page.waitForSelector("#trouble:not([hidden])");
    seen.refused.push(await page.locator("#trouble").innerText());
    seen.inSight.push(await inSight(page, "trouble"));
    await shot(page, "refused");
  },
  async no(page, words) {
    await changed(page, () => button(page, "b-no", words));
  },
  async pass(page, words) {
    await changed(page, () => button(page, "b-pass", words));
  },
  async looked(page, words) {
    await changed(page, () => button(page, "b-looked-all", words));
  },
  async push(page) {
    await page.waitForFunction(() => document.getElementById("video").videoWidth > 0);
    await page.locator("#nudge summary").click();
    await page.evaluate(() => document.activeElement.blur());
    await page.keyboard.press("n");
    await page.waitForFunction(() => document.getElementById("pushed").textContent !== "", null, { timeout: 30000 });
    seen.pushed.push(await page.locator("#pushed").innerText());
    seen.inSight.push(await inSight(page, "pushed"));
    await shot(page, "pushed");
  },
};

async function shot(page, name) {
  const size = page.viewportSize();
  for (const [width, height] of [[360, 740], [1280, 800], [3840, 2160]]) {
    await page.setViewportSize({ width, height });
    seen.overflow[`${name}-${width}`] = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    seen.cut.push(...(await page.evaluate(() => [...document.querySelectorAll("button, summary, a")].filter((e) => e.checkVisibility() && e.scrollWidth > e.clientWidth).map((e) => e.id || e.textContent))));
    if (width < 3840 || name === "first") await page.screenshot({ path: `${shots}/${name}-${width}.png`, fullPage: width === 360 });
  }
  await page.setViewportSize(size);
  seen.small.push(...(await page.evaluate(() => [...document.querySelectorAll("button, select, input, summary, a")].filter((e) => e.checkVisibility() && (e.getBoundingClientRect().height < 47.5 || e.getBoundingClientRect().width < 47.5)).map((e) => e.id || e.outerHTML.slice(0, 60)))));
}

async function faults() {
  const { browser, page } = await open(plan.picture, { bypassCSP: true });
  if (plan.steps.length === 0) await choose(page, plan.board);
  await page.locator("#last button").first().click();
  await page.waitForSelector("#step:not([hidden])");
  seen.axe.push(...(await faultsOf(page)));
  for (const colorScheme of ["dark", "light"]) {
    await page.emulateMedia({ colorScheme });
    await page.screenshot({ path: `${shots}/${plan.language}-${colorScheme}.png` });
  }
  await shot(page, plan.language);
  await page.keyboard.press("j");
  await page.waitForSelector("#chooser[open]");
  seen.axe.push(...(await faultsOf(page)));
  await shot(page, "chooser-" + plan.language);
  await browser.close();
}

for (const step of plan.steps) {
  const { browser, page } = await open(step.picture);
  await choose(page, step);
  for (const [act, ...given] of step.acts) {
    if (ACTS[act]) await ACTS[act](page, ...given);
    else {
      await at(page, given[0]);
      await changed(page, () => page.keyboard.press(KEYS[act]));
    }
  }
  await browser.close();
}
await faults();
console.log(JSON.stringify(seen));
