import { describe, expect, it } from "vitest";
import type { QuantityId } from "@/lib/calc/ledger";
import { fraction, volts } from "@/lib/calc/units";
import { EXPLAINED_BREWS, explanationOf, PALE_ALE, type ExplainedBrew } from "../../support/explained-brews";

interface Law {
  readonly id: QuantityId;
  readonly change: string;
  readonly goes: "up" | "down";
  readonly because: string;
}

/** Which way a value must go when one thing changes and the volume in the fermenter stays. */
const LAWS: readonly Law[] = [
  { id: "water.total", change: "10 % more grist", goes: "up", because: "the grain keeps more" },
  { id: "water.total", change: "boil-off 0.5 kg/h higher", goes: "up", because: "what boils off must be poured in" },
  { id: "water.sparge", change: "10 % more grist", goes: "down", because: "the mash takes more of the water" },
  { id: "water.calcium", change: "1 g more gypsum", goes: "up", because: "gypsum is a salt of calcium" },
  {
    id: "water.bicarbonate",
    change: "half of the source water replaced by distilled water",
    goes: "down",
    because: "distilled water has none",
  },
  { id: "water.residualAlkalinity", change: "1 g more gypsum", goes: "down", because: "calcium works against it" },
  { id: "water.residualAlkalinity", change: "1 g more baking soda", goes: "up", because: "it is an alkali" },
  { id: "water.strike", change: "grain 10 °C colder", goes: "up", because: "colder grain takes more heat" },
  { id: "water.strike", change: "mash thinner by 0.5 L/kg", goes: "down", because: "more water holds more heat" },
  { id: "water.heatingTime", change: "supply voltage 5 % lower", goes: "up", because: "P = V²/R" },
  { id: "water.heatingTime", change: "tap water 5 °C colder", goes: "up", because: "the way is longer" },
  { id: "mash.volume", change: "10 % more grist", goes: "up", because: "grain and its water take room" },
  { id: "mash.volume", change: "in two mashes", goes: "down", because: "half of it at a time" },
  { id: "mash.firstWort", change: "mash thinner by 0.5 L/kg", goes: "down", because: "more water, same extract" },
  { id: "mash.time", change: "supply voltage 5 % lower", goes: "up", because: "P = V²/R" },
  { id: "lauter.lost", change: "no sparge water past the grain", goes: "down", because: "more of it rinses" },
  { id: "lauter.lost", change: "without sparging", goes: "up", because: "nothing rinses" },
  { id: "lauter.efficiency", change: "10 % more grist", goes: "down", because: "more is kept and less rinses" },
  { id: "lauter.efficiency", change: "boil-off 0.5 kg/h higher", goes: "up", because: "more water rinses" },
  { id: "kettle.preBoilGravity", change: "boil-off 0.5 kg/h higher", goes: "down", because: "more water before" },
  { id: "kettle.boilingPoint", change: "at 1600 m above the sea", goes: "down", because: "the air presses less" },
  { id: "kettle.power", change: "supply voltage 5 % lower", goes: "down", because: "P = V²/R" },
  { id: "kettle.heatingTime", change: "supply voltage 5 % lower", goes: "up", because: "P = V²/R" },
  { id: "kettle.heatingTime", change: "half the heat loss of the kettle", goes: "down", because: "more heat stays" },
  { id: "kettle.heatingTime", change: "without a lid while heating", goes: "up", because: "evaporation takes heat" },
  { id: "kettle.evaporated", change: "15 minutes more boil", goes: "up", because: "boil-off times time" },
  { id: "kettle.postBoilGravity", change: "half the trub", goes: "up", because: "same extract, less wort" },
  { id: "stand.lost", change: "10 % more hops in the kettle", goes: "up", because: "hops soak wort up" },
  { id: "stand.coolingTime", change: "stand 5 °C hotter", goes: "down", because: "the way is shorter" },
  { id: "stand.chillTime", change: "a chiller half as strong", goes: "up", because: "less heat flows" },
  { id: "stand.chillTime", change: "cooling water 5 °C warmer", goes: "up", because: "less heat flows" },
  { id: "fermenter.originalExtract", change: "10 % more grist", goes: "up", because: "more extract, same volume" },
  {
    id: "fermenter.bitterness",
    change: "alpha acids 1 percentage point lower",
    goes: "down",
    because: "bitterness is in proportion to them",
  },
  { id: "fermenter.bitterness", change: "at 1600 m above the sea", goes: "down", because: "a cooler boil" },
  { id: "fermenter.bitterness", change: "a chiller half as strong", goes: "up", because: "hot for longer" },
  { id: "fermenter.colour", change: "malt 10 % darker", goes: "up", because: "colour rises with malt colour" },
  { id: "fermenter.efficiency", change: "10 % more grist", goes: "down", because: "lautering keeps more" },
  { id: "fermenter.efficiency", change: "half the trub", goes: "up", because: "less stays behind" },
  {
    id: "fermenter.finalExtract",
    change: "yeast that attenuates 3 percentage points further",
    goes: "down",
    because: "less is left",
  },
  { id: "package.alcohol", change: "10 % more grist", goes: "up", because: "a stronger wort" },
  { id: "package.volume", change: "twice as much left with the yeast", goes: "down", because: "less is drawn off" },
  { id: "package.volume", change: "half the dry hops", goes: "up", because: "less is soaked up" },
  { id: "package.primingSugar", change: "beer 5 °C warmer", goes: "up", because: "warm beer has lost more gas" },
  { id: "package.pressure", change: "beer 5 °C warmer", goes: "up", because: "gas is less soluble when warm" },
  { id: "day.time", change: "15 minutes more boil", goes: "up", because: "the day is the sum of its parts" },
  { id: "day.energy", change: "half the heat loss of the kettle", goes: "down", because: "less heat is lost" },
  { id: "day.energy", change: "tap water 5 °C colder", goes: "up", because: "more heat is needed" },
];

function changeOf(id: QuantityId, change: string, brew: ExplainedBrew = PALE_ALE): number {
  const { value, whatIf } = explanationOf(id, brew);
  const line = whatIf.find((each) => each.change === change);
  if (line === undefined || line.value === null || value === null) throw new Error(`${id} does not say “${change}”`);
  return line.value - value;
}

describe("what a number would be", () => {
  it.each(LAWS)("$id goes $goes with “$change”: $because", ({ id, change, goes }) => {
    expect(Math.sign(changeOf(id, change))).toBe(goes === "up" ? 1 : -1);
  });

  it("is in proportion to the square of the voltage for the heater (P = V²/R)", () => {
    expect(changeOf("kettle.power", "supply voltage 5 % lower")).toBeCloseTo(2500 * (0.95 ** 2 - 1), 6);
  });

  it("is half a kilogram an hour more boiled off for half a kilogram an hour more boil-off", () => {
    // 0.5 kg of water at 20 °C, 0.9982 kg/L (CRC Handbook).
    expect(changeOf("kettle.evaporated", "boil-off 0.5 kg/h higher")).toBeCloseTo(0.5 / 0.9982, 4);
  });

  it("has no value where the heater would no longer reach the boil", () => {
    const { equipment, ambient, ledger } = PALE_ALE;
    const { kettle } = equipment;
    const boilC = ledger.quantities["kettle.boilingPoint"] ?? Number.NaN;
    // At the boil the loss takes U (T − Ta); 5 % more power than that reaches it, and 10 % less no longer does.
    const heldW = (kettle.lossCoefficient.value * (boilC - ambient.air)) / kettle.heatShare.value;
    const supplyVoltage = volts(kettle.ratedVoltage * Math.sqrt((1.05 * heldW) / kettle.ratedPower));
    const weak = { ...PALE_ALE, equipment: { ...equipment, kettle: { ...kettle, supplyVoltage } } };
    const lines = explanationOf("kettle.heatingTime", weak).whatIf;
    expect(lines).toContainEqual({ change: "supply voltage 5 % lower", value: null });
  });

  it("leaves out a change that would leave what is possible", () => {
    const hops = PALE_ALE.recipe.hops.map((hop) => ({ ...hop, alpha: fraction(0.005) }));
    const changes = explanationOf("fermenter.bitterness", { ...PALE_ALE, recipe: { ...PALE_ALE.recipe, hops } }).whatIf;
    expect(changes.map((line) => line.change)).not.toContain("alpha acids 1 percentage point lower");
    expect(changes).toHaveLength(3);
  });

  it("offers nothing that has no part in the brew", () => {
    const brew = EXPLAINED_BREWS["pale ale without sparging, into a keg"];
    const changes = explanationOf("lauter.lost", brew).whatIf.map((line) => line.change);
    expect(changes).not.toContain("no sparge water past the grain");
    expect(changes).toContain("10 % more grist");
  });
});
