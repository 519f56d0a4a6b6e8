"use client";

import type { ActionResult } from "@/lib/model/action-result";
import type { KeptChoice } from "@/lib/model/kettle-entry";

interface WayProblemProps {
  readonly result: ActionResult<{ readonly ok: boolean; readonly kept: KeptChoice | null }> | null;
  /** Shows what holds now, which may take the form away that this stands in. */
  readonly onShow: (kept: KeptChoice | null) => void;
}

/** Why a choice was not kept; somebody else may have chosen first. */
export function WayProblem({ result, onShow }: WayProblemProps) {
  const refusal = refusalOf(result);
  if (refusal !== null) {
    return (
      <p role="alert" className="text-accent">
        {refusal}
      </p>
    );
  }
  if (result?.status !== "ok" || result.data.ok) return null;
  const { kept } = result.data;
  const way = kept?.choice.way ?? null;
  return (
    <div role="alert" className="notice notice-attention mt-2">
      <p>
        {kept?.changedByName ?? "Somebody"} chose for this kettle in the meantime: {way === null ? "no way out" : way}.
        Nothing of yours was kept.
      </p>
      <button
        type="button"
        className="button-link"
        onClick={() => {
          onShow(kept);
        }}
      >
        Show what holds now
      </button>
    </div>
  );
}

function refusalOf(result: WayProblemProps["result"]): string | null {
  if (result?.status === "refused") return result.message;
  return result?.status === "invalid" ? Object.values(result.fieldErrors).join(". ") : null;
}
