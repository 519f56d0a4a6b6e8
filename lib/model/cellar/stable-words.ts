import type { StableGravity } from "@/lib/calc/fermentation";
import type { Fermentation } from "./fermentation";

const WHY_NOT: Readonly<Record<Extract<StableGravity, { ok: false }>["reason"], string>> = {
  "too-few-points": "Fewer than two gravities were read in the fermenter: read it twice, at least two days apart.",
  "too-soon": "The last two gravities are less than two days apart: read it again when two days have passed.",
  "too-coarse": "The gravities are too uncertain to show that it stands still: read it with a finer instrument.",
  "still-falling": "The gravity still falls: the beer ferments.",
  rising: "The gravity rose by more than the instruments allow: one of the readings is wrong. Read it again.",
  "above-expected":
    "The gravity stands still well above the end that the plan expects: the fermentation may be stuck, and start again in the bottle.",
};

/** Why a beer is not ready for its containers, in a sentence; null where its gravity stands still. */
export function notStable({ stable }: Pick<Fermentation, "stable">): string | null {
  return stable.ok ? null : WHY_NOT[stable.reason];
}
