/** A job of the small machine, with its plan: two hold points, fields of every kind, something computed. */
import { buildGraph } from '../../src/core/assembly';
import { kindSolids, type MachineDocument } from '../../src/core/document';
import { type Job, type JobPlan, parseJob, planJob } from '../../src/core/jobs';
import type { JobPort } from '../../src/store';

const YAML = `
schema_version: 1
id: end-off
title: Take the right end off
summary: The end comes off and goes on again.
work: inspect
family: drum
targets: [end-right]
prerequisites: [A clean bench]
cautions: [lock-out]
steps:
  - id: secure
    phase: prepare
    action: secure
    text: Make it safe.
    cautions: [lock-out, chock-drum]
    fields:
      - { id: locked-out, label: Locked out, type: check }
      - { id: hours, label: Hour meter, unit: s, optional: true }
    hold: true
    time_s: 60
  - id: look
    phase: work
    action: inspect
    text: Look at the end and measure its rim.
    units: [end-right]
    fields:
      - { id: rim, label: Rim, unit: m, min: 0.0199, max: 0.0201, source: training-value }
      - { id: speed, label: Speed, unit: rad/s, optional: true }
      - id: state
        label: State
        type: choice
        choices: [{ id: sound, label: Sound, good: true }, { id: cracked, label: Cracked, good: false }]
      - { id: words, label: What was seen, type: text, optional: true }
    hold: true
    time_s: 120
  - id: tighten
    phase: together
    action: torque
    after: [end-bolts]
    text: Tighten across.
    bolts: [end-bolts]
    fields: [{ id: marked, label: Heads marked, type: check }]
    hold: true
    time_s: 90
people: 1
`;

export function smallJob(document: MachineDocument): { job: Job; plan: JobPlan } {
  const { machine, masses } = document;
  const parsed = parseJob({ name: 'end-off.yaml', text: YAML }, machine);
  if (!parsed.ok) throw new Error(JSON.stringify(parsed.faults));
  const plan = planJob(machine, buildGraph(machine, kindSolids(document), masses), parsed.value);
  return { job: parsed.value, plan: { plan, positionsLookedAt: 0 } };
}

export function smallJobs(document: MachineDocument): JobPort {
  const { job, plan } = smallJob(document);
  return {
    loadJobs: () => Promise.resolve([job]),
    loadPlan: (_, id) => (id === job.id ? Promise.resolve(plan) : Promise.reject(new Error('no such job'))),
  };
}
