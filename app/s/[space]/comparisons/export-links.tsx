import { addressOfQuestion, type ComparisonQuestion } from "@/lib/model/summary/question";

interface ExportLinksProps {
  readonly home: string;
  readonly question: ComparisonQuestion;
}

const FILES = [
  { rows: "figures", format: "csv", text: "CSV, a row for each brew and quantity" },
  { rows: "figures", format: "json", text: "JSON of the same" },
  { rows: "readings", format: "csv", text: "CSV, a row for each reading" },
  { rows: "readings", format: "json", text: "JSON of the same readings" },
] as const;

/** The data of the brews that the question is about, for whoever analyses elsewhere. */
export function ExportLinks({ home, question }: ExportLinksProps) {
  return (
    <section aria-labelledby="export" className="no-print mt-10">
      <h2 id="export">Take the data along</h2>
      <p className="mt-1 text-muted">
        All quantities of these brews in the library’s units, one value a row. Programs read the same by the{" "}
        <a href="/api/v1/openapi.json">interface for programs</a>, with a key from “Sensors and scripts”.
      </p>
      <ul className="mt-2">
        {FILES.map(({ rows, format, text }) => (
          <li key={`${rows} ${format}`}>
            <a
              href={`${home}/comparisons/export?rows=${rows}&format=${format}&${addressOfQuestion(question)}`}
              className="target"
              download
            >
              {text}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
