export { CHI_SQUARED_RANGE, chiSquaredUpperTail } from "./chi-squared-upper-tail";
