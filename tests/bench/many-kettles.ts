import type { Equipment } from "@/lib/calc/ledger";
import { kilogramsPerHour, litres, litresPerKilogram, wattsPerKelvin } from "@/lib/calc/units";
import { brewInput } from "../support/brewed";

/** Kettles that differ in everything that matters, so that no two members get the same amounts. */
export function kettles(count: number): Equipment[] {
  const input = brewInput();
  return Array.from({ length: count }, (_, i) => {
    const { equipment } = input;
    const turn = (i % 97) / 97;
    return {
      ...equipment,
      usualBatch: litres(16 + 8 * turn),
      kettle: {
        ...equipment.kettle,
        boilOff: { ...equipment.kettle.boilOff, value: kilogramsPerHour(1.8 + 1.2 * ((i % 13) / 13)) },
        lossCoefficient: { ...equipment.kettle.lossCoefficient, value: wattsPerKelvin(4 + 4 * ((i % 7) / 7)) },
      },
      lauter: {
        ...equipment.lauter,
        absorption: { ...equipment.lauter.absorption, value: litresPerKilogram(0.6 + 0.5 * ((i % 11) / 11)) },
      },
    };
  });
}
