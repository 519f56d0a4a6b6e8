// IUPAC 2021 abridged standard atomic weights, g/mol (docs/sources.md#iupac-2021).
const H = 1.008;
const C = 12.011;
const O = 15.999;
const NA = 22.99;
const MG = 24.305;
const P = 30.974;
const S = 32.06;
const CL = 35.45;
const CA = 40.078;

const WATER = 2 * H + O;

/** Molar masses, g/mol, each written as the formula it stands for. */
export const MOLAR_MASS = {
  calcium: CA,
  magnesium: MG,
  sodium: NA,
  sulfate: S + 4 * O,
  chloride: CL,
  bicarbonate: H + C + 3 * O,
  gypsum: CA + S + 4 * O + 2 * WATER,
  calciumChlorideDihydrate: CA + 2 * CL + 2 * WATER,
  epsomSalt: MG + S + 4 * O + 7 * WATER,
  tableSalt: NA + CL,
  bakingSoda: NA + H + C + 3 * O,
  chalk: CA + C + 3 * O,
  slakedLime: CA + 2 * (O + H),
  lacticAcid: 3 * C + 6 * H + 3 * O,
  phosphoricAcid: 3 * H + P + 4 * O,
  hydrochloricAcid: H + CL,
  sulfuricAcid: 2 * H + S + 4 * O,
  citricAcid: 6 * C + 8 * H + 7 * O,
  quicklime: CA + O,
} as const;

/** Charge of each ion, without its sign. */
export const VALENCE = { calcium: 2, magnesium: 2, sodium: 1, sulfate: 2, chloride: 1, bicarbonate: 1 } as const;

/** Mass of calcium carbonate that neutralises one mole of acid, g/Eq. */
export const CALCIUM_CARBONATE_EQUIVALENT = MOLAR_MASS.chalk / 2;
