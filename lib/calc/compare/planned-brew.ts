import { waterDensity } from "../gravity";
import type { Ledger, QuantityId, Station, Stream } from "../ledger";
import { celsius } from "../units";

/** What the plan says that nobody measures again; kg and L at 20 °C. */
export interface PlannedBrew {
  readonly boilC: number;
  readonly potentialKg: number;
  readonly maltWaterKg: number;
  readonly addedKg: number;
  readonly addedExtractKg: number;
  readonly topUpKg: number;
  readonly mashWaterL: number;
  readonly spargeL: number;
  readonly dissolvedKg: number;
  readonly lauterLostKg: number;
  readonly retainedKg: number;
  readonly evaporatedKg: number;
  readonly leftKg: number;
  readonly beerLeftL: number;
  /** Litres of beer for each litre of wort. */
  readonly beerPerWort: number;
  /** Apparent attenuation, fraction. */
  readonly attenuation: number;
}

const WATER_20 = waterDensity(celsius(20));

/** Below the sea wort boils a little hotter than densities are known for; its volume counts at 100 °C. */
const HOTTEST_C = 100;

/**
 * Reads from a ledger what the balances of the measured brew need beside the readings.
 *
 * @returns Masses, volumes and the boiling point as planned.
 */
export function plannedBrew(ledger: Ledger): PlannedBrew {
  const value = (id: QuantityId): number => ledger.quantities[id] ?? 0;
  const mashWort = streamOf(ledger, "mash", "out", "wort in the mash");
  const mashWater = streamOf(ledger, "mash", "in", "mash water");
  const retained = streamOf(ledger, "lauter", "lost", "wort kept by grain and dead space");
  const added = streamOf(ledger, "kettle", "in", "sugar and malt extract");
  const beer = streamOf(ledger, "package", "in", "beer");
  const beerLeft = streamOf(ledger, "package", "lost", "left with the yeast");
  const packagedKg = beer.kg - beerLeft.kg;
  const beerLeftL = packagedKg > 0 ? (value("package.volume") * beerLeft.kg) / packagedKg : 0;
  const wortL = value("fermenter.volume");
  return {
    boilC: Math.min(HOTTEST_C, ledger.quantities["kettle.boilingPoint"] ?? HOTTEST_C),
    potentialKg: value("mash.potential"),
    maltWaterKg: mashWort.kg - mashWort.extractKg - mashWater.kg,
    addedKg: added.kg,
    addedExtractKg: added.extractKg,
    topUpKg: value("water.topUp") * WATER_20,
    mashWaterL: value("water.mash"),
    spargeL: value("water.sparge"),
    dissolvedKg: value("mash.dissolved"),
    lauterLostKg: retained.extractKg,
    retainedKg: retained.kg,
    evaporatedKg: streamOf(ledger, "kettle", "lost", "steam").kg,
    leftKg: streamOf(ledger, "stand", "lost", "left with trub, hops and hoses").kg,
    beerLeftL,
    beerPerWort: wortL > 0 ? (value("package.volume") + beerLeftL) / wortL : 1,
    attenuation: value("fermenter.attenuation"),
  };
}

function streamOf(ledger: Ledger, station: Station, side: "in" | "lost" | "out", name: string): Stream {
  const balance = ledger.balances.find((each) => each.station === station);
  return balance?.[side].find((stream) => stream.name === name) ?? { name, kg: 0, extractKg: 0 };
}
