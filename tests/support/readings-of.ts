import { MEASURABLE, MEASURABLE_QUANTITIES, type ComparedReading, type MeasurableQuantity } from "@/lib/calc/compare";
import type { Ledger } from "@/lib/calc/ledger";

type Values = Readonly<Partial<Record<MeasurableQuantity, number>>>;

/** Readings that show a ledger exactly, with the instruments' usual uncertainties; some may be replaced. */
export function readingsOf(ledger: Ledger, changed: Values = {}): ComparedReading[] {
  return MEASURABLE_QUANTITIES.flatMap((quantity): ComparedReading[] => {
    const value = changed[quantity] ?? ledger.quantities[quantity];
    return value === null ? [] : [{ quantity, value, sd: MEASURABLE[quantity].typicalSd }];
  });
}
