import type { ReactElement, ReactNode } from "react";
import type { Connection } from "../sync/day-session";

/** What a page that a device keeps says where there is nothing to show. */
export interface KeptPageWords {
  readonly className: string;
  readonly heading: string;
  readonly noAddress: readonly [heading: string, text: string];
  readonly signedOut: string;
  readonly notFound: string;
  readonly away: string;
}

const YOUR_CLUBS = (
  <a className="button" href="/">
    Your clubs
  </a>
);

/** Shown for an address that names nothing. */
export function NoAddress({ words }: { readonly words: KeptPageWords }): ReactElement {
  const [heading, text] = words.noAddress;
  return (
    <Plain words={words} heading={heading}>
      <p>{text}</p>
      {YOUR_CLUBS}
    </Plain>
  );
}

interface NothingKeptProps {
  readonly words: KeptPageWords;
  readonly connection: Connection;
  readonly onRetry: () => void;
}

/** Shown where there is nothing on this device, and the server gave nothing. */
export function NothingKept({ words, connection, onRetry }: NothingKeptProps): ReactElement {
  switch (connection) {
    case "signed out":
      return (
        <Plain words={words}>
          <p>{words.signedOut}</p>
          <a className="button" href={`/sign-in?next=${encodeURIComponent(location.pathname)}`}>
            Sign in
          </a>
        </Plain>
      );
    case "not found":
      return (
        <Plain words={words} heading="Not found">
          <p>{words.notFound}</p>
          {YOUR_CLUBS}
        </Plain>
      );
    default:
      return (
        <Plain words={words}>
          <p>{words.away}</p>
          <button type="button" className="button" onClick={onRetry}>
            Try again
          </button>
        </Plain>
      );
  }
}

interface PlainProps {
  readonly words: KeptPageWords;
  readonly heading?: string;
  readonly children: ReactNode;
}

function Plain({ words, heading = words.heading, children }: PlainProps): ReactElement {
  return (
    <main id="content" className={`page ${words.className}`} tabIndex={-1}>
      <h1>{heading}</h1>
      <div className="mt-4 flex flex-col items-start gap-4">{children}</div>
    </main>
  );
}
