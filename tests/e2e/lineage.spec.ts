import type { Page } from "playwright/test";
import { violations } from "./support/axe";
import { openRecipe, ownTitle, writeRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const WIDTHS = [390, 1280];

for (const width of WIDTHS) {
  test(`a member copies a recipe onto the own bench and sees whose it is, at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "member");
    await openRecipe(page, "Millrace Pale Ale");
    await page.getByRole("link", { name: "Copy", exact: true }).click();
    const title = ownTitle("My pale ale");
    await page.getByLabel("Copy into").selectOption({ index: 0 });
    await page.getByLabel("Title of the copy").fill(title);
    await expectAccessible(page);
    await page.getByRole("button", { name: "Copy the recipe" }).click();

    await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
    expect(page.url()).not.toContain("/s/hollowmere/");
    await expect(page.getByText(/^After “Millrace Pale Ale”, revision \d+, in Hollowmere/)).toBeVisible();

    await page.getByRole("link", { name: "Family tree" }).click();
    const tree = page.getByRole("list", { name: "Family tree" });
    await expect(tree.getByRole("list", { name: "Copies of Millrace Pale Ale" })).toContainText(title);
    await expectAccessible(page);

    // Another member sees that there is a copy, and not what it is called.
    await signInAs(page, "organiser");
    await openRecipe(page, "Millrace Pale Ale");
    await page.getByRole("link", { name: "Family tree" }).click();
    await expect(page.getByText(/more cop(y|ies) elsewhere/)).toBeVisible();
    await expect(page.getByText(title)).toHaveCount(0);
  });

  test(`two revisions are compared, amounts and beer, at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "member");
    await writeRecipe(page, ownTitle("Compared ale"));
    const amount = page.getByLabel(/^Mass of/).first();
    const before = Number(/[\d.]+/.exec(await amount.inputValue())?.[0]);
    await amount.fill(`${String(before + 1)} kg`);
    await page.getByRole("button", { name: "Save as revision 2" }).click();
    await expect(page.getByRole("link", { name: "Revision 2" }).first()).toBeVisible();

    await page.getByRole("link", { name: "What changed" }).click();
    const changes = page.getByRole("table", { name: "Revision 2 against Revision 1" });
    await expect(changes.getByRole("row")).toHaveCount(2);
    await expect(changes).toContainText("1.00 kilograms more");
    await expect(page.getByText(/^Revision 2 differs in original gravity \+/)).toBeVisible();
    await page
      .getByRole("button", { name: /^Original extract:|^Original gravity:/ })
      .last()
      .click();
    await expect(page.getByRole("dialog")).toContainText("After less before");
    await page.getByRole("button", { name: "Close" }).click();
    await expectAccessible(page);
  });
}

async function expectAccessible(page: Page): Promise<void> {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    expect(await violations(page), colorScheme).toEqual([]);
  }
}
