import { useRef, useState } from "react";
import type { LoggedReading } from "@/lib/model/log/logged-readings";
import { measuredOf } from "@/lib/ui/brew/measured-of";
import { farFromPlan } from "@/lib/ui/brew/far-from-plan";
import {
  emptyDraft,
  readDraft,
  type DraftErrors,
  type DraftField,
  type MeasuringPoint,
  type ReadingDraft,
  type WrittenReading,
} from "@/lib/ui/brew/reading-draft";
import { useDay } from "./day-context";
import { notKept } from "./use-moves";

interface ReadingOf {
  readonly point: MeasuringPoint;
  readonly step: string | null;
  readonly target: LoggedReading | null;
  readonly onClose: () => void;
}

export interface ReadingEntryState {
  readonly draft: ReadingDraft;
  readonly errors: DraftErrors;
  readonly question: string | null;
  readonly problem: string | null;
  readonly type: (field: DraftField, text: string) => void;
  /** Keeps the reading; `keep` once the question about one far from the plan is answered. */
  readonly save: (keep: boolean) => void;
}

/** A reading from the first digit until it is on this device's disk. */
export function useReadingEntry({ point, step, target, onClose }: ReadingOf): ReadingEntryState {
  const { preferences, keep: keepEvents } = useDay();
  const [draft, setDraft] = useState(() => emptyDraft(point, preferences));
  const [errors, setErrors] = useState<DraftErrors>({});
  const [question, setQuestion] = useState<string | null>(null);
  const [problem, setProblem] = useState<string | null>(null);
  const isSaving = useRef(false);

  function type(field: DraftField, text: string): void {
    setDraft((before) => ({ ...before, [field]: text }));
    setErrors({});
    setQuestion(null);
  }

  function save(keep: boolean): void {
    if (isSaving.current) return;
    const read = readDraft(draft, point, preferences);
    if (!read.ok) {
      setErrors(read.errors);
      return;
    }
    const { dimension, expected } = point;
    const asked = keep ? null : farFromPlan({ ...read.reading, expected, dimension, preferences });
    setQuestion(asked);
    if (asked === null) keepReading(read.reading);
  }

  function keepReading(reading: WrittenReading): void {
    isSaving.current = true;
    const measured = measuredOf(point, reading, step);
    const content =
      target === null ? measured : ({ kind: "correct", targetId: target.id, seen: target.changes, measured } as const);
    keepEvents([content], reading.occurredAt?.getTime())
      .then(onClose)
      .catch((error: unknown) => setProblem(notKept(error)))
      .finally(() => {
        isSaving.current = false;
      });
  }

  return { draft, errors, question, problem, type, save };
}
