/** The word mark's drawing: a drum in section with its exciter hanging heavy side down. */
export function Mark({ size = 32 }: { readonly size?: number }) {
  return (
    <svg width={size} height={size} viewBox="0 0 32 32" fill="none" stroke="currentColor" aria-hidden="true">
      <circle cx="16" cy="16" r="14" strokeWidth="2.5" />
      <path d="M1 16h5M26 16h5M16 1v5M16 26v5" strokeWidth="1" />
      <circle cx="16" cy="18.5" r="7" strokeWidth="1.75" />
      <path d="M9.6 21.3a7 7 0 0 0 12.8 0Z" fill="var(--accent)" stroke="none" />
      <circle cx="16" cy="16" r="1.5" fill="currentColor" stroke="none" />
    </svg>
  );
}
