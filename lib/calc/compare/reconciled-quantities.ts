import type { Ledger } from "../ledger";
import { followBrew } from "./brew-figures";
import { FOLLOWED_READINGS, readingIn, slopesOf, type FollowedReading } from "./followed-readings";
import { sdAlong } from "./improve-by-readings";
import type { SettledReadings } from "./settle-readings";

/** One number of the balances: as read, and as all readings and the plan together have it. */
export interface ReconciledQuantity {
  readonly quantity: FollowedReading;
  readonly planned: number;
  readonly measured: number | null;
  readonly measuredSd: number | null;
  readonly reconciled: number;
  /** null where neither readings nor plan tell. */
  readonly reconciledSd: number | null;
  /** Reconciled − measured over its standard uncertainty; null where it was not read or nothing checks it. */
  readonly z: number | null;
  readonly isSuspect: boolean;
}

/** An uncertainty beyond this many times the planned value is none. */
const UNKNOWN = 3;

/**
 * Sets readings beside what the balances of all of them make of each.
 *
 * @returns A line for each number of the balances that the plan has a value for, in the order of the process.
 */
export function reconciledQuantities(a: SettledReadings): ReconciledQuantity[] {
  const { plan, figures, covariance } = a.settled;
  const brew = followBrew(plan, figures);
  const slopes = slopesOf(plan, figures, (each, at) => FOLLOWED_READINGS.map((id) => readingIn(each, at, id)));
  return FOLLOWED_READINGS.flatMap((quantity, i): ReconciledQuantity[] => {
    const planned = plannedValue(a.input.ledger, quantity);
    if (planned === null) return [];
    const read = a.readings.get(quantity) ?? null;
    const sd = sdAlong(slopes[i] ?? [], covariance);
    return [
      {
        quantity,
        planned,
        measured: read?.value ?? null,
        measuredSd: read?.sd ?? null,
        reconciled: readingIn(brew, figures, quantity),
        reconciledSd: sd < UNKNOWN * Math.max(1, Math.abs(planned)) ? sd : null,
        ...testOf(a, quantity),
      },
    ];
  });
}

function plannedValue(ledger: Ledger, quantity: FollowedReading): number | null {
  return ledger.quantities[quantity];
}

/** A doubted reading keeps the test that doubted it; the others are tested without it. */
function testOf({ found }: SettledReadings, quantity: FollowedReading): Pick<ReconciledQuantity, "z" | "isSuspect"> {
  const suspect = found.suspects.find((each) => each.quantity === quantity);
  if (suspect !== undefined) return { z: suspect.z, isSuspect: true };
  const z = found.reconciled.variables.find(({ reading }) => reading === quantity)?.z ?? 0;
  return { z: z === 0 ? null : z, isSuspect: false };
}
