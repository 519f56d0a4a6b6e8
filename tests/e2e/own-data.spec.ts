import { randomUUID } from "node:crypto";
import { readFile } from "node:fs/promises";
import { anotherContext } from "./support/another-context";
import { CLUB } from "./support/own-recipe";
import { signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("somebody takes their data along and closes the account, and is nobody afterwards", async ({ page, browser }) => {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/people`);
  await page.getByLabel("Role", { exact: true }).selectOption("Guest");
  await page.getByRole("button", { name: "Make an invitation link" }).click();
  const link = await page.getByLabel(/^The invitation link/).inputValue();

  const name = `Lena Leaving ${randomUUID().slice(0, 8)}`;
  const credentials = { email: `${randomUUID()}@newcomers.example`, password: "a sentence that nobody guesses" };
  const context = await anotherContext(browser);
  const theirs = await context.newPage();
  await theirs.goto(link);
  await theirs.getByLabel("E-mail address").fill(credentials.email);
  await theirs.getByLabel("Your name").fill(name);
  await theirs.getByLabel("Password").fill(credentials.password);
  await theirs.getByRole("button", { name: "Join the club" }).click();
  await expect(theirs).toHaveURL(CLUB);

  await theirs.goto("/account");
  const [download] = await Promise.all([
    theirs.waitForEvent("download"),
    theirs.getByRole("link", { name: "Download my data" }).click(),
  ]);
  const file = JSON.parse(await readFile(await download.path(), "utf8")) as unknown;
  expect(file).toMatchObject({
    format: "gylebook-own-data",
    account: { displayName: name, emailNorm: credentials.email },
  });

  const button = theirs.getByRole("button", { name: "Close my account for good" });
  await theirs.getByLabel("Your password").fill(credentials.password);
  await theirs.getByLabel("Type “close my account”").fill("close it");
  await button.click();
  await expect(theirs.getByText("These words are not “close my account”").first()).toBeVisible();
  await theirs.getByLabel("Your password").fill(credentials.password);
  await theirs.getByLabel("Type “close my account”").fill("close my account");
  await button.click();
  await expect(theirs.getByText("Your account is closed.")).toBeVisible();

  await theirs.goto(CLUB);
  await expect(theirs.getByRole("heading", { level: 1, name: "Sign in" })).toBeVisible();
  await page.reload();
  await expect(page.getByRole("heading", { level: 1, name: "People" })).toBeVisible();
  await expect(page.getByText(name)).toHaveCount(0);
  await signInRefused();
  await context.close();

  async function signInRefused(): Promise<void> {
    await theirs.goto("/sign-in");
    await theirs.getByLabel("E-mail address").fill(credentials.email);
    await theirs.getByLabel("Password").fill(credentials.password);
    await theirs.getByRole("button", { name: "Sign in" }).click();
    await expect(theirs.getByRole("group", { name: "There is a problem" })).toBeVisible();
  }
});

test("the last organiser of a club reads whom to ask before the account can be closed", async ({ page }) => {
  await signInAs(page, "organiser");
  await page.goto("/account");
  await expect(page.getByText("You are the last organiser of")).toBeVisible();
  await expect(page.getByRole("button", { name: "Close my account for good" })).toHaveCount(0);
});
