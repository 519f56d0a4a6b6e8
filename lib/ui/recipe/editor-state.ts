import type { Equipment } from "@/lib/calc/ledger";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { addRow, changeRow, duplicateRow, moveRow, removeRow, typeInRow } from "./change-rows";
import { compute, type Brewed } from "./compute";
import { WORD_FIELDS, type Column, type Draft, type DraftField, type RowList } from "./draft";
import { typed, word, type Entry } from "./entry";
import { readDraft, type DraftReading } from "./read-draft";
import type { RowKeys } from "./read-rows";

export type EditorAction =
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
  | { readonly type: "undo removal" }
  | { readonly type: "move row"; readonly list: RowList; readonly row: string; readonly by: -1 | 1 }
  | { readonly type: "choose kettle"; readonly kettle: string };

/** A kettle to compute on. */
export interface KettleChoice {
  readonly id: string;
  readonly label: string;
  readonly equipment: Equipment;
}

export interface EditorState {
  readonly draft: Draft;
  readonly kettle: string;
  readonly reading: DraftReading;
  /** The last ledger that could be computed, with the rows that it was computed from. */
  readonly shown: { readonly brewed: Brewed; readonly keys: RowKeys } | null;
  /** Why the ledger is older than the draft; empty when it is not. */
  readonly waitingFor: readonly string[];
  readonly rowsMade: number;
  /** The draft before a row was removed, until something else changes. */
  readonly removed: { readonly name: string; readonly before: Draft } | null;
}

interface Setting {
  readonly kettles: readonly KettleChoice[];
  readonly preferences: Preferences;
}

export function openEditor(draft: Draft, kettle: string, setting: Setting): EditorState {
  const empty = {
    draft,
    kettle,
    reading: readDraft(draft, setting.preferences),
    shown: null,
    waitingFor: [],
    rowsMade: 0,
    removed: null,
  };
  return recomputed(empty, setting);
}

export function editorReducer(setting: Setting): (state: EditorState, action: EditorAction) => EditorState {
  return (state, action) => {
    if (action.type === "choose kettle") return recomputed({ ...state, kettle: action.kettle }, setting);
    const isNew = action.type === "add row" || action.type === "duplicate row";
    const rowsMade = isNew ? state.rowsMade + 1 : state.rowsMade;
    const draft = changed(state, action, `new-${rowsMade}`);
    if (draft === state.draft) return state;
    const removed = action.type === "remove row" ? { name: action.name, before: state.draft } : null;
    return recomputed({ ...state, draft, rowsMade, removed, reading: readDraft(draft, setting.preferences) }, setting);
  };
}

type DraftAction = Exclude<EditorAction, { readonly type: "choose kettle" }>;

const WORDS: ReadonlySet<string> = new Set(WORD_FIELDS);

function changed({ draft, removed }: EditorState, action: DraftAction, key: string): Draft {
  switch (action.type) {
    case "type": {
      const entry = WORDS.has(action.field) ? word(action.text) : typed(action.text);
      return { ...draft, fields: { ...draft.fields, [action.field]: entry } };
    }
    case "fill":
      return { ...draft, fields: { ...draft.fields, ...action.entries } };
    case "type in row":
      return typeInRow(draft, action.list, action.row, { [action.column]: action.text });
    case "fill row":
      return changeRow(draft, action.list, action.row, action.entries);
    case "add row":
      return addRow(draft, action.list, key, action.below);
    case "duplicate row":
      return duplicateRow(draft, action.list, key, action.row);
    case "remove row":
      return removeRow(draft, action.list, action.row);
    case "undo removal":
      return removed?.before ?? draft;
    case "move row":
      return moveRow(draft, action.list, action.row, action.by);
  }
}

function recomputed(state: EditorState, { kettles }: Setting): EditorState {
  const { written, problems } = state.reading;
  const equipment = kettles.find(({ id }) => id === state.kettle)?.equipment;
  if (equipment === undefined) return { ...state, waitingFor: ["Choose a kettle to compute on"] };
  if (written === null) return { ...state, waitingFor: messages(problems) };
  const computed = compute(written.recipe, equipment, written.ambient);
  if (!computed.ok) return { ...state, waitingFor: [computed.why] };
  return { ...state, shown: { brewed: computed.brewed, keys: written.keys }, waitingFor: [] };
}

function messages(problems: FieldErrors): readonly string[] {
  return Object.values(problems);
}
