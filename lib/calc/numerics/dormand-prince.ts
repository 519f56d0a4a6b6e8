/** Right-hand side of y′ = f(t, y): writes the slopes into `slopes`. */
export type Slopes = (t: number, y: Float64Array, slopes: Float64Array) => void;

/**
 * One step of the Runge–Kutta pair 5(4) of Dormand and Prince, on arrays that are kept from step to step.
 *
 * The seventh slope is taken at the new point, so it opens the next step.
 *
 * @source Dormand and Prince 1980, J. Comput. Appl. Math. 6:19, table 2 (docs/sources.md#dormand-prince-1980)
 */
export class DormandPrince {
  /** The new point, of fifth order. */
  readonly next: Float64Array;
  /** Difference between the fifth- and the fourth-order result. */
  readonly error: Float64Array;
  readonly k1: Float64Array;
  readonly k7: Float64Array;
  private readonly k2: Float64Array;
  private readonly k3: Float64Array;
  private readonly k4: Float64Array;
  private readonly k5: Float64Array;
  private readonly k6: Float64Array;
  private readonly stage: Float64Array;

  constructor(
    private readonly slopes: Slopes,
    private readonly size: number,
  ) {
    const array = (): Float64Array => new Float64Array(size);
    this.next = array();
    this.error = array();
    this.stage = array();
    this.k1 = array();
    this.k2 = array();
    this.k3 = array();
    this.k4 = array();
    this.k5 = array();
    this.k6 = array();
    this.k7 = array();
  }

  /** Steps from (t, y) by h; `k1` must hold the slopes at (t, y). */
  step(t: number, y: Float64Array, h: number): void {
    const { k1, k2, k3, k4, k5, k6, k7, next, error } = this;
    this.moveTo(y, h, 1 / 5, 0, 0, 0, 0);
    this.slopes(t + h / 5, this.stage, k2);
    this.moveTo(y, h, 3 / 40, 9 / 40, 0, 0, 0);
    this.slopes(t + (3 * h) / 10, this.stage, k3);
    this.moveTo(y, h, 44 / 45, -56 / 15, 32 / 9, 0, 0);
    this.slopes(t + (4 * h) / 5, this.stage, k4);
    this.moveTo(y, h, 19372 / 6561, -25360 / 2187, 64448 / 6561, -212 / 729, 0);
    this.slopes(t + (8 * h) / 9, this.stage, k5);
    this.moveTo(y, h, 9017 / 3168, -355 / 33, 46732 / 5247, 49 / 176, -5103 / 18656);
    this.slopes(t + h, this.stage, k6);
    for (let i = 0; i < this.size; i++) {
      next[i] =
        at(y, i) +
        h *
          ((35 / 384) * at(k1, i) +
            (500 / 1113) * at(k3, i) +
            (125 / 192) * at(k4, i) -
            (2187 / 6784) * at(k5, i) +
            (11 / 84) * at(k6, i));
    }
    this.slopes(t + h, next, k7);
    for (let i = 0; i < this.size; i++) {
      error[i] =
        h *
        ((71 / 57600) * at(k1, i) -
          (71 / 16695) * at(k3, i) +
          (71 / 1920) * at(k4, i) -
          (17253 / 339200) * at(k5, i) +
          (22 / 525) * at(k6, i) -
          (1 / 40) * at(k7, i));
    }
  }

  private moveTo(y: Float64Array, h: number, a1: number, a2: number, a3: number, a4: number, a5: number): void {
    const { k1, k2, k3, k4, k5, stage } = this;
    for (let i = 0; i < this.size; i++) {
      stage[i] = at(y, i) + h * (a1 * at(k1, i) + a2 * at(k2, i) + a3 * at(k3, i) + a4 * at(k4, i) + a5 * at(k5, i));
    }
  }
}

const at = (array: Float64Array, i: number): number => array[i] ?? NaN;
