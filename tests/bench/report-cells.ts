import type { Equipment, Recipe } from "@/lib/calc/ledger";
import { IONS, ionsFromSalts, type Ions } from "@/lib/calc/water";
import { litres } from "@/lib/calc/units";
import type { Column } from "./cell-column";

/** Ions of the treated water, from the salts in all the hot water. */
export function addWater(column: Column, recipe: Recipe): void {
  const { source, salts } = recipe.water;
  // What one litre would get, so that the cells divide by their own volume.
  const inOneLitre: Ions = ionsFromSalts({ litres: litres(100), grams: salts });
  column.add("hot litres", "([mashWaterKg]+[spargeKg])/0.998204");
  for (const ion of IONS) column.add(ion, `${String(source[ion])}+${String(100 * inOneLitre[ion])}/[hot litres]`);
  column.add("residualAlkalinity", "50.043*([bicarbonate]/61.016-[calcium]/20.039/3.5-[magnesium]/12.1525/7)");
}

/** Water at a temperature, kg/L (Kell 1975), and the sugar in it as at 20 °C. */
function addHot(column: Column, name: string, mass: string, density: string, celsius: string): void {
  const t = celsius;
  column.add(
    name,
    `${mass}/(${density}-0.998204+(0.99983952+0.016945176*${t}-0.0000079870401*${t}*${t}-0.000000046170461*POWER(${t},3)` +
      `+0.00000000010556302*POWER(${t},4)-0.00000000000028054253*POWER(${t},5))/(1+0.01687985*${t}))`,
  );
}

/** Volumes hot and cold, what each station takes and gives, the phases of the day and the limits of the kettle. */
export function addBalances(column: Column, recipe: Recipe, equipment: Equipment): void {
  addHot(column, "preBoilHot", "[runOff]", "[preBoil D]", "[boilC]");
  addHot(column, "postBoilHot", "[postBoil]", "[postBoil D]", "[boilC]");
  addStations(column);
  addPhases(column, recipe);
  const { kettle, mash, fermenter } = equipment;
  column.add("mash volume", "[mash litres]*1.026+0.67*[grist]");
  column.add("fits basket", `[grist]<=${String(mash.grainLimit ?? 999)}`);
  column.add("fits mash", `[mash volume]<=${String(mash.capacity)}`);
  column.add("stirs", `[mash litres]/[grist]>=${String(mash.thickest)}`);
  column.add("covers", `MIN([mash litres],[runOff])>=${String(kettle.minimum)}`);
  column.add("fits boil", `[preBoilHot]<=${String(kettle.capacity - kettle.headspace)}`);
  column.add("strikes", "[strikeC]<=[boilC]");
  column.add("boils", "[powerW]>=[lossCoefficient]*([boilC]-[air])+[boilOff]*2256000/3600/2");
  column.add("ferments", `[fermenterL]<=${String(fermenter.capacity - fermenter.headspace)}`);
}

function addStations(column: Column): void {
  const stations: readonly (readonly [name: string, takes: string, loses: string, gives: string])[] = [
    ["mash kg", "[mashWaterKg]+[grist]", "0", "[wort]+[grist]-[maltWater]-[dissolved]"],
    ["mash extract", "[potential]", "[potential]-[dissolved]", "[dissolved]"],
    ["lauter kg", "[wort]+[spargeKg]", "[retained]*[kept D]", "[runOff]"],
    ["lauter extract", "[dissolved]", "[keptExtract]", "[runOffExtract]"],
    ["kettle kg", "[runOff]", "[evaporated]", "[postBoil]"],
    ["kettle extract", "[runOffExtract]", "0", "[postBoil]*[postBoil P]/100"],
    ["stand kg", "[postBoil]", "[left]", "[fermenterKg]"],
    ["stand extract", "[runOffExtract]", "[left]*[postBoil P]/100", "[fermenterKg]*[postBoil P]/100"],
    ["fermenter kg", "[fermenterKg]", "[beerKg]*1.0665*[alcoholW]/100", "[beerKg]"],
    [
      "fermenter extract",
      "[fermenterKg]*[postBoil P]/100",
      "2.0665*[alcoholW]*[beerKg]/100",
      "[realExtract]*[beerKg]/100",
    ],
  ];
  for (const [name, takes, loses, gives] of stations) {
    column.add(`${name} in`, takes);
    column.add(`${name} lost`, loses);
    column.add(`${name} out`, gives);
    column.add(`${name} error`, `[${name} in]-[${name} lost]-[${name} out]`);
  }
}

function addPhases(column: Column, recipe: Recipe): void {
  const stand = String(recipe.stand?.minutes ?? 0);
  const phases: readonly (readonly [name: string, minutes: string])[] = [
    ["prepare", "20"],
    ["strike", "[strikeMin]"],
    ["dough", "10"],
    ["rests", recipe.mash.map((step) => String(step.minutes)).join("+")],
    ["step", "[stepMin]"],
    ["drain", "15"],
    ["sparge", "20"],
    ["to the boil", "[boilHeatMin]"],
    ["boil", String(recipe.boil)],
    ["to the stand", "[toStandMin]"],
    ["stand", stand],
    ["chill", "[chillMin]"],
    ["transfer", "15"],
    ["clean", "40"],
  ];
  column.add("start 0", 0);
  phases.forEach(([name, minutes], i) => {
    column.add(`phase ${name}`, minutes);
    column.add(`start ${String(i + 1)}`, `[start ${String(i)}]+[phase ${name}]`);
  });
}
