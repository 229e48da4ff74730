/** Opens machine files: by choosing, or by dropping them anywhere on the page. */
import { useEffect, useState } from 'react';
import { useApp, useCommands, useSpeech } from '../../bind';
import { readFiles } from './read-files';

const carriesFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

/** Takes files dropped on any place of the page; true while they hang over it. */
export function useFileDrop(): boolean {
  const commands = useCommands();
  const [over, setOver] = useState(false);
  useEffect(() => {
    let depth = 0;
    const enter = (event: DragEvent): void => {
      if (!carriesFiles(event)) return;
      depth++;
      setOver(true);
    };
    const leave = (): void => {
      depth = Math.max(0, depth - 1);
      if (depth === 0) setOver(false);
    };
    const hold = (event: DragEvent): void => {
      if (carriesFiles(event)) event.preventDefault();
    };
    const drop = (event: DragEvent): void => {
      if (!carriesFiles(event)) return;
      event.preventDefault();
      depth = 0;
      setOver(false);
      void readFiles(event.dataTransfer?.files ?? []).then((files) => commands.importFiles(files));
    };
    window.addEventListener('dragenter', enter);
    window.addEventListener('dragleave', leave);
    window.addEventListener('dragover', hold);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragenter', enter);
      window.removeEventListener('dragleave', leave);
      window.removeEventListener('dragover', hold);
      window.removeEventListener('drop', drop);
    };
  }, [commands]);
  return over;
}

export function DropZone() {
  const { t, quantity } = useSpeech();
  const commands = useCommands();
  const loading = useApp((s) => s.loading);
  const busy = loading.phase === 'solids' || loading.phase === 'order';
  return (
    <section aria-labelledby="open-title">
      <h3 id="open-title">{t('import.title')}</h3>
      <label className="drop-zone">
        <input
          type="file"
          multiple
          accept=".yaml,.yml,.json"
          disabled={busy}
          onChange={(event) => {
            const input = event.currentTarget;
            void readFiles(input.files ?? []).then((files) => {
              input.value = '';
              if (files.length > 0) void commands.importFiles(files);
            });
          }}
        />
        <span className="button act">{t('import.choose')}</span>
        <span className="small">{t('import.hint')}</span>
      </label>
      {busy && (
        <div>
          <p className="small">
            {t(`loading.${loading.phase}`)} {quantity(loading.share, 'share')}
          </p>
          <progress value={loading.share} max={1} aria-label={t(`loading.${loading.phase}`)} />
        </div>
      )}
    </section>
  );
}
