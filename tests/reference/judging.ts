/**
 * Fewest correct answers of the triangle test: assessors, then at 10, 5, 1 and 0.1 %; null where so few cannot reject
 * guessing (docs/sources.md#fao-fish-quality).
 */
export const TRIANGLE_ROWS: readonly (readonly [number, ...(number | null)[]])[] = [
  [3, 3, 3, null, null],
  [4, 4, 4, null, null],
  [5, 4, 4, 5, null],
  [6, 5, 5, 6, null],
  [7, 5, 5, 6, 7],
  [8, 5, 6, 7, 8],
  [9, 6, 6, 7, 8],
  [10, 6, 7, 8, 9],
  [11, 7, 7, 8, 10],
  [12, 7, 8, 9, 10],
  [13, 8, 8, 9, 11],
  [14, 8, 9, 10, 11],
  [15, 8, 9, 10, 12],
  [16, 9, 9, 11, 12],
  [17, 9, 10, 11, 13],
  [18, 10, 10, 12, 13],
  [19, 10, 11, 12, 14],
  [20, 10, 11, 13, 14],
  [21, 11, 12, 13, 15],
  [22, 11, 12, 14, 15],
  [23, 12, 12, 14, 16],
  [24, 12, 13, 15, 16],
  [25, 12, 13, 15, 17],
  [26, 13, 14, 15, 17],
  [27, 13, 14, 16, 18],
  [28, 14, 15, 16, 18],
  [29, 14, 15, 17, 19],
  [30, 14, 15, 17, 19],
  [31, 15, 16, 18, 20],
  [32, 15, 16, 18, 20],
  [33, 15, 17, 18, 21],
  [34, 16, 17, 19, 21],
  [35, 16, 17, 19, 22],
  [36, 17, 18, 20, 22],
  [42, 19, 20, 22, 25],
  [48, 21, 22, 25, 27],
  [54, 23, 25, 27, 30],
  [60, 26, 27, 30, 33],
  [66, 28, 29, 32, 35],
  [72, 30, 32, 34, 38],
  [78, 32, 34, 37, 40],
  [84, 35, 36, 39, 43],
  [90, 37, 38, 42, 45],
  [96, 39, 41, 44, 48],
];

/**
 * Fewest correct answers of the duo-trio test: assessors, then at 20, 10, 5, 1 and 0.1 % (docs/sources.md#iso-10399-2017,
 * table A.1). The row of 22 assessors is left out: the copy repeats that of 21 in it.
 */
export const DUO_TRIO_ROWS: readonly (readonly [number, ...(number | null)[]])[] = [
  [6, 5, 6, 6, null, null],
  [7, 6, 6, 7, 7, null],
  [8, 6, 7, 7, 8, null],
  [9, 7, 7, 8, 9, null],
  [10, 7, 8, 9, 10, 10],
  [11, 8, 9, 9, 10, 11],
  [12, 8, 9, 10, 11, 12],
  [13, 9, 10, 10, 12, 13],
  [14, 10, 10, 11, 12, 13],
  [15, 10, 11, 12, 13, 14],
  [16, 11, 12, 12, 14, 15],
  [17, 11, 12, 13, 14, 16],
  [18, 12, 13, 13, 15, 16],
  [19, 12, 13, 14, 15, 17],
  [20, 13, 14, 15, 16, 18],
  [21, 13, 14, 15, 17, 18],
  [23, 15, 16, 16, 18, 20],
  [24, 15, 16, 17, 19, 20],
  [25, 16, 17, 18, 19, 21],
  [26, 16, 17, 18, 20, 22],
  [27, 17, 18, 19, 20, 22],
  [28, 17, 18, 19, 21, 23],
  [29, 18, 19, 20, 22, 24],
  [30, 18, 20, 20, 22, 24],
  [32, 19, 21, 22, 24, 26],
  [36, 22, 23, 24, 26, 28],
  [40, 24, 25, 26, 28, 31],
  [44, 26, 27, 28, 31, 33],
  [48, 28, 29, 31, 33, 36],
  [52, 30, 32, 33, 35, 38],
  [56, 32, 34, 35, 38, 40],
  [60, 34, 36, 37, 40, 43],
  [64, 36, 38, 40, 42, 45],
  [68, 38, 40, 42, 45, 48],
  [72, 41, 42, 44, 47, 50],
  [76, 43, 45, 46, 49, 52],
  [80, 45, 47, 48, 51, 55],
  [84, 47, 49, 51, 54, 57],
  [88, 49, 51, 53, 56, 59],
];

/**
 * Assessors for a triangle test at alpha 0.05: share of discriminators, then for beta 0.2, 0.1, 0.05, 0.01 and 0.001; ISO
 * 4120:2004, table A.3, from memory.
 */
export const TRIANGLE_ASSESSORS: readonly (readonly [number, ...number[]])[] = [
  [0.5, 16, 20, 23, 35, 48],
  [0.4, 23, 30, 40, 57, 79],
  [0.3, 40, 53, 66, 98, 136],
  [0.2, 87, 117, 147, 213, 305],
];

/** Scores of six targets, the columns, by four judges, the rows (docs/sources.md#shrout-fleiss-1979, table 2). */
export const SHROUT_FLEISS: readonly (readonly number[])[] = [
  [9, 6, 8, 7, 10, 6],
  [2, 1, 4, 1, 5, 2],
  [5, 3, 6, 2, 6, 4],
  [8, 2, 8, 6, 9, 7],
];

/** Anxiety of twenty subjects, the columns, by three raters, the rows: example data of an R package (docs/sources.md#r-docs). */
export const ANXIETY: readonly (readonly number[])[] = [
  [3, 3, 3, 4, 5, 5, 2, 3, 5, 2, 2, 6, 1, 5, 2, 2, 1, 2, 4, 3],
  [3, 6, 4, 6, 2, 4, 2, 4, 3, 3, 2, 3, 3, 3, 2, 2, 1, 3, 3, 4],
  [2, 1, 4, 4, 3, 2, 1, 6, 1, 1, 1, 2, 3, 3, 1, 1, 3, 3, 2, 2],
];

/** Pulse of seven people, the rows, after three efforts (docs/sources.md#scipy-docs). */
export const PULSE: readonly (readonly number[])[] = [
  [72, 120, 76],
  [96, 120, 95],
  [88, 132, 104],
  [92, 120, 96],
  [74, 101, 84],
  [76, 96, 72],
  [82, 112, 76],
];

/** Seconds of 22 players, the rows, around first base in three ways: Hollander and Wolfe 1973 (docs/sources.md#r-docs), from memory. */
export const ROUNDING_TIMES: readonly (readonly number[])[] = [
  [5.4, 5.5, 5.55],
  [5.85, 5.7, 5.75],
  [5.2, 5.6, 5.5],
  [5.55, 5.5, 5.4],
  [5.9, 5.85, 5.7],
  [5.45, 5.55, 5.6],
  [5.4, 5.4, 5.35],
  [5.45, 5.5, 5.35],
  [5.25, 5.15, 5.0],
  [5.85, 5.8, 5.7],
  [5.25, 5.2, 5.1],
  [5.65, 5.55, 5.45],
  [5.6, 5.35, 5.45],
  [5.05, 5.0, 4.95],
  [5.5, 5.5, 5.4],
  [5.45, 5.55, 5.5],
  [5.55, 5.55, 5.35],
  [5.45, 5.5, 5.55],
  [5.5, 5.45, 5.25],
  [5.65, 5.6, 5.4],
  [5.7, 5.65, 5.55],
  [6.3, 6.3, 6.25],
];

/** Times with four catalysts, the columns, in four batches, the rows, three to a batch (docs/sources.md#montgomery-2013). */
export const CATALYSTS: readonly (readonly (number | null)[])[] = [
  [73, null, 73, 75],
  [74, 75, 75, null],
  [null, 67, 68, 72],
  [71, 72, null, 75],
];
