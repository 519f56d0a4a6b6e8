import { randomUUID } from "node:crypto";
import { expect, type Page } from "playwright/test";

export const CLUB = "/s/hollowmere";

/** A title that no other test and no earlier run has used. */
export function ownTitle(words: string): string {
  return `${words} ${randomUUID().slice(0, 8)}`;
}

/** Saves the recipe that the empty form offers under a title, and stays on its page. */
export async function writeRecipe(page: Page, title: string): Promise<void> {
  await page.goto(`${CLUB}/recipes/new`);
  await page.getByLabel("Title", { exact: true }).fill(title);
  await page.getByRole("button", { name: "Save the recipe" }).click();
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
}

/** Opens a recipe from the club's list. */
export async function openRecipe(page: Page, title: string): Promise<void> {
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: title, exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
}

/** Until the lists of styles, malts and hops have come, which the page fetches once. */
export async function listsAreThere(page: Page): Promise<void> {
  await expect(page.getByLabel("Style").getByRole("option").nth(2)).toBeAttached();
}
