/**
 * The ten most used pages on a slow phone, each from an empty cache: how much script and how many bytes come first, when the
 * largest thing is drawn, how much jumps, and how long a touch takes to be seen, by the browser's own entries.
 * The server and its database come from the environment (`npm run bench -- vitals`).
 */
import { chromium, type BrowserContext, type Page } from "playwright";
import { ensureChromium } from "../../lib/ops/chromium.mjs";
import { DEMO_PASSWORD, DEMO_PEOPLE } from "../../seed-demo/people";
import { findDemoRecords } from "../e2e/support/club-addresses";
import { mostUsedPages } from "../e2e/support/most-used";

/** A phone of the middle class on a slow mobile network, as browsers' own audits assume it. */
const SLOW = {
  offline: false,
  latency: 150,
  downloadThroughput: (1.6e6 / 8) * 0.9,
  uploadThroughput: (750e3 / 8) * 0.9,
};
const SLOWER_PROCESSOR = 4;

interface Vitals {
  readonly largestMs: number;
  readonly shift: number;
  readonly touchMs: number;
}

async function throttle(context: BrowserContext, page: Page): Promise<void> {
  const session = await context.newCDPSession(page);
  await session.send("Network.enable");
  await session.send("Network.setCacheDisabled", { cacheDisabled: true });
  await session.send("Network.emulateNetworkConditions", SLOW);
  await session.send("Emulation.setCPUThrottlingRate", { rate: SLOWER_PROCESSOR });
}

/** In the page: collects the browser's own entries from the first moment on. It has no function with a name of its own. */
function observe(): void {
  const seen = { largestMs: 0, shift: 0, touchMs: 0 };
  Object.assign(globalThis, { gylebookVitals: seen });
  for (const type of ["largest-contentful-paint", "layout-shift", "event"]) {
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) {
        if (type === "event") seen.touchMs = Math.max(seen.touchMs, entry.duration);
        else if (type === "layout-shift") seen.shift += (entry as PerformanceEntry & { value?: number }).value ?? 0;
        else seen.largestMs = entry.startTime;
      }
    }).observe({ type, buffered: true, ...(type === "event" ? { durationThreshold: 16 } : {}) });
  }
}

async function measure(
  page: Page,
  address: string,
): Promise<Vitals & { readonly script: number; readonly all: number }> {
  const sizes: Promise<readonly [isScript: boolean, bytes: number]>[] = [];
  const count = (response: Awaited<ReturnType<Page["waitForResponse"]>>): void => {
    const isScript = /\.js(\?|$)/.test(response.url());
    sizes.push(
      response
        .request()
        .sizes()
        .then(({ responseBodySize }) => [isScript, responseBodySize] as const)
        .catch(() => [isScript, 0] as const),
    );
  };
  page.on("response", count);
  await page.goto(address, { waitUntil: "load", timeout: 90_000 });
  await page.waitForLoadState("networkidle");
  page.off("response", count);
  // Five touches of the heading, which every page has: what the page does at a touch that is meant for nothing.
  for (let i = 0; i < 5; i += 1) await page.getByRole("heading", { level: 1 }).click();
  await page.waitForTimeout(300);
  const seen = await page.evaluate(() => (globalThis as unknown as { gylebookVitals: Vitals }).gylebookVitals);
  const all = await Promise.all(sizes);
  const sum = (of: typeof all): number => of.reduce((total, [, bytes]) => total + bytes, 0);
  return { ...seen, script: sum(all.filter(([isScript]) => isScript)), all: sum(all) };
}

const origin = process.env["APP_ORIGIN"] ?? "http://localhost:3000";
const browser = await chromium.launch({
  executablePath: await ensureChromium(),
  args: ["--no-sandbox", "--disable-gpu"],
});
const context = await browser.newContext({ baseURL: origin, viewport: { width: 390, height: 844 }, locale: "en-GB" });
const page = await context.newPage();
const [organiser] = DEMO_PEOPLE;
await page.goto("/sign-in");
await page.getByLabel("E-mail address").fill(organiser?.email ?? "");
await page.getByLabel("Password").fill(DEMO_PASSWORD);
await page.getByRole("button", { name: "Sign in" }).click();
await page.getByRole("link", { name: "Account of" }).waitFor();
const pages = mostUsedPages(await findDemoRecords(page));
// Once without a brake, so that the server has made each page before.
for (const path of Object.values(pages)) await page.goto(path);
await page.addInitScript(observe);
await throttle(context, page);
console.log(
  "| page | script, kB | all, kB | largest drawn, ms | jumps | touch seen, ms |\n| --- | --- | --- | --- | --- | --- |",
);
for (const [name, path] of Object.entries(pages)) {
  const { script, all, largestMs, shift, touchMs } = await measure(page, path);
  const figures = [
    (script / 1000).toFixed(0),
    (all / 1000).toFixed(0),
    largestMs.toFixed(0),
    shift.toFixed(3),
    touchMs.toFixed(0),
  ];
  console.log(`| ${[name, ...figures].join(" | ")} |`);
}
await browser.close();
