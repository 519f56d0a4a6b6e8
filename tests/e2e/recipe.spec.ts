import { beerFigures, numberIn } from "./support/figures";
import { listsAreThere, openRecipe, ownTitle, writeRecipe } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("a member changes a malt, sees the beer change without asking the server, and saves a revision", async ({
  page,
}) => {
  await signInAs(page, "member");
  const title = ownTitle("Changed ale");
  await writeRecipe(page, title);
  await openRecipe(page, title);
  await listsAreThere(page);
  const before = await beerFigures(page);
  const requests: string[] = [];
  page.on("request", (request) => {
    // A link that comes into sight has its page fetched ahead, and the draft is kept; neither asks about the beer.
    const headers = request.headers();
    const isKept = headers["next-action"] !== undefined;
    if (headers["next-router-prefetch"] === undefined && !isKept) requests.push(request.url());
  });

  const mass = page.getByRole("textbox", { name: /^Mass of .*malt/ }).first();
  const heavier = String(Number(await mass.inputValue()) + 0.5);
  await mass.fill(heavier);

  // More malt in the same volume is a stronger wort, a darker one, and one that takes up less of the hops.
  const gravity = page.getByRole("region", { name: "The beer" }).getByLabel("Original gravity");
  await expect.poll(() => numberIn(gravity)).toBeGreaterThan(before.gravity);
  const after = await beerFigures(page);
  expect(after.colour).toBeGreaterThan(before.colour);
  expect(after.bitterness).toBeLessThan(before.bitterness);
  expect(requests).toEqual([]);

  await page.getByLabel("Note on the change").fill("Half a kilogram more malt");
  await page.getByRole("button", { name: "Save as revision 2" }).click();
  await expect(page.getByText("Saved as revision 2.")).toBeVisible();
  const saved = page.getByRole("row", { name: /Revision 2/ });
  await expect(saved).toContainText("Half a kilogram more malt");
  await expect(saved).toContainText("Mads Underbough");

  await saved.getByRole("link", { name: "Revision 2" }).click();
  await expect(page.getByText(/Revision 2 of 2/)).toBeVisible();
  await expect(page.getByText(new RegExp(`^Mass of .*malt.*: ${heavier}`)).first()).toBeVisible();
  expect(await beerFigures(page)).toEqual(after);
});

test("every number of the beer opens its explanation, with equation, inputs and source", async ({ page }) => {
  await signInAs(page, "judge");
  await openRecipe(page, "Millrace Pale Ale");
  const { bitterness } = await beerFigures(page);
  await page.getByRole("button", { name: /Explain Bitterness/ }).click();

  const explanation = page.getByRole("dialog", { name: "Bitterness" });
  for (const part of ["Equation", "Inputs", "Holds for"]) {
    await expect(explanation.getByRole("heading", { name: part })).toBeVisible();
  }
  await expect(explanation.getByRole("heading", { name: /^Sources?$/ })).toBeVisible();
  // Beside its interval a number has fewer digits than where it stands alone.
  expect(Math.round(await numberIn(explanation.getByRole("paragraph").first()))).toBe(Math.round(bitterness));

  await page.keyboard.press("Escape");
  await expect(explanation).toBeHidden();
  await expect(page.getByRole("button", { name: /Explain Bitterness/ })).toBeFocused();
});

test("acid in the mash water lowers the mash pH as it is typed, with its caution, and stays with the recipe", async ({
  page,
}) => {
  await signInAs(page, "member");
  const title = ownTitle("Sour mash");
  await writeRecipe(page, title);
  await openRecipe(page, title);
  await listsAreThere(page);
  const ph = page.getByRole("button", { name: /^Mash pH.*Explain$/ });
  const before = await numberIn(ph);

  await page.getByLabel("Acid", { exact: true }).selectOption("Lactic acid 80 %");
  await expect(page.getByText(/Concentrated acid burns skin and eyes/)).toBeVisible();
  await page.getByLabel("Millilitres").fill("5");
  await expect.poll(() => numberIn(ph)).toBeLessThan(before - 0.05);
  const after = await numberIn(ph);

  await page.getByRole("button", { name: "Save as revision 2" }).click();
  await expect(page.getByText("Saved as revision 2.")).toBeVisible();
  await page.reload();
  await expect(page.getByLabel("Millilitres")).toHaveValue("5");
  expect(await numberIn(page.getByRole("button", { name: /^Mash pH.*Explain$/ }))).toBe(after);
});
