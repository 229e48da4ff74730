/**
 * Generated questions (their asking, what wrong answers mistake, their explanation): the Spanish text, not yet reviewed by
 * a native tradesperson.
 */
export default {
  'gen.heaviest.ask': '¿Cuál de estas piezas es la más pesada?',
  'gen.heaviest.lighter': 'Pesa solo {{mass}}.',
  'gen.heaviest.explain': 'Peso de {{part}}: {{mass}}. Sepa lo que iza antes de izarlo.',
  'gen.moves-with.exciter':
    'El excitador funciona y el rodillo está parado. ¿Cuáles de estas giran a la velocidad del excitador?',
  'gen.moves-with.drum': 'El rodillo avanza sin vibración. ¿Cuáles de estas dan vueltas con el tambor?',
  'gen.moves-with.spindle':
    'El rodillo avanza sin vibración. ¿Cuáles de estas van del lado de la punta de eje, por dentro de los aisladores, y no giran?',
  'gen.moves-with.why-exciter': 'Gira a la velocidad del excitador.',
  'gen.moves-with.why-drum': 'Da vueltas con el tambor.',
  'gen.moves-with.why-frame': 'Es parte del bastidor y no gira.',
  'gen.moves-with.why-rear-frame': 'Es parte del bastidor trasero.',
  'gen.moves-with.why-spindle': 'Está quieta con la punta de eje: por dentro de los aisladores, sin girar.',
  'gen.moves-with.explain-exciter':
    'Acoplado al eje del excitador: {{parts}}. Lo demás, a lo sumo, vibra con él.',
  'gen.moves-with.explain-drum': 'Fijado al tambor que rueda: {{parts}}.',
  'gen.moves-with.explain-spindle':
    'Fijado a la punta de eje quieta: {{parts}}. El tambor rueda alrededor sobre sus rodamientos de rueda.',
  'gen.shakes.ask': 'La vibración está puesta. ¿Cuáles de estas vibran con el tambor?',
  'gen.shakes.inside': 'Está por dentro de los aisladores: vibra.',
  'gen.shakes.outside': 'Está por fuera de los aisladores: la libran de casi toda la vibración.',
  'gen.shakes.explain':
    'Los aisladores separan los dos lados. Todo lo atornillado al lado del tambor vibra; el lado del bastidor no debe vibrar.',
  'gen.which-part.does': '¿Qué pieza es esta? {{text}}',
  'gen.which-part.fails': '¿Qué pieza falla así? {{text}}',
  'gen.which-part.why': 'De esa se diría: {{text}}',
  'gen.which-part.explain': 'Es: {{part}}.',
  'gen.match.ask': '¿Qué hace cada una de estas piezas?',
  'gen.match.explain': 'Abra cada pieza para ver dónde está: su lugar a menudo dice lo que hace.',
  'gen.pick.ask': 'Muestre la pieza: {{part}}.',
  'gen.pick.explain': 'La pieza es esta: {{part}}.',
  'gen.change.more': 'Sube {{share}}',
  'gen.change.less': 'Baja {{share}}',
  'gen.change.same': 'Queda como está',
  'gen.force.faster': 'El excitador gira {{share}} más rápido. ¿Qué hace la fuerza centrífuga?',
  'gen.force.slower': 'El excitador gira {{share}} más lento. ¿Qué hace la fuerza centrífuga?',
  'gen.force.why-linear': 'Eso hace la velocidad. La fuerza sigue a la velocidad por la velocidad.',
  'gen.force.why-cube': 'Demasiado: la fuerza sigue al cuadrado de la velocidad, no al cubo.',
  'gen.force.why-same': 'El desequilibrio no cambia. La fuerza sí.',
  'gen.force.why-inverse': 'Es al revés.',
  'gen.force.explain':
    'La fuerza crece con el cuadrado de la velocidad: {{speed}} veces la velocidad es {{force}} veces la fuerza.',
  'gen.follows.force-up': 'El excitador gira más rápido. ¿Qué hace su fuerza centrífuga?',
  'gen.follows.force-down': 'El excitador gira más lento. ¿Qué hace su fuerza centrífuga?',
  'gen.follows.unbalance-up': 'El excitador gira más rápido en el mismo sentido. ¿Qué hace su desequilibrio?',
  'gen.follows.unbalance-down':
    'El excitador gira más lento en el mismo sentido. ¿Qué hace su desequilibrio?',
  'gen.follows.weight-up': 'El excitador gira más rápido. ¿Qué hace la carga lineal estática del tambor?',
  'gen.follows.weight-down': 'El excitador gira más lento. ¿Qué hace la carga lineal estática del tambor?',
  'gen.follows.life-up': 'El excitador gira más rápido. ¿Qué hace la vida de sus rodamientos, en horas?',
  'gen.follows.life-down': 'El excitador gira más lento. ¿Qué hace la vida de sus rodamientos, en horas?',
  'gen.follows.why-force': 'La misma masa en una vuelta más rápida tira más fuerte.',
  'gen.follows.why-unbalance': 'El desequilibrio es masa por su distancia al eje. La velocidad no entra.',
  'gen.follows.why-weight':
    'Lo que el tambor pesa sobre el suelo no depende de lo rápido que gire el excitador.',
  'gen.follows.why-life':
    'La carga crece con el cuadrado de la velocidad, y las horas de un rodamiento se acortan aún más rápido.',
  'gen.follows.explain-force': 'La fuerza centrífuga crece con el cuadrado de la velocidad.',
  'gen.follows.explain-unbalance':
    'El desequilibrio no cambia mientras los balines queden donde están. Solo cambia la fuerza.',
  'gen.follows.explain-weight': 'La carga lineal estática es peso entre ancho. La vibración se suma encima.',
  'gen.follows.explain-life':
    'Un décimo más de velocidad es cerca de un quinto más de carga, cerca de la mitad de la vida en vueltas, y las vueltas también pasan más rápido.',
  'gen.force-number.ask':
    'Una masa de {{mass}} gira a {{radius}} del eje con {{frequency}}. ¿Cuánto vale la fuerza centrífuga?',
  'gen.force-number.explain':
    'El desequilibrio es {{unbalance}}. Por el cuadrado de 2π por la frecuencia, da {{force}}.',
  'gen.two-weights.together':
    'Un peso fijo de {{fixed}} y uno oscilante de {{swinging}} están del mismo lado. ¿Cuánto es el desequilibrio?',
  'gen.two-weights.against':
    'Un peso fijo de {{fixed}} y uno oscilante de {{swinging}} están en lados opuestos. ¿Cuánto es el desequilibrio?',
  'gen.two-weights.square':
    'Un peso fijo de {{fixed}} y uno oscilante de {{swinging}} están a ángulo recto. ¿Cuánto es el desequilibrio?',
  'gen.two-weights.explain-together': 'Del mismo lado se suman: {{total}}.',
  'gen.two-weights.explain-against': 'En lados opuestos se restan: {{total}}.',
  'gen.two-weights.explain-square':
    'A ángulo recto se suman como los lados de un triángulo rectángulo: {{total}} en el lado largo.',
  'gen.life.heavier':
    'La carga de un rodamiento de rodillos sube {{share}}. ¿Qué hace su vida nominal, en vueltas?',
  'gen.life.lighter':
    'La carga de un rodamiento de rodillos baja {{share}}. ¿Qué hace su vida nominal, en vueltas?',
  'gen.life.why-linear': 'La vida no sigue a la carga uno a uno. La sigue con la potencia de diez tercios.',
  'gen.life.why-same': 'La carga es lo que más pesa en la vida.',
  'gen.life.why-square': 'Más que el cuadrado: la potencia es diez tercios.',
  'gen.life.why-way': 'Al revés: más carga, menos vida.',
  'gen.life.explain':
    'La vida nominal de los rodamientos de rodillos va con la carga a la potencia de menos diez tercios.',
  'gen.range.low': 'Gama baja',
  'gen.range.high': 'Gama alta',
  'gen.pull.ask':
    'Motor del tambor en {{range}}: {{displacement}} por vuelta, rendimiento {{efficiency}}, radio de rodadura {{radius}}. ¿Con cuánta fuerza tira el tambor a {{pressure}}, si no patina?',
  'gen.pull.explain':
    'Presión por cilindrada entre 2π es el par; por el rendimiento y entre el radio, es el tiro: {{force}}.',
  'gen.slope.pull-drum':
    'El tambor debe tirar lo más fuerte posible con una presión dada. ¿Qué gama de su motor?',
  'gen.slope.pull-axle':
    'El eje debe tirar lo más fuerte posible con una presión dada. ¿Qué gama de su motor?',
  'gen.slope.speed-drum': 'El tambor debe girar lo más rápido que permita la bomba. ¿Qué gama de su motor?',
  'gen.slope.speed-axle': 'El eje debe girar lo más rápido que permita la bomba. ¿Qué gama de su motor?',
  'gen.slope.alike': 'Da lo mismo',
  'gen.slope.why-low': 'La gama baja toma más aceite por vuelta: más tiro, pero más lento.',
  'gen.slope.why-high': 'La gama alta toma menos aceite por vuelta: más rápido, pero menos tiro.',
  'gen.slope.why-alike': 'La gama cambia cuánto aceite toma una vuelta, y eso es tiro y también velocidad.',
  'gen.slope.explain':
    'Más aceite por vuelta es más tiro y menos velocidad; menos aceite por vuelta, al revés.',
  'gen.fault.ask': 'Esto se midió en el banco de pruebas. ¿Qué concuerda con todo?',
  'gen.fault.reading': '{{name}}: {{value}}. En una máquina sana, cerca de {{usual}}.',
  'gen.fault.why': 'Entonces la lectura sería cerca de {{value}}: {{name}}.',
  'gen.fault.explain': '{{fault}}. {{does}}',
  'gen.linear.ask':
    'Una carga de eje de {{mass}} descansa en un tambor de {{width}} de ancho. ¿Cuánto es la carga lineal estática?',
  'gen.linear.explain': 'Peso entre ancho: {{load}}.',
  'gen.blows.ask': 'El rodillo avanza a {{speed}} y vibra a {{frequency}}. ¿A qué distancia caen los golpes?',
  'gen.blows.explain': 'Velocidad entre frecuencia: {{spacing}}.',
} as const;
