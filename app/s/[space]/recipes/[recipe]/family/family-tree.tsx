import type { Relative, ShownRelative } from "@/lib/model/family";
import { RelativeLine } from "./relative-line";

interface FamilyTreeProps {
  readonly root: Relative;
  /** The recipe whose page this is. */
  readonly own: Pick<ShownRelative, "spaceSlug" | "recipeId">;
}

/** A family as lists within lists, which a screen reader tells as a tree without being told that it is one. */
export function FamilyTree({ root, own }: FamilyTreeProps) {
  return (
    <ul className="family-tree" aria-label="Family tree">
      <Branch relative={root} parent={null} own={own} />
    </ul>
  );
}

interface BranchProps {
  readonly relative: Relative;
  readonly parent: ShownRelative | null;
  readonly own: FamilyTreeProps["own"];
}

function Branch({ relative, parent, own }: BranchProps) {
  const { shown, ofRev, copies, hiddenCopies } = relative;
  const hasCopies = copies.length > 0 || hiddenCopies > 0;
  return (
    <li>
      <RelativeLine shown={shown} ofRev={ofRev} parent={parent} own={own} />
      {hasCopies ? (
        <ul aria-label={shown === null ? "Its copies" : `Copies of ${shown.title}`}>
          {copies.map((copy) => (
            <Branch key={copy.key} relative={copy} parent={shown} own={own} />
          ))}
          {hiddenCopies === 0 ? null : (
            <li className="text-muted">
              {hiddenCopies === 1 ? "One more copy elsewhere" : `${hiddenCopies} more copies elsewhere`}
            </li>
          )}
        </ul>
      ) : null}
    </li>
  );
}
