/** Runs long work between other work: a slice at a time, with its share told and a way to stop. */
const SLICE_MS = 24;
/** Least step of the share that is worth telling. */
const TOLD = 0.04;

/** The result, or null when `signal` aborted. What the work throws rejects. */
export async function inSlices<T>(
  work: Generator<number, T>,
  onShare: (share: number) => void,
  signal: AbortSignal,
): Promise<T | null> {
  let told = 0;
  for (;;) {
    const until = performance.now() + SLICE_MS;
    let share: number;
    do {
      const step = work.next();
      if (step.done === true) return step.value;
      share = step.value;
    } while (performance.now() < until);
    if (share >= told + TOLD) onShare((told = share));
    await new Promise((resolve) => setTimeout(resolve, 0));
    if (signal.aborted) return null;
  }
}
