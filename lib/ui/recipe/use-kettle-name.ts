"use client";

import type { KettleChoice } from "./editor-state";
import { useEditorValue } from "./use-editor-value";

/** The kettle that is computed on, as it is called. */
export function useKettleName(kettles: readonly KettleChoice[]): string {
  const chosen = useEditorValue(({ kettle }) => kettle);
  return kettles.find(({ id }) => id === chosen)?.equipment.name ?? "";
}
