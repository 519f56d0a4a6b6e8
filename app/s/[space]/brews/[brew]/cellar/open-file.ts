import type { CsvChoices } from "@/lib/model/cellar/csv/columns";
import type { CsvTable } from "@/lib/model/cellar/csv/table";

/** A file that is open, with how it is read. */
export interface OpenFile {
  readonly file: File;
  readonly table: Extract<CsvTable, { ok: true }>;
  readonly choices: CsvChoices;
}
