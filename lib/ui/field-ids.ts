/** The ids that tie a control to its label, hint, error and the error summary. */
export interface FieldIds {
  readonly control: string;
  readonly hint: string;
  readonly error: string;
}

export function fieldIds(name: string): FieldIds {
  const control = `field-${name.replaceAll(/[^\w-]/g, "-")}`;
  return { control, hint: `${control}-hint`, error: `${control}-error` };
}

/** The attributes of a control inside a `Field`. */
export interface ControlAttributes {
  readonly id: string;
  readonly name: string;
  readonly "aria-describedby"?: string;
  readonly "aria-invalid"?: true;
}

export function controlAttributes(a: {
  readonly name: string;
  readonly hint?: unknown;
  readonly error?: string | undefined;
}): ControlAttributes {
  const ids = fieldIds(a.name);
  const described = [a.hint === undefined ? "" : ids.hint, a.error === undefined ? "" : ids.error].filter(Boolean);
  return {
    id: ids.control,
    name: a.name,
    ...(described.length === 0 ? {} : { "aria-describedby": described.join(" ") }),
    ...(a.error === undefined ? {} : { "aria-invalid": true as const }),
  };
}
