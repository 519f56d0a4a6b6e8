import { requireInRange } from "../errors";
import { DIP_STICK_RANGE, type DipStickMark, type DipStickTable, type DipStickUnit } from "../kettle";
import { litres, type Litres } from "../units";
import { READING_SD_RANGE } from "./estimate";

/** Cold water poured in, and where it stands then. */
export interface Pour {
  /** Poured in since the reading before. */
  readonly litres: Litres;
  /** Standard uncertainty of what was poured, L. */
  readonly sd: number;
  /** Depth or mark at which it stands. */
  readonly reading: number;
  /** Standard uncertainty of the reading, in its unit. */
  readonly readingSd: number;
}

export type DipStick =
  | { readonly ok: true; readonly table: DipStickTable }
  | { readonly ok: false; readonly reason: "too-few-marks" }
  | {
      readonly ok: false;
      readonly reason: "does-not-rise";
      /** The pour, counted from 0, whose reading is not above the one before. */
      readonly pour: number;
    };

/** Two marks that are closer than this are one. */
const LEAST_RISE = 1e-3;

/**
 * Makes the table of a dip-stick from jugs of cold water poured into the kettle one after the other.
 *
 * The volumes add up, and so do the variances of the jugs; what the reading is uncertain by comes on top through the
 * slope there.
 *
 * @param a.unit - Millimetres of depth, or numbers of marks.
 * @param a.pours - In their order, into the empty kettle.
 * @returns The table; or that it has fewer than two marks, or one that does not rise.
 * @validRange Up to 60 pours, readings 0 to 5000, up to 100 000 L.
 * @throws {@link OutOfRangeError} when a number is outside its range.
 * @source Propagation of independent uncertainties (docs/sources.md#jcgm-100-2008)
 * @example
 * dipStick({ unit: "mm", pours: [{ litres: litres(5), sd: 0.05, reading: 52, readingSd: 1 }, { litres: litres(5), sd: 0.05, reading: 104, readingSd: 1 }] });
 * // marks 52 mm: 5 L ± 0.11, 104 mm: 10 L ± 0.12
 */
export function dipStick({ unit, pours }: { readonly unit: DipStickUnit; readonly pours: readonly Pour[] }): DipStick {
  requireInRange("number of pours", pours.length, { ...DIP_STICK_RANGE.marks, min: 0 });
  let total = 0;
  let variance = 0;
  const sums = pours.map((pour) => {
    requirePour(pour);
    total += pour.litres;
    variance += pour.sd ** 2;
    return { reading: pour.reading, readingSd: pour.readingSd, litres: litres(total), variance };
  });
  const stuck = sums.findIndex(({ reading }, i) => reading - (sums[i - 1]?.reading ?? -Infinity) < LEAST_RISE);
  if (stuck > 0) return { ok: false, reason: "does-not-rise", pour: stuck };
  if (sums.length < DIP_STICK_RANGE.marks.min) return { ok: false, reason: "too-few-marks" };
  const marks = sums.map((sum, i): DipStickMark => {
    const [low, high] = [sums[i - 1] ?? sum, sums[i - 1] === undefined ? (sums[i + 1] ?? sum) : sum];
    const litresPerUnit = (high.litres - low.litres) / (high.reading - low.reading);
    return {
      reading: sum.reading,
      litres: sum.litres,
      sd: Math.min(DIP_STICK_RANGE.sd.max, Math.hypot(Math.sqrt(sum.variance), litresPerUnit * sum.readingSd)),
    };
  });
  return { ok: true, table: { unit, marks } };
}

function requirePour(pour: Pour): void {
  requireInRange("volume poured", pour.litres, { ...litres.range, min: 0.001 });
  requireInRange("uncertainty of a volume", pour.sd, READING_SD_RANGE.litres);
  requireInRange("reading of a mark", pour.reading, DIP_STICK_RANGE.reading);
  requireInRange("uncertainty of the reading", pour.readingSd, DIP_STICK_RANGE.readingSd);
}
