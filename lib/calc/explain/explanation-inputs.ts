import { QUANTITIES, type Dimension, type Figure, type QuantityId } from "../ledger";
import type { ExplanationInput } from "./explanation";
import type { ExplanationContext } from "./explanation-context";

/**
 * Takes inputs from the ledger itself.
 *
 * @returns One input for each id, with the label and the value that the ledger shows.
 */
export function ofLedger({ ledger }: ExplanationContext, ...ids: readonly QuantityId[]): ExplanationInput[] {
  return ids.map((id) => {
    const { label, dimension } = QUANTITIES[id];
    return { label, value: ledger.quantities[id], dimension, unit: "", quantity: id };
  });
}

/**
 * Names a number that has a dimension, so that it is shown in the reader's units.
 *
 * @returns The input.
 */
export function measure(label: string, value: number | null, dimension: Dimension): ExplanationInput {
  return { label, value, dimension, unit: "" };
}

/**
 * Names a number that only has a unit.
 *
 * @returns The input.
 */
export function inUnit(label: string, value: number | null, unit: string): ExplanationInput {
  return { label, value, dimension: null, unit };
}

/**
 * Names a figure of the equipment that has a dimension.
 *
 * @returns The input, with how the figure came to be known.
 */
export function figure(label: string, of: Figure<number>, dimension: Dimension): ExplanationInput {
  return { ...measure(label, of.value, dimension), from: originOf(of) };
}

/**
 * Names a figure of the equipment that only has a unit.
 *
 * @returns The input, with how the figure came to be known.
 */
export function figureInUnit(label: string, of: Figure<number>, unit: string): ExplanationInput {
  return { ...inUnit(label, of.value, unit), from: originOf(of) };
}

function originOf({ from, count }: Figure<number>): string {
  if (count === 0) return from;
  const kind = from === "measured" ? "trial" : "brew";
  return `${from}, from ${count} ${kind}${count === 1 ? "" : "s"}`;
}

/**
 * Tells rows of one name apart, as with three additions of one hop.
 *
 * @returns The inputs with a number behind every repeated label.
 */
export function withDistinctLabels(inputs: readonly ExplanationInput[]): readonly ExplanationInput[] {
  const seen = new Map<string, number>();
  const taken = new Set(inputs.map((input) => input.label));
  return inputs.map((input) => {
    let count = (seen.get(input.label) ?? 0) + 1;
    let label = count === 1 ? input.label : `${input.label} (${count})`;
    // Somebody may have named a row "Cascade (2)" already.
    while (count > 1 && taken.has(label)) label = `${input.label} (${++count})`;
    seen.set(input.label, count);
    taken.add(label);
    return { ...input, label };
  });
}
