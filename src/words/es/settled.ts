/** The settled shot as simulated runs tell it: what the table does not know, and why the level value differs. Spanish text, not yet reviewed by a native tradesperson. */
const settled = {
  'settled.no-fit': 'la máquina no trae tabla de corridas simuladas',
  'settled.other-chamber': 'las corridas simuladas se hicieron en otra cámara',
  'settled.other-baffle':
    'las corridas simuladas se hicieron con otro deflector, o con el deflector en otro lugar',
  'settled.other-balls': 'las corridas simuladas se hicieron con otros balines',
  'settled.outside-fill': 'la tabla tiene llenados de {{low}} a {{high}}, y este es {{found}}',
  'settled.outside-time_s':
    'la tabla tiene tiempos hasta la velocidad plena de {{low}} s a {{high}} s, y este es {{found}} s',
  'settled.outside-friction': 'la tabla tiene fricción de {{low}} a {{high}}, y esta es {{found}}',
  'settled.outside-spin_up.kind': 'la tabla no tiene corridas de esta clase de arranque',
  'settled.no-level-radii':
    'los balines asentados no tienen superficie de nivel, así que no existen los radios de sus superficies',
  'settled.level-agrees':
    'el valor de nivel cae dentro de la banda: aquí los balines se asientan casi como un líquido',
  'settled.level-above':
    'el valor de nivel es mayor porque deja correr los balines hasta su nivel como un líquido; los balines reales se traban por fricción y quedan fijos como una capa delgada en la pared',
  'settled.level-below':
    'el valor de nivel es menor porque deja asentar los balines como un líquido; los balines reales quedan fijos donde están, más afuera que una superficie de nivel',
} as const satisfies Readonly<Record<string, string>>;

export default settled;
