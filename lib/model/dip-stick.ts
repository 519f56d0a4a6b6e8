import { z } from "zod";
import { DIP_STICK_RANGE } from "@/lib/calc/kettle";
import type { KettleDipStick } from "@/lib/calc/ledger";
import { litres } from "@/lib/calc/units";
import { measured, ranged } from "./measured";
import { oneOf, written } from "./written";

export const LONGEST_BASIS = 120;

const dipStickMark = z.strictObject({
  reading: ranged("Mark of the dip-stick", DIP_STICK_RANGE.reading),
  litres: measured("Volume at the mark", litres, { min: 0, max: 2000 }),
  sd: ranged("Volume at the mark, uncertainty", DIP_STICK_RANGE.sd),
});

/** The table of a kettle's dip-stick: marks that rise, each with more litres than the one before. */
export const dipStick: z.ZodType<KettleDipStick> = z
  .strictObject({
    unit: oneOf("Unit of the dip-stick", ["mm", "mark"]),
    marks: z
      .array(dipStickMark, { error: "The dip-stick has no marks" })
      .min(DIP_STICK_RANGE.marks.min, "A dip-stick needs two marks at least")
      .max(DIP_STICK_RANGE.marks.max, `A dip-stick has at most ${String(DIP_STICK_RANGE.marks.max)} marks`),
    basis: written("Dip-stick, measured by", LONGEST_BASIS).exactOptional(),
  })
  .superRefine(({ marks }, context) => {
    marks.forEach((mark, i) => {
      const before = marks[i - 1];
      if (before === undefined || (rises(before.reading, mark.reading) && rises(before.litres, mark.litres))) return;
      const at = `${String(mark.reading)} with ${String(mark.litres)} L`;
      const message = `Mark ${at} does not rise above the one before, ${String(before.reading)} with ${String(before.litres)} L`;
      context.addIssue({ code: "custom", path: ["marks", i], message });
    });
  });

/** Far enough apart for the library, which takes marks closer than a millionth for one. */
const rises = (before: number, after: number): boolean => after - before >= 2e-6;
