import { test, type Browser, type BrowserContext } from "playwright/test";
import { whoWaits } from "./test";

/** A second browser with nobody signed in, at the address of the tests. */
export async function anotherContext(browser: Browser): Promise<BrowserContext> {
  const { baseURL } = test.info().project.use;
  return whoWaits(await browser.newContext(baseURL === undefined ? {} : { baseURL }));
}
