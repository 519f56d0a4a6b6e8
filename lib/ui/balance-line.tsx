import type { ReactElement } from "react";
import type { StationBalance, Stream } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { balanceAmount, balanceText } from "./balance-text";

/** In = lost + out under a station, for mass and for extract. Opening it names the streams. */
export interface BalanceLineProps {
  readonly balance: StationBalance;
  readonly preferences: Preferences;
}

export function BalanceLine({ balance, preferences }: BalanceLineProps): ReactElement {
  return (
    <details>
      <summary className="cursor-pointer py-1">{balanceText(balance, preferences)}</summary>
      <BalanceStreams balance={balance} preferences={preferences} />
    </details>
  );
}

export function BalanceStreams({ balance, preferences }: BalanceLineProps): ReactElement {
  return (
    <dl className="grid grid-cols-[auto_1fr] gap-x-4 pb-2">
      <StreamList term="In" streams={balance.in} preferences={preferences} />
      <StreamList term="Lost" streams={balance.lost} preferences={preferences} />
      <StreamList term="Out" streams={balance.out} preferences={preferences} />
    </dl>
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
            {stream.name} {balanceAmount(stream.kg, preferences)}
            {stream.extractKg > 0 ? `, of it extract ${balanceAmount(stream.extractKg, preferences)}` : ""}
          </span>
        ))}
      </dd>
    </>
  );
}
