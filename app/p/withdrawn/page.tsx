import type { Metadata } from "next";
import Link from "next/link";
import { PageMain } from "@/lib/ui/page-main";

export const metadata: Metadata = { title: "Withdrawn", robots: { index: false, follow: false } };

/** What stands at every address whose text was withdrawn; the proxy leads here, and answers 410. */
export default function WithdrawnPage() {
  return (
    <PageMain narrow>
      <h1 className="mb-4">Withdrawn</h1>
      <p className="mb-4">
        A club has taken back what it had published. The address leads here from then on, and Gylebook keeps no copy of
        what was withdrawn.
      </p>
      <p>
        <Link href="/">To the front page</Link>
      </p>
    </PageMain>
  );
}
