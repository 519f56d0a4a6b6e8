import { expect, type Locator, type Page } from "playwright/test";

/** The rows of the table of all kettles, without its heading. */
export function kettleRows(page: Page): Locator {
  return page.getByRole("row").filter({ has: page.getByRole("rowheader") });
}

export function rowOf(page: Page, kettle: string): Locator {
  return page.getByRole("row").filter({ has: page.getByRole("rowheader", { name: kettle, exact: true }) });
}

/** The table of a recipe that a page of it is open of. */
export async function openKettles(page: Page, query = ""): Promise<void> {
  await page.getByRole("link", { name: "On every kettle" }).click();
  await expect(page.getByRole("heading", { level: 1, name: /on every kettle$/ })).toBeVisible();
  if (query !== "") await page.goto(page.url() + query);
}
