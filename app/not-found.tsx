import type { Metadata } from "next";
import Link from "next/link";
import { PageMain } from "@/lib/ui/page-main";

export const metadata: Metadata = { title: "Not found" };

export default function NotFound() {
  return (
    <PageMain narrow>
      <h1>Not found</h1>
      <p className="my-4">
        There is no such page, or it belongs to a club that you are not a member of. If somebody sent you the address,
        ask them for an invitation to the club.
      </p>
      <Link href="/" className="button">
        Go to your clubs
      </Link>
    </PageMain>
  );
}
