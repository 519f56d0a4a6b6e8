import { PrintedAt } from "@/lib/ui/sheet/printed-at";

/** What paper says of itself: which revision it shows, and when it was printed. */
export function PrintedLine({ title, rev }: { readonly title: string; readonly rev: number }) {
  return (
    <p className="mb-2 hidden print:block">
      {title}, revision {rev}. <PrintedAt />
    </p>
  );
}
