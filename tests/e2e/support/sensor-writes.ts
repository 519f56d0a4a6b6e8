import { expect, type Page } from "playwright/test";
import { CLUB, ownTitle } from "./own-recipe";

/** Makes a key of a sensor on the page that is open, and says it. */
export async function makeKey(page: Page, name: string): Promise<string> {
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByRole("button", { name: "Make a key" }).click();
  const shown = page.getByLabel("The key. Copy it now: it is shown only this once.");
  await expect(shown).toBeVisible();
  return shown.inputValue();
}

/** Keys of sensors, for the tests of who may not. */
export const SENSOR_WRITES = [
  {
    what: "a key of a sensor",
    by: "member",
    refusal: /Only members and organisers brew here/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/sensors`);
      await page.getByLabel("Name", { exact: true }).fill(ownTitle("Never made"));
    },
    button: "Make a key",
    words: /^Never made/,
  },
  {
    what: "the end of a key",
    by: "member",
    // Somebody else's key is none of theirs.
    refusal: /There is no such key/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/sensors`);
      await makeKey(page, ownTitle("Never revoked"));
    },
    button: /^Revoke the key of Never revoked/,
    words: /^revoked /,
  },
];
