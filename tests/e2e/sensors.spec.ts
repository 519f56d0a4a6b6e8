import type { APIResponse, Page } from "playwright/test";
import { CLUB, ownTitle } from "./support/own-recipe";
import { planBrew } from "./support/planned-brew";
import { makeKey } from "./support/sensor-writes";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

const PHOTO = Buffer.from(
  // A PNG of one red pixel.
  "iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mP8z8BQDwAEhQGAhKmMIQAAAABJRU5ErkJggg==",
  "base64",
);

/** A brew of the member's own; the page is its run sheet, and the answer its identifier. */
async function newBrew(page: Page): Promise<string> {
  await signInAs(page, "member");
  await planBrew(page, "Coal Quay Porter", "Shed fifty");
  return page.url().split("/").at(-1)?.split("?")[0] ?? "";
}

/** As a script sends it: no page, no origin. */
function post(page: Page, token: string | null, readings: readonly unknown[]): Promise<APIResponse> {
  const headers = token === null ? {} : { authorization: `Bearer ${token}` };
  return page.request.post("/api/v1/readings", { headers, data: { readings } });
}

test("a member makes a key, a script posts with it, and revoking it ends that", async ({ page }) => {
  const brew = await newBrew(page);
  await page.getByRole("link", { name: "Readings by a sensor or a script" }).click();
  await expect(page.getByRole("heading", { level: 1, name: "Sensors and scripts" })).toBeVisible();
  await expect(page.getByLabel("Posts to")).toHaveValue(brew);
  const name = ownTitle("Probe");
  const token = await makeKey(page, name);
  expect(token).toMatch(/^gyle_[\w-]{43}$/);

  const reading = { at: "2026-03-14T10:00:00Z", quantity: "fermenter.temperature", value: 68, unit: "°F" };
  const answer = await post(page, token, [reading, { ...reading, value: 900 }]);
  expect(answer.status()).toBe(200);
  expect(await answer.json()).toMatchObject({ stored: 1, rejected: 1 });
  expect(await (await post(page, token, [reading])).json()).toMatchObject({ stored: 0, duplicate: 1 });
  const back = await page.request.get(`/api/v1/brews/${brew}/readings`, {
    headers: { authorization: `Bearer ${token}` },
  });
  expect(((await back.json()) as { readings: { value: number }[] }).readings.map(({ value }) => value)).toEqual([20]);

  await page.reload();
  await expect(page.getByLabel("The key. Copy it now")).toHaveCount(0);
  await expect(page.getByText(token)).toHaveCount(0);
  await page.getByRole("button", { name: `Revoke the key of ${name}` }).click();
  await expect(page.getByRole("row", { name }).getByText(/^revoked/)).toBeVisible();
  expect((await post(page, token, [reading])).status()).toBe(401);
});

test("a signed-in browser posts no readings without a key, from our pages or from elsewhere", async ({ page }) => {
  const brew = await newBrew(page);
  const reading = { brew, at: "2026-03-14T10:00:00Z", quantity: "mash.ph", value: 5.4, unit: "pH" };
  expect((await post(page, null, [reading])).status()).toBe(401);
  const statuses = [];
  for (const origin of ["https://elsewhere.example", new URL(page.url()).origin]) {
    const headers = { origin, "sec-fetch-site": "cross-site" };
    statuses.push((await page.request.post("/api/v1/readings", { headers, data: { readings: [reading] } })).status());
  }
  expect(statuses).toEqual([401, 401]);
});

test("a form of a key says what is wrong with it", async ({ page }) => {
  await signInAs(page, "member");
  await page.goto(`${CLUB}/sensors`);
  await page.getByLabel("Expires after, days").fill("900");
  await page.getByRole("button", { name: "Make a key" }).click();
  await expect(page.getByText("Name of the sensor is empty").first()).toBeVisible();
  await expect(page.getByText("Days until it expires 900 is outside 1 to 400").first()).toBeVisible();
});

test("a photo is kept once, shown to the club alone, and one of 50 MB is refused", async ({ page }) => {
  const brew = await newBrew(page);
  const home = new URL(page.url()).origin;
  const photos = `/api/brew-day/hollowmere/${brew}/photos`;
  const id = "0198f2a0-0000-7000-8000-0000000000" + String(Math.floor(Math.random() * 90) + 10);
  const send = (data: Buffer, origin: string) =>
    page.request.post(`${photos}?id=${id}`, { data, headers: { origin, "content-type": "image/png" } });
  expect((await send(PHOTO, "https://elsewhere.example")).status()).toBe(403);
  expect((await send(PHOTO, home)).status()).toBe(201);
  expect((await send(PHOTO, home)).status()).toBe(200);
  const huge = await send(Buffer.alloc(50 * 1024 * 1024), home);
  expect(huge.status()).toBe(413);
  expect(await huge.text()).toContain("Photo: 50 MB are too large; a photo has at most 10 MB.");
  const shown = await page.request.get(`${photos}/${id}?size=thumb`);
  expect(shown.headers()).toMatchObject({
    "content-type": "image/webp",
    "x-content-type-options": "nosniff",
    "cache-control": "private, max-age=31536000, immutable",
  });
  await signInAs(page, "outsider");
  expect((await page.request.get(`${photos}/${id}`)).status()).toBe(404);
  await page.context().clearCookies();
  expect((await page.request.get(`${photos}/${id}`)).status()).toBe(401);
});
