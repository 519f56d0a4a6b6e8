import type { ReactElement } from "react";
import type { Limit } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { LimitLine } from "../equipment/limit-line";
import { Notice } from "../notice";

/** Where the recipe does not fit the kettle that it is computed on. */
export default function FitNotice(props: {
  readonly broken: readonly Limit[];
  readonly kettleName: string;
  readonly preferences: Preferences;
}): ReactElement {
  const { broken, kettleName, preferences } = props;
  return (
    <Notice kind="attention">
      <h2 className="text-base">Does not fit {kettleName}</h2>
      <ul>
        {broken.map((limit) => (
          <li key={limit.id}>
            <LimitLine limit={limit} preferences={preferences} />
          </li>
        ))}
      </ul>
    </Notice>
  );
}
