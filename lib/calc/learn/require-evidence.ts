import { requireInRange } from "../errors";
import type { BrewEvidence } from "./brew-evidence";

export const EVIDENCE_RANGE = {
  value: { unit: "", min: -1e12, max: 1e12 },
  misfit: { unit: "", min: 0, max: 1e12 },
  readings: { unit: "", min: 0, max: 100 },
} as const;

/**
 * Passes evidence through when its numbers belong together.
 *
 * @returns The same.
 * @throws {@link OutOfRangeError} when a list has another length than the figures, or a number is not finite.
 */
export function requireEvidence(evidence: BrewEvidence): BrewEvidence {
  const { figures, at, precision, pull } = evidence;
  const length = { unit: "", min: figures.length, max: figures.length };
  requireInRange("values of the figures of a brew", at.length, length);
  requireInRange("pulls of a brew", pull.length, length);
  requireInRange("rows of the information of a brew", precision.length, length);
  for (const row of precision) {
    requireInRange("entries of a row of the information of a brew", row.length, length);
    for (const value of row) requireInRange("information of a brew", value, EVIDENCE_RANGE.value);
  }
  for (const value of [...at, ...pull]) requireInRange("value or pull of a brew", value, EVIDENCE_RANGE.value);
  requireInRange("misfit of a brew", evidence.misfit, EVIDENCE_RANGE.misfit);
  requireInRange("readings of a brew", evidence.readings, EVIDENCE_RANGE.readings);
  return evidence;
}
