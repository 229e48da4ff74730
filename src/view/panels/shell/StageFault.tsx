/** Catches a stage that cannot start or breaks; lists, numbers and steps go on without it. */
import { Component, type ReactNode } from 'react';
import { useSpeech } from '../../bind';

function FaultCard({ onAgain }: { readonly onAgain: () => void }) {
  const { t } = useSpeech();
  return (
    <div className="notice-card" role="alert">
      <h2>{t('stage-fault.title')}</h2>
      <p>{t('stage-fault.do')}</p>
      <button type="button" className="button act" onClick={onAgain}>
        {t('stage-fault.again')}
      </button>
    </div>
  );
}

export class StageFault extends Component<{ readonly children: ReactNode }, { readonly broken: boolean }> {
  override state = { broken: false };

  static getDerivedStateFromError(): { broken: boolean } {
    return { broken: true };
  }

  override render(): ReactNode {
    // A chunk that failed to load stays failed in this page: a reload asks for it anew.
    return this.state.broken ? <FaultCard onAgain={() => window.location.reload()} /> : this.props.children;
  }
}
