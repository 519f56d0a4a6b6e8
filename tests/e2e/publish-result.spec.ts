import { DEMO_PEOPLE } from "@/seed-demo/people";
import { anotherContext } from "./support/another-context";
import { violations } from "./support/axe";
import { findDemoRecords } from "./support/club-addresses";
import { pictureOf } from "./support/picture";
import { expect, test } from "./support/test";

for (const width of [390, 1280]) {
  test(`the result of a shared brew is published, read by a visitor and withdrawn, at ${width} px`, async ({
    page,
    browser,
  }) => {
    const { sharedBrew = "" } = await findDemoRecords(page);
    await page.setViewportSize({ width, height: 900 });
    await page.goto(`/s/hollowmere/shared-brews/${sharedBrew}`);
    await page.getByRole("link", { name: "Publish the result" }).click();
    await expect(page.getByRole("heading", { name: "Who sees this?" })).toBeVisible();
    const links = page.getByRole("link", { name: /^\/p\/results\// });
    const before = await links.evaluateAll((all) => all.map((link) => link.getAttribute("href")));
    await page.getByRole("button", { name: "Publish the figures of now" }).click();
    await expect(page.getByText("Published.")).toBeVisible();
    expect(await violations(page)).toEqual([]);
    const after = await links.evaluateAll((all) => all.map((link) => link.getAttribute("href")));
    const address = after.find((href) => !before.includes(href)) ?? "";

    const context = await anotherContext(browser);
    const visitor = await context.newPage();
    await visitor.setViewportSize({ width, height: 900 });
    const answer = await visitor.goto(address);
    expect(answer?.status()).toBe(200);
    expect(await answer?.headerValue("set-cookie")).toBeNull();
    await expect(visitor.getByRole("heading", { level: 1 })).toHaveText("Autumn shared brew: Millrace Pale Ale");
    await expect(visitor.getByText(/brewed by [5-9] brewers on [5-9] kettles/)).toBeVisible();
    await expect(visitor.locator("link[rel=canonical]")).toHaveAttribute("href", new RegExp(`${address}$`));
    await expect(visitor.locator("meta[property='og:url']")).toHaveAttribute("content", new RegExp(`${address}$`));
    await expect(visitor.locator("meta[property='og:type']")).toHaveAttribute("content", "article");
    const card = (await visitor.locator("meta[property='og:image']").getAttribute("content")) ?? "";
    expect(await pictureOf(visitor, new URL(card).pathname)).toEqual({ status: 200, size: "1200 × 630" });
    const seen = await visitor.content();
    for (const { name, email } of DEMO_PEOPLE) {
      for (const secret of [name, email]) expect(seen).not.toContain(secret);
    }
    for (const secret of ["Shed fifty", "Blue barrel", "/s/hollowmere"]) expect(seen).not.toContain(secret);

    for (const of of ["planned", "measured", "difference"]) {
      await visitor.getByRole("button", { name: `Explain Alcohol by volume, ${of}, of Brewer A` }).click();
      await expect(visitor.getByRole("dialog").getByRole("heading", { name: "Equation" })).toBeVisible();
      await visitor.getByRole("button", { name: "Close" }).click();
    }
    for (const colorScheme of ["light", "dark"] as const) {
      await visitor.emulateMedia({ colorScheme, reducedMotion: "reduce" });
      expect(await violations(visitor), colorScheme).toEqual([]);
    }

    const line = page.getByRole("listitem").filter({ has: page.locator(`a[href="${address}"]`) });
    await line.getByRole("button", { name: "Withdraw this result" }).click();
    await expect(page.locator(`a[href="${address}"]`)).toHaveCount(0);
    const gone = await visitor.goto(address);
    expect(gone?.status()).toBe(410);
    await expect(visitor.getByRole("heading", { level: 1 })).toHaveText("Withdrawn");
    await expect(visitor.locator("meta[name=robots]")).toHaveAttribute("content", "noindex, nofollow");
    expect(await gone?.headerValue("x-robots-tag")).toBe("noindex");
    expect(await visitor.content()).not.toContain("Millrace");
    expect(await violations(visitor)).toEqual([]);
    expect(await pictureOf(visitor, new URL(card).pathname)).toEqual({ status: 410, size: "no picture" });
    await context.close();
  });
}

test("a public address that never was is not found, and its picture neither", async ({ page }) => {
  for (const path of ["/p/nothing-was-ever-here", "/p/results/nothing-was-ever-here"]) {
    const answer = await page.goto(path);
    expect(answer?.status()).toBe(404);
    await expect(page.getByRole("heading", { level: 1 })).toHaveText("Nothing is published here");
    expect(await pictureOf(page, `${path}/card.png`)).toEqual({ status: 404, size: "no picture" });
  }
});
