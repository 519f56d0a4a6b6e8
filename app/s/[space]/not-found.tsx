import type { Metadata } from "next";

export const metadata: Metadata = { title: "Not found" };

export default function NotFoundInSpace() {
  return (
    <>
      <h1>Not found</h1>
      <p className="my-4">
        There is no such page or record here. Its address may be mistyped, or it belongs elsewhere.
      </p>
    </>
  );
}
