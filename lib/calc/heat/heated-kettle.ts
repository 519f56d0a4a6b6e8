import { findRoot } from "../numerics";
import { seconds as secondsOf } from "../units";
import { antoinePressure, antoineTemperature } from "./antoine";
import { evaporativeLoss } from "./evaporation-flux";
import { latentHeatOf } from "./latent-heat";
import { HeatingPath, PathPoint, STEPS } from "./heating-path";
import { STILL_AIR_SPEED } from "./still-air";
import { heatCapacityAtZero, heatCapacitySlope } from "./wort-heat-capacity";

/** Surplus below this share of the power counts as none: the last kelvin would take for ever. */
const LEAST_SURPLUS = 1e-9;

interface Kettle {
  readonly massKg: number;
  readonly plato: number;
  readonly vesselHeatCapacity: number;
  readonly powerW: number;
  readonly lossCoefficient: number;
  readonly openAreaM2: number;
  readonly ambientC: number;
  readonly relativeHumidity: number;
}

/** A kettle on its way up: integrates time and mass over temperature. */
export class HeatedKettle {
  seconds = 0;
  massKg: number;
  private readonly heatAtZero: number;
  private readonly heatSlope: number;
  /** Heat that evaporation takes for each kPa of vapour pressure above the air's, W. */
  private readonly wattsPerKPa: number;
  private readonly airKPa: number;
  private readonly dewPointC: number;

  constructor(private readonly kettle: Kettle) {
    this.massKg = kettle.massKg;
    this.heatAtZero = heatCapacityAtZero(kettle.plato);
    this.heatSlope = heatCapacitySlope(kettle.plato);
    this.wattsPerKPa = kettle.openAreaM2 * evaporativeLoss(1, STILL_AIR_SPEED);
    this.airKPa = kettle.relativeHumidity * antoinePressure(kettle.ambientC);
    this.dewPointC = this.airKPa > 0 ? antoineTemperature(this.airKPa) : -Infinity;
  }

  // Whether power is left over at a temperature, and with it at every lower one.
  heatsTo(celsius: number): boolean {
    return this.surplus(celsius) > LEAST_SURPLUS * this.kettle.powerW;
  }

  // Heats from one temperature to another; false when it boils dry or outlasts what counts as time.
  run(fromC: number, toC: number): boolean {
    // Evaporation sets in at the dew point, and a step must not straddle the kink.
    const kinkC = this.wattsPerKPa > 0 ? Math.min(toC, Math.max(fromC, this.dewPointC)) : toC;
    if (kinkC > fromC) this.stretch(fromC, kinkC, 0);
    if (toC > kinkC) this.stretch(kinkC, toC, this.wattsPerKPa);
    return this.massKg >= 0 && this.seconds <= secondsOf.range.max;
  }

  // Temperature where the surplus vanishes, or the start where nothing moves.
  ceiling(fromC: number, toC: number): number {
    const { powerW, lossCoefficient, ambientC } = this.kettle;
    if (this.wattsPerKPa === 0) return lossCoefficient === 0 ? fromC : ambientC + powerW / lossCoefficient;
    const falling = this.surplus(fromC) <= 0;
    const found = findRoot({
      f: (celsius) => this.surplus(celsius),
      low: falling ? Math.min(fromC, Math.max(this.dewPointC, -30)) : fromC,
      high: falling ? fromC : toC,
      tolerance: 1e-9,
    });
    return found.ok ? found.x : fromC;
  }

  private evaporation(celsius: number, wattsPerKPa: number): number {
    return wattsPerKPa === 0 ? 0 : wattsPerKPa * (antoinePressure(celsius) - this.airKPa);
  }

  private drySurplus(celsius: number): number {
    const { powerW, lossCoefficient, ambientC } = this.kettle;
    return powerW - lossCoefficient * (celsius - ambientC);
  }

  private surplus(celsius: number): number {
    return this.drySurplus(celsius) - Math.max(0, this.evaporation(celsius, this.wattsPerKPa));
  }

  // Runge–Kutta of fourth order. Equal steps go with equal ratios of the surplus, straight-lined between both ends: the
  // last kelvins below a stall take longest and so get the most steps.
  private stretch(fromC: number, toC: number, wattsPerKPa: number): void {
    const surplusAt = (c: number): number => this.drySurplus(c) - this.evaporation(c, wattsPerKPa);
    const path = new HeatingPath(fromC, toC, wattsPerKPa, surplusAt(toC) / surplusAt(fromC));
    const { vesselHeatCapacity } = this.kettle;
    const h = 1 / STEPS;
    let start = new PathPoint();
    const middle = new PathPoint();
    let end = new PathPoint();
    this.place(start, path);
    for (let i = 0; i < STEPS; i++) {
      path.halfStep();
      this.place(middle, path);
      path.halfStep();
      this.place(end, path);
      const m = this.massKg;
      const k1 = start.pace * (start.specificHeat * m + vesselHeatCapacity);
      const m2 = m - (h / 2) * start.evaporatedKgPerS * k1;
      const k2 = middle.pace * (middle.specificHeat * m2 + vesselHeatCapacity);
      const m3 = m - (h / 2) * middle.evaporatedKgPerS * k2;
      const k3 = middle.pace * (middle.specificHeat * m3 + vesselHeatCapacity);
      const m4 = m - h * middle.evaporatedKgPerS * k3;
      const k4 = end.pace * (end.specificHeat * m4 + vesselHeatCapacity);
      this.seconds += (h / 6) * (k1 + 2 * (k2 + k3) + k4);
      this.massKg -=
        (h / 6) * (start.evaporatedKgPerS * k1 + 2 * middle.evaporatedKgPerS * (k2 + k3) + end.evaporatedKgPerS * k4);
      const last = start;
      start = end;
      end = last;
    }
  }

  private place(point: PathPoint, path: HeatingPath): void {
    const celsius = path.celsius();
    const evaporationW = this.evaporation(celsius, path.wattsPerKPa);
    point.pace = path.slopeK() / (this.drySurplus(celsius) - evaporationW);
    point.specificHeat = this.heatAtZero + this.heatSlope * celsius;
    point.evaporatedKgPerS = evaporationW === 0 ? 0 : evaporationW / latentHeatOf(celsius);
  }
}
