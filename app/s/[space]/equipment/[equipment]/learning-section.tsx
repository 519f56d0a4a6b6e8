import Link from "next/link";

/** The way from a profile to what its brews say of it. */
export function LearningSection({ space, equipmentId }: { readonly space: string; readonly equipmentId: string }) {
  return (
    <section aria-labelledby="learned" className="mb-8">
      <h2 id="learned" className="mb-2">
        Learning
      </h2>
      <p>
        <Link href={`/s/${space}/equipment/${equipmentId}/learned`} className="target">
          What brews tell of this kettle
        </Link>
        : its figures by its own logs and by the other kettles of its kind.
      </p>
    </section>
  );
}
