/** A step's setting on the stage: joint, sides and slope, what is to be found, and the person's own stage given back. */
import { beforeAll, describe, expect, it } from 'vitest';
import type { MachineDocument } from '../../src/core/document';
import { GROUNDS } from '../../src/core/studies';
import { applyStage, createAppStore, giveStageBack, INITIAL_STATE } from '../../src/store';
import { smallDocument } from '../panels/fixture';

let document_: MachineDocument;
beforeAll(async () => {
  document_ = await smallDocument();
});
const store = () => createAppStore({ document: document_ });
const commands = { setExciter: () => undefined };

describe('the stage of a step', () => {
  it('bends the joint with the rear shown, marks sides, and is straight again without either', () => {
    const app = store();
    applyStage(app, { joint: { steering_deg: 30 } });
    const bent = { steering_deg: 30, oscillation_deg: 0 };
    expect(app.getState().studies.stage).toEqual({ kind: 'joint', ...bent });
    expect(app.getState().studies.identify).toEqual(bent);
    expect(app.getState().showContext).toBe(true);
    applyStage(app, { sides: true });
    expect(app.getState().studies.stage).toEqual({ kind: 'sides' });
    applyStage(app, {});
    expect(app.getState().studies.stage).toBeNull();
    expect(app.getState().showContext).toBe(false);
  });

  it('opens a slope on its ground, whatever the study was set to, and leaves it alone otherwise', () => {
    const app = store();
    const own = { ...INITIAL_STATE.studies['two-speed'], speed_m_s: 2.5 };
    app.setState({ studies: { ...INITIAL_STATE.studies, 'two-speed': own } });
    applyStage(app, {});
    expect(app.getState().studies['two-speed']).toBe(own);
    applyStage(app, { slope: { ground: 'gravel', grade_percent: 30, drum_range: 'high' } });
    const gravel = GROUNDS.find(({ id }) => id === 'gravel')!;
    expect(app.getState().studies['two-speed']).toMatchObject({
      ground: 'gravel',
      grade_percent: 30,
      drum_adhesion: gravel.drum,
      axle_adhesion: gravel.tyre,
      drum_range: 'high',
      axle_range: 'low',
      speed_m_s: INITIAL_STATE.studies['two-speed'].speed_m_s,
    });
    giveStageBack(app, commands);
    expect(app.getState().studies['two-speed']).toBe(own);
  });

  it('chooses what stands out, but not where it is to be found', () => {
    const app = store();
    const { id } = document_.machine.parts[0]!;
    applyStage(app, { highlight: [id] });
    expect(app.getState().selectedPart).toBe(id);
    applyStage(app, { highlight: [id] }, false);
    expect(app.getState().selectedPart).toBeNull();
    expect(app.getState().ghostedParts.has(id)).toBe(false);
  });
});
