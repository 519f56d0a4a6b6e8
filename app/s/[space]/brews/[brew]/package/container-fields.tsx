"use client";

import { CONTAINER_KINDS } from "@/lib/model/cellar/containers";
import { countFor } from "@/lib/model/cellar/packaging-plan";
import { EMPTY_CONTAINER, type ContainerDraft, type ReadPackage } from "@/lib/ui/cellar/package-draft";
import { displayUnit } from "@/lib/ui/display-unit";
import { NumberField } from "@/lib/ui/number-field";
import { SelectField } from "@/lib/ui/select-field";
import type { PackageFieldsProps } from "./package-fields";

const KINDS = CONTAINER_KINDS.map(({ name }) => ({ value: name, text: name }));
const MOST_KINDS = 5;

/** Which containers, how many of each, and what their maker states. */
export function ContainerFields({ read, ...fields }: PackageFieldsProps & { readonly read: ReadPackage }) {
  const { draft, type } = fields;
  const { containers } = draft;
  const set = (index: number, change: Partial<ContainerDraft>): void =>
    type({ containers: containers.map((each, i) => (i === index ? { ...each, ...change } : each)) });
  return (
    <fieldset className="flex flex-col gap-4">
      <legend className="mb-2 font-semibold">Containers</legend>
      {containers.map((container, i) => (
        <ContainerRow
          key={i}
          {...fields}
          index={i}
          container={container}
          beerL={read.choice?.litres ?? null}
          set={(change) => set(i, change)}
        />
      ))}
      <div className="flex flex-wrap gap-3">
        {containers.length < MOST_KINDS ? (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => type({ containers: [...containers, EMPTY_CONTAINER] })}
          >
            Another kind
          </button>
        ) : null}
        {containers.length > 1 ? (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => type({ containers: containers.slice(0, -1) })}
          >
            Remove the last
          </button>
        ) : null}
      </div>
    </fieldset>
  );
}

interface ContainerRowProps extends Omit<PackageFieldsProps, "draft" | "type"> {
  readonly index: number;
  readonly container: ContainerDraft;
  readonly beerL: number | null;
  readonly set: (change: Partial<ContainerDraft>) => void;
}

function ContainerRow({ index, container, beerL, set, errors, preferences }: ContainerRowProps) {
  const litres = CONTAINER_KINDS.find(({ name }) => name === container.kind)?.litres;
  const [count, rated] = [`package-count-${String(index)}`, `package-rated-${String(index)}`];
  const of = index === 0 ? "" : ` (kind ${String(index + 1)})`;
  return (
    <div className="grid gap-4 sm:grid-cols-3">
      <SelectField
        name={`package-kind-${String(index)}`}
        label={`Container${of}`}
        value={container.kind}
        options={KINDS}
        onChange={(event) => set({ kind: event.target.value })}
      />
      <NumberField
        name={count}
        label={`How many${of}`}
        unit=""
        hint={
          beerL === null || litres === undefined ? undefined : `All of it fills ${String(countFor(beerL, litres))}.`
        }
        value={container.count}
        onChange={(event) => set({ count: event.target.value })}
        error={errors[count]}
      />
      <NumberField
        name={rated}
        label={`Maker states at most${of}`}
        unit={displayUnit("pressure", preferences).unit}
        hint="Empty where nothing is stated."
        value={container.rated}
        onChange={(event) => set({ rated: event.target.value })}
        error={errors[rated]}
      />
    </div>
  );
}
