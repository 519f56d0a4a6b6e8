import type { KettleEntry } from "@/lib/model/kettle-entry";
import type { Choosing } from "../way-form";
import type { PlanFormProps } from "./plan-form";

/** What the reader of a sheet may do on it; null for what is not theirs. */
export interface SheetActions {
  readonly plan: PlanFormProps | null;
  readonly choose: (Choosing & { readonly entry: Pick<KettleEntry, "key" | "kept"> }) | null;
}
