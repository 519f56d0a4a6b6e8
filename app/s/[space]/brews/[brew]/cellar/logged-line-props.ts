import type { LoggedReading } from "@/lib/model/log/logged-readings";
import type { CellarPart } from "./cellar-part";

/** What a reading of the log is shown and changed with. */
export interface LoggedLineProps extends Pick<CellarPart, "preferences" | "record"> {
  readonly reading: LoggedReading;
  readonly label: string;
  readonly brew: Pick<CellarPart["brew"], "id" | "mayWrite">;
  readonly fermentation: Pick<CellarPart["fermentation"], "original">;
}
