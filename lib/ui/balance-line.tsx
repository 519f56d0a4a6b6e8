import type { ReactElement } from "react";
import type { StationBalance, Stream } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "./format-quantity";

/** In = lost + out under a station, for mass and for extract. Opening it names the streams. */
export interface BalanceLineProps {
  readonly balance: StationBalance;
  readonly preferences: Preferences;
}

type Substance = "kg" | "extractKg";

export function BalanceLine({ balance, preferences }: BalanceLineProps): ReactElement {
  const hasExtract = sum(balance.in, "extractKg") > 0;
  return (
    <details>
      <summary className="cursor-pointer py-1">
        Mass {equation(balance, "kg", preferences)}
        {hasExtract ? `; extract ${equation(balance, "extractKg", preferences)}` : ""}
      </summary>
      <dl className="grid grid-cols-[auto_1fr] gap-x-4 pb-2">
        <StreamList term="In" streams={balance.in} preferences={preferences} />
        <StreamList term="Lost" streams={balance.lost} preferences={preferences} />
        <StreamList term="Out" streams={balance.out} preferences={preferences} />
      </dl>
    </details>
  );
}

function StreamList(props: {
  readonly term: string;
  readonly streams: readonly Stream[];
  readonly preferences: Preferences;
}): ReactElement {
  const { term, streams, preferences } = props;
  return (
    <>
      <dt>{term}</dt>
      <dd>
        {streams.length === 0 ? "nothing" : null}
        {streams.map((stream) => (
          <span className="block" key={stream.name}>
            {stream.name} {amount(stream.kg, preferences)}
            {stream.extractKg > 0 ? `, of it extract ${amount(stream.extractKg, preferences)}` : ""}
          </span>
        ))}
      </dd>
    </>
  );
}

function equation({ in: flowsIn, lost, out }: StationBalance, of: Substance, preferences: Preferences): string {
  const [into, gone, onward] = [flowsIn, lost, out].map((streams) => amount(sum(streams, of), preferences));
  return `in ${into ?? ""} = lost ${gone ?? ""} + out ${onward ?? ""}`;
}

function sum(streams: readonly Stream[], of: Substance): number {
  return streams.reduce((total, stream) => total + stream[of], 0);
}

function amount(kg: number, preferences: Preferences): string {
  const { text, unit } = formatQuantity({ value: kg, dimension: "mass", preferences });
  return `${text} ${unit}`;
}
