import { expect, test, type Page } from "playwright/test";
import { CLUB, openRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";

const A4_PX = { width: 794, height: 1123 };

test("a recipe prints as its ledger, without the controls of the screen", async ({ page }) => {
  await signInAs(page, "member");
  await openRecipe(page, "Millrace Pale Ale");
  await print(page);
  await expect(page.getByRole("heading", { level: 1, name: "Millrace Pale Ale" })).toBeVisible();
  await expect(page.getByRole("table", { name: /^Ledger of the recipe/ })).toBeVisible();
  await expect(page.getByRole("region", { name: "The beer" })).toBeVisible();
  await expect(page.getByRole("navigation")).toHaveCount(0);
  await expect(page.getByRole("button", { name: /^Save/ })).toHaveCount(0);
  await expect(page.getByRole("button", { name: /^Remove/ })).toHaveCount(0);
  await expectWithinPaper(page);
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
