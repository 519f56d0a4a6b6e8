import type { Equipment } from "@/lib/calc/ledger";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { addRow, changeRow, duplicateRow, moveRow, removeRow, typeInRow } from "./change-rows";
import { compute } from "./compute";
import { isWordField, type Draft } from "./draft";
import type { DraftAction, EditorAction } from "./editor-action";
import { typed, word } from "./entry";
import { NO_HISTORY, recorded, redone, undone, type History, type Travelled } from "./history";
import { readDraft, type DraftReading } from "./read-draft";
import { rowResults } from "./row-results";
import type { Ranges, Shown } from "./shown";
import { typedField, wordsOf } from "./words-of-action";

/** A kettle to compute on. */
export interface KettleChoice {
  readonly id: string;
  readonly label: string;
  readonly equipment: Equipment;
}

export interface EditorState {
  readonly draft: Draft;
  readonly kettle: string;
  /** The note on the change, which stands with the revision. */
  readonly note: string;
  /** How often another draft was opened in place of this one. */
  readonly openings: number;
  readonly reading: DraftReading;
  /** The last ledger that could be computed. */
  readonly shown: Shown | null;
  /** The last intervals that were computed, and of what; they follow when somebody pauses. */
  readonly ranges: Ranges | null;
  /** Why the ledger is older than the draft; empty when it is not. */
  readonly waitingFor: readonly string[];
  readonly rowsMade: number;
  readonly history: History;
  /** The name of the row that was removed last, until something else changes. */
  readonly removed: string | null;
}

export interface Setting {
  readonly kettles: readonly KettleChoice[];
  readonly preferences: Preferences;
}

const NOTHING: readonly string[] = [];

/** Opens a draft on a kettle, or on the first one where that is gone. */
export function openEditor(draft: Draft, wanted: string, setting: Setting): EditorState {
  const kettle = setting.kettles.some(({ id }) => id === wanted) ? wanted : (setting.kettles[0]?.id ?? "");
  return recomputed(
    {
      draft,
      kettle,
      note: "",
      openings: 0,
      reading: readDraft(draft, setting.preferences),
      shown: null,
      ranges: null,
      waitingFor: NOTHING,
      rowsMade: rowsMadeIn(draft),
      history: NO_HISTORY,
      removed: null,
    },
    setting,
  );
}

export function editorReducer(
  setting: Setting,
): (state: EditorState, action: EditorAction, atMs: number) => EditorState {
  return (state, action, atMs) => {
    switch (action.type) {
      case "choose kettle":
        return recomputed({ ...state, kettle: action.kettle }, setting);
      case "intervals":
        return { ...state, ranges: action.ranges };
      case "open":
        return { ...openEditor(action.draft, action.kettle, setting), note: action.note, openings: state.openings + 1 };
      case "note":
        return { ...state, note: action.text };
      case "undo":
        return travelled(state, undone(state.history, state.draft), setting);
      case "redo":
        return travelled(state, redone(state.history, state.draft), setting);
      default:
        return done(state, action, atMs, setting);
    }
  };
}

function travelled(state: EditorState, to: Travelled | null, setting: Setting): EditorState {
  return to === null ? state : withDraft({ ...state, history: to.history, removed: null }, to.draft, setting);
}

function done(state: EditorState, action: DraftAction, atMs: number, setting: Setting): EditorState {
  let { rowsMade } = state;
  const makeKey = (): string => `new-${++rowsMade}`;
  const draft = changed(state.draft, action, makeKey);
  if (draft === state.draft) return state;
  const history = historyAfter(state, action, atMs);
  const removed = action.type === "remove row" ? action.name : null;
  return withDraft({ ...state, rowsMade, history, removed }, draft, setting);
}

function historyAfter({ history, draft, reading }: EditorState, action: DraftAction, atMs: number): History {
  // What a name brings with it belongs to the typing of the name.
  if (action.type === "fill" || action.type === "fill row") return history;
  return recorded(history, { before: draft, words: wordsOf(action, reading.names), field: typedField(action), atMs });
}

/** Words that only people read change no number. */
function withDraft(state: EditorState, draft: Draft, setting: Setting): EditorState {
  if (isSameBrew(state.draft, draft)) return { ...state, draft };
  return recomputed({ ...state, draft, reading: readDraft(draft, setting.preferences) }, setting);
}

function isSameBrew(one: Draft, other: Draft): boolean {
  if (one.rows !== other.rows) return false;
  const { title: _title, notes: _notes, style: _style, ...rest } = one.fields;
  return Object.entries(rest).every(([name, entry]) => Object.is(entry, other.fields[name as keyof typeof rest]));
}

function changed(draft: Draft, action: DraftAction, makeKey: () => string): Draft {
  switch (action.type) {
    case "type": {
      const entry = isWordField(action.field) ? word(action.text) : typed(action.text);
      return { ...draft, fields: { ...draft.fields, [action.field]: entry } };
    }
    case "fill":
      return { ...draft, fields: { ...draft.fields, ...action.entries } };
    case "type in row":
      return typeInRow(draft, action.list, action.row, { [action.column]: action.text });
    case "fill row":
      return changeRow(draft, action.list, action.row, action.entries);
    case "add row":
      return addRow(draft, action.list, makeKey(), action.below);
    case "duplicate row":
      return duplicateRow(draft, action.list, makeKey(), action.row);
    case "remove row":
      return removeRow(draft, action.list, action.row);
    case "move row":
      return moveRow(draft, action.list, action.row, action.by);
    case "put":
      return action.change(draft, makeKey);
  }
}

function recomputed(state: EditorState, { kettles }: Setting): EditorState {
  const { written, problems } = state.reading;
  const equipment = kettles.find(({ id }) => id === state.kettle)?.equipment;
  if (equipment === undefined) return { ...state, waitingFor: ["Choose a kettle to compute on"] };
  if (written === null) return { ...state, waitingFor: messages(problems) };
  const computed = compute(written.recipe, equipment, written.ambient);
  if (!computed.ok) return { ...state, waitingFor: [computed.why] };
  const { brewed } = computed;
  const { keys } = written;
  return { ...state, shown: { brewed, keys, results: rowResults(brewed.ledger, keys) }, waitingFor: NOTHING };
}

function messages(problems: FieldErrors): readonly string[] {
  return Object.values(problems);
}

/** Rows of a draft that was kept have keys already; new ones go on from there. */
function rowsMadeIn({ rows }: Draft): number {
  const numbers = Object.values(rows).flatMap((list) =>
    list.map(({ key }) => Number(/^new-(\d+)$/.exec(key)?.[1] ?? 0)),
  );
  return Math.max(0, ...numbers);
}
