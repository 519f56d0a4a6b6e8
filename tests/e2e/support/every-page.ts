import { expect, type Page } from "playwright/test";
import { findDemoRecords } from "./club-addresses";
import { addressOf, PAGE_ROUTES } from "./page-routes";

const SIGNED_OUT = ["/sign-in", "/join"];

/** Every page of the app as a person meets it: signed in as organiser, and the pages before that without. */
export const EVERY_PAGE: readonly { readonly name: string; readonly open: (page: Page) => Promise<void> }[] = [
  ...PAGE_ROUTES.map((route) => ({ name: route, open: (page: Page) => openRoute(page, route) })),
  {
    name: "/ for a visitor",
    open: async (page) => {
      await page.goto("/");
      await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
    },
  },
  {
    name: "/join with an invitation",
    open: async (page) => {
      await page.goto("/join#an-invitation-that-nobody-made-000000000000000");
      await expect(page.getByRole("button", { name: "Join the club" })).toBeVisible();
    },
  },
];

async function openRoute(page: Page, route: string): Promise<void> {
  if (SIGNED_OUT.includes(route)) await page.goto(route);
  else {
    const records = await findDemoRecords(page);
    await page.goto(addressOf(route, records));
  }
  await expect(page.getByRole("heading", { level: 1 })).toBeVisible();
}
