import type { Page } from "playwright/test";
import { CLUB, ownTitle } from "./own-recipe";

/** Saved comparisons, for the tests of who may not. */
export const COMPARISON_WRITES = [
  {
    what: "a saved comparison",
    by: "member",
    refusal: /Only members and organisers brew here/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/comparisons`);
      await page.getByLabel("Name", { exact: true }).fill(ownTitle("Never kept"));
    },
    button: "Save this comparison",
    words: /^Never kept/,
    at: `${CLUB}/comparisons`,
  },
  {
    what: "another name of a saved comparison",
    by: "member",
    refusal: /Only who keeps this comparison and organisers change it/,
    prepare: async (page: Page) => {
      await keepComparison(page, ownTitle("Kept under a name"));
      await page.getByLabel("Name", { exact: true }).fill(ownTitle("Never renamed"));
    },
    button: "Rename",
    words: /^Never renamed/,
  },
  {
    what: "the end of a saved comparison",
    by: "member",
    refusal: /Only who keeps this comparison and organisers change it/,
    prepare: (page: Page) => keepComparison(page, ownTitle("Kept to the end")),
    button: "Take this comparison away",
    words: /^Kept to the end/,
    at: `${CLUB}/comparisons`,
  },
  {
    what: "learned figures of a kettle",
    by: "organiser",
    refusal: /Only the owner of this equipment or an organiser changes it/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/equipment`);
      await page.getByRole("link", { name: "Harbour sixty-five" }).click();
      await page.getByRole("link", { name: "What brews tell of this kettle" }).click();
      await page.getByRole("heading", { level: 1, name: /^What brews tell of/ }).waitFor();
    },
    button: /^Save as revision/,
    words: /^In the profile, learned/,
  },
];

/** Keeps a comparison of one's own, and opens what changes it. */
async function keepComparison(page: Page, name: string): Promise<void> {
  await page.goto(`${CLUB}/comparisons`);
  await page.getByLabel("Name", { exact: true }).fill(name);
  await page.getByRole("button", { name: "Save this comparison" }).click();
  await page.getByText("Rename it or take it away", { exact: true }).click();
}
