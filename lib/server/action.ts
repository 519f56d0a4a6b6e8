import "server-only";
import { headers } from "next/headers";
import type { z } from "zod";
import { OutOfRangeError } from "@/lib/calc/errors";
import type { ActionResult } from "@/lib/model/action-result";
import { fieldErrors } from "@/lib/model/field-errors";
import { AppError } from "./app-error";
import { environment } from "./environment";
import { rememberWrite } from "./recent-write";
import { isSameOrigin, originOf } from "./same-origin";

type Run<S extends z.ZodType, T> = (input: z.output<S>) => Promise<T>;

/**
 * Makes a server action: checks where the request comes from, parses the input and gives one kind of answer. The
 * action itself proves the reader with `requireViewer` or `requireMember`.
 */
export function action<S extends z.ZodType, T>(
  schema: S,
  run: Run<S, T>,
): (input: unknown) => Promise<ActionResult<T>> {
  return async (input) => answer(schema, run, { headers: await headers(), input });
}

/** The same for `useActionState`, which passes the state before the form. */
export function formAction<S extends z.ZodType, T>(
  schema: S,
  run: Run<S, T>,
): (previous: ActionResult<T> | null, form: FormData) => Promise<ActionResult<T>> {
  return async (_previous, form) => answer(schema, run, { headers: await headers(), input: form });
}

/** What an action answers to one request. */
export async function answer<S extends z.ZodType, T>(
  schema: S,
  run: Run<S, T>,
  request: { readonly headers: Headers; readonly input: unknown },
): Promise<ActionResult<T>> {
  if (!isSameOrigin(originOf(request.headers), environment.appOrigin)) {
    return { status: "refused", message: "This request did not come from a page of this service." };
  }
  const parsed = schema.safeParse(request.input instanceof FormData ? fieldsOf(request.input) : request.input);
  if (!parsed.success) return { status: "invalid", fieldErrors: fieldErrors(parsed.error) };
  try {
    return { status: "ok", data: await run(parsed.data) };
  } catch (error) {
    if (error instanceof AppError || error instanceof OutOfRangeError) {
      return { status: "refused", message: error.message };
    }
    throw error; // a redirect or "not found" of Next on its way out, or a bug
  } finally {
    await rememberWrite();
  }
}

// Next adds fields of its own to a form that is sent without JavaScript.
function fieldsOf(form: FormData): Record<string, unknown> {
  return Object.fromEntries([...form].filter(([name]) => !name.startsWith("$ACTION")));
}
