import type { ActionResult } from "@/lib/model/action-result";
import type { SaveOutcome } from "@/lib/model/save-outcome";

/** What became of figures that somebody took into a profile. */
export function takenWords(result: ActionResult<SaveOutcome>): string {
  if (result.status === "refused") return result.message;
  if (result.status === "invalid") return Object.values(result.fieldErrors).join(". ");
  const { data } = result;
  if (data.ok) return `Saved as revision ${String(data.rev)} of the profile. Brews that are planned keep theirs.`;
  if (data.reason === "unchanged") return "The profile has these figures already; nothing was saved.";
  return `Somebody saved revision ${String(data.headRev)} of the profile meanwhile, and nothing of yours was saved. The figures of the profile are those now: look again, and save again.`;
}
