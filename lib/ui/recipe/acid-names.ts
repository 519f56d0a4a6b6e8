import { ACID_SOLUTIONS, type AcidSolution } from "@/lib/calc/water";

/** A strength of acid as it is sold. */
export type AcidName = keyof typeof ACID_SOLUTIONS;

export const ACID_LABELS: Readonly<Record<AcidName, string>> = {
  lactic80: "Lactic acid 80 %",
  lactic88: "Lactic acid 88 %",
  phosphoric10: "Phosphoric acid 10 %",
  phosphoric75: "Phosphoric acid 75 %",
  phosphoric85: "Phosphoric acid 85 %",
  hydrochloric10: "Hydrochloric acid 10 %",
  hydrochloric32: "Hydrochloric acid 32 %",
  sulfuric10: "Sulfuric acid 10 %",
  sulfuric50: "Sulfuric acid 50 %",
};

export const ACID_NAMES = Object.keys(ACID_LABELS) as readonly AcidName[]; // the keys of the type are the keys of the object

/** The name of a strength; null for none, and for one that is not sold like this. */
export function acidName(solution: AcidSolution | null): AcidName | null {
  if (solution === null) return null;
  return (
    ACID_NAMES.find((name) => {
      const known = ACID_SOLUTIONS[name];
      return known.acid === solution.acid && known.massFraction === solution.massFraction;
    }) ?? null
  );
}
