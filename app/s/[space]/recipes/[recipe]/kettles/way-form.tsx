"use client";

import { useRouter } from "next/navigation";
import { startTransition, useActionState, useEffect, useRef, type ReactNode, type SubmitEvent } from "react";
import type { KeptChoice, KettleEntry } from "@/lib/model/kettle-entry";
import type { VolumeView } from "@/lib/ui/kettles/kettle-view";
import { SubmitButton } from "@/lib/ui/submit-button";
import { chooseWayAction } from "./actions";
import { WayProblem } from "./way-problem";

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
  const router = useRouter();
  const show = (now: KeptChoice | null): void => {
    if (now !== null) onKept?.(entry.key, now);
    // What was drawn on the server is of before.
    router.refresh();
  };
  useKept(result, show);

  function submit(event: SubmitEvent<HTMLFormElement>): void {
    event.preventDefault();
    const form = new FormData(event.currentTarget);
    startTransition(() => {
      send(form);
    });
  }

  return (
    <form action={send} onSubmit={submit} className="no-print">
      {Object.entries(hiddenFields({ entry, way, ...choosing })).map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <SubmitButton pending="Keeping…" isPending={isPending} kind={kind}>
        {children}
      </SubmitButton>
      <WayProblem result={result} onShow={show} />
    </form>
  );
}

function hiddenFields({ entry, way, space, recipeId, rev, volume }: Choosing & Pick<WayFormProps, "entry" | "way">) {
  const { key, kept } = entry;
  return {
    space,
    recipeId,
    rev,
    equipmentId: key,
    lockVersion: kept?.lockVersion ?? 0,
    volume: volume === "chosen" ? (kept?.choice.volume ?? "usual") : volume,
    way,
  };
}

/** Tells once what is kept now. */
function useKept(result: WayAnswer | null, tell: (kept: KeptChoice) => void): void {
  const latest = useRef(tell);
  useEffect(() => {
    latest.current = tell;
  });
  useEffect(() => {
    if (result?.status === "ok" && result.data.ok) latest.current(result.data.kept);
  }, [result]);
}
