import Link from "next/link";
import { PageMain } from "@/lib/ui/page-main";

/** An address under which nothing was ever published. */
export default function PublicationNotFound() {
  return (
    <PageMain narrow>
      <h1 className="mb-4">Nothing is published here</h1>
      <p className="mb-4">
        No recipe and no result was published at this address. If it was typed, one letter may be wrong.
      </p>
      <p>
        <Link href="/">To the front page</Link>
      </p>
    </PageMain>
  );
}
