export { type PooledUnit } from "./between-units";
export { BINOMIAL_RANGE, binomialUpperTail } from "./binomial-upper-tail";
export { CHANGE_POINT_RANGE, type ChangePoint, type ChangePointOutcome, changePoint } from "./change-point";
export { changesByOrder, SEQUENCES_RANGE } from "./changes-by-order";
export { CHI_SQUARED_QUANTILE_RANGE, chiSquaredQuantile } from "./chi-squared-quantile";
export { CHI_SQUARED_RANGE, chiSquaredUpperTail } from "./chi-squared-upper-tail";
export { describe, type Description } from "./describe";
export { F_RANGE, fUpperTail } from "./f-upper-tail";
export { GRUBBS_RANGE, type Grubbs, grubbs } from "./grubbs";
export { LINE_POINTS_RANGE, leastSquaresLine, type StraightLine } from "./least-squares-line";
export { type MedianDeviation, medianAbsoluteDeviation } from "./median-absolute-deviation";
export { type ModifiedZ, modifiedZ } from "./modified-z";
export { NORMAL_DEVIATE_RANGE, normalCdf } from "./normal-cdf";
export { NORMAL_PROBABILITY_RANGE, normalQuantile } from "./normal-quantile";
export { ANOVA_GROUPS_RANGE, type OneWayAnova, oneWayAnova } from "./one-way-anova";
export { PAIRS_RANGE, type PairedDifference, pairedDifference } from "./paired-difference";
export { type PartialPooling, partialPooling, POOLING_RANGE } from "./partial-pooling";
export { RANDOM_EFFECTS_UNITS_RANGE, type RandomEffects, randomEffects } from "./random-effects";
export { BETA_RANGE, regularisedIncompleteBeta } from "./regularised-incomplete-beta";
export { SAMPLE_VALUE_RANGE } from "./sample";
export { T_QUANTILE_RANGE, studentTQuantile } from "./student-t-quantile";
export { STUDENT_T_RANGE, studentTUpperTail } from "./student-t-upper-tail";
export {
  PARTITION_RANGE,
  type PartitionFactor,
  type PartitionObservation,
  type VarianceComponent,
  type VariancePartition,
  variancePartition,
} from "./variance-partition";
export { Z80 } from "./z80";
