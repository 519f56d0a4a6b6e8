import { amylaseRates, HYDROLYSIS_AT_65, type AmylaseRates } from "./amylase-rates";
import type { MashCurve } from "./mash-curve";

/** Longest step of all and while β-amylase dies quickly, min. */
const LONGEST_MIN = 8;
const STEP_MIN = 1;
/** Largest rise within a step, K. */
const STEP_K = 1.5;
/** Share of an enzyme (as an exponent) that may die within a step; where it dies slowly, steps longer than a minute. */
const STEP_DEATH = 0.3;
const SLOW_DEATH = 0.06;
/** A shorter stretch is a jump of temperature. */
const JUMP_MIN = 1e-9;
/** An enzyme of which less than this share is left no longer shortens the steps. */
const GONE = 1e-3;

/**
 * Starch on its way to sugar, as shares of all starch in the grist.
 *
 * Granules open up to the share that their temperature allows, at first order. α- and β-amylase turn open starch into
 * dextrin and sugar and dextrin into sugar, each in proportion to what is left of it; both die at first order. Within a
 * step temperature and enzymes stand at their mean, so that the chain starch → dextrin → sugar has a closed form.
 */
export class ConvertingMash {
  closedStarch = 1;
  openStarch = 0;
  dextrin = 0;
  sugar = 0;
  alpha = 1;
  beta = 1;

  follow(curve: MashCurve): void {
    let before = curve[0];
    for (const point of curve) {
      if (before !== undefined && point[0] - before[0] > JUMP_MIN) this.line(before[1], point[1], point[0] - before[0]);
      before = point;
    }
  }

  get converted(): number {
    return this.dextrin + this.sugar;
  }

  private line(fromC: number, toC: number, minutes: number): void {
    const slope = (toC - fromC) / minutes;
    const longest = slope === 0 ? minutes : STEP_K / Math.abs(slope);
    let at = 0;
    // The step is measured by the middle of the one before, which is near enough.
    let rates = amylaseRates(fromC);
    while (at < minutes) {
      const left = minutes - at;
      const step = evenly(left, Math.min(longest, this.stepAt(rates)));
      if (slope !== 0) rates = amylaseRates(fromC + slope * (at + step / 2));
      this.step(rates, step);
      at = step === left ? minutes : at + step;
    }
  }

  private stepAt({ alphaDeath, betaDeath }: AmylaseRates): number {
    let step = LONGEST_MIN;
    if (this.beta > GONE)
      step = Math.min(step, Math.max(SLOW_DEATH / betaDeath, Math.min(STEP_MIN, STEP_DEATH / betaDeath)));
    if (this.alpha > GONE) step = Math.min(step, STEP_DEATH / alphaDeath);
    return step;
  }

  private step(rates: AmylaseRates, minutes: number): void {
    const { gelatinising, closedShare, pace } = rates;
    const { starchByAlpha, starchByBeta, sugarShareByAlpha, dextrinByAlpha, dextrinByBeta } = HYDROLYSIS_AT_65;
    const alphaLives = Math.exp(-rates.alphaDeath * minutes);
    const betaLives = Math.exp(-rates.betaDeath * minutes);
    const alpha = pace * this.alpha * meanOfDecay(rates.alphaDeath * minutes, alphaLives);
    const beta = pace * this.beta * meanOfDecay(rates.betaDeath * minutes, betaLives);
    const dextrinRate = dextrinByAlpha * alpha + dextrinByBeta * beta;
    const starchRate = apart(starchByAlpha * alpha + starchByBeta * beta, gelatinising);
    const toDextrin = (1 - sugarShareByAlpha) * starchByAlpha * alpha;

    const closedLeft = Math.exp(-gelatinising * minutes);
    const starchLeft = Math.exp(-starchRate * minutes);
    const dextrinLeft = Math.exp(-dextrinRate * minutes);
    const fromStarch = handedOn((starchRate - dextrinRate) * minutes, starchLeft, dextrinLeft) * minutes;
    const straightOn = handedOn((gelatinising - dextrinRate) * minutes, closedLeft, dextrinLeft) * minutes;
    const fromGranules = (straightOn - fromStarch) / (starchRate - gelatinising);
    const toStarch = (closedLeft - starchLeft) / (starchRate - gelatinising);

    const opening = Math.max(0, this.closedStarch - closedShare);
    const openingRate = gelatinising * opening;
    const opened = opening * (1 - closedLeft);
    const inPlay = opened + this.openStarch + this.dextrin;
    this.closedStarch -= opened;
    this.dextrin = this.dextrin * dextrinLeft + toDextrin * (this.openStarch * fromStarch + openingRate * fromGranules);
    this.openStarch = this.openStarch * starchLeft + openingRate * toStarch;
    this.sugar += inPlay - this.openStarch - this.dextrin;
    this.alpha *= alphaLives;
    this.beta *= betaLives;
  }
}

// Two equal steps rather than a whole one and a sliver.
const evenly = (left: number, step: number): number => (left <= step ? left : left < 2 * step ? left / 2 : step);

/** Below this a difference of exponentials has lost too many digits, and three terms of its series have not. */
const SMALL_EXPONENT = 1e-4;

// Mean of e^(−x) over a step that it falls through, from its value at the end.
const meanOfDecay = (exponent: number, atEnd: number): number =>
  exponent < SMALL_EXPONENT ? 1 - exponent / 2 : (1 - atEnd) / exponent;

// (e^(−x) − e^(−y)) / (y − x): what a stage that decays by x hands on to the next, which decays by y. Takes x − y.
const handedOn = (exponent: number, xLeft: number, yLeft: number): number =>
  Math.abs(exponent) < SMALL_EXPONENT ? yLeft * (1 - exponent / 2) : (yLeft - xLeft) / exponent;

// The closed form divides by the difference of two rates; a part in ten thousand apart is as good as equal.
const apart = (rate: number, other: number): number =>
  Math.abs(rate - other) < 1e-4 * other ? other * (1 + 1e-4) : rate;
