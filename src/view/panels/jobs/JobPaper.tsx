/** The sheet for printing: its tools on the screen, the sheet itself, and the same as one file to carry. */
import { useRef } from 'react';
import { createJobCommands, type PaperSize } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { saveText } from '../common/csv';
import { Segmented } from '../common/Segmented';
import { fileName, ownText } from './job-words';
import { PaperSheet } from './paper/PaperSheet';
import paperCss from './paper/paper.css?inline';
import type { JobView } from './use-job';
import { usePictures } from './use-pictures';

/** Size of the page, its margins, and at its foot what it is of and its number. */
function pageCss(paper: PaperSize, foot: string, page: string): string {
  const said = JSON.stringify(foot);
  const width = paper === 'A4' ? '210mm' : '8.5in';
  return `@page { size: ${paper === 'A4' ? 'A4' : 'letter'}; margin: 14mm 14mm 17mm;
  @bottom-left { content: ${said}; font: 8pt sans-serif; }
  @bottom-right { content: ${JSON.stringify(`${page} `)} counter(page) " / " counter(pages); font: 8pt sans-serif; } }
.job-paper { --sheet: calc(${width} - 28mm); }`;
}

export function JobPaper({ view }: { readonly view: JobView }) {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const jobs = usePlaceCommands(createJobCommands);
  const paper = useApp((s) => s.jobs.paper);
  const pictures = usePictures(view);
  const sheet = useRef<HTMLElement>(null);
  const title = ownText(speech, view.sheet.title);
  const css = `${paperCss}\n${pageCss(paper, `${view.machine.name} – ${title}`, t('jobs.paper.page'))}`;
  const ready = pictures.count >= 0 && pictures.drawn.length >= pictures.count;
  const save = (): void => {
    if (sheet.current === null) return;
    const at = view.progress?.changed_ms ?? Date.now();
    saveText(
      fileName(view.job.id, at, 'html'),
      wholePage(speech.language, title, css, sheet.current.outerHTML),
      'text/html',
    );
    commands.announce('jobs.said.saved');
  };
  return (
    <div className="job-paper-place" data-pictures={ready ? 'ready' : 'drawing'}>
      <style>{css}</style>
      <div className="panel-body no-print">
        <div className="buttons">
          <button type="button" className="button" onClick={() => commands.go('jobs', view.job.id)}>
            {t('jobs.paper.back')}
          </button>
          <button type="button" className="button act" disabled={!ready} onClick={() => window.print()}>
            {t('jobs.paper.print')}
          </button>
          <button type="button" className="button" disabled={!ready} onClick={save}>
            {t('jobs.paper.save')}
          </button>
        </div>
        <Segmented<PaperSize>
          legend={t('jobs.paper.size')}
          choices={[
            { value: 'A4', label: 'A4' },
            { value: 'Letter', label: t('jobs.paper.letter') },
          ]}
          value={paper}
          onChange={jobs.setPaper}
        />
        <p className="small" role="status">
          {ready
            ? t('jobs.paper.ready')
            : t('jobs.paper.drawing', {
                done: pictures.drawn.length,
                count: Math.max(0, pictures.count),
              })}
        </p>
      </div>
      <PaperSheet view={view} pictures={pictures.drawn} box={sheet} />
    </div>
  );
}

const escaped = (text: string): string =>
  text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;');

/** One file that needs nothing else: words, drawings and their style. */
function wholePage(language: string, title: string, css: string, body: string): string {
  return `<!doctype html>
<html lang="${language}">
<head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(title)}</title>
<style>body { margin: 0; padding: 12px; background: #fff; }
${css}</style></head>
<body>
${body}
</body>
</html>
`;
}
