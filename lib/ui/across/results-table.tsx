import Link from "next/link";
import type { ReactElement } from "react";
import { QUANTITIES } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import type { AskedBrew } from "@/lib/model/summary/answer";
import type { ResultOrder, ResultSort } from "@/lib/model/summary/result-order";
import { DataTable, type DataColumn } from "../data-table";
import { Day } from "../day";
import { Quantity } from "../quantity";

interface ResultsTableProps {
  readonly home: string;
  readonly rows: readonly AskedBrew[];
  readonly strays: ReadonlySet<string>;
  readonly preferences: Preferences;
  readonly order: ResultOrder;
  readonly hrefOf: (order: ResultOrder) => string;
}

/** One line a brew; every number leads to where it is explained. */
export function ResultsTable(props: ResultsTableProps): ReactElement {
  return (
    <DataTable
      caption="Brews, planned and measured"
      captionHidden
      columns={columnsFor(props)}
      records={props.rows}
      keyOf={({ brew }) => brew.id}
    />
  );
}

type Sorting = (sort: ResultSort) => Pick<DataColumn<AskedBrew>, "sortHref" | "sorted">;

function columnsFor(props: ResultsTableProps): readonly DataColumn<AskedBrew>[] {
  const { home, strays, order, hrefOf } = props;
  const sorting: Sorting = (sort: ResultSort) => {
    const isSorted = order.sort === sort;
    const direction = isSorted && order.direction === "ascending" ? "descending" : "ascending";
    return { sortHref: hrefOf({ sort, direction }), ...(isSorted ? { sorted: order.direction } : {}) };
  };
  return [
    {
      ...{ id: "brew", label: "Brew", ...sorting("name") },
      cell: ({ brew, name }) => (
        <Link href={`${home}/brews/${brew.id}`} className="target">
          {name}
        </Link>
      ),
    },
    { id: "beer", label: "Beer", cell: ({ brew }) => `${brew.title}, revision ${String(brew.recipeRev)}` },
    {
      ...{ id: "begun", label: "Begun", ...sorting("begun") },
      cell: ({ brew }) => (brew.startedAt === null ? "not yet" : <Day at={brew.startedAt} />),
    },
    ...numberColumns(props, sorting),
    {
      id: "verdict",
      label: "Against the plan",
      cell: ({ brew, figure }) =>
        [figure.expectation, strays.has(brew.id) ? "far from the others" : null].filter(Boolean).join(", "),
    },
  ];
}

function numberColumns({ home, preferences }: ResultsTableProps, sorting: Sorting): readonly DataColumn<AskedBrew>[] {
  const explained = ({ brew, figure }: AskedBrew, of: string, number: ReactElement) => (
    <Link href={`${home}/brews/${brew.id}/comparison?explain=${figure.quantity}&of=${of}`} className="explained">
      {number}
    </Link>
  );
  const dimensionOf = ({ figure }: AskedBrew) => QUANTITIES[figure.quantity].dimension;
  return [
    {
      ...{ id: "planned", label: "Planned", isNumber: true, ...sorting("planned") },
      cell: (row) => {
        const { planned, plannedLow80, plannedHigh80 } = row.figure;
        const interval =
          plannedLow80 === null || plannedHigh80 === null ? null : { low80: plannedLow80, high80: plannedHigh80 };
        return explained(
          row,
          "planned",
          <Quantity value={planned} dimension={dimensionOf(row)} {...{ preferences, interval }} />,
        );
      },
    },
    {
      ...{ id: "measured", label: "Measured", isNumber: true, ...sorting("measured") },
      cell: (row) => explained(row, "measured", <Measured row={row} preferences={preferences} />),
    },
    {
      ...{ id: "difference", label: "Difference", isNumber: true, ...sorting("difference") },
      cell: (row) => {
        const { planned, measured, expectation } = row.figure;
        if (measured === null) return null;
        return explained(
          row,
          "difference",
          <Quantity
            value={measured}
            differenceFrom={planned}
            attention={expectation === "outside"}
            dimension={dimensionOf(row)}
            preferences={preferences}
          />,
        );
      },
    },
  ];
}

function Measured({ row: { figure }, preferences }: { readonly row: AskedBrew; readonly preferences: Preferences }) {
  const { measured, measuredLow80: low80, measuredHigh80: high80, quantity } = figure;
  const interval = low80 === null || high80 === null ? null : { low80, high80 };
  return <Quantity value={measured} dimension={QUANTITIES[quantity].dimension} {...{ preferences, interval }} />;
}
