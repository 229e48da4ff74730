/** The place of studies: a list, and the open study. */
import { useEffect } from 'react';
import { createStudyCommands, STUDIES, type StudyName } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { BallastPanel } from './BallastPanel';
import { CompactionPanel } from './CompactionPanel';
import { IdentifyPanel } from './IdentifyPanel';
import { IsolationPanel } from './IsolationPanel';
import { TwoSpeedPanel } from './TwoSpeedPanel';
import { type StudyBase, useStudyBase } from './use-study-base';
import { VibrationPanel } from './VibrationPanel';
import './studies.css';

const PANELS: Readonly<Record<StudyName, (props: { readonly base: StudyBase }) => React.ReactNode>> = {
  vibration: VibrationPanel,
  isolation: IsolationPanel,
  'two-speed': TwoSpeedPanel,
  compaction: CompactionPanel,
  ballast: BallastPanel,
  identify: IdentifyPanel,
};

export default function StudiesPlace() {
  const { t } = useSpeech();
  const commands = useCommands();
  const { show } = usePlaceCommands(createStudyCommands);
  const open = useApp((s) => STUDIES.find((name) => name === s.route.path[0]) ?? null);
  const ready = useApp((s) => s.document !== null);
  const base = useStudyBase();
  // a study's picture leaves the stage with it
  useEffect(() => () => show(null), [open, show]);
  if (open === null) {
    return (
      <div className="panel-body studies">
        <h2>{t('studies.title')}</h2>
        <p>{t('studies.intro')}</p>
        <ul className="study-list">
          {STUDIES.map((name) => (
            <li key={name}>
              <button type="button" className="row-button" onClick={() => commands.go('studies', name)}>
                <b>{t(`studies.name.${name}`)}</b>
                <span className="small">{t(`studies.asks.${name}`)}</span>
              </button>
            </li>
          ))}
        </ul>
      </div>
    );
  }
  const Panel = PANELS[open];
  return (
    <div className="panel-body studies" data-study={open}>
      <button type="button" className="button plain study-back" onClick={() => commands.go('studies')}>
        <Icon name="right" />
        <span>{t('studies.all')}</span>
      </button>
      <h2>{t(`studies.name.${open}`)}</h2>
      <p>{t(`studies.asks.${open}`)}</p>
      {base === null ? (
        <p className="faint">{t(ready ? 'studies.none' : 'studies.wait')}</p>
      ) : (
        <Panel base={base} />
      )}
    </div>
  );
}
