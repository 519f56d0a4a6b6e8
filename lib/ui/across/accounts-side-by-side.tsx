import Link from "next/link";
import type { ReactElement } from "react";
import type { Preferences } from "@/lib/model/preferences";
import type { AccountLine } from "@/lib/model/summary/brew-summary";
import type { BrewAmongOthers } from "@/lib/model/summary/compared-brew";
import { Quantity } from "../quantity";
import { AccountBar } from "./account-bar";

interface AccountsProps {
  readonly home: string;
  readonly brews: readonly { readonly brew: BrewAmongOthers; readonly name: string }[];
  readonly preferences: Preferences;
}

/** What became of the extract: what each step lost, and what is there at the end. Which steps is the account's affair. */
function partsOf(lines: readonly AccountLine[]): readonly AccountLine[] {
  const end = lines.findLast(({ effect }) => effect === "holds");
  return [...lines.filter(({ effect }) => effect === "loses"), ...(end === undefined ? [] : [end])];
}

/** Where the extract of each brew went, in shares of what was weighed out; each brew on the same scale. */
export function AccountsSideBySide({ home, brews, preferences }: AccountsProps): ReactElement | null {
  const shown = brews.flatMap(({ brew, name }) => {
    const account = brew.summary?.account ?? null;
    return account === null ? [] : [{ id: brew.id, name, parts: partsOf(account.lines) }];
  });
  const ids = [...new Map(shown.flatMap(({ parts }) => parts.map(({ id, label }) => [id, label] as const)))];
  if (shown.length === 0) return null;
  return (
    <section aria-labelledby="accounts" className="mt-10">
      <h2 id="accounts">Where the extract went</h2>
      <p className="mt-1 text-muted">
        Shares of all extract weighed out, as measured; the bar has the parts in the order of the columns, 0 to 100 %.
      </p>
      <div
        role="region"
        aria-label="Accounts of the extract, scrolls sideways"
        tabIndex={0}
        className="across-frame mt-3"
      >
        <table role="table" className="across">
          <caption className="sr-only">Shares of the extract for each brew</caption>
          <thead role="rowgroup">
            <tr role="row">
              <th role="columnheader" scope="col">
                Brew
              </th>
              {ids.map(([id, label]) => (
                <th role="columnheader" scope="col" key={id}>
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody role="rowgroup">
            {shown.map((row) => (
              <AccountRow key={row.id} {...{ ...row, home, ids, preferences }} />
            ))}
          </tbody>
        </table>
      </div>
    </section>
  );
}

interface AccountRowProps {
  readonly id: string;
  readonly name: string;
  readonly parts: readonly AccountLine[];
  readonly home: string;
  readonly ids: readonly (readonly [id: string, label: string])[];
  readonly preferences: Preferences;
}

function AccountRow({ id, name, parts, home, ids, preferences }: AccountRowProps): ReactElement {
  return (
    <tr role="row">
      <th role="rowheader" scope="row">
        <Link href={`${home}/brews/${id}/comparison#extract`} className="target">
          {name}
        </Link>
        <AccountBar shares={parts.map(({ measuredShare }) => measuredShare)} />
      </th>
      {ids.map(([part, label]) => (
        <td role="cell" key={part}>
          <span aria-hidden className="across-name">
            {label}
          </span>
          <Quantity
            value={parts.find((each) => each.id === part)?.measuredShare ?? null}
            dimension="fraction"
            preferences={preferences}
            reason="needs readings that are not there"
          />
        </td>
      ))}
    </tr>
  );
}
