import type { Page } from "playwright/test";
import { numberIn } from "./support/figures";
import { expectState, move, planBrew } from "./support/planned-brew";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("a member logs their brew and sees planned, measured and the difference", async ({ page }) => {
  await signInAs(page, "member");
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  await move(page, "Start the brew day");
  await expectState(page, "on the kettle");

  const plannedWater = await expectedOf(page, "Mash water");
  const readWater = plannedWater + 0.3;
  await page.getByLabel("Mash water, L").fill(readWater.toFixed(1));
  await page.getByRole("button", { name: "Save Mash water" }).click();
  await expect(readings(page, "Mash water")).toHaveCount(1);

  const plannedGravity = await expectedOf(page, "Gravity before the boil");
  const readGravity = plannedGravity - 0.002;
  await page.getByLabel("Gravity before the boil, SG").fill(readGravity.toFixed(3));
  await page.getByRole("button", { name: "Save Gravity before the boil" }).dblclick();
  await expect(readings(page, "Gravity before the boil")).toHaveCount(1);
  await move(page, "Into the fermenter");
  await expectState(page, "in the fermenter");

  await page.reload();
  await expect(readings(page, "Mash water")).toHaveCount(1);
  await expect(readings(page, "Gravity before the boil")).toHaveCount(1);

  await page.getByRole("link", { name: "Ledger comparison" }).click();
  await expectCompared(page, "Mash water", { planned: plannedWater, measured: readWater, digits: 1 });
  await expectCompared(page, "Gravity before the boil", { planned: plannedGravity, measured: readGravity, digits: 3 });
});

test("a reading far from the plan is asked about before it is kept", async ({ page }) => {
  await signInAs(page, "member");
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  await move(page, "Start the brew day");
  const far = (await expectedOf(page, "Mash water")) * 2;
  await page.getByLabel("Mash water, L").fill(far.toFixed(1));
  await page.getByRole("button", { name: "Save Mash water" }).click();
  await page.getByRole("button", { name: "Change it" }).click();
  await expect(page.getByLabel("Mash water, L")).toBeFocused();
  await expect(readings(page, "Mash water")).toHaveCount(0);

  await page.getByRole("button", { name: "Save Mash water" }).click();
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(readings(page, "Mash water")).toHaveCount(1);
});

test("the log of the demo with a wrong reading names that reading and keeps it", async ({ page }) => {
  await signInAs(page, "judge");
  await page.goto("/s/hollowmere/brews");
  const brew = page.getByRole("row").filter({ hasText: "Blue barrel" });
  await brew.getByRole("link", { name: "Millrace Pale Ale" }).click();
  await expect(readings(page, "Gravity before the boil")).toHaveCount(1);
  await page.getByRole("link", { name: "Ledger comparison" }).click();

  // The seed reads this gravity 2.6 °P too low; the balance of extract does not close with it.
  const doubtful = page.getByRole("region", { name: "Doubtful readings" });
  await expect(doubtful).toContainText("Gravity before the boil");
  await expect(row(page, "Gravity before the boil")).toContainText("cannot be right");
  await expect(page.getByRole("region", { name: "In words" })).toContainText("The readings cannot all be right");
  const together = page.getByRole("table", { name: "Readings, measured and reconciled" });
  await expect(together.getByRole("row", { name: "Gravity before the boil" })).toContainText("left out");
});

function readings(page: Page, label: string) {
  return page.getByRole("region", { name: "Readings", exact: true }).getByRole("listitem").filter({ hasText: label });
}

/** What the run sheet says a reading should be. */
function expectedOf(page: Page, label: string): Promise<number> {
  return numberIn(
    page
      .getByRole("paragraph")
      .filter({ hasText: `Measure: ${label}.` })
      .getByRole("link"),
  );
}

function row(page: Page, label: string) {
  const table = page.getByRole("table", { name: /^Planned against measured/ });
  return table.getByRole("row").filter({ has: page.getByRole("rowheader", { name: label }) });
}

async function expectCompared(
  page: Page,
  label: string,
  { planned, measured, digits }: { readonly planned: number; readonly measured: number; readonly digits: number },
): Promise<void> {
  const cells = row(page, label).getByRole("cell");
  await expect(cells).toHaveCount(3);
  // Each figure is rounded by itself, so the last digit of the difference may be one off.
  const lastDigit = 10 ** -digits;
  const near = (value: number, wanted: number) => expect(Math.abs(value - wanted)).toBeLessThan(1.01 * lastDigit);
  near(await numberIn(cells.nth(0)), planned);
  near(await numberIn(cells.nth(1)), measured);
  near(await numberIn(cells.nth(2)), measured - planned);
}
