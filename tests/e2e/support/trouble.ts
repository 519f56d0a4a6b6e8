import type { Page } from "playwright/test";

/** Collects what goes wrong behind a page's back, from now on: errors of scripts, refusals by the policy, failed requests. */
export function watchForTrouble(page: Page): readonly string[] {
  const trouble: string[] = [];
  page.on("pageerror", (error) => trouble.push(`script: ${error.message}`));
  page.on("console", (message) => {
    if (message.type() === "error") trouble.push(`console: ${message.text()}`);
  });
  page.on("response", (response) => {
    if (response.status() >= 400) trouble.push(`${String(response.status())}: ${response.url()}`);
  });
  page.on("requestfailed", (request) => {
    // A link that is left behind while its page is fetched ahead ends that request; nobody misses it.
    const why = request.failure()?.errorText ?? "failed";
    if (why !== "net::ERR_ABORTED") trouble.push(`${why}: ${request.url()}`);
  });
  return trouble;
}
