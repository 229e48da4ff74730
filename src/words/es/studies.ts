/** Studies of the whole machine: the Spanish text, not yet reviewed by a native tradesperson. */
const studies = {
  'studies.title': 'Estudios',
  'studies.intro':
    'Lo que hace la máquina como conjunto, calculado de sus propios sólidos y datos. Cambie una entrada y vea qué resulta.',
  'studies.all': 'Todos los estudios',
  'studies.none': 'Esta máquina no tiene aisladores entre tambor y bastidor; aquí no hay nada que estudiar.',
  'studies.wait': 'La máquina se está cargando.',
  'studies.set': 'Lo que usted ajusta',
  'studies.reset': 'Volver a los valores de la máquina',
  'studies.result': 'Resultado',
  'studies.refused': 'Estos valores están fuera de lo que cubren las fórmulas.',
  'studies.unknown-unbalance':
    'Con lo que está ajustado en el panel del excitador no se conoce el desequilibrio: ninguna corrida simulada lo cubre. Vuelva el excitador a sus propios valores, o elija el otro sentido.',
  'studies.notes': 'Límites, supuestos, comprobaciones',
  'studies.limits': 'Dónde termina',
  'studies.assumptions': 'Lo que se da por supuesto',
  'studies.checked': 'Comprobado contra',
  'studies.save-csv': 'Guardar como CSV',
  'studies.save-csv-of': 'Guardar como CSV: {{name}}',
  'studies.table': 'Los números como tabla',
  'studies.table-of': 'Números de: {{name}}',
  'studies.plot-desc':
    'Líneas: {{lines}}. Horizontal: {{across}}. Vertical: {{up}}. La tabla de abajo tiene los números.',

  'studies.name.vibration': 'Vibración',
  'studies.asks.vibration':
    '¿Cuánto se mueven tambor y bastidor, queda el tambor en el suelo, y cuándo salta?',
  'studies.name.isolation': 'Aislamiento',
  'studies.asks.isolation':
    '¿Qué le ahorran los aisladores al bastidor, y qué pasa si están duros, agrietados o faltan?',
  'studies.name.two-speed': 'Tracción en dos velocidades',
  'studies.asks.two-speed': '¿Qué extremo patina primero en una pendiente, y con qué gamas la sube?',
  'studies.name.compaction': 'Compactación',
  'studies.asks.compaction':
    '¿Qué carga, cuántos golpes y cuánta tensión recibe el suelo, y hasta qué profundidad?',
  'studies.name.ballast': 'Lastre en el tambor',
  'studies.asks.ballast': '¿Cuánta carga daría un líquido en el tambor, y cuánta amplitud costaría?',
  'studies.name.identify': 'Identificar la máquina',
  'studies.asks.identify': '¿Cómo describiría el oficio esta máquina, y cómo se dobla y se balancea?',

  'studies.ground': 'Suelo',
  'studies.soil.hung': 'Ninguno: tambor colgado en el aire',
  'studies.soil.loose': 'Relleno suelto',
  'studies.soil.medium': 'A medio compactar',
  'studies.soil.firm': 'Firme',
  'studies.soil.hard': 'Duro: nunca vibre aquí',
  'studies.soil.own': 'Valores propios',
  'studies.frequency': 'Frecuencia',
  'studies.soil-stiffness': 'Rigidez del suelo',
  'studies.soil-damping': 'Amortiguamiento del suelo',
  'studies.hardness': 'Dureza del caucho',
  'studies.shake-stage': 'Hacer vibrar el tambor en la escena',
  'studies.shake-scale':
    'Más lento, y movido {{times}} veces más que en la realidad, tambor y bastidor por igual.',
  'studies.regime.hung': 'El tambor cuelga libre: sin suelo, sin golpes.',
  'studies.regime.continuous-contact': 'Contacto continuo: el suelo sostiene siempre el tambor.',
  'studies.regime.partial-uplift':
    'Despegue parcial: el tambor se despega y golpea una vez en cada vuelta del excitador.',
  'studies.regime.double-jump': 'Doble salto: el tambor golpea fuerte solo en una de cada dos vueltas.',
  'studies.regime.long-repeat': 'El movimiento se repite solo cada tres o cuatro vueltas: el tambor salta.',
  'studies.regime.irregular': 'Ninguna vuelta es como otra: el tambor salta sin orden.',
  'studies.moves': 'Tambor {{drum}}, bastidor {{frame}} hacia cada lado.',
  'studies.passes-on':
    'Del movimiento del tambor llega al bastidor {{left}} en el lado de traslación y {{right}} en el lado de vibración.',
  'studies.compaction-verdict': '{{linear}} en reposo, {{foot}} golpes por pie.',
  'studies.linear-void':
    'La respuesta lineal no vale aquí: el suelo tendría que tirar del tambor hacia abajo. Guíese por el movimiento en el tiempo.',
  'studies.jump-caution':
    'Un tambor que salta afloja lo que ya está firme, y gasta rodamientos, aisladores y al operador. Use la amplitud baja, o pare: este suelo ya está.',
  'studies.in-time': 'En el tiempo',
  'studies.linear': 'Lineal',
  'studies.linear-only': 'Lineal (no vale)',
  'studies.drum-amplitude': 'Tambor, hacia cada lado',
  'studies.frame-amplitude': 'Bastidor, hacia cada lado',
  'studies.drum-phase': 'Tambor respecto a la fuerza',
  'studies.soil-force': 'Fuerza en el suelo, máxima',
  'studies.ground-force': 'Fuerza en el suelo',
  'studies.soil-force-swing': 'Fuerza en el suelo, oscilación en torno a la carga estática',
  'studies.contact-share': 'Tiempo en contacto',
  'studies.half-share': 'Movimiento a la mitad de la frecuencia',
  'studies.exciter-power': 'Potencia al excitador',
  'studies.inputs-used': 'De la máquina',
  'studies.unbalance': 'Desequilibrio',
  'studies.nominal': 'Amplitud nominal',
  'studies.drum-mass': 'Todo lo que vibra',
  'studies.frame-mass': 'Bastidor sobre el tambor',
  'studies.mount-stiffness': 'Aisladores en movimiento',
  'studies.static-load': 'Carga estática',
  'studies.natural-lower': 'bastidor',
  'studies.natural-upper': 'tambor sobre suelo',
  'studies.natural-free': 'tambor y bastidor',
  'studies.natural-lower-long': 'Frecuencia natural, sobre todo bastidor',
  'studies.natural-upper-long': 'Frecuencia natural, sobre todo tambor',
  'studies.now': 'ahora',
  'studies.void': 'la lineal no vale',
  'studies.plot.amplitude': 'Amplitud según la frecuencia (lineal)',
  'studies.plot.phase': 'Fase respecto a la fuerza (lineal)',
  'studies.plot.soil-force': 'Fuerza en el suelo según la frecuencia (lineal)',
  'studies.plot.time': 'Cuatro vueltas en el tiempo',
  'studies.plot.force-time': 'Fuerza en el suelo en las mismas vueltas',
  'studies.amplitude': 'Amplitud',
  'studies.phase': 'Fase',
  'studies.force': 'Fuerza',
  'studies.time': 'Tiempo',
  'studies.down': 'Hacia abajo',
  'studies.drum': 'Tambor',
  'studies.frame': 'Bastidor',
  'studies.checked.vibration':
    'La respuesta lineal contra filas hechas a mano del modelo de dos masas (juego propio: no se conoce uno publicado completo). El movimiento en el tiempo contra la respuesta lineal, dentro del 1 % mientras el suelo sostiene, y contra un programa independiente de ecuaciones diferenciales también al saltar; su energía cuadra.',
  'study.vibration.assume.vertical-only':
    'Tambor y bastidor se mueven solo arriba y abajo; se deja fuera la mitad lateral de la fuerza que gira.',
  'study.vibration.assume.constant-unbalance':
    'El desequilibrio queda como está en el panel del excitador en cada frecuencia del gráfico.',
  'study.vibration.assume.rigid-drum':
    'Tambor y bastidor son rígidos; la parte del bastidor es lo que descansa en el eje del tambor.',
  'study.vibration.assume.soil-spring': 'El suelo es un resorte y un amortiguador que empujan y nunca tiran.',
  'study.vibration.assume.training-soil': 'Los suelos ofrecidos son valores de práctica, no un sitio medido.',
  'study.vibration.assume.start-at-rest':
    'En el tiempo: desde el reposo con el excitador a plena velocidad, mirado después de 8 s.',
  'study.vibration.limit.linear-contact':
    'La respuesta lineal vale solo mientras la oscilación de la fuerza en el suelo no pase de la carga estática.',
  'study.vibration.limit.no-rocking':
    'Izquierda y derecha se mueven igual: el cabeceo del tambor queda fuera de este modelo.',
  'study.vibration.limit.no-plastic':
    'El suelo no cede de forma permanente, así que no se predice compactación.',
  'study.vibration.limit.several-motions':
    'Un tambor que salta puede hacerlo de varias maneras; otro arranque puede acabar en otra.',

  'studies.sides': 'Qué está en qué lado',
  'studies.sides-stage': 'Mostrar los lados en la escena',
  'studies.sides-count':
    '{{inside}} piezas por dentro, {{isolators}} aisladores, {{outside}} piezas por fuera. Mueva el control de la vista explosionada para ver los aisladores.',
  'studies.side.inside': 'Rayado: por dentro de los aisladores. Todo vibra.',
  'studies.side.isolators': 'Punteado: los aisladores.',
  'studies.side.outside': 'Liso: por fuera. No debe vibrar.',
  'studies.side-name.inside': 'Por dentro: vibra',
  'studies.side-name.isolators': 'Aisladores',
  'studies.side-name.outside': 'Por fuera: no debe vibrar',
  'studies.side-list': 'Las piezas como lista',
  'studies.hardness-left': 'Caucho, lado de traslación',
  'studies.hardness-right': 'Caucho, lado de vibración',
  'studies.isolators-left': 'Aisladores, lado de traslación (izquierda)',
  'studies.isolators-right': 'Aisladores, lado de vibración (derecha)',
  'studies.condition.sound': 'sano',
  'studies.condition.cracked': 'agrietado',
  'studies.condition.missing': 'falta',
  'studies.crack-share': 'Una grieta le quita de su caucho',
  'studies.hours': 'Horas al día',
  'studies.end-left': 'Lado de traslación',
  'studies.end-right': 'Lado de vibración',
  'studies.standing': 'Aisladores en pie',
  'studies.stiffness-rest': 'Rigidez en reposo',
  'studies.sag': 'Descenso bajo el bastidor',
  'studies.natural': 'Frecuencia natural',
  'studies.transmissibility': 'Transmitido (bastidor entre tambor)',
  'studies.frame-peak': 'Bastidor, aceleración máxima',
  'studies.weighted': 'Ponderada para una persona (r.m.s.)',
  'studies.a8': 'Exposición diaria A(8)',
  'studies.exposure': 'En palabras de 2002/44/EC',
  'studies.exposure.below-action': 'bajo el valor de acción',
  'studies.exposure.above-action': 'sobre el valor de acción',
  'studies.exposure.above-limit': 'sobre el valor límite',
  'studies.exposure-note':
    'Esto no es una medición, y nadie viaja sobre el bastidor delantero. La exposición se mide en el asiento, según ISO 2631-1; las palabras solo muestran en qué escala se leen esas cifras.',
  'studies.level-difference': 'Diferencia de descenso entre los dos extremos: {{value}}.',
  'studies.passes-all': 'todo',
  'studies.plot.transmissibility': 'Lo transmitido según la frecuencia',
  'studies.checked.isolation':
    'Caucho: P. B. Lindley, Engineering Design with Natural Rubber (tabla de memoria). Transmisibilidad: T. Bevan, The Theory of Machines, cap. 15. Ponderación: ISO 2631-1, tabla 3 (de memoria). Valores: Directiva 2002/44/EC, art. 3.',
  'study.isolation.assume.rubber-table':
    'Rigidez según la dureza por una tabla publicada, lineal entre sus filas.',
  'study.isolation.assume.shear':
    'Tambor y bastidor se mueven de través a los ejes de los aisladores: caucho a corte.',
  'study.isolation.assume.stiffer-in-motion':
    'En movimiento el caucho es más rígido que en reposo por el factor propio de la máquina (lo usual es 1,1 a 1,5).',
  'study.isolation.assume.each-end': 'Cada extremo lleva por sí solo la mitad de la parte del bastidor.',
  'study.isolation.assume.crack-share': 'Un aislador agrietado pierde rigidez según pierde sección.',
  'study.isolation.assume.drum-linear': 'El tambor vibra sobre relleno suelto, según la respuesta lineal.',
  'study.isolation.limit.no-measurement': 'Un cálculo no es una medición.',
  'study.isolation.limit.hardness-scatter':
    'Cinco puntos de dureza cambian la rigidez en 20 a 30 %; el caucho envejece.',
  'study.isolation.limit.drum-lifts':
    'Donde el tambor se despega, al bastidor le llegan también otras frecuencias.',
  'study.isolation.limit.not-the-seat':
    'Entre bastidor delantero y asiento están la articulación, el bastidor trasero y la suspensión propia del asiento.',

  'studies.no-drive': 'El archivo de la máquina no tiene transmisión de traslación.',
  'studies.ground.clay-dry': 'Arcilla o limo seco',
  'studies.ground.clay-wet': 'Arcilla o limo mojado',
  'studies.ground.gravel': 'Grava',
  'studies.ground.sand': 'Arena suelta',
  'studies.adhesion-span':
    'Las tablas publicadas no coinciden: neumático {{tyre_low}} a {{tyre_high}}, tambor liso {{drum_low}} a {{drum_high}}. Ajuste lo que muestre su suelo.',
  'studies.grade_percent': 'Pendiente',
  'studies.drum_adhesion': 'Adherencia, tambor',
  'studies.axle_adhesion': 'Adherencia, neumáticos',
  'studies.rolling_resistance_N_per_N': 'Resistencia a la rodadura',
  'studies.relief': 'Alivio',
  'studies.speed_m_s': 'Velocidad',
  'studies.four-ways': 'Cuatro maneras de subir',
  'studies.way': 'Tambor {{drum}}, eje {{axle}}:',
  'studies.way-needs': 'necesita',
  'studies.way-slips': 'el tambor patina a {{drum}}, el eje a {{axle}}',
  'studies.way-more': 'el tambor tira {{share}}, velocidad máxima {{speed}}',
  'studies.range-low': 'baja',
  'studies.range-high': 'alta',
  'studies.drum-slips': 'Patina el tambor',
  'studies.axle-slips': 'Patina el eje',
  'studies.climbs': 'sube',
  'studies.stops-relief': 'abre el alivio, no avanza',
  'studies.stops-drum': 'patina el tambor, no avanza',
  'studies.stops-axle': 'patina el eje, no avanza',
  'studies.relief-at':
    'El alivio abre a {{pressure}}. La gama baja gira lento y tira fuerte; la gama alta tiene menos cilindrada, así que la misma presión tira menos.',
  'studies.pull-needed': 'Tiro necesario',
  'studies.drum-pull': 'Tiro del tambor',
  'studies.axle-pull': 'Tiro del eje',
  'studies.both-pull': 'Los dos juntos',
  'studies.pull-available': 'Tiro máximo disponible',
  'studies.speed-driven': 'Velocidad de marcha',
  'studies.pressure': 'Presión',
  'studies.pull': 'Tiro',
  'studies.plot.pull': 'Tiro según la presión común',
  'studies.circuit-label':
    'Circuito hidráulico: una bomba variable alimenta en paralelo el motor del tambor y el motor del eje. Lado de alta {{pressure}}, carga {{charge}}, motor del tambor {{drum}}, motor del eje {{axle}}. {{state}}',
  'studies.circuit-pump': 'bomba',
  'studies.circuit-drum': 'tambor',
  'studies.circuit-axle': 'eje',
  'studies.circuit-spins': 'patina',
  'studies.circuit-high': 'lado de alta {{pressure}}',
  'studies.circuit-low': 'retorno',
  'studies.circuit-charge': 'carga {{pressure}}',
  'studies.circuit-climbs':
    'Sube: los dos motores comparten una presión, y cada uno toma el caudal que piden sus ruedas.',
  'studies.circuit-stops-relief': 'No avanza: la válvula de alivio abre antes de que haya tiro suficiente.',
  'studies.circuit-stops-drum': 'No avanza: el tambor patina, y la presión ya no sube para el eje.',
  'studies.circuit-stops-axle': 'No avanza: el eje patina, y la presión ya no sube para el tambor.',
  'studies.circuit-stops-none': 'No avanza.',
  'studies.example': 'Ejemplo resuelto',
  'studies.example-given':
    'Dos motores iguales. La pendiente necesita {{low}} con los dos en gama baja, pero el tambor se suelta a {{slip}}. Con el tambor en gama alta la máquina sube a {{high}} sin patinar.',
  'studies.example-ratio': 'Cilindrada, alta entre baja',
  'studies.example-shares': 'Tiro, tambor / eje',
  'studies.example-slip-high': 'Tambor en gama alta patina a',
  'studies.example-heard': 'Regla que se oye decir',
  'studies.example-why':
    'En psi: 4.000 necesarios, 3.500 a los que se suelta el tambor, 5.000 a los que sube. Ellos solos fijan el reparto: 2 × 4.000 = (1 + relación) × 5.000. La regla que se oye decir es cerca de 30 / 70; necesitaría una relación de 3/7 y 5.600 psi. Es una regla para otros motores, no una cuenta mala: el reparto sigue a las cilindradas montadas. Práctica común, sin fuente.',
  'studies.checked.two-speed':
    'Motores: A. Esposito, Fluid Power with Applications, cap. 7. Pendiente, resistencia a la rodadura, tracción: S. W. Nunnally, Construction Methods and Management, cap. 4. El ejemplo resuelto, hasta la última cifra.',
  'study.two-speed.assume.shared-pressure':
    'Los dos motores cuelgan en paralelo de un circuito; ven una misma presión.',
  'study.two-speed.assume.training-drive':
    'Cilindradas, reducción y alivio son valores de práctica del archivo de esta máquina.',
  'study.two-speed.assume.adhesion-table':
    'Adherencia y resistencia a la rodadura parten de tablas publicadas que no coinciden.',
  'study.two-speed.assume.true-grade':
    'Seno y coseno de la pendiente verdadera, no la regla de pendientes pequeñas.',
  'study.two-speed.assume.pressure-across':
    'La presión es la que hay entre los puertos de los motores: lado de alta menos retorno.',
  'study.two-speed.limit.no-load-transfer':
    'Se deja fuera el peso que en una pendiente pasa al extremo de abajo.',
  'study.two-speed.limit.steady': 'Marcha pareja: sin arrancar, sin dirección, sin ola de tierra delante.',
  'study.two-speed.limit.speed-from-pump':
    'La velocidad máxima es solo el caudal de la bomba; puede faltar antes la potencia del motor diésel.',
  'study.two-speed.limit.set-your-own-adhesion':
    'Ninguna tabla conoce su suelo: ponga la adherencia que encuentre.',

  'studies.soil_modulus_Pa': 'Rigidez del suelo (E)',
  'studies.soil_density_kg_m3': 'Suelo, como está',
  'studies.lift_m': 'Capa',
  'studies.pad_sink_m': 'Los pisones se hunden',
  'studies.static-linear': 'Carga lineal estática',
  'studies.total-force': 'Fuerza total aplicada',
  'studies.total-linear': 'Fuerza total sobre el ancho',
  'studies.spacing': 'De golpe a golpe',
  'studies.blows': 'Golpes',
  'studies.blows-value': '{{metre}} por metro, {{foot}} por pie',
  'studies.blows-soil': 'En suelo',
  'studies.blows-soil-text':
    'No hay número fijo. Lo común es 3 a 5 km/h (de memoria, sin fuente); a las frecuencias usuales eso da unos 7 a 11 golpes por pie. Más lento da más; decide la prueba del suelo.',
  'studies.blows-asphalt': 'En asfalto',
  'studies.blows-asphalt-text':
    '{{from}} a {{to}} golpes por pie es una regla para carpetas de asfalto (tabla del oficio, sin fuente nombrada), para que no queden ondas. No es límite para suelo.',
  'studies.contact-width': 'El tambor liso apoya en una franja de',
  'studies.contact-smooth': 'Tambor liso, presión',
  'studies.contact-padded': 'Tambor con pisones, presión sobre {{count}} pisones',
  'studies.at-lift': 'Tensión a {{depth}}',
  'studies.two-stresses': '{{standing}} en reposo, {{total}} total',
  'studies.plot.depth': 'Tensión bajo el centro del tambor, según la profundidad',
  'studies.depth': 'Profundidad',
  'studies.stress': 'Tensión',
  'studies.line-static': 'línea, carga estática',
  'studies.strip-static': 'franja, carga estática',
  'studies.line-total': 'línea, fuerza total',
  'studies.strip-total': 'franja, fuerza total',
  'studies.own-weight': 'el peso propio del suelo',
  'studies.claims': '¿Hasta qué profundidad llega?',
  'studies.claims-text':
    'De vez en cuando se habla de profundidades de hasta {{claim}} (práctica común, sin fuente). Calculado, aun la fuerza total entera deja allí {{stress}}, junto a {{own}} del peso propio del suelo. Se ha reducido a {{share}} del peso del suelo a {{standing}} en reposo y a {{total}} con la fuerza total.',
  'studies.claims-limit': 'No cuente con ello: compacte por capas y pruebe cada capa.',
  'studies.guidance': 'Capas y pasadas, solo orientación',
  'studies.guidance-lift':
    'Capas típicas: {{from}} a {{to}}; delgadas para arcilla, gruesas para arena y grava.',
  'studies.roller': 'Rodillo',
  'studies.roller.padded': 'vibratorio, con pisones',
  'studies.roller.smooth': 'vibratorio, liso, suelo',
  'studies.roller.smooth-rock': 'vibratorio, liso, roca',
  'studies.roller.tyre': 'de neumáticos',
  'studies.passes': 'Pasadas',
  'studies.guidance-source':
    'NAVFAC DM-7.2 (1982), cap. 2, tabla 5, de memoria: confirme antes de usar. Decide una franja de prueba.',
  'studies.checked.compaction':
    'Tensión: B. M. Das, Principles of Geotechnical Engineering, cap. 10, ejemplos. Contacto: K. L. Johnson, Contact Mechanics, cap. 4 (de memoria). Golpes: velocidades y frecuencias publicadas de rodillos de asfalto.',
  'study.compaction.assume.elastic': 'El suelo es elástico, parejo y profundo, y la carga está quieta.',
  'study.compaction.assume.long-line':
    'El tambor se toma como sin fin a lo ancho; cerca de sus extremos, y más hondo que su ancho más o menos, la tensión real es menor.',
  'study.compaction.assume.hertz': 'La franja en que apoya sale de un tambor redondo sobre suelo elástico.',
  'study.compaction.assume.total-force':
    'La fuerza total aplicada es carga estática más fuerza centrífuga, como en los datos nominales.',
  'study.compaction.assume.pads-count': 'Los pisones que tocan se cuentan con una hilera recta hacia abajo.',
  'study.compaction.limit.not-depth':
    'La tensión según la profundidad muestra cómo se reduce, no hasta dónde se afirma el suelo.',
  'study.compaction.limit.total-is-a-rating':
    'La fuerza total aplicada es un dato nominal, no la fuerza en el suelo: vea el estudio de vibración.',
  'study.compaction.limit.claims': 'Lo que se dice de grandes profundidades no es base para un trabajo.',
  'study.compaction.limit.test-the-ground':
    'Deciden el contenido de agua y el grano; solo lo dice una prueba del suelo.',

  'studies.no-room': 'Los sólidos de esta máquina no muestran un espacio cerrado en el tambor.',
  'studies.ballast-notice':
    'Una pregunta de qué pasaría. {{name}} trabaja con el tambor seco: muchos tambores vibratorios lo hacen, con tapón o sin él. Llene solo lo que permitan las instrucciones de la propia máquina.',
  'studies.fill_share': 'Llenado',
  'studies.salt_mass_percent': 'Cloruro de calcio, en masa',
  'studies.temperature_C': 'Temperatura',
  'studies.room': 'Espacio en el tambor',
  'studies.fill': 'Líquido',
  'studies.density': 'Densidad',
  'studies.freezing': 'Se congela a',
  'studies.added': 'Carga añadida',
  'studies.salt-water': 'Sal / agua',
  'studies.amplitude-high': 'Amplitud nominal, ALTA',
  'studies.amplitude-low': 'Amplitud nominal, BAJA',
  'studies.plugs': 'Tapones del lastre',
  'studies.amplitude-cost': 'Cuesta {{loss}} de la amplitud en los dos sentidos.',
  'studies.of-dry': 'Del tambor seco',
  'studies.plot.ballast': 'Carga ganada, amplitud perdida',
  'studies.ballast-warning':
    'El cloruro de calcio ataca el acero y daña plantas y agua. Recoja cada gota, nunca lo drene al suelo; enjuague lo que tocó. Calor de la mezcla: la sal al agua, despacio, con los ojos protegidos.',
  'studies.checked.ballast':
    'Espacio: fórmula de un cilindro hueco, dentro del 0,3 %. Salmuera: ajuste de una biblioteca de propiedades a datos publicados; las fuentes coinciden dentro del 0,4 % y 1 K hasta el 25 %.',
  'study.ballast.assume.room-from-solids':
    'El espacio se recorta de los sólidos de la máquina: camisa, tapas, tubo del excitador, tubos.',
  'study.ballast.assume.moves-with-shell':
    'El líquido se mueve con la camisa: la mayor pérdida posible; en realidad se retrasa y chapotea.',
  'study.ballast.assume.brine-table':
    'Densidad y punto de congelación por tabla, la sal como cloruro de calcio anhidro.',
  'study.ballast.assume.air-space':
    'Llenar unas tres cuartas partes deja aire para que se dilate (práctica común).',
  'study.ballast.limit.runs-dry':
    'Muchos tambores vibratorios están hechos para trabajar secos: un líquido puede quedar fuera de aquello para lo que se hicieron rodamientos y retenes.',
  'study.ballast.limit.not-above-25':
    'No pase de 25 a 28 %: las fuentes se separan en el punto de congelación, y pasado el 30 % más o menos vuelve a subir.',
  'study.ballast.limit.corrosion': 'La salmuera corroe el tambor desde dentro, primero las soldaduras.',
  'study.ballast.limit.environment':
    'Recoja la salmuera y mándela a disposición; otras sales y el glicol tienen otras curvas.',
  'study.ballast.limit.diesel':
    'Hace mucho se usó gasóleo. Arde, se escapa, envenena suelo y agua, y soltarlo es contra la ley: nunca.',

  'studies.trade-words':
    'Rodillo vibratorio para suelos, {{drum}}, un solo tambor de {{width}} pulgadas, clase de {{mass}} toneladas, {{kind}}.',
  'studies.drum-type.smooth': 'de tambor liso',
  'studies.drum-type.padded': 'de tambor con pisones',
  'studies.mass-class.light': 'liviano',
  'studies.mass-class.medium': 'mediano',
  'studies.mass-class.heavy': 'pesado',
  'studies.mass-class.extra-heavy': 'extrapesado',
  'studies.pads-on': 'Segmentos con pisones atornillados',
  'studies.drum-width': 'Ancho del tambor',
  'studies.width-value': '{{width}} ({{inches}} in)',
  'studies.operating-mass': 'Masa en servicio',
  'studies.drum-axle-mass': 'Sobre el tambor',
  'studies.axle-value': '{{mass}}, {{share}}',
  'studies.rear-axle-mass': 'Sobre el eje trasero',
  'studies.steers': 'Dobla',
  'studies.oscillates': 'Oscila',
  'studies.turn-radius': 'Radio de giro, por fuera del tambor',
  'studies.end-rise': 'Un extremo del tambor sobre el otro',
  'studies.joint': 'La articulación del medio',
  'studies.joint-text':
    'La máquina dobla sobre dos pasadores verticales y oscila sobre un pasador que va a lo largo, para que tambor y neumáticos queden todos en el suelo desparejo. El eje trasero está fijo al bastidor trasero.',
  'studies.joint-stage': 'Mostrar la articulación en la escena',
  'studies.joint-note':
    'Los cilindros de dirección y la barra de bloqueo no están en esta imagen. En el taller la barra de bloqueo está puesta.',
  'studies.steering': 'Ángulo de dirección',
  'studies.oscillation': 'Oscilación',
  'studies.straight': 'Recta y nivelada',
  'studies.checked.identify':
    'Radio de giro: geometría, las líneas de los dos ejes se cortan en un punto. Lo demás son datos propios de la máquina.',
  'study.identify.assume.own-data': 'Anchos y masas son los del archivo de la máquina.',
  'study.identify.assume.mass-classes':
    'Liviano hasta 5 t, mediano hasta 10 t, pesado hasta 16 t: práctica común, sin fuente; otros ponen los límites en otra parte.',
  'study.identify.assume.no-sideslip': 'Giro en suelo nivelado sin deslizar de lado.',
  'study.identify.limit.describe-not-name':
    'Una descripción no es un nombre de modelo: ayuda a pedir el manual correcto, nada más.',
  'study.identify.limit.plate-counts':
    'Para piezas y llenados solo valen la placa y las instrucciones del fabricante.',
} as const satisfies Readonly<Record<string, string>>;

export default studies;
