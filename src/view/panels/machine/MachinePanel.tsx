/** The machine on the stage: counts, masses by side of the isolators, sources; and the way to open another. */
import { useMemo } from 'react';
import type { MachineDocument } from '../../../core/document';
import { isPresent } from '../../../core/machine';
import { useApp, useSpeech } from '../../bind';
import { DropZone } from './DropZone';
import { ImportReport } from './ImportReport';
import './machine.css';

const SIDES = ['vibrating', 'isolator', 'still'] as const;

interface Totals {
  readonly parts: number;
  readonly kinds: number;
  readonly mass_kg: number;
  readonly bySide_kg: Readonly<Record<(typeof SIDES)[number], number>>;
}

function totalsOf(document: MachineDocument, optionsOn: Readonly<Record<string, boolean>>): Totals {
  const bySide_kg = { vibrating: 0, isolator: 0, still: 0 };
  const kinds = new Set<string>();
  let parts = 0;
  for (const part of document.machine.parts) {
    if (!isPresent(part, optionsOn)) continue;
    parts++;
    kinds.add(part.kind);
    bySide_kg[part.side] += document.masses[part.kind]?.mass_kg ?? 0;
  }
  return {
    parts,
    kinds: kinds.size,
    mass_kg: bySide_kg.vibrating + bySide_kg.isolator + bySide_kg.still,
    bySide_kg,
  };
}

export function MachinePanel() {
  const { t, quantity, number } = useSpeech();
  const document = useApp((s) => s.document);
  const optionsOn = useApp((s) => s.optionsOn);
  const totals = useMemo(
    () => (document === null ? null : totalsOf(document, optionsOn)),
    [document, optionsOn],
  );
  return (
    <div className="panel-body machine">
      <ImportReport />
      {document !== null && totals !== null && (
        <>
          <header>
            <h2>{document.machine.name}</h2>
            <p className="faint">{document.machine.place}</p>
          </header>
          <dl className="facts">
            <dt>{t('machine.kinds')}</dt>
            <dd className="mono">{number(totals.kinds, 'count')}</dd>
            <dt>{t('machine.parts')}</dt>
            <dd className="mono">{number(totals.parts, 'count')}</dd>
            <dt>{t('machine.drum')}</dt>
            <dd>
              {t('machine.drum-size', {
                width: quantity(document.machine.drumWidth_m, 'length'),
                diameter: quantity(2 * document.machine.drumRadius_m, 'length'),
              })}
            </dd>
            {SIDES.map((side) => (
              <FactPair
                key={side}
                name={t(`machine.mass-${side}`)}
                value={quantity(totals.bySide_kg[side], 'mass', 4)}
              />
            ))}
            <FactPair name={t('machine.mass-all')} value={quantity(totals.mass_kg, 'mass', 4)} />
            <FactPair
              name={t('machine.operating')}
              value={quantity(document.machine.operation.operating_mass_kg, 'mass', 4)}
            />
          </dl>
        </>
      )}
      <DropZone />
      <p>
        <a className="link" href="./baked/alder-one.yaml" download="alder-one.yaml">
          {t('import.sample')}
        </a>
      </p>
      {document !== null && (
        <details className="sources">
          <summary>{t('machine.sources')}</summary>
          <dl>
            {Object.entries(document.machine.sources).map(([id, source]) => (
              <div key={id}>
                <dt className="mono small">{id}</dt>
                <dd className="small">{source}</dd>
              </div>
            ))}
          </dl>
          <p className="small faint mono">{t('machine.hash', { hash: document.hash.slice(0, 12) })}</p>
        </details>
      )}
    </div>
  );
}

function FactPair({ name, value }: { readonly name: string; readonly value: string }) {
  return (
    <>
      <dt>{name}</dt>
      <dd className="mono">{value}</dd>
    </>
  );
}
