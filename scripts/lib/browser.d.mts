export function findBrowser(): string | null;
export function ensureBrowser(): string | null;
export const BROWSER_FLAGS: string[];
