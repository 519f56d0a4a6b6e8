type Ten = [number, number, number, number, number, number, number, number, number, number];
/** A style whose figures depend on its base style has a code and a name only. */
type StyleRow = readonly [code: string, name: string] | readonly [code: string, name: string, ...figures: Ten];

export interface Span {
  readonly low: number;
  readonly high: number;
}

export interface StyleFigures {
  readonly originalGravity: Span;
  readonly finalGravity: Span;
  readonly bitterness: Span;
  /** SRM. */
  readonly colour: Span;
  /** % by volume. */
  readonly alcohol: Span;
}

export interface Style {
  readonly code: string;
  readonly name: string;
  /** null where the guidelines say that the figures follow another style. */
  readonly figures: StyleFigures | null;
}

/**
 * Vital figures of the beer styles: numbers and names only, from the BJCP 2021 Style Guidelines (docs/sources.md#bjcp-2021).
 * All rows were read from two copies that agree, except 15B, 25B and X1 to X5, which are from memory. Gravities
 * are SG, bitterness IBU, colour SRM, alcohol % by volume, each from low to high. A code that several rows
 * share in the guidelines has a number behind it.
 */
const ROWS: readonly StyleRow[] = [
  ["1A", "American Light Lager", 1.028, 1.04, 0.998, 1.008, 8, 12, 2, 3, 2.8, 4.2],
  ["1B", "American Lager", 1.04, 1.05, 1.004, 1.01, 8, 18, 2, 3.5, 4.2, 5.3],
  ["1C", "Cream Ale", 1.042, 1.055, 1.006, 1.012, 8, 20, 2, 5, 4.2, 5.6],
  ["1D", "American Wheat Beer", 1.04, 1.055, 1.008, 1.013, 15, 30, 3, 6, 4, 5.5],
  ["2A", "International Pale Lager", 1.042, 1.05, 1.008, 1.012, 18, 25, 2, 6, 4.5, 6],
  ["2B", "International Amber Lager", 1.042, 1.055, 1.008, 1.014, 8, 25, 6, 14, 4.5, 6],
  ["2C", "International Dark Lager", 1.044, 1.056, 1.008, 1.012, 8, 20, 14, 30, 4.2, 6],
  ["3A", "Czech Pale Lager", 1.028, 1.044, 1.008, 1.014, 20, 35, 3, 6, 3, 4.1],
  ["3B", "Czech Premium Pale Lager", 1.044, 1.06, 1.013, 1.017, 30, 45, 3.5, 6, 4.2, 5.8],
  ["3C", "Czech Amber Lager", 1.044, 1.06, 1.013, 1.017, 20, 35, 10, 16, 4.4, 5.8],
  ["3D", "Czech Dark Lager", 1.044, 1.06, 1.013, 1.017, 18, 34, 17, 35, 4.4, 5.8],
  ["4A", "Munich Helles", 1.044, 1.048, 1.006, 1.012, 16, 22, 3, 5, 4.7, 5.4],
  ["4B", "Festbier", 1.054, 1.057, 1.01, 1.012, 18, 25, 4, 6, 5.8, 6.3],
  ["4C", "Helles Bock", 1.064, 1.072, 1.011, 1.018, 23, 35, 6, 9, 6.3, 7.4],
  ["5A", "German Leichtbier", 1.026, 1.034, 1.006, 1.01, 15, 28, 1.5, 4, 2.4, 3.6],
  ["5B", "Kölsch", 1.044, 1.05, 1.007, 1.011, 18, 30, 3.5, 5, 4.4, 5.2],
  ["5C", "German Helles Exportbier", 1.05, 1.058, 1.008, 1.015, 20, 30, 4, 6, 5, 6],
  ["5D", "German Pils", 1.044, 1.05, 1.008, 1.013, 22, 40, 2, 4, 4.4, 5.2],
  ["6A", "Märzen", 1.054, 1.06, 1.01, 1.014, 18, 24, 8, 17, 5.6, 6.3],
  ["6B", "Rauchbier", 1.05, 1.057, 1.012, 1.016, 20, 30, 12, 22, 4.8, 6],
  ["6C", "Dunkles Bock", 1.064, 1.072, 1.013, 1.019, 20, 27, 14, 22, 6.3, 7.2],
  ["7A", "Vienna Lager", 1.048, 1.055, 1.01, 1.014, 18, 30, 9, 15, 4.7, 5.5],
  ["7B", "Altbier", 1.044, 1.052, 1.008, 1.014, 25, 50, 9, 17, 4.3, 5.5],
  ["8A", "Munich Dunkel", 1.048, 1.056, 1.01, 1.016, 18, 28, 17, 28, 4.5, 5.6],
  ["8B", "Schwarzbier", 1.046, 1.052, 1.01, 1.016, 20, 35, 19, 30, 4.4, 5.4],
  ["9A", "Doppelbock", 1.072, 1.112, 1.016, 1.024, 16, 26, 6, 25, 7, 10],
  ["9B", "Eisbock", 1.078, 1.12, 1.02, 1.035, 25, 35, 17, 30, 9, 14],
  ["9C", "Baltic Porter", 1.06, 1.09, 1.016, 1.024, 20, 40, 17, 30, 6.5, 9.5],
  ["10A", "Weissbier", 1.044, 1.053, 1.008, 1.014, 8, 15, 2, 6, 4.3, 5.6],
  ["10B", "Dunkles Weissbier", 1.044, 1.057, 1.008, 1.014, 10, 18, 14, 23, 4.3, 5.6],
  ["10C", "Weizenbock", 1.064, 1.09, 1.015, 1.022, 15, 30, 6, 25, 6.5, 9],
  ["11A", "Ordinary Bitter", 1.03, 1.039, 1.007, 1.011, 25, 35, 8, 14, 3.2, 3.8],
  ["11B", "Best Bitter", 1.04, 1.048, 1.008, 1.012, 25, 40, 8, 16, 3.8, 4.6],
  ["11C", "Strong Bitter", 1.048, 1.06, 1.01, 1.016, 30, 50, 8, 18, 4.6, 6.2],
  ["12A", "British Golden Ale", 1.038, 1.053, 1.006, 1.012, 20, 45, 2, 5, 3.8, 5],
  ["12B", "Australian Sparkling Ale", 1.038, 1.05, 1.004, 1.006, 20, 35, 4, 7, 4.5, 6],
  ["12C", "English IPA", 1.05, 1.07, 1.01, 1.015, 40, 60, 6, 14, 5, 7.5],
  ["13A", "Dark Mild", 1.03, 1.038, 1.008, 1.013, 10, 25, 14, 25, 3, 3.8],
  ["13B", "British Brown Ale", 1.04, 1.052, 1.008, 1.013, 20, 30, 12, 22, 4.2, 5.9],
  ["13C", "English Porter", 1.04, 1.052, 1.008, 1.014, 18, 35, 20, 30, 4, 5.4],
  ["14A", "Scottish Light", 1.03, 1.035, 1.01, 1.013, 10, 20, 17, 25, 2.5, 3.3],
  ["14B", "Scottish Heavy", 1.035, 1.04, 1.01, 1.015, 10, 20, 12, 20, 3.3, 3.9],
  ["14C", "Scottish Export", 1.04, 1.06, 1.01, 1.016, 15, 30, 12, 20, 3.9, 6],
  ["15A", "Irish Red Ale", 1.036, 1.046, 1.01, 1.014, 18, 28, 9, 14, 3.8, 5],
  ["15B", "Irish Stout", 1.036, 1.044, 1.007, 1.011, 25, 45, 25, 40, 3.8, 5],
  ["15C", "Irish Extra Stout", 1.052, 1.062, 1.01, 1.014, 35, 50, 30, 40, 5, 6.5],
  ["16A", "Sweet Stout", 1.044, 1.06, 1.012, 1.024, 20, 40, 30, 40, 4, 6],
  ["16B", "Oatmeal Stout", 1.045, 1.065, 1.01, 1.018, 25, 40, 22, 40, 4.2, 5.9],
  ["16C", "Tropical Stout", 1.056, 1.075, 1.01, 1.018, 30, 50, 30, 40, 5.5, 8],
  ["16D", "Foreign Extra Stout", 1.056, 1.075, 1.01, 1.018, 50, 70, 30, 40, 6.3, 8],
  ["17A", "British Strong Ale", 1.055, 1.08, 1.015, 1.022, 30, 60, 8, 22, 5.5, 8],
  ["17B", "Old Ale", 1.055, 1.088, 1.015, 1.022, 30, 60, 10, 22, 5.5, 9],
  ["17C", "Wee Heavy", 1.07, 1.13, 1.018, 1.04, 17, 35, 14, 25, 6.5, 10],
  ["17D", "English Barley Wine", 1.08, 1.12, 1.018, 1.03, 35, 70, 8, 22, 8, 12],
  ["18A", "Blonde Ale", 1.038, 1.054, 1.008, 1.013, 15, 28, 3, 6, 3.8, 5.5],
  ["18B", "American Pale Ale", 1.045, 1.06, 1.01, 1.015, 30, 50, 5, 10, 4.5, 6.2],
  ["19A", "American Amber Ale", 1.045, 1.06, 1.01, 1.015, 25, 40, 10, 17, 4.5, 6.2],
  ["19B", "California Common", 1.048, 1.054, 1.011, 1.014, 30, 45, 9, 14, 4.5, 5.5],
  ["19C", "American Brown Ale", 1.045, 1.06, 1.01, 1.016, 20, 30, 18, 35, 4.3, 6.2],
  ["20A", "American Porter", 1.05, 1.07, 1.012, 1.018, 25, 50, 22, 40, 4.8, 6.5],
  ["20B", "American Stout", 1.05, 1.075, 1.01, 1.022, 35, 75, 30, 40, 5, 7],
  ["20C", "Imperial Stout", 1.075, 1.115, 1.018, 1.03, 50, 90, 30, 40, 8, 12],
  ["21A", "American IPA", 1.056, 1.07, 1.008, 1.014, 40, 70, 6, 14, 5.5, 7.5],
  ["21B-1", "Specialty IPA: Belgian IPA", 1.058, 1.08, 1.008, 1.016, 50, 100, 5, 8, 6.2, 9.5],
  ["21B-2", "Specialty IPA: Black IPA", 1.05, 1.085, 1.01, 1.018, 50, 90, 25, 40, 5.5, 9],
  ["21B-3", "Specialty IPA: Brown IPA", 1.056, 1.07, 1.008, 1.016, 40, 70, 18, 35, 5.5, 7.5],
  ["21B-4", "Specialty IPA: Red IPA", 1.056, 1.07, 1.008, 1.016, 40, 70, 11, 17, 5.5, 7.5],
  ["21B-5", "Specialty IPA: Rye IPA", 1.056, 1.075, 1.008, 1.014, 50, 75, 6, 14, 5.5, 8],
  ["21B-6", "Specialty IPA: White IPA", 1.056, 1.065, 1.01, 1.016, 40, 70, 5, 6, 5.5, 7],
  ["21B-7", "Specialty IPA: Brut IPA", 1.046, 1.057, 0.99, 1.004, 20, 30, 2, 4, 6, 7.5],
  ["21C", "Hazy IPA", 1.06, 1.085, 1.01, 1.015, 25, 60, 3, 7, 6, 9],
  ["22A", "Double IPA", 1.065, 1.085, 1.008, 1.018, 60, 100, 6, 14, 7.5, 10],
  ["22B", "American Strong Ale", 1.062, 1.09, 1.014, 1.024, 50, 100, 7, 18, 6.3, 10],
  ["22C", "American Barleywine", 1.08, 1.12, 1.016, 1.03, 50, 100, 9, 18, 8, 12],
  ["22D", "Wheatwine", 1.08, 1.12, 1.016, 1.03, 30, 60, 6, 14, 8, 12],
  ["23A", "Berliner Weisse", 1.028, 1.032, 1.003, 1.006, 3, 8, 2, 3, 2.8, 3.8],
  ["23B", "Flanders Red Ale", 1.048, 1.057, 1.002, 1.012, 10, 25, 10, 17, 4.6, 6.5],
  ["23C", "Oud Bruin", 1.04, 1.074, 1.008, 1.012, 20, 25, 17, 22, 4, 8],
  ["23D", "Lambic", 1.04, 1.054, 1.001, 1.01, 0, 10, 3, 6, 5, 6.5],
  ["23E", "Gueuze", 1.04, 1.054, 1, 1.006, 0, 10, 5, 6, 5, 8],
  ["23F", "Fruit Lambic", 1.04, 1.06, 1, 1.01, 0, 10, 3, 7, 5, 7],
  ["23G", "Gose", 1.036, 1.056, 1.006, 1.01, 5, 12, 3, 4, 4.2, 4.8],
  ["24A", "Witbier", 1.044, 1.052, 1.008, 1.012, 8, 20, 2, 4, 4.5, 5.5],
  ["24B", "Belgian Pale Ale", 1.048, 1.054, 1.01, 1.014, 20, 30, 8, 14, 4.8, 5.5],
  ["24C", "Bière de Garde", 1.06, 1.08, 1.008, 1.016, 18, 28, 6, 19, 6, 8.5],
  ["25A", "Belgian Blond Ale", 1.062, 1.075, 1.008, 1.018, 15, 30, 4, 6, 6, 7.5],
  ["25B", "Saison", 1.048, 1.065, 1.002, 1.008, 20, 35, 5, 22, 3.5, 9.5],
  ["25C", "Belgian Golden Strong Ale", 1.07, 1.095, 1.005, 1.016, 22, 35, 3, 6, 7.5, 10.5],
  ["26A", "Belgian Single", 1.044, 1.054, 1.004, 1.01, 25, 45, 3, 5, 4.8, 6],
  ["26B", "Belgian Dubbel", 1.062, 1.075, 1.008, 1.018, 15, 25, 10, 17, 6, 7.6],
  ["26C", "Belgian Tripel", 1.075, 1.085, 1.008, 1.014, 20, 40, 4.5, 7, 7.5, 9.5],
  ["26D", "Belgian Dark Strong Ale", 1.075, 1.11, 1.01, 1.024, 20, 35, 12, 22, 8, 12],
  ["27A-1", "Historical Beer: Kellerbier"],
  ["27A-2", "Historical Beer: Kentucky Common", 1.044, 1.055, 1.01, 1.018, 15, 30, 11, 20, 4, 5.5],
  ["27A-3", "Historical Beer: Lichtenhainer", 1.032, 1.04, 1.004, 1.008, 5, 12, 3, 6, 3.5, 4.7],
  ["27A-4", "Historical Beer: London Brown Ale", 1.033, 1.038, 1.012, 1.015, 15, 20, 22, 35, 2.8, 3.6],
  ["27A-5", "Historical Beer: Piwo Grodziskie", 1.028, 1.032, 1.006, 1.012, 20, 35, 3, 6, 2.5, 3.3],
  ["27A-6", "Historical Beer: Pre-Prohibition Lager", 1.044, 1.06, 1.01, 1.015, 25, 40, 3, 6, 4.5, 6],
  ["27A-7", "Historical Beer: Pre-Prohibition Porter", 1.046, 1.06, 1.01, 1.016, 20, 30, 20, 30, 4.5, 6],
  ["27A-8", "Historical Beer: Roggenbier", 1.046, 1.056, 1.01, 1.014, 10, 20, 14, 19, 4.5, 6],
  ["27A-9", "Historical Beer: Sahti", 1.076, 1.12, 1.016, 1.038, 0, 15, 4, 22, 7, 11],
  ["28A", "Brett Beer"],
  ["28B", "Mixed-Fermentation Sour Beer"],
  ["28C", "Wild Specialty Beer"],
  ["28D", "Straight Sour Beer", 1.048, 1.065, 1.006, 1.013, 3, 8, 2, 3, 4.5, 7],
  ["29A", "Fruit Beer"],
  ["29B", "Fruit and Spice Beer"],
  ["29C", "Specialty Fruit Beer"],
  ["29D", "Grape Ale", 1.059, 1.075, 1.004, 1.013, 10, 30, 4, 8, 6, 8.5],
  ["30A", "Spice, Herb, or Vegetable Beer"],
  ["30B", "Autumn Seasonal Beer"],
  ["30C", "Winter Seasonal Beer"],
  ["30D", "Specialty Spice Beer"],
  ["31A", "Alternative Grain Beer"],
  ["31B", "Alternative Sugar Beer"],
  ["32A", "Classic Style Smoked Beer"],
  ["32B", "Specialty Smoked Beer"],
  ["33A", "Wood-Aged Beer"],
  ["33B", "Specialty Wood-Aged Beer"],
  ["34A", "Commercial Specialty Beer"],
  ["34B", "Mixed-Style Beer"],
  ["34C", "Experimental Beer"],
  ["X1", "Dorada Pampeana", 1.042, 1.054, 1.009, 1.013, 15, 22, 3, 5, 4.3, 5.5],
  ["X2", "IPA Argenta", 1.055, 1.065, 1.008, 1.015, 35, 60, 6, 15, 5, 5.5],
  ["X3", "Italian Grape Ale", 1.055, 1.1, 1.008, 1.015, 6, 30, 4, 25, 4.5, 12],
  ["X4", "Catharina Sour", 1.039, 1.048, 1.004, 1.012, 2, 8, 2, 6, 4, 5.5],
  ["X5", "New Zealand Pilsner", 1.044, 1.056, 1.009, 1.014, 25, 45, 2, 6, 4.5, 5.8],
];

export const STYLES: readonly Style[] = ROWS.map(([code, name, ...figures]) => ({
  code,
  name,
  figures: figures.length === 0 ? null : figuresOf(figures),
}));

function figuresOf([
  ogLow,
  ogHigh,
  fgLow,
  fgHigh,
  ibuLow,
  ibuHigh,
  srmLow,
  srmHigh,
  abvLow,
  abvHigh,
]: Ten): StyleFigures {
  return {
    originalGravity: { low: ogLow, high: ogHigh },
    finalGravity: { low: fgLow, high: fgHigh },
    bitterness: { low: ibuLow, high: ibuHigh },
    colour: { low: srmLow, high: srmHigh },
    alcohol: { low: abvLow, high: abvHigh },
  };
}
