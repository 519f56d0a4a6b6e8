import { describe, expect, it } from "vitest";
import { costOf, stationAccounts, STATIONS, type StationAccount } from "@/lib/calc/ledger";
import { brewed, brewInput, valueOf } from "../../support/brewed";
import { paleAle, sameDay } from "../../support/brewing-fixtures";

const ledger = brewed();
const accounts = stationAccounts({ ledger, recipe: paleAle, ambient: sameDay });

function at(station: StationAccount["station"]): StationAccount {
  const found = accounts.find((account) => account.station === station);
  if (found === undefined) throw new Error(`no ${station}`);
  return found;
}

describe("the accounts of the stations", () => {
  it("are all stations in the order of the process", () => {
    expect(accounts.map((account) => account.station)).toEqual(STATIONS);
  });

  it("hand on what they give: each flow out is a flow into the next station, by name and mass (conservation)", () => {
    accounts.slice(0, -1).forEach((account, i) => {
      const next = accounts.slice(i + 1).flatMap((later) => later.in);
      for (const flow of account.out) {
        const taken = next.find((each) => each.name === flow.name);
        expect(taken?.kg, flow.name).toBe(flow.kg);
        expect(taken?.litresAt20, flow.name).toBe(flow.litresAt20);
      }
    });
  });

  it("agree with the numbers of the ledger for volumes hot and cold", () => {
    const [hotWort] = at("kettle").out;
    expect(hotWort?.litres).toBeCloseTo(valueOf(ledger, "kettle.postBoil"), 9);
    expect(hotWort?.celsius).toBe(valueOf(ledger, "kettle.boilingPoint"));
    expect(hotWort?.plato).toBeCloseTo(valueOf(ledger, "kettle.postBoilGravity"), 9);
    expect(at("lauter").out[0]?.litresAt20).toBeCloseTo(valueOf(ledger, "lauter.runOff"), 9);
    expect(at("stand").lost[0]?.litresAt20).toBeCloseTo(valueOf(ledger, "stand.lost"), 9);
  });

  it("leave out volume and strength of what is not poured", () => {
    for (const flow of [...at("mash").in, ...at("lauter").lost, ...at("kettle").lost]) {
      if (!["grist", "grain, with what did not dissolve", "steam"].includes(flow.name)) continue;
      expect(flow).toMatchObject({ plato: null, litresAt20: null, celsius: null, litres: null });
    }
  });

  it("share out the whole day, minute by minute, and the electricity but for the sparge water", () => {
    const minutes = accounts.reduce((sum, account) => sum + account.minutes, 0);
    expect(minutes).toBeCloseTo(valueOf(ledger, "day.time"), 9);
    // 4186.8 J/(kg·K) from tap to 76 °C, by hand.
    const spargeKWh = (valueOf(ledger, "water.sparge") * 0.998204 * 4186.8 * (76 - sameDay.tapWater)) / 3.6e6;
    const energy = accounts.reduce((sum, account) => sum + account.energyKWh, 0);
    expect(energy + spargeKWh).toBeCloseTo(valueOf(ledger, "day.energy"), 5);
  });

  it("carry pH from the mash, colour from the boil and bitterness from the chill on", () => {
    expect(at("water")).toMatchObject({ ph: null, colour: null, bitterness: null });
    expect(at("mash").ph).toBe(valueOf(ledger, "mash.ph"));
    expect(at("lauter").colour).toBeNull();
    expect(at("kettle")).toMatchObject({ bitterness: null, colour: valueOf(ledger, "fermenter.colour") });
    expect(at("stand").bitterness).toBe(valueOf(ledger, "fermenter.bitterness"));
  });

  it("have a curve that begins where the one before ends", () => {
    const points = accounts.flatMap((account) => account.temperatureCurve);
    expect(points).toEqual(ledger.temperatureCurve);
  });
});

describe("the cost of a brew", () => {
  const prices = {
    fermentables: [2, 3, 4, 1],
    hops: [40, 30, 30, 30],
    yeast: 5,
    kilowattHour: 0.3,
    cubicMetreOfWater: 4,
  };

  it("adds up by hand: malt, hops, yeast, electricity and water", () => {
    const cost = costOf({ ledger, recipe: paleAle, prices });
    // 4.4 × 2 + 0.5 × 3 + 0.25 × 4 in the mash; 0.2 × 1 of sugar.
    expect(cost.stations.mash).toBeCloseTo(11.3, 9);
    // 18 g at 40 and 20 g at 30 a kilogram, and electricity.
    expect(cost.stations.kettle).toBeCloseTo(0.2 + 0.72 + 0.6 + 0.3 * valueOf(ledger, "day.energy"), 9);
    expect(cost.stations.stand).toBeCloseTo(0.9, 9);
    expect(cost.stations.fermenter).toBeCloseTo(1.5 + 5, 9);
    expect(cost.stations.water).toBeCloseTo(0.004 * valueOf(ledger, "water.total"), 9);
    const sum = Object.values(cost.stations).reduce((total, each) => total + each, 0);
    expect(cost.total).toBeCloseTo(sum, 12);
    expect(cost.perLitre).toBeCloseTo(sum / valueOf(ledger, "package.volume"), 9);
    expect(cost.without).toEqual([]);
  });

  it("names what has no price, once each", () => {
    const cost = costOf({
      ledger,
      recipe: paleAle,
      prices: { ...prices, fermentables: [2, null], hops: [40, null, null, null], kilowattHour: null },
    });
    expect(cost.without).toEqual(["Munich malt light", "Caramel malt 60L", "Sucrose", "Cascade", "electricity"]);
    expect(cost.stations.mash).toBeCloseTo(8.8, 9);
  });

  it.each([-0.01, Number.NaN, 1_000_001])("refuses a price of %s", (price) => {
    expect(() => costOf({ ledger, recipe: paleAle, prices: { ...prices, yeast: price } })).toThrow(
      `price of ${paleAle.yeast.name} ${String(price)} is outside 0 to 1000000`,
    );
  });

  it("has no cost a litre where nothing is left to package", () => {
    const { equipment } = brewInput();
    const left = { ...equipment.fermenter, left: { ...equipment.fermenter.left, value: paleAle.intoFermenter } };
    const empty = brewed({ equipment: { fermenter: left } });
    expect(costOf({ ledger: empty, recipe: paleAle, prices }).perLitre).toBeNull();
  });
});
