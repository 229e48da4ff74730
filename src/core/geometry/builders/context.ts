/** What a builder gets and how it hands over a finished body. */
import type { BuilderParams, Finish, Kind, Machine } from '../../machine';
import type { Solid, SolidScope } from '../solid-kernel';
import type { Body } from '../types';

export interface BuildContext {
  readonly solids: SolidScope;
  readonly kind: Kind;
  readonly machine: Pick<Machine, 'kinds' | 'operation'>;
}

/** Makes the bodies of a kind from its parameters. */
export type Builder<P extends BuilderParams = BuilderParams> = (
  context: BuildContext,
  params: P,
) => readonly Body[];

/** A body of the kind's own material and finish unless told otherwise, shown cut in sections. */
export function body(
  { solids, kind }: BuildContext,
  name: string,
  solid: Solid,
  look: { readonly material?: string; readonly finish?: Finish; readonly section?: Body['section'] } = {},
): Body {
  return {
    name,
    ...(look.material === undefined ? {} : { material: look.material }),
    finish: look.finish ?? kind.finish,
    section: look.section ?? 'cut',
    solid: solids.toMesh(solid),
  };
}
