import { numberIn } from "./support/figures";
import { CLUB } from "./support/own-recipe";
import { expectState } from "./support/planned-brew";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const STRONG = "Old Hundredweight";
const LEAST_WAYS_OUT = 3;

test("the organiser sees the strong recipe on every kettle and takes a way out where it does not fit", async ({
  page,
}) => {
  await signInAs(page, "organiser");
  await page.goto(CLUB);
  const owned = await page.getByRole("region", { name: "Kettles" }).getByRole("listitem").count();
  await page.goto(`${CLUB}/recipes`);
  await page.getByRole("link", { name: `Kettles for ${STRONG}` }).click();
  await expect(page.getByRole("heading", { level: 1, name: `${STRONG} on every kettle` })).toBeVisible();
  // A member who has described none is a row too.
  const kettles = page.getByRole("row").filter({ has: page.getByRole("rowheader").getByRole("link") });
  await expect(kettles).toHaveCount(owned);

  await page.getByLabel("Show").selectOption("Those it does not fit");
  await expect(page.getByRole("cell", { name: "Fits", exact: true })).toHaveCount(0);
  const misfit = kettles.filter({ hasText: "Does not fit" }).first();
  const [, reason = ""] = /Does not fit\. ([^:]+):/.exec(await misfit.innerText()) ?? [];
  const kettle = await misfit.getByRole("rowheader").innerText();
  await misfit.getByRole("link", { name: kettle }).click();

  await expect(page.getByRole("heading", { name: "It does not fit" })).toBeVisible();
  await expect(
    page
      .getByRole("listitem")
      .filter({ hasText: new RegExp(reason, "i") })
      .first(),
  ).toBeVisible();
  const waysOut = page.getByRole("button", { name: /^Brew it this way/ });
  expect(await waysOut.count()).toBeGreaterThanOrEqual(LEAST_WAYS_OUT);
  const firstMalt = page
    .getByRole("table", { name: /^Amounts/ })
    .first()
    .getByRole("row")
    .nth(1);
  const malt = await firstMalt.getByRole("rowheader").innerText();
  const mass = await numberIn(firstMalt.getByRole("cell").last());

  await waysOut.first().click();
  await expect(page.getByRole("heading", { level: 1, name: STRONG })).toBeVisible();
  await expect(page.getByRole("main")).toContainText(`on ${kettle}`);
  await expectState(page, "planned");
  const weighed = page.getByRole("listitem").filter({ hasText: "Weigh out" }).getByRole("listitem");
  expect(await numberIn(weighed.filter({ hasText: malt }).first())).toBe(mass);
});
