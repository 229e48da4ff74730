/** Questions as the files of a QTI 3.0 package, and those that the standard has no words for. */
import type { Item } from '../../quiz';
import { qtiItem, type QtiWords, type Unmapped } from './item';
import { element } from './xml';

export interface QtiPackage {
  /** Path in the package -> text. */
  readonly files: Readonly<Record<string, string>>;
  readonly unmapped: readonly { readonly item: Item; readonly why: Unmapped }[];
}

const MANIFEST = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';

/** @param items with ids of their own, as they are sealed for a class */
export function qtiPackage(items: readonly Item[], words: QtiWords): QtiPackage {
  const files: Record<string, string> = {};
  const unmapped: { item: Item; why: Unmapped }[] = [];
  const resources: string[] = [];
  items.forEach((item, i) => {
    const result = qtiItem(item, words);
    if (!result.ok) {
      unmapped.push({ item, why: result.why });
      return;
    }
    const href = `items/item-${i + 1}.xml`;
    files[href] = result.xml;
    resources.push(
      element('resource', { identifier: `item-${i + 1}`, type: 'imsqti_item_xmlv3p0', href }, [
        element('file', { href }),
      ]),
    );
  });
  const manifest = element('manifest', { xmlns: MANIFEST, identifier: 'drumbench-questions' }, [
    element('metadata', {}, [
      element('schema', {}, ['QTI Package']),
      element('schemaversion', {}, ['3.0.0']),
    ]),
    element('organizations', {}),
    element('resources', {}, resources),
  ]);
  return {
    files: { 'imsmanifest.xml': `<?xml version="1.0" encoding="UTF-8"?>\n${manifest}\n`, ...files },
    unmapped,
  };
}
