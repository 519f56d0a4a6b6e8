import type { Brew } from "@/lib/model/brew";
import type { Fermentation } from "@/lib/model/cellar/fermentation";
import type { Preferences } from "@/lib/model/preferences";
import type { RecordReading } from "../use-delivery";

/** What every part of the cellar's page is given. */
export interface CellarPart {
  readonly brew: Brew;
  readonly fermentation: Fermentation;
  readonly preferences: Preferences;
  readonly record: RecordReading;
}
