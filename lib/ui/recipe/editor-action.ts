import type { Column, Draft, DraftField, RowList } from "./draft";
import type { Entry } from "./entry";
import type { Ranges } from "./shown";

/** What changes a draft. */
export type DraftAction =
  | { readonly type: "type"; readonly field: DraftField; readonly text: string }
  | { readonly type: "fill"; readonly entries: Readonly<Partial<Record<DraftField, Entry>>> }
  | {
      readonly type: "type in row";
      readonly list: RowList;
      readonly row: string;
      readonly column: Column;
      readonly text: string;
    }
  | {
      readonly type: "fill row";
      readonly list: RowList;
      readonly row: string;
      readonly entries: Readonly<Partial<Record<Column, Entry>>>;
    }
  | { readonly type: "add row"; readonly list: RowList; readonly below: string | null }
  | { readonly type: "duplicate row"; readonly list: RowList; readonly row: string }
  | { readonly type: "remove row"; readonly list: RowList; readonly row: string; readonly name: string }
  | { readonly type: "move row"; readonly list: RowList; readonly row: string; readonly by: -1 | 1 }
  /** Many changes as one step: pasted rows, a solved target, what is taken over from somebody else. */
  | { readonly type: "put"; readonly words: string; readonly change: (draft: Draft, makeKey: () => string) => Draft };

export type EditorAction =
  | DraftAction
  | { readonly type: "undo" }
  | { readonly type: "redo" }
  /** Another draft altogether, opened from where it was kept; there is no way back across it. */
  | { readonly type: "open"; readonly draft: Draft; readonly kettle: string; readonly note: string }
  | { readonly type: "note"; readonly text: string }
  | { readonly type: "choose kettle"; readonly kettle: string }
  | { readonly type: "intervals"; readonly ranges: Ranges };
