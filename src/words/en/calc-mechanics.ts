/**
 * Questions that the calculations answer, and what the formulas say of inputs and results, in English;
 * {{name}} stands for a parameter. Panels show the same notes.
 */
const calcMechanics = {
  'expected.number': 'a number',
  'expected.above': 'a number above {{limit}}',
  'expected.at-least': 'at least {{limit}}',
  'expected.below': 'a number below {{limit}}',
  'expected.at-most': 'at most {{limit}}',
  'expected.within': 'a number from {{low}} to {{high}}',
  'expected.whole-within': 'a whole number from {{low}} to {{high}}',
  'expected.exactly-one': 'exactly one of {{keys}}',
  'expected.entries': 'at least {{limit}} entries',
  'expected.representable': 'a result that fits into a number',

  'calc.bearing-load.answers':
    'Which constant radial load wears a bearing as much as this radial and axial load?',
  'calc.bearing-life.answers': 'How long does a rolling bearing live under a load, at a wanted reliability?',
  'calc.bearing-duty.answers':
    'Which constant load stands for a duty cycle, and which rating does a wanted life need?',
  'calc.bearing-system.answers': 'How long do several bearings live of which none may fail?',
  'calc.static-safety.answers': 'Is the static rating of a bearing enough for its greatest load?',
  'calc.fitted-clearance.answers':
    'How much radial clearance is left in a bearing once it is fitted and warm?',
  'calc.iso-fit.answers':
    'Between which limits lie hole and shaft of an ISO fit, and how loose or tight is it?',
  'calc.interference-fit.answers':
    'Which pressure, stresses, press force and torque does an interference fit give?',
  'calc.heating.answers': 'How much warmer must a ring be to grow by a wanted amount?',
  'calc.bolt.answers': 'Which preload, torque and stress does a bolt get?',
  'calc.nut-factor.answers': 'Which nut factor K follows from friction in the thread and under the head?',
  'calc.star-sequence.answers': 'In which order is a ring of bolts tightened?',
  'calc.joint-slip.answers': 'At which load does a bolted friction joint slip?',
  'calc.rubber-mount.answers': 'How stiff is a bonded rubber mount in shear and in compression?',
  'calc.single-dof.answers': 'How does one mass on a spring and a damper swing, and what does it pass on?',
  'calc.roller-response.answers':
    'How far do drum and frame swing on the soil, and does the drum stay on it?',
  'calc.soil-stress.answers': 'Which vertical stress does a load on the surface make at a depth?',
  'calc.impact-spacing.answers': 'How far apart do the blows of a vibrating drum fall?',
  'calc.roller-time.answers':
    'How do drum and frame move on the soil in time, when the drum may lift off, and in which way does it run?',
  'calc.rolling-time.answers': 'How long does it take to roll an area?',
  'calc.hydraulic-motor.answers': 'Which torque, speed and power does a hydraulic motor give?',
  'calc.traction.answers': 'Does a roller with driven drum and axle climb a grade, and what stops it if not?',
  'calc.sling.answers': 'Which tension is in each leg of a sling?',
  'calc.two-point-lift.answers': 'How do two hooks share a load?',
  'calc.lift-limit.answers': 'May one person lift this mass by hand?',
  'calc.brine.answers': 'How dense is a calcium chloride brine, and when does it freeze?',
  'calc.brine-fill.answers': 'How much salt and water are in a fill of brine?',
  'calc.oil-volume.answers': 'How much oil stands in a lying round case at a level, and the other way round?',
  'calc.alignment.answers': 'Which shims bring the gaps at four corners to one value?',
  'calc.end-play.answers': 'How far must the nut be turned for the wanted bearing end play?',
  'calc.item-statistics.answers':
    'How hard and how telling is each item of a test, and how reliable is the test?',

  'calc.vibration-study.answers':
    'How do drum and frame of a machine move on a ground, and in which way does it run?',
  'calc.vibration-study.no-time':
    'without ground stiffness there is no motion in time, so only the linear answer exists',
  'calc.isolation-study.answers':
    'What do the isolators of a machine pass on, with some hard, cracked or missing?',
  'calc.isolation-study.none-stands': 'where no isolator stands, sag and vibration do not exist',
  'calc.traction-study.answers': 'Which of the four combinations of speed ranges takes a machine up a slope?',
  'calc.shared-pressure.answers':
    'Which ratio of displacements and which shares of the pull do two pressures on one hill tell?',
  'calc.compaction-study.answers': 'What load, blows and stress does the drum of a machine give the ground?',
  'calc.ballast-study.answers':
    'What would liquid in the drum of a machine gain in load and cost in amplitude?',
  'calc.identify.answers': 'How would the trade describe a machine?',
  'calc.identify.no-joint': 'the machine’s file holds no joint, so there is no turning radius',
  'calc.fault.no-isolators': 'a machine with isolators between drum and frame',
  'calc.fault.known-unbalance': 'a direction whose unbalance is known',
  'calc.fault.within-formulas': 'values that the formulas cover',

  'mechanics.expected.shares-sum-to-one': 'shares of the time that add up to 1',
  'mechanics.expected.some-turning': 'at least one part of the cycle that turns for some time',
  'mechanics.expected.hole-class': 'a hole class: one of the letters {{letters}} and a grade',
  'mechanics.expected.shaft-class': 'a shaft class: one of the letters {{letters}} and a grade',
  'mechanics.expected.grade': 'a tolerance grade from {{low}} to {{high}}',
  'mechanics.expected.iso-size': 'a nominal size above {{low}} m, up to {{high}} m',
  'mechanics.expected.class-with-grades': 'letter {{letter}} with one of the grades {{grades}}',
  'mechanics.expected.efficiency':
    'measurements that give an efficiency above 0 and up to 1 (pressure, torque, flow and speed must fit together)',
  'mechanics.expected.not-twice': 'no efficiency where the measurements already give it',

  'mechanics.note.load-below-radial':
    'the result is below the radial load: the bearing tables then ask for X = 1 and Y = 0',
  'mechanics.note.hours-need-speed': 'without a speed there is no life in hours',
  'mechanics.note.load-above-half-rating':
    'the load is above half the rating, where the life formula no longer holds well',
  'mechanics.note.a1-weibull': 'a1 comes from a Weibull law of slope {{slope}}, not from a table of ISO 281',
  'mechanics.note.a1-edition': 'a1 is that of ISO 281:{{edition}}',
  'mechanics.note.shares-scaled': 'the shares of time add up to {{sum}} and were scaled to 1',
  'mechanics.note.rating-needs-life': 'without a wanted life there is no required rating',
  'mechanics.note.unloaded': 'there is no load, so the static safety does not exist',
  'mechanics.note.clearance-tables-unconfirmed':
    'the clearance tables were not read in the standard itself: confirm them before use on a real bearing',
  'mechanics.note.may-run-preloaded':
    'with the tightest parts no clearance is left: the bearing runs preloaded and hot',
  'mechanics.note.any-lock-angle': 'without the number of lock places the nut may stand at any angle',
  'mechanics.note.zero-may-be-preload': 'a reading of 0 may hide preload: back the nut off and measure again',
  'mechanics.note.no-lock-place-in-band': 'no lock place near the middle brings the end play into the band',
  'mechanics.note.solid-has-no-bore':
    'the inner part is solid and has no bore; the stress is {{stress_Pa}} Pa everywhere in it',
  'mechanics.note.press-needs-length-friction':
    'press force and torque need the length of the fit and the friction',
  'mechanics.note.temperature-needs-start':
    'without the temperature at the start there is no end temperature',
  'mechanics.note.too-hot-for-bearing':
    'above {{limit_C}} degC: too hot for an ordinary bearing ring (common practice, no source)',
  'mechanics.note.no-outside-load': 'without an outside load and a stiffness ratio there is no loaded stress',
  'mechanics.note.no-separation-load':
    'without a stiffness ratio, or with one of 1, there is no load at which the joint opens',
  'mechanics.note.joint-opens': 'the joint opens: the bolt carries the whole outside load',
  'mechanics.note.above-proof': 'the stress is above the proof strength',
  'mechanics.note.slip-torque-needs-radius': 'without the radius of the bolt circle there is no slip torque',
  'mechanics.note.no-friction-grip':
    'without preload and friction the joint holds nothing, so its use does not exist',
  'mechanics.note.overdamped': 'at or above critical damping nothing swings, so there is no damped frequency',
  'mechanics.note.response-needs-frequency': 'without a frequency there is no forced response',
  'mechanics.note.amplitude-needs-force': 'without a force there is no amplitude',
  'mechanics.note.undamped-resonance':
    'at resonance without damping the swing has no limit, so the response does not exist',
  'mechanics.note.no-soil': 'without soil stiffness and damping the drum hangs free, so there is no contact',
  'mechanics.note.contact-lost':
    'the drum lifts off the soil: the linear model does not hold, its numbers only show that',
  'mechanics.note.no-motion': 'the drum does not move, so phase and half-frequency share do not exist',
  'mechanics.note.does-not-repeat':
    'the motion does not repeat within four turns of the exciter, so there is no number of turns',
  'mechanics.expected.within-steps':
    'stiffness, damping, masses and frequency that need no more than {{steps}} steps in time',
  'mechanics.note.standing': 'at standstill all blows fall on one place, so blows a metre do not exist',
  'mechanics.note.volume-needs-lift': 'without the thickness of the layer there is no volume',
  'mechanics.note.y-has-no-say': 'a line or strip is endless along y, so y_m changes nothing',
  'mechanics.note.speed-needs-flow': 'without flow or speed there is no power',
  'mechanics.note.no-load-transfer': 'the weight that moves to the lower axle on a grade is left out',
  'mechanics.note.high-range-displaces-more':
    '{{end}}: in high range the motor should displace less than in low range, and here it displaces more',
  'mechanics.note.two-legs-count': 'of {{legs}} legs only 2 count, since a stiff load may hang on two',
  'mechanics.note.use-hoist': 'too heavy for one person in this posture: use a hoist, or change the posture',
  'mechanics.note.brine-sources-part':
    'above 25 % the sources part: at 30 % they give freezing points from -55 to -41 degC',
  'mechanics.note.brine-frozen':
    'the brine freezes at {{freezing_C}} degC, so there is no density of the liquid',
  'mechanics.note.mass-needs-density': 'without a density there is no mass',
  'mechanics.note.gaps-still-apart': 'the gaps still differ by {{spread_m}} m, more than allowed',

  'quiz.expected.row-length': 'as many answers in each row as in the first: {{items}}',
  'quiz.expected.zero-or-one': '0 or 1',
  'quiz.note.few-people': 'only {{people}} people: too few to judge an item by these figures',
  'quiz.note.no-reliability': 'a single item, or equal totals for all, have no KR-20',
  'quiz.note.no-correlation':
    'an item that all or none got right, or totals that are all equal, have no correlation',
} as const satisfies Readonly<Record<string, string>>;

export default calcMechanics;
