import { z } from "zod";
import { ENTRY_MEASURES } from "@/lib/model/order/entered";
import type { Preferences } from "@/lib/model/preferences";
import { readEntry } from "@/lib/ui/order/entry";

/** The field of a form that holds an amount, with the hidden one beside it that says in what it is typed. */
export const typedAmount = {
  amount: z.string().max(60),
  measure: z.enum(ENTRY_MEASURES),
} as const;

interface Typed {
  readonly label: string;
  readonly measure: z.output<typeof typedAmount.measure>;
  readonly text: string;
  readonly field?: string;
  readonly most?: number;
}

/** A form's amount as the service takes it; what cannot be read is told at its field. */
export function readAmount(typed: Typed, preferences: Preferences, context: z.RefinementCtx): number {
  const read = readEntry(typed, preferences);
  if ("amount" in read) return read.amount;
  context.addIssue({ code: "custom", path: [typed.field ?? "amount"], message: read.refusal });
  return 0;
}
