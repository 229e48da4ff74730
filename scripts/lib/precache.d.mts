export interface ListedFile {
  readonly url: string;
  readonly revision: string | null;
}
export function filesOf(dist: string): readonly ListedFile[];
export function writeFileList(dist: string): void;
export function buildServiceWorker(): Promise<void>;
