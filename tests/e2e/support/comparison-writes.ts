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
];
