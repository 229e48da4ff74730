/** Drum, exciter and exciter case: Spanish text, not yet reviewed by a native tradesperson. */
const drum = {
  'part.drum-shell.name': 'Camisa del tambor',
  'part.drum-shell.does':
    'La piel de acero rolado que presiona y sacude el suelo. Apoya la carga del eje en una línea y pasa al suelo cada golpe del excitador.',
  'part.drum-shell.fails':
    'En suelo abrasivo se adelgaza y toma forma de barril, en roca se abolla, y si trabaja sobre suelo duro se agrieta junto a las soldaduras de las tapas.',
  'part.head-left.name': 'Tapa izquierda',
  'part.head-left.does':
    'Disco cerrado, soldado a la camisa en el lado de traslación. Sus ocho salientes huecos llevan los aisladores izquierdos; por ellos el motor de traslación hace girar el tambor.',
  'part.head-left.fails':
    'Las grietas de fatiga parten de la soldadura con la camisa o de un saliente; la primera señal es aceite que suda por la soldadura del tubo.',
  'part.head-right.name': 'Tapa derecha',
  'part.head-right.does':
    'Disco soldado a la camisa en el lado de vibración. Su agujero mecanizado centra el cubo, y en ella están los tapones de aceite del tubo del excitador.',
  'part.head-right.fails':
    'Se agrieta en la soldadura con la camisa; el asiento del cubo se desgasta por vibración cuando los pernos del cubo pierden la precarga.',
  'part.exciter-case.name': 'Tubo del excitador',
  'part.exciter-case.does':
    'Tubo soldado entre las dos tapas. Es el cárter de aceite de los rodamientos del excitador y une las tapas entre sí.',
  'part.exciter-case.fails':
    'Pierde aceite hacia el tambor por sus soldaduras; el excitador trabaja entonces en seco, y con el tambor mal colocado el nivel en el tapón todavía parece bueno.',
  'part.bulkhead.name': 'Mamparo',
  'part.bulkhead.does':
    'Disco dentro del tubo del excitador que cierra el espacio de aceite en el lado de traslación, detrás del rodamiento izquierdo.',
  'part.bulkhead.fails': 'Una soldadura agrietada deja pasar aceite al extremo seco del tubo.',
  'part.seat-ring-left.name': 'Anillo de asiento izquierdo',
  'part.seat-ring-left.does':
    'Anillo mecanizado, soldado dentro del tubo. Mantiene el portarrodamiento izquierdo en su eje y recibe sus pernos.',
  'part.seat-ring-left.fails':
    'El agujero se gasta si el portarrodamiento se ha movido; el rodamiento gira entonces desalineado.',
  'part.bearing-carrier-left.name': 'Portarrodamiento izquierdo',
  'part.bearing-carrier-left.does':
    'Sujeta el anillo exterior del rodamiento izquierdo del excitador. Sale junto con su rodamiento, empujado por tres tornillos extractores.',
  'part.bearing-carrier-left.fails':
    'El agujero se agranda por desgaste y el anillo exterior gira lentamente en su asiento; el anillo tórico se endurece y deja pasar aceite.',
  'part.bearing-carrier-right.name': 'Portarrodamiento derecho',
  'part.bearing-carrier-right.does':
    'Sujeta el anillo exterior del rodamiento derecho del excitador dentro del cubo, y en su nariz lleva el retén que separa el aceite del excitador de los rodamientos de rueda.',
  'part.bearing-carrier-right.fails':
    'Un anillo que gira en su asiento agranda el agujero; el retén de la nariz deja pasar aceite, que lava la grasa de los rodamientos de rueda.',
  'part.exciter-bearing.name': 'Rodamiento del excitador',
  'part.exciter-bearing.does':
    'Rodamiento de dos hileras de rodillos de barrilete, hecho para vibración: jaula de latón y juego grande. Soporta la mitad de la fuerza centrífuga, que gira con el eje.',
  'part.exciter-bearing.fails':
    'El anillo exterior gira en su asiento cuando se pierde el ajuste; los rodillos se pican si el aceite está viejo, bajo o lleno de metal de desgaste. Las señales: calor en la tapa y un retumbo durante la parada.',
  'part.exciter-housing.name': 'Cuerpo del excitador',
  'part.exciter-housing.does':
    'El eje que sacude el tambor: una cámara redonda y cerrada, fuera de su eje de giro, llena en parte con balines de acero y con un deflector dentro. En un sentido de giro los balines se juntan en el lado pesado; en el otro, el deflector retiene la mitad.',
  'part.exciter-housing.fails':
    'Por una soldadura agrietada o un tapón perdido los balines caen al tubo; los muñones se gastan bajo un anillo interior flojo. Si BAJA sacude tanto como ALTA, el deflector está roto.',
  'part.shot.name': 'Balines',
  'part.shot.does':
    'Bolas sueltas de acero templado. El lugar donde se asientan decide el desequilibrio: lejos, en el lado pesado, en ALTA; la mitad detrás del deflector en BAJA.',
  'part.shot.fails':
    'Tras años de rodar en cada arranque y cada parada se gastan hasta hacerse polvo; si entra humedad, el óxido los apelmaza y los dos sentidos de giro se sienten iguales.',
  'part.shot-plug.name': 'Tapón de los balines',
  'part.shot-plug.does':
    'Cierra el agujero de llenado de la cámara de los balines; va sellado y remachado con punzón para que no gire.',
  'part.shot-plug.fails': 'Se afloja si no se remachó; la señal son balines en el aceite del tubo.',
  'part.oil-drain-tube.name': 'Tubo de drenaje',
  'part.oil-drain-tube.does':
    'Lleva el aceite desde el punto más bajo del tubo del excitador hasta el tapón de drenaje de la tapa derecha.',
  'part.oil-drain-tube.fails': 'Se agrieta en la soldadura con la tapa y gotea.',
  'part.oil-level-tube.name': 'Tubo de nivel',
  'part.oil-level-tube.does':
    'Tubo vertical cuya boca fija el nivel de aceite cuando la marca de referencia está arriba.',
  'part.oil-level-tube.fails': 'Tapado con lodo, muestra aceite donde no lo hay.',
  'part.oil-fill-tube.name': 'Tubo de llenado',
  'part.oil-fill-tube.does': 'Lleva el aceite nuevo desde el tapón de arriba hasta el tubo del excitador.',
  'part.oil-fill-tube.fails': 'Se agrieta en la soldadura con la tapa.',
  'part.drain-plug.name': 'Tapón de drenaje magnético',
  'part.drain-plug.does':
    'Cierra el drenaje y atrapa con su imán el acero del desgaste: lo que cuelga de él dice cómo están los rodamientos.',
  'part.drain-plug.fails':
    'Con la cara de sello gastada, gotea. Escamas en vez de pasta en el imán significan que un rodamiento se está deshaciendo.',
  'part.level-plug.name': 'Tapón de nivel',
  'part.level-plug.does': 'Con la marca de referencia arriba, el aceite debe llegar justo a este agujero.',
  'part.level-plug.fails': 'Leído con el tambor en mala posición, da un nivel falso.',
  'part.fill-plug.name': 'Tapón de llenado',
  'part.fill-plug.does': 'Cierra el agujero de llenado del tubo del excitador.',
  'part.fill-plug.fails': 'Si se pierde el anillo de sello, el aceite sale como niebla al girar el tambor.',
  'part.ballast-plug.name': 'Tapón del lastre',
  'part.ballast-plug.does':
    'Cierra un agujero para llenar el tambor con lastre líquido; esta máquina trabaja sin él.',
  'part.ballast-plug.fails':
    'Se agarra por óxido; detrás puede haber agua que nadie conoce, que se congela y revienta la soldadura.',
  'part.weld-bead.name': 'Cordón de soldadura',
  'part.weld-bead.does': 'Une una tapa a la camisa en toda la vuelta.',
  'part.weld-bead.fails': 'Grietas de fatiga, casi siempre desde donde el cordón empieza o termina.',
} as const;

export default drum;
