// What axe-core has against a page, in bright and in dark; used by the scripts beside it.
import { readFileSync } from "node:fs";

const axe = readFileSync(new URL("node_modules/axe-core/axe.min.js", import.meta.url), "utf8");

/** Another scheme changes colours alone: these are axe's rules that read them. */
const OF_COLOURS = { type: "rule", values: ["color-contrast", "link-in-text-block"] };

/**
 * A line for each fault. The page's context must lift the page's own policy (bypassCSP), which
 * forbids to put axe into it.
 */
export async function faults(page) {
  const found = [];
  await page.emulateMedia({ colorScheme: "light" });
  await page.evaluate(axe);
  for (const [scheme, options] of [["light", {}], ["dark", { runOnly: OF_COLOURS }]]) {
    await page.emulateMedia({ colorScheme: scheme });
    const result = await page.evaluate((o) => window.axe.run(o), { ...options, resultTypes: ["violations"] });
    found.push(...result.violations.map((v) => `${scheme} ${v.impact} ${v.id}: ${v.nodes[0].html.slice(0, 120)}`));
  }
  return found;
}
