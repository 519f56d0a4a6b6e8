import type { FieldErrors } from "@/lib/model/field-errors";

type Answer<T> = { readonly ok: true; readonly data: T } | { readonly ok: false; readonly errors: FieldErrors };

interface Refusal {
  readonly message?: string;
  readonly fieldErrors?: FieldErrors;
}

/** Sends a form with its file to one of our own handlers. */
export async function sendFile<T>(address: string, body: FormData): Promise<Answer<T>> {
  try {
    const response = await fetch(address, { method: "POST", body, headers: { accept: "application/json" } });
    // The handler is ours: it answers with what its type says, or with a refusal.
    if (response.ok) return { ok: true, data: (await response.json()) as T };
    const { message, fieldErrors } = (await response.json()) as Refusal;
    return { ok: false, errors: fieldErrors ?? { "": message ?? "The file was not taken." } };
  } catch {
    return { ok: false, errors: { "": "The file did not get through. Try again when there is a connection." } };
  }
}
