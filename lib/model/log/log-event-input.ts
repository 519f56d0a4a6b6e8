import { z } from "zod";
import { QUANTITIES } from "@/lib/calc/ledger";
import { celsius } from "@/lib/calc/units";
import { counted, measured, ranged } from "../measured";
import { INSTRUMENTS } from "../reading";
import { oneOf, optionalText, recordId, written } from "../written";
import { instant } from "./instant";
import {
  ADDITION_PLACES,
  ADDITION_UNITS,
  MEASURED_KINDS,
  PACKAGING_METHODS,
  STEP_ACTS,
  TIMER_ACTS,
  type EventContent,
  type LogEvent,
  type Measured,
} from "./log-event";
import { isSeries, LOGGED_QUANTITIES, loggedRange, SERIES, type LoggedQuantity } from "./series";

const stepId = z.string().regex(/^[a-z0-9-]{1,64}$/, "This is not the name of a step");

const stamp = {
  id: recordId,
  brewId: recordId,
  deviceId: recordId,
  deviceSeq: counted("Number of the entry", { min: 1, max: Number.MAX_SAFE_INTEGER }).nullable(),
  occurredAt: instant("Time of the entry"),
};

/** What a quantity is called in a refusal. */
export function loggedLabel(quantity: LoggedQuantity): string {
  return isSeries(quantity) ? SERIES[quantity].label : QUANTITIES[quantity].label;
}

const measuredText = {
  instrument: oneOf("Instrument", INSTRUMENTS),
  sampleC: measured("Sample temperature", celsius, { min: -5, max: 110 }).nullable(),
  note: optionalText("Note", 500),
  entered: z.string().max(80),
  step: stepId.nullable(),
};

function measuredFields(quantity: LoggedQuantity) {
  const { kind, unit, min, max } = loggedRange(quantity);
  const label = loggedLabel(quantity);
  return {
    ...measuredText,
    kind: z.literal(kind, { error: `${label} is a reading of the kind ${kind}` }),
    quantity: z.literal(quantity),
    value: ranged(label, { unit, min, max }),
    sd: ranged(`${label}, uncertainty`, { unit, min: 0, max: max - min }),
  };
}

type Fields = ReturnType<typeof measuredFields>;

/** Each schema made once: making one takes longer than reading with it, and a log has thousands of readings. */
function byQuantity<S>(make: (fields: Fields) => S): (quantity: LoggedQuantity) => S {
  const made = new Map<LoggedQuantity, S>();
  return (quantity) => {
    const known = made.get(quantity) ?? make(measuredFields(quantity));
    made.set(quantity, known);
    return known;
  };
}

const measuredEvent = byQuantity((fields) => z.strictObject({ ...stamp, ...fields }));
const measuredValue = byQuantity((fields) => z.strictObject(fields));

const quantityName = oneOf("What is measured", LOGGED_QUANTITIES);

const CONTENT = {
  step: {
    kind: z.literal("step"),
    step: stepId,
    act: oneOf("What was done", STEP_ACTS),
    why: optionalText("Reason", 500),
    title: optionalText("Step", 120),
    minutes: ranged("Length of the step", { unit: "min", min: 0, max: 1440 }),
    after: stepId.nullable(),
  },
  timer: {
    kind: z.literal("timer"),
    timer: z.string().regex(/^[a-z0-9-]{1,80}$/, "This is not the name of a timer"),
    act: oneOf("What was done", TIMER_ACTS),
    label: optionalText("Timer", 120),
    dueAt: instant("Time of the alarm").nullable(),
    step: stepId.nullable(),
  },
  addition: {
    kind: z.literal("addition"),
    name: written("What was added", 120),
    amount: ranged("Amount added", { unit: "", min: 0, max: 100_000 }),
    unit: oneOf("Unit", ADDITION_UNITS),
    at: oneOf("Where it was added", ADDITION_PLACES),
    note: optionalText("Note", 500),
  },
  pitch: {
    kind: z.literal("pitch"),
    yeast: written("Yeast", 120),
    cells: ranged("Cells pitched", { unit: "billion", min: 0, max: 1_000_000 }).nullable(),
    starterL: ranged("Starter", { unit: "L", min: 0, max: 1000 }),
    celsius: ranged("Temperature at pitching", { unit: "°C", min: -5, max: 60 }),
    note: optionalText("Note", 500),
  },
  package: {
    kind: z.literal("package"),
    containers: z
      .array(
        z.strictObject({
          name: written("Container", 80),
          litres: ranged("Volume of a container", { unit: "L", min: 0.02, max: 5000 }),
          count: counted("Number of containers", { min: 1, max: 100_000 }),
          ratedBar: ranged("Pressure that the maker states", { unit: "bar", min: 0, max: 20 }).nullable(),
        }),
      )
      .min(1, "Containers are missing: name at least one")
      .max(20, "There are more than 20 kinds of container"),
    volumesCo2: ranged("Carbonation", { unit: "volumes", min: 0, max: 6 }),
    method: oneOf("Method", PACKAGING_METHODS),
    sugar: optionalText("Priming sugar", 80),
    sugarGrams: ranged("Priming sugar", { unit: "g", min: 0, max: 1_000_000 }),
    celsius: ranged("Warmest temperature since fermentation", { unit: "°C", min: -2, max: 45 }),
    storageC: ranged("Warmest place of storage", { unit: "°C", min: -2, max: 45 }),
    lostL: ranged("Lost at packaging", { unit: "L", min: 0, max: 5000 }),
    override: z
      .strictObject({
        name: written("Name of who goes over the stated pressure", 120),
        why: written("Reason for going over the stated pressure", 500),
      })
      .nullable(),
    early: z.strictObject({ why: written("Reason for packaging now", 500) }).nullable(),
    note: optionalText("Note", 500),
  },
  note: { kind: z.literal("note"), text: written("Note", 2000), step: stepId.nullable() },
  photo: {
    kind: z.literal("photo"),
    photoId: recordId,
    caption: optionalText("Caption", 300),
    step: stepId.nullable(),
  },
  void: {
    kind: z.literal("void"),
    targetId: recordId,
    seen: z.array(recordId).max(100),
    why: optionalText("Reason", 500),
  },
} as const;

/** A measured value inside of a correction. */
const measuredContent = z
  .object({ quantity: quantityName })
  .loose()
  .transform((value, context): Measured => parseInto(measuredValue(value.quantity), value, context));

const OTHER = z.discriminatedUnion("kind", [
  z.strictObject({ ...stamp, ...CONTENT.step }),
  z.strictObject({ ...stamp, ...CONTENT.timer }),
  z.strictObject({ ...stamp, ...CONTENT.addition }),
  z.strictObject({ ...stamp, ...CONTENT.pitch }),
  z.strictObject({ ...stamp, ...CONTENT.package }),
  z.strictObject({ ...stamp, ...CONTENT.note }),
  z.strictObject({ ...stamp, ...CONTENT.photo }),
  z.strictObject({ ...stamp, ...CONTENT.void }),
  z.strictObject({
    ...stamp,
    kind: z.literal("correct"),
    targetId: recordId,
    seen: z.array(recordId).max(100),
    measured: measuredContent,
  }),
]);

const KINDS: readonly EventContent["kind"][] = [
  ...MEASURED_KINDS,
  "step",
  "timer",
  "addition",
  "pitch",
  "package",
  "note",
  "photo",
  "correct",
  "void",
];

/** An event as a phone sends it. What it may say depends on its kind, and of a reading on what is measured. */
export const logEventInput = z
  .object({ kind: oneOf("Kind of entry", KINDS) })
  .loose()
  .transform((event, context): LogEvent => {
    if (!MEASURED_KINDS.some((kind) => kind === event.kind)) return parseInto(OTHER, event, context);
    const quantity = quantityName.safeParse(event["quantity"]);
    if (quantity.success) {
      return parseInto(measuredEvent(quantity.data), event, context);
    }
    context.addIssue({ code: "custom", path: ["quantity"], message: "What is measured is missing or unknown" });
    return z.NEVER;
  });

function parseInto<T>(schema: z.ZodType<T>, value: unknown, context: z.RefinementCtx): T {
  const parsed = schema.safeParse(value);
  if (parsed.success) return parsed.data;
  for (const issue of parsed.error.issues) context.addIssue({ ...issue });
  return z.NEVER;
}
