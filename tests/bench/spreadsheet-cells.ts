import type { Ambient, Equipment, Recipe } from "@/lib/calc/ledger";
import { Column } from "./cell-column";
import { addAcidity, addEnzymes } from "./mash-cells";
import { addBalances, addWater } from "./report-cells";

/** What the cells know of a kettle: the figures that differ from member to member. */
export const KETTLE_INPUTS = [
  "mashWaterKg",
  "spargeKg",
  "absorption",
  "bypass",
  "conversion",
  "boilOff",
  "trubAndHoses",
  "powerW",
  "lossCoefficient",
  "conductance",
] as const;

export type KettleInput = (typeof KETTLE_INPUTS)[number];

/** Density at 20 °C over that of water and specific gravity in air, from extract. */
function addDensity(column: Column, name: string, plato: string): void {
  column.add(`${name} P`, plato);
  const p = `[${name} P]`;
  column.add(
    `${name} D`,
    `0.998204+0.999972*${p}*(0.0038570322+${p}*(0.000012788454+${p}*(0.000000063273059-${p}*0.00000000022384803)))`,
  );
  column.add(`${name} SG`, `([${name} D]-0.0012)/(0.998204-0.0012)`);
}

/** Heating at constant power against a loss in proportion to the warmth. */
function addHeating(column: Column, name: string, capacity: string, from: string, to: string): void {
  column.add(
    name,
    `-(${capacity})/[lossCoefficient]/60*LN(([powerW]-[lossCoefficient]*(${to}-[air]))/([powerW]-[lossCoefficient]*(${from}-[air])))`,
  );
}

/** The forward ledger as somebody would write it into a spreadsheet: water and grist in, beer out. */
export function ledgerCells(recipe: Recipe, equipment: Equipment, ambient: Ambient): Column {
  const column = new Column();
  for (const input of KETTLE_INPUTS) column.add(input, 1);
  column.add("air", ambient.air);
  addGrist(column, recipe);
  addMasses(column, equipment);
  addWater(column, recipe);
  addAcidity(column, recipe);
  addTimes(column, recipe, equipment, ambient);
  addEnzymes(column, recipe);
  addHops(column, recipe);
  addBeer(column, recipe, equipment);
  addBalances(column, recipe, equipment);
  return column;
}

function addGrist(column: Column, recipe: Recipe): void {
  recipe.fermentables.forEach((row, i) => {
    column.add(`kg ${String(i)}`, row.kg);
    column.add(`extract ${String(i)}`, row.extract);
    column.add(`moisture ${String(i)}`, row.moisture);
    column.add(`ebc ${String(i)}`, row.colour);
    column.add(`potential ${String(i)}`, `[kg ${String(i)}]*(1-[moisture ${String(i)}])*[extract ${String(i)}]`);
    column.add(`colour ${String(i)}`, `[kg ${String(i)}]*([ebc ${String(i)}]*12.7/25+0.76)/1.3546`);
  });
  const sum = (what: string): string => recipe.fermentables.map((_, i) => `[${what} ${String(i)}]`).join("+");
  column.add("grist", sum("kg"));
  column.add("maltWater", recipe.fermentables.map((_, i) => `[kg ${String(i)}]*[moisture ${String(i)}]`).join("+"));
  column.add("potential", sum("potential"));
  column.add("kgLovibond", sum("colour"));
  column.add("dissolved", "[potential]*[conversion]");
}

function addMasses(column: Column, equipment: Equipment): void {
  column.add("wort", "[mashWaterKg]+[maltWater]+[dissolved]");
  addDensity(column, "first", "100*[dissolved]/[wort]");
  column.add("retained", "[absorption]*[grist]");
  column.add("heldExtract", "[dissolved]*[retained]*[first D]/[wort]");
  column.add("keptExtract", "[heldExtract]*EXP(-[spargeKg]*(1-[bypass])/([retained]*0.998204))");
  addDensity(column, "kept", "100*[keptExtract]/([retained]*0.998204+[keptExtract]*0.38)");
  column.add("runOff", "[wort]+[spargeKg]-[retained]*[kept D]");
  column.add("runOffExtract", "[dissolved]-[keptExtract]");
  addDensity(column, "preBoil", "100*[runOffExtract]/[runOff]");
  column.add("evaporated", "[boilOff]");
  column.add("postBoil", "[runOff]-[evaporated]");
  addDensity(column, "postBoil", "100*[runOffExtract]/[postBoil]");
  column.add("left", `([trubAndHoses])*[postBoil D]`);
  column.add("fermenterKg", "[postBoil]-[left]");
  column.add("fermenterL", "[fermenterKg]/[postBoil D]");
  column.add("lauterEfficiency", "[runOffExtract]/[dissolved]");
  column.add("efficiency", "[runOffExtract]*[fermenterKg]/[postBoil]/[potential]");
  column.add("postBoilL", "[postBoil]/[postBoil D]");
  column.add("boilC", 100 - equipment.altitude / 300);
}

function addTimes(column: Column, recipe: Recipe, equipment: Equipment, ambient: Ambient): void {
  const { kettle, mash } = equipment;
  const [first, last] = [recipe.mash[0]?.celsius ?? 66, recipe.mash.at(-1)?.celsius ?? 76];
  column.add("strikeC", `${String(first)}+0.4*[grist]/[mashWaterKg]*(${String(first - ambient.grain)})`);
  const water = `([mashWaterKg]*4187+${String(kettle.heatCapacity)})`;
  addHeating(column, "strikeMin", water, String(ambient.tapWater), "[strikeC]");
  const masher = `(([mashWaterKg]+0.4*[grist])*4187+${String(kettle.heatCapacity + mash.heatCapacity)})`;
  addHeating(column, "stepMin", masher, String(first), String(last));
  const wort = `([runOff]*(4187-24*[preBoil P])+${String(kettle.heatCapacity)})`;
  addHeating(column, "boilHeatMin", wort, String(last), "[boilC]");
  column.add("electricityKWh", "([strikeMin]+[stepMin]+[boilHeatMin])*[powerW]/60000");
  const { chiller } = equipment;
  const flow = String((chiller.coolantFlow / 60) * 4178.4);
  column.add("pull", `${flow}*(1-EXP(-[conductance]/${flow}))+[lossCoefficient]`);
  column.add("chillTau", `([postBoil]*(4187-24*[postBoil P])+${String(kettle.heatCapacity)})/[pull]/60`);
  column.add("standC", recipe.stand?.celsius ?? 100);
  const floor = String(chiller.coolant);
  column.add("toStandMin", `[chillTau]*LN(([boilC]-${floor})/([standC]-${floor}))`);
  const standS = String(60 * (recipe.stand?.minutes ?? 0));
  column.add(
    "standEndC",
    `[air]+([standC]-[air])*EXP(-${standS}*[lossCoefficient]/([postBoil]*4000+${String(kettle.heatCapacity)}))`,
  );
  column.add("chillMin", `[chillTau]*LN(([standEndC]-${floor})/(${String(recipe.yeast.celsius)}-${floor}))`);
}

const RATE_STEPS = 12;

/** Minutes at 100 °C of a fall in temperature that is quick at first, in steps of the isomerisation rate. */
function addEquivalent(column: Column, name: string, minutes: string, from: string, to: string): void {
  const terms = Array.from({ length: RATE_STEPS }, (_, i) => {
    const share = (i + 0.5) / RATE_STEPS;
    return `EXP(11858*(1/373.15-1/(273.15+${from}-(${from}-${to})*${String(share)})))`;
  });
  column.add(name, `(${minutes})/${String(RATE_STEPS)}*(${terms.join("+")})`);
}

function addHops(column: Column, recipe: Recipe): void {
  addEquivalent(column, "toStandEq", "[toStandMin]", "[boilC]", "[standC]");
  addEquivalent(column, "standEq", String(recipe.stand?.minutes ?? 0), "[standC]", "[standEndC]");
  addEquivalent(column, "chillEq", "[chillMin]", "[standEndC]", String(recipe.yeast.celsius));
  column.add("bigness", "1.65*POWER(0.000125,([preBoil SG]+[postBoil SG])/2-1)");
  recipe.hops.forEach((hop, i) => {
    const n = String(i);
    column.add(`grams ${n}`, hop.grams);
    column.add(`alpha ${n}`, hop.alpha);
    column.add(`minutes ${n}`, hop.minutes);
    const time = hop.use === "boil" ? `[minutes ${n}]+[toStandEq]+[standEq]+[chillEq]` : "[standEq]+[chillEq]";
    column.add(
      `ibu ${n}`,
      hop.use === "dry" ? 0 : `[grams ${n}]*[alpha ${n}]*1000/[postBoilL]*[bigness]*(1-EXP(-0.04*(${time})))/4.15`,
    );
  });
  column.add("bitterness", recipe.hops.map((_, i) => `[ibu ${String(i)}]`).join("+"));
  column.add("colour", "25/12.7*1.4922*POWER([kgLovibond]*8.3454/[postBoilL],0.6859)");
}

function addBeer(column: Column, recipe: Recipe, equipment: Equipment): void {
  const attenuation = (recipe.yeast.attenuationLow + recipe.yeast.attenuationHigh) / 2;
  column.add("attenuation", `${String(attenuation)}+[shift]`);
  addDensity(column, "final", "[postBoil P]*(1-[attenuation])");
  column.add("realExtract", "0.1808*[postBoil P]+0.8192*[final P]");
  column.add("alcoholW", "([postBoil P]-[realExtract])/(2.0665-0.010665*[postBoil P])");
  column.add("alcohol", "[alcoholW]*[final SG]/0.7907");
  column.add("kcal", "10*(6.9*[alcoholW]+4*([realExtract]-0.1))*[final SG]");
  column.add("cells", `${String(recipe.yeast.pitch)}*[fermenterL]*[postBoil P]`);
  column.add("beerKg", "[fermenterKg]*100/(100+1.0665*[alcoholW])");
  column.add("packaged", `[beerKg]/[final D]-${String(equipment.fermenter.left.value)}`);
  const { packaging } = recipe;
  const f = packaging.warmest * 1.8 + 32;
  const residual = 3.0378 - 0.050062 * f + 0.00026555 * f * f;
  column.add("priming", `[packaged]*(${String(packaging.carbonation - residual)})*1.9635/0.5143`);
}
