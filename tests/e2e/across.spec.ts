import { readFileSync } from "node:fs";
import { violations } from "./support/axe";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("a member sees how the brews of a shared brew differ, what proves little, and compares two", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/shared-brews`);
  await page.getByRole("link", { name: "Autumn shared brew: Millrace Pale Ale" }).click();
  await page.getByRole("link", { name: "Compare these brews" }).click();
  await expect(page.getByRole("heading", { level: 1, name: /^Comparison: Autumn shared brew/ })).toBeVisible();
  await expect(page.getByText(/Grubbs’ test/)).toBeVisible();
  await expect(page.getByText(/^Cannot be told:/).first()).toBeVisible();
  const results = page.getByRole("table", { name: "Brews, planned and measured" });
  await expect(results.getByRole("row")).toHaveCount(6);

  await page.getByLabel("Quantity").selectOption({ label: "Gravity before the boil" });
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  // One of the demo's readings is wrong by 2.6 °P, on purpose.
  await expect(results.getByRole("row", { name: /Bero Alderholt/ })).toContainText("outside");

  await page.getByLabel("First brew").selectOption({ label: "Bero Alderholt" });
  await page.getByLabel("Second brew").selectOption({ label: "Orla Fennimoor" });
  await page.getByRole("button", { name: "Compare the two" }).click();
  const pair = page.getByRole("table", { name: "Bero Alderholt and Orla Fennimoor" });
  await expect(pair.getByRole("row", { name: /^Gravity before the boil/ })).toContainText("beyond chance");
  expect(await violations(page)).toEqual([]);

  // A number leads to where it is explained.
  await results
    .getByRole("row", { name: /Bero Alderholt/ })
    .getByRole("link")
    .nth(2)
    .click();
  await expect(page.getByRole("dialog")).toBeVisible();
});

test("a member keeps a question, takes its data along, renames it and takes it away", async ({ page }) => {
  const [name, renamed] = [ownTitle("Into the fermenter"), ownTitle("Volumes")];
  await signInAs(page, "member");
  await page.goto(`${CLUB}/comparisons`);
  await page.getByLabel("Quantity").selectOption({ label: "Into the fermenter, at 20 °C" });
  await page.getByLabel("Compare", { exact: true }).selectOption({ label: "how far it is from the plan" });
  await page.getByLabel("Group by").selectOption({ label: "kettle" });
  await page.getByRole("button", { name: "Compare", exact: true }).click();
  await expect(page.getByRole("heading", { name: "By kettle" })).toBeVisible();
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByRole("button", { name: "Save this comparison" }).click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
  const address = page.url();

  const [file] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("link", { name: "CSV, a row for each brew and quantity" }).click(),
  ]);
  const [header, ...rows] = readFileSync(await file.path(), "utf8")
    .trim()
    .split("\r\n");
  expect(header).toContain("quantity,unit,planned,planned_low80");
  expect(rows.some((row) => row.includes("fermenter.volume,L,"))).toBe(true);

  await page.getByText("Rename it or take it away").click();
  await page.getByLabel("Name", { exact: true }).fill(renamed);
  await page.getByRole("button", { name: "Rename", exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: renamed })).toBeVisible();
  await page.getByRole("button", { name: "Take this comparison away" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Ask the log" })).toBeVisible();
  await expect(page.getByRole("link", { name: renamed })).toHaveCount(0);
  expect((await page.goto(address))?.status()).toBe(404);
});
