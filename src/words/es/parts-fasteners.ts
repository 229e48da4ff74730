/** Bolts, screws, nuts, dowels: Spanish text, not yet reviewed by a native tradesperson. */
const fasteners = {
  'part.hub-bolt.name': 'Perno del cubo',
  'part.hub-bolt.does':
    'Uno de los pernos en círculo que aprietan el cubo contra la tapa derecha: la vibración la soporta la fricción entre las bridas, no las cañas de los pernos.',
  'part.hub-bolt.fails':
    'Pierde la precarga; luego la unión resbala y los pernos se cortan uno tras otro. Uno roto obliga a poner un juego nuevo.',
  'part.carrier-bolt-right.name': 'Perno del portarrodamiento derecho',
  'part.carrier-bolt-right.does':
    'Sujeta el portarrodamiento derecho en el cubo; solo se alcanza desde el lado del tambor.',
  'part.carrier-bolt-right.fails':
    'Se afloja cuando el portarrodamiento se desgasta por vibración en su asiento.',
  'part.carrier-bolt-left.name': 'Perno del portarrodamiento izquierdo',
  'part.carrier-bolt-left.does':
    'Sujeta el portarrodamiento izquierdo en su anillo de asiento, muy adentro del tubo: se alcanza con una extensión larga.',
  'part.carrier-bolt-left.fails': 'Se trasrosca a oscuras, en la punta de una extensión larga.',
  'part.mounting-plate-bolt.name': 'Perno de la placa de montaje',
  'part.mounting-plate-bolt.does':
    'Aprieta la placa de montaje de los aisladores contra la brida de la punta de eje.',
  'part.mounting-plate-bolt.fails': 'Fatiga cuando había pintura o suciedad entre las caras de la unión.',
  'part.isolator-ear-bolt-right.name': 'Perno de oreja del aislador, derecho',
  'part.isolator-ear-bolt-right.does': 'Sujeta una oreja de un aislador derecho en la placa de montaje.',
  'part.isolator-ear-bolt-right.fails': 'Se dobla y se rompe cuando el aislador vecino se ha desgarrado.',
  'part.isolator-bolt-right.name': 'Perno del aislador, derecho',
  'part.isolator-bolt-right.does': 'Sujeta un aislador derecho al soporte, a través de sus laminillas.',
  'part.isolator-bolt-right.fails': 'Se arranca del inserto si la rosca no había entrado por completo.',
  'part.bracket-bolt.name': 'Perno del soporte',
  'part.bracket-bolt.does':
    'Aprieta el soporte ajustable contra la placa lateral derecha, con ranuras y arandelas duras.',
  'part.bracket-bolt.fails': 'Resbala en su ranura cuando una arandela blanda se ha hundido.',
  'part.guard-screw.name': 'Tornillo del protector',
  'part.guard-screw.does': 'Sujeta el protector del motor en sus separadores.',
  'part.guard-screw.fails': 'La vibración lo saca si no se aseguró.',
  'part.exciter-motor-bolt.name': 'Perno del motor del excitador',
  'part.exciter-motor-bolt.does': 'Sujeta el motor del excitador en la punta de eje.',
  'part.exciter-motor-bolt.fails': 'Se afloja y el motor martilla su centrador.',
  'part.isolator-ear-bolt-left.name': 'Perno de oreja del aislador, izquierdo',
  'part.isolator-ear-bolt-left.does':
    'Sujeta una oreja de un aislador izquierdo en su saliente; solo se alcanza con la placa de arrastre fuera.',
  'part.isolator-ear-bolt-left.fails': 'Se rompe por flexión cuando un aislador vecino se ha desgarrado.',
  'part.isolator-bolt-left.name': 'Perno del aislador, izquierdo',
  'part.isolator-bolt-left.does':
    'Sujeta un aislador izquierdo a la placa de arrastre y transmite su parte del par de traslación.',
  'part.isolator-bolt-left.fails': 'Se corta cuando la placa de arrastre ha empezado a resbalar.',
  'part.output-bolt.name': 'Perno de salida',
  'part.output-bolt.does':
    'Aprieta la brida de salida del motor de traslación contra la placa de arrastre; se alcanza por las ventanas del anillo de montaje.',
  'part.output-bolt.fails': 'La unión que resbala ovala los agujeros y corta todo el juego de pernos.',
  'part.motor-mount-bolt.name': 'Perno de montaje del motor',
  'part.motor-mount-bolt.does': 'Sujeta el motor de traslación en su anillo de montaje.',
  'part.motor-mount-bolt.fails': 'Se afloja con el par que se invierte.',
  'part.mount-ring-bolt.name': 'Perno del anillo de montaje',
  'part.mount-ring-bolt.does': 'Aprieta el anillo de montaje contra la placa lateral izquierda.',
  'part.mount-ring-bolt.fails':
    'Se afloja con el par que se invierte; lo muestra el polvo rojizo del desgaste por vibración.',
  'part.beam-bolt-left.name': 'Perno del travesaño, izquierdo',
  'part.beam-bolt-left.does': 'Aprieta un travesaño contra la placa lateral izquierda.',
  'part.beam-bolt-left.fails': 'Resbala y se desgasta por vibración si la placa estaba pintada debajo.',
  'part.beam-bolt-right.name': 'Perno del travesaño, derecho',
  'part.beam-bolt-right.does': 'Aprieta un travesaño contra la placa lateral derecha.',
  'part.beam-bolt-right.fails': 'Resbala y se desgasta por vibración si la placa estaba pintada debajo.',
  'part.hub-dowel.name': 'Pasador guía del cubo',
  'part.hub-dowel.does':
    'Pasador que da al cubo una sola posición en la tapa derecha, para que coincidan los agujeros de aceite.',
  'part.hub-dowel.fails': 'Se corta cuando el cubo ha resbalado.',
  'part.hitch-pin-screw.name': 'Tornillo del pasador de dirección',
  'part.hitch-pin-screw.does': 'Impide que un pasador de dirección gire o se salga.',
  'part.hitch-pin-screw.fails': 'Se corta cuando el pasador está seco y gira.',
  'part.pad-bolt.name': 'Perno de segmento con pisones',
  'part.pad-bolt.does': 'Junta dos segmentos con pisones por sus bridas.',
  'part.pad-bolt.fails': 'Se rompe si quedó barro debajo y el segmento se asentó.',
  'part.scraper-arm-bolt.name': 'Perno del brazo del raspador',
  'part.scraper-arm-bolt.does': 'Aprieta un brazo del raspador contra su travesaño, a través de una ranura.',
  'part.scraper-arm-bolt.fails': 'Resbala, y la barra cae sobre la camisa.',
  'part.scraper-bar-bolt.name': 'Perno de la barra raspadora',
  'part.scraper-bar-bolt.does': 'Sujeta la barra raspadora en su brazo.',
  'part.scraper-bar-bolt.fails': 'Con la cabeza gastada, la llave no tiene de dónde agarrar.',
} as const;

export default fasteners;
