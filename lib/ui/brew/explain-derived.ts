import type { ComparedRow, DerivedQuantity, MeasurableQuantity } from "@/lib/calc/compare";
import type { ExplainedNumber, ExplanationInput } from "@/lib/calc/explain";
import { QUANTITIES, type QuantityId } from "@/lib/calc/ledger";

interface Derivation {
  readonly words: string;
  readonly equation: string;
  readonly readings: readonly MeasurableQuantity[];
  /** Numbers of the plan that it leans on, since nobody measures them again. */
  readonly planned: readonly QuantityId[];
}

const DERIVATIONS: Readonly<Record<DerivedQuantity, Derivation>> = {
  "lauter.efficiency": {
    words:
      "How much of the dissolved extract reached the kettle. The first wort tells how much was dissolved, for all the mash water was as strong.",
    equation:
      "efficiency = extract before the boil / extract dissolved, with extract before the boil = volume × density × gravity / 100 and extract dissolved = water × first wort / (100 − first wort)",
    readings: ["mash.firstWort", "kettle.preBoil", "kettle.preBoilGravity", "water.mash"],
    planned: ["water.mash"],
  },
  "kettle.evaporated": {
    words: "What the boil took away: the wort before it, less the wort at its end.",
    equation: "boiled off = (mass before the boil + what was added − mass at the end) / density of water at 20 °C",
    readings: ["kettle.preBoil", "kettle.preBoilGravity", "kettle.postBoil", "fermenter.originalExtract"],
    planned: ["kettle.boilingPoint"],
  },
  "stand.lost": {
    words: "What stayed behind between the end of the boil and the fermenter, as wort at 20 °C.",
    equation: "left behind = (mass at the end of the boil − mass into the fermenter) / density of the wort at 20 °C",
    readings: ["kettle.postBoil", "fermenter.volume", "fermenter.originalExtract"],
    planned: ["kettle.boilingPoint", "water.topUp"],
  },
  "fermenter.efficiency": {
    words: "How much of all extract that was weighed out reached the fermenter.",
    equation: "efficiency = volume × density × original extract / 100 / extract weighed out",
    readings: ["fermenter.volume", "fermenter.originalExtract"],
    planned: ["mash.potential"],
  },
  "fermenter.attenuation": {
    words:
      "By how much the extract seems to have fallen. It seems more than it is, because alcohol is lighter than water.",
    equation: "apparent attenuation = (original extract − final gravity) / original extract, both in °P",
    readings: ["fermenter.originalExtract", "fermenter.finalExtract"],
    planned: [],
  },
  "package.alcohol": {
    words: "The alcohol that yeast made of the extract it took.",
    equation:
      "alcohol by weight = (original − real extract) / (2.0665 − 0.010665 × original), and by volume with the densities of the beer and of ethanol",
    readings: ["fermenter.originalExtract", "fermenter.finalExtract"],
    planned: [],
  },
};

function isDerived(id: QuantityId): id is DerivedQuantity {
  return Object.hasOwn(DERIVATIONS, id);
}

/** A number that follows from readings: from which, and how. */
export function explainDerived(row: ComparedRow, rows: readonly ComparedRow[]): ExplainedNumber | null {
  if (!isDerived(row.quantity)) return null;
  const { words, equation, readings, planned } = DERIVATIONS[row.quantity];
  const { label, dimension } = QUANTITIES[row.quantity];
  const isBalling = row.quantity === "package.alcohol";
  return {
    label: `${label}, measured`,
    value: row.measured,
    dimension,
    words,
    equation,
    inputs: [...readings.flatMap((id) => measuredInput(id, rows)), ...planned.flatMap((id) => plannedInput(id, rows))],
    sources: isBalling
      ? [{ anchor: "balling-1865", title: "Balling 1865: extract, alcohol and attenuation" }]
      : [{ anchor: "mass-balance", title: "Conservation of mass and of extract" }],
    validRange: "Readings of wort up to 35 °P; hot volumes are taken at the boiling point, the others at 20 °C.",
    whatIf: [],
  };
}

function measuredInput(id: MeasurableQuantity, rows: readonly ComparedRow[]): readonly ExplanationInput[] {
  const measured = rows.find(({ quantity }) => quantity === id)?.measured ?? null;
  const { label, dimension } = QUANTITIES[id];
  return measured === null ? [] : [{ label: `${label}, measured`, value: measured, dimension, unit: "" }];
}

/** A planned number stands in only where it was not measured. */
function plannedInput(id: QuantityId, rows: readonly ComparedRow[]): readonly ExplanationInput[] {
  const row = rows.find(({ quantity }) => quantity === id);
  if (row === undefined || row.measured !== null) return [];
  const { label, dimension } = QUANTITIES[id];
  return [{ label: `${label}, planned`, value: row.planned, dimension, unit: "", quantity: id }];
}
