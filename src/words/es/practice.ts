/**
 * Practice by doing (why a part cannot move yet, notes, hints, kept runs): the Spanish text, not yet reviewed by a native
 * tradesperson.
 */
const practice = {
  'practice.why.covered': 'Todavía no. {{part}}: le estorba el paso {{by}}.',
  'practice.why.clamped': 'Todavía no. {{part}}: lo que aún lo sujeta es {{by}}.',
  'practice.why.thread': 'Todavía no. {{part}}: aún enroscado con {{by}}.',
  'practice.why.hose': 'Todavía no. {{part}}: aún tiene conectado {{by}}.',
  'practice.why.drain': 'Todavía no. {{part}}: primero hay que drenar el aceite que hay detrás: {{by}}.',
  'practice.why.tool': 'Todavía no. {{part}}: ninguna herramienta llega, lo impide {{by}}.',
  'practice.why.tight': 'Todavía no. {{part}}: asiento con apriete con {{by}}.',
  'practice.why.no-way': '{{part}}: desde aquí no hay camino.',
  'practice.why.with': '{{part}}: sale junto con {{lead}}. Lo que debe salir antes: {{by}}.',
  'practice.why.stays': '{{part}}: se queda; todo lo demás se retira de ahí.',
  'practice.why.off': '{{part}}: ya está fuera.',
  'practice.why.in': '{{part}}: ya está en su lugar.',
  'practice.why.way-shut': 'Demasiado tarde. {{part}}: le cierra el camino {{by}}.',
  'practice.why.before': 'Todavía no. Lo que debe entrar antes de {{part}}: {{by}}.',
  'practice.why.no-seat': 'Todavía no. {{part}}: falta donde asienta: {{by}}.',
  'practice.note.together': '{{part}}: se lleva consigo {{members}}; se separan en el banco.',
  'practice.note.pressed': '{{part}}: asiento con apriete en {{other}}; tire del anillo que va con apriete.',
  'practice.note.onto': '{{part}}: se monta en el banco sobre {{other}}.',
  'practice.hint.region': 'Busque {{region}}.',
  'practice.hint.kind': 'Busque {{kind}}.',
  'practice.hint.part': 'Es: {{part}}.',
  'practice.region.bench': 'en el banco',
  'practice.region.right': 'en el lado derecho',
  'practice.region.left': 'en el lado izquierdo',
  'practice.region.front': 'delante',
  'practice.region.rear': 'detrás',
  'practice.region.middle': 'en el medio',
  'practice.kind.hose': 'una manguera',
  'practice.kind.fastener': 'un juego de pernos o tornillos',
  'practice.kind.seal': 'un sello',
  'practice.kind.heavy': 'una pieza que necesita el polipasto',
  'practice.kind.part': 'una pieza que levanta una persona',
  'practice.saved.schema': 'una práctica guardada por esta versión (se encontró {{found}})',
  'practice.saved.machine': 'una práctica en esta máquina (se encontró {{found}})',
  'practice.saved.model':
    'una práctica en la máquina como está ahora; sus archivos han cambiado desde entonces',
  'practice.saved.broken': 'una práctica entera; esta no se puede leer',
  'practice.saved.moves':
    'movimientos que se puedan hacer en esta máquina; el movimiento {{move}} no se puede',
} as const satisfies Readonly<Record<string, string>>;

export default practice;
