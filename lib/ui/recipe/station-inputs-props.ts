import type { FieldErrors } from "@/lib/model/field-errors";
import type { Draft } from "./draft";

export interface StationInputsProps {
  readonly draft: Draft;
  readonly problems: FieldErrors;
  /** What the ledger gives back for a row, by list and key. */
  readonly results: ReadonlyMap<string, number>;
}
