/**
 * The table of all kettles in a browser: when it is first painted, when every row is computed, and the longest that the
 * page itself was busy meanwhile; beside it the same rows computed in this process, without a page.
 * The server and its database come from the environment (`npm run bench`).
 */
import { chromium, type Page } from "playwright";
import { ensureChromium } from "../../lib/ops/chromium.mjs";
import { DEMO_PASSWORD, DEMO_PEOPLE } from "../../seed-demo/people";
import { NO_CHOICE } from "@/lib/model/adaptation";
import type { RecipeContent } from "@/lib/model/recipe-content";
import { recipeIntention } from "@/lib/model/recipe-intention";
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { createEquipment } from "@/lib/server/equipment/writes";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { createRecipe } from "@/lib/server/recipes/writes";
import { closeSession, openSession } from "@/lib/server/sessions/writes";
import { foundClub } from "@/lib/server/spaces/writes";
import { kettleFigures } from "@/lib/ui/kettles/kettle-figures";
import { brewInput } from "../support/brewed";
import { sameDay } from "../support/brewing-fixtures";
import { kettles } from "./many-kettles";
import { sixBySix } from "./six-by-six";

const COUNTS = [50, 1_000, 5_000];
const AT_ONCE = 8;

interface Painted {
  readonly firstMs: number;
  readonly completeMs: number;
  readonly longestTaskMs: number;
}

function content(): RecipeContent {
  const { equipment } = brewInput();
  const writtenOn = { name: equipment.name, equipment, ambient: sameDay };
  return { recipe: sixBySix, entered: {}, style: null, notes: "", writtenOn };
}

/** A club with so many kettles, and the address of its table. */
async function club(member: (slug: string) => Promise<Member>, reference: string, count: number): Promise<string> {
  const viewer = await proveViewer(reference);
  if (viewer === null) throw new Error("nobody is signed in");
  const { slug } = await foundClub(viewer, { name: `${String(count)} kettles`, slug: `bench-${String(count)}` });
  const organiser = await member(slug);
  const all = kettles(count).map((equipment, i) => ({ ...equipment, name: `Kettle ${String(i + 1)}` }));
  for (let i = 0; i < all.length; i += AT_ONCE) {
    await Promise.all(all.slice(i, i + AT_ONCE).map((equipment) => createEquipment(organiser, { equipment })));
  }
  const { id } = await createRecipe(organiser, { title: "Six by six", content: content(), message: "" });
  return `/s/${slug}/recipes/${id}/kettles`;
}

async function paint(page: Page, address: string, count: number): Promise<Painted> {
  await page.goto(address);
  const all = new Intl.NumberFormat("en-GB").format(count);
  await page.getByText(`${all} of ${all} rows`).waitFor({ timeout: 300_000 });
  return page.evaluate(() => {
    const [paint] = performance.getEntriesByName("first-contentful-paint");
    return {
      firstMs: paint?.startTime ?? NaN,
      completeMs: performance.now(),
      longestTaskMs: Math.max(0, ...window.tasksMs),
    };
  });
}

declare global {
  interface Window {
    tasksMs: number[];
  }
}

async function openBrowser(origin: string): Promise<{ page: Page; close: () => Promise<void> }> {
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: ["--no-sandbox"] });
  const page = await browser.newPage();
  await page.addInitScript(() => {
    window.tasksMs = [];
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) window.tasksMs.push(duration);
    }).observe({ type: "longtask", buffered: true });
  });
  await page.goto(`${origin}/sign-in`);
  await page.getByLabel("E-mail address").fill(DEMO_PEOPLE[0]?.email ?? "");
  await page.getByLabel("Password").fill(DEMO_PASSWORD);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("link", { name: "Account of" }).waitFor();
  return { page, close: () => browser.close() };
}

/** The rows alone, without their intervals as in the page’s own count, on one core. */
function alone(count: number): number {
  const recipe = content();
  const written = recipeIntention(recipe);
  if (written === null) throw new Error("the recipe does not brew");
  const start = performance.now();
  for (const equipment of kettles(count)) {
    kettleFigures({ content: recipe, written, kettle: { id: "", equipment, lots: [] }, choice: NO_CHOICE });
  }
  return performance.now() - start;
}

async function benchKettles(): Promise<void> {
  const origin = environment.appOrigin ?? "";
  const { id: userId } = await directory.appUser.findUniqueOrThrow({
    where: { emailNorm: DEMO_PEOPLE[0]?.email ?? "" },
  });
  const reference = await openSession({ userId, userAgent: "bench" });
  const memberOf = async (slug: string): Promise<Member> => {
    const viewer = await proveViewer(reference);
    const member = viewer === null ? null : await proveMember(viewer, slug);
    if (member === null) throw new Error("the club is not there");
    return member;
  };
  const browser = await openBrowser(origin);
  try {
    for (const count of COUNTS) {
      const address = await club(memberOf, reference, count);
      await paint(browser.page, origin + address, count);
      const { firstMs, completeMs, longestTaskMs } = await paint(browser.page, origin + address, count);
      const ratio = completeMs / alone(count);
      console.log(
        `all kettles, ${String(count).padStart(5)} rows: first painted after ${firstMs.toFixed(0)} ms, all rows after ` +
          `${completeMs.toFixed(0)} ms = ${ratio.toFixed(1)} times the rows alone; ` +
          `the page was busy for ${longestTaskMs.toFixed(0)} ms at most`,
      );
    }
  } finally {
    await browser.close();
    await closeSession(reference);
    await directory.$disconnect();
  }
}

await benchKettles();
