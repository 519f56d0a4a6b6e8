import { z } from "zod";

export const FATES = ["stored", "duplicate", "rejected"] as const;

const result = z.strictObject({
  /** Counted from 0, in the order of the request. */
  index: z.int().min(0).meta({ description: "Which reading of the request, counted from 0." }),
  id: z.string().nullable().meta({ description: "Under which identifier it is in the log; null where it has none." }),
  fate: z.enum(FATES),
  reason: z.string().optional().meta({ description: "Why it was rejected: the field, the value, and what it takes." }),
});

/** What became of each reading of a request. */
export const readingsAnswer = z.strictObject({
  stored: z.int().min(0).meta({ description: "How many are in the log now." }),
  duplicate: z.int().min(0).meta({ description: "How many were there already." }),
  rejected: z.int().min(0).meta({ description: "How many were not taken." }),
  results: z.array(result).meta({ description: "What became of each, with the reason where it was not taken." }),
});
export type ReadingsAnswer = z.output<typeof readingsAnswer>;
export type ReadingResult = z.output<typeof result>;

/** The body of a request with JSON. */
export const readingsRequest = z.strictObject({ readings: z.array(z.unknown()) });
