/** Sources of the explained numbers: anchor of docs/sources.md and what stands there, in one line. */
export const SOURCE_TITLES = {
  "abramowitz-stegun-1964": "Abramowitz and Stegun 1964: probability functions",
  "antoine-water": "Antoine equation of water, handbook constants",
  "asbc-beer-10a": "ASBC Methods of Analysis, Beer-10A: colour of beer",
  "asbc-beer-13": "ASBC Methods of Analysis, Beer-13: carbon dioxide in beer",
  "asbc-beer-33": "ASBC Methods of Analysis, Beer-33: energy of beer",
  "asbc-tables": "ASBC tables: specific gravity and extract",
  "ashrae-carrier": "ASHRAE Handbook after Carrier 1918: evaporation from open water",
  "balling-1865": "Balling 1865: extract, alcohol and attenuation",
  "barth-zaman-2015": "Barth and Zaman 2015: influence of water on mash pH",
  "bjcp-score-sheet": "Beer score sheet of 50 points",
  "bjorck-1967": "Björck 1967: least squares with refinement",
  "brandam-2003": "Brandam and others 2003: hydrolysis of starch during mashing",
  "brent-1973": "Brent 1973: root between two points",
  "brewing-room-book-1985": "The Brewing Room Book 1984/85: specific heat of malt",
  "bubnik-1995": "Bubník and others 1995, Sugar Technologists Manual: density and specific heat of sugar solutions",
  "chan-1983": "Chan, Golub and LeVeque 1983: sums of squares that keep their digits",
  "chandrasekhar-mash": "Chandrasekhar: attenuation against mash temperature",
  "cie-1931": "CIE 1931: standard observer of 2°, illuminant D65",
  "cie-1964": "CIE 1964: standard observer of 10°, illuminant C",
  "cie-lab-1976": "CIE 1976: CIELAB",
  "clopper-pearson-1934": "Clopper and Pearson 1934: exact limits of a proportion",
  "crc-handbook": "CRC Handbook of Chemistry and Physics",
  "daniels-2000": "Daniels 2000, Designing Great Beers: colour of beer from malt colour units",
  "delange-2011": "deLange 2011: fit to the carbon dioxide table of ASBC Beer-13",
  "delange-2015": "deLange 2015: mash pH from a balance of protons",
  "delange-2016": "deLange 2016: spectrum of the average beer",
  "dormand-prince-1980": "Dormand and Prince 1980: Runge–Kutta pair of order 5(4)",
  "ebc-analytica": "EBC Analytica 9.6: colour of beer",
  "energy-balance": "Conservation of energy",
  "feistel-wagner-2006": "Feistel and Wagner 2006: heat of melting of ice",
  "fix-fix-1997": "Fix and Fix 1997: yeast to pitch",
  "garetz-1994": "Garetz 1994: loss of alpha acids in storage",
  "gelman-2013": "Gelman and others 2013, Bayesian Data Analysis: normal–normal hierarchical model",
  "golub-van-loan-2013": "Golub and Van Loan 2013, Matrix Computations",
  "hairer-1993": "Hairer, Nørsett and Wanner 1993: step-size control",
  "hamilton-lewis-1974": "Hamilton and Lewis 1974: wort extract and attenuation",
  "harris-macwilliam-1961": "Harris and MacWilliam 1961: worts mashed under various conditions",
  "henry-co2": "Henry's law for carbon dioxide in beer, as the German handbooks print it",
  "iec-61966-2-1": "IEC 61966-2-1: sRGB",
  "iso-10399-2017": "ISO 10399:2017: duo-trio test",
  "iso-2533-1975": "ISO 2533:1975: standard atmosphere",
  "iso-4120-2021": "ISO 4120:2021: triangle test",
  "iso-5495-2005": "ISO 5495:2005: paired comparison test",
  "iso-hydrometers": "ISO 387: expansion of the glass of hydrometers",
  "iupac-2021": "IUPAC 2021: standard atomic weights",
  "jcgm-100-2008": "JCGM 100:2008: law of propagation of uncertainty",
  "jcgm-101-2008": "JCGM 101:2008: propagation of distributions by sampling",
  "kays-london-1984": "Kays and London 1984, Compact Heat Exchangers",
  "kell-1975": "Kell 1975: density of water",
  "kendall-1939": "Kendall and Babington Smith 1939; Friedman 1937: agreement of rankings",
  "kolbach-1953": "Kolbach 1953: residual alkalinity",
  "koljonen-1995": "Koljonen and others 1995: fermentable sugars during mashing",
  "lawson-hanson-1974": "Lawson and Hanson 1974, Solving Least Squares Problems",
  "lincoln-1987": "Lincoln 1987: specific gravity from extract",
  "malowicki-shellhammer-2005": "Malowicki and Shellhammer 2005: isomerisation of alpha acids",
  "marquardt-1963": "Levenberg 1944 and Marquardt 1963: least squares with damping",
  "mass-balance": "Conservation of mass and of extract",
  "mcgraw-wong-1996": "McGraw and Wong 1996: confidence limits of intraclass correlations",
  "morey-1995": "Morey 1995: colour of beer from malt colour units",
  "mosher-1995": "Mosher 1995, The Brewer's Companion: colour of beer from malt colour units",
  "muller-1990": "Muller 1990: survival of amylases in the mash",
  narziss: "Narziß and Back, Die Bierbrauerei: strength of the first wort",
  "nbs-440-1942": "NBS Circular C440, 1942: density of sugar solutions",
  "nickerson-likens-1979": "Nickerson and Likens 1979: hop storage index",
  "niederreiter-1992": "Niederreiter 1992: evenly spread points",
  "nist-sp-811": "NIST SP 811, 2008: exact definitions of US units",
  "nist-steam-tables": "NIST/ASME steam tables: heat of evaporation",
  "nist-strd": "NIST Statistical Reference Datasets: certified results",
  "nocedal-wright-2006": "Nocedal and Wright 2006, Numerical Optimization: least squares under constraints",
  "oiml-r22": "OIML R 22, 1973: density of ethanol",
  "oiv-ma-as2-02": "OIV-MA-AS2-02: refractometry, correction for temperature",
  "plummer-busenberg-1982": "Plummer and Busenberg 1982: carbonate equilibria in water",
  "potter-coulter": "Potter and Coulter: starch becoming susceptible to enzymes",
  "rager-1990": "Rager 1990: hop utilisation",
  "scheffe-1959": "Scheffé 1959, The Analysis of Variance: the two-way layout",
  "sharma-2005": "Sharma, Wu and Dalal 2005: CIEDE2000 colour difference",
  "shrout-fleiss-1979": "Shrout and Fleiss 1979: intraclass correlations",
  "speers-2003": "Speers, Rogers and Smith 2003: logistic of a fermentation",
  "standard-methods-1030": "Standard Methods 1030 E: charge balance of water analyses",
  "terrill-2011": "Terrill 2011: final gravity from two refractometer readings",
  "tinseth-1997": "Tinseth 1997: hop utilisation",
  "trade-practice": "Common practice, no source",
  "troester-2009": "Troester 2009: effect of brewing water and grist on mash pH",
  "williams-1949": "Williams 1949: orders balanced for place and predecessor",
} as const satisfies Readonly<Record<string, string>>;

export type SourceAnchor = keyof typeof SOURCE_TITLES;

export interface SourceReference {
  /** Anchor of docs/sources.md. */
  readonly anchor: SourceAnchor;
  readonly title: string;
}

/**
 * Gives anchors their titles.
 *
 * @returns A reference for each anchor, in the same order.
 */
export function referencesOf(anchors: readonly SourceAnchor[]): readonly SourceReference[] {
  return anchors.map((anchor) => ({ anchor, title: SOURCE_TITLES[anchor] }));
}
