import { brewEvidence, driftTest, type BrewEvidence } from "@/lib/calc/learn";
import type { Equipment } from "@/lib/calc/ledger";
import { kilogramsPerHour } from "@/lib/calc/units";
import { sameDay } from "../support/brewing-fixtures";
import type { ClubStory } from "../support/learning-club";
import { brewForReal, chance, planOn, wantedRecipe, type SecretKettle } from "../support/simulated-club";

const LEVEL = 0.05;
const BREWS = 12;
/** Brews before the change. */
const BEFORE = 6;
const LEAST_BREWS = 4;

/** The same kettle with a boil-off that is so many times as large. */
function boilingMore(kettle: SecretKettle, times: number): SecretKettle {
  const of = (equipment: Equipment): Equipment => {
    const { boilOff } = equipment.kettle;
    const more = { ...boilOff, value: kilogramsPerHour(boilOff.value * times) };
    return { ...equipment, kettle: { ...equipment.kettle, boilOff: more } };
  };
  return { ...kettle, truth: of(kettle.truth) };
}

function evidenceOfChange(kettle: SecretKettle, times: number, seed: number): BrewEvidence[] {
  const random = chance(seed);
  return Array.from({ length: BREWS }, (_, b): BrewEvidence[] => {
    const recipe = wantedRecipe(kettle, random);
    const ledger = planOn(kettle.typical, recipe);
    if (ledger === null) return [];
    const today = b < BEFORE ? kettle : boilingMore(kettle, times);
    const real = brewForReal(today, { recipe, ledger }, random);
    if (real === null) return [];
    const made = brewEvidence({ recipe, equipment: kettle.typical, ambient: sameDay, readings: real.readings });
    return made.ok ? [made.evidence] : [];
  }).flat();
}

/** How often steady kettles are said to have changed, asked once and after each brew, and how often a change is found. */
export function driftStudy(stories: readonly ClubStory[]): void {
  const kettles = stories.flatMap((story) => story.kettles);
  const accused = (typical: Equipment, brews: readonly BrewEvidence[]): boolean =>
    (driftTest({ equipment: typical, brews })[0]?.pOfAny ?? 1) < LEVEL;
  let asked = 0;
  let once = 0;
  let ever = 0;
  for (const { kettle, evidence } of kettles) {
    if (evidence.length < LEAST_BREWS) continue;
    asked++;
    if (accused(kettle.typical, evidence)) once++;
    const lengths = Array.from({ length: evidence.length - LEAST_BREWS + 1 }, (_, i) => LEAST_BREWS + i);
    if (lengths.some((length) => accused(kettle.typical, evidence.slice(0, length)))) ever++;
  }
  const share = (count: number, of: number): string => `${((100 * count) / of).toFixed(1)} %`;
  console.log(
    `steady kettles said to have changed at ${String(LEVEL)}: asked once ${share(once, asked)}, ` +
      `asked after each brew ${share(ever, asked)} of ${String(asked)}`,
  );
  for (const times of [1.15, 1.3, 1.5]) {
    const changed = kettles.slice(0, 60).map(({ kettle }, i) => {
      const first = driftTest({ equipment: kettle.typical, brews: evidenceOfChange(kettle, times, 7000 + i) })[0];
      return first !== undefined && first.pOfAny < LEVEL ? first : null;
    });
    const found = changed.flatMap((first) => (first === null ? [] : [first]));
    const named = found.filter(({ name }) => name === "kettle.boilOff");
    const near = found.filter(({ after }) => Math.abs(after - BEFORE) <= 1);
    console.log(
      `boil-off ${String(Math.round(100 * times - 100))} % larger after ${String(BEFORE)} of ${String(BREWS)} brews: found ` +
        `${share(found.length, changed.length)}, named rightly ${share(named.length, changed.length)}, ` +
        `within one brew ${share(near.length, changed.length)}`,
    );
  }
}
