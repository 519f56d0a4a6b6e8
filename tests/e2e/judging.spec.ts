import type { Page } from "playwright/test";
import { sheetStanding, type JudgeSheet } from "../../lib/model/tasting/judge-sheet";
import { violations } from "./support/axe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const WORDS = "Invented: bready, some orange, judged in a cellar without a network";

const safety = (page: Page) => page.getByRole("status").filter({ hasText: /server|device only/ });

/** The sheets as the server has them. */
async function onServer(page: Page): Promise<JudgeSheet> {
  const [, , space = "", tasting = ""] = new URL(page.url()).pathname.split("/");
  const response = await page.request.get(`/api/tastings/${space}/${tasting}`);
  expect(response.status()).toBe(200);
  return (await response.json()) as JudgeSheet;
}

test("a judge scores a beer without a network, through a cold start, and hands it in", async ({ page, context }) => {
  test.slow();
  await page.setViewportSize({ width: 390, height: 844 });
  await signInAs(page, "judge");
  await page.goto("/s/hollowmere/tastings");
  await page.getByRole("link", { name: "Winter tasting" }).click();
  await page.getByRole("link", { name: "Judge", exact: true }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Winter tasting" })).toBeVisible();
  await page.getByText("This device").click();
  await expect(page.getByText("This page starts without a network.")).toBeVisible();

  await context.setOffline(true);
  const line = page.getByRole("link", { name: /^Entry \d{3}.*not begun/ }).first();
  const [, entryNo = ""] = /Entry (\d{3})/.exec(await line.innerText()) ?? [];
  await line.click();
  await expect(page.getByRole("heading", { level: 1, name: `Entry ${entryNo}` })).toBeVisible();
  await page
    .getByRole("group", { name: /^Points for aroma/ })
    .getByText("9", { exact: true })
    .click();
  await page.getByRole("button", { name: "Hand in" }).click();
  await expect(page.getByRole("alert")).toContainText("missing: appearance, flavour, mouthfeel, overall impression");
  await page.getByLabel("Notes on aroma").fill(WORDS);
  await page.getByLabel("Notes on aroma").blur();
  await page.getByText("Character", { exact: true }).click();
  await page.getByRole("button", { name: /^Bitter/ }).click();
  await page.getByRole("button", { name: /^Bitter: slight/ }).click();
  await expect(page.getByRole("button", { name: /^Bitter: clear/ })).toBeVisible();
  expect(await violations(page)).toEqual([]);

  // A cold start: the page is closed and opened again, still without a network.
  const address = page.url();
  await page.close();
  const again = await context.newPage();
  await again.setViewportSize({ width: 390, height: 844 });
  await again.goto(address);
  await expect(again.getByLabel("Notes on aroma")).toHaveValue(WORDS);
  for (const [part, points] of [
    ["appearance", "3"],
    ["flavour", "15"],
    ["mouthfeel", "4"],
    ["overall impression", "7"],
  ] as const) {
    await again
      .getByRole("group", { name: `Points for ${part}` })
      .getByText(points, { exact: true })
      .click();
  }
  await again
    .getByRole("group", { name: /^Points for aroma/ })
    .getByText("+½")
    .click();
  // 9½ + 3 + 15 + 4 + 7.
  await expect(again.getByRole("region", { name: "Total and hand in" })).toContainText("38.5 of 50");
  await again.getByRole("button", { name: "Hand in" }).click();
  await expect(again.getByText("38.5 of 50, handed in")).toBeVisible();
  await expect(safety(again)).toContainText("on this device only");

  await context.setOffline(false);
  await expect(safety(again)).toHaveText("Everything is safe on the server.", { timeout: 60_000 });
  const { handedIn, isHandedIn } = sheetStanding((await onServer(again)).entries, Number(entryNo));
  expect(isHandedIn).toBe(true);
  expect(handedIn).toMatchObject({
    scores: { aroma: 9.5, appearance: 3, flavour: 15, mouthfeel: 4, overall: 7 },
    notes: { aroma: WORDS },
    descriptors: [{ word: "bitter", strength: 2 }],
  });
});
