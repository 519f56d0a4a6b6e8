import { anotherContext } from "./support/another-context";
import { violations } from "./support/axe";
import { kettleRows, openKettles, rowOf } from "./support/kettle-table";
import { CLUB, openRecipe, ownTitle, writeRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const WIDTHS = { phone: 390, desk: 1280 } as const;
// A pot of fifteen litres does not hold the volume of any recipe of the club.
const SMALL = "Test pot";

for (const [where, width] of Object.entries(WIDTHS)) {
  test.describe(`the table of all kettles on a ${where}`, () => {
    test.use({ viewport: { width, height: 844 } });

    test("keeps its order and its filter in the address, through a reload and the way back", async ({ page }) => {
      await signInAs(page, "member");
      await openRecipe(page, "Coal Quay Porter");
      await openKettles(page);
      const all = await kettleRows(page).count();
      await page.getByLabel("Show").selectOption("Those it fits");
      await expect(page).toHaveURL(/fit=fits/);
      await page.getByLabel("Name of kettle or brewer").fill("plateau");
      await expect(kettleRows(page).filter({ hasNotText: /plateau/i })).toHaveCount(0);
      const some = await kettleRows(page).allInnerTexts();
      expect(some.length).toBeLessThan(all);
      await page.reload();
      await expect(page.getByLabel("Name of kettle or brewer")).toHaveValue("plateau");
      expect(await kettleRows(page).allInnerTexts()).toEqual(some);
      await page.goBack();
      await expect(kettleRows(page)).toHaveCount(all);
      await expect(page.getByLabel("Show")).toHaveValue("all");
    });

    test("explains a number with its interval, and an input behind it", async ({ page }) => {
      await signInAs(page, "member");
      await openRecipe(page, "Coal Quay Porter");
      await openKettles(page);
      const row = rowOf(page, "Shed fifty");
      await row.getByRole("button", { name: /^Energy: .*80 per cent interval/ }).click();
      const panel = page.getByRole("dialog", { name: "Electricity for the brew day" });
      await expect(panel).toContainText("80 per cent interval");
      await expect(panel.getByRole("heading", { name: "Equation" })).toBeVisible();
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press("Escape");
      await row.getByRole("button", { name: /^Hops:/ }).click();
      await expect(page.getByRole("dialog", { name: "Hops, all additions" })).toContainText(
        "All the hops to weigh out",
      );
    });

    test("remembers the way out that somebody chose, for everybody, until it is taken back", async ({
      page,
      browser,
    }) => {
      test.slow(true, "two people in turn, and the checker of accessibility over a wide table");
      const title = ownTitle("Ways of a small pot");
      await signInAs(page, "member");
      await writeRecipe(page, title);
      await openKettles(page, "?volume=written");
      await rowOf(page, SMALL)
        .getByRole("button", { name: /^Does not fit/ })
        .click();
      const panel = page.getByRole("dialog", { name: new RegExp(SMALL) });
      await panel
        .getByRole("button", { name: /^Choose ?: / })
        .first()
        .click();
      await expect(panel).toContainText("Chosen by Mads Underbough: ");
      expect(await violations(page)).toEqual([]);
      await page.keyboard.press("Escape");
      const words = /^(It )?fits with /i;
      await expect(rowOf(page, SMALL).getByRole("button", { name: words })).toBeVisible();
      await page.reload();
      await expect(rowOf(page, SMALL).getByRole("button", { name: words })).toBeVisible();

      const other = await anotherContext(browser);
      const organiser = await other.newPage();
      await signInAs(organiser, "organiser");
      await openRecipe(organiser, title);
      await openKettles(organiser);
      await expect(rowOf(organiser, SMALL).getByRole("button", { name: words })).toBeVisible();
      await organiser.getByRole("link", { name: SMALL, exact: true }).click();
      await expect(organiser.getByRole("heading", { level: 2, name: words })).toBeVisible();
      await organiser.getByRole("button", { name: "Take it back" }).click();
      await expect(organiser.getByText("Chosen by")).toHaveCount(0);
      await other.close();
      // The member's table was read before; what opens from it is of now.
      await rowOf(page, SMALL).getByRole("button", { name: words }).click();
      await expect(panel.getByRole("button", { name: /^Choose ?: / }).first()).toBeVisible();
      await expect(panel.getByText("Chosen by")).toHaveCount(0);
      await page.keyboard.press("Escape");
      await expect(rowOf(page, SMALL).getByRole("button", { name: /^Does not fit/ })).toBeVisible();
    });
  });
}

test("the plan of a brew follows the way out that was chosen", async ({ page }) => {
  await signInAs(page, "member");
  await writeRecipe(page, ownTitle("Planned by a way out"));
  await openKettles(page, "?volume=written");
  await page.getByRole("link", { name: SMALL, exact: true }).click();
  await page
    .getByRole("button", { name: /^Choose ?: / })
    .first()
    .click();
  await expect(page.getByRole("heading", { level: 2, name: /^It fits with/ })).toBeVisible();
  // A recipe that breaks a limit is not planned.
  await page.getByRole("button", { name: /^Plan this brew/ }).click();
  await expect(page.getByRole("heading", { name: "Run sheet" })).toBeVisible();
});

test("the table comes as CSV, with units in the headings and the rows of the view", async ({ page }) => {
  await signInAs(page, "member");
  await openRecipe(page, "Old Hundredweight");
  await openKettles(page, "?fit=not");
  const rows = await kettleRows(page).count();
  const address = await page.getByRole("link", { name: "Table as CSV" }).getAttribute("href");
  const answer = await page.request.get(address ?? "");
  expect(answer.headers()["content-type"]).toBe("text/csv; charset=utf-8");
  const lines = (await answer.text()).trimEnd().split("\r\n");
  expect(lines[0]).toMatch(/^\uFEFFKettle,Brewer,Fits,.*Volume \(L\),"?Volume, 80 % interval from \(L\)/);
  expect(lines).toHaveLength(rows + 1);
  for (const line of lines.slice(1)) expect(line).toContain(",no,");
});

test("without scripts the table is there, put in order and filtered by links and a form", async ({ browser }) => {
  const { baseURL } = test.info().project.use;
  const context = await browser.newContext({ ...(baseURL === undefined ? {} : { baseURL }) });
  const scripted = await context.newPage();
  await signInAs(scripted, "member");
  const plain = await browser.newContext({
    javaScriptEnabled: false,
    storageState: await context.storageState(),
    ...(baseURL === undefined ? {} : { baseURL }),
  });
  const page = await plain.newPage();
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: "Kettles for Old Hundredweight" }).click();
  const all = await kettleRows(page).count();
  expect(all).toBeGreaterThan(5);
  await page.getByLabel("Show").selectOption("Those it does not fit");
  await page.getByRole("button", { name: "Show" }).click();
  await page.getByRole("columnheader", { name: "Brewer" }).getByRole("link").click();
  await expect(page.getByRole("columnheader", { name: "Brewer" })).toHaveAttribute("aria-sort", "ascending");
  expect(await kettleRows(page).count()).toBeLessThan(all);
  await context.close();
  await plain.close();
});

test("members of another club get neither the rows nor the CSV", async ({ page }) => {
  await signInAs(page, "member");
  await openRecipe(page, "Old Hundredweight");
  const [, id = ""] = /recipes\/([0-9a-f-]+)/.exec(page.url()) ?? [];
  await page.context().clearCookies();
  await signInAs(page, "outsider");
  for (const part of ["rows?rev=1", "csv"]) {
    const answer = await page.request.get(`${CLUB}/recipes/${id}/kettles/${part}`);
    expect(answer.status()).toBe(404);
  }
});
