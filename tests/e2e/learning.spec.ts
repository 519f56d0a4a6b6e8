import { violations } from "./support/axe";
import { CLUB } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("an organiser sees what brews tell of a kettle, and takes its figures into the profile", async ({ page }) => {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/equipment`);
  await page.getByRole("link", { name: "Blue barrel" }).click();
  await page.getByRole("link", { name: "What brews tell of this kettle" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "What brews tell of Blue barrel" })).toBeVisible();
  await expect(page.getByRole("table", { name: "Brews that count, in order of time" }).getByRole("row")).toHaveCount(2);
  expect(await violations(page)).toEqual([]);

  const boxes = page.getByRole("checkbox");
  await expect(page.getByRole("checkbox", { name: "Boil-off" })).toBeChecked();
  const proposed = await boxes.count();
  await page.getByRole("button", { name: /^Save as revision/ }).click();
  await expect(page.getByRole("status").getByText(/^Saved as revision \d+ of the profile/)).toBeVisible();
  // Taken, they are the same figures, and there is nothing more to take of them.
  await expect(boxes).toHaveCount(0);
  await expect(page.getByText("In the profile, learned")).toHaveCount(proposed);

  // From the next brew on it counts; the brew itself kept the figures that it was planned with.
  await page
    .getByRole("link", { name: /^Count from/ })
    .first()
    .click();
  await expect(page).toHaveURL(/since=/);

  // What one brew tells of several figures, it tells of them together.
  await page.goto(`${CLUB}/equipment`);
  await page.getByRole("link", { name: "Blue barrel" }).click();
  await page.getByText("Which figures were learned together").click();
  await expect(page.getByRole("table", { name: "Figures that were learned together" })).toBeVisible();
  expect(await violations(page)).toEqual([]);
});
