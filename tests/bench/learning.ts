/**
 * A simulated club, always the same one: how far predictions are off against the number of logged brews, how often outcomes lie
 * in their intervals, what the kind adds for a new kettle, how many wrong readings are found out, and how often a kettle is
 * said to have changed. Draws docs/images/learning.svg and is told in docs/learning.md.
 */
import { writeFileSync } from "node:fs";
import { brewEvidence, driftTest, pool, type BrewEvidence } from "@/lib/calc/learn";
import { sameDay } from "../support/brewing-fixtures";
import {
  clubStory,
  OUTCOMES,
  summary,
  WAYS,
  type ClubStory,
  type Outcome,
  type Predicted,
} from "../support/learning-club";
import { chance } from "../support/simulated-club";
import { driftStudy } from "./learning-drift";
import { learningPlot } from "./learning-plot";

const KINDS = ["electric with basket", "electric with bag", "kettle and mash tun"] as const;
const CLUBS = 40;
const STAGES = [
  [0, 0],
  [1, 1],
  [2, 3],
  [4, 6],
  [7, 8],
] as const;
const UNITS: Readonly<Record<Outcome, string>> = {
  "fermenter.originalExtract": "°P",
  "fermenter.volume": "%",
  "kettle.heatingTime": "%",
};

const percent = (share: number, digits = 0): string => `${(100 * share).toFixed(digits)} %`;

function told(stories: readonly ClubStory[]): void {
  const all = stories.flatMap(({ predictions }) => predictions);
  for (const outcome of OUTCOMES) {
    for (const way of WAYS) {
      const own = all.filter((each) => each.outcome === outcome && each.way === way);
      const row = STAGES.map(([from, to]) => {
        const { error, covered } = summary(own.filter(({ logged }) => logged >= from && logged <= to));
        return `${error.toFixed(2)} (${percent(covered)})`;
      });
      console.log(`${outcome.padEnd(26)} ${UNITS[outcome].padEnd(2)} ${way.padEnd(8)} ${row.join("  ")}`);
    }
  }
  for (const way of WAYS) {
    console.log(
      `all outcomes inside their 80 %, ${way}: ${percent(summary(all.filter((each) => each.way === way)).covered, 1)}`,
    );
  }
  newKettles(all);
}

function newKettles(all: readonly Predicted[]): void {
  const few = all.filter(({ joinedLate, logged }) => joinedLate && logged < 4);
  for (const outcome of OUTCOMES) {
    const error = (way: Predicted["way"]): number =>
      summary(few.filter((each) => each.outcome === outcome && each.way === way)).error;
    console.log(
      `fewer than 4 brews, others of the kind have brewed, ${outcome}: alone ${error("alone").toFixed(2)}, ` +
        `pooled ${error("pooled").toFixed(2)} ${UNITS[outcome]}`,
    );
  }
}

function wrongReadings(stories: readonly ClubStory[]): void {
  const count = { wrong: 0, found: 0, right: 0, accused: 0, brews: 0, accusedBrews: 0 };
  for (const { evidence, brews } of stories.flatMap(({ kettles }) => kettles)) {
    evidence.forEach(({ leftOut }, b) => {
      const readings = brews[b]?.readings ?? [];
      const isOut = readings.map(({ quantity }) => leftOut.includes(quantity));
      readings.forEach(({ gross }, i) => {
        const out = isOut[i] === true ? 1 : 0;
        count[gross ? "wrong" : "right"]++;
        count[gross ? "found" : "accused"] += out;
      });
      if (readings.every(({ gross }) => !gross)) {
        count.brews++;
        if (isOut.includes(true)) count.accusedBrews++;
      }
    });
  }
  console.log(
    `wrong readings: ${String(count.wrong)}, left out ${percent(count.found / count.wrong)}; ` +
      `right readings: ${String(count.right)}, left out ${percent(count.accused / count.right, 2)}; ` +
      `brews without a wrong one: ${String(count.brews)}, with one left out ${percent(count.accusedBrews / count.brews, 1)}`,
  );
}

function speed(stories: readonly ClubStory[]): void {
  const stocked = stories.flatMap(({ kettles }) => kettles).filter(({ evidence }) => evidence.length > 0);
  const first = stocked[0];
  const brewed = first?.brews[0];
  if (first === undefined || brewed === undefined) return;
  const evidence = medianMs(50, () => brewEvidence({ ...brewed, ambient: sameDay }));
  const many = Array.from({ length: 50 }, (_, i) => {
    const { kettle, evidence: own } = stocked[i % stocked.length] ?? first;
    const brews = Array.from({ length: 10 }, (__, b): BrewEvidence[] =>
      own.slice(b % own.length, (b % own.length) + 1),
    );
    return { typical: kettle.typical, equipment: kettle.typical, brews: brews.flat() };
  });
  const pooled = medianMs(15, () => pool({ start: first.kettle.typical, kettles: many }));
  const calibrated = medianMs(15, () => driftTest({ equipment: first.kettle.typical, brews: many[0]?.brews ?? [] }));
  console.log(
    `evidence of one brew ${evidence.toFixed(1)} ms; 50 kettles × 10 brews pooled ${pooled.toFixed(1)} ms; ` +
      `drift of 10 brews ${calibrated.toFixed(1)} ms`,
  );
}

/** Half of the runs are faster. */
function medianMs(runs: number, task: () => unknown): number {
  for (let i = 0; i < runs; i++) task();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    task();
    return performance.now() - start;
  });
  return times.sort((one, other) => one - other)[Math.floor(runs / 2)] ?? NaN;
}

const stories = Array.from({ length: CLUBS }, (_, i) =>
  clubStory(
    { kind: KINDS[i % KINDS.length] ?? KINDS[0], kettles: 5, rounds: 9, groups: 3, apart: 2 },
    chance(1000 + i),
  ),
);
told(stories);
wrongReadings(stories);
driftStudy(stories);
speed(stories);
writeFileSync(
  "docs/images/learning.svg",
  learningPlot(
    stories.flatMap(({ predictions }) => predictions),
    STAGES,
  ),
);
