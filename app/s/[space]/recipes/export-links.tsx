import { EXPORT_KINDS, KINDS_OF_FILE } from "@/lib/model/exchange/export-file";

interface ExportLinksProps {
  /** Address of the space's recipes. */
  readonly recipes: string;
  readonly id: string;
  readonly rev: number;
}

/** One revision as a file, in each of the open standards. */
export function ExportLinks({ recipes, id, rev }: ExportLinksProps) {
  return (
    <section aria-labelledby="export-heading" className="no-print mt-8">
      <h2 id="export-heading" className="mb-1">
        As a file
      </h2>
      <ul className="flex flex-wrap gap-x-6">
        {EXPORT_KINDS.map((kind) => (
          <li key={kind}>
            <a
              href={`${recipes}/export/file?recipe=${id}&rev=${String(rev)}&format=${kind}`}
              className="target"
              download
            >
              {KINDS_OF_FILE[kind].label}
            </a>
          </li>
        ))}
      </ul>
    </section>
  );
}
