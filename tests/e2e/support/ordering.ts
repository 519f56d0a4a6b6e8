import { expect, type Locator, type Page } from "playwright/test";
import { violations } from "./axe";
import { CLUB, ownTitle } from "./own-recipe";
import { signInAs } from "./sign-in";

const THEMES = ["light", "dark"] as const;

/** Opens an order under a title of its own, and gives its address. */
export async function openOrder(page: Page, words: string, sharedBrew?: string): Promise<string> {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/orders/new`);
  const title = ownTitle(words);
  await page.getByLabel("Title").fill(title);
  if (sharedBrew !== undefined) await page.getByLabel("Shared brew").selectOption(sharedBrew);
  await page.getByRole("button", { name: "Open the order" }).click();
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
  return page.url();
}

export async function goAs(page: Page, key: string, address: string): Promise<void> {
  await signInAs(page, key);
  await page.goto(address);
}

export async function want(page: Page, a: { what: string; name: string; amount: string }): Promise<void> {
  await page.getByLabel("What it is").selectOption(a.what);
  await page.getByLabel("Name", { exact: true }).fill(a.name);
  await page.getByLabel("Amount, in the unit chosen above").fill(a.amount);
  await page.getByRole("button", { name: "I want this too" }).click();
}

export async function offer(page: Page, a: { item: string; size: string; price: string; unit: string }): Promise<void> {
  await page.getByRole("link", { name: a.item, exact: true }).click();
  await page.getByLabel(`Pack size, ${a.unit}`).fill(a.size);
  await page.getByLabel("Price, EUR").fill(a.price);
  await page.getByRole("button", { name: "Add the pack" }).click();
}

export async function step(page: Page, button: string): Promise<void> {
  await page.getByRole("button", { name: button }).click();
  await expect(page.getByRole("button", { name: button })).toHaveCount(0);
}

export function rowOf(page: Page, name: string): Locator {
  return page.getByRole("row").filter({ has: page.getByRole("rowheader", { name, exact: true }) });
}

export async function expectAccessible(page: Page): Promise<void> {
  for (const colorScheme of THEMES) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    expect(await violations(page), colorScheme).toEqual([]);
  }
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
}
