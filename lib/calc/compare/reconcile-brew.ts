import { balanceErrors } from "./balance-errors";
import type { Variable, VariableId } from "./balance-variables";
import { eliminateUnmeasured } from "./eliminate-unmeasured";
import type { LinearConstraint } from "./orthonormal-constraints";
import type { PlannedBrew } from "./planned-brew";
import { reconcileLinear } from "./reconcile-linear";

/** One value with what the balances make of it. */
export interface ReconciledVariable extends Variable {
  readonly sigma: number;
  readonly reconciled: number;
  readonly reconciledSigma: number;
  readonly z: number;
}

export interface ReconciledBrew {
  readonly variables: readonly ReconciledVariable[];
  readonly chiSquared: number;
  readonly df: number;
  readonly p: number;
}

/** Products of a volume and a strength are near straight over a reading's error: the third tangent is the last. */
const TANGENTS = 3;

const STEP = 1e-4;

/** Nothing of a strength, or a strength of nothing, says how neither: no tangent is laid below this share of the plan. */
const LEAST_SHARE = 0.05;

/**
 * Reconciles the readings of one brew with the balances of water and extract.
 *
 * The balances are bent, so they are made linear where the last turn ended, and reconciled again.
 *
 * @returns Every value with an uncertainty, reconciled, and the global test.
 * @source Narasimhan and Jordache 2000, chapter 5, successive linearisation (docs/sources.md#narasimhan-jordache-2000)
 */
export function reconcileBrew(plan: PlannedBrew, variables: readonly Variable[]): ReconciledBrew {
  const known = variables.flatMap((each) => (each.sigma === null ? [] : [{ ...each, sigma: each.sigma }]));
  const isMeasured = variables.map((each) => each.sigma !== null);
  const problem = { measured: known.map((each) => each.value), sigma: known.map((each) => each.sigma) };
  let at = new Map(variables.map((each) => [each.id, straightAt(each, each.value)]));
  let result = reconcileLinear({ ...problem, constraints: [] });
  for (let turn = 0; turn < TANGENTS; turn++) {
    const constraints = eliminateUnmeasured(tangents(plan, variables, at), isMeasured);
    result = reconcileLinear({ ...problem, constraints });
    at = new Map([
      ...at,
      ...known.map((each, i) => [each.id, straightAt(each, result.reconciled[i] ?? each.value)] as const),
    ]);
  }
  return {
    variables: known.map((each, i) => ({
      ...each,
      reconciled: result.reconciled[i] ?? each.value,
      reconciledSigma: result.reconciledSigma[i] ?? each.sigma,
      z: result.z[i] ?? 0,
    })),
    chiSquared: result.chiSquared,
    df: result.df,
    p: result.p,
  };
}

function straightAt({ planned }: Variable, value: number): number {
  return Math.max(LEAST_SHARE * planned, value);
}

/** The balances as straight lines through a point, by central differences. */
function tangents(
  plan: PlannedBrew,
  variables: readonly Variable[],
  at: ReadonlyMap<VariableId, number>,
): LinearConstraint[] {
  const errorsWith = (moved: VariableId | null, by: number): number[] =>
    balanceErrors(plan, (id) => (at.get(id) ?? 0) + (id === moved ? by : 0));
  const here = errorsWith(null, 0);
  const slopes = variables.map(({ id }) => {
    const up = errorsWith(id, STEP);
    const down = errorsWith(id, -STEP);
    return up.map((value, i) => (value - (down[i] ?? 0)) / (2 * STEP));
  });
  return here.map((error, i) => {
    const coefficients = slopes.map((column) => column[i] ?? 0);
    const through = variables.reduce((sum, { id }, j) => sum + (coefficients[j] ?? 0) * (at.get(id) ?? 0), 0);
    return { coefficients, equals: through - error };
  });
}
