import type { ComparedRow } from "@/lib/calc/compare";
import type { ExplainedNumber, ExplanationInput } from "@/lib/calc/explain";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatDifference } from "../format-difference";

/** How far a measured number is from its plan, and whether that was to be expected. */
export function explainDifference(row: ComparedRow, preferences: Preferences): ExplainedNumber {
  const { label, dimension } = QUANTITIES[row.quantity];
  const { planned, measured, interval, expectation } = row;
  const { text, unit } = formatDifference({ value: measured ?? planned, from: planned, dimension, preferences });
  const apart = `${text} ${unit}`;
  const verdict =
    expectation === "outside"
      ? "It is outside what was expected: four of five such brews, read with such instruments, would have been nearer."
      : "It is inside what was expected: so far off are four of five such brews, read with such instruments.";
  const bounds: readonly ExplanationInput[] =
    interval === null
      ? []
      : [
          { label: "80 % interval of the plan, low end", value: interval.low80, dimension, unit: "" },
          { label: "80 % interval of the plan, high end", value: interval.high80, dimension, unit: "" },
        ];
  return {
    label: `${label}, measured against planned`,
    value: measured,
    dimension,
    words: `Measured less planned: ${apart}. ${verdict}`,
    equation:
      "inside when |measured − planned| ≤ √(half-width of the plan’s 80 % interval² + (1.28 × uncertainty of the measured value)²)",
    inputs: [
      { label: `${label}, measured`, value: measured, dimension, unit: "" },
      { label: `${label}, planned`, value: planned, dimension, unit: "", quantity: row.quantity },
      ...bounds,
    ],
    sources: [{ anchor: "jcgm-100-2008", title: "JCGM 100:2008: law of propagation of uncertainty" }],
    validRange: "Errors that spread as a normal distribution does; the plan’s and the instrument’s are independent.",
    whatIf: [],
  };
}
