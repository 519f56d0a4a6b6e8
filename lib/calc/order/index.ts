export { cheapestPacks, type PackPurchase } from "./cheapest-packs";
export { combinedPurchase, type CombinedPurchase } from "./combined-purchase";
export { ORDER_RANGE } from "./order-range";
export type { Pack } from "./pack";
export { shareExactly } from "./share-exactly";
