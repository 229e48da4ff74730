/** Types of the rule file for the tests. */
export const ARROWS: Readonly<Record<string, readonly string[]>>;
declare const rules: { readonly forbidden: readonly { readonly name: string }[] };
export default rules;
