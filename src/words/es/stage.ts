/** Words of the stage: Spanish text, not yet reviewed by a native tradesperson. */
const stage = {
  'stage.label':
    'El tambor en 3-D. Las flechas lo giran, más y menos acercan y alejan, Enter encuadra la pieza elegida. Todo lo de aquí también se puede hacer desde las listas.',
  'stage.no-webgl':
    'Este navegador no puede dibujar en 3-D (sin WebGL 2). Las listas, los dibujos, los pasos y los números funcionan sin eso; para la escena, use un navegador más nuevo o active el dibujo por hardware en sus ajustes.',
} as const satisfies Readonly<Record<string, string>>;

export default stage;
