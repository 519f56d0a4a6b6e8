import { violations } from "./support/axe";
import { mainButton, openNewDay, safety, sheetOnServer } from "./support/day-page";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("an alarm rings at its instant, through a reload, until somebody says that they heard it", async ({ page }) => {
  await signInAs(page, "member");
  await openNewDay(page);
  await mainButton(page).click();
  await page.getByRole("button", { name: "Timer", exact: true }).click();
  await page.getByLabel("What for").fill("Stir the mash");
  await page.getByLabel("Another length, min").fill("0.2");
  await page.getByRole("button", { name: "Start the timer" }).click();
  const dueAt = Date.now() + 12_000;
  const alarms = page.getByRole("region", { name: "Alarms" });
  await expect(alarms.getByRole("listitem").filter({ hasText: "Stir the mash" })).toContainText("0:");
  await expect(safety(page)).toHaveText("Everything is safe on the server.");

  // Its time comes while the page is not open: a tick that was counted would have been lost.
  const address = page.url();
  await page.goto("about:blank");
  await expect.poll(() => Date.now() > dueAt).toBe(true);
  await page.goto(address);
  await expect(alarms.getByRole("alert")).toContainText("Stir the mash");
  await page.reload();
  await expect(alarms.getByRole("alert")).toContainText("Stir the mash");
  await alarms.getByRole("button", { name: "Heard it" }).click();
  await expect(alarms.getByText("Stir the mash")).toHaveCount(0);
  await expect(page.getByText("Alarm heard: Stir the mash")).toBeVisible();
  await expect(safety(page)).toHaveText("Everything is safe on the server.");
  const acts = (await sheetOnServer(page)).entries.flatMap(({ event }) => (event.kind === "timer" ? [event.act] : []));
  expect(acts).toEqual(expect.arrayContaining(["set", "acknowledged"]));
});

test("the boil's alarms hang on the boil, not on the switch: begun late, the hops are late with it", async ({
  page,
}) => {
  test.slow();
  await signInAs(page, "member");
  await openNewDay(page);
  for (let taps = 0; taps < 20; taps += 1) {
    const label = await mainButton(page).innerText();
    await mainButton(page).click();
    if (label === "It boils: Boil") break;
    await expect(mainButton(page)).not.toHaveText(label);
  }
  const alarms = page.getByRole("region", { name: "Alarms" });
  await expect(alarms).toContainText("The boil is over");
  await expect(safety(page)).toHaveText("Everything is safe on the server.");
  const sheet = await sheetOnServer(page);
  const boil = sheet.brew.runSheet.find(({ name }) => name === "boil");
  const begun = sheet.entries.find(({ event }) => event.kind === "step" && event.step === "boil-1");
  const end = sheet.entries.find(({ event }) => event.kind === "timer" && event.timer === "end-boil-1");
  const dueAt = end?.event.kind === "timer" ? Date.parse(end.event.dueAt ?? "") : 0;
  const boilMs = (boil?.minutes ?? 0) * 60_000;
  expect(Math.abs(dueAt - Date.parse(begun?.event.occurredAt ?? "") - boilMs)).toBeLessThan(2000);
});

for (const { name, width } of [
  { name: "a small phone", width: 320 },
  { name: "a phone", width: 390 },
  { name: "a desk", width: 1280 },
]) {
  test(`on ${name} the brew day is read, touched and heard by everybody, in both themes`, async ({ page }) => {
    await page.setViewportSize({ width, height: 844 });
    await signInAs(page, "member");
    await openNewDay(page);
    await mainButton(page).click();
    await page.getByText("Fill with water").first().click();
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await violations(page), colorScheme).toEqual([]);
    }
    await page.getByRole("button", { name: "Temperature", exact: true }).click();
    await expect(page.getByRole("dialog")).toBeVisible();
    expect(await violations(page)).toEqual([]);
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(sideways).toBeLessThanOrEqual(0);
    const small = await page
      .getByRole("dialog")
      .getByRole("button")
      .evaluateAll((buttons) => buttons.filter((button) => button.getBoundingClientRect().height < 44).length);
    expect(small).toBe(0);
  });
}
