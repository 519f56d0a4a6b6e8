import type { Fermentable, FermentableKind } from "@/lib/calc/ledger";
import { fraction, type Ebc, type Fraction, type Kilograms } from "@/lib/calc/units";
import { typicalNamed } from "./known-names";
import type { ReadingLog } from "./report";

/** Yield of a laboratory mash is of the dry grain; a potential, and all that is no grain, is of the weight as it is. */
export interface StatedYield {
  readonly of: "dry substance" | "weight";
  readonly share: Fraction;
}

/** A usual malt from a dry store. Common practice, no source. */
const USUAL_MOISTURE = fraction(0.04);
/** A usual liquid extract. Common practice, no source. */
const SYRUP_MOISTURE = fraction(0.2);

interface StatedFermentable {
  readonly name: string;
  readonly kind: FermentableKind;
  readonly kg: Kilograms;
  readonly colour: Ebc;
  readonly yield: StatedYield;
  readonly moisture: Fraction | null;
  /** A liquid extract, which is of water as much as a powder is not. */
  readonly isSyrup: boolean;
  readonly station: Fermentable["station"];
  readonly log: ReadingLog;
}

/** A row of the grist. What no standard states of it comes from the usual ingredient of the same name, where there is one. */
export function fermentableOf(stated: StatedFermentable): Fermentable {
  const { name, kind, kg, colour, station, log } = stated;
  const typical = typicalNamed(name);
  const usual = typical !== null && typical.kind === kind ? typical : null;
  const isGrain = kind === "malt" || kind === "adjunct";
  const moisture = stated.moisture ?? guessedMoisture(stated, usual?.moisture ?? null, isGrain);
  const isOfWeight = stated.yield.of === "weight" || !isGrain;
  const extract = isOfWeight ? fraction(Math.min(1, stated.yield.share / (1 - moisture))) : stated.yield.share;
  if (kind === "sugar" && usual === null) log.derive(`${name} is taken as wholly fermentable.`);
  return {
    name,
    kind,
    kg,
    colour,
    station,
    extract,
    moisture,
    fermentability: usual === null ? (kind === "sugar" ? fraction(1) : null) : usual.fermentability,
    acidity: usual?.acidity ?? null,
  };
}

function guessedMoisture(
  { name, log, isSyrup, yield: { share } }: StatedFermentable,
  usual: Fraction | null,
  isGrain: boolean,
): Fraction {
  if (!isGrain) {
    const guess = usual ?? (isSyrup ? SYRUP_MOISTURE : null);
    return guess !== null && share <= 1 - guess ? guess : fraction(0);
  }
  const guess = usual ?? USUAL_MOISTURE;
  log.derive(`Moisture of ${name} ${String(Number((100 * guess).toPrecision(3)))} %, since the file states none.`);
  return guess;
}
