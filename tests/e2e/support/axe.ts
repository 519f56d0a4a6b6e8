import axe from "axe-core";
import type { Page } from "playwright/test";

const LEVELS = ["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22a", "wcag22aa"];

/**
 * What the page does wrong by WCAG 2.0, 2.1 and 2.2, levels A and AA, one line an element. The checker is evaluated by
 * the browser's own debugger, which a content policy does not bind, so the page is checked as people get it.
 */
export async function violations(page: Page): Promise<readonly string[]> {
  await page.evaluate(layOutEverything);
  await page.evaluate(axe.source);
  const found = await page.evaluate(async (levels) => {
    const { axe: checker } = globalThis as typeof globalThis & { readonly axe: typeof axe };
    const { violations: all } = await checker.run(document, {
      runOnly: { type: "tag", values: levels },
      resultTypes: ["violations"],
    });
    return all.map(({ id, help, nodes }) => ({
      rule: `${id}: ${help}`,
      elements: nodes.map(({ target, failureSummary = "" }) => ({ at: target.join(" "), why: failureSummary })),
    }));
  }, LEVELS);
  return found.flatMap(({ rule, elements }) =>
    elements.map(({ at, why }) => `${rule} – ${at} – ${why.replaceAll(/\s+/g, " ")}`),
  );
}

/** What is out of sight has only a guessed height until somebody scrolls there, and the checker would see it overlap. */
function layOutEverything(): void {
  for (const element of document.querySelectorAll<HTMLElement>("main *")) {
    if (getComputedStyle(element).contentVisibility === "auto") element.style.contentVisibility = "visible";
  }
}
