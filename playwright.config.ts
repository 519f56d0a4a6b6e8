import { defineConfig, devices } from "playwright/test";

// The tests run where Chromium's own sandbox may not, and load nothing but our pages.
const ARGUMENTS = [
  "--no-sandbox",
  "--disable-gpu",
  "--disable-quic",
  "--no-first-run",
  "--disable-background-networking",
  "--disable-component-update",
  "--disable-sync",
];

const executablePath = process.env.CHROMIUM_PATH;

export default defineConfig({
  testDir: "tests/e2e",
  outputDir: "test-results",
  forbidOnly: true,
  fullyParallel: true,
  workers: 2,
  // Some walk through every page, several times.
  timeout: 120_000,
  // A second try tells a machine that was slow from a defect; the summary names how many needed it.
  retries: 1,
  // Two browsers, the server and its database share what a small machine has; a page may take a while to come.
  expect: { timeout: 15_000 },
  use: {
    ...devices["Desktop Chrome"],
    baseURL: process.env.GYLEBOOK_URL ?? "http://localhost:3000",
    locale: "en-GB",
    timezoneId: "UTC",
    trace: "retain-on-first-failure",
    launchOptions: { args: ARGUMENTS, ...(executablePath === undefined ? {} : { executablePath }) },
  },
});
