"use client";

import { useId, type ReactElement } from "react";
import type { WhatIfInput } from "./what-if-inputs";
import { WhatIfRow } from "./what-if-row";

/** The inputs of recipe, day or kettle under their heading. */
export function WhatIfRows(props: {
  readonly heading: string;
  readonly inputs: readonly WhatIfInput[];
  readonly texts: Readonly<Record<string, string>>;
  readonly onChange: (id: string, text: string) => void;
}): ReactElement | null {
  const { heading, inputs, texts, onChange } = props;
  const headingId = useId();
  if (inputs.length === 0) return null;
  return (
    <section className="mt-3" aria-labelledby={headingId}>
      <h4 id={headingId} className="text-sm font-semibold">
        {heading}
      </h4>
      <ul>
        {inputs.map((input) => (
          <WhatIfRow
            key={input.id}
            input={input}
            text={texts[input.id] ?? input.entry.text}
            onChange={(text) => onChange(input.id, text)}
          />
        ))}
      </ul>
    </section>
  );
}
