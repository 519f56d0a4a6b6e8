import type { ReactElement } from "react";
import { useDay } from "./day-context";

/** What the server refused. It stays here, and can be taken along as a file. */
export function RefusedEntries(): ReactElement | null {
  const { refused, retryRefused } = useDay();
  if (refused.length === 0) return null;
  const copy = `data:application/json,${encodeURIComponent(JSON.stringify(refused, null, 2))}`;
  return (
    <div className="notice notice-attention mt-2">
      <p className="font-semibold">Refused by the server, and kept here:</p>
      <ul>
        {refused.map(({ event, refusal }) => (
          <li key={event.id}>
            {event.kind}, <time dateTime={event.occurredAt}>{event.occurredAt.slice(0, 16).replace("T", " ")}</time>:{" "}
            {refusal}
          </li>
        ))}
      </ul>
      <button type="button" className="button day-button-small" onClick={retryRefused}>
        Send again
      </button>{" "}
      <a className="button button-quiet" download="refused-entries.json" href={copy}>
        Save a copy
      </a>
    </div>
  );
}
