/** Words of the views of the stage in Spanish; not yet reviewed by a native tradesperson. */
const views = {
  'views.open': 'Mostrar',
  'views.choose': 'Mostrar en la escena',
  'views.none': 'La máquina tal como está',
  'views.moves': 'Qué se mueve con qué',
  'views.shakes': 'Qué vibra',
  'views.load': 'Camino de la carga',
  'views.torque': 'Camino del par',
  'views.wetted': 'Qué moja el aceite',
  'views.legend': 'Leyenda: {{name}}',
  'views.close': 'Cerrar esta vista',
  'views.fold': 'Plegar la leyenda',
  'views.unfold': 'Ver la leyenda',
  'views.loading': 'Abriendo la leyenda…',
  'views.said.on': 'La escena muestra: {{name}}. La leyenda dice lo mismo con palabras.',
  'views.said.off': 'La escena muestra la máquina tal como está.',
  'views.busy': 'Ahora la escena muestra otra cosa. Después vuelve esta vista.',

  'views.parts_one': '{{count}} pieza',
  'views.parts': '{{count}} piezas',
  'views.pattern.rising': 'rayas que suben a la derecha',
  'views.pattern.falling': 'rayas que bajan a la derecha',
  'views.pattern.dots': 'puntos',
  'views.pattern.grid': 'cuadrícula',
  'views.pattern.level': 'líneas horizontales',
  'views.pattern.upright': 'líneas verticales',
  'views.pattern.plain': 'gris liso',

  'views.moves.drum': 'Tambor',
  'views.moves.drum.how':
    'Rueda con el tambor. {{shaking}} de sus piezas vibran; la placa de arrastre, tras sus aisladores, no debe.',
  'views.moves.exciter': 'Excitador',
  'views.moves.exciter.how': 'Gira con el eje del excitador y vibra con el tambor.',
  'views.moves.spindle': 'Punta de eje',
  'views.moves.spindle.how': 'Vibra con el tambor, pero no gira.',
  'views.moves.frame': 'Bastidor delantero',
  'views.moves.frame.how': 'Está quieto: cuelga de los aisladores y no debe vibrar.',
  'views.moves.rear-frame': 'Bastidor trasero',
  'views.moves.rear-frame.how': 'Está quieto: sigue al bastidor delantero por el enganche.',
  'views.moves.meet': 'Dónde se encuentran dos de ellos',
  'views.moves.pair': '{{first}} y {{second}}',
  'views.moves.note':
    'Según las uniones de la máquina. Un rodamiento, un motor o la goma gira o cede por dentro.',

  'views.shakes.inside': 'Dentro de los aisladores',
  'views.shakes.inside.how': 'Vibra como un solo cuerpo.',
  'views.shakes.isolators': 'Aisladores',
  'views.shakes.isolators.how': 'Goma: un lado vibra, el otro no debe.',
  'views.shakes.outside': 'Fuera de los aisladores',
  'views.shakes.outside.how': 'No debe vibrar.',
  'views.shakes.scale': 'Movimiento dibujado {{times}} veces mayor',
  'views.shakes.drum': 'Tambor, amplitud real',
  'views.shakes.frame': 'Bastidor, amplitud real',
  'views.shakes.speed': 'Giro {{direction}}',
  'views.shakes.ground': 'Sobre suelo de',
  'views.shakes.ground-note':
    'Suelo según el estudio de tambor y bastidor. La misma escala vale para ALTA y BAJA.',
  'views.shakes.ends':
    'Movimiento reducido: los trazos cortos son el punto más alto; los largos con puntos, el más bajo.',
  'views.shakes.unknown':
    'No se conoce el desequilibrio con los ajustes del excitador; por eso nada se mueve.',

  'views.load.left': 'Por el lado de traslación (izquierdo)',
  'views.load.right': 'Por el lado de vibración (derecho)',
  'views.load.only': 'Hasta el suelo',
  'views.load.frame': 'Peso del bastidor en este lado',
  'views.load.each': 'En cada uno de {{count}} aisladores',
  'views.load.ground': 'Tambor sobre el suelo, con lo que vibra',
  'views.load.ground-end': 'Suelo',
  'views.load.note':
    'Las menos uniones del enganche al suelo. Pesos por la regla de la viga con dos apoyos; la máquina está quieta y nivelada.',
  'views.torque.way': 'Del motor al suelo',
  'views.torque.most': 'Par a la presión de alivio',
  'views.torque.relief': 'Presión de alivio, marcha lenta',
  'views.torque.share': '{{name}}: fuerza a lo largo del círculo en cada una de {{count}} piezas',
  'views.torque.note':
    'Un rodamiento o un ajuste con juego no transmite par: el camino solo pasa por lo atornillado, soldado, pegado, estriado o con apriete. Valores de práctica.',
  'views.path.broken': 'No hay camino: una pieza que carga aquí está oculta o retirada.',
  'views.path.arrow': 'Las flechas siguen la fuerza, de la primera pieza a la última.',
  'views.path.several': '{{name}} × {{count}}',

  'views.wetted.searching': 'Buscando lo que toca el aceite…',
  'views.wetted.none': 'El archivo de la máquina no nombra ningún fluido.',
  'views.wetted.volume': 'Llenado',
  'views.wetted.note':
    'Según cortes de los sólidos a lo largo del eje: lo que da al mismo espacio cerrado se moja con la salpicadura, sea cual sea el nivel. Las piezas fantasma quedan secas.',
  'views.wetted.what': 'Piezas mojadas',
} as const satisfies Readonly<Record<string, string>>;

export default views;
