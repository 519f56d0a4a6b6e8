import { anotherContext } from "./support/another-context";
import { CLUB, openRecipe, ownTitle, writeRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("the second of two people who save a revision is told, and neither loses anything", async ({ page, browser }) => {
  const title = ownTitle("Written by two");
  await signInAs(page, "member");
  await writeRecipe(page, title);
  const other = await anotherContext(browser);
  const second = await other.newPage();
  await signInAs(second, "organiser");
  await openRecipe(second, title);

  await page.getByLabel("Notes", { exact: true }).fill("Mash a little cooler.");
  await page.getByRole("button", { name: "Save as revision 2" }).click();
  await expect(page.getByText("Saved as revision 2.")).toBeVisible();

  await second.getByLabel("Length of the boil, min").fill("75");
  await second.getByRole("button", { name: "Save as revision 2" }).click();
  await expect(second.getByText("Mads Underbough saved revision 2 while you were writing")).toBeVisible();
  await expect(second.getByLabel("Length of the boil, min")).toHaveValue("75");
  const differences = second.getByRole("table", { name: "Where the two differ" });
  await expect(differences).toContainText("Mash a little cooler.");
  await expect(differences).toContainText("75");

  await second.getByRole("button", { name: /^Take theirs ?: Notes, Mash a little cooler\.$/ }).click();
  await expect(second.getByLabel("Notes", { exact: true })).toHaveValue("Mash a little cooler.");
  await expect(second.getByLabel("Length of the boil, min")).toHaveValue("75");
  await second.getByRole("button", { name: "Save mine as revision 3, on top of theirs" }).click();
  await expect(second.getByText("Saved as revision 3.")).toBeVisible();
  for (const [rev, shown] of [
    ["2", /Mash a little cooler\./],
    ["3", /Length of the boil\D*75[\s\S]*Mash a little cooler\./],
  ] as const) {
    await openRecipe(second, title);
    await second
      .getByRole("link", { name: `Revision ${rev}`, exact: true })
      .last()
      .click();
    await expect(second.getByText(`Revision ${rev} of 3`)).toBeVisible();
    await expect(second.getByRole("main")).toContainText(shown);
  }
  await other.close();
});

test("a draft is told to the other writer, and the second version lives on as a recipe of its own", async ({
  page,
  browser,
}) => {
  const title = ownTitle("Kept twice");
  await signInAs(page, "member");
  await writeRecipe(page, title);
  await page.getByLabel("Notes", { exact: true }).fill("Theirs");
  await expect(page.getByText(/^Saved \d\d:\d\d/)).toBeVisible();
  const other = await anotherContext(browser);
  const second = await other.newPage();
  await signInAs(second, "organiser");
  await openRecipe(second, title);
  await expect(second.getByRole("list", { name: "Drafts of others" })).toContainText(
    "Mads Underbough has a draft of this recipe, begun",
  );
  await second.getByLabel("Notes", { exact: true }).fill("Mine");
  await second.getByLabel("Title", { exact: true }).fill(`${title} of mine`);
  await page.getByRole("button", { name: "Save as revision 2" }).click();
  await expect(page.getByText("Saved as revision 2.")).toBeVisible();
  await second.getByRole("button", { name: "Save as revision 2" }).click();
  await second.getByRole("button", { name: "Keep mine as a recipe of its own" }).click();

  await expect(second.getByRole("heading", { level: 1, name: `${title} of mine` })).toBeVisible();
  await expect(second.getByLabel("Notes", { exact: true })).toHaveValue("Mine");
  // It goes back to what the draft was begun on, and says whose that was.
  const origin = second.getByRole("link", { name: new RegExp(`“${title}”, revision 1, in`) });
  await expect(origin).toBeVisible();
  await expect(second.getByText(/ by Mads Underbough/)).toBeVisible();
  await openRecipe(second, title);
  await expect(second.getByLabel("Notes", { exact: true })).toHaveValue("Theirs");
  await other.close();
});

test("a draft that somebody begins later shows on a page that is open already", async ({ page, browser }) => {
  const title = ownTitle("Watched");
  await signInAs(page, "member");
  await writeRecipe(page, title);
  await expect(page.getByRole("list", { name: "Drafts of others" })).toHaveCount(0);
  const other = await anotherContext(browser);
  const second = await other.newPage();
  await signInAs(second, "organiser");
  await openRecipe(second, title);
  await second.getByLabel("Notes", { exact: true }).fill("Begun later");
  await expect(second.getByText(/^Saved \d\d:\d\d/)).toBeVisible();
  await page.evaluate(() => window.dispatchEvent(new Event("focus")));
  await expect(page.getByRole("list", { name: "Drafts of others" })).toContainText("has a draft of this recipe, begun");
  await second.getByRole("button", { name: "Discard the draft" }).click();
  await second.getByRole("button", { name: "Discard it for good" }).click();
  // Also without anybody doing anything.
  await expect(page.getByRole("list", { name: "Drafts of others" })).toHaveCount(0, { timeout: 40_000 });
  await other.close();
});

test("what a member changes in a kettle while the organiser changes it too is told to the second", async ({
  page,
  browser,
}) => {
  await signInAs(page, "ivo");
  await page.goto(`${CLUB}/equipment`);
  await page.getByRole("link", { name: "Coach-house seventy" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Coach-house seventy" })).toBeVisible();
  const other = await anotherContext(browser);
  const second = await other.newPage();
  await signInAs(second, "organiser");
  await second.goto(page.url());

  const field = "Altitude, m";
  const now = Number(await page.getByLabel(field).inputValue());
  await page.getByLabel(field).fill(String(now + 1));
  await page.getByRole("button", { name: /^Save as revision/ }).click();
  await expect(page.getByText(/^Saved/)).toBeVisible();

  await second.getByLabel(field).fill(String(now + 2));
  await second.getByRole("button", { name: /^Save as revision/ }).click();
  await expect(second.getByText(/while you/)).toBeVisible();
  await expect(second.getByLabel(field)).toHaveValue(String(now + 2));
  await page.reload();
  await expect(page.getByLabel(field)).toHaveValue(String(now + 1));
  await other.close();
});
