/** Why a step of the teardown can and must come when it does; names are put in for the ids, after a colon so that no article has to agree. Spanish text, not yet reviewed by a native tradesperson. */
const why = {
  'why.free': 'Ya nada sujeta {{part}}: sale derecho.',
  'why.covers': 'Estorba el paso de: {{covers}}.',
  'why.bars-tool': 'Mientras siga en su lugar, ninguna herramienta llega a: {{fasteners}}.',
  'why.clamps': 'Aprieta: {{clamped}}.',
  'why.thread': 'Su rosca sujeta: {{threaded}}.',
  'why.hose': 'La manguera debe soltarse antes de mover: {{port}}.',
  'why.drain': 'El aceite debe salir antes de abrir: {{boundary}}.',
  'why.tight': 'Va con apriete sobre: {{other}}.',
  'why.together': '{{part}} sale junto con: {{members}}. Se separan en el banco.',
  'why.together-thread': 'No se puede soltar en su lugar: {{part}}. Estorba: {{barred-by}}.',
  'why.bench': 'Se alcanza en el banco, ahora que está fuera: {{from}}.',
  'why.support': '{{carrier}} lo carga con {{force_N}} y sale después: sosténgalo primero.',
  'why.chock': 'Sin {{carrier}} nada frena {{part}}: en la pendiente tiran {{force_N}}.',
  'why.sling':
    'Cuando se quitan {{fasteners}}, nada sujeta {{part}}: tome primero sus {{force_N}} con el polipasto.',
  'why.strap': 'Su lado pesado cae con {{force_N}} en cuanto queda libre.',
  'why.fluid': '{{boundary}} retiene {{fluid}}: drene antes de abrir.',
} as const satisfies Readonly<Record<string, string>>;

export default why;
