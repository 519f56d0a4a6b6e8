import { z } from "zod";
import type { Ambient } from "@/lib/calc/ledger";
import { celsius, fraction } from "@/lib/calc/units";
import { measured } from "./measured";

/** The surroundings of one brew day. */
export const ambientInput: z.ZodType<Ambient> = z.strictObject({
  air: measured("Air temperature", celsius, { min: -20, max: 50 }),
  humidity: measured("Relative humidity", fraction),
  tapWater: measured("Tap water temperature", celsius, { min: 0, max: 40 }),
  grain: measured("Grain temperature", celsius, { min: -20, max: 50 }),
});
