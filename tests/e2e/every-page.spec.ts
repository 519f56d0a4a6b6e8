import type { Page } from "playwright/test";
import { EVERY_PAGE } from "./support/every-page";
import { watchForTrouble } from "./support/trouble";
import { expect, test } from "./support/test";

const PHONE_WIDTHS = [390, 320];

for (const { name, open } of EVERY_PAGE) {
  test(`${name} keeps within a phone, has a title and a heading, and nothing fails behind it`, async ({ page }) => {
    await page.setViewportSize({ width: PHONE_WIDTHS[0] ?? 390, height: 844 });
    await open(page);
    const trouble = watchForTrouble(page);
    await page.reload();
    await expect(page.getByRole("heading", { level: 1 })).toHaveCount(1);
    await expect(page).toHaveTitle(/Gylebook|Hollowmere/);
    for (const width of PHONE_WIDTHS) {
      await page.setViewportSize({ width, height: 844 });
      expect(await outside(page), `${String(width)} px`).toEqual([]);
    }
    // A page in the background may never be called idle, so the wait has an end.
    await page.evaluate(() => new Promise((settled) => requestIdleCallback(settled, { timeout: 2000 })));
    expect(trouble).toEqual([]);
  });
}

/** What sticks out of the page to the right, unless it lies in a box that scrolls by itself. */
function outside(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const { clientWidth, scrollWidth } = document.documentElement;
    if (scrollWidth <= clientWidth) return [];
    return [...document.querySelectorAll("body *")]
      .filter((element) => element.getBoundingClientRect().right > clientWidth + 1)
      .map((element) => `${element.tagName} ${element.getAttribute("class") ?? ""} ${element.textContent.slice(0, 40)}`)
      .slice(-5);
  });
}
