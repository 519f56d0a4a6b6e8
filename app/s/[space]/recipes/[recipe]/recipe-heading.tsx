import Link from "next/link";

interface RecipeHeadingProps {
  readonly title: string;
  readonly rev: number;
  readonly home: string;
  /** Where a shared brew of this revision is called; null for a reader who may not. */
  readonly sharedBrew: string | null;
}

/** The recipe's title, and where it goes from here. */
export function RecipeHeading({ title, rev, home, sharedBrew }: RecipeHeadingProps) {
  return (
    <div className="mb-4 flex flex-wrap items-center justify-between gap-x-6 gap-y-2">
      <h1>{title}</h1>
      <p className="no-print flex flex-wrap items-center gap-x-6">
        <Link href={`${home}/kettles`} className="button button-quiet">
          On every kettle
        </Link>
        {sharedBrew === null ? null : (
          <Link href={sharedBrew} className="target">
            Call a shared brew
          </Link>
        )}
        <a href="#revisions" className="target">
          Revision {rev}
        </a>
      </p>
    </div>
  );
}
