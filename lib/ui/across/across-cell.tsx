import type { ReactElement, ReactNode } from "react";
import type { ComparedRow } from "@/lib/calc/compare";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "../quantity";

/** Which of a brewer's three numbers. */
export type AcrossTerm = "planned" | "measured" | "difference";

interface AcrossCellProps {
  readonly name: string;
  readonly row: ComparedRow | null;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
  /** Puts a number where its explanation can be opened. */
  readonly explained: (of: AcrossTerm, number: ReactNode) => ReactNode;
}

/** One brewer's planned, measured and difference of one quantity, always in this order. */
export function AcrossCell({ name, row, dimension, preferences, explained }: AcrossCellProps): ReactElement {
  const shared = { dimension, preferences };
  return (
    <td role="cell">
      <span aria-hidden className="across-name">
        {name}
      </span>
      {row === null ? (
        <Quantity value={null} {...shared} reason="no such number in this plan" />
      ) : (
        <dl>
          <Line term="planned">
            {explained("planned", <Quantity value={row.planned} interval={row.interval} {...shared} />)}
          </Line>
          <Line term="measured">
            {row.measured === null ? (
              <Quantity value={null} {...shared} reason="not measured" />
            ) : (
              explained("measured", <Quantity value={row.measured} {...shared} />)
            )}
          </Line>
          <Line term="difference">
            {row.measured === null ? (
              <Quantity value={null} {...shared} reason="not measured" />
            ) : (
              explained("difference", <Difference row={row} measured={row.measured} {...shared} />)
            )}
          </Line>
        </dl>
      )}
    </td>
  );
}

function Difference({
  row,
  measured,
  ...shared
}: Pick<AcrossCellProps, "dimension" | "preferences"> & { readonly row: ComparedRow; readonly measured: number }) {
  return (
    <>
      <Quantity value={measured} differenceFrom={row.planned} attention={row.expectation === "outside"} {...shared} />
      <span className="across-verdict">{row.expectation}</span>
    </>
  );
}

function Line({ term, children }: { readonly term: AcrossTerm; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}
