import type { ComparedRow } from "@/lib/calc/compare";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Explained } from "./explained";

/** What all readings and the plan together make of one number, and how far its reading had to move for it. */
export function explainReconciled(row: ComparedRow, { comparison }: Explained): ExplainedNumber | null {
  const { label, dimension } = QUANTITIES[row.quantity];
  const found = comparison.reconciled.find(({ quantity }) => quantity === row.quantity);
  if (row.reconciled === null) return null;
  return {
    label: `${label}, reconciled`,
    value: row.reconciled,
    dimension,
    words: `The value that lets every balance of water and extract close while readings and plan move as little as their uncertainties ask. ${verdictOf(found?.z ?? null, found?.isSuspect ?? false)}`,
    equation: "least Σ ((reconciled − read) / σ)² + Σ ((figure − planned) / σ)², with in = lost + out at every station",
    inputs: [
      { label: `${label}, measured`, value: row.measured, dimension, unit: "" },
      { label: `${label}, planned`, value: row.planned, dimension, unit: "", quantity: row.quantity },
      ...(found === undefined || found.z === null
        ? []
        : [
            {
              label: "How far it moved, in standard uncertainties of the move (z)",
              value: found.z,
              dimension: null,
              unit: "",
            },
          ]),
      { label: "χ² of all readings", value: comparison.balance.chiSquared, dimension: null, unit: "" },
      { label: "Degrees of freedom", value: comparison.balance.df, dimension: null, unit: "" },
    ],
    sources: [
      {
        anchor: "narasimhan-jordache-2000",
        title: "Narasimhan and Jordache 2000: data reconciliation and gross errors",
      },
      { anchor: "mass-balance", title: "Conservation of mass and of extract" },
    ],
    validRange: "Errors that spread as a normal distribution does and are independent of each other.",
    whatIf: [],
  };
}

/** Beyond this one reading in twenty would be by chance. */
const FAR = 2;

function verdictOf(z: number | null, isSuspect: boolean): string {
  if (isSuspect) return "The reading itself cannot be right and was left out.";
  if (z === null) return "No balance checks this reading.";
  return Math.abs(z) <= FAR
    ? "The reading moved no further for it than chance moves nineteen of twenty."
    : "The reading moved further for it than chance moves nineteen of twenty.";
}
