import Link from "next/link";

/** The wordmark and the way in, or to one's own account. */
export function SiteHeader({ viewerName }: { readonly viewerName: string | null }) {
  return (
    <header className="no-print border-b border-rule">
      <div className="mx-auto flex max-w-[76rem] items-center justify-between gap-4 px-4">
        <Link href="/" className="target font-serif text-xl font-semibold no-underline">
          Gylebook
        </Link>
        {viewerName === null ? (
          <Link href="/sign-in" className="target">
            Sign in
          </Link>
        ) : (
          <Link href="/account" className="target min-w-0">
            <span className="sr-only">Account of </span>
            <span className="truncate">{viewerName}</span>
          </Link>
        )}
      </div>
    </header>
  );
}
