const WHEN = new Intl.DateTimeFormat("en-GB", { dateStyle: "medium", timeStyle: "short" });

interface PrintedLineProps {
  readonly title: string;
  readonly rev: number;
  /** null on the screen. */
  readonly at: Date | null;
}

/** What paper says of itself: which revision it shows, and when it was printed. */
export function PrintedLine({ title, rev, at }: PrintedLineProps) {
  return (
    <p className="mb-2 hidden print:block">
      {title}, revision {rev}
      {at === null ? null : (
        <>
          , printed on <time dateTime={at.toISOString()}>{WHEN.format(at)}</time>
        </>
      )}
    </p>
  );
}
