import type { Locator, Page } from "playwright/test";
import { ownTitle, writeRecipe } from "./support/own-recipe";
import { personOf, signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";
import { DEMO_PASSWORD } from "@/seed-demo/people";

const FARTHEST = 250;

test("a recipe is found, changed and saved with the keyboard alone, and the focus is always seen", async ({ page }) => {
  test.slow(true, "every stop on the way is looked at");
  const title = ownTitle("By keyboard");
  await signInAs(page, "member");
  await writeRecipe(page, title);
  await page.context().clearCookies();

  await page.goto("/");
  await follow(page, page.getByRole("link", { name: "Sign in" }).first());
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Sign in");
  await tabTo(page, page.getByLabel("E-mail address"));
  await page.keyboard.type(personOf("member").email);
  await page.keyboard.press("Tab");
  await page.keyboard.type(DEMO_PASSWORD);
  await page.keyboard.press("Enter");
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Your clubs and your bench");
  await follow(page, page.getByRole("link", { name: "Hollowmere Brewing Circle" }));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("What is brewing");
  await follow(page, page.getByRole("link", { name: "Recipes", exact: true }));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText("Recipes");
  await follow(page, page.getByRole("link", { name: title, exact: true }));
  await expect(page.getByRole("heading", { level: 1 })).toHaveText(title);

  await tabTo(page, page.getByRole("textbox", { name: /^Mass of Pale ale malt/ }));
  await page.keyboard.type("5.1 kg");
  await tabTo(page, page.getByLabel("Note on the change"));
  await page.keyboard.type("A little more malt");
  await tabTo(page, page.getByRole("button", { name: "Save as revision 2" }));
  await page.keyboard.press("Enter");
  await expect(page.getByText("Saved as revision 2.")).toBeVisible();
  await expect(page.getByRole("row", { name: /Revision 2/ })).toContainText("A little more malt");
});

test("the first key leads past the navigation", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto("/s/hollowmere/recipes");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("link", { name: "Skip to the content" })).toBeFocused();
  await page.keyboard.press("Enter");
  await page.keyboard.press("Tab");
  await expect(page.getByRole("link", { name: "Export", exact: true })).toBeFocused();
});

async function follow(page: Page, link: Locator): Promise<void> {
  await tabTo(page, link);
  await page.keyboard.press("Enter");
}

/** Presses Tab until the place has the focus; on the way everything that has it shows it. */
async function tabTo(page: Page, place: Locator): Promise<void> {
  await expect(place).toBeEnabled();
  for (let presses = 0; presses < FARTHEST; presses += 1) {
    await page.keyboard.press("Tab");
    expect(await unseenFocus(page)).toBeNull();
    if (await place.evaluate((element) => element === document.activeElement)) return;
  }
  throw new Error(`Tab does not lead to ${String(place)}`);
}

/** What has the focus without an outline or within nothing that can be seen; null when all is well. */
function unseenFocus(page: Page): Promise<string | null> {
  return page.evaluate(() => {
    const focused = document.activeElement;
    if (focused === null || focused === document.body) return null;
    const { outlineStyle, outlineWidth, visibility } = getComputedStyle(focused);
    const { width, height } = focused.getBoundingClientRect();
    const isSeen = outlineStyle !== "none" && outlineWidth !== "0px" && visibility === "visible" && width * height > 1;
    return isSeen ? null : `${focused.tagName} ${focused.textContent.slice(0, 40)}`;
  });
}
