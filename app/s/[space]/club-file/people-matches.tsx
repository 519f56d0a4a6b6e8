import { SelectField } from "@/lib/ui/select-field";

export interface LookedAt {
  readonly name: string;
  readonly exportedAt: string;
  readonly people: readonly { readonly id: string; readonly name: string }[];
  readonly parts: readonly { readonly table: string; readonly count: number }[];
}

interface PeopleMatchesProps {
  readonly file: LookedAt;
  readonly people: readonly { readonly userId: string; readonly displayName: string }[];
}

/** Who of the file is who of this club. Whoever is nobody here becomes a former member with their name. */
export function PeopleMatches({ file, people }: PeopleMatchesProps) {
  const options = [
    { value: "", text: "Nobody here: a former member" },
    ...people.map(({ userId, displayName }) => ({ value: userId, text: displayName })),
  ];
  return (
    <div className="flex flex-col items-start gap-4">
      <p role="status">
        {file.name}, written {file.exportedAt.slice(0, 10)}:{" "}
        {file.parts.map(({ table, count }) => `${String(count)} ${table.replaceAll("_", " ")}`).join(", ")}.
      </p>
      {file.people.map(({ id, name }) => (
        <SelectField key={id} name={`match.${id}`} label={`${name} is`} options={options} />
      ))}
    </div>
  );
}
