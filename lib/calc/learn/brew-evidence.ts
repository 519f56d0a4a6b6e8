import { compareLedger, type ComparedReading, type MeasurableQuantity } from "../compare";
import { latestReadings, type Readings } from "../compare/latest-readings";
import {
  brew,
  brewWithWater,
  FIGURES,
  type Equipment,
  type FigureCorrelation,
  type FigureName,
  type Ledger,
  type LedgerOutcome,
} from "../ledger";
import { effectsOf, intervalsFrom, waterOf, type Effect } from "../ledger/interval";
import { cholesky, solveFactored, solveLower } from "../numerics/cholesky";
import { strayReadings } from "./stray-readings";
import { instrumentCovariance, leaning, type BrewedWith, type Leaning } from "./leaning";

/**
 * What the readings of one brew say of the figures of its kettle, as plain numbers that can be kept with the brew.
 *
 * The log-likelihood of the figures θ of that brew is −½ (misfit − 2 pull·d + d·precision·d) with d = θ − at, raw materials
 * and poured water integrated out. What the brew cannot tell apart is in the precision: it has no more rank than it has
 * readings.
 */
export interface BrewEvidence {
  /** Figures that the readings lean on, in the order of the profile; those that no reading touches are left out. */
  readonly figures: readonly FigureName[];
  /** Values at which the ledger was made straight, in the units of the figures. */
  readonly at: readonly number[];
  /** Information, row after row, per product of two units. */
  readonly precision: readonly (readonly number[])[];
  /** Slope of the log-likelihood at `at`, per unit. */
  readonly pull: readonly number[];
  /** Squared distance of the readings from the ledger at `at`, over its variance. */
  readonly misfit: number;
  /** How many readings count in it. */
  readonly readings: number;
  /** Readings that were suspect, or strayed from all the others and the plan, and do not count. */
  readonly leftOut: readonly MeasurableQuantity[];
}

export type BrewEvidenceOutcome =
  { readonly ok: true; readonly evidence: BrewEvidence } | Extract<LedgerOutcome, { readonly ok: false }>;

/** A figure that is likelier this many of its uncertainties away asks for the ledger to be made straight there. */
const FAR = 0.5;

/**
 * Turns one brew into what it says of its kettle.
 *
 * The ledger of the plan is made straight in the figures and in what is fresh with each brew: the lot of malt, its acidity
 * and colour, the attenuation, the water as poured. Readings that
 * reconciliation suspects do not count, nor one that strays from what plan and other readings make of it.
 * Where they ask for figures far from the plan's, the ledger is made straight once more at the likeliest ones. Plan figures
 * weigh only there: their uncertainty is not in the evidence, so brews may be added up.
 *
 * @param a.recipe - As brewed: amounts for this kettle, the boil as long as it was.
 * @param a.equipment - The kettle as it was planned with; a figure without uncertainty is taken as known and is not learned.
 * @param a.ambient - Air, tap water and grain on the day.
 * @param a.readings - Readings in the ledger's units, each with its standard uncertainty, in order of time.
 * @param a.correlations - Pairs of figures whose errors go together in the profile that the readings are held against; left
 * out, those that stand in it.
 * @param a.learned - The kettle as it is known by now, to make the evidence of an old brew anew: what was poured follows from
 * `equipment`, and the readings are held against this one, which finds wrong ones better; left out, against `equipment`.
 * @returns Evidence, which survives JSON; or why the recipe gives no ledger on this kettle.
 * @validRange Gravities from 0 to 35 °P, of beer from −9 °P; figures whose effect is near straight over their uncertainty.
 * @throws {@link OutOfRangeError} when an input or a reading is outside its range.
 * @source Gelman and others 2013, chapters 4 and 14 (docs/sources.md#gelman-2013); suspects by Narasimhan and Jordache 2000
 * (docs/sources.md#narasimhan-jordache-2000)
 * @example
 * brewEvidence({ recipe, equipment, ambient, readings: [{ quantity: "kettle.postBoil", value: 23.1, sd: 0.3 }] });
 * // { ok: true, evidence: { figures: ["kettle.boilOff", …], readings: 1, … } }
 */
export function brewEvidence(
  a: BrewedWith & {
    readonly readings: readonly ComparedReading[];
    readonly correlations?: readonly FigureCorrelation[];
    readonly learned?: Equipment;
  },
): BrewEvidenceOutcome {
  const planned = brew(a);
  if (!planned.ok) return planned;
  const water = waterOf(planned.ledger);
  const known = a.learned === undefined ? a : { ...a, equipment: a.learned };
  const expected = a.learned === undefined ? planned : brewWithWater({ ...known, ...water });
  if (!expected.ok) return expected;
  const { ledger } = expected;
  const effects = effectsOf(known, ledger);
  const { readings, leftOut } = countedReadings({ ...known, ledger, effects });
  const first = evidenceAt({ ...known, ledger, effects, readings, leftOut });
  const likeliest = likeliestFigures(known.equipment, first);
  if (likeliest === null) return { ok: true, evidence: first };
  const moved = { ...a, equipment: likeliest };
  const there = brewWithWater({ ...moved, ...water });
  // Where nothing can be brewed, the first tangent has to do.
  if (!there.ok) return { ok: true, evidence: first };
  const again = { ledger: there.ledger, effects: effectsOf(moved, there.ledger) };
  return { ok: true, evidence: evidenceAt({ ...moved, ...again, readings, leftOut }) };
}

/** The readings without those that cannot be right. */
function countedReadings(
  a: Parameters<typeof brewEvidence>[0] & { readonly ledger: Ledger; readonly effects: readonly Effect[] },
): Pick<Straight, "readings" | "leftOut"> {
  const { ledger, effects } = a;
  const intervals = intervalsFrom(effects, ledger, a.correlations ?? a.equipment.correlations ?? []);
  const suspects = compareLedger({ ledger, intervals, readings: a.readings }).suspects.map(({ quantity }) => quantity);
  const readings = new Map(latestReadings(a.readings));
  for (const quantity of suspects) readings.delete(quantity);
  const stray = strayReadings(a.equipment, leaning({ ...a, readings }));
  for (const quantity of stray) readings.delete(quantity);
  return { readings, leftOut: [...suspects, ...stray] };
}

interface Straight extends BrewedWith {
  readonly ledger: Ledger;
  readonly effects: readonly Effect[];
  readonly readings: Readings;
  readonly leftOut: readonly MeasurableQuantity[];
}

function evidenceAt(a: Straight): BrewEvidence {
  const rows = leaning(a);
  const figures = FIGURES.filter(({ name }) => rows.some(({ figures: by }) => (by.get(name) ?? 0) !== 0));
  const factor = cholesky(instrumentCovariance(rows), rows.length);
  const whitened = (of: (row: Leaning) => number): Float64Array => {
    const column = Float64Array.from(rows, of);
    solveLower(factor, column);
    return column;
  };
  const residual = whitened((row) => row.residual);
  const slopes = figures.map(({ name }) => whitened((row) => row.figures.get(name) ?? 0));
  return {
    figures: figures.map(({ name }) => name),
    at: figures.map(({ of }) => of(a.equipment).value),
    precision: slopes.map((one) => slopes.map((other) => dot(one, other))),
    pull: slopes.map((slope) => dot(slope, residual)),
    misfit: dot(residual, residual),
    readings: rows.length,
    leftOut: a.leftOut,
  };
}

/** The figures that plan and readings together make likeliest; null where they are near the plan's. */
function likeliestFigures(equipment: Equipment, evidence: BrewEvidence): Equipment | null {
  const places = FIGURES.filter(({ name }) => evidence.figures.includes(name));
  const size = places.length;
  const sds = places.map(({ of }) => of(equipment).sd);
  // In units of the plan's uncertainty, where the plan itself is the unit matrix.
  const matrix = new Float64Array(size * size);
  evidence.precision.forEach((row, i) => {
    row.forEach((value, j) => {
      matrix[i * size + j] = value * (sds[i] ?? 0) * (sds[j] ?? 0) + (i === j ? 1 : 0);
    });
  });
  const step = Float64Array.from(evidence.pull, (value, i) => value * (sds[i] ?? 0));
  solveFactored(cholesky(matrix, size), step);
  if (!step.some((deviations) => Math.abs(deviations) > FAR)) return null;
  return places.reduce((moved, { of, withFigure, range }, i) => {
    const figure = of(moved);
    const value = figure.value + (step[i] ?? 0) * figure.sd;
    return withFigure(moved, { ...figure, value: Math.min(range.max, Math.max(range.min, value)) });
  }, equipment);
}

const dot = (one: Float64Array, other: Float64Array): number =>
  one.reduce((sum, value, i) => sum + value * (other[i] ?? 0), 0);
