"use client";

import { useMemo, useState, type ReactElement } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { FormattedFigure } from "../formatted-figure";
import { formatDifference } from "../format-difference";
import { formatQuantity } from "../format-quantity";
import { useEditor } from "./editor-context";
import { explainedDimension, mostInfluential, tried, type Trial } from "./what-if";
import { WhatIfRow } from "./what-if-row";

/** Other values for what moves a number most, tried out in place; the recipe stays as it is. */
export default function WhatIfSection(props: {
  readonly explained: string;
  readonly explanation: ExplainedNumber;
}): ReactElement | null {
  const { explained, explanation } = props;
  const { store, preferences } = useEditor();
  // What was there when the explanation was opened, so that a trial stands still.
  const [{ draft, shown }] = useState(() => store.state());
  const [texts, setTexts] = useState<Readonly<Record<string, string>>>({});
  const equipment = shown?.brewed.equipment;
  const trial = useMemo<Trial | null>(
    () => (equipment === undefined ? null : { equipment, preferences, explained }),
    [equipment, preferences, explained],
  );
  const inputs = useMemo(() => (trial === null ? [] : mostInfluential(draft, trial)), [draft, trial]);
  const { value } = explanation;
  if (trial === null || value === null || inputs.length === 0) return null;
  const changed = inputs.reduce((into, input) => {
    const text = texts[input.id];
    return text === undefined ? into : input.put(into, text);
  }, draft);
  return (
    <section className="mt-5" aria-labelledby="what-if-heading">
      <h3 id="what-if-heading" className="mb-1">
        What if
      </h3>
      <p className="text-sm text-muted">Tried out here only. The recipe stays as it is.</p>
      <ul>
        {inputs.map((input) => (
          <WhatIfRow
            key={input.id}
            input={input}
            text={texts[input.id] ?? input.entry.text}
            onChange={(text) => setTexts({ ...texts, [input.id]: text })}
          />
        ))}
      </ul>
      <Outcome from={value} to={Object.keys(texts).length === 0 ? value : tried(changed, trial)} trial={trial} />
      {Object.keys(texts).length === 0 ? null : (
        <button type="button" className="button-link" onClick={() => setTexts({})}>
          Back to the values of the recipe
        </button>
      )}
    </section>
  );
}

function Outcome(props: { readonly from: number; readonly to: number | null; readonly trial: Trial }): ReactElement {
  const { from, to, trial } = props;
  const { preferences, explained } = trial;
  const dimension = explainedDimension(explained);
  return (
    <p role="status" className="mt-2 text-xl">
      {to === null ? (
        "With these values there is no such number."
      ) : (
        <>
          <FormattedFigure shown={formatQuantity({ value: to, dimension, preferences })} />{" "}
          {to === from ? null : (
            <span className="text-base">
              (<FormattedFigure shown={formatDifference({ value: to, from, dimension, preferences })} />)
            </span>
          )}
        </>
      )}
    </p>
  );
}
