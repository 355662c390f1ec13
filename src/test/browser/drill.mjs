// Takes a drill in headless Chromium by keyboard and prints what it saw as JSON; DrillBrowserTest
// says what must hold. Usage: node drill.mjs CHROMIUM SHOTS_FOLDER ADDRESS KEYS
// KEYS: one key a joint, in the order in which they are asked.
import { request } from "node:http";
import { chromium } from "playwright-core";
import { faults as faultsOf } from "./faults.mjs";

const [chromiumPath, shots, address, keys] = process.argv.slice(2);
const browser = await chromium.launch({
  executablePath: chromiumPath,
  args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync"],
});
const seen = { console: [], requests: [], axe: [], overflow: {}, small: [], told: [], early: [] };
const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });

async function tab() {
  const page = await context.newPage();
  page.on("console", (m) => m.type() === "error" && seen.console.push(m.text()));
  page.on("pageerror", (e) => seen.console.push(e.message));
  page.on("request", (r) => r.url().startsWith(address) || seen.requests.push(r.url()));
  await page.goto(address);
  await page.waitForSelector("#work:not([hidden]), #result:not([hidden])");
  await page.waitForLoadState("networkidle");
  return page;
}

async function shot(page, name) {
  for (const width of [360, 1280, 3840]) {
    await page.setViewportSize({ width, height: { 360: 740, 1280: 800, 3840: 2160 }[width] });
    const over = await page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
    seen.overflow[`${name}-${width}`] = over;
    seen.small.push(...(await page.evaluate(() => [...document.querySelectorAll("button")].filter((b) => b.checkVisibility() && (b.getBoundingClientRect().height < 47.5 || b.getBoundingClientRect().width < 47.5)).map((b) => b.outerHTML.slice(0, 80)))));
    if (width < 3840 || name === "told-3") await page.screenshot({ path: `${shots}/${name}-${width}.png`, fullPage: true });
  }
  await page.setViewportSize({ width: 1280, height: 800 });
}

/** In a page of its own, where the policy is lifted; its dark look is kept to be looked at. */
async function faults(name) {
  const lifted = await browser.newContext({ bypassCSP: true, viewport: { width: 1280, height: 800 } });
  const copy = await lifted.newPage();
  await copy.goto(address);
  await copy.waitForSelector("#work:not([hidden]), #result:not([hidden])");
  seen.axe.push(...(await faultsOf(copy)));
  await copy.screenshot({ path: `${shots}/${name}-dark.png`, fullPage: true });
  if (name === "result") {
    await copy.locator("#specimens button").first().click();
    await copy.waitForSelector("#told:not([hidden])");
    seen.axe.push(...(await faultsOf(copy)));
    await copy.screenshot({ path: `${shots}/told-dark.png`, fullPage: true });
  }
  await lifted.close();
}

const text = (page, id) => page.locator("#" + id).innerText();
const pressed = (page) => page.evaluate(() => document.querySelector("#choices [aria-pressed=true]")?.dataset.key ?? "");

/** Status of a request that no page of ours sends. */
function status(path, headers = {}, method = "GET", body = "") {
  const url = new URL(path, address);
  return new Promise((resolve, reject) => {
    const sent = request({ host: url.hostname, port: url.port, path: url.pathname, method, headers }, (answer) => {
      answer.resume();
      resolve(answer.statusCode);
    });
    sent.on("error", reject);
    sent.end(body);
  });
}

async function refused() {
  const origin = new URL(address).origin;
  const host = new URL(address).host;
  const body = JSON.stringify({ specimen: 1, pin: 1, verdict: "acceptable", took_ms: 1 });
  const wrong = address.slice(0, -2) + (address.at(-2) === "A" ? "B" : "A") + "/";
  return {
    right: await status("state"),
    wrongToken: await status(wrong),
    noToken: await status("/"),
    foreignHost: await status("state", { Host: "example.test:" + new URL(address).port }),
    foreignOrigin: await status("state", { Host: host, Origin: "http://example.test" }),
    foreignPage: await status("state", { Host: host, "Sec-Fetch-Site": "cross-site" }),
    postWithoutOrigin: await status("answer", {}, "POST", body),
    postFromElsewhere: await status("answer", { Origin: "http://example.test" }, "POST", body),
    postBadWords: await status("answer", { Origin: origin }, "POST", "{\"specimen\":1}"),
    climbing: await status(new URL(address).pathname + "picture/..%2f..%2fpractice-set.json"),
    unknownFile: await status("practice-set.json"),
    resultTooEarly: await status("result"),
  };
}

async function answer(page, key) {
  await page.keyboard.press(key);
  await page.waitForFunction(() => document.activeElement.id === "give");
}

async function giveAndGoOn(page) {
  await page.keyboard.press("Enter");
  await page.waitForSelector("#told:not([hidden])");
  seen.told.push(await text(page, "headline"));
  await page.keyboard.press("Enter");
  await page.waitForSelector("#ask:not([hidden]), #result:not([hidden])");
}

let page = await tab();
seen.policy = (await (await fetch(address)).headers).get("content-security-policy");
seen.refused = await refused();
await faults("ask");
const order = [...keys];
for (const [number, key] of order.entries()) {
  const early = await page.evaluate(async (n) => JSON.stringify(await (await fetch("specimen/" + n)).json()), number + 1);
  seen.early.push(/truth|tool|known|"told"/.test(early));
  if (number === 2) await shot(page, "ask");
  await answer(page, key);
  if (number === 8) {
    // The tab is closed between the verdict and giving it, and the address opened again.
    await page.close();
    page = await tab();
    seen.resumedAt = await text(page, "count");
    seen.keptKey = await pressed(page);
    await answer(page, key);
  }
  if (number === 3 || number === 5) {
    await page.keyboard.press("Enter");
    await page.waitForSelector("#told:not([hidden])");
    await page.waitForLoadState("networkidle");
    await shot(page, "told-" + number);
    seen.told.push(await text(page, "headline"));
    await page.keyboard.press("+");
    seen.zoomed = await page.evaluate(() => document.getElementById("frame").scrollWidth > document.getElementById("frame").clientWidth);
    await page.keyboard.press("0");
    await page.keyboard.press("Enter");
    await page.waitForSelector("#ask:not([hidden])");
  } else {
    await giveAndGoOn(page);
  }
}
await page.waitForSelector("#result:not([hidden])");
seen.result = await text(page, "result-title");
seen.figures = await text(page, "figures");
seen.afterwards = await page.evaluate(async () => (await fetch("close", { method: "POST", body: '{"specimen":1}' })).status);
seen.changed = await page.evaluate(
  async () => (await fetch("answer", { method: "POST", body: JSON.stringify({ specimen: 1, pin: (await (await fetch("specimen/1")).json()).spots[0].pin, verdict: "unjudged", took_ms: 1 }) })).status,
);
await shot(page, "result");
await faults("result");
await page.locator("#leave").click();
await page.waitForSelector("#bye:not([hidden])");
await browser.close();
console.log(JSON.stringify(seen));
