export type {
  Fermentable,
  FermentableKind,
  HopAddition,
  HopStand,
  HopUse,
  MaltAcidity,
  MashAcid,
  MashStep,
  Packaging,
  PrimingSugar,
  Recipe,
  WaterTreatment,
  Yeast,
} from "./recipe";
export type {
  Ambient,
  Chiller,
  Equipment,
  Fermenter,
  Figure,
  FigureOrigin,
  Kettle,
  KettleDipStick,
  Lauter,
  MashVessel,
  SpargeMethod,
} from "./equipment";
export {
  LIMIT_IDS,
  type FermentableResult,
  type HopResult,
  type Ledger,
  type LedgerOutcome,
  type Limit,
  type LimitId,
  type Phase,
  type PhaseName,
  type StationBalance,
  type Stream,
} from "./ledger";
export {
  QUANTITIES,
  QUANTITY_IDS,
  STATIONS,
  type Dimension,
  type QuantityId,
  type Station,
} from "./quantity-catalogue";
export { brew, brewWithWater } from "./brew";
export { costOf, PRICE_RANGE, type Cost, type Prices } from "./cost-of";
export { stationAccounts, type StationAccount, type StreamAccount } from "./station-accounts";
export { mashCurveOf } from "./mash-curve-of";
export { CORRELATION_RANGE, intervals, type Interval, type Intervals } from "./interval";
export { differenceIntervals } from "./difference-intervals";
export { DRAWS_RANGE, sampledIntervals } from "./sampled-intervals";
export type { FigureCorrelation, FigureName } from "./figure-correlation";
export { FIGURES, type FigurePlace } from "./figures";
