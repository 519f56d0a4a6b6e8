import { expect, type Page } from "playwright/test";
import { CELLAR_WRITES } from "./cellar-writes";
import { COMPARISON_WRITES } from "./comparison-writes";
import { FILE_WRITES } from "./file-writes";
import { ORDER_WRITES } from "./order-writes";
import { CLUB, ownTitle, writeRecipe } from "./own-recipe";
import { planBrew } from "./planned-brew";
import { SENSOR_WRITES } from "./sensor-writes";
import { STOCK_WRITES } from "./stock-writes";
import { TASTING_WRITES } from "./tasting-writes";

interface Write {
  readonly what: string;
  readonly by: string;
  /** What the server says to a reader who may not. */
  readonly refusal: RegExp;
  /** Goes to the page of the form, and fills it in. */
  readonly prepare: (page: Page) => Promise<void>;
  readonly button: string | RegExp;
  /** Words that would come or go with the write, and the page that has them where it is not the form's own. */
  readonly words: RegExp;
  readonly at?: string;
}

/** Every form that writes something for the club, for the tests of who may not. */
export const WRITES: readonly Write[] = [
  {
    what: "a new recipe",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/recipes/new`);
      await page.getByLabel("Title", { exact: true }).fill(ownTitle("Never written"));
    },
    button: "Save the recipe",
    words: /^Never written/,
    at: `${CLUB}/recipes`,
  },
  {
    what: "the end of a draft",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/recipes/new`);
      await page.getByLabel("Title", { exact: true }).fill(ownTitle("Never discarded"));
      await expect(page.getByText(/^Saved \d\d:\d\d/)).toBeVisible();
      await page.getByRole("button", { name: "Discard the draft" }).click();
    },
    button: "Discard it for good",
    words: /^Draft: Never discarded/,
    at: `${CLUB}/recipes`,
  },
  {
    what: "a revision",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page) => {
      await writeRecipe(page, ownTitle("Never revised"));
      await page.getByLabel("Notes", { exact: true }).fill("Never kept");
    },
    button: "Save as revision 2",
    words: /^Revision 2$/,
  },
  {
    what: "a kettle",
    by: "member",
    refusal: /Only members and organisers keep equipment here/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/equipment/new`);
      await page.getByLabel("Name").fill(ownTitle("Never built"));
      await page.getByLabel("Kettle volume, L").fill("30");
      await page.getByLabel("Power, W").fill("2400");
      await page.getByLabel("Usual batch, L").fill("20");
    },
    button: "Make the profile",
    words: /^Never built/,
    at: `${CLUB}/equipment`,
  },
  {
    what: "the figures of a kettle",
    by: "member",
    refusal: /Only the owner of this equipment or an organiser changes it/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/equipment`);
      await page.getByRole("link", { name: "Test pot" }).click();
      await page.getByLabel("Kettle volume, L", { exact: true }).fill("17");
    },
    button: /^Save as revision/,
    words: /revision 1\./,
  },
  {
    what: "a trial with water",
    by: "member",
    refusal: /Only the owner of this equipment or an organiser commissions it/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/equipment`);
      await page.getByRole("link", { name: "Test pot" }).click();
    },
    button: "Commission with water",
    words: /^Trial of/,
  },
  {
    what: "figures of a trial",
    by: "member",
    refusal: /Only the owner of this equipment or an organiser changes it/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/equipment`);
      await page.getByRole("link", { name: "Test pot" }).click();
      await page
        .getByRole("link", { name: /^Trial of/ })
        .last()
        .click();
      await expect(page.getByText("Everything is on the server.")).toBeVisible();
    },
    button: /^Save as revision/,
    words: /took figures of this trial/,
  },
  {
    what: "a brew",
    by: "member",
    refusal: /Only members and organisers brew here/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/recipes`);
      await page.getByRole("link", { name: "Kettles for Hollowmere Pils" }).click();
      await page.getByRole("link", { name: "Test pot", exact: true }).click();
    },
    button: /^Plan this brew/,
    words: /^Test pot$/,
    at: `${CLUB}/brews`,
  },
  {
    what: "a way out",
    by: "member",
    refusal: /Only the owner of this kettle or an organiser chooses for it/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/recipes`);
      await page.getByRole("link", { name: "Kettles for Hollowmere Pils" }).click();
      await expect(page.getByRole("heading", { level: 1, name: /on every kettle$/ })).toBeVisible();
      // A pot of fifteen litres does not hold the volume of the recipe.
      await page.goto(`${page.url()}?volume=written`);
      await page.getByRole("link", { name: "Test pot", exact: true }).click();
    },
    button: /^Choose ?: /,
    words: /^Chosen by/,
  },
  {
    what: "a reading of a brew",
    by: "member",
    refusal: /Only who brews this/,
    prepare: async (page) => {
      await planBrew(page, "Coal Quay Porter", "Shed fifty");
      await page.getByLabel("Mash water, L").fill("20.5");
    },
    button: "Save Mash water",
    words: /^None yet/,
  },
  {
    what: "the start of a brew",
    by: "member",
    refusal: /Only who brews this/,
    prepare: async (page) => {
      await planBrew(page, "Coal Quay Porter", "Shed fifty");
      await page.getByRole("button", { name: "Start the brew day" }).click();
    },
    // The second button of this name is the one that confirms.
    button: "Start the brew day",
    words: /^Times count from starting to weigh out/,
  },
  {
    what: "a shared brew",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/shared-brews/new`);
      await page.getByLabel("Title").fill(ownTitle("Never called"));
    },
    button: "Call the shared brew",
    words: /^Never called/,
    at: `${CLUB}/shared-brews`,
  },
  {
    what: "a version of a plan",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page) => {
      await openSharedBrew(page);
      await page.getByRole("link", { name: "Change the plan" }).click();
      await page.getByLabel("Why it changes").fill("Never changed");
      await page.getByLabel("Another rule, in words").fill(ownTitle("Never held"));
    },
    button: /^Make version/,
    words: /Never changed/,
    at: `${CLUB}/notices`,
  },
  {
    what: "a place in a shared brew",
    by: "organiser",
    refusal: /Only members and organisers brew here/,
    prepare: async (page) => {
      await openSharedBrew(page);
      await page.getByText("Enter somebody", { exact: true }).click();
      await page.getByRole("link", { name: /with Pantry twenty$/ }).click();
    },
    button: /^Enter /,
    words: /^The part of/,
  },
  ...CELLAR_WRITES,
  ...COMPARISON_WRITES,
  ...ORDER_WRITES,
  ...FILE_WRITES,
  ...STOCK_WRITES,
  ...SENSOR_WRITES,
  ...TASTING_WRITES,
  {
    what: "an invitation",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page) => {
      await page.goto(`${CLUB}/people`);
      await page.getByLabel("For one e-mail address only").fill("never@invited.example");
    },
    button: "Make an invitation link",
    words: /^never@/,
  },
];

async function openSharedBrew(page: Page): Promise<void> {
  await page.goto(`${CLUB}/shared-brews`);
  await page.getByRole("link", { name: "Autumn shared brew: Millrace Pale Ale" }).click();
}
