import { z } from "zod";
import type { KettleOfKind } from "@/lib/calc/learn";
import type { Equipment } from "@/lib/calc/ledger";
import { equipmentInput } from "../equipment";
import { keptEvidence } from "./brew-evidence";
import { typicalOf } from "./kettle-kind";

/** The newest ones; with so many a kettle's own figures are known, and more would say little of its kind. */
const MOST_GIVEN_BREWS = 20;
/** A height is told to this many metres: exact, it would point to a place. */
const HEIGHT_STEP = 100;
const NAMELESS = "A kettle of another club";

/** A kettle with what its brews tell, as other clubs get it. */
export const givenKettle: z.ZodType<KettleOfKind> = z.object({
  typical: equipmentInput,
  equipment: equipmentInput,
  brews: z.array(keptEvidence).max(MOST_GIVEN_BREWS),
});

/** Takes from a kettle what would tell whose it is: its name, its exact height, and what was said in words. */
export function namelessKettle({ equipment, brews }: KettleOfKind): KettleOfKind | null {
  const nameless = withoutWords({
    ...equipment,
    name: NAMELESS,
    altitude: Math.round(equipment.altitude / HEIGHT_STEP) * HEIGHT_STEP,
  });
  const typical = typicalOf(nameless);
  return typical === null ? null : { typical, equipment: nameless, brews: brews.slice(-MOST_GIVEN_BREWS) };
}

function withoutWords(equipment: object): Equipment {
  const text = JSON.stringify(equipment, (key, value: unknown) => (key === "basis" ? undefined : value));
  return equipmentInput.parse(JSON.parse(text));
}
