/** Vibration side (right) and drive side (left): Spanish text, not yet reviewed by a native tradesperson. */
const sides = {
  'part.hub.name': 'Cubo',
  'part.hub.does':
    'Atornillado en la tapa derecha, gira con el tambor sobre dos rodamientos de rueda y sujeta el rodamiento derecho del excitador. Aquí se encuentran el tambor y el bastidor.',
  'part.hub.fails':
    'Cuando se pierde la precarga, la brida se desgasta por vibración y los pernos se cortan; una cubeta que gira en su agujero lo arruina.',
  'part.spindle.name': 'Punta de eje',
  'part.spindle.does':
    'El eje fijo del lado de vibración. Vibra con el tambor pero no gira; por su agujero pasa el eje de acople.',
  'part.spindle.fails':
    'Los asientos de los rodamientos se gastan donde ha girado un cono; la rosca se daña si la tuerca se hace girar a martillazos.',
  'part.spindle-nut.name': 'Tuerca de la punta de eje',
  'part.spindle-nut.does': 'Fija el juego axial de los rodamientos de rueda.',
  'part.spindle-nut.fails':
    'Se afloja si no se dobló la lengüeta; el tambor se corre entonces de un lado a otro.',
  'part.lock-washer.name': 'Arandela de seguridad',
  'part.lock-washer.does':
    'Su lengüeta interior entra en la ranura de la punta de eje; una exterior se dobla dentro de la tuerca.',
  'part.lock-washer.fails': 'Una lengüeta doblada dos veces se rompe: ponga cada vez una arandela nueva.',
  'part.wheel-bearing-inner.name': 'Rodamiento de rueda interior',
  'part.wheel-bearing-inner.does':
    'Rodamiento de rodillos cónicos del lado de la tuerca. Su cubeta va con apriete en el cubo que gira; su cono desliza sobre la punta de eje fija, para que la tuerca pueda dar el juego axial.',
  'part.wheel-bearing-inner.fails':
    'Demasiado apretado se calienta; flojo se llena de marcas de golpes. El aceite del excitador que pasa el retén le lava la grasa.',
  'part.wheel-bearing-outer.name': 'Rodamiento de rueda exterior',
  'part.wheel-bearing-outer.does':
    'Rodamiento de rodillos cónicos junto al hombro de la punta de eje; lleva la mayor parte de la carga del lado derecho.',
  'part.wheel-bearing-outer.fails':
    'La suciedad que pasa el retén del cubo pica sus rodillos; lo delata un gruñido al avanzar despacio sin vibración.',
  'part.hub-seal.name': 'Retén del cubo',
  'part.hub-seal.does':
    'Retén con labio guardapolvo: guarda la grasa dentro y deja el barro fuera de los rodamientos de rueda.',
  'part.hub-seal.fails':
    'El labio se endurece o labra un surco en la punta de eje; la señal es grasa salpicada en el soporte.',
  'part.nose-seal.name': 'Retén de la nariz',
  'part.nose-seal.does':
    'Retén en la nariz del portarrodamiento derecho: separa el aceite del excitador de los rodamientos de rueda.',
  'part.nose-seal.fails': 'Si fuga, baja el aceite del tubo y por el retén del cubo sale aceite delgado.',
  'part.hub-o-ring.name': 'Anillo tórico del cubo',
  'part.hub-o-ring.does': 'Sella el centrador del cubo en la tapa derecha.',
  'part.hub-o-ring.fails':
    'Pellizcado al montar o endurecido por el calor: el aceite suda por la brida del cubo.',
  'part.carrier-o-ring.name': 'Anillo tórico del portarrodamiento',
  'part.carrier-o-ring.does': 'Sella un portarrodamiento en su agujero.',
  'part.carrier-o-ring.fails': 'Se corta en el borde del agujero cuando el portarrodamiento se mete en seco.',
  'part.motor-o-ring.name': 'Anillo tórico del motor',
  'part.motor-o-ring.does': 'Sella el centrador del motor del excitador en la punta de eje.',
  'part.motor-o-ring.fails': 'Endurecido por el calor: la suciedad llega hasta las estrías.',
  'part.mounting-plate.name': 'Placa de montaje',
  'part.mounting-plate.does':
    'Placa de montaje de los aisladores: atornillada a la punta de eje fija, lleva el lado que vibra de los aisladores derechos. Tapa los pernos del cubo.',
  'part.mounting-plate.fails':
    'Se agrieta entre sus círculos de pernos cuando un aislador se ha roto y los otros tiran desparejo.',
  'part.isolator-right.name': 'Aislador derecho',
  'part.isolator-right.does':
    'Bloque de caucho pegado entre placas de acero. Trabaja a corte: carga el bastidor sobre el tambor y deja que el tambor vibre sin sacudir el bastidor.',
  'part.isolator-right.fails':
    'Se agrieta desde el borde de la unión y luego se desgarra; lo muestra una separación despareja en más de 3 mm, o un bastidor que se sacude.',
  'part.isolator-left.name': 'Aislador izquierdo',
  'part.isolator-left.does':
    'Bloque de caucho que gira con el tambor y transmite todo el par de traslación. Su flecha por el peso se invierte en cada vuelta.',
  'part.isolator-left.fails':
    'Se tuerce y se desgarra en la unión cuando se fuerza el tambor contra una carga; el aceite y el calor lo ablandan.',
  'part.shim-pack.name': 'Paquete de laminillas',
  'part.shim-pack.does':
    'Placas delgadas que llenan la separación en un aislador, para que todos queden comprimidos por igual.',
  'part.shim-pack.fails': 'Mezcladas u olvidadas: un aislador lleva entonces la carga de sus vecinos.',
  'part.bracket.name': 'Soporte derecho',
  'part.bracket.does':
    'Placa con agujeros alargados entre los aisladores derechos y la placa lateral: se mueve para poner el tambor a escuadra en el bastidor.',
  'part.bracket.fails':
    'Los pernos resbalan en sus ranuras y el tambor queda fuera de escuadra; las grietas empiezan en una ranura.',
  'part.exciter-motor.name': 'Motor del excitador',
  'part.exciter-motor.does':
    'Motor de pistones axiales que hace girar el excitador; cuando la bomba lo gira al revés, da la otra amplitud.',
  'part.exciter-motor.fails':
    'Al gastarse los pistones sube el caudal de drenaje y baja la velocidad; un drenaje tapado revienta el retén del eje.',
  'part.guard.name': 'Protector del motor',
  'part.guard.does':
    'Anillo que protege de piedras y taludes el motor del excitador y sus mangueras; va en el lado del bastidor.',
  'part.guard.fails': 'Doblado contra las mangueras, las roza hasta romperlas.',
  'part.guard-standoff.name': 'Separador del protector',
  'part.guard-standoff.does': 'Mantiene el protector del motor separado del soporte.',
  'part.guard-standoff.fails':
    'Se agrieta en el pie por la vibración cuando el protector ha recibido un golpe.',
  'part.coupling-shaft.name': 'Eje de acople',
  'part.coupling-shaft.does':
    'Eje delgado por el agujero de la punta de eje: un manguito sobre las estrías del motor y una punta macho en el excitador. Sus estrías absorben el movimiento del tambor respecto al motor.',
  'part.coupling-shaft.fails':
    'Las estrías secas se gastan en punta y se sueltan: el motor chilla y nada vibra.',
  'part.drive-plate.name': 'Placa de arrastre',
  'part.drive-plate.does':
    'Lleva el par del motor de traslación a los aisladores izquierdos. Gira con el tambor pero no vibra.',
  'part.drive-plate.fails':
    'Agujeros ovalados por pernos de salida flojos; grietas en el círculo de los aisladores.',
  'part.drive-motor.name': 'Motor de traslación',
  'part.drive-motor.does':
    'Motor lento de pistones radiales con dos cilindradas, que mueve el tambor sin reductor. Su freno de resorte es el freno de estacionamiento del tambor.',
  'part.drive-motor.fails':
    'Lento y caliente cuando los pistones fugan a la carcasa; si la máquina se corre en una pendiente, el freno está gastado.',
  'part.motor-mount-ring.name': 'Anillo de montaje del motor',
  'part.motor-mount-ring.does':
    'Lleva el motor de traslación en la placa lateral izquierda; por sus ventanas entra un dado hasta los pernos de salida.',
  'part.motor-mount-ring.fails':
    'La unión resbala y se desgasta por vibración si se reutilizaron los pernos.',
  'part.window-plug.name': 'Tapón de ventana',
  'part.window-plug.does': 'Cierra al barro una ventana del anillo de montaje del motor.',
  'part.window-plug.fails': 'Si se pierde, el barro se compacta alrededor de los pernos de salida.',
  'part.hose-exciter-pressure.name': 'Manguera de presión del motor del excitador',
  'part.hose-exciter-pressure.does':
    'Lleva el aceite de la bomba al motor del excitador; con la bomba invertida es el retorno, y el excitador gira al revés.',
  'part.hose-exciter-pressure.fails':
    'Se roza donde su lazo toca el protector, o revienta en la conexión; una conexión mojada es el aviso.',
  'part.hose-exciter-return.name': 'Manguera de retorno del motor del excitador',
  'part.hose-exciter-return.does':
    'Devuelve el aceite del motor del excitador; lleva un lazo flojo por la vibración del tambor.',
  'part.hose-exciter-return.fails': 'Se estrangula si se montó torcida, y se afloja en la conexión.',
  'part.hose-exciter-drain.name': 'Manguera de drenaje del motor del excitador',
  'part.hose-exciter-drain.does': 'Lleva el aceite de fuga de la carcasa del motor del excitador al tanque.',
  'part.hose-exciter-drain.fails':
    'Estrangulada o tapada, la presión de la carcasa revienta el retén del eje.',
  'part.hose-drive-a.name': 'Manguera A del motor de traslación',
  'part.hose-drive-a.does':
    'Una de las dos líneas de potencia del motor de traslación: presión en un sentido, retorno en el otro.',
  'part.hose-drive-a.fails': 'Se roza en la placa lateral, o revienta en la conexión con un tiro fuerte.',
  'part.hose-drive-b.name': 'Manguera B del motor de traslación',
  'part.hose-drive-b.does': 'La otra línea de potencia del motor de traslación.',
  'part.hose-drive-b.fails': 'Se roza en la placa lateral, o revienta en la conexión con un tiro fuerte.',
  'part.hose-drive-drain.name': 'Manguera de drenaje del motor de traslación',
  'part.hose-drive-drain.does':
    'Lleva el aceite de fuga de la carcasa del motor de traslación al tanque; la cantidad dice cuánto está gastado el motor.',
  'part.hose-drive-drain.fails': 'Estrangulada o tapada, la presión de la carcasa revienta el retén del eje.',
  'part.hose-drive-brake.name': 'Manguera del freno',
  'part.hose-drive-brake.does': 'Lleva la presión que suelta el freno de resorte del motor de traslación.',
  'part.hose-drive-brake.fails': 'Si revienta, el freno se aplica solo.',
  'part.hose-block.name': 'Bloque de mangueras',
  'part.hose-block.does': 'Bloque fijo en el bastidor, de donde salen los lazos flojos de las mangueras.',
  'part.hose-block.fails':
    'Si el bloque se afloja, el tubo rígido y la manguera trabajan uno contra otro hasta que uno se agrieta.',
} as const;

export default sides;
