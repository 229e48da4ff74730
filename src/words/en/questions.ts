/** Generated questions: their asking, what wrong answers mistake, their explanation. */
export default {
  'gen.heaviest.ask': 'Which of these is the heaviest?',
  'gen.heaviest.lighter': 'It weighs {{mass}} only.',
  'gen.heaviest.explain': 'The {{part}} weighs {{mass}}. Know what you lift before you lift it.',
  'gen.moves-with.exciter':
    'The exciter runs and the roller stands. Which of these turn at the exciter’s speed?',
  'gen.moves-with.drum': 'The roller drives with vibration off. Which of these roll round with the drum?',
  'gen.moves-with.spindle':
    'The roller drives with vibration off. Which of these hang on the spindle side, inside the isolators, and do not turn?',
  'gen.moves-with.why-exciter': 'It turns at the exciter’s speed.',
  'gen.moves-with.why-drum': 'It rolls round with the drum.',
  'gen.moves-with.why-frame': 'It belongs to the frame and does not turn.',
  'gen.moves-with.why-rear-frame': 'It belongs to the rear frame.',
  'gen.moves-with.why-spindle': 'It stands with the spindle: inside the isolators, not turning.',
  'gen.moves-with.explain-exciter':
    'Coupled to the exciter’s shaft: {{parts}}. All else at most shakes along.',
  'gen.moves-with.explain-drum': 'Fixed to the rolling drum: {{parts}}.',
  'gen.moves-with.explain-spindle':
    'Fixed to the standing spindle: {{parts}}. The drum rolls round them on its wheel bearings.',
  'gen.shakes.ask': 'Vibration is on. Which of these shake with the drum?',
  'gen.shakes.inside': 'It is inside the isolators: it shakes.',
  'gen.shakes.outside': 'It is outside the isolators: they keep most of the shaking from it.',
  'gen.shakes.explain':
    'The isolators part the two sides. All that is bolted to the drum’s side shakes; the frame’s side should not.',
  'gen.which-part.does': 'Which part is this? {{text}}',
  'gen.which-part.fails': 'Which part fails like this? {{text}}',
  'gen.which-part.why': 'Of that one it would be said: {{text}}',
  'gen.which-part.explain': 'That is the {{part}}.',
  'gen.match.ask': 'What does each of these do?',
  'gen.match.explain': 'Open each part to see where it sits: its place often tells what it does.',
  'gen.pick.ask': 'Show the {{part}}.',
  'gen.pick.explain': 'This is the {{part}}.',
  'gen.change.more': 'It rises by {{share}}',
  'gen.change.less': 'It falls by {{share}}',
  'gen.change.same': 'It stays as it is',
  'gen.force.faster': 'The exciter turns {{share}} faster. What does the centrifugal force do?',
  'gen.force.slower': 'The exciter turns {{share}} slower. What does the centrifugal force do?',
  'gen.force.why-linear': 'That is what the speed does. Force follows speed times speed.',
  'gen.force.why-cube': 'Too steep: force follows the square of the speed, not its cube.',
  'gen.force.why-same': 'The unbalance stays. The force does not.',
  'gen.force.why-inverse': 'That is the wrong way round.',
  'gen.force.explain':
    'Force grows with the square of the speed: {{speed}} times the speed is {{force}} times the force.',
  'gen.follows.force-up': 'The exciter turns faster. What does its centrifugal force do?',
  'gen.follows.force-down': 'The exciter turns slower. What does its centrifugal force do?',
  'gen.follows.unbalance-up': 'The exciter turns faster the same way. What does its unbalance do?',
  'gen.follows.unbalance-down': 'The exciter turns slower the same way. What does its unbalance do?',
  'gen.follows.weight-up': 'The exciter turns faster. What does the static linear load of the drum do?',
  'gen.follows.weight-down': 'The exciter turns slower. What does the static linear load of the drum do?',
  'gen.follows.life-up': 'The exciter turns faster. What does the life of its bearings, in hours, do?',
  'gen.follows.life-down': 'The exciter turns slower. What does the life of its bearings, in hours, do?',
  'gen.follows.why-force': 'The same mass on a faster round pulls harder.',
  'gen.follows.why-unbalance': 'Unbalance is mass times its distance from the shaft. Speed is not in it.',
  'gen.follows.why-weight': 'What the drum weighs on the ground does not ask how fast the exciter turns.',
  'gen.follows.why-life':
    'The load grows with the square of the speed, and the hours of a bearing shrink faster still.',
  'gen.follows.explain-force': 'Centrifugal force grows with the square of the speed.',
  'gen.follows.explain-unbalance':
    'Unbalance stays the same as long as the shot lies where it lies. Only the force changes.',
  'gen.follows.explain-weight': 'Static linear load is weight over width. Vibration comes on top of it.',
  'gen.follows.explain-life':
    'A tenth more speed is about a fifth more load, about half the life in turns, and the turns pass faster too.',
  'gen.force-number.ask':
    'A mass of {{mass}} turns {{radius}} off the axis at {{frequency}}. How large is the centrifugal force?',
  'gen.force-number.explain':
    'Unbalance is {{unbalance}}. Times the square of 2π times the frequency that is {{force}}.',
  'gen.two-weights.together':
    'A fixed weight of {{fixed}} and a swinging one of {{swinging}} lie on the same side. What is the unbalance?',
  'gen.two-weights.against':
    'A fixed weight of {{fixed}} and a swinging one of {{swinging}} lie opposite each other. What is the unbalance?',
  'gen.two-weights.square':
    'A fixed weight of {{fixed}} and a swinging one of {{swinging}} stand at right angles. What is the unbalance?',
  'gen.two-weights.explain-together': 'On one side they add up: {{total}}.',
  'gen.two-weights.explain-against': 'Opposite each other they take away from each other: {{total}}.',
  'gen.two-weights.explain-square':
    'At right angles they add like the sides of a right triangle: {{total}} along its long side.',
  'gen.life.heavier':
    'The load on a roller bearing rises by {{share}}. What does its rating life, in turns, do?',
  'gen.life.lighter':
    'The load on a roller bearing falls by {{share}}. What does its rating life, in turns, do?',
  'gen.life.why-linear': 'Life does not follow load one to one. It follows it to the power of ten thirds.',
  'gen.life.why-same': 'Load is what life follows most.',
  'gen.life.why-square': 'Steeper than the square: the power is ten thirds.',
  'gen.life.why-way': 'The wrong way round: more load, less life.',
  'gen.life.explain': 'Rating life of roller bearings goes with load to the power of minus ten thirds.',
  'gen.range.low': 'Low range',
  'gen.range.high': 'High range',
  'gen.pull.ask':
    'Drum motor in {{range}}: {{displacement}} a turn, efficiency {{efficiency}}, rolling radius {{radius}}. How hard does the drum pull at {{pressure}}, if it does not slip?',
  'gen.pull.explain':
    'Pressure times displacement over 2π is torque; times efficiency, over the radius, it is the pull: {{force}}.',
  'gen.slope.pull-drum':
    'The drum should pull as hard as it can at a given pressure. Which range of its motor?',
  'gen.slope.pull-axle':
    'The axle should pull as hard as it can at a given pressure. Which range of its motor?',
  'gen.slope.speed-drum': 'The drum should turn as fast as the pump allows. Which range of its motor?',
  'gen.slope.speed-axle': 'The axle should turn as fast as the pump allows. Which range of its motor?',
  'gen.slope.alike': 'It makes no difference',
  'gen.slope.why-low': 'Low range takes in more oil each turn: more pull, but slower.',
  'gen.slope.why-high': 'High range takes in less oil each turn: faster, but less pull.',
  'gen.slope.why-alike': 'The range changes how much oil a turn takes, and that is both pull and speed.',
  'gen.slope.explain': 'More oil a turn is more pull and less speed; less oil a turn the other way round.',
  'gen.fault.ask': 'These were measured on the test bed. What fits all of it?',
  'gen.fault.reading': '{{name}}: {{value}}. On a sound machine about {{usual}}.',
  'gen.fault.why': 'Then {{name}} would read about {{value}}.',
  'gen.fault.explain': '{{fault}}. {{does}}',
  'gen.linear.ask':
    'A drum axle load of {{mass}} rests on a drum {{width}} wide. How large is the static linear load?',
  'gen.linear.explain': 'Weight over width: {{load}}.',
  'gen.blows.ask':
    'The roller drives at {{speed}} and vibrates at {{frequency}}. How far apart do the blows fall?',
  'gen.blows.explain': 'Speed over frequency: {{spacing}}.',
} as const;
