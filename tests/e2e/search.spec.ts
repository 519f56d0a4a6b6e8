import { violations } from "./support/axe";
import { openMenu } from "./support/open-menu";
import { CLUB } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

for (const width of [390, 1280]) {
  test(`a mistyped word finds what was meant, and filters narrow it down, at ${width} px`, async ({ page }) => {
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "member");
    await page.goto(`${CLUB}/equipment`);
    await openMenu(page);
    await page.getByRole("searchbox", { name: /^Search Hollowmere/ }).fill("milrace");
    await page.getByRole("search").getByRole("button", { name: "Search" }).click();

    await expect(page.getByText("searched instead: “millrace”")).toBeVisible();
    const found = page.getByRole("list", { name: "Found" });
    await expect(found.getByRole("link", { name: "Millrace Pale Ale" }).first()).toBeVisible();
    await expect(found.locator("mark").first()).toHaveText("Millrace");

    await page.getByText("Filters").click();
    await page.getByLabel("Kind").selectOption("recipe");
    await page.getByLabel("Alcohol from, % vol").fill("20");
    await page.getByRole("button", { name: "Find" }).click();
    await expect(page.getByText("Nothing is found.")).toBeVisible();

    await page.getByLabel("Alcohol from, % vol").fill("400");
    await page.getByRole("button", { name: "Find" }).click();
    await expect(page.getByText("Alcohol from 400 % vol is outside 0 to 30 % vol").first()).toBeVisible();
    expect(new URL(page.url()).searchParams.get("volFrom")).toBe("400");

    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await violations(page), colorScheme).toEqual([]);
    }
  });
}
