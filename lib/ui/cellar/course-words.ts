import type { FermentationCurve } from "@/lib/calc/fermentation";
import { Z80 } from "@/lib/calc/statistics";
import type { Fermentation } from "@/lib/model/cellar/fermentation";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "../format-quantity";
import { dayAfter, spanAfter } from "./day-words";

type NoCurve = Extract<FermentationCurve, { ok: false }>["reason"];

const WHY_NO_CURVE: Readonly<Record<NoCurve, string>> = {
  "too-few-points": "",
  "no-decline":
    "The gravity has not fallen yet by more than the instruments are uncertain, so there is no curve to fit.",
  "not-converged": "No fermentation curve goes through these readings; one of them may be wrong.",
  "end-not-in-sight": "The readings do not show yet where the gravity will end. Read it again in a day or two.",
};

/** How the fermentation goes, in a sentence: when it will be done, or what is missing to say so. */
export function courseWords(fermentation: Fermentation, preferences: Preferences, now: number): string {
  const { pitchedAt, curve, original } = fermentation;
  if (pitchedAt === null)
    return "Nothing is in the fermenter yet: the log has neither a pitch nor a start of the brew.";
  if (curve === null || original === null) {
    return "Without an original extract, measured or planned, there is no curve to fit.";
  }
  if (!curve.ok) return curve.reason === "too-few-points" ? missingPoints(fermentation) : WHY_NO_CURVE[curve.reason];
  const half = Z80 * curve.finalSd;
  const end = formatQuantity({
    value: curve.finalPlato,
    dimension: "extract",
    preferences,
    interval: { low80: curve.finalPlato - half, high80: curve.finalPlato + half },
  });
  const day = dayAfter(pitchedAt, curve.doneDay);
  const span = spanAfter(pitchedAt, curve.doneLow80, curve.doneHigh80);
  const isPast = pitchedAt + curve.doneHigh80 * 86_400_000 < now;
  const end80 = `${end.text} ${end.unit}${end.interval === null ? "" : ` ${end.interval}`}`;
  return isPast
    ? `By its curve it was done about ${day} (${span}), at ${end80}.`
    : `Done about ${day}, ${span}, at ${end80}: four in five such fermentations end so.`;
}

function missingPoints({ gravities, expectedFinal }: Fermentation): string {
  const needed = expectedFinal === null ? 4 : 3;
  const days = new Set(gravities.filter(({ day }) => day > 0).map(({ day }) => day)).size;
  const missing = needed - days;
  const many = missing === 1 ? "one more gravity" : `${String(missing)} more gravities`;
  return `Too few readings for a curve: ${many} after pitching, each at another time, will do.`;
}
