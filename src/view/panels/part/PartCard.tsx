/** The card of the selected part: what it is and does, what it touches, what it weighs, how it fails. */
import { lazy, Suspense, useMemo } from 'react';
import { findPart, kindOf, partsOfRef } from '../../../core/machine';
import { useApp, useCommands, useSpeech } from '../../bind';
import { Icon } from '../common/icons';
import { ItemBalloon } from '../common/ItemBalloon';
import { kindName, ordinalOf, unitName } from '../common/names';
import { Visibility } from '../common/Visibility';
import { FastenerFacts } from './FastenerFacts';
import { partFacts } from './facts';
import './part.css';

// Words of the glossary come when a card is read; most visits never ask.
const PartTerms = lazy(() => import('../lessons/PartTerms'));

export function PartCard() {
  const speech = useSpeech();
  const { t, quantity } = speech;
  const commands = useCommands();
  const document = useApp((s) => s.document);
  const selected = useApp((s) => s.selectedPart);
  const machine = document?.machine;
  const part = machine === undefined || selected === null ? undefined : findPart(machine, selected);
  const facts = useMemo(
    () => (machine === undefined || part === undefined ? null : partFacts(machine, part.id)),
    [machine, part],
  );
  const alike = useMemo(
    () => (machine === undefined ? [] : machine.parts.filter((p) => p.kind === part?.kind).map((p) => p.id)),
    [machine, part],
  );
  const own = useMemo(() => (part === undefined ? [] : [part.id]), [part]);
  if (document === null || machine === undefined || part === undefined || facts === null)
    return (
      <div className="panel-body">
        <h2>{t('part-card.none-title')}</h2>
        <p>{t('part-card.none')}</p>
      </div>
    );
  const kind = kindOf(machine, part);
  const name = kindName(speech, machine, part.kind);
  const ordinal = ordinalOf(machine, part.id);
  const mass = document.masses[part.kind];
  const stem = `part.${kind.word ?? part.kind}`;
  const fluidOrPart = (ref: string): string =>
    speech.has(`fluid.${ref}`) ? t(`fluid.${ref}`) : unitName(speech, machine, ref);
  const at = alike.indexOf(part.id);
  return (
    <article className="panel-body part-card" aria-labelledby="part-title">
      <header className="part-head">
        <ItemBalloon item={kind.item} strong />
        <div>
          <h2 id="part-title">{name}</h2>
          <p className="faint small mono">{part.id}</p>
        </div>
      </header>
      <div className="part-tools">
        <Visibility partIds={own} name={name} />
        <button type="button" className="button" onClick={() => commands.lookAt('fit', part.id)}>
          <Icon name="fit" />
          <span>{t('view.fit')}</span>
        </button>
      </div>
      {alike.length > 1 && (
        <div className="part-pieces">
          <button
            type="button"
            className="button icon"
            aria-label={t('part-card.previous')}
            onClick={() => commands.select(alike[(at - 1 + alike.length) % alike.length]!)}
          >
            <Icon name="back" />
          </button>
          <p>
            {t('part-card.piece', {
              ordinal: ordinal === '' ? at + 1 : Number(ordinal),
              count: alike.length,
            })}
          </p>
          <button
            type="button"
            className="button icon"
            aria-label={t('part-card.next')}
            onClick={() => commands.select(alike[(at + 1) % alike.length]!)}
          >
            <Icon name="next" />
          </button>
        </div>
      )}
      {(['does', 'fails'] as const).map(
        (word) =>
          speech.has(`${stem}.${word}`) && (
            <section key={word}>
              <h3>{t(`part-card.${word}`)}</h3>
              <p>{t(`${stem}.${word}`)}</p>
            </section>
          ),
      )}
      <section>
        <h3>{t('part-card.facts')}</h3>
        <dl className="facts">
          <dt>{t('part-card.mass')}</dt>
          <dd>
            <span className="mono">{quantity(mass?.mass_kg, 'mass')}</span>
            {alike.length > 1 && mass !== undefined && (
              <span className="faint">
                {' '}
                {t('part-card.mass-all', { mass: quantity(mass.mass_kg * alike.length, 'mass') })}
              </span>
            )}
            {mass !== undefined && (
              <span className="row-note">
                {t(mass.declared ? 'part-card.mass-declared' : 'part-card.mass-solid', {
                  solid: quantity(mass.solidMass_kg, 'mass'),
                })}
                {kind.mass_note !== undefined && ` ${kind.mass_note}`}
              </span>
            )}
          </dd>
          <dt>{t('part-card.material')}</dt>
          <dd>
            {t(`material.${kind.material}`)}
            {machine.materials[kind.material] !== undefined && (
              <span className="row-note mono">
                {quantity(machine.materials[kind.material]!.density_kg_m3, 'density')}
              </span>
            )}
          </dd>
          <dt>{t('part-card.moves-with')}</dt>
          <dd>{t(`moves-with.${part.movesWith}`)}</dd>
          <dt>{t('part-card.isolation')}</dt>
          <dd>{t(`isolation.${part.side}`)}</dd>
          {kind.source !== undefined && (
            <>
              <dt>{t('part-card.source')}</dt>
              <dd className="small">{machine.sources[kind.source] ?? kind.source}</dd>
            </>
          )}
        </dl>
      </section>
      {facts.group !== null && <FastenerFacts group={facts.group} />}
      {facts.seats.some((seat) => seat.diameter_m !== null) && (
        <section>
          <h3>{t('part-card.fits')}</h3>
          <ul className="ruled">
            {facts.seats
              .filter((seat) => seat.diameter_m !== null)
              .map((seat, i) => (
                <li key={i}>
                  <span className="mono">
                    ⌀ {quantity(seat.diameter_m, 'length-small')}{' '}
                    {speech.has(`fit.${seat.fit}`) ? t(`fit.${seat.fit}`) : seat.fit}
                  </span>
                  <span className="row-note">
                    {t('part-card.fit-with', { name: fluidOrPart(seat.with) })}
                    {seat.interference_m !== null &&
                      seat.interference_m > 0 &&
                      ` · ${t('part-card.tight', { by: quantity(seat.interference_m, 'length-fine') })}`}
                  </span>
                </li>
              ))}
          </ul>
        </section>
      )}
      {facts.touches.length > 0 && (
        <section>
          <h3>{t('part-card.touches')}</h3>
          <ul className="ruled">
            {facts.touches.map((touch) => {
              const target = partsOfRef(machine, touch.ref)[0];
              return (
                <li key={`${touch.how}${touch.ref}`}>
                  <span className="touch-how">{t(`touch.${touch.how}`)}</span>
                  {target === undefined ? (
                    <span>{fluidOrPart(touch.ref)}</span>
                  ) : (
                    <button type="button" className="link" onClick={() => commands.select(target)}>
                      {fluidOrPart(touch.ref)}
                    </button>
                  )}
                </li>
              );
            })}
          </ul>
        </section>
      )}
      <Suspense fallback={null}>
        <PartTerms partId={part.id} />
      </Suspense>
    </article>
  );
}
