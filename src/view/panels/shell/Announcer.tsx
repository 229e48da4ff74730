/** Speaks politely to screen readers what changed on the stage. */
import { useEffect, useRef } from 'react';
import { findPart } from '../../../core/machine';
import { useApp, useCommands, useSpeech } from '../../bind';
import { partName } from '../common/names';
import { stepTitle } from '../teardown/step-words';

/** Runs after a value has changed, not on the first render. */
function useChange(value: unknown, tell: () => void): void {
  const last = useRef(value);
  useEffect(() => {
    if (Object.is(last.current, value)) return;
    last.current = value;
    tell();
  });
}

function useTellings(): void {
  const speech = useSpeech();
  const { t } = speech;
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const selected = useApp((s) => s.selectedPart);
  const step = useApp((s) => s.teardown.step);
  const direction = useApp((s) => s.exciter.direction);
  const isolated = useApp((s) => s.isolatedParts);
  const hidden = useApp((s) => s.hiddenParts);
  const section = useApp((s) => s.section.on);
  const report = useApp((s) => s.importReport);
  const phase = useApp((s) => s.loading.phase);
  const place = useApp((s) => s.route.place);
  const view = useApp((s) => s.views.show);
  const machine = document?.machine;
  useChange(selected, () => {
    if (machine === undefined) return;
    if (selected === null) commands.announce('said.deselected');
    else {
      const kind = findPart(machine, selected)?.kind ?? '';
      commands.announce('said.selected', {
        name: partName(speech, machine, selected),
        item: machine.kinds[kind]?.item ?? '',
      });
    }
  });
  useChange(step, () => {
    const now = document?.teardown.steps[step];
    if (machine === undefined) return;
    if (now === undefined) commands.announce('teardown.assembled');
    else
      commands.announce('said.step', {
        step: step + 1,
        steps: document?.teardown.steps.length ?? 0,
        name: stepTitle(speech, machine, now),
      });
  });
  useChange(direction, () => commands.announce('said.direction', { direction: t(`exciter.${direction}`) }));
  useChange(isolated, () =>
    commands.announce(isolated === null ? 'said.all-shown' : 'said.isolated', { count: isolated?.size ?? 0 }),
  );
  useChange(hidden, () => commands.announce('said.hidden', { count: hidden.size }));
  useChange(section, () => commands.announce(section ? 'said.section-on' : 'said.section-off'));
  useChange(report, () => {
    if (report === null) return;
    commands.announce(report.accepted ? 'import.accepted' : 'import.refused', {
      file: report.fileName,
      count: report.faults.length,
    });
  });
  useChange(view, () =>
    commands.announce(view === null ? 'views.said.off' : 'views.said.on', {
      name: view === null ? '' : t(`views.${view}`),
    }),
  );
  useChange(place, () => commands.announce('said.place', { place: t(`places.${place}`) }));
  useChange(phase, () => {
    if (phase === 'ready' && machine !== undefined) commands.announce('said.ready', { name: machine.name });
  });
}

export function Announcer() {
  useTellings();
  const { t } = useSpeech();
  const { key, params, serial } = useApp((s) => s.announcement);
  return (
    <div className="visually-hidden" role="status" aria-live="polite" aria-atomic="true">
      {/* A new element for each, so that the same words are spoken again. */}
      <span key={serial}>{key === '' ? '' : t(key, params)}</span>
    </div>
  );
}
