import type { Chiller, Equipment, Figure, MashVessel, SpargeMethod } from "@/lib/calc/ledger";
import type { Quantity } from "@/lib/calc/units";
import { EQUIPMENT_FIELDS, type EquipmentField } from "@/lib/model/equipment-fields";
import type { FieldErrors } from "@/lib/model/field-errors";
import type { MeasuredField } from "@/lib/model/field";
import { withKeptCorrelations } from "@/lib/model/learning/kept-correlations";
import type { Preferences } from "@/lib/model/preferences";
import { DraftReader } from "../recipe/draft-reader";
import type { Entry } from "../recipe/entry";
import { uncertaintyField, type EquipmentDraft, type FigureName } from "./equipment-draft";

export interface EquipmentReading {
  /** null while a field cannot be read. */
  readonly equipment: Equipment | null;
  readonly problems: FieldErrors;
}

const MASH_KINDS: readonly MashVessel["kind"][] = ["basket", "bag", "tun"];
const METHODS: readonly SpargeMethod[] = ["none", "batch", "continuous", "pour-over"];
const CHILLERS: readonly Chiller["kind"][] = ["immersion", "counterflow", "ice bath", "none"];

type QuantityOf<N extends EquipmentField> = ReturnType<(typeof EQUIPMENT_FIELDS)[N]["make"]>;
type NumberName = keyof EquipmentDraft["numbers"];

/** Reads a profile field by field. */
export function readEquipment(draft: EquipmentDraft, preferences: Preferences): EquipmentReading {
  const reader = new EquipmentReader(draft, preferences);
  const equipment = withKeptCorrelations(reader.equipment(), draft.opened);
  const problems = Object.fromEntries(reader.problems);
  return { equipment: reader.problems.size === 0 ? equipment : null, problems };
}

class EquipmentReader {
  private readonly reader: DraftReader;

  constructor(
    private readonly draft: EquipmentDraft,
    preferences: Preferences,
  ) {
    this.reader = new DraftReader(preferences);
  }

  get problems(): ReadonlyMap<string, string> {
    return this.reader.problems;
  }

  equipment(): Equipment {
    const name = this.draft.name.trim();
    if (name === "") this.reader.problems.set("name", "Name of the equipment is empty");
    return {
      name,
      kettle: this.kettle(),
      mash: this.mash(),
      lauter: this.lauter(),
      hopAbsorption: this.figure("hopAbsorption"),
      chiller: {
        kind: this.choice("chiller.kind", CHILLERS),
        conductance: this.figure("chiller.conductance"),
        coolantFlow: this.number("chiller.coolantFlow"),
        coolant: this.number("chiller.coolant"),
      },
      fermenter: {
        capacity: this.number("fermenter.capacity"),
        headspace: this.number("fermenter.headspace"),
        left: this.figure("fermenter.left"),
      },
      usualBatch: this.number("usualBatch"),
      altitude: this.number("altitude"),
    };
  }

  private kettle(): Equipment["kettle"] {
    const { dipStick } = this.draft.opened.kettle;
    return {
      capacity: this.number("kettle.capacity"),
      headspace: this.number("kettle.headspace"),
      minimum: this.number("kettle.minimum"),
      openArea: this.number("kettle.openArea"),
      lid: this.draft.choices["kettle.lid"] === "yes",
      heatCapacity: this.number("kettle.heatCapacity"),
      ratedPower: this.number("kettle.ratedPower"),
      ratedVoltage: this.number("kettle.ratedVoltage"),
      supplyVoltage: this.number("kettle.supplyVoltage"),
      heatShare: this.figure("kettle.heatShare"),
      lossCoefficient: this.figure("kettle.lossCoefficient"),
      boilOff: this.figure("kettle.boilOff"),
      trub: this.figure("kettle.trub"),
      transfer: this.figure("kettle.transfer"),
      ...(dipStick === undefined ? {} : { dipStick }),
    };
  }

  private mash(): MashVessel {
    const { choices } = this.draft;
    return {
      kind: this.choice("mash.kind", MASH_KINDS),
      capacity: this.number("mash.capacity"),
      grainLimit: this.optional("mash.grainLimit"),
      falseBottom: choices["mash.falseBottom"] === "yes",
      heated: choices["mash.heated"] === "yes",
      heatCapacity: this.number("mash.heatCapacity"),
      lossCoefficient: this.number("mash.lossCoefficient"),
      thickest: this.number("mash.thickest"),
    };
  }

  private lauter(): Equipment["lauter"] {
    return {
      method: this.choice("lauter.method", METHODS),
      absorption: this.figure("lauter.absorption"),
      deadSpace: this.figure("lauter.deadSpace"),
      bypass: this.figure("lauter.bypass"),
      conversion: this.figure("lauter.conversion"),
      spargeHeater: this.optional("lauter.spargeHeater"),
    };
  }

  private number<N extends NumberName>(name: N): QuantityOf<N> {
    return this.quantity(name, this.draft.numbers[name]);
  }

  private quantity<N extends EquipmentField>(name: N, entry: Entry): QuantityOf<N> {
    const field: MeasuredField = EQUIPMENT_FIELDS[name];
    const read: Quantity<string> = this.reader.number({ name, path: name, entry, field });
    // One name leads to one maker, which the union of all of them hides from the compiler.
    return read as QuantityOf<N>;
  }

  private optional<N extends NumberName>(name: N): QuantityOf<N> | null {
    return this.draft.numbers[name].text.trim() === "" ? null : this.number(name);
  }

  private figure<N extends FigureName>(name: N): Figure<QuantityOf<N>> {
    const { value, sd, from, count, basis } = this.draft.figures[name];
    const { label } = EQUIPMENT_FIELDS[name];
    const spread = readSpread(this.reader, name, sd);
    const trials = Number(count.text.trim() === "" ? "0" : count.text);
    if (!Number.isInteger(trials) || trials < 0 || trials > 100000) {
      const message = `${label}, number of brews “${count.text.slice(0, 20)}” is not a whole number from 0 to 100000`;
      this.reader.problems.set(`${name}.count`, message);
    }
    return {
      value: this.quantity(name, value),
      sd: spread,
      from,
      count: trials,
      ...(basis === undefined ? {} : { basis }),
    };
  }

  private choice<W extends string>(name: keyof EquipmentDraft["choices"], words: readonly W[]): W {
    const chosen = words.find((candidate) => candidate === this.draft.choices[name]);
    if (chosen === undefined) throw new Error(`no such choice of ${name}: ${this.draft.choices[name]}`);
    return chosen;
  }
}

/** An uncertainty is a plain number, although it is typed in the unit of its figure. */
function readSpread(reader: DraftReader, name: FigureName, entry: Entry): number {
  return reader.number({ name: `${name}.sd`, path: `${name}.sd`, entry, field: uncertaintyField(name) });
}
