import { thinCurve, type ComparedRow } from "@/lib/calc/compare";
import type { BrewEvidence } from "@/lib/calc/learn";
import { Z80 } from "@/lib/calc/statistics";
import type { Brew } from "../brew";
import { comparisonOf } from "../brew-comparison";
import { comparedReadings } from "../compared-readings";
import { planOf } from "../brew-plan";
import { meterReadings } from "../meter-readings";
import { isSeries, type SeriesId } from "../log/series";
import { evidenceOf } from "../learning/brew-evidence";
import type { SummaryCurve, SummaryFigure, SummaryOfBrew } from "./brew-summary";

/** As many points as a small picture shows. */
const MOST_POINTS = 48;
const CURVES: readonly SeriesId[] = ["kettle.temperature", "fermenter.temperature", "fermenter.gravity"];

export type SummarisedBrew = Pick<
  Brew,
  "id" | "recipe" | "equipment" | "ambient" | "predicted" | "startedAt" | "entries" | "log" | "readings"
>;

/**
 * What a brew comes to: its plan held against its log. It depends on the brew and the set of its entries alone, so that a
 * summary that was kept can be held against one made anew.
 */
export function summariseBrew(brew: SummarisedBrew): {
  readonly summary: SummaryOfBrew;
  readonly curves: readonly SummaryCurve[];
  readonly evidence: BrewEvidence | null;
} {
  const plan = planOf(brew);
  const comparison = plan === null ? null : comparisonOf(plan, comparedReadings(brew), meterReadings(brew));
  const counting = brew.log.readings.filter(({ isVoid }) => !isVoid);
  return {
    summary: {
      figures: comparison?.rows.map(figureOf) ?? [],
      account:
        comparison === null
          ? null
          : {
              weighedOutKg: comparison.extract.weighedOutKg,
              lines: comparison.extract.lines.map(
                ({ id, label, effect, plannedKg, plannedShare, measuredKg, measuredSd, measuredShare }) => ({
                  ...{ id, label, effect, plannedKg, plannedShare, measuredKg, measuredSd, measuredShare },
                }),
              ),
            },
      suspects:
        comparison?.suspects.map(({ quantity, measured, shouldBe, shouldBeSd, test, z, words }) => ({
          ...{ quantity, measured, shouldBe, shouldBeSd, test, z, words },
        })) ?? [],
      counts: {
        entries: brew.entries.length,
        readings: counting.filter(({ measured }) => !isSeries(measured.quantity)).length,
        series: counting.filter(({ measured }) => isSeries(measured.quantity)).length,
      },
    },
    curves: CURVES.flatMap((series) => curveOf(brew, series) ?? []),
    evidence: evidenceOf(brew),
  };
}

function figureOf(row: ComparedRow): SummaryFigure {
  const { quantity, derived, planned, interval, measured, measuredSd, expectation, reconciled } = row;
  const reach = measuredSd === null ? null : Z80 * measuredSd;
  return {
    ...{ quantity, derived, planned },
    plannedLow80: interval?.low80 ?? null,
    plannedHigh80: interval?.high80 ?? null,
    ...{ measured, measuredSd },
    measuredLow80: measured === null || reach === null ? null : measured - reach,
    measuredHigh80: measured === null || reach === null ? null : measured + reach,
    ...{ expectation, reconciled },
  };
}

/** The readings of a series that count, thinned; null where there are none. */
function curveOf(brew: SummarisedBrew, series: SeriesId): SummaryCurve | null {
  const read = brew.log.readings.filter(({ measured, isVoid }) => !isVoid && measured.quantity === series);
  const [first] = read;
  if (first === undefined) return null;
  const from = startOf(brew, series) ?? first.at;
  const points = read.map(({ at, measured }): [number, number] => [(at - from) / 1000, measured.value]);
  return {
    series,
    from: new Date(from).toISOString(),
    points: thinCurve({ points, most: MOST_POINTS }).map(([at, value]) => [at, value]),
    readings: read.length,
  };
}

/** The kettle's times count from the start of the day, the fermenter's from pitching. */
function startOf({ startedAt, log }: SummarisedBrew, series: SeriesId): number | null {
  if (series === "kettle.temperature") return startedAt?.getTime() ?? null;
  return log.pitches[0]?.at ?? null;
}
