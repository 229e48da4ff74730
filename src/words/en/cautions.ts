/** Cautions that machine files name, one message each: the hazard, what it does, how to avoid it. */
const cautions = {
  'caution.lock-out':
    'The machine can start or move. Stop the engine, take the key, lock out and tag out before hands go in.',
  'caution.articulation-lock':
    'The frames can fold together and crush you. Fit the articulation lock bar and its pins first.',
  'caution.chock-drum': 'The roller can run away. Chock the drum and the wheels on both sides, fore and aft.',
  'caution.crib-side-plates':
    'The frame rests on the drum through the isolators. Crib under both side plates before any isolator or bracket comes loose; never trust a jack alone.',
  'caution.relieve-pressure':
    'Oil under pressure can cut through skin and inject itself. Engine off, work every lever, relieve the pressure, then open a line slowly with eyes and hands clear.',
  'caution.hot-oil': 'Oil from work can scald. Let it cool, and drain it into a pan with gloves on.',
  'caution.lift-heavy':
    'A falling load can kill. Use rated slings and eyes in their threads, stand clear, and lift only what the hoist is marked for.',
  'caution.strap-exciter':
    'The exciter’s heavy side swings down when it is free and can crush a hand. Strap it to the shaft line and turn it heavy side down first.',
  'caution.hold-drum':
    'Taking off the drive motor takes away the drum’s only brake. Hold the drum with chocks before its bolts are loosened.',
  'caution.spring-brake':
    'The brake inside the motor is held on by strong springs. Never open its cover without the cage tool made for it.',
  'caution.spring-load':
    'Parts under spring load can fly. Let the load off in steps, evenly, and keep out of line.',
  'caution.never-weld-closed':
    'A closed housing or drum can burst when it is heated. Open, drain, clean and vent it before any welding or cutting.',
  'caution.earth-clamp':
    'Current through a bearing ruins it. Put the earth clamp at the weld, so that no current passes a bearing.',
  'caution.puller-guard':
    'A puller or a ring can burst under load. Cover it with a guard and keep out of line.',
  'caution.never-hammer-rings':
    'Hardened rings splinter when struck. Press or pull on the ring that is tight; never hammer it.',
  'caution.hot-parts': 'Heated parts burn. Mark them hot, and handle them with dry heat gloves.',
  'caution.guide-bar':
    'Drawing the hub leaves the right end of the exciter without support and it drops. Carry it with the guide bar through the spindle bore.',
  'caution.no-concrete':
    'Vibrating on concrete or on the bench overloads bearings, isolators and frame. Vibrate on soil or on the test tyres only.',
  'caution.soft-ground-only':
    'Pads on a hard surface break their flange bolts and shake the frame. Use the pad shells on soft, cohesive soil only.',
  'caution.keep-clean':
    'Grit in the case ruins its bearings. Clean round the joint first, and cover every opening at once.',
  'caution.cap-ports': 'Dirt in a hydraulic port ruins a motor. Cap hoses and ports the moment they are off.',
  'caution.mark-position': 'Mark how the parts stood to each other, so that they go back the same way.',
  'caution.keep-shims': 'Keep each shim pack with its isolator; mixed packs load the isolators unevenly.',
  'caution.seal-lip': 'A nicked seal lip leaks. Cover threads and splines before it slides over them.',
} as const satisfies Readonly<Record<string, string>>;

export default cautions;
