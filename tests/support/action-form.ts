/**
 * The body of a form action as React sends it: the arguments bound to the action, the state before, and the form, whose fields
 * are marked as part 1.
 */
export function actionForm(bound: readonly unknown[], fields: Readonly<Record<string, unknown>>): FormData {
  const body = new FormData();
  for (const [name, value] of Object.entries(fields)) body.append(`_1_${name}`, String(value));
  body.append("0", JSON.stringify([...bound, null, "$K1"]));
  return body;
}
