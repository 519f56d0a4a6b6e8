import type { TrialLog } from "./use-trial-log";

/** What is safe on the server and what is on this device only. */
export function DeliveryLine({ log }: { readonly log: TrialLog }) {
  const { entries, pendingCount, trouble, refused } = log;
  return (
    <div className="no-print mb-4">
      <p role="status" className={pendingCount > 0 ? "text-accent" : "text-muted"}>
        {words(entries.length, pendingCount, trouble)}
      </p>
      {refused.length === 0 ? null : (
        <ul role="alert" className="text-accent">
          {refused.map((reason, i) => (
            <li key={`${String(i)} ${reason}`}>The server did not take an entry: {reason}.</li>
          ))}
        </ul>
      )}
    </div>
  );
}

function words(all: number, pending: number, trouble: string | null): string {
  if (pending > 0) {
    const what = pending === 1 ? "1 entry is" : `${String(pending)} entries are`;
    const why = trouble === null ? "On its way." : `${trouble} It is sent again by itself.`;
    return `${what} on this device only. ${why}`;
  }
  if (trouble !== null) return `Everything of this device is on the server. ${trouble}`;
  return all === 0 ? "Nothing has been read yet." : "Everything is on the server.";
}
