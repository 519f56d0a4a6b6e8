import type { CellEstimate } from "@/lib/model/cellar/cell-estimate";
import type { Preferences } from "@/lib/model/preferences";
import type { PitchDraft } from "@/lib/ui/cellar/pitch-draft";
import { CallExplainedWhenAsked } from "@/lib/ui/call-explained-when-asked";
import { Quantity } from "@/lib/ui/quantity";

interface CellsEstimatedProps {
  readonly draft: PitchDraft;
  readonly estimate: CellEstimate | null;
  readonly preferences: Preferences;
}

/** What packs and starter come to, with the limits of practice, and how. */
export function CellsEstimated({ draft, estimate, preferences }: CellsEstimatedProps) {
  if (estimate === null) {
    return <p className="field-hint">With cells in a pack, age and a cool store the living cells are estimated.</p>;
  }
  if (!estimate.ok) {
    return (
      <p className="field-error">
        So many cells hardly grow on so little extract; take at least{" "}
        <Quantity value={estimate.extractNeededG} dimension="grams" preferences={preferences} digits={0} />.
      </p>
    );
  }
  const { expected, low, high } = estimate.cells;
  const cells = (value: number) => <Quantity value={value} dimension="cells" preferences={preferences} />;
  const pack = {
    cells: Number(draft.perPack.replace(",", ".")),
    ageDays: Number(draft.age),
    form: draft.form,
    celsius: Number(draft.stored.replace(",", ".")),
  };
  return (
    <output className="flex flex-col gap-1">
      <span>
        Estimated: <strong>{cells(expected)}</strong> living cells; limits of practice {cells(low)} to {cells(high)}.
      </span>
      {preferences.units === "metric" ? <CallExplainedWhenAsked id="fermentation/cellsInPack" args={[pack]} /> : null}
    </output>
  );
}
