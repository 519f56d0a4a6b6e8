import { HyperFormula } from "hyperformula";
import { brewWithWater, type Ambient, type Equipment, type Ledger, type QuantityId } from "@/lib/calc/ledger";
import { kilograms } from "@/lib/calc/units";
import { sixBySix } from "./six-by-six";
import { KETTLE_INPUTS, ledgerCells, type Column, type KettleInput } from "./spreadsheet-cells";

interface Pair {
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
];

/** The cells leave out what takes a solver, such as steam below boiling; they are held to 3 %, on fermentation set equal. */
const AGREEMENT = 0.03;

function inputsOf({ equipment, mashWaterKg, spargeKg }: Pair): Readonly<Record<KettleInput, number>> {
  const { kettle, lauter, chiller, hopAbsorption } = equipment;
  const hopsKg = sixBySix.hops.reduce((sum, hop) => sum + (hop.use === "dry" ? 0 : hop.grams / 1000), 0);
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
  const outcome = brewWithWater({ recipe: sixBySix, equipment: pair.equipment, ambient: pair.ambient, ...water });
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

function perPairUs(pairs: readonly Pair[], task: (pair: Pair) => void): number {
  const warmUntil = performance.now() + 500;
  for (let i = 0; performance.now() < warmUntil; i++) task(pairs[i % pairs.length] as Pair);
  const start = performance.now();
  let runs = 0;
  for (; performance.now() - start < 1500; runs++) task(pairs[runs % pairs.length] as Pair);
  return (1000 * (performance.now() - start)) / runs;
}

/** Prints how much faster the library is than a general spreadsheet engine with the same forward ledger in its cells. */
export function benchSpreadsheet(kettles: readonly Equipment[], ambient: Ambient): void {
  const first = kettles[0];
  if (first === undefined) throw new Error("no kettle to compute for");
  const column = ledgerCells(sixBySix, first, ambient);
  const engine = HyperFormula.buildFromArray(column.sheet(), { licenseKey: "gpl-v3" });
  const pairs = kettles.map((equipment) => ({ equipment, ambient, mashWaterKg: 15, spargeKg: 13 }));
  for (const pair of pairs.slice(0, 20)) agree(engine, column, pair);
  const sheetUs = perPairUs(pairs, (pair) => calculate(engine, column, pair));
  const ledgerUs = perPairUs(pairs, ledgerOf);
  const cells = String(column.sheet().length);
  console.log(
    `spreadsheet engine    ${sheetUs.toFixed(0)} µs for one kettle in ${cells} cells, ` +
      `the ledger ${ledgerUs.toFixed(0)} µs: ${(sheetUs / ledgerUs).toFixed(1)} times faster`,
  );
}
