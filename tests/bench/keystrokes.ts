/**
 * A keystroke in a recipe of thirty rows: when the last number stands in the page, and when the next picture of it is
 * drawn; beside it the picture after a keystroke in a plain text area of the same page, which is what the browser itself
 * takes, and how many pictures came later than a frame by the browser's event timing.
 * The server and its database come from the environment (`npm run bench`).
 */
import { chromium, type Page } from "playwright";
import { ensureChromium } from "../../lib/ops/chromium.mjs";
import { DEMO_CLUB, DEMO_PASSWORD, DEMO_PEOPLE } from "../../seed-demo/people";
import { directory } from "@/lib/server/db";
import { environment } from "@/lib/server/environment";
import { listEquipment } from "@/lib/server/equipment/reads";
import { proveMember, proveViewer, type Member } from "@/lib/server/proof";
import { createRecipe } from "@/lib/server/recipes/writes";
import { closeSession, openSession } from "@/lib/server/sessions/writes";
import { kilograms, grams } from "@/lib/calc/units";
import { sameDay } from "../support/brewing-fixtures";
import { sixBySix } from "./six-by-six";

const ROWS = 15;
const KEYS = 80;
const FRAME_MS = 16;

/** Invented: the recipe of the other benchmarks with each row shared out until there are thirty. */
async function thirtyRows(member: Member): Promise<string> {
  const [kettle] = await listEquipment(member);
  if (kettle === undefined) throw new Error("the demo club has no kettle");
  const nth = <T>(list: readonly T[], i: number): T => {
    const found = list[i % list.length];
    if (found === undefined) throw new Error("an empty list");
    return found;
  };
  const recipe = {
    ...sixBySix,
    fermentables: Array.from({ length: ROWS }, (_, i) => {
      const row = nth(sixBySix.fermentables, i);
      return { ...row, name: `Malt ${String(i + 1)}`, kg: kilograms(row.kg / 3 + 0.001 * i) };
    }),
    hops: Array.from({ length: ROWS }, (_, i) => {
      const row = nth(sixBySix.hops, i);
      return { ...row, name: `Hop ${String(i + 1)}`, grams: grams(row.grams / 3) };
    }),
  };
  const writtenOn = { name: kettle.equipment.name, equipment: kettle.equipment, ambient: sameDay };
  const content = { recipe, entered: {}, style: null, notes: "", writtenOn };
  return (await createRecipe(member, { title: "Thirty rows", content, message: "" })).id;
}

interface Keystrokes {
  /** From the input event to the last number written into the page, in order of size. */
  readonly writtenMs: readonly number[];
  /** From the input event to the end of all that it starts at once and of the next picture, in order of size. */
  readonly handlersMs: readonly number[];
  /** Events whose next picture took longer than a frame, by the browser's event timing. */
  readonly late: number;
}

declare global {
  interface Window {
    seen: { writtenMs: number[]; handlersMs: number[]; late: number };
  }
}

/** Listens before the page does, and looks at the clock again when the handlers and what they queue are through. */
async function watch(page: Page): Promise<void> {
  await page.evaluate((frameMs) => {
    window.seen = { writtenMs: [], handlersMs: [], late: 0 };
    let typedAt: number | null = null;
    // Told once the handlers are through, of all that they changed; what comes later by itself does not count.
    new MutationObserver(() => {
      if (typedAt !== null) window.seen.writtenMs.push(performance.now() - typedAt);
      typedAt = null;
    }).observe(document.body, { subtree: true, childList: true, characterData: true });
    document.addEventListener(
      "input",
      () => {
        const start = performance.now();
        typedAt = start;
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => window.seen.handlersMs.push(performance.now() - start);
        port2.postMessage(null);
      },
      { capture: true },
    );
    new PerformanceObserver((list) => {
      for (const { duration } of list.getEntries()) if (duration > frameMs) window.seen.late++;
      // Entries shorter than the threshold are not told; this is the least that browsers allow.
    }).observe({ type: "event", durationThreshold: 16 } as PerformanceObserverInit);
  }, FRAME_MS);
}

/** Types a digit and takes it away again, over and over. */
async function typeInto(page: Page, label: string): Promise<Keystrokes> {
  const field = page.getByLabel(label, { exact: true });
  await field.click();
  await page.evaluate(() => {
    window.seen = { writtenMs: [], handlersMs: [], late: 0 };
  });
  for (let i = 0; i < KEYS; i++) {
    await field.press(String(1 + (i % 9)));
    await field.press("Backspace");
  }
  const { writtenMs, handlersMs, late } = await page.evaluate(() => window.seen);
  const inOrder = (times: readonly number[]): readonly number[] => [...times].sort((one, other) => one - other);
  return { writtenMs: inOrder(writtenMs), handlersMs: inOrder(handlersMs), late };
}

async function signIn(page: Page, origin: string): Promise<void> {
  await page.goto(`${origin}/sign-in`);
  await page.getByLabel("E-mail address").fill(DEMO_PEOPLE[0]?.email ?? "");
  await page.getByLabel("Password").fill(DEMO_PASSWORD);
  await page.getByRole("button", { name: "Sign in" }).click();
  await page.getByRole("link", { name: "Account of" }).waitFor();
}

async function benchKeystrokes(): Promise<void> {
  const origin = environment.appOrigin ?? "";
  const { id: userId } = await directory.appUser.findUniqueOrThrow({
    where: { emailNorm: DEMO_PEOPLE[0]?.email ?? "" },
  });
  const reference = await openSession({ userId, userAgent: "bench" });
  const viewer = await proveViewer(reference);
  const member = viewer === null ? null : await proveMember(viewer, DEMO_CLUB.slug);
  if (member === null) throw new Error("the demo club is not there");
  const browser = await chromium.launch({ executablePath: await ensureChromium(), args: ["--no-sandbox"] });
  try {
    const id = await thirtyRows(member);
    const page = await browser.newPage();
    await signIn(page, origin);
    await page.goto(`${origin}/s/${DEMO_CLUB.slug}/recipes/${id}`);
    await page.getByLabel("Style").getByRole("option").nth(2).waitFor({ state: "attached" });
    await watch(page);
    await typeInto(page, "Mass of Malt 1");
    const plain = await typeInto(page, "Notes");
    const computed = await typeInto(page, "Mass of Malt 1");
    if (computed.writtenMs.length < KEYS) throw new Error("keystrokes changed no number");
    const at = (times: readonly number[], share: number): number => times[Math.floor(share * (times.length - 1))] ?? 0;
    const told = (times: readonly number[]): string =>
      [0.5, 0.75, 0.95].map((share) => `p${String(100 * share)} ${at(times, share).toFixed(1)} ms`).join(", ");
    const ratio = at(computed.handlersMs, 0.5) / at(plain.handlersMs, 0.5);
    console.log(`keystroke, 30 rows    ${told(computed.writtenMs)} until all numbers are written`);
    console.log(
      `  with the picture    ${told(computed.handlersMs)} = ${ratio.toFixed(1)} times a plain field of the page`,
    );
    console.log(
      `next picture          later than ${String(FRAME_MS)} ms for ${String(computed.late)} events of ` +
        `${String(2 * KEYS)} keystrokes; ${String(plain.late)} in the plain field`,
    );
  } finally {
    await browser.close();
    await closeSession(reference);
    await directory.$disconnect();
  }
}

await benchKeystrokes();
