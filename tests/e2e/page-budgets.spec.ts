import type { Page } from "playwright/test";
import { findDemoRecords } from "./support/club-addresses";
import { mostUsedPages } from "./support/most-used";
import { pageWeights } from "./support/page-weight";
import { expect, test } from "./support/test";

/** What a page may fetch of script before it is touched, kB of 1000 bytes, compressed. The framework takes 141 of it. */
const MOST_KB = 250;
/** Cumulative layout shift, of which the Web Vitals call 0.1 and less good. */
const MOST_SHIFT = 0.1;
/** Of its own site: the page, its style, its scripts and its icon. */
const MOST_REQUESTS = 40;

test("no page fetches more script than its budget before somebody touches it", () => {
  const weights = pageWeights();
  expect(weights.length).toBeGreaterThan(50);
  const over = weights.filter(({ bytes }) => bytes > MOST_KB * 1000);
  expect(over).toEqual([]);
});

test("the pages that a club opens most hold still while they load, and ask for few things", async ({ page }) => {
  const pages = mostUsedPages(await findDemoRecords(page));
  await page.setViewportSize({ width: 390, height: 844 });
  let requests = 0;
  page.on("request", (request) => {
    if (request.url().startsWith("http") && !request.url().includes("_rsc=")) requests += 1;
  });
  for (const [name, path] of Object.entries(pages)) {
    requests = 0;
    await page.goto(path, { waitUntil: "load" });
    await page.evaluate(() => new Promise((settled) => requestIdleCallback(settled, { timeout: 2000 })));
    expect(await shiftOf(page), `${name} jumps`).toBeLessThanOrEqual(MOST_SHIFT);
    expect(requests, `requests of ${name}`).toBeLessThanOrEqual(MOST_REQUESTS);
  }
});

/** How much of the page moved that nobody had touched; 0 is none. */
function shiftOf(page: Page): Promise<number> {
  return page.evaluate(
    () =>
      new Promise<number>((resolve) => {
        let sum = 0;
        const observer = new PerformanceObserver((list) => {
          for (const entry of list.getEntries()) sum += (entry as PerformanceEntry & { readonly value: number }).value;
        });
        observer.observe({ type: "layout-shift", buffered: true });
        // What was buffered is told before the next frame is drawn.
        requestAnimationFrame(() => requestAnimationFrame(() => resolve(sum)));
      }),
  );
}
