/** Finds the route that a path leads to, among those of the build or those given. */
export function routeFinder(routes?: readonly string[]): (path: string) => string;
