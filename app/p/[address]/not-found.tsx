import Link from "next/link";
import { PageMain } from "@/lib/ui/page-main";

/** An address under which nothing is published; what was there may have been withdrawn. */
export default function PublicationNotFound() {
  return (
    <PageMain narrow>
      <h1 className="mb-4">Nothing is published here</h1>
      <p className="mb-4">
        The recipe that this address led to was withdrawn by its club, or there never was one. Gylebook keeps no copy of
        what was withdrawn.
      </p>
      <p>
        <Link href="/">To the front page</Link>
      </p>
    </PageMain>
  );
}
