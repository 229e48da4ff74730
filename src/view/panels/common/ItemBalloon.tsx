/** Item number in a circle, as the parts list and the balloons on the drawing show it. */
export function ItemBalloon({
  item,
  strong = false,
}: {
  readonly item: number | string;
  readonly strong?: boolean;
}) {
  return <span className={strong ? 'item-balloon strong mono' : 'item-balloon mono'}>{item}</span>;
}
