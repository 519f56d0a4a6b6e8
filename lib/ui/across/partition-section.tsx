import type { ReactElement } from "react";
import type { BrewPartition, UntoldFactor } from "@/lib/calc/compare";
import type { PartitionFactor, VarianceComponent } from "@/lib/calc/statistics";
import type { Preferences } from "@/lib/model/preferences";
import { DataTable } from "../data-table";
import { FormattedFigure } from "../formatted-figure";
import { Quantity } from "../quantity";
import { spreadText, type ComparedScale } from "./compared-scale";

interface PartitionProps {
  readonly partition: BrewPartition;
  readonly scale: ComparedScale;
  readonly base: number;
  readonly preferences: Preferences;
}

const NAMES: Readonly<Record<PartitionFactor | "residual", string>> = {
  brewer: "the brewer",
  equipment: "the kind of kettle",
  revision: "the revision",
  residual: "the rest",
};

const NOT_SPLIT: Readonly<Record<Extract<BrewPartition, { ok: false }>["reason"], string>> = {
  "too-few": "It takes three measured brews to split anything.",
  "too-many": "There are too many brewers, kettles and revisions to split while you wait: ask for one recipe.",
  "no-scatter": "All values are the same, so there is nothing to split.",
  "nothing-to-compare": "All brews that can be told apart share brewer, kind of kettle and revision.",
  confounded: "What these brews share cannot be told apart.",
  "no-residual": "Every value follows from who brewed on what, which leaves nothing to judge by.",
};

type Component = Omit<VarianceComponent, "levels">;

/** Who explains how much: shares of the variance with their intervals, and plainly what cannot be told. */
export function PartitionSection({ partition, scale, base, preferences }: PartitionProps): ReactElement {
  return (
    <section aria-labelledby="partition" className="mt-10">
      <h2 id="partition">What explains the differences</h2>
      {partition.ok ? (
        <ComponentTable components={componentsOf(partition)} {...{ scale, base, preferences }} />
      ) : (
        <p className="mt-1">{NOT_SPLIT[partition.reason]}</p>
      )}
      {partition.untold.map((untold) => (
        <p key={untold.factor} className="mt-2">
          <Untold {...untold} />
        </p>
      ))}
    </section>
  );
}

function Untold({ factor, together }: UntoldFactor): ReactElement {
  const others = together.map((each) => NAMES[each]).join(" and ");
  return (
    <>
      <strong>Cannot be told:</strong> what {NAMES[factor]} explains. In these brews it always changes together with{" "}
      {others}, and is counted there. {factor === "brewer" ? "Brewers who brew twice would tell." : null}
    </>
  );
}

function componentsOf(partition: Extract<BrewPartition, { ok: true }>): readonly { name: string; of: Component }[] {
  const { brewer, equipment, revision, residual } = partition;
  const told = [
    { name: `Brewer (${String(brewer?.levels ?? 0)})`, of: brewer },
    { name: `Kind of kettle (${String(equipment?.levels ?? 0)})`, of: equipment },
    { name: `Revision (${String(revision?.levels ?? 0)})`, of: revision },
    { name: "The rest: chance, readings and all else", of: residual },
  ];
  return told.flatMap(({ name, of }) => (of === null ? [] : [{ name, of }]));
}

function ComponentTable(
  a: Omit<PartitionProps, "partition"> & { readonly components: ReturnType<typeof componentsOf> },
) {
  const sd = (variance: number) => <FormattedFigure shown={spreadText(a.scale, Math.sqrt(variance), a.base)} />;
  return (
    <DataTable
      caption="Shares of the variance"
      captionHidden
      records={a.components}
      keyOf={({ name }) => name}
      columns={[
        { id: "of", label: "Goes with", cell: ({ name }) => name },
        {
          id: "share",
          label: "Share of the variance",
          isNumber: true,
          cell: ({ of }) => <Quantity value={of.share} dimension="fraction" preferences={a.preferences} digits={0} />,
        },
        { id: "sd", label: "Standard deviation", isNumber: true, cell: ({ of }) => sd(of.variance) },
        {
          id: "span",
          label: "With 80 % between",
          isNumber: true,
          cell: ({ of: { low80, high80 } }) => (
            <>
              {sd(low80)} and {high80 === null ? "no end" : sd(high80)}
            </>
          ),
        },
      ]}
    />
  );
}
