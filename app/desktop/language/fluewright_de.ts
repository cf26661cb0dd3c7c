<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Catalogue</name>
    <message>
        <source>A fixed sum taken off the design margin: 0 where the cap stands clear of the roof, 25 for an inland and 40 for a coastal site where it does not.</source>
        <translation>Fester Abzug von der Reserve: 0, wo die Haube frei über dem Dach steht, sonst 25 im Binnenland und 40 an der Küste.</translation>
    </message>
    <message>
        <source>Adapter, channel to pipe</source>
        <translation>Übergang, Kanal auf Rohr</translation>
    </message>
    <message>
        <source>Adapter, pipe to channel</source>
        <translation>Übergang, Rohr auf Kanal</translation>
    </message>
    <message>
        <source>Air changes at 50 Pa</source>
        <translation>Luftwechsel bei 50 Pa</translation>
    </message>
    <message>
        <source>Air from</source>
        <translation>Luft von</translation>
    </message>
    <message>
        <source>Air of the room around the heater: read it on a thermometer before lighting.</source>
        <translation>Luft des Raums um den Ofen: vor dem Anzünden am Thermometer ablesen.</translation>
    </message>
    <message>
        <source>Air over what the wood needs, for the draft check: 1 would be exactly enough; under 1.5 it smokes, over 4 the fire is being cooled.</source>
        <translation>Luft über das hinaus, was das Holz braucht, für die Zugprüfung: 1 wäre genau genug; unter 1,5 raucht es, über 4 wird das Feuer gekühlt.</translation>
    </message>
    <message>
        <source>All fans that blow out of the house at once: a bath fan about 90, a clothes dryer 250-340, a range hood 350-2000.</source>
        <translation>Alle Lüfter, die zugleich aus dem Haus blasen: Badlüfter etwa 90, Trockner 250-340, Dunstabzug 350-2000.</translation>
    </message>
    <message>
        <source>Along the drawn line.</source>
        <translation>Entlang der gezeichneten Linie.</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Meereshöhe</translation>
    </message>
    <message>
        <source>Any other cap: reckon with two velocity heads, it may be more.</source>
        <translation>Jede andere Haube: mit zwei Staudrücken rechnen, es kann mehr sein.</translation>
    </message>
    <message>
        <source>Area of the air slot over the area of the doorway.</source>
        <translation>Fläche des Luftschlitzes durch die der Türöffnung.</translation>
    </message>
    <message>
        <source>At its far end.</source>
        <translation>Am fernen Ende.</translation>
    </message>
    <message>
        <source>At its first end.</source>
        <translation>Am ersten Ende.</translation>
    </message>
    <message>
        <source>Barrel</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>Barrel diameter</source>
        <translation>Fassdurchmesser</translation>
    </message>
    <message>
        <source>Batch box</source>
        <translation>Füllkammer</translation>
    </message>
    <message>
        <source>Bell</source>
        <translation>Glocke</translation>
    </message>
    <message>
        <source>Bend made of three, four or five pieces of pipe, as stovepipe elbows are.</source>
        <translation>Bogen aus drei, vier oder fünf Rohrstücken, wie Ofenrohrbögen sind.</translation>
    </message>
    <message>
        <source>Between the way on and the branch.</source>
        <translation>Zwischen dem Weg weiter und dem Abzweig.</translation>
    </message>
    <message>
        <source>Blade</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>Blade damper</source>
        <translation>Drosselklappe</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Lichte Weite</translation>
    </message>
    <message>
        <source>Box between barrel and bench pipe, wide and with an ash pit, so that the gas need not squeeze.</source>
        <translation>Kasten zwischen Fass und Bankrohr, weit und mit Aschegrube, damit das Gas sich nicht zwängen muss.</translation>
    </message>
    <message>
        <source>Branch angle</source>
        <translation>Winkel des Abzweigs</translation>
    </message>
    <message>
        <source>Branch bore</source>
        <translation>Weite des Abzweigs</translation>
    </message>
    <message>
        <source>Brick channel in the bench</source>
        <translation>Ziegelkanal in der Bank</translation>
    </message>
    <message>
        <source>Brick channel under the floor, 60 mm</source>
        <translation>Ziegelkanal unter dem Boden, 60 mm</translation>
    </message>
    <message>
        <source>Brick chimney with a clay liner.</source>
        <translation>Ziegelschornstein mit Tonrohr.</translation>
    </message>
    <message>
        <source>Brick on edge, 60 mm</source>
        <translation>Ziegel hochkant, 60 mm</translation>
    </message>
    <message>
        <source>Brick tunnel under the floor.</source>
        <translation>Ziegelkanal unter dem Boden.</translation>
    </message>
    <message>
        <source>Build-up from the gas outwards.</source>
        <translation>Aufbau vom Gas nach außen.</translation>
    </message>
    <message>
        <source>Buried floor tunnel</source>
        <translation>Bodenkanal</translation>
    </message>
    <message>
        <source>Buried pipe</source>
        <translation>Erdverlegtes Rohr</translation>
    </message>
    <message>
        <source>Burn rate</source>
        <translation>Abbrand</translation>
    </message>
    <message>
        <source>Burn tunnel</source>
        <translation>Brenntunnel</translation>
    </message>
    <message>
        <source>Bypass link</source>
        <translation>Umgehung</translation>
    </message>
    <message>
        <source>Cap loss</source>
        <translation>Verlust der Haube</translation>
    </message>
    <message>
        <source>Cap made to hold the draft back little.</source>
        <translation>Haube, die den Zug wenig hemmt.</translation>
    </message>
    <message>
        <source>Cap of unknown make</source>
        <translation>Haube unbekannter Bauart</translation>
    </message>
    <message>
        <source>Ceramic fibre blanket, 128 kg/m3</source>
        <translation>Keramikfasermatte, 128 kg/m³</translation>
    </message>
    <message>
        <source>Channel wall; the mass is said below.</source>
        <translation>Kanalwand; die Masse steht unten.</translation>
    </message>
    <message>
        <source>Channel, height</source>
        <translation>Kanal, Höhe</translation>
    </message>
    <message>
        <source>Channel, width</source>
        <translation>Kanal, Breite</translation>
    </message>
    <message>
        <source>Chimney length through ceiling, attic and roof.</source>
        <translation>Schornsteinstück durch Decke, Dachraum und Dach.</translation>
    </message>
    <message>
        <source>Clay flue tile</source>
        <translation>Tonrohr</translation>
    </message>
    <message>
        <source>Clay liner in half-brick masonry</source>
        <translation>Tonrohr in halbsteinigem Mauerwerk</translation>
    </message>
    <message>
        <source>Clay plaster</source>
        <translation>Lehmputz</translation>
    </message>
    <message>
        <source>Clay-lined masonry flue</source>
        <translation>Gemauerter Zug mit Tonrohr</translation>
    </message>
    <message>
        <source>Cleanout cap</source>
        <translation>Reinigungsdeckel</translation>
    </message>
    <message>
        <source>Cleanout tee</source>
        <translation>Reinigungs-T-Stück</translation>
    </message>
    <message>
        <source>Closed air gap of a double-wall pipe</source>
        <translation>Geschlossener Luftspalt eines doppelwandigen Rohrs</translation>
    </message>
    <message>
        <source>Closed loading door of a batch box; air comes in through its slot.</source>
        <translation>Geschlossene Fülltür einer Füllkammer; Luft kommt durch ihren Schlitz.</translation>
    </message>
    <message>
        <source>Cob (clay, sand, straw), dry</source>
        <translation>Wellerlehm (Lehm, Sand, Stroh), trocken</translation>
    </message>
    <message>
        <source>Concrete, 2200 kg/m3</source>
        <translation>Beton, 2200 kg/m³</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Depth of the door frame.</source>
        <translation>Tiefe des Türrahmens.</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Door with air slot</source>
        <translation>Tür mit Luftschlitz</translation>
    </message>
    <message>
        <source>Doorway, height</source>
        <translation>Türöffnung, Höhe</translation>
    </message>
    <message>
        <source>Doorway, width</source>
        <translation>Türöffnung, Breite</translation>
    </message>
    <message>
        <source>Double-wall pipe</source>
        <translation>Doppelwandiges Rohr</translation>
    </message>
    <message>
        <source>Double-wall pipe, 10 mm air gap</source>
        <translation>Doppelwandiges Rohr, 10 mm Luftspalt</translation>
    </message>
    <message>
        <source>Draft at which the flap begins to open.</source>
        <translation>Zug, bei dem die Klappe zu öffnen beginnt.</translation>
    </message>
    <message>
        <source>Draft regulator</source>
        <translation>Zugregler</translation>
    </message>
    <message>
        <source>Drawn or stamped bend without seams across the flow.</source>
        <translation>Gezogener oder gepresster Bogen ohne Nähte quer zum Strom.</translation>
    </message>
    <message>
        <source>Drums split lengthwise and laid open side down under the seat: a wide, slow channel.</source>
        <translation>Längs geteilte Fässer, offen nach unten unter dem Sitz: ein weiter, langsamer Kanal.</translation>
    </message>
    <message>
        <source>Duct fan with its motor in the stream. A steady calculation has it off: it counts as an obstacle, what it blows is left out.</source>
        <translation>Rohrlüfter mit Motor im Strom. Die stationäre Rechnung hat ihn aus: er zählt als Hindernis, was er bläst, bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>Duct that brings outdoor air to a lidded feed; its screened mouth is outside.</source>
        <translation>Leitung, die Außenluft zu einer gedeckelten Beschickung bringt; ihre vergitterte Mündung ist draußen.</translation>
    </message>
    <message>
        <source>Elbow in the bench</source>
        <translation>Bogen in der Bank</translation>
    </message>
    <message>
        <source>Exhaust fans</source>
        <translation>Abluft</translation>
    </message>
    <message>
        <source>Exposed share</source>
        <translation>Freier Anteil</translation>
    </message>
    <message>
        <source>Extra suction</source>
        <translation>Zusätzlicher Unterdruck</translation>
    </message>
    <message>
        <source>Extractor on top of the stack. A steady calculation has it off: it counts as an obstacle, what it blows is left out.</source>
        <translation>Sauger auf dem Schornstein. Die stationäre Rechnung hat ihn aus: er zählt als Hindernis, was er bläst, bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>Factory-made chimney length with insulation between its walls.</source>
        <translation>Fertiges Schornsteinstück mit Dämmung zwischen den Wänden.</translation>
    </message>
    <message>
        <source>Far bore</source>
        <translation>Ferne Weite</translation>
    </message>
    <message>
        <source>Feed tube</source>
        <translation>Beschickungsschacht</translation>
    </message>
    <message>
        <source>Fir</source>
        <translation>Tanne</translation>
    </message>
    <message>
        <source>Firebox loaded through a door, with a narrow upright port into the riser behind it.</source>
        <translation>Brennkammer mit Fülltür und schmalem, hohem Durchlass in das Steigrohr dahinter.</translation>
    </message>
    <message>
        <source>Fireclay brick</source>
        <translation>Schamottstein</translation>
    </message>
    <message>
        <source>Fired clay brick</source>
        <translation>Gebrannter Ziegel</translation>
    </message>
    <message>
        <source>Flat or conical hat over the open pipe.</source>
        <translation>Flacher oder kegeliger Hut über dem offenen Rohr.</translation>
    </message>
    <message>
        <source>Flow safety</source>
        <translation>Sicherheit des Stroms</translation>
    </message>
    <message>
        <source>Free height under the hat over the bore.</source>
        <translation>Freie Höhe unter dem Hut durch die Weite.</translation>
    </message>
    <message>
        <source>From a rectangular channel into a round pipe.</source>
        <translation>Von einem rechteckigen Kanal in ein rundes Rohr.</translation>
    </message>
    <message>
        <source>From a round pipe into a rectangular channel.</source>
        <translation>Von einem runden Rohr in einen rechteckigen Kanal.</translation>
    </message>
    <message>
        <source>From above under a feed, or straight through the end.</source>
        <translation>Von oben unter einer Beschickung, oder gerade durch das Ende.</translation>
    </message>
    <message>
        <source>From the heater&apos;s floor to the top of the heated space: measure it up to the ceiling that lets no air through.</source>
        <translation>Vom Boden des Ofens bis oben im beheizten Raum: bis zur Decke messen, die keine Luft durchlässt.</translation>
    </message>
    <message>
        <source>From the middle of the feed to the middle of the riser.</source>
        <translation>Von der Mitte der Beschickung zur Mitte des Steigrohrs.</translation>
    </message>
    <message>
        <source>From the riser&apos;s rim to the lid. At a quarter of the bore the ring is as wide open as the riser.</source>
        <translation>Vom Rand des Steigrohrs zum Deckel. Bei einem Viertel der Weite ist der Ring so offen wie das Steigrohr.</translation>
    </message>
    <message>
        <source>From the surface above down to the middle of the flue.</source>
        <translation>Von der Oberfläche darüber bis zur Mitte des Zuges.</translation>
    </message>
    <message>
        <source>Galvanised duct, 0.5 mm</source>
        <translation>Verzinkte Leitung, 0,5 mm</translation>
    </message>
    <message>
        <source>Galvanised steel, folded or spiral</source>
        <translation>Verzinkter Stahl, gefalzt oder gewickelt</translation>
    </message>
    <message>
        <source>Gap over bore</source>
        <translation>Spalt durch Weite</translation>
    </message>
    <message>
        <source>Gap over the riser</source>
        <translation>Spalt über dem Steigrohr</translation>
    </message>
    <message>
        <source>Gas comes in</source>
        <translation>Gas tritt ein</translation>
    </message>
    <message>
        <source>Gas leaves</source>
        <translation>Gas tritt aus</translation>
    </message>
    <message>
        <source>Gradual change of bore, narrower or wider.</source>
        <translation>Allmählicher Wechsel der Weite, enger oder weiter.</translation>
    </message>
    <message>
        <source>Granite or hard field stone</source>
        <translation>Granit oder harter Feldstein</translation>
    </message>
    <message>
        <source>Green</source>
        <translation>Frisch</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Erdreich</translation>
    </message>
    <message>
        <source>Half drum over a channel, 1.0 mm</source>
        <translation>Halbes Fass über einem Kanal, 1,0 mm</translation>
    </message>
    <message>
        <source>Half-barrel channel</source>
        <translation>Halbfasskanal</translation>
    </message>
    <message>
        <source>Half-brick, 115 mm</source>
        <translation>Halber Stein, 115 mm</translation>
    </message>
    <message>
        <source>Head of a masonry flue</source>
        <translation>Kopf eines gemauerten Zuges</translation>
    </message>
    <message>
        <source>Heat riser</source>
        <translation>Steigrohr</translation>
    </message>
    <message>
        <source>Heated volume: floor area times ceiling height.</source>
        <translation>Beheiztes Volumen: Grundfläche mal Deckenhöhe.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Height at which indoor and outdoor pressure agree: about half the height when leaks are spread evenly, higher when the top leaks more.</source>
        <translation>Höhe, in der Innen- und Außendruck gleich sind: etwa die halbe Höhe bei gleichmäßigen Lecks, höher, wenn es oben mehr leckt.</translation>
    </message>
    <message>
        <source>Height of the bench or wall around the flue.</source>
        <translation>Höhe der Bank oder Wand um den Zug.</translation>
    </message>
    <message>
        <source>Height of the heated space</source>
        <translation>Höhe des beheizten Raums</translation>
    </message>
    <message>
        <source>Height of the house above sea level: from a map. Thin air carries less draft.</source>
        <translation>Höhe des Hauses über dem Meer: aus einer Karte. Dünne Luft trägt weniger Zug.</translation>
    </message>
    <message>
        <source>Height of the tube.</source>
        <translation>Höhe des Schachts.</translation>
    </message>
    <message>
        <source>Height.</source>
        <translation>Höhe.</translation>
    </message>
    <message>
        <source>Hottest gas, or air at the motor, that the maker allows.</source>
        <translation>Heißestes Gas, oder Luft am Motor, das der Hersteller erlaubt.</translation>
    </message>
    <message>
        <source>House volume</source>
        <translation>Hausvolumen</translation>
    </message>
    <message>
        <source>How far the blade is turned out of the flow: 0 open, 90 shut.</source>
        <translation>Wie weit die Klappe aus dem Strom gedreht ist: 0 offen, 90 zu.</translation>
    </message>
    <message>
        <source>How far the flow turns.</source>
        <translation>Wie weit der Strom abbiegt.</translation>
    </message>
    <message>
        <source>How leaky the house is, per hour, by a blower-door test: about 1 very tight, 3 tight, 5 usual, 10 and more an old draughty house.</source>
        <translation>Wie undicht das Haus ist, je Stunde, nach Differenzdruckprüfung: etwa 1 sehr dicht, 3 dicht, 5 üblich, 10 und mehr ein altes zugiges Haus.</translation>
    </message>
    <message>
        <source>In-line duct fan</source>
        <translation>Rohrlüfter</translation>
    </message>
    <message>
        <source>Inducer with a blade reaching in from the side and its motor outside. A steady calculation has it off: it counts as an obstacle, what it blows is left out.</source>
        <translation>Saugzug mit seitlich hineinragendem Rad und Motor außen. Die stationäre Rechnung hat ihn aus: er zählt als Hindernis, was er bläst, bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>Inlet height</source>
        <translation>Höhe des Einlasses</translation>
    </message>
    <message>
        <source>Inside barrel or bell</source>
        <translation>In Fass oder Glocke</translation>
    </message>
    <message>
        <source>Inside depth, door to back wall.</source>
        <translation>Innentiefe, Tür bis Rückwand.</translation>
    </message>
    <message>
        <source>Inside diameter of the drum that was split.</source>
        <translation>Innendurchmesser des geteilten Fasses.</translation>
    </message>
    <message>
        <source>Inside diameter of the drum.</source>
        <translation>Innendurchmesser des Fasses.</translation>
    </message>
    <message>
        <source>Inside diameter.</source>
        <translation>Innendurchmesser.</translation>
    </message>
    <message>
        <source>Inside height of the doorway.</source>
        <translation>Innenhöhe der Türöffnung.</translation>
    </message>
    <message>
        <source>Inside width of the doorway.</source>
        <translation>Innenbreite der Türöffnung.</translation>
    </message>
    <message>
        <source>Inside, across the way in.</source>
        <translation>Innen, quer zum Eintritt.</translation>
    </message>
    <message>
        <source>Inside, across.</source>
        <translation>Innen, quer.</translation>
    </message>
    <message>
        <source>Inside, along the tunnel.</source>
        <translation>Innen, in Richtung des Tunnels.</translation>
    </message>
    <message>
        <source>Inside, along the way in.</source>
        <translation>Innen, in Richtung des Eintritts.</translation>
    </message>
    <message>
        <source>Inside, ash pit left out.</source>
        <translation>Innen, ohne Aschegrube.</translation>
    </message>
    <message>
        <source>Inside, floor to ceiling.</source>
        <translation>Innen, Boden bis Decke.</translation>
    </message>
    <message>
        <source>Inside.</source>
        <translation>Innen.</translation>
    </message>
    <message>
        <source>Insulated chimney</source>
        <translation>Gedämmter Schornstein</translation>
    </message>
    <message>
        <source>Insulated chimney, 25 mm wool</source>
        <translation>Gedämmter Schornstein, 25 mm Wolle</translation>
    </message>
    <message>
        <source>Insulated chimney, 50 mm wool</source>
        <translation>Gedämmter Schornstein, 50 mm Wolle</translation>
    </message>
    <message>
        <source>Insulated upright flue in which the fire burns out; inside a barrel or bell it gives its loss back to the gas around it.</source>
        <translation>Gedämmter stehender Zug, in dem das Feuer ausbrennt; in einem Fass oder einer Glocke gibt er seinen Verlust an das Gas ringsum zurück.</translation>
    </message>
    <message>
        <source>Insulating firebrick (1260 degC grade)</source>
        <translation>Feuerleichtstein (Klasse 1260 °C)</translation>
    </message>
    <message>
        <source>Insulating firebrick, 65 mm</source>
        <translation>Feuerleichtstein, 65 mm</translation>
    </message>
    <message>
        <source>Kiln dried</source>
        <translation>Kammergetrocknet</translation>
    </message>
    <message>
        <source>Last bit of liner.</source>
        <translation>Letztes Stück Tonrohr.</translation>
    </message>
    <message>
        <source>Last bit of pipe.</source>
        <translation>Letztes Stück Rohr.</translation>
    </message>
    <message>
        <source>Leak when shut</source>
        <translation>Leck, wenn zu</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Bleibt offen</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Level brick tunnel between feed and riser, where the fire lies.</source>
        <translation>Waagerechter Ziegeltunnel zwischen Beschickung und Steigrohr, in dem das Feuer liegt.</translation>
    </message>
    <message>
        <source>Level round tunnel between feed and riser, where the fire lies: cast, or steel in insulation.</source>
        <translation>Waagerechter runder Tunnel zwischen Beschickung und Steigrohr, in dem das Feuer liegt: gegossen oder Stahl in Dämmung.</translation>
    </message>
    <message>
        <source>Lid on an open end, to be taken off for cleaning.</source>
        <translation>Deckel auf einem offenen Ende, zum Reinigen abzunehmen.</translation>
    </message>
    <message>
        <source>Lid to foot.</source>
        <translation>Deckel bis Fuß.</translation>
    </message>
    <message>
        <source>Lies in</source>
        <translation>Liegt in</translation>
    </message>
    <message>
        <source>Lime and sand plaster</source>
        <translation>Kalksandputz</translation>
    </message>
    <message>
        <source>Loss standing still</source>
        <translation>Verlust im Stillstand</translation>
    </message>
    <message>
        <source>Low-resistance cap</source>
        <translation>Haube mit wenig Widerstand</translation>
    </message>
    <message>
        <source>Manifold</source>
        <translation>Sammler</translation>
    </message>
    <message>
        <source>Masonry chamber that hot gas fills from the top; cooled gas sinks and leaves low.</source>
        <translation>Gemauerte Kammer, die heißes Gas von oben füllt; abgekühltes sinkt und tritt unten aus.</translation>
    </message>
    <message>
        <source>Mass, height</source>
        <translation>Masse, Höhe</translation>
    </message>
    <message>
        <source>Mass, material</source>
        <translation>Masse, Material</translation>
    </message>
    <message>
        <source>Mass, width</source>
        <translation>Masse, Breite</translation>
    </message>
    <message>
        <source>Middle of the inlet above the floor; of a riser inside, its rim.</source>
        <translation>Mitte des Einlasses über dem Boden; bei einem Steigrohr darin dessen Rand.</translation>
    </message>
    <message>
        <source>Middle of the outlet above the barrel&apos;s foot.</source>
        <translation>Mitte des Auslasses über dem Fuß des Fasses.</translation>
    </message>
    <message>
        <source>Middle of the outlet above the floor.</source>
        <translation>Mitte des Auslasses über dem Boden.</translation>
    </message>
    <message>
        <source>Mineral wool, 100 kg/m3</source>
        <translation>Mineralwolle, 100 kg/m³</translation>
    </message>
    <message>
        <source>Mitred elbow</source>
        <translation>Kniestück</translation>
    </message>
    <message>
        <source>Mixed hardwood</source>
        <translation>Gemischtes Laubholz</translation>
    </message>
    <message>
        <source>Mixed softwood</source>
        <translation>Gemischtes Nadelholz</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Neutral plane</source>
        <translation>Neutrale Ebene</translation>
    </message>
    <message>
        <source>No wall of its own</source>
        <translation>Keine eigene Wand</translation>
    </message>
    <message>
        <source>Of the branch.</source>
        <translation>Des Abzweigs.</translation>
    </message>
    <message>
        <source>Of the inlet.</source>
        <translation>Des Einlasses.</translation>
    </message>
    <message>
        <source>Of the opening into it.</source>
        <translation>Der Öffnung hinein.</translation>
    </message>
    <message>
        <source>Of the outlet at the foot.</source>
        <translation>Des Auslasses am Fuß.</translation>
    </message>
    <message>
        <source>Of the outlet.</source>
        <translation>Des Auslasses.</translation>
    </message>
    <message>
        <source>Of the pipe out of it.</source>
        <translation>Des Rohrs hinaus.</translation>
    </message>
    <message>
        <source>Of the pipe.</source>
        <translation>Des Rohrs.</translation>
    </message>
    <message>
        <source>Of the riser behind it.</source>
        <translation>Des Steigrohrs dahinter.</translation>
    </message>
    <message>
        <source>Of the riser that stands in it.</source>
        <translation>Des Steigrohrs, das darin steht.</translation>
    </message>
    <message>
        <source>Open share of screen or louvre over the mouth.</source>
        <translation>Offener Anteil von Gitter oder Lamellen vor der Mündung.</translation>
    </message>
    <message>
        <source>Open stack head</source>
        <translation>Offene Mündung</translation>
    </message>
    <message>
        <source>Open to the room, or lidded with a duct joined on.</source>
        <translation>Offen zum Raum, oder mit Deckel und angeschlossener Leitung.</translation>
    </message>
    <message>
        <source>Outdoor air on the day in question: try the mildest day on which you would still light a fire.</source>
        <translation>Außenluft am fraglichen Tag: den mildesten Tag versuchen, an dem Sie noch heizen würden.</translation>
    </message>
    <message>
        <source>Outdoor humidity</source>
        <translation>Feuchte draußen</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Draußen</translation>
    </message>
    <message>
        <source>Outlet bore</source>
        <translation>Weite des Auslasses</translation>
    </message>
    <message>
        <source>Outlet height</source>
        <translation>Höhe des Auslasses</translation>
    </message>
    <message>
        <source>Outlet side</source>
        <translation>Seite des Auslasses</translation>
    </message>
    <message>
        <source>Outside diameter of the riser with its insulation.</source>
        <translation>Außendurchmesser des Steigrohrs mit seiner Dämmung.</translation>
    </message>
    <message>
        <source>Outside-air duct</source>
        <translation>Außenluftleitung</translation>
    </message>
    <message>
        <source>Passage through a wall, with its clearance to whatever burns.</source>
        <translation>Durchgang durch eine Wand, mit Abstand zu allem, was brennt.</translation>
    </message>
    <message>
        <source>Perlite bound with clay</source>
        <translation>Perlit, mit Lehm gebunden</translation>
    </message>
    <message>
        <source>Perlite, loose</source>
        <translation>Perlit, lose</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>Pieces the bend is made of, ends included.</source>
        <translation>Stücke, aus denen der Bogen besteht, mit den Enden.</translation>
    </message>
    <message>
        <source>Pipe in the bench</source>
        <translation>Rohr in der Bank</translation>
    </message>
    <message>
        <source>Pipe under the hat.</source>
        <translation>Rohr unter dem Hut.</translation>
    </message>
    <message>
        <source>Pipe under the opening.</source>
        <translation>Rohr unter der Öffnung.</translation>
    </message>
    <message>
        <source>Pipe wall; the ground is said below.</source>
        <translation>Rohrwand; das Erdreich steht unten.</translation>
    </message>
    <message>
        <source>Pipe wall; the mass is said below.</source>
        <translation>Rohrwand; die Masse steht unten.</translation>
    </message>
    <message>
        <source>Pipe with an air gap between two walls.</source>
        <translation>Rohr mit Luftspalt zwischen zwei Wänden.</translation>
    </message>
    <message>
        <source>Plain stovepipe in the room.</source>
        <translation>Einfaches Ofenrohr im Raum.</translation>
    </message>
    <message>
        <source>Port, height</source>
        <translation>Durchlass, Höhe</translation>
    </message>
    <message>
        <source>Port, thickness</source>
        <translation>Durchlass, Dicke</translation>
    </message>
    <message>
        <source>Port, width</source>
        <translation>Durchlass, Breite</translation>
    </message>
    <message>
        <source>Radius of the centre line over the bore: the rounder, the easier.</source>
        <translation>Radius der Mittellinie durch die Weite: je runder, desto leichter.</translation>
    </message>
    <message>
        <source>Radius over bore</source>
        <translation>Radius durch Weite</translation>
    </message>
    <message>
        <source>Rain cap</source>
        <translation>Regenhaube</translation>
    </message>
    <message>
        <source>Rated for</source>
        <translation>Zugelassen für</translation>
    </message>
    <message>
        <source>Rectangular channel laid in brick inside the bench.</source>
        <translation>Rechteckiger, gemauerter Kanal in der Bank.</translation>
    </message>
    <message>
        <source>Red oak</source>
        <translation>Roteiche</translation>
    </message>
    <message>
        <source>Reducer or expander</source>
        <translation>Reduzierung oder Erweiterung</translation>
    </message>
    <message>
        <source>Relative humidity indoors: it goes up the flue with the combustion air and raises the dew point.</source>
        <translation>Relative Feuchte innen: sie geht mit der Verbrennungsluft in den Zug und hebt den Taupunkt.</translation>
    </message>
    <message>
        <source>Relative humidity outdoors: from the weather report. It matters little when it is cold.</source>
        <translation>Relative Feuchte draußen: aus dem Wetterbericht. Bei Kälte spielt sie kaum eine Rolle.</translation>
    </message>
    <message>
        <source>Resistance is multiplied by this in the margin: 1.5 for a natural chimney, 1.2 with a fan or sealed air supply, 1 for bare physics.</source>
        <translation>Der Widerstand wird damit in der Reserve malgenommen: 1,5 für einen natürlichen Schornstein, 1,2 mit Gebläse oder dichter Luftzufuhr, 1 für bloße Physik.</translation>
    </message>
    <message>
        <source>Rise per run: 0.02 climbs 2 cm in a metre, -0.02 falls. It lifts the far end; a standing piece takes no notice.</source>
        <translation>Steigung je Länge: 0,02 steigt 2 cm auf einen Meter, -0,02 fällt. Es hebt das ferne Ende; ein stehendes Teil kümmert das nicht.</translation>
    </message>
    <message>
        <source>Riser of ceramic fibre, 50 mm</source>
        <translation>Steigrohr aus Keramikfaser, 50 mm</translation>
    </message>
    <message>
        <source>Riser of firebrick splits in perlite and clay</source>
        <translation>Steigrohr aus Schamottplatten in Perlit und Lehm</translation>
    </message>
    <message>
        <source>Riser, outside</source>
        <translation>Steigrohr, außen</translation>
    </message>
    <message>
        <source>Roof passage</source>
        <translation>Dachdurchführung</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Room humidity</source>
        <translation>Feuchte im Raum</translation>
    </message>
    <message>
        <source>Round blade on a spindle in the pipe.</source>
        <translation>Runde Klappe auf einer Achse im Rohr.</translation>
    </message>
    <message>
        <source>Round burn tunnel</source>
        <translation>Runder Brenntunnel</translation>
    </message>
    <message>
        <source>Round feed tube</source>
        <translation>Runder Beschickungsschacht</translation>
    </message>
    <message>
        <source>Round pipe lying in the mass of a bench or wall.</source>
        <translation>Rundes Rohr in der Masse einer Bank oder Wand.</translation>
    </message>
    <message>
        <source>Round pipe under the floor.</source>
        <translation>Rundes Rohr unter dem Boden.</translation>
    </message>
    <message>
        <source>Screen, clogged</source>
        <translation>Gitter, verlegt</translation>
    </message>
    <message>
        <source>Screen, open share</source>
        <translation>Gitter, offener Anteil</translation>
    </message>
    <message>
        <source>Segmented elbow</source>
        <translation>Segmentbogen</translation>
    </message>
    <message>
        <source>Segmented elbow lying in the bench&apos;s mass.</source>
        <translation>Segmentbogen in der Masse der Bank.</translation>
    </message>
    <message>
        <source>Set draft</source>
        <translation>Eingestellter Zug</translation>
    </message>
    <message>
        <source>Share of the bore that a shut blade leaves open.</source>
        <translation>Anteil der Weite, den die geschlossene Klappe offen lässt.</translation>
    </message>
    <message>
        <source>Share of the heat that leaves as carbon monoxide, soot and charcoal.</source>
        <translation>Anteil der Wärme, der als Kohlenmonoxid, Ruß und Holzkohle abgeht.</translation>
    </message>
    <message>
        <source>Share of the mass&apos;s outline that gives heat to the room: a bench on the floor against a wall about half, one with air all round 1.</source>
        <translation>Anteil des Umrisses der Masse, der Wärme an den Raum gibt: eine Bank am Boden vor einer Wand etwa die Hälfte, eine rundum freie 1.</translation>
    </message>
    <message>
        <source>Share of the mouth that the sticks leave open to the air. It chokes the fire more than anything else: half open runs lean, a fifth open runs rich.</source>
        <translation>Anteil der Öffnung, den die Scheite der Luft lassen. Er drosselt das Feuer mehr als alles andere: halb offen läuft mager, ein Fünftel offen läuft fett.</translation>
    </message>
    <message>
        <source>Share of the screen that soot has closed; without a screen it means nothing.</source>
        <translation>Anteil des Gitters, den Ruß verlegt hat; ohne Gitter ohne Bedeutung.</translation>
    </message>
    <message>
        <source>Share of the wind&apos;s dynamic pressure that stands at the cap: above zero it blows down, below zero it draws. A cap clear of the roof draws a little.</source>
        <translation>Anteil des Staudrucks des Windes an der Haube: über null drückt er hinein, unter null saugt er. Eine Haube frei über dem Dach saugt ein wenig.</translation>
    </message>
    <message>
        <source>Sharp corner of a rectangular channel.</source>
        <translation>Scharfe Ecke eines rechteckigen Kanals.</translation>
    </message>
    <message>
        <source>Sharp turn of round pipe, one seam.</source>
        <translation>Scharfe Ecke aus rundem Rohr, eine Naht.</translation>
    </message>
    <message>
        <source>Short way past the bench with a blade in it. A series path counts it only where it is the way the gas takes.</source>
        <translation>Kurzer Weg an der Bank vorbei mit einer Klappe darin. Im Reihenweg zählt sie nur, wo das Gas ihn nimmt.</translation>
    </message>
    <message>
        <source>Shut where unjoined</source>
        <translation>Zu, wo unverbunden</translation>
    </message>
    <message>
        <source>Side-mounted inducer</source>
        <translation>Seitlicher Saugzug</translation>
    </message>
    <message>
        <source>Single-wall pipe</source>
        <translation>Einwandiges Rohr</translation>
    </message>
    <message>
        <source>Single-wall stove pipe, 0.7 mm</source>
        <translation>Einwandiges Ofenrohr, 0,7 mm</translation>
    </message>
    <message>
        <source>Slope</source>
        <translation>Gefälle</translation>
    </message>
    <message>
        <source>Slot in the back wall.</source>
        <translation>Schlitz in der Rückwand.</translation>
    </message>
    <message>
        <source>Slot share</source>
        <translation>Anteil des Schlitzes</translation>
    </message>
    <message>
        <source>Smooth elbow</source>
        <translation>Glatter Bogen</translation>
    </message>
    <message>
        <source>Soapstone</source>
        <translation>Speckstein</translation>
    </message>
    <message>
        <source>Soil, clay or silt</source>
        <translation>Boden, Ton oder Schluff</translation>
    </message>
    <message>
        <source>Soil, sand or gravel</source>
        <translation>Boden, Sand oder Kies</translation>
    </message>
    <message>
        <source>Spark screen</source>
        <translation>Funkengitter</translation>
    </message>
    <message>
        <source>Split, one summer</source>
        <translation>Gespalten, ein Sommer</translation>
    </message>
    <message>
        <source>Split, two summers under cover</source>
        <translation>Gespalten, zwei Sommer unter Dach</translation>
    </message>
    <message>
        <source>Stack-top fan</source>
        <translation>Schornsteinaufsatzlüfter</translation>
    </message>
    <message>
        <source>Stainless steel</source>
        <translation>Edelstahl</translation>
    </message>
    <message>
        <source>Steel drum turned over the riser: gas turns under its lid, gives heat to the room on the way down and leaves at the foot.</source>
        <translation>Stahlfass über dem Steigrohr: das Gas kehrt unter dem Deckel um, gibt auf dem Weg nach unten Wärme an den Raum und tritt am Fuß aus.</translation>
    </message>
    <message>
        <source>Steel drum, 1.2 mm</source>
        <translation>Stahlfass, 1,2 mm</translation>
    </message>
    <message>
        <source>Steel sheet, black or painted</source>
        <translation>Stahlblech, schwarz oder gestrichen</translation>
    </message>
    <message>
        <source>Suction measured at the heater with a gauge, on top of what the exhaust flow gives by itself.</source>
        <translation>Am Ofen gemessener Unterdruck, zusätzlich zu dem der Abluft.</translation>
    </message>
    <message>
        <source>Surface above</source>
        <translation>Oberfläche darüber</translation>
    </message>
    <message>
        <source>Tee</source>
        <translation>T-Stück</translation>
    </message>
    <message>
        <source>Tee in the run with a lid on its branch: where soot and fly ash come out.</source>
        <translation>T-Stück im Strang mit Deckel am Abzweig: wo Ruß und Flugasche herauskommen.</translation>
    </message>
    <message>
        <source>The open top of a brick chimney.</source>
        <translation>Die offene Mündung eines Ziegelschornsteins.</translation>
    </message>
    <message>
        <source>The pipe&apos;s open top: nothing is lost beyond the free exit.</source>
        <translation>Die offene Mündung des Rohrs: nichts geht über den freien Austritt hinaus verloren.</translation>
    </message>
    <message>
        <source>Thickness of the back wall there.</source>
        <translation>Dicke der Rückwand dort.</translation>
    </message>
    <message>
        <source>Three-way piece at right angles; with one end capped it serves as a turn that can be opened and swept.</source>
        <translation>Dreiwegstück im rechten Winkel; mit einem verschlossenen Ende dient es als Ecke, die man öffnen und kehren kann.</translation>
    </message>
    <message>
        <source>Three-way piece with a leaning branch: easy one way, hard the other.</source>
        <translation>Dreiwegstück mit schrägem Abzweig: leicht in der einen Richtung, schwer in der anderen.</translation>
    </message>
    <message>
        <source>Tunnel wall; the ground is said below.</source>
        <translation>Kanalwand; das Erdreich steht unten.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>Turn of a brick channel</source>
        <translation>Ecke eines Ziegelkanals</translation>
    </message>
    <message>
        <source>Unburned share</source>
        <translation>Unverbrannter Anteil</translation>
    </message>
    <message>
        <source>Undisturbed ground under the floor: about the yearly mean of the outdoor air.</source>
        <translation>Ungestörtes Erdreich unter dem Boden: etwa das Jahresmittel der Außenluft.</translation>
    </message>
    <message>
        <source>Upright brick tube that sticks stand in; room air comes down past them to the fire.</source>
        <translation>Stehender Ziegelschacht, in dem Scheite stehen; Raumluft kommt an ihnen vorbei zum Feuer herunter.</translation>
    </message>
    <message>
        <source>Upright steel tube that sticks stand in; room air comes down past them to the fire.</source>
        <translation>Stehendes Stahlrohr, in dem Scheite stehen; Raumluft kommt an ihnen vorbei zum Feuer herunter.</translation>
    </message>
    <message>
        <source>Upwards into a riser, or straight on.</source>
        <translation>Nach oben in ein Steigrohr, oder geradeaus.</translation>
    </message>
    <message>
        <source>Velocity heads that the cap takes beyond the free exit.</source>
        <translation>Staudrücke, die die Haube über den freien Austritt hinaus kostet.</translation>
    </message>
    <message>
        <source>Velocity heads that the fan takes while it is off.</source>
        <translation>Staudrücke, die der Lüfter kostet, wenn er aus ist.</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Wall thimble</source>
        <translation>Wanddurchführung</translation>
    </message>
    <message>
        <source>Wanted excess air</source>
        <translation>Gewünschter Luftüberschuss</translation>
    </message>
    <message>
        <source>Water in the wood, of its weight as fired: a pin meter on a fresh split face, or the trade&apos;s words.</source>
        <translation>Wasser im Holz, bezogen auf das Gewicht wie verfeuert: Messgerät an frischer Spaltfläche, oder die Worte des Handwerks.</translation>
    </message>
    <message>
        <source>Weighted flap on the stack that lets in room air above its set draft. A series path counts the fitting with the flap shut; the air it lets in is left out.</source>
        <translation>Gewichtsklappe am Schornstein, die über dem eingestellten Zug Raumluft einlässt. Im Reihenweg zählt das Formstück mit geschlossener Klappe; die eingelassene Luft bleibt außer Betracht.</translation>
    </message>
    <message>
        <source>What burns. Woods differ little by weight; wetness differs much.</source>
        <translation>Was brennt. Hölzer unterscheiden sich je Gewicht wenig; die Nässe viel.</translation>
    </message>
    <message>
        <source>What is outside its wall.</source>
        <translation>Was außerhalb seiner Wand ist.</translation>
    </message>
    <message>
        <source>What the flue is buried in.</source>
        <translation>Worin der Zug vergraben ist.</translation>
    </message>
    <message>
        <source>What the flue lies in.</source>
        <translation>Worin der Zug liegt.</translation>
    </message>
    <message>
        <source>Whether a spark screen closes the opening.</source>
        <translation>Ob ein Funkengitter die Öffnung schließt.</translation>
    </message>
    <message>
        <source>Whether the gas that leaves it flows down around it.</source>
        <translation>Ob das austretende Gas um es herum nach unten strömt.</translation>
    </message>
    <message>
        <source>Whether the motor sits in the gas.</source>
        <translation>Ob der Motor im Gas sitzt.</translation>
    </message>
    <message>
        <source>Whether the surface over it is outdoors: yes, or under the heated room: no.</source>
        <translation>Ob die Oberfläche darüber im Freien liegt: ja, oder unter dem beheizten Raum: nein.</translation>
    </message>
    <message>
        <source>Which end counts as capped while nothing is joined to it.</source>
        <translation>Welches Ende als verschlossen gilt, solange nichts daran ist.</translation>
    </message>
    <message>
        <source>Which wall the outlet is in, seen from the way in.</source>
        <translation>In welcher Wand der Auslass ist, vom Eintritt gesehen.</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Width of the bench or wall around the flue, across the run.</source>
        <translation>Breite der Bank oder Wand um den Zug, quer zum Strang.</translation>
    </message>
    <message>
        <source>Wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>Wind allowance</source>
        <translation>Windabzug</translation>
    </message>
    <message>
        <source>Wind at the height of the cap: a weather report&apos;s figure is for 10 m over open land.</source>
        <translation>Wind in Höhe der Haube: die Zahl des Wetterberichts gilt für 10 m über freiem Land.</translation>
    </message>
    <message>
        <source>Wind pressure at the cap</source>
        <translation>Winddruck an der Haube</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Wood as fired, at full burn: weigh an hour&apos;s wood, or take the usual value of the bore.</source>
        <translation>Holz wie verfeuert, bei vollem Brand: das Holz einer Stunde wiegen oder den üblichen Wert der Weite nehmen.</translation>
    </message>
    <message>
        <source>Wye</source>
        <translation>Y-Stück</translation>
    </message>
</context>
<context>
    <name>Desk</name>
    <message>
        <source>Elevation</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Elevation along the path</source>
        <translation>Abwicklung entlang des Weges</translation>
    </message>
    <message>
        <source>Elevation from the east</source>
        <translation>Ansicht von Osten</translation>
    </message>
    <message>
        <source>Elevation from the south</source>
        <translation>Ansicht von Süden</translation>
    </message>
    <message>
        <source>Isometric</source>
        <translation>Isometrie</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Grundriss</translation>
    </message>
    <message>
        <source>air comes in</source>
        <translation>Luft tritt ein</translation>
    </message>
    <message>
        <source>at a slant</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>barrel, bell or box</source>
        <translation>Fass, Glocke oder Kammer</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>Abzweig</translation>
    </message>
    <message>
        <source>capped end</source>
        <translation>verschlossenes Ende</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>down</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>east</source>
        <translation>Osten</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>neutral plane</source>
        <translation>neutrale Ebene</translation>
    </message>
    <message>
        <source>north</source>
        <translation>Norden</translation>
    </message>
    <message>
        <source>pipe or channel</source>
        <translation>Rohr oder Kanal</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>south</source>
        <translation>Süden</translation>
    </message>
    <message>
        <source>stack head</source>
        <translation>Schornsteinkopf</translation>
    </message>
    <message>
        <source>top of the house</source>
        <translation>Oberkante des Hauses</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>way of the gas</source>
        <translation>Weg des Gases</translation>
    </message>
    <message>
        <source>west</source>
        <translation>Westen</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>2 to 3 is common for an open feed. Under 1.5 it smokes; over 6 it cools the fire.</source>
        <translation>2 bis 3 sind bei offener Beschickung üblich. Unter 1,5 raucht es; über 6 kühlt es das Feuer.</translation>
    </message>
    <message>
        <source>60 to 120 °C is common. Colder saves heat and risks water and a weak pull; hotter means that heat is thrown away.</source>
        <translation>60 bis 120 °C sind üblich. Kälter spart Wärme, riskiert aber Wasser und schwachen Zug; heißer heißt, dass Wärme verloren geht.</translation>
    </message>
    <message>
        <source>A little above zero makes lighting easy. A chimney outdoors often stands below.</source>
        <translation>Etwas über null macht das Anzünden leicht. Ein Schornstein im Freien steht oft darunter.</translation>
    </message>
    <message>
        <source>A third to a half in the mass is common for a bench of a few metres.</source>
        <translation>Ein Drittel bis die Hälfte in der Masse ist bei einer Bank von einigen Metern üblich.</translation>
    </message>
    <message>
        <source>About the middle of the heated height; range hoods lift it.</source>
        <translation>Etwa die Mitte der beheizten Höhe; Dunstabzüge heben sie.</translation>
    </message>
    <message>
        <source>Above 2 Pa the path draws with something to spare. Below zero it smokes into the room.</source>
        <translation>Über 2 Pa zieht der Weg mit etwas Reserve. Unter null raucht er in den Raum.</translation>
    </message>
    <message>
        <source>Buoyancy</source>
        <translation>Auftrieb</translation>
    </message>
    <message>
        <source>Condensation begins</source>
        <translation>Kondensation beginnt</translation>
    </message>
    <message>
        <source>Draft margin</source>
        <translation>Zugreserve</translation>
    </message>
    <message>
        <source>Excess air</source>
        <translation>Luftüberschuss</translation>
    </message>
    <message>
        <source>Exit temperature</source>
        <translation>Austrittstemperatur</translation>
    </message>
    <message>
        <source>Half of the buoyancy or less leaves a sound margin. Bends and narrow places cost most.</source>
        <translation>Die Hälfte des Auftriebs oder weniger lässt eine gesunde Reserve. Bögen und enge Stellen kosten am meisten.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Heaters with a bench live on 8 to 20 Pa.</source>
        <translation>Öfen mit Bank leben von 8 bis 20 Pa.</translation>
    </message>
    <message>
        <source>How much air comes with the wood, as a multiple of what it needs to burn.</source>
        <translation>Wie viel Luft mit dem Holz kommt, als Vielfaches dessen, was es zum Brennen braucht.</translation>
    </message>
    <message>
        <source>How warm the gas leaves the cap when the bench is warm and the path has settled.</source>
        <translation>Wie warm das Gas die Haube verlässt, wenn die Bank warm ist und der Weg sich eingestellt hat.</translation>
    </message>
    <message>
        <source>Neutral plane</source>
        <translation>Neutrale Ebene</translation>
    </message>
    <message>
        <source>Nowhere is best; in a bench that is still cold a little at the start is common.</source>
        <translation>Nirgends ist am besten; in einer noch kalten Bank ist anfangs etwas üblich.</translation>
    </message>
    <message>
        <source>Pieces and numbers</source>
        <translation>Teile und Zahlen</translation>
    </message>
    <message>
        <source>Pressure in the flue from feed to cap, beside that of the room at the same height. Where the flue lies above the room, smoke can leak out of a crack.</source>
        <translation>Druck im Zug von der Beschickung zur Haube, neben dem des Raums in gleicher Höhe. Wo der Zug über dem Raum liegt, kann Rauch aus einem Riss treten.</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>Standing draft</source>
        <translation>Ruhezug</translation>
    </message>
    <message>
        <source>The curves along the path</source>
        <translation>Die Kurven entlang des Weges</translation>
    </message>
    <message>
        <source>The flue should lie below the room everywhere indoors.</source>
        <translation>Der Zug sollte im Haus überall unter dem Raum liegen.</translation>
    </message>
    <message>
        <source>The height in the house at which indoor and outdoor pressure agree. Below it air wants in, above it out. A fire below it has the house against it.</source>
        <translation>Die Höhe im Haus, in der Innen- und Außendruck gleich sind. Darunter will Luft herein, darüber hinaus. Ein Feuer darunter hat das Haus gegen sich.</translation>
    </message>
    <message>
        <source>The pull before anything burns, from the house&apos;s warmth and the weather alone. Below zero the path runs backwards until it is warmed.</source>
        <translation>Der Zug, bevor etwas brennt, allein aus der Wärme des Hauses und dem Wetter. Unter null läuft der Weg rückwärts, bis er erwärmt ist.</translation>
    </message>
    <message>
        <source>The pull itself: a column of warm gas is lighter than as much outdoor air beside it. It grows with height and with warmth.</source>
        <translation>Der Zug selbst: eine Säule warmen Gases ist leichter als ebenso viel Außenluft daneben. Er wächst mit Höhe und Wärme.</translation>
    </message>
    <message>
        <source>Usual:</source>
        <translation>Üblich:</translation>
    </message>
    <message>
        <source>What friction along the walls and every bend, tee and change of size cost at the flow the fire wants.</source>
        <translation>Was Reibung an den Wänden und jeder Bogen, jedes T-Stück und jeder Weitenwechsel bei dem Strom kosten, den das Feuer will.</translation>
    </message>
    <message>
        <source>What is left of the stack&apos;s pull when all losses of the path, with their safety factor, and the wind&apos;s share are taken off. It is the least of three ages of the bench: cold, after an hour, warmed through.</source>
        <translation>Was vom Zug des Schornsteins bleibt, wenn alle Verluste des Weges mit ihrem Sicherheitsfaktor und der Anteil des Windes abgezogen sind. Es ist der kleinste Wert von drei Zuständen der Bank: kalt, nach einer Stunde, durchwärmt.</translation>
    </message>
    <message>
        <source>What is this, and what is usual</source>
        <translation>Was ist das, und was ist üblich</translation>
    </message>
    <message>
        <source>Where the inner wall is colder than the dew point of the gas, water settles. It carries soot and acid.</source>
        <translation>Wo die Innenwand kälter ist als der Taupunkt des Gases, schlägt sich Wasser nieder. Es trägt Ruß und Säure.</translation>
    </message>
    <message>
        <source>Where the wood&apos;s heat goes: into the bench&apos;s mass, through bare walls to the room, up the stack, out of the house.</source>
        <translation>Wohin die Wärme des Holzes geht: in die Masse der Bank, durch bloße Wände in den Raum, den Schornstein hinauf, aus dem Haus.</translation>
    </message>
    <message>
        <source>and more</source>
        <translation>und mehr</translation>
    </message>
    <message>
        <source>before the fire</source>
        <translation>vor dem Feuer</translation>
    </message>
    <message>
        <source>cold wall: wet</source>
        <translation>kalte Wand: nass</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>schwer</translation>
    </message>
    <message>
        <source>light</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>Verlust</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>rubs</source>
        <translation>reibt</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>Schornstein</translation>
    </message>
    <message>
        <source>this warm</source>
        <translation>so warm</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>biegt ab</translation>
    </message>
    <message>
        <source>warm wall: dry</source>
        <translation>warme Wand: trocken</translation>
    </message>
    <message>
        <source>what the wood needs</source>
        <translation>was das Holz braucht</translation>
    </message>
</context>
<context>
    <name>House</name>
    <message>
        <source>&amp;Draw it</source>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>&amp;No house</source>
        <translation>&amp;Kein Haus</translation>
    </message>
    <message>
        <source>Ceiling above the floor</source>
        <translation>Decke über dem Boden</translation>
    </message>
    <message>
        <source>Draw the house</source>
        <translation>Das Haus zeichnen</translation>
    </message>
    <message>
        <source>East wall, inside</source>
        <translation>Ostwand, innen</translation>
    </message>
    <message>
        <source>Eaves above the floor</source>
        <translation>Traufe über dem Boden</translation>
    </message>
    <message>
        <source>It is drawn behind the path, and the path check tells where a pipe goes through it without a passage. The answer does not depend on it.</source>
        <translation>Es wird hinter dem Weg gezeichnet, und die Prüfung sagt, wo ein Rohr ohne Durchführung hindurchgeht. Die Antwort hängt nicht davon ab.</translation>
    </message>
    <message>
        <source>North wall, inside</source>
        <translation>Nordwand, innen</translation>
    </message>
    <message>
        <source>Ridge above the floor</source>
        <translation>First über dem Boden</translation>
    </message>
    <message>
        <source>South wall, inside</source>
        <translation>Südwand, innen</translation>
    </message>
    <message>
        <source>Take the house away</source>
        <translation>Das Haus wegnehmen</translation>
    </message>
    <message>
        <source>The house around it</source>
        <translation>Das Haus darum</translation>
    </message>
    <message>
        <source>Then the house would not stand: opposite walls or eaves and ridge change places.</source>
        <translation>Dann stünde das Haus nicht: gegenüberliegende Wände oder Traufe und First tauschen die Plätze.</translation>
    </message>
    <message>
        <source>Thickness of the ceiling</source>
        <translation>Dicke der Decke</translation>
    </message>
    <message>
        <source>Thickness of walls and roof</source>
        <translation>Dicke von Wänden und Dach</translation>
    </message>
    <message>
        <source>West wall, inside</source>
        <translation>Westwand, innen</translation>
    </message>
</context>
<context>
    <name>Variants</name>
    <message>
        <source>%1 (on the desk)</source>
        <translation>%1 (auf dem Tisch)</translation>
    </message>
    <message>
        <source>%1 × %2 fewer</source>
        <translation>%1 × %2 weniger</translation>
    </message>
    <message>
        <source>%1 × %2 more</source>
        <translation>%1 × %2 mehr</translation>
    </message>
    <message>
        <source>Draft margin</source>
        <translation>Zugreserve</translation>
    </message>
    <message>
        <source>Exit temperature</source>
        <translation>Austrittstemperatur</translation>
    </message>
    <message>
        <source>Heat kept in the mass</source>
        <translation>Wärme in der Masse</translation>
    </message>
    <message>
        <source>Heat to the room</source>
        <translation>Wärme in den Raum</translation>
    </message>
    <message>
        <source>In brackets: how far from the first. F6 changes over; a click on a name puts that one on the desk.</source>
        <translation>In Klammern: wie weit von der ersten. F6 wechselt; ein Klick auf einen Namen legt diese auf den Tisch.</translation>
    </message>
    <message>
        <source>Length of the path</source>
        <translation>Länge des Weges</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Variants side by side</source>
        <translation>Varianten nebeneinander</translation>
    </message>
    <message>
        <source>Water begins</source>
        <translation>Wasser beginnt</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch unbekannt</translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation>nirgends</translation>
    </message>
    <message>
        <source>the same pieces</source>
        <translation>dieselben Teile</translation>
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
        <translation>&amp;Bank länger, mit ihren Rückzügen</translation>
    </message>
    <message>
        <source>&amp;Compare them…</source>
        <translation>Ver&amp;gleichen…</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Draw passes side by side…</source>
        <translation>Züge nebeneinander &amp;zeichnen…</translation>
    </message>
    <message>
        <source>&amp;Earlier versions…</source>
        <translation>Frühere &amp;Versionen…</translation>
    </message>
    <message>
        <source>&amp;Fork what is on the desk</source>
        <translation>Was auf dem Tisch liegt ab&amp;zweigen</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>&amp;Hoher Kontrast</translation>
    </message>
    <message>
        <source>&amp;Join what meets</source>
        <translation>&amp;Verbinden, was sich trifft</translation>
    </message>
    <message>
        <source>&amp;Next variant</source>
        <translation>&amp;Nächste Variante</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Teil</translation>
    </message>
    <message>
        <source>&amp;Take this one out</source>
        <translation>Diese &amp;herausnehmen</translation>
    </message>
    <message>
        <source>&amp;Variant before</source>
        <translation>&amp;Vorige Variante</translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation>&amp;Varianten</translation>
    </message>
    <message>
        <source>&amp;What is this, and what is usual</source>
        <translation>&amp;Was ist das, und was ist üblich</translation>
    </message>
    <message>
        <source>Bench &amp;shorter</source>
        <translation>Bank &amp;kürzer</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>A&amp;usschneiden</translation>
    </message>
    <message>
        <source>Isometric as pipe dra&amp;wing</source>
        <translation>Isometrie als Rohr&amp;zeichnung</translation>
    </message>
    <message>
        <source>Mirror, &amp;north for south</source>
        <translation>Spiegeln, &amp;Nord für Süd</translation>
    </message>
    <message>
        <source>Mirror, &amp;west for east</source>
        <translation>Spiegeln, &amp;West für Ost</translation>
    </message>
    <message>
        <source>New by five &amp;questions…</source>
        <translation>Neu mit fünf &amp;Fragen…</translation>
    </message>
    <message>
        <source>Pull its joint &amp;apart</source>
        <translation>Seine Verbindung &amp;lösen</translation>
    </message>
    <message>
        <source>Put a red&amp;ucer between two bores</source>
        <translation>Red&amp;uzierung zwischen zwei Weiten setzen</translation>
    </message>
    <message>
        <source>Re&amp;place by</source>
        <translation>&amp;Ersetzen durch</translation>
    </message>
    <message>
        <source>Rotate to the &amp;left</source>
        <translation>Nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Rotate to the &amp;right</source>
        <translation>Nach &amp;rechts drehen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>Take &amp;out&#9;Del</source>
        <translation>Heraus&amp;nehmen&#9;Entf</translation>
    </message>
    <message>
        <source>Text si&amp;ze</source>
        <translation>Schrift&amp;größe</translation>
    </message>
    <message>
        <source>The h&amp;ouse around it…</source>
        <translation>Das Ha&amp;us darum…</translation>
    </message>
    <message>
        <source>Three &amp;gestures</source>
        <translation>Drei &amp;Gesten</translation>
    </message>
    <message>
        <source>Turn end for &amp;end</source>
        <translation>Umk&amp;ehren</translation>
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
        <translation>%1 %2: klicken oder loslassen lässt es dort; R dreht es; Esc legt es zurück.</translation>
    </message>
    <message>
        <source>%1 copied.</source>
        <translation>%1 kopiert.</translation>
    </message>
    <message>
        <source>%1: bring it to a ring with a plus, onto a straight run, or onto bare paper; Esc puts it back.</source>
        <translation>%1: an einen Ring mit Plus, auf einen geraden Strang oder auf freies Papier bringen; Esc legt es zurück.</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n Teil</numerusform>
            <numerusform>%n Teile</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Draw them</source>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>&amp;Join what meets</source>
        <translation>&amp;Verbinden, was sich trifft</translation>
    </message>
    <message>
        <source>&amp;Passes</source>
        <translation>&amp;Züge</translation>
    </message>
    <message>
        <source>&amp;Side</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>Arrow keys choose the way, Page Up and Page Down go up and down; type a number for the length.</source>
        <translation>Pfeiltasten wählen die Richtung, Bild auf und ab gehen hoch und runter; eine Zahl gibt die Länge.</translation>
    </message>
    <message>
        <source>Arrow keys or a drag grow the path from this end; Enter goes to the rack; Tab goes to the next end.</source>
        <translation>Pfeiltasten oder Ziehen verlängern den Weg von diesem Ende; Eingabe geht zum Regal; Tab geht zum nächsten Ende.</translation>
    </message>
    <message>
        <source>Arrow keys walk along the path; Delete takes the piece out; R turns it; Alt and arrows move it.</source>
        <translation>Pfeiltasten gehen am Weg entlang; Entf nimmt das Teil heraus; R dreht es; Alt und Pfeile bewegen es.</translation>
    </message>
    <message>
        <source>Between their axes</source>
        <translation>Zwischen ihren Achsen</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>A&amp;usschneiden</translation>
    </message>
    <message>
        <source>Drag a feed from the rack onto the sheet, or choose it there and press Enter.</source>
        <translation>Eine Beschickung vom Regal aufs Blatt ziehen, oder dort wählen und Eingabe drücken.</translation>
    </message>
    <message>
        <source>Drag along the grid to grow, across it for an elbow; type a number for the exact length; Esc forgets it.</source>
        <translation>Am Raster entlang ziehen verlängert, quer dazu gibt einen Bogen; eine Zahl gibt die genaue Länge; Esc vergisst es.</translation>
    </message>
    <message>
        <source>Drag from a ring with a plus to grow the path. Click a piece to see it. Drag bare paper to move the sheet; with Shift to select.</source>
        <translation>Von einem Ring mit Plus ziehen verlängert den Weg. Ein Teil anklicken zeigt es. Freies Papier ziehen bewegt das Blatt; mit Umschalt wählt es aus.</translation>
    </message>
    <message>
        <source>Drag the joint: the runs beside it stretch; hold Ctrl to stretch the whole bench. Esc forgets it.</source>
        <translation>Die Verbindung ziehen: die Stränge daneben dehnen sich; mit Strg die ganze Bank. Esc vergisst es.</translation>
    </message>
    <message>
        <source>Drag the piece: the runs beside it stretch. Shift moves the whole path, Ctrl stretches the whole bench. Esc forgets it.</source>
        <translation>Das Teil ziehen: die Stränge daneben dehnen sich. Umschalt bewegt den ganzen Weg, Strg dehnt die ganze Bank. Esc vergisst es.</translation>
    </message>
    <message>
        <source>Drag the selected pieces: runs along the way stretch, other joints come apart. Esc forgets it.</source>
        <translation>Die gewählten Teile ziehen: Stränge in der Richtung dehnen sich, andere Verbindungen lösen sich. Esc vergisst es.</translation>
    </message>
    <message>
        <source>Drag them, or: Delete takes them out, R turns them, Ctrl+M mirrors them, Ctrl+C copies them.</source>
        <translation>Ziehen, oder: Entf nimmt sie heraus, R dreht sie, Strg+M spiegelt sie, Strg+C kopiert sie.</translation>
    </message>
    <message>
        <source>Draw %1 %2</source>
        <translation>%1 nach %2 zeichnen</translation>
    </message>
    <message numerus="yes">
        <source>Draw %n pass(es)</source>
        <translation>
            <numerusform>%n Zug zeichnen</numerusform>
            <numerusform>%n Züge zeichnen</numerusform>
        </translation>
    </message>
    <message>
        <source>Draw a frame around the pieces to select; Esc forgets it.</source>
        <translation>Einen Rahmen um die Teile ziehen, die gewählt werden; Esc vergisst es.</translation>
    </message>
    <message>
        <source>Draw passes side by s&amp;ide…</source>
        <translation>Züge nebeneinander ze&amp;ichnen…</translation>
    </message>
    <message>
        <source>Each pass</source>
        <translation>Jeder Zug</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the arrow keys.</source>
        <translation>Eingabe setzt die Länge; Esc geht zurück zu den Pfeiltasten.</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the mouse.</source>
        <translation>Eingabe setzt die Länge; Esc geht zurück zur Maus.</translation>
    </message>
    <message>
        <source>From the open end in focus; the drawing shows it.</source>
        <translation>Vom offenen Ende im Fokus; die Zeichnung zeigt es.</translation>
    </message>
    <message>
        <source>It ends with a cap; the answer beside the sheet says what is still missing.</source>
        <translation>Er endet mit einer Haube; die Antwort neben dem Blatt sagt, was noch fehlt.</translation>
    </message>
    <message>
        <source>Join what meets</source>
        <translation>Verbinden, was sich trifft</translation>
    </message>
    <message>
        <source>Make the bench longer</source>
        <translation>Die Bank verlängern</translation>
    </message>
    <message>
        <source>Make the bench shorter</source>
        <translation>Die Bank verkürzen</translation>
    </message>
    <message>
        <source>Mirror %1</source>
        <translation>%1 spiegeln</translation>
    </message>
    <message>
        <source>Mirror, &amp;north for south</source>
        <translation>Spiegeln, &amp;Nord für Süd</translation>
    </message>
    <message>
        <source>Mirror, &amp;west for east</source>
        <translation>Spiegeln, &amp;West für Ost</translation>
    </message>
    <message numerus="yes">
        <source>Move %n piece(s)</source>
        <translation>
            <numerusform>%n Teil bewegen</numerusform>
            <numerusform>%n Teile bewegen</numerusform>
        </translation>
    </message>
    <message>
        <source>Move a joint</source>
        <translation>Eine Verbindung bewegen</translation>
    </message>
    <message>
        <source>Move a piece</source>
        <translation>Ein Teil bewegen</translation>
    </message>
    <message>
        <source>Move the path</source>
        <translation>Den Weg bewegen</translation>
    </message>
    <message>
        <source>Nothing else fits here</source>
        <translation>Hier passt nichts anderes</translation>
    </message>
    <message>
        <source>Nothing has been copied that could be put here.</source>
        <translation>Es ist nichts kopiert, was hierher könnte.</translation>
    </message>
    <message>
        <source>Pa&amp;ste</source>
        <translation>Ein&amp;fügen</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Züge</translation>
    </message>
    <message>
        <source>Passes side by side</source>
        <translation>Züge nebeneinander</translation>
    </message>
    <message numerus="yes">
        <source>Paste %n piece(s)</source>
        <translation>
            <numerusform>%n Teil einfügen</numerusform>
            <numerusform>%n Teile einfügen</numerusform>
        </translation>
    </message>
    <message>
        <source>Pull a joint apart</source>
        <translation>Eine Verbindung lösen</translation>
    </message>
    <message>
        <source>Pull this joint &amp;apart</source>
        <translation>Diese Verbindung &amp;lösen</translation>
    </message>
    <message>
        <source>Put a red&amp;ucer between the two bores</source>
        <translation>Red&amp;uzierung zwischen die beiden Weiten setzen</translation>
    </message>
    <message>
        <source>Put in %1</source>
        <translation>%1 einsetzen</translation>
    </message>
    <message>
        <source>Re&amp;place by</source>
        <translation>&amp;Ersetzen durch</translation>
    </message>
    <message>
        <source>Replace by %1</source>
        <translation>Ersetzen durch %1</translation>
    </message>
    <message>
        <source>Rotate %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Rotate &amp;left</source>
        <translation>Nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation>&amp;Herausnehmen</translation>
    </message>
    <message>
        <source>Take a feed from the rack and bring it here.</source>
        <translation>Eine Beschickung aus dem Regal nehmen und hierher bringen.</translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 herausnehmen</translation>
    </message>
    <message>
        <source>That way lies the piece itself. Choose another direction.</source>
        <translation>Dort liegt das Teil selbst. Eine andere Richtung wählen.</translation>
    </message>
    <message>
        <source>The same arrow again makes it longer, the opposite one shorter (Shift: ten steps); type a number for the exact length; Enter draws it, Esc forgets it.</source>
        <translation>Derselbe Pfeil nochmals verlängert, der andere verkürzt (Umschalt: zehn Schritte); eine Zahl gibt die genaue Länge; Eingabe zeichnet, Esc vergisst es.</translation>
    </message>
    <message>
        <source>Then pull the path on from its ring, or bring the next piece to the ring.</source>
        <translation>Dann den Weg von ihrem Ring weiterziehen oder das nächste Teil an den Ring bringen.</translation>
    </message>
    <message>
        <source>There are no two open ends that meet. Drag one to the other first.</source>
        <translation>Keine zwei offenen Enden treffen sich. Zuerst eines zum anderen ziehen.</translation>
    </message>
    <message>
        <source>This design is from a newer version: it is open for reading only.</source>
        <translation>Dieser Entwurf ist aus einer neueren Version: er ist nur zum Lesen offen.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Turn %1 end for end</source>
        <translation>%1 umkehren</translation>
    </message>
    <message>
        <source>Turn end for &amp;end</source>
        <translation>Umk&amp;ehren</translation>
    </message>
    <message>
        <source>What was copied cannot be put here.</source>
        <translation>Das Kopierte kann nicht hierher.</translation>
    </message>
    <message>
        <source>into this run</source>
        <translation>in diesen Strang</translation>
    </message>
    <message>
        <source>on this end</source>
        <translation>an diesem Ende</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>nach links</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>nach rechts</translation>
    </message>
</context>
<context>
    <name>fluewright::DeskView</name>
    <message>
        <source>%1 along: gas %2, wall %3, %4</source>
        <translation>%1 weit: Gas %2, Wand %3, %4</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) selected.</source>
        <translation>
            <numerusform>%n Teil gewählt.</numerusform>
            <numerusform>%n Teile gewählt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s).</source>
        <translation>
            <numerusform>%n Teil.</numerusform>
            <numerusform>%n Teile.</numerusform>
        </translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Open end of %1.</source>
        <translation>Offenes Ende von %1.</translation>
    </message>
    <message>
        <source>Open end of %1: drag to grow the path</source>
        <translation>Offenes Ende von %1: ziehen verlängert den Weg</translation>
    </message>
    <message>
        <source>Selected: %1.</source>
        <translation>Gewählt: %1.</translation>
    </message>
</context>
<context>
    <name>fluewright::DeskWidget</name>
    <message>
        <source>From where the elevation is seen</source>
        <translation>Von wo die Ansicht gesehen wird</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
    </message>
    <message>
        <source>Grid step</source>
        <translation>Rasterweite</translation>
    </message>
    <message>
        <source>Grows with</source>
        <translation>Wächst mit</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Strang</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>What it grows with upright</source>
        <translation>Womit er senkrecht wächst</translation>
    </message>
    <message>
        <source>What it turns with</source>
        <translation>Womit er abbiegt</translation>
    </message>
    <message>
        <source>What the colours show</source>
        <translation>Was die Farben zeigen</translation>
    </message>
    <message>
        <source>What the path grows with on the level</source>
        <translation>Womit der Weg waagerecht wächst</translation>
    </message>
    <message>
        <source>along the path</source>
        <translation>entlang des Weges</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>von Osten</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>von Süden</translation>
    </message>
    <message>
        <source>gas temperature</source>
        <translation>Gastemperatur</translation>
    </message>
    <message>
        <source>gauge pressure</source>
        <translation>Überdruck</translation>
    </message>
    <message>
        <source>turns with</source>
        <translation>biegt ab mit</translation>
    </message>
    <message>
        <source>upright</source>
        <translation>senkrecht</translation>
    </message>
</context>
<context>
    <name>fluewright::Document</name>
    <message>
        <source>Fork “%1”</source>
        <translation>„%1“ abzweigen</translation>
    </message>
    <message>
        <source>Name “%1”</source>
        <translation>„%1“ benennen</translation>
    </message>
    <message>
        <source>Take out “%1”</source>
        <translation>„%1“ herausnehmen</translation>
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
            <numerusform>%1, %n Teil</numerusform>
            <numerusform>%1, %n Teile</numerusform>
        </translation>
    </message>
    <message>
        <source>&amp;Go back to it</source>
        <translation>&amp;Dorthin zurück</translation>
    </message>
    <message>
        <source>&amp;Go on with it</source>
        <translation>Damit &amp;weitermachen</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Wegwerfen</translation>
    </message>
    <message>
        <source>A copy of “%1”: saving asks where to put it.</source>
        <translation>Eine Kopie von „%1“: beim Speichern wird gefragt, wohin.</translation>
    </message>
    <message>
        <source>A working copy from %1 is here.</source>
        <translation>Eine Arbeitskopie von %1 ist hier.</translation>
    </message>
    <message>
        <source>Already open</source>
        <translation>Schon offen</translation>
    </message>
    <message>
        <source>Another window has that file open. Save under another name.</source>
        <translation>Ein anderes Fenster hat diese Datei offen. Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Ask me &amp;later</source>
        <translation>&amp;Später fragen</translation>
    </message>
    <message>
        <source>Choose what to go back to. Undo brings back what is there now.</source>
        <translation>Wählen, wohin zurück. Rückgängig bringt zurück, was jetzt da ist.</translation>
    </message>
    <message>
        <source>Earlier versions</source>
        <translation>Frühere Versionen</translation>
    </message>
    <message>
        <source>Earlier versions of “%1”</source>
        <translation>Frühere Versionen von „%1“</translation>
    </message>
    <message>
        <source>Go back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Eine &amp;Kopie öffnen</translation>
    </message>
    <message>
        <source>Saved as %1, but the version before it could not be kept.</source>
        <translation>Gespeichert als %1, aber die Version davor konnte nicht behalten werden.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>The program with number %1 on the computer “%2” has it. If both saved it, one would lose what it drew. You can work on a copy.</source>
        <translation>Das Programm mit der Nummer %1 auf dem Rechner „%2“ hat sie. Würden beide speichern, verlöre eines, was es zeichnete. Sie können an einer Kopie arbeiten.</translation>
    </message>
    <message>
        <source>The working copy of “%1” was not opened.</source>
        <translation>Die Arbeitskopie von „%1“ wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>There is none yet: one is kept each time you save.</source>
        <translation>Es gibt noch keine: bei jedem Speichern wird eine behalten.</translation>
    </message>
    <message>
        <source>This is the version of %1.</source>
        <translation>Dies ist die Version von %1.</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Nicht gespeicherte Arbeit</translation>
    </message>
    <message>
        <source>Unsaved work from %1: save it to keep it.</source>
        <translation>Nicht gespeicherte Arbeit von %1: speichern, um sie zu behalten.</translation>
    </message>
    <message>
        <source>“%1” is open in another window.</source>
        <translation>„%1“ ist in einem anderen Fenster offen.</translation>
    </message>
    <message>
        <source>“%1” was not saved when the program ended.</source>
        <translation>„%1“ war nicht gespeichert, als das Programm endete.</translation>
    </message>
    <message>
        <source>“%1” was not saved. The design is still here, unsaved.</source>
        <translation>„%1“ wurde nicht gespeichert. Der Entwurf ist noch hier, ungespeichert.</translation>
    </message>
</context>
<context>
    <name>fluewright::Legend</name>
    <message>
        <source>%1, against outdoor air at the same height: violet below it, orange above it.</source>
        <translation>%1, gegen Außenluft in gleicher Höhe: violett darunter, orange darüber.</translation>
    </message>
    <message>
        <source>%1. The scale is stretched at its cold end, where benches live.</source>
        <translation>%1. Die Skala ist am kalten Ende gedehnt, wo Bänke leben.</translation>
    </message>
    <message>
        <source>Colour: gas temperature, %1</source>
        <translation>Farbe: Gastemperatur, %1</translation>
    </message>
    <message>
        <source>Colour: gauge pressure, %1</source>
        <translation>Farbe: Überdruck, %1</translation>
    </message>
    <message>
        <source>coloured once the path is whole</source>
        <translation>farbig, sobald der Weg vollständig ist</translation>
    </message>
</context>
<context>
    <name>fluewright::None</name>
    <message>
        <source>&amp;1  How wide is the flue?</source>
        <translation>&amp;1  Wie weit ist der Zug?</translation>
    </message>
    <message>
        <source>&amp;2  What shape has the bench?</source>
        <translation>&amp;2  Welche Form hat die Bank?</translation>
    </message>
    <message>
        <source>&amp;4  Where does the stack stand?</source>
        <translation>&amp;4  Wo steht der Schornstein?</translation>
    </message>
    <message>
        <source>&amp;Back to the design&apos;s own</source>
        <translation>&amp;Zurück zu denen des Entwurfs</translation>
    </message>
    <message>
        <source>&amp;Build it</source>
        <translation>&amp;Bauen</translation>
    </message>
    <message>
        <source>3  How much flue in the bench?</source>
        <translation>3  Wie viel Zug in der Bank?</translation>
    </message>
    <message>
        <source>5  How high does the stack end above the floor?</source>
        <translation>5  Wie hoch endet der Schornstein über dem Boden?</translation>
    </message>
    <message>
        <source>A path by five questions</source>
        <translation>Ein Weg mit fünf Fragen</translation>
    </message>
    <message>
        <source>A path by five questions…</source>
        <translation>Ein Weg mit fünf Fragen…</translation>
    </message>
    <message>
        <source>Burn rate</source>
        <translation>Abbrand</translation>
    </message>
    <message>
        <source>Drawing desk</source>
        <translation>Zeichentisch</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Ein Teil suchen</translation>
    </message>
    <message>
        <source>How wide is the flue?</source>
        <translation>Wie weit ist der Zug?</translation>
    </message>
    <message>
        <source>L, round a corner</source>
        <translation>L, um eine Ecke</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>No working copy can be kept (%1): save often.</source>
        <translation>Es kann keine Arbeitskopie gehalten werden (%1): oft speichern.</translation>
    </message>
    <message>
        <source>Other conditions tried out, the design left as it is</source>
        <translation>Andere Bedingungen ausprobiert, der Entwurf bleibt, wie er ist</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Draußen</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Rack of pieces</source>
        <translation>Regal der Teile</translation>
    </message>
    <message>
        <source>Range hood and fans</source>
        <translation>Dunstabzug und Lüfter</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>U, out and back</source>
        <translation>U, hin und zurück</translation>
    </message>
    <message>
        <source>Variants</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre</translation>
    </message>
    <message>
        <source>What shape has the bench?</source>
        <translation>Welche Form hat die Bank?</translation>
    </message>
    <message>
        <source>What the answers build</source>
        <translation>Was die Antworten bauen</translation>
    </message>
    <message>
        <source>Where does the stack stand?</source>
        <translation>Wo steht der Schornstein?</translation>
    </message>
    <message>
        <source>in loops, three passes</source>
        <translation>in Schleifen, drei Züge</translation>
    </message>
    <message>
        <source>in the room, up through the roof</source>
        <translation>im Raum, durch das Dach hinauf</translation>
    </message>
    <message>
        <source>outside, through the wall</source>
        <translation>außen, durch die Wand</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
</context>
<context>
    <name>fluewright::StarterDialog</name>
    <message>
        <source>On a day at 5 °C this has a draft margin of %1 with a cold bench. Everything can be changed on the desk.</source>
        <translation>An einem Tag mit 5 °C hat das bei kalter Bank eine Zugreserve von %1. Auf dem Tisch lässt sich alles ändern.</translation>
    </message>
</context>
<context>
    <name>fluewright::Tour</name>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Skip</source>
        <translation>Über&amp;springen</translation>
    </message>
    <message>
        <source>Now press on a joint between two pieces and drag it: the runs beside it stretch, and the answer follows at once.</source>
        <translation>Nun auf eine Verbindung zwischen zwei Teilen drücken und ziehen: die Stränge daneben dehnen sich, und die Antwort folgt sofort.</translation>
    </message>
    <message>
        <source>Press Ctrl+Z to take that back. Every gesture is one step, as far back as you like.</source>
        <translation>Strg+Z nimmt das zurück. Jede Geste ist ein Schritt, so weit zurück, wie man will.</translation>
    </message>
    <message>
        <source>Press on the ring with the plus at the end of the bench and drag: the path grows. Drag across for an elbow.</source>
        <translation>Auf den Ring mit dem Plus am Ende der Bank drücken und ziehen: der Weg wächst. Quer ziehen gibt einen Bogen.</translation>
    </message>
    <message>
        <source>That is all there is to drawing. Pieces come from the rack to the left; F1 lists the keys.</source>
        <translation>Das ist das ganze Zeichnen. Teile kommen aus dem Regal links; F1 zeigt die Tasten.</translation>
    </message>
    <message>
        <source>Three gestures</source>
        <translation>Drei Gesten</translation>
    </message>
</context>
<context>
    <name>fluewright::TrialPanel</name>
    <message>
        <source>Drag a handle: the answer follows, the design stays as it is.</source>
        <translation>Einen Griff ziehen: die Antwort folgt, der Entwurf bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>in the design: %1</source>
        <translation>im Entwurf: %1</translation>
    </message>
    <message>
        <source>▲ The answer is for these conditions, not for the design&apos;s own.</source>
        <translation>▲ Die Antwort gilt für diese Bedingungen, nicht für die des Entwurfs.</translation>
    </message>
</context>
<context>
    <name>fluewright::VariantBar</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Name the variant</source>
        <translation>Die Variante benennen</translation>
    </message>
</context>
</TS>
