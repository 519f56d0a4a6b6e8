import { SelectField } from "@/lib/ui/select-field";
import type { KettleView } from "./kettle-view";

interface KettleFilterProps {
  readonly view: KettleView;
  readonly brewers: readonly { readonly id: string; readonly name: string }[];
}

/** Which kettles are shown, and for which volume; it works without scripts. */
export function KettleFilter({ view, brewers }: KettleFilterProps) {
  const kept = {
    rev: view.rev === null ? "" : String(view.rev),
    sort: view.sort,
    order: view.isDescending ? "down" : "",
  };
  return (
    <form method="get" className="no-print mb-4 flex flex-wrap items-end gap-x-4 gap-y-3">
      {Object.entries(kept)
        .filter(([, value]) => value !== "")
        .map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
      <SelectField
        name="volume"
        label="Volume"
        defaultValue={view.volume}
        options={[
          { value: "usual", text: "Each kettle’s usual batch" },
          { value: "written", text: "The same as in the recipe" },
        ]}
      />
      <SelectField
        name="fit"
        label="Show"
        defaultValue={view.fit}
        options={[
          { value: "all", text: "All kettles" },
          { value: "fits", text: "Those it fits" },
          { value: "not", text: "Those it does not fit" },
        ]}
      />
      <SelectField
        name="brewer"
        label="Brewer"
        defaultValue={view.brewer ?? ""}
        options={[{ value: "", text: "Everybody" }, ...brewers.map(({ id, name }) => ({ value: id, text: name }))]}
      />
      <button type="submit" className="button button-quiet">
        Show
      </button>
    </form>
  );
}
