import { useMemo } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";

const NONE: FieldErrors = {};

/** The messages of an action's answer by field; a refusal belongs to the whole form. The same answer, the same object. */
export function useFormErrors(result: ActionResult<unknown> | null): FieldErrors {
  return useMemo(() => {
    if (result?.status === "invalid") return result.fieldErrors;
    if (result?.status === "refused") return { "": result.message };
    return NONE;
  }, [result]);
}
