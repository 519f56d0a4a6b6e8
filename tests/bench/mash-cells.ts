import type { Recipe } from "@/lib/calc/ledger";
import { fermentability, REFERENCE_MASH } from "@/lib/calc/mash";
import { maltAcidity, maltKindFromColour } from "@/lib/calc/water";
import type { Column } from "./cell-column";

const SLOWEST_STEP_MIN = 20;

/** The enzymes of the mash minute by minute, a row of cells for each, as one would copy a row down. */
export function addEnzymes(column: Column, recipe: Recipe): void {
  const start: Readonly<Record<string, number>> = { alpha: 1, beta: 1, shut: 1, open: 0, dextrin: 0, sugar: 0 };
  for (const [state, value] of Object.entries(start)) column.add(`mash ${state} 0`, value);
  const [first, last] = [recipe.mash[0], recipe.mash.at(-1)];
  const rest = first?.minutes ?? 60;
  const lastRest = last?.minutes ?? 0;
  // Rows enough for the slowest heater; those past the end of the mash stand still.
  const minutes = rest + SLOWEST_STEP_MIN + lastRest;
  const [from, to] = [first?.celsius ?? 66, last?.celsius ?? 66];
  for (let minute = 1; minute <= minutes; minute++) {
    const middle = String(minute - 0.5);
    const share = `MIN(1,MAX(0,(${middle}-${String(rest)})/[stepMin]))`;
    const runs = `MAX(0,MIN(1,${String(rest + lastRest)}+[stepMin]-${String(minute - 1)}))`;
    addMinute(column, minute, `${String(from)}+${share}*${String(to - from)}`, runs);
  }
  const end = String(minutes);
  column.add("converted", `[mash dextrin ${end}]+[mash sugar ${end}]`);
  column.add("apparentLimit", `(0.09+0.79*0.82*[mash sugar ${end}])/(0.21+0.79*[converted])/0.8192`);
  column.add("shift", `[apparentLimit]-${String(fermentability({ curve: REFERENCE_MASH }).apparentLimit)}`);
}

function addMinute(column: Column, minute: number, celsius: string, runs: string): void {
  const [now, before] = [String(minute), String(minute - 1)];
  const of = (state: string, at = now): string => `[mash ${state} ${at}]`;
  const add = (state: string, content: string | number): void => {
    column.add(`mash ${state} ${now}`, content);
  };
  add("T", celsius);
  add("runs", runs);
  const kelvin = `(${of("T")}+273.15)`;
  add("alphaDeath", `${of("runs")}*EXP(LN(4.14)+32*LN(10)-26964.9/${kelvin})`);
  add("betaDeath", `${of("runs")}*0.0590652*EXP(49395.2*(1/338.15-1/${kelvin}))`);
  add("opens", `${of("runs")}*EXP(LN(1.86)+16*LN(10)-13025.4/${kelvin})`);
  add("closed", `1/(1+EXP((${of("T")}-59)/1.75))`);
  add("pace", `${of("runs")}*EXP(6013.6*(1/338.15-1/${kelvin}))`);
  add("alpha", `${of("alpha", before)}*EXP(-${of("alphaDeath")})`);
  add("beta", `${of("beta", before)}*EXP(-${of("betaDeath")})`);
  const alpha = `${of("pace")}*(${of("alpha")}+${of("alpha", before)})/2`;
  const beta = `${of("pace")}*(${of("beta")}+${of("beta", before)})/2`;
  add("opened", `MAX(0,${of("shut", before)}-${of("closed")})*(1-EXP(-${of("opens")}))`);
  add("shut", `${of("shut", before)}-${of("opened")}`);
  add("made", `(${of("open", before)}+${of("opened")})*(1-EXP(-(5*${alpha}+15*${beta})))`);
  add("open", `${of("open", before)}+${of("opened")}-${of("made")}`);
  const toDextrin = `(0.83*5*${alpha})/(5*${alpha}+15*${beta}+0.000000001)`;
  add("toDextrin", `${of("made")}*${toDextrin}`);
  add("gone", `${of("dextrin", before)}*(1-EXP(-(0.011*${alpha}+0.028*${beta})))`);
  add("dextrin", `${of("dextrin", before)}+${of("toDextrin")}-${of("gone")}`);
  add("sugar", `${of("sugar", before)}+${of("made")}-${of("toDextrin")}+${of("gone")}`);
}

/** Often enough for the fourth decimal of a pH. */
const NEWTON_STEPS = 6;

/** The balance of protons by Newton's method, a few rows of cells. */
export function addAcidity(column: Column, recipe: Recipe): void {
  const malts = recipe.fermentables.map((row, i) => {
    const known = row.acidity ?? maltAcidity({ kind: maltKindFromColour(row).kind, colour: row.colour });
    const n = String(i);
    column.add(`own pH ${n}`, known.distilledWaterPh);
    column.add(`buffering ${n}`, known.buffering);
    return `[kg ${n}]*[buffering ${n}]`;
  });
  column.add("mash litres", "[mashWaterKg]/0.998204");
  column.add("alkalinity", "[mash litres]*[bicarbonate]/61.016");
  column.add("carbon", "[alkalinity]*(1+POWER(10,6.352-7.5))");
  column.add("hardness", "[mash litres]*([calcium]/20.039/3.5+[magnesium]/12.1525/7)");
  column.add("buffer", malts.join("+"));
  column.add("base", malts.map((malt, i) => `${malt}*[own pH ${String(i)}]`).join("+"));
  column.add("pH 0", 5.6);
  for (let step = 1; step <= NEWTON_STEPS; step++) {
    const ph = `[pH ${String(step - 1)}]`;
    const n = String(step);
    column.add(`left ${n}`, `[carbon]/(1+POWER(10,6.352-${ph}))`);
    column.add(`miss ${n}`, `[buffer]*${ph}-[base]+[hardness]-[alkalinity]+[left ${n}]`);
    column.add(`slope ${n}`, `[buffer]+LN(10)*[left ${n}]*(1-[left ${n}]/[carbon])`);
    column.add(`pH ${n}`, `${ph}-[miss ${n}]/[slope ${n}]`);
  }
  column.add("mashPh", `[pH ${String(NEWTON_STEPS)}]`);
}
