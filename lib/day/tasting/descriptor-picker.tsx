import type { ReactElement } from "react";
import {
  CHARACTERS,
  descriptorMeaning,
  descriptorName,
  FAULTS,
  type DescriptorId,
} from "@/lib/model/tasting/descriptors";
import { STRENGTH_NAMES, STRENGTHS, type NotedDescriptor, type Sheet, type Strength } from "@/lib/model/tasting/sheet";
import type { Draft } from "./use-sheet-draft";

/** What a tap makes of a word: slight, clear, strong, and away again. */
function tapped(noted: readonly NotedDescriptor[], word: DescriptorId): readonly NotedDescriptor[] {
  const now = noted.find((each) => each.word === word)?.strength;
  const next: Strength | undefined = STRENGTHS.find((strength) => strength === (now ?? 0) + 1);
  const others = noted.filter((each) => each.word !== word);
  return next === undefined ? others : [...others, { word, strength: next }];
}

/** Words of the trade for what is found in a beer. */
export function DescriptorPicker({ draft }: { readonly draft: Draft<Sheet> }): ReactElement {
  const { value: sheet } = draft;
  const onTap = (word: DescriptorId): void =>
    draft.change({ ...sheet, descriptors: tapped(sheet.descriptors, word) }, "now");
  return (
    <section aria-labelledby="found" className="judging-part">
      <h2 id="found">What you found</h2>
      <p className="text-muted">
        Tap once for slight, twice for clear, three times for strong; once more takes it away.
      </p>
      <Words heading="Character" words={CHARACTERS} noted={sheet.descriptors} onTap={onTap} />
      <Words
        heading="Faults, where the style does not ask for them"
        words={FAULTS}
        noted={sheet.descriptors}
        onTap={onTap}
      />
    </section>
  );
}

interface WordsProps {
  readonly heading: string;
  readonly words: readonly DescriptorId[];
  readonly noted: readonly NotedDescriptor[];
  readonly onTap: (word: DescriptorId) => void;
}

function Words({ heading, words, noted, onTap }: WordsProps): ReactElement {
  const found = noted.filter(({ word }) => words.includes(word)).length;
  return (
    <details className="mt-2">
      <summary className="target">
        {heading}
        {found === 0 ? "" : ` (${String(found)})`}
      </summary>
      <ul className="descriptors">
        {words.map((word) => {
          const strength = noted.find((each) => each.word === word)?.strength;
          return (
            <li key={word}>
              <button
                type="button"
                className={strength === undefined ? "descriptor" : "descriptor descriptor-noted"}
                onClick={() => onTap(word)}
              >
                <span className="font-semibold">
                  {descriptorName(word)}
                  {strength === undefined ? "" : `: ${STRENGTH_NAMES[strength]}`}
                </span>
                <span className="descriptor-meaning">{descriptorMeaning(word)}</span>
              </button>
            </li>
          );
        })}
      </ul>
    </details>
  );
}
