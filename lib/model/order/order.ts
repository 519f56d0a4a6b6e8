import type { NeedSource } from "./order-needs";
import type { LateWishState, OrderKind, OrderState, OrderThing, OrderUnit, SUBSTITUTION_STATES } from "./order-words";

/** One order in a list. */
export interface OrderSummary {
  readonly id: string;
  readonly title: string;
  readonly state: OrderState;
  readonly closesAt: Date | null;
  readonly sharedBrew: { readonly id: string; readonly title: string } | null;
}

export interface OrderOffer {
  readonly id: string;
  readonly size: number;
  readonly priceMinor: number;
  readonly note: string;
  readonly lockVersion: number;
}

/** What is bought for one member, and what became of it. */
export interface OrderShare {
  readonly userId: string;
  readonly userName: string;
  readonly sources: readonly NeedSource[];
  readonly needed: number;
  readonly onHand: number;
  readonly wanted: number;
  /** Left over, taken by this member. */
  readonly extra: number;
  readonly amount: number;
  /** In the smallest unit of the currency; null without an offer. */
  readonly cost: number | null;
  /** What the cheapest packs would cost this member alone. */
  readonly alone: number | null;
  readonly allotted: number | null;
  readonly handed: { readonly amount: number; readonly byName: string; readonly at: Date } | null;
  /** The member's own lot that it became; null until they take it into their stock. */
  readonly lotId: string | null;
  /** 0 for a share that is not kept yet, because the order is open. */
  readonly lockVersion: number;
}

/** Packs that are bought of one item. */
export interface OrderPurchase {
  /** In the order of the offers. */
  readonly counts: readonly number[];
  readonly cost: number;
  readonly amount: number;
  readonly leftOver: number;
}

export interface OrderItem {
  readonly id: string;
  readonly kind: OrderKind;
  readonly name: string;
  readonly unit: OrderUnit;
  readonly cellsPerPiece: number | null;
  readonly offers: readonly OrderOffer[];
  readonly shares: readonly OrderShare[];
  /** Sum of the shares. */
  readonly amount: number;
  /** null without an offer, or when nobody needs it. */
  readonly purchase: OrderPurchase | null;
  readonly alone: number | null;
  readonly leftOverTo: { readonly userId: string; readonly name: string } | null;
  readonly received: number | null;
  readonly paid: number | null;
  /** 0 for an item that only sheets name so far. */
  readonly lockVersion: number;
}

export interface OrderSubstitution {
  readonly id: string;
  readonly userId: string;
  readonly userName: string;
  readonly from: OrderThing;
  readonly to: OrderThing;
  readonly ratio: number;
  readonly proposedByName: string;
  readonly state: (typeof SUBSTITUTION_STATES)[number];
  readonly decidedAt: Date | null;
  readonly lockVersion: number;
}

export interface OrderWish {
  readonly itemId: string;
  readonly userId: string;
  readonly amount: number;
  readonly lockVersion: number;
}

export interface OrderEvent {
  readonly id: string;
  readonly at: Date;
  readonly actorName: string;
  readonly text: string;
}

/** What a sheet would need now, other than at the lock. */
export interface OrderDifference {
  readonly userId: string;
  readonly userName: string;
  readonly thing: OrderThing;
  readonly atLock: number;
  readonly now: number;
}

/** A wish of one member in an order that was locked already. */
export interface LateWish {
  readonly id: string;
  readonly userId: string;
  readonly userName: string;
  readonly reason: string;
  readonly letByName: string;
  readonly state: LateWishState;
  /** What is wanted beside the sheets in place of what was wanted at the lock; null until the member says it. */
  readonly wish: { readonly itemId: string; readonly itemName: string; readonly amount: number } | null;
  readonly lockVersion: number;
}

/** One item of an order, before or after a late wish. */
export interface LateSide {
  /** Sum of what is needed. */
  readonly amount: number;
  readonly purchase: OrderPurchase;
  readonly parts: readonly Pick<OrderShare, "userId" | "userName" | "amount" | "cost">[];
}

/** What a late wish would change, for whoever decides on it. */
export interface LateDifference {
  readonly wishId: string;
  readonly itemId: string;
  /** Whoever takes the wish in has seen these numbers. */
  readonly fingerprint: string;
  readonly before: LateSide;
  readonly after: LateSide;
}

export interface Order extends OrderSummary {
  readonly currency: string;
  readonly note: string;
  readonly lockVersion: number;
  /** Changes with every amount, offer and decision: who locks an order has seen these. */
  readonly fingerprint: string;
  readonly items: readonly OrderItem[];
  readonly wishes: readonly OrderWish[];
  readonly substitutions: readonly OrderSubstitution[];
  readonly events: readonly OrderEvent[];
  readonly differences: readonly OrderDifference[];
  /** The latest first. */
  readonly lateWishes: readonly LateWish[];
  readonly lateDifferences: readonly LateDifference[];
  readonly mayOrganise: boolean;
  readonly mayOrder: boolean;
}
