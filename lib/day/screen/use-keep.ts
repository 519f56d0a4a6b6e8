import { useState } from "react";
import type { EventContent } from "@/lib/model/log/log-event";
import { useDay } from "./day-context";
import { notKept } from "./use-moves";

/** Keeps what a form says on this device and closes it; what cannot be kept stays in the form, with the reason. */
export function useKeep(onClose: () => void): {
  readonly keep: (contents: readonly EventContent[]) => void;
  readonly problem: string | null;
} {
  const day = useDay();
  const [problem, setProblem] = useState<string | null>(null);
  const [isKeeping, setKeeping] = useState(false);
  return {
    problem,
    keep(contents) {
      if (isKeeping) return;
      setKeeping(true);
      day
        .keep(contents)
        .then(onClose)
        .catch((error: unknown) => {
          setProblem(notKept(error));
          setKeeping(false);
        });
    },
  };
}
