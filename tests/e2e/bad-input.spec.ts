import type { Page } from "playwright/test";
import { CLUB, openRecipe, ownTitle, writeRecipe } from "./support/own-recipe";
import { planBrew } from "./support/planned-brew";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

/** What somebody types for an amount, and what the message says besides the name of the field. */
const WRONG = [
  { kind: "empty", typed: "", says: [/is empty/] },
  { kind: "negative", typed: "-4", says: [/[−-]4/, /is outside/] },
  { kind: "absurd", typed: "999999", says: [/999999/, /is outside/] },
  { kind: "not a number", typed: "a lot", says: [/“a lot” is not a number/] },
] as const;

for (const { kind, typed, says } of WRONG) {
  test(`an amount of malt that is ${kind} is named, with value and range, and nothing is saved`, async ({ page }) => {
    const title = ownTitle("Badly typed");
    await signInAs(page, "member");
    await writeRecipe(page, title);
    const mass = page.getByRole("textbox", { name: /^Mass of Pale ale malt/ });
    await mass.fill(typed);
    await page.getByRole("button", { name: "Save as revision 2" }).click();

    const summary = problems(page);
    await expect(summary).toBeFocused();
    await expect(summary).toContainText("Mass of Pale ale malt");
    for (const words of says) await expect(summary).toContainText(words);
    await expect(mass).toHaveAttribute("aria-invalid", "true");
    await summary.getByRole("link").click();
    await expect(mass).toBeFocused();
    await expect(mass).toHaveValue(typed);

    await openRecipe(page, title);
    await expect(page.getByRole("link", { name: "Revision 2", exact: true })).toHaveCount(0);
  });
}

test("a recipe without malt is told what it needs, and keeps its last numbers", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes/new`);
  await page.getByLabel("Title", { exact: true }).fill(ownTitle("Without malt"));
  await page.getByRole("button", { name: /^Remove Pale ale malt/ }).click();
  await expect(page.getByRole("region", { name: "The beer" })).toContainText("at least one fermentable");
  await page.getByRole("button", { name: "Save the recipe" }).click();
  await expect(problems(page)).toContainText("A recipe needs at least one fermentable");
  await page.getByRole("button", { name: "Undo", exact: true }).click();
  await expect(page.getByRole("textbox", { name: /^Mass of Pale ale malt/ })).toBeVisible();
});

test("a kettle of 0 L is refused with its range, when it is new and when it is changed", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/equipment/new`);
  await page.getByLabel("Name").fill(ownTitle("Kettle of nothing"));
  await page.getByLabel("Kettle volume, L").fill("0");
  await page.getByLabel("Power, W").fill("lots");
  await page.getByLabel("Usual batch, L").fill("");
  await page.getByRole("button", { name: "Make the profile" }).click();
  await expect(problems(page)).toContainText(/Kettle volume 0(\.0)? L is outside 0\.5(0)? L? ?to 2000/);
  await expect(problems(page)).toContainText(/power “lots” is not a number/i);
  await expect(problems(page)).toContainText("Usual batch is empty");

  await page.goto(`${CLUB}/equipment`);
  await page.getByRole("link", { name: "Test pot" }).click();
  await page.getByLabel("Kettle volume, L", { exact: true }).fill("0");
  await page.getByRole("button", { name: /^Save as revision/ }).click();
  await expect(problems(page)).toContainText(/Kettle volume 0(\.0)? L is outside/);
  await page.reload();
  await expect(page.getByLabel("Kettle volume, L", { exact: true })).not.toHaveValue("0");
});

for (const { kind, typed, says } of WRONG) {
  test(`a reading that is ${kind} is told so beside its field, and is not in the log`, async ({ page }) => {
    await signInAs(page, "member");
    await planBrew(page, "Coal Quay Porter", "Shed fifty");
    const field = page.getByLabel("Mash water, L");
    await field.fill(typed);
    await page.getByRole("button", { name: "Save Mash water" }).click();
    await expect(field).toBeFocused();
    await expect(field).toHaveAccessibleDescription(/Mash water/);
    for (const words of says) await expect(field).toHaveAccessibleDescription(words);
    await expect(field).toHaveValue(typed);
    await page.reload();
    await expect(page.getByRole("region", { name: "Readings", exact: true })).toContainText("None yet");
  });
}

function problems(page: Page) {
  return page.getByRole("group", { name: "There is a problem" });
}
