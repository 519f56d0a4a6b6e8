"use client";

interface RunChooserProps {
  /** Numbers of the runs that there are, and of the one that is begun. */
  readonly numbers: readonly number[];
  readonly run: number;
  readonly mayWrite: boolean;
  readonly onChoose: (run: number) => void;
}

const MOST_RUNS = 20;

/** The runs of a part, and the way to do it again. */
export function RunChooser({ numbers, run, mayWrite, onChoose }: RunChooserProps) {
  const next = Math.max(0, ...numbers) + 1;
  return (
    <div role="group" aria-label="Runs of this part" className="no-print my-4 flex flex-wrap gap-3">
      {numbers.length < 2
        ? null
        : numbers.map((each) => (
            <button
              key={each}
              type="button"
              aria-pressed={each === run}
              className={each === run ? "button" : "button button-quiet"}
              onClick={() => onChoose(each)}
            >
              Run {each}
            </button>
          ))}
      {mayWrite && next <= MOST_RUNS ? (
        <button type="button" className="button button-quiet" onClick={() => onChoose(next)}>
          Do it again
        </button>
      ) : null}
    </div>
  );
}
