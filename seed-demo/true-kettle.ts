import type { Equipment, Figure } from "@/lib/calc/ledger";
import { fraction } from "@/lib/calc/units";
import type { Noise } from "./noise";

/** How far the hidden truth lies from the profile, in stated uncertainties: no kettle is quite as its owner thinks. */
const SPREAD = 0.8;

/**
 * The kettle as it really is, which nobody in the demo club knows: its figures drawn around those of the profile.
 * Logs are made on it by `lib/calc`, so that planned and measured differ as they do in life.
 */
export function trueKettle(profile: Equipment, noise: Noise): Equipment {
  const draw = <Q extends number>(figure: Figure<Q>, most = Infinity): Figure<Q> => {
    const value = figure.value + SPREAD * figure.sd * noise.normal();
    // Kept within what the unit allows, so the cast adds nothing that the maker would refuse.
    return { ...figure, value: Math.min(most, Math.max(figure.value / 3, value)) as Q };
  };
  const { kettle, lauter, chiller, fermenter } = profile;
  const whole = fraction(1);
  return {
    ...profile,
    kettle: {
      ...kettle,
      heatShare: draw(kettle.heatShare, whole),
      lossCoefficient: draw(kettle.lossCoefficient),
      boilOff: draw(kettle.boilOff),
      trub: draw(kettle.trub),
      transfer: draw(kettle.transfer),
    },
    lauter: {
      ...lauter,
      absorption: draw(lauter.absorption),
      deadSpace: draw(lauter.deadSpace),
      bypass: draw(lauter.bypass, whole),
      conversion: draw(lauter.conversion, whole),
    },
    chiller: { ...chiller, conductance: draw(chiller.conductance) },
    fermenter: { ...fermenter, left: draw(fermenter.left) },
  };
}
