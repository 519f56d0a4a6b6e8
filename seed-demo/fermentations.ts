import { dayOfShare, platoOnDay } from "@/lib/calc/fermentation";
import { platoToSpecificGravity } from "@/lib/calc/gravity";
import { degreesPlato } from "@/lib/calc/units";
import type { Brew } from "@/lib/model/brew";
import { countFor } from "@/lib/model/cellar/packaging-plan";
import { currentReadings } from "@/lib/model/current-readings";
import type { EventContent, LogEvent, Measured } from "@/lib/model/log/log-event";
import { DAY_MS } from "@/lib/model/plain-day";
import { findBrew } from "@/lib/server/brews/reads";
import { storeWhole } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { Noise } from "./noise";

/** Days on which somebody read the invented fermentation. */
const READ_ON = [0.6, 1.3, 2.1, 2.9, 3.8, 4.8, 5.9, 7.9, 10.1, 12.2, 14.2];
/** From weighing out to pitching, days. */
const BREW_DAY = 0.25;
const PACKAGED_ON = 16;
const BOTTLE = { name: "500 mL bottle", litres: 0.5, ratedBar: null };

/** Makes up a fermentation for a brew that has one: pitch, gravities and temperatures up to now, and bottles where it is in them. */
export async function seedFermentation(member: Member, brewId: string, seed: number): Promise<void> {
  const brew = await findBrew(member, brewId);
  if (brew === null || brew.startedAt === null || brew.state === "planned" || brew.state === "on the kettle") return;
  const pitchedAt = brew.startedAt.getTime() + BREW_DAY * DAY_MS;
  const now = Date.now();
  const log = new DemoLog(brewId, pitchedAt, new Noise(seed));
  const course = courseOf(brew);
  const { yeast } = brew.recipe;
  log.add(0.02, {
    kind: "pitch",
    yeast: yeast.name,
    cells: Math.round((brew.predicted["fermenter.cells"]?.value ?? 200) * 0.95),
    ...{ starterL: 0, celsius: yeast.celsius, note: "Invented, as every reading of this demo club" },
  });
  for (const day of READ_ON) {
    if (pitchedAt + day * DAY_MS > now) break;
    const plato = platoOnDay({ ...course, day });
    log.add(day, log.gravity(plato));
    log.add(day + 0.01, log.temperature(yeast.celsius + 0.8 * Math.sin(day)));
  }
  await store(member, log.events);
  if (brew.state === "in the fermenter") return;
  for (const { name, grams } of brew.recipe.hops.filter(({ use }) => use === "dry")) {
    log.add(dayOfShare({ ...course, share: 0.95 }), {
      kind: "addition",
      name,
      amount: grams,
      unit: "g",
      at: "fermenter",
      note: "",
    });
  }
  log.add(PACKAGED_ON, bottled(brew));
  await store(member, log.events);
}

async function store(member: Member, events: LogEvent[]): Promise<void> {
  const refused = await storeWhole(member, events.splice(0));
  if (refused !== null) throw new Error(`the demo's fermentation was refused: ${refused}`);
}

/** From the extract that was measured at pitching to the one that was measured at the end, or to the plan's. */
function courseOf(brew: Brew) {
  const measured = currentReadings(brew.readings);
  const value = (id: "fermenter.originalExtract" | "fermenter.finalExtract", otherwise: number): number =>
    measured.get(id)?.value ?? brew.predicted[id]?.value ?? otherwise;
  const isCool = brew.recipe.yeast.celsius < 14;
  return {
    originalPlato: degreesPlato(value("fermenter.originalExtract", 12)),
    finalPlato: degreesPlato(value("fermenter.finalExtract", 3)),
    ...(isCool ? { ratePerDay: 0.75, middleDay: 3.2 } : { ratePerDay: 1.4, middleDay: 1.6 }),
  };
}

function bottled({ recipe, readings, predicted }: Brew): EventContent {
  const litres = currentReadings(readings).get("package.volume")?.value ?? predicted["package.volume"]?.value ?? 10;
  const { carbonation, warmest, priming } = recipe.packaging;
  return {
    kind: "package",
    containers: [{ ...BOTTLE, count: Math.max(1, countFor(litres, BOTTLE.litres)) }],
    ...{ volumesCo2: carbonation, method: "priming", sugar: priming ?? "sucrose", sugarGrams: Math.round(5 * litres) },
    ...{ celsius: warmest, storageC: 22, lostL: 0.4, override: null, early: null, note: "Invented" },
  };
}

/** Events of one invented device, in the order of its count. */
class DemoLog {
  readonly events: LogEvent[] = [];
  private readonly deviceId: string;
  private count = 0;

  constructor(
    private readonly brewId: string,
    private readonly pitchedAt: number,
    private readonly noise: Noise,
  ) {
    this.deviceId = noise.uuid();
  }

  add(day: number, content: EventContent): void {
    this.count += 1;
    const occurredAt = new Date(this.pitchedAt + day * DAY_MS).toISOString();
    const { brewId, deviceId, count: deviceSeq } = this;
    this.events.push({ id: this.noise.uuid(), brewId, deviceId, deviceSeq, occurredAt, ...content });
  }

  gravity(truth: number): Measured {
    const value = Number((truth + 0.1 * this.noise.normal()).toFixed(2));
    const entered = `${platoToSpecificGravity(degreesPlato(value)).toFixed(3)} SG at 20 °C`;
    return {
      ...{ kind: "gravity", quantity: "fermenter.gravity", value, sd: 0.15, entered },
      ...{ instrument: "hydrometer", sampleC: 20, note: "", step: null },
    };
  }

  temperature(truth: number): Measured {
    const value = Number((truth + 0.2 * this.noise.normal()).toFixed(1));
    return {
      ...{ kind: "temperature", quantity: "fermenter.temperature", value, sd: 0.5, entered: `${value.toFixed(1)} °C` },
      ...{ instrument: "thermometer", sampleC: null, note: "", step: null },
    };
  }
}
