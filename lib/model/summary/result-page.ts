import type { AskedBrew } from "./answer";
import { inOrder, orderOf, type ResultOrder } from "./result-order";

/** As many as stand below each other at once. */
const ROWS = 40;
/** Pictures of their own are drawn for the first of a page only. */
const PICTURES = 24;

export interface ResultPage {
  readonly order: ResultOrder;
  readonly page: number;
  readonly pages: number;
  /** The brews of the page, in its order. */
  readonly rows: readonly AskedBrew[];
  /** Those of them whose curves are drawn. */
  readonly drawn: readonly AskedBrew[];
}

/** The page that an address asks for; one that there is not is the nearest that there is. */
export function resultPage(measured: readonly AskedBrew[], asked: Readonly<Record<string, string>>): ResultPage {
  const order = orderOf(asked);
  const pages = Math.ceil(measured.length / ROWS);
  const page = Math.min(pages, Math.max(1, Math.floor(Number(asked["page"] ?? 1)) || 1));
  const rows = inOrder(measured, order).slice((page - 1) * ROWS, page * ROWS);
  return { order, page, pages, rows, drawn: rows.slice(0, PICTURES) };
}
