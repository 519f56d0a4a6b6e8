import { requireInRange } from "../errors";
import { ebc, type Ebc } from "../units";
import type { MaltKind } from "./malt-acidity";

/** What a row of the grist is taken for, and what else its colour allows. */
export interface MaltKindGuess {
  readonly kind: MaltKind;
  /** Other kinds of this colour, likeliest first; a name or the maltster's sheet decides. */
  readonly couldBe: readonly MaltKind[];
}

/** Colours, EBC, from which a malt is taken for the kind, common practice. */
const MUNICH_FROM = 9;
const CARAMEL_FROM = 35;
const ROASTED_FROM = 450;

/**
 * Guesses the kind of a malt, as its acidity needs it, from what kind of fermentable it is and its colour.
 *
 * Colour cannot tell wheat from barley, nor a caramel malt from a malt kilned dark: near 60 EBC that is worth about 0.1 in
 * the malt's own pH, and 0.01 in the mash for each tenth of the grist. An acidulated malt looks like a pale one and has
 * to be named.
 *
 * @returns The kind, and the others that the colour allows.
 * @validRange 0 to 4000 EBC.
 * @throws {@link OutOfRangeError} when the colour is outside the valid range.
 * @source Common practice, no source (docs/sources.md#trade-practice)
 * @example
 * maltKindFromColour({ kind: "malt", colour: ebc(150) }); // { kind: "caramel", couldBe: ["kilned"] }
 */
export function maltKindFromColour({
  kind,
  colour,
}: {
  readonly kind: "malt" | "adjunct" | "sugar" | "malt extract";
  readonly colour: Ebc;
}): MaltKindGuess {
  requireInRange("malt colour", colour, ebc.range);
  if (kind === "sugar" || kind === "malt extract") return { kind, couldBe: [] };
  // Roasted barley is listed under either.
  if (colour >= ROASTED_FROM) return { kind: "roasted", couldBe: ["caramel"] };
  if (kind === "adjunct") return { kind: "raw grain", couldBe: [] };
  if (colour >= CARAMEL_FROM) return { kind: "caramel", couldBe: ["kilned"] };
  if (colour >= MUNICH_FROM) return { kind: "munich", couldBe: ["caramel", "wheat"] };
  return { kind: "base", couldBe: ["wheat", "caramel", "acidulated"] };
}
