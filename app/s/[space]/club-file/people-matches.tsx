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

/** What people look for in a club's file; all else in it belongs to one of these. */
const NOUNS: Readonly<Record<string, readonly [one: string, many: string]>> = {
  recipe: ["recipe", "recipes"],
  equipment: ["kettle", "kettles"],
  ingredient: ["ingredient", "ingredients"],
  ingredient_lot: ["lot", "lots"],
  shared_brew: ["shared brew", "shared brews"],
  brew: ["brew", "brews"],
  order_round: ["group order", "group orders"],
};

function contentOf({ parts }: LookedAt): string {
  const named = parts.flatMap(({ table, count }) => {
    const words = Object.hasOwn(NOUNS, table) ? NOUNS[table] : undefined;
    return words === undefined ? [] : [`${String(count)} ${words[count === 1 ? 0 : 1]}`];
  });
  return named.length === 0 ? "nothing" : named.join(", ");
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
        {file.name}, written {file.exportedAt.slice(0, 10)}: {contentOf(file)}, and what belongs to them.
      </p>
      {file.people.length === 0 ? null : (
        <p className="text-muted">
          Who of the file is who of this club? Whoever is nobody here stays by name as a former member, without an
          account.
        </p>
      )}
      {file.people.map(({ id, name }) => (
        <SelectField key={id} name={`match.${id}`} label={`${name} is`} options={options} />
      ))}
    </div>
  );
}
