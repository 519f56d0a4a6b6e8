import type { Page } from "playwright/test";
import { anotherContext } from "./support/another-context";
import { expectAccessible, goAs, offer, openOrder, rowOf, step, want } from "./support/ordering";
import { ownTitle } from "./support/own-recipe";
import { expect, test } from "./support/test";

for (const width of [390, 1280]) {
  test(`an organiser changes title, closing day and a pack of an open order at ${String(width)} px`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    const order = await openOrderOfCaps(page, "Changing order");
    await expect(page.getByText("500 pcs for 12.50 EUR")).toBeVisible();
    await page.getByText("Change the pack of 100 pcs").click();
    const pack = rowOf(page, "100 pcs");
    await pack.getByLabel("Pack size, pcs").fill("150");
    await pack.getByLabel("Price, EUR").fill("3");
    await expectAccessible(page);
    await pack.getByRole("button", { name: "Save the pack" }).click();
    // 450 caps in packs of 150: three of them, and none is left over.
    await expect(page.getByText("450 pcs for 9.00 EUR")).toBeVisible();

    await page.goto(order);
    const title = ownTitle("Changed order");
    await page.getByText("Change title, closing day or note").click();
    await page.getByLabel("Title").fill(title);
    await page.getByLabel("Closing day").fill("2026-12-20");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Save the changes" }).click();
    await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
    await expect(page.getByText(/closes on/)).toContainText("20 Dec");
    await step(page, "Lock the order");
    await expect(page.getByText("Change title, closing day or note")).toHaveCount(0);
  });

  test(`a late wish is asked for, shown as a difference and taken in at ${String(width)} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    const order = await openOrderOfCaps(page, "Late order");
    await page.goto(order);
    await step(page, "Lock the order");
    await page.getByText("Let one member wish late").click();
    await page.getByLabel("Member").selectOption("Mads Underbough");
    await page.getByLabel("Reason").fill("Was away");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Let them wish" }).click();
    await expect(page.getByText("Mads Underbough may change one wish, and has not said which yet.")).toBeVisible();

    await goAs(page, "member", order);
    await expect(page.getByText(/lets you change one wish/)).toBeVisible();
    await page.getByRole("link", { name: "Crown caps", exact: true }).click();
    await page.getByLabel("Amount I want beside, pcs").fill("100");
    await expectAccessible(page);
    await page.getByRole("button", { name: "Ask for it" }).click();
    await expect(page.getByText("Asked for: an organiser decides on it.")).toBeVisible();
    await page.goto(order);
    await expect(page.getByText(/^Mads Underbough wants 100 pcs of/)).toBeVisible();
    await expect(page.getByRole("button", { name: /^Take it in/ })).toHaveCount(0);

    await goAs(page, "organiser", order);
    // 450 caps are five packs for 12.50; 550 are six for 15.00.
    const cost = page.getByRole("table", { name: "What the late wish changes" }).getByRole("row", { name: /^Cost/ });
    await expect(cost).toContainText("12.50");
    await expect(cost).toContainText("15.00");
    await expectAccessible(page);
    await page.getByRole("button", { name: /^Take it in/ }).click();
    await expect(page.getByRole("button", { name: /^Take it in/ })).toHaveCount(0);
    await expect(rowOf(page, "Crown caps")).toContainText("6 × 100");
    await expect(page.getByRole("region", { name: "History" })).toContainText(
      "100 pcs of Crown caps beside the sheets, not 0 pcs (Was away)",
    );
  });
}

test("of two organisers who change an order at once, the second is told and keeps what was typed", async ({
  page,
  browser,
}) => {
  const order = await openOrder(page, "Twice changed order");
  const second = await (await anotherContext(browser)).newPage();
  await goAs(second, "organiser", order);
  for (const each of [page, second]) {
    await each.getByText("Change title, closing day or note").click();
    await each.getByLabel("Note").fill(each === page ? "First" : "Second");
  }
  await page.getByRole("button", { name: "Save the changes" }).click();
  await expect(page.getByText("First", { exact: true })).toBeVisible();
  await second.getByRole("button", { name: "Save the changes" }).click();
  await expect(second.getByText(/^Somebody changed this since the page was opened/)).toBeVisible();
  await expect(second.getByLabel("Note")).toHaveValue("Second");
});

test("malt is ordered in pounds and ounces by who writes them out", async ({ page }) => {
  await openOrder(page, "Pound order");
  await page.getByLabel("Name", { exact: true }).fill("Invented malt");
  // Another unit may be written out; 10 lb 2 oz are 4592.6 g.
  await page.getByLabel("Amount, in the unit chosen above").fill("10 lb 2 oz");
  await page.getByRole("button", { name: "I want this too" }).click();
  await page.getByRole("link", { name: "Invented malt", exact: true }).click();
  await expect(rowOf(page, "Orla Fennimoor")).toContainText("4.593");
  await page.getByLabel("Pack size, kg").fill("0.0005");
  await page.getByLabel("Price, EUR").fill("3");
  await page.getByRole("button", { name: "Add the pack" }).click();
  await expect(
    page.getByText("Pack size “0.0005” is finer than can be weighed out; it takes whole grams").last(),
  ).toBeVisible();
});

async function openOrderOfCaps(page: Page, words: string): Promise<string> {
  const order = await openOrder(page, words);
  await want(page, { what: "Anything else, in pieces", name: "Crown caps", amount: "450" });
  await offer(page, { item: "Crown caps", size: "100", price: "2.50", unit: "pcs" });
  await expect(rowOf(page, "100 pcs")).toBeVisible();
  return order;
}
