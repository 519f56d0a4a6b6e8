"use client";

import { useEffect, useRef } from "react";
import { limitWords } from "@/lib/calc/explain";
import { LIMIT_IDS } from "@/lib/calc/ledger";
import { readView, type KettleView } from "@/lib/ui/kettles/kettle-view";
import { SelectField } from "@/lib/ui/select-field";
import { TextField } from "@/lib/ui/text-field";

interface KettleFilterProps {
  readonly view: KettleView;
  readonly onView: (view: KettleView, how?: "push" | "replace") => void;
}

const VOLUMES = [
  { value: "chosen", text: "As each brewer chose, else the usual batch" },
  { value: "usual", text: "Each kettle’s usual batch" },
  { value: "written", text: "The same as in the recipe" },
];

const FITS = [
  { value: "all", text: "All rows" },
  { value: "fits", text: "Those it fits" },
  { value: "way", text: "Those it fits by a way out" },
  { value: "not", text: "Those it does not fit" },
  { value: "none", text: "Members without a kettle" },
];

// A container that holds too little gas is no reason against a kettle.
const REASONS = LIMIT_IDS.filter((id) => id !== "carbonation").map((id) => ({
  value: id,
  text: limitWords({ id }).title,
}));

/** Which rows are shown, and for which volume. Without scripts it is a form with a button. */
export function KettleFilter({ view, onView }: KettleFilterProps) {
  const form = useRef<HTMLFormElement>(null);
  const text = useRef<HTMLInputElement>(null);
  // Going back changes the address under the field; while somebody types, the field leads.
  useEffect(() => {
    if (text.current !== null && document.activeElement !== text.current) text.current.value = view.text;
  }, [view.text]);

  function follow(how: "push" | "replace"): void {
    if (form.current === null) return;
    const fields = [...new FormData(form.current)].filter((field): field is [string, string] => field[1] !== "");
    onView({ ...readView(Object.fromEntries(fields)), rev: view.rev, isPlain: view.isPlain }, how);
  }

  return (
    <form
      ref={form}
      method="get"
      className="no-print mb-3 flex flex-wrap items-end gap-x-4 gap-y-3"
      onSubmit={(event) => {
        event.preventDefault();
        follow("push");
      }}
    >
      <KeptFields view={view} />
      <TextField
        ref={text}
        name="name"
        label="Name of kettle or brewer"
        type="search"
        defaultValue={view.text}
        onChange={() => {
          follow("replace");
        }}
      />
      <Choices
        view={view}
        onChange={() => {
          follow("push");
        }}
      />
    </form>
  );
}

function Choices({ view, onChange }: { readonly view: KettleView; readonly onChange: () => void }) {
  return (
    <>
      <SelectField name="fit" label="Show" value={view.fit} onChange={onChange} options={FITS} />
      <SelectField
        name="why"
        label="Limit that it breaks"
        value={view.why ?? ""}
        onChange={onChange}
        options={[{ value: "", text: "Any or none" }, ...REASONS]}
      />
      <SelectField name="volume" label="Volume" value={view.volume} onChange={onChange} options={VOLUMES} />
      <noscript>
        <button type="submit" className="button button-quiet">
          Show
        </button>
      </noscript>
    </>
  );
}

/** What the form itself does not ask stays as it is. */
function KeptFields({ view }: { readonly view: KettleView }) {
  const kept = {
    rev: view.rev === null ? "" : String(view.rev),
    sort: view.sort === "kettle" ? "" : view.sort,
    order: view.isDescending ? "down" : "",
    table: view.isPlain ? "plain" : "",
  };
  return Object.entries(kept)
    .filter(([, value]) => value !== "")
    .map(([name, value]) => <input key={name} type="hidden" name={name} value={value} />);
}
