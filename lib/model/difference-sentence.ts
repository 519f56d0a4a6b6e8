import type { CauseId, QuantityCauses } from "@/lib/calc/compare";

/** How a number of this difference is said to one person: “4.1 points”, “0.8 L”. */
export type SayAmount = (size: number) => string;

const NOUNS: Readonly<Record<QuantityCauses["quantity"], string>> = {
  "fermenter.originalExtract": "Original gravity",
  "fermenter.volume": "Volume into the fermenter",
  "fermenter.finalExtract": "Final gravity",
  "package.alcohol": "Alcohol",
};

const PHRASES: Readonly<Record<CauseId, { readonly more: string; readonly less: string; readonly place: string }>> = {
  mash: { more: "more dissolved in the mash", less: "less dissolved in the mash", place: "the mash" },
  lauter: { more: "more extract left in the grain", less: "less extract left in the grain", place: "the lauter" },
  volume: {
    more: "a larger volume before the boil",
    less: "a smaller volume before the boil",
    place: "the volume before the boil",
  },
  boil: { more: "more boiled off", less: "less boiled off", place: "the boil" },
  left: {
    more: "more left with trub, hops and hoses",
    less: "less left with trub, hops and hoses",
    place: "trub, hops and hoses",
  },
  fermentation: {
    more: "a fermentation that went further",
    less: "a fermentation that stopped earlier",
    place: "the fermentation",
  },
};

/** A difference below this many of its uncertainties may be none. */
const TOLD = 2;

/**
 * Says in one sentence how far a number came out from the plan, and why as far as the readings can tell.
 *
 * Only causes that the readings tell from nothing are named; what is left is said to be within what they can tell.
 */
export function differenceSentence(causes: QuantityCauses, say: SayAmount): string {
  const { difference, actualSd, isDoubted, named } = causes;
  const noun = isDoubted ? `${NOUNS[causes.quantity]}, by the other readings,` : NOUNS[causes.quantity];
  const apart = `${say(Math.abs(difference))} ${difference < 0 ? "low" : "high"}`;
  if (Math.abs(difference) <= TOLD * actualSd) {
    return `${noun} as planned, as far as the readings can tell: ${apart}, known to ± ${say(TOLD * actualSd)}.`;
  }
  if (named.length === 0) return `${noun} ${apart}; the readings cannot tell from where.`;
  const told = named
    .toSorted((one, other) => Math.abs(other.value) - Math.abs(one.value))
    .map(({ ids, value }) => {
      const isAgainst = value * difference < 0;
      return `${say(Math.abs(value))}${isAgainst ? " the other way" : ""} from ${causeWords(causes, ids)}`;
    });
  return `${noun} ${apart}: ${told.join(", ")}; the rest is within what the readings can tell.`;
}

function causeWords({ parts }: QuantityCauses, ids: readonly CauseId[]): string {
  const [only] = ids;
  if (only !== undefined && ids.length === 1) {
    const isMore = parts.find(({ id }) => id === only)?.isMore ?? false;
    return isMore ? PHRASES[only].more : PHRASES[only].less;
  }
  const places = ids.map((id) => PHRASES[id].place);
  return `${places.slice(0, -1).join(", ")} and ${places.at(-1) ?? ""} together`;
}

/** Where a part of a difference comes from, as the head of a table row. */
export function causeLabel(id: CauseId): string {
  const { place } = PHRASES[id];
  return `${place.charAt(0).toUpperCase()}${place.slice(1)}`;
}

export function causedNoun(quantity: QuantityCauses["quantity"]): string {
  return NOUNS[quantity];
}
