"use client";

import { useCallback, useState, type ReactElement } from "react";
import type { Station, StationBalance } from "@/lib/calc/ledger";
import { BalanceStreams } from "../balance-line";
import { balanceText } from "../balance-text";
import { useEditor } from "./editor-context";
import type { EditorState } from "./editor-state";
import { useEditorValue } from "./use-editor-value";

/** In = lost + out of one station, following by itself. The streams are only made while somebody looks at them. */
export function LiveBalance({ station }: { readonly station: Station }): ReactElement {
  const { preferences } = useEditor();
  const [isOpen, setOpen] = useState(false);
  const text = useEditorValue(
    useCallback(
      (state: EditorState) => {
        const balance = balanceOf(state, station);
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
  const balance = useEditorValue(useCallback((state: EditorState) => balanceOf(state, station), [station]));
  return balance === null ? null : <BalanceStreams balance={balance} preferences={preferences} />;
}

function balanceOf({ shown }: EditorState, station: Station): StationBalance | null {
  return shown?.brewed.ledger.balances.find((balance) => balance.station === station) ?? null;
}
