// Opens pages in headless Chromium and prints what it saw as JSON; BrowserTest says what must hold.
// Usage: node check.mjs CHROMIUM SHOTS_FOLDER PAGE.html...
import { basename } from "node:path";
import { pathToFileURL } from "node:url";
import { chromium } from "playwright-core";
import { faults } from "./faults.mjs";

const [chromiumPath, shots, ...pages] = process.argv.slice(2);
const VISIONS = ["none", "achromatopsia", "protanopia", "deuteranopia", "tritanopia"];
/** Pages that are looked at together: one for each core of a small machine. */
const AT_ONCE = 2;
const browser = await chromium.launch({
  executablePath: chromiumPath,
  args: [
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
  ],
});

async function opened(file, options = {}) {
  const context = await browser.newContext({ viewport: { width: 1280, height: 900 }, ...options });
  const page = await context.newPage();
  const seen = { console: [], requests: [] };
  page.on("console", (m) => m.type() === "error" && seen.console.push(m.text()));
  page.on("pageerror", (e) => seen.console.push(e.message));
  page.on("request", (r) => {
    if (!r.url().startsWith("data:") && r.url() !== String(pathToFileURL(file))) {
      seen.requests.push(r.url());
    }
  });
  await page.goto(String(pathToFileURL(file)));
  return { context, page, seen };
}

const selected = (page) =>
  page.evaluate(() => ({
    pin: document.querySelector(".tab[aria-selected=true]")?.id ?? "",
    focused: document.activeElement?.id ?? "",
    shown: [...document.querySelectorAll(".pin")].filter((p) => p.checkVisibility()).map((p) => p.id),
  }));

/** Tab to the row, then walk it with the arrow keys from end to end. */
async function walk(page) {
  const pins = await page.locator(".tab").count();
  if (pins === 0) return [];
  for (let i = 0; i < 20; i++) {
    await page.keyboard.press("Tab");
    if ((await selected(page)).focused.startsWith("tab-")) break;
  }
  await page.keyboard.press("Home");
  const visited = [];
  for (let i = 0; i < pins; i++) {
    visited.push(await selected(page));
    await page.keyboard.press("ArrowRight");
  }
  return visited;
}

async function marks(page) {
  const visible = () =>
    page.evaluate(() =>
      [...document.querySelectorAll(".tab .sign, .tab .edge, .ties")].some((e) =>
        e.checkVisibility({ visibilityProperty: true }),
      ),
    );
  const before = await visible();
  await page.keyboard.press("m");
  const off = await visible();
  await page.keyboard.press("m");
  return { before, off, after: await visible() };
}

const plots = (page) =>
  page.evaluate(() => {
    document.documentElement.classList.remove("js");
    const boxes = [...document.querySelectorAll(".plot .own")].map((line) => {
      const box = line.getBoundingClientRect();
      return { width: box.width, height: box.height, points: line.points.length };
    });
    document.documentElement.classList.add("js");
    return boxes;
  });

/** Grey picture of each sign, as the browser draws it under a simulated kind of vision. */
async function signs(page, vision) {
  const session = await page.context().newCDPSession(page);
  await session.send("Emulation.setEmulatedVisionDeficiency", { type: vision });
  const pictures = {};
  for (const verdict of ["acceptable", "process-indicator", "unjudged", "defect"]) {
    const sign = page.locator(`.tab.${verdict} .sign`).first();
    if ((await sign.count()) === 0) continue;
    const shot = (await sign.screenshot()).toString("base64");
    pictures[verdict] = await page.evaluate(greyPixels, shot);
  }
  await session.send("Emulation.setEmulatedVisionDeficiency", { type: "none" });
  return pictures;
}

async function greyPixels(shot) {
  const bytes = Uint8Array.from(atob(shot), (c) => c.charCodeAt(0));
  const image = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
  const canvas = new OffscreenCanvas(24, 24);
  const pen = canvas.getContext("2d");
  pen.drawImage(image, 0, 0, 24, 24);
  const data = pen.getImageData(0, 0, 24, 24).data;
  const grey = [];
  for (let i = 0; i < data.length; i += 4) {
    grey.push(Math.round(0.2126 * data[i] + 0.7152 * data[i + 1] + 0.0722 * data[i + 2]));
  }
  return grey;
}

const overflow = (page) =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

async function access(file) {
  const { context, page } = await opened(file, { bypassCSP: true });
  const found = await faults(page);
  await page.screenshot({ path: `${shots}/${basename(file)}-dark.png` });
  await context.close();
  return found;
}

async function check(file) {
  const { context, page, seen } = await opened(file);
  const result = {
    walk: await walk(page),
    marks: await marks(page),
    plots: await plots(page),
    signs: {},
    hacked: await page.evaluate(() => window.hacked ?? null),
    scripts: await page.evaluate(() => document.scripts.length),
    axe: await access(file),
    overflow: {},
  };
  for (const vision of file === pages[0] ? VISIONS : []) {
    result.signs[vision] = await signs(page, vision);
  }
  // Of pages of one kind the first is enough to look at: the largest picture and print cost the most.
  const first = file === pages[0] || result.walk.length === 0;
  for (const width of [360, 1280, 3840]) {
    await page.setViewportSize({ width, height: width === 3840 ? 2160 : 900 });
    result.overflow[width] = await overflow(page);
    if (width < 3840 || first) {
      await page.screenshot({ path: `${shots}/${basename(file)}-${width}.png`, fullPage: true });
    }
  }
  await page.emulateMedia({ media: "print" });
  result.printed = await page.evaluate(
    () => [...document.querySelectorAll(".pin")].filter((p) => p.checkVisibility()).length,
  );
  if (first) await page.pdf({ path: `${shots}/${basename(file)}.pdf`, format: "A4" });
  result.console = seen.console;
  result.requests = seen.requests;
  await context.close();
  const plain = await opened(file, { javaScriptEnabled: false });
  result.withoutScript = await plain.page.locator(".pin:visible").count();
  await plain.context.close();
  return result;
}

const results = {};
const left = [...pages];
async function checkNext() {
  for (let file = left.shift(); file; file = left.shift()) results[basename(file)] = await check(file);
}
await Promise.all(Array.from({ length: AT_ONCE }, checkNext));
await browser.close();
console.log(JSON.stringify(results));
