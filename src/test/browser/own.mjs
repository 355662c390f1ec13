// Grades rows of one's own in headless Chromium by keyboard and prints what was told as JSON;
// OwnWorkTest says what must hold. Usage: node own.mjs CHROMIUM SHOTS_FOLDER (ADDRESS NAME KEYS)...
// KEYS: one key a pin, from the left.
import { chromium } from "playwright-core";

const [chromiumPath, shots, ...rows] = process.argv.slice(2);
const browser = await chromium.launch({ executablePath: chromiumPath, args: ["--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run"] });
const seen = {};

async function shot(page, name) {
  for (const width of [360, 1280]) {
    await page.setViewportSize({ width, height: 800 });
    await page.screenshot({ path: `${shots}/${name}-${width}.png`, fullPage: true });
  }
}

async function grade(address, name, keys) {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  await page.goto(address);
  await page.waitForSelector("#work:not([hidden])");
  await page.waitForLoadState("networkidle");
  const first = name === rows[1];
  const mine = { console: [], signsBefore: 0 };
  page.on("console", (m) => m.type() === "error" && mine.console.push(m.text()));
  for (const [at, key] of [...keys].entries()) {
    const before = await page.locator("#question").innerText();
    await page.keyboard.press(key);
    if (at + 1 < keys.length) {
      await page.waitForFunction((b) => document.getElementById("question").innerText !== b, before);
    } else {
      await page.waitForFunction(() => document.activeElement.id === "give");
    }
    if (at === 5 && first) await shot(page, `${name}-asked`);
  }
  mine.signsBefore = await page.locator("#pins .sign").count();
  await page.keyboard.press("Enter");
  await page.waitForSelector("#told:not([hidden])");
  mine.signsAfter = await page.locator("#pins .sign").count();
  mine.lookAgain = await page.locator("#overview button").allInnerTexts();
  mine.headline = await page.locator("#headline").innerText();
  await shot(page, `${name}-told`);
  await page.keyboard.press("Enter");
  await page.waitForSelector("#result:not([hidden])");
  mine.figures = (await page.locator("#figures").innerText()).split("\n");
  if (first) await shot(page, `${name}-result`);
  await page.locator("#leave").click();
  await page.waitForSelector("#bye:not([hidden])");
  await page.close();
  seen[name] = mine;
}

for (let i = 0; i < rows.length; i += 3) {
  await grade(rows[i], rows[i + 1], rows[i + 2]);
}
await browser.close();
console.log(JSON.stringify(seen));
