import { expect, type Page } from "playwright/test";

/** A form on its way to the server, taken off the wire before it arrived. */
export interface Intercepted {
  readonly url: string;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer;
}

const KEPT_HEADERS = ["accept", "content-type", "next-action", "next-router-state-tree"];

/** Does something on a page that would change data, and keeps it from happening. */
export async function intercept(page: Page, act: () => Promise<void>): Promise<Intercepted> {
  const caught: Intercepted[] = [];
  await page.route("**/*", async (route) => {
    const request = route.request();
    const body = request.postDataBuffer();
    if (request.method() !== "POST" || body === null) return route.fallback();
    const headers = Object.entries(request.headers()).filter(([name]) => KEPT_HEADERS.includes(name));
    caught.push({ url: request.url(), headers: Object.fromEntries(headers), body });
    return route.abort();
  });
  await act();
  await expect.poll(() => caught.length).toBeGreaterThan(0);
  await page.unrouteAll({ behavior: "ignoreErrors" });
  const [first] = caught;
  if (first === undefined) throw new Error("nothing was sent");
  return first;
}

/** Sends it after all, as whoever is signed in now and from a page of the given origin; null leaves the origin out. */
export async function send(
  page: Page,
  { url, headers, body }: Intercepted,
  origin: string | null = new URL(url).origin,
): Promise<{ readonly status: number; readonly text: string }> {
  const answer = await page.request.fetch(url, {
    method: "POST",
    headers: origin === null ? headers : { ...headers, origin },
    data: body,
    maxRedirects: 0,
  });
  return { status: answer.status(), text: await answer.text() };
}
