import { cheapestPacks, combinedPurchase, ORDER_RANGE, shareExactly } from "../../order";
import type { FunctionRecord } from "./function-record";

const amountRange = { ...ORDER_RANGE.amount, unit: "g, mL or pieces" };
const sizeRange = { ...ORDER_RANGE.size, unit: "g, mL or pieces" };
const priceRange = { ...ORDER_RANGE.price, unit: "smallest unit of money" };
const totalRange = { ...ORDER_RANGE.total, unit: "smallest unit of money, or g" };

const SACK_AND_BAGS = [
  { size: 25_000, price: 3000 },
  { size: 5000, price: 800 },
];

const packInputs = [
  { at: "0.packs.0.size", label: "Size of a pack", ...sizeRange },
  { at: "0.packs.0.price", label: "Price of a pack", ...priceRange },
];

/** How the functions of a group order are explained. */
export const ORDER_FUNCTIONS: readonly FunctionRecord[] = [
  {
    id: "order/cheapestPacks",
    words:
      "The packs that cover an amount at least cost, found exactly and not by rule of thumb; of equally dear choices the one that leaves the least over, then the one with the fewest packs. A price for a larger amount is another pack. It leaves out postage, and discounts on a whole order.",
    equation:
      "least Σ nᵢ pᵢ with Σ nᵢ sᵢ ≥ needed and whole nᵢ ≥ 0, nᵢ packs of size sᵢ at price pᵢ; then least Σ nᵢ sᵢ − needed; then least Σ nᵢ",
    inputs: [{ at: "0.needed", label: "Amount needed", ...amountRange }, ...packInputs],
    gives: "how many of each pack, their cost, their amount and what is left over",
    sources: ["gilmore-gomory-1966"],
    validRange: "Whole amounts and prices; up to 20 packs.",
    call: cheapestPacks,
    example: [{ needed: 32_000, packs: SACK_AND_BAGS }],
  },
  {
    id: "order/shareExactly",
    words:
      "A whole total split by shares, so that the parts are whole and add up to it to the last cent or gram. Everybody gets the whole part of the exact share; what is left goes one unit each to the largest fractions, of equal ones to the earlier in the list.",
    equation:
      "part = ⌊total × share / Σ shares⌋, plus 1 for the largest remainders until the parts add up to the total",
    inputs: [
      { at: "0.total", label: "Total", ...totalRange },
      { at: "0.shares.0", label: "Share", ...ORDER_RANGE.share, unit: "g, mL or pieces" },
    ],
    gives: "a part for each share, in the same order",
    sources: ["balinski-young-1982"],
    validRange: "Whole numbers; up to 500 shares, one of them above nothing unless the total is nothing.",
    call: shareExactly,
    example: [{ total: 4600, shares: [12_400, 9300, 10_300] }],
  },
  {
    id: "order/combinedPurchase",
    words:
      "One thing bought for many: the cheapest packs for the sum of their needs, each one's part of the cost by amount, and what it saves against each buying the cheapest packs alone at the same prices. What is left over is paid by all by their needs, or by the one who takes it.",
    equation:
      "cost = cheapestPacks(Σ needs); part = cost × own amount / Σ amounts, as shareExactly rounds; saving = Σ cheapestPacks(own need) − cost",
    inputs: [{ at: "0.needs.0", label: "Amount that one needs", ...amountRange }, ...packInputs],
    gives: "sum of the needs, packs and cost, what each pays, what each would pay alone, and the saving",
    sources: ["gilmore-gomory-1966", "balinski-young-1982"],
    validRange: "Whole amounts and prices; up to 500 people and 20 packs; up to 5 000 000 g, mL or pieces together.",
    call: combinedPurchase,
    example: [{ needs: [12_400, 9300, 10_300], packs: SACK_AND_BAGS, takesLeftOver: null }],
  },
];
