/** Drum, exciter and exciter case. */
const drum = {
  'part.drum-shell.name': 'Drum shell',
  'part.drum-shell.does':
    'The rolled steel skin that presses and shakes the soil. It carries the axle load on a line and passes every blow of the exciter into the ground.',
  'part.drum-shell.fails':
    'Wears thin and barrel-shaped on abrasive soil, dents on rock, and cracks beside the welds of the heads when it is run on hard ground.',
  'part.head-left.name': 'Left head',
  'part.head-left.does':
    'Closed disc welded into the shell on the drive side. Its eight hollow bosses carry the left isolators, through which the drive motor turns the drum.',
  'part.head-left.fails':
    'Fatigue cracks run from the weld at the shell or from a boss; oil weeping at the case weld is the first sign.',
  'part.head-right.name': 'Right head',
  'part.head-right.does':
    'Disc welded into the shell on the vibration side. Its machined bore locates the hub, and it carries the oil plugs of the exciter case.',
  'part.head-right.fails':
    'Cracks at the shell weld; the hub seat frets when the hub bolts have lost their preload.',
  'part.exciter-case.name': 'Exciter case',
  'part.exciter-case.does':
    'Tube welded between both heads. It is the oil sump of the exciter bearings and ties the heads together.',
  'part.exciter-case.fails':
    'Leaks at its welds into the drum; the exciter then runs dry while the level at the plug still seems right when the drum stands wrong.',
  'part.bulkhead.name': 'Bulkhead',
  'part.bulkhead.does':
    'Disc inside the exciter case that closes the oil space on the drive side behind the left bearing.',
  'part.bulkhead.fails': 'A cracked weld lets case oil out into the dry end of the tube.',
  'part.seat-ring-left.name': 'Left seat ring',
  'part.seat-ring-left.does':
    'Machined ring welded into the case. It holds the left bearing carrier on its axis and takes its bolts.',
  'part.seat-ring-left.fails': 'Bore worn by a carrier that has moved; the bearing then runs out of line.',
  'part.bearing-carrier-left.name': 'Left bearing carrier',
  'part.bearing-carrier-left.does':
    'Holds the outer ring of the left exciter bearing. It comes out with its bearing, pushed by three jacking screws.',
  'part.bearing-carrier-left.fails':
    'Bore worn oversize, so that the outer ring creeps; its O-ring hardens and lets oil past.',
  'part.bearing-carrier-right.name': 'Right bearing carrier',
  'part.bearing-carrier-right.does':
    'Holds the outer ring of the right exciter bearing inside the hub, and in its nose the seal that keeps exciter oil from the wheel bearings.',
  'part.bearing-carrier-right.fails':
    'Bore worn oversize by a creeping ring; the nose seal lets exciter oil wash the grease out of the wheel bearings.',
  'part.exciter-bearing.name': 'Exciter bearing',
  'part.exciter-bearing.does':
    'Double-row spherical roller bearing made for vibration: brass cage, large clearance. It carries half the centrifugal force, which turns with the shaft.',
  'part.exciter-bearing.fails':
    'The outer ring creeps when its fit is lost; rollers pit when the oil is old, low or full of wear metal. Heat at the head and a rumble at run-down are the signs.',
  'part.exciter-housing.name': 'Exciter housing',
  'part.exciter-housing.does':
    'The shaft that shakes the drum: a closed round chamber off its axis, part filled with steel shot, with a baffle inside. Spun one way the shot gathers on the heavy side, spun the other the baffle holds half of it back.',
  'part.exciter-housing.fails':
    'A cracked chamber weld or a lost plug spills shot into the case; journals wear under a loose inner ring. Low that shakes as hard as high points to a broken baffle.',
  'part.shot.name': 'Shot',
  'part.shot.does':
    'Loose hardened steel balls. Where they settle decides the unbalance: far out on the heavy side in HIGH, half behind the baffle in LOW.',
  'part.shot.fails':
    'Balls wear to dust over years of tumbling at each start and stop; rust cakes them when damp gets in, and both directions then feel alike.',
  'part.shot-plug.name': 'Shot plug',
  'part.shot-plug.does':
    'Closes the filling hole of the shot chamber; sealed and staked so that it cannot turn.',
  'part.shot-plug.fails': 'Works loose when the staking was left out; shot in the case oil is the sign.',
  'part.oil-drain-tube.name': 'Drain tube',
  'part.oil-drain-tube.does':
    'Leads oil from the lowest place of the case to the drain plug in the right head.',
  'part.oil-drain-tube.fails': 'Cracks at the weld to the head and drips.',
  'part.oil-level-tube.name': 'Level tube',
  'part.oil-level-tube.does': 'Standpipe whose mouth sets the oil level when the index mark stands on top.',
  'part.oil-level-tube.fails': 'Blocked by sludge it shows oil where there is none.',
  'part.oil-fill-tube.name': 'Fill tube',
  'part.oil-fill-tube.does': 'Leads fresh oil from the plug at the top into the case.',
  'part.oil-fill-tube.fails': 'Cracks at the weld to the head.',
  'part.drain-plug.name': 'Magnetic drain plug',
  'part.drain-plug.does':
    'Closes the drain, and catches steel wear on its magnet: what hangs on it tells how the bearings are.',
  'part.drain-plug.fails':
    'A worn sealing face drips. Flakes instead of paste on the magnet mean a bearing is breaking up.',
  'part.level-plug.name': 'Level plug',
  'part.level-plug.does': 'Oil should just stand at this hole with the index mark on top.',
  'part.level-plug.fails': 'Read with the drum in the wrong place it gives a wrong level.',
  'part.fill-plug.name': 'Fill plug',
  'part.fill-plug.does': 'Closes the filling hole of the exciter case.',
  'part.fill-plug.fails': 'A lost sealing ring lets oil out as mist while the drum turns.',
  'part.ballast-plug.name': 'Ballast plug',
  'part.ballast-plug.does': 'Closes a filling hole for liquid ballast in the drum; this machine runs dry.',
  'part.ballast-plug.fails': 'Rusts in; water behind it that nobody knows of freezes and bursts the weld.',
  'part.weld-bead.name': 'Weld bead',
  'part.weld-bead.does': 'Joins a head to the shell all round.',
  'part.weld-bead.fails': 'Fatigue cracks, most often from a start or stop of the weld.',
} as const;

export default drum;
