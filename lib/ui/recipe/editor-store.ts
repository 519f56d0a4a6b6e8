import type { EditorAction } from "./editor-action";
import type { EditorState } from "./editor-state";

/**
 * The editor's state outside of the components, so that each number on the screen listens for itself: a keystroke draws
 * what it changes and nothing else.
 */
export interface EditorStore {
  readonly state: () => EditorState;
  readonly dispatch: (action: EditorAction) => void;
  readonly subscribe: (listener: () => void) => () => void;
}

type Reduce = (state: EditorState, action: EditorAction, atMs: number) => EditorState;

export function createEditorStore(reduce: Reduce, first: EditorState): EditorStore {
  let state = first;
  const listeners = new Set<() => void>();
  return {
    state: () => state,
    dispatch: (action) => {
      const next = reduce(state, action, Date.now());
      if (next === state) return;
      state = next;
      for (const listener of listeners) listener();
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
