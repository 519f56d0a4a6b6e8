export declare function ensureDay(): Promise<void>;
