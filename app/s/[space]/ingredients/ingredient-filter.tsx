import { INGREDIENT_KINDS } from "@/lib/model/ingredient-kinds";
import { KIND_WORDS } from "@/lib/ui/ingredient/kind-words";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";
import type { IngredientView } from "./ingredient-view";

const KINDS = [
  { value: "", text: "Everything" },
  ...INGREDIENT_KINDS.map((kind) => ({ value: kind, text: KIND_WORDS[kind].many })),
];

const WHOSE_CHOICES = [
  { value: "all", text: "Everybody’s" },
  { value: "generic", text: "The generic list" },
  { value: "club", text: "The club’s" },
  { value: "mine", text: "My own lots" },
];

const ON_HAND_CHOICES = [
  { value: "", text: "Whether or not" },
  { value: "yes", text: "On hand only" },
];

const ARCHIVED_CHOICES = [
  { value: "", text: "In use" },
  { value: "yes", text: "Put away" },
];

/** Which rows are shown; it works without scripts, and the choice belongs to the address. */
export function IngredientFilter({ view }: { readonly view: IngredientView }) {
  const kept = { sort: view.sort === "name" ? "" : view.sort, order: view.isDescending ? "down" : "" };
  return (
    <form method="get" role="search" className="no-print mb-4 flex flex-wrap items-end gap-x-4 gap-y-3">
      {Object.entries(kept)
        .filter(([, value]) => value !== "")
        .map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
      <TextField name="text" label="Name, label or owner" type="search" defaultValue={view.text} maxLength={80} />
      <SelectField name="kind" label="Kind" defaultValue={view.kind ?? ""} options={KINDS} />
      <SelectField name="whose" label="Whose" defaultValue={view.whose} options={WHOSE_CHOICES} />
      <SelectField
        name="onHand"
        label="On hand"
        defaultValue={view.onHandOnly ? "yes" : ""}
        options={ON_HAND_CHOICES}
      />
      <SelectField
        name="archived"
        label="Put away"
        defaultValue={view.archived ? "yes" : ""}
        options={ARCHIVED_CHOICES}
      />
      <button type="submit" className="button button-quiet">
        Show
      </button>
    </form>
  );
}
