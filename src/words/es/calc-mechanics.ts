/**
 * Questions that the calculations answer, and what the formulas say of inputs and results, with {{name}} standing for a
 * parameter: the Spanish text, not yet reviewed by a native tradesperson. Panels show the same notes.
 */
const calcMechanics = {
  'expected.number': 'un número',
  'expected.above': 'un número mayor que {{limit}}',
  'expected.at-least': 'al menos {{limit}}',
  'expected.below': 'un número menor que {{limit}}',
  'expected.at-most': 'como máximo {{limit}}',
  'expected.within': 'un número de {{low}} a {{high}}',
  'expected.whole-within': 'un número entero de {{low}} a {{high}}',
  'expected.exactly-one': 'exactamente uno de {{keys}}',
  'expected.entries': 'al menos {{limit}} entradas',
  'expected.representable': 'un resultado que quepa en un número',

  'calc.bearing-load.answers':
    '¿Qué carga radial constante gasta un rodamiento tanto como esta carga radial y axial?',
  'calc.bearing-life.answers': '¿Cuánto dura un rodamiento bajo una carga, con la fiabilidad deseada?',
  'calc.bearing-duty.answers':
    '¿Qué carga constante equivale a un ciclo de trabajo, y qué capacidad necesita la vida deseada?',
  'calc.bearing-system.answers': '¿Cuánto duran varios rodamientos de los que ninguno puede fallar?',
  'calc.static-safety.answers': '¿Basta la capacidad estática de un rodamiento para su carga máxima?',
  'calc.fitted-clearance.answers': '¿Cuánto juego radial queda en un rodamiento una vez montado y caliente?',
  'calc.iso-fit.answers':
    '¿Entre qué límites están agujero y eje de un ajuste ISO, y cuánto juego o apriete tiene?',
  'calc.interference-fit.answers':
    '¿Qué presión, tensiones, fuerza de prensa y par da un ajuste con apriete?',
  'calc.heating.answers': '¿Cuánto hay que calentar un anillo para que crezca lo deseado?',
  'calc.bolt.answers': '¿Qué precarga, par de apriete y tensión recibe un perno?',
  'calc.nut-factor.answers': '¿Qué factor de tuerca K resulta de la fricción en la rosca y bajo la cabeza?',
  'calc.star-sequence.answers': '¿En qué orden se aprieta un círculo de pernos?',
  'calc.joint-slip.answers': '¿Con qué carga desliza una unión atornillada por fricción?',
  'calc.rubber-mount.answers': '¿Qué rigidez tiene un montaje de caucho adherido a corte y a compresión?',
  'calc.single-dof.answers': '¿Cómo oscila una masa sobre un resorte y un amortiguador, y cuánto transmite?',
  'calc.roller-response.answers':
    '¿Cuánto oscilan tambor y bastidor sobre el suelo, y queda el tambor en él?',
  'calc.soil-stress.answers':
    '¿Qué tensión vertical produce una carga de la superficie a cierta profundidad?',
  'calc.impact-spacing.answers': '¿A qué distancia caen los golpes de un tambor vibratorio?',
  'calc.roller-time.answers':
    '¿Cómo se mueven en el tiempo tambor y bastidor sobre el suelo, si el tambor puede despegarse, y de qué manera trabaja?',
  'calc.rolling-time.answers': '¿Cuánto se tarda en compactar una superficie?',
  'calc.hydraulic-motor.answers': '¿Qué par, velocidad y potencia da un motor hidráulico?',
  'calc.traction.answers':
    '¿Sube una pendiente un rodillo con tambor y eje motrices, y si no, qué lo detiene?',
  'calc.sling.answers': '¿Qué tensión hay en cada ramal de una eslinga?',
  'calc.two-point-lift.answers': '¿Cómo se reparten una carga dos ganchos?',
  'calc.lift-limit.answers': '¿Puede una persona levantar esta masa a mano?',
  'calc.brine.answers': '¿Qué densidad tiene una salmuera de cloruro de calcio, y cuándo se congela?',
  'calc.brine-fill.answers': '¿Cuánta sal y cuánta agua hay en un llenado de salmuera?',
  'calc.oil-volume.answers': '¿Cuánto aceite hay en un tubo redondo acostado a cierto nivel, y al revés?',
  'calc.alignment.answers':
    '¿Qué laminillas llevan las separaciones de las cuatro esquinas a un mismo valor?',
  'calc.end-play.answers': '¿Cuánto hay que girar la tuerca para el juego axial deseado del rodamiento?',
  'calc.item-statistics.answers':
    '¿Qué tan difícil y qué tan reveladora es cada pregunta de una prueba, y qué tan fiable es la prueba?',

  'calc.vibration-study.answers':
    '¿Cómo se mueven tambor y bastidor de una máquina sobre un suelo, y de qué manera trabaja?',
  'calc.vibration-study.no-time':
    'sin rigidez del suelo no hay movimiento en el tiempo; solo existe la respuesta lineal',
  'calc.isolation-study.answers':
    '¿Qué transmiten los aisladores de una máquina, con algunos duros, agrietados o que faltan?',
  'calc.isolation-study.none-stands': 'donde no queda ningún aislador, descenso y vibración no existen',
  'calc.traction-study.answers':
    '¿Cuál de las cuatro combinaciones de gamas hace subir una pendiente a una máquina?',
  'calc.shared-pressure.answers':
    '¿Qué relación de cilindradas y qué reparto del tiro revelan dos presiones en una misma cuesta?',
  'calc.compaction-study.answers': '¿Qué carga, golpes y tensión le da al suelo el tambor de una máquina?',
  'calc.ballast-study.answers':
    '¿Cuánta carga daría un líquido en el tambor de una máquina, y cuánta amplitud costaría?',
  'calc.identify.answers': '¿Cómo describiría el oficio una máquina?',
  'calc.identify.no-joint': 'el archivo de la máquina no tiene articulación, así que no hay radio de giro',
  'calc.fault.no-isolators': 'una máquina con aisladores entre tambor y bastidor',
  'calc.fault.known-unbalance': 'un sentido cuyo desequilibrio se conozca',
  'calc.fault.within-formulas': 'valores que cubran las fórmulas',

  'mechanics.expected.shares-sum-to-one': 'fracciones del tiempo que sumen 1',
  'mechanics.expected.some-turning': 'al menos una parte del ciclo que gire algún tiempo',
  'mechanics.expected.hole-class': 'una clase de agujero: una de las letras {{letters}} y un grado',
  'mechanics.expected.shaft-class': 'una clase de eje: una de las letras {{letters}} y un grado',
  'mechanics.expected.grade': 'un grado de tolerancia de {{low}} a {{high}}',
  'mechanics.expected.iso-size': 'una medida nominal mayor que {{low}} m, hasta {{high}} m',
  'mechanics.expected.class-with-grades': 'la letra {{letter}} con uno de los grados {{grades}}',
  'mechanics.expected.efficiency':
    'mediciones que den un rendimiento mayor que 0 y hasta 1 (presión, par, caudal y velocidad deben concordar)',
  'mechanics.expected.not-twice': 'ningún rendimiento donde ya lo dan las mediciones',

  'mechanics.note.load-below-radial':
    'el resultado es menor que la carga radial: las tablas de rodamientos piden entonces X = 1 e Y = 0',
  'mechanics.note.hours-need-speed': 'sin velocidad no hay vida en horas',
  'mechanics.note.load-above-half-rating':
    'la carga pasa de la mitad de la capacidad, donde la fórmula de vida ya no vale bien',
  'mechanics.note.a1-weibull':
    'a1 sale de una ley de Weibull de pendiente {{slope}}, no de una tabla de ISO 281',
  'mechanics.note.a1-edition': 'a1 es el de ISO 281:{{edition}}',
  'mechanics.note.shares-scaled': 'las fracciones de tiempo suman {{sum}} y se llevaron a 1',
  'mechanics.note.rating-needs-life': 'sin vida deseada no hay capacidad requerida',
  'mechanics.note.unloaded': 'no hay carga, así que la seguridad estática no existe',
  'mechanics.note.clearance-tables-unconfirmed':
    'las tablas de juego no se leyeron en la norma misma: confírmelas antes de usarlas en un rodamiento real',
  'mechanics.note.may-run-preloaded':
    'con las piezas más apretadas no queda juego: el rodamiento trabaja con precarga y caliente',
  'mechanics.note.any-lock-angle':
    'sin el número de posiciones de bloqueo, la tuerca puede quedar en cualquier ángulo',
  'mechanics.note.zero-may-be-preload':
    'una lectura de 0 puede esconder precarga: afloje la tuerca y mida otra vez',
  'mechanics.note.no-lock-place-in-band':
    'ninguna posición de bloqueo cerca del medio lleva el juego axial a la banda',
  'mechanics.note.solid-has-no-bore':
    'la pieza interior es maciza y no tiene agujero; en toda ella la tensión es {{stress_Pa}} Pa',
  'mechanics.note.press-needs-length-friction':
    'fuerza de prensa y par necesitan el largo del ajuste y la fricción',
  'mechanics.note.temperature-needs-start': 'sin temperatura inicial no hay temperatura final',
  'mechanics.note.too-hot-for-bearing':
    'por encima de {{limit_C}} degC: demasiado caliente para un anillo de rodamiento común (práctica común, sin fuente)',
  'mechanics.note.no-outside-load': 'sin carga exterior y relación de rigidez no hay tensión con carga',
  'mechanics.note.no-separation-load':
    'sin relación de rigidez, o con una de 1, no hay carga a la que se abra la unión',
  'mechanics.note.joint-opens': 'la unión se abre: el perno lleva toda la carga exterior',
  'mechanics.note.above-proof': 'la tensión pasa de la resistencia de prueba',
  'mechanics.note.slip-torque-needs-radius': 'sin el radio del círculo de pernos no hay par de deslizamiento',
  'mechanics.note.no-friction-grip':
    'sin precarga y fricción la unión no sujeta nada, así que su aprovechamiento no existe',
  'mechanics.note.overdamped':
    'con el amortiguamiento crítico o más nada oscila, así que no hay frecuencia amortiguada',
  'mechanics.note.response-needs-frequency': 'sin frecuencia no hay respuesta forzada',
  'mechanics.note.amplitude-needs-force': 'sin fuerza no hay amplitud',
  'mechanics.note.undamped-resonance':
    'en resonancia sin amortiguamiento la oscilación no tiene límite, así que la respuesta no existe',
  'mechanics.note.no-soil':
    'sin rigidez ni amortiguamiento del suelo el tambor cuelga libre, así que no hay contacto',
  'mechanics.note.contact-lost':
    'el tambor se despega del suelo: el modelo lineal no vale, sus números solo muestran eso',
  'mechanics.note.no-motion':
    'el tambor no se mueve, así que la fase y la parte a media frecuencia no existen',
  'mechanics.note.does-not-repeat':
    'el movimiento no se repite en cuatro vueltas del excitador, así que no hay número de vueltas',
  'mechanics.expected.within-steps':
    'rigidez, amortiguamiento, masas y frecuencia que no necesiten más de {{steps}} pasos de tiempo',
  'mechanics.note.standing':
    'parado, todos los golpes caen en un lugar, así que los golpes por metro no existen',
  'mechanics.note.volume-needs-lift': 'sin el espesor de la capa no hay volumen',
  'mechanics.note.y-has-no-say':
    'una línea o franja no tiene fin a lo largo de y, así que y_m no cambia nada',
  'mechanics.note.speed-needs-flow': 'sin caudal o velocidad no hay potencia',
  'mechanics.note.no-load-transfer': 'se deja fuera el peso que en una pendiente pasa al eje de abajo',
  'mechanics.note.high-range-displaces-more':
    '{{end}}: en gama alta el motor debe tener menos cilindrada que en gama baja, y aquí tiene más',
  'mechanics.note.two-legs-count':
    'de {{legs}} ramales solo cuentan 2, porque una carga rígida puede colgar de dos',
  'mechanics.note.use-hoist':
    'demasiado pesado para una persona en esta postura: use un polipasto, o cambie la postura',
  'mechanics.note.brine-sources-part':
    'por encima del 25 % las fuentes se separan: al 30 % dan puntos de congelación de -55 a -41 degC',
  'mechanics.note.brine-frozen':
    'la salmuera se congela a {{freezing_C}} degC, así que no hay densidad del líquido',
  'mechanics.note.mass-needs-density': 'sin densidad no hay masa',
  'mechanics.note.gaps-still-apart': 'las separaciones aún difieren en {{spread_m}} m, más de lo permitido',

  'quiz.expected.row-length': 'tantas respuestas en cada fila como en la primera: {{items}}',
  'quiz.expected.zero-or-one': '0 o 1',
  'quiz.note.few-people': 'solo {{people}} personas: muy pocas para juzgar una pregunta con estas cifras',
  'quiz.note.no-reliability': 'una sola pregunta, o totales iguales para todos, no tienen KR-20',
  'quiz.note.no-correlation':
    'una pregunta que acertaron todos o ninguno, o totales todos iguales, no tienen correlación',
} as const satisfies Readonly<Record<string, string>>;

export default calcMechanics;
