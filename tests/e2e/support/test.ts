import { test as base, type BrowserContext, type Page } from "playwright/test";

export { expect } from "playwright/test";

/** As Playwright's, but a page that was gone to is ready for what is typed into it. */
export const test = base.extend<{ context: BrowserContext }>({
  context: async ({ context }, use) => {
    await use(whoWaits(context));
  },
});

/** Every page that is opened here waits, after each `goto`, until its fields are the program's and no longer the server's. */
export function whoWaits(context: BrowserContext): BrowserContext {
  context.on("page", (page) => {
    const goto = page.goto.bind(page);
    page.goto = async (...address) => {
      const response = await goto(...address);
      await listens(page);
      return response;
    };
  });
  return context;
}

// What is typed into a field that React has not taken over yet is lost, and no person is as quick as a test. The pages that
// devices keep have no field that their script did not draw.
async function listens(page: Page): Promise<void> {
  await page.waitForFunction(() =>
    [...document.querySelectorAll(":not(#day) > main :is(input:not([type=hidden]), textarea, select, button)")].every(
      (field) => Object.keys(field).some((key) => key.startsWith("__reactProps$")),
    ),
  );
}
