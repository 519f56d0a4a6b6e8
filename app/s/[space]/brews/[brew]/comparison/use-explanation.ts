"use client";

import { useCallback, useEffect, useRef, useState } from "react";
import type { ExplainedNumber } from "@/lib/calc/explain";
import type { Explained } from "./explained";
import { queryFor, type ExplainedTarget } from "./explained-target";

interface Opened {
  readonly explanation: ExplainedNumber | null;
  readonly open: (target: ExplainedTarget) => void;
  readonly close: () => void;
}

/** Opens explanations. Their texts are fetched when the first one is asked for; the address names the one that is open. */
export function useExplanation(explained: Explained, asked: ExplainedTarget | null): Opened {
  const [explanation, setExplanation] = useState<ExplainedNumber | null>(null);
  const latest = useRef(explained);
  useEffect(() => {
    latest.current = explained;
  });

  const open = useCallback((target: ExplainedTarget): void => {
    void import("./explain-target").then(({ explainTarget }) => {
      setExplanation(explainTarget(target, latest.current));
      window.history.replaceState(null, "", window.location.pathname + queryFor(target));
    });
  }, []);

  // An address that asks for an explanation opens it once, when the page arrives.
  const first = useRef(asked);
  useEffect(() => {
    if (first.current !== null) open(first.current);
    first.current = null;
  }, [open]);

  const close = useCallback((): void => {
    setExplanation(null);
    window.history.replaceState(null, "", window.location.pathname);
  }, []);

  return { explanation, open, close };
}
