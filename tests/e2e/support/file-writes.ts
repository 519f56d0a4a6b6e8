import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, type Page } from "playwright/test";
import { CLUB, openRecipe, ownTitle, writeRecipe } from "./own-recipe";

const INVENTED = fileURLToPath(new URL("../../reference/exchange/invented.beerjson.json", import.meta.url));

/** The invented file of a recipe under a title of its own. */
export function recipeFile(title: string): {
  readonly name: string;
  readonly mimeType: string;
  readonly buffer: Buffer;
} {
  const text = readFileSync(INVENTED, "utf8").replace("Invented weir bitter", title);
  return { name: "invented.json", mimeType: "application/json", buffer: Buffer.from(text) };
}

/** Chooses a file of recipes and looks at what would be taken of it. */
export async function lookAtFile(page: Page, title: string): Promise<void> {
  await page.goto(`${CLUB}/recipes/import`);
  await page.getByLabel("File", { exact: true }).setInputFiles(recipeFile(title));
  await page.getByRole("button", { name: "Show what would be taken" }).click();
  await expect(page.getByRole("heading", { name: "What would be taken" })).toBeFocused();
}

/** Downloads the file of the club, and gives it to the form that takes one. */
async function offerClubFile(page: Page): Promise<void> {
  await page.goto(`${CLUB}/club-file`);
  const download = page.waitForEvent("download");
  await page.getByRole("link", { name: "Download the club" }).click();
  await page.getByLabel("File of a club").setInputFiles(await (await download).path());
}

/** Copies, publications and files, for the tests of who may not. */
export const FILE_WRITES = [
  {
    what: "a copy of a recipe",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page: Page) => {
      await openRecipe(page, "Millrace Pale Ale");
      await page.getByRole("link", { name: "Copy", exact: true }).click();
      await page.getByLabel("Copy into").selectOption("hollowmere");
      await page.getByLabel("Title of the copy").fill(ownTitle("Never copied"));
    },
    button: "Copy the recipe",
    words: /^Never copied/,
    at: `${CLUB}/recipes`,
  },
  {
    what: "a publication",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page: Page) => {
      await writeRecipe(page, ownTitle("Never public"));
      await page.getByRole("link", { name: "Publish" }).click();
    },
    button: "Publish revision 1",
    words: /^\/p\//,
  },
  {
    what: "the end of a publication",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page: Page) => {
      await writeRecipe(page, ownTitle("Never withdrawn"));
      await page.getByRole("link", { name: "Publish" }).click();
      await page.getByRole("button", { name: "Publish revision 1" }).click();
      await expect(page.getByRole("link", { name: /^\/p\// })).toBeVisible();
    },
    button: "Withdraw revision 1",
    words: /^Revision 1, withdrawn/,
  },
  {
    what: "a look into a file of recipes",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page: Page) => {
      await page.goto(`${CLUB}/recipes/import`);
      await page.getByLabel("File", { exact: true }).setInputFiles(recipeFile(ownTitle("Never looked at")));
    },
    button: "Show what would be taken",
    words: /^Never looked at/,
    at: `${CLUB}/recipes`,
  },
  {
    what: "an import",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: (page: Page) => lookAtFile(page, ownTitle("Never imported")),
    button: "Import 1 recipe",
    words: /^Never imported/,
    at: `${CLUB}/recipes`,
  },
  {
    what: "the end of an import",
    by: "member",
    refusal: /Only members and organisers write recipes here/,
    prepare: async (page: Page) => {
      const title = ownTitle("Never taken back");
      await lookAtFile(page, title);
      await page.getByRole("button", { name: "Import 1 recipe" }).click();
      await expect(page.getByRole("heading", { name: "1 recipe imported" })).toBeFocused();
      await page.goto(`${CLUB}/recipes/import`);
    },
    // The latest import is the first of the list, and the test presses the last button of a name.
    button: "Withdraw this import",
    words: /^Never taken back/,
    at: `${CLUB}/recipes`,
  },
  {
    what: "a look into the file of a club",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: offerClubFile,
    button: "Look into the file",
    words: /was taken out of its file/,
  },
  {
    what: "a club out of its file",
    by: "organiser",
    refusal: /Only an organiser does this/,
    prepare: async (page: Page) => {
      await offerClubFile(page);
      await page.getByRole("button", { name: "Look into the file" }).click();
      await expect(page.getByRole("button", { name: "Take the club" })).toBeVisible();
    },
    button: "Take the club",
    words: /was taken out of its file/,
  },
];
