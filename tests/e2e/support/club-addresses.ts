import type { Page } from "playwright/test";
import { signInAs } from "./sign-in";

/** The parts of the addresses of one club, by the names that the routes give them. */
export type AddressParts = Readonly<Record<string, string>>;

/** The addresses of records of the demo club, read from the links that its organiser is shown. */
export async function findDemoRecords(page: Page): Promise<AddressParts> {
  await signInAs(page, "organiser");
  const home = "/s/hollowmere";
  const idOf = async (list: string, link: string): Promise<string> => {
    await page.goto(`${home}${list}`);
    const href = await page.getByRole("link", { name: link, exact: true }).first().getAttribute("href");
    const [, id] = /\/([0-9a-f-]{36})$/.exec(href ?? "") ?? [];
    if (id === undefined) throw new Error(`the link ${link} leads to no record: ${String(href)}`);
    return id;
  };
  return {
    space: "hollowmere",
    recipe: await idOf("/recipes", "Old Hundredweight"),
    revision: "1",
    equipment: await idOf("/equipment", "Test pot"),
    brew: await idOf("/brews?state=closed", "Millrace Pale Ale"),
    sharedBrew: await idOf("/shared-brews", "Autumn shared brew: Millrace Pale Ale"),
  };
}

/** Addresses of the same form with nothing behind them. */
export function nowhere(space: string): AddressParts {
  const id = crypto.randomUUID();
  return { space, recipe: id, revision: "1", equipment: id, brew: id, sharedBrew: id };
}
