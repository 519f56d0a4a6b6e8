import { expect, type Page } from "playwright/test";
import { CLUB } from "./own-recipe";

/** Plans a brew of a recipe on a kettle that it fits, and stays on its run sheet. */
export async function planBrew(page: Page, recipe: string, kettle: string): Promise<void> {
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: `Kettles for ${recipe}` }).click();
  await page.getByRole("link", { name: kettle, exact: true }).click();
  await page.getByRole("button", { name: /^Plan this brew/ }).click();
  await expect(page.getByRole("heading", { level: 1, name: recipe, exact: true })).toBeVisible();
  await expectState(page, "planned");
}

/** Where the brew is, as the page says it. */
export async function expectState(page: Page, state: string): Promise<void> {
  const states = page.getByRole("list", { name: "Where the brew is" }).getByRole("listitem");
  await expect(states.and(page.locator("[aria-current=step]"))).toContainText(state);
}

/** Moves the brew on, and confirms it. */
export async function move(page: Page, label: string): Promise<void> {
  await page.getByRole("button", { name: label, exact: true }).click();
  await page
    .getByRole("dialog", { name: `${label}?` })
    .getByRole("button", { name: label, exact: true })
    .click();
}
