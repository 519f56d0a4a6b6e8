"use client";

import { useCallback, useState, type ReactElement } from "react";
import type { Station, StationBalance } from "@/lib/calc/ledger";
import { BalanceStreams } from "../balance-line";
import { balanceText } from "../balance-text";
import { useEditor } from "./editor-context";
import type { Shown } from "./shown";
import { useShownValue } from "./use-shown-value";

/** In = lost + out of one station, following by itself. The streams are only made while somebody looks at them. */
export function LiveBalance({ station }: { readonly station: Station }): ReactElement {
  const { preferences } = useEditor();
  const [isOpen, setOpen] = useState(false);
  const text = useShownValue(
    useCallback(
      (shown: Shown | null) => {
        const balance = balanceOf(shown, station);
        return balance === null ? "" : balanceText(balance, preferences);
      },
      [station, preferences],
    ),
  );
  return (
    <details onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary className="cursor-pointer py-1">{text}</summary>
      {isOpen ? <Streams station={station} /> : null}
    </details>
  );
}

function Streams({ station }: { readonly station: Station }): ReactElement | null {
  const { preferences } = useEditor();
  const balance = useShownValue(useCallback((shown: Shown | null) => balanceOf(shown, station), [station]));
  return balance === null ? null : <BalanceStreams balance={balance} preferences={preferences} />;
}

function balanceOf(shown: Shown | null, station: Station): StationBalance | null {
  return shown?.brewed.ledger.balances.find((balance) => balance.station === station) ?? null;
}
