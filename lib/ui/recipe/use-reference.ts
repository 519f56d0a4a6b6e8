"use client";

import { useEffect, useState } from "react";
import type { HopVariety } from "@/lib/model/hop-varieties";
import type { TypicalFermentable } from "@/lib/model/ingredients";
import type { Style } from "@/lib/model/styles";
import type { YeastClass } from "@/lib/model/yeast-classes";

/** Lists to choose from. They come after the page, since nobody needs them to read it. */
export interface Reference {
  readonly fermentables: readonly TypicalFermentable[];
  readonly hops: readonly HopVariety[];
  readonly yeasts: readonly YeastClass[];
  readonly styles: readonly Style[];
}

export function useReference(): Reference | null {
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
  return reference;
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
