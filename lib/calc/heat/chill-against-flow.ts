import { findRoot } from "../numerics";
import { celsius, litres, seconds } from "../units";
import { LONGEST_CHILL_MIN, MOST_COOLANT_L, type Chill, type ChillOutcome } from "./chilling";
import { capacityOf, COOLANT_J_PER_L_K } from "./chill-mixed";

/**
 * Cools wort on its way out through a counterflow exchanger, at the flow that makes it leave at `toC`.
 *
 * @returns Time, coolant and curves, or the floor.
 */
export function chillAgainstFlow(a: Chill): ChillOutcome {
  const { fromC, toC, coolantC } = a;
  if (toC >= fromC)
    return { ok: true, seconds: seconds(0), coolantLitres: litres(0), curve: [[0, fromC]], wortCurve: [[0, fromC]] };
  const coolantWPerK = (a.coolantFlow / 60) * COOLANT_J_PER_L_K;
  if (toC <= coolantC || coolantWPerK === 0 || a.conductance === 0) {
    const floorC = coolantWPerK === 0 || a.conductance === 0 ? fromC : Math.min(coolantC, fromC);
    return { ok: false, reason: "coolant-too-warm", floorC: celsius(floorC) };
  }
  const wortWPerK = wortFlow(a, coolantWPerK);
  // The kettle's own metal stays behind hot.
  const wortJPerK = capacityOf(a) - a.vesselHeatCapacity;
  const time = wortJPerK / wortWPerK;
  const endMin = time / 60;
  if (!(endMin <= LONGEST_CHILL_MIN && a.coolantFlow * endMin <= MOST_COOLANT_L))
    return { ok: false, reason: "coolant-too-warm", floorC: fromC };
  return {
    ok: true,
    seconds: seconds(time),
    coolantLitres: litres(a.coolantFlow * endMin),
    curve: [
      [0, fromC],
      [endMin, toC],
    ],
    wortCurve: [
      [0, fromC],
      [endMin / 2, fromC],
      [endMin / 2, toC],
      [endMin, toC],
    ],
  };
}

// Largest flow of wort, W/K, that the exchanger brings to `toC`: conductance times log-mean difference is the heat
// that the wort gives up.
function wortFlow({ fromC, toC, coolantC, conductance }: Chill, coolantWPerK: number): number {
  const coldEndK = toC - coolantC;
  const dropK = fromC - toC;
  const spare = (wort: number): number => {
    // At the most it is 0, which rounding may miss by a hair on the wrong side.
    const hotEndK = Math.max(0, fromC - coolantC - (wort * dropK) / coolantWPerK);
    const excess = hotEndK / coldEndK - 1;
    const logMeanK = excess === 0 ? coldEndK : (coldEndK * excess) / Math.log1p(excess);
    return conductance * logMeanK - wort * dropK;
  };
  // At most what the coolant takes up if it leaves as hot as the wort comes in.
  const most = (coolantWPerK * (fromC - coolantC)) / dropK;
  return findRoot({ f: spare, low: 0, high: most, tolerance: most * 1e-13 }).x;
}
