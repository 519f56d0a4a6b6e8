import type { APIResponse, Page } from "playwright/test";
import { violations } from "./support/axe";
import { findDemoRecords } from "./support/club-addresses";
import { CLUB, ownTitle } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { beginTasting } from "./support/tasting-writes";
import { expect, test } from "./support/test";

const WIDTHS = [
  { name: "phone", width: 390, height: 844 },
  { name: "desktop", width: 1280, height: 900 },
];

for (const { name, width, height } of WIDTHS) {
  test(`a steward prepares a tasting, prints labels, opens it, and an organiser reveals it (${name})`, async ({
    page,
  }) => {
    await page.setViewportSize({ width, height });
    await signInAs(page, "organiser");
    const title = ownTitle("Three glasses");
    await beginTasting(page, title);
    const preparation = page.url();
    await page.getByLabel("Name of the flight").fill("Pale ales");
    await page.getByRole("button", { name: "Add the flight" }).click();
    await page.getByRole("link", { name: "Pale ales" }).click();

    const entries = page.getByRole("region", { name: "Entries" });
    await page
      .getByRole("checkbox", { name: /^Millrace Pale Ale, Wilma|^Millrace Pale Ale, Kasper/ })
      .first()
      .check();
    await page.getByRole("button", { name: "Enter them under blind codes" }).click();
    await expect(entries.getByRole("row", { name: /Millrace Pale Ale/ })).toHaveCount(1);
    await page.getByText("Enter a beer from elsewhere", { exact: true }).click();
    await page.getByLabel("Beer", { exact: true }).fill("Invented guest bitter");
    await page.getByLabel("Original gravity, SG").fill("1,044");
    await page.getByLabel("Bitterness, IBU").fill("33");
    await page.getByRole("button", { name: "Enter it under a blind code" }).click();
    await expect(entries.getByRole("row", { name: /Invented guest bitter/ })).toHaveCount(1);
    await page.getByLabel("Jorun Palewell").selectOption("Judges");
    await page.getByLabel("Dunja Highstead").selectOption("Judges");
    await page.getByRole("button", { name: "Save the panel" }).click();
    await expect(page.getByText("Each judge tastes 2.")).toBeVisible();
    expect(await violations(page)).toEqual([]);

    await entries.getByRole("link", { name: /Invented guest bitter/ }).click();
    await expect(page.getByRole("table", { name: "Nearest styles" })).toBeVisible();
    await page.getByLabel("Judged as").selectOption("11B");
    await page.getByRole("button", { name: "Save style and flight" }).click();
    // 1.044 lies in 1.040 to 1.048, and 33 in 25 to 40: the published numbers of the style.
    await expect(page.getByRole("heading", { name: "Figures against 11B Best Bitter" })).toBeVisible();
    await expect(page.getByRole("table", { name: "Figures of the entry" })).toContainText("inside");
    expect(await violations(page)).toEqual([]);

    await page.goto(preparation);
    await page.getByText("Open the tasting", { exact: true }).click();
    await page.getByRole("button", { name: "Open for judging" }).click();
    await expect(page.getByText("This tasting is open for judging.")).toBeVisible();
    await page.getByRole("link", { name: "Labels" }).click();
    await expect(page.getByRole("button", { name: "Print 4 labels" })).toBeVisible();
    await expect(page.getByRole("img", { name: /^QR code of the sheet for \d{3}:/ }).first()).toBeVisible();
    await page.getByRole("link", { name: "Pour list" }).click();
    await expect(page.getByRole("table", { name: "Glasses of Pale ales" })).toContainText("Jorun Palewell");

    await page.getByRole("link", { name: "Tasting", exact: true }).click();
    await page.getByText("Close judging", { exact: true }).first().click();
    await page.getByRole("button", { name: "Close judging" }).click();
    await expect(page.getByText("This tasting is closed.")).toBeVisible();
    await page.getByText("Reveal the entries", { exact: true }).click();
    await page.getByRole("button", { name: "Reveal to everybody" }).click();
    await expect(page.getByRole("table", { name: "What was in the glasses" })).toContainText("Invented guest bitter");
    expect(await violations(page)).toEqual([]);
  });
}

interface Told {
  readonly address: string;
  readonly text: string;
}

/** A page as a person gets it and as the router of the page gets it; or what a program gets. */
async function told(page: Page, address: string): Promise<readonly Told[]> {
  const asked = (headers: Record<string, string>): Promise<APIResponse> =>
    page.request.get(address, { headers, failOnStatusCode: false });
  const answers = [await asked({}), await asked({ RSC: "1" })];
  return Promise.all(answers.map(async (answer) => ({ address, text: `${answer.url()}\n${await answer.text()}` })));
}

/** The addresses under a club that a page links to. */
function linkedFrom(text: string): readonly string[] {
  return [...text.matchAll(/href="(\/(?:s\/hollowmere|judging)[^"#]*)/g)].map(([, href = ""]) =>
    href.replaceAll("&amp;", "&"),
  );
}

test("before the reveal no page or answer about a tasting names a beer in it to judge, member or guest", async ({
  page,
}) => {
  const { tasting = "" } = await findDemoRecords(page);
  const own = `${CLUB}/tastings/${tasting}`;
  // What the steward knows: each row names a bottle and its code.
  await page.goto(`${own}/labels`);
  const rows = page.getByRole("table", { name: "Which bottle gets which code" }).getByRole("row");
  const beers = (await rows.getByRole("rowheader").allInnerTexts()).flatMap((words) => words.split(", "));
  expect(beers.length).toBeGreaterThan(6);
  const flight = await told(page, `${own}/prepare/flights/1`);
  // A beer of the log could also be told by its brew's address.
  const [register] = await told(page, `${CLUB}/brews`);
  const brews = [...(register?.text ?? "").matchAll(/\/brews\/([0-9a-f-]{36})/g)].map(([, id = ""]) => id);
  // Whoever prepares, judges or pours is named, and whoever reads; a beer and who else brewed it is not.
  const panel = /Orla|Jorun|Wilma|Petra|Dunja|Sefa|Mads/;
  const secrets = [...new Set([...beers.filter((words) => !panel.test(words)), ...brews])];
  // The steward is shown them, so that what follows can fail.
  for (const { text } of flight) expect(secrets.some((secret) => text.includes(secret))).toBe(true);
  expect(brews.length).toBeGreaterThan(0);

  const pages = [
    "",
    "/prepare",
    "/prepare/flights/1",
    "/labels",
    "/pour",
    "/sheets-to-print",
    "/results",
    "/feedback",
    "/judge",
  ];
  const addresses = [
    ...pages.map((each) => own + each),
    ...[`/judging/hollowmere/${tasting}`, `/api/tastings/hollowmere/${tasting}`],
    ...[`${CLUB}/tastings`, `${CLUB}/notices`],
  ];
  for (const reader of ["judge", "member", "steward"]) {
    await signInAs(page, reader);
    const seen = new Set(addresses);
    for (const address of seen) {
      for (const { text } of await told(page, address)) {
        // The whole of the other tasting is told already, and so are the names of the club's own pages.
        if (address.includes(tasting))
          for (const secret of secrets) expect(text, `${address} to ${reader}`).not.toContain(secret);
        for (const linked of linkedFrom(text)) if (linked.includes(tasting)) seen.add(linked);
      }
    }
  }
});

test("a brew that is tasted says nothing of it before the reveal, anywhere that it stands", async ({ page }) => {
  const { tasting = "", sharedBrew = "", brew = "" } = await findDemoRecords(page);
  const places = [
    ...[`${CLUB}/brews`, `${CLUB}/brews/${brew}`, `${CLUB}/brews/${brew}/comparison`, CLUB],
    ...[`${CLUB}/shared-brews/${sharedBrew}`, `${CLUB}/search?q=Winter`, `${CLUB}/calendar`],
  ];
  for (const reader of ["judge"]) {
    await signInAs(page, reader);
    for (const place of places) {
      for (const { text } of await told(page, place)) expect(text, `${place} to ${reader}`).not.toContain(tasting);
    }
  }
});
