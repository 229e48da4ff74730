/** Small notes that survive a reload (settings), in the browser's own store; where that is refused nothing is kept. */
export const keep = {
  read(key: string): string | null {
    try {
      return window.localStorage.getItem(key);
    } catch {
      return null;
    }
  },
  /** False when the browser refused (private mode, storage full). */
  write(key: string, value: string): boolean {
    try {
      window.localStorage.setItem(key, value);
      return true;
    } catch {
      return false;
    }
  },
};
