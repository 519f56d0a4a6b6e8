import { windowInWords } from "./plain-day";
import type { Plan } from "./shared-brew";
import { FIGURE_WORDS, HELD_FIGURES, LOOSE_WORDS, WATER_WORDS, yeastInWords } from "./shared-brew-rules";

/** What one version of a plan says otherwise than the one before, as sentences without a full stop. */
export function planDifferences(before: Plan, after: Plan): readonly string[] {
  const changes: string[] = [];
  if (before.recipeRev !== after.recipeRev) {
    changes.push(`Revision ${String(after.recipeRev)} of the recipe instead of revision ${String(before.recipeRev)}`);
  }
  const [days, daysBefore] = [windowInWords(after.window), windowInWords(before.window)];
  if (days !== daysBefore) changes.push(`Brew day: ${days} instead of ${daysBefore}`);
  changes.push(...ruleDifferences(before, after));
  if (before.state !== after.state) changes.push(`The shared brew is ${after.state}; it was ${before.state}`);
  return changes;
}

function ruleDifferences({ rules: before }: Plan, { rules: after }: Plan): string[] {
  const changes: string[] = [];
  for (const figure of HELD_FIGURES) {
    if (before[figure] === after[figure]) continue;
    const name = FIGURE_WORDS[figure];
    changes.push(after[figure] ? `Now held for all: ${name}` : `No longer held: ${name} (${LOOSE_WORDS[figure]})`);
  }
  if (before.water !== after.water) {
    changes.push(`Water: ${WATER_WORDS[after.water]}; before, ${WATER_WORDS[before.water]}`);
  }
  const [yeast, yeastBefore] = [yeastInWords(after.yeast), yeastInWords(before.yeast)];
  if (yeast !== yeastBefore) changes.push(`Yeast: ${yeast}; before, ${yeastBefore}`);
  if (before.words !== after.words) {
    changes.push(after.words === "" ? "The rules in words are left out" : `Rules in words: ${after.words}`);
  }
  return changes;
}
