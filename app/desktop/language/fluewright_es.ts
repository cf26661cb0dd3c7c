<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Words</name>
    <message>
        <source>Findings</source>
        <translation>Avisos</translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation>Remedios</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Límites</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Lista de precios</translation>
    </message>
    <message>
        <source>Price lists (*.json)</source>
        <translation>Listas de precios (*.json)</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Avisos (%1)</translation>
    </message>
    <message>
        <source>Let it stand</source>
        <translation>Dejarlo estar</translation>
    </message>
    <message>
        <source>Open it again</source>
        <translation>Volver a abrirlo</translation>
    </message>
    <message>
        <source>What would help</source>
        <translation>Qué ayudaría</translation>
    </message>
    <message>
        <source>All findings</source>
        <translation>Todos los avisos</translation>
    </message>
    <message>
        <source>Why it may stand; this is kept with the design</source>
        <translation>Por qué puede quedarse; se guarda con el diseño</translation>
    </message>
    <message>
        <source>Why it may stand</source>
        <translation>Por qué puede quedarse</translation>
    </message>
    <message>
        <source>Let stand: %1</source>
        <translation>Se deja estar: %1</translation>
    </message>
    <message>
        <source>%1 Source: %2.</source>
        <translation>%1 Fuente: %2.</translation>
    </message>
    <message>
        <source>Open a finding again</source>
        <translation>Volver a abrir un aviso</translation>
    </message>
    <message>
        <source>Let a finding stand</source>
        <translation>Dejar estar un aviso</translation>
    </message>
    <message>
        <source>Draft to spare, %1</source>
        <translation>Tiro de sobra, %1</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>deseado %1</translation>
    </message>
    <message>
        <source>drawn: %1</source>
        <translation>dibujado: %1</translation>
    </message>
    <message>
        <source>limit: %1</source>
        <translation>límite: %1</translation>
    </message>
    <message>
        <source>Draft to spare</source>
        <translation>Tiro de sobra</translation>
    </message>
    <message>
        <source>What the margin is to be at the limit, at the worst of the three bench ages.</source>
        <translation>Cuánto tiro debe sobrar en el límite, en el peor de los tres estados del banco.</translation>
    </message>
    <message>
        <source>under 2 Pa a path that draws is called marginal</source>
        <translation>con menos de 2 Pa, un conducto que tira se considera justo</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Límite</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>calculando…</translation>
    </message>
    <message>
        <source>quick curve; working…</source>
        <translation>curva rápida; calculando…</translation>
    </message>
    <message>
        <source>Show on the drawing</source>
        <translation>Mostrar en el dibujo</translation>
    </message>
    <message>
        <source>Make this change</source>
        <translation>Hacer este cambio</translation>
    </message>
    <message>
        <source>Stop trying</source>
        <translation>Dejar de probar</translation>
    </message>
    <message>
        <source>Own prices…</source>
        <translation>Precios propios…</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Cambio</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Margen</translation>
    </message>
    <message>
        <source>Exit</source>
        <translation>Salida</translation>
    </message>
    <message>
        <source>Heat kept</source>
        <translation>Calor guardado</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Partes</translation>
    </message>
    <message>
        <source>Mends ✓   raises ▲</source>
        <translation>Arregla ✓   trae ▲</translation>
    </message>
    <message>
        <source>Add up with a price list of your own; the shipped one holds round figures</source>
        <translation>Sumar con una lista de precios propia; la incluida tiene cifras redondas</translation>
    </message>
    <message>
        <source>Round-figure prices</source>
        <translation>Precios en cifras redondas</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Como está dibujado</translation>
    </message>
    <message>
        <source>Changes are tried when the drawing has come to rest.</source>
        <translation>Los cambios se prueban cuando el dibujo queda en reposo.</translation>
    </message>
    <message>
        <source>The drawing has no answer yet; its faults come first.</source>
        <translation>El dibujo aún no tiene respuesta; primero van sus fallos.</translation>
    </message>
    <message>
        <source>%1 of %2 changes tried</source>
        <translation>%1 de %2 cambios probados</translation>
    </message>
    <message>
        <source>%1 changes tried</source>
        <translation>%1 cambios probados</translation>
    </message>
    <message>
        <source>%1, %2 worth a look. Prices: %3.</source>
        <translation>%1, %2 que valen la pena. Precios: %3.</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>los propios</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Respuesta</translation>
    </message>
    <message>
        <source>At the wanted burn rate and air, for three ages of the bench</source>
        <translation>Con el consumo y el aire deseados, para tres estados del banco</translation>
    </message>
    <message>
        <source>Draft at three bench ages</source>
        <translation>Tiro en tres estados del banco</translation>
    </message>
    <message>
        <source>Where it settles by itself, bench charged</source>
        <translation>Donde se estabiliza por sí solo, banco cargado</translation>
    </message>
    <message>
        <source>Operating point</source>
        <translation>Punto de funcionamiento</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Ramales</translation>
    </message>
    <message>
        <source>Worth knowing</source>
        <translation>Conviene saber</translation>
    </message>
    <message>
        <source>Still missing: %1</source>
        <translation>Todavía falta: %1</translation>
    </message>
    <message>
        <source>Branches, where it settles</source>
        <translation>Ramales, donde se estabiliza</translation>
    </message>
    <message>
        <source>Branches, at the wanted fire</source>
        <translation>Ramales, con el fuego deseado</translation>
    </message>
    <message>
        <source>Draft margin</source>
        <translation>Margen de tiro</translation>
    </message>
    <message>
        <source>… path not complete</source>
        <translation>… conducto incompleto</translation>
    </message>
    <message>
        <source>known once the path leads from an inlet through a fire to a cap</source>
        <translation>se conoce cuando el conducto va de una entrada por un fuego hasta un sombrero</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>inseguro</translation>
    </message>
    <message>
        <source>the least of three bench ages: %1</source>
        <translation>el menor de tres estados del banco: %1</translation>
    </message>
    <message>
        <source>Draft margin, fan off</source>
        <translation>Margen de tiro, ventilador apagado</translation>
    </message>
    <message>
        <source>; %1 with the fan on</source>
        <translation>; %1 con el ventilador en marcha</translation>
    </message>
    <message>
        <source>the draft depends on a fan; </source>
        <translation>el tiro depende de un ventilador; </translation>
    </message>
    <message>
        <source>Exit temperature</source>
        <translation>Temperatura de salida</translation>
    </message>
    <message>
        <source>no gas without a fire on the path</source>
        <translation>sin fuego en el conducto no hay gas</translation>
    </message>
    <message>
        <source>at the open end, at the wanted air</source>
        <translation>en el extremo abierto, con el aire deseado</translation>
    </message>
    <message>
        <source>at the cap, where it settles</source>
        <translation>en el sombrero, donde se estabiliza</translation>
    </message>
    <message>
        <source>at the cap, at the wanted air</source>
        <translation>en el sombrero, con el aire deseado</translation>
    </message>
    <message>
        <source>Condensation begins</source>
        <translation>Empieza la condensación</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguna</translation>
    </message>
    <message>
        <source> dry</source>
        <translation> seco</translation>
    </message>
    <message>
        <source>every wall is above the dew point, %1</source>
        <translation>todas las paredes están sobre el punto de rocío, %1</translation>
    </message>
    <message>
        <source> wet</source>
        <translation> mojado</translation>
    </message>
    <message>
        <source>along, in %1; %2, dew point %3</source>
        <translation>de recorrido, en %1; %2, punto de rocío %3</translation>
    </message>
    <message>
        <source>Margin
%1</source>
        <translation>Margen
%1</translation>
    </message>
    <message>
        <source>Buoyancy
%1</source>
        <translation>Tiro natural
%1</translation>
    </message>
    <message>
        <source>Resistance
%1</source>
        <translation>Resistencia
%1</translation>
    </message>
    <message>
        <source>Exit
%1</source>
        <translation>Salida
%1</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>Excess air</source>
        <translation>Exceso de aire</translation>
    </message>
    <message>
        <source>To the room</source>
        <translation>Al cuarto</translation>
    </message>
    <message>
        <source>Burn rate</source>
        <translation>Consumo</translation>
    </message>
    <message>
        <source>Into the mass</source>
        <translation>A la masa</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Fuego</translation>
    </message>
    <message>
        <source>Up the stack</source>
        <translation>Por la chimenea</translation>
    </message>
    <message>
        <source>Released</source>
        <translation>Liberado</translation>
    </message>
    <message>
        <source>Unburned</source>
        <translation>Sin quemar</translation>
    </message>
    <message>
        <source>%1: %2 from %3 to %4, %5 % of the cap&apos;s, leaves at %6</source>
        <translation>%1: %2 de %3 a %4, %5 % de lo del sombrero, sale a %6</translation>
    </message>
    <message>
        <source>Click to select the piece on the drawing</source>
        <translation>Pulse para elegir la pieza en el dibujo</translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation>Mostrar el cálculo</translation>
    </message>
    <message>
        <source>Take a preset</source>
        <translation>Tomar un modelo</translation>
    </message>
    <message>
        <source>Draft</source>
        <translation>Tiro</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>de sobra</translation>
    </message>
    <message>
        <source>at the stack&apos;s foot</source>
        <translation>al pie de la chimenea</translation>
    </message>
    <message>
        <source>Exit gas, motor</source>
        <translation>Gas de salida, motor</translation>
    </message>
    <message>
        <source>at the exit</source>
        <translation>a la salida</translation>
    </message>
    <message>
        <source>motor of %1</source>
        <translation>motor de %1</translation>
    </message>
    <message>
        <source>Seat surface</source>
        <translation>Superficie del asiento</translation>
    </message>
    <message>
        <source>warmest</source>
        <translation>la más caliente</translation>
    </message>
    <message>
        <source>coolest</source>
        <translation>la más fría</translation>
    </message>
    <message>
        <source>Stored heat</source>
        <translation>Calor acumulado</translation>
    </message>
    <message>
        <source>in walls and bench</source>
        <translation>en paredes y banco</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>relación</translation>
    </message>
    <message>
        <source>smoke into the room</source>
        <translation>humo al cuarto</translation>
    </message>
    <message>
        <source>runs backwards</source>
        <translation>va al revés</translation>
    </message>
    <message>
        <source>short of air</source>
        <translation>falta de aire</translation>
    </message>
    <message>
        <source>The charts appear when the run is done.</source>
        <translation>Las gráficas aparecen cuando acaba el cálculo.</translation>
    </message>
    <message>
        <source>The charts appear once there is a run.</source>
        <translation>Las gráficas aparecen en cuanto hay un cálculo.</translation>
    </message>
    <message>
        <source>Before the last edit: </source>
        <translation>Antes del último cambio: </translation>
    </message>
    <message>
        <source>… and %1 more.</source>
        <translation>… y %1 más.</translation>
    </message>
    <message>
        <source>“%1” was not taken.</source>
        <translation>«%1» no se tomó.</translation>
    </message>
    <message>
        <source>Open a time line</source>
        <translation>Abrir un horario</translation>
    </message>
    <message>
        <source>“%1” was not saved.</source>
        <translation>«%1» no se guardó.</translation>
    </message>
    <message>
        <source>The weather file “%1” cannot be opened.</source>
        <translation>El archivo del tiempo «%1» no se puede abrir.</translation>
    </message>
    <message>
        <source>Take a weather file</source>
        <translation>Tomar un archivo del tiempo</translation>
    </message>
    <message>
        <source>Time lines (*.fluburn);;All files (*)</source>
        <translation>Horarios (*.fluburn);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Save the time line as</source>
        <translation>Guardar el horario como</translation>
    </message>
    <message>
        <source>Comma-separated values (*.csv);;All files (*)</source>
        <translation>Valores separados por comas (*.csv);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>none in this design</source>
        <translation>ninguno en este diseño</translation>
    </message>
    <message>
        <source>Charts over time</source>
        <translation>Gráficas en el tiempo</translation>
    </message>
    <message>
        <source>Call off</source>
        <translation>Cancelar</translation>
    </message>
    <message>
        <source>Compute</source>
        <translation>Calcular</translation>
    </message>
    <message>
        <source>%1 min in a second</source>
        <translation>%1 min por segundo</translation>
    </message>
    <message>
        <source>1 h in a second</source>
        <translation>1 h por segundo</translation>
    </message>
    <message>
        <source>How fast it plays</source>
        <translation>A qué velocidad se muestra</translation>
    </message>
    <message>
        <source>0:00:00  ·  day 2, 00:00</source>
        <translation>0:00:00  ·  día 2, 00:00</translation>
    </message>
    <message>
        <source>Time line ▾</source>
        <translation>Horario ▾</translation>
    </message>
    <message>
        <source>Presets, and files of events</source>
        <translation>Modelos y archivos de sucesos</translation>
    </message>
    <message>
        <source>How far the run is computed</source>
        <translation>Hasta dónde está calculado</translation>
    </message>
    <message>
        <source>This preset wants a fan that the design does not have.</source>
        <translation>Este modelo pide un ventilador que el diseño no tiene.</translation>
    </message>
    <message>
        <source>The design lacks the fan for this.</source>
        <translation>Al diseño le falta el ventilador para esto.</translation>
    </message>
    <message>
        <source>Open a time line…</source>
        <translation>Abrir un horario…</translation>
    </message>
    <message>
        <source>Save the time line…</source>
        <translation>Guardar el horario…</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Pausa</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Mostrar</translation>
    </message>
    <message>
        <source>Pause (Space on the bar)</source>
        <translation>Pausa (Espacio en la barra)</translation>
    </message>
    <message>
        <source>Play (Space on the bar)</source>
        <translation>Mostrar (Espacio en la barra)</translation>
    </message>
    <message>
        <source>The time line has faults: nothing is computed.</source>
        <translation>El horario tiene fallos: no se calcula nada.</translation>
    </message>
    <message>
        <source>Computing; below stands the run before the edit.</source>
        <translation>Calculando; abajo está el cálculo anterior al cambio.</translation>
    </message>
    <message>
        <source>Computing…</source>
        <translation>Calculando…</translation>
    </message>
    <message>
        <source>Called off.</source>
        <translation>Cancelado.</translation>
    </message>
    <message>
        <source>Waiting.</source>
        <translation>En espera.</translation>
    </message>
    <message>
        <source>Holds by itself from %1</source>
        <translation>Se sostiene solo desde %1</translation>
    </message>
    <message>
        <source>Never holds by itself</source>
        <translation>Nunca se sostiene solo</translation>
    </message>
    <message>
        <source>; smoke into the room %1</source>
        <translation>; humo al cuarto %1</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Borrar</translation>
    </message>
    <message>
        <source>Weather file…</source>
        <translation>Archivo del tiempo…</translation>
    </message>
    <message>
        <source>Del while the bar has the focus</source>
        <translation>Supr mientras la barra tiene el foco</translation>
    </message>
    <message>
        <source>Comma-separated, with the columns time and temperature_C</source>
        <translation>Separado por comas, con las columnas time y temperature_C</translation>
    </message>
    <message>
        <source>Delete an event</source>
        <translation>Borrar un suceso</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>Fijar %1</translation>
    </message>
    <message>
        <source>Power cut at %1 over a loaded feed, watched for %2:</source>
        <translation>Corte de luz a las %1 con la alimentación llena, observado %2:</translation>
    </message>
    <message>
        <source>a neutral house</source>
        <translation>una casa neutra</translation>
    </message>
    <message>
        <source>a house under %1 of suction</source>
        <translation>una casa con %1 de succión</translation>
    </message>
    <message>
        <source>Time line</source>
        <translation>Horario</translation>
    </message>
    <message>
        <source>Add to %1</source>
        <translation>Añadir a %1</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 a %2, %3</translation>
    </message>
    <message>
        <source>Move an event</source>
        <translation>Mover un suceso</translation>
    </message>
    <message>
        <source>Change an event&apos;s length</source>
        <translation>Cambiar la duración de un suceso</translation>
    </message>
    <message>
        <source>Add to %1 at %2</source>
        <translation>Añadir a %1 a las %2</translation>
    </message>
    <message>
        <source>Show the whole run</source>
        <translation>Mostrar todo el recorrido</translation>
    </message>
    <message>
        <source>Drag along the ruler to go through the run; the wheel looks closer.</source>
        <translation>Arrastre por la regla para recorrerlo; la rueda acerca la vista.</translation>
    </message>
    <message>
        <source>Drag the end to make it longer or shorter.</source>
        <translation>Arrastre el extremo para alargarlo o acortarlo.</translation>
    </message>
    <message>
        <source>Drag to move it, Del deletes it. Alt while dragging leaves the whole steps.</source>
        <translation>Arrastre para moverlo, Supr lo borra. Alt al arrastrar deja los pasos enteros.</translation>
    </message>
    <message>
        <source>The temperature outdoors: its kind is chosen beside the bar while no event is picked.</source>
        <translation>La temperatura exterior: su tipo se elige junto a la barra mientras no hay ningún suceso elegido.</translation>
    </message>
    <message>
        <source>Double-click or drag here to add to: %1.</source>
        <translation>Doble clic o arrastre aquí para añadir a: %1.</translation>
    </message>
    <message>
        <source>%1, %2 to %3: %4</source>
        <translation>%1, %2 a %3: %4</translation>
    </message>
    <message>
        <source>At %1.</source>
        <translation>A las %1.</translation>
    </message>
    <message>
        <source>Picked: %1, %2 to %3, %4.</source>
        <translation>Elegido: %1, %2 a %3, %4.</translation>
    </message>
    <message>
        <source>Pick an event first: up and down go through them.</source>
        <translation>Elija antes un suceso: arriba y abajo los recorren.</translation>
    </message>
    <message>
        <source>%1: Insert adds here.</source>
        <translation>%1: Insert añade aquí.</translation>
    </message>
    <message>
        <source>{} as in the design</source>
        <translation>{} como en el diseño</translation>
    </message>
    <message>
        <source>{}, ± {} over the day</source>
        <translation>{}, ± {} a lo largo del día</translation>
    </message>
    <message>
        <source>The gas runs backwards.</source>
        <translation>El gas va al revés.</translation>
    </message>
    <message>
        <source>Smoke comes into the room, %1 so far.</source>
        <translation>Entra humo en el cuarto, %1 hasta ahora.</translation>
    </message>
    <message>
        <source>The fire is short of air.</source>
        <translation>Al fuego le falta aire.</translation>
    </message>
    <message>
        <source>Burn, at %1</source>
        <translation>Fuego, a las %1</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Leña</translation>
    </message>
    <message>
        <source>Bypass, dampers</source>
        <translation>Derivación, compuertas</translation>
    </message>
    <message>
        <source>Priming</source>
        <translation>Cebado</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Ventilador</translation>
    </message>
    <message>
        <source>Range hood</source>
        <translation>Campana de cocina</translation>
    </message>
    <message>
        <source>Power cut</source>
        <translation>Corte de luz</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Exterior</translation>
    </message>
    <message>
        <source>That entry is no longer there.</source>
        <translation>Esa entrada ya no existe.</translation>
    </message>
    <message>
        <source>That entry has no end to pull.</source>
        <translation>Esa entrada no tiene extremo del que tirar.</translation>
    </message>
    <message>
        <source>The last point stays: choose another kind of outdoor temperature instead.</source>
        <translation>El último punto se queda: elija otro tipo de temperatura exterior.</translation>
    </message>
    <message>
        <source>The drawing has no damper or bypass to move.</source>
        <translation>El dibujo no tiene compuerta ni derivación que mover.</translation>
    </message>
    <message>
        <source>The drawing has no fan to switch.</source>
        <translation>El dibujo no tiene ventilador que encender.</translation>
    </message>
    <message>
        <source>Choose points as the outdoor temperature first; then they can be added here.</source>
        <translation>Elija antes puntos como temperatura exterior; luego se pueden añadir aquí.</translation>
    </message>
    <message>
        <source>This course has too many points to add to by hand.</source>
        <translation>Este curso tiene demasiados puntos para añadir más a mano.</translation>
    </message>
    <message>
        <source>45 min, 1 h 30 min or 1:30</source>
        <translation>45 min, 1 h 30 min o 1:30</translation>
    </message>
    <message>
        <source>1:30 or 90 min</source>
        <translation>1:30 o 90 min</translation>
    </message>
    <message>
        <source>“{}” is no time: write it like {}.</source>
        <translation>«{}» no es una hora: escríbala como {}.</translation>
    </message>
    <message>
        <source>Nothing is written: write a time like {}.</source>
        <translation>No hay nada escrito: escriba una hora como {}.</translation>
    </message>
    <message>
        <source>“{}” is not understood: write it like {}.</source>
        <translation>«{}» no se entiende: escríbalo como {}.</translation>
    </message>
    <message>
        <source>Nothing is written: write it like {}.</source>
        <translation>No hay nada escrito: escríbalo como {}.</translation>
    </message>
    <message>
        <source>day {}, {}</source>
        <translation>día {}, {}</translation>
    </message>
    <message>
        <source>4.5 kg or 10 lb</source>
        <translation>4,5 kg o 10 lb</translation>
    </message>
    <message>
        <source>400 g or 14 oz</source>
        <translation>400 g o 14 oz</translation>
    </message>
    <message>
        <source>4 K or 7 °F</source>
        <translation>4 K o 7 °F</translation>
    </message>
    <message>
        <source>Since the run began: hours and minutes.</source>
        <translation>Desde que empezó: horas y minutos.</translation>
    </message>
    <message>
        <source>Load {}</source>
        <translation>Carga {}</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Empieza</translation>
    </message>
    <message>
        <source>As fired, with its moisture.</source>
        <translation>Tal como se quema, con su humedad.</translation>
    </message>
    <message>
        <source>Burns for</source>
        <translation>Arde durante</translation>
    </message>
    <message>
        <source>It burns down evenly.</source>
        <translation>Se consume de forma pareja.</translation>
    </message>
    <message>
        <source>Feed {}</source>
        <translation>Alimentación {}</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Hasta</translation>
    </message>
    <message>
        <source>Wood as fired.</source>
        <translation>Leña tal como se quema.</translation>
    </message>
    <message>
        <source>Priming fire {}</source>
        <translation>Fuego de cebado {}</translation>
    </message>
    <message>
        <source>Starter</source>
        <translation>Iniciador</translation>
    </message>
    <message>
        <source>What burns at the stack&apos;s foot. The cap is off meanwhile and goes back on at the end.</source>
        <translation>Lo que arde al pie de la chimenea. La tapa se quita entretanto y se vuelve a poner al final.</translation>
    </message>
    <message>
        <source>The lowest tee of the stack</source>
        <translation>La te más baja de la chimenea</translation>
    </message>
    <message>
        <source>In</source>
        <translation>En</translation>
    </message>
    <message>
        <source>The tee whose cap comes off.</source>
        <translation>La te cuya tapa se quita.</translation>
    </message>
    <message>
        <source>Then the cap goes back on.</source>
        <translation>Luego se vuelve a poner la tapa.</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>Of the starter, dry.</source>
        <translation>Del iniciador, seco.</translation>
    </message>
    <message>
        <source>Heating value</source>
        <translation>Poder calorífico</translation>
    </message>
    <message>
        <source>Net, as bought and dry; from memory.</source>
        <translation>Inferior, como se compra y seco; de memoria.</translation>
    </message>
    <message>
        <source>Move {}</source>
        <translation>Movimiento {}</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Pieza</translation>
    </message>
    <message>
        <source>Which damper or bypass is moved.</source>
        <translation>Qué compuerta o derivación se mueve.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Cuándo</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Abierto</translation>
    </message>
    <message>
        <source>0 % shut, 100 % wide open.</source>
        <translation>0 % cerrado, 100 % abierto del todo.</translation>
    </message>
    <message>
        <source>Fan switch {}</source>
        <translation>Encendido del ventilador {}</translation>
    </message>
    <message>
        <source>Which fan is switched.</source>
        <translation>Qué ventilador se enciende.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Se para</translation>
    </message>
    <message>
        <source>A run-down timer switches it off by itself.</source>
        <translation>Un temporizador lo apaga solo.</translation>
    </message>
    <message>
        <source>By a run-down timer</source>
        <translation>Por un temporizador</translation>
    </message>
    <message>
        <source>When it is switched off</source>
        <translation>Cuando se apaga</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Velocidad</translation>
    </message>
    <message>
        <source>0 % is off, 100 % the speed of its curve.</source>
        <translation>0 % es apagado, 100 % la velocidad de su curva.</translation>
    </message>
    <message>
        <source>Runs for</source>
        <translation>Funciona</translation>
    </message>
    <message>
        <source>Then the timer stops it.</source>
        <translation>Luego el temporizador lo para.</translation>
    </message>
    <message>
        <source>Range hood {}</source>
        <translation>Campana de cocina {}</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Extrae</translation>
    </message>
    <message>
        <source>All exhausts of the house together, from now on. 0 is off.</source>
        <translation>Todas las extracciones de la casa juntas, desde ahora. 0 es apagado.</translation>
    </message>
    <message>
        <source>Power cut {}</source>
        <translation>Corte de luz {}</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dura</translation>
    </message>
    <message>
        <source>Fans and hoods stand still and come back by themselves.</source>
        <translation>Ventiladores y campanas se paran y vuelven solos.</translation>
    </message>
    <message>
        <source>Outdoor temperature, point {}</source>
        <translation>Temperatura exterior, punto {}</translation>
    </message>
    <message>
        <source>Straight from point to point.</source>
        <translation>Recta de punto a punto.</translation>
    </message>
    <message>
        <source>The run</source>
        <translation>El recorrido</translation>
    </message>
    <message>
        <source>The temperature outdoors over the run.</source>
        <translation>La temperatura exterior durante el recorrido.</translation>
    </message>
    <message>
        <source>As in the design</source>
        <translation>Como en el diseño</translation>
    </message>
    <message>
        <source>One temperature</source>
        <translation>Una temperatura</translation>
    </message>
    <message>
        <source>A day&apos;s curve</source>
        <translation>El curso de un día</translation>
    </message>
    <message>
        <source>Points, or a weather file</source>
        <translation>Puntos, o un archivo del tiempo</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
    </message>
    <message>
        <source>How long the run is.</source>
        <translation>Cuánto dura el recorrido.</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Empieza a las</translation>
    </message>
    <message>
        <source>By the clock.</source>
        <translation>Según el reloj.</translation>
    </message>
    <message>
        <source>All the time.</source>
        <translation>Todo el tiempo.</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Media</translation>
    </message>
    <message>
        <source>Over the day.</source>
        <translation>A lo largo del día.</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Oscilación</translation>
    </message>
    <message>
        <source>From the mean to either end.</source>
        <translation>De la media a cada extremo.</translation>
    </message>
    <message>
        <source>Warmest at</source>
        <translation>Lo más cálido a las</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} en {}</translation>
    </message>
    <message>
        <source>Cut through the bench</source>
        <translation>Corte del banco</translation>
    </message>
    <message>
        <source>Cut through %1: gas %2, wall %3, surface %4</source>
        <translation>Corte de %1: gas %2, pared %3, superficie %4</translation>
    </message>
    <message>
        <source>No bench to cut through.</source>
        <translation>No hay banco que cortar.</translation>
    </message>
    <message>
        <source>A cut through the bench appears once there is a run.</source>
        <translation>El corte del banco aparece en cuanto hay un cálculo.</translation>
    </message>
    <message>
        <source>Cut through %1</source>
        <translation>Corte de %1</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>gas</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>pared</translation>
    </message>
    <message>
        <source>seat</source>
        <translation>asiento</translation>
    </message>
    <message>
        <source>top</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>This design is from a newer version: it is open for reading only.</source>
        <translation>Este diseño es de una versión más nueva: está abierto solo para leer.</translation>
    </message>
    <message>
        <source>Nothing else fits here</source>
        <translation>Aquí no encaja nada más</translation>
    </message>
    <message>
        <source>Pull this joint &amp;apart</source>
        <translation>&amp;Separar esta unión</translation>
    </message>
    <message>
        <source>Put a red&amp;ucer between the two bores</source>
        <translation>Poner una red&amp;ucción entre los dos diámetros</translation>
    </message>
    <message>
        <source>Re&amp;place by</source>
        <translation>&amp;Reemplazar por</translation>
    </message>
    <message>
        <source>Turn end for &amp;end</source>
        <translation>Inv&amp;ertir</translation>
    </message>
    <message>
        <source>Rotate &amp;left</source>
        <translation>Girar a la &amp;izquierda</translation>
    </message>
    <message>
        <source>Mirror, &amp;west for east</source>
        <translation>Reflejar, &amp;oeste por este</translation>
    </message>
    <message>
        <source>Mirror, &amp;north for south</source>
        <translation>Reflejar, &amp;norte por sur</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Cor&amp;tar</translation>
    </message>
    <message>
        <source>Pa&amp;ste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>&amp;Join what meets</source>
        <translation>&amp;Unir lo que coincide</translation>
    </message>
    <message>
        <source>Draw passes side by s&amp;ide…</source>
        <translation>D&amp;ibujar pasadas paralelas…</translation>
    </message>
    <message>
        <source>What the path grows with on the level</source>
        <translation>Con qué crece el conducto en horizontal</translation>
    </message>
    <message>
        <source>What it grows with upright</source>
        <translation>Con qué crece en vertical</translation>
    </message>
    <message>
        <source>What it turns with</source>
        <translation>Con qué gira</translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation>Paso de cuadrícula</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Cuadrícula</translation>
    </message>
    <message>
        <source>Grows with</source>
        <translation>Crece con</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Tramo</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>vertical</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Arriba</translation>
    </message>
    <message>
        <source>turns with</source>
        <translation>gira con</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>From where the elevation is seen</source>
        <translation>Desde dónde se ve el alzado</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>desde el sur</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>desde el este</translation>
    </message>
    <message>
        <source>along the path</source>
        <translation>a lo largo del conducto</translation>
    </message>
    <message>
        <source>What the colours show</source>
        <translation>Qué muestran los colores</translation>
    </message>
    <message>
        <source>gas temperature</source>
        <translation>temperatura del gas</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>presión relativa</translation>
    </message>
    <message>
        <source>%1 copied.</source>
        <translation>%1: copiado.</translation>
    </message>
    <message>
        <source>Nothing has been copied that could be put here.</source>
        <translation>No se ha copiado nada que se pueda poner aquí.</translation>
    </message>
    <message>
        <source>What was copied cannot be put here.</source>
        <translation>Lo copiado no se puede poner aquí.</translation>
    </message>
    <message numerus="yes">
        <source>Paste %n piece(s)</source>
        <translation>
            <numerusform>Pegar %n pieza</numerusform>
            <numerusform>Pegar %n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>Mirror %1</source>
        <translation>Reflejar %1</translation>
    </message>
    <message>
        <source>Rotate %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Turn %1 end for end</source>
        <translation>Invertir %1</translation>
    </message>
    <message>
        <source>Pull a joint apart</source>
        <translation>Separar una unión</translation>
    </message>
    <message>
        <source>There are no two open ends that meet. Drag one to the other first.</source>
        <translation>No hay dos extremos abiertos que coincidan. Arrastre antes uno hasta el otro.</translation>
    </message>
    <message>
        <source>Join what meets</source>
        <translation>Unir lo que coincide</translation>
    </message>
    <message>
        <source>Make the bench longer</source>
        <translation>Alargar el banco</translation>
    </message>
    <message>
        <source>Make the bench shorter</source>
        <translation>Acortar el banco</translation>
    </message>
    <message numerus="yes">
        <source>Draw %n pass(es)</source>
        <translation>
            <numerusform>Dibujar %n pasada</numerusform>
            <numerusform>Dibujar %n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Replace by %1</source>
        <translation>Reemplazar por %1</translation>
    </message>
    <message>
        <source>Put in %1</source>
        <translation>Poner %1</translation>
    </message>
    <message>
        <source>Selected: %1.</source>
        <translation>Elegido: %1.</translation>
    </message>
    <message>
        <source>Open end of %1.</source>
        <translation>Extremo abierto de %1.</translation>
    </message>
    <message>
        <source>Open end of %1: drag to grow the path</source>
        <translation>Extremo abierto de %1: arrastre para alargar el conducto</translation>
    </message>
    <message>
        <source>%1 along: gas %2, wall %3, %4</source>
        <translation>a %1: gas %2, pared %3, %4</translation>
    </message>
    <message>
        <source>Drawing desk</source>
        <translation>Mesa de dibujo</translation>
    </message>
    <message>
        <source>%1: bring it to a ring with a plus, onto a straight run, or onto bare paper; Esc puts it back.</source>
        <translation>%1: llévelo a un anillo con más, a un tramo recto o al papel libre; Esc lo devuelve.</translation>
    </message>
    <message>
        <source>%1 %2: click or let go to leave it there; R turns it; Esc puts it back.</source>
        <translation>%1 %2: pulse o suelte para dejarlo ahí; R lo gira; Esc lo devuelve.</translation>
    </message>
    <message>
        <source>on this end</source>
        <translation>en este extremo</translation>
    </message>
    <message>
        <source>into this run</source>
        <translation>en este tramo</translation>
    </message>
    <message>
        <source>here</source>
        <translation>aquí</translation>
    </message>
    <message>
        <source>Put %1</source>
        <translation>Poner %1</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the mouse.</source>
        <translation>Intro fija la longitud; Esc vuelve al ratón.</translation>
    </message>
    <message>
        <source>Drag along the grid to grow, across it for an elbow; type a number for the exact length; Esc forgets it.</source>
        <translation>Arrastre a lo largo de la cuadrícula para crecer, de través para un codo; escriba un número para la longitud exacta; Esc lo olvida.</translation>
    </message>
    <message>
        <source>Draw %1 %2</source>
        <translation>Dibujar %1 hacia %2</translation>
    </message>
    <message>
        <source>at a slant</source>
        <translation>en oblicuo</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>down</source>
        <translation>abajo</translation>
    </message>
    <message>
        <source>east</source>
        <translation>este</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>West wall, inside</source>
        <translation>Pared oeste, interior</translation>
    </message>
    <message>
        <source>East wall, inside</source>
        <translation>Pared este, interior</translation>
    </message>
    <message>
        <source>South wall, inside</source>
        <translation>Pared sur, interior</translation>
    </message>
    <message>
        <source>North wall, inside</source>
        <translation>Pared norte, interior</translation>
    </message>
    <message>
        <source>Thickness of walls and roof</source>
        <translation>Espesor de paredes y tejado</translation>
    </message>
    <message>
        <source>Ceiling above the floor</source>
        <translation>Techo sobre el suelo</translation>
    </message>
    <message>
        <source>Thickness of the ceiling</source>
        <translation>Espesor del techo</translation>
    </message>
    <message>
        <source>Eaves above the floor</source>
        <translation>Alero sobre el suelo</translation>
    </message>
    <message>
        <source>Ridge above the floor</source>
        <translation>Cumbrera sobre el suelo</translation>
    </message>
    <message>
        <source>The house around it</source>
        <translation>La casa alrededor</translation>
    </message>
    <message>
        <source>It is drawn behind the path, and the path check tells where a pipe goes through it without a passage. The answer does not depend on it.</source>
        <translation>Se dibuja detrás del conducto, y la revisión dice dónde un tubo lo atraviesa sin pasamuros. La respuesta no depende de ello.</translation>
    </message>
    <message>
        <source>Then the house would not stand: opposite walls or eaves and ridge change places.</source>
        <translation>Así la casa no se tendría: paredes opuestas o alero y cumbrera cambian de sitio.</translation>
    </message>
    <message>
        <source>&amp;Draw it</source>
        <translation>&amp;Dibujarla</translation>
    </message>
    <message>
        <source>&amp;No house</source>
        <translation>&amp;Sin casa</translation>
    </message>
    <message>
        <source>Take the house away</source>
        <translation>Quitar la casa</translation>
    </message>
    <message>
        <source>Draw the house</source>
        <translation>Dibujar la casa</translation>
    </message>
    <message>
        <source>Drag the joint: the runs beside it stretch; hold Ctrl to stretch the whole bench. Esc forgets it.</source>
        <translation>Arrastre la unión: los tramos vecinos se alargan; con Ctrl, todo el banco. Esc lo olvida.</translation>
    </message>
    <message>
        <source>Drag the piece: the runs beside it stretch. Shift moves the whole path, Ctrl stretches the whole bench. Esc forgets it.</source>
        <translation>Arrastre la pieza: los tramos vecinos se alargan. Mayús mueve todo el conducto, Ctrl alarga todo el banco. Esc lo olvida.</translation>
    </message>
    <message>
        <source>Move a joint</source>
        <translation>Mover una unión</translation>
    </message>
    <message>
        <source>Move a piece</source>
        <translation>Mover una pieza</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the arrow keys.</source>
        <translation>Intro fija la longitud; Esc vuelve a las flechas.</translation>
    </message>
    <message>
        <source>Arrow keys choose the way, Page Up and Page Down go up and down; type a number for the length.</source>
        <translation>Las flechas eligen la dirección, Re Pág y Av Pág suben y bajan; escriba un número para la longitud.</translation>
    </message>
    <message>
        <source>The same arrow again makes it longer, the opposite one shorter (Shift: ten steps); type a number for the exact length; Enter draws it, Esc forgets it.</source>
        <translation>La misma flecha lo alarga, la opuesta lo acorta (Mayús: diez pasos); escriba un número para la longitud exacta; Intro lo dibuja, Esc lo olvida.</translation>
    </message>
    <message>
        <source>That way lies the piece itself. Choose another direction.</source>
        <translation>Por ahí está la propia pieza. Elija otra dirección.</translation>
    </message>
    <message>
        <source>Colour: gas temperature, %1</source>
        <translation>Color: temperatura del gas, %1</translation>
    </message>
    <message>
        <source>Colour: gauge pressure, %1</source>
        <translation>Color: presión relativa, %1</translation>
    </message>
    <message>
        <source>%1. The scale is stretched at its cold end, where benches live.</source>
        <translation>%1. La escala está estirada en su extremo frío, donde viven los bancos.</translation>
    </message>
    <message>
        <source>%1, against outdoor air at the same height: violet below it, orange above it.</source>
        <translation>%1, respecto al aire exterior a la misma altura: violeta por debajo, naranja por encima.</translation>
    </message>
    <message>
        <source>coloured once the path is whole</source>
        <translation>con color cuando el conducto esté completo</translation>
    </message>
    <message>
        <source>Take a feed from the rack and bring it here.</source>
        <translation>Tome una alimentación del estante y tráigala aquí.</translation>
    </message>
    <message>
        <source>Then pull the path on from its ring, or bring the next piece to the ring.</source>
        <translation>Luego tire del conducto desde su anillo, o lleve la pieza siguiente al anillo.</translation>
    </message>
    <message>
        <source>It ends with a cap; the answer beside the sheet says what is still missing.</source>
        <translation>Termina con un sombrero; la respuesta junto a la hoja dice qué falta.</translation>
    </message>
    <message>
        <source>pipe or channel</source>
        <translation>tubo o canal</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>unión</translation>
    </message>
    <message>
        <source>way of the gas</source>
        <translation>sentido del gas</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>reducción</translation>
    </message>
    <message>
        <source>capped end</source>
        <translation>extremo tapado</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>derivación</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>compuerta</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>ventilador</translation>
    </message>
    <message>
        <source>barrel, bell or box</source>
        <translation>bidón, campana o caja</translation>
    </message>
    <message>
        <source>stack head</source>
        <translation>remate de chimenea</translation>
    </message>
    <message>
        <source>air comes in</source>
        <translation>entra aire</translation>
    </message>
    <message>
        <source>Drag a feed from the rack onto the sheet, or choose it there and press Enter.</source>
        <translation>Arrastre una alimentación del estante a la hoja, o elíjala allí y pulse Intro.</translation>
    </message>
    <message>
        <source>Arrow keys or a drag grow the path from this end; Enter goes to the rack; Tab goes to the next end.</source>
        <translation>Las flechas o un arrastre alargan el conducto desde este extremo; Intro va al estante; Tab, al extremo siguiente.</translation>
    </message>
    <message>
        <source>Drag them, or: Delete takes them out, R turns them, Ctrl+M mirrors them, Ctrl+C copies them.</source>
        <translation>Arrástrelas, o: Supr las quita, R las gira, Ctrl+M las refleja, Ctrl+C las copia.</translation>
    </message>
    <message>
        <source>Arrow keys walk along the path; Delete takes the piece out; R turns it; Alt and arrows move it.</source>
        <translation>Las flechas recorren el conducto; Supr quita la pieza; R la gira; Alt y flechas la mueven.</translation>
    </message>
    <message>
        <source>Drag from a ring with a plus to grow the path. Click a piece to see it. Drag bare paper to move the sheet; with Shift to select.</source>
        <translation>Arrastre desde un anillo con más para alargar el conducto. Pulse una pieza para verla. Arrastre el papel libre para mover la hoja; con Mayús, para elegir.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Move the path</source>
        <translation>Mover el conducto</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>Elevation from the south</source>
        <translation>Alzado desde el sur</translation>
    </message>
    <message>
        <source>Elevation from the east</source>
        <translation>Alzado desde el este</translation>
    </message>
    <message>
        <source>Elevation along the path</source>
        <translation>Alzado a lo largo del conducto</translation>
    </message>
    <message>
        <source>Isometric</source>
        <translation>Isométrica</translation>
    </message>
    <message>
        <source>Draw a frame around the pieces to select; Esc forgets it.</source>
        <translation>Trace un marco alrededor de las piezas a elegir; Esc lo olvida.</translation>
    </message>
    <message>
        <source>Drag the selected pieces: runs along the way stretch, other joints come apart. Esc forgets it.</source>
        <translation>Arrastre las piezas elegidas: los tramos en esa dirección se alargan, las demás uniones se separan. Esc lo olvida.</translation>
    </message>
    <message>
        <source>neutral plane</source>
        <translation>plano neutro</translation>
    </message>
    <message>
        <source>top of the house</source>
        <translation>parte alta de la casa</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Alzado</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>Passes side by side</source>
        <translation>Pasadas paralelas</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>a la derecha</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Each pass</source>
        <translation>Cada pasada</translation>
    </message>
    <message>
        <source>Between their axes</source>
        <translation>Entre sus ejes</translation>
    </message>
    <message>
        <source>&amp;Passes</source>
        <translation>&amp;Pasadas</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>&amp;Lado</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Dibujarlas</translation>
    </message>
    <message>
        <source>From the open end in focus; the drawing shows it.</source>
        <translation>Desde el extremo abierto en foco; el dibujo lo muestra.</translation>
    </message>
    <message>
        <source>This design comes from a newer version of the program and is open for reading only; saving it here could lose what this version does not know.</source>
        <translation>Este diseño es de una versión más nueva del programa y está abierto solo para leer; al guardarlo aquí podría perderse lo que esta versión no conoce.</translation>
    </message>
    <message>
        <source>Variant %1</source>
        <translation>Variante %1</translation>
    </message>
    <message>
        <source>Fork “%1”</source>
        <translation>Bifurcar «%1»</translation>
    </message>
    <message>
        <source>Name “%1”</source>
        <translation>Llamar «%1»</translation>
    </message>
    <message>
        <source>Take out “%1”</source>
        <translation>Quitar «%1»</translation>
    </message>
    <message>
        <source>There is no room for that: the run is too short.</source>
        <translation>No hay sitio para eso: el tramo es demasiado corto.</translation>
    </message>
    <message>
        <source>That end is already joined to something.</source>
        <translation>Ese extremo ya está unido a algo.</translation>
    </message>
    <message>
        <source>Only a straight run can be split or stretched.</source>
        <translation>Solo un tramo recto se puede dividir o alargar.</translation>
    </message>
    <message>
        <source>The pieces on either side could not meet any more.</source>
        <translation>Las piezas de ambos lados ya no podrían coincidir.</translation>
    </message>
    <message>
        <source>That piece is no longer on the drawing.</source>
        <translation>Esa pieza ya no está en el dibujo.</translation>
    </message>
    <message>
        <source>The catalogue has no such piece.</source>
        <translation>El catálogo no tiene esa pieza.</translation>
    </message>
    <message>
        <source>That is outside the allowed range.</source>
        <translation>Eso queda fuera del intervalo permitido.</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>noreste</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>noroeste</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>suroeste</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>sureste</translation>
    </message>
    <message>
        <source>to the %1</source>
        <translation>hacia el %1</translation>
    </message>
    <message>
        <source>, rising</source>
        <translation>, subiendo</translation>
    </message>
    <message>
        <source>, falling</source>
        <translation>, bajando</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Izquierda</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Derecha</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Abajo</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Casa</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Y si</translation>
    </message>
    <message>
        <source>The selected piece</source>
        <translation>La pieza elegida</translation>
    </message>
    <message>
        <source>Altitude, weather and wind</source>
        <translation>Altitud, tiempo y viento</translation>
    </message>
    <message>
        <source>The room, the house&apos;s leaks and fans</source>
        <translation>El cuarto, las fugas y los ventiladores de la casa</translation>
    </message>
    <message>
        <source>Wood, burn rate and air</source>
        <translation>Leña, consumo y aire</translation>
    </message>
    <message>
        <source>Other conditions tried out, the design left as it is</source>
        <translation>Otras condiciones a prueba, el diseño queda como está</translation>
    </message>
    <message>
        <source>Editors</source>
        <translation>Editores</translation>
    </message>
    <message>
        <source>Sheet&apos;s name</source>
        <translation>Nombre de la hoja</translation>
    </message>
    <message>
        <source>What you call this data sheet; pieces with a fan offer it.</source>
        <translation>Cómo llama a esta hoja de datos; las piezas con ventilador la ofrecen.</translation>
    </message>
    <message>
        <source>your own data sheet</source>
        <translation>su propia hoja de datos</translation>
    </message>
    <message>
        <source>Write my own data sheet</source>
        <translation>Escribir mi propia hoja de datos</translation>
    </message>
    <message>
        <source>Add point</source>
        <translation>Añadir punto</translation>
    </message>
    <message>
        <source>Remove point</source>
        <translation>Quitar punto</translation>
    </message>
    <message>
        <source>Fan speed</source>
        <translation>Velocidad del ventilador</translation>
    </message>
    <message>
        <source>Points of the fan curve</source>
        <translation>Puntos de la curva del ventilador</translation>
    </message>
    <message>
        <source>Set %1 of the fan</source>
        <translation>Fijar %1 del ventilador</translation>
    </message>
    <message>
        <source>Name the fan&apos;s sheet</source>
        <translation>Nombrar la hoja del ventilador</translation>
    </message>
    <message>
        <source>off</source>
        <translation>apagado</translation>
    </message>
    <message>
        <source>Not on a path with a fire yet: the curve is for the sheet&apos;s own gas.</source>
        <translation>Aún no está en un conducto con fuego: la curva es para el gas de la hoja.</translation>
    </message>
    <message>
        <source>Now %1 at %2, %3. Gas up to %4 (rated %5), motor %6 (rated %7). Line: at this speed in this gas; dots: the sheet.</source>
        <translation>Ahora %1 a %2, %3. Gas hasta %4 (admite %5), motor %6 (admite %7). Línea: a esta velocidad en este gas; puntos: la hoja.</translation>
    </message>
    <message>
        <source>Set speed</source>
        <translation>Fijar la velocidad</translation>
    </message>
    <message>
        <source>My fan</source>
        <translation>Mi ventilador</translation>
    </message>
    <message>
        <source>Write own data sheet</source>
        <translation>Escribir hoja de datos propia</translation>
    </message>
    <message>
        <source>Point %1, %2: %3 is outside the allowed range of %4, so it is not used</source>
        <translation>Punto %1, %2: %3 está fuera de lo admitido, %4, así que no se usa</translation>
    </message>
    <message>
        <source>Point %1, flow: %2 is not above the %3 of the point before, so the sheet still has its old points</source>
        <translation>Punto %1, caudal: %2 no supera los %3 del punto anterior, así que la hoja conserva sus puntos</translation>
    </message>
    <message>
        <source>Every head is 0: at least one must be more, so the sheet still has its old points</source>
        <translation>Todas las alturas son 0: al menos una debe ser mayor, así que la hoja conserva sus puntos</translation>
    </message>
    <message>
        <source>Set points of the fan</source>
        <translation>Fijar puntos del ventilador</translation>
    </message>
    <message>
        <source>The first point is the head at no flow; a curve begins there</source>
        <translation>El primer punto es la presión sin caudal; ahí empieza la curva</translation>
    </message>
    <message>
        <source>Fan curve</source>
        <translation>Curva del ventilador</translation>
    </message>
    <message>
        <source>About this field</source>
        <translation>Sobre este campo</translation>
    </message>
    <message>
        <source>Moisture in words</source>
        <translation>Humedad en palabras</translation>
    </message>
    <message>
        <source>Picking a word puts its usual moisture into the field above.</source>
        <translation>Elegir una palabra pone su humedad usual en el campo de arriba.</translation>
    </message>
    <message>
        <source>Set moisture</source>
        <translation>Fijar humedad</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>a %1</translation>
    </message>
    <message>
        <source>(between the usual words)</source>
        <translation>(entre las palabras usuales)</translation>
    </message>
    <message>
        <source>Inlet choke: {}</source>
        <translation>Estrangulación de la entrada: {}</translation>
    </message>
    <message>
        <source>Set inlet choke</source>
        <translation>Fijar estrangulación</translation>
    </message>
    <message>
        <source>your drawing</source>
        <translation>su dibujo</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Put another piece of the same family in its place; the path stays connected.</source>
        <translation>Poner en su lugar otra pieza de la misma familia; el conducto sigue unido.</translation>
    </message>
    <message>
        <source>Turns</source>
        <translation>Gira</translation>
    </message>
    <message>
        <source>Which way the gas, or the branch, leaves the piece.</source>
        <translation>Hacia dónde sale de la pieza el gas, o la derivación.</translation>
    </message>
    <message>
        <source>Own name</source>
        <translation>Nombre propio</translation>
    </message>
    <message>
        <source>What you call this piece; it stands on the drawing and on the sheet.</source>
        <translation>Cómo llama a esta pieza; así figura en el dibujo y en la hoja.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notas</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>No piece is selected.

Click a piece on the drawing, on the plot or in the list of findings: its sizes, walls and surroundings can be changed here.</source>
        <translation>No hay ninguna pieza elegida.

Pulse una pieza en el dibujo, en la gráfica o en los avisos: aquí se cambian sus medidas, paredes y entorno.</translation>
    </message>
    <message>
        <source>Anything worth remembering about this piece</source>
        <translation>Lo que convenga recordar de esta pieza</translation>
    </message>
    <message>
        <source>Take this piece out of the path (Del on the drawing)</source>
        <translation>Quitar esta pieza del conducto (Supr en el dibujo)</translation>
    </message>
    <message>
        <source>Change to %1</source>
        <translation>Cambiar a %1</translation>
    </message>
    <message>
        <source>Turn piece</source>
        <translation>Girar pieza</translation>
    </message>
    <message>
        <source>Name piece</source>
        <translation>Nombrar pieza</translation>
    </message>
    <message>
        <source>What this piece&apos;s losses rest on:</source>
        <translation>En qué se basan las pérdidas de esta pieza:</translation>
    </message>
    <message>
        <source>Write notes</source>
        <translation>Escribir notas</translation>
    </message>
    <message>
        <source>usual %1</source>
        <translation>usual %1</translation>
    </message>
    <message>
        <source> to </source>
        <translation> a </translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>al menos %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>como mucho %1</translation>
    </message>
    <message>
        <source>Published: %1</source>
        <translation>Publicado: %1</translation>
    </message>
    <message>
        <source>From memory; check before relying on it</source>
        <translation>De memoria; compruébelo antes de fiarse</translation>
    </message>
    <message>
        <source>%1 (from memory; check before relying on it)</source>
        <translation>%1 (de memoria; compruébelo antes de fiarse)</translation>
    </message>
    <message>
        <source>Common practice, no published source</source>
        <translation>Práctica común, sin fuente publicada</translation>
    </message>
    <message>
        <source>Common practice: %1</source>
        <translation>Práctica común: %1</translation>
    </message>
    <message>
        <source>Our own modelling choice</source>
        <translation>Elección propia</translation>
    </message>
    <message>
        <source>Our own choice: %1</source>
        <translation>Elección propia: %1</translation>
    </message>
    <message>
        <source>{} (this design&apos;s own)</source>
        <translation>{} (de este diseño)</translation>
    </message>
    <message>
        <source>{} (own)</source>
        <translation>{} (propio)</translation>
    </message>
    <message>
        <source>Outside the allowed range of %1</source>
        <translation>Fuera del intervalo permitido de %1</translation>
    </message>
    <message>
        <source>%1 is outside the allowed range of %2, so it is not used: the design still has %3</source>
        <translation>%1 queda fuera del intervalo permitido de %2 y no se usa: el diseño sigue con %3</translation>
    </message>
    <message>
        <source>That is as far as it goes: %1</source>
        <translation>Hasta aquí llega: %1</translation>
    </message>
    <message>
        <source>%1 (not known)</source>
        <translation>%1 (desconocido)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>What is this, and what is usual</source>
        <translation>Qué es esto, y qué es lo usual</translation>
    </message>
    <message>
        <source>Pieces and numbers</source>
        <translation>Piezas y números</translation>
    </message>
    <message>
        <source>Usual:</source>
        <translation>Usual:</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>tiro</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>pérdida</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>margen</translation>
    </message>
    <message>
        <source>light</source>
        <translation>ligero</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>pesado</translation>
    </message>
    <message>
        <source>rubs</source>
        <translation>roza</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>gira</translation>
    </message>
    <message>
        <source>this warm</source>
        <translation>así de tibio</translation>
    </message>
    <message>
        <source>warm wall: dry</source>
        <translation>pared tibia: seca</translation>
    </message>
    <message>
        <source>cold wall: wet</source>
        <translation>pared fría: mojada</translation>
    </message>
    <message>
        <source>what the wood needs</source>
        <translation>lo que pide la leña</translation>
    </message>
    <message>
        <source>and more</source>
        <translation>y más</translation>
    </message>
    <message>
        <source>before the fire</source>
        <translation>antes del fuego</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>room</source>
        <translation>cuarto</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>chimenea</translation>
    </message>
    <message>
        <source>What is left of the stack&apos;s pull when all losses of the path, with their safety factor, and the wind&apos;s share are taken off. It is the least of three ages of the bench: cold, after an hour, warmed through.</source>
        <translation>Lo que queda del tiro de la chimenea al restar todas las pérdidas del conducto, con su factor de seguridad, y la parte del viento. Es el menor de tres estados del banco: frío, tras una hora, cargado.</translation>
    </message>
    <message>
        <source>Above 2 Pa the path draws with something to spare. Below zero it smokes into the room.</source>
        <translation>Por encima de 2 Pa el conducto tira con algo de sobra. Por debajo de cero echa humo al cuarto.</translation>
    </message>
    <message>
        <source>Buoyancy</source>
        <translation>Tiro natural</translation>
    </message>
    <message>
        <source>The pull itself: a column of warm gas is lighter than as much outdoor air beside it. It grows with height and with warmth.</source>
        <translation>El tiro mismo: una columna de gas tibio pesa menos que otra igual de aire exterior. Crece con la altura y el calor.</translation>
    </message>
    <message>
        <source>Heaters with a bench live on 8 to 20 Pa.</source>
        <translation>Las estufas con banco viven con 8 a 20 Pa.</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>What friction along the walls and every bend, tee and change of size cost at the flow the fire wants.</source>
        <translation>Lo que cuestan el roce en las paredes y cada codo, te y cambio de tamaño con el caudal que pide el fuego.</translation>
    </message>
    <message>
        <source>Half of the buoyancy or less leaves a sound margin. Bends and narrow places cost most.</source>
        <translation>La mitad del tiro natural o menos deja un margen sano. Lo que más cuesta son los codos y los estrechos.</translation>
    </message>
    <message>
        <source>How warm the gas leaves the cap when the bench is warm and the path has settled.</source>
        <translation>Qué tibio sale el gas por el sombrero cuando el banco está caliente y el conducto se ha estabilizado.</translation>
    </message>
    <message>
        <source>60 to 120 °C is common. Colder saves heat and risks water and a weak pull; hotter means that heat is thrown away.</source>
        <translation>Lo común es de 60 a 120 °C. Más frío ahorra calor pero arriesga agua y poco tiro; más caliente es calor tirado.</translation>
    </message>
    <message>
        <source>Where the inner wall is colder than the dew point of the gas, water settles. It carries soot and acid.</source>
        <translation>Donde la pared interior está más fría que el punto de rocío del gas, se posa agua. Lleva hollín y ácido.</translation>
    </message>
    <message>
        <source>Nowhere is best; in a bench that is still cold a little at the start is common.</source>
        <translation>En ninguna parte es lo mejor; en un banco aún frío es común un poco al principio.</translation>
    </message>
    <message>
        <source>How much air comes with the wood, as a multiple of what it needs to burn.</source>
        <translation>Cuánto aire viene con la leña, como múltiplo de lo que necesita para arder.</translation>
    </message>
    <message>
        <source>2 to 3 is common for an open feed. Under 1.5 it smokes; over 6 it cools the fire.</source>
        <translation>De 2 a 3 es común en una alimentación abierta. Bajo 1,5 humea; sobre 6 enfría el fuego.</translation>
    </message>
    <message>
        <source>Standing draft</source>
        <translation>Tiro en reposo</translation>
    </message>
    <message>
        <source>The pull before anything burns, from the house&apos;s warmth and the weather alone. Below zero the path runs backwards until it is warmed.</source>
        <translation>El tiro antes de que arda nada, solo por el calor de la casa y el tiempo. Bajo cero el conducto va al revés hasta que se calienta.</translation>
    </message>
    <message>
        <source>A little above zero makes lighting easy. A chimney outdoors often stands below.</source>
        <translation>Un poco sobre cero facilita encender. Una chimenea exterior suele estar por debajo.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Where the wood&apos;s heat goes: into the bench&apos;s mass, through bare walls to the room, up the stack, out of the house.</source>
        <translation>Adónde va el calor de la leña: a la masa del banco, por paredes desnudas al cuarto, chimenea arriba, fuera de la casa.</translation>
    </message>
    <message>
        <source>A third to a half in the mass is common for a bench of a few metres.</source>
        <translation>De un tercio a la mitad en la masa es común en un banco de unos metros.</translation>
    </message>
    <message>
        <source>Neutral plane</source>
        <translation>Plano neutro</translation>
    </message>
    <message>
        <source>The height in the house at which indoor and outdoor pressure agree. Below it air wants in, above it out. A fire below it has the house against it.</source>
        <translation>La altura de la casa donde las presiones interior y exterior coinciden. Por debajo el aire quiere entrar, por encima salir. Un fuego por debajo tiene la casa en contra.</translation>
    </message>
    <message>
        <source>About the middle of the heated height; range hoods lift it.</source>
        <translation>Hacia la mitad de la altura calentada; las campanas de cocina lo suben.</translation>
    </message>
    <message>
        <source>The curves along the path</source>
        <translation>Las curvas a lo largo del conducto</translation>
    </message>
    <message>
        <source>Pressure in the flue from feed to cap, beside that of the room at the same height. Where the flue lies above the room, smoke can leak out of a crack.</source>
        <translation>Presión en el conducto de la alimentación al sombrero, junto a la del cuarto a la misma altura. Donde el conducto está por encima, puede salir humo por una grieta.</translation>
    </message>
    <message>
        <source>The flue should lie below the room everywhere indoors.</source>
        <translation>En el interior, el conducto debería estar siempre por debajo del cuarto.</translation>
    </message>
    <message>
        <source>Pressure along the path</source>
        <translation>Presión a lo largo del conducto</translation>
    </message>
    <message>
        <source>Temperature along the path</source>
        <translation>Temperatura a lo largo del conducto</translation>
    </message>
    <message>
        <source>Plots along the path</source>
        <translation>Gráficas a lo largo del conducto</translation>
    </message>
    <message>
        <source>The curves appear once air can come in and a fire burns on the path.</source>
        <translation>Las curvas aparecen cuando puede entrar aire y arde un fuego en el conducto.</translation>
    </message>
    <message>
        <source>where it settles, bench charged</source>
        <translation>donde se estabiliza, banco cargado</translation>
    </message>
    <message>
        <source>at the wanted air, bench charged</source>
        <translation>con el aire deseado, banco cargado</translation>
    </message>
    <message>
        <source>%1, %2 along</source>
        <translation>%1, a %2</translation>
    </message>
    <message>
        <source>%1: %2, room %3</source>
        <translation>%1: %2, cuarto %3</translation>
    </message>
    <message>
        <source>%1: gas %2, wall %3, dew point %4</source>
        <translation>%1: gas %2, pared %3, punto de rocío %4</translation>
    </message>
    <message>
        <source>along the path, %1</source>
        <translation>a lo largo del conducto, %1</translation>
    </message>
    <message>
        <source>against outdoor air, %1</source>
        <translation>respecto al aire exterior, %1</translation>
    </message>
    <message>
        <source>in the flue</source>
        <translation>en el conducto</translation>
    </message>
    <message>
        <source>in the room, same height</source>
        <translation>en el cuarto, misma altura</translation>
    </message>
    <message>
        <source>smoke can leak into the room</source>
        <translation>puede salir humo al cuarto</translation>
    </message>
    <message>
        <source>temperature, %1</source>
        <translation>temperatura, %1</translation>
    </message>
    <message>
        <source>inner wall</source>
        <translation>pared interior</translation>
    </message>
    <message>
        <source>dew point</source>
        <translation>punto de rocío</translation>
    </message>
    <message>
        <source>Paper: %1</source>
        <translation>Papel: %1</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Hoja de obra</translation>
    </message>
    <message>
        <source>Client&apos;s page</source>
        <translation>Página del cliente</translation>
    </message>
    <message>
        <source>Lighting card</source>
        <translation>Tarjeta de encendido</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Cálculo</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Imprimir…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Guardar como P&amp;DF…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation>Pá&amp;gina</translation>
    </message>
    <message>
        <source>Pap&amp;er</source>
        <translation>Pap&amp;el</translation>
    </message>
    <message>
        <source>Stock &amp;pipe</source>
        <translation>&amp;Tubo de almacén</translation>
    </message>
    <message>
        <source>Saw &amp;cut</source>
        <translation>&amp;Corte de sierra</translation>
    </message>
    <message>
        <source>&amp;Overlap</source>
        <translation>&amp;Solape</translation>
    </message>
    <message>
        <source>Cob: &amp;sand, parts</source>
        <translation>Cob: &amp;arena, partes</translation>
    </message>
    <message>
        <source>Cob: c&amp;lay, parts</source>
        <translation>Cob: arci&amp;lla, partes</translation>
    </message>
    <message>
        <source>Laying out…</source>
        <translation>Componiendo…</translation>
    </message>
    <message>
        <source>1 page</source>
        <translation>1 página</translation>
    </message>
    <message>
        <source>%1 pages</source>
        <translation>%1 páginas</translation>
    </message>
    <message>
        <source>Save the pages as PDF</source>
        <translation>Guardar las páginas como PDF</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>Escrito: %1.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>Export a view</source>
        <translation>Exportar una vista</translation>
    </message>
    <message>
        <source>Export the parts list</source>
        <translation>Exportar la lista de piezas</translation>
    </message>
    <message>
        <source>Export the results</source>
        <translation>Exportar los resultados</translation>
    </message>
    <message>
        <source>“%1” was not written. What stood there before still does.</source>
        <translation>«%1» no se escribió. Lo que había antes sigue ahí.</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Buscar una pieza</translation>
    </message>
    <message>
        <source>Where air comes in</source>
        <translation>Por donde entra el aire</translation>
    </message>
    <message>
        <source>First heat exchange</source>
        <translation>Primer intercambio</translation>
    </message>
    <message>
        <source>Bench and floor</source>
        <translation>Banco y suelo</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Accesorios</translation>
    </message>
    <message>
        <source>Up and out</source>
        <translation>Arriba y afuera</translation>
    </message>
    <message>
        <source>Helpers</source>
        <translation>Ayudas</translation>
    </message>
    <message>
        <source>Rack of pieces</source>
        <translation>Estante de piezas</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Archivo</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>New by five &amp;questions…</source>
        <translation>Nuevo con cinco &amp;preguntas…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>&amp;Abrir…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>Abrir &amp;reciente</translation>
    </message>
    <message>
        <source>S&amp;tart page</source>
        <translation>Página de &amp;inicio</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Guardar</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Guardar &amp;como…</translation>
    </message>
    <message>
        <source>&amp;Earlier versions…</source>
        <translation>&amp;Versiones anteriores…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Salir</translation>
    </message>
    <message>
        <source>&amp;Paper: preview, print, PDF…</source>
        <translation>Pa&amp;pel: vista previa, imprimir, PDF…</translation>
    </message>
    <message>
        <source>E&amp;xport</source>
        <translation>E&amp;xportar</translation>
    </message>
    <message>
        <source>&amp;Plan…</source>
        <translation>&amp;Planta…</translation>
    </message>
    <message>
        <source>Elevation from the &amp;south…</source>
        <translation>Alzado desde el &amp;sur…</translation>
    </message>
    <message>
        <source>Elevation from the &amp;east…</source>
        <translation>Alzado desde el &amp;este…</translation>
    </message>
    <message>
        <source>&amp;Isometric…</source>
        <translation>&amp;Isométrica…</translation>
    </message>
    <message>
        <source>Parts &amp;list…</source>
        <translation>&amp;Lista de piezas…</translation>
    </message>
    <message>
        <source>&amp;Results…</source>
        <translation>&amp;Resultados…</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Editar</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Deshacer</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rehacer</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>Elegir &amp;todo</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ver</translation>
    </message>
    <message>
        <source>Zoom to &amp;fit</source>
        <translation>A&amp;justar</translation>
    </message>
    <message>
        <source>&amp;Will it start?</source>
        <translation>¿&amp;Arrancará?</translation>
    </message>
    <message>
        <source>Starting &amp;aids</source>
        <translation>A&amp;yudas de encendido</translation>
    </message>
    <message>
        <source>Show the wor&amp;king of</source>
        <translation>Mostrar el &amp;cálculo de</translation>
    </message>
    <message>
        <source>the selected &amp;piece</source>
        <translation>la &amp;pieza elegida</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>&amp;Metric (mm, °C, Pa)</source>
        <translation>&amp;Métricas (mm, °C, Pa)</translation>
    </message>
    <message>
        <source>&amp;Imperial (in, ft, °F, in w.c.)</source>
        <translation>&amp;Anglosajonas (in, ft, °F, in w.c.)</translation>
    </message>
    <message>
        <source>S&amp;witch metric and imperial</source>
        <translation>C&amp;ambiar de unidades</translation>
    </message>
    <message>
        <source>&amp;Grid step</source>
        <translation>Paso de &amp;cuadrícula</translation>
    </message>
    <message>
        <source>&amp;Colour the drawing by</source>
        <translation>C&amp;olorear el dibujo por</translation>
    </message>
    <message>
        <source>Gas &amp;temperature</source>
        <translation>&amp;Temperatura del gas</translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Presión</translation>
    </message>
    <message>
        <source>&amp;Dark sheet</source>
        <translation>Hoja &amp;oscura</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Alto con&amp;traste</translation>
    </message>
    <message>
        <source>Text si&amp;ze</source>
        <translation>Tamaño del te&amp;xto</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>Id&amp;ioma</translation>
    </message>
    <message>
        <source>Isometric as pipe dra&amp;wing</source>
        <translation>Isométrica como &amp;dibujo de tubería</translation>
    </message>
    <message>
        <source>The h&amp;ouse around it…</source>
        <translation>La c&amp;asa alrededor…</translation>
    </message>
    <message>
        <source>What is wr&amp;ong</source>
        <translation>Qué est&amp;á mal</translation>
    </message>
    <message>
        <source>What would &amp;help</source>
        <translation>Qué a&amp;yudaría</translation>
    </message>
    <message>
        <source>How far one can &amp;go</source>
        <translation>Hasta dónde se &amp;puede ir</translation>
    </message>
    <message>
        <source>Go to the &amp;rack</source>
        <translation>Ir al &amp;estante</translation>
    </message>
    <message>
        <source>Go to the dra&amp;wing</source>
        <translation>Ir al &amp;dibujo</translation>
    </message>
    <message>
        <source>Go to the &amp;answer</source>
        <translation>Ir a la &amp;respuesta</translation>
    </message>
    <message>
        <source>Go to the &amp;editors</source>
        <translation>Ir a los &amp;editores</translation>
    </message>
    <message>
        <source>Go to the &amp;plot</source>
        <translation>Ir a la &amp;gráfica</translation>
    </message>
    <message>
        <source>Go to the &amp;burn</source>
        <translation>Ir al &amp;fuego</translation>
    </message>
    <message>
        <source>The program speaks it from its next start on.</source>
        <translation>El programa lo habla desde el próximo inicio.</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Como el &amp;sistema</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>A&amp;yuda</translation>
    </message>
    <message>
        <source>&amp;Keyboard</source>
        <translation>&amp;Teclado</translation>
    </message>
    <message>
        <source>&amp;What is this, and what is usual</source>
        <translation>&amp;Qué es esto, y qué es lo usual</translation>
    </message>
    <message>
        <source>Three &amp;gestures</source>
        <translation>Tres &amp;gestos</translation>
    </message>
    <message>
        <source>&amp;About and cautions</source>
        <translation>&amp;Acerca de, y precauciones</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Olvidar estos</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Pieza</translation>
    </message>
    <message>
        <source>Put a red&amp;ucer between two bores</source>
        <translation>Poner una red&amp;ucción entre dos diámetros</translation>
    </message>
    <message>
        <source>Rotate to the &amp;left</source>
        <translation>Girar a la &amp;izquierda</translation>
    </message>
    <message>
        <source>Rotate to the &amp;right</source>
        <translation>Girar a la &amp;derecha</translation>
    </message>
    <message>
        <source>&amp;Bench longer, with its return runs</source>
        <translation>&amp;Banco más largo, con sus vueltas</translation>
    </message>
    <message>
        <source>Bench &amp;shorter</source>
        <translation>Banco más &amp;corto</translation>
    </message>
    <message>
        <source>&amp;Draw passes side by side…</source>
        <translation>&amp;Dibujar pasadas paralelas…</translation>
    </message>
    <message>
        <source>Pull its joint &amp;apart</source>
        <translation>&amp;Separar su unión</translation>
    </message>
    <message>
        <source>Take &amp;out	Del</source>
        <translation>&amp;Quitar	Supr</translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation>&amp;Variantes</translation>
    </message>
    <message>
        <source>&amp;Fork what is on the desk</source>
        <translation>&amp;Bifurcar lo que hay en la mesa</translation>
    </message>
    <message>
        <source>&amp;Next variant</source>
        <translation>Variante &amp;siguiente</translation>
    </message>
    <message>
        <source>&amp;Variant before</source>
        <translation>Variante &amp;anterior</translation>
    </message>
    <message>
        <source>&amp;Compare them…</source>
        <translation>&amp;Compararlas…</translation>
    </message>
    <message>
        <source>&amp;Take this one out</source>
        <translation>&amp;Quitar esta</translation>
    </message>
    <message>
        <source>Flue paths (*%1);;All files (*)</source>
        <translation>Conductos (*%1);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>No working copy can be kept (%1): save often.</source>
        <translation>No se puede guardar copia de trabajo (%1): guarde a menudo.</translation>
    </message>
    <message>
        <source>%1 (demo)</source>
        <translation>%1 (ejemplo)</translation>
    </message>
    <message>
        <source>Unnamed</source>
        <translation>Sin nombre</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Cambios sin guardar</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>«%1» tiene cambios sin guardar.</translation>
    </message>
    <message>
        <source>Save them before leaving this design?</source>
        <translation>¿Guardarlos antes de dejar este diseño?</translation>
    </message>
    <message>
        <source>Open a design</source>
        <translation>Abrir un diseño</translation>
    </message>
    <message>
        <source>“%1” was not opened.</source>
        <translation>«%1» no se abrió.</translation>
    </message>
    <message>
        <source>A copy of “%1”: saving asks where to put it.</source>
        <translation>Una copia de «%1»: al guardar se pregunta dónde.</translation>
    </message>
    <message>
        <source>The demo “%1” was not opened.</source>
        <translation>El ejemplo «%1» no se abrió.</translation>
    </message>
    <message>
        <source>There is no demo “%1”.</source>
        <translation>No hay ejemplo «%1».</translation>
    </message>
    <message>
        <source>The start page lists the demos there are.</source>
        <translation>La página de inicio muestra los ejemplos que hay.</translation>
    </message>
    <message>
        <source>Save the design as</source>
        <translation>Guardar el diseño como</translation>
    </message>
    <message>
        <source>“%1” was not saved. The design is still here, unsaved.</source>
        <translation>«%1» no se guardó. El diseño sigue aquí, sin guardar.</translation>
    </message>
    <message>
        <source>Another window has that file open. Save under another name.</source>
        <translation>Otra ventana tiene abierto ese archivo. Guarde con otro nombre.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>Saved as %1, but the version before it could not be kept.</source>
        <translation>Guardado como %1, pero no se pudo conservar la versión anterior.</translation>
    </message>
    <message>
        <source>About Fluewright</source>
        <translation>Acerca de Fluewright</translation>
    </message>
    <message>
        <source>Draw the flue path of a bench heater and see whether it draws. Version %1, GPL-3.0-or-later.</source>
        <translation>Dibuje el conducto de una estufa con banco y vea si tira. Versión %1, GPL-3.0-or-later.</translation>
    </message>
    <message>
        <source>Before you light a fire</source>
        <translation>Antes de encender un fuego</translation>
    </message>
    <message>
        <source>No compliance with any standard is claimed.</source>
        <translation>No se afirma que cumpla ninguna norma.</translation>
    </message>
    <message>
        <source>In a field: one step up or down; Page keys: ten</source>
        <translation>En un campo: un paso arriba o abajo; teclas de página: diez</translation>
    </message>
    <message>
        <source>Enter, Esc</source>
        <translation>Intro, Esc</translation>
    </message>
    <message>
        <source>In a field: use what is typed, or go back to what was</source>
        <translation>En un campo: usar lo escrito, o volver a lo de antes</translation>
    </message>
    <message>
        <source>← →, Enter</source>
        <translation>← →, Intro</translation>
    </message>
    <message>
        <source>On the plot: walk along the path, select the piece</source>
        <translation>En la gráfica: recorrer el conducto, elegir la pieza</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Mayús+Tab</translation>
    </message>
    <message>
        <source>To the next control, or back</source>
        <translation>Al control siguiente, o atrás</translation>
    </message>
    <message>
        <source>Keyboard</source>
        <translation>Teclado</translation>
    </message>
    <message>
        <source>Everything by keyboard</source>
        <translation>Todo con el teclado</translation>
    </message>
    <message>
        <source>Already open</source>
        <translation>Ya abierto</translation>
    </message>
    <message>
        <source>“%1” is open in another window.</source>
        <translation>«%1» está abierto en otra ventana.</translation>
    </message>
    <message>
        <source>The program with number %1 on the computer “%2” has it. If both saved it, one would lose what it drew. You can work on a copy.</source>
        <translation>Lo tiene el programa con número %1 en el equipo «%2». Si ambos guardaran, uno perdería lo dibujado. Puede trabajar en una copia.</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Abrir una &amp;copia</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Trabajo sin guardar</translation>
    </message>
    <message>
        <source>“%1” was not saved when the program ended.</source>
        <translation>«%1» no estaba guardado cuando terminó el programa.</translation>
    </message>
    <message>
        <source>A working copy from %1 is here.</source>
        <translation>Hay una copia de trabajo de %1.</translation>
    </message>
    <message>
        <source>&amp;Go on with it</source>
        <translation>&amp;Seguir con ello</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Tirarlo</translation>
    </message>
    <message>
        <source>Ask me &amp;later</source>
        <translation>Preguntar &amp;después</translation>
    </message>
    <message>
        <source>The working copy of “%1” was not opened.</source>
        <translation>La copia de trabajo de «%1» no se abrió.</translation>
    </message>
    <message>
        <source>Unsaved work from %1: save it to keep it.</source>
        <translation>Trabajo sin guardar de %1: guárdelo para conservarlo.</translation>
    </message>
    <message>
        <source>Earlier versions of “%1”</source>
        <translation>Versiones anteriores de «%1»</translation>
    </message>
    <message>
        <source>Earlier versions</source>
        <translation>Versiones anteriores</translation>
    </message>
    <message>
        <source>There is none yet: one is kept each time you save.</source>
        <translation>Todavía no hay ninguna: se conserva una cada vez que guarda.</translation>
    </message>
    <message>
        <source>Choose what to go back to. Undo brings back what is there now.</source>
        <translation>Elija a cuál volver. Deshacer recupera lo que hay ahora.</translation>
    </message>
    <message>
        <source>&amp;Go back to it</source>
        <translation>&amp;Volver a ella</translation>
    </message>
    <message>
        <source>Go back to %1</source>
        <translation>Volver a %1</translation>
    </message>
    <message>
        <source>This is the version of %1.</source>
        <translation>Esta es la versión de %1.</translation>
    </message>
    <message>
        <source>Burn over time</source>
        <translation>El fuego en el tiempo</translation>
    </message>
    <message>
        <source> (read-only)</source>
        <translation> (solo lectura)</translation>
    </message>
    <message>
        <source>Choose a design to look at, or start with an empty sheet.</source>
        <translation>Elija un diseño para mirar, o empiece con una hoja vacía.</translation>
    </message>
    <message>
        <source>Open the demo %1</source>
        <translation>Abrir el ejemplo %1</translation>
    </message>
    <message>
        <source>Recent</source>
        <translation>Recientes</translation>
    </message>
    <message>
        <source>Draw the flue path of a bench heater, from feed to cap, and see at every edit whether it draws.</source>
        <translation>Dibuje el conducto de una estufa con banco, de la alimentación al sombrero, y vea en cada cambio si tira.</translation>
    </message>
    <message>
        <source>Empty sheet</source>
        <translation>Hoja vacía</translation>
    </message>
    <message>
        <source>Open a design…</source>
        <translation>Abrir un diseño…</translation>
    </message>
    <message>
        <source>A path by five questions…</source>
        <translation>Un conducto con cinco preguntas…</translation>
    </message>
    <message>
        <source>Designs to look at</source>
        <translation>Diseños para mirar</translation>
    </message>
    <message>
        <source>All invented; change them as you like, they open as unsaved copies.</source>
        <translation>Todos inventados; cámbielos a gusto, se abren como copias sin guardar.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>Abrir %1</translation>
    </message>
    <message>
        <source>Back to %1</source>
        <translation>Volver a %1</translation>
    </message>
    <message>
        <source>A path by five questions</source>
        <translation>Un conducto con cinco preguntas</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>recto</translation>
    </message>
    <message>
        <source>L, round a corner</source>
        <translation>L, dando la vuelta a una esquina</translation>
    </message>
    <message>
        <source>U, out and back</source>
        <translation>U, ida y vuelta</translation>
    </message>
    <message>
        <source>in loops, three passes</source>
        <translation>en lazos, tres pasadas</translation>
    </message>
    <message>
        <source>in the room, up through the roof</source>
        <translation>en el cuarto, por el tejado</translation>
    </message>
    <message>
        <source>outside, through the wall</source>
        <translation>afuera, por la pared</translation>
    </message>
    <message>
        <source>3  How much flue in the bench?</source>
        <translation>3  ¿Cuánto conducto en el banco?</translation>
    </message>
    <message>
        <source>5  How high does the stack end above the floor?</source>
        <translation>5  ¿A qué altura sobre el suelo acaba la chimenea?</translation>
    </message>
    <message>
        <source>How wide is the flue?</source>
        <translation>¿Qué diámetro tiene el conducto?</translation>
    </message>
    <message>
        <source>What shape has the bench?</source>
        <translation>¿Qué forma tiene el banco?</translation>
    </message>
    <message>
        <source>Where does the stack stand?</source>
        <translation>¿Dónde está la chimenea?</translation>
    </message>
    <message>
        <source>&amp;1  How wide is the flue?</source>
        <translation>&amp;1  ¿Qué diámetro tiene el conducto?</translation>
    </message>
    <message>
        <source>&amp;2  What shape has the bench?</source>
        <translation>&amp;2  ¿Qué forma tiene el banco?</translation>
    </message>
    <message>
        <source>&amp;4  Where does the stack stand?</source>
        <translation>&amp;4  ¿Dónde está la chimenea?</translation>
    </message>
    <message>
        <source>What the answers build</source>
        <translation>Lo que construyen las respuestas</translation>
    </message>
    <message>
        <source>&amp;Build it</source>
        <translation>&amp;Construirlo</translation>
    </message>
    <message>
        <source>On a day at 5 °C this has a draft margin of %1 with a cold bench. Everything can be changed on the desk.</source>
        <translation>En un día a 5 °C esto tiene un margen de tiro de %1 con el banco frío. En la mesa se puede cambiar todo.</translation>
    </message>
    <message>
        <source>&amp;Skip</source>
        <translation>&amp;Omitir</translation>
    </message>
    <message>
        <source>Three gestures</source>
        <translation>Tres gestos</translation>
    </message>
    <message>
        <source>Press on the ring with the plus at the end of the bench and drag: the path grows. Drag across for an elbow.</source>
        <translation>Pulse el anillo con el más al final del banco y arrastre: el conducto crece. De través sale un codo.</translation>
    </message>
    <message>
        <source>Now press on a joint between two pieces and drag it: the runs beside it stretch, and the answer follows at once.</source>
        <translation>Ahora pulse una unión entre dos piezas y arrástrela: los tramos vecinos se alargan y la respuesta sigue al momento.</translation>
    </message>
    <message>
        <source>Press Ctrl+Z to take that back. Every gesture is one step, as far back as you like.</source>
        <translation>Pulse Ctrl+Z para deshacerlo. Cada gesto es un paso, tan atrás como quiera.</translation>
    </message>
    <message>
        <source>That is all there is to drawing. Pieces come from the rack to the left; F1 lists the keys.</source>
        <translation>Eso es todo lo que hay que saber para dibujar. Las piezas vienen del estante de la izquierda; F1 lista las teclas.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>aid</source>
        <translation>ayuda</translation>
    </message>
    <message>
        <source>why it stands here</source>
        <translation>por qué está aquí</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>Start map: outdoors across, room upwards</source>
        <translation>Mapa de encendido: exterior a lo ancho, cuarto hacia arriba</translation>
    </message>
    <message>
        <source>Outdoors %1, room %2: </source>
        <translation>Exterior %1, cuarto %2: </translation>
    </message>
    <message>
        <source> (not computed yet; the cells around it agree)</source>
        <translation> (aún sin calcular; las casillas vecinas coinciden)</translation>
    </message>
    <message>
        <source> (a run did not converge)</source>
        <translation> (un cálculo no convergió)</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>today</source>
        <translation>hoy</translation>
    </message>
    <message>
        <source>Pale, small letter: not computed yet, the cells around it agree</source>
        <translation>Letra pequeña y pálida: aún sin calcular, las casillas vecinas coinciden</translation>
    </message>
    <message>
        <source>Will it start? – Fluewright</source>
        <translation>¿Arrancará? – Fluewright</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Mapa</translation>
    </message>
    <message>
        <source>Start map as a table</source>
        <translation>Mapa de encendido como tabla</translation>
    </message>
    <message>
        <source>Map as a table</source>
        <translation>Mapa como tabla</translation>
    </message>
    <message>
        <source>Starting aids</source>
        <translation>Ayudas de encendido</translation>
    </message>
    <message>
        <source>Starting aids, best first</source>
        <translation>Ayudas de encendido, las mejores primero</translation>
    </message>
    <message>
        <source>How far the runs are</source>
        <translation>Cuánto llevan los cálculos</translation>
    </message>
    <message>
        <source>The drawing has no complete path with a fire on it yet: nothing can burn.</source>
        <translation>El dibujo aún no tiene un conducto completo con un fuego: no puede arder nada.</translation>
    </message>
    <message>
        <source>map %1 %, aids %2 %</source>
        <translation>mapa %1 %, ayudas %2 %</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Parar</translation>
    </message>
    <message>
        <source>Compute anew</source>
        <translation>Calcular de nuevo</translation>
    </message>
    <message>
        <source>&amp;Back to the design&apos;s own</source>
        <translation>&amp;Volver a las del diseño</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Range hood and fans</source>
        <translation>Campana y ventiladores</translation>
    </message>
    <message>
        <source>in the design: %1</source>
        <translation>en el diseño: %1</translation>
    </message>
    <message>
        <source>▲ The answer is for these conditions, not for the design&apos;s own.</source>
        <translation>▲ La respuesta es para estas condiciones, no para las del diseño.</translation>
    </message>
    <message>
        <source>Drag a handle: the answer follows, the design stays as it is.</source>
        <translation>Arrastre un mando: la respuesta sigue, el diseño queda como está.</translation>
    </message>
    <message>
        <source>Variants</source>
        <translation>Variantes</translation>
    </message>
    <message>
        <source>Name the variant</source>
        <translation>Nombrar la variante</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Variants side by side</source>
        <translation>Variantes lado a lado</translation>
    </message>
    <message>
        <source>%1 (on the desk)</source>
        <translation>%1 (en la mesa)</translation>
    </message>
    <message>
        <source>In brackets: how far from the first. F6 changes over; a click on a name puts that one on the desk.</source>
        <translation>Entre paréntesis: cuánto difiere de la primera. F6 cambia; un clic en un nombre pone esa en la mesa.</translation>
    </message>
    <message>
        <source>Water begins</source>
        <translation>Empieza el agua</translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation>en ninguna parte</translation>
    </message>
    <message>
        <source>Heat kept in the mass</source>
        <translation>Calor guardado en la masa</translation>
    </message>
    <message>
        <source>Heat to the room</source>
        <translation>Calor al cuarto</translation>
    </message>
    <message>
        <source>Length of the path</source>
        <translation>Longitud del conducto</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Gajos</translation>
    </message>
    <message>
        <source>%1 × %2 more</source>
        <translation>%1 × %2 más</translation>
    </message>
    <message>
        <source>%1 × %2 fewer</source>
        <translation>%1 × %2 menos</translation>
    </message>
    <message>
        <source>the same pieces</source>
        <translation>las mismas piezas</translation>
    </message>
    <message>
        <source>Symbol</source>
        <translation>Símbolo</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Significado</translation>
    </message>
    <message>
        <source>Relation</source>
        <translation>Relación</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>Working – Fluewright</source>
        <translation>Cálculo – Fluewright</translation>
    </message>
    <message>
        <source>SI base units; temperatures in kelvin. Values stand to more digits than they mean, so that whoever works with them on a calculator gets six back.</source>
        <translation>Unidades básicas SI; temperaturas en kelvin. Los valores llevan más cifras de las que significan, para que quien calcule con ellos recupere seis.</translation>
    </message>
    <message>
        <source>What is worked</source>
        <translation>Qué se calcula</translation>
    </message>
    <message>
        <source>The slice before</source>
        <translation>El corte anterior</translation>
    </message>
    <message>
        <source>The slice after</source>
        <translation>El corte siguiente</translation>
    </message>
    <message>
        <source>Copy all</source>
        <translation>Copiar todo</translation>
    </message>
    <message>
        <source>The whole working as text; Ctrl+C copies the chosen lines</source>
        <translation>Todo el cálculo como texto; Ctrl+C copia las líneas elegidas</translation>
    </message>
    <message>
        <source>Steps of the working</source>
        <translation>Pasos del cálculo</translation>
    </message>
    <message>
        <source>The answer has no such number now.</source>
        <translation>La respuesta no tiene ahora ese número.</translation>
    </message>
    <message>
        <source>The gas does not pass this piece yet.</source>
        <translation>El gas aún no pasa por esta pieza.</translation>
    </message>
    <message>
        <source>Slice %1 of the piece&apos;s %2</source>
        <translation>Corte %1 de los %2 de la pieza</translation>
    </message>
    <message>
        <source>; body %1 wide, %2 high</source>
        <translation>; cuerpo de %1 de ancho, %2 de alto</translation>
    </message>
    <message>
        <source>%1 part %2 of %3</source>
        <translation>%1 trozo %2 de %3</translation>
    </message>
    <message>
        <source>no way of sawing takes fewer</source>
        <translation>ningún corte gasta menos</translation>
    </message>
    <message>
        <source>the best found; at least %1 are needed</source>
        <translation>lo mejor hallado; hacen falta %1 al menos</translation>
    </message>
    <message>
        <source>%1, bore %2: %3 × %4 of stock pipe, %5. Offcuts %6, saw dust %7.</source>
        <translation>%1, diámetro %2: %3 × %4 de tubo, %5. Sobrantes %6, serrín %7.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Tubo</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Sobra</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Lista de corte</translation>
    </message>
    <message>
        <source>None: stock pipe must be longer than its overlap.</source>
        <translation>Ninguna: el tubo debe ser más largo que su solape.</translation>
    </message>
    <message>
        <source>Not to be sawn: %1. Pipe of several layers comes in fixed lengths; make these up from the maker&apos;s list with an adjustable length.</source>
        <translation>Sin cortar: %1. El tubo de varias capas viene en largos fijos; compóngalos con la lista del fabricante y un tramo ajustable.</translation>
    </message>
    <message>
        <source>Cob of %1 parts of sand to %2 of clay by volume, loose and dry; straw as it takes. Make test bricks first.</source>
        <translation>Cob de %1 partes de arena por %2 de arcilla en volumen, sueltas y secas; paja la que admita. Haga antes adobes de prueba.</translation>
    </message>
    <message>
        <source>For the cob</source>
        <translation>Para el cob</translation>
    </message>
    <message>
        <source>Dry weight</source>
        <translation>Peso seco</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Suelto</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>Arena</translation>
    </message>
    <message>
        <source>Clay soil</source>
        <translation>Tierra arcillosa</translation>
    </message>
    <message>
        <source>Floor load</source>
        <translation>Carga del suelo</translation>
    </message>
    <message>
        <source>On the room&apos;s floor</source>
        <translation>Sobre el suelo del cuarto</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Peso</translation>
    </message>
    <message>
        <source>Footprint</source>
        <translation>Superficie de apoyo</translation>
    </message>
    <message>
        <source>Load</source>
        <comment>on a floor</comment>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Everything over its footprint</source>
        <translation>Todo sobre su superficie</translation>
    </message>
    <message>
        <source>Under the mass alone</source>
        <translation>Bajo la masa sola</translation>
    </message>
    <message>
        <source>Usual allowance for dwellings&apos; floors</source>
        <translation>Carga usual para suelos de vivienda</translation>
    </message>
    <message>
        <source>%1 times the usual allowance: a timber floor needs its own judge before anything is built on it. Allowance: %2.</source>
        <translation>%1 veces la carga usual: un suelo de madera necesita su propio juicio antes de construir encima. Carga usual: %2.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>N.º</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Parte</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Diámetro</translation>
    </message>
    <message>
        <source>Wall, from the gas outwards</source>
        <translation>Pared, del gas hacia fuera</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Cuántas</translation>
    </message>
    <message>
        <source>Masses</source>
        <translation>Masas</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>around the flue, its space taken off</source>
        <translation>alrededor del conducto, sin su hueco</translation>
    </message>
    <message>
        <source>walls of the pieces</source>
        <translation>paredes de las piezas</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Todo</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Banco</translation>
    </message>
    <message>
        <source>Gas at the cap</source>
        <translation>Gas en el sombrero</translation>
    </message>
    <message>
        <source>Draft to spare, fans off</source>
        <translation>Tiro de sobra, ventiladores apagados</translation>
    </message>
    <message>
        <source>with fans</source>
        <translation>con ventiladores</translation>
    </message>
    <message>
        <source>quick estimate</source>
        <translation>estimación rápida</translation>
    </message>
    <message>
        <source>At the wanted burn rate and excess air. Draft to spare = buoyancy + room − %1 × resistance − wind allowance − wind at the cap.</source>
        <translation>Con el consumo y el exceso de aire deseados. Tiro de sobra = tiro natural + cuarto − %1 × resistencia − reserva por viento − viento en el sombrero.</translation>
    </message>
    <message>
        <source>Left to itself it settles nowhere: no flow from the inlet to the cap holds itself.</source>
        <translation>Por sí solo no se estabiliza: ningún caudal de la entrada al sombrero se sostiene.</translation>
    </message>
    <message>
        <source>Where it settles</source>
        <translation>Donde se estabiliza</translation>
    </message>
    <message>
        <source>bench charged</source>
        <translation>banco cargado</translation>
    </message>
    <message>
        <source>Flue gas</source>
        <translation>Gas de humos</translation>
    </message>
    <message>
        <source>Gas behind the fire</source>
        <translation>Gas tras el fuego</translation>
    </message>
    <message>
        <source>Heat released</source>
        <translation>Calor liberado</translation>
    </message>
    <message>
        <source>Heat into the mass</source>
        <translation>Calor a la masa</translation>
    </message>
    <message>
        <source>Heat up the stack</source>
        <translation>Calor por la chimenea</translation>
    </message>
    <message>
        <source>Wet walls</source>
        <translation>Paredes mojadas</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Before anyone builds</source>
        <translation>Antes de que nadie construya</translation>
    </message>
    <message>
        <source>Does it draw?</source>
        <translation>¿Tira?</translation>
    </message>
    <message>
        <source>Pressure along the way, where it settles</source>
        <translation>Presión a lo largo del conducto, donde se estabiliza</translation>
    </message>
    <message>
        <source>Pressure along the way, at the wanted fire</source>
        <translation>Presión a lo largo del conducto, con el fuego deseado</translation>
    </message>
    <message>
        <source>Reckoned with</source>
        <translation>Calculado con</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Condición</translation>
    </message>
    <message>
        <source>Steady calculation of gas, heat and pressure along the way; a cold bench and one hour after lighting are quick estimates. Joints are taken as tight and walls as dry. The page “Working” has every relation with its source.</source>
        <translation>Cálculo estacionario de gas, calor y presión a lo largo del conducto; el banco frío y una hora tras encender son estimaciones rápidas. Las uniones se toman estancas y las paredes secas. La página «Cálculo» tiene cada relación con su fuente.</translation>
    </message>
    <message>
        <source>mouth</source>
        <translation>boca</translation>
    </message>
    <message>
        <source>lid, lifted off</source>
        <translation>tapa, quitada</translation>
    </message>
    <message>
        <source>cleanout</source>
        <translation>registro de limpieza</translation>
    </message>
    <message>
        <source>from the roof</source>
        <translation>desde el tejado</translation>
    </message>
    <message>
        <source>Into the bench</source>
        <translation>Hacia el banco</translation>
    </message>
    <message>
        <source>Out of the bench</source>
        <translation>Desde el banco</translation>
    </message>
    <message>
        <source>Foot of the stack</source>
        <translation>Pie de la chimenea</translation>
    </message>
    <message>
        <source>Cleanouts (numbers in squares on the plan)</source>
        <translation>Registros de limpieza (números en cuadros en la planta)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>De</translation>
    </message>
    <message>
        <source>To</source>
        <translation>A</translation>
    </message>
    <message>
        <source>Reach from either end</source>
        <translation>Alcance desde cada extremo</translation>
    </message>
    <message>
        <source>Turns between</source>
        <translation>Codos entre medio</translation>
    </message>
    <message>
        <source>A brush from either end goes round one turn, seldom two: more than two turns between openings want another cleanout. Common practice, no source.</source>
        <translation>Un cepillo pasa desde cada extremo un codo, rara vez dos: más de dos codos entre aberturas piden otro registro de limpieza. Práctica común, sin fuente.</translation>
    </message>
    <message>
        <source>Room to everything that burns (dash-dot outlines on the plan)</source>
        <translation>Distancia a todo lo que arde (líneas de raya y punto en la planta)</translation>
    </message>
    <message>
        <source>Keep clear</source>
        <translation>Dejar libre</translation>
    </message>
    <message>
        <source>Local code and the makers&apos; sheets go before these. Wood behind masonry heats up too.</source>
        <translation>La norma local y las hojas de los fabricantes van primero. La madera tras la obra también se calienta.</translation>
    </message>
    <message>
        <source>Gauge points (letters on the plan)</source>
        <translation>Puntos de medida (letras en la planta)</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punto</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Against the room</source>
        <translation>Respecto al cuarto</translation>
    </message>
    <message>
        <source>A hole of 8 mm (5/16 in) for a probe, shut with a screw. What is calculated there %1, bench charged; below the room&apos;s pressure the sign is minus.</source>
        <translation>Un agujero de 8 mm (5/16 in) para una sonda, cerrado con un tornillo. Lo calculado ahí, %1, banco cargado; por debajo de la presión del cuarto el signo es menos.</translation>
    </message>
    <message>
        <source>where it settles</source>
        <translation>donde se estabiliza</translation>
    </message>
    <message>
        <source>at the wanted fire</source>
        <translation>con el fuego deseado</translation>
    </message>
    <message>
        <source>Slope and drain</source>
        <translation>Pendiente y desagüe</translation>
    </message>
    <message>
        <source>No run is given a slope: lay them level or climbing 1–2 % along the gas, and never sagging.</source>
        <translation>Ningún tramo tiene pendiente: póngalos a nivel o subiendo 1–2 % con el gas, y nunca combados.</translation>
    </message>
    <message>
        <source>%1 %2 %3 %4 % along the gas.</source>
        <translation>%1 %2 %3 %4 % con el gas.</translation>
    </message>
    <message>
        <source>climbs</source>
        <translation>sube</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>baja</translation>
    </message>
    <message>
        <source>%1 %2 to %3 %4</source>
        <translation>%1 %2 a %3 %4</translation>
    </message>
    <message>
        <source>Water gathers at %1, axis at %2: %3</source>
        <translation>El agua se junta en %1, eje a %2: %3</translation>
    </message>
    <message>
        <source>a cleanout opens there; give it a drain.</source>
        <translation>ahí hay un registro de limpieza; póngale desagüe.</translation>
    </message>
    <message>
        <source>nothing opens there; a cleanout with a drain belongs at its lowest end.</source>
        <translation>ahí no se abre nada; en su extremo más bajo debe ir un registro de limpieza con desagüe.</translation>
    </message>
    <message>
        <source>Carbon-monoxide alarm (CO on the plan)</source>
        <translation>Alarma de monóxido de carbono (CO en la planta)</translation>
    </message>
    <message>
        <source>In the heater&apos;s room, 1 to 3 m (3 to 10 ft) from the feed&apos;s mouth, at the height its maker&apos;s sheet says, and another near every bedroom. EN 50292, from memory.</source>
        <translation>En el cuarto de la estufa, a 1 a 3 m (3 a 10 ft) de la boca de la alimentación, a la altura que diga la hoja del fabricante, y otra cerca de cada dormitorio. EN 50292, de memoria.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long. Longer ones were tried up to %2, and they still draw.</source>
        <translation>El conducto de su banco mide %1. Se probaron otros más largos, hasta %2, y aún tiran.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long. Making it shorter alone does not make it draw.</source>
        <translation>El conducto de su banco mide %1. Acortarlo, sin más, no lo hace tirar.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long; up to %2 it would still draw.</source>
        <translation>El conducto de su banco mide %1; hasta %2 aún tiraría.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long; at %2 it would draw.</source>
        <translation>El conducto de su banco mide %1; con %2 tiraría.</translation>
    </message>
    <message>
        <source>not finished</source>
        <translation>sin terminar</translation>
    </message>
    <message>
        <source>Pull to spare at the hardest moment</source>
        <translation>Tiro de sobra en el peor momento</translation>
    </message>
    <message>
        <source>Smoke leaves the roof at</source>
        <translation>El humo sale del tejado a</translation>
    </message>
    <message>
        <source>Length of the whole way</source>
        <translation>Longitud de todo el conducto</translation>
    </message>
    <message>
        <source>For you</source>
        <translation>Para usted</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>eje</translation>
    </message>
    <message>
        <source>top of mass</source>
        <translation>parte alta de la masa</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Sin título</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>versión %1</translation>
    </message>
    <message>
        <source>A planning aid. Local code and permit come first; a licensed chimney professional inspects before the first fire.</source>
        <translation>Una ayuda para planificar. La norma local y el permiso van primero; un profesional autorizado de chimeneas revisa antes del primer fuego.</translation>
    </message>
    <message>
        <source>Not finished: what is missing stands below.</source>
        <translation>Sin terminar: lo que falta está abajo.</translation>
    </message>
    <message>
        <source>It draws. At its hardest moment (%1) the chimney pulls %2 more than the way takes.</source>
        <translation>Tira. En su peor momento (%1) la chimenea tira %2 más de lo que pide el conducto.</translation>
    </message>
    <message>
        <source>It draws, but only just: at its hardest moment (%1) the chimney pulls %2 more than the way takes.</source>
        <translation>Tira, pero muy justo: en su peor momento (%1) la chimenea tira %2 más de lo que pide el conducto.</translation>
    </message>
    <message>
        <source>Unsafe: it draws only while the fan runs. With the fan standing still, at its hardest moment (%1), the way takes %2 more than the chimney pulls.</source>
        <translation>Inseguro: solo tira mientras funciona el ventilador. Con él parado, en su peor momento (%1), el conducto pide %2 más de lo que tira la chimenea.</translation>
    </message>
    <message>
        <source>It will not draw as it is: at its hardest moment (%1) the way takes %2 more than the chimney pulls.</source>
        <translation>Así no tirará: en su peor momento (%1) el conducto pide %2 más de lo que tira la chimenea.</translation>
    </message>
    <message>
        <source>Draft: what is missing</source>
        <translation>Borrador: lo que falta</translation>
    </message>
    <message>
        <source>half %1</source>
        <translation>medio %1</translation>
    </message>
    <message>
        <source>%1 around %2</source>
        <translation>%1 en torno a %2</translation>
    </message>
    <message>
        <source>could not be opened for writing</source>
        <translation>no se pudo abrir para escribir</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation>no se pudo escribir</translation>
    </message>
    <message>
        <source>The pages could not be made.</source>
        <translation>No se pudieron hacer las páginas.</translation>
    </message>
    <message>
        <source>The picture could not be made.</source>
        <translation>No se pudo hacer la imagen.</translation>
    </message>
    <message>
        <source>A DXF drawing is made of plan and elevations: choose one of those views.</source>
        <translation>Un dibujo DXF se hace de planta y alzados: elija una de esas vistas.</translation>
    </message>
    <message>
        <source>“{}” is no file a view is written to: .pdf, .svg, .png or .dxf.</source>
        <translation>«{}» no es un archivo para una vista: .pdf, .svg, .png o .dxf.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>página %1 de %2</translation>
    </message>
    <message>
        <source>DRAFT</source>
        <translation>BORRADOR</translation>
    </message>
    <message>
        <source>the feed</source>
        <translation>la alimentación</translation>
    </message>
    <message>
        <source>kindle at the foot</source>
        <translation>encender astillas al pie</translation>
    </message>
    <message>
        <source>wait</source>
        <translation>esperar</translation>
    </message>
    <message>
        <source>Room %1</source>
        <translation>Cuarto %1</translation>
    </message>
    <message>
        <source>Lighting it</source>
        <translation>Encenderla</translation>
    </message>
    <message>
        <source>Look at the carbon-monoxide alarm: its lamp must show that it works. Switch off range hood, bath fan and dryer.</source>
        <translation>Mire la alarma de monóxido de carbono: su luz debe mostrar que funciona. Apague la campana, el extractor del baño y la secadora.</translation>
    </message>
    <message>
        <source>Open %1.</source>
        <translation>Abra %1.</translation>
    </message>
    <message>
        <source>Open %1 fully.</source>
        <translation>Abra %1 del todo.</translation>
    </message>
    <message>
        <source>Switch on %1.</source>
        <translation>Encienda %1.</translation>
    </message>
    <message>
        <source>open a window on the windward side and wait until it leans in</source>
        <translation>abra una ventana del lado del viento y espere a que se incline hacia dentro</translation>
    </message>
    <message>
        <source>Lay thin, dry kindling into %1 and light it. Keep it small and bright until it roars.</source>
        <translation>Ponga astillas finas y secas en %1 y enciéndalas. Manténgalo pequeño y vivo hasta que ruja.</translation>
    </message>
    <message>
        <source>Then add sticks a few at a time, tips level, never more than leave the air its way past them.</source>
        <translation>Añada luego unos palos cada vez, con las puntas a nivel, nunca más de lo que deje paso al aire.</translation>
    </message>
    <message>
        <source>When the stack is warm to the hand, close %1 slowly. If smoke shows, open it again.</source>
        <translation>Cuando la chimenea esté tibia al tacto, cierre %1 despacio. Si sale humo, vuelva a abrir.</translation>
    </message>
    <message>
        <source>Stay with it until it burns clean. Never shut the air or a damper while there are flames or embers.</source>
        <translation>Quédese hasta que arda limpio. Nunca cierre el aire ni una compuerta mientras haya llamas o brasas.</translation>
    </message>
    <message>
        <source>When smoke comes back</source>
        <translation>Si vuelve el humo</translation>
    </message>
    <message>
        <source>Open a window. Feed nothing more; pull the sticks back or let them burn down bright.</source>
        <translation>Abra una ventana. No eche más leña; retire los palos o deje que se consuman con llama viva.</translation>
    </message>
    <message>
        <source>Switch off every fan that blows out of the house.</source>
        <translation>Apague todo ventilador que saque aire de la casa.</translation>
    </message>
    <message>
        <source>If it does not stop within a minute or two: everybody out, door shut behind you, call for help.</source>
        <translation>Si no para en un minuto o dos: todos afuera, cierre la puerta al salir, pida ayuda.</translation>
    </message>
    <message>
        <source>If it comes back another day, have the way swept before you light again.</source>
        <translation>Si vuelve otro día, haga deshollinar el conducto antes de encender otra vez.</translation>
    </message>
    <message>
        <source>When the power fails</source>
        <translation>Si falla la luz</translation>
    </message>
    <message>
        <source>%1 stops and stands in the gas&apos;s way. Feed nothing more, open a window, stay in the room until the embers are out. Do not light it again without power.</source>
        <translation>%1 se para y estorba al gas. No eche más leña, abra una ventana y quédese en el cuarto hasta que se apaguen las brasas. No lo encienda sin electricidad.</translation>
    </message>
    <message>
        <source>This heater has no fan: it burns on. The alarm must have a battery of its own.</source>
        <translation>Esta estufa no tiene ventilador: sigue ardiendo. La alarma debe tener pila propia.</translation>
    </message>
    <message>
        <source>When the alarm sounds</source>
        <translation>Si suena la alarma</translation>
    </message>
    <message>
        <source>Everybody out at once; leave the door open only if it costs no time. Call the fire brigade from outside.</source>
        <translation>Todos afuera enseguida; deje la puerta abierta solo si no cuesta tiempo. Llame a los bomberos desde fuera.</translation>
    </message>
    <message>
        <source>Headache, dizziness or sickness count as an alarm even when nothing sounds.</source>
        <translation>Dolor de cabeza, mareo o náusea cuentan como alarma aunque no suene nada.</translation>
    </message>
    <message>
        <source>Go back in only when they say so, and light again only after somebody has found the reason.</source>
        <translation>Vuelva a entrar solo cuando se lo digan, y encienda de nuevo solo cuando alguien haya hallado la causa.</translation>
    </message>
    <message>
        <source>Never burn</source>
        <translation>No queme nunca</translation>
    </message>
    <message>
        <source>Wet or green wood · painted, glued or treated wood · driftwood · chipboard · household waste, plastic, coated paper · coal or briquettes · never any petrol, spirit or lighter fluid.</source>
        <translation>Leña mojada o verde · madera pintada, encolada o tratada · madera de deriva · aglomerado · basura doméstica, plástico, papel satinado · carbón o briquetas · jamás gasolina, alcohol ni líquido encendedor.</translation>
    </message>
    <message>
        <source>Lighting: %1</source>
        <translation>Encendido: %1</translation>
    </message>
    <message>
        <source>Can I light it today?</source>
        <translation>¿Puedo encender hoy?</translation>
    </message>
    <message>
        <source>The table of outdoor against room temperature is not computed for this design. Do the match test of step %1 every time.</source>
        <translation>La tabla de temperatura exterior frente a la del cuarto no está calculada para este diseño. Haga cada vez la prueba de la cerilla del paso %1.</translation>
    </message>
    <message>
        <source>How to light and what to do is common practice, no source. Numbers are estimates for planning.</source>
        <translation>Cómo encender y qué hacer es práctica común, sin fuente. Las cifras son estimaciones para planificar.</translation>
    </message>
    <message>
        <source>along the gas&apos;s way, %1</source>
        <translation>a lo largo del recorrido del gas, %1</translation>
    </message>
    <message>
        <source>pressure against outdoor air, %1; numbers above: pieces</source>
        <translation>presión respecto al aire exterior, %1; números de arriba: piezas</translation>
    </message>
    <message>
        <source>in the room at the same height</source>
        <translation>en el cuarto a la misma altura</translation>
    </message>
    <message>
        <source>length of the bench&apos;s flue, %1</source>
        <translation>longitud del conducto del banco, %1</translation>
    </message>
    <message>
        <source>draft to spare at the worst moment, %1; under 0 it does not draw</source>
        <translation>tiro de sobra en el peor momento, %1; por debajo de 0 no tira</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>el suyo</translation>
    </message>
    <message>
        <source>longest that draws</source>
        <translation>el más largo que tira</translation>
    </message>
    <message>
        <source>Plan: room to what burns, openings, gauges</source>
        <translation>Planta: distancia a lo que arde, aberturas, puntos de medida</translation>
    </message>
    <message>
        <source> along the three axes</source>
        <translation> a lo largo de los tres ejes</translation>
    </message>
    <message>
        <source>. Dimensions of the axis in feet and inches</source>
        <translation>. Cotas del eje en pies y pulgadas</translation>
    </message>
    <message>
        <source>, levels too</source>
        <translation>, también los niveles</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Unidad</translation>
    </message>
    <message>
        <source>Source and remarks</source>
        <translation>Fuente y observaciones</translation>
    </message>
    <message>
        <source>Working: %1</source>
        <translation>Cálculo: %1</translation>
    </message>
    <message>
        <source>Every number of the answer from what was given to the result, for whoever wants to work it by hand. SI base units; a temperature in a relation is in kelvin. Values stand to more digits than they mean, so that whoever works with them gets six back.</source>
        <translation>Cada número de la respuesta, de lo dado al resultado, para quien quiera calcularlo a mano. Unidades básicas SI; una temperatura en una relación va en kelvin. Los valores llevan más cifras de las que significan, para que quien calcule con ellos recupere seis.</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>exterior</translation>
    </message>
    <message>
        <source>main path</source>
        <translation>conducto principal</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>hacia delante</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>hacia atrás</translation>
    </message>
    <message>
        <source>stable</source>
        <translation>estable</translation>
    </message>
    <message>
        <source>will not last</source>
        <translation>no durará</translation>
    </message>
    <message>
        <source>{}: {} is not allowed; it must be an object.</source>
        <translation>{}: {} no se permite; debe ser un objeto.</translation>
    </message>
    <message>
        <source>{}: “{}” is not known here.</source>
        <translation>{}: «{}» no se conoce aquí.</translation>
    </message>
    <message>
        <source>{}: “{}” is missing.</source>
        <translation>{}: falta «{}».</translation>
    </message>
    <message>
        <source>{}, “{}”: {} is not allowed; it must be a number.</source>
        <translation>{}, «{}»: {} no se permite; debe ser un número.</translation>
    </message>
    <message>
        <source>{}, “{}”: {} is not allowed; it must be a word.</source>
        <translation>{}, «{}»: {} no se permite; debe ser una palabra.</translation>
    </message>
    <message>
        <source>“{}”: {} is not allowed; it must be a list.</source>
        <translation>«{}»: {} no se permite; debe ser una lista.</translation>
    </message>
    <message>
        <source>“{}”, entry {}</source>
        <translation>«{}», entrada {}</translation>
    </message>
    <message>
        <source>“outdoors” must hold one of constant_C, day, series, weather_file.</source>
        <translation>«outdoors» debe llevar uno de constant_C, day, series, weather_file.</translation>
    </message>
    <message>
        <source>“outdoors”, “day”</source>
        <translation>«outdoors», «day»</translation>
    </message>
    <message>
        <source>The weather file “{}” cannot be opened.</source>
        <translation>El archivo del tiempo «{}» no se puede abrir.</translation>
    </message>
    <message>
        <source>This time line comes from a newer version of the program.</source>
        <translation>Este horario es de una versión más nueva del programa.</translation>
    </message>
    <message>
        <source>The time line</source>
        <translation>El horario</translation>
    </message>
    <message>
        <source>“{}” could not be read: there is no such file.</source>
        <translation>«{}» no se pudo leer: no existe tal archivo.</translation>
    </message>
    <message>
        <source>“{}” could not be read: it cannot be opened.</source>
        <translation>«{}» no se pudo leer: no se puede abrir.</translation>
    </message>
    <message>
        <source>The run was called off.</source>
        <translation>El cálculo se canceló.</translation>
    </message>
    <message>
        <source>The time line has faults.</source>
        <translation>El horario tiene fallos.</translation>
    </message>
    <message>
        <source>A priming fire wants a tee with a shut port on the way up the stack; there is none.</source>
        <translation>Un fuego de cebado necesita una te con una boca tapada en la subida de la chimenea; no hay ninguna.</translation>
    </message>
    <message>
        <source>The steps would not converge; the run ends there.</source>
        <translation>Los pasos no convergieron; el cálculo acaba ahí.</translation>
    </message>
    <message>
        <source>“{}” could not be read: {}</source>
        <translation>«{}» no se pudo leer: {}</translation>
    </message>
    <message>
        <source>there is no such file.</source>
        <translation>no existe tal archivo.</translation>
    </message>
    <message>
        <source>it is a folder.</source>
        <translation>es una carpeta.</translation>
    </message>
    <message>
        <source>it is not an ordinary file.</source>
        <translation>no es un archivo común.</translation>
    </message>
    <message>
        <source>it is {} MiB large; a design may be at most {} MiB.</source>
        <translation>pesa {} MiB; un diseño puede tener {} MiB como mucho.</translation>
    </message>
    <message>
        <source>it cannot be opened (do you have the right to?).</source>
        <translation>no se puede abrir (¿tiene permiso?).</translation>
    </message>
    <message>
        <source>the disk reports an error.</source>
        <translation>el disco informa de un error.</translation>
    </message>
    <message>
        <source>The design was not saved, because it could not be opened again:</source>
        <translation>El diseño no se guardó, porque no se podría volver a abrir:</translation>
    </message>
    <message>
        <source>{}, at.{}: {} is not allowed; it must go in steps of 0.1 mm.</source>
        <translation>{}, at.{}: {} no se permite; debe ir en pasos de 0,1 mm.</translation>
    </message>
    <message>
        <source>{} has a field “{}” that {} does not have here; it is kept and not used.</source>
        <translation>{} tiene un campo «{}» que {} no tiene aquí; se conserva y no se usa.</translation>
    </message>
    <message>
        <source>Piece “{}”</source>
        <translation>Pieza «{}»</translation>
    </message>
    <message>
        <source>{} is of a type “{}” that is not in the catalogue; it is kept and not calculated.</source>
        <translation>{} es de un tipo «{}» que no está en el catálogo; se conserva y no se calcula.</translation>
    </message>
    <message>
        <source>Piece “{0}”, id: “{0}” stands twice; every piece needs an id of its own.</source>
        <translation>Pieza «{0}», id: «{0}» está dos veces; cada pieza necesita su identificador.</translation>
    </message>
    <message>
        <source>{}: {} is not allowed; it must be a piece, a dot and a port, like “p1.out”.</source>
        <translation>{}: {} no se permite; debe ser una pieza, un punto y una boca, como «p1.out».</translation>
    </message>
    <message>
        <source>Joint number {}</source>
        <translation>Unión número {}</translation>
    </message>
    <message>
        <source>{}, {}: “{}” is not allowed; it must be the id of a piece of this design.</source>
        <translation>{}, {}: «{}» no se permite; debe ser el identificador de una pieza de este diseño.</translation>
    </message>
    <message>
        <source>Wall “{0}”, id: “{0}” stands twice; every wall needs an id of its own.</source>
        <translation>Pared «{0}», id: «{0}» está dos veces; cada pared necesita su identificador.</translation>
    </message>
    <message>
        <source>Fan “{0}”, id: “{0}” stands twice; every fan needs an id of its own.</source>
        <translation>Ventilador «{0}», id: «{0}» está dos veces; cada ventilador necesita su identificador.</translation>
    </message>
    <message>
        <source>building: west must lie west of east, south south of north, the ceiling above the floor, the eaves not above the ridge.</source>
        <translation>building: west debe quedar al oeste de east, south al sur de north, el techo sobre el suelo, el alero no por encima de la cumbrera.</translation>
    </message>
    <message>
        <source>Variant “{}”: {}</source>
        <translation>Variante «{}»: {}</translation>
    </message>
    <message>
        <source>This file is from a newer version of the program (its layout is number {}, this version knows number {}). It is open for reading only, so that nothing in it gets lost.</source>
        <translation>Este archivo es de una versión más nueva del programa (su forma es la número {}, esta versión conoce la número {}). Está abierto solo para leer, para que no se pierda nada.</translation>
    </message>
    <message>
        <source>The file is {} MiB; a design may be at most {} MiB.</source>
        <translation>El archivo tiene {} MiB; un diseño puede tener {} MiB como mucho.</translation>
    </message>
    <message>
        <source>This is JSON, but not a design: its marker “fluewright_design” is missing.</source>
        <translation>Esto es JSON, pero no un diseño: falta su marca «fluewright_design».</translation>
    </message>
    <message>
        <source>fluewright_design: {} is not allowed; it must be the number of a layout (1 in this version).</source>
        <translation>fluewright_design: {} no se permite; debe ser el número de una forma (1 en esta versión).</translation>
    </message>
    <message>
        <source>This file is from a newer version of the program, and this version cannot make it out:</source>
        <translation>Este archivo es de una versión más nueva del programa, y esta versión no lo entiende:</translation>
    </message>
    <message>
        <source>one of </source>
        <translation>uno de </translation>
    </message>
    <message>
        <source>the id of a wall</source>
        <translation>el identificador de una pared</translation>
    </message>
    <message>
        <source>the id of a material</source>
        <translation>el identificador de un material</translation>
    </message>
    <message>
        <source>the id of a wood</source>
        <translation>el identificador de una leña</translation>
    </message>
    <message>
        <source>the id of a fan</source>
        <translation>el identificador de un ventilador</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>un número entero</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>un número</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} a {}</translation>
    </message>
    <message>
        <source>Fan “{}”, {}</source>
        <translation>Ventilador «{}», {}</translation>
    </message>
    <message>
        <source>Fan “{}”</source>
        <translation>Ventilador «{}»</translation>
    </message>
    <message>
        <source>Wall “{}”{}</source>
        <translation>Pared «{}»{}</translation>
    </message>
    <message>
        <source>from {} to {}</source>
        <translation>de {} a {}</translation>
    </message>
    <message>
        <source>at least {}</source>
        <translation>al menos {}</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>como mucho {}</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>otra cosa</translation>
    </message>
    <message>
        <source>, layer </source>
        <translation>, capa </translation>
    </message>
    <message>
        <source>Smoke carries carbon monoxide, and joints open as they age.</source>
        <translation>El humo lleva monóxido de carbono, y las uniones se abren con los años.</translation>
    </message>
    <message>
        <source>Water on the wall eats steel and masonry and carries soot into the joints.</source>
        <translation>El agua en la pared corroe acero y obra y mete hollín en las uniones.</translation>
    </message>
    <message>
        <source>A starved fire smokes, soots the flue and makes carbon monoxide.</source>
        <translation>Un fuego sin aire humea, llena de hollín el conducto y hace monóxido de carbono.</translation>
    </message>
    <message>
        <source>Air that is not burnt carries the heat out and cools the fire under what it needs to burn clean.</source>
        <translation>El aire que no se quema se lleva el calor y enfría el fuego por debajo de lo que necesita para arder limpio.</translation>
    </message>
    <message>
        <source>A fire lit then sends its smoke into the room and keeps itself going that way.</source>
        <translation>Un fuego encendido entonces manda su humo al cuarto y se mantiene así.</translation>
    </message>
    <message>
        <source>Whatever is lit smokes into the room.</source>
        <translation>Lo que se encienda humea en el cuarto.</translation>
    </message>
    <message>
        <source>A number worked outside the range of its relation is less sure than the others.</source>
        <translation>Un número fuera del alcance de su relación es menos seguro que los demás.</translation>
    </message>
    <message>
        <source>The draft is other than shown while it acts.</source>
        <translation>El tiro es distinto del mostrado mientras actúa.</translation>
    </message>
    <message>
        <source>When the power fails the fire goes on burning, and its smoke comes into the room.</source>
        <translation>Si falla la luz el fuego sigue ardiendo, y su humo entra en el cuarto.</translation>
    </message>
    <message>
        <source>A motor over its rating lasts days instead of years, and stops when the fire is hottest.</source>
        <translation>Un motor por encima de lo que admite dura días en vez de años, y se para cuando más calienta el fuego.</translation>
    </message>
    <message>
        <source>Acid water gets into bearings and windings.</source>
        <translation>El agua ácida entra en rodamientos y bobinados.</translation>
    </message>
    <message>
        <source>Where head rises with flow the flow hunts to and fro or jumps.</source>
        <translation>Donde la presión crece con el caudal, el caudal oscila o salta.</translation>
    </message>
    <message>
        <source>What a fan does beyond its sheet nobody has measured.</source>
        <translation>Lo que hace un ventilador más allá de su hoja nadie lo ha medido.</translation>
    </message>
    <message>
        <source>It pushes the smoke back into the room.</source>
        <translation>Empuja el humo de vuelta al cuarto.</translation>
    </message>
    <message>
        <source>Two things cannot stand in one place; drawn so, the lengths are wrong.</source>
        <translation>Dos cosas no caben en el mismo sitio; dibujado así, las longitudes están mal.</translation>
    </message>
    <message>
        <source>A hot pipe through wood without its passage is how houses burn.</source>
        <translation>Un tubo caliente a través de madera sin su paso: así arden las casas.</translation>
    </message>
    <message>
        <source>Smoke carries carbon monoxide, wherever it comes out.</source>
        <translation>El humo lleva monóxido de carbono, salga por donde salga.</translation>
    </message>
    <message>
        <source>A way in that runs backwards sends air, and with the next gust smoke, where it is not meant to go.</source>
        <translation>Una entrada que va al revés manda aire, y con la próxima racha humo, adonde no debe.</translation>
    </message>
    <message>
        <source>Air that comes in behind the fire cools the stack and takes draft from the feed.</source>
        <translation>El aire que entra tras el fuego enfría la chimenea y quita tiro a la alimentación.</translation>
    </message>
    <message>
        <source>While the flap stands open the stack draws room air instead of the fire&apos;s gas.</source>
        <translation>Mientras la clapeta está abierta, la chimenea saca aire del cuarto en vez del gas del fuego.</translation>
    </message>
    <message>
        <source>The fire starves or smokes into the room at the worst moment, when it has just been lit or the bench is cold.</source>
        <translation>El fuego se ahoga o humea en el cuarto en el peor momento, recién encendido o con el banco frío.</translation>
    </message>
    <message>
        <source>A gust, a warm day or a little soot takes what is left.</source>
        <translation>Una racha, un día cálido o un poco de hollín se llevan lo que queda.</translation>
    </message>
    <message>
        <source>Air over what the fire wants only cools it and goes up the chimney warm.</source>
        <translation>El aire que el fuego no pide solo lo enfría y se va caliente por la chimenea.</translation>
    </message>
    <message>
        <source>Heat that leaves by the chimney has been paid for and warms nobody.</source>
        <translation>El calor que se va por la chimenea está pagado y no calienta a nadie.</translation>
    </message>
    <message>
        <source>A house under suction pulls smoke in through the feed as soon as the chimney cools.</source>
        <translation>Una casa en succión aspira humo por la alimentación en cuanto la chimenea se enfría.</translation>
    </message>
    <message>
        <source>Standing water rots the bottom of the flue and, with soot, closes it.</source>
        <translation>El agua estancada pudre el fondo del conducto y, con hollín, lo cierra.</translation>
    </message>
    <message>
        <source>Water and ash gather at the low end, where nothing lets them out.</source>
        <translation>El agua y la ceniza se juntan en el extremo bajo, donde nada las deja salir.</translation>
    </message>
    <message>
        <source>The narrowest place decides what the whole path can carry, and ash settles before it.</source>
        <translation>El punto más estrecho decide lo que puede llevar todo el conducto, y ante él se posa la ceniza.</translation>
    </message>
    <message>
        <source>Wind over a roof presses down on a low outlet, and sparks land near it.</source>
        <translation>El viento sobre un tejado aprieta una boca baja, y las chispas caen cerca.</translation>
    </message>
    <message>
        <source>Wood that is kept hot for years catches fire far below its usual temperature.</source>
        <translation>La madera que pasa años caliente prende muy por debajo de su temperatura usual.</translation>
    </message>
    <message>
        <source>A pipe that glows or leaks in a closed space is found when the house burns.</source>
        <translation>Un tubo al rojo o con fugas en un hueco cerrado se descubre cuando arde la casa.</translation>
    </message>
    <message>
        <source>Ash settles in bends; one that cannot be brushed closes a little more every winter.</source>
        <translation>La ceniza se posa en los codos; el que no se puede cepillar se cierra un poco más cada invierno.</translation>
    </message>
    <message>
        <source>Fast gas loses draft with the square of its speed and carries ash up the stack.</source>
        <translation>El gas rápido pierde tiro con el cuadrado de su velocidad y arrastra ceniza chimenea arriba.</translation>
    </message>
    <message>
        <source>Slow gas drops its ash, and at the cap every gust pushes it back.</source>
        <translation>El gas lento suelta su ceniza, y en el sombrero cada racha lo empuja atrás.</translation>
    </message>
    <message>
        <source>Skin burns slowly on what does not feel hot at first.</source>
        <translation>La piel se quema despacio con lo que al principio no parece caliente.</translation>
    </message>
    <message>
        <source>A house floor is built for furniture, and a bench is a wall lying down: a qualified person has to look at it.</source>
        <translation>Un suelo de casa está hecho para muebles, y un banco es un muro tumbado: debe verlo un profesional.</translation>
    </message>
    <message>
        <source>Nobody smells carbon monoxide; the alarm is the one thing that notices a draft that has failed.</source>
        <translation>Nadie huele el monóxido de carbono; la alarma es lo único que nota un tiro que ha fallado.</translation>
    </message>
    <message>
        <source>Until it is mended there is no answer, or not the one that was meant.</source>
        <translation>Hasta que se arregle no hay respuesta, o no la que se quería.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet: begin with what lets the air in, a feed or a door.</source>
        <translation>Aún no hay nada dibujado: empiece por lo que deja entrar el aire, una alimentación o una puerta.</translation>
    </message>
    <message>
        <source>Nothing lets air in: the path needs a feed, a door or an outside-air duct.</source>
        <translation>Nada deja entrar aire: el conducto necesita una alimentación, una puerta o un conducto de aire exterior.</translation>
    </message>
    <message>
        <source>The path does not reach the open air: it needs a cap or an open stack head.</source>
        <translation>El conducto no llega al aire libre: necesita un sombrero o una boca abierta.</translation>
    </message>
    <message>
        <source>{}: this is a second way in for air that nothing joins to the path; join it at a tee, or take it away.</source>
        <translation>{}: es una segunda entrada de aire que nada une al conducto; únala con una te, o quítela.</translation>
    </message>
    <message>
        <source>{}: this is a second way out, and the path has one already.</source>
        <translation>{}: es una segunda salida, y el conducto ya tiene una.</translation>
    </message>
    <message>
        <source>Nothing burns: the path needs a burn tunnel or a batch box.</source>
        <translation>Nada arde: el conducto necesita un túnel de fuego o una caja de carga.</translation>
    </message>
    <message>
        <source>{}: this is a second fire, and the path has one already.</source>
        <translation>{}: es un segundo fuego, y el conducto ya tiene uno.</translation>
    </message>
    <message>
        <source>{}: its end “{}” is open; join a piece to it.</source>
        <translation>{}: su extremo «{}» está abierto; únale una pieza.</translation>
    </message>
    <message>
        <source>{}: its end “{}” and the piece it is joined to do not meet; they are {} apart.</source>
        <translation>{}: su extremo «{}» y la pieza unida no coinciden; están a {}.</translation>
    </message>
    <message>
        <source>{}: behind it gas could only go round in a ring; it has to lead on to the open air or back to the path.</source>
        <translation>{}: detrás el gas solo podría dar vueltas; tiene que seguir al aire libre o volver al conducto.</translation>
    </message>
    <message>
        <source>{}: it is not on the path from the inlet to the open air.</source>
        <translation>{}: no está en el conducto de la entrada al aire libre.</translation>
    </message>
    <message>
        <source>{}: it has no end “{}”.</source>
        <translation>{}: no tiene extremo «{}».</translation>
    </message>
    <message>
        <source>{}: its end “{}” is in two joints; it can only be in one.</source>
        <translation>{}: su extremo «{}» está en dos uniones; solo puede estar en una.</translation>
    </message>
    <message>
        <source>{}: its end “{}” is open to the air, so nothing can be joined to it.</source>
        <translation>{}: su extremo «{}» da al aire, así que no se le puede unir nada.</translation>
    </message>
    <message>
        <source>{} and {} are in the same place: they would have to be {} apart.</source>
        <translation>{} y {} están en el mismo sitio: tendrían que separarse {}.</translation>
    </message>
    <message>
        <source>{} goes through the wall of the house: put a thimble there.</source>
        <translation>{} atraviesa la pared de la casa: ponga ahí un pasamuros.</translation>
    </message>
    <message>
        <source>{} goes through the roof of the house: put a passage there.</source>
        <translation>{} atraviesa el tejado de la casa: ponga ahí un paso.</translation>
    </message>
    <message>
        <source>{} goes through the ceiling of the house: put a passage there.</source>
        <translation>{} atraviesa el techo de la casa: ponga ahí un paso.</translation>
    </message>
    <message>
        <source>{}: its end “{}” and the piece it is joined to differ in size; the step costs draft.</source>
        <translation>{}: su extremo «{}» y la pieza unida difieren de tamaño; el escalón cuesta tiro.</translation>
    </message>
    <message>
        <source>{}: the type “{}” is not in the catalogue.</source>
        <translation>{}: el tipo «{}» no está en el catálogo.</translation>
    </message>
    <message>
        <source>{}: there is no material “{}” in the library.</source>
        <translation>{}: no hay material «{}» en la biblioteca.</translation>
    </message>
    <message>
        <source>{}: there is no wall “{}” in the library or in the design.</source>
        <translation>{}: no hay pared «{}» en la biblioteca ni en el diseño.</translation>
    </message>
    <message>
        <source>{}: there is no wood “{}” in the library.</source>
        <translation>{}: no hay leña «{}» en la biblioteca.</translation>
    </message>
    <message>
        <source>{}: there is no fan “{}” in the library.</source>
        <translation>{}: no hay ventilador «{}» en la biblioteca.</translation>
    </message>
    <message>
        <source>{}: still air can only lie between two layers that shut it in.</source>
        <translation>{}: el aire quieto solo puede ir entre dos capas que lo encierren.</translation>
    </message>
    <message>
        <source>{}: its points make no curve; it needs two at least, flows that rise from 0 and a head above 0.</source>
        <translation>{}: sus puntos no hacen una curva; hacen falta dos al menos, caudales que suban desde 0 y una presión mayor que 0.</translation>
    </message>
    <message>
        <source>{}: {} is not allowed; it must be {}.</source>
        <translation>{}: {} no se permite; debe ser {}.</translation>
    </message>
    <message>
        <source>{}: the value is of the wrong kind; it must be {}.</source>
        <translation>{}: el valor es de otra clase; debe ser {}.</translation>
    </message>
    <message>
        <source>{}: the id stands twice; every fan needs one of its own.</source>
        <translation>{}: el identificador está dos veces; cada ventilador necesita el suyo.</translation>
    </message>
    <message>
        <source>{}: the id stands twice; every wall needs one of its own.</source>
        <translation>{}: el identificador está dos veces; cada pared necesita el suyo.</translation>
    </message>
    <message>
        <source>{}: the id “{}” stands twice; every piece needs one of its own.</source>
        <translation>{}: el identificador «{}» está dos veces; cada pieza necesita el suyo.</translation>
    </message>
    <message>
        <source>{}: the flue is up to {} above the room here, so a leaky joint lets smoke into the room.</source>
        <translation>{}: aquí el conducto está hasta {} por encima del cuarto, así que una unión con fuga deja salir humo.</translation>
    </message>
    <message>
        <source>{}: from {} into it the wall is below the dew point; water forms there and runs down.</source>
        <translation>{}: desde {} adentro la pared está bajo el punto de rocío; ahí se forma agua y escurre.</translation>
    </message>
    <message>
        <source>The fire is starved: it settles at {} times the air it needs, and under 1.5 it smokes.</source>
        <translation>Al fuego le falta aire: se estabiliza con {} veces el que necesita, y bajo 1,5 humea.</translation>
    </message>
    <message>
        <source>The fire is being cooled: it settles at {} times the air it needs. Choke the inlet.</source>
        <translation>El fuego se enfría: se estabiliza con {} veces el aire que necesita. Estrangule la entrada.</translation>
    </message>
    <message>
        <source>On this day it can also run backwards, into the room; before anything burns the draft is {}.</source>
        <translation>Ese día también puede ir al revés, hacia el cuarto; antes de que arda nada el tiro es {}.</translation>
    </message>
    <message>
        <source>On this day no flow from the inlet to the cap holds itself.</source>
        <translation>Ese día ninguna corriente de la entrada al sombrero se mantiene.</translation>
    </message>
    <message>
        <source>{}: {} stands at {}, outside the temperatures at which its conductivity is known ({}); the nearest known value is used.</source>
        <translation>{}: {} está a {}, fuera de las temperaturas a las que se conoce su conductividad ({}); se usa el valor conocido más cercano.</translation>
    </message>
    <message>
        <source>{}: {} is used at {}; it is published {}.</source>
        <translation>{}: {} se usa a {}; está publicada {}.</translation>
    </message>
    <message>
        <source>{}: it lets smoke into the room, {} of gas that has been through the fire and air with it.</source>
        <translation>{}: deja salir humo al cuarto, {} de gas que ha pasado por el fuego y aire con él.</translation>
    </message>
    <message>
        <source>{}: air blows out of it, {}; it is a way in that runs backwards.</source>
        <translation>{}: sale aire, {}; es una entrada que va al revés.</translation>
    </message>
    <message>
        <source>{}: {} of what leaves the cap comes in here behind the fire and cools the stack.</source>
        <translation>{}: {} de lo que sale por el sombrero entra aquí, tras el fuego, y enfría la chimenea.</translation>
    </message>
    <message>
        <source>{}: the draft is above its set draft; its flap stands {} open.</source>
        <translation>{}: el tiro supera el fijado; su clapeta está abierta {}.</translation>
    </message>
    <message>
        <source>The flows in the branches could not be found, so there is no number rather than a wrong one.</source>
        <translation>No se hallaron los caudales de los ramales, así que no hay número en vez de uno falso.</translation>
    </message>
    <message>
        <source>{}: what it does to the draft when it acts, running or opening, is left out of this calculation.</source>
        <translation>{}: lo que hace al tiro cuando actúa, en marcha o abierto, se deja fuera de este cálculo.</translation>
    </message>
    <message>
        <source>The draft depends on a fan: with it off {} to spare at the least, with it on {}. When the power fails while wood burns, the fire starves and smoke may come into the room.</source>
        <translation>El tiro depende de un ventilador: apagado sobran {} en el peor caso, en marcha {}. Si falla la luz mientras arde leña, el fuego se ahoga y puede entrar humo en el cuarto.</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>bastante</translation>
    </message>
    <message>
        <source>{}: the gas that passes it reaches {}; its fan is rated for {}.</source>
        <translation>{}: el gas que lo atraviesa llega a {}; su ventilador admite {}.</translation>
    </message>
    <message>
        <source>{}: its motor reaches {}; it is rated for {}.</source>
        <translation>{}: su motor llega a {}; admite {}.</translation>
    </message>
    <message>
        <source>{}: its motor stands in gas with a dew point of {} and only {} around it; water gets into it.</source>
        <translation>{}: su motor está en gas con punto de rocío de {} y solo {} alrededor; le entra agua.</translation>
    </message>
    <message>
        <source>{}: the head of “{}” rises with the flow between {} and {}; there it is not steady, and the flow may jump or hunt. States found forward: {}.</source>
        <translation>{}: la presión de «{}» crece con el caudal entre {} y {}; ahí no es firme, y el caudal puede saltar u oscilar. Estados hallados hacia delante: {}.</translation>
    </message>
    <message>
        <source>{}: the gas runs backward through it; what “{}” does then is an estimate.</source>
        <translation>{}: el gas lo atraviesa al revés; lo que hace entonces «{}» es una estimación.</translation>
    </message>
    <message>
        <source>{}: {} pass it, more than the {} up to which the sheet of “{}” goes; beyond, it is an estimate.</source>
        <translation>{}: lo atraviesan {}, más que los {} hasta los que llega la hoja de «{}»; más allá es una estimación.</translation>
    </message>
    <message>
        <source>{}: it is drawn the wrong way round and blows against the gas.</source>
        <translation>{}: está dibujado al revés y sopla contra el gas.</translation>
    </message>
    <message>
        <source>The file is nested more than {} deep.</source>
        <translation>El archivo está anidado a más de {} niveles.</translation>
    </message>
    <message>
        <source>The key “{}” stands twice in the same object: only one can be meant.</source>
        <translation>La clave «{}» está dos veces en el mismo objeto: solo una puede valer.</translation>
    </message>
    <message>
        <source>This is not JSON: at line {}, column {} something else was expected.</source>
        <translation>Esto no es JSON: en la línea {}, columna {} se esperaba otra cosa.</translation>
    </message>
    <message>
        <source>This is not JSON that can be read: a number in it is too large.</source>
        <translation>Esto no es JSON legible: lleva un número demasiado grande.</translation>
    </message>
    <message>
        <source>Longest bench</source>
        <translation>Banco más largo</translation>
    </message>
    <message>
        <source>Length of the bench</source>
        <translation>Longitud del banco</translation>
    </message>
    <message>
        <source>no straight run in a bench or under the floor</source>
        <translation>ningún tramo recto en un banco ni bajo el suelo</translation>
    </message>
    <message>
        <source>Shortest stack</source>
        <translation>Chimenea más corta</translation>
    </message>
    <message>
        <source>Upright length of the chimney</source>
        <translation>Longitud vertical de la chimenea</translation>
    </message>
    <message>
        <source>no upright run in its chimney</source>
        <translation>ningún tramo vertical en su chimenea</translation>
    </message>
    <message>
        <source>Smallest bore</source>
        <translation>Diámetro más pequeño</translation>
    </message>
    <message>
        <source>Bore of the flue</source>
        <translation>Diámetro del conducto</translation>
    </message>
    <message>
        <source>no round flue behind a drum or bell</source>
        <translation>ningún conducto redondo tras un bidón o una campana</translation>
    </message>
    <message>
        <source>Most bends</source>
        <translation>Más codos</translation>
    </message>
    <message>
        <source>Level bends on the path</source>
        <translation>Codos a nivel en el conducto</translation>
    </message>
    <message>
        <source>no bench to put bends into</source>
        <translation>ningún banco donde poner codos</translation>
    </message>
    <message>
        <source>Coldest bench</source>
        <translation>Banco más frío</translation>
    </message>
    <message>
        <source>Room and bench before lighting</source>
        <translation>Cuarto y banco antes de encender</translation>
    </message>
    <message>
        <source>Weakest temperature difference</source>
        <translation>Menor diferencia de temperatura</translation>
    </message>
    <message>
        <source>The bench may be {} long at most to keep {} to spare; drawn are {}.</source>
        <translation>El banco puede medir {} como mucho para que sobren {}; hay dibujados {}.</translation>
    </message>
    <message>
        <source>The chimney&apos;s upright runs need {} at least to keep {} to spare; drawn are {}.</source>
        <translation>Los tramos verticales de la chimenea necesitan {} al menos para que sobren {}; hay dibujados {}.</translation>
    </message>
    <message>
        <source>The flue needs a bore of {} at least to keep {} to spare; drawn are {}.</source>
        <translation>El conducto necesita {} de diámetro al menos para que sobren {}; hay dibujados {}.</translation>
    </message>
    <message>
        <source>{} at most keep {} to spare; drawn are {}.</source>
        <translation>Con {} como mucho sobran {}; hay dibujados {}.</translation>
    </message>
    <message>
        <source>Down to {} in room and bench it keeps {} to spare; set are {}.</source>
        <translation>Hasta {} en cuarto y banco sobran {}; hay fijados {}.</translation>
    </message>
    <message>
        <source>Up to {} outdoors, {} under the room, it keeps {} to spare; set are {}.</source>
        <translation>Hasta {} afuera, {} menos que el cuarto, sobran {}; hay fijados {}.</translation>
    </message>
    <message>
        <source>No limit up to {} of bench: {} stay to spare.</source>
        <translation>Sin límite hasta {} de banco: sobran {}.</translation>
    </message>
    <message>
        <source>No limit down to {} of chimney: {} stay to spare.</source>
        <translation>Sin límite hasta {} de chimenea: sobran {}.</translation>
    </message>
    <message>
        <source>No limit down to a bore of {}: {} stay to spare.</source>
        <translation>Sin límite hasta un diámetro de {}: sobran {}.</translation>
    </message>
    <message>
        <source>No limit up to {}: {} stay to spare.</source>
        <translation>Sin límite hasta {}: sobran {}.</translation>
    </message>
    <message>
        <source>No limit down to {} in room and bench: {} stay to spare.</source>
        <translation>Sin límite hasta {} en cuarto y banco: sobran {}.</translation>
    </message>
    <message>
        <source>No limit up to {} outdoors: {} stay to spare.</source>
        <translation>Sin límite hasta {} afuera: sobran {}.</translation>
    </message>
    <message>
        <source>No bench is short enough to keep {} to spare, down to {}.</source>
        <translation>Ningún banco es bastante corto para que sobren {}, hasta {}.</translation>
    </message>
    <message>
        <source>No chimney up to {} keeps {} to spare.</source>
        <translation>Ninguna chimenea hasta {} deja {} de sobra.</translation>
    </message>
    <message>
        <source>No bore up to {} keeps {} to spare.</source>
        <translation>Ningún diámetro hasta {} deja {} de sobra.</translation>
    </message>
    <message>
        <source>Even with the fewest bends that can be built it does not keep {} to spare.</source>
        <translation>Ni con los menos codos que se pueden construir sobran {}.</translation>
    </message>
    <message>
        <source>No room up to {} keeps {} to spare.</source>
        <translation>Ningún cuarto hasta {} deja {} de sobra.</translation>
    </message>
    <message>
        <source>No frost down to {} keeps {} to spare.</source>
        <translation>Ninguna helada hasta {} deja {} de sobra.</translation>
    </message>
    <message>
        <source>The design has {}.</source>
        <translation>El diseño no tiene {}.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Carga</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Alimentación</translation>
    </message>
    <message>
        <source>Priming fire</source>
        <translation>Fuego de cebado</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Movimiento</translation>
    </message>
    <message>
        <source>Fan switch</source>
        <translation>Encendido del ventilador</translation>
    </message>
    <message>
        <source>Outdoor temperature</source>
        <translation>Temperatura exterior</translation>
    </message>
    <message>
        <source>beginning</source>
        <translation>comienzo</translation>
    </message>
    <message>
        <source>end</source>
        <translation>fin</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>duración</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>leña</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>consumo</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>cantidad</translation>
    </message>
    <message>
        <source>heating value</source>
        <translation>poder calorífico</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>apertura</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>velocidad</translation>
    </message>
    <message>
        <source>run-down</source>
        <translation>temporizador</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>extracción</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longitud</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>hora</translation>
    </message>
    <message>
        <source>value</source>
        <translation>valor</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>media</translation>
    </message>
    <message>
        <source>swing</source>
        <translation>oscilación</translation>
    </message>
    <message>
        <source>warmest hour</source>
        <translation>hora más cálida</translation>
    </message>
    <message>
        <source>series</source>
        <translation>serie</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>pieza</translation>
    </message>
    <message>
        <source>tee</source>
        <translation>te</translation>
    </message>
    <message>
        <source>{}: the {} is empty.</source>
        <translation>{}: falta {}.</translation>
    </message>
    <message>
        <source>{}: there is no piece {} in the design.</source>
        <translation>{}: no hay pieza {} en el diseño.</translation>
    </message>
    <message>
        <source>{}: {} is no {} that can do this.</source>
        <translation>{}: {} no es la pieza para esto ({}).</translation>
    </message>
    <message>
        <source>With a cold bench</source>
        <translation>Con el banco frío</translation>
    </message>
    <message>
        <source>An hour after lighting</source>
        <translation>Una hora después de encender</translation>
    </message>
    <message>
        <source>With the bench charged</source>
        <translation>Con el banco cargado</translation>
    </message>
    <message>
        <source>{} it will not draw at the wanted fire: {} of draft are missing.</source>
        <translation>{} no tirará con el fuego deseado: faltan {} de tiro.</translation>
    </message>
    <message>
        <source>{} it draws with only {} to spare.</source>
        <translation>{} tira con solo {} de sobra.</translation>
    </message>
    <message>
        <source>{}: the fire gets more air than is wanted, and even shut down to {} the mouth lets too much in.</source>
        <translation>{}: el fuego recibe más aire del deseado, e incluso cerrada hasta {} la boca deja entrar demasiado.</translation>
    </message>
    <message>
        <source>The gas leaves the cap at {}, over {}: a longer bench could keep that heat.</source>
        <translation>El gas sale por el sombrero a {}, más de {}: un banco más largo podría guardar ese calor.</translation>
    </message>
    <message>
        <source>Exhaust fans pull the house {} under outdoors; from {} on it is a caution.</source>
        <translation>Los extractores ponen la casa {} bajo el exterior; desde {} pide precaución.</translation>
    </message>
    <message>
        <source>{}: {} of water run to this lowest place and find no drain.</source>
        <translation>{}: {} de agua van a este punto más bajo y no hallan desagüe.</translation>
    </message>
    <message>
        <source>{}: it falls {} along the flow, to a place without a drain.</source>
        <translation>{}: baja {} con el gas, hasta un punto sin desagüe.</translation>
    </message>
    <message>
        <source>{}: the flue narrows to a bore of {}; the system behind the fire has {}.</source>
        <translation>{}: el conducto se estrecha a {} de diámetro; el sistema tras el fuego tiene {}.</translation>
    </message>
    <message>
        <source>{}: the outlet stands {} over {}; at least {} are usual.</source>
        <translation>{}: la boca está a {} sobre {}; lo usual son {} al menos.</translation>
    </message>
    <message>
        <source>the roof where the chimney comes through</source>
        <translation>el tejado donde sale la chimenea</translation>
    </message>
    <message>
        <source>what is highest within 3 m (10 ft)</source>
        <translation>lo más alto a menos de 3 m (10 ft)</translation>
    </message>
    <message>
        <source>{}: a single wall {} from what burns; it needs {}.</source>
        <translation>{}: una pared simple a {} de lo que arde; necesita {}.</translation>
    </message>
    <message>
        <source>{}: a single wall goes through the attic, where nobody sees it.</source>
        <translation>{}: una pared simple cruza el desván, donde nadie la ve.</translation>
    </message>
    <message>
        <source>{}: no cleanout from which a brush of {} gets to it.</source>
        <translation>{}: ningún registro de limpieza desde el que llegue un cepillo de {}.</translation>
    </message>
    <message>
        <source>{}: the gas runs at {}, over {}.</source>
        <translation>{}: el gas va a {}, más de {}.</translation>
    </message>
    <message>
        <source>{}: the gas creeps at {}, under {}.</source>
        <translation>{}: el gas se arrastra a {}, menos de {}.</translation>
    </message>
    <message>
        <source>{}: fired without a break its surface comes to {}; over {} it is no seat.</source>
        <translation>{}: encendido sin pausa su superficie llega a {}; sobre {} no es asiento.</translation>
    </message>
    <message>
        <source>{}: the bench weighs {} on its floor, which is said to carry {}.</source>
        <translation>{}: el banco pesa {} sobre su suelo, que se dice que aguanta {}.</translation>
    </message>
    <message>
        <source>The design does not say that there is a carbon-monoxide alarm.</source>
        <translation>El diseño no dice que haya una alarma de monóxido de carbono.</translation>
    </message>
    <message>
        <source>: a price list is an object with “currency” and “prices”</source>
        <translation>: una lista de precios es un objeto con «currency» y «prices»</translation>
    </message>
    <message>
        <source>{}, price {}</source>
        <translation>{}, precio {}</translation>
    </message>
    <message>
        <source>Price list: “{}” is not in the catalogue.</source>
        <translation>Lista de precios: «{}» no está en el catálogo.</translation>
    </message>
    <message>
        <source>The price list {} cannot be read.</source>
        <translation>La lista de precios {} no se puede leer.</translation>
    </message>
    <message>
        <source>The price list {} is larger than 1 MiB.</source>
        <translation>La lista de precios {} pasa de 1 MiB.</translation>
    </message>
    <message>
        <source>Shorten the bench from {} to {}</source>
        <translation>Acortar el banco de {} a {}</translation>
    </message>
    <message>
        <source>Leave out {} and go straight on</source>
        <translation>Quitar {} y seguir recto</translation>
    </message>
    <message>
        <source>Widen the flue from {} to {}</source>
        <translation>Ensanchar el conducto de {} a {}</translation>
    </message>
    <message>
        <source>Raise the chimney by {}</source>
        <translation>Subir la chimenea {}</translation>
    </message>
    <message>
        <source>Insulate the whole chimney</source>
        <translation>Aislar toda la chimenea</translation>
    </message>
    <message>
        <source>Insulate the chimney outside the room</source>
        <translation>Aislar la chimenea fuera del cuarto</translation>
    </message>
    <message>
        <source>Bring the chimney indoors up to the ceiling</source>
        <translation>Llevar la chimenea por dentro hasta el techo</translation>
    </message>
    <message>
        <source>Burn drier wood: {} instead of {} ({})</source>
        <translation>Quemar leña más seca: {} en vez de {} ({})</translation>
    </message>
    <message>
        <source>Burn less at a time: {} instead of {}</source>
        <translation>Quemar menos a la vez: {} en vez de {}</translation>
    </message>
    <message>
        <source>Burn more at a time: {} instead of {}</source>
        <translation>Quemar más a la vez: {} en vez de {}</translation>
    </message>
    <message>
        <source>Give {} air from outdoors by a duct</source>
        <translation>Dar a {} aire del exterior por un conducto</translation>
    </message>
    <message>
        <source>Choke {} from {} to {}</source>
        <translation>Cerrar {} de {} a {}</translation>
    </message>
    <message>
        <source>Open {} from {} to {}</source>
        <translation>Abrir {} de {} a {}</translation>
    </message>
    <message>
        <source>Put a tee at the foot of {}, for a priming fire</source>
        <translation>Poner una te al pie de {}, para un fuego de cebado</translation>
    </message>
    <message>
        <source>{}, and {}</source>
        <translation>{}. {}</translation>
    </message>
    <message>
        <source>The previous copy could not be kept as</source>
        <translation>La copia anterior no se pudo conservar como</translation>
    </message>
    <message>
        <source>The file could not be found:</source>
        <translation>No se encontró el archivo:</translation>
    </message>
    <message>
        <source>The file could not be written:</source>
        <translation>No se pudo escribir el archivo:</translation>
    </message>
    <message>
        <source>The file could not be written: “{}” is not an ordinary file.</source>
        <translation>No se pudo escribir el archivo: «{}» no es un archivo común.</translation>
    </message>
    <message>
        <source>The file could not be replaced:</source>
        <translation>No se pudo reemplazar el archivo:</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source> of {} to {} characters</source>
        <translation> de {} a {} caracteres</translation>
    </message>
    <message>
        <source> that is not empty</source>
        <translation> que no esté vacío</translation>
    </message>
    <message>
        <source>a list of {} to {}</source>
        <translation>una lista de {} a {}</translation>
    </message>
    <message>
        <source>a list [ ]</source>
        <translation>una lista [ ]</translation>
    </message>
    <message>
        <source>an object { }</source>
        <translation>un objeto { }</translation>
    </message>
    <message>
        <source>The design</source>
        <translation>El diseño</translation>
    </message>
    <message>
        <source>{} number {}</source>
        <translation>{} número {}</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Unión</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>un objeto</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>The file does not follow the layout of a design.</source>
        <translation>El archivo no sigue la forma de un diseño.</translation>
    </message>
    <message>
        <source>draws by itself</source>
        <translation>tira solo</translation>
    </message>
    <message>
        <source>lights with kindling</source>
        <translation>enciende con astillas</translation>
    </message>
    <message>
        <source>needs the stack primed</source>
        <translation>hay que cebar la chimenea</translation>
    </message>
    <message>
        <source>needs a fan</source>
        <translation>necesita un ventilador</translation>
    </message>
    <message>
        <source>will not hold without the fan</source>
        <translation>no se sostiene sin el ventilador</translation>
    </message>
    <message>
        <source>will not hold, with the fan neither</source>
        <translation>no se sostiene, ni con el ventilador</translation>
    </message>
    <message>
        <source>runs backward</source>
        <translation>va al revés</translation>
    </message>
    <message>
        <source>smokes into the room</source>
        <translation>humea en el cuarto</translation>
    </message>
    <message>
        <source>starves for air</source>
        <translation>le falta aire</translation>
    </message>
    <message>
        <source>could not be computed</source>
        <translation>no se pudo calcular</translation>
    </message>
    <message>
        <source> So far; not every cell of that row is computed.</source>
        <translation> Por ahora; no todas las casillas de esa fila están calculadas.</translation>
    </message>
    <message>
        <source>In a room at {} kindling is enough on every day of the map.{}</source>
        <translation>En un cuarto a {} bastan astillas todos los días del mapa.{}</translation>
    </message>
    <message>
        <source>Nothing is computed yet for a room at {}.</source>
        <translation>Aún no hay nada calculado para un cuarto a {}.</translation>
    </message>
    <message>
        <source>In a room at {} kindling is enough on no day of the map: it {}.{}</source>
        <translation>En un cuarto a {} no bastan astillas ningún día del mapa: {}.{}</translation>
    </message>
    <message>
        <source>In a room at {} kindling is enough up to {} outdoors, the room {}; from {} outdoors, the room {}, it {}.{}</source>
        <translation>En un cuarto a {} bastan astillas hasta {} afuera, el cuarto {}; desde {} afuera, el cuarto {}: {}.{}</translation>
    </message>
    <message>
        <source> House: suction {} on top of its own stack effect, exhaust {}, neutral plane {}.</source>
        <translation> Casa: succión {} además de su propio tiro, extracción {}, plano neutro {}.</translation>
    </message>
    <message>
        <source> Priming: {} over {}.</source>
        <translation> Cebado: {} durante {}.</translation>
    </message>
    <message>
        <source> Priming is left out: there is no tee with a shut port on the way up the stack.</source>
        <translation> No hay cebado: no hay ninguna te con una boca tapada en la subida de la chimenea.</translation>
    </message>
    <message>
        <source> A fan is left out: no run of the stack has room for one.</source>
        <translation> No hay ventilador: ningún tramo de la chimenea tiene sitio para uno.</translation>
    </message>
    <message>
        <source> Fan: {}, {} from the match&apos;s minute on.</source>
        <translation> Ventilador: {}, {} desde el minuto de la cerilla.</translation>
    </message>
    <message>
        <source>the design&apos;s own</source>
        <translation>el del diseño</translation>
    </message>
    <message>
        <source>a generic inducer beside the stack&apos;s foot</source>
        <translation>un extractor corriente junto al pie de la chimenea</translation>
    </message>
    <message>
        <source>None: the whole fire at once</source>
        <translation>Ninguna: todo el fuego de una vez</translation>
    </message>
    <message>
        <source>Kindling</source>
        <translation>Astillas</translation>
    </message>
    <message>
        <source>Priming fire in the stack&apos;s foot</source>
        <translation>Fuego de cebado en el pie de la chimenea</translation>
    </message>
    <message>
        <source>Bypass</source>
        <translation>Derivación</translation>
    </message>
    <message>
        <source>Duct fan in the stream, stack&apos;s foot</source>
        <translation>Ventilador de tubo en el gas, pie de la chimenea</translation>
    </message>
    <message>
        <source>Duct fan in the stream, under the cap</source>
        <translation>Ventilador de tubo en el gas, bajo el sombrero</translation>
    </message>
    <message>
        <source>Fan on top</source>
        <translation>Ventilador en el remate</translation>
    </message>
    <message>
        <source>Side inducer at {:.0f} %</source>
        <translation>Extractor lateral al {:.0f} %</translation>
    </message>
    <message>
        <source>There is no tee with a shut port on the way up the stack.</source>
        <translation>No hay ninguna te con una boca tapada en la subida de la chimenea.</translation>
    </message>
    <message>
        <source>No run of the stack has room for it.</source>
        <translation>Ningún tramo de la chimenea tiene sitio para ello.</translation>
    </message>
    <message>
        <source>No bypass is drawn: draw one to try it.</source>
        <translation>No hay derivación dibujada: dibuje una para probarla.</translation>
    </message>
    <message>
        <source>The runs did not come to an end.</source>
        <translation>Los cálculos no llegaron a término.</translation>
    </message>
    <message>
        <source>It draws before anything is lit and takes the whole fire at once.</source>
        <translation>Tira antes de encender nada y admite todo el fuego de una vez.</translation>
    </message>
    <message>
        <source>A small fire in a heater shut until the match is enough; it costs nothing and nothing can break.</source>
        <translation>Basta un fuego pequeño en una estufa cerrada hasta la cerilla; no cuesta nada y nada se puede romper.</translation>
    </message>
    <message>
        <source>After {} it holds by itself.</source>
        <translation>Tras {} se sostiene solo.</translation>
    </message>
    <message>
        <source>does not draw even with the fan on</source>
        <translation>no tira ni con el ventilador en marcha</translation>
    </message>
    <message>
        <source>goes on drawing</source>
        <translation>sigue tirando</translation>
    </message>
    <message>
        <source>starves after {} min</source>
        <translation>le falta aire tras {} min</translation>
    </message>
    <message>
        <source>turns after {} min</source>
        <translation>se da la vuelta tras {} min</translation>
    </message>
    <message>
        <source>{} of smoke into the room</source>
        <translation>{} de humo al cuarto</translation>
    </message>
    <message>
        <source>Power cut with a loaded feed: in a neutral house it {}; with {:.0f} Pa of suction in the house it {}.</source>
        <translation>Corte de luz con la alimentación llena: en una casa neutra {}; con {:.0f} Pa de succión en la casa {}.</translation>
    </message>
    <message>
        <source>“{0}{2}{1}” could mean {0}{3}{1} or {0}{1}: write it one of these ways.</source>
        <translation>«{0}{2}{1}» puede ser {0}{3}{1} o {0}{1}: escríbalo de una de estas maneras.</translation>
    </message>
    <message>
        <source>“{}” is not {}: write it like {}.</source>
        <translation>«{}» no es {}: escríbalo como {}.</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>una longitud</translation>
    </message>
    <message>
        <source>1200, 1.2 m, 80 in or 6 ft 4 in</source>
        <translation>1200, 1,2 m, 80 in o 6 ft 4 in</translation>
    </message>
    <message>
        <source>Nothing is written: {} is wanted here.</source>
        <translation>No hay nada escrito: aquí va {}.</translation>
    </message>
    <message>
        <source>Nothing is written: a length is wanted here.</source>
        <translation>No hay nada escrito: aquí va una longitud.</translation>
    </message>
    <message>
        <source>5</source>
        <translation>5</translation>
    </message>
    <message>
        <source>Nothing is written: a name is wanted here.</source>
        <translation>No hay nada escrito: aquí va un nombre.</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>un ángulo</translation>
    </message>
    <message>
        <source>45 or 45 deg</source>
        <translation>45 o 45 deg</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>una proporción</translation>
    </message>
    <message>
        <source>18 %</source>
        <translation>18 %</translation>
    </message>
    <message>
        <source>2.5</source>
        <translation>2,5</translation>
    </message>
    <message>
        <source>a pressure</source>
        <translation>una presión</translation>
    </message>
    <message>
        <source>5 Pa or 0.02 in w.c.</source>
        <translation>5 Pa o 0,02 in w.c.</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>una temperatura</translation>
    </message>
    <message>
        <source>20 C or 68 F</source>
        <translation>20 C o 68 F</translation>
    </message>
    <message>
        <source>a burn rate</source>
        <translation>un consumo</translation>
    </message>
    <message>
        <source>3 kg/h or 6.6 lb/h</source>
        <translation>3 kg/h o 6,6 lb/h</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>una velocidad</translation>
    </message>
    <message>
        <source>4 m/s or 9 mph</source>
        <translation>4 m/s o 9 mph</translation>
    </message>
    <message>
        <source>a flow of air</source>
        <translation>un caudal de aire</translation>
    </message>
    <message>
        <source>90 m3/h or 53 cfm</source>
        <translation>90 m3/h o 53 cfm</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>un volumen</translation>
    </message>
    <message>
        <source>300 m3 or 10600 ft3</source>
        <translation>300 m3 o 10600 ft3</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>una densidad</translation>
    </message>
    <message>
        <source>1.2 kg/m3 or 0.075 lb/ft3</source>
        <translation>1,2 kg/m3 o 0,075 lb/ft3</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>una potencia</translation>
    </message>
    <message>
        <source>30 W</source>
        <translation>30 W</translation>
    </message>
    <message>
        <source>“{}”, line {}: {}</source>
        <translation>«{}», línea {}: {}</translation>
    </message>
    <message>
        <source>the columns “time” and “temperature_C” are wanted.</source>
        <translation>hacen falta las columnas «time» y «temperature_C».</translation>
    </message>
    <message>
        <source>the row is too short.</source>
        <translation>la fila es demasiado corta.</translation>
    </message>
    <message>
        <source>“{}” is no time like 2024-04-06T17:00.</source>
        <translation>«{}» no es una hora como 2024-04-06T17:00.</translation>
    </message>
    <message>
        <source>the temperature is missing.</source>
        <translation>falta la temperatura.</translation>
    </message>
    <message>
        <source>“{}” is no temperature.</source>
        <translation>«{}» no es una temperatura.</translation>
    </message>
    <message>
        <source>the row is not later than the one before.</source>
        <translation>la fila no es posterior a la anterior.</translation>
    </message>
    <message>
        <source>{:.0f} minutes are missing before this row; the rows before are {:.0f} minutes apart.</source>
        <translation>Faltan {:.0f} minutos antes de esta fila; las filas anteriores distan {:.0f} minutos.</translation>
    </message>
    <message>
        <source>“{}” is empty.</source>
        <translation>«{}» está vacío.</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>tira</translation>
    </message>
    <message>
        <source>marginal</source>
        <translation>justo</translation>
    </message>
    <message>
        <source>unsafe: the draft depends on a fan</source>
        <translation>inseguro: el tiro depende de un ventilador</translation>
    </message>
    <message>
        <source>will not draw</source>
        <translation>no tira</translation>
    </message>
    <message>
        <source>cold bench</source>
        <translation>banco frío</translation>
    </message>
    <message>
        <source>one hour</source>
        <translation>una hora</translation>
    </message>
    <message>
        <source>charged</source>
        <translation>cargado</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>fallo</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>precaución</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publicado</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>de memoria</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>práctica común</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>elegido</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dentro</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>más allá</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>parado</translation>
    </message>
    <message>
        <source>no piece</source>
        <translation>ninguna pieza</translation>
    </message>
    <message>
        <source>Unknown piece “{}”</source>
        <translation>Pieza desconocida «{}»</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>desconocido</translation>
    </message>
    <message>
        <source>in {}, {} along</source>
        <translation>en {}, a {}</translation>
    </message>
    <message>
        <source>A carbon-monoxide alarm belongs in the heater&apos;s room and near every bedroom.</source>
        <translation>En el cuarto de la estufa y cerca de cada dormitorio debe haber una alarma de monóxido de carbono.</translation>
    </message>
    <message>
        <source>Keep the clearances to everything that burns; wood behind masonry heats up too.</source>
        <translation>Guarde las distancias a todo lo que arde; la madera tras la obra también se calienta.</translation>
    </message>
    <message>
        <source>A bench weighs tonnes: let a qualified person judge the floor.</source>
        <translation>Un banco pesa toneladas: que un profesional juzgue el suelo.</translation>
    </message>
    <message>
        <source>Local code and permit come first. A long run with bends breaks the usual rules for connectors: ask before building.</source>
        <translation>La norma local y el permiso van primero. Un tramo largo con codos incumple las reglas usuales de conexión: pregunte antes de construir.</translation>
    </message>
    <message>
        <source>Have the chimney inspected by a licensed chimney professional before the first fire, and every year after.</source>
        <translation>Haga revisar la chimenea por un profesional autorizado antes del primer fuego, y cada año después.</translation>
    </message>
    <message>
        <source>The numbers are estimates for planning. Wood fires vary, and so do joints.</source>
        <translation>Las cifras son estimaciones para planificar. Los fuegos de leña varían, y las uniones también.</translation>
    </message>
    <message>
        <source>draft to spare, cold bench</source>
        <translation>tiro de sobra, banco frío</translation>
    </message>
    <message>
        <source>draft to spare, one hour</source>
        <translation>tiro de sobra, una hora</translation>
    </message>
    <message>
        <source>draft to spare, charged</source>
        <translation>tiro de sobra, cargado</translation>
    </message>
    <message>
        <source>draft before anything burns</source>
        <translation>tiro antes de que arda nada</translation>
    </message>
    <message>
        <source>excess air where it settles</source>
        <translation>exceso de aire donde se estabiliza</translation>
    </message>
    <message>
        <source>temperature behind the fire</source>
        <translation>temperatura tras el fuego</translation>
    </message>
    <message>
        <source>exit temperature</source>
        <translation>temperatura de salida</translation>
    </message>
    <message>
        <source>where walls get wet</source>
        <translation>dónde se mojan las paredes</translation>
    </message>
    <message>
        <source>heat to the room</source>
        <translation>calor al cuarto</translation>
    </message>
    <message>
        <source>heat into the mass</source>
        <translation>calor a la masa</translation>
    </message>
    <message>
        <source>heat that leaves with the gas</source>
        <translation>calor que se va con el gas</translation>
    </message>
    <message>
        <source>outside the range of its source, {}</source>
        <translation>fuera del alcance de su fuente, {}</translation>
    </message>
    <message>
        <source>range {}</source>
        <translation>alcance {}</translation>
    </message>
    <message>
        <source>SI base units; a temperature in a relation is in kelvin. Values stand to more digits than they mean, so that whoever works with them gets six back.</source>
        <translation>Unidades básicas SI; una temperatura en una relación va en kelvin. Los valores llevan más cifras de las que significan, para que quien calcule con ellos recupere seis.</translation>
    </message>
    <message>
        <source>A fixed sum taken off the design margin: 0 where the cap stands clear of the roof, 25 for an inland and 40 for a coastal site where it does not.</source>
        <translation>Cantidad fija que se resta al margen: 0 si el sombrero está libre del tejado; si no, 25 en el interior y 40 en la costa.</translation>
    </message>
    <message>
        <source>A joint that is not tight: a crack in the flue&apos;s side. It lets room air in, or smoke out where the flue presses outwards.</source>
        <translation>Una unión que no cierra: una grieta en el costado del conducto. Deja entrar aire del cuarto, o salir humo donde el conducto aprieta hacia fuera.</translation>
    </message>
    <message>
        <source>A run that is too long</source>
        <translation>Un tramo demasiado largo</translation>
    </message>
    <message>
        <source>Above the heater&apos;s floor: the top of whatever roof, wall or tree stands within 3 m (10 ft) of the chimney&apos;s top. 0 where nothing stands higher than the roof at the chimney.</source>
        <translation>Sobre el suelo de la estufa: lo alto de cualquier tejado, pared o árbol a menos de 3 m (10 ft) del remate. 0 donde nada supera el tejado junto a la chimenea.</translation>
    </message>
    <message>
        <source>Adapter, channel to pipe</source>
        <translation>Adaptador, canal a tubo</translation>
    </message>
    <message>
        <source>Adapter, pipe to channel</source>
        <translation>Adaptador, tubo a canal</translation>
    </message>
    <message>
        <source>Air changes at 50 Pa</source>
        <translation>Renovaciones a 50 Pa</translation>
    </message>
    <message>
        <source>Air from</source>
        <translation>Aire desde</translation>
    </message>
    <message>
        <source>Air of the room around the heater: read it on a thermometer before lighting.</source>
        <translation>Aire del cuarto alrededor de la estufa: léalo en un termómetro antes de encender.</translation>
    </message>
    <message>
        <source>Air over what the wood needs, for the draft check: 1 would be exactly enough; under 1.5 it smokes, over 4 the fire is being cooled.</source>
        <translation>Aire respecto al que pide la leña, para la revisión del tiro: 1 sería lo justo; bajo 1,5 humea, sobre 4 se enfría el fuego.</translation>
    </message>
    <message>
        <source>All fans that blow out of the house at once: a bath fan about 90, a clothes dryer 250-340, a range hood 350-2000.</source>
        <translation>Todos los que sacan aire a la vez: un baño unos 90, una secadora 250-340, una campana 350-2000.</translation>
    </message>
    <message>
        <source>Along the drawn line.</source>
        <translation>A lo largo de la línea dibujada.</translation>
    </message>
    <message>
        <source>Along the first wall</source>
        <translation>A lo largo de la primera pared</translation>
    </message>
    <message>
        <source>Along the joint: all round a 150 mm pipe is 470 mm.</source>
        <translation>A lo largo de la unión: todo alrededor de un tubo de 150 mm son 470 mm.</translation>
    </message>
    <message>
        <source>Along the second wall</source>
        <translation>A lo largo de la segunda pared</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Any other cap: reckon with two velocity heads, it may be more.</source>
        <translation>Cualquier otro sombrero: cuente dos presiones dinámicas, puede ser más.</translation>
    </message>
    <message>
        <source>Area of the air slot over the area of the doorway.</source>
        <translation>Área de la ranura entre el área del hueco.</translation>
    </message>
    <message>
        <source>Ash pit</source>
        <translation>Cenicero</translation>
    </message>
    <message>
        <source>At its far end.</source>
        <translation>En su extremo lejano.</translation>
    </message>
    <message>
        <source>At its first end.</source>
        <translation>En su primer extremo.</translation>
    </message>
    <message>
        <source>Back along the first wall</source>
        <translation>De vuelta por la primera pared</translation>
    </message>
    <message>
        <source>Back along the second wall</source>
        <translation>De vuelta por la segunda pared</translation>
    </message>
    <message>
        <source>Barrel</source>
        <translation>Bidón</translation>
    </message>
    <message>
        <source>Barrel diameter</source>
        <translation>Diámetro del bidón</translation>
    </message>
    <message>
        <source>Batch box</source>
        <translation>Caja de carga</translation>
    </message>
    <message>
        <source>Bell</source>
        <translation>Campana</translation>
    </message>
    <message>
        <source>Bench with a bypass, 150 mm</source>
        <translation>Banco con derivación, 150 mm</translation>
    </message>
    <message>
        <source>Bench, back</source>
        <translation>Banco, vuelta</translation>
    </message>
    <message>
        <source>Bench, out</source>
        <translation>Banco, ida</translation>
    </message>
    <message>
        <source>Bench, to the wall</source>
        <translation>Banco, hacia la pared</translation>
    </message>
    <message>
        <source>Bend made of three, four or five pieces of pipe, as stovepipe elbows are.</source>
        <translation>Curva de tres, cuatro o cinco gajos, como los codos de estufa.</translation>
    </message>
    <message>
        <source>Between the way on and the branch.</source>
        <translation>Entre la vía recta y la derivación.</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Compuerta</translation>
    </message>
    <message>
        <source>Blade damper</source>
        <translation>Compuerta de mariposa</translation>
    </message>
    <message>
        <source>Blade reaching in from the side, motor outside, blowing the way it is drawn. Off, it hardly stands in the way.</source>
        <translation>Rodete que entra desde el lado, motor fuera, sopla como está dibujado. Apagado, apenas estorba.</translation>
    </message>
    <message>
        <source>Bore of the flap standing wide open.</source>
        <translation>Diámetro de la clapeta abierta del todo.</translation>
    </message>
    <message>
        <source>Box between barrel and bench pipe, wide and with an ash pit, so that the gas need not squeeze.</source>
        <translation>Caja entre bidón y tubo del banco, ancha y con cenicero, para que el gas no se apriete.</translation>
    </message>
    <message>
        <source>Branch angle</source>
        <translation>Ángulo de derivación</translation>
    </message>
    <message>
        <source>Branch bore</source>
        <translation>Diámetro de derivación</translation>
    </message>
    <message>
        <source>Brick channel in the bench</source>
        <translation>Canal de ladrillo en el banco</translation>
    </message>
    <message>
        <source>Brick channel under the floor, 60 mm</source>
        <translation>Canal de ladrillo bajo el suelo, 60 mm</translation>
    </message>
    <message>
        <source>Brick chimney with a clay liner.</source>
        <translation>Chimenea de ladrillo con tubo de barro.</translation>
    </message>
    <message>
        <source>Brick on edge, 60 mm</source>
        <translation>Ladrillo de canto, 60 mm</translation>
    </message>
    <message>
        <source>Brick tunnel under the floor.</source>
        <translation>Túnel de ladrillo bajo el suelo.</translation>
    </message>
    <message>
        <source>Brush with its rods</source>
        <translation>Cepillo con sus varillas</translation>
    </message>
    <message>
        <source>Build-up from the gas outwards.</source>
        <translation>Capas desde el gas hacia fuera.</translation>
    </message>
    <message>
        <source>Buried floor tunnel</source>
        <translation>Túnel bajo el suelo</translation>
    </message>
    <message>
        <source>Buried pipe</source>
        <translation>Tubo enterrado</translation>
    </message>
    <message>
        <source>Burn tunnel</source>
        <translation>Túnel de fuego</translation>
    </message>
    <message>
        <source>Bypass link</source>
        <translation>Derivación directa</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Sombrero</translation>
    </message>
    <message>
        <source>Cap loss</source>
        <translation>Pérdida del sombrero</translation>
    </message>
    <message>
        <source>Cap made to hold the draft back little.</source>
        <translation>Sombrero hecho para frenar poco el tiro.</translation>
    </message>
    <message>
        <source>Cap of unknown make</source>
        <translation>Sombrero desconocido</translation>
    </message>
    <message>
        <source>Carbon-monoxide alarm</source>
        <translation>Alarma de monóxido de carbono</translation>
    </message>
    <message>
        <source>Ceramic fibre blanket, 128 kg/m3</source>
        <translation>Manta de fibra cerámica, 128 kg/m³</translation>
    </message>
    <message>
        <source>Channel wall; the mass is said below.</source>
        <translation>Pared del canal; la masa se indica abajo.</translation>
    </message>
    <message>
        <source>Channel, height</source>
        <translation>Canal, alto</translation>
    </message>
    <message>
        <source>Channel, width</source>
        <translation>Canal, ancho</translation>
    </message>
    <message>
        <source>Chimney below the ceiling</source>
        <translation>Chimenea bajo el techo</translation>
    </message>
    <message>
        <source>Chimney inside the gable</source>
        <translation>Chimenea por dentro del hastial</translation>
    </message>
    <message>
        <source>Chimney length through ceiling, attic and roof.</source>
        <translation>Tramo de chimenea por techo, desván y tejado.</translation>
    </message>
    <message>
        <source>Chimney on the outside wall</source>
        <translation>Chimenea en la pared exterior</translation>
    </message>
    <message>
        <source>Chimney on the upper floor</source>
        <translation>Chimenea en el piso de arriba</translation>
    </message>
    <message>
        <source>Chimney over the ridge</source>
        <translation>Chimenea sobre la cumbrera</translation>
    </message>
    <message>
        <source>Chimney over the roof</source>
        <translation>Chimenea sobre el tejado</translation>
    </message>
    <message>
        <source>Chimney, lower length</source>
        <translation>Chimenea, tramo inferior</translation>
    </message>
    <message>
        <source>Chimney, middle length</source>
        <translation>Chimenea, tramo medio</translation>
    </message>
    <message>
        <source>Chimney, upper length</source>
        <translation>Chimenea, tramo superior</translation>
    </message>
    <message>
        <source>Clay flue tile</source>
        <translation>Tubo de barro</translation>
    </message>
    <message>
        <source>Clay liner in half-brick masonry</source>
        <translation>Tubo de barro en medio pie de ladrillo</translation>
    </message>
    <message>
        <source>Clay plaster</source>
        <translation>Revoque de barro</translation>
    </message>
    <message>
        <source>Clay-lined masonry flue</source>
        <translation>Chimenea de obra con tubo de barro</translation>
    </message>
    <message>
        <source>Cleanout at the foot</source>
        <translation>Registro de limpieza al pie</translation>
    </message>
    <message>
        <source>Cleanout cap</source>
        <translation>Tapa de limpieza</translation>
    </message>
    <message>
        <source>Cleanout halfway</source>
        <translation>Registro de limpieza a medio camino</translation>
    </message>
    <message>
        <source>Cleanout tee</source>
        <translation>Te de limpieza</translation>
    </message>
    <message>
        <source>Clear of what burns</source>
        <translation>Libre de lo que arde</translation>
    </message>
    <message>
        <source>Closed air gap of a double-wall pipe</source>
        <translation>Cámara de aire cerrada de tubo de doble pared</translation>
    </message>
    <message>
        <source>Closed loading door of a batch box; air comes in through its slot.</source>
        <translation>Puerta de carga cerrada de una caja; el aire entra por su ranura.</translation>
    </message>
    <message>
        <source>Cob (clay, sand, straw), dry</source>
        <translation>Cob (arcilla, arena, paja), seco</translation>
    </message>
    <message>
        <source>Concrete, 2200 kg/m3</source>
        <translation>Hormigón, 2200 kg/m³</translation>
    </message>
    <message>
        <source>Corner</source>
        <translation>Esquina</translation>
    </message>
    <message>
        <source>Corner, back</source>
        <translation>Esquina, vuelta</translation>
    </message>
    <message>
        <source>Cover halfway</source>
        <translation>Tapa a medio camino</translation>
    </message>
    <message>
        <source>Crack, length</source>
        <translation>Grieta, largo</translation>
    </message>
    <message>
        <source>Crack, width</source>
        <translation>Grieta, ancho</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profundidad</translation>
    </message>
    <message>
        <source>Depth of the door frame.</source>
        <translation>Fondo del marco de la puerta.</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Diámetro exterior</translation>
    </message>
    <message>
        <source>Door with air slot</source>
        <translation>Puerta con ranura de aire</translation>
    </message>
    <message>
        <source>Doorway, height</source>
        <translation>Hueco de puerta, alto</translation>
    </message>
    <message>
        <source>Doorway, width</source>
        <translation>Hueco de puerta, ancho</translation>
    </message>
    <message>
        <source>Double-wall pipe</source>
        <translation>Tubo de doble pared</translation>
    </message>
    <message>
        <source>Double-wall pipe, 10 mm air gap</source>
        <translation>Tubo de doble pared, cámara de 10 mm</translation>
    </message>
    <message>
        <source>Down pipe</source>
        <translation>Tubo de bajada</translation>
    </message>
    <message>
        <source>Down to the floor run</source>
        <translation>Bajada al tramo del suelo</translation>
    </message>
    <message>
        <source>Draft at which the flap begins to open.</source>
        <translation>Tiro con que empieza a abrirse la aleta.</translation>
    </message>
    <message>
        <source>Draft regulator</source>
        <translation>Regulador de tiro</translation>
    </message>
    <message>
        <source>Drain and cleanout</source>
        <translation>Desagüe y registro de limpieza</translation>
    </message>
    <message>
        <source>Drawn or stamped bend without seams across the flow.</source>
        <translation>Curva estirada o estampada sin costuras de través.</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Bidón</translation>
    </message>
    <message>
        <source>Drums split lengthwise and laid open side down under the seat: a wide, slow channel.</source>
        <translation>Bidones partidos a lo largo, boca abajo bajo el asiento: un canal ancho y lento.</translation>
    </message>
    <message>
        <source>Duct that brings outdoor air to a lidded feed; its screened mouth is outside.</source>
        <translation>Conducto que lleva aire exterior a una alimentación tapada; su boca con rejilla está fuera.</translation>
    </message>
    <message>
        <source>Elbow in the bench</source>
        <translation>Codo en el banco</translation>
    </message>
    <message>
        <source>Electrical, at full speed in gas of the density above.</source>
        <translation>Eléctrica, a plena velocidad en gas de la densidad de arriba.</translation>
    </message>
    <message>
        <source>End, first quarter</source>
        <translation>Extremo, primer cuarto</translation>
    </message>
    <message>
        <source>End, second quarter</source>
        <translation>Extremo, segundo cuarto</translation>
    </message>
    <message>
        <source>Exhaust fans</source>
        <translation>Extractores</translation>
    </message>
    <message>
        <source>Exposed share</source>
        <translation>Parte expuesta</translation>
    </message>
    <message>
        <source>Extra suction</source>
        <translation>Succión adicional</translation>
    </message>
    <message>
        <source>Extractor on top of the stack, motor out of the gas. Off, it stands in the way like a cap.</source>
        <translation>Extractor en lo alto de la chimenea, motor fuera del gas. Apagado, estorba como un sombrero.</translation>
    </message>
    <message>
        <source>Factory-made chimney length with insulation between its walls.</source>
        <translation>Tramo de chimenea de fábrica con aislante entre paredes.</translation>
    </message>
    <message>
        <source>Fan with its motor in the stream, blowing the way it is drawn. Off, blades and motor stand in the way.</source>
        <translation>Ventilador con el motor en el gas, sopla como está dibujado. Apagado, aspas y motor estorban.</translation>
    </message>
    <message>
        <source>Far bore</source>
        <translation>Diámetro lejano</translation>
    </message>
    <message>
        <source>Far end, first quarter</source>
        <translation>Fondo, primer cuarto</translation>
    </message>
    <message>
        <source>Far end, second quarter</source>
        <translation>Fondo, segundo cuarto</translation>
    </message>
    <message>
        <source>Feed tube</source>
        <translation>Tubo de alimentación</translation>
    </message>
    <message>
        <source>Fir</source>
        <translation>Abeto</translation>
    </message>
    <message>
        <source>Firebox loaded through a door, with a narrow upright port into the riser behind it.</source>
        <translation>Hogar que se carga por una puerta, con una boca estrecha y alta hacia la columna de detrás.</translation>
    </message>
    <message>
        <source>Fireclay brick</source>
        <translation>Ladrillo refractario</translation>
    </message>
    <message>
        <source>Fired clay brick</source>
        <translation>Ladrillo cocido</translation>
    </message>
    <message>
        <source>Flap</source>
        <translation>Clapeta</translation>
    </message>
    <message>
        <source>Flat or conical hat over the open pipe.</source>
        <translation>Sombrero plano o cónico sobre el tubo abierto.</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Caudal</translation>
    </message>
    <message>
        <source>Flow safety</source>
        <translation>Seguridad de caudal</translation>
    </message>
    <message>
        <source>Foot of the chimney</source>
        <translation>Pie de la chimenea</translation>
    </message>
    <message>
        <source>Free height under the hat over the bore.</source>
        <translation>Altura libre bajo el sombrero entre el diámetro.</translation>
    </message>
    <message>
        <source>From a rectangular channel into a round pipe.</source>
        <translation>De un canal rectangular a un tubo redondo.</translation>
    </message>
    <message>
        <source>From a round pipe into a rectangular channel.</source>
        <translation>De un tubo redondo a un canal rectangular.</translation>
    </message>
    <message>
        <source>From above under a feed, or straight through the end.</source>
        <translation>Desde arriba bajo una alimentación, o recto por el extremo.</translation>
    </message>
    <message>
        <source>From the heater&apos;s floor to the top of the heated space: measure it up to the ceiling that lets no air through.</source>
        <translation>Del suelo de la estufa a lo alto del espacio calentado: mida hasta el techo que no deja pasar aire.</translation>
    </message>
    <message>
        <source>From the middle of the feed to the middle of the riser.</source>
        <translation>Del centro de la alimentación al centro de la columna.</translation>
    </message>
    <message>
        <source>From the riser&apos;s rim to the lid. At a quarter of the bore the ring is as wide open as the riser.</source>
        <translation>Del borde de la columna a la tapa. Con un cuarto del diámetro el anillo está tan abierto como la columna.</translation>
    </message>
    <message>
        <source>From the surface above down to the middle of the flue.</source>
        <translation>De la superficie de arriba al centro del conducto.</translation>
    </message>
    <message>
        <source>Galvanised duct, 0.5 mm</source>
        <translation>Conducto galvanizado, 0,5 mm</translation>
    </message>
    <message>
        <source>Galvanised steel, folded or spiral</source>
        <translation>Acero galvanizado, plegado o espiral</translation>
    </message>
    <message>
        <source>Gap over bore</source>
        <translation>Hueco entre diámetro</translation>
    </message>
    <message>
        <source>Gap over the riser</source>
        <translation>Hueco sobre la columna</translation>
    </message>
    <message>
        <source>Gas comes in</source>
        <translation>El gas entra</translation>
    </message>
    <message>
        <source>Gas density</source>
        <translation>Densidad del gas</translation>
    </message>
    <message>
        <source>Gas leaves</source>
        <translation>El gas sale</translation>
    </message>
    <message>
        <source>Gas up to</source>
        <translation>Gas hasta</translation>
    </message>
    <message>
        <source>Generic duct fan in the stream</source>
        <translation>Ventilador de tubo en el gas, genérico</translation>
    </message>
    <message>
        <source>Generic side-mounted inducer</source>
        <translation>Extractor lateral, genérico</translation>
    </message>
    <message>
        <source>Generic stack-top fan</source>
        <translation>Extractor de remate, genérico</translation>
    </message>
    <message>
        <source>Gradual change of bore, narrower or wider.</source>
        <translation>Cambio gradual de diámetro, a menos o a más.</translation>
    </message>
    <message>
        <source>Granite or hard field stone</source>
        <translation>Granito o piedra dura</translation>
    </message>
    <message>
        <source>Green</source>
        <translation>Verde</translation>
    </message>
    <message>
        <source>Greenhouse, floor run</source>
        <translation>Invernadero, tramo en el suelo</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Terreno</translation>
    </message>
    <message>
        <source>Half drum over a channel, 1.0 mm</source>
        <translation>Medio bidón sobre un canal, 1,0 mm</translation>
    </message>
    <message>
        <source>Half-barrel channel</source>
        <translation>Canal de medio bidón</translation>
    </message>
    <message>
        <source>Half-brick, 115 mm</source>
        <translation>Medio pie, 115 mm</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Head of a masonry flue</source>
        <translation>Remate de chimenea de obra</translation>
    </message>
    <message>
        <source>Heat riser</source>
        <translation>Columna de combustión</translation>
    </message>
    <message>
        <source>Heated volume: floor area times ceiling height.</source>
        <translation>Volumen calentado: superficie por altura de techo.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Altura</translation>
    </message>
    <message>
        <source>Height at which indoor and outdoor pressure agree: about half the height when leaks are spread evenly, higher when the top leaks more.</source>
        <translation>Altura donde coinciden las presiones: hacia la mitad con fugas repartidas, más alta si fuga más arriba.</translation>
    </message>
    <message>
        <source>Height of the bench or wall around the flue.</source>
        <translation>Alto del banco o muro alrededor del conducto.</translation>
    </message>
    <message>
        <source>Height of the heated space</source>
        <translation>Altura del espacio calentado</translation>
    </message>
    <message>
        <source>Height of the house above sea level: from a map. Thin air carries less draft.</source>
        <translation>Altura de la casa sobre el mar: de un mapa. El aire fino da menos tiro.</translation>
    </message>
    <message>
        <source>Height of the tube.</source>
        <translation>Altura del tubo.</translation>
    </message>
    <message>
        <source>Height.</source>
        <translation>Altura.</translation>
    </message>
    <message>
        <source>Highest thing near the cap</source>
        <translation>Lo más alto cerca del sombrero</translation>
    </message>
    <message>
        <source>Hottest gas that may pass the fan, by its maker.</source>
        <translation>Gas más caliente que puede pasar por el ventilador, según su fabricante.</translation>
    </message>
    <message>
        <source>Hottest that the motor may get, by its maker.</source>
        <translation>Lo más caliente que puede ponerse el motor, según su fabricante.</translation>
    </message>
    <message>
        <source>House volume</source>
        <translation>Volumen de la casa</translation>
    </message>
    <message>
        <source>How far it gapes.</source>
        <translation>Cuánto se abre.</translation>
    </message>
    <message>
        <source>How far the blade is turned out of the flow: 0 open, 90 shut.</source>
        <translation>Cuánto gira la compuerta fuera de la corriente: 0 abierta, 90 cerrada.</translation>
    </message>
    <message>
        <source>How far the draft must lie above the set draft for the flap to stand wide open.</source>
        <translation>Cuánto debe superar el tiro al fijado para que la clapeta se abra del todo.</translation>
    </message>
    <message>
        <source>How far the flow turns.</source>
        <translation>Cuánto gira la corriente.</translation>
    </message>
    <message>
        <source>How far the longest brush at hand reaches into the flue. It passes one turn and not two.</source>
        <translation>Hasta dónde llega en el conducto el cepillo más largo que hay. Pasa un codo y no dos.</translation>
    </message>
    <message>
        <source>How leaky the house is, per hour, by a blower-door test: about 1 very tight, 3 tight, 5 usual, 10 and more an old draughty house.</source>
        <translation>Cuánto fuga la casa, por hora, con ensayo de puerta: 1 muy estanca, 3 estanca, 5 usual, 10 y más una casa vieja con corrientes.</translation>
    </message>
    <message>
        <source>In-line duct fan</source>
        <translation>Ventilador en línea</translation>
    </message>
    <message>
        <source>Inducer</source>
        <translation>Extractor</translation>
    </message>
    <message>
        <source>Inlet height</source>
        <translation>Altura de entrada</translation>
    </message>
    <message>
        <source>Inside barrel or bell</source>
        <translation>Dentro de bidón o campana</translation>
    </message>
    <message>
        <source>Inside depth, door to back wall.</source>
        <translation>Fondo interior, de la puerta a la pared trasera.</translation>
    </message>
    <message>
        <source>Inside diameter of the drum that was split.</source>
        <translation>Diámetro interior del bidón partido.</translation>
    </message>
    <message>
        <source>Inside diameter of the drum.</source>
        <translation>Diámetro interior del bidón.</translation>
    </message>
    <message>
        <source>Inside diameter.</source>
        <translation>Diámetro interior.</translation>
    </message>
    <message>
        <source>Inside height of the doorway.</source>
        <translation>Alto interior del hueco.</translation>
    </message>
    <message>
        <source>Inside width of the doorway.</source>
        <translation>Ancho interior del hueco.</translation>
    </message>
    <message>
        <source>Inside, across the way in.</source>
        <translation>Interior, de través a la entrada.</translation>
    </message>
    <message>
        <source>Inside, across.</source>
        <translation>Interior, de través.</translation>
    </message>
    <message>
        <source>Inside, along the tunnel.</source>
        <translation>Interior, a lo largo del túnel.</translation>
    </message>
    <message>
        <source>Inside, along the way in.</source>
        <translation>Interior, en el sentido de la entrada.</translation>
    </message>
    <message>
        <source>Inside, ash pit left out.</source>
        <translation>Interior, sin el cenicero.</translation>
    </message>
    <message>
        <source>Inside, floor to ceiling.</source>
        <translation>Interior, del suelo al techo.</translation>
    </message>
    <message>
        <source>Inside.</source>
        <translation>Interior.</translation>
    </message>
    <message>
        <source>Insulated chimney</source>
        <translation>Chimenea aislada</translation>
    </message>
    <message>
        <source>Insulated chimney, 25 mm wool</source>
        <translation>Chimenea aislada, 25 mm de lana</translation>
    </message>
    <message>
        <source>Insulated chimney, 50 mm wool</source>
        <translation>Chimenea aislada, 50 mm de lana</translation>
    </message>
    <message>
        <source>Insulated upright flue in which the fire burns out; inside a barrel or bell it gives its loss back to the gas around it.</source>
        <translation>Conducto vertical aislado donde acaba de arder; dentro de un bidón o campana devuelve su pérdida al gas de alrededor.</translation>
    </message>
    <message>
        <source>Insulating firebrick (1260 degC grade)</source>
        <translation>Ladrillo refractario aislante (1260 °C)</translation>
    </message>
    <message>
        <source>Insulating firebrick, 65 mm</source>
        <translation>Ladrillo refractario aislante, 65 mm</translation>
    </message>
    <message>
        <source>Into the floor run</source>
        <translation>Al tramo del suelo</translation>
    </message>
    <message>
        <source>Invented, to show a client who wants every wall warm. Four runs of six and a half metres of 150 mm pipe lie in one wide platform, and the chimney ends just over a low roof. By the time the gas reaches the chimney it is barely warmer than the room, and there is nothing left to lift it. No cap, no elbow and no drier wood mends that; a shorter run and a taller chimney do.</source>
        <translation>Inventado, para enseñar a un cliente que quiere caliente cada pared. Cuatro tramos de seis metros y medio de tubo de 150 mm van en una tarima ancha, y la chimenea acaba justo sobre un tejado bajo. Cuando el gas llega a la chimenea apenas está más caliente que el cuarto, y no queda nada que lo levante. Eso no lo arregla ningún sombrero, codo ni leña más seca; sí un tramo más corto y una chimenea más alta.</translation>
    </message>
    <message>
        <source>Invented, to show what a power cut does. The same platform with a run that is too long, and an inducer bought second-hand and set at the foot of the chimney. A bath fan and a drier run in the house, and the day is mild. While the inducer turns the fire burns well, and by its own sheet the fan copes. When the power fails with wood in the feed, the fire starves and smokes. A shorter run and a taller chimney do without it: a fan may help a heater start, never hold it.</source>
        <translation>Inventado, para mostrar qué hace un corte de luz. La misma tarima con un tramo demasiado largo, y un extractor comprado de segunda mano al pie de la chimenea. En la casa funcionan un extractor de baño y una secadora, y el día es templado. Mientras el extractor gira el fuego arde bien, y según su hoja el ventilador aguanta. Si falla la luz con leña en la alimentación, el fuego se ahoga y humea. Un tramo más corto y una chimenea más alta se las arreglan sin él: un ventilador puede ayudar a arrancar una estufa, nunca sostenerla.</translation>
    </message>
    <message>
        <source>Invented. A lean-to glasshouse that is fired on frosty nights. The drum stands at the east end; from there a 200 mm pipe goes down and runs under the path for nine metres, and comes up into a chimney on the gable. Damp ground takes most of the heat, which is what the grower wants, and leaves little for the chimney, which is what the grower fears.</source>
        <translation>Inventado. Un invernadero adosado que se enciende en noches de helada. El bidón está en el extremo este; de ahí baja un tubo de 200 mm, corre nueve metros bajo el pasillo y sube a una chimenea en el hastial. La tierra húmeda toma casi todo el calor, que es lo que quiere el hortelano, y deja poco a la chimenea, que es lo que teme.</translation>
    </message>
    <message>
        <source>Invented. A one-room cottage on a February morning, frost outside and the stove lit every day. The bench is a day bed: two metres out, two metres back, the pipe in cob, and a straight chimney through the roof beside the drum. Nothing about it is remarkable, which is why it draws.</source>
        <translation>Inventado. Una casita de un solo cuarto en una mañana de febrero, helada afuera y la estufa encendida a diario. El banco es un diván: dos metros de ida, dos de vuelta, el tubo en cob, y una chimenea recta por el tejado junto al bidón. No tiene nada de particular, y por eso tira.</translation>
    </message>
    <message>
        <source>Invented. A workshop on an October morning that is lit twice a week and so begins cold each time. A short link leads past the bench to the foot of the chimney; its blade stands open while the chimney warms, and nearly a third of the gas goes that way. Shut the blade and all of it warms the bench. The lid at the foot is for a priming fire: take it off and see how much room air the chimney would rather have than the heater&apos;s smoke.</source>
        <translation>Inventado. Un taller en una mañana de octubre que se enciende dos veces por semana y por eso empieza frío cada vez. Un paso corto evita el banco hasta el pie de la chimenea; su compuerta queda abierta mientras la chimenea se calienta, y casi un tercio del gas va por ahí. Cierre la compuerta y todo calienta el banco. La tapa del pie es para un fuego de cebado: quítela y vea cuánto aire del cuarto prefiere la chimenea al humo de la estufa.</translation>
    </message>
    <message>
        <source>Invented. The first mild evening of April in a house that has been empty for a week: eleven degrees inside, fourteen outside. The bench runs along two walls and back again, about thirteen metres of 200 mm pipe, and the chimney is short because the ridge is low. In January it draws; tonight it is on the edge until the bench has taken up some heat.</source>
        <translation>Inventado. La primera tarde templada de abril en una casa vacía desde hace una semana: once grados dentro, catorce fuera. El banco recorre dos paredes y vuelve, unos trece metros de tubo de 200 mm, y la chimenea es corta porque la cumbrera es baja. En enero tira; esta noche está al límite hasta que el banco haya tomado algo de calor.</translation>
    </message>
    <message>
        <source>Invented. To keep the roof whole, the builder took the pipe through the north wall and up the outside in plain single-wall pipe. The bench works and the room is warm, but the chimney stands in the frost and the wood has seen one summer only: from the foot up the inner wall is below the dew point, and water runs down to the cleanout. The same chimney indoors, or insulated, would be dry.</source>
        <translation>Inventado. Para no abrir el tejado, el constructor sacó el tubo por la pared norte y lo subió por fuera en tubo simple. El banco funciona y el cuarto está caliente, pero la chimenea está en la helada y la leña solo ha visto un verano: desde el pie la pared interior está bajo el punto de rocío, y el agua baja al registro de limpieza. La misma chimenea por dentro, o aislada, estaría seca.</translation>
    </message>
    <message>
        <source>Its data sheet: a generic one with an invented curve, or your own.</source>
        <translation>Su hoja de datos: una genérica con curva inventada, o la suya.</translation>
    </message>
    <message>
        <source>Kept going by a fan</source>
        <translation>Sostenido por un ventilador</translation>
    </message>
    <message>
        <source>Kiln dried</source>
        <translation>Secada en horno</translation>
    </message>
    <message>
        <source>Last bit of liner.</source>
        <translation>Último trozo de tubo.</translation>
    </message>
    <message>
        <source>Last bit of pipe.</source>
        <translation>Último trozo de tubo.</translation>
    </message>
    <message>
        <source>Leak when shut</source>
        <translation>Fuga cerrada</translation>
    </message>
    <message>
        <source>Leaky joint</source>
        <translation>Unión con fuga</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Queda abierto</translation>
    </message>
    <message>
        <source>Level brick tunnel between feed and riser, where the fire lies.</source>
        <translation>Túnel horizontal de ladrillo entre alimentación y columna, donde está el fuego.</translation>
    </message>
    <message>
        <source>Level round tunnel between feed and riser, where the fire lies: cast, or steel in insulation.</source>
        <translation>Túnel redondo horizontal entre alimentación y columna, donde está el fuego: colado, o acero aislado.</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>Lid on an open end, to be taken off for cleaning or for a priming fire; with the lid off the end stands open to the room.</source>
        <translation>Tapa en un extremo abierto, que se quita para limpiar o para un fuego de cebado; sin tapa el extremo queda abierto al cuarto.</translation>
    </message>
    <message>
        <source>Lid to foot.</source>
        <translation>De la tapa al pie.</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Está en</translation>
    </message>
    <message>
        <source>Lime and sand plaster</source>
        <translation>Revoque de cal y arena</translation>
    </message>
    <message>
        <source>Load per area under the bench that the floor is good for: 1900 Pa (40 psf) is what house floors are usually built for; a slab on the ground carries many times that.</source>
        <translation>Carga por superficie bajo el banco que el suelo aguanta: 1900 Pa (40 psf) es lo usual en suelos de vivienda; una losa sobre el terreno aguanta muchas veces más.</translation>
    </message>
    <message>
        <source>Long bench in spring, 200 mm</source>
        <translation>Banco largo en primavera, 200 mm</translation>
    </message>
    <message>
        <source>Loss standing still</source>
        <translation>Pérdida parado</translation>
    </message>
    <message>
        <source>Low-resistance cap</source>
        <translation>Sombrero de poca resistencia</translation>
    </message>
    <message>
        <source>Manifold</source>
        <translation>Colector</translation>
    </message>
    <message>
        <source>Masonry chamber that hot gas fills from the top; cooled gas sinks and leaves low.</source>
        <translation>Cámara de obra que el gas caliente llena desde arriba; el enfriado baja y sale por abajo.</translation>
    </message>
    <message>
        <source>Mass, height</source>
        <translation>Masa, alto</translation>
    </message>
    <message>
        <source>Mass, material</source>
        <translation>Masa, material</translation>
    </message>
    <message>
        <source>Mass, width</source>
        <translation>Masa, ancho</translation>
    </message>
    <message>
        <source>Middle of the inlet above the floor; of a riser inside, its rim.</source>
        <translation>Centro de la entrada sobre el suelo; de una columna dentro, su borde.</translation>
    </message>
    <message>
        <source>Middle of the outlet above the barrel&apos;s foot.</source>
        <translation>Centro de la salida sobre el pie del bidón.</translation>
    </message>
    <message>
        <source>Middle of the outlet above the floor.</source>
        <translation>Centro de la salida sobre el suelo.</translation>
    </message>
    <message>
        <source>Mineral wool, 100 kg/m3</source>
        <translation>Lana mineral, 100 kg/m³</translation>
    </message>
    <message>
        <source>Mitred elbow</source>
        <translation>Codo a inglete</translation>
    </message>
    <message>
        <source>Mixed hardwood</source>
        <translation>Frondosas mezcladas</translation>
    </message>
    <message>
        <source>Mixed softwood</source>
        <translation>Coníferas mezcladas</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Motor up to</source>
        <translation>Motor hasta</translation>
    </message>
    <message>
        <source>Nearest wood, furniture or plasterboard on studs, as built: for a bare drum 920 mm (36 in) is the usual least.</source>
        <translation>Madera, muebles o placa de yeso más cercanos, como están construidos: para un bidón desnudo 920 mm (36 in) es el mínimo usual.</translation>
    </message>
    <message>
        <source>Nearest wood, furniture or plasterboard on studs, as built: for a single wall 460 mm (18 in) is the usual least.</source>
        <translation>Madera, muebles o placa de yeso más cercanos, como están construidos: para una pared simple 460 mm (18 in) es el mínimo usual.</translation>
    </message>
    <message>
        <source>No wall of its own</source>
        <translation>Sin pared propia</translation>
    </message>
    <message>
        <source>Of the branch.</source>
        <translation>De la derivación.</translation>
    </message>
    <message>
        <source>Of the full speed of its data sheet; at 0 it is off and stands in the way.</source>
        <translation>De la velocidad plena de su hoja; a 0 está apagado y estorba.</translation>
    </message>
    <message>
        <source>Of the gas for which the sheet states its heads: 1.2 for standard air at 20 °C, 0.83 for a sheet that holds at 150 °C.</source>
        <translation>Del gas para el que la hoja da sus presiones: 1,2 para aire normal a 20 °C, 0,83 para una hoja que vale a 150 °C.</translation>
    </message>
    <message>
        <source>Of the inlet.</source>
        <translation>De la entrada.</translation>
    </message>
    <message>
        <source>Of the opening into it.</source>
        <translation>De la abertura de entrada.</translation>
    </message>
    <message>
        <source>Of the outlet at the foot.</source>
        <translation>De la salida al pie.</translation>
    </message>
    <message>
        <source>Of the outlet.</source>
        <translation>De la salida.</translation>
    </message>
    <message>
        <source>Of the pipe out of it.</source>
        <translation>Del tubo de salida.</translation>
    </message>
    <message>
        <source>Of the pipe.</source>
        <translation>Del tubo.</translation>
    </message>
    <message>
        <source>Of the riser behind it.</source>
        <translation>De la columna de detrás.</translation>
    </message>
    <message>
        <source>Of the riser that stands in it.</source>
        <translation>De la columna que hay dentro.</translation>
    </message>
    <message>
        <source>On: shut. Off: the end stands open, air or smoke can pass it.</source>
        <translation>Puesta: cerrado. Quitada: el extremo está abierto, puede pasar aire o humo.</translation>
    </message>
    <message>
        <source>On: the branch is shut unless a piece is joined to it. Off: it stands open, air or smoke can pass it.</source>
        <translation>Puesta: la rama está cerrada salvo que se le una una pieza. Quitada: está abierta, puede pasar aire o humo.</translation>
    </message>
    <message>
        <source>Open share of screen or louvre over the mouth.</source>
        <translation>Parte abierta de la rejilla o lamas de la boca.</translation>
    </message>
    <message>
        <source>Open stack head</source>
        <translation>Boca abierta</translation>
    </message>
    <message>
        <source>Open to the room, or lidded with a duct joined on.</source>
        <translation>Abierta al cuarto, o tapada con un conducto unido.</translation>
    </message>
    <message>
        <source>Outdoor air on the day in question: try the mildest day on which you would still light a fire.</source>
        <translation>Aire exterior del día en cuestión: pruebe el día más suave en que aún encendería.</translation>
    </message>
    <message>
        <source>Outdoor humidity</source>
        <translation>Humedad exterior</translation>
    </message>
    <message>
        <source>Outlet bore</source>
        <translation>Diámetro de salida</translation>
    </message>
    <message>
        <source>Outlet height</source>
        <translation>Altura de salida</translation>
    </message>
    <message>
        <source>Outlet side</source>
        <translation>Lado de salida</translation>
    </message>
    <message>
        <source>Outside diameter of the riser with its insulation.</source>
        <translation>Diámetro exterior de la columna con su aislamiento.</translation>
    </message>
    <message>
        <source>Outside-air duct</source>
        <translation>Conducto de aire exterior</translation>
    </message>
    <message>
        <source>Passage through a wall, with its clearance to whatever burns.</source>
        <translation>Paso por una pared, con su separación de lo que arde.</translation>
    </message>
    <message>
        <source>Perlite bound with clay</source>
        <translation>Perlita con arcilla</translation>
    </message>
    <message>
        <source>Perlite, loose</source>
        <translation>Perlita suelta</translation>
    </message>
    <message>
        <source>Pieces the bend is made of, ends included.</source>
        <translation>Piezas de que consta el codo, extremos incluidos.</translation>
    </message>
    <message>
        <source>Pipe in the bench</source>
        <translation>Tubo en el banco</translation>
    </message>
    <message>
        <source>Pipe under the hat.</source>
        <translation>Tubo bajo el sombrero.</translation>
    </message>
    <message>
        <source>Pipe under the opening.</source>
        <translation>Tubo bajo la abertura.</translation>
    </message>
    <message>
        <source>Pipe wall; the ground is said below.</source>
        <translation>Pared del tubo; el terreno se indica abajo.</translation>
    </message>
    <message>
        <source>Pipe wall; the mass is said below.</source>
        <translation>Pared del tubo; la masa se indica abajo.</translation>
    </message>
    <message>
        <source>Pipe with an air gap between two walls.</source>
        <translation>Tubo con cámara de aire entre dos paredes.</translation>
    </message>
    <message>
        <source>Plain stovepipe in the room.</source>
        <translation>Tubo de estufa simple en el cuarto.</translation>
    </message>
    <message>
        <source>Port, height</source>
        <translation>Boca, alto</translation>
    </message>
    <message>
        <source>Port, thickness</source>
        <translation>Boca, espesor</translation>
    </message>
    <message>
        <source>Port, width</source>
        <translation>Boca, ancho</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>Priming lid</source>
        <translation>Tapa de cebado</translation>
    </message>
    <message>
        <source>Radius of the centre line over the bore: the rounder, the easier.</source>
        <translation>Radio del eje entre el diámetro: cuanto más redondo, más fácil.</translation>
    </message>
    <message>
        <source>Radius over bore</source>
        <translation>Radio entre diámetro</translation>
    </message>
    <message>
        <source>Rain cap</source>
        <translation>Sombrero de lluvia</translation>
    </message>
    <message>
        <source>Rectangular channel laid in brick inside the bench.</source>
        <translation>Canal rectangular de ladrillo dentro del banco.</translation>
    </message>
    <message>
        <source>Red oak</source>
        <translation>Roble rojo</translation>
    </message>
    <message>
        <source>Reducer or expander</source>
        <translation>Reducción o ampliación</translation>
    </message>
    <message>
        <source>Relative humidity indoors: it goes up the flue with the combustion air and raises the dew point.</source>
        <translation>Humedad relativa interior: sube con el aire de combustión y eleva el punto de rocío.</translation>
    </message>
    <message>
        <source>Relative humidity outdoors: from the weather report. It matters little when it is cold.</source>
        <translation>Humedad relativa exterior: del parte del tiempo. Con frío importa poco.</translation>
    </message>
    <message>
        <source>Resistance is multiplied by this in the margin: 1.5 for a natural chimney, 1.2 with a fan or sealed air supply, 1 for bare physics.</source>
        <translation>La resistencia se multiplica por esto en el margen: 1,5 para chimenea natural, 1,2 con ventilador o aire estanco, 1 para física pura.</translation>
    </message>
    <message>
        <source>Rise per run: 0.02 climbs 2 cm in a metre, -0.02 falls. It lifts the far end; a standing piece takes no notice.</source>
        <translation>Subida por longitud: 0,02 sube 2 cm por metro, -0,02 baja. Levanta el extremo lejano; a una pieza vertical no le afecta.</translation>
    </message>
    <message>
        <source>Riser of ceramic fibre, 50 mm</source>
        <translation>Columna de fibra cerámica, 50 mm</translation>
    </message>
    <message>
        <source>Riser of firebrick splits in perlite and clay</source>
        <translation>Columna de plaquetas refractarias en perlita y arcilla</translation>
    </message>
    <message>
        <source>Riser, outside</source>
        <translation>Columna, exterior</translation>
    </message>
    <message>
        <source>Roof passage</source>
        <translation>Paso de tejado</translation>
    </message>
    <message>
        <source>Room humidity</source>
        <translation>Humedad del cuarto</translation>
    </message>
    <message>
        <source>Round blade on a spindle in the pipe.</source>
        <translation>Disco redondo sobre un eje en el tubo.</translation>
    </message>
    <message>
        <source>Round burn tunnel</source>
        <translation>Túnel de fuego redondo</translation>
    </message>
    <message>
        <source>Round feed tube</source>
        <translation>Tubo de alimentación redondo</translation>
    </message>
    <message>
        <source>Round pipe lying in the mass of a bench or wall.</source>
        <translation>Tubo redondo dentro de la masa de un banco o muro.</translation>
    </message>
    <message>
        <source>Round pipe under the floor.</source>
        <translation>Tubo redondo bajo el suelo.</translation>
    </message>
    <message>
        <source>Run 1</source>
        <translation>Tramo 1</translation>
    </message>
    <message>
        <source>Run 2</source>
        <translation>Tramo 2</translation>
    </message>
    <message>
        <source>Run 3</source>
        <translation>Tramo 3</translation>
    </message>
    <message>
        <source>Run 4</source>
        <translation>Tramo 4</translation>
    </message>
    <message>
        <source>Screen, clogged</source>
        <translation>Rejilla, tapada</translation>
    </message>
    <message>
        <source>Screen, open share</source>
        <translation>Rejilla, parte abierta</translation>
    </message>
    <message>
        <source>Segmented elbow</source>
        <translation>Codo de gajos</translation>
    </message>
    <message>
        <source>Segmented elbow lying in the bench&apos;s mass.</source>
        <translation>Codo de gajos dentro de la masa del banco.</translation>
    </message>
    <message>
        <source>Set draft</source>
        <translation>Tiro fijado</translation>
    </message>
    <message>
        <source>Share of the bore that a shut blade leaves open.</source>
        <translation>Parte del diámetro que deja abierta la compuerta cerrada.</translation>
    </message>
    <message>
        <source>Share of the flap&apos;s area that is open while it is shut.</source>
        <translation>Parte del área de la clapeta que queda abierta cuando está cerrada.</translation>
    </message>
    <message>
        <source>Share of the heat that leaves as carbon monoxide, soot and charcoal.</source>
        <translation>Parte del calor que se va como monóxido de carbono, hollín y carbón.</translation>
    </message>
    <message>
        <source>Share of the mass&apos;s outline that gives heat to the room: a bench on the floor against a wall about half, one with air all round 1.</source>
        <translation>Parte del contorno de la masa que da calor al cuarto: un banco en el suelo contra la pared, cerca de la mitad; uno con aire alrededor, 1.</translation>
    </message>
    <message>
        <source>Share of the mouth that the sticks leave open to the air. It chokes the fire more than anything else: half open runs lean, a fifth open runs rich.</source>
        <translation>Parte de la boca que los palos dejan al aire. Estrangula el fuego más que nada: medio abierta va pobre, un quinto va rica.</translation>
    </message>
    <message>
        <source>Share of the screen that soot has closed; without a screen it means nothing.</source>
        <translation>Parte de la rejilla tapada por hollín; sin rejilla no significa nada.</translation>
    </message>
    <message>
        <source>Share of the wind&apos;s dynamic pressure that stands at the cap: above zero it blows down, below zero it draws. A cap clear of the roof draws a little.</source>
        <translation>Parte de la presión dinámica del viento en el sombrero: sobre cero sopla adentro, bajo cero tira. Un sombrero libre del tejado tira un poco.</translation>
    </message>
    <message>
        <source>Sharp corner of a rectangular channel.</source>
        <translation>Esquina viva de un canal rectangular.</translation>
    </message>
    <message>
        <source>Sharp turn of round pipe, one seam.</source>
        <translation>Giro vivo de tubo redondo, una costura.</translation>
    </message>
    <message>
        <source>Short way past the bench with a blade in it, from one tee to another.</source>
        <translation>Paso corto que evita el banco, con una compuerta dentro, de una te a otra.</translation>
    </message>
    <message>
        <source>Shut where unjoined</source>
        <translation>Cerrado donde no hay unión</translation>
    </message>
    <message>
        <source>Side-mounted inducer</source>
        <translation>Inductor lateral</translation>
    </message>
    <message>
        <source>Single-wall pipe</source>
        <translation>Tubo de una pared</translation>
    </message>
    <message>
        <source>Single-wall stove pipe, 0.7 mm</source>
        <translation>Tubo de estufa de una pared, 0,7 mm</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Pendiente</translation>
    </message>
    <message>
        <source>Slot in the back wall.</source>
        <translation>Ranura en la pared trasera.</translation>
    </message>
    <message>
        <source>Slot share</source>
        <translation>Parte de la ranura</translation>
    </message>
    <message>
        <source>Small bench, 150 mm</source>
        <translation>Banco pequeño, 150 mm</translation>
    </message>
    <message>
        <source>Smooth elbow</source>
        <translation>Codo liso</translation>
    </message>
    <message>
        <source>Soapstone</source>
        <translation>Esteatita</translation>
    </message>
    <message>
        <source>Soil, clay or silt</source>
        <translation>Suelo, arcilla o limo</translation>
    </message>
    <message>
        <source>Soil, sand or gravel</source>
        <translation>Suelo, arena o grava</translation>
    </message>
    <message>
        <source>Spark screen</source>
        <translation>Rejilla chispera</translation>
    </message>
    <message>
        <source>Split, one summer</source>
        <translation>Partida, un verano</translation>
    </message>
    <message>
        <source>Split, two summers under cover</source>
        <translation>Partida, dos veranos a cubierto</translation>
    </message>
    <message>
        <source>Stack-top fan</source>
        <translation>Extractor en lo alto</translation>
    </message>
    <message>
        <source>Stainless steel</source>
        <translation>Acero inoxidable</translation>
    </message>
    <message>
        <source>Steel drum turned over the riser: gas turns under its lid, gives heat to the room on the way down and leaves at the foot.</source>
        <translation>Bidón de acero sobre la columna: el gas gira bajo la tapa, da calor al cuarto al bajar y sale por el pie.</translation>
    </message>
    <message>
        <source>Steel drum, 1.2 mm</source>
        <translation>Bidón de acero, 1,2 mm</translation>
    </message>
    <message>
        <source>Steel sheet, black or painted</source>
        <translation>Chapa de acero, negra o pintada</translation>
    </message>
    <message>
        <source>Stove pipe</source>
        <translation>Tubo de estufa</translation>
    </message>
    <message>
        <source>Suction measured at the heater with a gauge, on top of what the exhaust flow gives by itself.</source>
        <translation>Succión medida en la estufa, además de la que da la extracción.</translation>
    </message>
    <message>
        <source>Surface above</source>
        <translation>Superficie encima</translation>
    </message>
    <message>
        <source>Tee</source>
        <translation>Te</translation>
    </message>
    <message>
        <source>Tee before the bench</source>
        <translation>Te antes del banco</translation>
    </message>
    <message>
        <source>Tee behind the bench</source>
        <translation>Te tras el banco</translation>
    </message>
    <message>
        <source>Tee in the run with a lid on its branch: where soot and fly ash come out, and where a priming fire is lit with the lid off.</source>
        <translation>Te en el tramo con tapa en su rama: por ahí salen hollín y ceniza, y ahí se hace, sin la tapa, un fuego de cebado.</translation>
    </message>
    <message>
        <source>The floor carries</source>
        <translation>El suelo aguanta</translation>
    </message>
    <message>
        <source>The open top of a brick chimney.</source>
        <translation>La boca abierta de una chimenea de ladrillo.</translation>
    </message>
    <message>
        <source>The pipe&apos;s open top: nothing is lost beyond the free exit.</source>
        <translation>La boca abierta del tubo: no se pierde más que la salida libre.</translation>
    </message>
    <message>
        <source>Thickness of the back wall there.</source>
        <translation>Espesor de la pared trasera ahí.</translation>
    </message>
    <message>
        <source>Three-way piece at right angles; with one end capped it serves as a turn that can be opened and swept.</source>
        <translation>Pieza de tres vías en ángulo recto; con un extremo tapado sirve de giro que se abre y deshollina.</translation>
    </message>
    <message>
        <source>Three-way piece with a leaning branch: easy one way, hard the other.</source>
        <translation>Pieza de tres vías con derivación inclinada: fácil en un sentido, difícil en el otro.</translation>
    </message>
    <message>
        <source>Through the attic</source>
        <translation>Por el desván</translation>
    </message>
    <message>
        <source>Through the ceiling</source>
        <translation>Por el techo</translation>
    </message>
    <message>
        <source>Through the fan at that head; the first point of a curve stands at no flow.</source>
        <translation>Por el ventilador a esa presión; el primer punto de una curva va sin caudal.</translation>
    </message>
    <message>
        <source>Through the glazing</source>
        <translation>Por el acristalamiento</translation>
    </message>
    <message>
        <source>Through the roof</source>
        <translation>Por el tejado</translation>
    </message>
    <message>
        <source>Through the wall</source>
        <translation>Por la pared</translation>
    </message>
    <message>
        <source>To the wall</source>
        <translation>Hacia la pared</translation>
    </message>
    <message>
        <source>Tunnel wall; the ground is said below.</source>
        <translation>Pared del túnel; el terreno se indica abajo.</translation>
    </message>
    <message>
        <source>Turn 1, first quarter</source>
        <translation>Giro 1, primer cuarto</translation>
    </message>
    <message>
        <source>Turn 1, second quarter</source>
        <translation>Giro 1, segundo cuarto</translation>
    </message>
    <message>
        <source>Turn 2, first quarter</source>
        <translation>Giro 2, primer cuarto</translation>
    </message>
    <message>
        <source>Turn 2, second quarter</source>
        <translation>Giro 2, segundo cuarto</translation>
    </message>
    <message>
        <source>Turn 3, first quarter</source>
        <translation>Giro 3, primer cuarto</translation>
    </message>
    <message>
        <source>Turn 3, second quarter</source>
        <translation>Giro 3, segundo cuarto</translation>
    </message>
    <message>
        <source>Turn of a brick channel</source>
        <translation>Esquina de canal de ladrillo</translation>
    </message>
    <message>
        <source>Unburned share</source>
        <translation>Parte sin quemar</translation>
    </message>
    <message>
        <source>Under the path, first half</source>
        <translation>Bajo el pasillo, primera mitad</translation>
    </message>
    <message>
        <source>Under the path, second half</source>
        <translation>Bajo el pasillo, segunda mitad</translation>
    </message>
    <message>
        <source>Undisturbed ground under the floor: about the yearly mean of the outdoor air.</source>
        <translation>Terreno sin alterar bajo el suelo: hacia la media anual del aire exterior.</translation>
    </message>
    <message>
        <source>Upright brick tube that sticks stand in; room air comes down past them to the fire.</source>
        <translation>Tubo de ladrillo vertical con palos de pie; el aire del cuarto baja entre ellos al fuego.</translation>
    </message>
    <message>
        <source>Upright steel tube that sticks stand in; room air comes down past them to the fire.</source>
        <translation>Tubo de acero vertical con palos de pie; el aire del cuarto baja entre ellos al fuego.</translation>
    </message>
    <message>
        <source>Upwards into a riser, or straight on.</source>
        <translation>Hacia arriba a una columna, o recto.</translation>
    </message>
    <message>
        <source>Velocity heads of the bore that the fan takes while it is off: large with blades and motor in the way, near nought for a blade at the side.</source>
        <translation>Presiones dinámicas del diámetro que quita el ventilador apagado: grande con aspas y motor en medio, casi nada con un rodete al lado.</translation>
    </message>
    <message>
        <source>Velocity heads that the cap takes beyond the free exit.</source>
        <translation>Presiones dinámicas que cuesta el sombrero además de la salida libre.</translation>
    </message>
    <message>
        <source>Wall thimble</source>
        <translation>Pasamuros</translation>
    </message>
    <message>
        <source>Wanted excess air</source>
        <translation>Exceso de aire deseado</translation>
    </message>
    <message>
        <source>Water in the wood, of its weight as fired: a pin meter on a fresh split face, or the trade&apos;s words.</source>
        <translation>Agua en la leña, sobre su peso tal como se quema: medidor de púas en una cara recién partida, o las palabras del oficio.</translation>
    </message>
    <message>
        <source>Weighted flap in the stack&apos;s side that lets in room air above its set draft, so that a strong day pulls no harder at the fire.</source>
        <translation>Clapeta con contrapeso en el costado de la chimenea que deja entrar aire del cuarto por encima de su tiro fijado, para que un día fuerte no tire más del fuego.</translation>
    </message>
    <message>
        <source>What burns. Woods differ little by weight; wetness differs much.</source>
        <translation>Lo que arde. Por peso las leñas difieren poco; la humedad, mucho.</translation>
    </message>
    <message>
        <source>What is outside its wall and beyond the crack: the room, or outdoor air.</source>
        <translation>Qué hay fuera de su pared y más allá de la grieta: el cuarto, o el aire exterior.</translation>
    </message>
    <message>
        <source>What is outside its wall, and what it opens to with the lid off: the room, or outdoor air.</source>
        <translation>Qué hay fuera de su pared, y a qué se abre sin la tapa: el cuarto, o el aire exterior.</translation>
    </message>
    <message>
        <source>What is outside its wall.</source>
        <translation>Lo que hay fuera de su pared.</translation>
    </message>
    <message>
        <source>What the fan raises the pressure by at that flow and full speed.</source>
        <translation>Cuánto sube el ventilador la presión a ese caudal y plena velocidad.</translation>
    </message>
    <message>
        <source>What the flue is buried in.</source>
        <translation>En qué está enterrado el conducto.</translation>
    </message>
    <message>
        <source>What the flue lies in.</source>
        <translation>En qué está el conducto.</translation>
    </message>
    <message>
        <source>Whether a spark screen closes the opening.</source>
        <translation>Si una rejilla chispera cierra la abertura.</translation>
    </message>
    <message>
        <source>Whether the gas that leaves it flows down around it.</source>
        <translation>Si el gas que sale baja a su alrededor.</translation>
    </message>
    <message>
        <source>Whether the motor sits in the gas.</source>
        <translation>Si el motor está dentro del gas.</translation>
    </message>
    <message>
        <source>Whether the surface over it is outdoors: yes, or under the heated room: no.</source>
        <translation>Si la superficie de encima está al aire libre: sí, o bajo el cuarto calentado: no.</translation>
    </message>
    <message>
        <source>Whether there is one in the heater&apos;s room and outside every bedroom.</source>
        <translation>Si hay una en el cuarto de la estufa y fuera de cada dormitorio.</translation>
    </message>
    <message>
        <source>Which end counts as capped while nothing is joined to it.</source>
        <translation>Qué extremo cuenta como tapado mientras no tenga nada unido.</translation>
    </message>
    <message>
        <source>Which wall the outlet is in, seen from the way in.</source>
        <translation>En qué pared está la salida, vista desde la entrada.</translation>
    </message>
    <message>
        <source>Wide open above</source>
        <translation>Abierta del todo por encima de</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Ancho</translation>
    </message>
    <message>
        <source>Width of the bench or wall around the flue, across the run.</source>
        <translation>Ancho del banco o muro alrededor del conducto, de través.</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Viento</translation>
    </message>
    <message>
        <source>Wind allowance</source>
        <translation>Reserva por viento</translation>
    </message>
    <message>
        <source>Wind at the height of the cap: a weather report&apos;s figure is for 10 m over open land.</source>
        <translation>Viento a la altura del sombrero: la cifra del parte es a 10 m en campo abierto.</translation>
    </message>
    <message>
        <source>Wind pressure at the cap</source>
        <translation>Presión de viento en el sombrero</translation>
    </message>
    <message>
        <source>Wood as fired, at full burn: weigh an hour&apos;s wood, or take the usual value of the bore.</source>
        <translation>Leña tal como se quema, a pleno fuego: pese la de una hora, o tome el valor usual del diámetro.</translation>
    </message>
    <message>
        <source>Wye</source>
        <translation>Pieza en Y</translation>
    </message>
    <message>
        <source>any</source>
        <translation>cualquiera</translation>
    </message>
    <message>
        <source>attic</source>
        <translation>desván</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>banco</translation>
    </message>
    <message>
        <source>beyond validity</source>
        <translation>fuera de validez</translation>
    </message>
    <message>
        <source>bore mismatch</source>
        <translation>diámetros distintos</translation>
    </message>
    <message>
        <source>branch blows out</source>
        <translation>el ramal sopla hacia fuera</translation>
    </message>
    <message>
        <source>branch draws air</source>
        <translation>el ramal aspira aire</translation>
    </message>
    <message>
        <source>branch smokes</source>
        <translation>el ramal humea</translation>
    </message>
    <message>
        <source>can run backwards</source>
        <translation>puede ir al revés</translation>
    </message>
    <message>
        <source>cardboard</source>
        <translation>cartón</translation>
    </message>
    <message>
        <source>choke inlet</source>
        <translation>cerrar la entrada</translation>
    </message>
    <message>
        <source>clash</source>
        <translation>choque</translation>
    </message>
    <message>
        <source>crumpled newspaper</source>
        <translation>periódico arrugado</translation>
    </message>
    <message>
        <source>dry kindling</source>
        <translation>astillas secas</translation>
    </message>
    <message>
        <source>duct</source>
        <translation>conducto</translation>
    </message>
    <message>
        <source>duplicate id</source>
        <translation>identificador repetido</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>exit too hot</source>
        <translation>salida demasiado caliente</translation>
    </message>
    <message>
        <source>fan against flow</source>
        <translation>ventilador contra el gas</translation>
    </message>
    <message>
        <source>fan beyond sheet</source>
        <translation>más allá de la hoja</translation>
    </message>
    <message>
        <source>fan curve</source>
        <translation>curva del ventilador</translation>
    </message>
    <message>
        <source>fan curve rises</source>
        <translation>la curva sube</translation>
    </message>
    <message>
        <source>fan dependent</source>
        <translation>depende del ventilador</translation>
    </message>
    <message>
        <source>fan gas too hot</source>
        <translation>gas del ventilador demasiado caliente</translation>
    </message>
    <message>
        <source>fan motor too hot</source>
        <translation>motor demasiado caliente</translation>
    </message>
    <message>
        <source>fan motor wet</source>
        <translation>motor mojado</translation>
    </message>
    <message>
        <source>far</source>
        <translation>al fondo</translation>
    </message>
    <message>
        <source>flap opens</source>
        <translation>la clapeta se abre</translation>
    </message>
    <message>
        <source>floor overloaded</source>
        <translation>suelo sobrecargado</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>hueco</translation>
    </message>
    <message>
        <source>gas too fast</source>
        <translation>gas demasiado rápido</translation>
    </message>
    <message>
        <source>gas too slow</source>
        <translation>gas demasiado lento</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>suelo</translation>
    </message>
    <message>
        <source>hidden single wall</source>
        <translation>pared simple oculta</translation>
    </message>
    <message>
        <source>house suction</source>
        <translation>succión de la casa</translation>
    </message>
    <message>
        <source>in</source>
        <translation>entrada</translation>
    </message>
    <message>
        <source>joined to air</source>
        <translation>unido al aire</translation>
    </message>
    <message>
        <source>left</source>
        <translation>izquierda</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>dejado fuera</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>lazo</translation>
    </message>
    <message>
        <source>low outlet</source>
        <translation>boca baja</translation>
    </message>
    <message>
        <source>missing cleanout</source>
        <translation>falta registro de limpieza</translation>
    </message>
    <message>
        <source>narrowing</source>
        <translation>estrechamiento</translation>
    </message>
    <message>
        <source>near combustibles</source>
        <translation>cerca de lo que arde</translation>
    </message>
    <message>
        <source>never draws forward</source>
        <translation>nunca tira hacia delante</translation>
    </message>
    <message>
        <source>no</source>
        <translation>no</translation>
    </message>
    <message>
        <source>no alarm note</source>
        <translation>sin nota de alarma</translation>
    </message>
    <message>
        <source>no fire</source>
        <translation>sin fuego</translation>
    </message>
    <message>
        <source>no inlet</source>
        <translation>sin entrada</translation>
    </message>
    <message>
        <source>no outlet</source>
        <translation>sin salida</translation>
    </message>
    <message>
        <source>no pieces</source>
        <translation>sin piezas</translation>
    </message>
    <message>
        <source>on</source>
        <translation>puesta</translation>
    </message>
    <message>
        <source>open end</source>
        <translation>extremo abierto</translation>
    </message>
    <message>
        <source>out</source>
        <translation>salida</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>fuera de lo admitido</translation>
    </message>
    <message>
        <source>overdrawn</source>
        <translation>demasiado aire</translation>
    </message>
    <message>
        <source>port taken</source>
        <translation>boca ocupada</translation>
    </message>
    <message>
        <source>relation left</source>
        <translation>relación fuera de alcance</translation>
    </message>
    <message>
        <source>right</source>
        <translation>derecha</translation>
    </message>
    <message>
        <source>round figures of the building trade, no source</source>
        <translation>cifras redondas de la construcción, sin fuente</translation>
    </message>
    <message>
        <source>seat too hot</source>
        <translation>asiento demasiado caliente</translation>
    </message>
    <message>
        <source>several fires</source>
        <translation>varios fuegos</translation>
    </message>
    <message>
        <source>several inlets</source>
        <translation>varias entradas</translation>
    </message>
    <message>
        <source>several outlets</source>
        <translation>varias salidas</translation>
    </message>
    <message>
        <source>smoke leak</source>
        <translation>fuga de humo</translation>
    </message>
    <message>
        <source>through house</source>
        <translation>a través de la casa</translation>
    </message>
    <message>
        <source>unknown fan</source>
        <translation>ventilador desconocido</translation>
    </message>
    <message>
        <source>unknown material</source>
        <translation>material desconocido</translation>
    </message>
    <message>
        <source>unknown port</source>
        <translation>boca desconocida</translation>
    </message>
    <message>
        <source>unknown type</source>
        <translation>tipo desconocido</translation>
    </message>
    <message>
        <source>unknown wall</source>
        <translation>pared desconocida</translation>
    </message>
    <message>
        <source>unknown wood</source>
        <translation>leña desconocida</translation>
    </message>
    <message>
        <source>unreached</source>
        <translation>fuera del conducto</translation>
    </message>
    <message>
        <source>unsolved</source>
        <translation>sin resolver</translation>
    </message>
    <message>
        <source>wall layers</source>
        <translation>capas de la pared</translation>
    </message>
    <message>
        <source>water pools</source>
        <translation>se junta agua</translation>
    </message>
    <message>
        <source>waxed cardboard</source>
        <translation>cartón encerado</translation>
    </message>
    <message>
        <source>wet wall</source>
        <translation>pared mojada</translation>
    </message>
    <message>
        <source>wrong fall</source>
        <translation>pendiente equivocada</translation>
    </message>
    <message>
        <source>wrong kind</source>
        <translation>clase equivocada</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>sí</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>{} open</source>
        <translation>{} abierta</translation>
    </message>
    <message>
        <source>open</source>
        <translation>abierta</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Aire</translation>
    </message>
    <message>
        <source>Balance at that flow</source>
        <translation>Equilibrio a ese caudal</translation>
    </message>
    <message>
        <source>Beside the walk&apos;s own row</source>
        <translation>Junto a la fila del recorrido</translation>
    </message>
    <message>
        <source>Darcy friction factor</source>
        <translation>factor de fricción de Darcy</translation>
    </message>
    <message>
        <source>Draft before anything burns</source>
        <translation>Tiro antes de que arda nada</translation>
    </message>
    <message>
        <source>Ends of the path</source>
        <translation>Extremos del conducto</translation>
    </message>
    <message>
        <source>Ends that are open to the air</source>
        <translation>Extremos abiertos al aire</translation>
    </message>
    <message>
        <source>Film inside</source>
        <translation>Película interior</translation>
    </message>
    <message>
        <source>Film outside</source>
        <translation>Película exterior</translation>
    </message>
    <message>
        <source>Fire in the gas&apos;s way</source>
        <translation>Fuego en el camino del gas</translation>
    </message>
    <message>
        <source>From the fire to the cap</source>
        <translation>Del fuego al sombrero</translation>
    </message>
    <message>
        <source>Graetz number</source>
        <translation>número de Graetz</translation>
    </message>
    <message>
        <source>Lewis number</source>
        <translation>número de Lewis</translation>
    </message>
    <message>
        <source>Nusselt number across a cylinder</source>
        <translation>número de Nusselt a través de un cilindro</translation>
    </message>
    <message>
        <source>Nusselt number of free convection on a level cylinder</source>
        <translation>número de Nusselt de convección libre en un cilindro tumbado</translation>
    </message>
    <message>
        <source>Nusselt number of free convection on a seat facing up</source>
        <translation>número de Nusselt de convección libre en un asiento hacia arriba</translation>
    </message>
    <message>
        <source>Nusselt number of free convection on an upright wall</source>
        <translation>número de Nusselt de convección libre en una pared vertical</translation>
    </message>
    <message>
        <source>Nusselt number, laminar</source>
        <translation>número de Nusselt, laminar</translation>
    </message>
    <message>
        <source>Nusselt number, turbulent, far from the entry</source>
        <translation>número de Nusselt, turbulento, lejos de la entrada</translation>
    </message>
    <message>
        <source>Piece by piece</source>
        <translation>Pieza por pieza</translation>
    </message>
    <message>
        <source>Prandtl number</source>
        <translation>número de Prandtl</translation>
    </message>
    <message>
        <source>Prandtl number there</source>
        <translation>número de Prandtl ahí</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Presión</translation>
    </message>
    <message>
        <source>Rayleigh number</source>
        <translation>número de Rayleigh</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>número de Reynolds</translation>
    </message>
    <message>
        <source>Reynolds number across the pipe</source>
        <translation>número de Reynolds a través del tubo</translation>
    </message>
    <message>
        <source>S_E, it is a loss</source>
        <translation>S_E, es una pérdida</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Sección</translation>
    </message>
    <message>
        <source>Side branches</source>
        <translation>Ramales laterales</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Chimenea</translation>
    </message>
    <message>
        <source>Stretch by stretch</source>
        <translation>Tramo por tramo</translation>
    </message>
    <message>
        <source>The whole piece</source>
        <translation>Toda la pieza</translation>
    </message>
    <message>
        <source>What flows in this branch</source>
        <translation>Lo que corre por este ramal</translation>
    </message>
    <message>
        <source>Wood and fire</source>
        <translation>Leña y fuego</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>presión absoluta</translation>
    </message>
    <message>
        <source>acceleration in the piece</source>
        <translation>aceleración en la pieza</translation>
    </message>
    <message>
        <source>added over its slices</source>
        <translation>sumado en sus cortes</translation>
    </message>
    <message>
        <source>added over the branch&apos;s slices</source>
        <translation>sumado en los cortes del ramal</translation>
    </message>
    <message>
        <source>added over the piece&apos;s slices</source>
        <translation>sumado en los cortes de la pieza</translation>
    </message>
    <message>
        <source>air does not radiate</source>
        <translation>el aire no radia</translation>
    </message>
    <message>
        <source>air that comes in</source>
        <translation>aire que entra</translation>
    </message>
    <message>
        <source>air that reaches the fire</source>
        <translation>aire que llega al fuego</translation>
    </message>
    <message>
        <source>all that lies behind the inner face</source>
        <translation>todo lo que hay tras la cara interior</translation>
    </message>
    <message>
        <source>allowance for wind</source>
        <translation>reserva por viento</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>altitud</translation>
    </message>
    <message>
        <source>area over perimeter of the seat</source>
        <translation>área entre perímetro del asiento</translation>
    </message>
    <message>
        <source>argon by volume</source>
        <translation>argón en volumen</translation>
    </message>
    <message>
        <source>as it has mixed where the branches meet, by the balance of each gas</source>
        <translation>tal como se ha mezclado donde se juntan los ramales, por el balance de cada gas</translation>
    </message>
    <message>
        <source>as the slice before leaves it</source>
        <translation>como lo deja el corte anterior</translation>
    </message>
    <message>
        <source>as wanted</source>
        <translation>como se desea</translation>
    </message>
    <message>
        <source>ash, share of the dry wood</source>
        <translation>ceniza, parte de la leña seca</translation>
    </message>
    <message>
        <source>behind the junction</source>
        <translation>tras la unión</translation>
    </message>
    <message>
        <source>between laminar and turbulent</source>
        <translation>entre laminar y turbulento</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>hoja</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>diámetro</translation>
    </message>
    <message>
        <source>bore that the resistances refer to</source>
        <translation>diámetro al que se refieren las resistencias</translation>
    </message>
    <message>
        <source>both together</source>
        <translation>las dos juntas</translation>
    </message>
    <message>
        <source>buoyancy</source>
        <translation>tiro natural</translation>
    </message>
    <message>
        <source>buoyancy in the piece</source>
        <translation>tiro natural en la pieza</translation>
    </message>
    <message>
        <source>buoyancy of the air that stands in it</source>
        <translation>tiro natural del aire que hay dentro</translation>
    </message>
    <message>
        <source>by polynomial</source>
        <translation>por polinomio</translation>
    </message>
    <message>
        <source>by polynomial, from the enthalpies at both ends</source>
        <translation>por polinomio, de las entalpías en ambos extremos</translation>
    </message>
    <message>
        <source>by polynomial, mixed by mole fraction</source>
        <translation>por polinomio, mezclado por fracción molar</translation>
    </message>
    <message>
        <source>by polynomial, of the gas the branch carries</source>
        <translation>por polinomio, del gas que lleva el ramal</translation>
    </message>
    <message>
        <source>by polynomial: (h(T_in) - h(T_L)) / (T_in - T_L)</source>
        <translation>por polinomio: (h(T_in) - h(T_L)) / (T_in - T_L)</translation>
    </message>
    <message>
        <source>by polynomial: (h(T_in) - h(T_out)) / (T_in - T_out)</source>
        <translation>por polinomio: (h(T_in) - h(T_out)) / (T_in - T_out)</translation>
    </message>
    <message>
        <source>by polynomial: the temperature at which the gas holds that enthalpy</source>
        <translation>por polinomio: la temperatura a la que el gas tiene esa entalpía</translation>
    </message>
    <message>
        <source>by polynomial: the temperature at which the mixed gas holds that enthalpy</source>
        <translation>por polinomio: la temperatura a la que la mezcla tiene esa entalpía</translation>
    </message>
    <message>
        <source>by polynomial: weighted sum of grey gases</source>
        <translation>por polinomio: suma ponderada de gases grises</translation>
    </message>
    <message>
        <source>by table</source>
        <translation>por tabla</translation>
    </message>
    <message>
        <source>by the published equation</source>
        <translation>por la ecuación publicada</translation>
    </message>
    <message>
        <source>by the same polynomial at T_w</source>
        <translation>por el mismo polinomio a T_w</translation>
    </message>
    <message>
        <source>carbon dioxide by volume</source>
        <translation>dióxido de carbono en volumen</translation>
    </message>
    <message>
        <source>carbon in a kilogram of wood, and the CO2 it makes</source>
        <translation>carbono en un kilogramo de leña, y el CO2 que da</translation>
    </message>
    <message>
        <source>carbon, share of the dry, ash-free wood</source>
        <translation>carbono, parte de la leña seca y sin ceniza</translation>
    </message>
    <message>
        <source>centre line under the surface</source>
        <translation>eje bajo la superficie</translation>
    </message>
    <message>
        <source>conduction shape factor, per metre of run</source>
        <translation>factor de forma de la conducción, por metro de tramo</translation>
    </message>
    <message>
        <source>conductivity</source>
        <translation>conductividad</translation>
    </message>
    <message>
        <source>conductivity there</source>
        <translation>conductividad ahí</translation>
    </message>
    <message>
        <source>convective film</source>
        <translation>película convectiva</translation>
    </message>
    <message>
        <source>density</source>
        <translation>densidad</translation>
    </message>
    <message>
        <source>density of dry air there</source>
        <translation>densidad del aire seco ahí</translation>
    </message>
    <message>
        <source>density of the outdoor air</source>
        <translation>densidad del aire exterior</translation>
    </message>
    <message>
        <source>density of the room air</source>
        <translation>densidad del aire del cuarto</translation>
    </message>
    <message>
        <source>density of vapour alone there</source>
        <translation>densidad del vapor solo ahí</translation>
    </message>
    <message>
        <source>density on entering</source>
        <translation>densidad al entrar</translation>
    </message>
    <message>
        <source>density on leaving</source>
        <translation>densidad al salir</translation>
    </message>
    <message>
        <source>density there</source>
        <translation>densidad ahí</translation>
    </message>
    <message>
        <source>depth with the film turned into cover</source>
        <translation>profundidad con la película convertida en cobertura</translation>
    </message>
    <message>
        <source>diameter over that length</source>
        <translation>diámetro en esa longitud</translation>
    </message>
    <message>
        <source>diffusivity of vapour there</source>
        <translation>difusividad del vapor ahí</translation>
    </message>
    <message>
        <source>draft to spare</source>
        <translation>tiro de sobra</translation>
    </message>
    <message>
        <source>draft to spare while the fans run</source>
        <translation>tiro de sobra con los ventiladores en marcha</translation>
    </message>
    <message>
        <source>dry air that just burns a kilogram of wood</source>
        <translation>aire seco que quema justo un kilogramo de leña</translation>
    </message>
    <message>
        <source>dry, ash-free share of the wood as fired</source>
        <translation>parte seca y sin ceniza de la leña tal como se quema</translation>
    </message>
    <message>
        <source>emissivity of the gas</source>
        <translation>emisividad del gas</translation>
    </message>
    <message>
        <source>emissivity of the outer face</source>
        <translation>emisividad de la cara exterior</translation>
    </message>
    <message>
        <source>emissivity of the sooted wall</source>
        <translation>emisividad de la pared con hollín</translation>
    </message>
    <message>
        <source>enthalpy of the air that came in</source>
        <translation>entalpía del aire que entró</translation>
    </message>
    <message>
        <source>enthalpy of the flue gas</source>
        <translation>entalpía del gas de humos</translation>
    </message>
    <message>
        <source>enthalpy of the gas that leaves</source>
        <translation>entalpía del gas que sale</translation>
    </message>
    <message>
        <source>enthalpy of what has mixed</source>
        <translation>entalpía de lo mezclado</translation>
    </message>
    <message>
        <source>excess air</source>
        <translation>exceso de aire</translation>
    </message>
    <message>
        <source>excess-air ratio</source>
        <translation>relación de exceso de aire</translation>
    </message>
    <message>
        <source>fall of the gas&apos;s temperature</source>
        <translation>caída de la temperatura del gas</translation>
    </message>
    <message>
        <source>film inside</source>
        <translation>película interior</translation>
    </message>
    <message>
        <source>film inside as a resistance</source>
        <translation>película interior como resistencia</translation>
    </message>
    <message>
        <source>film of its radiation</source>
        <translation>película de su radiación</translation>
    </message>
    <message>
        <source>film of the gas around the riser</source>
        <translation>película del gas alrededor de la columna</translation>
    </message>
    <message>
        <source>film of the gas&apos;s radiation</source>
        <translation>película de la radiación del gas</translation>
    </message>
    <message>
        <source>film of the wind</source>
        <translation>película del viento</translation>
    </message>
    <message>
        <source>film on the ground</source>
        <translation>película al suelo</translation>
    </message>
    <message>
        <source>film outside</source>
        <translation>película exterior</translation>
    </message>
    <message>
        <source>film outside, on the inner face</source>
        <translation>película exterior, referida a la cara interior</translation>
    </message>
    <message>
        <source>flow of the exhaust fans</source>
        <translation>caudal de los extractores</translation>
    </message>
    <message>
        <source>flow through it reduced to full speed</source>
        <translation>caudal que lo atraviesa referido a plena velocidad</translation>
    </message>
    <message>
        <source>flow through the fan</source>
        <translation>caudal por el ventilador</translation>
    </message>
    <message>
        <source>flue gas</source>
        <translation>gas de humos</translation>
    </message>
    <message>
        <source>flue gas of a kilogram of wood</source>
        <translation>gas de humos de un kilogramo de leña</translation>
    </message>
    <message>
        <source>flue gas that leaves it</source>
        <translation>gas de humos que lo deja</translation>
    </message>
    <message>
        <source>forced film</source>
        <translation>película forzada</translation>
    </message>
    <message>
        <source>found by repetition; it comes back at the end of the heat</source>
        <translation>hallado por repetición; vuelve al final del calor</translation>
    </message>
    <message>
        <source>free area</source>
        <translation>área libre</translation>
    </message>
    <message>
        <source>free area before the step</source>
        <translation>área libre antes del salto</translation>
    </message>
    <message>
        <source>free film</source>
        <translation>película libre</translation>
    </message>
    <message>
        <source>friction and fittings in the piece</source>
        <translation>rozamiento y piezas en la pieza</translation>
    </message>
    <message>
        <source>from gas to surroundings</source>
        <translation>del gas al entorno</translation>
    </message>
    <message>
        <source>from the balance of flows and pressures</source>
        <translation>del balance de caudales y presiones</translation>
    </message>
    <message>
        <source>gas above that level on entering</source>
        <translation>gas sobre ese nivel al entrar</translation>
    </message>
    <message>
        <source>gas above the wall&apos;s inner face</source>
        <translation>gas sobre la cara interior de la pared</translation>
    </message>
    <message>
        <source>gas at the cap</source>
        <translation>gas en el sombrero</translation>
    </message>
    <message>
        <source>gas behind the fire</source>
        <translation>gas tras el fuego</translation>
    </message>
    <message>
        <source>gas constant of that air</source>
        <translation>constante de ese aire</translation>
    </message>
    <message>
        <source>gas constant of the gas</source>
        <translation>constante del gas</translation>
    </message>
    <message>
        <source>gas density for which its sheet holds</source>
        <translation>densidad del gas para la que vale su hoja</translation>
    </message>
    <message>
        <source>gas in the branch</source>
        <translation>gas en el ramal</translation>
    </message>
    <message>
        <source>gas that comes in, as it has mixed</source>
        <translation>gas que entra, tal como se ha mezclado</translation>
    </message>
    <message>
        <source>gas that enters the slice</source>
        <translation>gas que entra en el corte</translation>
    </message>
    <message>
        <source>gas that goes out</source>
        <translation>gas que sale fuera</translation>
    </message>
    <message>
        <source>gas that leaves it</source>
        <translation>gas que la deja</translation>
    </message>
    <message>
        <source>gas that leaves the branch</source>
        <translation>gas que deja el ramal</translation>
    </message>
    <message>
        <source>gas that leaves the piece</source>
        <translation>gas que deja la pieza</translation>
    </message>
    <message>
        <source>gas that leaves the slice</source>
        <translation>gas que deja el corte</translation>
    </message>
    <message>
        <source>gas that leaves the slice, as the walk has it</source>
        <translation>gas que deja el corte, según el recorrido</translation>
    </message>
    <message>
        <source>gas that passes</source>
        <translation>gas que pasa</translation>
    </message>
    <message>
        <source>gas, mean over the slice</source>
        <translation>gas, media en el corte</translation>
    </message>
    <message>
        <source>gauge and velocity head on entering</source>
        <translation>presión relativa y dinámica al entrar</translation>
    </message>
    <message>
        <source>gauge of the room at that height</source>
        <translation>presión relativa del cuarto a esa altura</translation>
    </message>
    <message>
        <source>gauge of the room at the inlet</source>
        <translation>presión relativa del cuarto en la entrada</translation>
    </message>
    <message>
        <source>gauge of the wind at the cap</source>
        <translation>presión relativa del viento en el sombrero</translation>
    </message>
    <message>
        <source>gauge pressure on leaving</source>
        <translation>presión relativa al salir</translation>
    </message>
    <message>
        <source>head of the sheet at that flow</source>
        <translation>presión de la hoja a ese caudal</translation>
    </message>
    <message>
        <source>heat added to the gas</source>
        <translation>calor añadido al gas</translation>
    </message>
    <message>
        <source>heat capacity</source>
        <translation>calor específico</translation>
    </message>
    <message>
        <source>heat capacity there</source>
        <translation>calor específico ahí</translation>
    </message>
    <message>
        <source>heat capacity, mean from T_L to T_in</source>
        <translation>calor específico, media de T_L a T_in</translation>
    </message>
    <message>
        <source>heat capacity, mean over the piece</source>
        <translation>calor específico, media en la pieza</translation>
    </message>
    <message>
        <source>heat capacity, mean over the slice</source>
        <translation>calor específico, media en el corte</translation>
    </message>
    <message>
        <source>heat put in by the riser within</source>
        <translation>calor que pone la columna de dentro</translation>
    </message>
    <message>
        <source>heat released</source>
        <translation>calor liberado</translation>
    </message>
    <message>
        <source>heat that leaves with the gas, above the air that came in</source>
        <translation>calor que se va con el gas, sobre el aire que entró</translation>
    </message>
    <message>
        <source>heat the gas loses</source>
        <translation>calor que pierde el gas</translation>
    </message>
    <message>
        <source>heat the gas loses in the branch</source>
        <translation>calor que pierde el gas en el ramal</translation>
    </message>
    <message>
        <source>heat the gas loses in the piece</source>
        <translation>calor que pierde el gas en la pieza</translation>
    </message>
    <message>
        <source>heat through its walls</source>
        <translation>calor por sus paredes</translation>
    </message>
    <message>
        <source>heat through the inner face</source>
        <translation>calor por la cara interior</translation>
    </message>
    <message>
        <source>heat through the wall</source>
        <translation>calor por la pared</translation>
    </message>
    <message>
        <source>heat through the wall, as the walk has it</source>
        <translation>calor por la pared, según el recorrido</translation>
    </message>
    <message>
        <source>height</source>
        <translation>altura</translation>
    </message>
    <message>
        <source>height of the chamber</source>
        <translation>altura de la cámara</translation>
    </message>
    <message>
        <source>height of the inlet above the floor</source>
        <translation>altura de la entrada sobre el suelo</translation>
    </message>
    <message>
        <source>height of the mass</source>
        <translation>altura de la masa</translation>
    </message>
    <message>
        <source>height of the slice&apos;s end above the floor</source>
        <translation>altura del fin del corte sobre el suelo</translation>
    </message>
    <message>
        <source>height of the wall</source>
        <translation>altura de la pared</translation>
    </message>
    <message>
        <source>how warm it is there</source>
        <translation>qué temperatura hay ahí</translation>
    </message>
    <message>
        <source>hydraulic diameter</source>
        <translation>diámetro hidráulico</translation>
    </message>
    <message>
        <source>hydrogen, likewise</source>
        <translation>hidrógeno, igual</translation>
    </message>
    <message>
        <source>inner face above the dew point: wet where this is not positive</source>
        <translation>cara interior sobre el punto de rocío: mojada donde no es positivo</translation>
    </message>
    <message>
        <source>inner face of the wall</source>
        <translation>cara interior de la pared</translation>
    </message>
    <message>
        <source>inner face, as the walk has it</source>
        <translation>cara interior, según el recorrido</translation>
    </message>
    <message>
        <source>inside diameter of the jacket</source>
        <translation>diámetro interior de la camisa</translation>
    </message>
    <message>
        <source>its gas there</source>
        <translation>su gas ahí</translation>
    </message>
    <message>
        <source>its partial pressure here</source>
        <translation>su presión parcial aquí</translation>
    </message>
    <message>
        <source>its temperature</source>
        <translation>su temperatura</translation>
    </message>
    <message>
        <source>layers of the wall</source>
        <translation>capas de la pared</translation>
    </message>
    <message>
        <source>length of the slice</source>
        <translation>longitud del corte</translation>
    </message>
    <message>
        <source>level the gas tends to</source>
        <translation>nivel al que tiende el gas</translation>
    </message>
    <message>
        <source>linear between the material&apos;s points</source>
        <translation>lineal entre los puntos del material</translation>
    </message>
    <message>
        <source>loss at the mouth: the jet&apos;s velocity head, not in dp</source>
        <translation>pérdida en la boca: presión dinámica del chorro, no en dp</translation>
    </message>
    <message>
        <source>loss by acceleration</source>
        <translation>pérdida por aceleración</translation>
    </message>
    <message>
        <source>loss: acceleration</source>
        <translation>pérdida: aceleración</translation>
    </message>
    <message>
        <source>loss: acceleration of the gas, negative where it cools</source>
        <translation>pérdida: aceleración del gas, negativa donde se enfría</translation>
    </message>
    <message>
        <source>loss: blade</source>
        <translation>pérdida: hoja</translation>
    </message>
    <message>
        <source>loss: fittings, steps, entry and exit</source>
        <translation>pérdida: piezas, saltos, entrada y salida</translation>
    </message>
    <message>
        <source>loss: fittings, steps, entry and exit, and the junction before it</source>
        <translation>pérdida: piezas, saltos, entrada y salida, y la unión anterior</translation>
    </message>
    <message>
        <source>loss: friction</source>
        <translation>pérdida: rozamiento</translation>
    </message>
    <message>
        <source>loss: rain cap</source>
        <translation>pérdida: sombrero de lluvia</translation>
    </message>
    <message>
        <source>loss: rim, when air comes down</source>
        <translation>pérdida: borde, cuando baja aire</translation>
    </message>
    <message>
        <source>loss: step in area</source>
        <translation>pérdida: salto de área</translation>
    </message>
    <message>
        <source>losses together</source>
        <translation>pérdidas juntas</translation>
    </message>
    <message>
        <source>mass flux</source>
        <translation>flujo másico</translation>
    </message>
    <message>
        <source>mass transfer coefficient</source>
        <translation>coeficiente de transferencia de masa</translation>
    </message>
    <message>
        <source>mean beam length</source>
        <translation>longitud media de haz</translation>
    </message>
    <message>
        <source>mean of the slices around it, walked through until both agree</source>
        <translation>media de los cortes vecinos, recorrida hasta que ambos coinciden</translation>
    </message>
    <message>
        <source>measured suction of the house</source>
        <translation>succión medida de la casa</translation>
    </message>
    <message>
        <source>midway between gas and wall</source>
        <translation>a medio camino entre gas y pared</translation>
    </message>
    <message>
        <source>midway between outer face and surroundings</source>
        <translation>a medio camino entre cara exterior y entorno</translation>
    </message>
    <message>
        <source>moist air, with the vapour it brings</source>
        <translation>aire húmedo, con el vapor que trae</translation>
    </message>
    <message>
        <source>moisture, share of the wood as fired</source>
        <translation>humedad, parte de la leña tal como se quema</translation>
    </message>
    <message>
        <source>molar mass of dry air</source>
        <translation>masa molar del aire seco</translation>
    </message>
    <message>
        <source>molar mass of the flue gas</source>
        <translation>masa molar del gas de humos</translation>
    </message>
    <message>
        <source>molar mass of the gas</source>
        <translation>masa molar del gas</translation>
    </message>
    <message>
        <source>molar mass of the moist air</source>
        <translation>masa molar del aire húmedo</translation>
    </message>
    <message>
        <source>net heating value as fired</source>
        <translation>poder calorífico tal como se quema</translation>
    </message>
    <message>
        <source>net heating value of the dry, ash-free wood</source>
        <translation>poder calorífico de la leña seca y sin ceniza</translation>
    </message>
    <message>
        <source>neutral plane above the floor</source>
        <translation>plano neutro sobre el suelo</translation>
    </message>
    <message>
        <source>nitrogen by volume</source>
        <translation>nitrógeno en volumen</translation>
    </message>
    <message>
        <source>nitrogen in the wood</source>
        <translation>nitrógeno en la leña</translation>
    </message>
    <message>
        <source>nitrogen, likewise</source>
        <translation>nitrógeno, igual</translation>
    </message>
    <message>
        <source>none of its own</source>
        <translation>ninguna propia</translation>
    </message>
    <message>
        <source>number of transfer units of the slice</source>
        <translation>número de unidades de transferencia del corte</translation>
    </message>
    <message>
        <source>outer face</source>
        <translation>cara exterior</translation>
    </message>
    <message>
        <source>outer face above T_b</source>
        <translation>cara exterior sobre T_b</translation>
    </message>
    <message>
        <source>outer face above it</source>
        <translation>cara exterior por encima</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>diámetro exterior</translation>
    </message>
    <message>
        <source>outside diameter of the core</source>
        <translation>diámetro exterior del núcleo</translation>
    </message>
    <message>
        <source>overall coefficient on the inner face</source>
        <translation>coeficiente global sobre la cara interior</translation>
    </message>
    <message>
        <source>overall coefficient, as the walk has it</source>
        <translation>coeficiente global, según el recorrido</translation>
    </message>
    <message>
        <source>oxygen by volume</source>
        <translation>oxígeno en volumen</translation>
    </message>
    <message>
        <source>oxygen in dry air by volume</source>
        <translation>oxígeno del aire seco en volumen</translation>
    </message>
    <message>
        <source>oxygen needed from the air</source>
        <translation>oxígeno que debe dar el aire</translation>
    </message>
    <message>
        <source>oxygen, likewise</source>
        <translation>oxígeno, igual</translation>
    </message>
    <message>
        <source>partial pressure of the CO2 that the fire has put into it</source>
        <translation>presión parcial del CO2 que ha puesto el fuego</translation>
    </message>
    <message>
        <source>partial pressure of the vapour</source>
        <translation>presión parcial del vapor</translation>
    </message>
    <message>
        <source>partial pressure of the vapour that the fire has put into it</source>
        <translation>presión parcial del vapor que ha puesto el fuego</translation>
    </message>
    <message>
        <source>path above room: smoke leaks out where this is positive</source>
        <translation>conducto sobre cuarto: sale humo donde es positivo</translation>
    </message>
    <message>
        <source>perimeter that gives heat away</source>
        <translation>perímetro que da calor</translation>
    </message>
    <message>
        <source>perimeter that gives heat away: the outer one</source>
        <translation>perímetro que da calor: el exterior</translation>
    </message>
    <message>
        <source>rain cap</source>
        <translation>sombrero de lluvia</translation>
    </message>
    <message>
        <source>raised by fans</source>
        <translation>subido por ventiladores</translation>
    </message>
    <message>
        <source>raised by its fan</source>
        <translation>subido por su ventilador</translation>
    </message>
    <message>
        <source>raised by the fan</source>
        <translation>subido por el ventilador</translation>
    </message>
    <message>
        <source>raised by the fan of the piece</source>
        <translation>subido por el ventilador de la pieza</translation>
    </message>
    <message>
        <source>relative humidity of the outdoor air</source>
        <translation>humedad relativa del aire exterior</translation>
    </message>
    <message>
        <source>relative humidity of the room air</source>
        <translation>humedad relativa del aire del cuarto</translation>
    </message>
    <message>
        <source>relative roughness</source>
        <translation>rugosidad relativa</translation>
    </message>
    <message>
        <source>resistance of friction and fittings</source>
        <translation>resistencia de rozamiento y piezas</translation>
    </message>
    <message>
        <source>rim, when air comes down</source>
        <translation>borde, cuando baja aire</translation>
    </message>
    <message>
        <source>rise of the slice</source>
        <translation>subida del corte</translation>
    </message>
    <message>
        <source>rise of the stretch</source>
        <translation>subida del tramo</translation>
    </message>
    <message>
        <source>rough and turbulent part</source>
        <translation>parte rugosa y turbulenta</translation>
    </message>
    <message>
        <source>roughness</source>
        <translation>rugosidad</translation>
    </message>
    <message>
        <source>safety on the acceleration</source>
        <translation>seguridad sobre la aceleración</translation>
    </message>
    <message>
        <source>safety on the resistance</source>
        <translation>seguridad sobre la resistencia</translation>
    </message>
    <message>
        <source>saturation pressure at T_o</source>
        <translation>presión de saturación a T_o</translation>
    </message>
    <message>
        <source>saturation pressure at T_r</source>
        <translation>presión de saturación a T_r</translation>
    </message>
    <message>
        <source>saturation pressure at the wall</source>
        <translation>presión de saturación en la pared</translation>
    </message>
    <message>
        <source>share of the heat that leaves unburned</source>
        <translation>parte del calor que se va sin quemar</translation>
    </message>
    <message>
        <source>share of the mass&apos;s outline that faces the room</source>
        <translation>parte del contorno de la masa que da al cuarto</translation>
    </message>
    <message>
        <source>share of the vapour that has not condensed before</source>
        <translation>parte del vapor que no se ha condensado antes</translation>
    </message>
    <message>
        <source>share of the wall&apos;s radiation that the gas absorbs</source>
        <translation>parte de la radiación de la pared que absorbe el gas</translation>
    </message>
    <message>
        <source>side of the square of equal area</source>
        <translation>lado del cuadrado de igual área</translation>
    </message>
    <message>
        <source>speed of the fan, of its full speed</source>
        <translation>velocidad del ventilador, de la plena</translation>
    </message>
    <message>
        <source>standing draft; negative: air comes down the stack</source>
        <translation>tiro en reposo; negativo: baja aire por la chimenea</translation>
    </message>
    <message>
        <source>step to a wider area, on the narrow head</source>
        <translation>salto a un área mayor, con la presión dinámica estrecha</translation>
    </message>
    <message>
        <source>suction by the exhaust fans</source>
        <translation>succión de los extractores</translation>
    </message>
    <message>
        <source>suction of the house</source>
        <translation>succión de la casa</translation>
    </message>
    <message>
        <source>surface of the seat over the inner face</source>
        <translation>superficie del asiento entre la cara interior</translation>
    </message>
    <message>
        <source>surface that gives heat away</source>
        <translation>superficie que da calor</translation>
    </message>
    <message>
        <source>temperature of the gas that leaves</source>
        <translation>temperatura del gas que sale</translation>
    </message>
    <message>
        <source>temperature of the outdoor air</source>
        <translation>temperatura del aire exterior</translation>
    </message>
    <message>
        <source>temperature of the room air</source>
        <translation>temperatura del aire del cuarto</translation>
    </message>
    <message>
        <source>the T_m set out with</source>
        <translation>el T_m con que se empezó</translation>
    </message>
    <message>
        <source>the air around it</source>
        <translation>el aire de alrededor</translation>
    </message>
    <message>
        <source>the air mdot_a, before the fire</source>
        <translation>el aire mdot_a, antes del fuego</translation>
    </message>
    <message>
        <source>the dT_s set out with</source>
        <translation>el dT_s con que se empezó</translation>
    </message>
    <message>
        <source>the dT_w set out with</source>
        <translation>el dT_w con que se empezó</translation>
    </message>
    <message>
        <source>the flue gas mdot_g</source>
        <translation>el gas de humos mdot_g</translation>
    </message>
    <message>
        <source>the gas around the riser</source>
        <translation>el gas alrededor de la columna</translation>
    </message>
    <message>
        <source>the same by mass, stoichiometric air</source>
        <translation>lo mismo en masa, aire estequiométrico</translation>
    </message>
    <message>
        <source>the same on leaving</source>
        <translation>lo mismo al salir</translation>
    </message>
    <message>
        <source>the same walk with the fans at their speed</source>
        <translation>el mismo recorrido con los ventiladores a su velocidad</translation>
    </message>
    <message>
        <source>the same with the entry</source>
        <translation>lo mismo con la entrada</translation>
    </message>
    <message>
        <source>the walk repeats a slice a fixed number of times, here it was repeated to rest</source>
        <translation>el recorrido repite un corte un número fijo de veces, aquí se repitió hasta el reposo</translation>
    </message>
    <message>
        <source>the wall&apos;s own temperature</source>
        <translation>temperatura propia de la pared</translation>
    </message>
    <message>
        <source>through the walls of a side branch</source>
        <translation>por las paredes de un ramal lateral</translation>
    </message>
    <message>
        <source>through the walls of the piece</source>
        <translation>por las paredes de la pieza</translation>
    </message>
    <message>
        <source>transitional part</source>
        <translation>parte de transición</translation>
    </message>
    <message>
        <source>unbroken length of this section</source>
        <translation>longitud sin interrupción de esta sección</translation>
    </message>
    <message>
        <source>vapour in the air that feeds the fire, by volume</source>
        <translation>vapor en el aire que va al fuego, en volumen</translation>
    </message>
    <message>
        <source>vapour in the gas as it left the fire</source>
        <translation>vapor en el gas al dejar el fuego</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>velocidad</translation>
    </message>
    <message>
        <source>velocity head on entering</source>
        <translation>presión dinámica al entrar</translation>
    </message>
    <message>
        <source>velocity head on leaving</source>
        <translation>presión dinámica al salir</translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation>viscosidad</translation>
    </message>
    <message>
        <source>viscosity there</source>
        <translation>viscosidad ahí</translation>
    </message>
    <message>
        <source>volume of the house</source>
        <translation>volumen de la casa</translation>
    </message>
    <message>
        <source>water in the wood</source>
        <translation>agua en la leña</translation>
    </message>
    <message>
        <source>water made by its hydrogen</source>
        <translation>agua que da su hidrógeno</translation>
    </message>
    <message>
        <source>water that condenses in it</source>
        <translation>agua que se condensa dentro</translation>
    </message>
    <message>
        <source>water that condenses in the slice</source>
        <translation>agua que se condensa en el corte</translation>
    </message>
    <message>
        <source>water that the wall takes per surface</source>
        <translation>agua que toma la pared por superficie</translation>
    </message>
    <message>
        <source>water vapour by volume</source>
        <translation>vapor de agua en volumen</translation>
    </message>
    <message>
        <source>wetted perimeter</source>
        <translation>perímetro mojado</translation>
    </message>
    <message>
        <source>what drives the gas</source>
        <translation>lo que impulsa al gas</translation>
    </message>
    <message>
        <source>what flows in this branch</source>
        <translation>lo que corre por este ramal</translation>
    </message>
    <message>
        <source>what has mixed where the branches meet</source>
        <translation>lo que se ha mezclado donde se juntan los ramales</translation>
    </message>
    <message>
        <source>what holds it back; the same, so the flow stays</source>
        <translation>lo que lo frena; lo mismo, así que el caudal se queda</translation>
    </message>
    <message>
        <source>what running fans add, and what they no longer stand in the way</source>
        <translation>lo que añaden los ventiladores en marcha, y lo que dejan de estorbar</translation>
    </message>
    <message>
        <source>what stands around it</source>
        <translation>lo que hay alrededor</translation>
    </message>
    <message>
        <source>what the last branch leaves</source>
        <translation>lo que deja el último ramal</translation>
    </message>
    <message>
        <source>what the last piece leaves</source>
        <translation>lo que deja la última pieza</translation>
    </message>
    <message>
        <source>what the piece adds to the gauge and velocity head</source>
        <translation>lo que la pieza añade a la presión relativa y dinámica</translation>
    </message>
    <message>
        <source>what the slice&apos;s wall lets through</source>
        <translation>lo que deja pasar la pared del corte</translation>
    </message>
    <message>
        <source>what the wall loses heat to</source>
        <translation>adónde pierde calor la pared</translation>
    </message>
    <message>
        <source>where drive and losses balance along the path</source>
        <translation>donde impulso y pérdidas se equilibran a lo largo del conducto</translation>
    </message>
    <message>
        <source>width</source>
        <translation>ancho</translation>
    </message>
    <message>
        <source>width of the mass</source>
        <translation>ancho de la masa</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>viento</translation>
    </message>
    <message>
        <source>wind pressure coefficient at the cap</source>
        <translation>coeficiente de presión del viento en el sombrero</translation>
    </message>
    <message>
        <source>with cp by polynomial</source>
        <translation>con cp por polinomio</translation>
    </message>
    <message>
        <source>wood burnt</source>
        <translation>leña quemada</translation>
    </message>
    <message>
        <source>curve that rises and falls only with its points: {}</source>
        <translation>curva que sube y baja solo con sus puntos: {}</translation>
    </message>
    <message>
        <source>the piece, and slice {} of {} in its middle</source>
        <translation>la pieza, y el corte {} de {} en su mitad</translation>
    </message>
    <message>
        <source>the piece, and slice {} of {} with its fan</source>
        <translation>la pieza, y el corte {} de {} con su ventilador</translation>
    </message>
    <message>
        <source>resistance of the {}, on the inner face</source>
        <translation>resistencia, referida a la cara interior: {}</translation>
    </message>
    <message>
        <source>its enthalpy, nought at {} degC</source>
        <translation>su entalpía, nula a {} °C</translation>
    </message>
    <message>
        <source>conductivity of the {} at {} degC</source>
        <translation>conductividad: {} a {} °C</translation>
    </message>
    <message>
        <source>air changes an hour at {} Pa</source>
        <translation>renovaciones de aire por hora a {} Pa</translation>
    </message>
    <message>
        <source>outside diameter of the {}</source>
        <translation>diámetro exterior: {}</translation>
    </message>
    <message>
        <source>added over its {} slices</source>
        <translation>sumado en sus {} cortes</translation>
    </message>
    <message>
        <source>the {}&apos;s own temperature</source>
        <translation>temperatura propia: {}</translation>
    </message>
    <message>
        <source>conductivity of the {}</source>
        <translation>conductividad: {}</translation>
    </message>
    <message>
        <source>what branch {} brings</source>
        <translation>lo que trae el ramal {}</translation>
    </message>
    <message>
        <source>Where branch {} ends</source>
        <translation>Donde acaba el ramal {}</translation>
    </message>
    <message>
        <source>thickness of the {}</source>
        <translation>espesor: {}</translation>
    </message>
    <message>
        <source>slice {} of {}</source>
        <translation>corte {} de {}</translation>
    </message>
    <message>
        <source>Branch {}</source>
        <translation>Ramal {}</translation>
    </message>
    <message>
        <source>loss: {}</source>
        <translation>pérdida: {}</translation>
    </message>
    <message>
        <source>0.9-1.3 m for 150-200 mm systems</source>
        <translation>0,9–1,3 m en sistemas de 150–200 mm</translation>
    </message>
    <message>
        <source>1-1.5 kg/h at 100 mm, 2-3 at 150 mm, 4-6 at 200 mm</source>
        <translation>1–1,5 kg/h con 100 mm, 2–3 con 150 mm, 4–6 con 200 mm</translation>
    </message>
    <message>
        <source>100 to 500 m³/h for fans of 150 to 200 mm</source>
        <translation>de 100 a 500 m³/h en ventiladores de 150 a 200 mm</translation>
    </message>
    <message>
        <source>100, 150 and 200 mm are the usual systems</source>
        <translation>100, 150 y 200 mm son los sistemas usuales</translation>
    </message>
    <message>
        <source>15-20 mm liner, one leaf of brick laid tight</source>
        <translation>forro de 15–20 mm, una hoja de ladrillo ceñida</translation>
    </message>
    <message>
        <source>150 mm with 50 mm of ceramic fibre</source>
        <translation>150 mm con 50 mm de fibra cerámica</translation>
    </message>
    <message>
        <source>1700-1800 kg/m3, 0.7-0.9 W/mK</source>
        <translation>1700–1800 kg/m³, 0,7–0,9 W/mK</translation>
    </message>
    <message>
        <source>18 gauge open-head drum</source>
        <translation>bidón de tapa, galga 18</translation>
    </message>
    <message>
        <source>20 gauge drum cut lengthwise</source>
        <translation>bidón de galga 20 cortado a lo largo</translation>
    </message>
    <message>
        <source>20 to 100 Pa at no flow for small flue fans, more on top of a stack</source>
        <translation>de 20 a 100 Pa sin caudal en ventiladores de humos pequeños, más en lo alto de una chimenea</translation>
    </message>
    <message>
        <source>24 gauge stove pipe</source>
        <translation>tubo de estufa, galga 24</translation>
    </message>
    <message>
        <source>26 gauge duct</source>
        <translation>conducto de aire, galga 26</translation>
    </message>
    <message>
        <source>3-2-10: IRC R1003.9 and NFPA 211, 3 ft over the roof where it comes through</source>
        <translation>3-2-10: IRC R1003.9 y NFPA 211, 3 ft sobre el tejado donde sale</translation>
    </message>
    <message>
        <source>32 mm splits, 50 mm of perlite</source>
        <translation>plaquetas de 32 mm, 50 mm de perlita</translation>
    </message>
    <message>
        <source>5 Pa was long the Canadian limit for houses with a chimney</source>
        <translation>5 Pa fue mucho tiempo el límite canadiense para casas con chimenea</translation>
    </message>
    <message>
        <source>A fire every morning and evening while outdoors follows the hour.</source>
        <translation>Un fuego cada mañana y cada tarde mientras el exterior sigue la hora.</translation>
    </message>
    <message>
        <source>ACGIH Industrial Ventilation, rain cap by gap</source>
        <translation>ACGIH Industrial Ventilation, sombrero según la holgura</translation>
    </message>
    <message>
        <source>ACGIH&apos;s table covers 0.45-1.0</source>
        <translation>la tabla de ACGIH cubre de 0,45 a 1,0</translation>
    </message>
    <message>
        <source>ASHRAE HVAC Systems &amp; Equipment, chimney chapter</source>
        <translation>ASHRAE HVAC Systems &amp; Equipment, capítulo de chimeneas</translation>
    </message>
    <message>
        <source>ASHRAE HVAC Systems &amp; Equipment, chimney chapter: open straight head 0 beyond the velocity head</source>
        <translation>ASHRAE HVAC Systems &amp; Equipment, capítulo de chimeneas: remate recto abierto 0 además de la presión dinámica</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, fired clay brick 1600 kg/m3</source>
        <translation>ASHRAE Handbook Fundamentals, ladrillo cocido 1600 kg/m³</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, loose perlite 100 kg/m3 at room temperature; twice that at 400 degC from memory</source>
        <translation>ASHRAE Handbook Fundamentals, perlita suelta 100 kg/m³ a temperatura ambiente; el doble a 400 °C de memoria</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, perlite concrete 480 kg/m3, standing in for perlite and clay slip</source>
        <translation>ASHRAE Handbook Fundamentals, hormigón de perlita 480 kg/m³, en lugar de perlita con barbotina</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, rock wool felt 100 kg/m3 at room temperature; hot values from memory</source>
        <translation>ASHRAE Handbook Fundamentals, fieltro de lana de roca 100 kg/m³ a temperatura ambiente; valores en caliente de memoria</translation>
    </message>
    <message>
        <source>Canadian practice for houses with a chimney; CSA F300:22 no longer sets it for solid fuel and asks for carbon-monoxide alarms instead</source>
        <translation>práctica canadiense para casas con chimenea; CSA F300:22 ya no la fija para combustible sólido y pide alarmas de monóxido de carbono</translation>
    </message>
    <message>
        <source>Crane TP-410 (2009), tees and wyes</source>
        <translation>Crane TP-410 (2009), tes e injertos</translation>
    </message>
    <message>
        <source>Crane TP-410, gradual contraction and enlargement</source>
        <translation>Crane TP-410, contracción y ensanchamiento graduales</translation>
    </message>
    <message>
        <source>Crane TP-410, gradual contraction and enlargement, on the diameters of equal area</source>
        <translation>Crane TP-410, contracción y ensanchamiento graduales, con los diámetros de igual área</translation>
    </message>
    <message>
        <source>Crane covers 30, 45 and 60 degrees</source>
        <translation>Crane cubre 30, 45 y 60 grados</translation>
    </message>
    <message>
        <source>EN 12524, clay or silt (1200-1800 kg/m3, 1670-2500 J/kgK)</source>
        <translation>EN 12524, arcilla o limo (1200–1800 kg/m³, 1670–2500 J/kgK)</translation>
    </message>
    <message>
        <source>EN 12524, clay roof tile, standing in for flue tile</source>
        <translation>EN 12524, teja de arcilla, en lugar de tubo de chimenea</translation>
    </message>
    <message>
        <source>EN 12524, concrete 2200 kg/m3</source>
        <translation>EN 12524, hormigón 2200 kg/m³</translation>
    </message>
    <message>
        <source>EN 12524, granite</source>
        <translation>EN 12524, granito</translation>
    </message>
    <message>
        <source>EN 12524, lime and sand plaster</source>
        <translation>EN 12524, revoco de cal y arena</translation>
    </message>
    <message>
        <source>EN 12524, sand or gravel (1700-2200 kg/m3, 910-1180 J/kgK)</source>
        <translation>EN 12524, arena o grava (1700–2200 kg/m³, 910–1180 J/kgK)</translation>
    </message>
    <message>
        <source>EN 12524, stainless steel</source>
        <translation>EN 12524, acero inoxidable</translation>
    </message>
    <message>
        <source>EN 12524, steel</source>
        <translation>EN 12524, acero</translation>
    </message>
    <message>
        <source>EN 12524, steel; held constant with temperature (a thin sheet resists next to nothing)</source>
        <translation>EN 12524, acero; constante con la temperatura (una chapa fina casi no resiste)</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, brick</source>
        <translation>EN 13384-1 tabla B.4, ladrillo</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, clay liner; salt-glazed ware is 1.4 mm (Idelchik)</source>
        <translation>EN 13384-1 tabla B.4, forro de arcilla; el gres vidriado tiene 1,4 mm (Idelchik)</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, concrete; 0.3-3 mm in Perry&apos;s Handbook</source>
        <translation>EN 13384-1 tabla B.4, hormigón; 0,3–3 mm en Perry&apos;s Handbook</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, folded metal; clean galvanised iron is 0.152 mm (Perry&apos;s Handbook)</source>
        <translation>EN 13384-1 tabla B.4, metal plegado; el hierro galvanizado limpio tiene 0,152 mm (Perry&apos;s Handbook)</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, stainless steel</source>
        <translation>EN 13384-1 tabla B.4, acero inoxidable</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, welded steel; new pipe is 0.05 mm, a season&apos;s soot makes it rougher</source>
        <translation>EN 13384-1 tabla B.4, acero soldado; el tubo nuevo tiene 0,05 mm, el hollín de una temporada lo hace más áspero</translation>
    </message>
    <message>
        <source>EN 13384-1, P_L</source>
        <translation>EN 13384-1, P_L</translation>
    </message>
    <message>
        <source>EN 13384-1, S_E</source>
        <translation>EN 13384-1, S_E</translation>
    </message>
    <message>
        <source>EN 15544 scope: tested fireboxes run at 1.95-3.95 times the air they need</source>
        <translation>ámbito de EN 15544: los hogares ensayados van con 1,95 a 3,95 veces el aire que necesitan</translation>
    </message>
    <message>
        <source>EN 15544, fireclay 2-3 mm</source>
        <translation>EN 15544, chamota 2–3 mm</translation>
    </message>
    <message>
        <source>EN 15544, gas velocity in the channels 1.2-6 m/s</source>
        <translation>EN 15544, velocidad del gas en los conductos 1,2–6 m/s</translation>
    </message>
    <message>
        <source>IRC M1803 and NFPA 211: no connector through attics and concealed spaces</source>
        <translation>IRC M1803 y NFPA 211: ningún conector por desvanes ni huecos ocultos</translation>
    </message>
    <message>
        <source>IRC R315 puts one outside every sleeping area; CSA F300:22 asks for one with all solid fuel</source>
        <translation>IRC R315 pone una fuera de cada zona de dormir; CSA F300:22 pide una con todo combustible sólido</translation>
    </message>
    <message>
        <source>IRC R315; CSA F300:22</source>
        <translation>IRC R315; CSA F300:22</translation>
    </message>
    <message>
        <source>ISO 13732-1, skin in contact for eight hours and more</source>
        <translation>ISO 13732-1, piel en contacto ocho horas o más</translation>
    </message>
    <message>
        <source>ISO 17225-1 Annex B, coniferous wood: C 51 H 6.3 O 42 N 0.1 %, 19.1 MJ/kg dry</source>
        <translation>ISO 17225-1 anexo B, coníferas: C 51 H 6,3 O 42 N 0,1 %, 19,1 MJ/kg seca</translation>
    </message>
    <message>
        <source>ISO 2533 standard atmosphere covers it</source>
        <translation>lo cubre la atmósfera normal ISO 2533</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, concrete 0.88-0.93</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, hormigón 0,88–0,93</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, fireclay brick 0.75 hot to 0.9 near room temperature</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, ladrillo refractario de 0,75 en caliente a 0,9 a temperatura ambiente</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, lightly oxidised stainless 0.22-0.35</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, inoxidable algo oxidado 0,22–0,35</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, oxidised zinc</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, cinc oxidado</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, plaster</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, yeso</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, red brick</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, ladrillo rojo</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, rock 0.88-0.95</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, roca 0,88–0,95</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, soil</source>
        <translation>Incropera &amp; DeWitt, tabla A.11, suelo</translation>
    </message>
    <message>
        <source>Kindling, then four loads one after the other; the rest of the night it cools.</source>
        <translation>Astillas, luego cuatro cargas seguidas; el resto de la noche se enfría.</translation>
    </message>
    <message>
        <source>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, fuel tables: fir mill waste; heating value by Channiwala &amp; Parikh 2002</source>
        <translation>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, tablas de combustibles: restos de aserradero de abeto; poder calorífico según Channiwala &amp; Parikh 2002</translation>
    </message>
    <message>
        <source>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, fuel tables: red oak sawdust; heating value by Channiwala &amp; Parikh 2002</source>
        <translation>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, tablas de combustibles: serrín de roble rojo; poder calorífico según Channiwala &amp; Parikh 2002</translation>
    </message>
    <message>
        <source>NFPA 211, single-wall connector</source>
        <translation>NFPA 211, conector de pared simple</translation>
    </message>
    <message>
        <source>NFPA 211: single-wall connector 18 in from combustibles</source>
        <translation>NFPA 211: conector de pared simple a 18 in de lo que arde</translation>
    </message>
    <message>
        <source>NFPA 211: unlisted appliance 36 in from combustibles</source>
        <translation>NFPA 211: aparato no certificado a 36 in de lo que arde</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7A and its note for angles</source>
        <translation>SMACNA HVAC Systems Duct Design, 4.ª ed., tabla A-7A y su nota para ángulos</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7B; other angles by A-7A&apos;s note</source>
        <translation>SMACNA HVAC Systems Duct Design, 4.ª ed., tabla A-7B; otros ángulos según la nota de A-7A</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7C, with its Reynolds correction</source>
        <translation>SMACNA HVAC Systems Duct Design, 4.ª ed., tabla A-7C, con su corrección de Reynolds</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7D, with its Reynolds correction</source>
        <translation>SMACNA HVAC Systems Duct Design, 4.ª ed., tabla A-7D, con su corrección de Reynolds</translation>
    </message>
    <message>
        <source>SMACNA Table A-7A covers 0.5-2.5</source>
        <translation>la tabla A-7A de SMACNA cubre de 0,5 a 2,5</translation>
    </message>
    <message>
        <source>SMACNA Table A-7B covers 0.75-2.0</source>
        <translation>la tabla A-7B de SMACNA cubre de 0,75 a 2,0</translation>
    </message>
    <message>
        <source>Spring start</source>
        <translation>Arranque de primavera</translation>
    </message>
    <message>
        <source>Start with a fan on top</source>
        <translation>Arranque con extractor de remate</translation>
    </message>
    <message>
        <source>Start with a side inducer</source>
        <translation>Arranque con extractor lateral</translation>
    </message>
    <message>
        <source>Start with priming</source>
        <translation>Arranque con cebado</translation>
    </message>
    <message>
        <source>The house four degrees colder than outdoors, no aid.</source>
        <translation>La casa cuatro grados más fría que el exterior, sin ayuda.</translation>
    </message>
    <message>
        <source>The same, with a priming fire at the stack&apos;s foot first.</source>
        <translation>Lo mismo, con un fuego de cebado al pie de la chimenea primero.</translation>
    </message>
    <message>
        <source>The same, with the fan on top running for the first minutes.</source>
        <translation>Lo mismo, con el extractor de remate en marcha los primeros minutos.</translation>
    </message>
    <message>
        <source>The same, with the inducer beside the stack running.</source>
        <translation>Lo mismo, con el extractor junto a la chimenea en marcha.</translation>
    </message>
    <message>
        <source>Three days of charging</source>
        <translation>Tres días de carga</translation>
    </message>
    <message>
        <source>Typical evening</source>
        <translation>Una tarde corriente</translation>
    </message>
    <message>
        <source>VDI Heat Atlas, refractories, fireclay brick, 400-1200 degC; continued in a straight line to -30 degC (chosen); specific heat that of 600 degC</source>
        <translation>VDI Heat Atlas, refractarios, ladrillo de chamota, 400–1200 °C; prolongado en recta hasta −30 °C (elegido); calor específico el de 600 °C</translation>
    </message>
    <message>
        <source>VDI Heat Atlas, refractories, insulating brick L1260, 400-1200 degC; continued in a straight line to -30 degC (chosen); specific heat that of 400 degC</source>
        <translation>VDI Heat Atlas, refractarios, ladrillo aislante L1260, 400–1200 °C; prolongado en recta hasta −30 °C (elegido); calor específico el de 400 °C</translation>
    </message>
    <message>
        <source>Weisbach, in Idelchik; nearly shut as a sharp-edged restriction</source>
        <translation>Weisbach, en Idelchik; casi cerrada como estrechamiento de canto vivo</translation>
    </message>
    <message>
        <source>a 200 litre drum is 572 mm wide</source>
        <translation>un bidón de 200 litros mide 572 mm de ancho</translation>
    </message>
    <message>
        <source>a 200 litre drum is 850-890 mm high</source>
        <translation>un bidón de 200 litros mide 850–890 mm de alto</translation>
    </message>
    <message>
        <source>a J-shaped heater</source>
        <translation>una estufa en J</translation>
    </message>
    <message>
        <source>a barrel over the riser</source>
        <translation>un bidón sobre el columna</translation>
    </message>
    <message>
        <source>a brick</source>
        <translation>un ladrillo</translation>
    </message>
    <message>
        <source>a brick on edge</source>
        <translation>un ladrillo de canto</translation>
    </message>
    <message>
        <source>a clean hand-fed fire</source>
        <translation>un fuego limpio alimentado a mano</translation>
    </message>
    <message>
        <source>a clean screen</source>
        <translation>una rejilla limpia</translation>
    </message>
    <message>
        <source>a common square liner</source>
        <translation>un forro cuadrado corriente</translation>
    </message>
    <message>
        <source>a feed mouth two thirds covered at full burn</source>
        <translation>una boca de alimentación cubierta en dos tercios a pleno fuego</translation>
    </message>
    <message>
        <source>a flap hangs in a ring and does not seal</source>
        <translation>una clapeta cuelga en un aro y no sella</translation>
    </message>
    <message>
        <source>a flap swings with its weight&apos;s lever; no maker&apos;s curve at hand</source>
        <translation>una clapeta gira con la palanca de su peso; no hay curva de fabricante a mano</translation>
    </message>
    <message>
        <source>a heated house</source>
        <translation>una casa calentada</translation>
    </message>
    <message>
        <source>a lived-in house; a greenhouse is nearer 0.9</source>
        <translation>una casa habitada; un invernadero anda más por 0,9</translation>
    </message>
    <message>
        <source>a seat is 400-500 mm high</source>
        <translation>un asiento tiene 400–500 mm de alto</translation>
    </message>
    <message>
        <source>a seat is 450-600 mm deep</source>
        <translation>un asiento tiene 450–600 mm de fondo</translation>
    </message>
    <message>
        <source>a small to middling house</source>
        <translation>una casa de pequeña a mediana</translation>
    </message>
    <message>
        <source>a tunnel under the heated floor</source>
        <translation>un túnel bajo el suelo calentado</translation>
    </message>
    <message>
        <source>about 3.2 m2 of inside surface, what a 150 mm J-type is said to bear</source>
        <translation>unos 3,2 m² de superficie interior, lo que se dice que aguanta una estufa en J de 150 mm</translation>
    </message>
    <message>
        <source>about three times the flue&apos;s area</source>
        <translation>unas tres veces el área del conducto</translation>
    </message>
    <message>
        <source>above 60 % the wood does not keep itself burning</source>
        <translation>por encima del 60 % la leña no sigue ardiendo sola</translation>
    </message>
    <message>
        <source>adjustable stovepipe elbows have four</source>
        <translation>los codos ajustables de estufa tienen cuatro</translation>
    </message>
    <message>
        <source>against the branch&apos;s lean: the tee&apos;s coefficient times SMACNA&apos;s factor for the angle</source>
        <translation>contra la inclinación de la rama: el coeficiente de la te por el factor de SMACNA para el ángulo</translation>
    </message>
    <message>
        <source>air coming down: entry into a free pipe end, Idelchik in ASHRAE</source>
        <translation>aire que baja: entrada en un extremo libre, Idelchik en ASHRAE</translation>
    </message>
    <message>
        <source>air slots together about a quarter of the riser&apos;s area</source>
        <translation>ranuras de aire que suman cerca de un cuarto del área de la columna</translation>
    </message>
    <message>
        <source>air that joins the run: Crane TP-410 (2009), tees</source>
        <translation>aire que se suma: Crane TP-410 (2009), tes</translation>
    </message>
    <message>
        <source>an 8 m/s gust blowing down at 45 degrees was measured at 17 Pa, a coefficient of 0.44</source>
        <translation>una racha de 8 m/s hacia abajo a 45 grados dio 17 Pa medidos, un coeficiente de 0,44</translation>
    </message>
    <message>
        <source>an open mouth is usual</source>
        <translation>lo usual es una boca abierta</translation>
    </message>
    <message>
        <source>an unused end gets a cap</source>
        <translation>un extremo sin usar lleva tapa</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>como está dibujado</translation>
    </message>
    <message>
        <source>as dug</source>
        <translation>como se excava</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>como se encuentra</translation>
    </message>
    <message>
        <source>as high as the box</source>
        <translation>tan alto como la caja</translation>
    </message>
    <message>
        <source>as low as it will go</source>
        <translation>tan abajo como se pueda</translation>
    </message>
    <message>
        <source>as made</source>
        <translation>como se hace</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>como se ajusta</translation>
    </message>
    <message>
        <source>as used</source>
        <translation>como se usa</translation>
    </message>
    <message>
        <source>as wide as the box</source>
        <translation>tan ancho como la caja</translation>
    </message>
    <message>
        <source>at least 38 mm for 150 mm, 50 mm for 200 mm</source>
        <translation>al menos 38 mm con 150 mm, 50 mm con 200 mm</translation>
    </message>
    <message>
        <source>below it fly ash settles and the cap takes every gust</source>
        <translation>por debajo se posa la ceniza y el sombrero recibe cada racha</translation>
    </message>
    <message>
        <source>between 100 and 150 mm, by area</source>
        <translation>entre 100 y 150 mm, según el área</translation>
    </message>
    <message>
        <source>between 150 and 200 mm, by area</source>
        <translation>entre 150 y 200 mm, según el área</translation>
    </message>
    <message>
        <source>between the broadleaf row of ISO 17225-1 Annex B and published analyses of oak; dry wood 18.4-19.2 MJ/kg</source>
        <translation>entre la fila de frondosas de ISO 17225-1 anexo B y análisis publicados de roble; leña seca 18,4–19,2 MJ/kg</translation>
    </message>
    <message>
        <source>beyond the sheet&apos;s points, running backward and standing still: our own choice</source>
        <translation>más allá de los puntos de la hoja, al revés y parado: elección propia</translation>
    </message>
    <message>
        <source>blower-door figures as quoted in energy audits</source>
        <translation>cifras de puerta ventilador como se citan en auditorías energéticas</translation>
    </message>
    <message>
        <source>brick laid flat, one leaf</source>
        <translation>ladrillo tumbado, una hoja</translation>
    </message>
    <message>
        <source>brick laid on edge</source>
        <translation>ladrillo de canto</translation>
    </message>
    <message>
        <source>brick on edge, laid in the ground</source>
        <translation>ladrillo de canto, puesto en tierra</translation>
    </message>
    <message>
        <source>builders&apos; logs</source>
        <translation>registros de constructores</translation>
    </message>
    <message>
        <source>builders&apos; logs; wood used in a month of firing agrees</source>
        <translation>registros de constructores; la leña gastada en un mes coincide</translation>
    </message>
    <message>
        <source>cob or stone in cob is what most benches are made of</source>
        <translation>de cob, o piedra en cob, son casi todos los bancos</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>práctica común, sin fuente</translation>
    </message>
    <message>
        <source>condensate and cleanings run down: common practice, no source</source>
        <translation>el condensado y lo que se limpia bajan: práctica común, sin fuente</translation>
    </message>
    <message>
        <source>dense grade; 3-6.5 W/mK by grade</source>
        <translation>calidad densa; 3–6,5 W/mK según calidad</translation>
    </message>
    <message>
        <source>dew point of the gas against the wall (see the working)</source>
        <translation>punto de rocío del gas frente a la pared (vea el cálculo)</translation>
    </message>
    <message>
        <source>earth-building practice: 1450-1800 kg/m3, 0.5-0.9 W/mK, 850-1000 J/kgK; wet cob conducts up to twice as much</source>
        <translation>práctica de la construcción con tierra: 1450–1800 kg/m³, 0,5–0,9 W/mK, 850–1000 J/kgK; el cob mojado conduce hasta el doble</translation>
    </message>
    <message>
        <source>equivalent of a 10 mm gap: still air by Perry&apos;s fit and grey radiation between two stainless faces of emissivity 0.3; no convection at that width</source>
        <translation>equivale a un hueco de 10 mm: aire quieto según Perry y radiación gris entre dos caras de inoxidable de emisividad 0,3; sin convección a ese ancho</translation>
    </message>
    <message>
        <source>even leaks put it near mid-height</source>
        <translation>las fugas parejas lo ponen hacia media altura</translation>
    </message>
    <message>
        <source>fan laws: flow with speed, head with density and speed squared (AMCA 210, ISO 5801)</source>
        <translation>leyes de ventiladores: caudal con la velocidad, presión con la densidad y la velocidad al cuadrado (AMCA 210, ISO 5801)</translation>
    </message>
    <message>
        <source>feed : tunnel : riser about 1 : 2 : 4</source>
        <translation>alimentación : túnel : subida cerca de 1 : 2 : 4</translation>
    </message>
    <message>
        <source>felled this season</source>
        <translation>cortada esta temporada</translation>
    </message>
    <message>
        <source>flow through the crack: sharp-edged opening, ASHRAE Fundamentals, coefficient 0.6</source>
        <translation>caudal por la grieta: abertura de canto vivo, ASHRAE Fundamentals, coeficiente 0,6</translation>
    </message>
    <message>
        <source>flow through the flap: sharp-edged opening, ASHRAE Fundamentals, coefficient 0.6</source>
        <translation>caudal por la clapeta: abertura de canto vivo, ASHRAE Fundamentals, coeficiente 0,6</translation>
    </message>
    <message>
        <source>friction by Churchill (1977) on the roughness of the wall&apos;s inner face</source>
        <translation>rozamiento según Churchill (1977) con la rugosidad de la cara interior de la pared</translation>
    </message>
    <message>
        <source>half way up</source>
        <translation>a media altura</translation>
    </message>
    <message>
        <source>how a stick fire burns: common practice, no source</source>
        <translation>cómo arde un fuego de leña: práctica común, sin fuente</translation>
    </message>
    <message>
        <source>insulating brick on edge</source>
        <translation>ladrillo aislante de canto</translation>
    </message>
    <message>
        <source>invented curve of a centrifugal extractor, a parabola</source>
        <translation>curva inventada de un extractor centrífugo, una parábola</translation>
    </message>
    <message>
        <source>invented curve of a small blade that reaches in from the side</source>
        <translation>curva inventada de un rodete pequeño que entra desde el lado</translation>
    </message>
    <message>
        <source>invented curve of an ordinary 150 mm duct fan</source>
        <translation>curva inventada de un ventilador de tubo corriente de 150 mm</translation>
    </message>
    <message>
        <source>invented curve of the usual size: take the maker&apos;s</source>
        <translation>curva inventada de tamaño usual: use la del fabricante</translation>
    </message>
    <message>
        <source>lid off: entry into a free pipe end, Idelchik diagram 3-1 in SMACNA</source>
        <translation>sin tapa: entrada en un extremo libre, Idelchik diagrama 3-1 en SMACNA</translation>
    </message>
    <message>
        <source>low on the side</source>
        <translation>abajo, en el costado</translation>
    </message>
    <message>
        <source>made in the bores of the usual systems</source>
        <translation>se hacen en los diámetros de los sistemas usuales</translation>
    </message>
    <message>
        <source>masonry heaters leave the chimney at about 120 °C at most; 150 °C is well over it</source>
        <translation>las estufas de obra salen por la chimenea a unos 120 °C como mucho; 150 °C está muy por encima</translation>
    </message>
    <message>
        <source>mesh and louvre of an air inlet</source>
        <translation>malla y lamas de una toma de aire</translation>
    </message>
    <message>
        <source>most ground under houses is loam or clay</source>
        <translation>el terreno bajo las casas suele ser limo o arcilla</translation>
    </message>
    <message>
        <source>never less than the system&apos;s area</source>
        <translation>nunca menos que la sección del sistema</translation>
    </message>
    <message>
        <source>never narrower than the system&apos;s own section; a few per cent are within a sheet&apos;s play</source>
        <translation>nunca más estrecho que la sección del sistema; un pequeño tanto por ciento cabe en el juego de una chapa</translation>
    </message>
    <message>
        <source>never the face of a flue</source>
        <translation>nunca la cara de un conducto</translation>
    </message>
    <message>
        <source>no published value: idle blades and motor in the way</source>
        <translation>sin valor publicado: aspas y motor parados en medio</translation>
    </message>
    <message>
        <source>no source: read the maker&apos;s sheet</source>
        <translation>sin fuente: lea la hoja del fabricante</translation>
    </message>
    <message>
        <source>non-metallic surface</source>
        <translation>superficie no metálica</translation>
    </message>
    <message>
        <source>nothing passes it while the lid is on</source>
        <translation>con la tapa puesta no pasa nada</translation>
    </message>
    <message>
        <source>one or two storeys</source>
        <translation>uno o dos pisos</translation>
    </message>
    <message>
        <source>open end: entry into a free pipe end, Idelchik diagram 3-1 in SMACNA</source>
        <translation>extremo abierto: entrada en un extremo libre, Idelchik diagrama 3-1 en SMACNA</translation>
    </message>
    <message>
        <source>ordinary duct fans stand 40 to 60 °C, flue fans 200 to 250 °C</source>
        <translation>los ventiladores de tubo corrientes aguantan de 40 a 60 °C, los de humos de 200 a 250 °C</translation>
    </message>
    <message>
        <source>oversized so that it can be swept</source>
        <translation>sobrada, para poder deshollinar</translation>
    </message>
    <message>
        <source>oxidised or stove-painted steel, 0.8-0.95 in handbook tables</source>
        <translation>acero oxidado o con pintura de estufa, 0,8–0,95 en tablas de manuales</translation>
    </message>
    <message>
        <source>partly covered opening: Idelchik, Handbook of Hydraulic Resistance</source>
        <translation>abertura cubierta en parte: Idelchik, Handbook of Hydraulic Resistance</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 2 x base</source>
        <translation>proporciones de los planos abiertos de caja de carga, con base 0,72 del diámetro de la columna: 2 × base</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 2.2 x base</source>
        <translation>proporciones de los planos abiertos de caja de carga, con base 0,72 del diámetro de la columna: 2,2 × base</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 3 x base</source>
        <translation>proporciones de los planos abiertos de caja de carga, con base 0,72 del diámetro de la columna: 3 × base</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 4.5 x base</source>
        <translation>proporciones de los planos abiertos de caja de carga, con base 0,72 del diámetro de la columna: 4,5 × base</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: half the base</source>
        <translation>proporciones de los planos abiertos de caja de carga, con base 0,72 del diámetro de la columna: media base</translation>
    </message>
    <message>
        <source>rated flows of common devices in energy-audit manuals</source>
        <translation>caudales nominales de aparatos comunes en manuales de auditoría energética</translation>
    </message>
    <message>
        <source>residential live load of the building codes, 40 psf</source>
        <translation>sobrecarga de vivienda de los reglamentos, 40 psf</translation>
    </message>
    <message>
        <source>residential live load of the building codes, 40 psf (1.9 kPa)</source>
        <translation>sobrecarga de vivienda de los reglamentos, 40 psf (1,9 kPa)</translation>
    </message>
    <message>
        <source>rigidised blanket taken as fireclay</source>
        <translation>manta rigidizada, tomada como chamota</translation>
    </message>
    <message>
        <source>rising 1-2 cm per metre, or falling to a drain: builders do either; the building codes&apos; connector rise is a quarter inch per foot</source>
        <translation>subiendo 1–2 cm por metro, o bajando a un desagüe: se hacen ambas cosas; la pendiente de los reglamentos para conectores es un cuarto de pulgada por pie</translation>
    </message>
    <message>
        <source>rods bend round one turn and not round two</source>
        <translation>las varillas doblan un codo y no dos</translation>
    </message>
    <message>
        <source>rods come by the metre, five or six to a set</source>
        <translation>las varillas vienen de metro, cinco o seis por juego</translation>
    </message>
    <message>
        <source>sawn stone with joints, taken as fireclay</source>
        <translation>piedra aserrada con juntas, tomada como chamota</translation>
    </message>
    <message>
        <source>smoothed by hand, taken as fireclay</source>
        <translation>alisado a mano, tomado como chamota</translation>
    </message>
    <message>
        <source>soot in a screen: sharp-edged restriction, Idelchik</source>
        <translation>hollín en una rejilla: estrechamiento de canto vivo, Idelchik</translation>
    </message>
    <message>
        <source>spark screen: ASHRAE HVAC Systems &amp; Equipment, chimney chapter</source>
        <translation>rejilla parachispas: ASHRAE HVAC Systems &amp; Equipment, capítulo de chimeneas</translation>
    </message>
    <message>
        <source>standard air of AMCA 210 and ISO 5801</source>
        <translation>aire normal de AMCA 210 e ISO 5801</translation>
    </message>
    <message>
        <source>steps in area by Borda-Carnot and Idelchik, added between pieces</source>
        <translation>saltos de área según Borda-Carnot e Idelchik, añadidos entre piezas</translation>
    </message>
    <message>
        <source>stove dampers do not shut tight, many are cut out on purpose</source>
        <translation>las compuertas de estufa no cierran del todo, muchas llevan un recorte a propósito</translation>
    </message>
    <message>
        <source>stoves are tested at 12 Pa</source>
        <translation>las estufas se ensayan a 12 Pa</translation>
    </message>
    <message>
        <source>straight past a shut branch: Rennels &amp; Hudson, Pipe Flow (2012)</source>
        <translation>recto ante una rama cerrada: Rennels &amp; Hudson, Pipe Flow (2012)</translation>
    </message>
    <message>
        <source>taken as brick masonry of EN 13384-1 Table B.4</source>
        <translation>tomado como fábrica de ladrillo de EN 13384-1 tabla B.4</translation>
    </message>
    <message>
        <source>taken as fireclay brick, Incropera &amp; DeWitt, Table A.11</source>
        <translation>tomado como ladrillo refractario, Incropera &amp; DeWitt, tabla A.11</translation>
    </message>
    <message>
        <source>taken as fireclay of EN 15544</source>
        <translation>tomado como chamota de EN 15544</translation>
    </message>
    <message>
        <source>taken as masonry of EN 13384-1 Table B.4</source>
        <translation>tomado como fábrica de EN 13384-1 tabla B.4</translation>
    </message>
    <message>
        <source>tested masonry-heater fireboxes run at 1.95-3.95 (EN 15544 scope)</source>
        <translation>los hogares ensayados de estufas de obra van con 1,95–3,95 (ámbito de EN 15544)</translation>
    </message>
    <message>
        <source>that of its stainless faces</source>
        <translation>la de sus caras de inoxidable</translation>
    </message>
    <message>
        <source>the 3-2-10 practice of the building codes</source>
        <translation>la práctica 3-2-10 de los reglamentos</translation>
    </message>
    <message>
        <source>the calculation: see the working of the piece</source>
        <translation>el cálculo: vea el cálculo de la pieza</translation>
    </message>
    <message>
        <source>the code of the place says where one is wanted</source>
        <translation>la norma del lugar dice dónde se pide una</translation>
    </message>
    <message>
        <source>the drawing itself</source>
        <translation>el propio dibujo</translation>
    </message>
    <message>
        <source>the fan&apos;s data sheet against the calculation</source>
        <translation>la hoja del ventilador frente al cálculo</translation>
    </message>
    <message>
        <source>the mass around it is the wall</source>
        <translation>la masa alrededor es la pared</translation>
    </message>
    <message>
        <source>the middle of the list</source>
        <translation>el medio de la lista</translation>
    </message>
    <message>
        <source>the plume rises without loss of heat, the sinking layer fills the chamber</source>
        <translation>el penacho sube sin perder calor, la capa que baja llena la cámara</translation>
    </message>
    <message>
        <source>the square with the area of a 150 mm pipe</source>
        <translation>el cuadrado con el área de un tubo de 150 mm</translation>
    </message>
    <message>
        <source>top and front of a bench that stands on the floor against a wall</source>
        <translation>arriba y frente de un banco apoyado en el suelo contra una pared</translation>
    </message>
    <message>
        <source>trowelled, between fireclay and tile</source>
        <translation>a llana, entre chamota y tubo de arcilla</translation>
    </message>
    <message>
        <source>two turns of 25 mm blanket in a wire or tin sleeve</source>
        <translation>dos vueltas de manta de 25 mm en una camisa de alambre o chapa</translation>
    </message>
    <message>
        <source>usual close-clearance pipe</source>
        <translation>tubo usual de poca distancia</translation>
    </message>
    <message>
        <source>usual data sheet of 128 kg/m3 blanket</source>
        <translation>hoja usual de manta de 128 kg/m³</translation>
    </message>
    <message>
        <source>usual factory-built chimney</source>
        <translation>chimenea de fábrica usual</translation>
    </message>
    <message>
        <source>weather of the place</source>
        <translation>el tiempo del lugar</translation>
    </message>
    <message>
        <source>what a kiln delivers, kept indoors</source>
        <translation>lo que da un secadero, guardado bajo techo</translation>
    </message>
    <message>
        <source>what a pin meter shows on a fresh split</source>
        <translation>lo que marca un medidor de púas en un corte fresco</translation>
    </message>
    <message>
        <source>what is usually built</source>
        <translation>lo que se suele construir</translation>
    </message>
    <message>
        <source>yearly mean air temperature holds a few metres down</source>
        <translation>la media anual del aire vale a unos metros de profundidad</translation>
    </message>
    <message>
        <source>no wall is wet; the one nearest to its dew point: slice {} of {}</source>
        <translation>ninguna pared está mojada; la más cercana a su punto de rocío: corte {} de {}</translation>
    </message>
    <message>
        <source>where walls begin to be wet: slice {} of {}</source>
        <translation>donde empiezan a mojarse las paredes: corte {} de {}</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>arranca</translation>
    </message>
    <message>
        <source>draws alone from</source>
        <translation>tira solo desde</translation>
    </message>
    <message>
        <source>smoke</source>
        <translation>humo</translation>
    </message>
    <message>
        <source>motor / rated</source>
        <translation>motor / admitido</translation>
    </message>
    <message>
        <source>dew at motor</source>
        <translation>rocío en el motor</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>fuera</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>seco</translation>
    </message>
    <message>
        <source>fire colder by</source>
        <translation>fuego más frío en</translation>
    </message>
    <message>
        <source>power cut, left on</source>
        <translation>corte de luz, en marcha</translation>
    </message>
    <message>
        <source>price</source>
        <translation>precio</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>diez años</translation>
    </message>
    <message>
        <source>Chilton &amp; Colburn analogy</source>
        <translation>analogía de Chilton &amp; Colburn</translation>
    </message>
    <message>
        <source>Dalton&apos;s law</source>
        <translation>ley de Dalton</translation>
    </message>
    <message>
        <source>EN 13384-1, external values</source>
        <translation>EN 13384-1, valores exteriores</translation>
    </message>
    <message>
        <source>Fourier&apos;s law</source>
        <translation>ley de Fourier</translation>
    </message>
    <message>
        <source>Stefan flow, Incropera &amp; DeWitt ch. 14</source>
        <translation>flujo de Stefan, Incropera &amp; DeWitt cap. 14</translation>
    </message>
    <message>
        <source>Stefan-Boltzmann law</source>
        <translation>ley de Stefan-Boltzmann</translation>
    </message>
    <message>
        <source>a film acts like k/h of cover</source>
        <translation>una película actúa como k/h de cobertura</translation>
    </message>
    <message>
        <source>definition</source>
        <translation>definición</translation>
    </message>
    <message>
        <source>equal area</source>
        <translation>igual área</translation>
    </message>
    <message>
        <source>exact for one level and constant properties</source>
        <translation>exacto para un nivel y propiedades constantes</translation>
    </message>
    <message>
        <source>exact, as q</source>
        <translation>exacto, como q</translation>
    </message>
    <message>
        <source>fan laws, AMCA 210 and ISO 5801</source>
        <translation>leyes de ventiladores, AMCA 210 e ISO 5801</translation>
    </message>
    <message>
        <source>first law</source>
        <translation>primer principio</translation>
    </message>
    <message>
        <source>free exit</source>
        <translation>salida libre</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>geometría</translation>
    </message>
    <message>
        <source>hydrostatics</source>
        <translation>hidrostática</translation>
    </message>
    <message>
        <source>ideal gas</source>
        <translation>gas ideal</translation>
    </message>
    <message>
        <source>invented, as if read off a label</source>
        <translation>inventado, como leído en una placa</translation>
    </message>
    <message>
        <source>it is in the cover</source>
        <translation>está en la cobertura</translation>
    </message>
    <message>
        <source>linear blend between Re 2300 and 4000</source>
        <translation>mezcla lineal entre Re 2300 y 4000</translation>
    </message>
    <message>
        <source>midway between its faces</source>
        <translation>a medio camino entre sus caras</translation>
    </message>
    <message>
        <source>momentum at constant area</source>
        <translation>cantidad de movimiento a área constante</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>sin fuente</translation>
    </message>
    <message>
        <source>power law of blower-door tests (ISO 9972), exponent customary</source>
        <translation>ley de potencia de los ensayos de puerta ventilador (ISO 9972), exponente usual</translation>
    </message>
    <message>
        <source>stoichiometry; IUPAC conventional atomic weights</source>
        <translation>estequiometría; IUPAC, pesos atómicos convencionales</translation>
    </message>
    <message>
        <source>the drawing</source>
        <translation>el dibujo</translation>
    </message>
    <message>
        <source>the walk along the path</source>
        <translation>el recorrido por el conducto</translation>
    </message>
    <message>
        <source>in the stream</source>
        <translation>en el gas</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>no se dice</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pieza</numerusform>
            <numerusform>%n piezas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s).</source>
        <translation>
            <numerusform>%n pieza.</numerusform>
            <numerusform>%n piezas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) selected.</source>
        <translation>
            <numerusform>%n pieza elegida.</numerusform>
            <numerusform>%n piezas elegidas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n piece(s)</source>
        <translation>
            <numerusform>Mover %n pieza</numerusform>
            <numerusform>Mover %n piezas</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n piece(s)</source>
        <translation>
            <numerusform>%1, %n pieza</numerusform>
            <numerusform>%1, %n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>... and {} more.</source>
        <translation>… y {} más.</translation>
    </message>
    <message>
        <source>The quick estimate stays; the points worked out so far too</source>
        <translation>La estimación rápida se queda; los puntos ya calculados también</translation>
    </message>
    <message>
        <source>worked out step by step in time, the worst of three bench ages; dotted: the quick estimate</source>
        <translation>calculado paso a paso en el tiempo, el peor de tres estados del banco; punteada: la estimación rápida</translation>
    </message>
    <message>
        <source>stopped after %1 of %2 points in time; the limit is that of the quick estimate</source>
        <translation>parado tras %1 de %2 puntos en el tiempo; el límite es el de la estimación rápida</translation>
    </message>
    <message>
        <source>quick estimate; worked out in time: %1 of %2 points</source>
        <translation>estimación rápida; calculado en el tiempo: %1 de %2 puntos</translation>
    </message>
    <message>
        <source>quick estimate, the worst of three bench ages</source>
        <translation>estimación rápida, el peor de tres estados del banco</translation>
    </message>
    <message>
        <source>quick estimate, the worst of three bench ages; a path that branches has no steps in time</source>
        <translation>estimación rápida, el peor de tres estados del banco; un conducto con ramales no tiene pasos en el tiempo</translation>
    </message>
    <message>
        <source>From {} to {} the flue is up to {} above the room, so a leaky joint lets smoke into the room.</source>
        <translation>De {} a {} el conducto está hasta {} por encima del cuarto, así que una unión con fuga deja salir humo.</translation>
    </message>
    <message>
        <source>{}: once the heater is warm, choke the mouth from {} to {} of its section and the fire gets the wanted air; open it to light.</source>
        <translation>{}: con la estufa caliente, cierre la boca de {} a {} de su sección y el fuego recibe el aire deseado; ábrala para encender.</translation>
    </message>
    <message>
        <source>%1 (warm and shut: %2 to spare)</source>
        <translation>%1 (caliente y cerrada: %2 de sobra)</translation>
    </message>
    <message>
        <source>Lead a bypass past the bench, open to light</source>
        <translation>Llevar una derivación que evite el banco, abierta para encender</translation>
    </message>
    <message>
        <source>Estimate: a closed form for a cylinder warming in a mass stands in until the heating-up has been followed in time.</source>
        <translation>Estimación: una fórmula cerrada para un cilindro que se calienta en una masa la sustituye hasta que se ha seguido el calentamiento en el tiempo.</translation>
    </message>
    <message>
        <source>The young ages are followed in time from the match on.</source>
        <translation>Los estados jóvenes se siguen en el tiempo desde la cerilla.</translation>
    </message>
    <message>
        <source>≈ quick estimate: %1%2</source>
        <translation>≈ estimación rápida: %1%2</translation>
    </message>
    <message>
        <source>; they are being followed in time …</source>
        <translation>; se están siguiendo en el tiempo …</translation>
    </message>
    <message>
        <source>Unsafe: the draft depends on a fan.</source>
        <translation>Inseguro: el tiro depende de un ventilador.</translation>
    </message>
    <message>
        <source>A fan runs in this design.</source>
        <translation>En este diseño funciona un ventilador.</translation>
    </message>
    <message>
        <source>What a power cut does is being worked out …</source>
        <translation>Se está calculando lo que hace un corte de luz …</translation>
    </message>
    <message>
        <source>What a power cut does could not be computed: take it for unsafe.</source>
        <translation>No se pudo calcular lo que hace un corte de luz: dé por hecho que es inseguro.</translation>
    </message>
    <message>
        <source>Unsafe: without the fan there is no draft to spare.</source>
        <translation>Inseguro: sin el ventilador no sobra tiro.</translation>
    </message>
    <message>
        <source>A power cut does no harm here.</source>
        <translation>Aquí un corte de luz no hace daño.</translation>
    </message>
    <message>
        <source>With every fan standing still no flow to the cap holds itself.</source>
        <translation>Con todos los ventiladores parados ningún caudal hacia el sombrero se sostiene.</translation>
    </message>
    <message>
        <source>With every fan standing still it settles at %1 times the air it needs, exit %2.</source>
        <translation>Con todos los ventiladores parados se estabiliza con %1 veces el aire que necesita, salida %2.</translation>
    </message>
    <message>
        <source>; for %1 the air at the mouth is so slow that smoke can pass it</source>
        <translation>; durante %1 el aire en la boca es tan lento que el humo puede pasarlo</translation>
    </message>
    <message>
        <source>In %1 it %2.</source>
        <translation>En %1: %2.</translation>
    </message>
    <message>
        <source>On this time line the draft holds only with the fan on. That is unsafe.</source>
        <translation>En este horario el tiro solo se mantiene con el ventilador en marcha. Eso es inseguro.</translation>
    </message>
    <message>
        <source>While the fan runs on this time line, the fire depends on it.</source>
        <translation>Mientras el ventilador funciona en este horario, el fuego depende de él.</translation>
    </message>
    <message>
        <source>A power cut so late on this time line does no harm, one in a standard start does.</source>
        <translation>Un corte de luz tan tardío en este horario no hace daño, uno en un arranque normal sí.</translation>
    </message>
    <message>
        <source>A power cut while the fan runs on this time line does no harm.</source>
        <translation>Un corte de luz con el ventilador en marcha en este horario no hace daño.</translation>
    </message>
    <message>
        <source>Standard start, from cold walls. %1</source>
        <translation>Arranque normal, con paredes frías. %1</translation>
    </message>
    <message>
        <source>%1&amp;nbsp; &lt;b&gt;%2&lt;/b&gt;: %3</source>
        <translation>%1&amp;nbsp; &lt;b&gt;%2&lt;/b&gt;: %3</translation>
    </message>
    <message>
        <source>more than </source>
        <translation>más de </translation>
    </message>
    <message>
        <source> Allowed: {}.</source>
        <translation> Se admite: {}.</translation>
    </message>
    <message>
        <source> Allowed: more than {}.</source>
        <translation> Se admite: más de {}.</translation>
    </message>
    <message>
        <source> Allowed: {} or more.</source>
        <translation> Se admite: {} o más.</translation>
    </message>
    <message>
        <source> Allowed: {}{} to {}.</source>
        <translation> Se admite: {}{} a {}.</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is negative.{}</source>
        <translation>{}: {} ({}) es negativo.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is too little.{}</source>
        <translation>{}: {} ({}) es demasiado poco.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, goes beyond the end of the run.{}</source>
        <translation>{}: {} ({}) pasa del final del recorrido.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is before that of the entry before it.{}</source>
        <translation>{}: {} ({}) es anterior al de la entrada previa.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is before the entry before it has ended.{}</source>
        <translation>{}: {} ({}) llega antes de que acabe la entrada previa.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is out of range.{}</source>
        <translation>{}: {} ({}) está fuera de lo admitido.{}</translation>
    </message>
    <message>
        <source>{}: the course of temperatures does not reach over the whole run: this end is at {}.{}</source>
        <translation>{}: el curso de temperaturas no cubre todo el recorrido: este extremo está en {}.{}</translation>
    </message>
    <message>
        <source>not colder</source>
        <translation>no más frío</translation>
    </message>
    <message>
        <source>Walls soaked at their surroundings. By itself: it stands open {} before the whole fire is lit. Kindling: it stands shut until the match, so the air in it is still; {} for {}, then {}. It holds when for {} after the last aid the gas runs forward, no more than {} of smoke comes into the room and {} of the wood burns with at least {:g} times the air it needs.</source>
        <translation>Paredes a la temperatura de su entorno. Solo: queda abierto {} antes de encender todo el fuego. Astillas: está cerrado hasta la cerilla, así que su aire está quieto; {} durante {}, luego {}. Se sostiene si durante {} tras la última ayuda el gas va hacia delante, no entran más de {} de humo en el cuarto y arde {} de la leña con al menos {:g} veces el aire que necesita.</translation>
    </message>
    <message>
        <source>{} over {} min</source>
        <translation>{} durante {} min</translation>
    </message>
    <message>
        <source>the gas at the fan gets to {}; its limit is {}</source>
        <translation>el gas en el ventilador llega a {}; su límite es {}</translation>
    </message>
    <message>
        <source>the motor gets to {}; its limit is {}</source>
        <translation>el motor llega a {}; su límite es {}</translation>
    </message>
    <message>
        <source>After {} it holds by itself; practice allows 5 to 10 min.</source>
        <translation>Tras {} se sostiene solo; la práctica admite de 5 a 10 min.</translation>
    </message>
    <message>
        <source>It holds after {}, but left on {}.</source>
        <translation>Se sostiene tras {}, pero dejado en marcha {}.</translation>
    </message>
    <message>
        <source>It holds after {}, but left on, water condenses at the motor for {} min.</source>
        <translation>Se sostiene tras {}, pero dejado en marcha se posa agua en el motor durante {} min.</translation>
    </message>
    <message>
        <source>Unsafe: in the house as it is it draws enough only while the fan runs. {}</source>
        <translation>Inseguro: en la casa tal como está solo tira bastante mientras funciona el ventilador. {}</translation>
    </message>
    <message>
        <source>It runs backward {} min after the beginning.</source>
        <translation>Va al revés {} min después de empezar.</translation>
    </message>
    <message>
        <source>Smoke comes into the room {} min after the beginning.</source>
        <translation>Entra humo en el cuarto {} min después de empezar.</translation>
    </message>
    <message>
        <source>It starves: too much of the wood burns with too little air.</source>
        <translation>Le falta aire: demasiada leña arde con poco aire.</translation>
    </message>
    <message>
        <source>Ten years: {:.0f} starts a year, a fan that may not be switched off runs {} h each; prices are common practice or your own figures.</source>
        <translation>Diez años: {:.0f} arranques al año, un ventilador que no se puede apagar funciona {} h cada vez; los precios son práctica común o sus propias cifras.</translation>
    </message>
    <message>
        <source>UNSAFE: the draft holds only while the fan runs.</source>
        <translation>INSEGURO: el tiro solo se mantiene mientras funciona el ventilador.</translation>
    </message>
    <message>
        <source>UNSAFE: it does not draw, even with the fan on.</source>
        <translation>INSEGURO: no tira, ni con el ventilador en marcha.</translation>
    </message>
    <message>
        <source>UNSAFE in a house under suction: there the draft holds only while the fan runs.</source>
        <translation>INSEGURO en una casa con succión: ahí el tiro solo se mantiene mientras funciona el ventilador.</translation>
    </message>
    <message>
        <source>UNSAFE in a house under suction: there it does not draw, even with the fan on.</source>
        <translation>INSEGURO en una casa con succión: ahí no tira, ni con el ventilador en marcha.</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nada</translation>
    </message>
    <message>
        <source>Leave the table ou&amp;t</source>
        <translation>De&amp;jar fuera la tabla</translation>
    </message>
    <message>
        <source>Compare &amp;with</source>
        <translation>Comparar &amp;con</translation>
    </message>
    <message>
        <source>Trying starts…</source>
        <translation>Probando arranques…</translation>
    </message>
    <message>
        <source>Piece:&#xa0;saw&#xa0;to</source>
        <translation>Pieza: cortar a</translation>
    </message>
    <message>
        <source>Each pipe is sawn longer by what is pushed into the next, %1; each cut takes %2.</source>
        <translation>Cada tubo se corta más largo por lo que entra en el siguiente, %1; cada corte se lleva %2.</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Ninguno.</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Se apoya en</translation>
    </message>
    <message>
        <source>Let stand because</source>
        <translation>Se deja estar porque</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Antes: %1</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Ahora: %1</translation>
    </message>
    <message>
        <source>%1 oz</source>
        <translation>%1 oz</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>prime with %1, %2</source>
        <translation>cebar con %1, %2</translation>
    </message>
    <message>
        <source>fan, %1</source>
        <translation>ventilador, %1</translation>
    </message>
    <message>
        <source>It draws before anything burns: light the whole fire.</source>
        <translation>Tira antes de que arda nada: encienda todo el fuego.</translation>
    </message>
    <message>
        <source>Keep it shut until the match. A small fire at the foot of %1 first: %2 of thin kindling for %3. Then the rest.</source>
        <translation>Manténgala cerrada hasta la cerilla. Primero un fuego pequeño al pie de %1: %2 de astillas finas durante %3. Luego el resto.</translation>
    </message>
    <message>
        <source>Burn that much crumpled newspaper, over that time, behind the open cap of %1. Shut it; then kindle at the foot.</source>
        <translation>Queme tanto periódico arrugado, en ese tiempo, tras la tapa abierta de %1. Ciérrela; luego encienda astillas al pie.</translation>
    </message>
    <message>
        <source>the stack&apos;s foot</source>
        <translation>el pie de la chimenea</translation>
    </message>
    <message>
        <source>Switch on %1 a minute before the match, kindle at the foot, switch it off after that time.</source>
        <translation>Encienda %1 un minuto antes de la cerilla, encienda astillas al pie, apáguelo pasado ese tiempo.</translation>
    </message>
    <message>
        <source>the fan</source>
        <translation>el ventilador</translation>
    </message>
    <message>
        <source>Nothing of this gets it going. Warm the room, or wait until it is cooler outdoors.</source>
        <translation>Nada de esto la pone en marcha. Caliente el cuarto, o espere a que refresque fuera.</translation>
    </message>
    <message>
        <source>Outdoors, %1</source>
        <translation>Exterior, %1</translation>
    </message>
    <message>
        <source>No. Do not light it until that is changed.</source>
        <translation>No. No la encienda hasta que eso cambie.</translation>
    </message>
    <message>
        <source>Calculated for a heater that is cold through and stands as warm as the room, in calm air. Wind, exhaust fans or soot change it: the match has the last word.</source>
        <translation>Calculado para una estufa fría por dentro y tan tibia como el cuarto, con aire en calma. Viento, extractores u hollín lo cambian: la cerilla tiene la última palabra.</translation>
    </message>
    <message>
        <source>prime at %1 and hold it there again; if it still leans out, light nothing today</source>
        <translation>cebe en %1 y vuelva a acercarla; si aún se inclina hacia fuera, hoy no encienda nada</translation>
    </message>
    <message>
        <source>burn two sheets of newspaper, one after the other, behind %1, shut it and hold it there again</source>
        <translation>queme dos hojas de periódico, una tras otra, detrás de %1, ciérrelo y vuelva a acercarla</translation>
    </message>
    <message>
        <source>Hold a burning match to %1: the flame must lean in. If it leans out, or hangs still, %2.</source>
        <translation>Acerque una cerilla encendida a %1: la llama debe inclinarse hacia dentro. Si se inclina hacia fuera, o no se mueve, %2.</translation>
    </message>
    <message>
        <source>. Dimensions of the axis in&#xa0;mm</source>
        <translation>. Cotas del eje en mm</translation>
    </message>
    <message>
        <source>, levels in&#xa0;m</source>
        <translation>, niveles en m</translation>
    </message>
    <message>
        <source>%1 of %2 to %3</source>
        <translation>%1 de %2 a %3</translation>
    </message>
    <message>
        <source>Curves over time</source>
        <translation>Curvas en el tiempo</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Suceso</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Campos</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Páginas</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
    <message>
        <source>Start page</source>
        <translation>Página de inicio</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Por qué</translation>
    </message>
</context>
</TS>
