"use client";

import { useMemo, useState, type ReactElement } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import { draftOfEquipment } from "../equipment/equipment-draft";
import { useEditor } from "./editor-context";
import { mostInfluential, tried, withTexts, type Trial } from "./what-if";
import { WHAT_IF_GROUPS, type Setting, type WhatIfGroup } from "./what-if-inputs";
import { WhatIfOutcome } from "./what-if-outcome";
import { WhatIfRows } from "./what-if-rows";

/** Other values for what moves a number most, tried out in place; the recipe and the kettle stay as they are. */
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
  const trial = useMemo<Trial>(() => ({ preferences, explained }), [preferences, explained]);
  const setting = useMemo<Setting | null>(
    () => (equipment === undefined ? null : { draft, kettle: draftOfEquipment(equipment, preferences) }),
    [draft, equipment, preferences],
  );
  const inputs = useMemo(() => (setting === null ? [] : mostInfluential(setting, trial)), [setting, trial]);
  const { value } = explanation;
  if (setting === null || value === null || inputs.length === 0) return null;
  const isTried = Object.keys(texts).length > 0;
  const outcome = isTried ? tried(withTexts(setting, inputs, texts), trial) : { ok: true as const, value };
  return (
    <section className="mt-5" aria-labelledby="what-if-heading">
      <h3 id="what-if-heading" className="mb-1">
        What if
      </h3>
      <p className="text-sm text-muted">
        Tried out here only: nothing is saved, and neither the recipe nor the kettle changes.
      </p>
      {WHAT_IF_GROUPS.map((group) => (
        <WhatIfRows
          key={group}
          heading={headingOf(group, setting)}
          inputs={inputs.filter((input) => input.group === group)}
          texts={texts}
          onChange={(id, text) => setTexts({ ...texts, [id]: text })}
        />
      ))}
      <WhatIfOutcome from={value} outcome={outcome} trial={trial} />
      {isTried ? (
        <button type="button" className="button-link" onClick={() => setTexts({})}>
          Back to the values as they are
        </button>
      ) : null}
    </section>
  );
}

function headingOf(group: WhatIfGroup, { kettle }: Setting): string {
  if (group === "kettle") return `Kettle: ${kettle.name}`;
  return group === "day" ? "The day" : "Recipe";
}
