import type { Preferences } from "@/lib/model/preferences";
import type { RankCorrelation } from "@/lib/calc/judging";
import { descriptorName } from "@/lib/model/tasting/descriptors";
import type { FollowedEntry, FollowedFigure } from "@/lib/model/tasting/results-followed";
import { Statistic } from "@/lib/ui/across/statistic";
import { DataTable, type DataColumn } from "@/lib/ui/data-table";
import { ExplainedCall } from "@/lib/ui/explained-call";
import { Quantity } from "@/lib/ui/quantity";

/** With fewer entries a pattern may well be chance, and it is said before the number. */
const FEW = 8;

interface FollowedSectionProps {
  readonly followed: readonly FollowedFigure[];
  readonly preferences: Preferences;
}

/** Whether judges tasted what was computed and measured. */
export function FollowedSection({ followed, preferences }: FollowedSectionProps) {
  return (
    <section aria-labelledby="followed" className="mt-8">
      <h2 id="followed">Does taste follow the figures?</h2>
      <p className="mt-2 max-w-3xl text-muted">
        Each entry’s figure, as measured or else computed, beside how strong its judges found it: the mean over its
        sheets, from 0 where nobody named it to 3 where all called it strong.
      </p>
      {followed.map((figure) => (
        <FollowedLines key={figure.quantity} followed={figure} preferences={preferences} />
      ))}
    </section>
  );
}

interface FollowedLinesProps {
  readonly followed: FollowedFigure;
  readonly preferences: Preferences;
}

function FollowedLines({ followed, preferences }: FollowedLinesProps) {
  const { label, word, entries, isLevel, correlation } = followed;
  const pairs = { a: entries.map(({ computed }) => computed), b: entries.map(({ judged }) => judged) };
  return (
    <div className="mt-4">
      <h3>
        {label} and “{descriptorName(word).toLowerCase()}”
      </h3>
      {correlation === null ? (
        <p>Fewer than three entries have both, which shows no pattern.</p>
      ) : (
        <>
          <p className="mb-2">
            {entries.length < FEW ? `${String(entries.length)} entries prove little. ` : ""}
            <Outcome correlation={correlation} isLevel={isLevel} />
          </p>
          <FollowedTable followed={followed} preferences={preferences} />
          {correlation.ok && !isLevel ? <ExplainedCall id="judging/rankCorrelation" args={[pairs]} /> : null}
        </>
      )}
    </div>
  );
}

function Outcome({ correlation, isLevel }: { readonly correlation: RankCorrelation; readonly isLevel: boolean }) {
  if (isLevel)
    return "The figures lie closer together than any of them is known, so nothing can be seen to follow them.";
  if (!correlation.ok) return "All entries are the same in one of the two, so neither can follow the other.";
  return (
    <>
      Rank correlation <Statistic value={correlation.rho} />, from −1 to 1 where they rise together; as far from nothing
      by chance with probability <Statistic value={correlation.p} kind="probability" />.
    </>
  );
}

function FollowedTable({ followed, preferences }: FollowedLinesProps) {
  const { label, word, dimension, entries } = followed;
  const columns: readonly DataColumn<FollowedEntry>[] = [
    { id: "entry", label: "Entry", cell: ({ entryNo, beer }) => `${String(entryNo)} ${beer}` },
    {
      ...{ id: "computed", label, isNumber: true },
      cell: ({ computed }) => <Quantity value={computed} dimension={dimension} preferences={preferences} aligned />,
    },
    {
      ...{ id: "judged", label: `Judged “${descriptorName(word).toLowerCase()}”`, isNumber: true },
      cell: ({ judged }) => <Statistic value={judged} />,
    },
  ];
  return (
    <DataTable
      caption={`${label} as computed and as judged`}
      captionHidden
      columns={columns}
      records={entries}
      keyOf={({ entryNo }) => String(entryNo)}
    />
  );
}
