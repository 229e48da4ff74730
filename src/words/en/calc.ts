/**
 * What the command line `calc` says, in English; {{name}} stands for a parameter.
 * Notes that the mechanics return (`mechanics.*`) are here too: panels show the same ones.
 */
const calc = {
  'calc.fault.line': '{{path}}: expected {{expected}}, got {{found}}',
  'calc.fault.unknown-name': 'there is no calculation {{name}}; known are: {{names}}',
  'calc.fault.too-many-words': 'one name is enough, what follows was not understood: {{words}}',
  'calc.fault.no-input': '{{name}} reads one JSON object from standard input, and there was none',
  'calc.fault.not-json': '{{name}} reads one JSON object from standard input, and this is not JSON: {{why}}',
  'calc.fault.guard': '{{name}} cannot be computed from this input: {{why}}',

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
} as const satisfies Readonly<Record<string, string>>;

export default calc;
