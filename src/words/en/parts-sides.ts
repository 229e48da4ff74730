/** Vibration side (right) and drive side (left). */
const sides = {
  'part.hub.name': 'Hub',
  'part.hub.does':
    'Bolted into the right head, it turns with the drum on two wheel bearings and holds the exciter’s right bearing. Drum and frame meet here.',
  'part.hub.fails':
    'Its flange frets and the bolts shear when preload is lost; a cup that turns in its bore ruins it.',
  'part.spindle.name': 'Spindle',
  'part.spindle.does':
    'The standing axle of the vibration side. It shakes with the drum but does not turn; the coupling shaft runs through its bore.',
  'part.spindle.fails':
    'The bearing seats wear where a cone has turned; the thread is damaged by a nut hammered round.',
  'part.spindle-nut.name': 'Spindle nut',
  'part.spindle-nut.does': 'Sets the end play of the wheel bearings.',
  'part.spindle-nut.fails':
    'Backs off when its tongue was not bent over; the drum then walks from side to side.',
  'part.lock-washer.name': 'Lock washer',
  'part.lock-washer.does':
    'Its inner tongue sits in the spindle’s groove, an outer one is bent into the nut.',
  'part.lock-washer.fails': 'A tongue bent twice breaks: fit a new washer each time.',
  'part.wheel-bearing-inner.name': 'Inner wheel bearing',
  'part.wheel-bearing-inner.does':
    'Tapered roller bearing on the nut side. Its cup is tight in the turning hub, its cone slides on the standing spindle, so that the nut can set end play.',
  'part.wheel-bearing-inner.fails':
    'Runs hot when set too tight, brinells when loose; exciter oil past the seal washes its grease out.',
  'part.wheel-bearing-outer.name': 'Outer wheel bearing',
  'part.wheel-bearing-outer.does':
    'Tapered roller bearing at the spindle’s shoulder; it carries most of the right side’s load.',
  'part.wheel-bearing-outer.fails':
    'Dirt past the hub seal pits its rollers; a growl in slow travel without vibration gives it away.',
  'part.hub-seal.name': 'Hub seal',
  'part.hub-seal.does': 'Lip seal with a dirt lip: keeps grease in and mud out of the wheel bearings.',
  'part.hub-seal.fails':
    'The lip hardens or wears a groove in the spindle; grease flung on the bracket is the sign.',
  'part.nose-seal.name': 'Nose seal',
  'part.nose-seal.does':
    'Lip seal in the nose of the right carrier: keeps exciter oil from the wheel bearings.',
  'part.nose-seal.fails': 'When it leaks, case oil falls and thin oil runs out of the hub seal.',
  'part.hub-o-ring.name': 'Hub O-ring',
  'part.hub-o-ring.does': 'Seals the hub’s spigot in the right head.',
  'part.hub-o-ring.fails': 'Pinched in fitting or hardened by heat: oil weeps at the hub flange.',
  'part.carrier-o-ring.name': 'Carrier O-ring',
  'part.carrier-o-ring.does': 'Seals a bearing carrier in its bore.',
  'part.carrier-o-ring.fails': 'Nicked on the edge of the bore when the carrier went in dry.',
  'part.motor-o-ring.name': 'Motor O-ring',
  'part.motor-o-ring.does': 'Seals the exciter motor’s pilot in the spindle.',
  'part.motor-o-ring.fails': 'Hardened by heat: dirt finds its way to the splines.',
  'part.mounting-plate.name': 'Mounting plate',
  'part.mounting-plate.does':
    'Isolator mounting plate: bolted to the standing spindle, it carries the vibrating side of the right isolators. It covers the hub bolts.',
  'part.mounting-plate.fails':
    'Cracks between its bolt circles when an isolator has torn and the others pull unevenly.',
  'part.isolator-right.name': 'Right isolator',
  'part.isolator-right.does':
    'Rubber block between bonded steel plates. It carries the frame on the drum in shear and lets the drum shake without shaking the frame.',
  'part.isolator-right.fails':
    'Cracks from the edge of the bond, then tears; a gap that is uneven by more than 3 mm, or a frame that shakes, shows it.',
  'part.isolator-left.name': 'Left isolator',
  'part.isolator-left.does':
    'Rubber block that turns with the drum and passes the full drive torque. Its sag reverses at every turn.',
  'part.isolator-left.fails':
    'Winds up and tears at the bond when the drum is driven hard against a load; oil and heat soften it.',
  'part.shim-pack.name': 'Shim pack',
  'part.shim-pack.does': 'Thin plates that take up the gap at an isolator, so that each is squeezed alike.',
  'part.shim-pack.fails': 'Mixed up or left out: one isolator then carries its neighbours’ load.',
  'part.bracket.name': 'Right bracket',
  'part.bracket.does':
    'Plate with slotted holes between the right isolators and the side plate: it is moved to set the drum square in the frame.',
  'part.bracket.fails': 'Bolts slip in their slots and the drum runs out of square; cracks start at a slot.',
  'part.exciter-motor.name': 'Exciter motor',
  'part.exciter-motor.does':
    'Axial-piston motor that spins the exciter; turned the other way by the pump, it gives the other amplitude.',
  'part.exciter-motor.fails':
    'Case drain flow rises as pistons wear and speed falls; a blocked drain blows its shaft seal.',
  'part.guard.name': 'Motor guard',
  'part.guard.does':
    'Ring that keeps stones and banks off the exciter motor and its hoses; it stands on the frame side.',
  'part.guard.fails': 'Bent in against the hoses, it chafes them through.',
  'part.guard-standoff.name': 'Guard standoff',
  'part.guard-standoff.does': 'Carries the motor guard clear of the bracket.',
  'part.guard-standoff.fails': 'Cracks at its foot from vibration when the guard has been struck.',
  'part.coupling-shaft.name': 'Coupling shaft',
  'part.coupling-shaft.does':
    'Quill through the spindle’s bore: a sleeve on the motor’s spline, a male end in the exciter. Its splines take up the motion of the drum against the motor.',
  'part.coupling-shaft.fails': 'Dry splines wear to points and let go: the motor screams and nothing shakes.',
  'part.drive-plate.name': 'Drive plate',
  'part.drive-plate.does':
    'Takes the drive motor’s torque to the left isolators. It turns with the drum but does not shake.',
  'part.drive-plate.fails': 'Bolt holes ovalled by loose output bolts; cracks at the isolator circle.',
  'part.drive-motor.name': 'Drive motor',
  'part.drive-motor.does':
    'Low-speed radial-piston motor in two displacements that drives the drum without a gearbox. Its spring brake is the drum’s parking brake.',
  'part.drive-motor.fails':
    'Slow and hot when pistons leak into the case; creep on a slope points to a worn brake.',
  'part.motor-mount-ring.name': 'Motor mount ring',
  'part.motor-mount-ring.does':
    'Carries the drive motor on the left side plate; its windows let a socket reach the output bolts.',
  'part.motor-mount-ring.fails': 'Joint slips and frets when its bolts were reused.',
  'part.window-plug.name': 'Window plug',
  'part.window-plug.does': 'Closes a window of the motor mount ring against mud.',
  'part.window-plug.fails': 'Lost: mud packs round the output bolts.',
  'part.hose-exciter-pressure.name': 'Exciter motor pressure hose',
  'part.hose-exciter-pressure.does':
    'Brings oil from the pump to the exciter motor; with the pump reversed it is the return, and the exciter spins the other way.',
  'part.hose-exciter-pressure.fails':
    'Chafes where its slack loop touches the guard, or bursts at the fitting; a wet fitting is the warning.',
  'part.hose-exciter-return.name': 'Exciter motor return hose',
  'part.hose-exciter-return.does':
    'Takes the oil back from the exciter motor, with a slack loop for the shaking of the drum.',
  'part.hose-exciter-return.fails': 'Kinks when it was fitted twisted, and works loose at the fitting.',
  'part.hose-exciter-drain.name': 'Exciter motor drain hose',
  'part.hose-exciter-drain.does': 'Leads leakage oil from the exciter motor’s case to the tank.',
  'part.hose-exciter-drain.fails': 'Kinked or blocked, it lets case pressure blow the shaft seal.',
  'part.hose-drive-a.name': 'Drive motor hose A',
  'part.hose-drive-a.does':
    'One of the two power lines of the drive motor: pressure one way, return the other.',
  'part.hose-drive-a.fails': 'Chafes on the side plate, or bursts at the fitting under a hard pull.',
  'part.hose-drive-b.name': 'Drive motor hose B',
  'part.hose-drive-b.does': 'The other power line of the drive motor.',
  'part.hose-drive-b.fails': 'Chafes on the side plate, or bursts at the fitting under a hard pull.',
  'part.hose-drive-drain.name': 'Drive motor drain hose',
  'part.hose-drive-drain.does':
    'Leads leakage oil from the drive motor’s case to the tank; how much comes tells how worn the motor is.',
  'part.hose-drive-drain.fails': 'Kinked or blocked, it lets case pressure blow the shaft seal.',
  'part.hose-drive-brake.name': 'Brake hose',
  'part.hose-drive-brake.does': 'Brings the pressure that releases the spring brake in the drive motor.',
  'part.hose-drive-brake.fails': 'When it bursts the brake goes on by itself.',
  'part.hose-block.name': 'Hose block',
  'part.hose-block.does': 'Fixed block on the frame from which the slack loops of the hoses start.',
  'part.hose-block.fails': 'A loose block lets hard pipe and hose work against each other until one cracks.',
} as const;

export default sides;
