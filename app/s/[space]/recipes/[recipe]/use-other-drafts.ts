"use client";

import { useEffect, useState } from "react";
import type { OtherDraft } from "./of-others";

const EVERY_MS = 20_000;

/** The drafts of others as they are: asked again when the reader comes back to the page, and now and then meanwhile. */
export function useOtherDrafts(first: readonly OtherDraft[], address: string): readonly OtherDraft[] {
  const [drafts, setDrafts] = useState(first);

  useEffect(() => {
    let isOver = false;
    async function ask(): Promise<void> {
      // Nobody reads a page in the background.
      if (document.visibilityState === "hidden") return;
      const now = await readDrafts(address);
      if (now !== null && !isOver) setDrafts(now);
    }
    const again = (): void => void ask();
    const timer = setInterval(again, EVERY_MS);
    window.addEventListener("focus", again);
    document.addEventListener("visibilitychange", again);
    return () => {
      isOver = true;
      clearInterval(timer);
      window.removeEventListener("focus", again);
      document.removeEventListener("visibilitychange", again);
    };
  }, [address]);

  return drafts;
}

/** null without an answer, which changes nothing: the save tells in any case who was first. */
async function readDrafts(address: string): Promise<readonly OtherDraft[] | null> {
  const answer = await fetch(address).catch(() => null);
  if (answer?.ok !== true) return null;
  const told = (await answer.json()) as readonly { readonly writerName: string; readonly begunAt: string }[];
  return told.map(({ writerName, begunAt }) => ({ writerName, begunAt: new Date(begunAt) }));
}
