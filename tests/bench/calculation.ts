import { adapt, intentionOf } from "@/lib/calc/adapt";
import { compareLedger, differenceCauses, reconcile } from "@/lib/calc/compare";
import { brew, intervals, type Equipment } from "@/lib/calc/ledger";
import { brewed, brewInput } from "../support/brewed";
import { sameDay } from "../support/brewing-fixtures";
import { readingsOf } from "../support/readings-of";
import { kettles } from "./many-kettles";
import { sixBySix } from "./six-by-six";
import { benchSpreadsheet } from "./spreadsheet";

/** Runs a task for about a second after a warm-up and gives how often it ran per second. */
function perSecond(task: () => void): number {
  const warmUntil = performance.now() + 300;
  while (performance.now() < warmUntil) task();
  let runs = 0;
  const start = performance.now();
  while (performance.now() - start < 1000) {
    task();
    runs++;
  }
  return (1000 * runs) / (performance.now() - start);
}

/** Prints how fast the calculation is, and how its time grows with the number of kettles. */
function benchCalculation(): void {
  const input = brewInput({ recipe: sixBySix });
  const intention = intentionOf({ recipe: sixBySix, ledger: brewed({ recipe: sixBySix }) });
  const strong = { ...intention, originalExtract: 22 };
  const hold = { intoFermenter: null };
  const one = (equipment: Equipment, of = intention): void => {
    adapt({ intention: of, equipment, ambient: sameDay, hold });
  };
  const ledgers = perSecond(() => brew(input));
  const adapted = perSecond(() => {
    one(input.equipment);
  });
  console.log(`ledger/brew           ${ledgers.toFixed(0)} per second (6 fermentables, 6 hops, 2 rests)`);
  console.log(`ledger/intervals      ${perSecond(() => intervals(input)).toFixed(0)} per second`);
  console.log(
    `adapt, fits           ${adapted.toFixed(0)} per second = ${(ledgers / adapted).toFixed(1)} ledgers each`,
  );
  console.log(
    `adapt, with ways out  ${perSecond(() => {
      one(input.equipment, strong);
    }).toFixed(0)} per second`,
  );
  benchReconcile(input, ledgers);
  benchSpreadsheet(kettles(97), sameDay);
  let last = 0;
  for (const count of [10, 100, 1_000, 10_000]) {
    const members = kettles(count);
    const start = performance.now();
    for (const equipment of members) one(equipment);
    const ms = performance.now() - start;
    const growth = last === 0 ? "" : `, ${(ms / last).toFixed(1)} times the time for ten times the kettles`;
    console.log(`one recipe × ${count} kettles: ${ms.toFixed(1)} ms${growth}`);
    last = ms;
  }
}

/** One brew with all its readings, one of them wrong, so that the search for it counts. */
function benchReconcile(input: ReturnType<typeof brewInput>, ledgers: number): void {
  const ledger = brewed({ recipe: sixBySix });
  const predicted = intervals(input);
  const volume = ledger.quantities["fermenter.volume"] ?? 0;
  const readings = readingsOf(ledger, { "fermenter.volume": volume + 4 });
  const tasks = { reconcile, differenceCauses, compareLedger };
  for (const [name, task] of Object.entries(tasks)) {
    const rate = perSecond(() => task({ ledger, intervals: predicted, readings }));
    const each = `${(1000 / rate).toFixed(2)} ms = ${(ledgers / rate).toFixed(0)} ledgers each`;
    console.log(`compare/${name.padEnd(16)}${each}`);
  }
}

benchCalculation();
