import { z } from "zod";
import { brewEvidence, type BrewEvidence } from "@/lib/calc/learn";
import { MEASURABLE_QUANTITIES } from "@/lib/calc/compare";
import { OutOfRangeError } from "@/lib/calc/errors";
import { FIGURES } from "@/lib/calc/ledger";
import type { Brew } from "../brew";
import { comparedReadings } from "../compared-readings";
import { currentReadings } from "../current-readings";

const names = FIGURES.map(({ name }) => name);

/** Evidence as it is kept with the summary of a brew. */
export const keptEvidence: z.ZodType<BrewEvidence> = z.object({
  figures: z.array(z.enum(names)),
  at: z.array(z.number()),
  precision: z.array(z.array(z.number())),
  pull: z.array(z.number()),
  misfit: z.number(),
  readings: z.int(),
  leftOut: z.array(z.enum(MEASURABLE_QUANTITIES)),
});

/** What a brew says of its kettle; null where nothing was read, or the library refuses what the brew holds. */
export function evidenceOf(
  brew: Pick<Brew, "id" | "recipe" | "equipment" | "ambient" | "readings" | "log">,
): BrewEvidence | null {
  const readings = [...currentReadings(comparedReadings(brew)).values()];
  if (readings.length === 0) return null;
  const { recipe, equipment, ambient } = brew;
  try {
    const outcome = brewEvidence({ recipe, equipment, ambient, readings });
    return outcome.ok && outcome.evidence.readings > 0 ? outcome.evidence : null;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
