import type { Page } from "playwright/test";
import { anotherContext } from "./support/another-context";
import { expectAccessible, goAs, offer, openOrder, rowOf, step, want } from "./support/ordering";
import { CLUB } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const WIDTHS = [390, 1280];

for (const width of WIDTHS) {
  test(`an order goes from wishes to the last bag, short delivery and all, at ${String(width)} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    const order = await openOrder(page, "Cap order");
    await want(page, { what: "Anything else, in pieces", name: "Crown caps", amount: "200" });
    await expect(page.getByRole("link", { name: "Crown caps", exact: true })).toBeVisible();
    await goAs(page, "member", order);
    await page.getByRole("link", { name: "Crown caps", exact: true }).click();
    await page.getByLabel("Amount I want beside, pcs").fill("300");
    await page.getByRole("button", { name: "Save my wish" }).click();
    await expect(rowOf(page, "Mads Underbough")).toContainText("300");

    await goAs(page, "organiser", order);
    await offer(page, { item: "Crown caps", size: "100", price: "2.50", unit: "pcs" });
    // Five packs of 100 for 2.50; two hundred of them are 5.00. Alone they would cost as much.
    await expect(page.getByText("500 pcs for 12.50 EUR")).toBeVisible();
    await expect(rowOf(page, "Orla Fennimoor")).toContainText("5.00");
    await expectAccessible(page);

    await page.goto(order);
    await expectAccessible(page);
    await step(page, "Lock the order");
    await expect(page.getByText(/^Locked: the amounts stay/)).toBeVisible();
    await step(page, "Mark as placed");
    await page.getByRole("link", { name: "Crown caps", exact: true }).click();
    await page.getByLabel("Received, pcs").fill("400");
    await page.getByLabel("Paid, EUR").fill("10");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Note what came" }).click();
    await expect(page.getByRole("heading", { name: "What came, noted already" })).toBeVisible();
    // 400 of 500 by two to three: 160 and 240, for 4.00 and 6.00.
    await expect(rowOf(page, "Orla Fennimoor")).toContainText("4.00");
    await expect(rowOf(page, "Mads Underbough")).toContainText("240");

    await page.goto(order);
    await step(page, "Mark as received");
    await page.getByRole("link", { name: "Weight list" }).click();
    await expectAccessible(page);
    for (const name of ["Mads Underbough", "Orla Fennimoor"]) {
      await page.getByRole("button", { name: new RegExp(`^Done ?: Crown caps for ${name}$`) }).click();
      await expect(page.getByRole("region", { name }).getByText("by Orla Fennimoor")).toBeVisible();
    }
    await page.goto(order);
    await step(page, "Mark as handed out");
    await expect(page.getByText("Handed out: everybody has theirs.")).toBeVisible();
  });
}

test("an order of a shared brew opens to the sheets behind each total, and a member agrees to a replacement", async ({
  page,
}) => {
  const order = await openOrder(page, "Hop order", "Winter shared brew: Coal Quay Porter");
  await page.getByRole("link", { name: "Fuggle", exact: true }).click();
  const sheet = rowOf(page, "Mads Underbough");
  await expect(sheet).toContainText("Coal Quay Porter on ");
  await page.getByLabel("For whom").selectOption("Mads Underbough");
  await page.getByLabel("In place of Fuggle").selectOption("Northdown");
  await page.getByRole("button", { name: "Propose" }).click();
  await expect(page.getByText("Proposed. It counts once the member agrees")).toBeVisible();

  await goAs(page, "member", order);
  await page.getByRole("button", { name: "Agree to Northdown" }).click();
  await expect(rowOf(page, "Mads Underbough").filter({ hasText: "in place of Fuggle" })).toContainText("agreed on");
  await page.getByRole("link", { name: "Northdown", exact: true }).click();
  await expect(rowOf(page, "Mads Underbough")).toContainText("in place of Fuggle");
});

test("the second of two windows that change one wish is told, and the first wish stays", async ({ page, browser }) => {
  await openOrder(page, "Sugar order");
  await want(page, { what: "Malt or sugar, in kg", name: "Candy sugar", amount: "1,5" });
  await page.getByRole("link", { name: "Candy sugar", exact: true }).click();
  const field = "Amount I want beside, kg";
  await expect(page.getByLabel(field)).toHaveValue("1.5");
  const other = await anotherContext(browser);
  const second = await other.newPage();
  await signInAs(second, "organiser");
  await second.goto(page.url());
  await page.getByLabel(field).fill("2");
  await page.getByRole("button", { name: "Save my wish" }).click();
  await expect(rowOf(page, "Orla Fennimoor")).toContainText("2.000");
  await second.getByLabel(field).fill("3");
  await second.getByRole("button", { name: "Save my wish" }).click();
  await expect(second.getByText("Somebody changed this since the page was opened")).toBeVisible();
  await expect(second.getByLabel(field)).toHaveValue("3");
  await page.reload();
  await expect(page.getByLabel(field)).toHaveValue("2");
  await other.close();
});

test("a wrong amount and a wrong price are told at their fields, with what they take", async ({ page }) => {
  await openOrder(page, "Wrong order");
  await want(page, { what: "Hop, in g", name: "Some hop", amount: "a handful" });
  await expect(page.getByText("Amount “a handful” is not a number in g").last()).toBeVisible();
  await want(page, { what: "Hop, in g", name: "Some hop", amount: "9000000" });
  await expect(page.getByText("Amount 9000000.0 g is outside 0.0 g to 5000000.0 g").last()).toBeVisible();
  await want(page, { what: "Hop, in g", name: "Some hop", amount: "50" });
  await page.getByRole("link", { name: "Some hop", exact: true }).click();
  await page.getByLabel("Pack size, g").fill("100");
  await page.getByLabel("Price, EUR").fill("cheap");
  await page.getByRole("button", { name: "Add the pack" }).click();
  await expect(page.getByText("Price “cheap” is no price; it takes an amount such as 24.50").last()).toBeVisible();
  await expect(page.getByLabel("Pack size, g")).toHaveValue("100");
});

test("the table as CSV is run by no spreadsheet, and is found by nobody else", async ({ page }) => {
  const order = await openOrder(page, "Table order");
  await want(page, { what: "Anything else, in pieces", name: '=HYPERLINK("https://elsewhere.example")', amount: "3" });
  await expect(page.getByRole("link", { name: /^=HYPERLINK/ })).toBeVisible();
  const csv = await page.request.get(`${order}/csv`);
  expect(csv.headers()["content-type"]).toBe("text/csv; charset=utf-8");
  const text = await csv.text();
  expect(text).toContain(`other,"'=HYPERLINK(""https://elsewhere.example"")",pcs,Orla Fennimoor,0,0,3,0,3`);
  for (const key of ["judge", "outsider"]) {
    await signInAs(page, key);
    expect((await page.request.get(`${order}/csv`)).status(), key).toBe(404);
    expect((await page.goto(order))?.status(), key).toBe(404);
  }
  await page.context().clearCookies();
  expect((await page.request.get(`${order}/csv`)).status()).toBe(401);
});

test("a weight list prints with a place for each weight, and an order with its packs, black on white", async ({
  page,
}) => {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/orders`);
  await page.getByRole("link", { name: "Summer malt order", exact: true }).click();
  await page.setViewportSize({ width: 794, height: 1123 });
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  await expect(page.getByRole("table", { name: /^Items of the order/ })).toContainText("1 × 25.00");
  await expectPaper(page);
  await page.emulateMedia({ media: "screen" });
  await page.getByRole("link", { name: "Weight list" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Weight list" })).toBeVisible();
  await page.emulateMedia({ media: "print", colorScheme: "dark" });
  await expect(page.getByRole("region", { name: "Tamsin Greywick" })).toContainText("9.300");
  await expect(page.getByText("Caution.").first()).toBeVisible();
  await expectPaper(page);
});

async function expectPaper(page: Page): Promise<void> {
  await expect(page.getByRole("button")).toHaveCount(0);
  await expect(page.getByRole("navigation")).toHaveCount(0);
  const { widest, ground } = await page.evaluate(() => ({
    widest: document.documentElement.scrollWidth - document.documentElement.clientWidth,
    ground: getComputedStyle(document.body).backgroundColor,
  }));
  expect(widest).toBeLessThanOrEqual(0);
  expect(["rgb(255, 255, 255)", "rgba(0, 0, 0, 0)"]).toContain(ground);
}
