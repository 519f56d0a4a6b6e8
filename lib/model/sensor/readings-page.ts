import { z } from "zod";
import { LOGGED_QUANTITIES } from "../log/series";
import { INSTRUMENTS } from "../reading";

export const MOST_OF_PAGE = 1000;
const CURSOR = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{6}Z_[0-9a-f-]{36}$/;

export const readingsQuery = z.strictObject({
  quantity: z
    .enum(LOGGED_QUANTITIES, { error: `quantity is one of ${LOGGED_QUANTITIES.join(", ")}` })
    .optional()
    .meta({ description: "Only readings of this." }),
  after: z
    .string()
    .regex(CURSOR, "after is what the page before gave as “next”")
    .optional()
    .meta({ description: "What the page before gave as next." }),
  limit: z.coerce
    .number({ error: `limit is a number from 1 to ${String(MOST_OF_PAGE)}` })
    .int()
    .min(1)
    .max(MOST_OF_PAGE)
    .default(MOST_OF_PAGE)
    .meta({ description: "How many at most." }),
});
export type ReadingsQuery = z.output<typeof readingsQuery>;

const keptReading = z.strictObject({
  id: z.string(),
  at: z
    .string()
    .meta({ description: "When it was measured, ISO 8601 in UTC, a device's clock that was clearly wrong put right." }),
  quantity: z.enum(LOGGED_QUANTITIES),
  value: z.number().meta({ description: "What counts now: the value first sent, or the one that corrected it." }),
  unit: z.string().meta({ description: "The log's own unit: °C, °P, L, min, pH or bar." }),
  sd: z.number(),
  instrument: z.enum(INSTRUMENTS),
  note: z.string(),
  corrected: z.boolean(),
  void: z.boolean().meta({ description: "Somebody said that it does not count." }),
});

/** Readings of a brew, in the order in which the server received them. */
export const readingsPage = z.strictObject({
  readings: z.array(keptReading),
  next: z.string().nullable().meta({ description: "For the next page; null where this is the last." }),
});
export type ReadingsPage = z.output<typeof readingsPage>;
