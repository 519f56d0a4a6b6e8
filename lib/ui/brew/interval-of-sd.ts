import type { Interval } from "@/lib/calc/ledger";

/** Half-width of the central 80 % of a normal distribution, in standard deviations. */
const Z80 = 1.2815515655446004;

/** What a standard uncertainty is as an interval, so that measured and planned numbers say alike how sure they are. */
export function intervalOfSd(value: number | null, sd: number | null): Interval | null {
  if (value === null || sd === null) return null;
  return { low80: value - Z80 * sd, high80: value + Z80 * sd };
}
