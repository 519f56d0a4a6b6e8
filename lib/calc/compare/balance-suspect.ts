import { QUANTITIES } from "../ledger";
import type { BalancedReading, Variable } from "./balance-variables";
import { impossibilities } from "./impossible";
import { reconcileBrew } from "./reconcile-brew";
import type { Suspect, SuspectInput } from "./suspect";

/** A reading that serial elimination took out. */
export interface Accused {
  readonly quantity: BalancedReading;
  readonly measured: number;
  readonly sigma: number;
  readonly alternatives: readonly BalancedReading[];
  readonly z: number;
}

/** Below this share of its variance, the balances do not tell a reading's value. */
const CHECKED = 1e-6;

/**
 * Says of an accused reading what the others make of it.
 *
 * @param remaining - The values after elimination; the accused one is put back among them to see what they say of it.
 * @returns The suspect, with the value that the others give it; the plan's where they give none.
 */
export function balanceSuspect(a: SuspectInput, remaining: readonly Variable[], accused: Accused): Suspect {
  const { quantity, measured, alternatives, z } = accused;
  const impossible = impossibilities(a.plan, a.readings).find(({ readings }) => readings.includes(quantity));
  const words = [
    "The balances of water and extract do not close with this reading.",
    impossible?.words ?? null,
    alternatives.length === 0
      ? null
      : `An error here would explain it nearly as well: ${alternatives.map((id) => QUANTITIES[id].label).join("; ")}.`,
  ];
  return {
    quantity,
    measured,
    ...fromTheOthers(a, remaining, accused),
    test: "balance",
    z,
    alternatives,
    words: words.filter((each) => each !== null).join(" "),
  };
}

/**
 * A reading y ± σ and the value e ± τ of the others meet at x with x − y = (e − y) σ²/(σ² + τ²), and x has the variance
 * σ²τ²/(σ² + τ²): from both follow e and τ.
 *
 * @returns The value that the others give, with its standard uncertainty.
 */
function fromTheOthers(
  a: SuspectInput,
  remaining: readonly Variable[],
  { quantity, measured, sigma }: Accused,
): Pick<Suspect, "shouldBe" | "shouldBeSd"> {
  const back = remaining.map((each) => (each.id === quantity ? { ...each, value: measured, sigma } : each));
  const found = reconcileBrew(a.plan, back).variables.find(({ id }) => id === quantity);
  const checked = found === undefined ? 0 : 1 - (found.reconciledSigma / sigma) ** 2;
  if (found === undefined || checked < CHECKED) {
    return { shouldBe: a.ledger.quantities[quantity] ?? measured, shouldBeSd: null };
  }
  return {
    shouldBe: Math.max(0, measured + (found.reconciled - measured) / checked),
    shouldBeSd: sigma * Math.sqrt(1 / checked - 1),
  };
}
