/** The bar under the stage, drawn as the sheet's title block: explode, cut, and what is shown. */
import { useMemo } from 'react';
import { fromShown, toShown } from '../../../core/kernel';
import { isPresent } from '../../../core/machine';
import { requestFrame, type SectionAxis, transient } from '../../../store';
import { useApp, useCommands, useSpeech } from '../../bind';
import { RangeField } from '../common/RangeField';
import { Segmented } from '../common/Segmented';

const AXES: readonly SectionAxis[] = ['x', 'y', 'z'];

function ExplodeField() {
  const { t, quantity } = useSpeech();
  const commands = useCommands();
  const explode = useApp((s) => s.explode);
  return (
    <RangeField
      label={t('stage-tools.explode')}
      value={explode}
      min={0}
      max={1}
      step={0.005}
      text={explode === 0 ? t('stage-tools.assembled') : quantity(explode, 'share')}
      onChange={(value) => {
        transient.explode = value;
        requestFrame();
        commands.setExplode(value);
      }}
    />
  );
}

function SectionField() {
  const { t, quantity, units } = useSpeech();
  const commands = useCommands();
  const section = useApp((s) => s.section);
  const machine = useApp((s) => s.document?.machine);
  const reach_m =
    section.axis === 'x' ? 0.65 * (machine?.drumWidth_m ?? 2) : 1.1 * (machine?.drumRadius_m ?? 1);
  // Steps of one whole millimetre, or of a sixteenth of an inch, so that the read-out shows round figures.
  const step_m = units === 'si' ? 0.005 : fromShown(1 / 4, 'length-small', 'us');
  const round = (value: number): number =>
    fromShown(Math.round(toShown(value, 'length-small', units) * 4) / 4, 'length-small', units);
  return (
    <div className="foot-section">
      <Segmented
        legend={t('stage-tools.section-axis')}
        legendHidden
        choices={AXES.map((axis) => ({ value: axis, label: t(`axis.${axis}`) }))}
        value={section.axis}
        onChange={(axis) => commands.setSection({ axis, offset_m: 0 })}
      />
      <RangeField
        label={t('stage-tools.section-offset')}
        value={section.offset_m}
        min={-Math.round(reach_m / step_m) * step_m}
        max={Math.round(reach_m / step_m) * step_m}
        step={step_m}
        text={quantity(round(section.offset_m), 'length-small')}
        onChange={(value) => {
          transient.sectionOffset_m = value;
          requestFrame();
          commands.setSection({ offset_m: Math.abs(value) < step_m / 2 ? 0 : value });
        }}
      />
    </div>
  );
}

function TitleBlock() {
  const { t, quantity, units } = useSpeech();
  const document = useApp((s) => s.document);
  const showContext = useApp((s) => s.showContext);
  const optionsOn = useApp((s) => s.optionsOn);
  const hidden = useApp((s) => s.hiddenParts);
  const isolated = useApp((s) => s.isolatedParts);
  const watching = useApp((s) => s.shot.open);
  const view = useApp((s) => s.cameraWish.view);
  const shown_kg = useMemo(() => {
    let sum = 0;
    // While the shot is watched its balls stand in for the part that shows it otherwise.
    const balls = watching ? document?.machine.operation.shot_part : null;
    for (const part of document?.machine.parts ?? []) {
      if (!isPresent(part, optionsOn, showContext) || (hidden.has(part.id) && part.id !== balls)) continue;
      if (isolated !== null && !isolated.has(part.id)) continue;
      sum += document?.masses[part.kind]?.mass_kg ?? 0;
    }
    return sum;
  }, [document, showContext, optionsOn, hidden, isolated, watching]);
  return (
    <dl className="title-block">
      <div>
        <dt className="label">{t('title-block.machine')}</dt>
        <dd>{document?.machine.name ?? '–'}</dd>
      </div>
      <div>
        <dt className="label">{t('title-block.view')}</dt>
        <dd>{t(`view-name.${view}`)}</dd>
      </div>
      <div>
        <dt className="label">{t('title-block.mass')}</dt>
        <dd className="mono">{quantity(document === null ? null : shown_kg, 'mass', 4)}</dd>
      </div>
      <div>
        <dt className="label">{t('title-block.units')}</dt>
        <dd>{t(units === 'si' ? 'title-block.units-si' : 'title-block.units-us')}</dd>
      </div>
    </dl>
  );
}

export function StageFoot() {
  const section = useApp((s) => s.section.on);
  return (
    <div className="stage-foot">
      <div className="foot-explode">
        <ExplodeField />
      </div>
      {section && <SectionField />}
      <TitleBlock />
    </div>
  );
}
