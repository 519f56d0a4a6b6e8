"use client";

import dynamic from "next/dynamic";
import type { ReactElement } from "react";
import type { Limit } from "@/lib/calc/ledger";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { useEditorValue } from "./use-editor-value";

// Limits come with their words, which nobody needs whose recipe fits.
const FitNotice = dynamic(() => import("./fit-notice"));

/** Where the recipe does not fit the chosen kettle; nothing where it does. */
export function FitLine({ kettleName }: { readonly kettleName: string }): ReactElement | null {
  const { preferences } = useEditor();
  const broken = useEditorValue(brokenLimits, isSameLimits);
  return broken.length === 0 ? null : <FitNotice {...{ broken, kettleName, preferences }} />;
}

function brokenLimits({ shown }: EditorState): readonly Limit[] {
  return shown?.brewed.ledger.limits.filter(({ ok }) => !ok) ?? [];
}

function isSameLimits(one: readonly Limit[], other: readonly Limit[]): boolean {
  return (
    one.length === other.length &&
    one.every(({ id, value, bound }, i) => {
      const now = other[i];
      return now !== undefined && id === now.id && value === now.value && bound === now.bound;
    })
  );
}
