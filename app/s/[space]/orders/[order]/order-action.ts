import type { ActionResult } from "@/lib/model/action-result";

/** A form of an order ends with nothing but whether it was written. */
export type OrderAction = (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
