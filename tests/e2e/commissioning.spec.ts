import type { Page } from "playwright/test";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

/** 8 W/K, 2.4 kW and 3000 J/K with 20 L of water: the closed form of first-order heating, air 20 °C. */
const HEAT_J_PER_K = 20 * 0.99821 * 4186.8 + 3000;
const up = (minute: number): number => 320 - 305 * Math.exp((-8 * 60 * minute) / HEAT_J_PER_K);
const down = (minute: number): number => 20 + 70 * Math.exp((-8 * 60 * minute) / HEAT_J_PER_K);

async function newKettle(page: Page): Promise<string> {
  const name = ownTitle("Trial kettle");
  await page.goto(`${CLUB}/equipment/new`);
  await page.getByLabel("Name").fill(name);
  await page.getByLabel("Kettle volume, L").fill("30");
  await page.getByLabel("Power, W").fill("2500");
  await page.getByLabel("Usual batch, L").fill("20");
  await page.getByRole("button", { name: "Make the profile" }).click();
  await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
  return name;
}

/** Types a reading and its time; the readings of a test are not half a day apart. */
async function read(page: Page, values: Readonly<Record<string, string>>, clock: string, save: string): Promise<void> {
  for (const [label, value] of Object.entries(values)) await page.getByLabel(label, { exact: true }).fill(value);
  await page.getByLabel("Read at", { exact: true }).fill(clock);
  await page.getByRole("button", { name: save }).click();
  await expect(page.getByLabel("Read at", { exact: true })).toHaveValue("");
}

const clockAt = (minute: number): string => {
  const at = new Date(Date.now() - 3 * 3_600_000 + 60_000 * minute);
  return [at.getHours(), at.getMinutes(), at.getSeconds()].map((part) => String(part).padStart(2, "0")).join(":");
};

async function stateWater(page: Page): Promise<void> {
  await page.getByLabel("Water in the kettle, L").fill("20");
  await page.getByLabel("Temperature of the water when it was measured, °C").fill("20");
  await page.getByRole("button", { name: "Save this" }).click();
  await expect(page.getByLabel("Temperature, °C", { exact: true })).toBeVisible();
}

const WIDTHS = { "a phone": { width: 390, height: 844 }, "a desk": { width: 1280, height: 900 } } as const;

for (const [where, size] of Object.entries(WIDTHS)) {
  test(`on ${where}, a member commissions a kettle with water and finds the figures in its profile`, async ({
    page,
  }) => {
    test.slow();
    await page.setViewportSize(size);
    await signInAs(page, "member");
    const name = await newKettle(page);
    await page.getByRole("button", { name: "Commission with water" }).click();
    await expect(page.getByRole("heading", { level: 1, name: `Commission ${name} with water` })).toBeVisible();

    // Three jugs of 5 L.
    for (const [i, depth] of ["48", "96", "144"].entries()) {
      await read(
        page,
        { "Litres poured in this time, L": "5", "Where the water stands, mm": depth },
        clockAt(i - 10),
        "Save this mark",
      );
    }
    await expect(page.getByRole("table", { name: "The table so far" })).toContainText("15.0");

    await page.getByRole("button", { name: /^Heat-up/ }).click();
    await stateWater(page);
    for (const minute of [0, 4, 8]) {
      await read(page, { "Temperature, °C": up(minute).toFixed(1) }, clockAt(minute), "Save it, read now");
    }
    await expect(page.getByText(/too straight to tell power and losses apart/)).toBeVisible();
    for (const minute of [20, 32, 44]) {
      await read(page, { "Temperature, °C": up(minute).toFixed(1) }, clockAt(minute), "Save it, read now");
    }

    await page.getByRole("button", { name: /^Cooling/ }).click();
    await stateWater(page);
    for (const minute of [60, 80, 100, 120]) {
      await read(page, { "Temperature, °C": down(minute - 60).toFixed(1) }, clockAt(minute), "Save it, read now");
    }
    const loss = page.getByRole("button", { name: /^Heat loss: / });
    await expect(loss).toContainText(/[78]\.\d/);
    await loss.click();
    const panel = page.getByRole("dialog", { name: "Heat loss" });
    await expect(panel).toContainText("Conservation of energy");
    await panel.getByRole("button", { name: "Close" }).click();
    await expect(page.getByText("Everything is on the server.")).toBeVisible();

    await expect(page.getByRole("checkbox", { name: "Heat loss of the kettle" })).toBeChecked();
    await page.getByRole("button", { name: "Save as revision 2" }).click();
    await expect(page.getByText("Saved as revision 2 of the profile.")).toBeVisible();
    await page.getByRole("link", { name: "its profile" }).click();
    await expect(page.getByRole("heading", { level: 1, name })).toBeVisible();
    await expect(page.getByText(/By: commissioning trial of .+, 10 readings\./).first()).toBeVisible();
    await expect(page.getByRole("table", { name: /^Dip-stick, by commissioning trial of/ })).toContainText("144");
  });
}

test("a reading that cannot be sent stays on the phone and arrives later, and a wrong one is corrected", async ({
  page,
  context,
}) => {
  await signInAs(page, "member");
  await newKettle(page);
  await page.getByRole("button", { name: "Commission with water" }).click();
  await page.getByRole("button", { name: /^Boil-off/ }).click();
  await context.setOffline(true);
  await read(page, { "Volume, L": "18" }, clockAt(0), "Save it, read now");
  await expect(page.getByText(/1 entry is on this device only\. There is no connection/)).toBeVisible();
  await context.setOffline(false);
  await expect(page.getByText("Everything is on the server.")).toBeVisible();
  await page.reload();
  await page.getByRole("button", { name: /^Boil-off.*1 reading/ }).click();
  await expect(page.getByText(/^18.00 L at/)).toBeVisible();

  await read(page, { "Volume, L": "61" }, clockAt(60), "Save it, read now");
  await page.getByRole("button", { name: /^Change 61.00 L/ }).click();
  const fix = page.getByRole("group", { name: "Correct this reading" });
  await fix.getByLabel("Volume, L", { exact: true }).fill("16");
  await fix.getByRole("button", { name: "Save the correction" }).click();
  await expect(page.getByText(/Corrected; before: 61.00 L/)).toBeVisible();
  await expect(page.getByRole("button", { name: /^Boil-off: / })).toContainText("1.9");
});
