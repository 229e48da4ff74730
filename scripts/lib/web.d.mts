export const FILE_TYPES: Readonly<Record<string, string>>;
export const PAGE_POLICY: readonly string[];
