/** Words of the views of the stage: who moves with whom, what shakes, the paths of load and torque, oil and grease. */
const views = {
  'views.open': 'Show',
  'views.choose': 'Show on the stage',
  'views.none': 'The machine as it is',
  'views.moves': 'Who moves with whom',
  'views.shakes': 'What shakes',
  'views.load': 'Load path',
  'views.torque': 'Torque path',
  'views.wetted': 'What the oil wets',
  'views.legend': 'Legend: {{name}}',
  'views.close': 'Close this view',
  'views.fold': 'Fold the legend',
  'views.unfold': 'Show the legend',
  'views.loading': 'Getting the legend…',
  'views.said.on': 'The stage shows: {{name}}. Its legend says the same in words.',
  'views.said.off': 'The stage shows the machine as it is.',
  'views.busy': 'The stage is showing something else now. This view comes back after that.',

  'views.parts_one': '{{count}} part',
  'views.parts': '{{count}} parts',
  'views.pattern.rising': 'stripes rising to the right',
  'views.pattern.falling': 'stripes falling to the right',
  'views.pattern.dots': 'dots',
  'views.pattern.grid': 'grid',
  'views.pattern.level': 'level lines',
  'views.pattern.upright': 'upright lines',
  'views.pattern.plain': 'plain grey',

  'views.moves.drum': 'Drum',
  'views.moves.drum.how':
    'Rolls with the drum. {{shaking}} of its parts shake; the drive plate, beyond its isolators, must not.',
  'views.moves.exciter': 'Exciter',
  'views.moves.exciter.how': 'Spins with the exciter shaft, and shakes with the drum.',
  'views.moves.spindle': 'Spindle',
  'views.moves.spindle.how': 'Shakes with the drum but does not turn.',
  'views.moves.frame': 'Front frame',
  'views.moves.frame.how': 'Stands still: hangs on the isolators and must not shake.',
  'views.moves.rear-frame': 'Rear frame',
  'views.moves.rear-frame.how': 'Stands still: follows the front frame through the hitch.',
  'views.moves.meet': 'Where two of them meet',
  'views.moves.pair': '{{first}} and {{second}}',
  'views.moves.note':
    'Found from the joints of the machine. A bearing, a motor or rubber turns or gives within itself.',

  'views.shakes.inside': 'Inside the isolators',
  'views.shakes.inside.how': 'Shakes as one body.',
  'views.shakes.isolators': 'Isolators',
  'views.shakes.isolators.how': 'Rubber: one side shakes, the other must not.',
  'views.shakes.outside': 'Outside the isolators',
  'views.shakes.outside.how': 'Must not shake.',
  'views.shakes.scale': 'Motion drawn {{times}} times larger',
  'views.shakes.drum': 'Drum, true amplitude',
  'views.shakes.frame': 'Frame, true amplitude',
  'views.shakes.speed': 'Spin {{direction}}',
  'views.shakes.ground': 'On ground of',
  'views.shakes.ground-note':
    'Ground as set in the study of drum and frame. The same scale holds for HIGH and LOW.',
  'views.shakes.ends':
    'Motion is reduced: short dashes are the highest place, long dashes with dots the lowest.',
  'views.shakes.unknown':
    'The unbalance is not known for what is set on the exciter, so nothing is drawn moving.',

  'views.load.left': 'Over the drive side (left)',
  'views.load.right': 'Over the vibration side (right)',
  'views.load.only': 'To the ground',
  'views.load.frame': 'Weight of the frame on this side',
  'views.load.each': 'On each of {{count}} isolators',
  'views.load.ground': 'Drum on the ground, with what shakes',
  'views.load.ground-end': 'Ground',
  'views.load.note':
    'Fewest joints from the hitch to the ground. Weights by the rule for a beam on two supports; the machine stands still and level.',
  'views.torque.way': 'From motor to ground',
  'views.torque.most': 'Torque at relief pressure',
  'views.torque.relief': 'Relief pressure, low range',
  'views.torque.share': '{{name}}: force along the circle on each of {{count}}',
  'views.torque.note':
    'A bearing or a running fit passes no torque: the way crosses only what is bolted, welded, bonded, splined or tight. Training values.',
  'views.path.broken': 'No way: a part that carries here is hidden or taken off.',
  'views.path.arrow': 'Arrows run the way of the force, from the first part to the last.',
  'views.path.several': '{{name}} × {{count}}',

  'views.wetted.searching': 'Looking for what the oil touches…',
  'views.wetted.none': 'The machine file names no fluid.',
  'views.wetted.volume': 'Fill',
  'views.wetted.note':
    'Found by cutting the solids along the axis: what looks into the same closed space is wetted by splash, whatever the level. Ghosted parts stay dry.',
  'views.wetted.what': 'Wetted parts',
} as const satisfies Readonly<Record<string, string>>;

export default views;
