import { platoToSpecificGravity } from "../gravity";
import type { HopAddition, Ledger } from "../ledger";
import { degreesPlato, fraction, grams, minutes } from "../units";
import type { ExplainedNumber, ExplanationInput } from "./explanation";
import { explanationContext, type BrewInput, type ExplanationContext } from "./explanation-context";
import { inUnit, measure, ofLedger, withDistinctLabels } from "./explanation-inputs";
import { boiledShare, postBoilLitresAt20 } from "./hopped-wort";
import { ofRecipe, possible, type Nudge } from "./nudge";
import { NUDGES } from "./nudges";
import { referencesOf } from "./source-titles";
import { whatIf } from "./what-if";

/**
 * Explains the bitterness that one hop addition gives.
 *
 * @param a.index - Row of the recipe's hops, counted from 0.
 * @returns The explanation, or null where the recipe has no such row.
 * @validRange Any ledger of `brew`.
 * @throws {@link OutOfRangeError} when recipe, equipment or day are not those that the ledger was brewed from.
 * @source Tinseth 1997 (docs/sources.md#tinseth-1997), Malowicki and Shellhammer 2005
 * (docs/sources.md#malowicki-shellhammer-2005)
 * @example
 * explainHop({ ledger, recipe, equipment, ambient, index: 0 })?.inputs; // equivalent minutes, utilisation, gravity, …
 */
export function explainHop(a: BrewInput & { readonly ledger: Ledger; readonly index: number }): ExplainedNumber | null {
  const { recipe, ledger, index } = a;
  const hop = recipe.hops[index];
  const result = ledger.hops[index];
  if (hop === undefined || result === undefined) return null;
  const context = explanationContext(a);
  return {
    label: `Bitterness from ${hop.name}`,
    value: result.ibu,
    dimension: "bitterness",
    words: WORDS[hop.use],
    equation:
      hop.use === "dry"
        ? "none: not heated"
        : "bitterness = utilisation × alpha acids × hops × 1000 / wort × share of the volume that was boiled, with utilisation = 1.65 × 0.000125^(gravity − 1) × (1 − exp(−0.04 × equivalent minutes)) / 4.15 and equivalent minutes = ∫ exp(11858 × (1 / 373.15 − 1 / temperature in K)) dt",
    inputs: withDistinctLabels(inputsOf(context, hop, index)),
    sources: referencesOf(["tinseth-1997", "malowicki-shellhammer-2005"]),
    validRange:
      "Gravities 1.000 to 1.160 and up to 240 equivalent minutes; studied at 1.030 to 1.130 and 90 to 130 °C, carried on below.",
    whatIf: whatIf({
      brew: a,
      value: result.ibu,
      read: (changed) => changed.hops[index]?.ibu ?? null,
      nudges: nudgesOf(index),
    }),
  };
}

const WORDS: Readonly<Record<HopAddition["use"], string>> = {
  boil: "The bitter iso-alpha acids that this addition brings into the beer. Every minute from here to the end of chilling counts by how fast alpha acids turn at its temperature, as minutes at 100 °C; utilisation is the share of the alpha acids that ends up in the beer after so many of them. The form of the hops, their age and how hard it boils are left out.",
  stand:
    "The bitter iso-alpha acids that this addition brings into the beer, although the wort no longer boils. Every minute from here to the end of chilling counts by how fast alpha acids turn at its temperature, as minutes at 100 °C: at 80 °C about a sixth. Utilisation was measured on boils and is carried on to stands, which is less sure.",
  dry: "Dry hops go into cold beer, where alpha acids do not turn into bitter iso-alpha acids. They are counted as no bitterness. What else they bring that tastes bitter is left out.",
};

function inputsOf(a: ExplanationContext, hop: HopAddition, index: number): ExplanationInput[] {
  const weighed = [measure("Hops", hop.grams, "grams"), measure("Alpha acids", hop.alpha, "fraction")];
  const result = a.ledger.hops[index];
  if (hop.use === "dry" || result === undefined) return weighed;
  return [
    ...weighed,
    measure("Equivalent minutes at 100 °C", result.equivalentMinutes, "minutes"),
    measure("Utilisation", result.utilisation, "fraction"),
    inUnit("Mean specific gravity, before and after the boil", meanBoilGravity(a), ""),
    measure("Wort at the end of the boil, at 20 °C", postBoilLitresAt20(a), "volume"),
    measure("Share of the volume that was boiled", boiledShare(a), "fraction"),
    ...ofLedger(a, "kettle.preBoilGravity", "kettle.postBoilGravity", "kettle.boilingPoint", "stand.chillTime"),
  ];
}

function meanBoilGravity({ ledger }: ExplanationContext): number | null {
  const { "kettle.preBoilGravity": before, "kettle.postBoilGravity": after } = ledger.quantities;
  if (before === null || after === null) return null;
  return (platoToSpecificGravity(degreesPlato(before)) + platoToSpecificGravity(degreesPlato(after))) / 2;
}

function nudgesOf(index: number): readonly (readonly [string, Nudge])[] {
  const thisHop = (change: (hop: HopAddition) => Partial<HopAddition> | null): Nudge =>
    ofRecipe(({ hops }) => {
      const hop = hops[index];
      const part = hop === undefined ? null : change(hop);
      return part === null ? null : { hops: hops.map((each, i) => (i === index ? { ...each, ...part } : each)) };
    });
  return [
    [
      "10 % more of it",
      thisHop((hop) => {
        const more = possible(grams, hop.grams * 1.1);
        return more === null ? null : { grams: more };
      }),
    ],
    [
      "alpha acids 1 percentage point lower",
      thisHop((hop) => {
        const alpha = possible(fraction, hop.alpha - 0.01);
        return alpha === null ? null : { alpha };
      }),
    ],
    ["added 10 minutes later", thisHop((hop) => (hop.minutes < 10 ? null : { minutes: minutes(hop.minutes - 10) }))],
    ["a chiller half as strong", NUDGES["a chiller half as strong"]],
  ];
}
