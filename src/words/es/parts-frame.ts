/** Front frame, scrapers, pad shells, and the ghost of the rear frame: Spanish text, not yet reviewed by a native tradesperson. */
const frame = {
  'part.side-plate-left.name': 'Placa lateral izquierda',
  'part.side-plate-left.does':
    'Placa gruesa del bastidor delantero con un ojo redondo alrededor del extremo del tambor. Lleva el anillo de montaje del motor de traslación y se desmonta de sus travesaños para que salga la placa de arrastre.',
  'part.side-plate-left.fails':
    'Se agrieta donde se atornillan los travesaños; un golpe de costado dobla el ojo.',
  'part.side-plate-right.name': 'Placa lateral derecha',
  'part.side-plate-right.does':
    'Placa gruesa del bastidor delantero en el lado de vibración; lleva el soporte ajustable.',
  'part.side-plate-right.fails':
    'Se agrieta en la unión con el travesaño, y se desgasta por vibración bajo un soporte que ha resbalado.',
  'part.cross-beam-front.name': 'Travesaño delantero',
  'part.cross-beam-front.does':
    'Viga cajón que une las dos placas laterales delante del tambor y lleva el raspador delantero.',
  'part.cross-beam-front.fails':
    'Se dobla al chocar con un talud; la soldadura se agrieta en las placas de los extremos.',
  'part.cross-beam-rear.name': 'Travesaño trasero',
  'part.cross-beam-rear.does':
    'Viga cajón detrás del tambor; lleva el enganche articulado y el raspador trasero.',
  'part.cross-beam-rear.fails':
    'Se agrieta alrededor del bloque del enganche por los esfuerzos de la dirección.',
  'part.hitch-block.name': 'Bloque del enganche',
  'part.hitch-block.does': 'Bloque soldado que recibe los pasadores de dirección de la articulación central.',
  'part.hitch-block.fails':
    'Los agujeros se ovalan; la máquina no guarda la línea y golpea al invertir la marcha.',
  'part.steering-clevis.name': 'Horquilla de dirección',
  'part.steering-clevis.does': 'Ojo para un cilindro de dirección.',
  'part.steering-clevis.fails': 'El agujero se gasta y el juego se nota en el volante.',
  'part.hitch-knuckle.name': 'Pieza central del enganche',
  'part.hitch-knuckle.does':
    'Pieza media de la articulación central: con los pasadores verticales se dirige la máquina; el horizontal deja que los bastidores se tuerzan uno respecto al otro.',
  'part.hitch-knuckle.fails': 'Los agujeros y bujes se gastan si no se engrasan.',
  'part.hitch-pin.name': 'Pasador de dirección',
  'part.hitch-pin.does': 'Pasador vertical sobre el que gira el bastidor delantero al dirigir.',
  'part.hitch-pin.fails': 'Se gasta en seco; un tornillo de seguro perdido delata un pasador que ha girado.',
  'part.oscillation-pin.name': 'Pasador de oscilación',
  'part.oscillation-pin.does': 'Pasador horizontal que deja al tambor seguir el suelo desparejo.',
  'part.oscillation-pin.fails': 'Se gasta por el lado de abajo y los bastidores se inclinan.',
  'part.steering-cylinder.name': 'Cilindro de dirección',
  'part.steering-cylinder.does': 'Cilindro de doble efecto que dobla la máquina en la articulación central.',
  'part.steering-cylinder.fails': 'Fuga por el sello del vástago, o se corre por un sello de pistón gastado.',
  'part.cylinder-pin.name': 'Pasador del cilindro',
  'part.cylinder-pin.does': 'Sujeta un cilindro de dirección en su horquilla.',
  'part.cylinder-pin.fails': 'Se gasta en seco y empieza a golpear.',
  'part.lock-bar.name': 'Barra de bloqueo de la articulación',
  'part.lock-bar.does':
    'Barra que une rígidamente los dos bastidores para el transporte y para trabajar en la articulación.',
  'part.lock-bar.fails':
    'Se queda guardada cuando debería estar puesta. Así es como mueren personas aplastadas.',
  'part.lock-pin.name': 'Pasador de la barra de bloqueo',
  'part.lock-pin.does': 'Sujeta la barra de bloqueo de la articulación.',
  'part.lock-pin.fails':
    'Se dobla si se gira la dirección contra la barra; o lo reemplazan por un perno que se corta.',
  'part.scraper-arm.name': 'Brazo del raspador',
  'part.scraper-arm.does': 'Lleva la barra raspadora; sus ranuras fijan la separación con la camisa.',
  'part.scraper-arm.fails': 'Se dobla por arcilla compactada o una piedra.',
  'part.scraper-bar.name': 'Barra raspadora',
  'part.scraper-bar.does': 'Mantiene la camisa limpia de tierra en todo el ancho.',
  'part.scraper-bar.fails': 'Se gasta en hueco; demasiado cerca, raya la camisa.',
  'part.scraper-arm-pad.name': 'Brazo del raspador, pisones',
  'part.scraper-arm-pad.does': 'Brazo más largo para el raspador que va con los segmentos con pisones.',
  'part.scraper-arm-pad.fails': 'Se dobla por arcilla compactada o una piedra.',
  'part.scraper-bar-pad.name': 'Barra raspadora, pisones',
  'part.scraper-bar-pad.does': 'Barra dentada que limpia entre las hileras de pisones.',
  'part.scraper-bar-pad.fails': 'Los dientes se gastan o se quiebran con las piedras.',
  'part.pad-segment.name': 'Segmento con pisones',
  'part.pad-segment.does':
    'Un tercio del casco que se atornilla sobre el tambor; sus pisones amasan el suelo cohesivo.',
  'part.pad-segment.fails':
    'Se afloja si quedó barro debajo al montarlo; los pernos de las bridas se rompen entonces uno tras otro.',
  'part.rear-frame.name': 'Bastidor trasero',
  'part.rear-frame.does':
    'Lleva el motor, las bombas, el asiento y el eje motriz; se muestra transparente para dar la escala.',
  'part.rear-frame.fails': 'Fuera del alcance de este tambor.',
  'part.rear-axle.name': 'Eje trasero',
  'part.rear-axle.does': 'Eje motriz del bastidor trasero.',
  'part.rear-axle.fails': 'Fuera del alcance de este tambor.',
  'part.tyre.name': 'Neumático',
  'part.tyre.does': 'Neumático de tracción del eje trasero.',
  'part.tyre.fails': 'Los cortes y la baja presión quitan tracción en una pendiente.',
  'part.engine-box.name': 'Compartimento del motor',
  'part.engine-box.does': 'El motor con sus bombas bajo el capó.',
  'part.engine-box.fails': 'Fuera del alcance de este tambor.',
  'part.seat.name': 'Asiento del operador',
  'part.seat.does': 'La izquierda y la derecha se nombran desde aquí, mirando hacia el tambor.',
  'part.seat.fails': 'Fuera del alcance de este tambor.',
  'part.steering-column.name': 'Columna de dirección',
  'part.steering-column.does': 'Volante con su válvula, delante del asiento; se muestra para dar la escala.',
  'part.steering-column.fails': 'Fuera del alcance de este tambor.',
  'part.canopy.name': 'Techo',
  'part.canopy.does': 'Techo sobre el asiento del operador; se muestra para dar la escala.',
  'part.canopy.fails': 'Fuera del alcance de este tambor.',
} as const;

export default frame;
