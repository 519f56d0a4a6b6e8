import { OutOfRangeError } from "@/lib/calc/errors";
import { fermentationCurve, LOGGED_RANGE, stableGravity } from "@/lib/calc/fermentation";
import type { FermentationCurve, LoggedGravity, StableGravity } from "@/lib/calc/fermentation";
import { Z80 } from "@/lib/calc/statistics";
import { degreesPlato, type DegreesPlato } from "@/lib/calc/units";
import type { Brew, Prediction } from "../brew";
import { currentReadings } from "../current-readings";
import type { BrewLog } from "../log/project-log";
import { DAY_MS } from "../plain-day";
import { thinned } from "./thinned";

/** So many readings fix a curve as well as twenty thousand of a probe do. */
const MOST_FITTED = 400;

/** A reading of the fermenter, with its day after pitching. */
export interface CellarPoint {
  readonly id: string;
  /** ms since 1970. */
  readonly at: number;
  readonly day: number;
  readonly value: number;
  readonly sd: number;
}

/** Where the extract before fermentation comes from. */
export interface OriginalExtract {
  readonly plato: DegreesPlato;
  readonly isMeasured: boolean;
}

/** A number with its standard uncertainty. */
export interface UncertainPlato {
  readonly plato: DegreesPlato;
  readonly sd: number;
}

/** What the log and the plan say together of a fermentation. */
export interface Fermentation {
  /** ms since 1970; null while nobody has pitched. */
  readonly pitchedAt: number | null;
  readonly original: OriginalExtract | null;
  readonly expectedFinal: UncertainPlato | null;
  readonly gravities: readonly CellarPoint[];
  readonly temperatures: readonly CellarPoint[];
  readonly pressures: readonly CellarPoint[];
  /** null where there is nothing to fit: no pitch or no original extract. */
  readonly curve: FermentationCurve | null;
  readonly stable: StableGravity;
}

export type FermentingBrew = Pick<Brew, "predicted" | "startedAt" | "log" | "readings">;

/** Puts the readings of a fermentation on its days, fits its curve and says whether it stands still. */
export function fermentationOf(brew: FermentingBrew): Fermentation {
  const pitchedAt = pitchedIn(brew.log) ?? kettleLeftAt(brew);
  const original = originalOf(brew);
  const expectedFinal = original === null ? null : expectedFinalOf(brew, original);
  const since = pitchedAt ?? 0;
  const points = (...quantities: readonly string[]): readonly CellarPoint[] =>
    pitchedAt === null ? [] : pointsOf(brew.log, quantities, since);
  const gravities = points("fermenter.gravity", "fermenter.finalExtract");
  const logged = gravities.map(toLogged);
  return {
    pitchedAt,
    original,
    expectedFinal,
    gravities,
    temperatures: points("fermenter.temperature"),
    pressures: points("fermenter.pressure"),
    curve: original === null || pitchedAt === null ? null : curveOf(original, logged, expectedFinal),
    stable: stableOf(logged, expectedFinal),
  };
}

/** The last gravity that was read; null before the first. */
export function lastGravity({ gravities }: Pick<Fermentation, "gravities">): CellarPoint | null {
  return gravities.at(-1) ?? null;
}

/** Where the beer is heading: by the readings where they say it, else by the plan. */
export function headingFor({ curve, expectedFinal }: Pick<Fermentation, "curve" | "expectedFinal">): number | null {
  return curve?.ok === true ? curve.finalPlato : (expectedFinal?.plato ?? null);
}

function pitchedIn({ pitches, steps }: BrewLog): number | null {
  const [first] = pitches;
  if (first !== undefined) return first.at;
  const done = [...steps].flatMap(([id, { doneAt }]) => (id.startsWith("pitch-") && doneAt !== null ? [doneAt] : []));
  return done.length === 0 ? null : Math.min(...done);
}

/** Without a record of pitching: when the wort for the fermenter was measured, or the day began. */
function kettleLeftAt({ readings, startedAt }: FermentingBrew): number | null {
  const measured = currentReadings(readings).get("fermenter.originalExtract");
  return measured?.occurredAt.getTime() ?? startedAt?.getTime() ?? null;
}

function originalOf({ readings, predicted }: FermentingBrew): OriginalExtract | null {
  const measured = currentReadings(readings).get("fermenter.originalExtract");
  const { min, max } = LOGGED_RANGE.original;
  if (measured !== undefined && measured.value >= min && measured.value <= max) {
    return { plato: degreesPlato(measured.value), isMeasured: true };
  }
  const planned = predicted["fermenter.originalExtract"];
  if (planned === undefined || planned.value < min || planned.value > max) return null;
  return { plato: degreesPlato(planned.value), isMeasured: false };
}

/** The attenuation of the plan on the wort as it became. */
function expectedFinalOf({ predicted }: FermentingBrew, { plato }: OriginalExtract): UncertainPlato | null {
  const attenuation = predicted["fermenter.attenuation"];
  if (attenuation === undefined) return null;
  const sd = plato * ((attenuation.high80 - attenuation.low80) / 2 / Z80);
  return { plato: degreesPlato(finalBy(plato, attenuation)), sd: within(sd) };
}

const finalBy = (original: number, { value }: Prediction): number => original * (1 - value);

/** A stated uncertainty of nothing, or of half the scale, is held to what the fit takes. */
function within(sd: number): number {
  return Math.min(LOGGED_RANGE.sd.max, Math.max(LOGGED_RANGE.sd.min, sd));
}

function pointsOf(log: BrewLog, quantities: readonly string[], since: number): readonly CellarPoint[] {
  return log.readings
    .filter(({ measured, isVoid }) => !isVoid && quantities.includes(measured.quantity))
    .map(({ id, at, measured: { value, sd } }) => ({ id, at, day: (at - since) / DAY_MS, value, sd }))
    .filter(({ day }) => day >= 0 && day <= LOGGED_RANGE.day.max);
}

function toLogged({ day, value, sd }: CellarPoint): LoggedGravity {
  return { day, plato: degreesPlato(value), sd: within(sd) };
}

function curveOf(
  { plato: originalPlato }: OriginalExtract,
  points: readonly LoggedGravity[],
  expectedFinal: UncertainPlato | null,
): FermentationCurve | null {
  try {
    return fermentationCurve({ originalPlato, points: thinned(points, MOST_FITTED), expectedFinal });
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

function stableOf(points: readonly LoggedGravity[], expectedFinal: UncertainPlato | null): StableGravity {
  return stableGravity({ points, expectedFinal });
}
