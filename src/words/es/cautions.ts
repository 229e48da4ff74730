/** Cautions that machine files name, one message each: the hazard, what it does, how to avoid it. Spanish text, not yet reviewed by a native tradesperson. */
const cautions = {
  'caution.lock-out':
    'La máquina puede arrancar o moverse. Pare el motor, retire la llave, bloquee y etiquete antes de meter las manos.',
  'caution.articulation-lock':
    'Los bastidores pueden cerrarse y aplastarlo. Monte primero la barra de bloqueo de la articulación con sus pasadores.',
  'caution.chock-drum':
    'El rodillo puede echarse a rodar. Calce el tambor y las ruedas en ambos lados, por delante y por detrás.',
  'caution.crib-side-plates':
    'El bastidor descansa sobre el tambor a través de los aisladores. Ponga apoyo de maderos bajo las dos placas laterales antes de soltar cualquier aislador o soporte; nunca confíe solo en un gato.',
  'caution.relieve-pressure':
    'El aceite a presión puede atravesar la piel e inyectarse en el cuerpo. Pare el motor, mueva todas las palancas, descargue la presión y luego abra la línea despacio, con los ojos y las manos apartados.',
  'caution.hot-oil':
    'El aceite después del trabajo puede quemar. Déjelo enfriar y drénelo en una bandeja, con guantes puestos.',
  'caution.lift-heavy':
    'Una carga que cae puede matar. Use eslingas certificadas y cáncamos enroscados a fondo, manténgase apartado y no ice más de lo que está marcado en el polipasto.',
  'caution.strap-exciter':
    'Al quedar libre, el lado pesado del excitador cae de golpe y puede aplastar una mano. Antes, gírelo con el lado pesado hacia abajo y sujételo con una faja a la línea del eje.',
  'caution.hold-drum':
    'Al retirar el motor de traslación, el tambor pierde su único freno. Inmovilice el tambor con calzas antes de aflojar sus pernos.',
  'caution.spring-brake':
    'El freno dentro del motor está cerrado por resortes muy fuertes. Nunca abra su tapa sin la herramienta de retención hecha para él.',
  'caution.spring-load':
    'Las piezas bajo carga de resorte pueden salir disparadas. Quite la carga por etapas, parejo, y manténgase fuera de su trayectoria.',
  'caution.never-weld-closed':
    'Un cuerpo o un tambor cerrado puede reventar al calentarse. Ábralo, drénelo, límpielo y ventílelo antes de soldar o cortar.',
  'caution.earth-clamp':
    'La corriente que pasa por un rodamiento lo arruina. Ponga la pinza de masa junto a la soldadura, para que ninguna corriente pase por un rodamiento.',
  'caution.puller-guard':
    'Un extractor o un anillo puede reventar bajo carga. Cúbralo con una protección y manténgase fuera de su trayectoria.',
  'caution.never-hammer-rings':
    'Los anillos templados se astillan al golpearlos. Prense o tire del anillo que lleva el apriete; nunca lo golpee con martillo.',
  'caution.hot-parts':
    'Las piezas calientes queman. Márquelas como calientes y manéjelas con guantes térmicos secos.',
  'caution.guide-bar':
    'Al extraer el cubo, el extremo derecho del excitador queda sin apoyo y cae. Sosténgalo con la barra guía a través del agujero de la punta de eje.',
  'caution.no-concrete':
    'Vibrar sobre concreto o en el banco sobrecarga los rodamientos, los aisladores y el bastidor. Vibre solo sobre suelo o sobre los neumáticos de prueba.',
  'caution.soft-ground-only':
    'Sobre superficie dura, los pisones rompen los pernos de sus bridas y sacuden el bastidor. Use los segmentos con pisones solo en suelo blando y cohesivo.',
  'caution.keep-clean':
    'La arenilla dentro del tubo arruina los rodamientos. Limpie primero alrededor de la unión y tape cada abertura de inmediato.',
  'caution.cap-ports':
    'La suciedad en una toma hidráulica arruina un motor. Tape las mangueras y las tomas en cuanto las suelte.',
  'caution.mark-position': 'Marque la posición de las piezas entre sí, para que vuelvan a quedar igual.',
  'caution.keep-shims':
    'Guarde cada paquete de laminillas con su aislador; mezclados, cargan los aisladores desparejo.',
  'caution.seal-lip':
    'Un retén con el labio cortado fuga. Cubra las roscas y las estrías antes de pasarlo sobre ellas.',
} as const satisfies Readonly<Record<string, string>>;

export default cautions;
