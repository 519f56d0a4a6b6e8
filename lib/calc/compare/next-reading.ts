import { QUANTITIES } from "../ledger";
import { FIGURE_WORDS } from "./balance-test";
import type { VariableId } from "./balance-variables";
import { followBrew } from "./brew-figures";
import { extractAccount, lineSlopes, type ExtractLine, type ExtractLineId } from "./extract-account";
import { DOUBT } from "./find-suspects";
import { FOLLOWED_READINGS, readingIn, slopesOf, type FollowedReading } from "./followed-readings";
import { improveByReadings, sdAlong } from "./improve-by-readings";
import { MEASURABLE } from "./measurable";
import { settleBrew, type SettledBrew } from "./settle-brew";
import type { SettledReadings } from "./settle-readings";

/** The one reading more that would decide most. */
export type NextReading = { readonly quantity: FollowedReading; readonly words: string } & (
  | {
      /** It would tell which of two is wrong: they expect values this far apart. */
      readonly decides: "suspect";
      readonly between: readonly [VariableId, VariableId];
      readonly expected: readonly [number, number];
    }
  | {
      /** It would tell how much went into a line of the account, kg. */
      readonly decides: "account";
      readonly line: ExtractLineId;
      readonly sdBefore: number;
      readonly sdAfter: number;
    }
);

/** A rival whose adjustment is this share of the largest explains the trouble nearly as well. */
const NEARLY = 0.9;

/** Two explanations are told apart by a reading that expects them this many of its uncertainties apart. */
const APART = 2;

/** A line known better than to this share of the extract is not worth another reading. */
const WORTH = 0.01;

/** A reading that leaves more than this share of the uncertainty decides nothing. */
const LEAST_GAIN = 0.8;

const LINE_WORDS: Readonly<Partial<Record<ExtractLineId, string>>> = {
  undissolved: "how much dissolved in the mash",
  grain: "how much extract stayed in the grain",
  left: "how much stayed with trub, hops and hoses",
  fermented: "how much fermented",
};

const READING_WORDS: Readonly<Record<FollowedReading, string>> = {
  "water.mash": "the volume of the mash water",
  "mash.firstWort": "the strength of the first wort",
  "kettle.preBoil": "the volume before the boil",
  "kettle.preBoilGravity": "the gravity before the boil",
  "kettle.postBoil": "the volume at the end of the boil",
  "fermenter.volume": "the volume into the fermenter",
  "fermenter.originalExtract": "the original gravity",
  "fermenter.finalExtract": "the final gravity",
  "package.volume": "the volume packaged",
};

/**
 * Finds which one more reading would decide most.
 *
 * Where two explanations of a failed test are nearly as good, it is the reading that these expect furthest apart. Else it
 * is the one that takes most from the uncertainty of those losses that rest on the plan. Each reading that could be taken
 * is imagined with its instrument's usual uncertainty and added to the balances; nothing is listed in advance.
 *
 * @param available - Readings that can still be taken.
 * @returns The reading and what it would tell; null where none would tell much.
 * @source Kalman 1960: the covariance after a reading does not depend on its value (docs/sources.md#kalman-1960)
 */
export function nextReading(a: SettledReadings, available: readonly string[]): NextReading | null {
  const possible = FOLLOWED_READINGS.filter((id) => available.includes(id) && a.input.ledger.quantities[id] !== null);
  return (
    betweenExplanations(a, possible) ??
    forTheAccount(
      a,
      possible.filter((id) => !a.readings.has(id)),
    )
  );
}

function betweenExplanations(a: SettledReadings, possible: readonly FollowedReading[]): NextReading | null {
  const { all } = a.found;
  if (all.p >= DOUBT) return null;
  const [first, second] = all.variables
    .toSorted((one, other) => Math.abs(other.z) - Math.abs(one.z))
    .map(({ id, z }) => ({ id, z }));
  if (first === undefined || second === undefined || Math.abs(second.z) < NEARLY * Math.abs(first.z)) return null;
  const explained = [settledWithout(a, first.id), settledWithout(a, second.id)] as const;
  // The same instrument may be wrong again in the same way, so it is asked again only where nothing else would tell.
  const unread = possible.filter((id) => !a.readings.has(id));
  const best = furthestApart(explained, unread) ?? furthestApart(explained, possible);
  if (best === null) return null;
  const isAgain = a.readings.has(best.quantity) ? ", once more" : "";
  const words = `One more reading would tell whether ${doubtOf(first.id)} or ${doubtOf(second.id)}: ${READING_WORDS[best.quantity]}${isAgain}.`;
  return { ...best, words, decides: "suspect", between: [first.id, second.id] };
}

function furthestApart(
  [one, other]: readonly [SettledBrew, SettledBrew],
  possible: readonly FollowedReading[],
): { readonly quantity: FollowedReading; readonly expected: readonly [number, number] } | null {
  const told = possible.map((quantity) => {
    const [x, y] = [expectation(one, quantity), expectation(other, quantity)];
    const apart = Math.abs(x.value - y.value) / Math.hypot(x.sd, y.sd, MEASURABLE[quantity].typicalSd);
    return { quantity, apart, expected: [x.value, y.value] as const };
  });
  const best = told.toSorted((x, y) => y.apart - x.apart)[0];
  return best === undefined || best.apart < APART ? null : { quantity: best.quantity, expected: best.expected };
}

function settledWithout({ plan, input, found, final }: SettledReadings, id: VariableId): SettledBrew {
  const all = found.all.variables;
  const variables = all.map((each) => (each.id === id ? { ...each, value: each.planned, sigma: null } : each));
  return settleBrew({ plan, intervals: input.intervals, variables, final });
}

function expectation({ plan, figures, covariance }: SettledBrew, id: FollowedReading): { value: number; sd: number } {
  const [slopes = []] = slopesOf(plan, figures, (brew, at) => [readingIn(brew, at, id)]);
  return { value: readingIn(followBrew(plan, figures), figures, id), sd: sdAlong(slopes, covariance) };
}

function forTheAccount(a: SettledReadings, possible: readonly FollowedReading[]): NextReading | null {
  const { settled } = a;
  const { lines, weighedOutKg } = extractAccount(settled, a.unread);
  const slopes = lineSlopes(settled);
  const open = lines.flatMap((line, i) =>
    isOpen(line, weighedOutKg) ? [{ id: line.id, slopes: slopes[i] ?? [] }] : [],
  );
  const readingSlopes = slopesOf(settled.plan, settled.figures, (brew, at) =>
    possible.map((id) => readingIn(brew, at, id)),
  );
  let best: { readonly gain: number; readonly found: NextReading } | null = null;
  for (const [i, quantity] of possible.entries()) {
    const imagined = { slopes: readingSlopes[i] ?? [], sd: MEASURABLE[quantity].typicalSd, off: 0 };
    const after = improveByReadings(settled.covariance, [imagined]).covariance;
    const told = open.map((line) => ({
      line: line.id,
      sdBefore: sdAlong(line.slopes, settled.covariance),
      sdAfter: sdAlong(line.slopes, after),
    }));
    const gain = told.reduce((sum, { sdBefore, sdAfter }) => sum + sdBefore ** 2 - sdAfter ** 2, 0);
    const most = told.toSorted((x, y) => reduction(y) - reduction(x))[0];
    if (most === undefined || most.sdAfter > LEAST_GAIN * most.sdBefore || (best !== null && gain <= best.gain))
      continue;
    best = { gain, found: { quantity, words: wordsFor(most.line, quantity), decides: "account", ...most } };
  }
  return best?.found ?? null;
}

const reduction = ({ sdBefore, sdAfter }: { readonly sdBefore: number; readonly sdAfter: number }): number =>
  sdBefore ** 2 - sdAfter ** 2;

function isOpen({ effect, restsOn, sd }: ExtractLine, weighedOutKg: number): boolean {
  const isUndecided = restsOn === "plan" || restsOn === "both";
  return effect === "loses" && isUndecided && (sd === null || sd > WORTH * weighedOutKg);
}

function wordsFor(line: ExtractLineId, quantity: FollowedReading): string {
  return `One more reading would tell ${LINE_WORDS[line] ?? "where the extract went"}: ${READING_WORDS[quantity]}.`;
}

function doubtOf(id: VariableId): string {
  const figure = FIGURE_WORDS[id];
  if (figure !== undefined) return `${figure} was not as planned`;
  return isFollowed(id) ? `the reading “${QUANTITIES[id].label}” is wrong` : id;
}

function isFollowed(id: VariableId): id is FollowedReading & VariableId {
  return FOLLOWED_READINGS.some((each) => each === id);
}
