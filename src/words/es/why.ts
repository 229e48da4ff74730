/** Why a step of the teardown can and must come when it does; names are put in for the ids, after a colon so that no article has to agree. Spanish text, not yet reviewed by a native tradesperson. */
const why = {
  'why.free': 'Ya está libre: {{part}}. Sale derecho.',
  'why.covers': 'Estorba el paso de: {{covers}}.',
  'why.bars-tool': 'Mientras siga en su lugar, ninguna herramienta llega a: {{fasteners}}.',
  'why.clamps': 'Aprieta: {{clamped}}.',
  'why.thread': 'Su rosca sujeta: {{threaded}}.',
  'why.hose': 'La manguera debe soltarse antes de mover: {{port}}.',
  'why.drain': 'El aceite debe salir antes de abrir: {{boundary}}.',
  'why.tight': 'Va con apriete sobre: {{other}}.',
  'why.together': 'Sale en conjunto: {{part}}, con {{members}}. Se separan en el banco.',
  'why.together-thread': 'No se puede soltar en su lugar: {{part}}. Estorba: {{barred-by}}.',
  'why.bench': 'Se alcanza en el banco, con esto ya fuera: {{from}}.',
  'why.support':
    'Descansa con {{force_N}} sobre lo que sale después: {{carrier}}. Sostenga primero la carga.',
  'why.chock':
    'Único freno: {{carrier}}. Al retirarlo, en la pendiente hay que retener {{force_N}} ({{part}}).',
  'why.sling': 'Sin «{{fasteners}}» nada sujeta «{{part}}»: tome primero sus {{force_N}} con el polipasto.',
  'why.strap': 'Su lado pesado cae con {{force_N}} en cuanto queda libre.',
  'why.fluid': 'Detrás hay {{fluid}} ({{boundary}}): drene antes de abrir.',
} as const satisfies Readonly<Record<string, string>>;

export default why;
