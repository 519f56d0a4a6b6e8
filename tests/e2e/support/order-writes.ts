import type { Page } from "playwright/test";
import { CLUB, ownTitle } from "./own-recipe";
import { planBrew } from "./planned-brew";

/** What is written to orders, for the tests of who may not. */
export const ORDER_WRITES = [
  {
    what: "an order",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/orders/new`);
      await page.getByLabel("Title").fill(ownTitle("Never opened"));
    },
    button: "Open the order",
    words: /^Never opened/,
    at: `${CLUB}/orders`,
  },
  {
    what: "a wish in an order",
    by: "member",
    refusal: /Only members and organisers order here/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/orders`);
      await page.getByRole("link", { name: "Porter order", exact: true }).click();
      await page.getByLabel("Name", { exact: true }).fill("Never wanted");
      await page.getByLabel("Amount, in the unit chosen above").fill("3");
    },
    button: "I want this too",
    words: /^Never wanted/,
  },
  {
    what: "another title of an order",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/orders`);
      await page.getByRole("link", { name: "Porter order", exact: true }).click();
      await page.getByText("Change title, closing day or note").click();
      await page.getByLabel("Note", { exact: true }).fill("Never noted");
    },
    button: "Save the changes",
    words: /^Never noted/,
  },
  {
    what: "the end of a planned brew",
    by: "member",
    refusal: /Only who brews this, their helpers and organisers drop it/,
    prepare: async (page: Page) => {
      await planBrew(page, "Coal Quay Porter", "Shed fifty");
      await page.getByText("Drop this brew", { exact: true }).click();
    },
    button: "Drop it for good",
    words: /^Dropped on/,
  },
];
