import "server-only";
import { DEFAULT_PREFERENCES, type Preferences } from "@/lib/model/preferences";
import { preferencesInput } from "@/lib/model/preferences-input";

/** What somebody chose; a choice from before a choice was added falls back on the defaults. */
export function storedPreferences(column: unknown): Preferences {
  const chosen = typeof column === "object" && column !== null ? column : {};
  return preferencesInput.safeParse({ ...DEFAULT_PREFERENCES, ...chosen }).data ?? DEFAULT_PREFERENCES;
}
