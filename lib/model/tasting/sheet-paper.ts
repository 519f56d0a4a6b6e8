import { z } from "zod";
import { counted, ranged } from "../measured";
import { optionalText, recordId } from "../written";
import { DESCRIPTOR_IDS, type DescriptorId } from "./descriptors";
import {
  LONGEST_PART_NOTE,
  partMaximum,
  POINTS_STEP,
  SHEET_PART_NAMES,
  SHEET_PARTS,
  type Sheet,
  type SheetPart,
} from "./sheet";
import { blindNumber } from "./sheet-input";

const ofJudge = {
  judgeId: recordId,
  flightNo: counted("Flight", { min: 1, max: 99 }),
};

/** On paper a word is ticked or not; a tick counts as clear. */
const TICKED = 2;

export const pointsField = (part: SheetPart): string => `${part}-points`;
export const noteField = (part: SheetPart): string => `${part}-note`;
export const descriptorField = (word: DescriptorId): string => `found-${word}`;

function points(part: SheetPart): z.ZodType<number> {
  const label = `Points for ${SHEET_PART_NAMES[part].toLowerCase()}`;
  return ranged(label, { unit: "", min: 0, max: partMaximum(part) }).refine(
    (given) => Number.isInteger(given / POINTS_STEP),
    { message: `${label} are given to the half point` },
  );
}

const tick = z.literal("on").optional();

/** A sheet that was written on paper, as its steward types it in. */
export const paperSheet = z
  .strictObject({
    ...ofJudge,
    entryNo: blindNumber("Entry"),
    ...Object.fromEntries(SHEET_PARTS.map((part) => [pointsField(part), points(part)])),
    ...Object.fromEntries(
      SHEET_PARTS.map((part) => [
        noteField(part),
        optionalText(`Notes on ${SHEET_PART_NAMES[part].toLowerCase()}`, LONGEST_PART_NOTE),
      ]),
    ),
    ...Object.fromEntries(DESCRIPTOR_IDS.map((word) => [descriptorField(word), tick])),
  })
  .transform((typed) => {
    const fields: Readonly<Record<string, unknown>> = typed;
    const ofParts = <T>(valueOf: (part: SheetPart) => T): Record<SheetPart, T> => ({
      aroma: valueOf("aroma"),
      appearance: valueOf("appearance"),
      flavour: valueOf("flavour"),
      mouthfeel: valueOf("mouthfeel"),
      overall: valueOf("overall"),
    });
    const sheet: Sheet = {
      scores: ofParts((part) => Number(fields[pointsField(part)])),
      notes: ofParts((part) => String(fields[noteField(part)])),
      descriptors: DESCRIPTOR_IDS.filter((word) => fields[descriptorField(word)] === "on").map((word) => ({
        word,
        strength: TICKED,
      })),
    };
    return { judgeId: typed.judgeId, flightNo: typed.flightNo, entryNo: typed.entryNo, sheet };
  });
export type PaperSheet = z.output<typeof paperSheet>;

/** An answer of a triangle or duo-trio that was written on paper. */
export const paperChoice = z.strictObject({
  ...ofJudge,
  glassNo: blindNumber("Glass"),
  note: optionalText("Note", LONGEST_PART_NOTE),
});
export type PaperChoice = z.output<typeof paperChoice>;
