/** Words of the stage. */
const stage = {
  'stage.label':
    'The drum in 3-D. Arrow keys turn it, plus and minus zoom, Enter frames the selected part. Everything here can also be done from the lists.',
  'stage.no-webgl':
    'This browser cannot draw in 3-D (no WebGL 2). Lists, drawings, steps and numbers work without it; for the stage use a newer browser or turn on hardware drawing in its settings.',
} as const satisfies Readonly<Record<string, string>>;

export default stage;
