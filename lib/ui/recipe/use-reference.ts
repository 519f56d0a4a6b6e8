"use client";

import { useEffect, useMemo, useState } from "react";
import type { TypicalFermentable } from "@/lib/model/ingredients";
import type { Style } from "@/lib/model/styles";
import { withOwn, type ListedHop, type ListedYeast, type OwnIngredients } from "./own-ingredients";

/** Lists to choose from. They come after the page, since nobody needs them to read it. */
export interface Reference {
  readonly fermentables: readonly TypicalFermentable[];
  readonly hops: readonly ListedHop[];
  readonly yeasts: readonly ListedYeast[];
  readonly styles: readonly Style[];
}

/** `own` are the ingredients of the club, which come before those of the lists. */
export function useReference(own: OwnIngredients): Reference | null {
  const [reference, setReference] = useState<Reference | null>(null);
  useEffect(() => {
    let isMounted = true;
    void load().then((loaded) => {
      if (isMounted) setReference(loaded);
    });
    return () => {
      isMounted = false;
    };
  }, []);
  return useMemo(() => (reference === null ? null : withOwn(reference, own)), [reference, own]);
}

async function load(): Promise<Reference> {
  const [ingredients, hops, yeasts, styles] = await Promise.all([
    import("@/lib/model/ingredients"),
    import("@/lib/model/hop-varieties"),
    import("@/lib/model/yeast-classes"),
    import("@/lib/model/styles"),
  ]);
  return {
    fermentables: ingredients.TYPICAL_FERMENTABLES,
    hops: hops.HOP_VARIETIES,
    yeasts: yeasts.YEAST_CLASSES,
    styles: styles.STYLES,
  };
}

/** The entry of a list with this name, in whatever letters it was typed. */
export function named<T extends { readonly name: string }>(list: readonly T[], name: string): T | null {
  const wanted = name.trim().toLowerCase();
  return list.find((entry) => entry.name.toLowerCase() === wanted) ?? null;
}
