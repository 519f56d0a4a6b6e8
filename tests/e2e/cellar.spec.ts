import jsQR from "jsqr";
import type { Locator, Page } from "playwright/test";
import { violations } from "./support/axe";
import { planBrew } from "./support/planned-brew";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const DAY_MS = 86_400_000;
const SIZES = [
  { name: "a phone", width: 390, height: 844 },
  { name: "a desk", width: 1280, height: 900 },
] as const;

/** A moment so many days ago, as a field for date and time takes it, in UTC as the browser of the tests is. */
const ago = (days: number): string => new Date(Date.now() - days * DAY_MS).toISOString().slice(0, 16);

/** A fermentation as a probe writes it: falling, then standing still, with one line that is none. */
function probeFile(): { readonly name: string; readonly mimeType: string; readonly buffer: Buffer } {
  const falling = [1.044, 1.035, 1.026, 1.019, 1.015, 1.013, 1.012, 1.012, 1.012, 1.012];
  const lines = falling.map((sg, i) => `${ago(13 - i).replace("T", " ")},${sg.toFixed(3)},19.${String(i)}`);
  return {
    name: "probe.csv",
    mimeType: "text/csv",
    buffer: Buffer.from(["Time,SG,Temp °C", ...lines, "broken,1.012,19"].join("\n")),
  };
}

// It goes through four pages, each with the checker in both themes.
test.describe.configure({ timeout: 240_000 });

for (const { name, ...size } of SIZES) {
  test(`a beer goes from its pitch into kegs and under labels, on ${name}`, async ({ page }) => {
    await page.setViewportSize(size);
    await signInAs(page, "member");
    await planBrew(page, "Coal Quay Porter", "Shed fifty");
    await tab(page, "Cellar");
    await pitch(page);
    await readByHand(page);
    await readFromFile(page);
    await expectAccessible(page);

    await tab(page, "Package");
    await expect(page.getByText(/^The gravity has stood still at/)).toBeVisible();
    await packageOverRating(page);
    await expectAccessible(page);
    await page.getByRole("link", { name: "Labels for the bottles" }).click();
    await expect(page.getByRole("heading", { name: "Labels" })).toBeVisible();
    await expectAccessible(page);
    const code = page.getByRole("img", { name: /^QR code of Coal Quay Porter/ }).first();
    const brew = page.url().replace(/\/package\/labels$/, "");
    expect(await decoded(page, code)).toBe(brew);
  });
}

test("a beer that still ferments is packaged only with a reason, and readings keep what they were", async ({
  page,
}) => {
  await signInAs(page, "member");
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  await tab(page, "Cellar");
  await pitch(page);
  await read(page, { amount: "1.045", at: ago(3) });
  await read(page, { amount: "1.030", at: ago(0.5) });
  await page
    .getByText(/^Correct Gravity of/)
    .first()
    .click();
  await page.getByLabel("Should be, SG").fill("1.031");
  await page.getByRole("button", { name: "Save Should be" }).click();
  await expect(page.getByText(/^First.*1\.030/)).toBeVisible();

  await tab(page, "Package");
  await expect(page.getByText("Not ready for its containers.")).toBeVisible();
  await fill(page, { storage: "20", count: "1" });
  await page.getByRole("button", { name: "It is in package" }).click();
  await expect(page.getByRole("status").filter({ hasText: "The gravity still falls" })).toBeVisible();
  await page.getByLabel("Reason for packaging now").fill("It goes into a keg with a valve");
  await page.getByRole("button", { name: "It is in package" }).click();
  await expect(page.getByText("Before the gravity stood still: “It goes into a keg with a valve”")).toBeVisible();
});

async function tab(page: Page, link: string): Promise<void> {
  await page.getByRole("navigation", { name: "This brew" }).getByRole("link", { name: link }).click();
}

async function pitch(page: Page): Promise<void> {
  await page.getByLabel("Cells in a pack when packed, 10⁹").fill("100");
  await page.getByLabel("Packs", { exact: true }).fill("2");
  await page.getByLabel("Age of the packs, days").fill("30");
  await page.getByLabel("Yeast is").selectOption("liquid");
  // A liquid pack keeps 77.5 % after thirty days in the fridge: the example of cellsInPack.
  await expect(page.getByText(/^Estimated:/)).toContainText("155");
  await page.getByLabel("Time of pitching").fill(ago(14));
  await page.getByRole("button", { name: "Save the pitch" }).click();
  await expect(page.getByRole("region", { name: "Pitch" }).getByRole("listitem")).toHaveCount(1);
}

async function read(page: Page, { amount, at }: { readonly amount: string; readonly at: string }): Promise<void> {
  const form = page.getByRole("region", { name: "Read in the fermenter" });
  const before = await readings(page).count();
  await form.getByLabel("Gravity, SG").fill(amount);
  if (!(await form.getByLabel("Time of the reading").first().isVisible())) {
    await form.getByText(/^hydrometer, ±/).click();
  }
  await form.getByLabel("Time of the reading").first().fill(at);
  await form.getByRole("button", { name: "Save Gravity" }).click();
  await expect(readings(page)).toHaveCount(before + 1);
}

function readings(page: Page): Locator {
  return page.getByRole("region", { name: "Readings", exact: true }).locator("ul > li");
}

async function readByHand(page: Page): Promise<void> {
  await expect(page.getByText(/^Too few readings for a curve/).first()).toBeVisible();
  await read(page, { amount: "1.049", at: ago(13.5) });
}

async function readFromFile(page: Page): Promise<void> {
  const section = page.getByRole("region", { name: "Readings from a file" });
  // The same file both times, also where a minute passes in between.
  const file = probeFile();
  for (const answer of ["20 readings added; 0 were", "0 readings added; 20 were"]) {
    await section.getByLabel("CSV file").setInputFiles(file);
    await section.getByLabel("Time zone of the file").fill("UTC");
    await expect(section.getByText("Time “broken” is not a day with a time")).toBeVisible();
    await section.getByRole("button", { name: "Take 10 lines and leave 1 out" }).click();
    await expect(section.getByText(new RegExp(`^${answer}`))).toBeVisible();
    await page.reload();
  }
  await expect(page.getByText(/^(?:Done about|By its curve)/).first()).toBeVisible();
}

async function fill(
  page: Page,
  a: { readonly storage: string; readonly count: string; readonly rated?: string },
): Promise<void> {
  await page.getByLabel("Container", { exact: true }).selectOption("19 L keg");
  await page.getByLabel("How many", { exact: true }).fill(a.count);
  await page.getByLabel("Warmest place where it will stand, °C").fill(a.storage);
  if (a.rated !== undefined) await page.getByLabel("Maker states at most, bar").fill(a.rated);
}

async function packageOverRating(page: Page): Promise<void> {
  await fill(page, { storage: "25", count: "2", rated: "1" });
  const over = page.getByRole("group", { name: "Over the rating" });
  await expect(over).toContainText("Refused: 19 L keg");
  await over.getByLabel(/to go over it$/).fill("Somebody else");
  await over.getByLabel("Reason for going over it").fill("Tested with water");
  await page.getByRole("button", { name: "It is in package" }).click();
  await expect(page.getByText(/The name “Somebody else” is neither yours/)).toBeVisible();
  await over.getByLabel(/to go over it$/).fill("mads underbough");
  await page.getByRole("button", { name: "It is in package" }).click();
  await expect(page.getByText("Over the stated pressure, signed “mads underbough”: “Tested with water”")).toBeVisible();
}

async function expectAccessible(page: Page): Promise<void> {
  for (const colorScheme of ["light", "dark"] as const) {
    await page.emulateMedia({ colorScheme, reducedMotion: "reduce" });
    expect(await violations(page), colorScheme).toEqual([]);
  }
  const overflow = await page.evaluate(
    () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
  );
  expect(overflow).toBeLessThanOrEqual(0);
}

/** What a camera would read: the pixels of the code as the browser drew it, looked at by another program. */
async function decoded(page: Page, code: Locator): Promise<string | undefined> {
  const picture = (await code.screenshot()).toString("base64");
  const other = await page.context().newPage();
  const { data, width, height } = await other.evaluate(async (source) => {
    const image = new Image();
    image.src = `data:image/png;base64,${source}`;
    await image.decode();
    const canvas = document.createElement("canvas");
    [canvas.width, canvas.height] = [image.width, image.height];
    const context = canvas.getContext("2d");
    context?.drawImage(image, 0, 0);
    const pixels = context?.getImageData(0, 0, image.width, image.height);
    return { data: [...(pixels?.data ?? [])], width: image.width, height: image.height };
  }, picture);
  await other.close();
  return jsQR(new Uint8ClampedArray(data), width, height)?.data;
}
