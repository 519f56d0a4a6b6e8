import { readFileSync } from "node:fs";
import { expect, test } from "playwright/test";
import { violations } from "./support/axe";
import { lookAtFile } from "./support/file-writes";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";

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
      multipart: { kettle: "", chosen: "0", file: fileWith("Never kept") },
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
