import Link from "next/link";
import { INGREDIENT_KINDS, type IngredientKind } from "@/lib/model/ingredient-kinds";
import { KIND_WORDS } from "@/lib/ui/ingredient/kind-words";

/** The kind of a new record belongs to the address: its form depends on it. */
export function KindChoice({ kind, path }: { readonly kind: IngredientKind; readonly path: string }) {
  return (
    <nav aria-label="Kind" className="local-nav mb-4">
      <ul className="flex flex-wrap gap-x-5">
        {INGREDIENT_KINDS.map((each) => (
          <li key={each}>
            <Link href={`${path}?kind=${each}`} aria-current={each === kind ? "true" : undefined}>
              {KIND_WORDS[each].many}
            </Link>
          </li>
        ))}
      </ul>
    </nav>
  );
}
