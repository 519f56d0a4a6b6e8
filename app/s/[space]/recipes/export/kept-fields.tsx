import type { ExportReport } from "@/lib/model/exchange/export-report";

interface KeptFieldsProps {
  /** Of the sentence that describes the recipe's box. */
  readonly id: string;
  readonly title: string;
  readonly report: ExportReport;
}

const STANDARD = { beerjson: "BeerJSON", beerxml: "BeerXML" } as const;

/** What of the file that a recipe came out of goes back into a file of that standard, and what no longer fits. */
export function KeptFields({ id, title, report: { format, back, lost } }: KeptFieldsProps) {
  const standard = STANDARD[format];
  return (
    <div role="group" aria-label={`From the file of ${title}`} className="mb-2 ps-9 text-sm text-muted">
      <p id={id}>
        From a {standard} file: {fields(back)} without a place here {back === 1 ? "goes" : "go"} back into {standard}.
      </p>
      {lost.length === 0 ? null : (
        <details>
          <summary className="cursor-pointer py-3">
            {fields(lost.length)} no longer {lost.length === 1 ? "fits" : "fit"}
          </summary>
          <p>The recipe has changed there since, so the file says what the recipe says now.</p>
          <ul className="list-disc ps-5">
            {lost.map(({ place, said }) => (
              <li key={place} className="wrap-anywhere">
                {place}: {said}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

function fields(count: number): string {
  return count === 1 ? "1 field" : `${String(count)} fields`;
}
