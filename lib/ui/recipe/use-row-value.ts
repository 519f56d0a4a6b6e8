"use client";

import { useCallback } from "react";
import type { Column, RowList } from "./draft";
import type { EditorState } from "./editor-state";
import { EMPTY, type Entry } from "./entry";
import { useEditorValue } from "./use-editor-value";

/** What stands in one cell. */
export function useCell(list: RowList, rowKey: string, column: Column): Entry {
  return useEditorValue(
    useCallback(
      ({ draft }: EditorState) => draft.rows[list].find(({ key }) => key === rowKey)?.cells[column] ?? EMPTY,
      [list, rowKey, column],
    ),
  );
}

/** How a row is spoken of. */
export function useRowName(list: RowList, rowKey: string): string {
  return useEditorValue(
    useCallback(({ reading }: EditorState) => reading.names.get(`${list}.${rowKey}`) ?? "", [list, rowKey]),
  );
}

/** The message about a field or a cell, by the name of its control. */
export function useProblem(control: string): string | undefined {
  return useEditorValue(useCallback(({ reading }: EditorState) => reading.problems[control], [control]));
}
