"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import { csvChoices, type CsvChoices } from "@/lib/model/cellar/csv/columns";
import type { FieldErrors } from "@/lib/model/field-errors";
import { sendFile } from "@/lib/ui/exchange/send-file";

/** What the server says it took. */
interface Taken {
  readonly added: number;
  readonly known: number;
  readonly leftOut: number;
}

const NONE: FieldErrors = {};

/** Sends a file with how it is to be read, and says what was taken of it, or why nothing was. */
export function useCsvTake(address: string): {
  readonly errors: FieldErrors;
  readonly taken: Taken | null;
  readonly isTaking: boolean;
  readonly take: (file: File, choices: CsvChoices) => Promise<void>;
} {
  const router = useRouter();
  const [errors, setErrors] = useState(NONE);
  const [taken, setTaken] = useState<Taken | null>(null);
  const [isTaking, setTaking] = useState(false);

  async function take(file: File, choices: CsvChoices): Promise<void> {
    setTaken(null);
    const checked = csvChoices.safeParse(choices);
    if (!checked.success) {
      setErrors({ "": checked.error.issues.map(({ message }) => message).join(". ") });
      return;
    }
    setTaking(true);
    const form = new FormData();
    form.set("file", file);
    form.set("choices", JSON.stringify(checked.data));
    const answer = await sendFile<Taken>(address, form);
    setTaking(false);
    setErrors(answer.ok ? NONE : answer.errors);
    if (!answer.ok) return;
    setTaken(answer.data);
    router.refresh();
  }

  return { errors, taken, isTaking, take };
}
