import type { ExtractAccount, ExtractLine } from "@/lib/calc/compare";
import type { Preferences } from "@/lib/model/preferences";
import { EXTRACT_SIGNS, EXTRACT_WORDS } from "@/lib/ui/brew/extract-effects";
import { intervalOfSd } from "@/lib/ui/brew/interval-of-sd";
import { Quantity } from "@/lib/ui/quantity";

interface LossAccountProps {
  readonly account: ExtractAccount;
  readonly preferences: Preferences;
  readonly onExplain: (line: ExtractLine, column: "planned" | "measured") => void;
}

/** Where the extract went, from station to station; each column adds up from top to bottom. */
export function LossAccount({ account, preferences, onExplain }: LossAccountProps) {
  return (
    <section aria-labelledby="extract" className="mt-10">
      <h2 id="extract">Where the extract went</h2>
      <p className="mt-1 mb-3 text-muted">
        Of <Quantity value={account.weighedOutKg} dimension="mass" preferences={preferences} /> weighed out. What is
        there, less what was lost, gives what is there at the next station: in both columns to the last digit, for what
        was read is reconciled first. Each line says whether it rests on readings or on the plan.
      </p>
      <table role="table" className="ledger" data-columns="2">
        <caption className="sr-only">Account of the extract, planned and measured, by mass and as a share</caption>
        <thead role="rowgroup">
          <tr role="row">
            <th role="columnheader" scope="col">
              Extract
            </th>
            <th role="columnheader" scope="col">
              Planned
            </th>
            <th role="columnheader" scope="col">
              By the readings
            </th>
          </tr>
        </thead>
        <tbody role="rowgroup">
          {account.lines.map((line) => (
            <tr role="row" key={line.id} className="items-start">
              <LineLabel line={line} />
              <Amount
                {...{ line, preferences, onExplain }}
                column="planned"
                kg={line.plannedKg}
                share={line.plannedShare}
                sd={line.plannedSd}
              />
              <Amount
                {...{ line, preferences, onExplain }}
                column="measured"
                kg={line.kg}
                share={line.share}
                sd={line.sd}
              />
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const RESTS_ON: Readonly<Record<ExtractLine["restsOn"], string>> = {
  weights: "as weighed out",
  readings: "rests on readings",
  both: "rests on readings and plan",
  plan: "rests on the plan",
};

function LineLabel({ line }: { readonly line: ExtractLine }) {
  return (
    <th role="rowheader" scope="row" className="align-top">
      <span aria-hidden className="inline-block w-5 text-muted">
        {EXTRACT_SIGNS[line.effect]}
      </span>
      <span className="sr-only">{EXTRACT_WORDS[line.effect]} </span>
      {line.effect === "holds" ? <strong>{line.label}</strong> : line.label}
      <span className="ledger-note">{RESTS_ON[line.restsOn]}</span>
    </th>
  );
}

interface AmountProps extends Omit<LossAccountProps, "account"> {
  readonly line: ExtractLine;
  readonly column: "planned" | "measured";
  readonly kg: number;
  readonly share: number;
  readonly sd: number | null;
}

function Amount({ line, column, kg, share, sd, preferences, onExplain }: AmountProps) {
  return (
    <td role="cell" className="ledger-value align-top">
      <span aria-hidden className="ledger-cell-label">
        {column === "planned" ? "Planned" : "By the readings"}
      </span>
      <button type="button" className="explained" aria-haspopup="dialog" onClick={() => onExplain(line, column)}>
        <span className="sr-only">
          {line.label}, {column === "planned" ? "planned" : "by the readings"}:{" "}
        </span>
        <Quantity value={kg} interval={intervalOfSd(kg, sd)} dimension="mass" preferences={preferences} aligned />
        <span className="block text-sm text-muted">
          <Quantity value={share} dimension="fraction" preferences={preferences} aligned />
        </span>
        <span className="sr-only">. Explain</span>
      </button>
    </td>
  );
}
