import type { MouseEvent, ReactElement } from "react";
import { NUMBER_COLUMNS } from "./kettle-columns";
import { viewQuery, type KettleView, type SortColumn } from "./kettle-view";

const COLUMNS: readonly { readonly id: SortColumn; readonly label: string; readonly isNumber: boolean }[] = [
  { id: "kettle", label: "Kettle", isNumber: false },
  { id: "brewer", label: "Brewer", isNumber: false },
  { id: "fit", label: "Fits", isNumber: false },
  ...NUMBER_COLUMNS.map(({ id, label }) => ({ id, label, isNumber: true })),
];

/** The heading row: every column sorts, by a link that also works without scripts. */
export interface KettleHeadProps {
  readonly view: KettleView;
  readonly home: string;
  readonly onView: (view: KettleView) => void;
}

export function KettleHead({ view, home, onView }: KettleHeadProps): ReactElement {
  return (
    <thead role="rowgroup">
      <tr role="row" aria-rowindex={1}>
        {COLUMNS.map(({ id, label, isNumber }) => {
          const isSorted = view.sort === id;
          const next = { ...view, sort: id, isDescending: isSorted && !view.isDescending };
          const sorted = view.isDescending ? "descending" : "ascending";
          return (
            <th
              key={id}
              role="columnheader"
              scope="col"
              className={isNumber ? "is-number" : undefined}
              aria-sort={isSorted ? sorted : undefined}
            >
              <a
                href={`${home}/kettles${viewQuery(next)}`}
                onClick={(event) => {
                  if (isPlainClick(event)) {
                    event.preventDefault();
                    onView(next);
                  }
                }}
              >
                {label}
              </a>
            </th>
          );
        })}
      </tr>
    </thead>
  );
}

/** A click that asks for another tab or window is left to the browser. */
function isPlainClick({ ctrlKey, metaKey, shiftKey, altKey }: MouseEvent): boolean {
  return !ctrlKey && !metaKey && !shiftKey && !altKey;
}
