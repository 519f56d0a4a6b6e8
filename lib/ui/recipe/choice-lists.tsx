import type { ReactElement } from "react";
import { useEditor } from "./editor-context";

/** The names to choose from while typing one. */
export function ChoiceLists(): ReactElement | null {
  const { reference } = useEditor();
  if (reference === null) return null;
  const { fermentables, hops, yeasts } = reference;
  return (
    <>
      <Choices id="typical-mashGrist" of={fermentables.filter(({ station }) => station === "mash")} />
      <Choices id="typical-kettleGrist" of={fermentables.filter(({ station }) => station === "kettle")} />
      <Choices id="hop-varieties" of={hops} />
      <Choices id="yeast-classes" of={yeasts} />
    </>
  );
}

function Choices(props: { readonly id: string; readonly of: readonly { readonly name: string }[] }): ReactElement {
  return (
    <datalist id={props.id}>
      {props.of.map(({ name }) => (
        <option key={name} value={name} />
      ))}
    </datalist>
  );
}
