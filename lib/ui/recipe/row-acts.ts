import { flushSync } from "react-dom";
import type { RowList } from "./draft";
import type { Editor } from "./editor-context";

interface RowOfPage {
  readonly dispatch: Editor["dispatch"];
  readonly list: RowList;
  readonly rowKey: string;
  /** The row on the page. */
  readonly item: Element | null;
}

/** Copies a row and goes on in the copy. */
export function copyRow({ dispatch, list, rowKey, item }: RowOfPage): void {
  flushSync(() => dispatch({ type: "duplicate row", list, row: rowKey }));
  item?.nextElementSibling?.querySelector("input")?.focus();
}

/** Removes a row and goes on where one is added. */
export function removeRow({ dispatch, list, rowKey, name, item }: RowOfPage & { readonly name: string }): void {
  const add = item?.closest("section")?.querySelector<HTMLElement>("[data-add]");
  flushSync(() => dispatch({ type: "remove row", list, row: rowKey, name }));
  add?.focus();
}
