import type { Beer } from "./after-boil";
import type { GristSums } from "./grist-sums";
import type { StationBalance, Stream } from "./ledger";
import type { Masses } from "./mass-balance";
import type { Station } from "./quantity-catalogue";

const stream = (name: string, kg: number, extractKg = 0): Stream => ({ name, kg, extractKg });

function balance(
  station: Station,
  flowsIn: readonly Stream[],
  lost: readonly Stream[],
  out: readonly Stream[],
): StationBalance {
  return {
    station,
    in: flowsIn,
    lost,
    out,
    massErrorKg: massOf(flowsIn) - massOf(lost) - massOf(out),
    extractErrorKg: extractOf(flowsIn) - extractOf(lost) - extractOf(out),
  };
}

function massOf(streams: readonly Stream[]): number {
  let kg = 0;
  for (const each of streams) kg += each.kg;
  return kg;
}

function extractOf(streams: readonly Stream[]): number {
  let kg = 0;
  for (const each of streams) kg += each.extractKg;
  return kg;
}

/**
 * Writes down what goes in, is lost and goes out at each station.
 *
 * @returns The seven balances; what goes out of one goes into the next.
 * @source Conservation of mass (docs/sources.md#mass-balance)
 */
export function balancesOf(sums: GristSums, masses: Masses, beer: Beer): StationBalance[] {
  const mashWater = stream("mash water", masses.mashWaterKg);
  const spargeWater = stream("sparge water", masses.spargeKg);
  const topUp = stream("water after the boil", masses.topUpKg);
  const solidsKg = sums.gristKg - sums.maltWaterKg - sums.dissolvedKg;
  const undissolvedKg = sums.potentialKg - sums.dissolvedKg;
  const mashWort = stream("wort in the mash", masses.wortKg, sums.dissolvedKg);
  const grain = stream("grain", solidsKg, undissolvedKg);
  const runOff = stream("run-off", masses.runOffKg, masses.runOffExtractKg);
  const hotWort = stream("hot wort", masses.postBoilKg, masses.postBoilExtractKg);
  const leftExtractKg = (masses.postBoilExtractKg * masses.leftKg) / masses.postBoilKg;
  const wort = stream("wort", masses.postBoilKg - masses.leftKg, masses.postBoilExtractKg - leftExtractKg);
  return [
    balance(
      "water",
      [stream("brewing water", masses.mashWaterKg + masses.spargeKg + masses.topUpKg)],
      [],
      [mashWater, spargeWater, topUp],
    ),
    balance("mash", [mashWater, stream("grist", sums.gristKg, sums.potentialKg)], [], [mashWort, grain]),
    balance(
      "lauter",
      [mashWort, grain, spargeWater],
      [
        stream("grain, with what did not dissolve", solidsKg, undissolvedKg),
        stream("wort kept by grain and dead space", masses.retainedKg, masses.retainedExtractKg),
      ],
      [runOff],
    ),
    balance(
      "kettle",
      [runOff, stream("sugar and malt extract", sums.addedKg, sums.addedExtractKg)],
      [stream("steam", masses.evaporatedKg)],
      [hotWort],
    ),
    balance("stand", [hotWort], [stream("left with trub, hops and hoses", masses.leftKg, leftExtractKg)], [wort]),
    ...coldBalances(wort, topUp, beer),
  ];
}

function coldBalances(wort: Stream, topUp: Stream, beer: Beer): StationBalance[] {
  const young = stream("beer", beer.beerKg, beer.residualKg);
  const leftShare = beer.beerKg > 0 ? beer.leftKg / beer.beerKg : 0;
  return [
    balance(
      "fermenter",
      [wort, topUp],
      [stream("turned to alcohol, CO₂ and yeast", beer.goneKg, beer.fermentedKg)],
      [young],
    ),
    balance(
      "package",
      [young],
      [stream("left with the yeast", beer.leftKg, beer.residualKg * leftShare)],
      [stream("packaged beer", beer.beerKg - beer.leftKg, beer.residualKg * (1 - leftShare))],
    ),
  ];
}
