"use client";

import { useState } from "react";
import { ActionForm } from "@/lib/ui/action-form";
import { SubmitButton } from "@/lib/ui/submit-button";
import { TextField } from "@/lib/ui/text-field";
import { foundClubAction } from "./actions";
import { suggestSlug } from "./suggest-slug";

/** Name and address of a new club; the address follows the name until it is written by hand. */
export function FoundClubForm() {
  const [name, setName] = useState("");
  const [ownSlug, setOwnSlug] = useState<string | null>(null);
  return (
    <ActionForm action={foundClubAction}>
      {({ errors, isPending }) => (
        <>
          <TextField
            name="name"
            label="Name of the club"
            maxLength={120}
            value={name}
            onChange={(event) => setName(event.target.value)}
            error={errors.name}
          />
          <TextField
            name="slug"
            label="Address of the club"
            hint="Stands in the club’s links: small letters, digits and hyphens. It cannot be changed later."
            maxLength={40}
            autoCapitalize="none"
            spellCheck={false}
            value={ownSlug ?? suggestSlug(name)}
            onChange={(event) => setOwnSlug(event.target.value)}
            error={errors.slug}
          />
          <div>
            <SubmitButton pending="Founding…" isPending={isPending} kind="quiet">
              Found the club
            </SubmitButton>
          </div>
        </>
      )}
    </ActionForm>
  );
}
