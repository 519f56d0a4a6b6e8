import Link from "next/link";
import type { IngredientUse } from "@/lib/model/ingredient-use";

interface UseListsProps {
  readonly space: string;
  readonly use: IngredientUse;
}

/** Where an ingredient is used. */
export function UseLists({ space, use: { recipes, brews } }: UseListsProps) {
  if (recipes.length === 0 && brews.length === 0) {
    return <p className="text-muted">No recipe and no brew here names it.</p>;
  }
  return (
    <div className="grid gap-x-12 gap-y-4 sm:grid-cols-2">
      <UseList heading="Recipes" none="No recipe names it in its newest revision.">
        {recipes.map(({ id, title }) => ({ id, href: `/s/${space}/recipes/${id}`, title, more: "" }))}
      </UseList>
      <UseList heading="Brews" none="No brew was made of it.">
        {brews.map(({ id, title, state }) => ({ id, href: `/s/${space}/brews/${id}`, title, more: `, ${state}` }))}
      </UseList>
    </div>
  );
}

interface Used {
  readonly id: string;
  readonly href: string;
  readonly title: string;
  readonly more: string;
}

function UseList(props: { readonly heading: string; readonly none: string; readonly children: readonly Used[] }) {
  const { heading, none, children } = props;
  return (
    <div>
      <h3>{heading}</h3>
      {children.length === 0 ? <p className="text-muted">{none}</p> : null}
      <ul className="list-ruled">
        {children.map(({ id, href, title, more }) => (
          <li key={id}>
            <Link href={href} className="target">
              {title}
            </Link>
            {more}
          </li>
        ))}
      </ul>
    </div>
  );
}
