import { balanceSuspect, type Accused } from "./balance-suspect";
import { orderSuspects } from "./order-suspects";
import { planSuspect } from "./plan-suspect";
import type { Variable, VariableId } from "./balance-variables";
import { reconcileBrew, type ReconciledBrew, type ReconciledVariable } from "./reconcile-brew";
import type { Suspect, SuspectInput } from "./suspect";

/** The balances are doubted when chance explains them less often than this. */
export const DOUBT = 0.01;

/** A reading whose adjustment is this share of the largest explains the trouble nearly as well. */
const NEARLY = 0.9;

/** Adjustments that differ by less than this share are the same but for rounding. */
const SAME = 1e-6;

/** What the tests found, and what is left to reckon with. */
export interface FoundSuspects {
  readonly suspects: readonly Suspect[];
  /** All readings and figures of the plan together. */
  readonly all: ReconciledBrew;
  /** The same without what was taken out. */
  readonly reconciled: ReconciledBrew;
  /** Figures of the plan that the readings contradict: here the kettle behaved otherwise. */
  readonly departures: readonly VariableId[];
  /** Readings and figures; what was taken out has no uncertainty. */
  readonly remaining: readonly Variable[];
}

/**
 * Finds the readings that cannot be right.
 *
 * While the global test fails, the largest adjustment is taken out: where it belongs to a reading, that is a suspect;
 * where it belongs to a figure of the plan, or might as well, the kettle behaved otherwise and no reading is to blame.
 * What the balances do not reach is held against what is possible, and at last against the plan.
 *
 * @returns Suspects, and the brew reconciled without them.
 * @source Narasimhan and Jordache 2000, chapters 7 and 8, serial elimination (docs/sources.md#narasimhan-jordache-2000)
 */
export function findSuspects(a: SuspectInput): FoundSuspects {
  let variables = a.variables;
  const all = reconcileBrew(a.plan, variables);
  let reconciled = all;
  const accused: Accused[] = [];
  const departures: VariableId[] = [];
  while (reconciled.p < DOUBT) {
    const worst = largest(reconciled.variables);
    if (worst === null) break;
    if (worst.reading !== null) {
      const alternatives = nearlyAsLarge(reconciled.variables, worst);
      accused.push({ quantity: worst.reading, sigma: worst.sigma, measured: worst.value, alternatives, z: worst.z });
    } else departures.push(worst.id);
    // A value taken out stands where the plan puts it, for the balances to be straightened there.
    variables = variables.map((each) => (each.id === worst.id ? { ...each, value: each.planned, sigma: null } : each));
    reconciled = reconcileBrew(a.plan, variables);
  }
  const byBalance = accused.map((each) => balanceSuspect(a, variables, each));
  const byOrder = orderSuspects(
    a,
    byBalance.map(({ quantity }) => quantity),
  );
  const named = [...byBalance, ...byOrder];
  const unnamed = [...a.readings.values()].filter(({ quantity }) => !named.some((each) => each.quantity === quantity));
  const suspects = [...named, ...unnamed.flatMap((reading) => planSuspect(a, reading) ?? [])];
  return { suspects, all, reconciled, departures, remaining: variables };
}

/** The largest adjustment; where a figure of the plan moves as far as a reading, the figure. */
function largest(variables: readonly ReconciledVariable[]): ReconciledVariable | null {
  const most = Math.max(...variables.map(({ z }) => Math.abs(z)));
  if (!(most > 0)) return null;
  const same = variables.filter(({ z }) => Math.abs(z) >= (1 - SAME) * most);
  return same.find(({ reading }) => reading === null) ?? same[0] ?? null;
}

function nearlyAsLarge(variables: readonly ReconciledVariable[], worst: ReconciledVariable): Accused["alternatives"] {
  return variables.flatMap(({ id, reading, z }) =>
    reading !== null && id !== worst.id && Math.abs(z) >= NEARLY * Math.abs(worst.z) ? [reading] : [],
  );
}
