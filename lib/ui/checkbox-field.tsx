import type { ReactElement, ReactNode } from "react";

/** Something that is so or not. The whole line can be tapped. */
export interface CheckboxFieldProps {
  readonly name: string;
  readonly label: ReactNode;
  readonly defaultChecked: boolean;
}

export function CheckboxField({ name, label, defaultChecked }: CheckboxFieldProps): ReactElement {
  return (
    <label className="flex min-h-11 items-center gap-3">
      <input type="checkbox" name={name} defaultChecked={defaultChecked} className="size-5 shrink-0" />
      <span>{label}</span>
    </label>
  );
}
