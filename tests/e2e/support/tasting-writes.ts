import type { Page } from "playwright/test";
import { CLUB, ownTitle } from "./own-recipe";

/** The organiser begins a tasting as its steward, and stays on its preparation. */
export async function beginTasting(page: Page, title: string): Promise<void> {
  await page.goto(`${CLUB}/tastings/new`);
  await page.getByLabel("Title").fill(title);
  await page.getByRole("button", { name: "Make the tasting" }).click();
  await page.getByRole("heading", { level: 2, name: "Another flight" }).waitFor();
}

/** The demo's open tasting, which this organiser prepares; stays on one of its pages. */
async function openWinterTasting(page: Page, name: string): Promise<void> {
  await page.goto(`${CLUB}/tastings`);
  await page.getByRole("link", { name: "Winter tasting" }).click();
  await page.getByRole("navigation", { name: "This tasting" }).getByRole("link", { name, exact: true }).click();
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
  {
    what: "a score sheet from paper",
    by: "organiser",
    refusal: /Only the steward of a tasting enters sheets from paper/,
    prepare: async (page: Page) => {
      await openWinterTasting(page, "Enter paper");
      await page.getByRole("link", { name: "Dunja Highstead" }).click();
      await page
        .getByRole("list", { name: "Sheets of Dunja Highstead" })
        .getByRole("link", { name: /^Pale ales, again: entry/ })
        .first()
        .click();
      for (const part of ["aroma", "appearance", "flavour", "mouthfeel", "overall impression"])
        await page.getByLabel(`Points for ${part}`).fill("2,5");
    },
    button: /^Enter for/,
    words: /^in$/,
  },
  {
    what: "an answer of a triangle from paper",
    by: "organiser",
    refusal: /Only the steward of a tasting enters sheets from paper/,
    prepare: async (page: Page) => {
      await openWinterTasting(page, "Enter paper");
      await page.getByRole("link", { name: "Dunja Highstead" }).click();
      await page.getByRole("link", { name: /^Two milds: glasses/ }).click();
      await page.getByLabel("Odd glass").selectOption({ index: 1 });
    },
    button: /^Enter for/,
    words: /^in$/,
  },
  {
    what: "a reminder of missing sheets",
    by: "organiser",
    refusal: /Only the steward of a tasting and organisers remind its judges/,
    prepare: (page: Page) => openWinterTasting(page, "Results"),
    button: "Remind of missing sheets",
    words: /^Judges were last reminded/,
  },
];
