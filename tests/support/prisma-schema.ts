import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";

const FOLDER = fileURLToPath(new URL("../../prisma/schema/", import.meta.url));
const MODEL = /^model (\w+) \{\n([\s\S]*?)^\}/gm;
const FIELD = /^ {2}(\w+)\s+(Unsupported\("\w+"\)|\w+)(\?|\[\])?(.*)$/gm;

export interface SchemaModel {
  /** The name of its property on the client. */
  readonly accessor: string;
  readonly table: string;
  /** As "name" or "name?", for one that may be null. */
  readonly columns: readonly string[];
}

/** The models as they are written down: the client itself does not know the columns whose type it cannot read. */
export function readModels(): readonly SchemaModel[] {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith(".prisma"));
  const text = files.map((name) => readFileSync(`${FOLDER}${name}`, "utf8")).join("\n");
  const found = [...text.matchAll(MODEL)].map(([, name = "", body = ""]) => ({ name, body }));
  const names = new Set(found.map((model) => model.name));
  return found.map(({ name, body }) => ({
    accessor: name.charAt(0).toLowerCase() + name.slice(1),
    table: /^ {2}@@map\("(\w+)"\)/m.exec(body)?.[1] ?? name,
    columns: [...body.matchAll(FIELD)]
      .filter(([, , type = ""]) => !names.has(type))
      // A list is a column as any other; only what may be null is another type in the database.
      .map(
        ([, field = "", , modifier = "", rest = ""]) =>
          (/@map\("(\w+)"\)/.exec(rest)?.[1] ?? field) + modifier.replace("[]", ""),
      )
      .sort(),
  }));
}
