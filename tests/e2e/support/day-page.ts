import { expect, type Locator, type Page } from "playwright/test";
import type { DaySheet } from "@/lib/model/day-sheet";
import { planBrew } from "./planned-brew";

/** Plans a brew and opens its brew day; the address is that of the page. */
export async function openNewDay(page: Page): Promise<void> {
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  await page.getByRole("link", { name: "Brew day" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Coal Quay Porter" })).toBeVisible();
  await expect(page.getByText("This page starts without a network.")).toBeVisible();
}

/** The button under the thumb. */
export function mainButton(page: Page): Locator {
  return page.getByRole("region", { name: "At hand" }).getByRole("button").first();
}

/** Says what is safe and what is on this device only. */
export function safety(page: Page): Locator {
  return page
    .getByRole("status")
    .filter({ hasText: /server|device only/ })
    .first();
}

/** Types a reading with the keypad of the sheet that is open. */
export async function type(page: Page, digits: string): Promise<void> {
  for (const digit of digits) {
    const name = digit === "." ? "Decimal point" : digit;
    await page.getByRole("dialog").getByRole("button", { name, exact: true }).click();
  }
}

/** Enters a temperature of the kettle. */
export async function enterTemperature(page: Page, digits: string): Promise<void> {
  await page.getByRole("button", { name: "Temperature", exact: true }).click();
  await type(page, digits);
  await page.getByRole("button", { name: "Keep it" }).click();
  await expect(page.getByRole("dialog")).toHaveCount(0);
}

/** The sheet as the server has it, with the whole log. */
export async function sheetOnServer(page: Page): Promise<DaySheet> {
  const [, , space = "", brew = ""] = new URL(page.url()).pathname.split("/");
  const response = await page.request.get(`/api/brew-day/${space}/${brew}`);
  expect(response.status()).toBe(200);
  return (await response.json()) as DaySheet;
}

/** Every event that the device keeps as its own, by identifier. */
export function waitingOnDevice(page: Page): Promise<readonly string[]> {
  return page.evaluate(
    () =>
      new Promise<readonly string[]>((resolve, reject) => {
        const open = indexedDB.open("gylebook-day");
        open.onerror = () => reject(new Error("the device's store does not open"));
        open.onsuccess = () => {
          const keys = open.result.transaction("waiting").objectStore("waiting").getAllKeys();
          keys.onsuccess = () => {
            open.result.close();
            resolve(keys.result.map(String));
          };
        };
      }),
  );
}
