/** Absorbance at 430 nm in 1 cm of beer of 1 SRM: the definition of SRM. */
const ABSORBANCE_PER_SRM = 1 / 12.7;

/**
 * Absorbance of the average beer at a wavelength, for 1 SRM and 1 cm, without a range check (docs/sources.md#delange-2016).
 *
 * @returns Absorbance, decadic.
 */
export const averageAbsorbance = (nm: number): number =>
  ABSORBANCE_PER_SRM * (0.02465 * Math.exp((430 - nm) / 17.591) + 0.97535 * Math.exp((430 - nm) / 82.122));
