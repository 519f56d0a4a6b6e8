import type { Page } from "playwright/test";
import { violations } from "./support/axe";
import { EVERY_PAGE } from "./support/every-page";
import { openRecipe } from "./support/own-recipe";
import { planBrew } from "./support/planned-brew";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const THEMES = ["light", "dark"] as const;
const WIDTHS = [390, 1280] as const;

test("the checker finds a field without a label", async ({ page }) => {
  await page.setContent('<html lang="en"><title>Wrong</title><main><input></main></html>');
  expect(await violations(page)).toHaveLength(1);
});

for (const { name, open } of EVERY_PAGE) {
  test(`${name} meets WCAG 2.2 AA in both themes, on a phone and on a desk`, async ({ page }) => {
    await open(page);
    await expectAccessible(page);
  });
}

test("an open explanation meets WCAG 2.2 AA", async ({ page }) => {
  await signInAs(page, "member");
  await openRecipe(page, "Millrace Pale Ale");
  await page.getByRole("button", { name: /Explain Bitterness/ }).click();
  await expect(page.getByRole("dialog", { name: "Bitterness" })).toBeVisible();
  await expectAccessible(page);
});

test("a form with messages meets WCAG 2.2 AA", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto("/s/hollowmere/equipment/new");
  await page.getByRole("button", { name: "Make the profile" }).click();
  await expect(page.getByRole("group", { name: "There is a problem" })).toBeVisible();
  await expectAccessible(page);
});

test("a brew day under way meets WCAG 2.2 AA", async ({ page }) => {
  await signInAs(page, "member");
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  await page.getByLabel("Mash water, L").fill("900");
  await page.getByRole("button", { name: "Save Mash water" }).click();
  await expect(page.getByRole("button", { name: "Keep it" })).toBeVisible();
  await expectAccessible(page);
});

async function expectAccessible(page: Page): Promise<void> {
  for (const width of WIDTHS) {
    await page.setViewportSize({ width, height: 900 });
    for (const colorScheme of THEMES) {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await violations(page), `${colorScheme}, ${String(width)} px`).toEqual([]);
    }
  }
}
