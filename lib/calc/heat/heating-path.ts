/** Whole steps from one end of a path to the other. */
export const STEPS = 16;

/** What the path needs to know at one temperature. */
export class PathPoint {
  /** Progress along the path per unit of heat capacity, s·K/J. */
  pace = 0;
  specificHeat = 0;
  evaporatedKgPerS = 0;
}

/**
 * The way from one temperature to another, walked in half steps that follow the falling surplus.
 *
 * `ratio` is the surplus at the end over that at the start.
 */
export class HeatingPath {
  private s = 0;
  private power = 1;
  private readonly curved: boolean;
  private readonly fall: number;
  private readonly powerStep: number;
  private readonly spanK: number;

  constructor(
    private readonly fromC: number,
    toC: number,
    readonly wattsPerKPa: number,
    ratio: number,
  ) {
    this.fall = Math.log(ratio);
    this.curved = Math.abs(this.fall) > 1e-3;
    this.powerStep = Math.exp(this.fall / (2 * STEPS));
    this.spanK = this.curved ? (toC - fromC) / (ratio - 1) : toC - fromC;
  }

  halfStep(): void {
    this.s += 0.5 / STEPS;
    this.power *= this.powerStep;
  }

  celsius(): number {
    return this.fromC + this.spanK * (this.curved ? this.power - 1 : this.s);
  }

  // Temperature gained over the whole path at the present pace.
  slopeK(): number {
    return this.curved ? this.spanK * this.fall * this.power : this.spanK;
  }
}
