import { randomUUID } from "node:crypto";
import { SHEET_MAXIMA } from "@/lib/calc/judging";
import { deliveryInput } from "@/lib/model/log/delivery";
import { DAY_MS, dayOf } from "@/lib/model/plain-day";
import { beerEntered } from "@/lib/model/tasting/prepare";
import { POINTS_STEP, SHEET_PARTS, type Sheet, type SheetPart } from "@/lib/model/tasting/sheet";
import type { FlightKind } from "@/lib/model/tasting/tasting";
import type { Member } from "@/lib/server/session";
import { listPourable } from "@/lib/server/tastings/candidates";
import { closeTasting, revealTasting } from "@/lib/server/tastings/close";
import { createTasting } from "@/lib/server/tastings/create";
import { enterBeer, enterBrews, placeEntry } from "@/lib/server/tastings/entries";
import { addFlight } from "@/lib/server/tastings/flights";
import { openTasting } from "@/lib/server/tastings/open";
import { setPanel } from "@/lib/server/tastings/panel";
import { findPreparation, type Preparation } from "@/lib/server/tastings/preparation";
import { ingestSheets } from "@/lib/server/tastings/sheets-ingest";
import { findJudgeSheet } from "@/lib/server/tastings/sheets-read";
import { Noise } from "./noise";

const SEED = 417_582;
const PALE_ALE = "18B";
const UNKNOWN = { originalGravity: null, finalGravity: null, alcohol: null, bitterness: null, colour: null };

interface Demo {
  readonly as: <Result>(key: string, act: (member: Member) => Promise<Result>) => Promise<Result>;
  readonly sharedBrewId: string;
}

/** Who judges the shared brew: two who brewed it are among them, and get no own beer. */
const REVEALED_PANEL = ["judge", "tamsin", "ivo", "emrys", "kasper", "sunniva"] as const;
const OPEN_PANEL = ["judge", "wilma", "petra", "dunja"] as const;

/** A tasting that is over, with sheets, and one that is open, of which the organiser is the steward. */
export async function seedTastings(demo: Demo): Promise<void> {
  await seedRevealed(demo);
  await seedOpen(demo);
}

async function seedRevealed({ as, sharedBrewId }: Demo): Promise<void> {
  const judges = await userIds(as, REVEALED_PANEL);
  const pourers = await userIds(as, ["petra"]);
  const id = await as("steward", async (steward) => {
    const tastingId = await begin(steward, {
      title: "Autumn tasting: one recipe, five kettles",
      ahead: -6,
      sharedBrewId,
    });
    await flight(steward, tastingId, {
      title: "Pale ales of the shared brew",
      kind: "scored",
      sharedBrewId,
      judges,
      pourers,
    });
    await openTasting(steward, await seen(steward, tastingId));
    return tastingId;
  });
  const noise = new Noise(SEED);
  const quality = new Map<number, number>();
  for (const judge of REVEALED_PANEL) await as(judge, (member) => writeSheets(member, id, noise, quality));
  await as("steward", (steward) => closeTasting(steward, { id }));
  await as("organiser", (organiser) => revealTasting(organiser, { id }));
}

async function seedOpen({ as, sharedBrewId }: Demo): Promise<void> {
  const judges = await userIds(as, OPEN_PANEL);
  const pourers = await userIds(as, ["steward"]);
  await as("organiser", async (organiser) => {
    const id = await begin(organiser, { title: "Winter tasting", ahead: 0, sharedBrewId: null });
    const panel = { judges, pourers };
    await flight(organiser, id, { title: "Pale ales, again", kind: "scored", sharedBrewId, ...panel });
    const beers = ["Invented cellar mild", "Invented orchard mild"];
    await flight(organiser, id, { title: "Two milds", kind: "triangle", beers, ...panel });
    await openTasting(organiser, await seen(organiser, id));
  });
}

async function begin(
  steward: Member,
  a: { readonly title: string; readonly ahead: number; readonly sharedBrewId: string | null },
): Promise<string> {
  const { title, ahead, sharedBrewId } = a;
  const heldOn = dayOf(new Date(Date.now() + ahead * DAY_MS));
  const note = "Invented. In the barn at three; bread and water are on the tables, and the last bus goes at seven.";
  return (await createTasting(steward, { title, heldOn, note, stewardId: steward.userId, sharedBrewId })).id;
}

interface DemoFlight {
  readonly title: string;
  readonly kind: FlightKind;
  /** Enters what of this shared brew can be poured. */
  readonly sharedBrewId?: string;
  readonly beers?: readonly string[];
  readonly judges: readonly string[];
  readonly pourers: readonly string[];
}

async function flight(steward: Member, id: string, demo: DemoFlight): Promise<void> {
  const { title, kind, sharedBrewId, beers = [], judges, pourers } = demo;
  const { flightNo } = await addFlight(steward, { ...(await seen(steward, id)), title, kind, palateLimit: null });
  const pourable = sharedBrewId === undefined ? [] : await listPourable(steward);
  const brewIds = pourable.filter((brew) => brew.sharedBrewId === sharedBrewId).map((brew) => brew.id);
  if (brewIds.length > 0) await enterBrews(steward, { ...(await seen(steward, id)), flightNo, brewIds });
  for (const beerName of beers) {
    const beer = { flightNo, beerName, brewerName: "A neighbour (invented)", figures: UNKNOWN };
    await enterBeer(steward, beerEntered.parse({ ...(await seen(steward, id)), ...beer }));
  }
  const entries = (await prepared(steward, id)).flights.find((each) => each.flightNo === flightNo)?.entries ?? [];
  for (const { entryNo, brewId } of entries) {
    const styleCode = brewId === null ? "13A" : PALE_ALE;
    await placeEntry(steward, { ...(await seen(steward, id)), entryNo, flightNo, styleCode });
  }
  await setPanel(steward, { ...(await seen(steward, id)), flightNo, judges: [...judges], pourers: [...pourers] });
}

async function prepared(steward: Member, id: string): Promise<Preparation> {
  const preparation = await findPreparation(steward, id);
  if (preparation === null) throw new Error("the demo's tasting has another steward");
  return preparation;
}

async function seen(steward: Member, id: string): Promise<{ readonly id: string; readonly lockVersion: number }> {
  return { id, lockVersion: (await prepared(steward, id)).lockVersion };
}

function userIds(as: Demo["as"], keys: readonly string[]): Promise<readonly string[]> {
  return Promise.all(keys.map((key) => as(key, (member) => Promise.resolve(member.userId))));
}

/** A judge's sheets: how good the beer is, how severe the judge, and noise. */
async function writeSheets(judge: Member, id: string, noise: Noise, quality: Map<number, number>): Promise<void> {
  const served = await findJudgeSheet(judge, id);
  if (served === null) throw new Error("the demo's judge judges nothing");
  const deviceId = noise.uuid();
  const severity = 1.5 * noise.normal();
  const entries = served.flights.flatMap((each) =>
    each.entries.map(({ entryNo }) => ({ entryNo, flightNo: each.flightNo })),
  );
  const now = Date.now();
  const events = entries.map(({ entryNo, flightNo }, at) => {
    const beer = quality.get(entryNo) ?? 33 + 3.5 * noise.normal();
    quality.set(entryNo, beer);
    const stamp = { id: randomUUID(), tastingId: id, flightNo, deviceId, deviceSeq: at + 1 };
    const occurredAt = new Date(now - (entries.length - at) * 1000).toISOString();
    const payload = sheetAbout(beer - severity + 1.8 * noise.normal(), noise);
    return { ...stamp, occurredAt, kind: "sheet", entryNo, isFinal: true, payload };
  });
  const stated = { space: judge.spaceSlug, user: judge.userId, roundTripMs: 0, unsteady: [] };
  const delivery = deliveryInput.parse({ ...stated, sentAt: new Date(now).toISOString(), events });
  const { rejected } = await ingestSheets(judge, delivery);
  if (rejected.length > 0) throw new Error(`the demo's sheets were refused: ${JSON.stringify(rejected)}`);
}

const MOST = Object.values(SHEET_MAXIMA).reduce((sum, most) => sum + most, 0);

/** Points about a total, in their shares of it. */
function sheetAbout(total: number, noise: Noise): Sheet {
  const share = Math.min(0.96, Math.max(0.3, total / MOST));
  const points = (part: SheetPart): number => {
    const most = SHEET_MAXIMA[part];
    const given = most * (share + 0.04 * noise.normal());
    return Math.min(most, Math.max(0, Math.round(given / POINTS_STEP) * POINTS_STEP));
  };
  const each = <T>(of: (part: SheetPart) => T): Record<SheetPart, T> =>
    Object.fromEntries(SHEET_PARTS.map((part) => [part, of(part)])) as Record<SheetPart, T>;
  const isPale = noise.uniform() < 0.5;
  return {
    scores: each(points),
    notes: { ...each(() => ""), overall: share > 0.7 ? "A second glass, please." : "Sound, a little short." },
    descriptors: isPale
      ? [
          { word: "bitter", strength: 2 },
          { word: "citrus", strength: 1 },
        ]
      : [{ word: "malty", strength: 2 }],
  };
}
