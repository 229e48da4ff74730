/**
 * Practice by doing (why a part cannot move yet, notes, hints, kept runs): the Spanish text, not yet reviewed by a native
 * tradesperson.
 */
const practice = {
  'practice.why.covered': 'Todavía no. Estorba el paso a esta pieza ({{part}}): {{by}}.',
  'practice.why.clamped': 'Todavía no. Aún sujeta a esta pieza ({{part}}): {{by}}.',
  'practice.why.thread': 'Todavía no. Esta pieza ({{part}}) aún está enroscada con: {{by}}.',
  'practice.why.hose': 'Todavía no. Aún conectado a esta pieza ({{part}}): {{by}}.',
  'practice.why.drain':
    'Todavía no. Primero hay que drenar el aceite que hay detrás de esta pieza ({{part}}): {{by}}.',
  'practice.why.tool': 'Todavía no. Ninguna herramienta llega a esta pieza ({{part}}); lo impide: {{by}}.',
  'practice.why.tight': 'Todavía no. Esta pieza ({{part}}) va con apriete en: {{by}}.',
  'practice.why.no-way': 'Desde aquí no hay camino para esta pieza ({{part}}).',
  'practice.why.with': 'Esta pieza ({{part}}) sale junto con: {{lead}}. Antes debe salir: {{by}}.',
  'practice.why.stays': 'Esta pieza ({{part}}) se queda: todo lo demás se retira de ella.',
  'practice.why.off': 'Esta pieza ({{part}}) ya está fuera.',
  'practice.why.in': 'Esta pieza ({{part}}) ya está en su lugar.',
  'practice.why.way-shut': 'Demasiado tarde. A esta pieza ({{part}}) le cierra el camino: {{by}}.',
  'practice.why.before': 'Todavía no. Antes de esta pieza ({{part}}) debe entrar: {{by}}.',
  'practice.why.no-seat': 'Todavía no. Falta donde asienta esta pieza ({{part}}): {{by}}.',
  'practice.note.together': 'Esta pieza ({{part}}) se lleva consigo: {{members}}. Se separan en el banco.',
  'practice.note.pressed':
    'Esta pieza ({{part}}) va con apriete en: {{other}}. Tire del anillo que va con apriete.',
  'practice.note.onto': 'Esta pieza ({{part}}) se monta en el banco sobre: {{other}}.',
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
