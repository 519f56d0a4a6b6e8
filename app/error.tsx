"use client";

import Link from "next/link";
import { PageMain } from "@/lib/ui/page-main";

interface ErrorPageProps {
  readonly error: Error & { readonly digest?: string };
  readonly reset: () => void;
}

export default function ErrorPage({ error, reset }: ErrorPageProps) {
  return (
    <PageMain narrow>
      <h1>Something went wrong here</h1>
      <p className="my-4">
        The page could not be made. What was saved before is safe; what you were just typing may not be saved. Try
        again, and if it happens twice, tell whoever runs this service
        {error.digest === undefined ? "." : ` and give them the number ${error.digest}.`}
      </p>
      <div className="flex flex-wrap gap-3">
        <button type="button" className="button" onClick={reset}>
          Try again
        </button>
        <Link href="/" className="button button-quiet">
          Go to your clubs
        </Link>
      </div>
    </PageMain>
  );
}
