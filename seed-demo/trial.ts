import { chill, heatUpCurve, type TemperatureCurve } from "@/lib/calc/heat";
import type { Ambient, Equipment } from "@/lib/calc/ledger";
import {
  celsius,
  degreesPlato,
  kilograms,
  litresPerMinute,
  squareMetres,
  watts,
  wattsPerKelvin,
} from "@/lib/calc/units";
import type { Member } from "@/lib/server/session";
import { beginTrial } from "@/lib/server/trials/begin";
import { recordEntries } from "@/lib/server/trials/record-entries";
import { uuidV7 } from "@/lib/ui/brew/uuid-v7";
import type { Noise } from "./noise";
import { trueKettle } from "./true-kettle";

const HOUR_MS = 3_600_000;
const MINUTE_MS = 60_000;
/** A pot of 16 litres, filled as for a brew. */
const WATER_L = 12;
const HOT_C = 95;
const THERMOMETER_K = 0.3;

interface DemoTrial {
  readonly equipmentId: string;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly noise: Noise;
}

/** A trial whose figures nobody has taken yet: heat-up, cooling, boil-off, dead space and four marks. */
export async function seedTrial(member: Member, demo: DemoTrial): Promise<void> {
  const { equipmentId, noise } = demo;
  const { id: trialId } = await beginTrial(member, equipmentId);
  const begun = Date.now() - 5 * HOUR_MS;
  let made = 0;
  const entry = (minute: number, change: object): object => {
    made += 1;
    const random = Uint8Array.from({ length: 10 }, () => Math.floor(256 * noise.uniform()));
    const occurredAt = new Date(begun + minute * MINUTE_MS).toISOString();
    return { id: uuidV7(begun + made, random), run: 1, replaces: null, occurredAt, ...change };
  };
  const entries = [
    ...[52, 104, 157, 209].map((reading, i) =>
      entry(2 * i, { part: "marks", kind: "mark", value: reading, payload: { litres: 3, sd: 0.03, readingSd: 1 } }),
    ),
    ...courses(demo).flatMap(({ part, from, curve }) => [
      entry(from, { part, kind: "conditions", payload: conditions(demo) }),
      ...curve.map(([minute, at]) =>
        entry(from + minute, { part, kind: "temperature", value: read(at, noise), payload: { sd: THERMOMETER_K } }),
      ),
    ]),
    ...[0.28, 0.31].map((litres, i) =>
      entry(260 + i, { part: "dead space", kind: "volume", value: litres, payload: { celsius: 20, sd: 0.02 } }),
    ),
  ];
  const { refused } = await recordEntries(member, { equipmentId, trialId, entries });
  if (refused.length > 0) throw new Error(`the demo trial has a wrong entry: ${JSON.stringify(refused)}`);
}

const conditions = ({ ambient }: DemoTrial): object => ({
  litres: WATER_L,
  litresSd: 0.1,
  waterC: ambient.tapWater,
  airC: ambient.air,
  humidity: ambient.humidity,
  lid: true,
});

/** As the pot really is, up to just below the boil and an hour and more down again. */
function courses(demo: DemoTrial): readonly {
  readonly part: "heating" | "cooling";
  readonly from: number;
  readonly curve: TemperatureCurve;
}[] {
  const { kettle } = trueKettle(demo.equipment, demo.noise);
  const { ambient } = demo;
  const common = {
    massKg: kilograms(WATER_L),
    plato: degreesPlato(0),
    vesselHeatCapacity: kettle.heatCapacity,
    lossCoefficient: kettle.lossCoefficient.value,
    ambientC: ambient.air,
  };
  const up = heatUpCurve({
    ...common,
    powerW: watts(kettle.ratedPower * kettle.heatShare.value),
    openAreaM2: squareMetres(0),
    fromC: ambient.tapWater,
    toC: celsius(HOT_C),
    relativeHumidity: ambient.humidity,
  });
  const down = chill({
    ...common,
    kind: "none",
    conductance: wattsPerKelvin(0),
    coolantFlow: litresPerMinute(0),
    coolantC: celsius(20),
    fromC: celsius(HOT_C),
    toC: celsius(70),
  });
  if (!up.ok || !down.ok) throw new Error("the demo pot neither heats nor cools");
  return [
    { part: "heating", from: 10, curve: up.curve },
    { part: "cooling", from: 100, curve: down.curve.filter((_point, i) => i % 2 === 0) },
  ];
}

const read = (at: number, noise: Noise): number => Math.round(10 * (at + THERMOMETER_K * noise.normal())) / 10;
