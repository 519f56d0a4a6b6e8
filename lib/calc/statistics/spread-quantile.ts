import { findRoot } from "../numerics";
import type { Weighted } from "./between-units";

/**
 * Finds the sd between units that a share of its posterior stays below.
 *
 * @param nodes - Values by even steps of their logarithm, with their shares.
 * @returns Quantile, within a thousandth of a step.
 */
export function spreadQuantile(nodes: readonly Weighted[], probability: number): number {
  const weight = (i: number): number => nodes[i]?.weight ?? 0;
  let sum = 0;
  let before = 0;
  for (let i = 0; i < nodes.length; i++) {
    // The trapezium rule up to a node, with its own error taken off as far as neighbours show it.
    const here = sum + weight(i) / 2 - (weight(i + 1) - weight(i - 1)) / 24;
    if (here >= probability && i > 0) return between(nodes, i, before, here, probability);
    sum += weight(i);
    before = here;
  }
  return nodes.at(-1)?.between ?? 0;
}

// The cubic through the shares at two nodes with the slopes there.
function between(nodes: readonly Weighted[], i: number, before: number, here: number, probability: number): number {
  const [from, to] = [nodes[i - 1], nodes[i]];
  if (from === undefined || to === undefined) return 0;
  const share = (u: number): number =>
    before + u * u * (3 - 2 * u) * (here - before) + u * (1 - u) * ((1 - u) * from.weight - u * to.weight);
  const { x } = findRoot({ f: (u) => share(u) - probability, low: 0, high: 1, tolerance: 1e-9 });
  return from.between * (to.between / from.between) ** x;
}
