import * as fc from "fast-check";
import type { LogEntry } from "@/lib/model/log/log-entry";
import type { EventContent, LogEvent, Measured } from "@/lib/model/log/log-event";

export const measured = (value: number, change: Partial<Measured> = {}): Measured => ({
  kind: "temperature",
  quantity: "kettle.temperature",
  value,
  sd: 0.5,
  instrument: "thermometer",
  sampleC: null,
  note: "",
  entered: `${String(value)} °C`,
  step: null,
  ...change,
});

export const START = Date.parse("2026-05-02T09:00:00Z");

const id = (n: number): string => `00000000-0000-7000-8000-${String(n).padStart(12, "0")}`;

/** An entry `n` of a phone, `minute` minutes after the start. */
export function entry(
  n: number,
  content: EventContent,
  {
    minute = n,
    phone = 1,
    received = true,
    offsetMs = null,
  }: {
    readonly minute?: number;
    readonly phone?: number;
    readonly received?: boolean;
    readonly offsetMs?: number | null;
  } = {},
): LogEntry {
  const event: LogEvent = {
    ...content,
    id: id(n),
    brewId: id(900),
    deviceId: id(800 + phone),
    deviceSeq: n,
    occurredAt: new Date(START + minute * 60_000).toISOString(),
  };
  return {
    event,
    actorId: `person ${String(phone)}`,
    actorName: `Person ${String(phone)}`,
    receivedAt: received ? new Date(START + (minute + 1) * 60_000).toISOString() : null,
    clockOffsetMs: offsetMs,
  };
}

export const idOf = id;

const stepAct = fc.record({
  step: fc.constantFrom("fill-1", "boil-1", "chill-1"),
  act: fc.constantFrom("begun", "done", "left out", "taken back"),
});

/** Any log of a few events that may name each other. */
export const anyLog: fc.Arbitrary<readonly LogEntry[]> = fc
  .array(
    fc.record({
      what: fc.constantFrom("reading", "correct", "void", "step", "timer"),
      value: fc.integer({ min: 0, max: 100 }),
      target: fc.nat(12),
      seen: fc.array(fc.nat(12), { maxLength: 4 }),
      minute: fc.integer({ min: 0, max: 30 }),
      phone: fc.integer({ min: 1, max: 3 }),
      offsetMs: fc.option(fc.constantFrom(0, 1000, 600_000, -600_000)),
      step: stepAct,
    }),
    { maxLength: 12 },
  )
  .map((rows) =>
    rows.map(({ what, value, target, seen, minute, phone, offsetMs, step }, i) =>
      entry(i, contentOf({ what, value, target, seen, step }), { minute, phone, offsetMs }),
    ),
  );

function contentOf(a: {
  readonly what: string;
  readonly value: number;
  readonly target: number;
  readonly seen: readonly number[];
  readonly step: { readonly step: string; readonly act: "begun" | "done" | "left out" | "taken back" };
}): EventContent {
  switch (a.what) {
    case "correct":
      return { kind: "correct", targetId: id(a.target), seen: a.seen.map(id), measured: measured(a.value) };
    case "void":
      return { kind: "void", targetId: id(a.target), seen: a.seen.map(id), why: "" };
    case "step":
      return { kind: "step", ...a.step, why: "", title: "", minutes: 0, after: null };
    case "timer":
      return {
        kind: "timer",
        timer: `own-${String(a.target)}`,
        act: a.value % 2 === 0 ? "set" : "acknowledged",
        label: "Timer",
        dueAt: new Date(START).toISOString(),
        step: null,
      };
    default:
      return measured(a.value);
  }
}
