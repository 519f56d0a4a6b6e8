import type { ExtractLine, ExtractLineId } from "@/lib/calc/compare";
import type { ExplainedNumber, ExplanationInput } from "@/lib/calc/explain";
import type { ExplainedTarget } from "./explained-target";
import type { Explained } from "./explained";

const HELD: Readonly<Partial<Record<ExtractLineId, string>>> = {
  potential:
    "The extract that the grist holds by its laboratory figures: weight × dry share × extract of the dry matter.",
  beforeBoil: "Volume before the boil, at its density, times its gravity.",
  endOfBoil: "Volume at the end of the boil, at its density, times the gravity of the finished wort.",
  fermenter: "Volume into the fermenter times its density and its original extract.",
  residual: "What yeast left: the real extract of the beer times the mass of the beer.",
  added: "Sugar and malt extract that went into the kettle, as weighed out by the plan.",
};

const RESTS_ON: Readonly<Record<ExtractLine["restsOn"], string>> = {
  weights: "It is taken as weighed out.",
  readings: "The readings leave less than half of the variance that the plan had: it rests on them.",
  both: "The readings bear on it, but leave more than half of the variance that the plan had.",
  plan: "No reading bears on it: it is what the plan says.",
};

/** One line of the account of the extract. */
export function explainExtract(
  { id, column }: Extract<ExplainedTarget, { kind: "extract" }>,
  { comparison }: Explained,
): ExplainedNumber | null {
  const { lines } = comparison.extract;
  const at = lines.findIndex((line) => line.id === id);
  const line = lines[at];
  if (line === undefined) return null;
  const isLoss = line.effect === "loses";
  return {
    label: `${line.label}, ${column === "planned" ? "planned" : "by the readings"}`,
    value: kgOf(line, column),
    dimension: "mass",
    words: `${HELD[id] ?? "What was there at one station and is not there at the next. Nobody weighs a loss: it is the difference."}${
      column === "planned" ? "" : ` ${RESTS_ON[line.restsOn]}`
    }`,
    equation: isLoss
      ? "lost = there before (with what was added) − there after"
      : column === "planned"
        ? "as in the planned ledger"
        : "extract = volume × density × gravity / 100, each reconciled",
    inputs: isLoss ? neighbours(lines, at, column) : [],
    sources: [
      { anchor: "mass-balance", title: "Conservation of mass and of extract" },
      {
        anchor: "narasimhan-jordache-2000",
        title: "Narasimhan and Jordache 2000: data reconciliation and gross errors",
      },
    ],
    validRange: "Gravities up to 35 °P; hot volumes are taken at the boiling point, the others at 20 °C.",
    whatIf: [],
  };
}

/** A loss lies between what was there, with what was added to it, and what is there next. */
function neighbours(
  lines: readonly ExtractLine[],
  at: number,
  column: "planned" | "measured",
): readonly ExplanationInput[] {
  const before = lines.slice(0, at).findLastIndex(({ effect }) => effect === "holds");
  return lines
    .slice(Math.max(0, before), at + 2)
    .filter(({ effect }) => effect !== "loses")
    .map((line) => ({ label: line.label, value: kgOf(line, column), dimension: "mass", unit: "" }));
}

function kgOf({ plannedKg, kg }: ExtractLine, column: "planned" | "measured"): number {
  return column === "planned" ? plannedKg : kg;
}
