import { readFileSync } from "node:fs";
import { violations } from "./support/axe";
import { lookAtFile, recipeFile } from "./support/file-writes";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

for (const { name, width } of [
  { name: "a phone", width: 390 },
  { name: "a desk", width: 1280 },
]) {
  test(`on ${name} a member looks at a file line by line, imports it, exports it again and withdraws it`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "member");
    const title = ownTitle("Invented bitter");
    await lookAtFile(page, title);

    const recipe = page.getByRole("region", { name: title });
    await expect(recipe.getByText(/\d+ of \d+ fields understood/)).toBeVisible();
    const berries = recipe.getByRole("row").filter({ hasText: "fermentable_additions › 4 › type" });
    await expect(berries).toContainText("Refused");
    await expect(recipe.getByRole("row").filter({ hasText: "batch_size" })).toContainText("18.927 L");
    await expect(recipe.getByRole("row", { name: /Original extract/ })).toBeVisible();
    expect(await violations(page)).toEqual([]);
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(sideways).toBeLessThanOrEqual(0);

    await page.getByRole("button", { name: "Import 1 recipe" }).click();
    await expect(page.getByRole("heading", { name: "1 recipe imported" })).toBeFocused();
    await page.getByRole("region", { name: "1 recipe imported" }).getByRole("link", { name: title }).click();
    await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();

    const download = page.waitForEvent("download");
    await page.getByRole("link", { name: "BeerJSON 2.06" }).click();
    const file = await (await download).path();
    const text = readFileSync(file, "utf8");
    for (const kept of [title, "Towpath berries", "house_code"]) expect(text).toContain(kept);

    await page.goto(`${CLUB}/recipes/import`);
    const row = page.getByRole("row").filter({ hasText: title });
    await row.getByRole("button", { name: "Withdraw this import" }).click();
    await expect(row).toHaveCount(0);
  });
}

for (const { name, width } of [
  { name: "a phone", width: 390 },
  { name: "a desk", width: 1280 },
]) {
  test(`on ${name} an export with nothing chosen comes back to its form, which keeps what was chosen`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "member");
    await page.goto(`${CLUB}/recipes/export`);
    const boxes = page.getByRole("group", { name: "Recipes" }).getByRole("checkbox");
    const chosen = page.getByRole("group", { name: "Recipes" }).getByRole("checkbox", { checked: true });
    // Other tests import recipes meanwhile, and a box may be touched before the page has come to itself.
    await expect(async () => {
      for (const box of await boxes.all()) await box.uncheck();
      await expect(chosen).toHaveCount(0, { timeout: 1000 });
    }).toPass();
    await page.getByLabel("Format").selectOption("beerxml-1.0");
    await page.getByRole("button", { name: "Download the file" }).click();
    const problem = page.getByRole("group", { name: "There is a problem" });
    await expect(problem).toBeFocused();
    await expect(problem.getByRole("link", { name: "Choose at least one recipe" })).toBeVisible();
    await expect(page.getByLabel("Format")).toHaveValue("beerxml-1.0");
    await expect(chosen).toHaveCount(0);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await violations(page), colorScheme).toEqual([]);
    }
    const sideways = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(sideways).toBeLessThanOrEqual(0);

    // One of the demo's own: what another test imports may be taken back meanwhile.
    await page.getByRole("checkbox", { name: "Millrace Pale Ale", exact: true }).check();
    const download = page.waitForEvent("download");
    await page.getByRole("button", { name: "Download the file" }).click();
    expect(readFileSync(await (await download).path(), "utf8")).toContain("<RECIPES>");
  });

  test(`on ${name} the export says what of a file goes back and what a revision has overtaken`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "member");
    const title = ownTitle("Overtaken bitter");
    await lookAtFile(page, title);
    await page.getByRole("button", { name: "Import 1 recipe" }).click();
    await page.getByRole("region", { name: "1 recipe imported" }).getByRole("link", { name: title }).click();
    await page.getByLabel("Into the fermenter").first().fill("25 L");
    await page.getByRole("button", { name: "Save as revision 2" }).click();
    await expect(page.getByRole("link", { name: "Revision 2" }).first()).toBeVisible();

    await page.goto(`${CLUB}/recipes/export`);
    const box = page.getByRole("checkbox", { name: title });
    await expect(box).toHaveAccessibleDescription(/^From a BeerJSON file: \d+ fields without a place here go back/);
    const lost = page.getByRole("group", { name: `From the file of ${title}` });
    await lost.getByText(/fields no longer fit$/).click();
    await expect(lost.getByText("batch_size: 5 gal")).toBeVisible();
    expect(await violations(page)).toEqual([]);
  });
}

test("without scripts, too, an export with nothing chosen comes back to its form", async ({ page, browser }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes`);
  const plain = await browser.newContext({
    javaScriptEnabled: false,
    storageState: await page.context().storageState(),
    baseURL: new URL(page.url()).origin,
  });
  const form = await plain.newPage();
  await form.goto(`${CLUB}/recipes/export?refused=yes&format=beerjson-3.0`);
  await expect(form.getByRole("link", { name: "Choose at least one recipe" })).toBeVisible();
  await form.getByRole("button", { name: "Download the file" }).click();
  await expect(form).toHaveURL(/recipes\/export\?.*refused=yes/);
  await expect(form.getByRole("heading", { level: 1, name: "Export recipes" })).toBeVisible();
  await expect(form.getByRole("link", { name: "Choose at least one recipe" })).toBeVisible();
  await plain.close();
});

test("a program that asks for a file of nothing is answered as a program", async ({ page }) => {
  await signInAs(page, "member");
  const answer = await page.request.get(`${CLUB}/recipes/export/file?format=beerxml-1.0`, {
    headers: { accept: "application/json" },
  });
  expect(answer.status()).toBe(400);
  expect(await answer.json()).toEqual({ fieldErrors: { recipe: "Choose at least one recipe" } });
});

test("a file that is none is refused in words, and nothing is kept", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes/import`);
  await page.getByLabel("Or its text").fill('<!DOCTYPE RECIPES [<!ENTITY a "b">]><RECIPES/>');
  await page.getByRole("button", { name: "Show what would be taken" }).click();
  await expect(page.getByText(/a document type \(DOCTYPE\) is not taken/)).toBeVisible();
});

test("who may not write recipes is shown no import, and its handlers refuse", async ({ page }) => {
  await signInAs(page, "judge");
  await page.goto(`${CLUB}/recipes`);
  await expect(page.getByRole("link", { name: "Import" })).toHaveCount(0);
  const origin = new URL(page.url()).origin;
  for (const handler of ["preview", "take"]) {
    const answer = await page.request.post(`${CLUB}/recipes/import/${handler}`, {
      headers: { origin },
      multipart: { kettle: "", chosen: "0", file: recipeFile("Never kept") },
    });
    expect(answer.status()).toBe(403);
    expect(await answer.text()).toContain("Only members and organisers write recipes here");
  }
});

test("a file that is too large is refused with 413", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/recipes`);
  const large = { name: "large.json", mimeType: "application/json", buffer: Buffer.alloc(3 * 1024 * 1024, 32) };
  const answer = await page.request.post(`${CLUB}/recipes/import/preview`, {
    headers: { origin: new URL(page.url()).origin },
    multipart: { kettle: "", file: large },
  });
  expect(answer.status()).toBe(413);
  expect(await answer.text()).toContain("larger than 2 MB");
});

test("an organiser downloads the club, and a member may not", async ({ page }) => {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/people`);
  await page.getByRole("link", { name: "The club as a file" }).click();
  const download = page.waitForEvent("download");
  await page.getByRole("link", { name: "Download the club" }).click();
  const text = readFileSync(await (await download).path(), "utf8");
  expect(text).toContain('"format":"gylebook-club"');
  expect(text).not.toContain("@hollowmere.example");

  await signInAs(page, "member");
  const refused = await page.request.get(`${CLUB}/club-file/download`);
  expect(refused.status()).toBe(403);
});
