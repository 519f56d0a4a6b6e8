import { anotherContext } from "./support/another-context";
import { violations } from "./support/axe";
import { ownTitle, writeRecipe } from "./support/own-recipe";
import { pictureOf } from "./support/picture";
import { personOf, signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

for (const width of [390, 1280]) {
  test(`a recipe is published, read by a visitor and withdrawn, at ${width} px`, async ({ page, browser }) => {
    const title = ownTitle("Public ale");
    await page.setViewportSize({ width, height: 900 });
    await signInAs(page, "organiser");
    await writeRecipe(page, title);
    await page.getByRole("link", { name: "Publish" }).click();
    await expect(page.getByRole("heading", { name: "Who sees this?" })).toBeVisible();
    await page.getByRole("button", { name: "Publish revision 1" }).click();
    const link = page.getByRole("link", { name: /^\/p\// });
    await expect(link).toBeVisible();
    expect(await violations(page)).toEqual([]);
    const address = (await link.getAttribute("href")) ?? "";

    const context = await anotherContext(browser);
    const visitor = await context.newPage();
    await visitor.setViewportSize({ width, height: 900 });
    const answer = await visitor.goto(address);
    expect(answer?.status()).toBe(200);
    expect(await answer?.headerValue("set-cookie")).toBeNull();
    await expect(visitor.getByRole("heading", { level: 1, name: title })).toBeVisible();
    await expect(visitor.locator("link[rel=canonical]")).toHaveAttribute("href", new RegExp(`${address}$`));
    await expect(visitor.locator("meta[property='og:title']")).toHaveAttribute("content", title);
    await expect(visitor.locator("meta[name=robots]")).toHaveAttribute("content", "index, follow");
    await expect(visitor.locator("meta[property='og:image']")).toHaveAttribute("content", /\/card\.png$/);
    expect(await pictureOf(visitor, `${address}/card.png`)).toEqual({ status: 200, size: "1200 × 630" });
    const seen = await visitor.content();
    for (const secret of [personOf("organiser").name, personOf("organiser").email, "/s/hollowmere"]) {
      expect(seen).not.toContain(secret);
    }
    await visitor.getByRole("button", { name: /Explain Original gravity/ }).click();
    await expect(visitor.getByRole("dialog")).toBeVisible();
    await visitor.getByRole("button", { name: "Close" }).click();
    for (const colorScheme of ["light", "dark"] as const) {
      await visitor.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await violations(visitor), colorScheme).toEqual([]);
    }

    await page.getByRole("button", { name: "Withdraw revision 1" }).click();
    await expect(page.getByText(/^Revision 1, withdrawn/)).toBeVisible();
    const gone = await visitor.goto(address);
    expect(gone?.status()).toBe(410);
    await expect(visitor.getByRole("heading", { level: 1 })).toHaveText("Withdrawn");
    await expect(visitor.locator("meta[name=robots]")).toHaveAttribute("content", "noindex, nofollow");
    expect(await visitor.content()).not.toContain(title);
    expect(await pictureOf(visitor, `${address}/card.png`)).toEqual({ status: 410, size: "no picture" });
    await context.close();
  });
}
