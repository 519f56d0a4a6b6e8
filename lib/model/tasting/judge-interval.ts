import type { JudgeEffect } from "@/lib/calc/judging";
import type { Interval } from "@/lib/calc/ledger";
import { studentTQuantile } from "@/lib/calc/statistics";

/** The 80 % interval of a judge's severity. */
export function judgeInterval({ severity, standardError }: JudgeEffect, df: number): Interval {
  const reach = standardError * studentTQuantile({ p: 0.9, df });
  return { low80: severity - reach, high80: severity + reach };
}
