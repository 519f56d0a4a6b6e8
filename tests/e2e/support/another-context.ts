import { test, type Browser, type BrowserContext } from "playwright/test";

/** A second browser with nobody signed in, at the address of the tests. */
export function anotherContext(browser: Browser): Promise<BrowserContext> {
  const { baseURL } = test.info().project.use;
  return browser.newContext(baseURL === undefined ? {} : { baseURL });
}
