import type { FieldErrors } from "./field-errors";

/** How a form ends, the same for all of them. */
export type ActionResult<T> =
  | { readonly status: "ok"; readonly data: T }
  | { readonly status: "invalid"; readonly fieldErrors: FieldErrors }
  | { readonly status: "refused"; readonly message: string };
