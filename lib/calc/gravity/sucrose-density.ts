// Least-squares quartic through the densities D 20/4 of sucrose solutions, 0 to 60 % (docs/sources.md#nbs-440-1942).
const C1 = 3.8570322e-3;
const C2 = 1.2788454e-5;
const C3 = 6.3273059e-8;
const C4 = -2.2384803e-10;

/** Water at 4 °C, the unit of D 20/4, kg/L. */
const WATER_4 = 0.999972;

/**
 * How much denser a sucrose solution is than water, both at 20 °C, without a range check.
 *
 * @returns Difference of density, kg/L; zero for water, so that nothing depends on how well the fit meets it.
 */
export const densityRise = (plato: number): number => WATER_4 * plato * (C1 + plato * (C2 + plato * (C3 + plato * C4)));

/**
 * Derivative of the rise with strength, without a range check.
 *
 * @returns kg/L for each °P.
 */
export const densityRiseSlope = (plato: number): number =>
  WATER_4 * (C1 + plato * (2 * C2 + plato * (3 * C3 + plato * 4 * C4)));

/**
 * What temperature changes in the rise: kg/L at `celsius` less kg/L at 20 °C, without a range check.
 *
 * Only the terms with temperature are taken from the polynomial; at 20 °C the table above holds exactly. Sucrose is
 * written as mass fraction w, temperature as (t − 20)/100, as in the source (docs/sources.md#bubnik-1995).
 *
 * @returns Difference of density, kg/L; zero for water and at 20 °C.
 */
export const densityRiseChange = (plato: number, celsius: number): number => {
  const w = plato / 100;
  const t = (celsius - 20) / 100;
  const t1 = -46.272 + w * (-7.172 + w * (1.1597 + w * (5.1126 + w * 17.5254)));
  const t2 = 59.7712 + w * (7.2491 + w * (12.363 - w * 35.4791));
  const t3 = -47.2207 + w * (-21.6977 + w * 27.6301);
  const t4 = 18.3184 + w * 12.3081;
  return (w * t * (t1 + t * (t2 + t * (t3 + t * t4)))) / 1000;
};
