import { expect, type BrowserContext, type Page } from "playwright/test";
import { DEMO_OUTSIDER, DEMO_PASSWORD, DEMO_PEOPLE } from "@/seed-demo/people";

type Cookies = Awaited<ReturnType<BrowserContext["cookies"]>>;

const PEOPLE = [...DEMO_PEOPLE, DEMO_OUTSIDER];
const sessions = new Map<string, Cookies>();

/**
 * Makes this page one of somebody of the demo: "organiser", "member", "judge", "outsider", or another key of the seed.
 * Each of them signs in by the form once in a worker; after that the session is handed on.
 */
export async function signInAs(page: Page, key: string): Promise<void> {
  const context = page.context();
  await context.clearCookies();
  const kept = sessions.get(key);
  if (kept !== undefined) {
    await context.addCookies(kept);
    return;
  }
  await signIn(page, { email: personOf(key).email, password: DEMO_PASSWORD });
  sessions.set(key, await context.cookies());
}

/** Signs in by the form. */
export async function signIn(
  page: Page,
  { email, password }: { readonly email: string; readonly password: string },
): Promise<void> {
  await page.goto("/sign-in");
  await page.getByLabel("E-mail address").fill(email);
  await page.getByLabel("Password").fill(password);
  await page.getByRole("button", { name: "Sign in" }).click();
  await expect(page.getByRole("link", { name: "Account of" })).toBeVisible();
}

export function personOf(key: string): (typeof PEOPLE)[number] {
  const found = PEOPLE.find((person) => person.key === key);
  if (found === undefined) throw new Error(`nobody in the demo is called ${key}`);
  return found;
}
