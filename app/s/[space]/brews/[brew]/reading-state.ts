import type { DraftErrors, DraftField, ReadingDraft } from "@/lib/ui/brew/reading-draft";

/** How far one reading has come on its way into the log. */
export type Delivery =
  | { readonly kind: "editing" }
  | { readonly kind: "asking"; readonly question: string }
  | { readonly kind: "saving" }
  | { readonly kind: "saved"; readonly at: Date }
  | { readonly kind: "not saved"; readonly why: string };

export interface ReadingState {
  readonly draft: ReadingDraft;
  readonly errors: DraftErrors;
  readonly delivery: Delivery;
  /** Counts the attempts with something wrong in them, so that each moves the focus there once. */
  readonly refusals: number;
}

export type ReadingEvent =
  | { readonly kind: "typed"; readonly field: DraftField; readonly text: string }
  | { readonly kind: "refused"; readonly errors: DraftErrors }
  | { readonly kind: "delivery"; readonly delivery: Delivery };

export function readingReducer(state: ReadingState, event: ReadingEvent): ReadingState {
  switch (event.kind) {
    case "typed":
      return typed(state, event.field, event.text);
    case "refused":
      return { ...state, errors: event.errors, delivery: { kind: "editing" }, refusals: state.refusals + 1 };
    case "delivery":
      return delivered(state, event.delivery);
  }
}

/** What was wrong is not repeated while it is put right; a saved reading makes room for the next. */
function typed(state: ReadingState, field: DraftField, text: string): ReadingState {
  const errors = Object.fromEntries(Object.entries(state.errors).filter(([name]) => name !== field));
  return { ...state, draft: draftWith(state.draft, field, text), errors, delivery: { kind: "editing" } };
}

function draftWith(draft: ReadingDraft, field: DraftField, text: string): ReadingDraft {
  return { ...draft, [field]: text };
}

function delivered(state: ReadingState, delivery: Delivery): ReadingState {
  if (delivery.kind !== "saved") return { ...state, errors: {}, delivery };
  return { ...state, draft: { ...state.draft, amount: "", at: "", note: "" }, errors: {}, delivery };
}
