"use client";

import { useState, useTransition } from "react";
import type { Equipment } from "@/lib/calc/ledger";
import type { ActionResult } from "@/lib/model/action-result";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { SaveOutcome } from "@/lib/model/save-outcome";
import type { EquipmentReading } from "./read-equipment";

export type ProfileSave =
  | { readonly status: "none" | "unchanged" }
  | { readonly status: "saved"; readonly rev: number }
  | { readonly status: "stale"; readonly headRev: number }
  | { readonly status: "wrong"; readonly errors: FieldErrors };

interface Saving {
  readonly state: ProfileSave;
  readonly isPending: boolean;
  readonly baseRev: number;
  readonly save: (reading: EquipmentReading) => void;
}

/** Saves a profile as a new revision; a save on an old one is refused once and then goes on top of the newer. */
export function useProfileSave(a: {
  readonly rev: number;
  readonly send: (change: {
    readonly baseRev: number;
    readonly equipment: Equipment;
  }) => Promise<ActionResult<SaveOutcome>>;
}): Saving {
  const [state, setState] = useState<ProfileSave>({ status: "none" });
  const [baseRev, setBaseRev] = useState(a.rev);
  const [isPending, startTransition] = useTransition();

  function save({ equipment, problems }: EquipmentReading): void {
    if (equipment === null) {
      setState({ status: "wrong", errors: problems });
      return;
    }
    startTransition(async () => {
      const next = stateOf(await a.send({ baseRev, equipment }));
      setState(next);
      if (next.status === "saved") setBaseRev(next.rev);
      if (next.status === "stale") setBaseRev(next.headRev);
    });
  }

  return { state, isPending, baseRev, save };
}

function stateOf(answer: ActionResult<SaveOutcome>): ProfileSave {
  if (answer.status === "refused") return { status: "wrong", errors: { "": answer.message } };
  if (answer.status === "invalid") {
    const errors = Object.entries(answer.fieldErrors).map(([path, message]) => [controlOf(path), message] as const);
    return { status: "wrong", errors: Object.fromEntries(errors) };
  }
  const { data } = answer;
  if (data.ok) return { status: "saved", rev: data.rev };
  return data.reason === "stale" ? { status: "stale", headRev: data.headRev } : { status: "unchanged" };
}

/** The control of a stored field: a figure's own name stands for its value. */
function controlOf(path: string): string {
  return path.replace(/^equipment\./, "").replace(/\.value$/, "");
}
