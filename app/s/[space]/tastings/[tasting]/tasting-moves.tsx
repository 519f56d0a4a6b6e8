import type { TastingState } from "@/lib/model/tasting/tasting";
import { closeTastingAction, revealTastingAction } from "./actions";
import { MoveForm } from "./move-form";

interface TastingMovesProps {
  readonly at: { readonly space: string; readonly id: string };
  readonly state: TastingState;
  readonly isSteward: boolean;
  readonly organises: boolean;
  /** Sheets that are not in. */
  readonly missing: number;
}

const SURE = { sure: "yes" } as const;

/**
 * How a tasting goes on once it is open: its steward or an organiser closes it, an organiser reveals it.
 * Each question has a key of its own: the next one must not stand open because the one before it did.
 */
export function TastingMoves({ at: { space, id }, state, isSteward, organises, missing }: TastingMovesProps) {
  if (state === "open" && (isSteward || organises)) {
    return (
      <MoveForm
        key="close"
        title="Close judging"
        button="Close judging"
        pending="Closing…"
        hidden={SURE}
        action={closeTastingAction.bind(null, space, id)}
      >
        {missingWords(missing)} Judges write no new sheets from then on; what they wrote without a network, and paper
        sheets, still come in until the reveal. This cannot be taken back.
      </MoveForm>
    );
  }
  if (state !== "closed") return null;
  if (!organises) return <p className="mt-6">An organiser of the club reveals the entries.</p>;
  return (
    <MoveForm
      key="reveal"
      title="Reveal the entries"
      button="Reveal to everybody"
      pending="Revealing…"
      hidden={SURE}
      action={revealTastingAction.bind(null, space, id)}
    >
      {missingWords(missing)} Everybody of the club then sees which entry is which beer, and brewers and judges are
      told. Sheets that are not in by now count as missing. It is noted that you did it, and it cannot be taken back.
    </MoveForm>
  );
}

function missingWords(missing: number): string {
  if (missing === 0) return "All sheets are in.";
  return missing === 1 ? "One sheet is not in yet." : `${String(missing)} sheets are not in yet; Results tells whose.`;
}
