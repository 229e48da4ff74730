/**
 * Words of "watch the shot" (recordings and runs of the loose shot): the Spanish text, not yet reviewed by a native
 * tradesperson.
 */
const shot = {
  'shot.title': 'Ver los balines',
  'shot.drawing-choice': 'Qué muestra el dibujo',
  'shot.settled': 'Asentados',
  'shot.loading': 'Trayendo las grabaciones …',
  'shot.load-failed': 'No se pudieron cargar las grabaciones de los balines.',
  'shot.none-shipped':
    'Esta máquina viene sin grabaciones. Haga abajo su propia corrida de los balines; sus números salen de la cámara, el deflector y la carga de esta máquina.',

  'shot.run-both': 'Correr los dos sentidos como se fabricó',

  'shot.drawing':
    'Rebanada de la cámara vista desde el lado de vibración con {{balls}} balines, acelerando en {{direction}}. Al final, {{captured}} de los balines está en el bolsillo del deflector y el desequilibrio es {{unbalance}}.',
  'shot.key-loose': 'balín suelto',
  'shot.key-held': 'en el bolsillo del deflector',
  'shot.key-force': 'fuerza ahora',
  'shot.key-down': 'abajo',

  'shot.transport': 'Reproducir la corrida',
  'shot.play': 'Reproducir',
  'shot.pause': 'Pausa',
  'shot.again': 'Reproducir otra vez',
  'shot.scrub': 'Tiempo de la corrida',
  'shot.time': '{{time}} / {{of}} s',
  'shot.slow': 'Cámara lenta',
  'shot.slow-none': 'Real',
  'shot.slow-by': '{{factor}} × más lento',
  'shot.eye': 'Su vista',
  'shot.eye-housing': 'gira con él',
  'shot.eye-room': 'queda quieta',
  'shot.along': 'En la escena',
  'shot.along-repeated': 'todo el largo',
  'shot.along-alone': 'solo la rebanada',

  'shot.readings': 'Leído de los balines en este momento',
  'shot.read-captured': 'En el bolsillo',
  'shot.read-below': 'de ello, sin montón',
  'shot.read-unbalance': 'U',
  'shot.read-unbalance-angle': 'U apunta a',
  'shot.read-shot-moment': 'U de los balines',
  'shot.read-gravity-ratio': 'w² r / g',
  'shot.read-rotation': 'Velocidad',
  'shot.read-turns': 'Vueltas',
  'shot.read-force': 'Fuerza',
  'shot.read-energy': 'Energía',
  'shot.read-arm': 'Brazo del centro',
  'shot.read-packing': 'Empaque',

  'shot.chart-over': 'Gráfico según',
  'shot.chart-time': 'tiempo',
  'shot.chart-gravity': 'w² r / g',
  'shot.chart':
    'Gráfico de la corrida: fracción en el bolsillo {{captured}} al final, desequilibrio de {{start}} a {{unbalance}}.',
  'shot.axis-time': 'tiempo, s',
  'shot.axis-gravity': 'w² r / g en la pared',
  'shot.critical': 'w² r = g',
  'shot.key-captured': 'fracción en el bolsillo, %',
  'shot.key-unbalance': 'desequilibrio U',
  'shot.key-level': 'U con superficie a nivel',

  'shot.level': 'Balines frente a la fórmula cerrada',
  'shot.level-balls': 'Leído de los balines',
  'shot.level-table': 'Tabla de corridas simuladas',
  'shot.level-form': 'Superficie a nivel',
  'shot.level-agree':
    'Coinciden: aquí los balines corren al lado opuesto y se apoyan en él con una superficie casi a nivel, que es lo que supone la fórmula cerrada.',
  'shot.level-coat':
    'La fórmula cerrada deja que los balines busquen su nivel como un líquido; los balines reales se traban por fricción y quedan como una capa delgada en la pared antes de llegar al lado opuesto, así que el valor a nivel sale demasiado alto.',
  'shot.level-run':
    'La fórmula cerrada no sabe de arranque, gravedad ni fricción: toma el bolsillo como lleno en el sentido que recoge y como vacío en el otro, y deja que el resto busque su nivel como un líquido.',
  'shot.level-below':
    'La fórmula cerrada deja que los balines busquen su nivel como un líquido; aquí los balines se quedaron donde estaban, más afuera de lo que los tendría una superficie a nivel.',

  'shot.experiments': 'Experimentos',
  'shot.experiments-intro':
    'Cambie una cosa, diga qué espera, y luego mire. Cada uno se compara con la máquina como se fabricó, girando en {{direction}}.',
  'shot.run-own': 'Como se fabricó, {{direction}}',
  'shot.run-other-way': 'El otro sentido',
  'shot.run-too-fast': 'Arranque demasiado rápido',
  'shot.run-too-much': 'Demasiados balines',
  'shot.run-half-lost': 'Mitad de los balines perdida',
  'shot.run-baffle-off': 'Deflector arrancado',
  'shot.run-baffle-mirrored': 'Deflector soldado al revés',
  'shot.run-no-gravity': 'Sin gravedad',
  'shot.run-sticky': 'Balines pegajosos',
  'shot.run-free': 'Una corrida propia',
  'shot.what-other-way': 'Misma máquina, misma carga; la palanca va al otro lado.',
  'shot.what-too-fast':
    'La misma velocidad final, pero en la mitad del tiempo y con todo el empuje desde el primer momento, sin arranque suave.',
  'shot.what-too-much':
    'La mitad más de balines de lo que debe tener la máquina. El bolsillo queda del mismo tamaño.',
  'shot.what-half-lost': 'El tapón perdió: falta la mitad de la carga.',
  'shot.what-baffle-off': 'La soldadura de la placa en L se rompió y la placa está fuera de la cámara.',
  'shot.what-baffle-mirrored':
    'Una reparación puso la placa en el lado equivocado: el bolsillo se abre al otro lado.',
  'shot.what-no-gravity': 'Nadie puede hacer esto en un patio: ¿qué harían los balines sin peso?',
  'shot.what-sticky':
    'Entraron aceite y polvo en la cámara: la fricción entre los balines es muy alta, 0,8. (Solo se sube la fricción; no se incluye que los balines pegajosos también se adhieren entre sí.)',
  'shot.what-free': 'Ajuste lo que quiera. El mismo ajuste con la misma semilla da el mismo resultado.',
  'shot.predict': 'Frente a {{direction}} como se fabricó, el tambor vibrará …',
  'shot.predict-more': 'Más',
  'shot.predict-same': 'Igual',
  'shot.predict-less': 'Menos',
  'shot.predict-first': 'Diga primero qué espera.',
  'shot.settings': 'Cambiar el ajuste',
  'shot.run': 'Correr',
  'shot.leave': 'Volver',
  'shot.cancel': 'Cancelar la corrida',
  'shot.job': 'En curso',
  'shot.job-starting': 'los balines se vierten y se asientan …',
  'shot.job-left': 'faltan unos {{seconds}} s',
  'shot.spin-up': 'Arranque',
  'shot.spin-up-quadratic': 'Arranque suave',
  'shot.spin-up-linear': 'Todo el empuje',
  'shot.spin-up-time': 'Tiempo hasta plena velocidad',
  'shot.friction': 'Fricción de los balines',
  'shot.baffle': 'Deflector',
  'shot.baffle-fitted': 'Como se fabricó',
  'shot.baffle-mirrored': 'Al revés',
  'shot.baffle-off': 'Sin él',
  'shot.gravity': 'Gravedad',
  'shot.seed': 'Semilla',
  'shot.seed-note':
    'Otra semilla vierte los balines de otra manera; los resultados varían hasta cerca del 10 %.',

  'shot.result': 'Qué resultó',
  'shot.predicted-right': 'Como usted dijo.',
  'shot.predicted-else': 'Usted dijo {{said}}; resultó otra cosa.',
  'shot.found-more': 'Vibra más: U es {{unbalance}}, {{share}} % de {{direction}} como se fabricó.',
  'shot.found-same':
    'Vibra más o menos igual: U es {{unbalance}}, {{share}} % de {{direction}} como se fabricó. Dentro del 10 % cuenta como igual, porque eso depende de cómo queden los balines.',
  'shot.found-less': 'Vibra menos: U es {{unbalance}}, {{share}} % de {{direction}} como se fabricó.',
  'shot.why-other-way-low':
    'El dorso de la placa despide los balines: no retiene ninguno, todos corren al lado pesado.',
  'shot.why-other-way-high':
    'El lado abierto de la placa recoge los balines justo después de la velocidad crítica y los retiene en el lado liviano, donde trabajan contra el resto.',
  'shot.why-too-fast-low':
    'El bolsillo lo llena la gravedad en los pocos radianes de giro en torno a la velocidad crítica. Si pasa corriendo por ellos, recoge menos balines, y BAJA no es baja.',
  'shot.why-too-fast-high': 'En este sentido no hay que recoger nada; la prisa cambia poco.',
  'shot.why-too-much-low':
    'El bolsillo toma un volumen, no una fracción: una vez lleno, el resto trabaja con el lado pesado.',
  'shot.why-too-much-high': 'Más masa, pero llena la cámara hacia el eje, donde su brazo es corto.',
  'shot.why-half-lost-low':
    'Lo que queda puede caber todo detrás de la placa: entonces queda poco o nada que tire hacia el otro lado. Una carga corta altera los dos sentidos.',
  'shot.why-half-lost-high':
    'La mitad de la carga, aunque esté más afuera: el tambor ha perdido mucha de su vibración.',
  'shot.why-baffle-off-low': 'Nada retiene los balines: los dos sentidos son iguales, y se acabó BAJA.',
  'shot.why-baffle-off-high':
    'En este sentido la placa no retenía nada, pero su propio acero trabajaba con el lado pesado y su dorso barría los balines hacia allí; faltan las dos cosas.',
  'shot.why-baffle-mirrored-low':
    'Ahora el bolsillo se abre al otro lado: ALTA y BAJA han cambiado de lugar en la palanca.',
  'shot.why-baffle-mirrored-high':
    'Ahora el bolsillo se abre al otro lado: ALTA y BAJA han cambiado de lugar en la palanca.',
  'shot.why-no-gravity-low':
    'Sin peso no cae nada en el bolsillo; solo atrapa lo que la placa encuentra al empezar a girar.',
  'shot.why-no-gravity-high':
    'Sin peso, un poco acaba en el bolsillo, pero la mayoría de los balines corre igual al lado pesado.',
  'shot.why-sticky-low':
    'Para recoger no hacen falta balines resbalosos: la fracción retenida casi no cambia. Lo que cambia es la capa en la pared.',
  'shot.why-sticky-high':
    'Más fricción detiene los balines un poco antes; la mayoría queda igual en el lado pesado.',
  'shot.limit-off': 'Aquí la placa arrancada se saca de la cámara; en una real quedaría entre los balines.',
  'shot.limit-mirrored': 'En la escena, líneas finas muestran dónde estaba la placa como se fabricó.',
  'shot.said-done': '{{run}}: {{captured}} en el bolsillo, desequilibrio {{unbalance}}',

  'shot.runs': 'Corridas lado a lado',
  'shot.col-run': 'Corrida',
  'shot.col-captured': 'Bolsillo',
  'shot.col-ratio': ': A',
  'shot.col-ratio-long': 'U entre la de ALTA como se fabricó',
  'shot.set-fill': 'llenado {{fill}}',
  'shot.set-quadratic': 'arranque suave {{time}} s',
  'shot.set-linear': 'todo el empuje {{time}} s',
  'shot.set-friction': 'fricción {{friction}}',
  'shot.set-baffle-mirrored': 'deflector al revés',
  'shot.set-baffle-off': 'sin deflector',
  'shot.set-no-gravity': 'sin gravedad',
  'shot.set-seed': 'semilla {{seed}}',
  'shot.export': 'Exportar como CSV',
  'shot.clear': 'Borrar mis corridas',

  'shot.notice':
    'Una imagen para aprender, no una medición: una rebanada de la cámara de {{depth}} de fondo que se repite a lo largo, balines redondos de acero de {{ball}} con {{spread}} de variación, fricción simple, sin aceite y sin desgaste. Las corridas paran a {{stop}}, porque por encima de unas diez veces la gravedad todas las fuerzas crecen por igual y ya nada se mueve; U se lleva de la rebanada a la carga completa. Nunca la use para llenar un excitador real.',

  'expected.ballCount': 'de {{low}} a {{high}} balines',
  'expected.hashOfParameters': 'la huella de sus propios parámetros',
  'expected.knownToFit': 'una manera de arrancar para la que se hizo el ajuste de la tabla',
  'expected.notNegative': 'un número no menor que 0',
  'expected.plusOrMinusOne': '1 o -1',
  'expected.positive': 'un número mayor que 0',
  'expected.reachedFrequency': 'una frecuencia a la que llegue el arranque',
  'expected.recording': 'una grabación de los balines',
  'expected.recordingVersion': 'una grabación de una versión que lea este programa',
  'expected.rising': 'tiempos que aumenten',
  'expected.tableFromZero': 'una tabla de dos filas o más que empiece en 0 s',
  'expected.twoOrThree': '2 o 3',
  'expected.whole': 'un número entero',
  'expected.wholeFile': 'el archivo completo',
} as const satisfies Readonly<Record<string, string>>;

export default shot;
