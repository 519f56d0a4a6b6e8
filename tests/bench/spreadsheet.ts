import { HyperFormula } from "hyperformula";
import { adapt, intentionOf } from "@/lib/calc/adapt";
import {
  brew,
  brewWithWater,
  type Ambient,
  type Equipment,
  type Ledger,
  type QuantityId,
  type Recipe,
} from "@/lib/calc/ledger";
import { kilograms } from "@/lib/calc/units";
import { garageKettle } from "../support/brewing-fixtures";
import { sixBySix } from "./six-by-six";
import type { Column } from "./cell-column";
import { KETTLE_INPUTS, ledgerCells, type KettleInput } from "./spreadsheet-cells";

/** A kettle with the recipe as it was adapted to it. */
interface Pair {
  readonly recipe: Recipe;
  readonly equipment: Equipment;
  readonly ambient: Ambient;
  readonly mashWaterKg: number;
  readonly spargeKg: number;
}

const COMPARED: readonly (readonly [label: string, quantity: QuantityId])[] = [
  ["fermenterL", "fermenter.volume"],
  ["postBoil P", "fermenter.originalExtract"],
  ["lauterEfficiency", "lauter.efficiency"],
  ["bitterness", "fermenter.bitterness"],
  ["colour", "fermenter.colour"],
  ["boilHeatMin", "kettle.heatingTime"],
  ["chillMin", "stand.chillTime"],
  ["mashPh", "mash.ph"],
  ["converted", "mash.conversion"],
  ["attenuation", "fermenter.attenuation"],
  ["preBoilHot", "kettle.preBoil"],
  ["alcohol", "package.alcohol"],
];

/** The cells take a minute of the mash and a twelfth of a chill at a time, and hold to the ledger within this. */
const AGREEMENT = 0.03;

function inputsOf({ recipe, equipment, mashWaterKg, spargeKg }: Pair): Readonly<Record<KettleInput, number>> {
  const { kettle, lauter, chiller, hopAbsorption } = equipment;
  const hopsKg = recipe.hops.reduce((sum, hop) => sum + (hop.use === "dry" ? 0 : hop.grams / 1000), 0);
  return {
    mashWaterKg,
    spargeKg,
    absorption: lauter.absorption.value,
    bypass: lauter.bypass.value,
    conversion: lauter.conversion.value,
    boilOff: kettle.boilOff.value,
    trubAndHoses: kettle.trub.value + kettle.transfer.value + hopAbsorption.value * hopsKg,
    powerW: kettle.ratedPower * (kettle.supplyVoltage / kettle.ratedVoltage) ** 2 * kettle.heatShare.value,
    lossCoefficient: kettle.lossCoefficient.value,
    conductance: chiller.conductance.value,
  };
}

function ledgerOf(pair: Pair): Ledger {
  const water = { mashWaterKg: kilograms(pair.mashWaterKg), spargeKg: kilograms(pair.spargeKg) };
  const outcome = brewWithWater({ ...pair, ...water });
  if (!outcome.ok) throw new Error(outcome.reason);
  return outcome.ledger;
}

/** Computes one pair in the spreadsheet and reads all that a member would look at. */
function calculate(engine: HyperFormula, column: Column, pair: Pair): readonly unknown[] {
  const inputs = inputsOf(pair);
  engine.batch(() => {
    for (const input of KETTLE_INPUTS) {
      engine.setCellContents({ sheet: 0, row: column.row(input), col: 0 }, inputs[input]);
    }
    pair.recipe.fermentables.forEach((row, i) => {
      engine.setCellContents({ sheet: 0, row: column.row(`kg ${String(i)}`), col: 0 }, row.kg);
    });
    pair.recipe.hops.forEach((hop, i) => {
      engine.setCellContents({ sheet: 0, row: column.row(`grams ${String(i)}`), col: 0 }, hop.grams);
    });
  });
  return COMPARED.map(([label]) => engine.getCellValue({ sheet: 0, row: column.row(label), col: 0 }));
}

function agree(engine: HyperFormula, column: Column, pair: Pair): void {
  const { quantities } = ledgerOf(pair);
  const cells = calculate(engine, column, pair);
  COMPARED.forEach(([label, id], i) => {
    const ratio = Number(cells[i]) / (quantities[id] ?? NaN);
    if (!(Math.abs(ratio - 1) < AGREEMENT)) {
      throw new Error(`the spreadsheet's ${label} is ${String(ratio)} times the ledger's`);
    }
  });
}

/** The quickest of many rounds: what else the machine does adds to a round and never takes from it. */
function perPairUs(pairs: readonly Pair[], task: (pair: Pair) => void): number {
  let quickest = Infinity;
  const until = performance.now() + 2500;
  while (performance.now() < until) {
    const start = performance.now();
    for (const pair of pairs) task(pair);
    quickest = Math.min(quickest, (1000 * (performance.now() - start)) / pairs.length);
  }
  return quickest;
}

/** The recipe on every kettle that it fits. */
function pairsOf(kettles: readonly Equipment[], ambient: Ambient): Pair[] {
  const written = brew({ recipe: sixBySix, equipment: garageKettle, ambient });
  if (!written.ok) throw new Error(written.reason);
  const intention = intentionOf({ recipe: sixBySix, ledger: written.ledger });
  return kettles.flatMap((equipment) => {
    const outcome = adapt({ intention, equipment, ambient, hold: { intoFermenter: null } });
    if (!outcome.ok) return [];
    const { recipe, ledger } = outcome;
    const water = (litres: number | null): number => (litres ?? 0) * 0.998204;
    const { quantities } = ledger;
    const mashWaterKg = water(quantities["water.mash"]);
    return [{ recipe, equipment, ambient, mashWaterKg, spargeKg: water(quantities["water.sparge"]) }];
  });
}

/** Prints how much faster the library is than a general spreadsheet engine with the same forward ledger in its cells. */
export function benchSpreadsheet(kettles: readonly Equipment[], ambient: Ambient): void {
  const pairs = pairsOf(kettles, ambient);
  const column = ledgerCells(sixBySix, garageKettle, ambient);
  const engine = HyperFormula.buildFromArray(column.sheet(), { licenseKey: "gpl-v3" });
  for (const pair of pairs.slice(0, 20)) agree(engine, column, pair);
  const ledgerUs = perPairUs(pairs, ledgerOf);
  const sheetUs = perPairUs(pairs, (pair) => calculate(engine, column, pair));
  const cells = String(column.sheet().length);
  console.log(
    `spreadsheet engine    ${sheetUs.toFixed(0)} µs for one recipe on one kettle in ${cells} cells, ` +
      `the ledger ${ledgerUs.toFixed(0)} µs: ${(sheetUs / ledgerUs).toFixed(1)} times faster`,
  );
}
