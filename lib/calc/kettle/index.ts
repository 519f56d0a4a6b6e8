export { coolingShrinkage } from "./cooling-shrinkage";
export { wortVolume } from "./wort-volume";
