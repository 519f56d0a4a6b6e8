"use client";

import type { ReactElement } from "react";
import type { Style } from "@/lib/model/styles";
import { DraftSelect } from "./draft-select";
import { useEditor } from "./editor-context";
import { useEditorValue } from "./use-editor-value";

/** Styles that share a code in the guidelines have a number behind it here. */
function styleName({ code, name }: Style): string {
  return `${code.replace(/-\d+$/, "")} ${name}`;
}

/** The style that the beer is held against, if any. Until the list has come, only the chosen one stands in it. */
export function StyleChoice(): ReactElement {
  const { reference } = useEditor();
  const code = useEditorValue(({ draft }) => draft.fields.style.text);
  const none = { value: "", text: "No style" };
  const known = reference?.styles.map((style) => ({ value: style.code, text: styleName(style) }));
  const options = [none, ...(known ?? (code === "" ? [] : [{ value: code, text: code }]))];
  return <DraftSelect name="style" label="Style" options={options} />;
}
