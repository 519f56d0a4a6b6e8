import { readFile } from "node:fs/promises";
import type { Page } from "playwright/test";
import { anotherContext } from "./support/another-context";
import { violations } from "./support/axe";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const PHONE = { width: 390, height: 844 };
const WIDTHS = [
  ["at a desk", { width: 1280, height: 900 }],
  ["on a phone", PHONE],
] as const;

/** Keeps a lot of the member's own, and stays on its page. */
async function keepLot(page: Page, label: string, onHand: string, kind = "hop", name = "Cascade"): Promise<void> {
  await page.goto(`${CLUB}/ingredients/lots/new?kind=${kind}&name=${encodeURIComponent(name)}`);
  await page.getByLabel(/^On hand/).fill(onHand);
  await page.getByLabel("Label").fill(label);
  if (kind === "hop") await page.getByLabel(/^Alpha acids/).fill("4");
  await page.getByRole("button", { name: "Keep the lot" }).click();
  await expect(page.getByRole("heading", { level: 1, name: `${name}, ${label}` })).toBeVisible();
}

for (const [where, viewport] of WIDTHS) {
  test.describe(where, () => {
    test.use({ viewport });

    test("a member adds an ingredient of the club, finds it, and a recipe offers it", async ({ page }) => {
      const name = ownTitle("Fence hop");
      await signInAs(page, "member");
      await page.goto(`${CLUB}/ingredients`);
      await page.getByRole("link", { name: "Add an ingredient" }).click();
      await page.getByRole("navigation", { name: "Kind" }).getByRole("link", { name: "Hops" }).click();
      await expect(page.getByLabel(/^Alpha acids, low/)).toBeVisible();
      await page.getByLabel("Name", { exact: true }).fill(name);
      await page.getByLabel(/^Alpha acids, low/).fill("6");
      await page.getByLabel(/^Alpha acids, high/).fill("4");
      await page.getByRole("button", { name: "Keep the ingredient" }).click();
      await expect(page.getByRole("link", { name: /is below the low figure/ })).toBeVisible();
      await page.getByLabel(/^Alpha acids, high/).fill("8");
      await page.getByRole("button", { name: "Keep the ingredient" }).click();
      await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();

      await page.goto(`${CLUB}/ingredients`);
      await page.getByLabel("Name, label or owner").fill(name);
      await page.getByLabel("Whose").selectOption("The club’s");
      await page.getByRole("button", { name: "Show" }).click();
      await expect(page).toHaveURL(/whose=club/);
      await expect(page.getByRole("rowheader")).toHaveText([name]);
      expect(await violations(page)).toEqual([]);

      await page.goto(`${CLUB}/recipes/new`);
      await expect(page.locator(`datalist option[value="${name}"]`)).toBeAttached();
    });

    test("a member notes what came and went of a lot, and its history says so", async ({ page }) => {
      await signInAs(page, "member");
      await keepLot(page, ownTitle("Packet"), "2 oz");
      await expect(page.getByText("56.7 g").first()).toBeVisible();
      await page.getByLabel("What happened").selectOption("Used: so much went");
      await page.getByLabel(/^Amount/).fill("100 g");
      await page.getByRole("button", { name: "Note it" }).click();
      await expect(page.getByText(/Amount 100 g used is more than the 56\.699 g on hand/)).toBeVisible();
      await page.getByLabel(/^Amount/).fill("20 g");
      await page.getByLabel("Why").fill("A test boil");
      await page.getByRole("button", { name: "Note it" }).click();
      const history = page.getByRole("table", { name: "What came and went" });
      await expect(history.getByRole("row").nth(1)).toContainText("36.7 g");
      await expect(history.getByRole("row").nth(1)).toContainText("A test boil");
      expect(await violations(page)).toEqual([]);
      const sideways = await page.evaluate(
        () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
      );
      expect(sideways).toBe(0);
    });
  });
}

test("the second of two people who count a lot is told, and nothing of the first is lost", async ({
  page,
  browser,
}) => {
  await signInAs(page, "member");
  await keepLot(page, ownTitle("Counted twice"), "100 g");
  const context = await anotherContext(browser);
  const other = await context.newPage();
  await signInAs(other, "organiser");
  await other.goto(page.url());
  await page.getByLabel(/^Amount/).fill("90");
  await page.getByRole("button", { name: "Note it" }).click();
  await expect(page.getByRole("table", { name: "What came and went" }).getByRole("row").nth(1)).toContainText("90.0 g");
  await other.getByLabel(/^Amount/).fill("80");
  await other.getByRole("button", { name: "Note it" }).click();
  await expect(other.getByText(/Somebody else changed this lot/)).toBeVisible();
  await expect(other.getByLabel(/^Amount/)).toHaveValue("80");
  await context.close();
  await page.reload();
  await expect(page.getByText("90.0 g").first()).toBeVisible();
});

test("a sheet is solved with a lot, the brew takes it, and a planned brew puts it back", async ({ page }) => {
  const label = ownTitle("Weak harvest");
  await signInAs(page, "organiser");
  await keepLot(page, label, "10 g", "hop", "Perle");
  const lot = page.url();
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: "Kettles for Hollowmere Pils" }).click();
  await page.getByRole("link", { name: "Cellar thirty-five", exact: true }).click();
  const choose = page.getByLabel(/^Perle, /).first();
  await expect(page.getByText("Choose lots")).toBeVisible();
  if (!(await choose.isVisible())) await page.getByText("Choose lots").click();
  const option = await choose.locator("option", { hasText: label }).first().getAttribute("value");
  await choose.selectOption(option ?? "");
  await page.getByRole("button", { name: "Solve with these lots" }).click();
  const solved = page.getByRole("table", { name: "With the lots chosen" });
  await expect(solved).toContainText(label);
  await expect(solved).toContainText("short");
  await page.getByRole("button", { name: /^Plan this brew/ }).click();
  await expect(page.getByRole("heading", { name: "Run sheet" })).toBeVisible();
  await expect(page.getByRole("heading", { level: 2, name: "From the shelf" })).toBeVisible();
  await page.goto(lot);
  await expect(page.getByRole("table", { name: "What came and went" })).toContainText("used for");
  await page.goBack();
  await page.getByRole("button", { name: "Put them back on the shelf" }).click();
  await expect(page.getByText(/put back/)).toBeVisible();
  await page.goto(lot);
  await expect(page.getByRole("table", { name: "What came and went" })).toContainText("returned from");
});

test("the table is exported as it is shown, and no cell is a formula", async ({ page }) => {
  await signInAs(page, "member");
  const label = `=HYPERLINK("http://x.example") ${ownTitle("cell")}`;
  await keepLot(page, label, "5 g");
  await page.goto(`${CLUB}/ingredients?text=${encodeURIComponent("=HYPERLINK")}`);
  const coming = page.waitForEvent("download");
  await page.getByRole("link", { name: "As CSV" }).click();
  const text = await readFile(await (await coming).path(), "utf8");
  expect(text.startsWith("\uFEFFingredient,label,kind")).toBe(true);
  expect(text).toContain(`"'=HYPERLINK(""http://x.example"")`);
  expect(text.split("\r\n").length).toBeGreaterThanOrEqual(3);
});
