import * as units from "../../units";
import type { QuantityMaker } from "../../units";
import type { FunctionRecord } from "./function-record";

const isMaker = (value: unknown): value is QuantityMaker<string> => typeof value === "function" && "range" in value;

const bare = (unit: string): string => (unit === "" ? "a bare number" : `in ${unit}`);

/** How the makers of quantities are explained: each is its span and nothing more. */
export const UNITS_QUANTITY_FUNCTIONS: readonly FunctionRecord[] = Object.entries(units).flatMap(([name, maker]) => {
  if (!isMaker(maker)) return [];
  const { quantity, range } = maker;
  const { unit, min, max } = range;
  return [
    {
      id: `units/${name}`,
      words: `Checks a number as a ${quantity}, ${bare(unit)}, and marks it with its unit. The span is what a club's brewing can show at all; a formula that holds for less says so itself.`,
      equation: "the number itself, where min ≤ number ≤ max",
      inputs: [{ at: "0", label: quantity, unit, min, max }],
      gives: `${quantity}, ${bare(unit)}`,
      sources: ["nist-sp-811"],
      validRange: `${String(min)} to ${String(max)} ${unit}`.trim() + ".",
      call: maker,
      example: [Math.min(max, Math.max(min, 1))],
    },
  ] satisfies FunctionRecord[];
});
