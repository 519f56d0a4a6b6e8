/**
 * Makes the pictures of the README from a demo that runs: `npm run screenshot`, or with another address than
 * http://localhost:3000 behind it.
 */
import { mkdir } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import { chromium, type Locator, type Page } from "playwright";
import { DEMO_PASSWORD } from "../../seed-demo/people";
import { ensureChromium } from "./chromium.mjs";

const ADDRESS = process.argv[2] ?? process.env.GYLEBOOK_URL ?? "http://localhost:3000";
const IMAGES = fileURLToPath(new URL("../../docs/images/", import.meta.url));
const CLUB = "/s/hollowmere";
const WIDTH = 1280;
const TALLEST = 3000;

interface Picture {
  readonly file: string;
  /** Where the picture ends, so that it does not cut through a station. */
  readonly end: (page: Page) => Locator;
  readonly open: (page: Page) => Promise<void>;
}

const PICTURES: readonly Picture[] = [
  {
    file: "ledger.png",
    end: (page) => page.getByRole("rowheader", { name: "Lauter", exact: true }),
    open: async (page) => {
      await page.goto(`${CLUB}/recipes`);
      await page.getByRole("link", { name: "Millrace Pale Ale", exact: true }).click();
      // The names of the styles come after the page.
      await page.getByLabel("Style").getByRole("option").nth(2).waitFor({ state: "attached" });
    },
  },
  {
    file: "comparison.png",
    end: (page) => page.getByRole("rowheader", { name: "Package", exact: true }),
    open: async (page) => {
      await page.goto(`${CLUB}/brews`);
      // The log with the reading that is deliberately wrong.
      const brew = page.getByRole("row").filter({ hasText: "Blue barrel" });
      await brew.getByRole("link", { name: "Millrace Pale Ale" }).click();
      await page.getByRole("link", { name: "Ledger comparison" }).click();
      await page.getByRole("region", { name: "Doubtful readings" }).waitFor();
    },
  },
];

async function signIn(page: Page): Promise<void> {
  await page.goto("/sign-in");
  await page.getByLabel("E-mail address").fill("organiser@hollowmere.example");
  await page.getByLabel("Password").fill(DEMO_PASSWORD);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("link", { name: "Account of" }).waitFor();
}

async function takePictures(): Promise<void> {
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: ["--no-sandbox"] });
  try {
    const page = await browser.newPage({
      baseURL: ADDRESS,
      viewport: { width: WIDTH, height: TALLEST },
      deviceScaleFactor: 1.5,
      colorScheme: "light",
      locale: "en-GB",
      timezoneId: "UTC",
      reducedMotion: "reduce",
    });
    await signIn(page);
    await mkdir(IMAGES, { recursive: true });
    for (const { file, end, open } of PICTURES) {
      await page.setViewportSize({ width: WIDTH, height: TALLEST });
      await open(page);
      const height = Math.floor((await end(page).boundingBox())?.y ?? TALLEST);
      await page.screenshot({ path: `${IMAGES}${file}`, clip: { x: 0, y: 0, width: WIDTH, height } });
      console.log(`docs/images/${file}`);
    }
  } finally {
    await browser.close();
  }
}

try {
  await takePictures();
} catch (error) {
  const why = error instanceof Error ? error.message : String(error);
  console.error(`No pictures: is the demo running at ${ADDRESS}? Start it with npm start.\n${why}`);
  process.exitCode = 1;
}
