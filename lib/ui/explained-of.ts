import { OutOfRangeError } from "@/lib/calc/errors";
import type { ExplainedFunction, explainFunction } from "@/lib/calc/explain";

/** What the library says of one call; null where its record refuses an argument. */
export function explainedOf(
  explain: typeof explainFunction,
  { id, args }: { readonly id: string; readonly args: readonly unknown[] },
): ExplainedFunction | null {
  try {
    const explanation = explain({ id, args });
    return explanation.ok ? explanation.explained : null;
  } catch (error) {
    if (error instanceof OutOfRangeError) return null;
    throw error;
  }
}
