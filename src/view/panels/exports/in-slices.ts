/** Runs long work between other work: a slice at a time, with its share told and a way to stop. */
const SLICE_MS = 14;

/** The result, or null when `signal` aborted. What the work throws rejects. */
export async function inSlices<T>(
  work: Generator<number, T>,
  onShare: (share: number) => void,
  signal: AbortSignal,
): Promise<T | null> {
  for (;;) {
    const until = performance.now() + SLICE_MS;
    let share: number;
    do {
      const step = work.next();
      if (step.done === true) return step.value;
      share = step.value;
    } while (performance.now() < until);
    onShare(share);
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (signal.aborted) return null;
  }
}
