/** The table of builders: a builder named in core/machine without its function here is a type error. */
import type { BuilderName, BuilderParams } from '../../machine';
import type { Builder } from './context';
import { buildTurned } from './turned';

export const builders: {
  readonly [N in BuilderName]: Builder<Extract<BuilderParams, { readonly builder: N }>>;
} = {
  turned: buildTurned,
};

export type { Builder, BuildContext } from './context';
