import type { Page } from "playwright/test";
import { signInAs } from "./sign-in";

/** The parts of the addresses of one club, by the names that the routes give them. */
export type AddressParts = Readonly<Record<string, string>>;

let known: AddressParts | undefined;

/** The addresses of records of the demo club, read from the links that its organiser is shown; once in a worker. */
export async function findDemoRecords(page: Page): Promise<AddressParts> {
  await signInAs(page, "organiser");
  known ??= await readRecords(page);
  return known;
}

async function readRecords(page: Page): Promise<AddressParts> {
  const equipment = await idOf(page, "/equipment", "Test pot");
  const order = await idOf(page, "/orders", "Summer malt order");
  return {
    space: "hollowmere",
    recipe: await idOf(page, "/recipes", "Old Hundredweight"),
    revision: "1",
    equipment,
    trial: await idOf(page, `/equipment/${equipment}`, /^Trial of/),
    brew: await idOf(page, "/brews?state=closed", "Millrace Pale Ale"),
    sharedBrew: await idOf(page, "/shared-brews", "Autumn shared brew: Millrace Pale Ale"),
    comparison: await idOf(page, "/comparisons", "What stays behind, kettle by kettle"),
    ingredient: await idOf(page, "/ingredients?whose=club&kind=yeast", "Club house ale yeast (invented)"),
    lot: await idOf(page, "/ingredients?whose=club&kind=salt", /Jar on the shelf/),
    address: await publicAddress(page, "/recipes", "Coal Quay Porter"),
    result: await publicAddress(page, "/shared-brews", "Autumn shared brew: Millrace Pale Ale"),
    order,
    item: await idOf(page, `/orders/${order}`, "Pale ale malt"),
    ...(await tastingOf(page)),
  };
}

/** An open tasting whose steward is the organiser, its first flight and an entry of that. */
async function tastingOf(page: Page): Promise<AddressParts> {
  const tasting = await idOf(page, "/tastings", "Winter tasting");
  await page.goto(`/s/hollowmere/tastings/${tasting}/prepare/flights/1`);
  const code = page.getByRole("region", { name: "Entries" }).getByRole("link").first();
  const [entry = ""] = /\d{3}$/.exec((await code.getAttribute("href")) ?? "") ?? [];
  return { tasting, flight: "1", entry };
}

/** The last part of the public address of what the demo club published. */
async function publicAddress(page: Page, list: string, title: string): Promise<string> {
  await page.goto(`/s/hollowmere${list}/${await idOf(page, list, title)}/publish`);
  const href = await page
    .getByRole("link", { name: /^\/p\// })
    .first()
    .getAttribute("href");
  const [, address] = /\/([a-z0-9-]+)$/.exec(href ?? "") ?? [];
  if (address === undefined) throw new Error(`the demo club has published nothing of ${title}`);
  return address;
}

async function idOf(page: Page, list: string, link: string | RegExp): Promise<string> {
  await page.goto(`/s/hollowmere${list}`);
  const href = await page.getByRole("link", { name: link, exact: true }).first().getAttribute("href");
  const [, id] = /\/([0-9a-f-]{36})$/.exec(href ?? "") ?? [];
  if (id === undefined) throw new Error(`the link ${String(link)} leads to no record: ${String(href)}`);
  return id;
}

/** Addresses of the same form with nothing behind them. */
export function nowhere(space: string): AddressParts {
  const id = crypto.randomUUID();
  return {
    space,
    recipe: id,
    revision: "1",
    equipment: id,
    trial: id,
    brew: id,
    sharedBrew: id,
    comparison: id,
    ingredient: id,
    lot: id,
    order: id,
    item: id,
    tasting: id,
    flight: "1",
    entry: "417",
    address: `nothing-${id}`,
    result: `nothing-${id}`,
  };
}
