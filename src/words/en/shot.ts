/** Words of "watch the shot": recordings and runs of the loose shot. */
const shot = {
  'shot.title': 'Watch the shot',
  'shot.drawing-choice': 'What the drawing shows',
  'shot.settled': 'Settled',
  'shot.loading': 'Fetching the recordings …',
  'shot.load-failed': 'The recordings of the shot could not be loaded.',
  'shot.none-shipped':
    'No recording ships with this machine. Run the shot yourself below; its numbers come from this machine’s own chamber, baffle and charge.',

  'shot.run-both': 'Run both directions as built',

  'shot.drawing':
    'Slice of the chamber seen from the vibration side with {{balls}} balls, spinning up {{direction}}. At the end {{captured}} of the shot lies in the baffle’s pocket and the unbalance is {{unbalance}}.',
  'shot.key-loose': 'loose ball',
  'shot.key-held': 'in the baffle’s pocket',
  'shot.key-force': 'force now',
  'shot.key-down': 'down',

  'shot.transport': 'Play the run',
  'shot.play': 'Play',
  'shot.pause': 'Pause',
  'shot.again': 'Play again',
  'shot.scrub': 'Time of the run',
  'shot.time': '{{time}} / {{of}} s',
  'shot.slow': 'Slow motion',
  'shot.slow-none': 'True',
  'shot.slow-by': '{{factor}} × slower',
  'shot.eye': 'Your eye',
  'shot.eye-housing': 'turns with it',
  'shot.eye-room': 'stands still',
  'shot.along': 'On the stage',
  'shot.along-repeated': 'whole length',
  'shot.along-alone': 'the slice alone',

  'shot.readings': 'Read off the balls at this moment',
  'shot.read-captured': 'In the pocket',
  'shot.read-below': 'of it, no heap',
  'shot.read-unbalance': 'U',
  'shot.read-unbalance-angle': 'U points at',
  'shot.read-shot-moment': 'Shot’s U',
  'shot.read-gravity-ratio': 'w² r / g',
  'shot.read-rotation': 'Speed',
  'shot.read-turns': 'Turns',
  'shot.read-force': 'Force',
  'shot.read-energy': 'Energy',
  'shot.read-arm': 'Arm of centre',
  'shot.read-packing': 'Packing',

  'shot.chart-over': 'Chart over',
  'shot.chart-time': 'time',
  'shot.chart-gravity': 'w² r / g',
  'shot.chart':
    'Chart of the run: share in the pocket {{captured}} at the end, unbalance from {{start}} to {{unbalance}}.',
  'shot.axis-time': 'time, s',
  'shot.axis-gravity': 'w² r / g at the wall',
  'shot.critical': 'w² r = g',
  'shot.key-captured': 'share in the pocket, %',
  'shot.key-unbalance': 'unbalance U',
  'shot.key-level': 'U of level shot',

  'shot.level': 'Balls against the closed form',
  'shot.level-balls': 'Read off the balls',
  'shot.level-table': 'Table of simulated runs',
  'shot.level-form': 'Level surface',
  'shot.level-agree':
    'They agree: here the shot runs to the far side and lies against it with a surface that is nearly level, which is what the closed form assumes.',
  'shot.level-coat':
    'The closed form lets the shot find its level like a liquid; real balls jam by friction and freeze as a thin coat round the wall before they get to the far side, so the level value is too high.',
  'shot.level-run':
    'The closed form knows nothing of spin-up, gravity or friction: it takes the pocket as filled in the direction that scoops and as empty in the other, and lets the rest find its level like a liquid.',
  'shot.level-below':
    'The closed form lets the shot find its level like a liquid; here the balls froze where they lay, farther out than a level surface would have them.',

  'shot.experiments': 'Experiments',
  'shot.experiments-intro':
    'Change one thing, say what you expect, then see. Each is compared with the machine as built, spun {{direction}}.',
  'shot.run-own': 'As built, {{direction}}',
  'shot.run-other-way': 'The other direction',
  'shot.run-too-fast': 'Spun up too fast',
  'shot.run-too-much': 'Too much shot',
  'shot.run-half-lost': 'Half the shot lost',
  'shot.run-baffle-off': 'Baffle torn off',
  'shot.run-baffle-mirrored': 'Baffle welded mirrored',
  'shot.run-no-gravity': 'Gravity off',
  'shot.run-sticky': 'Sticky shot',
  'shot.run-free': 'A run of your own',
  'shot.what-other-way': 'Same machine, same charge; the lever goes the other way.',
  'shot.what-too-fast':
    'The same top speed, but in half the time and with full push from the first moment instead of a soft start.',
  'shot.what-too-much': 'Half as much shot again as the machine should have. The pocket stays the same size.',
  'shot.what-half-lost': 'The plug leaked: half of the charge is gone.',
  'shot.what-baffle-off': 'The weld of the L-shaped plate has broken and the plate is out of the chamber.',
  'shot.what-baffle-mirrored': 'A repair put the plate on the wrong side: the pocket opens the other way.',
  'shot.what-no-gravity': 'Nobody can do this in a yard: what would the shot do without weight?',
  'shot.what-sticky':
    'Oil and dust have got into the chamber: friction between the balls is far up, at 0.8. (Only friction is raised; that sticky balls also cling to each other is left out.)',
  'shot.what-free': 'Set what you like. The same setting with the same seed gives the identical result.',
  'shot.predict': 'Against {{direction}} as built, the drum will shake …',
  'shot.predict-more': 'More',
  'shot.predict-same': 'The same',
  'shot.predict-less': 'Less',
  'shot.predict-first': 'Say first what you expect.',
  'shot.settings': 'Change the setting',
  'shot.run': 'Run it',
  'shot.leave': 'Back',
  'shot.cancel': 'Cancel the run',
  'shot.job': 'Running',
  'shot.job-starting': 'the shot is poured in and settles …',
  'shot.job-left': 'about {{seconds}} s left',
  'shot.spin-up': 'Spin-up',
  'shot.spin-up-quadratic': 'Soft start',
  'shot.spin-up-linear': 'Full push',
  'shot.spin-up-time': 'Time to full speed',
  'shot.friction': 'Friction of the balls',
  'shot.baffle': 'Baffle',
  'shot.baffle-fitted': 'As built',
  'shot.baffle-mirrored': 'Mirrored',
  'shot.baffle-off': 'Off',
  'shot.gravity': 'Gravity',
  'shot.seed': 'Seed',
  'shot.seed-note': 'Another seed pours the balls in another way; results scatter by up to about 10 %.',

  'shot.result': 'What came of it',
  'shot.predicted-right': 'As you said.',
  'shot.predicted-else': 'You said {{said}}; it came otherwise.',
  'shot.found-more': 'It shakes more: U is {{unbalance}}, {{share}} % of {{direction}} as built.',
  'shot.found-same':
    'It shakes about the same: U is {{unbalance}}, {{share}} % of {{direction}} as built. Within 10 % counts as the same, since that much comes from how the balls happen to lie.',
  'shot.found-less': 'It shakes less: U is {{unbalance}}, {{share}} % of {{direction}} as built.',
  'shot.why-other-way-low':
    'The back of the plate sheds the shot: none is held, all of it runs to the heavy side.',
  'shot.why-other-way-high':
    'The open side of the plate scoops the shot just after the critical speed and holds it on the light side, where it works against the rest.',
  'shot.why-too-fast-low':
    'The pocket is filled by gravity in the few radians of turning around the critical speed. Rushed through them, less of the shot is scooped, and LOW is not low.',
  'shot.why-too-fast-high': 'Nothing has to be scooped in this direction, so haste does little.',
  'shot.why-too-much-low':
    'The pocket takes a volume, not a share: once it is full, the rest works with the heavy side.',
  'shot.why-too-much-high': 'More mass, but it fills the chamber towards the axis, where its arm is short.',
  'shot.why-half-lost-low':
    'What is left may all fit behind the plate: then little or nothing is left to pull the other way. A charge that is short upsets both directions.',
  'shot.why-half-lost-high':
    'Half the charge, though it lies farther out: the drum has lost much of its shake.',
  'shot.why-baffle-off-low': 'Nothing holds the shot back: both directions are alike, and LOW is gone.',
  'shot.why-baffle-off-high':
    'In this direction the plate held nothing, but its own steel worked with the heavy side and its back swept the shot there; both are missing.',
  'shot.why-baffle-mirrored-low':
    'The pocket now opens the other way: HIGH and LOW have changed places at the lever.',
  'shot.why-baffle-mirrored-high':
    'The pocket now opens the other way: HIGH and LOW have changed places at the lever.',
  'shot.why-no-gravity-low':
    'Without weight nothing is poured into the pocket; only what the plate runs into as it starts to turn is caught.',
  'shot.why-no-gravity-high':
    'Without weight a little ends up in the pocket, but most of the shot still runs to the heavy side.',
  'shot.why-sticky-low':
    'Scooping does not need slippery balls: the share held hardly changes. What changes is the coat on the wall.',
  'shot.why-sticky-high':
    'More friction freezes the shot a little sooner; most of it still lies on the heavy side.',
  'shot.limit-off':
    'The torn plate is taken out of the chamber here; in a real one it would lie among the shot.',
  'shot.limit-mirrored': 'On the stage, thin lines show where the plate sat as built.',
  'shot.said-done': '{{run}}: {{captured}} in the pocket, unbalance {{unbalance}}',

  'shot.runs': 'Runs side by side',
  'shot.col-run': 'Run',
  'shot.col-captured': 'Pocket',
  'shot.col-ratio': ': H',
  'shot.col-ratio-long': 'U over that of HIGH as built',
  'shot.set-fill': 'fill {{fill}}',
  'shot.set-quadratic': 'soft start {{time}} s',
  'shot.set-linear': 'full push {{time}} s',
  'shot.set-friction': 'friction {{friction}}',
  'shot.set-baffle-mirrored': 'baffle mirrored',
  'shot.set-baffle-off': 'no baffle',
  'shot.set-no-gravity': 'no gravity',
  'shot.set-seed': 'seed {{seed}}',
  'shot.export': 'Export as CSV',
  'shot.clear': 'Clear my runs',

  'shot.notice':
    'A picture to learn from, not a measurement: a slice of the chamber {{depth}} deep that repeats along the length, round steel balls of {{ball}} with {{spread}} spread, plain friction, no oil and no wear. Runs stop at {{stop}}, because above about ten times gravity all forces grow alike and nothing moves any more; U is scaled from the slice to the full charge. Never use it to fill a real exciter.',

  'expected.ballCount': 'from {{low}} to {{high}} balls',
  'expected.hashOfParameters': 'the fingerprint of its own parameters',
  'expected.knownToFit': 'a way of spinning up that the fit was made for',
  'expected.notNegative': 'a number not below 0',
  'expected.plusOrMinusOne': '1 or -1',
  'expected.positive': 'a number above 0',
  'expected.reachedFrequency': 'a frequency that the spin-up reaches',
  'expected.recording': 'a recording of the shot',
  'expected.recordingVersion': 'a recording of a version this program reads',
  'expected.rising': 'times that rise',
  'expected.tableFromZero': 'a table of two rows or more that starts at 0 s',
  'expected.twoOrThree': '2 or 3',
  'expected.whole': 'a whole number',
  'expected.wholeFile': 'the whole file',
} as const satisfies Readonly<Record<string, string>>;

export default shot;
