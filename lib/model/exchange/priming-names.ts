import type { PrimingSugar } from "@/lib/calc/ledger";

const NAMES: Readonly<Record<PrimingSugar, string>> = {
  sucrose: "Sucrose",
  dextroseMonohydrate: "Dextrose monohydrate",
  dextroseAnhydrous: "Dextrose anhydrous",
};

export function nameOfPriming(sugar: PrimingSugar): string {
  return NAMES[sugar];
}

/** A priming sugar by the names that the trade has for it; corn sugar is sold as the monohydrate. */
export function primingNamed(name: string): PrimingSugar | null {
  if (/anhydrous/i.test(name)) return "dextroseAnhydrous";
  if (/dextrose|corn sugar|glucose/i.test(name)) return "dextroseMonohydrate";
  return /sucrose|(?:table|cane|beet|white) sugar/i.test(name) ? "sucrose" : null;
}
