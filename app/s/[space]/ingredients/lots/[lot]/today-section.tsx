import { alphaAfterStorage } from "@/lib/calc/bitterness";
import { explainFunction } from "@/lib/calc/explain";
import { cellsInPack } from "@/lib/calc/fermentation";
import type { BillionCells, Fraction } from "@/lib/calc/units";
import type { LotKindAndFigures } from "@/lib/model/ingredient-lot";
import { agedPack, hopStorage, type AgedPack } from "@/lib/model/lot-today";
import type { Preferences } from "@/lib/model/preferences";
import { Quantity } from "@/lib/ui/quantity";
import { FunctionDetails } from "@/lib/ui/function-details";

interface TodaySectionProps {
  readonly what: LotKindAndFigures;
  readonly lossIn6Months: Fraction | null;
  readonly today: string;
  readonly preferences: Preferences;
}

/** What age has left of a lot: alpha acids of hops, living cells of yeast. */
export function TodaySection({ what, lossIn6Months, today, preferences }: TodaySectionProps) {
  if (what.kind === "hop") {
    const storage = hopStorage(what.figures, lossIn6Months, today);
    if (storage === null) return <p className="text-muted">{whyNoAlpha(what.figures.alpha, lossIn6Months)}</p>;
    const explained = explainFunction({ id: "bitterness/alphaAfterStorage", args: [storage] });
    return (
      <>
        <p className="text-2xl">
          <Quantity value={alphaAfterStorage(storage)} dimension="fraction" preferences={preferences} /> alpha acids
        </p>
        {explained.ok ? <FunctionDetails explained={explained.explained} /> : null}
      </>
    );
  }
  if (what.kind !== "yeast") return <p className="text-muted">Its figures do not change with age.</p>;
  const pack = agedPack(what.figures, today);
  if (pack === null) {
    return (
      <p className="text-muted">
        Cells, the day of packing and a cool store are needed to tell how many live today; what stood warm wants a count
        or a starter.
      </p>
    );
  }
  return <LivingCells pack={pack} preferences={preferences} />;
}

/** Rates of practice have limits, and no interval: nobody measured how often they hold. */
function LivingCells({ pack, preferences }: { readonly pack: AgedPack; readonly preferences: Preferences }) {
  const { expected, low, high } = cellsInPack(pack);
  const explained = explainFunction({ id: "fermentation/cellsInPack", args: [pack] });
  const cells = (value: BillionCells) => <Quantity value={value} dimension="cells" preferences={preferences} />;
  return (
    <>
      <p className="text-2xl">{cells(expected)} living cells in a pack</p>
      <p>
        Limits of practice: {cells(low)} to {cells(high)}
      </p>
      {explained.ok ? <FunctionDetails explained={explained.explained} /> : null}
    </>
  );
}

function whyNoAlpha(alpha: Fraction | null, loss: Fraction | null): string {
  if (alpha === null) return "Without an analysis, a sheet keeps the alpha acids of its recipe.";
  if (loss === null) {
    return "What this variety loses in storage is in neither the generic list nor the club’s, so the alpha acids count as analysed.";
  }
  return "Without the day of the analysis, the store and the packaging, the alpha acids count as analysed.";
}
