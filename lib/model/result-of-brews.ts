import type { LedgerComparison } from "@/lib/calc/compare";
import { explain } from "@/lib/calc/explain";
import type { QuantityId } from "@/lib/calc/ledger";
import type { Brew } from "./brew";
import { comparisonOf } from "./brew-comparison";
import { comparedReadings } from "./compared-readings";
import { planOf, type BrewPlan } from "./brew-plan";
import {
  ACROSS_QUANTITIES,
  RESULT_FIGURES,
  type ResultAccount,
  type ResultColumn,
  type ResultContent,
} from "./published-result";
import type { RecipeRevision } from "./recipe-content";
import { recipeIntention } from "./recipe-intention";

/** With fewer, “Brewer A” is whoever the club remembers. */
export const FEWEST_BREWERS = 2;

type Across = (typeof ACROSS_QUANTITIES)[number];

interface ShownBrew {
  readonly brew: Brew;
  readonly plan: BrewPlan;
  readonly comparison: LedgerComparison;
}

/** The brews of which something was measured, and how many brewers they have. */
export function measuredBrews(brews: readonly Brew[]): {
  readonly shown: readonly ShownBrew[];
  readonly brewers: number;
} {
  const shown = brews.flatMap((brew): ShownBrew[] => {
    const plan = planOf(brew);
    const comparison = plan === null ? null : comparisonOf(plan, comparedReadings(brew));
    if (plan === null || comparison === null) return [];
    const isMeasured = comparison.rows.some((row) => isAcross(row.quantity) && row.measured !== null);
    return isMeasured ? [{ brew, plan, comparison }] : [];
  });
  return { shown, brewers: new Set(shown.map(({ brew }) => brew.brewerId)).size };
}

/**
 * The figures of a shared brew without a name in them.
 *
 * @param a.recipe - The recipe of the present plan, whose figures stand for the beer.
 * @param a.brewerIds - The brewers in an order that tells nothing of them; the first becomes Brewer A.
 */
export function resultOf(a: {
  readonly clubName: string;
  readonly recipe: RecipeRevision;
  readonly shown: readonly ShownBrew[];
  readonly brewerIds: readonly string[];
}): ResultContent {
  const columns = a.brewerIds.flatMap((brewerId, place) => {
    const own = a.shown.filter(({ brew }) => brew.brewerId === brewerId);
    return own.map((shown, i) => columnOf(shown, nameOf(place) + (own.length === 1 ? "" : `, brew ${String(i + 1)}`)));
  });
  const written = recipeIntention(a.recipe.content)?.ledger.quantities;
  const figures = RESULT_FIGURES.flatMap((id) => {
    const value = written?.[id] ?? null;
    return value === null ? [] : [[id, value] as const];
  });
  return {
    clubName: a.clubName,
    recipeTitle: a.recipe.title,
    brewers: a.brewerIds.length,
    kettles: new Set(a.shown.map(({ brew }) => `${brew.brewerId} ${brew.equipmentName}`)).size,
    figures: Object.fromEntries(figures),
    columns,
    accounts: accountsOf(a.shown),
  };
}

/** A to Z, and AA after that. */
function nameOf(place: number): string {
  const letter = String.fromCharCode(65 + (place % 26));
  return `Brewer ${letter.repeat(1 + Math.floor(place / 26))}`;
}

function columnOf({ brew, comparison }: ShownBrew, name: string): ResultColumn {
  const rows = ACROSS_QUANTITIES.flatMap((quantity) => {
    const row = comparison.rows.find((each) => each.quantity === quantity);
    if (row === undefined) return [];
    const { derived, planned, interval, measured, measuredSd, expectation } = row;
    return [{ quantity, derived, planned, interval, measured, measuredSd, expectation }];
  });
  return { name, rev: brew.recipeRev, rows };
}

/** How each planned number comes about, in words that are the same on every kettle; its inputs are the brewer's own. */
function accountsOf([first]: readonly ShownBrew[]): Partial<Record<Across, ResultAccount>> {
  if (first === undefined) return {};
  const { recipe, equipment, ambient } = first.brew;
  const accounts = ACROSS_QUANTITIES.map((id) => {
    const told = explain({ ledger: first.plan.ledger, recipe, equipment, ambient, id });
    const { words, equation, validRange, sources } = told;
    return [id, { words, equation, validRange, sources: [...sources] }] as const;
  });
  return Object.fromEntries(accounts);
}

function isAcross(id: QuantityId): id is Across {
  return ACROSS_QUANTITIES.some((each) => each === id);
}
