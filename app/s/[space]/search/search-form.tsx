import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import { STYLES } from "@/lib/model/styles";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";
import { FigureFilters } from "./figure-filters";
import { typedIn, type SearchParams } from "./search-address";

interface SearchFormProps {
  readonly home: string;
  readonly params: SearchParams;
  readonly errors: FieldErrors;
  readonly people: readonly { readonly userId: string; readonly displayName: string }[];
  readonly preferences: Preferences;
}

const ANY = { value: "", text: "any" };

/** Words and filters. The form asks by its address, so that a search can be kept and sent on. */
export function SearchForm(props: SearchFormProps) {
  const { home, params, errors, preferences } = props;
  const isFiltered = Object.keys(params).some((name) => !["q", "page"].includes(name) && typedIn(params, name) !== "");
  return (
    <form action={`${home}/search`} className="mb-6 flex flex-col gap-4">
      <TextField
        name="q"
        defaultValue={typedIn(params, "q")}
        error={errors.q}
        label="Words"
        type="search"
        maxLength={200}
        hint="“In quotation marks” stand together; a minus before a word leaves it out."
        className="max-w-xl"
      />
      <details open={isFiltered}>
        <summary className="target underline">Filters</summary>
        <div className="grid gap-4 pb-2 sm:grid-cols-2 lg:grid-cols-4">
          <ChoiceFilters {...props} />
          <FigureFilters params={params} errors={errors} preferences={preferences} />
          {DAYS.map(({ name, label }) => (
            <TextField
              key={name}
              {...{ name, label }}
              type="date"
              defaultValue={typedIn(params, name)}
              error={errors[name]}
            />
          ))}
        </div>
      </details>
      <div>
        <button type="submit" className="button">
          Find
        </button>
      </div>
    </form>
  );
}

const DAYS = [
  { name: "since", label: "Changed since" },
  { name: "until", label: "Changed until" },
] as const;

function ChoiceFilters({ params, errors, people }: SearchFormProps) {
  const persons = people.map(({ userId, displayName }) => ({ value: userId, text: displayName }));
  const choices = [...CHOICES, { name: "author", label: "By", options: [{ ...ANY, text: "anybody" }, ...persons] }];
  return choices.map(({ name, label, options }) => (
    <SelectField key={name} {...{ name, label, options }} defaultValue={typedIn(params, name)} error={errors[name]} />
  ));
}

const CHOICES = [
  {
    name: "kind",
    label: "Kind",
    options: [
      { ...ANY, text: "everything" },
      { value: "recipe", text: "recipes" },
      { value: "brew", text: "brews" },
      { value: "ingredient", text: "ingredients" },
    ],
  },
  {
    name: "where",
    label: "Where",
    options: [
      { value: "", text: "here" },
      { value: "everywhere", text: "in all my clubs and on my bench" },
    ],
  },
  {
    name: "style",
    label: "Style",
    options: [ANY, ...STYLES.map(({ code, name }) => ({ value: code, text: `${code} ${name}` }))],
  },
  {
    name: "brewed",
    label: "Brewed",
    options: [
      { ...ANY, text: "brewed or not" },
      { value: "yes", text: "brewed" },
      { value: "no", text: "not brewed yet" },
    ],
  },
];
