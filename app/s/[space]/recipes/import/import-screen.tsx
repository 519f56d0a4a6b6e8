"use client";

import { useRef } from "react";
import type { ImportPreview } from "@/lib/model/exchange/preview";
import type { Preferences } from "@/lib/model/preferences";
import { ErrorSummary } from "@/lib/ui/error-summary";
import { FileFields } from "./file-fields";
import { PreviewForm } from "./preview-form";
import { TakenNotice } from "./taken-notice";
import { useImport } from "./use-import";

interface ImportScreenProps {
  readonly home: string;
  readonly kettles: readonly { readonly id: string; readonly label: string }[];
  readonly preferences: Preferences;
}

/** File, then what would become of it, then the recipes. The file stays in the browser between the two. */
export function ImportScreen({ home, kettles, preferences }: ImportScreenProps) {
  const form = useRef<HTMLFormElement>(null);
  const { stage, errors, startOver, read, take } = useImport(home);

  function takeChosen(preview: ImportPreview, chosen: readonly number[]): void {
    if (form.current === null) return;
    const body = new FormData(form.current);
    body.set("chosen", chosen.join(","));
    void take(preview, body);
  }

  return (
    <div className="flex flex-col gap-8">
      <form
        ref={form}
        noValidate
        className="flex max-w-xl flex-col items-start gap-4 [&>.field]:w-full"
        onChange={startOver}
        onSubmit={(event) => {
          event.preventDefault();
          void read(new FormData(event.currentTarget));
        }}
      >
        <ErrorSummary errors={errors} />
        <FileFields kettles={kettles} isReading={stage.at === "reading"} />
      </form>
      {(stage.at === "previewing" || stage.at === "taking") && (
        <PreviewForm
          preview={stage.preview}
          preferences={preferences}
          isTaking={stage.at === "taking"}
          onTake={(chosen) => takeChosen(stage.preview, chosen)}
        />
      )}
      {stage.at === "taken" && <TakenNotice home={home} imported={stage.imported} />}
    </div>
  );
}
