import { wortDensity } from "../gravity";
import { celsius, degreesPlato } from "../units";

const AT_20 = celsius(20);
const STRONGEST_PLATO = 35;

/**
 * Density at 20 °C; a wort past the end of the range counts as heavy as the strongest in it.
 *
 * @returns Density, kg/L.
 */
export const wortDensityAt20 = (plato: number): number =>
  wortDensity({ plato: degreesPlato(Math.min(STRONGEST_PLATO, plato)), celsius: AT_20 });

const MOST_TURNOVERS = 700;

const WATER_KG_PER_L = wortDensityAt20(0);

/** Wort that grain keeps: its volume stays while it is washed, its mass falls with its strength. */
export class HeldWort {
  constructor(
    private readonly litres: number,
    public kg: number,
    public extractKg: number,
  ) {}

  // Mixes each portion in and drains to the volume that is held.
  washInPortions(waterKg: number, portions: number): void {
    if (waterKg === 0 || this.litres === 0) return;
    const portionKg = waterKg / portions;
    for (let i = 0; i < portions; i++) {
      const share = this.extractKg / (this.kg + portionKg);
      this.kg = this.litres * wortDensityAt20(100 * share);
      this.extractKg = this.kg * share;
    }
  }

  // Washes out stirred layers of equal volume, one after the other, with water that runs in as wort runs out.
  washOut(waterKg: number, layers: number): void {
    if (waterKg === 0 || this.litres === 0) return;
    // Volumes of one layer that run through; past this nothing is left that a number could hold.
    const turnovers = Math.min(MOST_TURNOVERS, (layers * waterKg) / (this.litres * WATER_KG_PER_L));
    let term = Math.exp(-turnovers);
    let left = 0;
    for (let i = 0; i < layers; i++) {
      left += (layers - i) * term;
      term *= turnovers / (i + 1);
    }
    this.extractKg *= left / layers;
    // The density depends on the answer, weakly.
    for (let i = 0; i < 4; i++) this.kg = this.litres * wortDensityAt20((100 * this.extractKg) / this.kg);
  }
}
