import { requireInRange, type Range } from "../errors";
import { litres, type Litres } from "../units";

/** Depths in millimetres from the bottom, or the numbers of marks counted upwards. */
export type DipStickUnit = "mm" | "mark";

export interface DipStickMark {
  readonly reading: number;
  /** What the kettle holds up to here, cold. */
  readonly litres: Litres;
  /** Standard uncertainty of the litres. */
  readonly sd: number;
}

/** Which reading of a stick, sight glass or row of marks stands for how much, by rising reading and volume. */
export interface DipStickTable {
  readonly unit: DipStickUnit;
  readonly marks: readonly DipStickMark[];
}

export type DipStickVolume =
  | {
      readonly ok: true;
      readonly litres: Litres;
      /** Standard uncertainty, of the table and of the reading together, L. */
      readonly sd: number;
    }
  | {
      readonly ok: false;
      readonly reason: "below-table" | "above-table";
      /** The first and the last reading that the table knows. */
      readonly from: number;
      readonly to: number;
    };

export const DIP_STICK_RANGE = {
  marks: { unit: "", min: 2, max: 60 },
  reading: { unit: "", min: 0, max: 5000 },
  sd: { unit: "L", min: 0, max: 1000 },
  readingSd: { unit: "", min: 0, max: 500 },
} as const satisfies Record<string, Range>;

/** Two marks that are closer than this are one. */
const LEAST_STEP = 1e-6;

/**
 * Reads a volume off the table of a dip-stick.
 *
 * Straight lines between the marks: a kettle with upright walls fills evenly, and a rounded bottom wants its marks close
 * together. Litres were poured one after the other, so what one mark is off by the next ones are too: their
 * uncertainties are joined as if they went together, which is never too small.
 *
 * @param a.table - Marks by rising reading.
 * @param a.reading - What is read, in the unit of the table.
 * @param a.readingSd - Standard uncertainty of the reading, in the same unit; 0 where left out.
 * @returns Volume at the temperature of the liquid, L, with its uncertainty; or that the table does not reach so far.
 * @validRange 2 to 60 marks, readings 0 to 5000.
 * @throws {@link OutOfRangeError} when a number is outside its range, or a mark does not rise above the one before.
 * @source Linear interpolation, Abramowitz and Stegun 1964, 25.2 (docs/sources.md#abramowitz-stegun-1964)
 * @example
 * dipStickVolume({ table: { unit: "mm", marks: [{ reading: 50, litres: litres(5), sd: 0.05 }, { reading: 250, litres: litres(25), sd: 0.1 }] }, reading: 150 });
 * // { ok: true, litres: 15, sd: 0.075 }
 */
export function dipStickVolume(a: {
  readonly table: DipStickTable;
  readonly reading: number;
  readonly readingSd?: number;
}): DipStickVolume {
  const { marks } = a.table;
  checkMarks(marks);
  requireInRange("reading", a.reading, DIP_STICK_RANGE.reading);
  const readingSd = requireInRange("uncertainty of the reading", a.readingSd ?? 0, DIP_STICK_RANGE.readingSd);
  const from = marks[0]?.reading ?? 0;
  const to = marks.at(-1)?.reading ?? 0;
  if (a.reading < from) return { ok: false, reason: "below-table", from, to };
  if (a.reading > to) return { ok: false, reason: "above-table", from, to };
  const next = Math.max(
    1,
    marks.findIndex((mark) => mark.reading >= a.reading),
  );
  const [low, high] = [marks[next - 1], marks[next]];
  if (low === undefined || high === undefined) throw new Error("a checked table has two marks around each reading");
  const share = (a.reading - low.reading) / (high.reading - low.reading);
  const litresPerUnit = (high.litres - low.litres) / (high.reading - low.reading);
  const tableSd = low.sd + share * (high.sd - low.sd);
  return {
    ok: true,
    litres: litres(low.litres + share * (high.litres - low.litres)),
    sd: Math.hypot(tableSd, litresPerUnit * readingSd),
  };
}

function checkMarks(marks: readonly DipStickMark[]): void {
  requireInRange("number of marks", marks.length, DIP_STICK_RANGE.marks);
  let leastReading: number = DIP_STICK_RANGE.reading.min;
  let leastLitres: number = litres.range.min;
  for (const mark of marks) {
    requireInRange("reading of a mark", mark.reading, { ...DIP_STICK_RANGE.reading, min: leastReading });
    requireInRange("volume of a mark", mark.litres, { ...litres.range, min: leastLitres });
    requireInRange("uncertainty of a mark", mark.sd, DIP_STICK_RANGE.sd);
    leastReading = mark.reading + LEAST_STEP;
    leastLitres = mark.litres + LEAST_STEP;
  }
}
