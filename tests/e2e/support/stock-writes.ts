import type { Page } from "playwright/test";
import { CLUB, ownTitle } from "./own-recipe";

/** What is written to ingredients and lots, for the tests of who may not. */
export const STOCK_WRITES = [
  {
    what: "an ingredient of the club",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/ingredients/new?kind=salt`);
      await page.getByLabel("Name", { exact: true }).fill(ownTitle("Never added"));
    },
    button: "Keep the ingredient",
    words: /^Never added/,
    at: `${CLUB}/ingredients?whose=club`,
  },
  {
    what: "a lot",
    by: "member",
    refusal: /Only members and organisers brew here/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/ingredients/lots/new?kind=salt`);
      await page.getByLabel("Ingredient", { exact: true }).fill("Gypsum");
      await page.getByLabel("Label", { exact: true }).fill(ownTitle("Never kept"));
      await page.getByLabel("On hand, g").fill("10");
    },
    button: "Keep the lot",
    words: /Never kept/,
    at: `${CLUB}/ingredients?whose=club&kind=salt`,
  },
  {
    what: "a movement of a lot",
    by: "organiser",
    refusal: /Only who keeps this lot or an organiser changes it/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/ingredients?whose=club&kind=salt`);
      await page
        .getByRole("link", { name: /Jar on the shelf/ })
        .first()
        .click();
      await page.getByLabel("Amount, g").fill("3");
      await page.getByLabel("Why", { exact: true }).fill("Never counted");
    },
    button: "Note it",
    words: /^Never counted/,
  },
];
