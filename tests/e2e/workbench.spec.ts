import type { Page } from "playwright/test";
import { anotherContext } from "./support/another-context";
import { violations } from "./support/axe";
import { numberIn } from "./support/figures";
import { CLUB, listsAreThere, ownTitle, writeRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const WIDTHS = [
  ["a phone", { width: 390, height: 844 }],
  ["a desk", { width: 1280, height: 900 }],
] as const;

const massOf = (page: Page) => page.getByRole("textbox", { name: /^Mass of .*malt/ }).first();
const gravity = (page: Page) => page.getByRole("region", { name: "The beer" }).getByLabel("Original gravity");

for (const [where, viewport] of WIDTHS) {
  test.describe(`at ${where}`, () => {
    test.use({ viewport });

    test("a target is shown as amounts first, put in when asked, marked, and taken back", async ({ page }) => {
      await signInAs(page, "member");
      await page.goto(`${CLUB}/recipes/new`);
      await listsAreThere(page);
      const before = await massOf(page).inputValue();
      await page.getByText("A target instead of an amount").click();
      await page.getByLabel(/^Wanted original gravity/).fill("1.062");
      await page.getByRole("button", { name: "Work it out" }).click();
      await expect(page.getByRole("table", { name: "Amounts that meet the target" })).toBeVisible();
      await expect(massOf(page)).toHaveValue(before);
      expect(await violations(page)).toEqual([]);

      await page.getByRole("button", { name: "Put these in" }).click();
      await expect.poll(() => numberIn(gravity(page))).toBeCloseTo(1.062, 3);
      await expect(page.getByText("solved for original gravity 1.062").first()).toBeVisible();

      await page.getByRole("button", { name: /^Undo ?: target/ }).click();
      await expect(massOf(page)).toHaveValue(before);
      await page.getByRole("button", { name: /^Redo ?: target/ }).click();
      await expect.poll(() => numberIn(gravity(page))).toBeCloseTo(1.062, 3);
    });

    test("rows of a spreadsheet are looked at first and taken back as one step", async ({ page }) => {
      await signInAs(page, "member");
      await page.goto(`${CLUB}/recipes/new`);
      await listsAreThere(page);
      const hops = page.getByRole("region", { name: "Hops in the boil" });
      const rows = await hops.getByRole("listitem").count();
      await hops.getByRole("button", { name: /^Paste rows/ }).click();
      const dialog = page.getByRole("dialog", { name: /^Paste rows/ });
      await dialog
        .getByLabel(/^Rows copied/)
        .fill("Hop\tAlpha\tMass (oz)\tBefore end\nTest hop A\t5,5\t1/2\t60\nTest hop B\tstrong\t1\t5 min\n\t4\t1\t5");
      const preview = dialog.getByRole("table", { name: "What was understood, line by line" });
      await expect(preview.getByRole("row", { name: /^2/ })).toContainText("Mass 1/2 oz");
      await expect(preview.getByRole("row", { name: /^3/ })).toContainText("Alpha acids “strong” is not a number");
      await expect(preview.getByRole("row", { name: /^4/ })).toContainText("There is no name in this line");
      expect(await violations(page)).toEqual([]);
      await dialog.getByRole("button", { name: "Add 2 rows" }).click();

      await expect(hops.getByRole("listitem")).toHaveCount(rows + 2);
      await expect(page.getByLabel("Mass of Test hop A")).toHaveValue("1/2 oz");
      // 1 oz is 28.349523125 g by definition.
      await expect(page.getByText("= 14.17 g")).toBeVisible();
      await page.getByLabel("Mass of Test hop A").press("Control+z");
      await expect(hops.getByRole("listitem")).toHaveCount(rows);
    });

    test("a draft outlives its tab and is there on another device", async ({ page, browser }) => {
      const title = ownTitle("Half written");
      await signInAs(page, "member");
      await page.goto(`${CLUB}/recipes/new`);
      await page.getByLabel("Title", { exact: true }).fill(title);
      await massOf(page).fill("about 5");
      await expect(page.getByText(/^Saved \d\d:\d\d/)).toBeVisible();
      await page.close();

      const device = await anotherContext(browser);
      const again = await device.newPage();
      await again.setViewportSize(viewport);
      await signInAs(again, "member");
      await again.goto(`${CLUB}/recipes`);
      await again.getByRole("link", { name: title }).click();
      await expect(again.getByLabel("Title", { exact: true })).toHaveValue(title);
      await expect(massOf(again)).toHaveValue("about 5");

      await again.getByRole("button", { name: "Discard the draft" }).click();
      await again.getByRole("button", { name: "Discard it for good" }).click();
      await expect(again.getByLabel("Title", { exact: true })).toHaveValue("");
      await again.goto(`${CLUB}/recipes`);
      await expect(again.getByRole("heading", { level: 1, name: "Recipes" })).toBeVisible();
      await expect(again.getByRole("link", { name: title })).toHaveCount(0);
      await device.close();
    });
  });
}

test("typing in one field is one step back, and fifty steps are kept", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes/new`);
  await listsAreThere(page);
  const boil = page.getByLabel("Length of the boil, min");
  const first = await boil.inputValue();
  await boil.selectText();
  await boil.pressSequentially("75");
  await massOf(page).fill("6");
  for (let i = 0; i < 25; i += 1) {
    await boil.fill(String(60 + i));
    await massOf(page).fill(String(5 + i / 10));
  }
  for (let i = 0; i < 50; i += 1) await massOf(page).press("Control+z");
  await expect(boil).toHaveValue("75");
  await expect(massOf(page)).toHaveValue("6");
  await massOf(page).press("Control+z");
  await massOf(page).press("Control+z");
  await expect(boil).toHaveValue(first);
});

test("a number is tried out with another input, and the recipe stays as it is", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes/new`);
  await listsAreThere(page);
  const before = await massOf(page).inputValue();
  await page.getByRole("button", { name: /Explain Original gravity/ }).click();
  const dialog = page.getByRole("dialog", { name: /Original/ });
  await expect(dialog.getByRole("heading", { name: "What if" })).toBeVisible();
  const outcome = dialog.getByRole("status");
  const now = await numberIn(outcome);
  await dialog
    .getByRole("button", { name: /^More: Mass of .*malt/ })
    .first()
    .click();
  await expect.poll(() => numberIn(outcome)).toBeGreaterThan(now);
  expect(await violations(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Back to the values as they are" }).click();
  await expect.poll(() => numberIn(outcome)).toBe(now);
  await page.keyboard.press("Escape");
  await expect(massOf(page)).toHaveValue(before);
});

test("a figure of the kettle and one of the day are tried out, and the kettle stays as it is", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes/new`);
  await listsAreThere(page);
  await page.getByRole("button", { name: /^Before the boil, hot: .*Explain$/ }).click();
  const dialog = page.getByRole("dialog");
  const kettle = dialog.getByRole("region", { name: /^Kettle: / });
  await expect(kettle).toBeVisible();
  await expect(dialog.getByText("nothing is saved, and neither the recipe nor the kettle changes")).toBeVisible();
  const outcome = dialog.getByRole("status");
  const now = await numberIn(outcome);
  const boilOff = kettle.getByLabel("Boil-off, kg/h");
  const before = await boilOff.inputValue();
  await kettle.getByRole("button", { name: "More: Boil-off" }).click();
  await expect.poll(() => numberIn(outcome)).toBeGreaterThan(now);
  await boilOff.fill("1001");
  await expect(outcome).toContainText("Boil-off 1001 kg/h is outside 0 to 1000 kg/h");
  expect(await violations(page)).toEqual([]);
  await dialog.getByRole("button", { name: "Back to the values as they are" }).click();
  await expect(boilOff).toHaveValue(before);
  await expect.poll(() => numberIn(outcome)).toBe(now);
});

test("two tabs of one person on one draft: the second is told, and takes over", async ({ page, context }) => {
  const title = ownTitle("In two tabs");
  await signInAs(page, "member");
  await writeRecipe(page, title);
  const address = page.url();
  const other = await context.newPage();
  await other.goto(address);
  await page.getByLabel("Notes", { exact: true }).fill("from the first tab");
  await expect(page.getByText(/^Saved \d\d:\d\d/)).toBeVisible();
  await other.getByLabel("Notes", { exact: true }).fill("from the second tab");
  await expect(other.getByText(/You wrote on in another tab/)).toBeVisible();
  await other.getByRole("button", { name: "Go on with what stands here" }).click();
  await expect(other.getByText(/^Saved \d\d:\d\d/)).toBeVisible();
  await page.getByLabel("Notes", { exact: true }).fill("the first again");
  await expect(page.getByText(/You wrote on in another tab/)).toBeVisible();
  await page.getByRole("button", { name: "Open what was written there" }).click();
  await expect(page.getByLabel("Notes", { exact: true })).toHaveValue("from the second tab");
});

test("what a row can be asked by keys stands in a list that ? opens, unless it is turned off", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes/new`);
  await listsAreThere(page);
  const hops = page.getByRole("region", { name: "Hops in the boil" });
  const rows = await hops.getByRole("listitem").count();
  const first = hops.getByRole("textbox").first();
  await first.press("Alt+Shift+ArrowDown");
  await expect(hops.getByRole("listitem")).toHaveCount(rows + 1);
  await hops.getByRole("textbox").first().press("Alt+Delete");
  await expect(hops.getByRole("listitem")).toHaveCount(rows);

  await page.keyboard.press("?");
  const dialog = page.getByRole("dialog", { name: "Keys" });
  await expect(dialog).toBeVisible();
  await dialog.getByLabel("Open this list with ?").uncheck();
  await page.keyboard.press("Escape");
  await page.keyboard.press("?");
  await expect(dialog).toBeHidden();
});
