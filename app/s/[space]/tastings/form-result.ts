import type { ActionResult } from "@/lib/model/action-result";

/** What a form of a tasting posts to. */
export type TastingAction = (previous: ActionResult<void> | null, form: FormData) => Promise<ActionResult<void>>;
