/** How a save ended: a new revision, somebody else was quicker, or nothing was different. */
export type SaveOutcome =
  | { readonly ok: true; readonly rev: number }
  | { readonly ok: false; readonly reason: "stale"; readonly headRev: number }
  | { readonly ok: false; readonly reason: "unchanged" };
