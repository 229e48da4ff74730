/** Flat keys to texts; {{name}} stands for a parameter. */
export type Catalogue = Readonly<Record<string, string>>;
