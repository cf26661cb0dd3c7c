<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es" sourcelanguage="en">
<context>
    <name>Catalogue</name>
    <message>
        <source>A fixed sum taken off the design margin: 0 where the cap stands clear of the roof, 25 for an inland and 40 for a coastal site where it does not.</source>
        <translation>Cantidad fija que se resta al margen: 0 si el sombrero está libre del tejado; si no, 25 en el interior y 40 en la costa.</translation>
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
        <source>At its far end.</source>
        <translation>En su extremo lejano.</translation>
    </message>
    <message>
        <source>At its first end.</source>
        <translation>En su primer extremo.</translation>
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
        <source>Bore</source>
        <translation>Diámetro</translation>
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
        <source>Burn rate</source>
        <translation>Consumo</translation>
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
        <source>Chimney length through ceiling, attic and roof.</source>
        <translation>Tramo de chimenea por techo, desván y tejado.</translation>
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
        <source>Cleanout cap</source>
        <translation>Tapa de limpieza</translation>
    </message>
    <message>
        <source>Cleanout tee</source>
        <translation>Te de limpieza</translation>
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
        <source>Draft at which the flap begins to open.</source>
        <translation>Tiro con que empieza a abrirse la aleta.</translation>
    </message>
    <message>
        <source>Draft regulator</source>
        <translation>Regulador de tiro</translation>
    </message>
    <message>
        <source>Drawn or stamped bend without seams across the flow.</source>
        <translation>Curva estirada o estampada sin costuras de través.</translation>
    </message>
    <message>
        <source>Drums split lengthwise and laid open side down under the seat: a wide, slow channel.</source>
        <translation>Bidones partidos a lo largo, boca abajo bajo el asiento: un canal ancho y lento.</translation>
    </message>
    <message>
        <source>Duct fan with its motor in the stream. A steady calculation has it off: it counts as an obstacle, what it blows is left out.</source>
        <translation>Ventilador con el motor en la corriente. El cálculo estable lo tiene parado: cuenta como obstáculo, lo que sopla se deja fuera.</translation>
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
        <source>Extractor on top of the stack. A steady calculation has it off: it counts as an obstacle, what it blows is left out.</source>
        <translation>Extractor sobre la chimenea. El cálculo estable lo tiene parado: cuenta como obstáculo, lo que sopla se deja fuera.</translation>
    </message>
    <message>
        <source>Factory-made chimney length with insulation between its walls.</source>
        <translation>Tramo de chimenea de fábrica con aislante entre paredes.</translation>
    </message>
    <message>
        <source>Far bore</source>
        <translation>Diámetro lejano</translation>
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
        <source>Flat or conical hat over the open pipe.</source>
        <translation>Sombrero plano o cónico sobre el tubo abierto.</translation>
    </message>
    <message>
        <source>Flow safety</source>
        <translation>Seguridad de caudal</translation>
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
        <source>Gas leaves</source>
        <translation>El gas sale</translation>
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
        <source>Hottest gas, or air at the motor, that the maker allows.</source>
        <translation>Gas, o aire en el motor, más caliente que permite el fabricante.</translation>
    </message>
    <message>
        <source>House volume</source>
        <translation>Volumen de la casa</translation>
    </message>
    <message>
        <source>How far the blade is turned out of the flow: 0 open, 90 shut.</source>
        <translation>Cuánto gira la compuerta fuera de la corriente: 0 abierta, 90 cerrada.</translation>
    </message>
    <message>
        <source>How far the flow turns.</source>
        <translation>Cuánto gira la corriente.</translation>
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
        <source>Inducer with a blade reaching in from the side and its motor outside. A steady calculation has it off: it counts as an obstacle, what it blows is left out.</source>
        <translation>Inductor con pala que entra de lado y motor fuera. El cálculo estable lo tiene parado: cuenta como obstáculo, lo que sopla se deja fuera.</translation>
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
        <source>Left open</source>
        <translation>Queda abierto</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
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
        <source>Lid on an open end, to be taken off for cleaning.</source>
        <translation>Tapa en un extremo abierto, se quita para limpiar.</translation>
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
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Neutral plane</source>
        <translation>Plano neutro</translation>
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
        <source>Outdoors</source>
        <translation>Exterior</translation>
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
        <source>Pieces</source>
        <translation>Gajos</translation>
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
        <source>Rated for</source>
        <translation>Apto para</translation>
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
        <source>Room</source>
        <translation>Cuarto</translation>
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
        <source>Short way past the bench with a blade in it. A series path counts it only where it is the way the gas takes.</source>
        <translation>Camino corto que evita el banco, con una compuerta. En un conducto en serie cuenta solo si el gas va por él.</translation>
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
        <source>Tee in the run with a lid on its branch: where soot and fly ash come out.</source>
        <translation>Te en el tramo con tapa en la derivación: por donde salen hollín y ceniza.</translation>
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
        <source>Tunnel wall; the ground is said below.</source>
        <translation>Pared del túnel; el terreno se indica abajo.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Giro</translation>
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
        <source>Velocity heads that the cap takes beyond the free exit.</source>
        <translation>Presiones dinámicas que cuesta el sombrero además de la salida libre.</translation>
    </message>
    <message>
        <source>Velocity heads that the fan takes while it is off.</source>
        <translation>Presiones dinámicas que cuesta el ventilador parado.</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Pared</translation>
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
        <source>Weighted flap on the stack that lets in room air above its set draft. A series path counts the fitting with the flap shut; the air it lets in is left out.</source>
        <translation>Aleta con peso en la chimenea que deja entrar aire del cuarto sobre su tiro fijado. En serie cuenta con la aleta cerrada; el aire que entra se deja fuera.</translation>
    </message>
    <message>
        <source>What burns. Woods differ little by weight; wetness differs much.</source>
        <translation>Lo que arde. Por peso las leñas difieren poco; la humedad, mucho.</translation>
    </message>
    <message>
        <source>What is outside its wall.</source>
        <translation>Lo que hay fuera de su pared.</translation>
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
        <source>Which end counts as capped while nothing is joined to it.</source>
        <translation>Qué extremo cuenta como tapado mientras no tenga nada unido.</translation>
    </message>
    <message>
        <source>Which wall the outlet is in, seen from the way in.</source>
        <translation>En qué pared está la salida, vista desde la entrada.</translation>
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
        <source>Wood</source>
        <translation>Leña</translation>
    </message>
    <message>
        <source>Wood as fired, at full burn: weigh an hour&apos;s wood, or take the usual value of the bore.</source>
        <translation>Leña tal como se quema, a pleno fuego: pese la de una hora, o tome el valor usual del diámetro.</translation>
    </message>
    <message>
        <source>Wye</source>
        <translation>Pieza en Y</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Elevation</source>
        <translation>Alzado</translation>
    </message>
    <message>
        <source>Elevation along the path</source>
        <translation>Alzado a lo largo del conducto</translation>
    </message>
    <message>
        <source>Elevation from the east</source>
        <translation>Alzado desde el este</translation>
    </message>
    <message>
        <source>Elevation from the south</source>
        <translation>Alzado desde el sur</translation>
    </message>
    <message>
        <source>Isometric</source>
        <translation>Isométrica</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planta</translation>
    </message>
    <message>
        <source>air comes in</source>
        <translation>entra aire</translation>
    </message>
    <message>
        <source>at a slant</source>
        <translation>en oblicuo</translation>
    </message>
    <message>
        <source>barrel, bell or box</source>
        <translation>bidón, campana o caja</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>derivación</translation>
    </message>
    <message>
        <source>capped end</source>
        <translation>extremo tapado</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>compuerta</translation>
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
        <source>fan</source>
        <translation>ventilador</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>unión</translation>
    </message>
    <message>
        <source>neutral plane</source>
        <translation>plano neutro</translation>
    </message>
    <message>
        <source>north</source>
        <translation>norte</translation>
    </message>
    <message>
        <source>pipe or channel</source>
        <translation>tubo o canal</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>reducción</translation>
    </message>
    <message>
        <source>south</source>
        <translation>sur</translation>
    </message>
    <message>
        <source>stack head</source>
        <translation>remate de chimenea</translation>
    </message>
    <message>
        <source>top of the house</source>
        <translation>parte alta de la casa</translation>
    </message>
    <message>
        <source>up</source>
        <translation>arriba</translation>
    </message>
    <message>
        <source>way of the gas</source>
        <translation>sentido del gas</translation>
    </message>
    <message>
        <source>west</source>
        <translation>oeste</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>%1 to %2</source>
        <translation>de %1 a %2</translation>
    </message>
    <message>
        <source>2 to 3 is common for an open feed. Under 1.5 it smokes; over 6 it cools the fire.</source>
        <translation>De 2 a 3 es común en una alimentación abierta. Bajo 1,5 humea; sobre 6 enfría el fuego.</translation>
    </message>
    <message>
        <source>60 to 120 °C is common. Colder saves heat and risks water and a weak pull; hotter means that heat is thrown away.</source>
        <translation>Lo común es de 60 a 120 °C. Más frío ahorra calor pero arriesga agua y poco tiro; más caliente es calor tirado.</translation>
    </message>
    <message>
        <source>A little above zero makes lighting easy. A chimney outdoors often stands below.</source>
        <translation>Un poco sobre cero facilita encender. Una chimenea exterior suele estar por debajo.</translation>
    </message>
    <message>
        <source>A third to a half in the mass is common for a bench of a few metres.</source>
        <translation>De un tercio a la mitad en la masa es común en un banco de unos metros.</translation>
    </message>
    <message>
        <source>About the middle of the heated height; range hoods lift it.</source>
        <translation>Hacia la mitad de la altura calentada; las campanas de cocina lo suben.</translation>
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
        <source>Condensation begins</source>
        <translation>Empieza la condensación</translation>
    </message>
    <message>
        <source>Draft margin</source>
        <translation>Margen de tiro</translation>
    </message>
    <message>
        <source>Excess air</source>
        <translation>Exceso de aire</translation>
    </message>
    <message>
        <source>Exit temperature</source>
        <translation>Temperatura de salida</translation>
    </message>
    <message>
        <source>Half of the buoyancy or less leaves a sound margin. Bends and narrow places cost most.</source>
        <translation>La mitad del tiro natural o menos deja un margen sano. Lo que más cuesta son los codos y los estrechos.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>Heaters with a bench live on 8 to 20 Pa.</source>
        <translation>Las estufas con banco viven con 8 a 20 Pa.</translation>
    </message>
    <message>
        <source>How much air comes with the wood, as a multiple of what it needs to burn.</source>
        <translation>Cuánto aire viene con la leña, como múltiplo de lo que necesita para arder.</translation>
    </message>
    <message>
        <source>How warm the gas leaves the cap when the bench is warm and the path has settled.</source>
        <translation>Qué tibio sale el gas por el sombrero cuando el banco está caliente y el conducto se ha estabilizado.</translation>
    </message>
    <message>
        <source>Neutral plane</source>
        <translation>Plano neutro</translation>
    </message>
    <message>
        <source>Nowhere is best; in a bench that is still cold a little at the start is common.</source>
        <translation>En ninguna parte es lo mejor; en un banco aún frío es común un poco al principio.</translation>
    </message>
    <message>
        <source>Pieces and numbers</source>
        <translation>Piezas y números</translation>
    </message>
    <message>
        <source>Pressure in the flue from feed to cap, beside that of the room at the same height. Where the flue lies above the room, smoke can leak out of a crack.</source>
        <translation>Presión en el conducto de la alimentación al sombrero, junto a la del cuarto a la misma altura. Donde el conducto está por encima, puede salir humo por una grieta.</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Resistencia</translation>
    </message>
    <message>
        <source>Standing draft</source>
        <translation>Tiro en reposo</translation>
    </message>
    <message>
        <source>The curves along the path</source>
        <translation>Las curvas a lo largo del conducto</translation>
    </message>
    <message>
        <source>The flue should lie below the room everywhere indoors.</source>
        <translation>En el interior, el conducto debería estar siempre por debajo del cuarto.</translation>
    </message>
    <message>
        <source>The height in the house at which indoor and outdoor pressure agree. Below it air wants in, above it out. A fire below it has the house against it.</source>
        <translation>La altura de la casa donde las presiones interior y exterior coinciden. Por debajo el aire quiere entrar, por encima salir. Un fuego por debajo tiene la casa en contra.</translation>
    </message>
    <message>
        <source>The pull before anything burns, from the house&apos;s warmth and the weather alone. Below zero the path runs backwards until it is warmed.</source>
        <translation>El tiro antes de que arda nada, solo por el calor de la casa y el tiempo. Bajo cero el conducto va al revés hasta que se calienta.</translation>
    </message>
    <message>
        <source>The pull itself: a column of warm gas is lighter than as much outdoor air beside it. It grows with height and with warmth.</source>
        <translation>El tiro mismo: una columna de gas tibio pesa menos que otra igual de aire exterior. Crece con la altura y el calor.</translation>
    </message>
    <message>
        <source>Usual:</source>
        <translation>Usual:</translation>
    </message>
    <message>
        <source>What friction along the walls and every bend, tee and change of size cost at the flow the fire wants.</source>
        <translation>Lo que cuestan el roce en las paredes y cada codo, te y cambio de tamaño con el caudal que pide el fuego.</translation>
    </message>
    <message>
        <source>What is left of the stack&apos;s pull when all losses of the path, with their safety factor, and the wind&apos;s share are taken off. It is the least of three ages of the bench: cold, after an hour, warmed through.</source>
        <translation>Lo que queda del tiro de la chimenea al restar todas las pérdidas del conducto, con su factor de seguridad, y la parte del viento. Es el menor de tres estados del banco: frío, tras una hora, cargado.</translation>
    </message>
    <message>
        <source>What is this, and what is usual</source>
        <translation>Qué es esto, y qué es lo usual</translation>
    </message>
    <message>
        <source>Where the inner wall is colder than the dew point of the gas, water settles. It carries soot and acid.</source>
        <translation>Donde la pared interior está más fría que el punto de rocío del gas, se posa agua. Lleva hollín y ácido.</translation>
    </message>
    <message>
        <source>Where the wood&apos;s heat goes: into the bench&apos;s mass, through bare walls to the room, up the stack, out of the house.</source>
        <translation>Adónde va el calor de la leña: a la masa del banco, por paredes desnudas al cuarto, chimenea arriba, fuera de la casa.</translation>
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
        <source>cold wall: wet</source>
        <translation>pared fría: mojada</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>pesado</translation>
    </message>
    <message>
        <source>light</source>
        <translation>ligero</translation>
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
        <source>mass</source>
        <translation>masa</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>tiro</translation>
    </message>
    <message>
        <source>room</source>
        <translation>cuarto</translation>
    </message>
    <message>
        <source>rubs</source>
        <translation>roza</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>chimenea</translation>
    </message>
    <message>
        <source>this warm</source>
        <translation>así de tibio</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>gira</translation>
    </message>
    <message>
        <source>warm wall: dry</source>
        <translation>pared tibia: seca</translation>
    </message>
    <message>
        <source>what the wood needs</source>
        <translation>lo que pide la leña</translation>
    </message>
</context>
<context>
    <name>House</name>
    <message>
        <source>&amp;Draw it</source>
        <translation>&amp;Dibujarla</translation>
    </message>
    <message>
        <source>&amp;No house</source>
        <translation>&amp;Sin casa</translation>
    </message>
    <message>
        <source>Ceiling above the floor</source>
        <translation>Techo sobre el suelo</translation>
    </message>
    <message>
        <source>Draw the house</source>
        <translation>Dibujar la casa</translation>
    </message>
    <message>
        <source>East wall, inside</source>
        <translation>Pared este, interior</translation>
    </message>
    <message>
        <source>Eaves above the floor</source>
        <translation>Alero sobre el suelo</translation>
    </message>
    <message>
        <source>It is drawn behind the path, and the path check tells where a pipe goes through it without a passage. The answer does not depend on it.</source>
        <translation>Se dibuja detrás del conducto, y la revisión dice dónde un tubo lo atraviesa sin pasamuros. La respuesta no depende de ello.</translation>
    </message>
    <message>
        <source>North wall, inside</source>
        <translation>Pared norte, interior</translation>
    </message>
    <message>
        <source>Ridge above the floor</source>
        <translation>Cumbrera sobre el suelo</translation>
    </message>
    <message>
        <source>South wall, inside</source>
        <translation>Pared sur, interior</translation>
    </message>
    <message>
        <source>Take the house away</source>
        <translation>Quitar la casa</translation>
    </message>
    <message>
        <source>The house around it</source>
        <translation>La casa alrededor</translation>
    </message>
    <message>
        <source>Then the house would not stand: opposite walls or eaves and ridge change places.</source>
        <translation>Así la casa no se tendría: paredes opuestas o alero y cumbrera cambian de sitio.</translation>
    </message>
    <message>
        <source>Thickness of the ceiling</source>
        <translation>Espesor del techo</translation>
    </message>
    <message>
        <source>Thickness of walls and roof</source>
        <translation>Espesor de paredes y tejado</translation>
    </message>
    <message>
        <source>West wall, inside</source>
        <translation>Pared oeste, interior</translation>
    </message>
</context>
<context>
    <name>Variants</name>
    <message>
        <source>%1 (on the desk)</source>
        <translation>%1 (en la mesa)</translation>
    </message>
    <message>
        <source>%1 × %2 fewer</source>
        <translation>%1 × %2 menos</translation>
    </message>
    <message>
        <source>%1 × %2 more</source>
        <translation>%1 × %2 más</translation>
    </message>
    <message>
        <source>Draft margin</source>
        <translation>Margen de tiro</translation>
    </message>
    <message>
        <source>Exit temperature</source>
        <translation>Temperatura de salida</translation>
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
        <source>In brackets: how far from the first. F6 changes over; a click on a name puts that one on the desk.</source>
        <translation>Entre paréntesis: cuánto difiere de la primera. F6 cambia; un clic en un nombre pone esa en la mesa.</translation>
    </message>
    <message>
        <source>Length of the path</source>
        <translation>Longitud del conducto</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Partes</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Piezas</translation>
    </message>
    <message>
        <source>Variants side by side</source>
        <translation>Variantes lado a lado</translation>
    </message>
    <message>
        <source>Water begins</source>
        <translation>Empieza el agua</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>aún no se sabe</translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation>en ninguna parte</translation>
    </message>
    <message>
        <source>the same pieces</source>
        <translation>las mismas piezas</translation>
    </message>
</context>
<context>
    <name>fluewright::Actions</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>&amp;Bench longer, with its return runs</source>
        <translation>&amp;Banco más largo, con sus vueltas</translation>
    </message>
    <message>
        <source>&amp;Compare them…</source>
        <translation>&amp;Compararlas…</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>&amp;Draw passes side by side…</source>
        <translation>&amp;Dibujar pasadas paralelas…</translation>
    </message>
    <message>
        <source>&amp;Earlier versions…</source>
        <translation>&amp;Versiones anteriores…</translation>
    </message>
    <message>
        <source>&amp;Fork what is on the desk</source>
        <translation>&amp;Bifurcar lo que hay en la mesa</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>Alto con&amp;traste</translation>
    </message>
    <message>
        <source>&amp;Join what meets</source>
        <translation>&amp;Unir lo que coincide</translation>
    </message>
    <message>
        <source>&amp;Next variant</source>
        <translation>Variante &amp;siguiente</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Pieza</translation>
    </message>
    <message>
        <source>&amp;Take this one out</source>
        <translation>&amp;Quitar esta</translation>
    </message>
    <message>
        <source>&amp;Variant before</source>
        <translation>Variante &amp;anterior</translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation>&amp;Variantes</translation>
    </message>
    <message>
        <source>&amp;What is this, and what is usual</source>
        <translation>&amp;Qué es esto, y qué es lo usual</translation>
    </message>
    <message>
        <source>Bench &amp;shorter</source>
        <translation>Banco más &amp;corto</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Cor&amp;tar</translation>
    </message>
    <message>
        <source>Isometric as pipe dra&amp;wing</source>
        <translation>Isométrica como &amp;dibujo de tubería</translation>
    </message>
    <message>
        <source>Mirror, &amp;north for south</source>
        <translation>Reflejar, &amp;norte por sur</translation>
    </message>
    <message>
        <source>Mirror, &amp;west for east</source>
        <translation>Reflejar, &amp;oeste por este</translation>
    </message>
    <message>
        <source>New by five &amp;questions…</source>
        <translation>Nuevo con cinco &amp;preguntas…</translation>
    </message>
    <message>
        <source>Pull its joint &amp;apart</source>
        <translation>&amp;Separar su unión</translation>
    </message>
    <message>
        <source>Put a red&amp;ucer between two bores</source>
        <translation>Poner una red&amp;ucción entre dos diámetros</translation>
    </message>
    <message>
        <source>Re&amp;place by</source>
        <translation>&amp;Reemplazar por</translation>
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
        <source>Select &amp;all</source>
        <translation>Elegir &amp;todo</translation>
    </message>
    <message>
        <source>Take &amp;out&#9;Del</source>
        <translation>&amp;Quitar&#9;Supr</translation>
    </message>
    <message>
        <source>Text si&amp;ze</source>
        <translation>Tamaño del te&amp;xto</translation>
    </message>
    <message>
        <source>The h&amp;ouse around it…</source>
        <translation>La c&amp;asa alrededor…</translation>
    </message>
    <message>
        <source>Three &amp;gestures</source>
        <translation>Tres &amp;gestos</translation>
    </message>
    <message>
        <source>Turn end for &amp;end</source>
        <translation>Inv&amp;ertir</translation>
    </message>
    <message>
        <source>Variant %1</source>
        <translation>Variante %1</translation>
    </message>
</context>
<context>
    <name>fluewright::Board</name>
    <message>
        <source>%1 %2: click or let go to leave it there; R turns it; Esc puts it back.</source>
        <translation>%1 %2: pulse o suelte para dejarlo ahí; R lo gira; Esc lo devuelve.</translation>
    </message>
    <message>
        <source>%1 copied.</source>
        <translation>%1: copiado.</translation>
    </message>
    <message>
        <source>%1: bring it to a ring with a plus, onto a straight run, or onto bare paper; Esc puts it back.</source>
        <translation>%1: llévelo a un anillo con más, a un tramo recto o al papel libre; Esc lo devuelve.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n pieza</numerusform>
            <numerusform>%n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Dibujarlas</translation>
    </message>
    <message>
        <source>&amp;Join what meets</source>
        <translation>&amp;Unir lo que coincide</translation>
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
        <source>Arrow keys choose the way, Page Up and Page Down go up and down; type a number for the length.</source>
        <translation>Las flechas eligen la dirección, Re Pág y Av Pág suben y bajan; escriba un número para la longitud.</translation>
    </message>
    <message>
        <source>Arrow keys or a drag grow the path from this end; Enter goes to the rack; Tab goes to the next end.</source>
        <translation>Las flechas o un arrastre alargan el conducto desde este extremo; Intro va al estante; Tab, al extremo siguiente.</translation>
    </message>
    <message>
        <source>Arrow keys walk along the path; Delete takes the piece out; R turns it; Alt and arrows move it.</source>
        <translation>Las flechas recorren el conducto; Supr quita la pieza; R la gira; Alt y flechas la mueven.</translation>
    </message>
    <message>
        <source>Between their axes</source>
        <translation>Entre sus ejes</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Cor&amp;tar</translation>
    </message>
    <message>
        <source>Drag a feed from the rack onto the sheet, or choose it there and press Enter.</source>
        <translation>Arrastre una alimentación del estante a la hoja, o elíjala allí y pulse Intro.</translation>
    </message>
    <message>
        <source>Drag along the grid to grow, across it for an elbow; type a number for the exact length; Esc forgets it.</source>
        <translation>Arrastre a lo largo de la cuadrícula para crecer, de través para un codo; escriba un número para la longitud exacta; Esc lo olvida.</translation>
    </message>
    <message>
        <source>Drag from a ring with a plus to grow the path. Click a piece to see it. Drag bare paper to move the sheet; with Shift to select.</source>
        <translation>Arrastre desde un anillo con más para alargar el conducto. Pulse una pieza para verla. Arrastre el papel libre para mover la hoja; con Mayús, para elegir.</translation>
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
        <source>Drag the selected pieces: runs along the way stretch, other joints come apart. Esc forgets it.</source>
        <translation>Arrastre las piezas elegidas: los tramos en esa dirección se alargan, las demás uniones se separan. Esc lo olvida.</translation>
    </message>
    <message>
        <source>Drag them, or: Delete takes them out, R turns them, Ctrl+M mirrors them, Ctrl+C copies them.</source>
        <translation>Arrástrelas, o: Supr las quita, R las gira, Ctrl+M las refleja, Ctrl+C las copia.</translation>
    </message>
    <message>
        <source>Draw %1 %2</source>
        <translation>Dibujar %1 hacia %2</translation>
    </message>
    <message numerus="yes">
        <source>Draw %n pass(es)</source>
        <translation>
            <numerusform>Dibujar %n pasada</numerusform>
            <numerusform>Dibujar %n pasadas</numerusform>
        </translation>
    </message>
    <message>
        <source>Draw a frame around the pieces to select; Esc forgets it.</source>
        <translation>Trace un marco alrededor de las piezas a elegir; Esc lo olvida.</translation>
    </message>
    <message>
        <source>Draw passes side by s&amp;ide…</source>
        <translation>D&amp;ibujar pasadas paralelas…</translation>
    </message>
    <message>
        <source>Each pass</source>
        <translation>Cada pasada</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the arrow keys.</source>
        <translation>Intro fija la longitud; Esc vuelve a las flechas.</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the mouse.</source>
        <translation>Intro fija la longitud; Esc vuelve al ratón.</translation>
    </message>
    <message>
        <source>From the open end in focus; the drawing shows it.</source>
        <translation>Desde el extremo abierto en foco; el dibujo lo muestra.</translation>
    </message>
    <message>
        <source>It ends with a cap; the answer beside the sheet says what is still missing.</source>
        <translation>Termina con un sombrero; la respuesta junto a la hoja dice qué falta.</translation>
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
    <message>
        <source>Mirror %1</source>
        <translation>Reflejar %1</translation>
    </message>
    <message>
        <source>Mirror, &amp;north for south</source>
        <translation>Reflejar, &amp;norte por sur</translation>
    </message>
    <message>
        <source>Mirror, &amp;west for east</source>
        <translation>Reflejar, &amp;oeste por este</translation>
    </message>
    <message numerus="yes">
        <source>Move %n piece(s)</source>
        <translation>
            <numerusform>Mover %n pieza</numerusform>
            <numerusform>Mover %n piezas</numerusform>
        </translation>
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
        <source>Move the path</source>
        <translation>Mover el conducto</translation>
    </message>
    <message>
        <source>Nothing else fits here</source>
        <translation>Aquí no encaja nada más</translation>
    </message>
    <message>
        <source>Nothing has been copied that could be put here.</source>
        <translation>No se ha copiado nada que se pueda poner aquí.</translation>
    </message>
    <message>
        <source>Pa&amp;ste</source>
        <translation>&amp;Pegar</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Pasadas</translation>
    </message>
    <message>
        <source>Passes side by side</source>
        <translation>Pasadas paralelas</translation>
    </message>
    <message numerus="yes">
        <source>Paste %n piece(s)</source>
        <translation>
            <numerusform>Pegar %n pieza</numerusform>
            <numerusform>Pegar %n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>Pull a joint apart</source>
        <translation>Separar una unión</translation>
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
        <source>Put in %1</source>
        <translation>Poner %1</translation>
    </message>
    <message>
        <source>Re&amp;place by</source>
        <translation>&amp;Reemplazar por</translation>
    </message>
    <message>
        <source>Replace by %1</source>
        <translation>Reemplazar por %1</translation>
    </message>
    <message>
        <source>Rotate %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Rotate &amp;left</source>
        <translation>Girar a la &amp;izquierda</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Lado</translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>Take a feed from the rack and bring it here.</source>
        <translation>Tome una alimentación del estante y tráigala aquí.</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>Quitar %1</translation>
    </message>
    <message>
        <source>That way lies the piece itself. Choose another direction.</source>
        <translation>Por ahí está la propia pieza. Elija otra dirección.</translation>
    </message>
    <message>
        <source>The same arrow again makes it longer, the opposite one shorter (Shift: ten steps); type a number for the exact length; Enter draws it, Esc forgets it.</source>
        <translation>La misma flecha lo alarga, la opuesta lo acorta (Mayús: diez pasos); escriba un número para la longitud exacta; Intro lo dibuja, Esc lo olvida.</translation>
    </message>
    <message>
        <source>Then pull the path on from its ring, or bring the next piece to the ring.</source>
        <translation>Luego tire del conducto desde su anillo, o lleve la pieza siguiente al anillo.</translation>
    </message>
    <message>
        <source>There are no two open ends that meet. Drag one to the other first.</source>
        <translation>No hay dos extremos abiertos que coincidan. Arrastre antes uno hasta el otro.</translation>
    </message>
    <message>
        <source>This design is from a newer version: it is open for reading only.</source>
        <translation>Este diseño es de una versión más nueva: está abierto solo para leer.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>Girar %1</translation>
    </message>
    <message>
        <source>Turn %1 end for end</source>
        <translation>Invertir %1</translation>
    </message>
    <message>
        <source>Turn end for &amp;end</source>
        <translation>Inv&amp;ertir</translation>
    </message>
    <message>
        <source>What was copied cannot be put here.</source>
        <translation>Lo copiado no se puede poner aquí.</translation>
    </message>
    <message>
        <source>into this run</source>
        <translation>en este tramo</translation>
    </message>
    <message>
        <source>on this end</source>
        <translation>en este extremo</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>a la izquierda</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>a la derecha</translation>
    </message>
</context>
<context>
    <name>fluewright::DeskView</name>
    <message>
        <source>%1 along: gas %2, wall %3, %4</source>
        <translation>a %1: gas %2, pared %3, %4</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) selected.</source>
        <translation>
            <numerusform>%n pieza elegida.</numerusform>
            <numerusform>%n piezas elegidas.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s).</source>
        <translation>
            <numerusform>%n pieza.</numerusform>
            <numerusform>%n piezas.</numerusform>
        </translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Longitud</translation>
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
        <source>Selected: %1.</source>
        <translation>Elegido: %1.</translation>
    </message>
</context>
<context>
    <name>fluewright::DeskWidget</name>
    <message>
        <source>From where the elevation is seen</source>
        <translation>Desde dónde se ve el alzado</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Cuadrícula</translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation>Paso de cuadrícula</translation>
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
        <source>Turn</source>
        <translation>Giro</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Arriba</translation>
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
        <source>What the colours show</source>
        <translation>Qué muestran los colores</translation>
    </message>
    <message>
        <source>What the path grows with on the level</source>
        <translation>Con qué crece el conducto en horizontal</translation>
    </message>
    <message>
        <source>along the path</source>
        <translation>a lo largo del conducto</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>desde el este</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>desde el sur</translation>
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
        <source>turns with</source>
        <translation>gira con</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>vertical</translation>
    </message>
</context>
<context>
    <name>fluewright::Document</name>
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
        <source>Variant %1</source>
        <translation>Variante %1</translation>
    </message>
</context>
<context>
    <name>fluewright::FileRoom</name>
    <message numerus="yes">
        <source>%1, %n piece(s)</source>
        <translation>
            <numerusform>%1, %n pieza</numerusform>
            <numerusform>%1, %n piezas</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Go back to it</source>
        <translation>&amp;Volver a ella</translation>
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
        <source>A copy of “%1”: saving asks where to put it.</source>
        <translation>Una copia de «%1»: al guardar se pregunta dónde.</translation>
    </message>
    <message>
        <source>A working copy from %1 is here.</source>
        <translation>Hay una copia de trabajo de %1.</translation>
    </message>
    <message>
        <source>Already open</source>
        <translation>Ya abierto</translation>
    </message>
    <message>
        <source>Another window has that file open. Save under another name.</source>
        <translation>Otra ventana tiene abierto ese archivo. Guarde con otro nombre.</translation>
    </message>
    <message>
        <source>Ask me &amp;later</source>
        <translation>Preguntar &amp;después</translation>
    </message>
    <message>
        <source>Choose what to go back to. Undo brings back what is there now.</source>
        <translation>Elija a cuál volver. Deshacer recupera lo que hay ahora.</translation>
    </message>
    <message>
        <source>Earlier versions</source>
        <translation>Versiones anteriores</translation>
    </message>
    <message>
        <source>Earlier versions of “%1”</source>
        <translation>Versiones anteriores de «%1»</translation>
    </message>
    <message>
        <source>Go back to %1</source>
        <translation>Volver a %1</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Abrir una &amp;copia</translation>
    </message>
    <message>
        <source>Saved as %1, but the version before it could not be kept.</source>
        <translation>Guardado como %1, pero no se pudo conservar la versión anterior.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Guardado como %1.</translation>
    </message>
    <message>
        <source>The program with number %1 on the computer “%2” has it. If both saved it, one would lose what it drew. You can work on a copy.</source>
        <translation>Lo tiene el programa con número %1 en el equipo «%2». Si ambos guardaran, uno perdería lo dibujado. Puede trabajar en una copia.</translation>
    </message>
    <message>
        <source>The working copy of “%1” was not opened.</source>
        <translation>La copia de trabajo de «%1» no se abrió.</translation>
    </message>
    <message>
        <source>There is none yet: one is kept each time you save.</source>
        <translation>Todavía no hay ninguna: se conserva una cada vez que guarda.</translation>
    </message>
    <message>
        <source>This is the version of %1.</source>
        <translation>Esta es la versión de %1.</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Trabajo sin guardar</translation>
    </message>
    <message>
        <source>Unsaved work from %1: save it to keep it.</source>
        <translation>Trabajo sin guardar de %1: guárdelo para conservarlo.</translation>
    </message>
    <message>
        <source>“%1” is open in another window.</source>
        <translation>«%1» está abierto en otra ventana.</translation>
    </message>
    <message>
        <source>“%1” was not saved when the program ended.</source>
        <translation>«%1» no estaba guardado cuando terminó el programa.</translation>
    </message>
    <message>
        <source>“%1” was not saved. The design is still here, unsaved.</source>
        <translation>«%1» no se guardó. El diseño sigue aquí, sin guardar.</translation>
    </message>
</context>
<context>
    <name>fluewright::Legend</name>
    <message>
        <source>%1, against outdoor air at the same height: violet below it, orange above it.</source>
        <translation>%1, respecto al aire exterior a la misma altura: violeta por debajo, naranja por encima.</translation>
    </message>
    <message>
        <source>%1. The scale is stretched at its cold end, where benches live.</source>
        <translation>%1. La escala está estirada en su extremo frío, donde viven los bancos.</translation>
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
        <source>coloured once the path is whole</source>
        <translation>con color cuando el conducto esté completo</translation>
    </message>
</context>
<context>
    <name>fluewright::None</name>
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
        <source>&amp;Back to the design&apos;s own</source>
        <translation>&amp;Volver a las del diseño</translation>
    </message>
    <message>
        <source>&amp;Build it</source>
        <translation>&amp;Construirlo</translation>
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
        <source>A path by five questions</source>
        <translation>Un conducto con cinco preguntas</translation>
    </message>
    <message>
        <source>A path by five questions…</source>
        <translation>Un conducto con cinco preguntas…</translation>
    </message>
    <message>
        <source>Burn rate</source>
        <translation>Consumo</translation>
    </message>
    <message>
        <source>Drawing desk</source>
        <translation>Mesa de dibujo</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Buscar una pieza</translation>
    </message>
    <message>
        <source>How wide is the flue?</source>
        <translation>¿Qué diámetro tiene el conducto?</translation>
    </message>
    <message>
        <source>L, round a corner</source>
        <translation>L, dando la vuelta a una esquina</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Humedad</translation>
    </message>
    <message>
        <source>No working copy can be kept (%1): save often.</source>
        <translation>No se puede guardar copia de trabajo (%1): guarde a menudo.</translation>
    </message>
    <message>
        <source>Other conditions tried out, the design left as it is</source>
        <translation>Otras condiciones a prueba, el diseño queda como está</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Exterior</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Estante</translation>
    </message>
    <message>
        <source>Rack of pieces</source>
        <translation>Estante de piezas</translation>
    </message>
    <message>
        <source>Range hood and fans</source>
        <translation>Campana y ventiladores</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Cuarto</translation>
    </message>
    <message>
        <source>U, out and back</source>
        <translation>U, ida y vuelta</translation>
    </message>
    <message>
        <source>Variants</source>
        <translation>Variantes</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Y si</translation>
    </message>
    <message>
        <source>What shape has the bench?</source>
        <translation>¿Qué forma tiene el banco?</translation>
    </message>
    <message>
        <source>What the answers build</source>
        <translation>Lo que construyen las respuestas</translation>
    </message>
    <message>
        <source>Where does the stack stand?</source>
        <translation>¿Dónde está la chimenea?</translation>
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
        <source>straight</source>
        <translation>recto</translation>
    </message>
</context>
<context>
    <name>fluewright::StarterDialog</name>
    <message>
        <source>On a day at 5 °C this has a draft margin of %1 with a cold bench. Everything can be changed on the desk.</source>
        <translation>En un día a 5 °C esto tiene un margen de tiro de %1 con el banco frío. En la mesa se puede cambiar todo.</translation>
    </message>
</context>
<context>
    <name>fluewright::Tour</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 de %2</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Cerrar</translation>
    </message>
    <message>
        <source>&amp;Skip</source>
        <translation>&amp;Omitir</translation>
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
        <source>Press on the ring with the plus at the end of the bench and drag: the path grows. Drag across for an elbow.</source>
        <translation>Pulse el anillo con el más al final del banco y arrastre: el conducto crece. De través sale un codo.</translation>
    </message>
    <message>
        <source>That is all there is to drawing. Pieces come from the rack to the left; F1 lists the keys.</source>
        <translation>Eso es todo lo que hay que saber para dibujar. Las piezas vienen del estante de la izquierda; F1 lista las teclas.</translation>
    </message>
    <message>
        <source>Three gestures</source>
        <translation>Tres gestos</translation>
    </message>
</context>
<context>
    <name>fluewright::TrialPanel</name>
    <message>
        <source>Drag a handle: the answer follows, the design stays as it is.</source>
        <translation>Arrastre un mando: la respuesta sigue, el diseño queda como está.</translation>
    </message>
    <message>
        <source>in the design: %1</source>
        <translation>en el diseño: %1</translation>
    </message>
    <message>
        <source>▲ The answer is for these conditions, not for the design&apos;s own.</source>
        <translation>▲ La respuesta es para estas condiciones, no para las del diseño.</translation>
    </message>
</context>
<context>
    <name>fluewright::VariantBar</name>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>Name the variant</source>
        <translation>Nombrar la variante</translation>
    </message>
</context>
</TS>
