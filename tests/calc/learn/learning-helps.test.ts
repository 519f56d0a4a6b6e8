import { describe, expect, it } from "vitest";
import { clubStory, OUTCOMES, summary, type Predicted } from "../../support/learning-club";
import { chance } from "../../support/simulated-club";

/**
 * A small part of what `npm run bench -- learning` does: a dozen clubs of one kind each, three kettles, five rounds.
 * What the kind adds for a new kettle takes more clubs than a test has time for, and is shown there.
 */
const CLUBS = 12;
const KINDS = ["electric with basket", "electric with bag", "kettle and mash tun"] as const;

function simulate(): Predicted[] {
  return Array.from({ length: CLUBS }, (_, i) => {
    const kind = KINDS[i % KINDS.length] ?? KINDS[0];
    return clubStory({ kind, kettles: 3, rounds: 5, groups: 2, apart: 2 }, chance(5000 + i)).predictions;
  }).flat();
}

/** Brews are computed by the hundred. */
const BREWS_MANY_TIMES = 60_000;

describe("learning from the log of a simulated club", () => {
  it(
    "makes predictions better with each brew and says how good they are",
    () => {
      const all = simulate();
      /** Of the three errors, how much is left of what they are without learning. */
      const left = (from: number, to: number): number => {
        const then = all.filter(({ logged }) => logged >= from && logged <= to);
        const ratios = OUTCOMES.map((outcome) => {
          const error = (way: Predicted["way"]): number =>
            summary(then.filter((each) => each.outcome === outcome && each.way === way)).error;
          return error("pooled") / error("typical");
        });
        return ratios.reduce((sum, ratio) => sum + ratio, 0) / ratios.length;
      };
      expect(left(1, 2)).toBeLessThan(left(0, 0));
      expect(left(3, 4)).toBeLessThan(left(1, 2));
      const { covered } = summary(all.filter(({ way }) => way === "pooled"));
      expect(covered).toBeGreaterThan(0.75);
      expect(covered).toBeLessThan(0.85);
    },
    BREWS_MANY_TIMES,
  );
});
