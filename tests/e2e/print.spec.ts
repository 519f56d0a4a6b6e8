import type { Page } from "playwright/test";
import { CLUB, openRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const A4_PX = { width: 794, height: 1123 };

test("a recipe prints as a sheet on one or two pages, without the controls of the screen", async ({ page }) => {
  await signInAs(page, "member");
  await openRecipe(page, "Millrace Pale Ale");
  await sheetIsReady(page);
  await print(page);
  await expect(page.getByRole("heading", { level: 1, name: "Millrace Pale Ale" })).toBeVisible();
  await expectSheet(page);
  await expectWithinPaper(page);
  for (const format of ["A4", "Letter"]) expect(await pagesOf(page, { format })).toBeLessThanOrEqual(2);
});

test("a member’s own sheet prints the same way, with the kettle and whose it is", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: "Kettles for Millrace Pale Ale" }).click();
  await page.getByRole("link", { name: "Shed fifty", exact: true }).click();
  await expect(page.getByRole("heading", { level: 2, name: /^It fits/ })).toBeVisible();
  await sheetIsReady(page);
  await print(page);
  await expect(page.getByText(/Revision \d+, on Shed fifty of Mads Underbough/)).toBeVisible();
  await expectSheet(page);
  await expectWithinPaper(page);
  expect(await pagesOf(page, { format: "A4" })).toBeLessThanOrEqual(2);
});

test("the table of all kettles prints across the paper, black on white, with revision and time", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: "Kettles for Millrace Pale Ale" }).click();
  await expect(page.getByRole("link", { name: "Table as CSV" })).toBeVisible();
  await page.setViewportSize({ width: 1046, height: 718 });
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  await expect(page.getByText(/Millrace Pale Ale, revision \d+\. Printed on/)).toBeVisible();
  await expect(page.getByRole("combobox")).toHaveCount(0);
  await expect(page.getByRole("link", { name: "Table as CSV" })).toHaveCount(0);
  await expect(page.getByRole("columnheader", { name: "Energy" })).toBeVisible();
  await expectWithinPaper(page);
  expect(await pagesOf(page, { preferCSSPageSize: true })).toBeLessThanOrEqual(2);
});

test("a run sheet prints with its steps, cautions and a place for each reading", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/brews?state=planned`);
  await page.getByRole("link", { name: "Coal Quay Porter" }).last().click();
  await expect(page.getByRole("heading", { name: "Run sheet" })).toBeVisible();
  const steps = await page.getByRole("heading", { level: 3 }).count();
  await print(page);
  await expect(page.getByRole("heading", { level: 3 })).toHaveCount(steps);
  await expect(page.getByText("Caution.").first()).toBeVisible();
  await expect(page.getByText(/^Read: _+ at _+/).first()).toBeVisible();
  await expect(page.getByRole("textbox")).toHaveCount(0);
  await expect(page.getByRole("button")).toHaveCount(0);
  await expectWithinPaper(page);
});

/** Until the code of the printed sheet has come, which the page fetches when it has nothing else to do. */
async function sheetIsReady(page: Page): Promise<void> {
  await expect(page.locator("[data-sheet=ready]")).toBeAttached();
}

/** As paper shows it, also to whoever has the dark theme. */
async function print(page: Page): Promise<void> {
  await page.setViewportSize(A4_PX);
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
}

async function expectWithinPaper(page: Page): Promise<void> {
  const { widest, dark } = await page.evaluate(() => ({
    widest: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    dark: getComputedStyle(document.body).backgroundColor,
  }));
  expect(widest).toBeLessThanOrEqual(0);
  // Paper stays paper: white, or nothing printed on it.
  expect(["rgb(255, 255, 255)", "rgba(0, 0, 0, 0)"]).toContain(dark);
}

async function expectSheet(page: Page): Promise<void> {
  for (const table of ["What goes in", "Mash, boil and yeast", "Timetable, counted from weighing out"]) {
    await expect(page.getByRole("table", { name: table })).toBeVisible();
  }
  await expect(page.getByRole("heading", { name: "Cautions" })).toBeVisible();
  await expect(page.getByRole("heading", { name: "Notes of the day" })).toBeVisible();
  await expect(page.getByText(/Printed on \d/)).toBeVisible();
  for (const control of ["navigation", "button", "textbox"] as const)
    await expect(page.getByRole(control)).toHaveCount(0);
}

/** Pages of the PDF that the browser prints. */
async function pagesOf(page: Page, paper: Parameters<Page["pdf"]>[0]): Promise<number> {
  const pdf = await page.pdf(paper ?? {});
  return [...pdf.toString("latin1").matchAll(/\/Type\s*\/Page\b(?!s)/g)].length;
}
