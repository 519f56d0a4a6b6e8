"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import type { ImportPreview } from "@/lib/model/exchange/preview";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { Imported } from "@/lib/model/exchange/imported";
import { sendFile } from "@/lib/ui/exchange/send-file";

type Stage =
  | { readonly at: "choosing" | "reading" }
  | { readonly at: "previewing" | "taking"; readonly preview: ImportPreview }
  | { readonly at: "taken"; readonly imported: Imported };

interface ImportSteps {
  readonly stage: Stage;
  readonly errors: FieldErrors;
  /** Forgets the preview: it was of another file. */
  readonly startOver: () => void;
  readonly read: (form: FormData) => Promise<void>;
  readonly take: (preview: ImportPreview, form: FormData) => Promise<void>;
}

const NO_ERRORS: FieldErrors = {};

/** From the file to its preview, and from there to recipes. The file is sent both times: the server keeps none. */
export function useImport(home: string): ImportSteps {
  const router = useRouter();
  const [stage, setStage] = useState<Stage>({ at: "choosing" });
  const [errors, setErrors] = useState(NO_ERRORS);

  async function read(form: FormData): Promise<void> {
    setErrors(NO_ERRORS);
    setStage({ at: "reading" });
    const answer = await sendFile<ImportPreview>(`${home}/import/preview`, form);
    if (!answer.ok) setErrors(answer.errors);
    setStage(answer.ok ? { at: "previewing", preview: answer.data } : { at: "choosing" });
  }

  async function take(preview: ImportPreview, form: FormData): Promise<void> {
    setErrors(NO_ERRORS);
    setStage({ at: "taking", preview });
    const answer = await sendFile<Imported>(`${home}/import/take`, form);
    if (!answer.ok) setErrors(answer.errors);
    setStage(answer.ok ? { at: "taken", imported: answer.data } : { at: "previewing", preview });
    if (answer.ok) router.refresh();
  }

  return { stage, errors, startOver: () => setStage({ at: "choosing" }), read, take };
}
