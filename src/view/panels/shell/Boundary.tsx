/** Catches a stage or a place that cannot start or breaks; everything around it goes on. */
import { Component, type ReactNode } from 'react';
import { useSpeech } from '../../bind';

/** Which words tell of it: `<words>.title`, `.do` and `.again`. */
type FaultWords = 'stage-fault' | 'place-fault';

function FaultCard({ words, onAgain }: { readonly words: FaultWords; readonly onAgain: () => void }) {
  const { t } = useSpeech();
  return (
    <div className="notice-card" role="alert">
      <h2>{t(`${words}.title`)}</h2>
      <p>{t(`${words}.do`)}</p>
      <button type="button" className="button act" onClick={onAgain}>
        {t(`${words}.again`)}
      </button>
    </div>
  );
}

interface Props {
  readonly words: FaultWords;
  readonly children: ReactNode;
}

export class Boundary extends Component<Props, { readonly broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError(): { broken: boolean } {
    return { broken: true };
  }

  override render(): ReactNode {
    const { words, children } = this.props;
    // A chunk that failed to load stays failed in this page: a reload asks for it anew.
    return this.state.broken ? (
      <FaultCard words={words} onAgain={() => window.location.reload()} />
    ) : (
      children
    );
  }
}
