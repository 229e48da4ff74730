/** The fault bench: find a fault, train on hidden ones, or have one shown. */
import { useEffect } from 'react';
import { createFaultCommands } from '../../../store';
import { useApp, useCommands, usePlaceCommands, useSpeech } from '../../bind';
import { Segmented } from '../common/Segmented';
import { FindFault } from './FindFault';
import { ShowFault } from './ShowFault';
import { Training } from './Training';
import './faults.css';

const TABS = ['find', 'train', 'show'] as const;

export default function FaultsPlace() {
  const { t } = useSpeech();
  const commands = useCommands();
  const { open } = usePlaceCommands(createFaultCommands);
  const document = useApp((s) => s.document);
  const { phase, share, bench } = useApp((s) => s.faults);
  const tab = useApp((s) => TABS.find((name) => name === s.route.path[0]) ?? 'find');
  useEffect(() => {
    if (document !== null) void open();
  }, [document, open]);
  return (
    <div className="panel-body faults" data-phase={phase} data-tab={tab}>
      <h2>{t('fault-bench.title')}</h2>
      <Segmented
        legend={t('fault-bench.tabs')}
        legendHidden
        fill
        choices={TABS.map((value) => ({ value, label: t(`fault-bench.tab.${value}`) }))}
        value={tab}
        onChange={(next) => commands.go('faults', next)}
      />
      {(phase === 'idle' || phase === 'loading') && (
        <div>
          <p>{t('fault-bench.loading', { percent: Math.round(share * 100) })}</p>
          <progress max={1} value={share} aria-label={t('fault-bench.title')} />
        </div>
      )}
      {phase === 'none' && <p>{t('fault-bench.none')}</p>}
      {phase === 'failed' && <p role="alert">{t('fault-bench.failed')}</p>}
      {phase === 'ready' && bench !== null && (
        <>
          {tab === 'find' && <FindFault bench={bench} />}
          {tab === 'train' && <Training bench={bench} />}
          {tab === 'show' && <ShowFault bench={bench} />}
        </>
      )}
    </div>
  );
}
