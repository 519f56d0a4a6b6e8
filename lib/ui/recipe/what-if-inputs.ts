import { EQUIPMENT_FIELDS, type EquipmentField } from "@/lib/model/equipment-fields";
import type { MeasuredField } from "@/lib/model/field";
import { isFigure, type EquipmentDraft } from "../equipment/equipment-draft";
import { typeInRow } from "./change-rows";
import {
  isWordField,
  measuredFieldOf,
  ROW_FIELDS,
  ROW_LISTS,
  rowField,
  type Column,
  type Draft,
  type DraftField,
} from "./draft";
import { typed, type Entry } from "./entry";
import { cellLabel, rowNames } from "./row-labels";

/** Whose figure an input is. */
export const WHAT_IF_GROUPS = ["recipe", "day", "kettle"] as const;
export type WhatIfGroup = (typeof WHAT_IF_GROUPS)[number];

/** A recipe with its day, and the kettle that is chosen: both as text, so that a trial is read as any form is. */
export interface Setting {
  readonly draft: Draft;
  readonly kettle: EquipmentDraft;
}

/** One number that somebody may try another value of. */
export interface WhatIfInput {
  readonly id: string;
  readonly group: WhatIfGroup;
  readonly label: string;
  readonly field: MeasuredField;
  readonly entry: Entry;
  /** A copy of the setting with this text in its place. */
  readonly put: (setting: Setting, text: string) => Setting;
}

/** Every number of a recipe, of its day and of its kettle that has a value. */
export function whatIfInputs({ draft, kettle }: Setting): readonly WhatIfInput[] {
  return [...fieldInputs(draft), ...cellInputs(draft), ...kettleInputs(kettle)].filter(
    ({ entry }) => entry.text.trim() !== "",
  );
}

function fieldInputs(draft: Draft): readonly WhatIfInput[] {
  const names = Object.keys(draft.fields) as DraftField[]; // the keys of the type are the keys of the object
  return names.flatMap((name): WhatIfInput[] => {
    if (isWordField(name)) return [];
    const field = measuredFieldOf(name);
    const put = ({ draft: into, kettle }: Setting, text: string): Setting => ({
      draft: { ...into, fields: { ...into.fields, [name]: typed(text) } },
      kettle,
    });
    const group = name.startsWith("ambient.") ? "day" : "recipe";
    return [{ id: name, group, label: field.label, field, entry: draft.fields[name], put }];
  });
}

function cellInputs(draft: Draft): readonly WhatIfInput[] {
  const called = rowNames(draft);
  return ROW_LISTS.flatMap((list) =>
    draft.rows[list].flatMap(({ key, cells }) =>
      (Object.keys(ROW_FIELDS[list]) as Column[]).flatMap((column): WhatIfInput[] => {
        const [field, entry] = [rowField(list, column), cells[column]];
        if (field === null || entry === undefined) return [];
        const label = cellLabel(called.get(`${list}.${key}`) ?? "", column);
        const put = ({ draft: into, kettle }: Setting, text: string): Setting => ({
          draft: typeInRow(into, list, key, { [column]: text }),
          kettle,
        });
        return [{ id: `${list}.${key}.${column}`, group: "recipe", label, field, entry, put }];
      }),
    ),
  );
}

function kettleInputs(kettle: EquipmentDraft): readonly WhatIfInput[] {
  const names = Object.keys(EQUIPMENT_FIELDS) as EquipmentField[]; // the keys of the type are the keys of the object
  return names.map((name) => {
    const field: MeasuredField = EQUIPMENT_FIELDS[name];
    const put = ({ draft, kettle: into }: Setting, text: string): Setting => ({
      draft,
      kettle: withFigure(into, name, text),
    });
    const entry = isFigure(name) ? kettle.figures[name].value : kettle.numbers[name];
    return { id: `equipment.${name}`, group: "kettle", label: field.label, field, entry, put };
  });
}

function withFigure(kettle: EquipmentDraft, name: EquipmentField, text: string): EquipmentDraft {
  if (!isFigure(name)) return { ...kettle, numbers: { ...kettle.numbers, [name]: typed(text) } };
  return { ...kettle, figures: { ...kettle.figures, [name]: { ...kettle.figures[name], value: typed(text) } } };
}
