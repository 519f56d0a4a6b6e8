import { isWordField, measuredFieldOf, type DraftField } from "./draft";
import type { DraftAction } from "./editor-action";
import { COLUMN_LABELS, rowNoun, type RowNames } from "./row-labels";
import { WORD_LABELS } from "./word-labels";

/** The field that an action types into; null for what is done at once. */
export function typedField(action: DraftAction): string | null {
  if (action.type === "type") return action.field;
  return action.type === "type in row" ? `${action.list}.${action.row}.${action.column}` : null;
}

/** A step in words, for the buttons that take it back or do it again. */
export function wordsOf(action: DraftAction, names: RowNames): string {
  const nameOf = (list: string, row: string): string => names.get(`${list}.${row}`) ?? "a row";
  switch (action.type) {
    case "type":
      return fieldLabel(action.field);
    case "type in row":
      return `${COLUMN_LABELS[action.column]} of ${nameOf(action.list, action.row)}`;
    case "fill":
    case "fill row":
      return "figures of a name";
    case "add row":
      return `${rowNoun(action.list)} added`;
    case "duplicate row":
      return `${nameOf(action.list, action.row)} copied`;
    case "remove row":
      return `${action.name} removed`;
    case "move row":
      return `${nameOf(action.list, action.row)} moved`;
    case "put":
      return action.words;
  }
}

export function fieldLabel(name: DraftField): string {
  return isWordField(name) ? WORD_LABELS[name] : measuredFieldOf(name).label;
}
