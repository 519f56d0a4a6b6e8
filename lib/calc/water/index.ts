export { IONS, type Ion, type Ions } from "./ions";
export { SALTS, type Salt, type SaltGrams } from "./salts";
export { ACIDS, ACID_SOLUTIONS, type Acid, type AcidSolution } from "./acids";
export { acidFor, type AcidFor, type MashToAcidify } from "./acid-for";
export { acidMilliequivalents } from "./acid-milliequivalents";
export type { AcidToReach } from "./acid-to-reach";
export { addIons } from "./add-ions";
export { BICARBONATE_RANGE, alkalinityFromBicarbonate } from "./alkalinity-from-bicarbonate";
export { ALKALINE_PH_RANGE, alkalinityNeutralised } from "./alkalinity-neutralised";
export { ALKALINITY_RANGE, bicarbonateFromAlkalinity } from "./bicarbonate-from-alkalinity";
export { blendWaters, type WaterPart } from "./blend-waters";
export { GERMAN_DEGREES_RANGE, calciumCarbonateFromGermanDegrees } from "./calcium-carbonate-from-german-degrees";
export { CARBONATE_TEMPERATURE_RANGE, carbonateConstants, type CarbonateConstants } from "./carbonate-constants";
export { carbonateFractions, type CarbonateFractions } from "./carbonate-fractions";
export { chargeBalance, type ChargeBalance } from "./charge-balance";
export { checkAnalysis, type AnalysisCheck } from "./check-analysis";
export { dilutionFor, type Dilution } from "./dilution-for";
export { germanDegrees, type GermanDegrees } from "./german-degrees";
export { germanDegreesFromCalciumCarbonate } from "./german-degrees-from-calcium-carbonate";
export { HARD_WATER_RANGE, hardness } from "./hardness";
export { ionsFromAcids, type AcidAddition } from "./ions-from-acids";
export { TREATED_WATER_RANGE, ionsFromSalts } from "./ions-from-salts";
export { LIQUOR_PH_RANGE, type Liquor } from "./liquor";
export { MALT_KINDS, maltAcidity, type MaltAcidity, type MaltKind } from "./malt-acidity";
export { maltKindFromColour, type MaltKindGuess } from "./malt-kind-from-colour";
export { mashPhAtTemperature } from "./mash-ph-at-temperature";
export { MASH_PH_SPAN, mashPh, type Mash, type MashPh, type ProtonTerms } from "./mash-ph";
export {
  bufferingCapacity,
  type MashedMalt,
  type MilliequivalentsPerKilogramPh,
  type TitrationCurve,
} from "./mashed-malt";
export { WATER_PH_SPAN, phOfWater, type PhOfWater } from "./ph-of-water";
export { KOLBACH_REACTION, type HardnessReaction } from "./proton-balance";
export { residualAlkalinity, type ResidualAlkalinity } from "./residual-alkalinity";
export { MOST_OF_SALT, saltsFor, type MixedWater, type SaltsFor, type WaterWish } from "./salts-for";
export { spargeAcidFor } from "./sparge-acid-for";
export { sulfateToChloride, type SulfateToChloride } from "./sulfate-to-chloride";
