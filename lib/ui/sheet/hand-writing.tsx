import type { ReactElement } from "react";

const LINES = 5;

/** Lines to write on. */
export function HandWriting(): ReactElement {
  return (
    <section>
      <h2>Notes of the day</h2>
      {Array.from({ length: LINES }, (_, i) => (
        <div key={i} className="sheet-line" />
      ))}
    </section>
  );
}
