"use client";

import { useRouter } from "next/navigation";
import { useState } from "react";
import type { FieldErrors } from "@/lib/model/field-errors";
import { sendFile } from "@/lib/ui/exchange/send-file";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { Field } from "@/lib/ui/field";
import { controlAttributes } from "@/lib/ui/field-ids";
import { Notice } from "@/lib/ui/notice";
import { SubmitButton } from "@/lib/ui/submit-button";
import { PeopleMatches, type LookedAt } from "./people-matches";

interface ClubFileScreenProps {
  readonly home: string;
  readonly people: readonly { readonly userId: string; readonly displayName: string }[];
}

const NO_ERRORS: FieldErrors = {};
const HINT = "Only into a club that has no content yet. All of it is taken or nothing.";

/** Takes a club out of a file: first who of the file is who of this club, then the content. */
export function ClubFileScreen({ home, people }: ClubFileScreenProps) {
  const { file, rows, errors, isSending, send, forget } = useClubFile(home);

  if (rows !== null) return <Notice live>The club was taken out of its file: {rows} records.</Notice>;
  return (
    <form
      noValidate
      aria-labelledby="take"
      className="flex flex-col items-start gap-4"
      onSubmit={(event) => {
        event.preventDefault();
        void send(new FormData(event.currentTarget));
      }}
    >
      <h2 id="take">Take a club out of a file</h2>
      <ErrorSummary errors={errors} />
      <Field name="file" label="File of a club" hint={HINT}>
        <input
          type="file"
          accept=".json,application/json"
          className="input"
          onChange={forget}
          {...controlAttributes({ name: "file", hint: HINT })}
        />
      </Field>
      {file !== null && <PeopleMatches file={file} people={people} />}
      <SubmitButton pending="Reading…" isPending={isSending} kind={file === null ? "quiet" : "plain"}>
        {file === null ? "Look into the file" : "Take the club"}
      </SubmitButton>
    </form>
  );
}

/** The file as far as it is read, and what became of it. */
function useClubFile(home: string) {
  const router = useRouter();
  const [file, setFile] = useState<LookedAt | null>(null);
  const [rows, setRows] = useState<number | null>(null);
  const [isSending, setSending] = useState(false);
  const [errors, setErrors] = useState(NO_ERRORS);

  async function send(body: FormData): Promise<void> {
    setErrors(NO_ERRORS);
    setSending(true);
    const refused = file === null ? await look(body) : await take(body);
    if (refused !== null) setErrors(refused);
    setSending(false);
  }

  async function look(body: FormData): Promise<FieldErrors | null> {
    const answer = await sendFile<LookedAt>(`${home}/look`, body);
    if (!answer.ok) return answer.errors;
    setFile(answer.data);
    return null;
  }

  async function take(body: FormData): Promise<FieldErrors | null> {
    const answer = await sendFile<{ readonly rows: number }>(`${home}/take`, body);
    if (!answer.ok) return answer.errors;
    setRows(answer.data.rows);
    router.refresh();
    return null;
  }

  return { file, rows, errors, isSending, send, forget: () => setFile(null) };
}
