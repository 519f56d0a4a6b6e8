import { z } from "zod";
import { DIP_STICK_RANGE } from "@/lib/calc/kettle";
import { READING_SD_RANGE } from "@/lib/calc/learn";
import { counted, measuredBy, ranged } from "../measured";
import { oneOf, recordId } from "../written";
import { MARK_RANGE, TRIAL_FIELDS } from "./trial-fields";

/** What a trial measures, each as often as wanted. */
export const TRIAL_PARTS = ["marks", "heating", "cooling", "boil-off", "dead space", "chill"] as const;
export type TrialPart = (typeof TRIAL_PARTS)[number];

const celsiusSd = ranged("Temperature, uncertainty", READING_SD_RANGE.celsius);
const litresSd = ranged("Volume, uncertainty", READING_SD_RANGE.litres);

const EARLIEST = new Date("2000-01-01T00:00:00Z");
const common = {
  id: recordId,
  run: counted("Run", { min: 1, max: 20 }),
  occurredAt: z.iso
    .datetime({ error: "Time of the reading is not a time", abort: true })
    .refine((at) => new Date(at) >= EARLIEST, "Time of the reading is before the year 2000"),
  /** The entry that this one stands for from now on. */
  replaces: recordId.nullable(),
};

/** Water that is heated, left to cool or chilled in the kettle. */
const water = {
  litres: measuredBy(TRIAL_FIELDS.water),
  litresSd,
  waterC: measuredBy(TRIAL_FIELDS.waterC),
  airC: measuredBy(TRIAL_FIELDS.air),
};

const heatConditions = z.strictObject({
  ...water,
  humidity: measuredBy(TRIAL_FIELDS.humidity),
  lid: z.boolean({ error: "Lid is yes or no" }),
});
const chillConditions = z.strictObject({
  ...water,
  coolantC: measuredBy(TRIAL_FIELDS.coolant),
  coolantSd: celsiusSd,
  flow: measuredBy(TRIAL_FIELDS.flow),
  flowSd: ranged("Flow, uncertainty", { unit: "L/min", min: 0.001, max: 100 }),
});
const deadSpaceConditions = z.strictObject({
  where: oneOf("Where the water stayed", ["kettle", "transfer", "mash"]),
});
const marksConditions = z.strictObject({ unit: oneOf("Unit of the dip-stick", ["mm", "mark"]) });

const sdOnly = z.strictObject({ sd: celsiusSd });

const conditions = [
  z.strictObject({
    ...common,
    part: z.enum(["heating", "cooling"]),
    kind: z.literal("conditions"),
    payload: heatConditions,
  }),
  z.strictObject({ ...common, part: z.literal("chill"), kind: z.literal("conditions"), payload: chillConditions }),
  z.strictObject({
    ...common,
    part: z.literal("dead space"),
    kind: z.literal("conditions"),
    payload: deadSpaceConditions,
  }),
  z.strictObject({ ...common, part: z.literal("marks"), kind: z.literal("conditions"), payload: marksConditions }),
] as const;

const readings = [
  z.strictObject({
    ...common,
    part: z.enum(["heating", "cooling", "chill"]),
    kind: z.literal("temperature"),
    value: measuredBy(TRIAL_FIELDS.celsius),
    payload: sdOnly,
  }),
  z.strictObject({
    ...common,
    part: z.enum(["boil-off", "dead space"]),
    kind: z.literal("volume"),
    value: measuredBy(TRIAL_FIELDS.litres),
    payload: z.strictObject({ celsius: measuredBy(TRIAL_FIELDS.waterC), sd: litresSd }),
  }),
  z.strictObject({
    ...common,
    part: z.literal("marks"),
    kind: z.literal("mark"),
    value: ranged("Reading of the mark", MARK_RANGE),
    payload: z.strictObject({
      litres: measuredBy(TRIAL_FIELDS.poured),
      sd: litresSd,
      readingSd: ranged("Reading of the mark, uncertainty", { ...DIP_STICK_RANGE.readingSd, unit: "" }),
    }),
  }),
  z.strictObject({
    ...common,
    part: z.literal("chill"),
    kind: z.literal("through"),
    value: measuredBy(TRIAL_FIELDS.celsius),
    payload: z.strictObject({
      sd: celsiusSd,
      hotC: measuredBy(TRIAL_FIELDS.hot),
      litres: measuredBy(TRIAL_FIELDS.through),
      litresSd,
      minutes: measuredBy(TRIAL_FIELDS.minutes),
      coolantC: measuredBy(TRIAL_FIELDS.coolant),
      flow: measuredBy(TRIAL_FIELDS.flow),
      flowSd: ranged("Flow, uncertainty", { unit: "L/min", min: 0.001, max: 100 }),
    }),
  }),
] as const;

const takenBack = z.strictObject({
  ...common,
  replaces: recordId,
  part: oneOf("Part of the trial", TRIAL_PARTS),
  kind: z.literal("void"),
  payload: z.strictObject({}),
});

const entry = z.union([...conditions, ...readings, takenBack]);
export type TrialEntry = z.output<typeof entry>;

export const ENTRY_KINDS = ["conditions", "temperature", "volume", "mark", "through", "void"] as const;

/**
 * One entry of a trial, as the page makes it; it never changes, and a later one may stand in its place. What is wrong with
 * it is said by its part and kind, not by all that it might have been.
 */
export const trialEntry: z.ZodType<TrialEntry> = z
  .looseObject(
    { part: oneOf("Part of the trial", TRIAL_PARTS), kind: oneOf("Kind of entry", ENTRY_KINDS) },
    { error: "This is no entry of a trial" },
  )
  .transform((sent, context) => {
    const option = entry.options.find(
      ({ shape }) => shape.part.safeParse(sent.part).success && shape.kind.safeParse(sent.kind).success,
    );
    const read = option?.safeParse(sent);
    if (read?.success === true) return read.data;
    const message = `${sent.part} has no entry of the kind ${sent.kind}`;
    for (const issue of read?.error.issues ?? [{ code: "custom" as const, message, input: sent }]) {
      context.addIssue({ ...issue });
    }
    return z.NEVER;
  });
export type HeatConditions = z.output<typeof heatConditions>;
export type ChillConditions = z.output<typeof chillConditions>;

/** What a page sends: entries in the order in which they were made. */
export const trialDelivery = z.strictObject({
  entries: z.array(z.unknown(), { error: "The entries are not a list" }).max(200, "More than 200 entries at once"),
});

/** An entry that is on the server. */
export type KeptEntry = TrialEntry & { readonly actorName: string; readonly receivedAt: string };
