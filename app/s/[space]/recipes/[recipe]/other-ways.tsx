import Link from "next/link";

interface OtherWaysProps {
  readonly home: string;
  readonly rev: number;
  readonly mayPublish: boolean;
}

/** Where a recipe can go from here, besides being written on and brewed. */
export function OtherWays({ home, rev, mayPublish }: OtherWaysProps) {
  return (
    <p className="no-print mt-4 flex flex-wrap gap-x-6">
      <Link href={`${home}/compare`} className="target">
        What changed
      </Link>
      <Link href={`${home}/copy?rev=${rev}`} className="target">
        Copy
      </Link>
      <Link href={`${home}/family`} className="target">
        Family tree
      </Link>
      {mayPublish ? (
        <Link href={`${home}/publish`} className="target">
          Publish
        </Link>
      ) : null}
    </p>
  );
}
