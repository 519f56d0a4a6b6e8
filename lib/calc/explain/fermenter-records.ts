import { rowLovibond } from "../ledger/grist-sums";
import { mashedMalt } from "../ledger/mashed-malt";
import type { ExplanationContext } from "./explanation-context";
import type { ExplanationInput } from "./explanation";
import { inUnit, measure, ofLedger } from "./explanation-inputs";
import type { ExplanationRecord, RecordsOf } from "./explanation-record";
import { boiledShare, postBoilLitresAt20 } from "./hopped-wort";
import { flowOf } from "./ledger-flows";

const volume: ExplanationRecord = {
  words:
    "The wort that goes into the fermenter, as if at 20 °C, with the water added after the boil. The recipe states it, and all the water is worked out backwards from it. Yeast slurry or a starter poured in is left out.",
  equation: "as the recipe states; the water follows from it",
  inputs: (a) => [measure("Volume wanted in the recipe", a.recipe.intoFermenter, "volume")],
  sources: ["mass-balance"],
  validRange: "Any volume; whether the fermenter holds it is one of the limits.",
  nudges: ["10 % more wort into the fermenter", "10 % less wort into the fermenter"],
};

const originalExtract: ExplanationRecord = {
  words:
    "The strength of the wort before the yeast gets it. It is the strength at the end of the boil, thinned by the water added after the boil if there is any. What stays behind with the trub leaves at the same strength and does not change it.",
  equation: "original extract = gravity at the end of the boil × wort / (wort + water after the boil), by mass",
  inputs: (a) => [
    ...ofLedger(a, "kettle.postBoilGravity"),
    measure("Wort into the fermenter, by mass", flowOf(a.ledger, "fermenter", "in", "wort")?.kg ?? null, "mass"),
    ...ofLedger(a, "water.topUp"),
  ],
  sources: ["mass-balance"],
  validRange: "Up to 35 °P.",
  nudges: [
    "10 % more grist",
    "conversion 3 percentage points lower",
    "10 % more wort into the fermenter",
    "nothing but grist: no sugar, no malt extract",
  ],
};

const bitterness: ExplanationRecord = {
  words:
    "Bitter iso-alpha acids, in milligrams a litre, added up over the hops of the kettle. A minute counts by how fast alpha acids turn at its temperature, so stand and chilling add to the boil and a boil high up gives less; the sum goes into the utilisation, the share that ends up in the beer, which was measured on boils. Dry hops count as nothing, and the age of the hops is left out.",
  equation:
    "bitterness = Σ utilisation × alpha acids × hops × 1000 / wort × share of the volume that was boiled, for each addition",
  inputs: (a) => [
    ...a.ledger.hops.flatMap((hop, i) => {
      const row = a.recipe.hops[i];
      return row === undefined || row.use === "dry" ? [] : [measure(row.name, hop.ibu, "bitterness")];
    }),
    ...ofLedger(a, "kettle.preBoilGravity", "kettle.postBoilGravity", "kettle.postBoil", "kettle.boilingPoint"),
    ...(a.recipe.stand === null ? [] : ofLedger(a, "stand.coolingTime")),
    ...ofLedger(a, "stand.chillTime", "water.topUp"),
  ],
  sources: ["tinseth-1997", "malowicki-shellhammer-2005"],
  validRange:
    "Gravities 1.000 to 1.160 and up to 240 minutes; studied at 1.030 to 1.130 and 90 to 130 °C, carried on below.",
  nudges: [
    "alpha acids 1 percentage point lower",
    "at 1600 m above the sea",
    "a chiller half as strong",
    "10 % more hops in the kettle",
  ],
};

const colour: ExplanationRecord = {
  words:
    "The colour of the beer, from everything mashed and boiled in the wort at the end of the boil. Malt colours add up by mass over volume, but dark beer is paler than the sum, which the exponent allows for. What the boil darkens and the yeast takes away is inside the scatter of the relation, about a fifth.",
  equation:
    "colour = 25 / 12.7 × 1.4922 × (8.345 × Σ mass × °L / wort)^0.6859, with °L = (EBC × 12.7 / 25 + 0.76) / 1.3546",
  inputs: (a) => [
    ...colouringRows(a),
    measure(
      "Wort that they colour, at 20 °C, with water after the boil in proportion",
      postBoilLitresAt20(a) / boiledShare(a),
      "volume",
    ),
    ...ofLedger(a, "kettle.postBoil", "water.topUp"),
  ],
  sources: ["morey-1995", "ebc-analytica", "asbc-beer-10a", "nist-sp-811", "trade-practice"],
  validRange: "Drawn up to about 100 EBC; above that it only says black.",
  nudges: ["malt 10 % darker", "10 % more wort into the fermenter", "10 % more grist"],
};

function colouringRows({ recipe }: ExplanationContext): ExplanationInput[] {
  return recipe.fermentables.flatMap((row) => {
    const lovibond = rowLovibond(row.colour);
    return lovibond > 0 ? [inUnit(row.name, row.kg * lovibond, "kg·°L")] : [];
  });
}

const efficiency: ExplanationRecord = {
  words:
    "The share of all the extract bought that reaches the fermenter, sugar and malt extract included. It is a result and not a setting: the mash, the grain, the trub and the hoses each keep some. Figures quoted elsewhere may leave the losses after the boil out.",
  equation:
    "brewhouse efficiency = extract into the fermenter / (extract in the grist + extract of sugar and malt extract)",
  inputs: (a) => [
    measure("Extract into the fermenter", flowOf(a.ledger, "fermenter", "in", "wort")?.extractKg ?? null, "mass"),
    ...ofLedger(a, "mash.potential"),
    measure("Extract of sugar and malt extract", a.sums.addedExtractKg, "mass"),
    ...ofLedger(a, "fermenter.volume", "fermenter.originalExtract"),
  ],
  sources: ["mass-balance"],
  validRange: "Worts up to 35 °P.",
  nudges: ["10 % more grist", "half the trub", "no sparge water past the grain", "nothing left in chiller and hoses"],
};

const cells: ExplanationRecord = {
  words:
    "The living yeast cells that the wort should be given, in thousand millions. It is the rate that the recipe asks for, for each millilitre and each degree of strength. How many cells a packet holds by now is not worked out here.",
  equation: "cells = pitch rate × volume × original extract",
  inputs: (a) => [
    inUnit("Pitch rate", a.recipe.yeast.pitch, "million/(mL·°P)"),
    ...ofLedger(a, "fermenter.volume", "fermenter.originalExtract"),
  ],
  sources: ["fix-fix-1997"],
  validRange: "Up to 35 °P; rates in use lie from about 0.5 to 2 million.",
  nudges: ["pitched at twice the rate", "10 % more wort into the fermenter", "10 % more grist"],
};

const attenuation: ExplanationRecord = {
  words:
    "The share of the extract that seems to vanish in fermentation, as a hydrometer shows it. The extract of the mash counts with the middle of the yeast's range and what the temperatures of this mash add to an hour at 66 °C; malt extract counts with the middle alone, and sugars with what yeast takes of them. Pitching and health of the yeast are left out, and they move it by several hundredths.",
  equation:
    "attenuation = Σ share of the extract × attenuation; the middle of the range + what the mash adds for what is mashed, the middle for malt extract, share that yeast takes / 0.8192 for rows that state it",
  inputs: (a) => [
    measure("Range of the yeast, low", a.recipe.yeast.attenuationLow, "fraction"),
    measure("Range of the yeast, high", a.recipe.yeast.attenuationHigh, "fraction"),
    ...(a.sums.gristKg > 0 ? [measure("What the mash adds", mashedMalt(a.ledger.phases)?.shift ?? 0, "fraction")] : []),
    ...rowsWithFermentability(a),
  ],
  sources: ["balling-1865", "brandam-2003", "trade-practice"],
  validRange: "As good as the range of the yeast, about ± 0.04, for rests of 55 to 78 °C.",
  nudges: [
    "yeast that attenuates 3 percentage points further",
    "mash 2 °C hotter",
    "nothing but grist: no sugar, no malt extract",
  ],
};

function rowsWithFermentability({ recipe, ledger }: ExplanationContext): ExplanationInput[] {
  return recipe.fermentables.flatMap((row, i) =>
    row.fermentability === null
      ? []
      : [
          measure(`${row.name}, share of the extract`, ledger.fermentables[i]?.share ?? null, "fraction"),
          measure(`${row.name}, share that yeast takes`, row.fermentability, "fraction"),
        ],
  );
}

const finalExtract: ExplanationRecord = {
  words:
    "What a hydrometer should show when fermentation is over. Alcohol is lighter than water, so the reading is lower than the extract that is really left. It is as sure as the attenuation, and says nothing of when it will be reached.",
  equation: "final gravity = original extract × (1 − apparent attenuation)",
  inputs: (a) => ofLedger(a, "fermenter.originalExtract", "fermenter.attenuation"),
  sources: ["balling-1865"],
  validRange: "Up to 35 °P; beer that would read below 0 °P is given as 0.",
  nudges: [
    "yeast that attenuates 3 percentage points further",
    "10 % more grist",
    "nothing but grist: no sugar, no malt extract",
  ],
};

/** How the numbers of the fermenter are explained. */
export const FERMENTER_RECORDS: RecordsOf<"fermenter"> = {
  "fermenter.volume": volume,
  "fermenter.originalExtract": originalExtract,
  "fermenter.bitterness": bitterness,
  "fermenter.colour": colour,
  "fermenter.efficiency": efficiency,
  "fermenter.cells": cells,
  "fermenter.attenuation": attenuation,
  "fermenter.finalExtract": finalExtract,
};
