import type { SeededRandom } from "./seeded-random";
import { shuffle } from "./shuffle";

const MOST_PASSES = 20;
const ROUNDS = 6;

/**
 * Orders each judge's entries so that places and successions come out even over the panel.
 *
 * The orders begin by chance. Judge after judge, in a few rounds, two entries change places while that lowers the number
 * of other judges who have an entry in the same place or after the same one.
 *
 * @param sets - For each judge the entries.
 * @param entries - Number of entries.
 * @returns For each judge the same entries in the order of tasting.
 */
export function orderTastings(
  sets: readonly (readonly number[])[],
  entries: number,
  random: SeededRandom,
): readonly (readonly number[])[] {
  const length = sets[0]?.length ?? 0;
  const places = new Array<number>(entries * length).fill(0);
  const successions = new Array<number>(entries * entries).fill(0);

  const met = (order: readonly number[]): number => {
    let sum = 0;
    for (let place = 0; place < order.length; place++) {
      const entry = order[place] ?? 0;
      sum += places[entry * length + place] ?? 0;
      const next = order[place + 1];
      if (next !== undefined) sum += successions[entry * entries + next] ?? 0;
    }
    return sum;
  };

  const note = (order: readonly number[], by: number): void => {
    order.forEach((entry, place) => {
      places[entry * length + place] = (places[entry * length + place] ?? 0) + by;
      const next = order[place + 1];
      if (next !== undefined) successions[entry * entries + next] = (successions[entry * entries + next] ?? 0) + by;
    });
  };

  let orders = sets.map((set) => shuffle(set, random));
  for (const order of orders) note(order, 1);
  for (let round = 0; round < ROUNDS; round++) {
    orders = orders.map((order) => {
      note(order, -1);
      const better = improve(order, met);
      note(better, 1);
      return better;
    });
  }
  return orders;
}

function improve(start: readonly number[], met: (order: readonly number[]) => number): readonly number[] {
  let order = start;
  let cost = met(order);
  for (let pass = 0, better = true; better && pass < MOST_PASSES; pass++) {
    better = false;
    for (let i = 0; i < order.length; i++) {
      for (let j = i + 1; j < order.length; j++) {
        const tried = order.with(i, order[j] ?? 0).with(j, order[i] ?? 0);
        const triedCost = met(tried);
        if (triedCost >= cost) continue;
        order = tried;
        cost = triedCost;
        better = true;
      }
    }
  }
  return order;
}
