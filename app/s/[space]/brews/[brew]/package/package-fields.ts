import type { FieldErrors } from "@/lib/model/field-errors";
import type { Preferences } from "@/lib/model/preferences";
import type { PackageDraft } from "@/lib/ui/cellar/package-draft";

/** What the fields of packaging share. */
export interface PackageFieldsProps {
  readonly draft: PackageDraft;
  readonly errors: FieldErrors;
  readonly preferences: Preferences;
  readonly type: (change: Partial<PackageDraft>) => void;
}
