/** Whether the host can be reached, and what it refused last; both in words. */
import { useApp, useSpeech } from '../../bind';

export function LinkLine() {
  const { t, say } = useSpeech();
  const link = useApp((s) => s.class.link);
  const refused = useApp((s) => s.class.refused);
  return (
    <>
      {link !== 'open' && (
        <p className="class-link small" role="status" data-link={link}>
          {t(link === 'lost' ? 'class.link-lost' : 'class.link-connecting')}
        </p>
      )}
      {refused !== null && (
        <p className="class-refused" role="alert">
          {say(refused)}
        </p>
      )}
    </>
  );
}
