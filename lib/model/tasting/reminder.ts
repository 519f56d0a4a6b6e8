/** Whoever was reminded is left in peace for so long. */
export const REMIND_AGAIN_MINUTES = 30;

/** What a judge is reminded of: how many sheets are missing, and how they still come in. */
export function reminderNote(
  { missing, toCome }: { readonly missing: number; readonly toCome: number },
  state: "open" | "closed",
): string {
  const count =
    toCome === 1 ? "Your sheet is not in yet." : `${String(missing)} of your ${String(toCome)} sheets are not in yet.`;
  const way =
    state === "open"
      ? "Open your sheets, and hand them in when they are done."
      : "Judging is closed: what you wrote without a network comes in when you open your sheets with one, and paper goes to the steward.";
  return `${count} ${way}`;
}
