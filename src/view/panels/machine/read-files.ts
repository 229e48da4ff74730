/** Reads the files that a person chose or dropped. */
export async function readFiles(
  files: Iterable<File>,
): Promise<readonly { readonly name: string; readonly text: string }[]> {
  return Promise.all([...files].map(async (file) => ({ name: file.name, text: await file.text() })));
}
