/** Erasing asks once more: it cannot be taken back. */
import { useState } from 'react';
import { useSpeech } from '../../bind';

interface Props {
  readonly name: string;
  /** What is erased, where the name alone does not say it. */
  readonly of?: string;
  readonly onErase: () => void;
}

export function EraseButton({ name, of, onErase }: Props) {
  const { t } = useSpeech();
  const [asking, setAsking] = useState(false);
  if (!asking)
    return (
      <button
        type="button"
        className="button"
        aria-label={of === undefined ? name : `${name}: ${of}`}
        onClick={() => setAsking(true)}
      >
        {name}
      </button>
    );
  return (
    <span className="buttons" role="group" aria-label={t('records.erase-sure')}>
      <button type="button" className="button records-erase" autoFocus onClick={onErase}>
        {t('records.erase-yes')}
      </button>
      <button type="button" className="button plain" onClick={() => setAsking(false)}>
        {t('records.erase-no')}
      </button>
    </span>
  );
}
