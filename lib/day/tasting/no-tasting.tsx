import type { ReactElement, ReactNode } from "react";
import type { Connection } from "../sync/day-session";

const YOUR_CLUBS = (
  <a className="button" href="/">
    Your clubs
  </a>
);

/** Shown for an address without a tasting. */
export function NoSuchTasting(): ReactElement {
  return (
    <Plain heading="No tasting here">
      <p>This address names no tasting. Open the tasting in your club and choose “Judge”.</p>
      {YOUR_CLUBS}
    </Plain>
  );
}

/** Shown while there are no sheets on this device. */
export function NoJudgeSheet({
  connection,
  onRetry,
}: {
  readonly connection: Connection;
  readonly onRetry: () => void;
}): ReactElement {
  if (connection === "unknown") {
    return (
      <Plain heading="Judging">
        <p role="status">Reading your sheets…</p>
      </Plain>
    );
  }
  if (connection === "signed out") {
    return (
      <Plain heading="Judging">
        <p>You are not signed in. Sign in once with a network; after that your sheets work without one.</p>
        <a className="button" href={`/sign-in?next=${encodeURIComponent(location.pathname)}`}>
          Sign in
        </a>
      </Plain>
    );
  }
  if (connection === "not found") {
    return (
      <Plain heading="Not found">
        <p>There is no such tasting here, or you do not judge at it.</p>
        {YOUR_CLUBS}
      </Plain>
    );
  }
  return (
    <Plain heading="Judging">
      <p>
        The server cannot be reached, and this tasting was not opened on this device before. Open it once where there is
        a network; after that it works without one.
      </p>
      <button type="button" className="button" onClick={onRetry}>
        Try again
      </button>
    </Plain>
  );
}

function Plain({ heading, children }: { readonly heading: string; readonly children: ReactNode }): ReactElement {
  return (
    <main id="content" className="page judging" tabIndex={-1}>
      <h1>{heading}</h1>
      <div className="mt-4 flex flex-col items-start gap-4">{children}</div>
    </main>
  );
}
