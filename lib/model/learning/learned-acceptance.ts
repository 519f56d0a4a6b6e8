import { z } from "zod";
import { FIGURES } from "@/lib/calc/ledger";
import { revisionNumber } from "../measured";
import { oneOf, recordId } from "../written";

const NAMES = FIGURES.map(({ name }) => name);

/** Which learned figures a brewer takes, with the values that the page showed. */
export const learnedAcceptance = z.strictObject({
  baseRev: revisionNumber,
  /** The first brew that counted on the page; null where all did. */
  since: recordId.nullable(),
  accepted: z
    .array(
      z.strictObject({
        figure: oneOf("Figure", NAMES),
        value: z.number({ error: "The value of a figure is not a number" }),
      }),
      { error: "The figures are not a list" },
    )
    .min(1, "No figure was chosen")
    .max(NAMES.length, "A figure was chosen twice"),
});
export type LearnedAcceptance = z.output<typeof learnedAcceptance>;
