import { DataTable } from "@/lib/ui/data-table";

interface FieldTableProps {
  readonly caption: string;
  /** A JSON Schema of an object. */
  readonly schema: Readonly<Record<string, unknown>>;
}

interface SchemaField {
  readonly name: string;
  readonly description: string;
  readonly type: string;
  readonly isNeeded: boolean;
}

/** The fields of an object, as its schema says them. */
export function FieldTable({ caption, schema }: FieldTableProps) {
  return (
    <DataTable<SchemaField>
      caption={caption}
      captionHidden
      columns={[
        { id: "name", label: "Field", cell: ({ name }) => <code className="whitespace-nowrap">{name}</code> },
        { id: "type", label: "Type", cell: ({ type }) => type },
        { id: "needed", label: "Needed", cell: ({ isNeeded }) => (isNeeded ? "yes" : "no") },
        { id: "description", label: "What it says", cell: ({ description }) => description },
      ]}
      records={fieldsOf(schema)}
      keyOf={({ name }) => name}
    />
  );
}

function fieldsOf(schema: Readonly<Record<string, unknown>>): readonly SchemaField[] {
  const needed: readonly unknown[] = Array.isArray(schema.required) ? schema.required : [];
  return Object.entries(recordOf(schema.properties)).map(([name, told]) => {
    const { description, type } = recordOf(told);
    return {
      name,
      description: typeof description === "string" ? description : "",
      type: typeof type === "string" ? type : "text or null",
      isNeeded: needed.includes(name),
    };
  });
}

function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null ? (value as Readonly<Record<string, unknown>>) : {};
}
