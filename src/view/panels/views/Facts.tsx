/** Names and numbers in two columns. */
export function Facts({ rows }: { readonly rows: readonly (readonly [name: string, value: string])[] }) {
  return (
    <dl className="view-facts">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt className="small">{name}</dt>
          <dd className="mono">{value}</dd>
        </div>
      ))}
    </dl>
  );
}
