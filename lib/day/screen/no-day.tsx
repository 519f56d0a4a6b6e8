import type { ReactElement } from "react";
import type { Connection } from "../sync/day-session";

/** Shown for an address without a brew. */
export function NoSuchAddress(): ReactElement {
  return (
    <Plain heading="No brew day here">
      <p>This address names no brew. Open the brew in your club and choose “Brew day”.</p>
      <a className="button" href="/">
        Your clubs
      </a>
    </Plain>
  );
}

/** Shown while there is no sheet on this device. */
export function NoSheet({
  connection,
  onRetry,
}: {
  readonly connection: Connection;
  readonly onRetry: () => void;
}): ReactElement {
  if (connection === "unknown") {
    return (
      <Plain heading="Brew day">
        <p role="status">Reading the sheet…</p>
      </Plain>
    );
  }
  if (connection === "signed out") {
    return (
      <Plain heading="Brew day">
        <p>You are not signed in. Sign in once with a network; after that this brew day works without one.</p>
        <a className="button" href={`/sign-in?next=${encodeURIComponent(location.pathname)}`}>
          Sign in
        </a>
      </Plain>
    );
  }
  if (connection === "not found") {
    return (
      <Plain heading="Not found">
        <p>There is no such brew here, or it is not of a club of yours.</p>
        <a className="button" href="/">
          Your clubs
        </a>
      </Plain>
    );
  }
  return (
    <Plain heading="Brew day">
      <p>
        The server cannot be reached, and this brew was not opened on this device before. Open it once where there is a
        network; after that it works without one.
      </p>
      <button type="button" className="button" onClick={onRetry}>
        Try again
      </button>
    </Plain>
  );
}

function Plain({ heading, children }: { readonly heading: string; readonly children: React.ReactNode }): ReactElement {
  return (
    <main id="content" className="page brew-day" tabIndex={-1}>
      <h1>{heading}</h1>
      <div className="mt-4 flex flex-col items-start gap-4">{children}</div>
    </main>
  );
}
