import type { ReactElement } from "react";
import type { PairedRow } from "@/lib/calc/compare";
import { QUANTITIES, QUANTITY_IDS } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { pairOf } from "@/lib/model/summary/answer";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import { DataTable, type DataColumn } from "../data-table";
import { Quantity } from "../quantity";
import { SelectField } from "../select-field";
import { ComparedFigure } from "./compared-figure";
import { comparedScale } from "./compared-scale";
import { Statistic } from "./statistic";

interface PairSectionProps {
  readonly brews: readonly BrewAmongOthers[];
  readonly nameOf: (brew: BrewAmongOthers) => string;
  readonly first: string | null;
  readonly second: string | null;
  /** What the address says besides, kept when two brews are chosen. */
  readonly kept: Readonly<Record<string, string>>;
  readonly preferences: Preferences;
}

/** Two brews of one's choice, number by number, with what is beyond chance. */
export function PairSection({
  brews,
  nameOf,
  first,
  second,
  kept,
  preferences,
}: PairSectionProps): ReactElement | null {
  const options = brews.map((brew) => ({ value: brew.id, text: nameOf(brew) }));
  const [a, b] = [first, second].map((id) => brews.find((brew) => brew.id === id));
  if (options.length < 2) return null;
  return (
    <section aria-labelledby="pair" className="mt-10">
      <h2 id="pair">Two brews side by side</h2>
      <form method="get" action="#pair" className="no-print mt-2 flex flex-wrap items-end gap-4">
        {Object.entries(kept).map(([name, value]) => (
          <input key={name} type="hidden" name={name} value={value} />
        ))}
        <SelectField name="first" label="First brew" options={options} defaultValue={first ?? options[0]?.value} />
        <SelectField name="second" label="Second brew" options={options} defaultValue={second ?? options[1]?.value} />
        <button type="submit" className="button button-quiet">
          Compare the two
        </button>
      </form>
      {a === undefined || b === undefined ? null : (
        <Pair rows={pairOf(a, b)} names={[nameOf(a), nameOf(b)]} preferences={preferences} />
      )}
    </section>
  );
}

interface PairProps {
  readonly rows: readonly PairedRow[];
  readonly names: readonly [string, string];
  readonly preferences: Preferences;
}

function Pair({ rows, names, preferences }: PairProps): ReactElement {
  const beyond = rows.filter(({ isBeyondChance }) => isBeyondChance);
  if (rows.length === 0) return <p className="mt-3">There is no number that was measured at both.</p>;
  return (
    <>
      <p className="mt-3">
        {beyond.length === 0
          ? `Of ${String(rows.length)} numbers none differs by more than the plans and the readings’ uncertainty explain.`
          : `Beyond chance: ${beyond.map(({ quantity }) => catalogued(quantity).label).join("; ")}.`}{" "}
        With {rows.length} numbers looked at, something is called so without cause in 5 of 100 pairs.
      </p>
      <DataTable
        caption={`${names[0]} and ${names[1]}`}
        records={rows}
        keyOf={({ quantity }) => quantity}
        columns={pairColumns(names, preferences)}
      />
    </>
  );
}

function pairColumns(names: PairProps["names"], preferences: Preferences): readonly DataColumn<PairedRow>[] {
  return [
    { id: "quantity", label: "Quantity", cell: ({ quantity }) => catalogued(quantity).label },
    {
      id: "first",
      label: names[0],
      isNumber: true,
      cell: (row) => <Value {...{ row, preferences }} of="first" />,
    },
    {
      id: "second",
      label: names[1],
      isNumber: true,
      cell: (row) => <Value {...{ row, preferences }} of="second" />,
    },
    {
      id: "beyond",
      label: "Difference that the plans do not explain",
      isNumber: true,
      cell: (row) => (
        <ComparedFigure
          scale={comparedScale("difference", catalogued(row.quantity).dimension, preferences)}
          value={row.beyondPlan}
          base={row.second}
          interval={row}
        />
      ),
    },
    {
      id: "p",
      label: "By chance",
      isNumber: true,
      cell: ({ adjustedP }) => <Statistic value={adjustedP} kind="probability" />,
    },
    {
      id: "verdict",
      label: "Verdict",
      cell: ({ isBeyondChance }) => (isBeyondChance ? <strong>beyond chance</strong> : "within chance"),
    },
  ];
}

function Value(a: { readonly row: PairedRow; readonly of: "first" | "second"; readonly preferences: Preferences }) {
  return <Quantity value={a.row[a.of]} dimension={catalogued(a.row.quantity).dimension} preferences={a.preferences} />;
}

function catalogued(quantity: string): (typeof QUANTITIES)[keyof typeof QUANTITIES] {
  return QUANTITIES[QUANTITY_IDS.find((id) => id === quantity) ?? "fermenter.originalExtract"];
}
