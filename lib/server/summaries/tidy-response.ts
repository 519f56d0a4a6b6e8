import "server-only";
import { csvText, type CsvCell } from "@/lib/model/csv";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import { asRecord, FIGURE_COLUMNS, figureRows, READING_COLUMNS, readingRows } from "@/lib/model/summary/tidy";
import type { Member } from "../session";
import { streamOf } from "../text-stream";
import { readingsOf } from "./readings-of";

export type TidyRows = "figures" | "readings";
export type TidyFormat = "csv" | "json";

const TYPES: Readonly<Record<TidyFormat, string>> = {
  csv: "text/csv; charset=utf-8",
  json: "application/json; charset=utf-8",
};

/** Tidy data as a file. It is made brew by brew while it is sent, so that no size of a club fills the memory. */
export function tidyResponse(
  member: Member,
  brews: readonly BrewAmongOthers[],
  { rows, format }: { readonly rows: TidyRows; readonly format: TidyFormat },
): Response {
  const columns = rows === "figures" ? FIGURE_COLUMNS : READING_COLUMNS;
  async function* parts(): AsyncGenerator<string> {
    let isFirst = true;
    yield format === "csv" ? csvText([columns], { byteOrderMark: true }) : "[";
    for (const brew of brews) {
      const found: readonly (readonly CsvCell[])[] =
        rows === "figures" ? figureRows(brew) : readingRows(brew, await readingsOf(member, brew.id));
      if (found.length === 0) continue;
      const json = (): string => found.map((row) => `\n${JSON.stringify(asRecord(columns, row))}`).join(",");
      yield format === "csv" ? csvText(found) : `${isFirst ? "" : ","}${json()}`;
      isFirst = false;
    }
    if (format === "json") yield "\n]\n";
  }
  return new Response(streamOf(parts()), {
    headers: {
      "Content-Type": TYPES[format],
      "Content-Disposition": `attachment; filename="brews-${rows}.${format}"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
}
