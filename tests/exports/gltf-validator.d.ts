/** What the tests use of the Khronos glTF validator, which brings no types of its own. */
declare module 'gltf-validator' {
  export interface Report {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly {
        readonly code: string;
        readonly severity: number;
        readonly message: string;
        readonly pointer?: string;
      }[];
    };
    readonly info: Readonly<Record<string, unknown>>;
  }
  export function validateBytes(data: Uint8Array, options?: { readonly maxIssues?: number }): Promise<Report>;
}
