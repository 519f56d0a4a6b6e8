import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { adapt, intentionOf } from "@/lib/calc/adapt";
import { brew } from "@/lib/calc/ledger";
import { days, kettles, RANDOM_BREWS, recipes } from "../../support/random-brews";
import { everyNumberOf } from "../../support/every-number-of";

// Laws that hold for every recipe and kettle: no figure here is anybody's output.
const SEED = 20261125;
const LONG = 120_000 + 100 * RANDOM_BREWS;

const moves = fc.record({ recipe: recipes, from: kettles, to: kettles, ambient: days });

describe("any recipe taken to any kettle", () => {
  it(
    "meets its targets, or says what is in the way and offers only what fits",
    () => {
      let adapted = 0;
      fc.assert(
        fc.property(moves, ({ recipe, from, to, ambient }) => {
          const written = brew({ recipe, equipment: from, ambient });
          if (!written.ok) return;
          const intention = intentionOf({ recipe, ledger: written.ledger });
          const outcome = adapt({ intention, equipment: to, ambient, hold: { intoFermenter: null } });
          expect(everyNumberOf(outcome).every(Number.isFinite)).toBe(true);
          if (outcome.ok) {
            adapted++;
            expect(Math.abs(outcome.residuals.volume)).toBeLessThan(1e-6);
            expect(Math.abs(outcome.residuals.originalExtract)).toBeLessThan(1e-6);
            expect(Math.abs(outcome.residuals.bitterness)).toBeLessThan(1e-6);
            return;
          }
          if (outcome.ledger !== null) expect(outcome.reasons).not.toHaveLength(0);
          const distances = outcome.waysOut.map((way) => way.distance);
          expect(distances).toEqual([...distances].sort((one, other) => one - other));
          for (const { kind, ledger } of outcome.waysOut) {
            const broken = ledger.limits.filter((limit) => !limit.ok && limit.id !== "carbonation");
            expect(broken, kind).toEqual([]);
          }
        }),
        { numRuns: RANDOM_BREWS, seed: SEED, endOnFailure: true },
      );
      // Some of the random kettles fit.
      expect(adapted).toBeGreaterThan(0.02 * RANDOM_BREWS);
    },
    LONG,
  );
});
