import {
  type BrewPartition,
  type BrewsCompared,
  compareBrews,
  compareTwoBrews,
  type PairedResult,
  type PairedRow,
  partitionBrews,
} from "@/lib/calc/compare";
import type { SummaryFigure } from "./brew-summary";
import type { BrewAmongOthers } from "./compared-brew";
import type { ComparisonQuestion, Grouping } from "./question";

/** A brew with the number that is asked for. */
export interface AskedBrew {
  readonly brew: BrewAmongOthers;
  readonly name: string;
  readonly figure: SummaryFigure;
}

export interface ComparisonAnswer {
  readonly question: ComparisonQuestion;
  /** Brews in which the number was measured, in the order of the brews. */
  readonly measured: readonly AskedBrew[];
  /** Planned and not measured; and being worked out, of which nothing is told. */
  readonly unmeasured: readonly AskedBrew[];
  readonly pending: readonly BrewAmongOthers[];
  /** null where nothing was measured. */
  readonly compared: BrewsCompared | null;
  readonly partition: BrewPartition;
}

const GROUP_OF: Readonly<Record<Grouping, (brew: BrewAmongOthers) => string>> = {
  brewer: ({ brewerName }) => brewerName,
  kettle: ({ equipmentName }) => equipmentName,
  "kind of kettle": ({ equipmentKind }) => equipmentKind,
  revision: ({ title, recipeRev }) => `${title}, revision ${String(recipeRev)}`,
  "shared brew": ({ sharedBrewTitle }) => sharedBrewTitle ?? "brewed on its own",
};

/** No reading is exact, whatever it states. */
const LEAST_SD = 1e-6;

/** More levels than these are not split while somebody waits: the time grows with their cube where many cross many. */
const MOST_LEVELS = 100;

/** Answers a question from what the brews come to. */
export function answerOf(question: ComparisonQuestion, brews: readonly BrewAmongOthers[]): ComparisonAnswer {
  const asked = askedBrews(question, brews);
  const measured = asked.filter(({ figure }) => figure.measured !== null);
  const results = measured.flatMap(({ brew, figure: { measured: value, measuredSd, planned } }) =>
    value === null
      ? []
      : [
          {
            ...{ id: brew.id, planned, measured: value, sd: Math.max(LEAST_SD, measuredSd ?? 0) },
            group: GROUP_OF[question.group](brew),
          },
        ],
  );
  const compared = results.length === 0 ? null : compareBrews({ brews: results, as: question.as });
  return {
    ...{ question, measured },
    unmeasured: asked.filter(({ figure }) => figure.measured === null),
    pending: brews.filter(({ summary }) => summary === null),
    compared,
    partition: partitionOf(compared, measured),
  };
}

/** The brews in which the number that is asked for was measured, in the order of the brews. */
export function measuredBrews(question: ComparisonQuestion, brews: readonly BrewAmongOthers[]): readonly AskedBrew[] {
  return askedBrews(question, brews).filter(({ figure }) => figure.measured !== null);
}

function askedBrews({ quantity }: ComparisonQuestion, brews: readonly BrewAmongOthers[]): readonly AskedBrew[] {
  const nameOf = brewNames(brews);
  return brews.flatMap((brew): AskedBrew[] => {
    const figure = figureOf(brew, quantity);
    return figure === null ? [] : [{ brew, name: nameOf(brew), figure }];
  });
}

function partitionOf(compared: BrewsCompared | null, measured: readonly AskedBrew[]): BrewPartition {
  const observations = measured.map(({ brew }, i) => ({
    value: compared?.results[i]?.value ?? 0,
    ...{ brewer: brew.brewerId, equipment: brew.equipmentKind },
    revision: `${brew.recipeId} ${String(brew.recipeRev)}`,
  }));
  const levels = (of: (each: (typeof observations)[number]) => string): number => new Set(observations.map(of)).size;
  const total = levels((each) => each.brewer) + levels((each) => each.equipment) + levels((each) => each.revision);
  // Brewers who brewed once each are given up at once and cost nothing; the others are what takes long.
  if (total > MOST_LEVELS && levels((each) => each.brewer) < observations.length)
    return { ok: false, reason: "too-many", untold: [] };
  return partitionBrews({ observations });
}

export function figureOf({ summary }: BrewAmongOthers, quantity: ComparisonQuestion["quantity"]): SummaryFigure | null {
  return summary?.figures.find((figure) => figure.quantity === quantity) ?? null;
}

/** Brewers tell brews apart; where one has several the kettle and the day are said as well. */
export function brewNames(brews: readonly BrewAmongOthers[]): (brew: BrewAmongOthers) => string {
  const count = (of: (brew: BrewAmongOthers) => string): ReadonlyMap<string, number> => {
    const counts = new Map<string, number>();
    for (const brew of brews) counts.set(of(brew), (counts.get(of(brew)) ?? 0) + 1);
    return counts;
  };
  const withKettle = (brew: BrewAmongOthers): string => `${brew.brewerName}, ${brew.equipmentName}`;
  const [ofBrewer, onKettle] = [count(({ brewerName }) => brewerName), count(withKettle)];
  return (brew) => {
    if (ofBrewer.get(brew.brewerName) === 1) return brew.brewerName;
    if (onKettle.get(withKettle(brew)) === 1) return withKettle(brew);
    return `${withKettle(brew)}, ${brew.startedAt?.toISOString().slice(0, 10) ?? "not begun"}`;
  };
}

/** Two brews number by number. */
export function pairOf(first: BrewAmongOthers, second: BrewAmongOthers): readonly PairedRow[] {
  return compareTwoBrews({ first: resultsOf(first), second: resultsOf(second) });
}

function resultsOf({ summary }: BrewAmongOthers): readonly PairedResult[] {
  return (summary?.figures ?? []).flatMap(({ quantity, planned, measured, measuredSd }) =>
    measured === null || measuredSd === null
      ? []
      : [{ quantity, planned, measured, sd: Math.max(LEAST_SD, measuredSd) }],
  );
}
