import { brewEvidence, calibrate, pool, type BrewEvidence } from "@/lib/calc/learn";
import { brewWithWater, intervals, type Equipment, type FigureCorrelation, type Recipe } from "@/lib/calc/ledger";
import { kilograms } from "@/lib/calc/units";
import type { EquipmentKind } from "@/lib/model/typical-equipment";
import { sameDay } from "./brewing-fixtures";
import {
  brewForReal,
  kindSecret,
  planOn,
  secretKettle,
  wantedRecipe,
  type Chance,
  type SecretKettle,
  type TakenReading,
} from "./simulated-club";

/** What is predicted and later known; volumes and times count in percent of themselves. */
export const OUTCOMES = ["fermenter.originalExtract", "fermenter.volume", "kettle.heatingTime"] as const;
export type Outcome = (typeof OUTCOMES)[number];

/** How a profile comes about: never learned, from its own brews, or with the help of its kind. */
export const WAYS = ["typical", "alone", "pooled"] as const;
export type Way = (typeof WAYS)[number];

/** One prediction of one brew, with what came of it. */
export interface Predicted {
  readonly way: Way;
  readonly outcome: Outcome;
  /** Brews that this kettle had logged before. */
  readonly logged: number;
  /** Whether others of its kind had brewed before it came. */
  readonly joinedLate: boolean;
  /** Happened less predicted; °P, or percent of what was predicted. */
  readonly error: number;
  readonly inside80: boolean;
}

export interface KettleStory {
  readonly kettle: SecretKettle;
  readonly joins: number;
  evidence: readonly BrewEvidence[];
  readonly brews: Brewed[];
}

interface Brewed {
  readonly recipe: Recipe;
  /** As it was planned with. */
  readonly equipment: Equipment;
  readonly ambient: typeof sameDay;
  readonly readings: readonly TakenReading[];
}

export interface ClubStory {
  readonly predictions: Predicted[];
  readonly kettles: KettleStory[];
}

interface Profile {
  readonly equipment: Equipment;
  readonly correlations: readonly FigureCorrelation[];
}

export interface ClubPlan {
  readonly kind: EquipmentKind;
  readonly kettles: number;
  readonly rounds: number;
  /** Kettles join one group after the other, so many rounds apart. */
  readonly groups: number;
  readonly apart: number;
}

/** A club of one kind: in each round every kettle that has joined brews once, planned with what is known by then. */
export function clubStory(plan: ClubPlan, random: Chance): ClubStory {
  const secret = kindSecret(random);
  const kettles = Array.from({ length: plan.kettles }, (_, i): KettleStory => {
    const kettle = secretKettle(plan.kind, secret, random);
    return { kettle, joins: (i % plan.groups) * plan.apart, evidence: [], brews: [] };
  });
  const predictions: Predicted[] = [];
  for (let round = 0; round < plan.rounds; round++) {
    const brewing = kettles.filter(({ joins }) => joins <= round);
    const pooled = pool({ start: brewing[0]?.kettle.typical ?? fail(), kettles: brewing.map(asKettleOfKind) }).kettles;
    brewing.forEach((story, i) => {
      const { typical } = story.kettle;
      const profiles: Record<Way, Profile> = {
        typical: { equipment: typical, correlations: [] },
        alone: calibrate({ equipment: typical, brews: story.evidence }),
        pooled: pooled[i] ?? fail(),
      };
      predictions.push(...brewOnce(story, profiles, random));
    });
  }
  return { predictions, kettles };
}

const asKettleOfKind = ({ kettle, evidence }: KettleStory): Parameters<typeof pool>[0]["kettles"][number] => ({
  typical: kettle.typical,
  equipment: kettle.typical,
  brews: [...evidence],
});

function brewOnce(story: KettleStory, profiles: Readonly<Record<Way, Profile>>, random: Chance): Predicted[] {
  const recipe = wantedRecipe(story.kettle, random);
  const ledger = planOn(profiles.pooled.equipment, recipe);
  if (ledger === null) return [];
  const real = brewForReal(story.kettle, { recipe, ledger }, random);
  if (real === null) return [];
  const logged = story.brews.length;
  const predictions = WAYS.flatMap((way): Predicted[] => {
    const predicted = predictedOn(profiles[way], recipe, ledger.quantities);
    return OUTCOMES.flatMap((outcome) => {
      const happened = real.happened.quantities[outcome];
      const expected = predicted?.values[outcome] ?? null;
      const half = predicted?.half[outcome];
      if (happened === null || expected === null || half === undefined) return [];
      const difference = happened - expected;
      const unit = outcome === "fermenter.originalExtract" ? 1 : expected / 100;
      return [
        {
          way,
          outcome,
          logged,
          joinedLate: story.joins > 0,
          error: difference / unit,
          inside80: Math.abs(difference) <= half,
        },
      ];
    });
  });
  story.brews.push({ recipe, ambient: sameDay, equipment: profiles.pooled.equipment, readings: real.readings });
  story.evidence = evidenceOf(story, profiles.pooled);
  return predictions;
}

/** After so many brews the kettle is known well enough for the readings of the older ones to be looked at again. */
const LOOKED_AGAIN = [3, 6];

/** Of all brews so far; the last one is new. */
function evidenceOf({ kettle, evidence, brews }: KettleStory, planned: Profile): readonly BrewEvidence[] {
  const made = (brewed: Brewed, profile: Profile): BrewEvidence[] => {
    const { correlations } = profile;
    const outcome = brewEvidence({ ...brewed, correlations, learned: profile.equipment });
    return outcome.ok ? [outcome.evidence] : [];
  };
  const all = [...evidence, ...brews.slice(-1).flatMap((brewed) => made(brewed, planned))];
  if (!LOOKED_AGAIN.includes(brews.length)) return all;
  const known = calibrate({ equipment: kettle.typical, brews: all });
  return brews.flatMap((brewed) => made(brewed, known));
}

/** What a profile says of a brew whose water is measured out already. */
function predictedOn(
  { equipment, correlations }: Profile,
  recipe: Recipe,
  water: { readonly "water.mash": number | null; readonly "water.sparge": number | null },
): {
  readonly values: Readonly<Partial<Record<Outcome, number | null>>>;
  readonly half: Readonly<Partial<Record<Outcome, number>>>;
} | null {
  const outcome = brewWithWater({
    recipe,
    equipment,
    ambient: sameDay,
    mashWaterKg: kilograms(0.9982 * (water["water.mash"] ?? 0)),
    spargeKg: kilograms(0.9982 * (water["water.sparge"] ?? 0)),
  });
  if (!outcome.ok) return null;
  const found = intervals({ recipe, equipment, ambient: sameDay, correlations });
  const half: Partial<Record<Outcome, number>> = {};
  for (const id of OUTCOMES) {
    const interval = found[id];
    if (interval !== undefined) half[id] = (interval.high80 - interval.low80) / 2;
  }
  return { values: outcome.ledger.quantities, half };
}

function fail(): never {
  throw new Error("a club has kettles");
}

/** Root of the mean square of the errors, and the share of outcomes inside their intervals. */
export function summary(predictions: readonly Predicted[]): {
  readonly count: number;
  readonly error: number;
  readonly covered: number;
} {
  const count = predictions.length;
  return {
    count,
    error: Math.sqrt(predictions.reduce((sum, { error }) => sum + error ** 2, 0) / count),
    covered: predictions.filter(({ inside80 }) => inside80).length / count,
  };
}
