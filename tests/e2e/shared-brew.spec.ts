import ICAL from "ical.js";
import type { Page } from "playwright/test";
import { violations } from "./support/axe";
import { openMenu } from "./support/open-menu";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const WIDTHS = [
  { name: "phone", width: 390, height: 844 },
  { name: "desktop", width: 1280, height: 900 },
];

const DAY_MS = 86_400_000;
const inDays = (days: number): string => new Date(Date.now() + days * DAY_MS).toISOString().slice(0, 10);

/** The organiser calls a shared brew that lasts two weeks, and stays on its page. */
async function callBrew(page: Page, title: string): Promise<string> {
  await page.goto(`${CLUB}/shared-brews/new`);
  const recipe = page.getByLabel("Recipe", { exact: true });
  const newest = recipe.getByRole("option", { name: /^Millrace Pale Ale, revision/ }).first();
  await recipe.selectOption((await newest.getAttribute("value")) ?? "");
  await page.getByLabel("Title").fill(title);
  await page.getByLabel("First day").fill(inDays(10));
  await page.getByLabel("Last day").fill(inDays(24));
  await page.getByRole("checkbox", { name: "Bitterness" }).uncheck();
  await page.getByRole("button", { name: "Call the shared brew" }).click();
  await expect(page.getByRole("heading", { level: 1, name: title })).toBeVisible();
  return page.url();
}

/** The member joins with the test pot on the first day, and stays on the sheet. */
async function joinWithTestPot(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.getByRole("link", { name: "Join with Test pot" }).click();
  await expect(page.getByRole("heading", { name: "It fits" })).toBeVisible();
  await page.getByLabel("Brew day", { exact: true }).fill(inDays(10));
  await page.getByLabel("Start", { exact: true }).fill("09:30");
  await page.getByLabel("Time zone").fill("Europe/Berlin");
  await page.getByRole("button", { name: "Join with Test pot" }).click();
  await expect(page.getByRole("heading", { name: "Your part" })).toBeVisible();
}

for (const { name, width, height } of WIDTHS) {
  test(`organiser calls, member joins, the plan changes, and the member is told (${name})`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    const title = ownTitle("Together");
    await signInAs(page, "organiser");
    const address = await callBrew(page, title);
    await expect(page.getByRole("region", { name: "The plan, version 1" })).toContainText(
      "Hops by the litre as written; the bitterness follows the kettle",
    );

    await signInAs(page, "member");
    await joinWithTestPot(page, address);
    const rules = page.getByRole("table", { name: "Rules on this kettle" });
    await expect(rules.getByRole("row", { name: /^Original extract/ })).toContainText("reached");
    await expect(rules.getByRole("row", { name: /^Bitterness/ })).toContainText("left open");
    expect(await violations(page)).toEqual([]);

    await signInAs(page, "organiser");
    await page.goto(address);
    await page.getByRole("link", { name: "Change the plan" }).click();
    await page.getByLabel("First day").fill(inDays(30));
    await page.getByLabel("Last day").fill(inDays(40));
    await page.getByLabel("Why it changes").fill("The malt comes later");
    expect(await violations(page)).toEqual([]);
    await page.getByRole("button", { name: "Make version 2 of the plan" }).click();
    await expect(page.getByRole("heading", { name: "The plan, version 2" })).toBeVisible();

    await signInAs(page, "member");
    await page.goto(CLUB);
    await openMenu(page);
    await page.getByRole("link", { name: /^Notices.*not read/ }).click();
    await page.getByRole("link", { name: `The plan of ${title} has changed: version 2` }).click();
    const news = page.getByRole("region", { name: "Plan version 2; you have seen version 1" });
    await expect(news).toContainText("The malt comes later");
    await expect(news).toContainText(/Brew day: .* instead of/);
    expect(await violations(page)).toEqual([]);
    await news.getByRole("button", { name: "I have seen version 2" }).click();
    await expect(news).toHaveCount(0);
    await page
      .getByRole("link", { name: /Test pot/ })
      .first()
      .click();
    await expect(page.getByText("this day is outside its days now")).toBeVisible();
  });
}

test("a member takes the brew day into a calendar, and gives a calendar program an address that can be ended", async ({
  page,
}) => {
  const title = ownTitle("In the calendar");
  await signInAs(page, "organiser");
  const address = await callBrew(page, title);
  await signInAs(page, "member");
  await joinWithTestPot(page, address);

  const href = await page.getByRole("link", { name: "Take it into a calendar" }).getAttribute("href");
  const file = await page.request.get(href ?? "");
  expect(file.headers()["content-type"]).toBe("text/calendar; charset=utf-8");
  const [event] = eventsIn(await file.text());
  expect(event?.summary).toBe(`Brew ${title} on Test pot`);
  const local = new Intl.DateTimeFormat("en-GB", { timeZone: "Europe/Berlin", timeStyle: "short" });
  expect(local.format(event?.startDate.toJSDate())).toBe("09:30");
  expect(event?.endDate.toJSDate().getTime() ?? 0).toBeGreaterThan(event?.startDate.toJSDate().getTime() ?? Infinity);

  await page.goto(`${CLUB}/calendar`);
  await page
    .getByRole("button", { name: /address/ })
    .first()
    .click();
  const feed = await page.getByLabel(/The address of your calendar/).inputValue();
  await page.context().clearCookies();
  const days = await page.request.get(feed);
  expect(eventsIn(await days.text()).map(({ summary }) => summary)).toContain(`Brew ${title} on Test pot`);
  expect((await page.request.get(feed.replace(/.{6}\.ics$/, "AAAAAA.ics"))).status()).toBe(404);

  await signInAs(page, "member");
  await page.goto(`${CLUB}/calendar`);
  await page.getByRole("button", { name: "End the private address" }).click();
  await expect(page.getByRole("button", { name: "Make a private address" })).toBeVisible();
  expect((await page.request.get(feed)).status()).toBe(404);
});

test("an empty reason, a window that ends before it begins and an unknown zone are each named", async ({ page }) => {
  await signInAs(page, "organiser");
  const address = await callBrew(page, ownTitle("Refused"));
  await page.goto(`${address}/plan`);
  await page.getByLabel("First day").fill(inDays(20));
  await page.getByLabel("Last day").fill(inDays(12));
  await page.getByRole("button", { name: "Make version 2 of the plan" }).click();
  const problems = page.getByRole("group", { name: "There is a problem" });
  await expect(problems).toContainText("Last day is before the first day");
  await expect(problems).toContainText("Why it changes is empty");

  await signInAs(page, "member");
  await page.goto(address);
  await page.getByRole("link", { name: "Join with Test pot" }).click();
  await page.getByLabel("Brew day", { exact: true }).fill(inDays(12));
  await page.getByLabel("Time zone").fill("Atlantis");
  await page.getByRole("button", { name: "Join with Test pot" }).click();
  await expect(problems).toContainText("Time zone is not one of the list, such as Europe/London");
  await page.getByLabel("Time zone").fill("Europe/London");
  await page.getByLabel("Brew day", { exact: true }).fill(inDays(60));
  await page.getByRole("button", { name: "Join with Test pot" }).click();
  await expect(problems).toContainText(`Brew day ${inDays(60)} is outside the days of the plan`);
});

function eventsIn(text: string): ICAL.Event[] {
  const calendar = new ICAL.Component(ICAL.parse(text) as unknown[]);
  return calendar.getAllSubcomponents("vevent").map((each) => new ICAL.Event(each));
}
