/**
 * What the command line `calc` says, with {{name}} standing for a parameter: the Spanish text, not yet reviewed by a native
 * tradesperson. Notes that the mechanics return (`mechanics.*`) are here too: panels show the same ones.
 */
import calcMechanics from './calc-mechanics';

const calc = {
  ...calcMechanics,
  'calc.fault.line': '{{path}}: se esperaba {{expected}}, se recibió {{found}}',
  'calc.fault.unknown-name': 'no existe el cálculo {{name}}; se conocen: {{names}}',
  'calc.fault.too-many-words': 'basta un nombre, lo que sigue no se entendió: {{words}}',
  'calc.fault.no-input': '{{name}} lee un objeto JSON de la entrada estándar, y no había ninguno',
  'calc.fault.not-json': '{{name}} lee un objeto JSON de la entrada estándar, y esto no es JSON: {{why}}',
  'calc.fault.guard': '{{name}} no se puede calcular con esta entrada: {{why}}',

  'calc.fault.model': 'el nombre de una máquina de models/, o una carpeta o un archivo de una',
  'calc.fault.unit': 'el id de una unidad de la máquina',

  'calc.expected.type': 'un valor del tipo {{type}}',
  'calc.expected.above': 'un número mayor que {{limit}}',
  'calc.expected.below': 'un número menor que {{limit}}',
  'calc.expected.at-least': 'al menos {{limit}}',
  'calc.expected.at-most': 'como máximo {{limit}}',
  'calc.expected.at-least-entries': 'al menos {{limit}} entradas',
  'calc.expected.at-most-entries': 'como máximo {{limit}} entradas',
  'calc.expected.one-of': 'uno de {{words}}',
  'calc.expected.either': 'uno de estos: {{options}}',
  'calc.expected.other': '{{what}}',

  'calc.note.unknown-key': 'la clave de entrada {{key}} no se conoce aquí y se pasó por alto',
  'calc.note.not-finite':
    '{{key}} es demasiado grande para un número (o no existe con esta entrada) y se da como null',

  'calc.centrifugal.answers': '¿Cuánto vale la fuerza de una masa que gira fuera del centro?',
  'calc.segment.answers':
    '¿Cuánto mide la parte de un círculo que corta una cuerda, y dónde está su centroide?',

  'calc.blocking.answers':
    '¿Qué impide que una unidad de la máquina salga en cada dirección, a qué distancia, y qué uniones la sujetan?',
  'calc.diagnose.answers': 'Qué fallas concuerdan con lo medido, por qué, y qué medir después.',
  'calc.teardown.answers':
    '¿En qué orden se desarma una máquina, entera o solo hasta liberar una unidad, y qué hay que sostener?',

  'calc.unbalance.answers':
    '¿Cuánto es el desequilibrio de un excitador con balines sueltos en un sentido de giro, y qué hace vibrar?',
  'calc.unbalance.surface-assumed':
    'no se dio surface: los balines se toman como asentados con superficie a nivel, sin fricción',
  'calc.unbalance.fit-unused':
    'no hay guardado un ajuste de balines asentados para {{fit}}: se toman como asentados con superficie a nivel',
  'calc.unbalance.fit-ignored': 'surface es "level", así que no se usa el ajuste {{fit}}',
  'calc.unbalance.fit-needed':
    'el nombre de un modelo con ajuste de balines asentados guardado, o un archivo de ajuste, para surface "settled"',
  'calc.unbalance.fit-stored': 'un modelo con ajuste de balines asentados guardado, o un archivo de ajuste',
  'calc.unbalance.settled-assumed':
    'no se dio surface: los balines se toman como asentados según las corridas simuladas de {{fit}}',
  'calc.unbalance.settled-setting':
    'asentados con fricción {{friction}}, balines de {{ball_diameter_m}} m y un arranque {{kind}} hasta {{frequency_Hz}} Hz en {{time_s}} s; lo que no se dio es lo propio del modelo',
  'calc.unbalance.not-known':
    'no se conoce por la tabla de simulación: no se extrapola nada; al lado se da la superficie a nivel, que no la sustituye',
  'mechanics.unbalance.no-leg':
    'no hay bolsillo, porque ninguna pata del deflector llega a la pared: capacidad, radio de derrame y superficie del bolsillo no existen',
  'mechanics.unbalance.never-separate':
    'no hay bolsillo, porque la pata 1 no separa nada del lado opuesto en su lado de bolsillo: capacidad, radio de derrame y superficie del bolsillo no existen',
  'mechanics.unbalance.closed':
    'el acero cierra el bolsillo todo alrededor: nunca derrama, y en realidad ningún balín puede llegar a él',
  'mechanics.unbalance.no-shot':
    'no hay balines: su fracción en el bolsillo, sus superficies y su ángulo no existen',
  'mechanics.unbalance.pocket-empty': 'el bolsillo no tiene balines, así que su superficie no existe',
  'mechanics.unbalance.main-empty':
    'todos los balines están en el bolsillo, así que no existe una superficie fuera de él',
  'mechanics.unbalance.main-full':
    'todo el espacio fuera del bolsillo está lleno; el resto de los balines se toma como en el bolsillo',
  'mechanics.unbalance.overfull':
    'los balines necesitan {{wanted_m2}} m2 de sección y la cámara tiene {{free_m2}} m2: lo que no cabe se deja fuera',
  'mechanics.unbalance.runs-over':
    'la superficie fuera del bolsillo queda por dentro del radio de derrame: en realidad algunos balines pasarían al bolsillo',
  'mechanics.unbalance.shot-balanced':
    'los balines están equilibrados respecto al eje, así que su ángulo no existe',
  'mechanics.unbalance.balanced': 'todo está equilibrado respecto al eje, así que el ángulo no existe',
  'mechanics.unbalance.no-vibrating-mass':
    'no se dio la masa que vibra, así que la amplitud nominal no existe',

  'calc.ring-fit.answers': '¿Con cuánto juego o apriete queda el anillo de un rodamiento en su asiento?',
  'calc.tight-ring.answers':
    '¿Qué anillo de un rodamiento necesita el asiento con apriete, según lo que gira?',
  'calc.isolator-set.answers': '¿Cuánto se parecen los aisladores de un juego, y cuánto lleva el más rígido?',
  'calc.rigging.answers': '¿Qué soportan aún un cáncamo y un grillete cuando el tiro no va en línea?',
  'calc.hang.answers': '¿Cómo cuelga una carga cuando el gancho no está sobre su centro de masa?',
  'calc.scraper-gap.answers':
    '¿Cuánto hay que mover cada extremo de las barras raspadoras, y cuánto se gastaron las cuchillas?',
  'calc.amplitude-check.answers': '¿Concuerdan la amplitud y las vibraciones medidas con lo esperado?',
  'calc.bearing-damage.answers': '¿Cómo se llaman los tipos de daño de rodamientos, y cómo se ve cada uno?',
  'calc.job-sheet.answers': '¿Qué dice la hoja de un trabajo: pasos, izajes, apoyos, números, campos?',
  'calc.fault.job': 'un trabajo de esta máquina',
} as const satisfies Readonly<Record<string, string>>;

export default calc;
