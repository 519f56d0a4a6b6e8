/**
 * How long the results of a large tasting take, 60 judges and 200 entries, without a database or a server
 * (`npm run bench -- statistics`): all that the page of results computes, with every judge at every entry, which is what
 * agreement needs, and with a fifth of them at each, as panels of that size taste.
 */
import type { FlightFacts, TastingFacts } from "@/lib/model/tasting/results-facts";
import { tastingResults } from "@/lib/model/tasting/results";
import { BLANK_SHEET, type Sheet } from "@/lib/model/tasting/sheet";
import { seededRandom } from "../faults/random";

const JUDGES = 60;
const ENTRIES = 200;
const RUNS = 15;
const WANTED_MS = 200;

const random = seededRandom(7);

/** A beer is so good, a judge so severe, and a sheet a little off. */
function sheetOf(points: number): { readonly total: number; readonly sheet: Sheet } {
  const total = Math.max(0, Math.min(50, Math.round(2 * points) / 2));
  const flavour = Math.min(20, total);
  const aroma = Math.min(12, total - flavour);
  const overall = Math.min(10, total - flavour - aroma);
  const mouthfeel = Math.min(5, total - flavour - aroma - overall);
  const appearance = total - flavour - aroma - overall - mouthfeel;
  const strength = random() < 0.5 ? 1 : 3;
  const descriptors = [{ word: "bitter", strength }] as const;
  return { total, sheet: { ...BLANK_SHEET, scores: { aroma, appearance, flavour, mouthfeel, overall }, descriptors } };
}

/** Entries in a flight of their own number; each is tasted by the judges whose turn it is. */
function flightOf(flightNo: number, entries: number, isServed: (judge: number, entry: number) => boolean): FlightFacts {
  const judges = Array.from({ length: JUDGES }, (_, at) => ({
    judgeId: `judge ${String(at)}`,
    seat: at + 1,
    name: `Judge ${String(at + 1)} (invented)`,
  }));
  const severity = judges.map(() => 4 * random() - 2);
  const quality = Array.from({ length: entries }, () => 25 + 15 * random());
  const cells = judges.flatMap(({ judgeId }, judge) =>
    quality.flatMap((good, entry) =>
      isServed(judge, entry)
        ? [{ judgeId, entryNo: 100 + entry, points: good - (severity[judge] ?? 0) + 6 * random() - 3 }]
        : [],
    ),
  );
  return {
    ...{ flightNo, title: `Flight ${String(flightNo)}`, kind: "scored", judges, choices: [], begun: [] },
    entries: quality.map((good, entry) => ({
      ...{ entryNo: 100 + entry, flightNo, styleCode: "18B", beer: "Invented", brewer: "Somebody", brewId: null },
      ...{ brewerIds: [] },
      figures: [{ quantity: "fermenter.bitterness", from: "computed", value: good, sd: 2, interval: null }],
    })),
    served: cells.map(({ judgeId, entryNo }) => ({ judgeId, entryNo })),
    sheets: cells.map(({ judgeId, entryNo, points }) => ({ judgeId, entryNo, ...sheetOf(points), enteredBy: null })),
  };
}

function factsOf(...flights: readonly FlightFacts[]): TastingFacts {
  return { id: "t", title: "Bench", heldOn: null, revealedAt: new Date(0), seed: 1, flights };
}

function tell(what: string, facts: TastingFacts): void {
  tastingResults(facts);
  const times = Array.from({ length: RUNS }, () => {
    // Of the processor, so that a machine with other work says the same.
    const begun = process.cpuUsage();
    tastingResults(facts);
    const { user, system } = process.cpuUsage(begun);
    return (user + system) / 1000;
  }).sort((a, b) => a - b);
  const sheets = facts.flights.reduce((sum, flight) => sum + flight.sheets.length, 0);
  const at = (share: number): string => `${(times[Math.floor(share * (RUNS - 1))] ?? NaN).toFixed(0)} ms`;
  console.log(
    `${what.padEnd(44)}${String(sheets).padStart(6)} sheets: median ${at(0.5)} (${at(0)} to ${at(1)}), wanted below ` +
      `${String(WANTED_MS)} ms`,
  );
}

const everyone = (): boolean => true;
// Twelve of sixty at each entry, moved on by five from one to the next, so that all are compared through others.
const aFifth = (judge: number, entry: number): boolean => (judge - 5 * entry + 60 * entry) % JUDGES < JUDGES / 5;

tell(
  "60 judges, 2 flights of 100, all at all",
  factsOf(flightOf(1, ENTRIES / 2, everyone), flightOf(2, ENTRIES / 2, everyone)),
);
tell("60 judges, 1 flight of 200, all at all", factsOf(flightOf(1, ENTRIES, everyone)));
tell("60 judges, 1 flight of 200, a fifth at each", factsOf(flightOf(1, ENTRIES, aFifth)));
