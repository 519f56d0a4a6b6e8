"use client";

import { useRouter } from "next/navigation";
import { startTransition, useActionState, useEffect, useRef, type ReactNode, type SubmitEvent } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import type { VolumeView } from "@/lib/ui/kettles/kettle-view";
import { SubmitButton } from "@/lib/ui/submit-button";
import { chooseWayAction } from "./actions";

/** What a choice is made for. */
export interface Choosing {
  readonly space: string;
  readonly recipeId: string;
  readonly rev: number;
  readonly volume: VolumeView;
}

export interface WayFormProps extends Choosing {
  readonly entry: Pick<KettleEntry, "key" | "kept">;
  /** Empty takes the present choice back. */
  readonly way: string;
  readonly kind?: "plain" | "quiet";
  readonly children: ReactNode;
  readonly onKept?: ((id: string, kept: KeptChoice) => void) | undefined;
}

type WayAnswer = Awaited<ReturnType<typeof chooseWayAction>>;

/** The button that keeps a way out for everybody to see, or takes it back. It works without scripts. */
export function WayForm({ entry, way, kind = "quiet", children, onKept, ...choosing }: WayFormProps) {
  const [result, send, isPending] = useActionState<WayAnswer | null, FormData>(chooseWayAction, null);
  const { key, kept } = entry;
  const router = useRouter();
  useKept(result, (now) => {
    onKept?.(key, now);
    // What was drawn on the server is of before.
    router.refresh();
  });
  const { space, recipeId, rev, volume } = choosing;
  const hidden = {
    space,
    recipeId,
    rev,
    equipmentId: key,
    lockVersion: kept?.lockVersion ?? 0,
    volume: volume === "chosen" ? (kept?.choice.volume ?? "usual") : volume,
    way,
  };

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => {
      send(form);
    });
  }

  return (
    <form action={send} onSubmit={submit} className="no-print">
      {Object.entries(hidden).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <SubmitButton pending="Keeping…" isPending={isPending} kind={kind}>
        {children}
      </SubmitButton>
      <p role="alert" className="text-accent">
        {problemOf(result)}
      </p>
    </form>
  );
}

/** Tells what holds now, once for each answer: also when somebody else was first. */
function useKept(result: WayAnswer | null, tell: (kept: KeptChoice) => void): void {
  const latest = useRef(tell);
  useEffect(() => {
    latest.current = tell;
  });
  useEffect(() => {
    if (result?.status === "ok" && result.data.kept !== null) latest.current(result.data.kept);
  }, [result]);
}

function problemOf(result: ActionResult<{ readonly ok: boolean; readonly kept: KeptChoice | null }> | null): string {
  if (result === null) return "";
  if (result.status === "refused") return result.message;
  if (result.status === "invalid") return Object.values(result.fieldErrors).join(". ");
  if (result.data.ok) return "";
  const by = result.data.kept?.changedByName ?? "Somebody";
  return `${by} chose for this kettle in the meantime; what holds now is shown. Choose again if it should be another way.`;
}
