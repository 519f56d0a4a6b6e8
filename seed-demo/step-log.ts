import { randomUUID } from "node:crypto";
import type { Step } from "@/lib/calc/runsheet";
import type { LogEvent, StepAct } from "@/lib/model/log/log-event";
import { findBrew } from "@/lib/server/brews/reads";
import { storeEvents } from "@/lib/server/log/ingest";
import type { Member } from "@/lib/server/session";

const MINUTE_MS = 60_000;

/** Confirms the steps of a brew at the times of its sheet, as far as the day has come by now. Invented, as the rest. */
export async function seedSteps(member: Member, brewId: string, startedAt: Date): Promise<void> {
  const brew = await findBrew(member, brewId);
  if (brew === null) throw new Error("the demo brew is not there");
  const deviceId = randomUUID();
  const acts = brew.runSheet.flatMap((step) => actsOf(step, startedAt));
  const events = acts.map(({ content, at }, i): LogEvent => ({
    ...content,
    id: randomUUID(),
    brewId,
    deviceId,
    deviceSeq: i + 1,
    occurredAt: new Date(at).toISOString(),
  }));
  await storeEvents(
    member,
    events.map((event) => ({ event, actorId: member.userId, sentAt: null, clockOffsetMs: null })),
  );
}

function actsOf(step: Step, startedAt: Date): { readonly content: StepAct; readonly at: number }[] {
  // Nobody confirms the watch over the foam.
  if (step.name === "hot-break watch") return [];
  const begunAt = startedAt.getTime() + step.startMin * MINUTE_MS;
  const doneAt = begunAt + step.minutes * MINUTE_MS;
  const said = { kind: "step", step: step.id, why: "", title: "", minutes: 0, after: null } as const;
  return [
    { content: { ...said, act: "begun" as const }, at: begunAt },
    { content: { ...said, act: "done" as const }, at: doneAt },
  ].filter(({ at }) => at <= Date.now());
}
