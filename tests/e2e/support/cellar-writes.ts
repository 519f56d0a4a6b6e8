import type { Page } from "playwright/test";
import { planBrew } from "./planned-brew";

const ONLY = /Only who brews this, their helpers and organisers write readings to it/;

/** Plans a brew and goes to one of its later pages. */
async function open(page: Page, link: "Cellar" | "Package"): Promise<void> {
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  await page.getByRole("navigation", { name: "This brew" }).getByRole("link", { name: link }).click();
  // The run sheet has fields of like names; it stands until the other page has come.
  await page.waitForURL(new RegExp(`/${link.toLowerCase()}$`));
}

/** What is written in the cellar and at packaging, for the tests of who may not. */
export const CELLAR_WRITES = [
  {
    what: "a pitch",
    by: "member",
    refusal: ONLY,
    prepare: async (page: Page) => {
      await open(page, "Cellar");
      await page.getByLabel("Yeast", { exact: true }).fill("Never pitched");
    },
    button: "Save the pitch",
    words: /^Not logged yet/,
  },
  {
    what: "a gravity in the fermenter",
    by: "member",
    refusal: ONLY,
    prepare: async (page: Page) => {
      await open(page, "Cellar");
      await page.getByLabel("Gravity, SG", { exact: true }).fill("1.040");
    },
    button: "Save Gravity",
    words: /^None yet/,
  },
  {
    what: "a packaging",
    by: "member",
    refusal: ONLY,
    prepare: async (page: Page) => {
      await open(page, "Package");
      await page.getByLabel("Warmest place where it will stand, °C").fill("22");
      await page.getByLabel("How many", { exact: true }).fill("3");
      await page.getByLabel("Reason for packaging now").fill("Never packaged");
    },
    button: "It is in package",
    words: /^In package$/,
  },
];
