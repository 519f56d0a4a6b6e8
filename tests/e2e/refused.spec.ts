import type { Page } from "playwright/test";
import { planBrew } from "./support/planned-brew";
import { personOf, signInAs } from "./support/sign-in";
import { WRITES } from "./support/every-write";
import { intercept, send } from "./support/writes";
import { expect, test } from "./support/test";

const READ_ONLY = ["judge", "steward"];
const ELSEWHERE = "https://elsewhere.example";

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

/** How often the words stand on a page that is opened anew. */
async function count(page: Page, address: string, words: RegExp): Promise<number> {
  await page.goto(address);
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
  return page.getByText(words).count();
}
