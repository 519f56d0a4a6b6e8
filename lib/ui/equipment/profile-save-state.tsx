import type { ReactElement } from "react";
import type { ProfileSave } from "./use-profile-save";

/** What came of saving a profile. */
export function ProfileSaveState({ state }: { readonly state: ProfileSave }): ReactElement {
  return <p role="status">{words(state)}</p>;
}

function words(state: ProfileSave): string {
  switch (state.status) {
    case "saved":
      return `Saved as revision ${state.rev}. Brews keep the figures that they were planned with.`;
    case "unchanged":
      return "Nothing is different from the last revision, so nothing was saved.";
    case "stale":
      return `Somebody saved revision ${state.headRev} while you were writing. Open the page in another tab to see it; saving again puts yours on top of it.`;
    default:
      return "";
  }
}
