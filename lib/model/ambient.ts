import { z } from "zod";
import type { Ambient } from "@/lib/calc/ledger";
import { AMBIENT_FIELDS } from "./ambient-fields";
import { measuredBy } from "./measured";

/** The surroundings of one brew day. */
export const ambientInput: z.ZodType<Ambient> = z.strictObject({
  air: measuredBy(AMBIENT_FIELDS.air),
  humidity: measuredBy(AMBIENT_FIELDS.humidity),
  tapWater: measuredBy(AMBIENT_FIELDS.tapWater),
  grain: measuredBy(AMBIENT_FIELDS.grain),
});
