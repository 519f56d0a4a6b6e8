import { celsius, litres, seconds } from "../units";
import { LONGEST_CHILL_MIN, MOST_COOLANT_L, type Chill, type ChillOutcome, type TemperatureCurve } from "./chilling";
import { heatCapacityAtZero, heatCapacitySlope } from "./wort-heat-capacity";

/** Heat that a litre of cooling water takes up per kelvin: 0.998 kg of 4186.8 J/(kg·K). */
export const COOLANT_J_PER_L_K = 0.998 * 4186.8;

/** Heat of melting of ice, J/kg (docs/sources.md#feistel-wagner-2006); a kilogram melts to a litre. */
export const ICE_MELTING_J_PER_KG = 333_430;

const CURVE_PIECES = 12;

/**
 * Cools well-mixed wort: C dT/dt = −G (T − Tc) − U (T − Ta), which is one exponential.
 *
 * @returns Time, coolant and curve, or the floor.
 */
export function chillMixed(a: Chill): ChillOutcome {
  const { lossCoefficient, ambientC, fromC, toC } = a;
  const flowJPerSK = (a.coolantFlow / 60) * COOLANT_J_PER_L_K;
  const pulled = pullOf(a, flowJPerSK);
  const coldC = a.kind === "ice bath" ? 0 : a.coolantC;
  const all = pulled + lossCoefficient;
  const floorC = all === 0 ? fromC : (pulled * coldC + lossCoefficient * ambientC) / all;
  if (toC >= fromC)
    return { ok: true, seconds: seconds(0), coolantLitres: litres(0), curve: [[0, fromC]], wortCurve: [[0, fromC]] };
  if (toC <= floorC || all === 0)
    return { ok: false, reason: "coolant-too-warm", floorC: celsius(Math.min(floorC, fromC)) };

  const capacity = capacityOf(a);
  const constantS = capacity / all;
  const time = constantS * Math.log((fromC - floorC) / (toC - floorC));
  if (time > 60 * LONGEST_CHILL_MIN || (a.coolantFlow * time) / 60 > MOST_COOLANT_L)
    return { ok: false, reason: "coolant-too-warm", floorC: celsius(floorC) };
  const curve = exponential(fromC, toC, floorC, constantS / 60);
  // Heat given to the air on the way, for the share that the ice takes.
  const meanAboveAirKS = constantS * (fromC - toC) + (floorC - ambientC) * time;
  const iceJ = capacity * (fromC - toC) - lossCoefficient * meanAboveAirKS;
  const coolantLitres =
    a.kind === "ice bath" ? iceJ / ICE_MELTING_J_PER_KG : a.kind === "none" ? 0 : (a.coolantFlow * time) / 60;
  return {
    ok: true,
    seconds: seconds(time),
    coolantLitres: litres(Math.max(0, coolantLitres)),
    curve,
    wortCurve: curve,
  };
}

/**
 * Heat capacity of wort and vessel at the middle of the span.
 *
 * @returns Heat capacity, J/K.
 */
export function capacityOf({ massKg, plato, vesselHeatCapacity, fromC, toC }: Chill): number {
  const middleC = (fromC + toC) / 2;
  return massKg * (heatCapacityAtZero(plato) + heatCapacitySlope(plato) * middleC) + vesselHeatCapacity;
}

// Heat drawn per kelvin above the cold side, W/K.
function pullOf(a: Chill, flowJPerSK: number): number {
  if (a.kind === "none") return 0;
  if (a.kind === "ice bath") return a.conductance;
  const transferUnits = a.conductance / flowJPerSK;
  return flowJPerSK === 0 ? 0 : -flowJPerSK * Math.expm1(-transferUnits);
}

// Points closer together while it is hot, where isomerisation is quick.
function exponential(fromC: number, toC: number, floorC: number, constantMin: number): TemperatureCurve {
  const curve: (readonly [number, number])[] = [];
  for (let i = 0; i <= CURVE_PIECES; i++) {
    const celsiusHere = fromC - (fromC - toC) * (i / CURVE_PIECES) ** 2;
    curve.push([constantMin * Math.log((fromC - floorC) / (celsiusHere - floorC)), celsiusHere]);
  }
  return curve;
}
