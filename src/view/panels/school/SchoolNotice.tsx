/** Whether the school's system hears of what is done here, in words. */
import { useApp, useSpeech } from '../../bind';

export function SchoolNotice() {
  const { t } = useSpeech();
  const school = useApp((s) => s.school);
  if (school === null || school.phase === 'opening') return null;
  const { trouble, heard, judged, phase } = school;
  const said =
    phase === 'closed'
      ? t('school.closed')
      : trouble !== null
        ? t(`school.trouble.${trouble.what}`)
        : !heard
          ? t('school.trouble.missing')
          : t(judged ? 'school.heard' : 'school.only-looking');
  const detail = [trouble?.about, trouble?.code]
    .filter((each) => each !== undefined && each !== '')
    .join(' ');
  return (
    <div
      className="school-notice"
      role="status"
      data-heard={heard && trouble === null && phase !== 'closed'}
      data-trouble={trouble?.what}
    >
      <p>{said}</p>
      {detail !== '' && <p className="small faint mono">{t('school.system-says', { detail })}</p>}
    </div>
  );
}
