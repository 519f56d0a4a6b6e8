import type { Page } from "playwright/test";
import {
  enterTemperature,
  mainButton,
  openNewDay,
  safety,
  sheetOnServer,
  type,
  waitingOnDevice,
} from "./support/day-page";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const LONGEST_DAY = 40;

/** Confirms step after step with the button under the thumb, and adds the hops, until nothing is left. */
async function brewToTheEnd(page: Page, atStep: (title: string) => Promise<void>): Promise<readonly string[]> {
  const done: string[] = [];
  for (let taps = 0; taps < LONGEST_DAY; taps += 1) {
    const added = page.getByRole("list", { name: "To go in" }).getByRole("button", { name: /^Added/ });
    if ((await added.count()) > 0) {
      const left = await added.count();
      await added.first().click();
      await expect(added).toHaveCount(left - 1);
      continue;
    }
    const label = await mainButton(page).innerText();
    await mainButton(page).click();
    done.push(label);
    if (await page.getByText("Everything on the sheet is done.").isVisible()) return done;
    await expect(mainButton(page)).not.toHaveText(label);
    await atStep(label);
    if (label === "Done") return done;
  }
  throw new Error(`the day does not end: ${done.join(", ")}`);
}

test("a whole day is brewed without a network, through two reloads, and arrives once", async ({ page, context }) => {
  test.slow();
  await page.setViewportSize({ width: 390, height: 844 });
  await signInAs(page, "member");
  await openNewDay(page);
  await context.setOffline(true);

  await page.reload();
  await expect(page.getByRole("heading", { level: 1, name: "Coal Quay Porter" })).toBeVisible();
  const taps = await brewToTheEnd(page, async (label) => {
    if (label.endsWith("Heat the strike water")) {
      await enterTemperature(page, "43.5");
      await page.reload();
      await expect(page.getByRole("heading", { name: "Heat the strike water" })).toBeVisible();
    }
  });
  expect(taps.length).toBeGreaterThan(10);
  await page.getByRole("button", { name: "Note", exact: true }).click();
  await page.getByRole("dialog").getByLabel("Note").fill("Invented: brewed in a cellar without a network");
  await page.getByRole("button", { name: "Keep it" }).click();
  const kept = (where: Page) =>
    where
      .getByRole("complementary", { name: "The day so far" })
      .getByText("Invented: brewed in a cellar without a network");
  await expect(kept(page)).toBeVisible();

  // A cold start: the page is closed and opened again, still without a network.
  const address = page.url();
  await page.close();
  const again = await context.newPage();
  await again.setViewportSize({ width: 390, height: 844 });
  await again.goto(address);
  await expect(kept(again)).toBeVisible();
  const waiting = await waitingOnDevice(again);
  expect(waiting.length).toBeGreaterThan(taps.length);
  await expect(safety(again)).toHaveText(
    `No network. ${String(waiting.length)} entries are on this device only.Send now`,
  );

  await context.setOffline(false);
  await expect(safety(again)).toHaveText("Everything is safe on the server.", { timeout: 60_000 });
  expect(await waitingOnDevice(again)).toEqual([]);
  const { entries, brew } = await sheetOnServer(again);
  expect(entries.map(({ event }) => event.id).sort()).toEqual([...waiting].sort());
  expect(brew.state).toBe("in the fermenter");
  const read = entries.flatMap(({ event }) => (event.kind === "temperature" ? [event.value] : []));
  expect(read).toEqual([43.5]);
});

test("two phones at one brew see each other's entries, and what one has confirmed stands", async ({
  page,
  browser,
}) => {
  await signInAs(page, "member");
  await openNewDay(page);
  const other = await browser.newContext({ storageState: await page.context().storageState() });
  const second = await other.newPage();
  await second.goto(page.url());
  await expect(second.getByRole("heading", { level: 1, name: "Coal Quay Porter" })).toBeVisible();

  await mainButton(page).click();
  await enterTemperature(page, "21.5");
  await expect(second.getByRole("heading", { name: "Weigh out" })).toBeVisible();
  await expect(second.getByRole("region", { name: "Log" })).toContainText("21.5");
  await expect(second.getByText(/^Now, since/)).toBeVisible();

  await other.setOffline(true);
  await enterTemperature(second, "22.5");
  await expect(safety(second)).toContainText("1 entry is on this device only.");
  await other.setOffline(false);
  await expect(safety(second)).toHaveText("Everything is safe on the server.", { timeout: 60_000 });
  await expect(page.getByRole("region", { name: "Log" })).toContainText("22.5");
  await other.close();
});

test("a reading is asked about once where it is far off, can be corrected, and keeps its history", async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await signInAs(page, "member");
  await openNewDay(page);
  await mainButton(page).click();
  await page.getByRole("button", { name: "Done: Fill with water" }).click();
  await page.getByRole("button", { name: "Enter Mash water" }).click();
  await type(page, "99");
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(page.getByRole("alert")).toContainText("above the plan. Keep it?");
  await page.getByRole("button", { name: "Keep it as it is" }).click();

  const log = page.getByRole("region", { name: "Log" });
  await expect(log.getByRole("listitem").filter({ hasText: "Mash water" })).toContainText("99.0 L");
  await log.getByRole("button", { name: "Correct Mash water" }).click();
  await type(page, "20");
  await page.getByRole("button", { name: "Keep it", exact: true }).click();
  const reading = log.getByRole("listitem").filter({ hasText: "Mash water" });
  await expect(reading.getByRole("strong")).toContainText("20.0 L");
  await expect(reading.locator("s")).toContainText("99.0 L");
  await expect(reading).toContainText("On the server");

  await log.getByRole("button", { name: "Does not count Mash water" }).click();
  await page.getByLabel("Why").fill("wrong vessel");
  await page.getByRole("button", { name: "It does not count" }).click();
  await expect(reading).toContainText("Does not count: wrong vessel.");
  await expect(safety(page)).toHaveText("Everything is safe on the server.");
  const { entries } = await sheetOnServer(page);
  expect(entries.map(({ event }) => event.kind).filter((kind) => kind !== "step")).toEqual([
    "volume",
    "correct",
    "void",
  ]);
});

test("what is impossible is not kept, and says the field, the value and the range", async ({ page }) => {
  await signInAs(page, "member");
  await openNewDay(page);
  await page.getByRole("button", { name: "Temperature", exact: true }).click();
  await type(page, "400");
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(page.getByRole("dialog")).toContainText(
    "Temperature in the kettle 400.0 °C is outside −5.0 °C to 110.0 °C",
  );
  expect(await waitingOnDevice(page)).toEqual([]);
});
