/** docs/sources.md#hock-schittkowski-1981: number, functions, start and printed minimum. */
export const HOCK_SCHITTKOWSKI = [
  {
    number: 28,
    problem: {
      residuals: ([a = 0, b = 0, c = 0]: readonly number[]) => [a + b, b + c],
      constraints: ([a = 0, b = 0, c = 0]: readonly number[]) => [a + 2 * b + 3 * c - 1],
      start: [-4, 1, 1],
    },
    least: 0,
    x: [0.5, -0.5, 0.5],
  },
  {
    number: 42,
    problem: {
      residuals: ([a = 0, b = 0, c = 0, d = 0]: readonly number[]) => [a - 1, b - 2, c - 3, d - 4],
      constraints: ([a = 0, , c = 0, d = 0]: readonly number[]) => [a - 2, c * c + d * d - 2],
      start: [1, 1, 1, 1],
    },
    least: 28 - 10 * Math.SQRT2,
    x: [2, 2, 0.6 * Math.SQRT2, 0.8 * Math.SQRT2],
  },
  {
    number: 77,
    problem: {
      residuals: ([a = 0, b = 0, c = 0, d = 0, e = 0]: readonly number[]) => [
        a - 1,
        a - b,
        c - 1,
        (d - 1) ** 2,
        (e - 1) ** 3,
      ],
      constraints: ([a = 0, b = 0, c = 0, d = 0, e = 0]: readonly number[]) => [
        a * a * d + Math.sin(d - e) - 2 * Math.SQRT2,
        b + c ** 4 * d * d - 8 - Math.SQRT2,
      ],
      start: [2, 2, 2, 2, 2],
    },
    least: 0.24150513,
    x: [1.166172, 1.182111, 1.380257, 1.506036, 0.6109203],
  },
  {
    number: 79,
    problem: {
      residuals: ([a = 0, b = 0, c = 0, d = 0, e = 0]: readonly number[]) => [
        a - 1,
        a - b,
        b - c,
        (c - d) ** 2,
        (d - e) ** 2,
      ],
      constraints: ([a = 0, b = 0, c = 0, d = 0, e = 0]: readonly number[]) => [
        a + b * b + c ** 3 - 2 - 3 * Math.SQRT2,
        b - c * c + d + 2 - 2 * Math.SQRT2,
        a * e - 2,
      ],
      start: [2, 2, 2, 2, 2],
    },
    least: 0.0787768209,
    x: [1.191127, 1.362603, 1.472818, 1.635017, 1.679081],
  },
];
