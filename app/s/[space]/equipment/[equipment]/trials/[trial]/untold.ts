import type { TrialPart } from "@/lib/model/trial/trial-entry";

interface Untold {
  readonly ok: boolean;
  readonly reason?: string;
  readonly needs?: readonly string[];
  readonly minutesNeeded?: number | null;
  readonly pour?: number;
  readonly run?: number;
}

const REASONS: Readonly<Record<string, string>> = {
  "too-few-readings": "Too few readings yet: it takes three of a temperature, and two of a volume.",
  "does-not-rise": "This does not rise. Was the heater on, and are the times right?",
  "does-not-fall": "This does not fall. Was the heater off, and are the times right?",
  "did-not-converge": "No curve goes through these readings. Look at their times and values.",
  "coolant-limited":
    "The cooling water leaves nearly as warm as the kettle is, so the chiller itself hardly shows. Open the tap further and do it again; measure the flow anew.",
  "too-warm": "The first reading is not warmer than the cooling water.",
  "too-cold": "What comes out would have to be warmer than the cooling water, and colder than what goes in.",
  "too-much-heat":
    "The cooling water would have to leave hotter than the hot water comes in. Look at the flow, the litres and the minutes.",
  "not-told":
    "These temperatures lie too close together to tell. Let it run faster, so that the water comes out warmer.",
  "too-few-marks": "One mark more makes a table.",
  "no-readings": "Nothing was collected yet.",
};

/** Why a part does not tell its figures yet, and what would. */
export function untoldWords(part: TrialPart, outcome: Untold): string {
  if (outcome.reason === "not-separable") return separableWords(outcome.needs ?? []);
  if (outcome.reason === "does-not-rise" && part === "marks") {
    return `Mark ${String((outcome.pour ?? 0) + 1)} is not above the one before, although water was poured in. Look at both.`;
  }
  if (outcome.reason === "too-short") return tooShortWords(part, outcome.minutesNeeded ?? null);
  return REASONS[outcome.reason ?? ""] ?? "The readings do not tell it yet.";
}

function separableWords(needs: readonly string[]): string {
  const hotter = "go on heating, and read once more just below the boil";
  const cooling = "read for an hour while it cools with the heater off (the next part)";
  const either = needs.includes("hotter") && needs.includes("cooling");
  const what = either ? `${hotter}, or ${cooling}` : needs.includes("hotter") ? hotter : cooling;
  return `So far the curve is too straight to tell power and losses apart: more power with more loss would look the same. To tell them, ${what}.`;
}

function tooShortWords(part: TrialPart, minutes: number | null): string {
  if (part !== "boil-off") return "It has hardly cooled yet. Go on reading while it falls.";
  if (minutes === null) return "The volume does not fall. Does it boil, and are the times right?";
  return `It has not boiled long enough for volumes read like these: go on, about ${String(minutes)} minutes in all tell the rate to a tenth.`;
}
