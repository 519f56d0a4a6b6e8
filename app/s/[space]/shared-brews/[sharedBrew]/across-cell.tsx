import Link from "next/link";
import type { ReactNode } from "react";
import type { ComparedRow } from "@/lib/calc/compare";
import type { Dimension } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "@/lib/ui/quantity";

interface AcrossCellProps {
  readonly name: string;
  readonly row: ComparedRow | null;
  /** Where the planned number is explained; the others stand beside it there. */
  readonly href: string;
  readonly dimension: Dimension;
  readonly preferences: Preferences;
}

/** One brewer's planned, measured and difference of one quantity, always in this order. */
export function AcrossCell({ name, row, href, dimension, preferences }: AcrossCellProps) {
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
            <Link href={`${href}&of=planned`} className="explained">
              <Quantity value={row.planned} interval={row.interval} {...shared} />
            </Link>
          </Line>
          <Line term="measured">
            {row.measured === null ? (
              <Quantity value={null} {...shared} reason="not measured" />
            ) : (
              <Link href={`${href}&of=measured`} className="explained font-semibold">
                <Quantity value={row.measured} {...shared} />
              </Link>
            )}
          </Line>
          <Line term="difference">
            {row.measured === null ? (
              <Quantity value={null} {...shared} reason="not measured" />
            ) : (
              <Link href={`${href}&of=difference`} className="explained">
                <Quantity
                  value={row.measured}
                  differenceFrom={row.planned}
                  attention={row.expectation === "outside"}
                  {...shared}
                />
                <span className="across-verdict">{row.expectation}</span>
              </Link>
            )}
          </Line>
        </dl>
      )}
    </td>
  );
}

function Line({ term, children }: { readonly term: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{term}</dt>
      <dd>{children}</dd>
    </div>
  );
}
