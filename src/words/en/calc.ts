/**
 * What the command line `calc` says, in English; {{name}} stands for a parameter.
 * Notes that the mechanics return (`mechanics.*`) are here too: panels show the same ones.
 */
import calcMechanics from './calc-mechanics';

const calc = {
  ...calcMechanics,
  'calc.fault.line': '{{path}}: expected {{expected}}, got {{found}}',
  'calc.fault.unknown-name': 'there is no calculation {{name}}; known are: {{names}}',
  'calc.fault.too-many-words': 'one name is enough, what follows was not understood: {{words}}',
  'calc.fault.no-input': '{{name}} reads one JSON object from standard input, and there was none',
  'calc.fault.not-json': '{{name}} reads one JSON object from standard input, and this is not JSON: {{why}}',
  'calc.fault.guard': '{{name}} cannot be computed from this input: {{why}}',

  'calc.fault.model': 'the name of a machine of models/, or a folder or file of one',
  'calc.fault.unit': 'the id of a unit of the machine',

  'calc.expected.type': 'a value of type {{type}}',
  'calc.expected.above': 'a number above {{limit}}',
  'calc.expected.below': 'a number below {{limit}}',
  'calc.expected.at-least': 'at least {{limit}}',
  'calc.expected.at-most': 'at most {{limit}}',
  'calc.expected.at-least-entries': 'at least {{limit}} entries',
  'calc.expected.at-most-entries': 'at most {{limit}} entries',
  'calc.expected.one-of': 'one of {{words}}',
  'calc.expected.either': 'one of these: {{options}}',
  'calc.expected.other': '{{what}}',

  'calc.note.unknown-key': 'the input key {{key}} is not known here and was ignored',
  'calc.note.not-finite':
    '{{key}} is too large for a number (or does not exist for this input) and is given as null',

  'calc.centrifugal.answers': 'How large is the force of a mass that turns off centre?',
  'calc.segment.answers':
    'How large is the part of a circle that a chord cuts off, and where is its centroid?',

  'calc.blocking.answers':
    'What bars a unit of a machine from leaving along each direction, at which distance, and which joints hold it?',
  'calc.diagnose.answers': 'Which faults fit what was measured, why, and what to measure next.',
  'calc.teardown.answers':
    'In which order does a machine come apart, whole or just far enough to free one unit, and what must be held?',

  'calc.unbalance.answers':
    'How large is the unbalance of an exciter with loose shot in one direction of rotation, and what does it shake?',
  'calc.unbalance.surface-assumed':
    'surface was not given: the shot is taken as settled with a level surface, without friction',
  'calc.unbalance.fit-unused':
    'no settled fit is stored for {{fit}}: the shot is taken as settled with a level surface',
  'calc.unbalance.fit-ignored': 'surface is "level", so the fit {{fit}} is not used',
  'calc.unbalance.fit-needed':
    'the name of a model whose settled fit is stored, or a fit file, for surface "settled"',
  'calc.unbalance.fit-stored': 'a model whose settled fit is stored, or a fit file',
  'calc.unbalance.settled-assumed':
    'surface was not given: the shot is taken as settled in the simulated runs of {{fit}}',
  'calc.unbalance.settled-setting':
    'settled with friction {{friction}}, balls of {{ball_diameter_m}} m and a {{kind}} spin-up to {{frequency_Hz}} Hz in {{time_s}} s; what was not given is the model’s own',
  'calc.unbalance.not-known':
    'not known from the simulation table: nothing is extrapolated; the level surface is given beside it and is no substitute',
  'mechanics.unbalance.no-leg':
    'there is no pocket, as no baffle leg stands on the wall: capacity, spill radius and pocket surface do not exist',
  'mechanics.unbalance.never-separate':
    'there is no pocket, as leg 1 parts nothing from the far side on its pocket side: capacity, spill radius and pocket surface do not exist',
  'mechanics.unbalance.closed':
    'steel closes the pocket all round: it never spills, and in truth no shot can reach it',
  'mechanics.unbalance.no-shot':
    'there is no shot: its share in the pocket, its surfaces and its angle do not exist',
  'mechanics.unbalance.pocket-empty': 'the pocket holds no shot, so its surface does not exist',
  'mechanics.unbalance.main-empty':
    'all shot is in the pocket, so a surface outside the pocket does not exist',
  'mechanics.unbalance.main-full':
    'all room outside the pocket is full; the rest of the shot is taken to be in the pocket',
  'mechanics.unbalance.overfull':
    'the shot needs {{wanted_m2}} m2 of section and the chamber has {{free_m2}} m2: what does not fit is left out',
  'mechanics.unbalance.runs-over':
    'the surface outside the pocket lies inside the spill radius: in truth some shot would run over into the pocket',
  'mechanics.unbalance.shot-balanced': 'the shot is balanced about the axis, so its angle does not exist',
  'mechanics.unbalance.balanced': 'all is balanced about the axis, so the angle does not exist',
  'mechanics.unbalance.no-vibrating-mass':
    'the vibrating mass was not given, so the nominal amplitude does not exist',

  'calc.ring-fit.answers': 'How loose or tight does a bearing’s ring sit on its seat?',
  'calc.tight-ring.answers': 'Which ring of a bearing needs the tight seat, given what turns?',
  'calc.isolator-set.answers':
    'How well do the isolators of a set agree, and how much does the stiffest carry?',
  'calc.rigging.answers': 'What do an eye bolt and a shackle still carry when the pull is out of line?',
  'calc.hang.answers': 'How does a load hang when the hook is not over its centre of mass?',
  'calc.scraper-gap.answers': 'How far must each end of the scraper bars move, and how worn are the blades?',
  'calc.amplitude-check.answers': 'Do a measured amplitude and vibration rate agree with what is expected?',
  'calc.bearing-damage.answers': 'What are the kinds of bearing damage called, and what does each look like?',
  'calc.job-sheet.answers': 'What does the sheet of a job say: steps, lifts, supports, numbers, fields?',
  'calc.fault.job': 'a job of this machine',
} as const satisfies Readonly<Record<string, string>>;

export default calc;
