import { adapt, intentionOf } from "@/lib/calc/adapt";
import { brew, type Recipe } from "@/lib/calc/ledger";
import type { BrewState } from "@/lib/model/brew";
import { moveBrew } from "@/lib/server/brews/move";
import type { MeasurableId } from "@/lib/model/reading";
import { planBrew } from "@/lib/server/brews/plan";
import { inSpace } from "@/lib/server/db";
import { recordReading } from "@/lib/server/readings/writes";
import type { Member } from "@/lib/server/session";
import type { DemoKettle } from "./kettles";
import { demoReadings } from "./logs";
import type { Noise } from "./noise";
import { seedSteps } from "./step-log";

const DAY_MS = 86_400_000;
const STATES: readonly BrewState[] = ["planned", "on the kettle", "in the fermenter", "in package", "closed"];

export interface DemoBrew {
  readonly recipeId: string;
  readonly sharedBrewId: string | null;
  readonly equipmentId: string;
  readonly kettle: DemoKettle;
  readonly written: { readonly recipe: Recipe; readonly kettle: DemoKettle };
  readonly state: BrewState;
  readonly startedAt: Date;
  readonly noise: Noise;
  readonly wrong?: NonNullable<Parameters<typeof demoReadings>[0]["wrong"]>;
}

/** How far the readings of the brew day go that somebody has written by now. */
const UNTIL: Readonly<Partial<Record<BrewState, MeasurableId>>> = {
  "on the kettle": "mash.firstWort",
  "in the fermenter": "fermenter.originalExtract",
};

/** Plans one brew, moves it on and fills its log up to its state. */
export async function seedBrew(member: Member, demo: DemoBrew): Promise<string> {
  const { recipeId, sharedBrewId, equipmentId, kettle, state, startedAt } = demo;
  const recipe = adapted(demo);
  const { equipment, ambient } = kettle;
  const { id } = await planBrew(member, { recipeId, rev: 1, sharedBrewId, equipmentId, recipe, ambient });
  if (state === "planned") return id;

  for (let step = 1; step <= STATES.indexOf(state); step++) {
    await moveBrew(member, { id, state: STATES[step] ?? state, lockVersion: step });
  }
  await backdate(member, id, startedAt, state === "closed");
  const until = UNTIL[state];
  const readings = demoReadings({
    recipe,
    equipment,
    ambient,
    startedAt,
    noise: demo.noise,
    ...(until === undefined ? {} : { until }),
    ...(demo.wrong === undefined ? {} : { wrong: demo.wrong }),
  });
  for (const reading of readings) await recordReading(member, { ...reading, brewId: id });
  await seedSteps(member, id, startedAt);
  return id;
}

/** The recipe as it was written, for another kettle. */
function adapted({ written, kettle }: DemoBrew): Recipe {
  const home = brew({ recipe: written.recipe, equipment: written.kettle.equipment, ambient: written.kettle.ambient });
  if (!home.ok) throw new Error(`a demo recipe does not brew on its own kettle: ${home.reason}`);
  const outcome = adapt({
    intention: intentionOf({ recipe: written.recipe, ledger: home.ledger }),
    equipment: kettle.equipment,
    ambient: kettle.ambient,
    hold: { intoFermenter: null },
  });
  if (outcome.ok) return outcome.recipe;
  // As a member would, the demo takes the nearest way out that is one brew.
  const way = outcome.waysOut.find((each) => each.times === 1);
  if (way !== undefined) return way.recipe;
  throw new Error(`the demo brew does not fit ${kettle.equipment.name}, and has no way out`);
}

/** A brew that is moved on today would have begun today; the demo's lie in the past. */
async function backdate(member: Member, id: string, startedAt: Date, closed: boolean): Promise<void> {
  await inSpace(member.spaceId, member.userId, (tx) =>
    tx.brew.update({
      where: { spaceId_id: { spaceId: member.spaceId, id } },
      data: { startedAt, closedAt: closed ? new Date(startedAt.getTime() + 30 * DAY_MS) : null },
    }),
  );
}
