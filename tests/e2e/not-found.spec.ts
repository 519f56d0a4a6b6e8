import type { Page } from "playwright/test";
import { findDemoRecords, nowhere, type AddressParts } from "./support/club-addresses";
import { addressOf, CLUB_ROUTES, PAGE_ROUTES } from "./support/page-routes";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

// Each of them opens every page of a club twice.
test.describe.configure({ timeout: 600_000 });

const RECORD_ROUTES = CLUB_ROUTES.filter((route) => /\[(?!space\])/.test(route));

test("the routes are read from the app", () => {
  expect(PAGE_ROUTES).toContain("/sign-in");
  expect(CLUB_ROUTES).toContain("/s/[space]");
  expect(RECORD_ROUTES).toContain("/s/[space]/brews/[brew]");
});

test("nobody of another club finds a page of the demo club, nor learns that there is one", async ({ page }) => {
  const records = await findDemoRecords(page);
  await signInAs(page, "outsider");
  for (const route of CLUB_ROUTES) await expectSameAsNowhere(page, route, records, nowhere(crypto.randomUUID()));
});

for (const key of ["organiser", "member", "judge"]) {
  test(`the ${key} of the demo club finds no page of the other club`, async ({ page }) => {
    const records = await findDemoRecords(page);
    await signInAs(page, key);
    for (const route of CLUB_ROUTES) {
      const there = { ...records, space: "farfield" };
      await expectSameAsNowhere(page, route, there, nowhere(crypto.randomUUID()));
    }
  });
}

test("the records of one club are not found in another, not even by its organiser", async ({ page }) => {
  const records = await findDemoRecords(page);
  await signInAs(page, "outsider");
  for (const route of RECORD_ROUTES) {
    await expectSameAsNowhere(page, route, { ...records, space: "farfield" }, nowhere("farfield"));
  }
});

test("whoever is not signed in is sent to the sign-in page, wherever there is a record or not", async ({ page }) => {
  const records = await findDemoRecords(page);
  await page.context().clearCookies();
  for (const route of CLUB_ROUTES) {
    for (const parts of [records, nowhere(crypto.randomUUID())]) {
      const address = addressOf(route, parts);
      await page.goto(address);
      await expect(page.getByRole("heading", { level: 1 })).toHaveText("Sign in");
      const { pathname, searchParams } = new URL(page.url());
      expect({ pathname, next: searchParams.get("next") }).toEqual({ pathname: "/sign-in", next: address });
    }
  }
});

test("an address that is no address of ours is not found", async ({ page }) => {
  const answer = await page.goto("/there-is-no-such-page");
  expect(answer?.status()).toBe(404);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Not found");
});

async function expectSameAsNowhere(page: Page, route: string, there: AddressParts, empty: AddressParts): Promise<void> {
  const seen = await look(page, addressOf(route, there));
  expect(seen.status, route).toBe(404);
  expect(seen, route).toEqual(await look(page, addressOf(route, empty)));
}

/** What somebody gets at an address: the status, the title and every word. */
async function look(page: Page, address: string): Promise<{ status: number | undefined; title: string; text: string }> {
  const answer = await page.goto(address);
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Not found");
  // The title comes a moment after the page.
  await expect(page).toHaveTitle(/^Not found/);
  return { status: answer?.status(), title: await page.title(), text: await page.locator("body").innerText() };
}
