import { OutOfRangeError } from "../errors";
import { brew, type Ledger, type LedgerOutcome } from "../ledger";
import type { WhatIf } from "./explanation";
import type { BrewInput } from "./explanation-context";
import type { Nudge } from "./nudge";

/** More than this a reader does not weigh up. */
const MOST_SHOWN = 3;

/** Differences below this share of the value are rounding. */
const NO_DIFFERENCE = 1e-9;

/**
 * Brews again with one thing changed at a time.
 *
 * A change that does not apply, changes nothing or would leave the range of a formula is left out.
 *
 * @returns The first three changes that matter, each with the value it would give.
 */
export function whatIf(a: {
  readonly brew: BrewInput;
  readonly value: number | null;
  readonly read: (ledger: Ledger) => number | null;
  readonly nudges: readonly (readonly [change: string, nudge: Nudge])[];
}): readonly WhatIf[] {
  const shown: WhatIf[] = [];
  for (const [change, nudge] of a.nudges) {
    if (shown.length === MOST_SHOWN) break;
    const changed = nudge(a.brew);
    const outcome = changed === null ? null : brewWithinRange(changed);
    if (outcome === null) continue;
    const value = outcome.ok ? a.read(outcome.ledger) : null;
    if (differs(value, a.value)) shown.push({ change, value });
  }
  return shown;
}

// A nudge may push a good brew out of the range that a formula holds for; then there is nothing to say.
function brewWithinRange(changed: BrewInput): LedgerOutcome | null {
  try {
    return brew(changed);
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}

function differs(value: number | null, from: number | null): boolean {
  if (value === null || from === null) return value !== from;
  return Math.abs(value - from) > NO_DIFFERENCE * Math.max(Math.abs(value), Math.abs(from));
}
