import type { ReactElement } from "react";
import { limitWords } from "@/lib/calc/explain";
import type { Limit } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { limitNumbers } from "./limit-numbers";

/**
 * One limit of a kettle: what it is, where this brew stands and what is allowed.
 *
 * - `withReason` adds why the limit matters.
 */
export function LimitLine(props: {
  readonly limit: Limit;
  readonly preferences: Preferences;
  readonly withReason?: boolean;
}): ReactElement {
  const { limit, preferences, withReason = false } = props;
  const { title, because } = limitWords(limit);
  return (
    <>
      {title}: {limitNumbers(limit, preferences)}
      {withReason ? <span className="block text-sm text-muted">{because}</span> : null}
    </>
  );
}
