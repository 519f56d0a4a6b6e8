import { randomUUID } from "node:crypto";
import { anotherContext } from "./support/another-context";
import { CLUB } from "./support/own-recipe";
import { signIn, signInAs } from "./support/sign-in";
import { expect, test } from "./support/test";

test("somebody new joins by an invitation link and signs out on every device", async ({ page, browser }) => {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/people`);
  await page.getByLabel("Role", { exact: true }).selectOption("Member");
  await page.getByRole("button", { name: "Make an invitation link" }).click();
  const link = await page.getByLabel(/^The invitation link/).inputValue();

  const name = `Nadja Newcomer ${randomUUID().slice(0, 8)}`;
  const credentials = { email: `${randomUUID()}@newcomers.example`, password: "a sentence that nobody guesses" };
  const [phone, laptop] = [await anotherContext(browser), await anotherContext(browser)];
  const [onPhone, onLaptop] = [await phone.newPage(), await laptop.newPage()];
  await onPhone.goto(link);
  await onPhone.getByLabel("E-mail address").fill(credentials.email);
  await onPhone.getByLabel("Your name").fill(name);
  await onPhone.getByLabel("Password").fill(credentials.password);
  await onPhone.getByRole("button", { name: "Join the club" }).click();
  await expect(onPhone).toHaveURL(CLUB);
  await expect(onPhone.getByRole("link", { name: `Account of ${name}` })).toBeVisible();

  await page.reload();
  await expect(page.getByRole("row", { name })).toContainText("Member");

  await signIn(onLaptop, credentials);
  await onLaptop.goto("/account");
  await onLaptop.getByRole("button", { name: "Sign out on every device" }).click();
  await expect(onLaptop.getByText("You are signed out on every device.")).toBeVisible();
  await onPhone.goto(CLUB);
  await expect(onPhone.getByRole("heading", { level: 1, name: "Sign in" })).toBeVisible();
  await Promise.all([phone.close(), laptop.close()]);
});

test("an invitation link that was used up lets nobody else in", async ({ page, browser }) => {
  await signInAs(page, "organiser");
  await page.goto(`${CLUB}/people`);
  await page.getByLabel("Role", { exact: true }).selectOption("Guest");
  await page.getByRole("button", { name: "Make an invitation link" }).click();
  const link = await page.getByLabel(/^The invitation link/).inputValue();

  const join = async () => {
    const context = await anotherContext(browser);
    const theirs = await context.newPage();
    await theirs.goto(link);
    await theirs.getByLabel("E-mail address").fill(`${randomUUID()}@newcomers.example`);
    await theirs.getByLabel("Your name").fill("Gil Guest");
    await theirs.getByLabel("Password").fill("a sentence that nobody guesses");
    await theirs.getByRole("button", { name: "Join the club" }).click();
    return theirs;
  };
  const first = await join();
  await expect(first).toHaveURL(CLUB);
  const second = await join();
  await expect(second.getByRole("group", { name: "There is a problem" })).toBeVisible();
  await second.goto(CLUB);
  await expect(second.getByRole("heading", { level: 1, name: "Sign in" })).toBeVisible();
  await Promise.all([first.context().close(), second.context().close()]);
});

test("a wrong password and an unknown address get the same answer", async ({ page }) => {
  await page.goto("/sign-in");
  const answers: string[] = [];
  for (const email of ["organiser@hollowmere.example", `${randomUUID()}@nowhere.example`]) {
    await page.getByLabel("E-mail address").fill(email);
    await page.getByLabel("Password").fill("not the password of anybody");
    await page.getByRole("button", { name: "Sign in" }).click();
    answers.push(await page.getByRole("group", { name: "There is a problem" }).innerText());
    await page.reload();
  }
  expect(answers[0]).toBe(answers[1]);
});
