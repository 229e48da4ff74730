/** The session's questions as a package of a standard that other learning systems read. */
import { strToU8, zipSync } from 'fflate';
import { useState } from 'react';
import { qtiPackage, type QtiPackage } from '../../../../core/records';
import type { Item } from '../../../../core/quiz';
import { useTeller } from '../../learn/teller';

function saveZip(name: string, files: QtiPackage['files']): void {
  const bytes = zipSync(
    Object.fromEntries(Object.entries(files).map(([path, text]) => [path, strToU8(text)])),
  );
  const url = URL.createObjectURL(new Blob([bytes as Uint8Array<ArrayBuffer>], { type: 'application/zip' }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(url), 1000);
}

export function QtiFile({ items }: { readonly items: readonly Item[] }) {
  const teller = useTeller();
  const { t } = teller.speech;
  const [made, setMade] = useState<QtiPackage | null>(null);
  const make = (): void => {
    const next = qtiPackage(items, {
      text: (content) => teller.text(content),
      direction: (set, id) => t(`direction.${set}.${id}`),
      language: teller.speech.language,
    });
    setMade(next);
    saveZip('drumbench-questions-qti.zip', next.files);
  };
  return (
    <>
      <button type="button" className="button" onClick={make}>
        {t('class.qti')}
      </button>
      {made !== null && (
        <div role="status" className="class-notice small">
          <p>{t('class.qti-done', { count: Object.keys(made.files).length - 1, all: items.length })}</p>
          {made.unmapped.length > 0 && (
            <>
              <p>{t('class.qti-left')}</p>{' '}
              <ul>
                {made.unmapped.map(({ item, why }) => (
                  <li key={item.id}>
                    {teller.text(item.prompt)} ({t(`class.qti.${why}`)})
                  </li>
                ))}
              </ul>
            </>
          )}
        </div>
      )}
    </>
  );
}
