import "server-only";
import { csvText, type CsvCell } from "@/lib/model/csv";

/** A table to be saved as a file. A spreadsheet runs nothing of what people wrote into it. */
export function csvResponse(rows: readonly (readonly CsvCell[])[], filename: string): Response {
  return new Response(csvText(rows, { byteOrderMark: true }), {
    headers: {
      "Content-Type": "text/csv; charset=utf-8",
      "Content-Disposition": `attachment; filename="${filename}"`,
      "Cache-Control": "no-store",
      "X-Content-Type-Options": "nosniff",
    },
  });
}
