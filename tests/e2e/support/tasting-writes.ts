import type { Page } from "playwright/test";
import { CLUB, ownTitle } from "./own-recipe";

/** The organiser begins a tasting as its steward, and stays on its preparation. */
export async function beginTasting(page: Page, title: string): Promise<void> {
  await page.goto(`${CLUB}/tastings/new`);
  await page.getByLabel("Title").fill(title);
  await page.getByRole("button", { name: "Make the tasting" }).click();
  await page.getByRole("heading", { level: 2, name: "Another flight" }).waitFor();
}

/** What is written to a tasting, for the tests of who may not. */
export const TASTING_WRITES = [
  {
    what: "a flight of a tasting",
    by: "organiser",
    // A steward of the club prepares tastings, but not one that somebody else does.
    refusal: /Only stewards and organisers prepare tastings here|Only the steward of a tasting prepares it/,
    prepare: async (page: Page) => {
      await beginTasting(page, ownTitle("Nobody else's tasting"));
      await page.getByLabel("Name of the flight").fill("Never tasted");
    },
    button: "Add the flight",
    words: /^Never tasted/,
  },
];
