"use client";

import { TextField } from "@/lib/ui/text-field";
import type { PackageFieldsProps } from "./package-fields";

/** The way past an unsteady gravity: a reason, which the log keeps. */
export function EarlyField({ draft, type, notReady }: PackageFieldsProps & { readonly notReady: string }) {
  return (
    <div className="notice notice-attention" role="group" aria-label="Before it has ended">
      <p className="font-semibold">{notReady}</p>
      <p className="mb-2">Bottles burst when beer ferments on in them. Wait, or say why it is packaged all the same.</p>
      <TextField
        name="package-early"
        label="Reason for packaging now"
        autoComplete="off"
        maxLength={500}
        value={draft.early}
        onChange={(event) => type({ early: event.target.value })}
      />
    </div>
  );
}
