import type { Interval } from "@/lib/calc/ledger";
import { Z80 } from "@/lib/calc/statistics";

/** What a standard uncertainty is as an interval, so that measured and planned numbers say alike how sure they are. */
export function intervalOfSd(value: number | null, sd: number | null): Interval | null {
  if (value === null || sd === null) return null;
  return { low80: value - Z80 * sd, high80: value + Z80 * sd };
}
