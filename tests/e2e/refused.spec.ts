import { expect, test, type Page } from "playwright/test";
import { ORDER_WRITES } from "./support/order-writes";
import { CLUB, ownTitle, writeRecipe } from "./support/own-recipe";
import { planBrew } from "./support/planned-brew";
import { personOf, signInAs } from "./support/sign-in";
import { intercept, send } from "./support/writes";

const READ_ONLY = ["judge", "steward"];
const ELSEWHERE = "https://elsewhere.example";

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

const WRITES: readonly Write[] = [
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
  {
    what: "an order",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page) => {
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
    prepare: async (page) => {
      await page.goto(`${CLUB}/orders`);
      await page.getByRole("link", { name: "Porter order", exact: true }).click();
      await page.getByLabel("Name", { exact: true }).fill("Never wanted");
      await page.getByLabel("Amount, in the unit chosen above").fill("3");
    },
    button: "I want this too",
    words: /^Never wanted/,
  },
  ...ORDER_WRITES,
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

for (const { what, by, refusal, prepare, button, words, at } of WRITES) {
  test(`${what}: refused from a reader and from another origin, and nothing is written`, async ({ page }) => {
    await signInAs(page, by);
    await prepare(page);
    const write = await intercept(page, () => page.getByRole("button", { name: button }).last().click());
    const place = at ?? page.url();
    const before = await count(page, place, words);

    for (const origin of [ELSEWHERE, "null", null]) {
      expect((await send(page, write, origin)).status, `from ${String(origin)}`).toBe(403);
    }
    for (const reader of READ_ONLY) {
      await signInAs(page, reader);
      const { text } = await send(page, write);
      expect(text, reader).toMatch(refusal);
    }
    await signInAs(page, "outsider");
    await send(page, write);
    await page.context().clearCookies();
    await send(page, write);

    await signInAs(page, by);
    expect(await count(page, place, words)).toBe(before);
  });
}

test("another member’s reading does not get into a brew", async ({ page }) => {
  await signInAs(page, "member");
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  const sheet = page.url();
  await page.getByLabel("Mash water, L").fill("20.5");
  const reading = await intercept(page, () => page.getByRole("button", { name: "Save Mash water" }).click());

  await signInAs(page, "bero");
  await page.goto(sheet);
  await expect(page.getByRole("button", { name: "Save Mash water" })).toHaveCount(0);
  const { text } = await send(page, reading);
  expect(text).toMatch(/Only who brews this/);
  await page.reload();
  await expect(page.getByRole("region", { name: "Readings", exact: true })).toContainText("None yet");
});

test("a sign-in from another origin is refused", async ({ page }) => {
  await page.goto("/sign-in");
  await page.getByLabel("E-mail address").fill(personOf("member").email);
  await page.getByLabel("Password").fill("not needed here");
  const write = await intercept(page, () => page.getByRole("button", { name: "Sign in" }).click());
  expect((await send(page, write, ELSEWHERE)).status).toBe(403);
});

async function openSharedBrew(page: Page): Promise<void> {
  await page.goto(`${CLUB}/shared-brews`);
  await page.getByRole("link", { name: "Autumn shared brew: Millrace Pale Ale" }).click();
}

/** How often the words stand on a page that is opened anew. */
async function count(page: Page, address: string, words: RegExp): Promise<number> {
  await page.goto(address);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  return page.getByText(words).count();
}
