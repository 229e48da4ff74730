/** A lesson packed for a school's system, from the files that this page's app is served from. */
import { useEffect, useId, useState } from 'react';
import {
  type AppFile,
  DEFAULT_MASTERY,
  packageUrls,
  SCHOOL_STANDARDS,
  type SchoolStandard,
} from '../../../core/records';
import { createLessonCommands, createPackageCommands } from '../../../store';
import { useApp, usePlaceCommands, useSpeech } from '../../bind';
import { saveFile } from '../common/csv';

const MEGA = 1e6;

type Making =
  | { readonly kind: 'packing'; readonly done: number; readonly count: number }
  | { readonly kind: 'made'; readonly file: string; readonly bytes: number }
  | { readonly kind: 'failed'; readonly file: string };

export function Packages() {
  const { t } = useSpeech();
  const [open, setOpen] = useState(false);
  return (
    <details className="records-more" onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>{t('packages.title')}</summary>
      {open && <PackageForm />}
    </details>
  );
}

function PackageForm() {
  const { t, language } = useSpeech();
  const { loadCourse } = usePlaceCommands(createLessonCommands);
  const packages = usePlaceCommands(createPackageCommands);
  const course = useApp((s) => s.lessons.course);
  const id = useId();
  const [files, setFiles] = useState<readonly AppFile[] | null | undefined>(undefined);
  const [chosen, setChosen] = useState<string | null>(null);
  const [standard, setStandard] = useState<SchoolStandard>('scorm12');
  const [percent, setPercent] = useState(String(DEFAULT_MASTERY * 100));
  const [making, setMaking] = useState<Making | null>(null);
  useEffect(() => void loadCourse(), [loadCourse]);
  useEffect(() => void packages.files().then(setFiles), [packages]);
  if (files === undefined || course === null) return <p className="faint">{t('lessons.loading')}</p>;
  if (files === null) return <p className="records-notice">{t('packages.no-list')}</p>;
  const lesson = course.lessons.find((each) => each.id === chosen) ?? course.lessons[0]!;
  const mastery = Number(percent) / 100;
  const sound = percent.trim() !== '' && mastery >= 0 && mastery <= 1;
  const held = packageUrls(files, lesson.id, language);
  const mega = new Intl.NumberFormat(language, { maximumFractionDigits: 1 });
  const size = (bytes: number): string => mega.format(bytes / MEGA);
  const make = (): void => {
    const file = `drumbench-${lesson.id}-${standard}.zip`;
    setMaking({ kind: 'packing', done: 0, count: held.length + 2 });
    packages
      .make(
        files,
        { standard, lesson: lesson.id, language, mastery },
        { title: lesson.title, summary: lesson.summary, waiting: t('packages.waiting') },
        (done, count) => setMaking({ kind: 'packing', done, count }),
      )
      .then((blob) => {
        saveFile(file, blob);
        setMaking({ kind: 'made', file, bytes: blob.size });
      })
      .catch((error: unknown) => setMaking({ kind: 'failed', file: (error as Error).message }));
  };
  return (
    <form
      onSubmit={(event) => {
        event.preventDefault();
        if (sound && making?.kind !== 'packing') make();
      }}
    >
      <p className="small">{t('packages.about')}</p>
      <label htmlFor={`${id}-lesson`} className="field-name">
        {t('packages.lesson')}
      </label>
      <select
        id={`${id}-lesson`}
        value={lesson.id}
        onChange={(event) => setChosen(event.currentTarget.value)}
      >
        {course.lessons.map((each) => (
          <option key={each.id} value={each.id}>
            {each.title}
          </option>
        ))}
      </select>
      <label htmlFor={`${id}-standard`} className="field-name">
        {t('packages.standard')}
      </label>
      <select
        id={`${id}-standard`}
        value={standard}
        onChange={(event) => setStandard(event.currentTarget.value as SchoolStandard)}
      >
        {SCHOOL_STANDARDS.map((each) => (
          <option key={each} value={each}>
            {t(`packages.standard.${each}`)}
          </option>
        ))}
      </select>
      <label htmlFor={`${id}-mastery`} className="field-name">
        {t('packages.mastery')}
      </label>
      <input
        id={`${id}-mastery`}
        className="text-field"
        inputMode="numeric"
        value={percent}
        onChange={(event) => setPercent(event.currentTarget.value)}
      />
      <p className="small" data-testid="package-holds">
        {t('packages.holds', {
          files: held.length + 2,
          size: size(held.reduce((sum, { bytes }) => sum + bytes, 0)),
        })}{' '}
        {t('packages.needs')}
      </p>
      <button type="submit" className="button" disabled={!sound || making?.kind === 'packing'}>
        {t('packages.make')}
      </button>
      <p role="status" className="small">
        {making?.kind === 'packing' && t('packages.making', { done: making.done, count: making.count })}
        {making?.kind === 'made' && t('packages.made', { file: making.file, size: size(making.bytes) })}
        {making?.kind === 'failed' && t('packages.failed', { file: making.file })}
      </p>
    </form>
  );
}
