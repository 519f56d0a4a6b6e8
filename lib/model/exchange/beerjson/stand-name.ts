/** What this book calls the step of a boil that is its hop stand; at 100 °C nothing else tells it from a boil. */
export const STAND_NAME = "Hop stand";
