import { z } from "zod";
import { counted, ranged } from "../measured";
import { oneOf, optionalText } from "../written";
import { DESCRIPTOR_IDS, descriptorName } from "./descriptors";
import {
  LONGEST_PART_NOTE,
  partMaximum,
  POINTS_STEP,
  SHEET_PART_NAMES,
  STRENGTHS,
  type Choice,
  type NotedDescriptor,
  type Sheet,
  type SheetPart,
} from "./sheet";

/** Glasses and entries are numbered so that no number says anything. */
const BLIND_NUMBER = { min: 100, max: 999 } as const;

export const blindNumber = (label: string): z.ZodType<number> => counted(label, BLIND_NUMBER);

/** Points for a part: to the half point, or null while there are none. */
function points(part: SheetPart): z.ZodType<number | null> {
  const label = `Points for ${SHEET_PART_NAMES[part].toLowerCase()}`;
  return ranged(label, { unit: "", min: 0, max: partMaximum(part) })
    .refine((given) => Number.isInteger(given / POINTS_STEP), { message: `${label} are given to the half point` })
    .nullable();
}

const partNote = (part: SheetPart): z.ZodType<string> =>
  optionalText(`Notes on ${SHEET_PART_NAMES[part].toLowerCase()}`, LONGEST_PART_NOTE);

const notedDescriptor: z.ZodType<NotedDescriptor> = z.strictObject({
  word: oneOf("Descriptor", DESCRIPTOR_IDS),
  strength: z.literal(STRENGTHS, { error: "Strength of a descriptor is 1 (slight), 2 (clear) or 3 (strong)" }),
});

/** A sheet as it is sent and kept. */
export const sheetInput: z.ZodType<Sheet> = z.strictObject({
  scores: z.strictObject({
    aroma: points("aroma"),
    appearance: points("appearance"),
    flavour: points("flavour"),
    mouthfeel: points("mouthfeel"),
    overall: points("overall"),
  }),
  notes: z.strictObject({
    aroma: partNote("aroma"),
    appearance: partNote("appearance"),
    flavour: partNote("flavour"),
    mouthfeel: partNote("mouthfeel"),
    overall: partNote("overall"),
  }),
  descriptors: z
    .array(notedDescriptor)
    .max(DESCRIPTOR_IDS.length)
    .superRefine((noted, context) => {
      const twice = noted.find(({ word }, at) => noted.findIndex((other) => other.word === word) !== at);
      if (twice === undefined) return;
      context.addIssue({ code: "custom", message: `Descriptor ${descriptorName(twice.word)} is named twice` });
    }),
});

/** The answer of a triangle or duo-trio as it is sent and kept. */
export const choiceInput: z.ZodType<Choice> = z.strictObject({
  glassNo: blindNumber("Glass"),
  note: optionalText("Note", LONGEST_PART_NOTE),
});
