/** Today as a number of days, by the person's own midnight; core takes days as numbers and has no clock. */
export function today(now = new Date()): number {
  return Math.floor((now.getTime() - now.getTimezoneOffset() * 60_000) / 86_400_000);
}
