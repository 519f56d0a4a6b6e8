export { defineQuantity, type Quantity, type QuantityMaker } from "./quantity";
export {
  attenuation,
  bar,
  billionCells,
  celsius,
  days,
  degreesBrix,
  degreesPlato,
  ebc,
  fraction,
  germanDegrees,
  grams,
  gramsPerLitre,
  ibu,
  joulesPerKelvin,
  joulesPerKilogramKelvin,
  kilocaloriesPerLitre,
  kilograms,
  kilogramsPerHour,
  kilogramsPerLitre,
  kilojoules,
  kilopascals,
  kilowattHours,
  litres,
  litresPerKilogram,
  litresPerMinute,
  lovibond,
  metres,
  metresPerSecond,
  milliequivalents,
  milliequivalentsPerKilogramPh,
  milliequivalentsPerLitre,
  milligramsPerLitre,
  millilitres,
  millionPerMlPlato,
  minutes,
  perMinute,
  percent,
  ph,
  pointsPerPoundGallon,
  seconds,
  specificGravity,
  squareMetres,
  srm,
  volts,
  volumesCo2,
  watts,
  wattsPerKelvin,
  type Bar,
  type BillionCells,
  type Celsius,
  type Days,
  type DegreesBrix,
  type DegreesPlato,
  type Ebc,
  type Fraction,
  type GermanDegrees,
  type Grams,
  type GramsPerLitre,
  type Ibu,
  type JoulesPerKelvin,
  type JoulesPerKilogramKelvin,
  type KilocaloriesPerLitre,
  type Kilograms,
  type KilogramsPerHour,
  type KilogramsPerLitre,
  type Kilojoules,
  type Kilopascals,
  type KilowattHours,
  type Litres,
  type LitresPerKilogram,
  type LitresPerMinute,
  type Lovibond,
  type Metres,
  type MetresPerSecond,
  type Milliequivalents,
  type MilliequivalentsPerKilogramPh,
  type MilliequivalentsPerLitre,
  type MilligramsPerLitre,
  type Millilitres,
  type MillionPerMlPlato,
  type Minutes,
  type PerMinute,
  type Percent,
  type Ph,
  type PointsPerPoundGallon,
  type Seconds,
  type SpecificGravity,
  type SquareMetres,
  type Srm,
  type Volts,
  type VolumesCo2,
  type Watts,
  type WattsPerKelvin,
} from "./quantities";
export { barFromPsi } from "./bar-from-psi";
export { celsiusFromFahrenheit } from "./celsius-from-fahrenheit";
export { ebcFromSrm } from "./ebc-from-srm";
export { fahrenheitFromCelsius } from "./fahrenheit-from-celsius";
export { feetFromMetres } from "./feet-from-metres";
export { gramsFromOunces } from "./grams-from-ounces";
export { gramsPerLitreFromOuncesPerUsGallon } from "./grams-per-litre-from-ounces-per-us-gallon";
export { imperialGallonsFromLitres } from "./imperial-gallons-from-litres";
export { kilogramsFromPounds } from "./kilograms-from-pounds";
export { kilopascalsFromPsi } from "./kilopascals-from-psi";
export { litresFromImperialGallons } from "./litres-from-imperial-gallons";
export { litresFromUsFluidOunces } from "./litres-from-us-fluid-ounces";
export { litresFromUsGallons } from "./litres-from-us-gallons";
export { litresFromUsQuarts } from "./litres-from-us-quarts";
export { litresPerKilogramFromQuartsPerPound } from "./litres-per-kilogram-from-quarts-per-pound";
export { litresPerMinuteFromUsGallonsPerMinute } from "./litres-per-minute-from-us-gallons-per-minute";
export { lovibondFromSrm } from "./lovibond-from-srm";
export { metresFromFeet } from "./metres-from-feet";
export { ouncesFromGrams } from "./ounces-from-grams";
export { ouncesPerUsGallonFromGramsPerLitre } from "./ounces-per-us-gallon-from-grams-per-litre";
export { poundsFromKilograms } from "./pounds-from-kilograms";
export { psiFromBar } from "./psi-from-bar";
export { psiFromKilopascals } from "./psi-from-kilopascals";
export { quartsPerPoundFromLitresPerKilogram } from "./quarts-per-pound-from-litres-per-kilogram";
export { srmFromEbc } from "./srm-from-ebc";
export { srmFromLovibond } from "./srm-from-lovibond";
export { usFluidOuncesFromLitres } from "./us-fluid-ounces-from-litres";
export { usGallonsFromLitres } from "./us-gallons-from-litres";
export { usGallonsPerMinuteFromLitresPerMinute } from "./us-gallons-per-minute-from-litres-per-minute";
export { usQuartsFromLitres } from "./us-quarts-from-litres";
export {
  fahrenheit,
  feet,
  imperialGallons,
  ounces,
  ouncesPerUsGallon,
  pounds,
  psi,
  quartsPerPound,
  usFluidOunces,
  usGallons,
  usGallonsPerMinute,
  usQuarts,
  type Fahrenheit,
  type Feet,
  type ImperialGallons,
  type Ounces,
  type OuncesPerUsGallon,
  type Pounds,
  type Psi,
  type QuartsPerPound,
  type UsFluidOunces,
  type UsGallons,
  type UsGallonsPerMinute,
  type UsQuarts,
} from "./us-quantities";
