import { randomUUID } from "node:crypto";
import { interpolateLinear } from "@/lib/calc/numerics";
import type { Step } from "@/lib/calc/runsheet";
import type { Brew } from "@/lib/model/brew";
import { planOf } from "@/lib/model/brew-plan";
import type { LogEvent, Measured, StepAct } from "@/lib/model/log/log-event";
import { findBrew } from "@/lib/server/brews/reads";
import { storeEvents } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";
import { Noise } from "./noise";

const MINUTE_MS = 60_000;

/** How much longer than planned a finished day took: no brewer is as quick as a sheet. */
const PACE = 1.06;
const PACE_SPREAD = 0.04;

/** A thermometer is looked at every so often, min. */
const EVERY_MIN = 20;
const THERMOMETER_SD = 0.5;

interface Entry {
  readonly content: StepAct | Measured;
  readonly at: number;
}

/**
 * Confirms the steps of a brew at the times of its sheet, as far as the day has come by now. A day that is over took a
 * little longer, and its kettle was looked at now and then. Invented, as the rest.
 */
export async function seedSteps(member: Member, brewId: string, startedAt: Date): Promise<void> {
  const brew = await findBrew(member, brewId);
  if (brew === null) throw new Error("the demo brew is not there");
  const isOver = brew.state !== "on the kettle";
  const noise = new Noise(1 + (Math.round(startedAt.getTime() / MINUTE_MS) % 100_003));
  const pace = isOver ? PACE + PACE_SPREAD * noise.normal() : 1;
  const at = (minute: number): number => startedAt.getTime() + pace * minute * MINUTE_MS;
  const entries = [
    ...brew.runSheet.flatMap((step) => actsOf(step, at)),
    ...(isOver ? temperaturesOf(brew, at, noise) : []),
  ].filter((entry) => entry.at <= Date.now());
  const deviceId = randomUUID();
  const events = entries.map(({ content, at: when }, i): LogEvent => ({
    ...content,
    id: randomUUID(),
    brewId,
    deviceId,
    deviceSeq: i + 1,
    occurredAt: new Date(when).toISOString(),
  }));
  await storeEvents(
    member,
    events.map((event) => ({ event, actorId: member.userId, sentAt: null, clockOffsetMs: null })),
  );
}

type Clock = (minute: number) => number;

function actsOf(step: Step, at: Clock): readonly Entry[] {
  // Nobody confirms the watch over the foam.
  if (step.name === "hot-break watch") return [];
  const said = { kind: "step", step: step.id, why: "", title: "", minutes: 0, after: null } as const;
  return [
    { content: { ...said, act: "begun" }, at: at(step.startMin) },
    { content: { ...said, act: "done" }, at: at(step.startMin + step.minutes) },
  ];
}

/** The planned curve at the day's own pace, as a thermometer shows it. */
function temperaturesOf(brew: Brew, at: Clock, noise: Noise): readonly Entry[] {
  const rows = planOf(brew)?.ledger.temperatureCurve ?? [];
  const last = rows.at(-1)?.[0] ?? 0;
  const entries: Entry[] = [];
  for (let minute = EVERY_MIN; minute < last; minute += EVERY_MIN) {
    const truth = interpolateLinear({ quantity: "time", unit: "min", rows, x: minute });
    const value = Number((truth + THERMOMETER_SD * noise.normal()).toFixed(1));
    entries.push({
      content: {
        ...{ kind: "temperature", quantity: "kettle.temperature", value, sd: THERMOMETER_SD },
        ...{ entered: `${value.toFixed(1)} °C`, instrument: "thermometer", sampleC: null, note: "", step: null },
      },
      at: at(minute),
    });
  }
  return entries;
}
