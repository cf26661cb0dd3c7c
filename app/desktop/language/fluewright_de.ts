<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Words</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Remedies</source>
        <translation>Abhilfen</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzen</translation>
    </message>
    <message>
        <source>Price list</source>
        <translation>Preisliste</translation>
    </message>
    <message>
        <source>Price lists (*.json)</source>
        <translation>Preislisten (*.json)</translation>
    </message>
    <message>
        <source>Findings (%1)</source>
        <translation>Befunde (%1)</translation>
    </message>
    <message>
        <source>Let it stand</source>
        <translation>Stehen lassen</translation>
    </message>
    <message>
        <source>Open it again</source>
        <translation>Wieder öffnen</translation>
    </message>
    <message>
        <source>What would help</source>
        <translation>Was helfen würde</translation>
    </message>
    <message>
        <source>All findings</source>
        <translation>Alle Befunde</translation>
    </message>
    <message>
        <source>Why it may stand; this is kept with the design</source>
        <translation>Warum er stehen bleiben darf; das wird mit dem Entwurf gespeichert</translation>
    </message>
    <message>
        <source>Why it may stand</source>
        <translation>Warum er stehen bleiben darf</translation>
    </message>
    <message>
        <source>Let stand: %1</source>
        <translation>Stehen gelassen: %1</translation>
    </message>
    <message>
        <source>%1 Source: %2.</source>
        <translation>%1 Quelle: %2.</translation>
    </message>
    <message>
        <source>Open a finding again</source>
        <translation>Einen Befund wieder öffnen</translation>
    </message>
    <message>
        <source>Let a finding stand</source>
        <translation>Einen Befund stehen lassen</translation>
    </message>
    <message>
        <source>Draft to spare, %1</source>
        <translation>Zugreserve, %1</translation>
    </message>
    <message>
        <source>wanted %1</source>
        <translation>gewünscht %1</translation>
    </message>
    <message>
        <source>drawn: %1</source>
        <translation>gezeichnet: %1</translation>
    </message>
    <message>
        <source>limit: %1</source>
        <translation>Grenze: %1</translation>
    </message>
    <message>
        <source>Draft to spare</source>
        <translation>Zugreserve</translation>
    </message>
    <message>
        <source>What the margin is to be at the limit, at the worst of the three bench ages.</source>
        <translation>Wie groß die Zugreserve an der Grenze sein soll, beim ungünstigsten der drei Bankzustände.</translation>
    </message>
    <message>
        <source>under 2 Pa a path that draws is called marginal</source>
        <translation>unter 2 Pa gilt ein Weg, der zieht, als knapp</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>working…</source>
        <translation>rechnet…</translation>
    </message>
    <message>
        <source>quick curve; working…</source>
        <translation>schnelle Kurve; rechnet…</translation>
    </message>
    <message>
        <source>Show on the drawing</source>
        <translation>Auf der Zeichnung zeigen</translation>
    </message>
    <message>
        <source>Make this change</source>
        <translation>Diese Änderung machen</translation>
    </message>
    <message>
        <source>Stop trying</source>
        <translation>Nicht weiter suchen</translation>
    </message>
    <message>
        <source>Own prices…</source>
        <translation>Eigene Preise…</translation>
    </message>
    <message>
        <source>Change</source>
        <translation>Änderung</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Exit</source>
        <translation>Austritt</translation>
    </message>
    <message>
        <source>Heat kept</source>
        <translation>Wärme behalten</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Mends ✓   raises ▲</source>
        <translation>Behebt ✓   bringt ▲</translation>
    </message>
    <message>
        <source>Add up with a price list of your own; the shipped one holds round figures</source>
        <translation>Mit einer eigenen Preisliste rechnen; die mitgelieferte hat runde Zahlen</translation>
    </message>
    <message>
        <source>Round-figure prices</source>
        <translation>Preise in runden Zahlen</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Wie gezeichnet</translation>
    </message>
    <message>
        <source>Changes are tried when the drawing has come to rest.</source>
        <translation>Änderungen werden probiert, wenn die Zeichnung zur Ruhe gekommen ist.</translation>
    </message>
    <message>
        <source>The drawing has no answer yet; its faults come first.</source>
        <translation>Die Zeichnung hat noch keine Antwort; zuerst kommen ihre Fehler.</translation>
    </message>
    <message>
        <source>%1 of %2 changes tried</source>
        <translation>%1 von %2 Änderungen probiert</translation>
    </message>
    <message>
        <source>%1 changes tried</source>
        <translation>%1 Änderungen probiert</translation>
    </message>
    <message>
        <source>%1, %2 worth a look. Prices: %3.</source>
        <translation>%1, davon %2 lohnend. Preise: %3.</translation>
    </message>
    <message>
        <source>your own</source>
        <translation>die eigenen</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>At the wanted burn rate and air, for three ages of the bench</source>
        <translation>Bei gewünschtem Abbrand und Luft, für drei Zustände der Bank</translation>
    </message>
    <message>
        <source>Draft at three bench ages</source>
        <translation>Zug bei drei Zuständen der Bank</translation>
    </message>
    <message>
        <source>Where it settles by itself, bench charged</source>
        <translation>Wo es sich von selbst einstellt, Bank durchwärmt</translation>
    </message>
    <message>
        <source>Operating point</source>
        <translation>Betriebspunkt</translation>
    </message>
    <message>
        <source>Branches</source>
        <translation>Abzweige</translation>
    </message>
    <message>
        <source>Worth knowing</source>
        <translation>Wissenswert</translation>
    </message>
    <message>
        <source>Still missing: %1</source>
        <translation>Es fehlt noch: %1</translation>
    </message>
    <message>
        <source>Branches, where it settles</source>
        <translation>Abzweige, wo es sich einstellt</translation>
    </message>
    <message>
        <source>Branches, at the wanted fire</source>
        <translation>Abzweige, beim gewünschten Feuer</translation>
    </message>
    <message>
        <source>Draft margin</source>
        <translation>Zugreserve</translation>
    </message>
    <message>
        <source>… path not complete</source>
        <translation>… Weg nicht vollständig</translation>
    </message>
    <message>
        <source>known once the path leads from an inlet through a fire to a cap</source>
        <translation>bekannt, sobald der Weg von einem Einlass durch ein Feuer zu einer Haube führt</translation>
    </message>
    <message>
        <source>unsafe</source>
        <translation>unsicher</translation>
    </message>
    <message>
        <source>the least of three bench ages: %1</source>
        <translation>der kleinste von drei Zuständen der Bank: %1</translation>
    </message>
    <message>
        <source>Draft margin, fan off</source>
        <translation>Zugreserve, Gebläse aus</translation>
    </message>
    <message>
        <source>; %1 with the fan on</source>
        <translation>; %1 mit laufendem Gebläse</translation>
    </message>
    <message>
        <source>the draft depends on a fan; </source>
        <translation>der Zug hängt am Gebläse; </translation>
    </message>
    <message>
        <source>Exit temperature</source>
        <translation>Austrittstemperatur</translation>
    </message>
    <message>
        <source>no gas without a fire on the path</source>
        <translation>kein Gas ohne Feuer auf dem Weg</translation>
    </message>
    <message>
        <source>at the open end, at the wanted air</source>
        <translation>am offenen Ende, bei gewünschter Luft</translation>
    </message>
    <message>
        <source>at the cap, where it settles</source>
        <translation>an der Haube, wo es sich einstellt</translation>
    </message>
    <message>
        <source>at the cap, at the wanted air</source>
        <translation>an der Haube, bei gewünschter Luft</translation>
    </message>
    <message>
        <source>Condensation begins</source>
        <translation>Kondensation beginnt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source> dry</source>
        <translation> trocken</translation>
    </message>
    <message>
        <source>every wall is above the dew point, %1</source>
        <translation>jede Wand liegt über dem Taupunkt, %1</translation>
    </message>
    <message>
        <source> wet</source>
        <translation> nass</translation>
    </message>
    <message>
        <source>along, in %1; %2, dew point %3</source>
        <translation>weit, in %1; %2, Taupunkt %3</translation>
    </message>
    <message>
        <source>Margin
%1</source>
        <translation>Reserve
%1</translation>
    </message>
    <message>
        <source>Buoyancy
%1</source>
        <translation>Auftrieb
%1</translation>
    </message>
    <message>
        <source>Resistance
%1</source>
        <translation>Widerstand
%1</translation>
    </message>
    <message>
        <source>Exit
%1</source>
        <translation>Austritt
%1</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>Excess air</source>
        <translation>Luftüberschuss</translation>
    </message>
    <message>
        <source>To the room</source>
        <translation>In den Raum</translation>
    </message>
    <message>
        <source>Burn rate</source>
        <translation>Abbrand</translation>
    </message>
    <message>
        <source>Into the mass</source>
        <translation>In die Masse</translation>
    </message>
    <message>
        <source>Fire</source>
        <translation>Feuer</translation>
    </message>
    <message>
        <source>Up the stack</source>
        <translation>Durch den Schornstein</translation>
    </message>
    <message>
        <source>Released</source>
        <translation>Freigesetzt</translation>
    </message>
    <message>
        <source>Unburned</source>
        <translation>Unverbrannt</translation>
    </message>
    <message>
        <source>%1: %2 from %3 to %4, %5 % of the cap&apos;s, leaves at %6</source>
        <translation>%1: %2 von %3 nach %4, %5 % dessen, was die Haube verlässt, mit %6</translation>
    </message>
    <message>
        <source>Click to select the piece on the drawing</source>
        <translation>Klicken wählt das Teil auf der Zeichnung</translation>
    </message>
    <message>
        <source>Show the working</source>
        <translation>Rechenweg zeigen</translation>
    </message>
    <message>
        <source>Take a preset</source>
        <translation>Eine Vorlage nehmen</translation>
    </message>
    <message>
        <source>Draft</source>
        <translation>Zug</translation>
    </message>
    <message>
        <source>to spare</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>at the stack&apos;s foot</source>
        <translation>am Fuß des Schornsteins</translation>
    </message>
    <message>
        <source>Exit gas, motor</source>
        <translation>Abgas am Austritt, Motor</translation>
    </message>
    <message>
        <source>at the exit</source>
        <translation>am Austritt</translation>
    </message>
    <message>
        <source>motor of %1</source>
        <translation>Motor von %1</translation>
    </message>
    <message>
        <source>Seat surface</source>
        <translation>Oberfläche des Sitzes</translation>
    </message>
    <message>
        <source>warmest</source>
        <translation>wärmste</translation>
    </message>
    <message>
        <source>coolest</source>
        <translation>kühlste</translation>
    </message>
    <message>
        <source>Stored heat</source>
        <translation>Gespeicherte Wärme</translation>
    </message>
    <message>
        <source>in walls and bench</source>
        <translation>in Wänden und Bank</translation>
    </message>
    <message>
        <source>ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>smoke into the room</source>
        <translation>Rauch in den Raum</translation>
    </message>
    <message>
        <source>runs backwards</source>
        <translation>läuft rückwärts</translation>
    </message>
    <message>
        <source>short of air</source>
        <translation>zu wenig Luft</translation>
    </message>
    <message>
        <source>The charts appear when the run is done.</source>
        <translation>Die Diagramme erscheinen, wenn der Lauf fertig ist.</translation>
    </message>
    <message>
        <source>The charts appear once there is a run.</source>
        <translation>Die Diagramme erscheinen, sobald es einen Lauf gibt.</translation>
    </message>
    <message>
        <source>Before the last edit: </source>
        <translation>Vor der letzten Änderung: </translation>
    </message>
    <message>
        <source>… and %1 more.</source>
        <translation>… und %1 weitere.</translation>
    </message>
    <message>
        <source>“%1” was not taken.</source>
        <translation>„%1“ wurde nicht genommen.</translation>
    </message>
    <message>
        <source>Open a time line</source>
        <translation>Einen Zeitplan öffnen</translation>
    </message>
    <message>
        <source>“%1” was not saved.</source>
        <translation>„%1“ wurde nicht gespeichert.</translation>
    </message>
    <message>
        <source>The weather file “%1” cannot be opened.</source>
        <translation>Die Wetterdatei „%1“ lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>Take a weather file</source>
        <translation>Eine Wetterdatei nehmen</translation>
    </message>
    <message>
        <source>Time lines (*.fluburn);;All files (*)</source>
        <translation>Zeitpläne (*.fluburn);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save the time line as</source>
        <translation>Den Zeitplan speichern unter</translation>
    </message>
    <message>
        <source>Comma-separated values (*.csv);;All files (*)</source>
        <translation>Durch Komma getrennte Werte (*.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>none in this design</source>
        <translation>keines in diesem Entwurf</translation>
    </message>
    <message>
        <source>Charts over time</source>
        <translation>Diagramme über die Zeit</translation>
    </message>
    <message>
        <source>Call off</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Compute</source>
        <translation>Rechnen</translation>
    </message>
    <message>
        <source>%1 min in a second</source>
        <translation>%1 min je Sekunde</translation>
    </message>
    <message>
        <source>1 h in a second</source>
        <translation>1 h je Sekunde</translation>
    </message>
    <message>
        <source>How fast it plays</source>
        <translation>Wie schnell es abspielt</translation>
    </message>
    <message>
        <source>0:00:00  ·  day 2, 00:00</source>
        <translation>0:00:00  ·  Tag 2, 00:00</translation>
    </message>
    <message>
        <source>Time line ▾</source>
        <translation>Zeitplan ▾</translation>
    </message>
    <message>
        <source>Presets, and files of events</source>
        <translation>Vorlagen und Dateien von Ereignissen</translation>
    </message>
    <message>
        <source>How far the run is computed</source>
        <translation>Wie weit der Lauf gerechnet ist</translation>
    </message>
    <message>
        <source>This preset wants a fan that the design does not have.</source>
        <translation>Diese Vorlage will ein Gebläse, das der Entwurf nicht hat.</translation>
    </message>
    <message>
        <source>The design lacks the fan for this.</source>
        <translation>Dem Entwurf fehlt das Gebläse dafür.</translation>
    </message>
    <message>
        <source>Open a time line…</source>
        <translation>Einen Zeitplan öffnen…</translation>
    </message>
    <message>
        <source>Save the time line…</source>
        <translation>Den Zeitplan speichern…</translation>
    </message>
    <message>
        <source>Pause</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Pause (Space on the bar)</source>
        <translation>Anhalten (Leertaste auf der Leiste)</translation>
    </message>
    <message>
        <source>Play (Space on the bar)</source>
        <translation>Abspielen (Leertaste auf der Leiste)</translation>
    </message>
    <message>
        <source>The time line has faults: nothing is computed.</source>
        <translation>Der Zeitplan hat Fehler: es wird nichts gerechnet.</translation>
    </message>
    <message>
        <source>Computing; below stands the run before the edit.</source>
        <translation>Rechnet; unten steht der Lauf vor der Änderung.</translation>
    </message>
    <message>
        <source>Computing…</source>
        <translation>Rechnet…</translation>
    </message>
    <message>
        <source>Called off.</source>
        <translation>Abgebrochen.</translation>
    </message>
    <message>
        <source>Waiting.</source>
        <translation>Wartet.</translation>
    </message>
    <message>
        <source>Holds by itself from %1</source>
        <translation>Hält sich von selbst ab %1</translation>
    </message>
    <message>
        <source>Never holds by itself</source>
        <translation>Hält sich nie von selbst</translation>
    </message>
    <message>
        <source>; smoke into the room %1</source>
        <translation>; Rauch in den Raum %1</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Löschen</translation>
    </message>
    <message>
        <source>Weather file…</source>
        <translation>Wetterdatei…</translation>
    </message>
    <message>
        <source>Del while the bar has the focus</source>
        <translation>Entf, solange die Leiste den Fokus hat</translation>
    </message>
    <message>
        <source>Comma-separated, with the columns time and temperature_C</source>
        <translation>Durch Komma getrennt, mit den Spalten time und temperature_C</translation>
    </message>
    <message>
        <source>Delete an event</source>
        <translation>Ein Ereignis löschen</translation>
    </message>
    <message>
        <source>Set %1</source>
        <translation>%1 einstellen</translation>
    </message>
    <message>
        <source>Power cut at %1 over a loaded feed, watched for %2:</source>
        <translation>Stromausfall um %1 über voller Beschickung, %2 lang beobachtet:</translation>
    </message>
    <message>
        <source>a neutral house</source>
        <translation>einem neutralen Haus</translation>
    </message>
    <message>
        <source>a house under %1 of suction</source>
        <translation>einem Haus mit %1 Unterdruck</translation>
    </message>
    <message>
        <source>Time line</source>
        <translation>Zeitplan</translation>
    </message>
    <message>
        <source>Add to %1</source>
        <translation>Zu %1 hinzufügen</translation>
    </message>
    <message>
        <source>%1 to %2, %3</source>
        <translation>%1 bis %2, %3</translation>
    </message>
    <message>
        <source>Move an event</source>
        <translation>Ein Ereignis verschieben</translation>
    </message>
    <message>
        <source>Change an event&apos;s length</source>
        <translation>Die Dauer eines Ereignisses ändern</translation>
    </message>
    <message>
        <source>Add to %1 at %2</source>
        <translation>Zu %1 um %2 hinzufügen</translation>
    </message>
    <message>
        <source>Show the whole run</source>
        <translation>Den ganzen Lauf zeigen</translation>
    </message>
    <message>
        <source>Drag along the ruler to go through the run; the wheel looks closer.</source>
        <translation>Am Lineal entlangziehen geht durch den Lauf; das Rad geht näher heran.</translation>
    </message>
    <message>
        <source>Drag the end to make it longer or shorter.</source>
        <translation>Das Ende ziehen macht es länger oder kürzer.</translation>
    </message>
    <message>
        <source>Drag to move it, Del deletes it. Alt while dragging leaves the whole steps.</source>
        <translation>Ziehen verschiebt es, Entf löscht es. Alt beim Ziehen verlässt die ganzen Schritte.</translation>
    </message>
    <message>
        <source>The temperature outdoors: its kind is chosen beside the bar while no event is picked.</source>
        <translation>Die Temperatur draußen: ihre Art wählt man neben der Leiste, solange kein Ereignis gewählt ist.</translation>
    </message>
    <message>
        <source>Double-click or drag here to add to: %1.</source>
        <translation>Hier doppelklicken oder ziehen fügt hinzu zu: %1.</translation>
    </message>
    <message>
        <source>%1, %2 to %3: %4</source>
        <translation>%1, %2 bis %3: %4</translation>
    </message>
    <message>
        <source>At %1.</source>
        <translation>Um %1.</translation>
    </message>
    <message>
        <source>Picked: %1, %2 to %3, %4.</source>
        <translation>Gewählt: %1, %2 bis %3, %4.</translation>
    </message>
    <message>
        <source>Pick an event first: up and down go through them.</source>
        <translation>Zuerst ein Ereignis wählen: auf und ab gehen durch sie.</translation>
    </message>
    <message>
        <source>%1: Insert adds here.</source>
        <translation>%1: Einfg fügt hier hinzu.</translation>
    </message>
    <message>
        <source>{} as in the design</source>
        <translation>{} wie im Entwurf</translation>
    </message>
    <message>
        <source>{}, ± {} over the day</source>
        <translation>{}, ± {} über den Tag</translation>
    </message>
    <message>
        <source>The gas runs backwards.</source>
        <translation>Das Gas läuft rückwärts.</translation>
    </message>
    <message>
        <source>Smoke comes into the room, %1 so far.</source>
        <translation>Rauch kommt in den Raum, bisher %1.</translation>
    </message>
    <message>
        <source>The fire is short of air.</source>
        <translation>Dem Feuer fehlt Luft.</translation>
    </message>
    <message>
        <source>Burn, at %1</source>
        <translation>Abbrand, um %1</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Bypass, dampers</source>
        <translation>Umgehung, Klappen</translation>
    </message>
    <message>
        <source>Priming</source>
        <translation>Vorwärmen</translation>
    </message>
    <message>
        <source>Fan</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>Range hood</source>
        <translation>Dunstabzug</translation>
    </message>
    <message>
        <source>Power cut</source>
        <translation>Stromausfall</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Draußen</translation>
    </message>
    <message>
        <source>That entry is no longer there.</source>
        <translation>Diesen Eintrag gibt es nicht mehr.</translation>
    </message>
    <message>
        <source>That entry has no end to pull.</source>
        <translation>Dieser Eintrag hat kein Ende zum Ziehen.</translation>
    </message>
    <message>
        <source>The last point stays: choose another kind of outdoor temperature instead.</source>
        <translation>Der letzte Punkt bleibt: stattdessen eine andere Art der Außentemperatur wählen.</translation>
    </message>
    <message>
        <source>The drawing has no damper or bypass to move.</source>
        <translation>Die Zeichnung hat keine Klappe oder Umgehung zum Verstellen.</translation>
    </message>
    <message>
        <source>The drawing has no fan to switch.</source>
        <translation>Die Zeichnung hat kein Gebläse zum Schalten.</translation>
    </message>
    <message>
        <source>Choose points as the outdoor temperature first; then they can be added here.</source>
        <translation>Zuerst Punkte als Außentemperatur wählen; dann lassen sie sich hier hinzufügen.</translation>
    </message>
    <message>
        <source>This course has too many points to add to by hand.</source>
        <translation>Dieser Verlauf hat zu viele Punkte, um von Hand weitere hinzuzufügen.</translation>
    </message>
    <message>
        <source>45 min, 1 h 30 min or 1:30</source>
        <translation>45 min, 1 h 30 min oder 1:30</translation>
    </message>
    <message>
        <source>1:30 or 90 min</source>
        <translation>1:30 oder 90 min</translation>
    </message>
    <message>
        <source>“{}” is no time: write it like {}.</source>
        <translation>„{}“ ist keine Zeit: schreiben wie {}.</translation>
    </message>
    <message>
        <source>Nothing is written: write a time like {}.</source>
        <translation>Es steht nichts da: eine Zeit schreiben wie {}.</translation>
    </message>
    <message>
        <source>“{}” is not understood: write it like {}.</source>
        <translation>„{}“ ist unverständlich: schreiben wie {}.</translation>
    </message>
    <message>
        <source>Nothing is written: write it like {}.</source>
        <translation>Es steht nichts da: schreiben wie {}.</translation>
    </message>
    <message>
        <source>day {}, {}</source>
        <translation>Tag {}, {}</translation>
    </message>
    <message>
        <source>4.5 kg or 10 lb</source>
        <translation>4,5 kg oder 10 lb</translation>
    </message>
    <message>
        <source>400 g or 14 oz</source>
        <translation>400 g oder 14 oz</translation>
    </message>
    <message>
        <source>4 K or 7 °F</source>
        <translation>4 K oder 7 °F</translation>
    </message>
    <message>
        <source>Since the run began: hours and minutes.</source>
        <translation>Seit Beginn des Laufs: Stunden und Minuten.</translation>
    </message>
    <message>
        <source>Load {}</source>
        <translation>Holzauflage {}</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginnt</translation>
    </message>
    <message>
        <source>As fired, with its moisture.</source>
        <translation>Wie verfeuert, mit seiner Feuchte.</translation>
    </message>
    <message>
        <source>Burns for</source>
        <translation>Brennt</translation>
    </message>
    <message>
        <source>It burns down evenly.</source>
        <translation>Sie brennt gleichmäßig ab.</translation>
    </message>
    <message>
        <source>Feed {}</source>
        <translation>Beschickung {}</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Wood as fired.</source>
        <translation>Holz wie verfeuert.</translation>
    </message>
    <message>
        <source>Priming fire {}</source>
        <translation>Vorwärmfeuer {}</translation>
    </message>
    <message>
        <source>Starter</source>
        <translation>Anzünder</translation>
    </message>
    <message>
        <source>What burns at the stack&apos;s foot. The cap is off meanwhile and goes back on at the end.</source>
        <translation>Was am Fuß des Schornsteins brennt. Der Deckel ist solange ab und kommt am Ende wieder darauf.</translation>
    </message>
    <message>
        <source>The lowest tee of the stack</source>
        <translation>Das unterste T-Stück des Schornsteins</translation>
    </message>
    <message>
        <source>In</source>
        <translation>In</translation>
    </message>
    <message>
        <source>The tee whose cap comes off.</source>
        <translation>Das T-Stück, dessen Deckel abgenommen wird.</translation>
    </message>
    <message>
        <source>Then the cap goes back on.</source>
        <translation>Dann kommt der Deckel wieder darauf.</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Of the starter, dry.</source>
        <translation>Des Anzünders, trocken.</translation>
    </message>
    <message>
        <source>Heating value</source>
        <translation>Heizwert</translation>
    </message>
    <message>
        <source>Net, as bought and dry; from memory.</source>
        <translation>Unterer, wie gekauft und trocken; aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Move {}</source>
        <translation>Verstellung {}</translation>
    </message>
    <message>
        <source>Piece</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Which damper or bypass is moved.</source>
        <translation>Welche Klappe oder Umgehung verstellt wird.</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Open</source>
        <translation>Offen</translation>
    </message>
    <message>
        <source>0 % shut, 100 % wide open.</source>
        <translation>0 % zu, 100 % ganz offen.</translation>
    </message>
    <message>
        <source>Fan switch {}</source>
        <translation>Gebläseschaltung {}</translation>
    </message>
    <message>
        <source>Which fan is switched.</source>
        <translation>Welches Gebläse geschaltet wird.</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Hört auf</translation>
    </message>
    <message>
        <source>A run-down timer switches it off by itself.</source>
        <translation>Eine Nachlaufuhr schaltet es von selbst ab.</translation>
    </message>
    <message>
        <source>By a run-down timer</source>
        <translation>Durch eine Nachlaufuhr</translation>
    </message>
    <message>
        <source>When it is switched off</source>
        <translation>Wenn es ausgeschaltet wird</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>0 % is off, 100 % the speed of its curve.</source>
        <translation>0 % ist aus, 100 % die Drehzahl seiner Kennlinie.</translation>
    </message>
    <message>
        <source>Runs for</source>
        <translation>Läuft</translation>
    </message>
    <message>
        <source>Then the timer stops it.</source>
        <translation>Dann hält die Uhr es an.</translation>
    </message>
    <message>
        <source>Range hood {}</source>
        <translation>Dunstabzug {}</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Zieht ab</translation>
    </message>
    <message>
        <source>All exhausts of the house together, from now on. 0 is off.</source>
        <translation>Alle Abluft des Hauses zusammen, von jetzt an. 0 ist aus.</translation>
    </message>
    <message>
        <source>Power cut {}</source>
        <translation>Stromausfall {}</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>Dauert</translation>
    </message>
    <message>
        <source>Fans and hoods stand still and come back by themselves.</source>
        <translation>Gebläse und Dunstabzüge stehen still und laufen von selbst wieder an.</translation>
    </message>
    <message>
        <source>Outdoor temperature, point {}</source>
        <translation>Außentemperatur, Punkt {}</translation>
    </message>
    <message>
        <source>Straight from point to point.</source>
        <translation>Gerade von Punkt zu Punkt.</translation>
    </message>
    <message>
        <source>The run</source>
        <translation>Der Lauf</translation>
    </message>
    <message>
        <source>The temperature outdoors over the run.</source>
        <translation>Die Temperatur draußen während des Laufs.</translation>
    </message>
    <message>
        <source>As in the design</source>
        <translation>Wie im Entwurf</translation>
    </message>
    <message>
        <source>One temperature</source>
        <translation>Eine Temperatur</translation>
    </message>
    <message>
        <source>A day&apos;s curve</source>
        <translation>Ein Tagesgang</translation>
    </message>
    <message>
        <source>Points, or a weather file</source>
        <translation>Punkte oder eine Wetterdatei</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>How long the run is.</source>
        <translation>Wie lang der Lauf ist.</translation>
    </message>
    <message>
        <source>Begins at</source>
        <translation>Beginnt um</translation>
    </message>
    <message>
        <source>By the clock.</source>
        <translation>Nach der Uhr.</translation>
    </message>
    <message>
        <source>All the time.</source>
        <translation>Die ganze Zeit.</translation>
    </message>
    <message>
        <source>Mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>Over the day.</source>
        <translation>Über den Tag.</translation>
    </message>
    <message>
        <source>Swing</source>
        <translation>Schwankung</translation>
    </message>
    <message>
        <source>From the mean to either end.</source>
        <translation>Vom Mittel bis zu jedem Ende.</translation>
    </message>
    <message>
        <source>Warmest at</source>
        <translation>Am wärmsten um</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} in {}</translation>
    </message>
    <message>
        <source>Cut through the bench</source>
        <translation>Schnitt durch die Bank</translation>
    </message>
    <message>
        <source>Cut through %1: gas %2, wall %3, surface %4</source>
        <translation>Schnitt durch %1: Gas %2, Wand %3, Oberfläche %4</translation>
    </message>
    <message>
        <source>No bench to cut through.</source>
        <translation>Keine Bank zum Schneiden.</translation>
    </message>
    <message>
        <source>A cut through the bench appears once there is a run.</source>
        <translation>Ein Schnitt durch die Bank erscheint, sobald es einen Lauf gibt.</translation>
    </message>
    <message>
        <source>Cut through %1</source>
        <translation>Schnitt durch %1</translation>
    </message>
    <message>
        <source>gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>seat</source>
        <translation>Sitz</translation>
    </message>
    <message>
        <source>top</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>This design is from a newer version: it is open for reading only.</source>
        <translation>Dieser Entwurf ist aus einer neueren Version: er ist nur zum Lesen offen.</translation>
    </message>
    <message>
        <source>Nothing else fits here</source>
        <translation>Hier passt nichts anderes</translation>
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
        <source>Re&amp;place by</source>
        <translation>&amp;Ersetzen durch</translation>
    </message>
    <message>
        <source>Turn end for &amp;end</source>
        <translation>Umk&amp;ehren</translation>
    </message>
    <message>
        <source>Rotate &amp;left</source>
        <translation>Nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Mirror, &amp;west for east</source>
        <translation>Spiegeln, &amp;West für Ost</translation>
    </message>
    <message>
        <source>Mirror, &amp;north for south</source>
        <translation>Spiegeln, &amp;Nord für Süd</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>A&amp;usschneiden</translation>
    </message>
    <message>
        <source>Pa&amp;ste</source>
        <translation>Ein&amp;fügen</translation>
    </message>
    <message>
        <source>Take &amp;out</source>
        <translation>&amp;Herausnehmen</translation>
    </message>
    <message>
        <source>&amp;Join what meets</source>
        <translation>&amp;Verbinden, was sich trifft</translation>
    </message>
    <message>
        <source>Draw passes side by s&amp;ide…</source>
        <translation>Züge nebeneinander ze&amp;ichnen…</translation>
    </message>
    <message>
        <source>What the path grows with on the level</source>
        <translation>Womit der Weg waagerecht wächst</translation>
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
        <source>Grid step</source>
        <translation>Rasterweite</translation>
    </message>
    <message>
        <source>Grid</source>
        <translation>Raster</translation>
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
        <source>upright</source>
        <translation>senkrecht</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Hoch</translation>
    </message>
    <message>
        <source>turns with</source>
        <translation>biegt ab mit</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>From where the elevation is seen</source>
        <translation>Von wo die Ansicht gesehen wird</translation>
    </message>
    <message>
        <source>from the south</source>
        <translation>von Süden</translation>
    </message>
    <message>
        <source>from the east</source>
        <translation>von Osten</translation>
    </message>
    <message>
        <source>along the path</source>
        <translation>entlang des Weges</translation>
    </message>
    <message>
        <source>What the colours show</source>
        <translation>Was die Farben zeigen</translation>
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
        <source>%1 copied.</source>
        <translation>%1 kopiert.</translation>
    </message>
    <message>
        <source>Nothing has been copied that could be put here.</source>
        <translation>Es ist nichts kopiert, was hierher könnte.</translation>
    </message>
    <message>
        <source>What was copied cannot be put here.</source>
        <translation>Das Kopierte kann nicht hierher.</translation>
    </message>
    <message numerus="yes">
        <source>Paste %n piece(s)</source>
        <translation>
            <numerusform>%n Teil einfügen</numerusform>
            <numerusform>%n Teile einfügen</numerusform>
        </translation>
    </message>
    <message>
        <source>Take out %1</source>
        <translation>%1 herausnehmen</translation>
    </message>
    <message>
        <source>Mirror %1</source>
        <translation>%1 spiegeln</translation>
    </message>
    <message>
        <source>Rotate %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Turn %1 end for end</source>
        <translation>%1 umkehren</translation>
    </message>
    <message>
        <source>Pull a joint apart</source>
        <translation>Eine Verbindung lösen</translation>
    </message>
    <message>
        <source>There are no two open ends that meet. Drag one to the other first.</source>
        <translation>Keine zwei offenen Enden treffen sich. Zuerst eines zum anderen ziehen.</translation>
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
    <message numerus="yes">
        <source>Draw %n pass(es)</source>
        <translation>
            <numerusform>%n Zug zeichnen</numerusform>
            <numerusform>%n Züge zeichnen</numerusform>
        </translation>
    </message>
    <message>
        <source>Replace by %1</source>
        <translation>Ersetzen durch %1</translation>
    </message>
    <message>
        <source>Put in %1</source>
        <translation>%1 einsetzen</translation>
    </message>
    <message>
        <source>Selected: %1.</source>
        <translation>Gewählt: %1.</translation>
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
        <source>%1 along: gas %2, wall %3, %4</source>
        <translation>%1 weit: Gas %2, Wand %3, %4</translation>
    </message>
    <message>
        <source>Drawing desk</source>
        <translation>Zeichentisch</translation>
    </message>
    <message>
        <source>%1: bring it to a ring with a plus, onto a straight run, or onto bare paper; Esc puts it back.</source>
        <translation>%1: an einen Ring mit Plus, auf einen geraden Strang oder auf freies Papier bringen; Esc legt es zurück.</translation>
    </message>
    <message>
        <source>%1 %2: click or let go to leave it there; R turns it; Esc puts it back.</source>
        <translation>%1 %2: klicken oder loslassen lässt es dort; R dreht es; Esc legt es zurück.</translation>
    </message>
    <message>
        <source>on this end</source>
        <translation>an diesem Ende</translation>
    </message>
    <message>
        <source>into this run</source>
        <translation>in diesen Strang</translation>
    </message>
    <message>
        <source>here</source>
        <translation>hier</translation>
    </message>
    <message>
        <source>Put %1</source>
        <translation>%1 einsetzen</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the mouse.</source>
        <translation>Eingabe setzt die Länge; Esc geht zurück zur Maus.</translation>
    </message>
    <message>
        <source>Drag along the grid to grow, across it for an elbow; type a number for the exact length; Esc forgets it.</source>
        <translation>Am Raster entlang ziehen verlängert, quer dazu gibt einen Bogen; eine Zahl gibt die genaue Länge; Esc vergisst es.</translation>
    </message>
    <message>
        <source>Draw %1 %2</source>
        <translation>%1 nach %2 zeichnen</translation>
    </message>
    <message>
        <source>at a slant</source>
        <translation>schräg</translation>
    </message>
    <message>
        <source>up</source>
        <translation>oben</translation>
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
        <source>west</source>
        <translation>Westen</translation>
    </message>
    <message>
        <source>north</source>
        <translation>Norden</translation>
    </message>
    <message>
        <source>south</source>
        <translation>Süden</translation>
    </message>
    <message>
        <source>West wall, inside</source>
        <translation>Westwand, innen</translation>
    </message>
    <message>
        <source>East wall, inside</source>
        <translation>Ostwand, innen</translation>
    </message>
    <message>
        <source>South wall, inside</source>
        <translation>Südwand, innen</translation>
    </message>
    <message>
        <source>North wall, inside</source>
        <translation>Nordwand, innen</translation>
    </message>
    <message>
        <source>Thickness of walls and roof</source>
        <translation>Dicke von Wänden und Dach</translation>
    </message>
    <message>
        <source>Ceiling above the floor</source>
        <translation>Decke über dem Boden</translation>
    </message>
    <message>
        <source>Thickness of the ceiling</source>
        <translation>Dicke der Decke</translation>
    </message>
    <message>
        <source>Eaves above the floor</source>
        <translation>Traufe über dem Boden</translation>
    </message>
    <message>
        <source>Ridge above the floor</source>
        <translation>First über dem Boden</translation>
    </message>
    <message>
        <source>The house around it</source>
        <translation>Das Haus darum</translation>
    </message>
    <message>
        <source>It is drawn behind the path, and the path check tells where a pipe goes through it without a passage. The answer does not depend on it.</source>
        <translation>Es wird hinter dem Weg gezeichnet, und die Prüfung sagt, wo ein Rohr ohne Durchführung hindurchgeht. Die Antwort hängt nicht davon ab.</translation>
    </message>
    <message>
        <source>Then the house would not stand: opposite walls or eaves and ridge change places.</source>
        <translation>Dann stünde das Haus nicht: gegenüberliegende Wände oder Traufe und First tauschen die Plätze.</translation>
    </message>
    <message>
        <source>&amp;Draw it</source>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>&amp;No house</source>
        <translation>&amp;Kein Haus</translation>
    </message>
    <message>
        <source>Take the house away</source>
        <translation>Das Haus wegnehmen</translation>
    </message>
    <message>
        <source>Draw the house</source>
        <translation>Das Haus zeichnen</translation>
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
        <source>Move a joint</source>
        <translation>Eine Verbindung bewegen</translation>
    </message>
    <message>
        <source>Move a piece</source>
        <translation>Ein Teil bewegen</translation>
    </message>
    <message>
        <source>Enter sets the length; Esc goes back to the arrow keys.</source>
        <translation>Eingabe setzt die Länge; Esc geht zurück zu den Pfeiltasten.</translation>
    </message>
    <message>
        <source>Arrow keys choose the way, Page Up and Page Down go up and down; type a number for the length.</source>
        <translation>Pfeiltasten wählen die Richtung, Bild auf und ab gehen hoch und runter; eine Zahl gibt die Länge.</translation>
    </message>
    <message>
        <source>The same arrow again makes it longer, the opposite one shorter (Shift: ten steps); type a number for the exact length; Enter draws it, Esc forgets it.</source>
        <translation>Derselbe Pfeil nochmals verlängert, der andere verkürzt (Umschalt: zehn Schritte); eine Zahl gibt die genaue Länge; Eingabe zeichnet, Esc vergisst es.</translation>
    </message>
    <message>
        <source>That way lies the piece itself. Choose another direction.</source>
        <translation>Dort liegt das Teil selbst. Eine andere Richtung wählen.</translation>
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
        <source>%1. The scale is stretched at its cold end, where benches live.</source>
        <translation>%1. Die Skala ist am kalten Ende gedehnt, wo Bänke leben.</translation>
    </message>
    <message>
        <source>%1, against outdoor air at the same height: violet below it, orange above it.</source>
        <translation>%1, gegen Außenluft in gleicher Höhe: violett darunter, orange darüber.</translation>
    </message>
    <message>
        <source>coloured once the path is whole</source>
        <translation>farbig, sobald der Weg vollständig ist</translation>
    </message>
    <message>
        <source>Take a feed from the rack and bring it here.</source>
        <translation>Eine Beschickung aus dem Regal nehmen und hierher bringen.</translation>
    </message>
    <message>
        <source>Then pull the path on from its ring, or bring the next piece to the ring.</source>
        <translation>Dann den Weg von ihrem Ring weiterziehen oder das nächste Teil an den Ring bringen.</translation>
    </message>
    <message>
        <source>It ends with a cap; the answer beside the sheet says what is still missing.</source>
        <translation>Er endet mit einer Haube; die Antwort neben dem Blatt sagt, was noch fehlt.</translation>
    </message>
    <message>
        <source>pipe or channel</source>
        <translation>Rohr oder Kanal</translation>
    </message>
    <message>
        <source>joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>way of the gas</source>
        <translation>Weg des Gases</translation>
    </message>
    <message>
        <source>reducer</source>
        <translation>Reduzierung</translation>
    </message>
    <message>
        <source>capped end</source>
        <translation>verschlossenes Ende</translation>
    </message>
    <message>
        <source>branch</source>
        <translation>Abzweig</translation>
    </message>
    <message>
        <source>damper</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>fan</source>
        <translation>Gebläse</translation>
    </message>
    <message>
        <source>barrel, bell or box</source>
        <translation>Fass, Glocke oder Kammer</translation>
    </message>
    <message>
        <source>stack head</source>
        <translation>Schornsteinkopf</translation>
    </message>
    <message>
        <source>air comes in</source>
        <translation>Luft tritt ein</translation>
    </message>
    <message>
        <source>Drag a feed from the rack onto the sheet, or choose it there and press Enter.</source>
        <translation>Eine Beschickung vom Regal aufs Blatt ziehen, oder dort wählen und Eingabe drücken.</translation>
    </message>
    <message>
        <source>Arrow keys or a drag grow the path from this end; Enter goes to the rack; Tab goes to the next end.</source>
        <translation>Pfeiltasten oder Ziehen verlängern den Weg von diesem Ende; Eingabe geht zum Regal; Tab geht zum nächsten Ende.</translation>
    </message>
    <message>
        <source>Drag them, or: Delete takes them out, R turns them, Ctrl+M mirrors them, Ctrl+C copies them.</source>
        <translation>Ziehen, oder: Entf nimmt sie heraus, R dreht sie, Strg+M spiegelt sie, Strg+C kopiert sie.</translation>
    </message>
    <message>
        <source>Arrow keys walk along the path; Delete takes the piece out; R turns it; Alt and arrows move it.</source>
        <translation>Pfeiltasten gehen am Weg entlang; Entf nimmt das Teil heraus; R dreht es; Alt und Pfeile bewegen es.</translation>
    </message>
    <message>
        <source>Drag from a ring with a plus to grow the path. Click a piece to see it. Drag bare paper to move the sheet; with Shift to select.</source>
        <translation>Von einem Ring mit Plus ziehen verlängert den Weg. Ein Teil anklicken zeigt es. Freies Papier ziehen bewegt das Blatt; mit Umschalt wählt es aus.</translation>
    </message>
    <message>
        <source>Turn %1</source>
        <translation>%1 drehen</translation>
    </message>
    <message>
        <source>Move the path</source>
        <translation>Den Weg bewegen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Grundriss</translation>
    </message>
    <message>
        <source>Elevation from the south</source>
        <translation>Ansicht von Süden</translation>
    </message>
    <message>
        <source>Elevation from the east</source>
        <translation>Ansicht von Osten</translation>
    </message>
    <message>
        <source>Elevation along the path</source>
        <translation>Abwicklung entlang des Weges</translation>
    </message>
    <message>
        <source>Isometric</source>
        <translation>Isometrie</translation>
    </message>
    <message>
        <source>Draw a frame around the pieces to select; Esc forgets it.</source>
        <translation>Einen Rahmen um die Teile ziehen, die gewählt werden; Esc vergisst es.</translation>
    </message>
    <message>
        <source>Drag the selected pieces: runs along the way stretch, other joints come apart. Esc forgets it.</source>
        <translation>Die gewählten Teile ziehen: Stränge in der Richtung dehnen sich, andere Verbindungen lösen sich. Esc vergisst es.</translation>
    </message>
    <message>
        <source>neutral plane</source>
        <translation>neutrale Ebene</translation>
    </message>
    <message>
        <source>top of the house</source>
        <translation>Oberkante des Hauses</translation>
    </message>
    <message>
        <source>Elevation</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>N</source>
        <translation>N</translation>
    </message>
    <message>
        <source>Passes side by side</source>
        <translation>Züge nebeneinander</translation>
    </message>
    <message>
        <source>Passes</source>
        <translation>Züge</translation>
    </message>
    <message>
        <source>to the left</source>
        <translation>nach links</translation>
    </message>
    <message>
        <source>to the right</source>
        <translation>nach rechts</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Each pass</source>
        <translation>Jeder Zug</translation>
    </message>
    <message>
        <source>Between their axes</source>
        <translation>Zwischen ihren Achsen</translation>
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
        <source>&amp;Draw them</source>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>From the open end in focus; the drawing shows it.</source>
        <translation>Vom offenen Ende im Fokus; die Zeichnung zeigt es.</translation>
    </message>
    <message>
        <source>This design comes from a newer version of the program and is open for reading only; saving it here could lose what this version does not know.</source>
        <translation>Dieser Entwurf stammt aus einer neueren Version des Programms und ist nur zum Lesen offen; hier gespeichert ginge verloren, was diese Version nicht kennt.</translation>
    </message>
    <message>
        <source>Variant %1</source>
        <translation>Variante %1</translation>
    </message>
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
        <source>There is no room for that: the run is too short.</source>
        <translation>Dafür ist kein Platz: der Strang ist zu kurz.</translation>
    </message>
    <message>
        <source>That end is already joined to something.</source>
        <translation>Dieses Ende ist schon mit etwas verbunden.</translation>
    </message>
    <message>
        <source>Only a straight run can be split or stretched.</source>
        <translation>Nur ein gerader Strang kann geteilt oder gedehnt werden.</translation>
    </message>
    <message>
        <source>The pieces on either side could not meet any more.</source>
        <translation>Die Teile auf beiden Seiten könnten sich nicht mehr treffen.</translation>
    </message>
    <message>
        <source>That piece is no longer on the drawing.</source>
        <translation>Dieses Teil ist nicht mehr auf der Zeichnung.</translation>
    </message>
    <message>
        <source>The catalogue has no such piece.</source>
        <translation>Der Katalog hat kein solches Teil.</translation>
    </message>
    <message>
        <source>That is outside the allowed range.</source>
        <translation>Das liegt außerhalb des erlaubten Bereichs.</translation>
    </message>
    <message>
        <source>north-east</source>
        <translation>Nordosten</translation>
    </message>
    <message>
        <source>north-west</source>
        <translation>Nordwesten</translation>
    </message>
    <message>
        <source>south-west</source>
        <translation>Südwesten</translation>
    </message>
    <message>
        <source>south-east</source>
        <translation>Südosten</translation>
    </message>
    <message>
        <source>to the %1</source>
        <translation>nach %1</translation>
    </message>
    <message>
        <source>, rising</source>
        <translation>, steigend</translation>
    </message>
    <message>
        <source>, falling</source>
        <translation>, fallend</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Runter</translation>
    </message>
    <message>
        <source>Site</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Haus</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre</translation>
    </message>
    <message>
        <source>The selected piece</source>
        <translation>Das gewählte Teil</translation>
    </message>
    <message>
        <source>Altitude, weather and wind</source>
        <translation>Höhe, Wetter und Wind</translation>
    </message>
    <message>
        <source>The room, the house&apos;s leaks and fans</source>
        <translation>Der Raum, Undichtheiten und Lüfter des Hauses</translation>
    </message>
    <message>
        <source>Wood, burn rate and air</source>
        <translation>Holz, Abbrand und Luft</translation>
    </message>
    <message>
        <source>Other conditions tried out, the design left as it is</source>
        <translation>Andere Bedingungen ausprobiert, der Entwurf bleibt, wie er ist</translation>
    </message>
    <message>
        <source>Editors</source>
        <translation>Bearbeiten</translation>
    </message>
    <message>
        <source>Sheet&apos;s name</source>
        <translation>Name des Blatts</translation>
    </message>
    <message>
        <source>What you call this data sheet; pieces with a fan offer it.</source>
        <translation>Wie Sie dieses Datenblatt nennen; Teile mit Gebläse bieten es an.</translation>
    </message>
    <message>
        <source>your own data sheet</source>
        <translation>Ihr eigenes Datenblatt</translation>
    </message>
    <message>
        <source>Write my own data sheet</source>
        <translation>Eigenes Datenblatt schreiben</translation>
    </message>
    <message>
        <source>Add point</source>
        <translation>Punkt hinzufügen</translation>
    </message>
    <message>
        <source>Remove point</source>
        <translation>Punkt entfernen</translation>
    </message>
    <message>
        <source>Fan speed</source>
        <translation>Drehzahl des Gebläses</translation>
    </message>
    <message>
        <source>Points of the fan curve</source>
        <translation>Punkte der Kennlinie</translation>
    </message>
    <message>
        <source>Set %1 of the fan</source>
        <translation>%1 des Gebläses einstellen</translation>
    </message>
    <message>
        <source>Name the fan&apos;s sheet</source>
        <translation>Das Blatt des Gebläses benennen</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>Not on a path with a fire yet: the curve is for the sheet&apos;s own gas.</source>
        <translation>Noch nicht auf einem Weg mit Feuer: die Kennlinie gilt für das Gas des Blatts.</translation>
    </message>
    <message>
        <source>Now %1 at %2, %3. Gas up to %4 (rated %5), motor %6 (rated %7). Line: at this speed in this gas; dots: the sheet.</source>
        <translation>Jetzt %1 bei %2, %3. Gas bis %4 (zulässig %5), Motor %6 (zulässig %7). Linie: bei dieser Drehzahl in diesem Gas; Punkte: das Blatt.</translation>
    </message>
    <message>
        <source>Set speed</source>
        <translation>Drehzahl einstellen</translation>
    </message>
    <message>
        <source>My fan</source>
        <translation>Mein Gebläse</translation>
    </message>
    <message>
        <source>Write own data sheet</source>
        <translation>Eigenes Datenblatt schreiben</translation>
    </message>
    <message>
        <source>Point %1, %2: %3 is outside the allowed range of %4, so it is not used</source>
        <translation>Punkt %1, %2: %3 liegt außerhalb des Zulässigen von %4 und wird nicht genommen</translation>
    </message>
    <message>
        <source>Point %1, flow: %2 is not above the %3 of the point before, so the sheet still has its old points</source>
        <translation>Punkt %1, Strom: %2 liegt nicht über den %3 des Punkts davor, das Blatt behält also seine alten Punkte</translation>
    </message>
    <message>
        <source>Every head is 0: at least one must be more, so the sheet still has its old points</source>
        <translation>Jede Förderhöhe ist 0: mindestens eine muss größer sein, das Blatt behält also seine alten Punkte</translation>
    </message>
    <message>
        <source>Set points of the fan</source>
        <translation>Punkte des Gebläses setzen</translation>
    </message>
    <message>
        <source>The first point is the head at no flow; a curve begins there</source>
        <translation>Der erste Punkt ist der Druck ohne Strom; dort beginnt eine Kennlinie</translation>
    </message>
    <message>
        <source>Fan curve</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>About this field</source>
        <translation>Zu diesem Feld</translation>
    </message>
    <message>
        <source>Moisture in words</source>
        <translation>Feuchte in Worten</translation>
    </message>
    <message>
        <source>Picking a word puts its usual moisture into the field above.</source>
        <translation>Ein Wort zu wählen trägt seine übliche Feuchte oben ein.</translation>
    </message>
    <message>
        <source>Set moisture</source>
        <translation>Feuchte setzen</translation>
    </message>
    <message>
        <source>at %1</source>
        <translation>bei %1</translation>
    </message>
    <message>
        <source>(between the usual words)</source>
        <translation>(zwischen den üblichen Worten)</translation>
    </message>
    <message>
        <source>Inlet choke: {}</source>
        <translation>Drosselung des Einlasses: {}</translation>
    </message>
    <message>
        <source>Set inlet choke</source>
        <translation>Drosselung setzen</translation>
    </message>
    <message>
        <source>your drawing</source>
        <translation>Ihre Zeichnung</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Put another piece of the same family in its place; the path stays connected.</source>
        <translation>Ein anderes Teil derselben Familie an seine Stelle setzen; der Weg bleibt verbunden.</translation>
    </message>
    <message>
        <source>Turns</source>
        <translation>Biegt ab</translation>
    </message>
    <message>
        <source>Which way the gas, or the branch, leaves the piece.</source>
        <translation>Wohin das Gas oder der Abzweig das Teil verlässt.</translation>
    </message>
    <message>
        <source>Own name</source>
        <translation>Eigener Name</translation>
    </message>
    <message>
        <source>What you call this piece; it stands on the drawing and on the sheet.</source>
        <translation>Wie Sie dieses Teil nennen; so steht es auf Zeichnung und Blatt.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Take out</source>
        <translation>Herausnehmen</translation>
    </message>
    <message>
        <source>No piece is selected.

Click a piece on the drawing, on the plot or in the list of findings: its sizes, walls and surroundings can be changed here.</source>
        <translation>Kein Teil ist gewählt.

Ein Teil auf der Zeichnung, im Diagramm oder in den Befunden anklicken: hier lassen sich Maße, Wände und Umgebung ändern.</translation>
    </message>
    <message>
        <source>Anything worth remembering about this piece</source>
        <translation>Was man sich zu diesem Teil merken will</translation>
    </message>
    <message>
        <source>Take this piece out of the path (Del on the drawing)</source>
        <translation>Dieses Teil aus dem Weg nehmen (Entf auf der Zeichnung)</translation>
    </message>
    <message>
        <source>Change to %1</source>
        <translation>Ändern in %1</translation>
    </message>
    <message>
        <source>Turn piece</source>
        <translation>Teil drehen</translation>
    </message>
    <message>
        <source>Name piece</source>
        <translation>Teil benennen</translation>
    </message>
    <message>
        <source>What this piece&apos;s losses rest on:</source>
        <translation>Worauf die Verluste dieses Teils beruhen:</translation>
    </message>
    <message>
        <source>Write notes</source>
        <translation>Notizen schreiben</translation>
    </message>
    <message>
        <source>usual %1</source>
        <translation>üblich %1</translation>
    </message>
    <message>
        <source> to </source>
        <translation> bis </translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>at most %1</source>
        <translation>höchstens %1</translation>
    </message>
    <message>
        <source>Published: %1</source>
        <translation>Veröffentlicht: %1</translation>
    </message>
    <message>
        <source>From memory; check before relying on it</source>
        <translation>Aus dem Gedächtnis; vor Gebrauch prüfen</translation>
    </message>
    <message>
        <source>%1 (from memory; check before relying on it)</source>
        <translation>%1 (aus dem Gedächtnis; vor Gebrauch prüfen)</translation>
    </message>
    <message>
        <source>Common practice, no published source</source>
        <translation>Übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>Common practice: %1</source>
        <translation>Übliche Praxis: %1</translation>
    </message>
    <message>
        <source>Our own modelling choice</source>
        <translation>Eigene Festlegung</translation>
    </message>
    <message>
        <source>Our own choice: %1</source>
        <translation>Eigene Festlegung: %1</translation>
    </message>
    <message>
        <source>{} (this design&apos;s own)</source>
        <translation>{} (dieses Entwurfs)</translation>
    </message>
    <message>
        <source>{} (own)</source>
        <translation>{} (eigenes)</translation>
    </message>
    <message>
        <source>Outside the allowed range of %1</source>
        <translation>Außerhalb des erlaubten Bereichs von %1</translation>
    </message>
    <message>
        <source>%1 is outside the allowed range of %2, so it is not used: the design still has %3</source>
        <translation>%1 liegt außerhalb des erlaubten Bereichs von %2 und wird nicht benutzt: der Entwurf hat weiter %3</translation>
    </message>
    <message>
        <source>That is as far as it goes: %1</source>
        <translation>Weiter geht es nicht: %1</translation>
    </message>
    <message>
        <source>%1 (not known)</source>
        <translation>%1 (unbekannt)</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>What is this, and what is usual</source>
        <translation>Was ist das, und was ist üblich</translation>
    </message>
    <message>
        <source>Pieces and numbers</source>
        <translation>Teile und Zahlen</translation>
    </message>
    <message>
        <source>Usual:</source>
        <translation>Üblich:</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Zug</translation>
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
        <source>light</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>heavy</source>
        <translation>schwer</translation>
    </message>
    <message>
        <source>rubs</source>
        <translation>reibt</translation>
    </message>
    <message>
        <source>turns</source>
        <translation>biegt ab</translation>
    </message>
    <message>
        <source>this warm</source>
        <translation>so warm</translation>
    </message>
    <message>
        <source>warm wall: dry</source>
        <translation>warme Wand: trocken</translation>
    </message>
    <message>
        <source>cold wall: wet</source>
        <translation>kalte Wand: nass</translation>
    </message>
    <message>
        <source>what the wood needs</source>
        <translation>was das Holz braucht</translation>
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
        <source>mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>stack</source>
        <translation>Schornstein</translation>
    </message>
    <message>
        <source>What is left of the stack&apos;s pull when all losses of the path, with their safety factor, and the wind&apos;s share are taken off. It is the least of three ages of the bench: cold, after an hour, warmed through.</source>
        <translation>Was vom Zug des Schornsteins bleibt, wenn alle Verluste des Weges mit ihrem Sicherheitsfaktor und der Anteil des Windes abgezogen sind. Es ist der kleinste Wert von drei Zuständen der Bank: kalt, nach einer Stunde, durchwärmt.</translation>
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
        <source>The pull itself: a column of warm gas is lighter than as much outdoor air beside it. It grows with height and with warmth.</source>
        <translation>Der Zug selbst: eine Säule warmen Gases ist leichter als ebenso viel Außenluft daneben. Er wächst mit Höhe und Wärme.</translation>
    </message>
    <message>
        <source>Heaters with a bench live on 8 to 20 Pa.</source>
        <translation>Öfen mit Bank leben von 8 bis 20 Pa.</translation>
    </message>
    <message>
        <source>Resistance</source>
        <translation>Widerstand</translation>
    </message>
    <message>
        <source>What friction along the walls and every bend, tee and change of size cost at the flow the fire wants.</source>
        <translation>Was Reibung an den Wänden und jeder Bogen, jedes T-Stück und jeder Weitenwechsel bei dem Strom kosten, den das Feuer will.</translation>
    </message>
    <message>
        <source>Half of the buoyancy or less leaves a sound margin. Bends and narrow places cost most.</source>
        <translation>Die Hälfte des Auftriebs oder weniger lässt eine gesunde Reserve. Bögen und enge Stellen kosten am meisten.</translation>
    </message>
    <message>
        <source>How warm the gas leaves the cap when the bench is warm and the path has settled.</source>
        <translation>Wie warm das Gas die Haube verlässt, wenn die Bank warm ist und der Weg sich eingestellt hat.</translation>
    </message>
    <message>
        <source>60 to 120 °C is common. Colder saves heat and risks water and a weak pull; hotter means that heat is thrown away.</source>
        <translation>60 bis 120 °C sind üblich. Kälter spart Wärme, riskiert aber Wasser und schwachen Zug; heißer heißt, dass Wärme verloren geht.</translation>
    </message>
    <message>
        <source>Where the inner wall is colder than the dew point of the gas, water settles. It carries soot and acid.</source>
        <translation>Wo die Innenwand kälter ist als der Taupunkt des Gases, schlägt sich Wasser nieder. Es trägt Ruß und Säure.</translation>
    </message>
    <message>
        <source>Nowhere is best; in a bench that is still cold a little at the start is common.</source>
        <translation>Nirgends ist am besten; in einer noch kalten Bank ist anfangs etwas üblich.</translation>
    </message>
    <message>
        <source>How much air comes with the wood, as a multiple of what it needs to burn.</source>
        <translation>Wie viel Luft mit dem Holz kommt, als Vielfaches dessen, was es zum Brennen braucht.</translation>
    </message>
    <message>
        <source>2 to 3 is common for an open feed. Under 1.5 it smokes; over 6 it cools the fire.</source>
        <translation>2 bis 3 sind bei offener Beschickung üblich. Unter 1,5 raucht es; über 6 kühlt es das Feuer.</translation>
    </message>
    <message>
        <source>Standing draft</source>
        <translation>Ruhezug</translation>
    </message>
    <message>
        <source>The pull before anything burns, from the house&apos;s warmth and the weather alone. Below zero the path runs backwards until it is warmed.</source>
        <translation>Der Zug, bevor etwas brennt, allein aus der Wärme des Hauses und dem Wetter. Unter null läuft der Weg rückwärts, bis er erwärmt ist.</translation>
    </message>
    <message>
        <source>A little above zero makes lighting easy. A chimney outdoors often stands below.</source>
        <translation>Etwas über null macht das Anzünden leicht. Ein Schornstein im Freien steht oft darunter.</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Where the wood&apos;s heat goes: into the bench&apos;s mass, through bare walls to the room, up the stack, out of the house.</source>
        <translation>Wohin die Wärme des Holzes geht: in die Masse der Bank, durch bloße Wände in den Raum, den Schornstein hinauf, aus dem Haus.</translation>
    </message>
    <message>
        <source>A third to a half in the mass is common for a bench of a few metres.</source>
        <translation>Ein Drittel bis die Hälfte in der Masse ist bei einer Bank von einigen Metern üblich.</translation>
    </message>
    <message>
        <source>Neutral plane</source>
        <translation>Neutrale Ebene</translation>
    </message>
    <message>
        <source>The height in the house at which indoor and outdoor pressure agree. Below it air wants in, above it out. A fire below it has the house against it.</source>
        <translation>Die Höhe im Haus, in der Innen- und Außendruck gleich sind. Darunter will Luft herein, darüber hinaus. Ein Feuer darunter hat das Haus gegen sich.</translation>
    </message>
    <message>
        <source>About the middle of the heated height; range hoods lift it.</source>
        <translation>Etwa die Mitte der beheizten Höhe; Dunstabzüge heben sie.</translation>
    </message>
    <message>
        <source>The curves along the path</source>
        <translation>Die Kurven entlang des Weges</translation>
    </message>
    <message>
        <source>Pressure in the flue from feed to cap, beside that of the room at the same height. Where the flue lies above the room, smoke can leak out of a crack.</source>
        <translation>Druck im Zug von der Beschickung zur Haube, neben dem des Raums in gleicher Höhe. Wo der Zug über dem Raum liegt, kann Rauch aus einem Riss treten.</translation>
    </message>
    <message>
        <source>The flue should lie below the room everywhere indoors.</source>
        <translation>Der Zug sollte im Haus überall unter dem Raum liegen.</translation>
    </message>
    <message>
        <source>Pressure along the path</source>
        <translation>Druck entlang des Weges</translation>
    </message>
    <message>
        <source>Temperature along the path</source>
        <translation>Temperatur entlang des Weges</translation>
    </message>
    <message>
        <source>Plots along the path</source>
        <translation>Diagramme entlang des Weges</translation>
    </message>
    <message>
        <source>The curves appear once air can come in and a fire burns on the path.</source>
        <translation>Die Kurven erscheinen, sobald Luft eintreten kann und ein Feuer auf dem Weg brennt.</translation>
    </message>
    <message>
        <source>where it settles, bench charged</source>
        <translation>wo es sich einstellt, Bank durchwärmt</translation>
    </message>
    <message>
        <source>at the wanted air, bench charged</source>
        <translation>bei gewünschter Luft, Bank durchwärmt</translation>
    </message>
    <message>
        <source>%1, %2 along</source>
        <translation>%1, %2 weit</translation>
    </message>
    <message>
        <source>%1: %2, room %3</source>
        <translation>%1: %2, Raum %3</translation>
    </message>
    <message>
        <source>%1: gas %2, wall %3, dew point %4</source>
        <translation>%1: Gas %2, Wand %3, Taupunkt %4</translation>
    </message>
    <message>
        <source>along the path, %1</source>
        <translation>entlang des Weges, %1</translation>
    </message>
    <message>
        <source>against outdoor air, %1</source>
        <translation>gegen Außenluft, %1</translation>
    </message>
    <message>
        <source>in the flue</source>
        <translation>im Zug</translation>
    </message>
    <message>
        <source>in the room, same height</source>
        <translation>im Raum, gleiche Höhe</translation>
    </message>
    <message>
        <source>smoke can leak into the room</source>
        <translation>Rauch kann in den Raum treten</translation>
    </message>
    <message>
        <source>temperature, %1</source>
        <translation>Temperatur, %1</translation>
    </message>
    <message>
        <source>inner wall</source>
        <translation>Innenwand</translation>
    </message>
    <message>
        <source>dew point</source>
        <translation>Taupunkt</translation>
    </message>
    <message>
        <source>Paper: %1</source>
        <translation>Papier: %1</translation>
    </message>
    <message>
        <source>Build sheet</source>
        <translation>Bauplan</translation>
    </message>
    <message>
        <source>Client&apos;s page</source>
        <translation>Seite für den Kunden</translation>
    </message>
    <message>
        <source>Lighting card</source>
        <translation>Anheizblatt</translation>
    </message>
    <message>
        <source>Working</source>
        <translation>Rechenweg</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Save as P&amp;DF…</source>
        <translation>Als P&amp;DF speichern…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>Pap&amp;er</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>Stock &amp;pipe</source>
        <translation>Lager&amp;rohr</translation>
    </message>
    <message>
        <source>Saw &amp;cut</source>
        <translation>Säge&amp;schnitt</translation>
    </message>
    <message>
        <source>&amp;Overlap</source>
        <translation>&amp;Überlappung</translation>
    </message>
    <message>
        <source>Cob: &amp;sand, parts</source>
        <translation>Lehm: S&amp;and, Teile</translation>
    </message>
    <message>
        <source>Cob: c&amp;lay, parts</source>
        <translation>Lehm: &amp;Ton, Teile</translation>
    </message>
    <message>
        <source>Laying out…</source>
        <translation>Wird gesetzt…</translation>
    </message>
    <message>
        <source>1 page</source>
        <translation>1 Seite</translation>
    </message>
    <message>
        <source>%1 pages</source>
        <translation>%1 Seiten</translation>
    </message>
    <message>
        <source>Save the pages as PDF</source>
        <translation>Die Seiten als PDF speichern</translation>
    </message>
    <message>
        <source>Written: %1.</source>
        <translation>Geschrieben: %1.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
    <message>
        <source>Export a view</source>
        <translation>Eine Ansicht ausgeben</translation>
    </message>
    <message>
        <source>Export the parts list</source>
        <translation>Die Stückliste ausgeben</translation>
    </message>
    <message>
        <source>Export the results</source>
        <translation>Die Ergebnisse ausgeben</translation>
    </message>
    <message>
        <source>“%1” was not written. What stood there before still does.</source>
        <translation>„%1“ wurde nicht geschrieben. Was vorher dort stand, steht noch.</translation>
    </message>
    <message>
        <source>Rack</source>
        <translation>Regal</translation>
    </message>
    <message>
        <source>Find a piece</source>
        <translation>Ein Teil suchen</translation>
    </message>
    <message>
        <source>Where air comes in</source>
        <translation>Wo Luft eintritt</translation>
    </message>
    <message>
        <source>First heat exchange</source>
        <translation>Erste Wärmeabgabe</translation>
    </message>
    <message>
        <source>Bench and floor</source>
        <translation>Bank und Boden</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Formstücke</translation>
    </message>
    <message>
        <source>Up and out</source>
        <translation>Hinauf und hinaus</translation>
    </message>
    <message>
        <source>Helpers</source>
        <translation>Helfer</translation>
    </message>
    <message>
        <source>Rack of pieces</source>
        <translation>Regal der Teile</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>New by five &amp;questions…</source>
        <translation>Neu mit fünf &amp;Fragen…</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>S&amp;tart page</source>
        <translation>S&amp;tartseite</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Earlier versions…</source>
        <translation>Frühere &amp;Versionen…</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Paper: preview, print, PDF…</source>
        <translation>Pa&amp;pier: Vorschau, Druck, PDF…</translation>
    </message>
    <message>
        <source>E&amp;xport</source>
        <translation>Aus&amp;geben</translation>
    </message>
    <message>
        <source>&amp;Plan…</source>
        <translation>&amp;Grundriss…</translation>
    </message>
    <message>
        <source>Elevation from the &amp;south…</source>
        <translation>Ansicht von &amp;Süden…</translation>
    </message>
    <message>
        <source>Elevation from the &amp;east…</source>
        <translation>Ansicht von &amp;Osten…</translation>
    </message>
    <message>
        <source>&amp;Isometric…</source>
        <translation>&amp;Isometrie…</translation>
    </message>
    <message>
        <source>Parts &amp;list…</source>
        <translation>Stück&amp;liste…</translation>
    </message>
    <message>
        <source>&amp;Results…</source>
        <translation>&amp;Ergebnisse…</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Zoom to &amp;fit</source>
        <translation>Ein&amp;passen</translation>
    </message>
    <message>
        <source>&amp;Will it start?</source>
        <translation>&amp;Geht er an?</translation>
    </message>
    <message>
        <source>Starting &amp;aids</source>
        <translation>&amp;Anheizhilfen</translation>
    </message>
    <message>
        <source>Show the wor&amp;king of</source>
        <translation>&amp;Rechenweg zeigen von</translation>
    </message>
    <message>
        <source>the selected &amp;piece</source>
        <translation>dem gewählten &amp;Teil</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Einheiten</translation>
    </message>
    <message>
        <source>&amp;Metric (mm, °C, Pa)</source>
        <translation>&amp;Metrisch (mm, °C, Pa)</translation>
    </message>
    <message>
        <source>&amp;Imperial (in, ft, °F, in w.c.)</source>
        <translation>&amp;Angloamerikanisch (in, ft, °F, in w.c.)</translation>
    </message>
    <message>
        <source>S&amp;witch metric and imperial</source>
        <translation>Einheiten &amp;wechseln</translation>
    </message>
    <message>
        <source>&amp;Grid step</source>
        <translation>Raster&amp;weite</translation>
    </message>
    <message>
        <source>&amp;Colour the drawing by</source>
        <translation>Zeichnung ein&amp;färben nach</translation>
    </message>
    <message>
        <source>Gas &amp;temperature</source>
        <translation>Gas&amp;temperatur</translation>
    </message>
    <message>
        <source>&amp;Pressure</source>
        <translation>&amp;Druck</translation>
    </message>
    <message>
        <source>&amp;Dark sheet</source>
        <translation>&amp;Dunkles Blatt</translation>
    </message>
    <message>
        <source>&amp;High contrast</source>
        <translation>&amp;Hoher Kontrast</translation>
    </message>
    <message>
        <source>Text si&amp;ze</source>
        <translation>Schrift&amp;größe</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Lan&amp;guage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>Isometric as pipe dra&amp;wing</source>
        <translation>Isometrie als Rohr&amp;zeichnung</translation>
    </message>
    <message>
        <source>The h&amp;ouse around it…</source>
        <translation>Das Ha&amp;us darum…</translation>
    </message>
    <message>
        <source>What is wr&amp;ong</source>
        <translation>Was nicht stimm&amp;t</translation>
    </message>
    <message>
        <source>What would &amp;help</source>
        <translation>Was &amp;helfen würde</translation>
    </message>
    <message>
        <source>How far one can &amp;go</source>
        <translation>Wie weit man &amp;gehen kann</translation>
    </message>
    <message>
        <source>Go to the &amp;rack</source>
        <translation>Zum &amp;Regal</translation>
    </message>
    <message>
        <source>Go to the dra&amp;wing</source>
        <translation>Zur &amp;Zeichnung</translation>
    </message>
    <message>
        <source>Go to the &amp;answer</source>
        <translation>Zur &amp;Antwort</translation>
    </message>
    <message>
        <source>Go to the &amp;editors</source>
        <translation>Zu den &amp;Feldern</translation>
    </message>
    <message>
        <source>Go to the &amp;plot</source>
        <translation>Zum &amp;Diagramm</translation>
    </message>
    <message>
        <source>Go to the &amp;burn</source>
        <translation>Zum &amp;Abbrand</translation>
    </message>
    <message>
        <source>The program speaks it from its next start on.</source>
        <translation>Das Programm spricht sie ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das S&amp;ystem</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Keyboard</source>
        <translation>&amp;Tastatur</translation>
    </message>
    <message>
        <source>&amp;What is this, and what is usual</source>
        <translation>&amp;Was ist das, und was ist üblich</translation>
    </message>
    <message>
        <source>Three &amp;gestures</source>
        <translation>Drei &amp;Gesten</translation>
    </message>
    <message>
        <source>&amp;About and cautions</source>
        <translation>Ü&amp;ber das Programm und Vorsicht</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Diese vergessen</translation>
    </message>
    <message>
        <source>&amp;Piece</source>
        <translation>&amp;Teil</translation>
    </message>
    <message>
        <source>Put a red&amp;ucer between two bores</source>
        <translation>Red&amp;uzierung zwischen zwei Weiten setzen</translation>
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
        <source>&amp;Bench longer, with its return runs</source>
        <translation>&amp;Bank länger, mit ihren Rückzügen</translation>
    </message>
    <message>
        <source>Bench &amp;shorter</source>
        <translation>Bank &amp;kürzer</translation>
    </message>
    <message>
        <source>&amp;Draw passes side by side…</source>
        <translation>Züge nebeneinander &amp;zeichnen…</translation>
    </message>
    <message>
        <source>Pull its joint &amp;apart</source>
        <translation>Seine Verbindung &amp;lösen</translation>
    </message>
    <message>
        <source>Take &amp;out	Del</source>
        <translation>Heraus&amp;nehmen	Entf</translation>
    </message>
    <message>
        <source>&amp;Variants</source>
        <translation>&amp;Varianten</translation>
    </message>
    <message>
        <source>&amp;Fork what is on the desk</source>
        <translation>Was auf dem Tisch liegt ab&amp;zweigen</translation>
    </message>
    <message>
        <source>&amp;Next variant</source>
        <translation>&amp;Nächste Variante</translation>
    </message>
    <message>
        <source>&amp;Variant before</source>
        <translation>&amp;Vorige Variante</translation>
    </message>
    <message>
        <source>&amp;Compare them…</source>
        <translation>Ver&amp;gleichen…</translation>
    </message>
    <message>
        <source>&amp;Take this one out</source>
        <translation>Diese &amp;herausnehmen</translation>
    </message>
    <message>
        <source>Flue paths (*%1);;All files (*)</source>
        <translation>Rauchwege (*%1);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>No working copy can be kept (%1): save often.</source>
        <translation>Es kann keine Arbeitskopie gehalten werden (%1): oft speichern.</translation>
    </message>
    <message>
        <source>%1 (demo)</source>
        <translation>%1 (Beispiel)</translation>
    </message>
    <message>
        <source>Unnamed</source>
        <translation>Unbenannt</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>“%1” has changes that are not saved.</source>
        <translation>„%1“ hat Änderungen, die nicht gespeichert sind.</translation>
    </message>
    <message>
        <source>Save them before leaving this design?</source>
        <translation>Vor dem Verlassen dieses Entwurfs speichern?</translation>
    </message>
    <message>
        <source>Open a design</source>
        <translation>Einen Entwurf öffnen</translation>
    </message>
    <message>
        <source>“%1” was not opened.</source>
        <translation>„%1“ wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>A copy of “%1”: saving asks where to put it.</source>
        <translation>Eine Kopie von „%1“: beim Speichern wird gefragt, wohin.</translation>
    </message>
    <message>
        <source>The demo “%1” was not opened.</source>
        <translation>Das Beispiel „%1“ wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>There is no demo “%1”.</source>
        <translation>Es gibt kein Beispiel „%1“.</translation>
    </message>
    <message>
        <source>The start page lists the demos there are.</source>
        <translation>Die Startseite zeigt die vorhandenen Beispiele.</translation>
    </message>
    <message>
        <source>Save the design as</source>
        <translation>Den Entwurf speichern unter</translation>
    </message>
    <message>
        <source>“%1” was not saved. The design is still here, unsaved.</source>
        <translation>„%1“ wurde nicht gespeichert. Der Entwurf ist noch hier, ungespeichert.</translation>
    </message>
    <message>
        <source>Another window has that file open. Save under another name.</source>
        <translation>Ein anderes Fenster hat diese Datei offen. Unter einem anderen Namen speichern.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gespeichert als %1.</translation>
    </message>
    <message>
        <source>Saved as %1, but the version before it could not be kept.</source>
        <translation>Gespeichert als %1, aber die Version davor konnte nicht behalten werden.</translation>
    </message>
    <message>
        <source>About Fluewright</source>
        <translation>Über Fluewright</translation>
    </message>
    <message>
        <source>Draw the flue path of a bench heater and see whether it draws. Version %1, GPL-3.0-or-later.</source>
        <translation>Den Rauchweg eines Bankofens zeichnen und sehen, ob er zieht. Version %1, GPL-3.0-or-later.</translation>
    </message>
    <message>
        <source>Before you light a fire</source>
        <translation>Bevor Sie Feuer machen</translation>
    </message>
    <message>
        <source>No compliance with any standard is claimed.</source>
        <translation>Es wird keine Übereinstimmung mit einer Norm behauptet.</translation>
    </message>
    <message>
        <source>In a field: one step up or down; Page keys: ten</source>
        <translation>In einem Feld: ein Schritt auf oder ab; Bildtasten: zehn</translation>
    </message>
    <message>
        <source>Enter, Esc</source>
        <translation>Eingabe, Esc</translation>
    </message>
    <message>
        <source>In a field: use what is typed, or go back to what was</source>
        <translation>In einem Feld: das Getippte nehmen oder zurück zum Vorigen</translation>
    </message>
    <message>
        <source>← →, Enter</source>
        <translation>← →, Eingabe</translation>
    </message>
    <message>
        <source>On the plot: walk along the path, select the piece</source>
        <translation>Im Diagramm: am Weg entlanggehen, das Teil wählen</translation>
    </message>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>To the next control, or back</source>
        <translation>Zum nächsten Bedienelement, oder zurück</translation>
    </message>
    <message>
        <source>Keyboard</source>
        <translation>Tastatur</translation>
    </message>
    <message>
        <source>Everything by keyboard</source>
        <translation>Alles mit der Tastatur</translation>
    </message>
    <message>
        <source>Already open</source>
        <translation>Schon offen</translation>
    </message>
    <message>
        <source>“%1” is open in another window.</source>
        <translation>„%1“ ist in einem anderen Fenster offen.</translation>
    </message>
    <message>
        <source>The program with number %1 on the computer “%2” has it. If both saved it, one would lose what it drew. You can work on a copy.</source>
        <translation>Das Programm mit der Nummer %1 auf dem Rechner „%2“ hat sie. Würden beide speichern, verlöre eines, was es zeichnete. Sie können an einer Kopie arbeiten.</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Eine &amp;Kopie öffnen</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Nicht gespeicherte Arbeit</translation>
    </message>
    <message>
        <source>“%1” was not saved when the program ended.</source>
        <translation>„%1“ war nicht gespeichert, als das Programm endete.</translation>
    </message>
    <message>
        <source>A working copy from %1 is here.</source>
        <translation>Eine Arbeitskopie von %1 ist hier.</translation>
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
        <source>Ask me &amp;later</source>
        <translation>&amp;Später fragen</translation>
    </message>
    <message>
        <source>The working copy of “%1” was not opened.</source>
        <translation>Die Arbeitskopie von „%1“ wurde nicht geöffnet.</translation>
    </message>
    <message>
        <source>Unsaved work from %1: save it to keep it.</source>
        <translation>Nicht gespeicherte Arbeit von %1: speichern, um sie zu behalten.</translation>
    </message>
    <message>
        <source>Earlier versions of “%1”</source>
        <translation>Frühere Versionen von „%1“</translation>
    </message>
    <message>
        <source>Earlier versions</source>
        <translation>Frühere Versionen</translation>
    </message>
    <message>
        <source>There is none yet: one is kept each time you save.</source>
        <translation>Es gibt noch keine: bei jedem Speichern wird eine behalten.</translation>
    </message>
    <message>
        <source>Choose what to go back to. Undo brings back what is there now.</source>
        <translation>Wählen, wohin zurück. Rückgängig bringt zurück, was jetzt da ist.</translation>
    </message>
    <message>
        <source>&amp;Go back to it</source>
        <translation>&amp;Dorthin zurück</translation>
    </message>
    <message>
        <source>Go back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message>
        <source>This is the version of %1.</source>
        <translation>Dies ist die Version von %1.</translation>
    </message>
    <message>
        <source>Burn over time</source>
        <translation>Abbrand über die Zeit</translation>
    </message>
    <message>
        <source> (read-only)</source>
        <translation> (nur zum Lesen)</translation>
    </message>
    <message>
        <source>Choose a design to look at, or start with an empty sheet.</source>
        <translation>Einen Entwurf zum Ansehen wählen oder mit einem leeren Blatt beginnen.</translation>
    </message>
    <message>
        <source>Open the demo %1</source>
        <translation>Das Beispiel %1 öffnen</translation>
    </message>
    <message>
        <source>Recent</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Draw the flue path of a bench heater, from feed to cap, and see at every edit whether it draws.</source>
        <translation>Den Rauchweg eines Bankofens von der Beschickung bis zur Haube zeichnen und bei jeder Änderung sehen, ob er zieht.</translation>
    </message>
    <message>
        <source>Empty sheet</source>
        <translation>Leeres Blatt</translation>
    </message>
    <message>
        <source>Open a design…</source>
        <translation>Einen Entwurf öffnen…</translation>
    </message>
    <message>
        <source>A path by five questions…</source>
        <translation>Ein Weg mit fünf Fragen…</translation>
    </message>
    <message>
        <source>Designs to look at</source>
        <translation>Entwürfe zum Ansehen</translation>
    </message>
    <message>
        <source>All invented; change them as you like, they open as unsaved copies.</source>
        <translation>Alle erfunden; nach Belieben ändern, sie öffnen sich als ungespeicherte Kopien.</translation>
    </message>
    <message>
        <source>Open %1</source>
        <translation>%1 öffnen</translation>
    </message>
    <message>
        <source>Back to %1</source>
        <translation>Zurück zu %1</translation>
    </message>
    <message>
        <source>A path by five questions</source>
        <translation>Ein Weg mit fünf Fragen</translation>
    </message>
    <message>
        <source>straight</source>
        <translation>gerade</translation>
    </message>
    <message>
        <source>L, round a corner</source>
        <translation>L, um eine Ecke</translation>
    </message>
    <message>
        <source>U, out and back</source>
        <translation>U, hin und zurück</translation>
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
        <source>3  How much flue in the bench?</source>
        <translation>3  Wie viel Zug in der Bank?</translation>
    </message>
    <message>
        <source>5  How high does the stack end above the floor?</source>
        <translation>5  Wie hoch endet der Schornstein über dem Boden?</translation>
    </message>
    <message>
        <source>How wide is the flue?</source>
        <translation>Wie weit ist der Zug?</translation>
    </message>
    <message>
        <source>What shape has the bench?</source>
        <translation>Welche Form hat die Bank?</translation>
    </message>
    <message>
        <source>Where does the stack stand?</source>
        <translation>Wo steht der Schornstein?</translation>
    </message>
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
        <source>What the answers build</source>
        <translation>Was die Antworten bauen</translation>
    </message>
    <message>
        <source>&amp;Build it</source>
        <translation>&amp;Bauen</translation>
    </message>
    <message>
        <source>On a day at 5 °C this has a draft margin of %1 with a cold bench. Everything can be changed on the desk.</source>
        <translation>An einem Tag mit 5 °C hat das bei kalter Bank eine Zugreserve von %1. Auf dem Tisch lässt sich alles ändern.</translation>
    </message>
    <message>
        <source>&amp;Skip</source>
        <translation>Über&amp;springen</translation>
    </message>
    <message>
        <source>Three gestures</source>
        <translation>Drei Gesten</translation>
    </message>
    <message>
        <source>Press on the ring with the plus at the end of the bench and drag: the path grows. Drag across for an elbow.</source>
        <translation>Auf den Ring mit dem Plus am Ende der Bank drücken und ziehen: der Weg wächst. Quer ziehen gibt einen Bogen.</translation>
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
        <source>That is all there is to drawing. Pieces come from the rack to the left; F1 lists the keys.</source>
        <translation>Das ist das ganze Zeichnen. Teile kommen aus dem Regal links; F1 zeigt die Tasten.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>aid</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>why it stands here</source>
        <translation>warum sie hier steht</translation>
    </message>
    <message>
        <source>not known yet</source>
        <translation>noch unbekannt</translation>
    </message>
    <message>
        <source>Start map: outdoors across, room upwards</source>
        <translation>Startkarte: draußen nach rechts, Raum nach oben</translation>
    </message>
    <message>
        <source>Outdoors %1, room %2: </source>
        <translation>Draußen %1, Raum %2: </translation>
    </message>
    <message>
        <source> (not computed yet; the cells around it agree)</source>
        <translation> (noch nicht gerechnet; die Felder darum stimmen überein)</translation>
    </message>
    <message>
        <source> (a run did not converge)</source>
        <translation> (ein Lauf ist nicht konvergiert)</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>Pale, small letter: not computed yet, the cells around it agree</source>
        <translation>Blasser, kleiner Buchstabe: noch nicht gerechnet, die Felder darum stimmen überein</translation>
    </message>
    <message>
        <source>Will it start? – Fluewright</source>
        <translation>Geht er an? – Fluewright</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Start map as a table</source>
        <translation>Startkarte als Tabelle</translation>
    </message>
    <message>
        <source>Map as a table</source>
        <translation>Karte als Tabelle</translation>
    </message>
    <message>
        <source>Starting aids</source>
        <translation>Anheizhilfen</translation>
    </message>
    <message>
        <source>Starting aids, best first</source>
        <translation>Anheizhilfen, die besten zuerst</translation>
    </message>
    <message>
        <source>How far the runs are</source>
        <translation>Wie weit die Läufe sind</translation>
    </message>
    <message>
        <source>The drawing has no complete path with a fire on it yet: nothing can burn.</source>
        <translation>Die Zeichnung hat noch keinen vollständigen Weg mit einem Feuer darauf: es kann nichts brennen.</translation>
    </message>
    <message>
        <source>map %1 %, aids %2 %</source>
        <translation>Karte %1 %, Hilfen %2 %</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Compute anew</source>
        <translation>Neu rechnen</translation>
    </message>
    <message>
        <source>&amp;Back to the design&apos;s own</source>
        <translation>&amp;Zurück zu denen des Entwurfs</translation>
    </message>
    <message>
        <source>Moisture</source>
        <translation>Feuchte</translation>
    </message>
    <message>
        <source>Range hood and fans</source>
        <translation>Dunstabzug und Lüfter</translation>
    </message>
    <message>
        <source>in the design: %1</source>
        <translation>im Entwurf: %1</translation>
    </message>
    <message>
        <source>▲ The answer is for these conditions, not for the design&apos;s own.</source>
        <translation>▲ Die Antwort gilt für diese Bedingungen, nicht für die des Entwurfs.</translation>
    </message>
    <message>
        <source>Drag a handle: the answer follows, the design stays as it is.</source>
        <translation>Einen Griff ziehen: die Antwort folgt, der Entwurf bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>Variants</source>
        <translation>Varianten</translation>
    </message>
    <message>
        <source>Name the variant</source>
        <translation>Die Variante benennen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Variants side by side</source>
        <translation>Varianten nebeneinander</translation>
    </message>
    <message>
        <source>%1 (on the desk)</source>
        <translation>%1 (auf dem Tisch)</translation>
    </message>
    <message>
        <source>In brackets: how far from the first. F6 changes over; a click on a name puts that one on the desk.</source>
        <translation>In Klammern: wie weit von der ersten. F6 wechselt; ein Klick auf einen Namen legt diese auf den Tisch.</translation>
    </message>
    <message>
        <source>Water begins</source>
        <translation>Wasser beginnt</translation>
    </message>
    <message>
        <source>nowhere</source>
        <translation>nirgends</translation>
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
        <source>Length of the path</source>
        <translation>Länge des Weges</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>Stücke</translation>
    </message>
    <message>
        <source>%1 × %2 more</source>
        <translation>%1 × %2 mehr</translation>
    </message>
    <message>
        <source>%1 × %2 fewer</source>
        <translation>%1 × %2 weniger</translation>
    </message>
    <message>
        <source>the same pieces</source>
        <translation>dieselben Teile</translation>
    </message>
    <message>
        <source>Symbol</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>Meaning</source>
        <translation>Bedeutung</translation>
    </message>
    <message>
        <source>Relation</source>
        <translation>Beziehung</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Working – Fluewright</source>
        <translation>Rechenweg – Fluewright</translation>
    </message>
    <message>
        <source>SI base units; temperatures in kelvin. Values stand to more digits than they mean, so that whoever works with them on a calculator gets six back.</source>
        <translation>SI-Basiseinheiten; Temperaturen in Kelvin. Werte stehen mit mehr Stellen, als sie bedeuten, damit wer damit rechnet, sechs zurückbekommt.</translation>
    </message>
    <message>
        <source>What is worked</source>
        <translation>Was gerechnet wird</translation>
    </message>
    <message>
        <source>The slice before</source>
        <translation>Die Scheibe davor</translation>
    </message>
    <message>
        <source>The slice after</source>
        <translation>Die Scheibe danach</translation>
    </message>
    <message>
        <source>Copy all</source>
        <translation>Alles kopieren</translation>
    </message>
    <message>
        <source>The whole working as text; Ctrl+C copies the chosen lines</source>
        <translation>Der ganze Rechenweg als Text; Strg+C kopiert die gewählten Zeilen</translation>
    </message>
    <message>
        <source>Steps of the working</source>
        <translation>Schritte des Rechenwegs</translation>
    </message>
    <message>
        <source>The answer has no such number now.</source>
        <translation>Die Antwort hat diese Zahl jetzt nicht.</translation>
    </message>
    <message>
        <source>The gas does not pass this piece yet.</source>
        <translation>Das Gas geht noch nicht durch dieses Teil.</translation>
    </message>
    <message>
        <source>Slice %1 of the piece&apos;s %2</source>
        <translation>Scheibe %1 von %2 des Teils</translation>
    </message>
    <message>
        <source>; body %1 wide, %2 high</source>
        <translation>; Körper %1 breit, %2 hoch</translation>
    </message>
    <message>
        <source>%1 part %2 of %3</source>
        <translation>%1 Stück %2 von %3</translation>
    </message>
    <message>
        <source>no way of sawing takes fewer</source>
        <translation>kein Zuschnitt kommt mit weniger aus</translation>
    </message>
    <message>
        <source>the best found; at least %1 are needed</source>
        <translation>der beste gefundene; mindestens %1 sind nötig</translation>
    </message>
    <message>
        <source>%1, bore %2: %3 × %4 of stock pipe, %5. Offcuts %6, saw dust %7.</source>
        <translation>%1, Weite %2: %3 × %4 Lagerrohr, %5. Reste %6, Sägespäne %7.</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Lagerrohr</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>Cut list</source>
        <translation>Zuschnitt</translation>
    </message>
    <message>
        <source>None: stock pipe must be longer than its overlap.</source>
        <translation>Keiner: Lagerrohr muss länger sein als seine Überlappung.</translation>
    </message>
    <message>
        <source>Not to be sawn: %1. Pipe of several layers comes in fixed lengths; make these up from the maker&apos;s list with an adjustable length.</source>
        <translation>Nicht zu sägen: %1. Mehrschalige Rohre gibt es in festen Längen; diese nach der Liste des Herstellers mit einem Schiebestück zusammensetzen.</translation>
    </message>
    <message>
        <source>Cob of %1 parts of sand to %2 of clay by volume, loose and dry; straw as it takes. Make test bricks first.</source>
        <translation>Strohlehm aus %1 Teilen Sand auf %2 Ton nach Volumen, lose und trocken; Stroh, so viel er annimmt. Zuerst Probesteine machen.</translation>
    </message>
    <message>
        <source>For the cob</source>
        <translation>Für den Strohlehm</translation>
    </message>
    <message>
        <source>Dry weight</source>
        <translation>Trockengewicht</translation>
    </message>
    <message>
        <source>Loose</source>
        <translation>Lose</translation>
    </message>
    <message>
        <source>Sand</source>
        <translation>Sand</translation>
    </message>
    <message>
        <source>Clay soil</source>
        <translation>Lehm</translation>
    </message>
    <message>
        <source>Floor load</source>
        <translation>Bodenlast</translation>
    </message>
    <message>
        <source>On the room&apos;s floor</source>
        <translation>Auf dem Boden des Raums</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Footprint</source>
        <translation>Grundfläche</translation>
    </message>
    <message>
        <source>Load</source>
        <comment>on a floor</comment>
        <translation>Last</translation>
    </message>
    <message>
        <source>Everything over its footprint</source>
        <translation>Alles über seiner Grundfläche</translation>
    </message>
    <message>
        <source>Under the mass alone</source>
        <translation>Unter der Masse allein</translation>
    </message>
    <message>
        <source>Usual allowance for dwellings&apos; floors</source>
        <translation>Üblicher Ansatz für Böden von Wohnungen</translation>
    </message>
    <message>
        <source>%1 times the usual allowance: a timber floor needs its own judge before anything is built on it. Allowance: %2.</source>
        <translation>Das %1-fache des üblichen Ansatzes: eine Holzdecke muss eigens beurteilt werden, bevor darauf gebaut wird. Ansatz: %2.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>Bore</source>
        <translation>Lichte Weite</translation>
    </message>
    <message>
        <source>Wall, from the gas outwards</source>
        <translation>Wand, vom Gas nach außen</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>Masses</source>
        <translation>Massen</translation>
    </message>
    <message>
        <source>Material</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>around the flue, its space taken off</source>
        <translation>um den Zug, sein Raum abgezogen</translation>
    </message>
    <message>
        <source>walls of the pieces</source>
        <translation>Wände der Teile</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>Gas at the cap</source>
        <translation>Abgas an der Haube</translation>
    </message>
    <message>
        <source>Draft to spare, fans off</source>
        <translation>Zugreserve, Gebläse aus</translation>
    </message>
    <message>
        <source>with fans</source>
        <translation>mit Gebläse</translation>
    </message>
    <message>
        <source>quick estimate</source>
        <translation>Schnellschätzung</translation>
    </message>
    <message>
        <source>At the wanted burn rate and excess air. Draft to spare = buoyancy + room − %1 × resistance − wind allowance − wind at the cap.</source>
        <translation>Bei gewünschtem Abbrand und Luftüberschuss. Zugreserve = Auftrieb + Raum − %1 × Widerstand − Windzuschlag − Wind an der Haube.</translation>
    </message>
    <message>
        <source>Left to itself it settles nowhere: no flow from the inlet to the cap holds itself.</source>
        <translation>Sich selbst überlassen stellt es sich nirgends ein: kein Strom vom Einlass zur Haube hält sich.</translation>
    </message>
    <message>
        <source>Where it settles</source>
        <translation>Wo es sich einstellt</translation>
    </message>
    <message>
        <source>bench charged</source>
        <translation>Bank durchwärmt</translation>
    </message>
    <message>
        <source>Flue gas</source>
        <translation>Abgas</translation>
    </message>
    <message>
        <source>Gas behind the fire</source>
        <translation>Gas hinter dem Feuer</translation>
    </message>
    <message>
        <source>Heat released</source>
        <translation>Freigesetzte Wärme</translation>
    </message>
    <message>
        <source>Heat into the mass</source>
        <translation>Wärme in die Masse</translation>
    </message>
    <message>
        <source>Heat up the stack</source>
        <translation>Wärme durch den Schornstein</translation>
    </message>
    <message>
        <source>Wet walls</source>
        <translation>Nasse Wände</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Before anyone builds</source>
        <translation>Bevor jemand baut</translation>
    </message>
    <message>
        <source>Does it draw?</source>
        <translation>Zieht er?</translation>
    </message>
    <message>
        <source>Pressure along the way, where it settles</source>
        <translation>Druck entlang des Weges, wo es sich einstellt</translation>
    </message>
    <message>
        <source>Pressure along the way, at the wanted fire</source>
        <translation>Druck entlang des Weges, beim gewünschten Feuer</translation>
    </message>
    <message>
        <source>Reckoned with</source>
        <translation>Gerechnet mit</translation>
    </message>
    <message>
        <source>Condition</source>
        <translation>Bedingung</translation>
    </message>
    <message>
        <source>Steady calculation of gas, heat and pressure along the way; a cold bench and one hour after lighting are quick estimates. Joints are taken as tight and walls as dry. The page “Working” has every relation with its source.</source>
        <translation>Stationäre Rechnung von Gas, Wärme und Druck entlang des Weges; kalte Bank und eine Stunde nach dem Anzünden sind Schnellschätzungen. Verbindungen gelten als dicht und Wände als trocken. Die Seite „Rechenweg“ hat jede Beziehung mit ihrer Quelle.</translation>
    </message>
    <message>
        <source>mouth</source>
        <translation>Mündung</translation>
    </message>
    <message>
        <source>lid, lifted off</source>
        <translation>Deckel, abgehoben</translation>
    </message>
    <message>
        <source>cleanout</source>
        <translation>Reinigungsöffnung</translation>
    </message>
    <message>
        <source>from the roof</source>
        <translation>vom Dach</translation>
    </message>
    <message>
        <source>Into the bench</source>
        <translation>In die Bank</translation>
    </message>
    <message>
        <source>Out of the bench</source>
        <translation>Aus der Bank</translation>
    </message>
    <message>
        <source>Foot of the stack</source>
        <translation>Fuß des Schornsteins</translation>
    </message>
    <message>
        <source>Cleanouts (numbers in squares on the plan)</source>
        <translation>Reinigungsöffnungen (Nummern in Quadraten im Grundriss)</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Nach</translation>
    </message>
    <message>
        <source>Reach from either end</source>
        <translation>Reichweite von jedem Ende</translation>
    </message>
    <message>
        <source>Turns between</source>
        <translation>Bögen dazwischen</translation>
    </message>
    <message>
        <source>A brush from either end goes round one turn, seldom two: more than two turns between openings want another cleanout. Common practice, no source.</source>
        <translation>Eine Bürste geht von jedem Ende um einen Bogen, selten um zwei: mehr als zwei Bögen zwischen Öffnungen brauchen eine weitere Reinigungsöffnung. Übliche Praxis, keine Quelle.</translation>
    </message>
    <message>
        <source>Room to everything that burns (dash-dot outlines on the plan)</source>
        <translation>Abstand zu allem Brennbaren (Strichpunktlinien im Grundriss)</translation>
    </message>
    <message>
        <source>Keep clear</source>
        <translation>Freihalten</translation>
    </message>
    <message>
        <source>Local code and the makers&apos; sheets go before these. Wood behind masonry heats up too.</source>
        <translation>Örtliche Vorschriften und die Blätter der Hersteller gehen vor. Auch Holz hinter Mauerwerk wird heiß.</translation>
    </message>
    <message>
        <source>Gauge points (letters on the plan)</source>
        <translation>Messstellen (Buchstaben im Grundriss)</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Stelle</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Against the room</source>
        <translation>Gegen den Raum</translation>
    </message>
    <message>
        <source>A hole of 8 mm (5/16 in) for a probe, shut with a screw. What is calculated there %1, bench charged; below the room&apos;s pressure the sign is minus.</source>
        <translation>Ein Loch von 8 mm (5/16 in) für einen Fühler, mit einer Schraube verschlossen. Was dort gerechnet ist, %1, Bank durchwärmt; unter dem Druck des Raums steht ein Minus.</translation>
    </message>
    <message>
        <source>where it settles</source>
        <translation>wo es sich einstellt</translation>
    </message>
    <message>
        <source>at the wanted fire</source>
        <translation>beim gewünschten Feuer</translation>
    </message>
    <message>
        <source>Slope and drain</source>
        <translation>Gefälle und Entwässerung</translation>
    </message>
    <message>
        <source>No run is given a slope: lay them level or climbing 1–2 % along the gas, and never sagging.</source>
        <translation>Kein Strang hat ein Gefälle: waagerecht legen oder mit dem Gas 1–2 % steigend, und nie durchhängend.</translation>
    </message>
    <message>
        <source>%1 %2 %3 %4 % along the gas.</source>
        <translation>%1 %2 %3 %4 % mit dem Gas.</translation>
    </message>
    <message>
        <source>climbs</source>
        <translation>steigt</translation>
    </message>
    <message>
        <source>falls</source>
        <translation>fällt</translation>
    </message>
    <message>
        <source>%1 %2 to %3 %4</source>
        <translation>%1 %2 bis %3 %4</translation>
    </message>
    <message>
        <source>Water gathers at %1, axis at %2: %3</source>
        <translation>Wasser sammelt sich bei %1, Achse auf %2: %3</translation>
    </message>
    <message>
        <source>a cleanout opens there; give it a drain.</source>
        <translation>dort ist eine Reinigungsöffnung; ihr einen Ablauf geben.</translation>
    </message>
    <message>
        <source>nothing opens there; a cleanout with a drain belongs at its lowest end.</source>
        <translation>dort öffnet sich nichts; an ihr tiefstes Ende gehört eine Reinigungsöffnung mit Ablauf.</translation>
    </message>
    <message>
        <source>Carbon-monoxide alarm (CO on the plan)</source>
        <translation>Kohlenmonoxidmelder (CO im Grundriss)</translation>
    </message>
    <message>
        <source>In the heater&apos;s room, 1 to 3 m (3 to 10 ft) from the feed&apos;s mouth, at the height its maker&apos;s sheet says, and another near every bedroom. EN 50292, from memory.</source>
        <translation>Im Raum des Ofens, 1 bis 3 m (3 bis 10 ft) von der Mündung der Beschickung, in der Höhe, die das Blatt des Herstellers nennt, und ein weiterer bei jedem Schlafzimmer. EN 50292, aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long. Longer ones were tried up to %2, and they still draw.</source>
        <translation>Der Zug in Ihrer Bank ist %1 lang. Längere wurden bis %2 probiert, und sie ziehen noch.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long. Making it shorter alone does not make it draw.</source>
        <translation>Der Zug in Ihrer Bank ist %1 lang. Ihn nur zu kürzen bringt ihn nicht zum Ziehen.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long; up to %2 it would still draw.</source>
        <translation>Der Zug in Ihrer Bank ist %1 lang; bis %2 würde er noch ziehen.</translation>
    </message>
    <message>
        <source>The flue in your bench is %1 long; at %2 it would draw.</source>
        <translation>Der Zug in Ihrer Bank ist %1 lang; mit %2 würde er ziehen.</translation>
    </message>
    <message>
        <source>not finished</source>
        <translation>nicht fertig</translation>
    </message>
    <message>
        <source>Pull to spare at the hardest moment</source>
        <translation>Zugreserve im schwersten Augenblick</translation>
    </message>
    <message>
        <source>Smoke leaves the roof at</source>
        <translation>Rauch verlässt das Dach mit</translation>
    </message>
    <message>
        <source>Length of the whole way</source>
        <translation>Länge des ganzen Weges</translation>
    </message>
    <message>
        <source>For you</source>
        <translation>Für Sie</translation>
    </message>
    <message>
        <source>floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>top of mass</source>
        <translation>Oberkante der Masse</translation>
    </message>
    <message>
        <source>Untitled</source>
        <translation>Ohne Titel</translation>
    </message>
    <message>
        <source>version %1</source>
        <translation>Version %1</translation>
    </message>
    <message>
        <source>A planning aid. Local code and permit come first; a licensed chimney professional inspects before the first fire.</source>
        <translation>Eine Planungshilfe. Vorschriften und Genehmigung gehen vor; ein Schornsteinfeger prüft vor dem ersten Feuer.</translation>
    </message>
    <message>
        <source>Not finished: what is missing stands below.</source>
        <translation>Nicht fertig: was fehlt, steht unten.</translation>
    </message>
    <message>
        <source>It draws. At its hardest moment (%1) the chimney pulls %2 more than the way takes.</source>
        <translation>Er zieht. Im schwersten Augenblick (%1) zieht der Schornstein %2 mehr, als der Weg verlangt.</translation>
    </message>
    <message>
        <source>It draws, but only just: at its hardest moment (%1) the chimney pulls %2 more than the way takes.</source>
        <translation>Er zieht, aber nur knapp: im schwersten Augenblick (%1) zieht der Schornstein %2 mehr, als der Weg verlangt.</translation>
    </message>
    <message>
        <source>Unsafe: it draws only while the fan runs. With the fan standing still, at its hardest moment (%1), the way takes %2 more than the chimney pulls.</source>
        <translation>Unsicher: er zieht nur, solange das Gebläse läuft. Steht es, verlangt der Weg im schwersten Augenblick (%1) %2 mehr, als der Schornstein zieht.</translation>
    </message>
    <message>
        <source>It will not draw as it is: at its hardest moment (%1) the way takes %2 more than the chimney pulls.</source>
        <translation>So zieht er nicht: im schwersten Augenblick (%1) verlangt der Weg %2 mehr, als der Schornstein zieht.</translation>
    </message>
    <message>
        <source>Draft: what is missing</source>
        <translation>Unfertig: was fehlt</translation>
    </message>
    <message>
        <source>half %1</source>
        <translation>%1 halb</translation>
    </message>
    <message>
        <source>%1 around %2</source>
        <translation>%1 um %2</translation>
    </message>
    <message>
        <source>could not be opened for writing</source>
        <translation>ließ sich nicht zum Schreiben öffnen</translation>
    </message>
    <message>
        <source>could not be written</source>
        <translation>ließ sich nicht schreiben</translation>
    </message>
    <message>
        <source>The pages could not be made.</source>
        <translation>Die Seiten ließen sich nicht herstellen.</translation>
    </message>
    <message>
        <source>The picture could not be made.</source>
        <translation>Das Bild ließ sich nicht herstellen.</translation>
    </message>
    <message>
        <source>A DXF drawing is made of plan and elevations: choose one of those views.</source>
        <translation>Eine DXF-Zeichnung gibt es von Grundriss und Ansichten: eine davon wählen.</translation>
    </message>
    <message>
        <source>“{}” is no file a view is written to: .pdf, .svg, .png or .dxf.</source>
        <translation>In eine Datei wie „{}“ lässt sich keine Ansicht schreiben: .pdf, .svg, .png oder .dxf.</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>DRAFT</source>
        <translation>UNFERTIG</translation>
    </message>
    <message>
        <source>the feed</source>
        <translation>die Beschickung</translation>
    </message>
    <message>
        <source>kindle at the foot</source>
        <translation>am Fuß Kleinholz anzünden</translation>
    </message>
    <message>
        <source>wait</source>
        <translation>warten</translation>
    </message>
    <message>
        <source>Room %1</source>
        <translation>Raum %1</translation>
    </message>
    <message>
        <source>Lighting it</source>
        <translation>Anzünden</translation>
    </message>
    <message>
        <source>Look at the carbon-monoxide alarm: its lamp must show that it works. Switch off range hood, bath fan and dryer.</source>
        <translation>Auf den Kohlenmonoxidmelder sehen: seine Lampe muss zeigen, dass er arbeitet. Dunstabzug, Badlüfter und Trockner ausschalten.</translation>
    </message>
    <message>
        <source>Open %1.</source>
        <translation>%1 öffnen.</translation>
    </message>
    <message>
        <source>Open %1 fully.</source>
        <translation>%1 ganz öffnen.</translation>
    </message>
    <message>
        <source>Switch on %1.</source>
        <translation>%1 einschalten.</translation>
    </message>
    <message>
        <source>open a window on the windward side and wait until it leans in</source>
        <translation>ein Fenster auf der Windseite öffnen und warten, bis sie sich hineinneigt</translation>
    </message>
    <message>
        <source>Lay thin, dry kindling into %1 and light it. Keep it small and bright until it roars.</source>
        <translation>Dünnes, trockenes Kleinholz in %1 legen und anzünden. Klein und hell halten, bis es rauscht.</translation>
    </message>
    <message>
        <source>Then add sticks a few at a time, tips level, never more than leave the air its way past them.</source>
        <translation>Dann einige Scheite auf einmal nachlegen, Spitzen auf gleicher Höhe, nie mehr, als der Luft ihren Weg lässt.</translation>
    </message>
    <message>
        <source>When the stack is warm to the hand, close %1 slowly. If smoke shows, open it again.</source>
        <translation>Wenn der Schornstein handwarm ist, %1 langsam schließen. Zeigt sich Rauch, wieder öffnen.</translation>
    </message>
    <message>
        <source>Stay with it until it burns clean. Never shut the air or a damper while there are flames or embers.</source>
        <translation>Dabei bleiben, bis es sauber brennt. Nie Luft oder Klappe schließen, solange Flammen oder Glut da sind.</translation>
    </message>
    <message>
        <source>When smoke comes back</source>
        <translation>Wenn Rauch zurückkommt</translation>
    </message>
    <message>
        <source>Open a window. Feed nothing more; pull the sticks back or let them burn down bright.</source>
        <translation>Ein Fenster öffnen. Nichts nachlegen; die Scheite zurückziehen oder hell abbrennen lassen.</translation>
    </message>
    <message>
        <source>Switch off every fan that blows out of the house.</source>
        <translation>Jeden Lüfter ausschalten, der aus dem Haus bläst.</translation>
    </message>
    <message>
        <source>If it does not stop within a minute or two: everybody out, door shut behind you, call for help.</source>
        <translation>Hört es nicht nach ein, zwei Minuten auf: alle hinaus, Tür hinter sich zu, Hilfe rufen.</translation>
    </message>
    <message>
        <source>If it comes back another day, have the way swept before you light again.</source>
        <translation>Kommt es an einem anderen Tag wieder, vor dem nächsten Anzünden den Weg kehren lassen.</translation>
    </message>
    <message>
        <source>When the power fails</source>
        <translation>Wenn der Strom ausfällt</translation>
    </message>
    <message>
        <source>%1 stops and stands in the gas&apos;s way. Feed nothing more, open a window, stay in the room until the embers are out. Do not light it again without power.</source>
        <translation>%1 bleibt stehen und versperrt dem Gas den Weg. Nichts nachlegen, ein Fenster öffnen, im Raum bleiben, bis die Glut aus ist. Ohne Strom nicht wieder anzünden.</translation>
    </message>
    <message>
        <source>This heater has no fan: it burns on. The alarm must have a battery of its own.</source>
        <translation>Dieser Ofen hat kein Gebläse: er brennt weiter. Der Melder muss eine eigene Batterie haben.</translation>
    </message>
    <message>
        <source>When the alarm sounds</source>
        <translation>Wenn der Melder Alarm gibt</translation>
    </message>
    <message>
        <source>Everybody out at once; leave the door open only if it costs no time. Call the fire brigade from outside.</source>
        <translation>Sofort alle hinaus; die Tür nur offen lassen, wenn es keine Zeit kostet. Von draußen die Feuerwehr rufen.</translation>
    </message>
    <message>
        <source>Headache, dizziness or sickness count as an alarm even when nothing sounds.</source>
        <translation>Kopfweh, Schwindel oder Übelkeit gelten als Alarm, auch wenn nichts tönt.</translation>
    </message>
    <message>
        <source>Go back in only when they say so, and light again only after somebody has found the reason.</source>
        <translation>Erst wieder hinein, wenn sie es sagen, und erst wieder anzünden, wenn jemand die Ursache gefunden hat.</translation>
    </message>
    <message>
        <source>Never burn</source>
        <translation>Nie verbrennen</translation>
    </message>
    <message>
        <source>Wet or green wood · painted, glued or treated wood · driftwood · chipboard · household waste, plastic, coated paper · coal or briquettes · never any petrol, spirit or lighter fluid.</source>
        <translation>Nasses oder frisches Holz · gestrichenes, geleimtes oder behandeltes Holz · Treibholz · Spanplatten · Hausmüll, Kunststoff, beschichtetes Papier · Kohle oder Briketts · niemals Benzin, Spiritus oder flüssigen Anzünder.</translation>
    </message>
    <message>
        <source>Lighting: %1</source>
        <translation>Anzünden: %1</translation>
    </message>
    <message>
        <source>Can I light it today?</source>
        <translation>Kann ich heute anzünden?</translation>
    </message>
    <message>
        <source>The table of outdoor against room temperature is not computed for this design. Do the match test of step %1 every time.</source>
        <translation>Die Tabelle von Außen- gegen Raumtemperatur ist für diesen Entwurf nicht gerechnet. Jedes Mal die Streichholzprobe von Schritt %1 machen.</translation>
    </message>
    <message>
        <source>How to light and what to do is common practice, no source. Numbers are estimates for planning.</source>
        <translation>Wie man anzündet und was zu tun ist, ist übliche Praxis, ohne Quelle. Zahlen sind Schätzungen für die Planung.</translation>
    </message>
    <message>
        <source>along the gas&apos;s way, %1</source>
        <translation>entlang des Gasweges, %1</translation>
    </message>
    <message>
        <source>pressure against outdoor air, %1; numbers above: pieces</source>
        <translation>Druck gegen die Außenluft, %1; Zahlen darüber: Teile</translation>
    </message>
    <message>
        <source>in the room at the same height</source>
        <translation>im Raum in gleicher Höhe</translation>
    </message>
    <message>
        <source>length of the bench&apos;s flue, %1</source>
        <translation>Länge des Zugs in der Bank, %1</translation>
    </message>
    <message>
        <source>draft to spare at the worst moment, %1; under 0 it does not draw</source>
        <translation>Zugreserve im schwersten Augenblick, %1; unter 0 zieht er nicht</translation>
    </message>
    <message>
        <source>yours</source>
        <translation>Ihrer</translation>
    </message>
    <message>
        <source>longest that draws</source>
        <translation>längster, der zieht</translation>
    </message>
    <message>
        <source>Plan: room to what burns, openings, gauges</source>
        <translation>Grundriss: Abstand zu Brennbarem, Öffnungen, Messstellen</translation>
    </message>
    <message>
        <source> along the three axes</source>
        <translation> entlang der drei Achsen</translation>
    </message>
    <message>
        <source>. Dimensions of the axis in feet and inches</source>
        <translation>. Maße der Achse in Fuß und Zoll</translation>
    </message>
    <message>
        <source>, levels too</source>
        <translation>, auch die Höhen</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Source and remarks</source>
        <translation>Quelle und Bemerkungen</translation>
    </message>
    <message>
        <source>Working: %1</source>
        <translation>Rechenweg: %1</translation>
    </message>
    <message>
        <source>Every number of the answer from what was given to the result, for whoever wants to work it by hand. SI base units; a temperature in a relation is in kelvin. Values stand to more digits than they mean, so that whoever works with them gets six back.</source>
        <translation>Jede Zahl der Antwort vom Gegebenen bis zum Ergebnis, für alle, die sie von Hand nachrechnen wollen. SI-Basiseinheiten; eine Temperatur in einer Beziehung steht in Kelvin. Werte stehen mit mehr Stellen, als sie bedeuten, damit wer damit rechnet, sechs zurückbekommt.</translation>
    </message>
    <message>
        <source>outdoors</source>
        <translation>Freie</translation>
    </message>
    <message>
        <source>main path</source>
        <translation>Hauptweg</translation>
    </message>
    <message>
        <source>forward</source>
        <translation>vorwärts</translation>
    </message>
    <message>
        <source>backward</source>
        <translation>rückwärts</translation>
    </message>
    <message>
        <source>stable</source>
        <translation>stabil</translation>
    </message>
    <message>
        <source>will not last</source>
        <translation>hält nicht an</translation>
    </message>
    <message>
        <source>{}: {} is not allowed; it must be an object.</source>
        <translation>{}: {} ist nicht erlaubt; es muss ein Objekt sein.</translation>
    </message>
    <message>
        <source>{}: “{}” is not known here.</source>
        <translation>{}: „{}“ ist hier unbekannt.</translation>
    </message>
    <message>
        <source>{}: “{}” is missing.</source>
        <translation>{}: „{}“ fehlt.</translation>
    </message>
    <message>
        <source>{}, “{}”: {} is not allowed; it must be a number.</source>
        <translation>{}, „{}“: {} ist nicht erlaubt; es muss eine Zahl sein.</translation>
    </message>
    <message>
        <source>{}, “{}”: {} is not allowed; it must be a word.</source>
        <translation>{}, „{}“: {} ist nicht erlaubt; es muss ein Wort sein.</translation>
    </message>
    <message>
        <source>“{}”: {} is not allowed; it must be a list.</source>
        <translation>„{}“: {} ist nicht erlaubt; es muss eine Liste sein.</translation>
    </message>
    <message>
        <source>“{}”, entry {}</source>
        <translation>„{}“, Eintrag {}</translation>
    </message>
    <message>
        <source>“outdoors” must hold one of constant_C, day, series, weather_file.</source>
        <translation>„outdoors“ muss eines von constant_C, day, series, weather_file enthalten.</translation>
    </message>
    <message>
        <source>“outdoors”, “day”</source>
        <translation>„outdoors“, „day“</translation>
    </message>
    <message>
        <source>The weather file “{}” cannot be opened.</source>
        <translation>Die Wetterdatei „{}“ lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>This time line comes from a newer version of the program.</source>
        <translation>Dieser Zeitplan stammt aus einer neueren Version des Programms.</translation>
    </message>
    <message>
        <source>The time line</source>
        <translation>Der Zeitplan</translation>
    </message>
    <message>
        <source>“{}” could not be read: there is no such file.</source>
        <translation>„{}“ ließ sich nicht lesen: es gibt keine solche Datei.</translation>
    </message>
    <message>
        <source>“{}” could not be read: it cannot be opened.</source>
        <translation>„{}“ ließ sich nicht lesen: sie lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The run was called off.</source>
        <translation>Der Lauf wurde abgebrochen.</translation>
    </message>
    <message>
        <source>The time line has faults.</source>
        <translation>Der Zeitplan hat Fehler.</translation>
    </message>
    <message>
        <source>A priming fire wants a tee with a shut port on the way up the stack; there is none.</source>
        <translation>Ein Vorwärmfeuer braucht ein T-Stück mit verschlossenem Stutzen auf dem Weg den Schornstein hinauf; es gibt keines.</translation>
    </message>
    <message>
        <source>The steps would not converge; the run ends there.</source>
        <translation>Die Schritte wollten nicht konvergieren; der Lauf endet dort.</translation>
    </message>
    <message>
        <source>“{}” could not be read: {}</source>
        <translation>„{}“ ließ sich nicht lesen: {}</translation>
    </message>
    <message>
        <source>there is no such file.</source>
        <translation>es gibt keine solche Datei.</translation>
    </message>
    <message>
        <source>it is a folder.</source>
        <translation>es ist ein Ordner.</translation>
    </message>
    <message>
        <source>it is not an ordinary file.</source>
        <translation>es ist keine gewöhnliche Datei.</translation>
    </message>
    <message>
        <source>it is {} MiB large; a design may be at most {} MiB.</source>
        <translation>sie ist {} MiB groß; ein Entwurf darf höchstens {} MiB haben.</translation>
    </message>
    <message>
        <source>it cannot be opened (do you have the right to?).</source>
        <translation>sie lässt sich nicht öffnen (haben Sie das Recht dazu?).</translation>
    </message>
    <message>
        <source>the disk reports an error.</source>
        <translation>der Datenträger meldet einen Fehler.</translation>
    </message>
    <message>
        <source>The design was not saved, because it could not be opened again:</source>
        <translation>Der Entwurf wurde nicht gespeichert, weil er sich nicht wieder öffnen ließe:</translation>
    </message>
    <message>
        <source>{}, at.{}: {} is not allowed; it must go in steps of 0.1 mm.</source>
        <translation>{}, at.{}: {} ist nicht erlaubt; es muss in Schritten von 0,1 mm gehen.</translation>
    </message>
    <message>
        <source>{} has a field “{}” that {} does not have here; it is kept and not used.</source>
        <translation>{} hat ein Feld „{}“, das {} hier nicht hat; es bleibt erhalten und wird nicht benutzt.</translation>
    </message>
    <message>
        <source>Piece “{}”</source>
        <translation>Teil „{}“</translation>
    </message>
    <message>
        <source>{} is of a type “{}” that is not in the catalogue; it is kept and not calculated.</source>
        <translation>{} ist von einer Art „{}“, die nicht im Katalog steht; es bleibt erhalten und wird nicht gerechnet.</translation>
    </message>
    <message>
        <source>Piece “{0}”, id: “{0}” stands twice; every piece needs an id of its own.</source>
        <translation>Teil „{0}“, id: „{0}“ steht zweimal; jedes Teil braucht eine eigene Kennung.</translation>
    </message>
    <message>
        <source>{}: {} is not allowed; it must be a piece, a dot and a port, like “p1.out”.</source>
        <translation>{}: {} ist nicht erlaubt; es muss ein Teil, ein Punkt und ein Anschluss sein, wie „p1.out“.</translation>
    </message>
    <message>
        <source>Joint number {}</source>
        <translation>Verbindung Nummer {}</translation>
    </message>
    <message>
        <source>{}, {}: “{}” is not allowed; it must be the id of a piece of this design.</source>
        <translation>{}, {}: „{}“ ist nicht erlaubt; es muss die Kennung eines Teils dieses Entwurfs sein.</translation>
    </message>
    <message>
        <source>Wall “{0}”, id: “{0}” stands twice; every wall needs an id of its own.</source>
        <translation>Wand „{0}“, id: „{0}“ steht zweimal; jede Wand braucht eine eigene Kennung.</translation>
    </message>
    <message>
        <source>Fan “{0}”, id: “{0}” stands twice; every fan needs an id of its own.</source>
        <translation>Gebläse „{0}“, id: „{0}“ steht zweimal; jedes Gebläse braucht eine eigene Kennung.</translation>
    </message>
    <message>
        <source>building: west must lie west of east, south south of north, the ceiling above the floor, the eaves not above the ridge.</source>
        <translation>building: west muss westlich von east liegen, south südlich von north, die Decke über dem Boden, die Traufe nicht über dem First.</translation>
    </message>
    <message>
        <source>Variant “{}”: {}</source>
        <translation>Variante „{}“: {}</translation>
    </message>
    <message>
        <source>This file is from a newer version of the program (its layout is number {}, this version knows number {}). It is open for reading only, so that nothing in it gets lost.</source>
        <translation>Diese Datei stammt aus einer neueren Version des Programms (ihr Aufbau ist Nummer {}, diese Version kennt Nummer {}). Sie ist nur zum Lesen offen, damit nichts darin verloren geht.</translation>
    </message>
    <message>
        <source>The file is {} MiB; a design may be at most {} MiB.</source>
        <translation>Die Datei hat {} MiB; ein Entwurf darf höchstens {} MiB haben.</translation>
    </message>
    <message>
        <source>This is JSON, but not a design: its marker “fluewright_design” is missing.</source>
        <translation>Das ist JSON, aber kein Entwurf: sein Kennzeichen „fluewright_design“ fehlt.</translation>
    </message>
    <message>
        <source>fluewright_design: {} is not allowed; it must be the number of a layout (1 in this version).</source>
        <translation>fluewright_design: {} ist nicht erlaubt; es muss die Nummer eines Aufbaus sein (1 in dieser Version).</translation>
    </message>
    <message>
        <source>This file is from a newer version of the program, and this version cannot make it out:</source>
        <translation>Diese Datei stammt aus einer neueren Version des Programms, und diese Version wird nicht klug daraus:</translation>
    </message>
    <message>
        <source>one of </source>
        <translation>eines von </translation>
    </message>
    <message>
        <source>the id of a wall</source>
        <translation>die Kennung einer Wand</translation>
    </message>
    <message>
        <source>the id of a material</source>
        <translation>die Kennung eines Materials</translation>
    </message>
    <message>
        <source>the id of a wood</source>
        <translation>die Kennung eines Holzes</translation>
    </message>
    <message>
        <source>the id of a fan</source>
        <translation>die Kennung eines Gebläses</translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation>eine ganze Zahl</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} bis {}</translation>
    </message>
    <message>
        <source>Fan “{}”, {}</source>
        <translation>Gebläse „{}“, {}</translation>
    </message>
    <message>
        <source>Fan “{}”</source>
        <translation>Gebläse „{}“</translation>
    </message>
    <message>
        <source>Wall “{}”{}</source>
        <translation>Wand „{}“{}</translation>
    </message>
    <message>
        <source>from {} to {}</source>
        <translation>von {} bis {}</translation>
    </message>
    <message>
        <source>at least {}</source>
        <translation>mindestens {}</translation>
    </message>
    <message>
        <source>at most {}</source>
        <translation>höchstens {}</translation>
    </message>
    <message>
        <source>something else</source>
        <translation>etwas anderes</translation>
    </message>
    <message>
        <source>, layer </source>
        <translation>, Schicht </translation>
    </message>
    <message>
        <source>Smoke carries carbon monoxide, and joints open as they age.</source>
        <translation>Rauch trägt Kohlenmonoxid, und Fugen öffnen sich mit dem Alter.</translation>
    </message>
    <message>
        <source>Water on the wall eats steel and masonry and carries soot into the joints.</source>
        <translation>Wasser an der Wand frisst Stahl und Mauerwerk und trägt Ruß in die Fugen.</translation>
    </message>
    <message>
        <source>A starved fire smokes, soots the flue and makes carbon monoxide.</source>
        <translation>Ein Feuer mit zu wenig Luft raucht, verrußt den Zug und bildet Kohlenmonoxid.</translation>
    </message>
    <message>
        <source>Air that is not burnt carries the heat out and cools the fire under what it needs to burn clean.</source>
        <translation>Luft, die nicht verbrannt wird, trägt die Wärme hinaus und kühlt das Feuer unter das, was es zum sauberen Brennen braucht.</translation>
    </message>
    <message>
        <source>A fire lit then sends its smoke into the room and keeps itself going that way.</source>
        <translation>Ein dann angezündetes Feuer schickt seinen Rauch in den Raum und hält sich selbst dabei.</translation>
    </message>
    <message>
        <source>Whatever is lit smokes into the room.</source>
        <translation>Was auch angezündet wird, raucht in den Raum.</translation>
    </message>
    <message>
        <source>A number worked outside the range of its relation is less sure than the others.</source>
        <translation>Eine Zahl außerhalb des Bereichs ihrer Beziehung ist weniger sicher als die anderen.</translation>
    </message>
    <message>
        <source>The draft is other than shown while it acts.</source>
        <translation>Der Zug ist anders als gezeigt, solange es wirkt.</translation>
    </message>
    <message>
        <source>When the power fails the fire goes on burning, and its smoke comes into the room.</source>
        <translation>Fällt der Strom aus, brennt das Feuer weiter, und sein Rauch kommt in den Raum.</translation>
    </message>
    <message>
        <source>A motor over its rating lasts days instead of years, and stops when the fire is hottest.</source>
        <translation>Ein Motor über seiner Grenze hält Tage statt Jahre und bleibt stehen, wenn das Feuer am heißesten ist.</translation>
    </message>
    <message>
        <source>Acid water gets into bearings and windings.</source>
        <translation>Saures Wasser dringt in Lager und Wicklungen.</translation>
    </message>
    <message>
        <source>Where head rises with flow the flow hunts to and fro or jumps.</source>
        <translation>Wo die Förderhöhe mit dem Strom steigt, pendelt oder springt der Strom.</translation>
    </message>
    <message>
        <source>What a fan does beyond its sheet nobody has measured.</source>
        <translation>Was ein Gebläse jenseits seines Blatts tut, hat niemand gemessen.</translation>
    </message>
    <message>
        <source>It pushes the smoke back into the room.</source>
        <translation>Es drückt den Rauch zurück in den Raum.</translation>
    </message>
    <message>
        <source>Two things cannot stand in one place; drawn so, the lengths are wrong.</source>
        <translation>Zwei Dinge können nicht an einem Ort stehen; so gezeichnet stimmen die Längen nicht.</translation>
    </message>
    <message>
        <source>A hot pipe through wood without its passage is how houses burn.</source>
        <translation>Ein heißes Rohr ohne Durchführung durch Holz: so brennen Häuser.</translation>
    </message>
    <message>
        <source>Smoke carries carbon monoxide, wherever it comes out.</source>
        <translation>Rauch trägt Kohlenmonoxid, wo immer er austritt.</translation>
    </message>
    <message>
        <source>A way in that runs backwards sends air, and with the next gust smoke, where it is not meant to go.</source>
        <translation>Ein Einlass, der rückwärts läuft, schickt Luft, und mit der nächsten Bö Rauch, wohin er nicht soll.</translation>
    </message>
    <message>
        <source>Air that comes in behind the fire cools the stack and takes draft from the feed.</source>
        <translation>Luft, die hinter dem Feuer eintritt, kühlt den Schornstein und nimmt der Beschickung Zug.</translation>
    </message>
    <message>
        <source>While the flap stands open the stack draws room air instead of the fire&apos;s gas.</source>
        <translation>Solange die Klappe offen steht, zieht der Schornstein Raumluft statt des Abgases vom Feuer.</translation>
    </message>
    <message>
        <source>The fire starves or smokes into the room at the worst moment, when it has just been lit or the bench is cold.</source>
        <translation>Das Feuer erstickt oder raucht in den Raum, gerade im schlimmsten Augenblick, wenn es eben angezündet oder die Bank kalt ist.</translation>
    </message>
    <message>
        <source>A gust, a warm day or a little soot takes what is left.</source>
        <translation>Eine Bö, ein warmer Tag oder etwas Ruß nimmt, was übrig ist.</translation>
    </message>
    <message>
        <source>Air over what the fire wants only cools it and goes up the chimney warm.</source>
        <translation>Luft über das hinaus, was das Feuer will, kühlt es nur und geht warm durch den Schornstein.</translation>
    </message>
    <message>
        <source>Heat that leaves by the chimney has been paid for and warms nobody.</source>
        <translation>Wärme, die durch den Schornstein geht, ist bezahlt und wärmt niemanden.</translation>
    </message>
    <message>
        <source>A house under suction pulls smoke in through the feed as soon as the chimney cools.</source>
        <translation>Ein Haus unter Unterdruck zieht Rauch durch die Beschickung herein, sobald der Schornstein abkühlt.</translation>
    </message>
    <message>
        <source>Standing water rots the bottom of the flue and, with soot, closes it.</source>
        <translation>Stehendes Wasser zerfrisst den Grund des Zugs und verschließt ihn mit Ruß.</translation>
    </message>
    <message>
        <source>Water and ash gather at the low end, where nothing lets them out.</source>
        <translation>Wasser und Asche sammeln sich am tiefen Ende, wo nichts sie hinauslässt.</translation>
    </message>
    <message>
        <source>The narrowest place decides what the whole path can carry, and ash settles before it.</source>
        <translation>Die engste Stelle bestimmt, was der ganze Weg tragen kann, und vor ihr setzt sich Asche ab.</translation>
    </message>
    <message>
        <source>Wind over a roof presses down on a low outlet, and sparks land near it.</source>
        <translation>Wind über einem Dach drückt auf eine niedrige Mündung, und Funken fallen in ihre Nähe.</translation>
    </message>
    <message>
        <source>Wood that is kept hot for years catches fire far below its usual temperature.</source>
        <translation>Holz, das jahrelang heiß gehalten wird, entzündet sich weit unter seiner üblichen Temperatur.</translation>
    </message>
    <message>
        <source>A pipe that glows or leaks in a closed space is found when the house burns.</source>
        <translation>Ein Rohr, das in einem verschlossenen Raum glüht oder leckt, findet man, wenn das Haus brennt.</translation>
    </message>
    <message>
        <source>Ash settles in bends; one that cannot be brushed closes a little more every winter.</source>
        <translation>Asche setzt sich in Bögen ab; einer, den die Bürste nicht erreicht, schließt sich jeden Winter etwas mehr.</translation>
    </message>
    <message>
        <source>Fast gas loses draft with the square of its speed and carries ash up the stack.</source>
        <translation>Schnelles Gas verliert Zug mit dem Quadrat seiner Geschwindigkeit und trägt Asche den Schornstein hinauf.</translation>
    </message>
    <message>
        <source>Slow gas drops its ash, and at the cap every gust pushes it back.</source>
        <translation>Langsames Gas lässt seine Asche fallen, und an der Haube drückt jede Bö es zurück.</translation>
    </message>
    <message>
        <source>Skin burns slowly on what does not feel hot at first.</source>
        <translation>Haut verbrennt langsam an dem, was sich zuerst nicht heiß anfühlt.</translation>
    </message>
    <message>
        <source>A house floor is built for furniture, and a bench is a wall lying down: a qualified person has to look at it.</source>
        <translation>Eine Hausdecke ist für Möbel gebaut, und eine Bank ist eine liegende Mauer: eine Fachperson muss sie ansehen.</translation>
    </message>
    <message>
        <source>Nobody smells carbon monoxide; the alarm is the one thing that notices a draft that has failed.</source>
        <translation>Kohlenmonoxid riecht niemand; nur der Melder bemerkt einen Zug, der versagt hat.</translation>
    </message>
    <message>
        <source>Until it is mended there is no answer, or not the one that was meant.</source>
        <translation>Bis das behoben ist, gibt es keine Antwort oder nicht die gemeinte.</translation>
    </message>
    <message>
        <source>Nothing is drawn yet: begin with what lets the air in, a feed or a door.</source>
        <translation>Noch ist nichts gezeichnet: mit dem beginnen, was Luft einlässt, einer Beschickung oder Tür.</translation>
    </message>
    <message>
        <source>Nothing lets air in: the path needs a feed, a door or an outside-air duct.</source>
        <translation>Nichts lässt Luft ein: der Weg braucht eine Beschickung, eine Tür oder eine Außenluftleitung.</translation>
    </message>
    <message>
        <source>The path does not reach the open air: it needs a cap or an open stack head.</source>
        <translation>Der Weg erreicht nicht das Freie: er braucht eine Haube oder eine offene Mündung.</translation>
    </message>
    <message>
        <source>{}: this is a second way in for air that nothing joins to the path; join it at a tee, or take it away.</source>
        <translation>{}: das ist ein zweiter Lufteinlass, den nichts mit dem Weg verbindet; mit einem T-Stück anschließen oder wegnehmen.</translation>
    </message>
    <message>
        <source>{}: this is a second way out, and the path has one already.</source>
        <translation>{}: das ist ein zweiter Ausgang, und der Weg hat schon einen.</translation>
    </message>
    <message>
        <source>Nothing burns: the path needs a burn tunnel or a batch box.</source>
        <translation>Nichts brennt: der Weg braucht einen Brenntunnel oder eine Füllkammer.</translation>
    </message>
    <message>
        <source>{}: this is a second fire, and the path has one already.</source>
        <translation>{}: das ist ein zweites Feuer, und der Weg hat schon eines.</translation>
    </message>
    <message>
        <source>{}: its end “{}” is open; join a piece to it.</source>
        <translation>{}: sein Ende „{}“ ist offen; ein Teil daran anschließen.</translation>
    </message>
    <message>
        <source>{}: its end “{}” and the piece it is joined to do not meet; they are {} apart.</source>
        <translation>{}: sein Ende „{}“ und das verbundene Teil treffen sich nicht; sie sind {} auseinander.</translation>
    </message>
    <message>
        <source>{}: behind it gas could only go round in a ring; it has to lead on to the open air or back to the path.</source>
        <translation>{}: dahinter könnte das Gas nur im Kreis laufen; es muss ins Freie oder zurück auf den Weg führen.</translation>
    </message>
    <message>
        <source>{}: it is not on the path from the inlet to the open air.</source>
        <translation>{}: es liegt nicht auf dem Weg vom Einlass ins Freie.</translation>
    </message>
    <message>
        <source>{}: it has no end “{}”.</source>
        <translation>{}: es hat kein Ende „{}“.</translation>
    </message>
    <message>
        <source>{}: its end “{}” is in two joints; it can only be in one.</source>
        <translation>{}: sein Ende „{}“ ist in zwei Verbindungen; es kann nur in einer sein.</translation>
    </message>
    <message>
        <source>{}: its end “{}” is open to the air, so nothing can be joined to it.</source>
        <translation>{}: sein Ende „{}“ ist offen zur Luft, also lässt sich nichts anschließen.</translation>
    </message>
    <message>
        <source>{} and {} are in the same place: they would have to be {} apart.</source>
        <translation>{} und {} sind am selben Ort: sie müssten {} auseinander sein.</translation>
    </message>
    <message>
        <source>{} goes through the wall of the house: put a thimble there.</source>
        <translation>{} geht durch die Wand des Hauses: dort eine Wanddurchführung setzen.</translation>
    </message>
    <message>
        <source>{} goes through the roof of the house: put a passage there.</source>
        <translation>{} geht durch das Dach des Hauses: dort eine Durchführung setzen.</translation>
    </message>
    <message>
        <source>{} goes through the ceiling of the house: put a passage there.</source>
        <translation>{} geht durch die Decke des Hauses: dort eine Durchführung setzen.</translation>
    </message>
    <message>
        <source>{}: its end “{}” and the piece it is joined to differ in size; the step costs draft.</source>
        <translation>{}: sein Ende „{}“ und das verbundene Teil sind verschieden weit; die Stufe kostet Zug.</translation>
    </message>
    <message>
        <source>{}: the type “{}” is not in the catalogue.</source>
        <translation>{}: die Art „{}“ steht nicht im Katalog.</translation>
    </message>
    <message>
        <source>{}: there is no material “{}” in the library.</source>
        <translation>{}: es gibt kein Material „{}“ in der Bibliothek.</translation>
    </message>
    <message>
        <source>{}: there is no wall “{}” in the library or in the design.</source>
        <translation>{}: es gibt keine Wand „{}“ in der Bibliothek oder im Entwurf.</translation>
    </message>
    <message>
        <source>{}: there is no wood “{}” in the library.</source>
        <translation>{}: es gibt kein Holz „{}“ in der Bibliothek.</translation>
    </message>
    <message>
        <source>{}: there is no fan “{}” in the library.</source>
        <translation>{}: es gibt kein Gebläse „{}“ in der Bibliothek.</translation>
    </message>
    <message>
        <source>{}: still air can only lie between two layers that shut it in.</source>
        <translation>{}: ruhende Luft kann nur zwischen zwei Schichten liegen, die sie einschließen.</translation>
    </message>
    <message>
        <source>{}: its points make no curve; it needs two at least, flows that rise from 0 and a head above 0.</source>
        <translation>{}: seine Punkte ergeben keine Kennlinie; es braucht mindestens zwei, Ströme, die von 0 steigen, und eine Förderhöhe über 0.</translation>
    </message>
    <message>
        <source>{}: {} is not allowed; it must be {}.</source>
        <translation>{}: {} ist nicht erlaubt; es muss {} sein.</translation>
    </message>
    <message>
        <source>{}: the value is of the wrong kind; it must be {}.</source>
        <translation>{}: der Wert ist von der falschen Art; er muss {} sein.</translation>
    </message>
    <message>
        <source>{}: the id stands twice; every fan needs one of its own.</source>
        <translation>{}: die Kennung steht zweimal; jedes Gebläse braucht eine eigene.</translation>
    </message>
    <message>
        <source>{}: the id stands twice; every wall needs one of its own.</source>
        <translation>{}: die Kennung steht zweimal; jede Wand braucht eine eigene.</translation>
    </message>
    <message>
        <source>{}: the id “{}” stands twice; every piece needs one of its own.</source>
        <translation>{}: die Kennung „{}“ steht zweimal; jedes Teil braucht eine eigene.</translation>
    </message>
    <message>
        <source>{}: the flue is up to {} above the room here, so a leaky joint lets smoke into the room.</source>
        <translation>{}: der Zug liegt hier bis zu {} über dem Raum, eine undichte Verbindung lässt also Rauch in den Raum.</translation>
    </message>
    <message>
        <source>{}: from {} into it the wall is below the dew point; water forms there and runs down.</source>
        <translation>{}: ab {} darin liegt die Wand unter dem Taupunkt; dort bildet sich Wasser und läuft herab.</translation>
    </message>
    <message>
        <source>The fire is starved: it settles at {} times the air it needs, and under 1.5 it smokes.</source>
        <translation>Das Feuer bekommt zu wenig: es stellt sich beim {}-fachen der nötigen Luft ein, und unter 1,5 raucht es.</translation>
    </message>
    <message>
        <source>The fire is being cooled: it settles at {} times the air it needs. Choke the inlet.</source>
        <translation>Das Feuer wird gekühlt: es stellt sich beim {}-fachen der nötigen Luft ein. Den Einlass drosseln.</translation>
    </message>
    <message>
        <source>On this day it can also run backwards, into the room; before anything burns the draft is {}.</source>
        <translation>An diesem Tag kann es auch rückwärts laufen, in den Raum; bevor etwas brennt, ist der Zug {}.</translation>
    </message>
    <message>
        <source>On this day no flow from the inlet to the cap holds itself.</source>
        <translation>An diesem Tag hält sich kein Strom vom Einlass zur Haube.</translation>
    </message>
    <message>
        <source>{}: {} stands at {}, outside the temperatures at which its conductivity is known ({}); the nearest known value is used.</source>
        <translation>{}: {} hat {}, außerhalb der Temperaturen, bei denen seine Leitfähigkeit bekannt ist ({}); es gilt der nächste bekannte Wert.</translation>
    </message>
    <message>
        <source>{}: {} is used at {}; it is published {}.</source>
        <translation>{}: {} wird bei {} benutzt; veröffentlicht ist sie {}.</translation>
    </message>
    <message>
        <source>{}: it lets smoke into the room, {} of gas that has been through the fire and air with it.</source>
        <translation>{}: hier kommt Rauch in den Raum, {} Gas, das durch das Feuer gegangen ist, und Luft damit.</translation>
    </message>
    <message>
        <source>{}: air blows out of it, {}; it is a way in that runs backwards.</source>
        <translation>{}: Luft bläst heraus, {}; ein Einlass, der rückwärts läuft.</translation>
    </message>
    <message>
        <source>{}: {} of what leaves the cap comes in here behind the fire and cools the stack.</source>
        <translation>{}: {} dessen, was die Haube verlässt, tritt hier hinter dem Feuer ein und kühlt den Schornstein.</translation>
    </message>
    <message>
        <source>{}: the draft is above its set draft; its flap stands {} open.</source>
        <translation>{}: der Zug liegt über dem eingestellten; seine Klappe steht {} offen.</translation>
    </message>
    <message>
        <source>The flows in the branches could not be found, so there is no number rather than a wrong one.</source>
        <translation>Die Ströme in den Abzweigen ließen sich nicht finden; deshalb steht hier keine Zahl statt einer falschen.</translation>
    </message>
    <message>
        <source>{}: what it does to the draft when it acts, running or opening, is left out of this calculation.</source>
        <translation>{}: was es am Zug bewirkt, wenn es läuft oder öffnet, bleibt in dieser Rechnung außer Betracht.</translation>
    </message>
    <message>
        <source>The draft depends on a fan: with it off {} to spare at the least, with it on {}. When the power fails while wood burns, the fire starves and smoke may come into the room.</source>
        <translation>Der Zug hängt am Gebläse: steht es, bleiben mindestens {} Reserve, läuft es, {}. Fällt der Strom aus, während Holz brennt, erstickt das Feuer, und Rauch kann in den Raum kommen.</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>{}: the gas that passes it reaches {}; its fan is rated for {}.</source>
        <translation>{}: das Gas, das hindurchgeht, erreicht {}; sein Gebläse verträgt {}.</translation>
    </message>
    <message>
        <source>{}: its motor reaches {}; it is rated for {}.</source>
        <translation>{}: sein Motor erreicht {}; er verträgt {}.</translation>
    </message>
    <message>
        <source>{}: its motor stands in gas with a dew point of {} and only {} around it; water gets into it.</source>
        <translation>{}: sein Motor steht in Gas mit einem Taupunkt von {} und hat nur {} um sich; Wasser dringt ein.</translation>
    </message>
    <message>
        <source>{}: the head of “{}” rises with the flow between {} and {}; there it is not steady, and the flow may jump or hunt. States found forward: {}.</source>
        <translation>{}: die Förderhöhe von „{}“ steigt mit dem Strom zwischen {} und {}; dort ist er nicht stetig und kann springen oder pendeln. Vorwärts gefundene Zustände: {}.</translation>
    </message>
    <message>
        <source>{}: the gas runs backward through it; what “{}” does then is an estimate.</source>
        <translation>{}: das Gas läuft rückwärts hindurch; was „{}“ dann tut, ist geschätzt.</translation>
    </message>
    <message>
        <source>{}: {} pass it, more than the {} up to which the sheet of “{}” goes; beyond, it is an estimate.</source>
        <translation>{}: {} gehen hindurch, mehr als die {}, bis zu denen das Blatt von „{}“ reicht; darüber ist es geschätzt.</translation>
    </message>
    <message>
        <source>{}: it is drawn the wrong way round and blows against the gas.</source>
        <translation>{}: es ist verkehrt herum gezeichnet und bläst gegen das Gas.</translation>
    </message>
    <message>
        <source>The file is nested more than {} deep.</source>
        <translation>Die Datei ist mehr als {} tief verschachtelt.</translation>
    </message>
    <message>
        <source>The key “{}” stands twice in the same object: only one can be meant.</source>
        <translation>Der Schlüssel „{}“ steht zweimal im selben Objekt: nur einer kann gemeint sein.</translation>
    </message>
    <message>
        <source>This is not JSON: at line {}, column {} something else was expected.</source>
        <translation>Das ist kein JSON: in Zeile {}, Spalte {} wurde etwas anderes erwartet.</translation>
    </message>
    <message>
        <source>This is not JSON that can be read: a number in it is too large.</source>
        <translation>Das ist kein lesbares JSON: eine Zahl darin ist zu groß.</translation>
    </message>
    <message>
        <source>Longest bench</source>
        <translation>Längste Bank</translation>
    </message>
    <message>
        <source>Length of the bench</source>
        <translation>Länge der Bank</translation>
    </message>
    <message>
        <source>no straight run in a bench or under the floor</source>
        <translation>keinen geraden Strang in einer Bank oder unter dem Boden</translation>
    </message>
    <message>
        <source>Shortest stack</source>
        <translation>Kürzester Schornstein</translation>
    </message>
    <message>
        <source>Upright length of the chimney</source>
        <translation>Senkrechte Länge des Schornsteins</translation>
    </message>
    <message>
        <source>no upright run in its chimney</source>
        <translation>keinen senkrechten Strang in seinem Schornstein</translation>
    </message>
    <message>
        <source>Smallest bore</source>
        <translation>Kleinste lichte Weite</translation>
    </message>
    <message>
        <source>Bore of the flue</source>
        <translation>Lichte Weite des Zugs</translation>
    </message>
    <message>
        <source>no round flue behind a drum or bell</source>
        <translation>keinen runden Zug hinter einem Fass oder einer Glocke</translation>
    </message>
    <message>
        <source>Most bends</source>
        <translation>Meiste Bögen</translation>
    </message>
    <message>
        <source>Level bends on the path</source>
        <translation>Waagerechte Bögen auf dem Weg</translation>
    </message>
    <message>
        <source>no bench to put bends into</source>
        <translation>keine Bank, in die Bögen passen</translation>
    </message>
    <message>
        <source>Coldest bench</source>
        <translation>Kälteste Bank</translation>
    </message>
    <message>
        <source>Room and bench before lighting</source>
        <translation>Raum und Bank vor dem Anzünden</translation>
    </message>
    <message>
        <source>Weakest temperature difference</source>
        <translation>Kleinster Temperaturunterschied</translation>
    </message>
    <message>
        <source>The bench may be {} long at most to keep {} to spare; drawn are {}.</source>
        <translation>Die Bank darf höchstens {} lang sein, damit {} Reserve bleiben; gezeichnet sind {}.</translation>
    </message>
    <message>
        <source>The chimney&apos;s upright runs need {} at least to keep {} to spare; drawn are {}.</source>
        <translation>Die senkrechten Stränge des Schornsteins brauchen mindestens {}, damit {} Reserve bleiben; gezeichnet sind {}.</translation>
    </message>
    <message>
        <source>The flue needs a bore of {} at least to keep {} to spare; drawn are {}.</source>
        <translation>Der Zug braucht mindestens {} lichte Weite, damit {} Reserve bleiben; gezeichnet sind {}.</translation>
    </message>
    <message>
        <source>{} at most keep {} to spare; drawn are {}.</source>
        <translation>Bei höchstens {} bleiben {} Reserve; gezeichnet sind {}.</translation>
    </message>
    <message>
        <source>Down to {} in room and bench it keeps {} to spare; set are {}.</source>
        <translation>Bis hinab zu {} in Raum und Bank bleiben {} Reserve; eingestellt sind {}.</translation>
    </message>
    <message>
        <source>Up to {} outdoors, {} under the room, it keeps {} to spare; set are {}.</source>
        <translation>Bis {} draußen, {} unter dem Raum, bleiben {} Reserve; eingestellt sind {}.</translation>
    </message>
    <message>
        <source>No limit up to {} of bench: {} stay to spare.</source>
        <translation>Keine Grenze bis {} Bank: {} Reserve bleiben.</translation>
    </message>
    <message>
        <source>No limit down to {} of chimney: {} stay to spare.</source>
        <translation>Keine Grenze bis hinab zu {} Schornstein: {} Reserve bleiben.</translation>
    </message>
    <message>
        <source>No limit down to a bore of {}: {} stay to spare.</source>
        <translation>Keine Grenze bis hinab zu {} lichter Weite: {} Reserve bleiben.</translation>
    </message>
    <message>
        <source>No limit up to {}: {} stay to spare.</source>
        <translation>Keine Grenze bis {}: {} Reserve bleiben.</translation>
    </message>
    <message>
        <source>No limit down to {} in room and bench: {} stay to spare.</source>
        <translation>Keine Grenze bis hinab zu {} in Raum und Bank: {} Reserve bleiben.</translation>
    </message>
    <message>
        <source>No limit up to {} outdoors: {} stay to spare.</source>
        <translation>Keine Grenze bis {} draußen: {} Reserve bleiben.</translation>
    </message>
    <message>
        <source>No bench is short enough to keep {} to spare, down to {}.</source>
        <translation>Keine Bank ist kurz genug für {} Reserve, bis hinab zu {}.</translation>
    </message>
    <message>
        <source>No chimney up to {} keeps {} to spare.</source>
        <translation>Kein Schornstein bis {} lässt {} Reserve.</translation>
    </message>
    <message>
        <source>No bore up to {} keeps {} to spare.</source>
        <translation>Keine lichte Weite bis {} lässt {} Reserve.</translation>
    </message>
    <message>
        <source>Even with the fewest bends that can be built it does not keep {} to spare.</source>
        <translation>Selbst mit den wenigsten Bögen, die sich bauen lassen, bleiben keine {} Reserve.</translation>
    </message>
    <message>
        <source>No room up to {} keeps {} to spare.</source>
        <translation>Kein Raum bis {} lässt {} Reserve.</translation>
    </message>
    <message>
        <source>No frost down to {} keeps {} to spare.</source>
        <translation>Kein Frost bis {} lässt {} Reserve.</translation>
    </message>
    <message>
        <source>The design has {}.</source>
        <translation>Der Entwurf hat {}.</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Holzauflage</translation>
    </message>
    <message>
        <source>Feed</source>
        <translation>Beschickung</translation>
    </message>
    <message>
        <source>Priming fire</source>
        <translation>Vorwärmfeuer</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verstellung</translation>
    </message>
    <message>
        <source>Fan switch</source>
        <translation>Gebläseschaltung</translation>
    </message>
    <message>
        <source>Outdoor temperature</source>
        <translation>Außentemperatur</translation>
    </message>
    <message>
        <source>beginning</source>
        <translation>Beginn</translation>
    </message>
    <message>
        <source>end</source>
        <translation>Ende</translation>
    </message>
    <message>
        <source>duration</source>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>rate</source>
        <translation>Abbrand</translation>
    </message>
    <message>
        <source>amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>heating value</source>
        <translation>Heizwert</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Drehzahl</translation>
    </message>
    <message>
        <source>run-down</source>
        <translation>Nachlauf</translation>
    </message>
    <message>
        <source>exhaust</source>
        <translation>Abluft</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>hour</source>
        <translation>Uhrzeit</translation>
    </message>
    <message>
        <source>value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>Mittel</translation>
    </message>
    <message>
        <source>swing</source>
        <translation>Schwankung</translation>
    </message>
    <message>
        <source>warmest hour</source>
        <translation>wärmste Stunde</translation>
    </message>
    <message>
        <source>series</source>
        <translation>Reihe</translation>
    </message>
    <message>
        <source>piece</source>
        <translation>Teil</translation>
    </message>
    <message>
        <source>tee</source>
        <translation>T-Stück</translation>
    </message>
    <message>
        <source>{}: the {} is empty.</source>
        <translation>{}: {} fehlt.</translation>
    </message>
    <message>
        <source>{}: there is no piece {} in the design.</source>
        <translation>{}: es gibt kein Teil {} im Entwurf.</translation>
    </message>
    <message>
        <source>{}: {} is no {} that can do this.</source>
        <translation>{}: {} ist nicht das richtige Teil dafür ({}).</translation>
    </message>
    <message>
        <source>With a cold bench</source>
        <translation>Bei kalter Bank</translation>
    </message>
    <message>
        <source>An hour after lighting</source>
        <translation>Eine Stunde nach dem Anzünden</translation>
    </message>
    <message>
        <source>With the bench charged</source>
        <translation>Bei durchwärmter Bank</translation>
    </message>
    <message>
        <source>{} it will not draw at the wanted fire: {} of draft are missing.</source>
        <translation>{} zieht er beim gewünschten Feuer nicht: es fehlen {} Zug.</translation>
    </message>
    <message>
        <source>{} it draws with only {} to spare.</source>
        <translation>{} zieht er mit nur {} Reserve.</translation>
    </message>
    <message>
        <source>{}: the fire gets more air than is wanted, and even shut down to {} the mouth lets too much in.</source>
        <translation>{}: das Feuer bekommt mehr Luft als gewünscht, und selbst auf {} gedrosselt lässt die Mündung zu viel herein.</translation>
    </message>
    <message>
        <source>The gas leaves the cap at {}, over {}: a longer bench could keep that heat.</source>
        <translation>Das Abgas verlässt die Haube mit {}, über {}: eine längere Bank könnte diese Wärme behalten.</translation>
    </message>
    <message>
        <source>Exhaust fans pull the house {} under outdoors; from {} on it is a caution.</source>
        <translation>Lüfter ziehen das Haus {} unter die Außenluft; ab {} ist das Vorsicht wert.</translation>
    </message>
    <message>
        <source>{}: {} of water run to this lowest place and find no drain.</source>
        <translation>{}: {} Wasser laufen an diese tiefste Stelle und finden keinen Ablauf.</translation>
    </message>
    <message>
        <source>{}: it falls {} along the flow, to a place without a drain.</source>
        <translation>{}: er fällt {} mit dem Gas, zu einer Stelle ohne Ablauf.</translation>
    </message>
    <message>
        <source>{}: the flue narrows to a bore of {}; the system behind the fire has {}.</source>
        <translation>{}: der Zug wird auf {} lichte Weite enger; das System hinter dem Feuer hat {}.</translation>
    </message>
    <message>
        <source>{}: the outlet stands {} over {}; at least {} are usual.</source>
        <translation>{}: die Mündung steht {} über {}; mindestens {} sind üblich.</translation>
    </message>
    <message>
        <source>the roof where the chimney comes through</source>
        <translation>dem Dach, wo der Schornstein durchkommt</translation>
    </message>
    <message>
        <source>what is highest within 3 m (10 ft)</source>
        <translation>dem Höchsten im Umkreis von 3 m (10 ft)</translation>
    </message>
    <message>
        <source>{}: a single wall {} from what burns; it needs {}.</source>
        <translation>{}: eine einfache Wand {} von Brennbarem; sie braucht {}.</translation>
    </message>
    <message>
        <source>{}: a single wall goes through the attic, where nobody sees it.</source>
        <translation>{}: eine einfache Wand geht durch den Dachraum, wo sie niemand sieht.</translation>
    </message>
    <message>
        <source>{}: no cleanout from which a brush of {} gets to it.</source>
        <translation>{}: keine Reinigungsöffnung, von der eine Bürste mit {} hinkommt.</translation>
    </message>
    <message>
        <source>{}: the gas runs at {}, over {}.</source>
        <translation>{}: das Gas läuft mit {}, über {}.</translation>
    </message>
    <message>
        <source>{}: the gas creeps at {}, under {}.</source>
        <translation>{}: das Gas kriecht mit {}, unter {}.</translation>
    </message>
    <message>
        <source>{}: fired without a break its surface comes to {}; over {} it is no seat.</source>
        <translation>{}: ohne Pause befeuert kommt die Oberfläche auf {}; über {} ist das kein Sitz.</translation>
    </message>
    <message>
        <source>{}: the bench weighs {} on its floor, which is said to carry {}.</source>
        <translation>{}: die Bank lastet mit {} auf ihrem Boden, der {} tragen soll.</translation>
    </message>
    <message>
        <source>The design does not say that there is a carbon-monoxide alarm.</source>
        <translation>Der Entwurf sagt nicht, dass es einen Kohlenmonoxidmelder gibt.</translation>
    </message>
    <message>
        <source>: a price list is an object with “currency” and “prices”</source>
        <translation>: eine Preisliste ist ein Objekt mit „currency“ und „prices“</translation>
    </message>
    <message>
        <source>{}, price {}</source>
        <translation>{}, Preis {}</translation>
    </message>
    <message>
        <source>Price list: “{}” is not in the catalogue.</source>
        <translation>Preisliste: „{}“ steht nicht im Katalog.</translation>
    </message>
    <message>
        <source>The price list {} cannot be read.</source>
        <translation>Die Preisliste {} lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>The price list {} is larger than 1 MiB.</source>
        <translation>Die Preisliste {} ist größer als 1 MiB.</translation>
    </message>
    <message>
        <source>Shorten the bench from {} to {}</source>
        <translation>Die Bank von {} auf {} kürzen</translation>
    </message>
    <message>
        <source>Leave out {} and go straight on</source>
        <translation>{} weglassen und geradeaus gehen</translation>
    </message>
    <message>
        <source>Widen the flue from {} to {}</source>
        <translation>Den Zug von {} auf {} weiten</translation>
    </message>
    <message>
        <source>Raise the chimney by {}</source>
        <translation>Den Schornstein um {} erhöhen</translation>
    </message>
    <message>
        <source>Insulate the whole chimney</source>
        <translation>Den ganzen Schornstein dämmen</translation>
    </message>
    <message>
        <source>Insulate the chimney outside the room</source>
        <translation>Den Schornstein außerhalb des Raums dämmen</translation>
    </message>
    <message>
        <source>Bring the chimney indoors up to the ceiling</source>
        <translation>Den Schornstein bis zur Decke nach innen holen</translation>
    </message>
    <message>
        <source>Burn drier wood: {} instead of {} ({})</source>
        <translation>Trockeneres Holz verbrennen: {} statt {} ({})</translation>
    </message>
    <message>
        <source>Burn less at a time: {} instead of {}</source>
        <translation>Weniger auf einmal verbrennen: {} statt {}</translation>
    </message>
    <message>
        <source>Burn more at a time: {} instead of {}</source>
        <translation>Mehr auf einmal verbrennen: {} statt {}</translation>
    </message>
    <message>
        <source>Give {} air from outdoors by a duct</source>
        <translation>{} durch eine Leitung Luft von draußen geben</translation>
    </message>
    <message>
        <source>Choke {} from {} to {}</source>
        <translation>{} von {} auf {} drosseln</translation>
    </message>
    <message>
        <source>Open {} from {} to {}</source>
        <translation>{} von {} auf {} öffnen</translation>
    </message>
    <message>
        <source>Put a tee at the foot of {}, for a priming fire</source>
        <translation>Ein T-Stück an den Fuß von {} setzen, für ein Vorwärmfeuer</translation>
    </message>
    <message>
        <source>{}, and {}</source>
        <translation>{}. {}</translation>
    </message>
    <message>
        <source>The previous copy could not be kept as</source>
        <translation>Die vorige Kopie ließ sich nicht aufbewahren als</translation>
    </message>
    <message>
        <source>The file could not be found:</source>
        <translation>Die Datei ließ sich nicht finden:</translation>
    </message>
    <message>
        <source>The file could not be written:</source>
        <translation>Die Datei ließ sich nicht schreiben:</translation>
    </message>
    <message>
        <source>The file could not be written: “{}” is not an ordinary file.</source>
        <translation>Die Datei ließ sich nicht schreiben: „{}“ ist keine gewöhnliche Datei.</translation>
    </message>
    <message>
        <source>The file could not be replaced:</source>
        <translation>Die Datei ließ sich nicht ersetzen:</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>ein Text</translation>
    </message>
    <message>
        <source> of {} to {} characters</source>
        <translation> mit {} bis {} Zeichen</translation>
    </message>
    <message>
        <source> that is not empty</source>
        <translation>, der nicht leer ist</translation>
    </message>
    <message>
        <source>a list of {} to {}</source>
        <translation>eine Liste von {} bis {}</translation>
    </message>
    <message>
        <source>a list [ ]</source>
        <translation>eine Liste [ ]</translation>
    </message>
    <message>
        <source>an object { }</source>
        <translation>ein Objekt { }</translation>
    </message>
    <message>
        <source>The design</source>
        <translation>Der Entwurf</translation>
    </message>
    <message>
        <source>{} number {}</source>
        <translation>{} Nummer {}</translation>
    </message>
    <message>
        <source>Joint</source>
        <translation>Verbindung</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>an object</source>
        <translation>ein Objekt</translation>
    </message>
    <message>
        <source>a list</source>
        <translation>eine Liste</translation>
    </message>
    <message>
        <source>The file does not follow the layout of a design.</source>
        <translation>Die Datei folgt nicht dem Aufbau eines Entwurfs.</translation>
    </message>
    <message>
        <source>draws by itself</source>
        <translation>zieht von selbst</translation>
    </message>
    <message>
        <source>lights with kindling</source>
        <translation>geht mit Kleinholz an</translation>
    </message>
    <message>
        <source>needs the stack primed</source>
        <translation>Schornstein muss vorgewärmt werden</translation>
    </message>
    <message>
        <source>needs a fan</source>
        <translation>braucht ein Gebläse</translation>
    </message>
    <message>
        <source>will not hold without the fan</source>
        <translation>hält ohne Gebläse nicht</translation>
    </message>
    <message>
        <source>will not hold, with the fan neither</source>
        <translation>hält nicht, auch mit Gebläse nicht</translation>
    </message>
    <message>
        <source>runs backward</source>
        <translation>läuft rückwärts</translation>
    </message>
    <message>
        <source>smokes into the room</source>
        <translation>raucht in den Raum</translation>
    </message>
    <message>
        <source>starves for air</source>
        <translation>bekommt zu wenig Luft</translation>
    </message>
    <message>
        <source>could not be computed</source>
        <translation>ließ sich nicht rechnen</translation>
    </message>
    <message>
        <source> So far; not every cell of that row is computed.</source>
        <translation> Bis jetzt; nicht jedes Feld dieser Zeile ist gerechnet.</translation>
    </message>
    <message>
        <source>In a room at {} kindling is enough on every day of the map.{}</source>
        <translation>In einem Raum mit {} genügt Kleinholz an jedem Tag der Karte.{}</translation>
    </message>
    <message>
        <source>Nothing is computed yet for a room at {}.</source>
        <translation>Für einen Raum mit {} ist noch nichts gerechnet.</translation>
    </message>
    <message>
        <source>In a room at {} kindling is enough on no day of the map: it {}.{}</source>
        <translation>In einem Raum mit {} genügt Kleinholz an keinem Tag der Karte: {}.{}</translation>
    </message>
    <message>
        <source>In a room at {} kindling is enough up to {} outdoors, the room {}; from {} outdoors, the room {}, it {}.{}</source>
        <translation>In einem Raum mit {} genügt Kleinholz bis {} draußen, {} unter dem Raum; ab {} draußen, {} darunter: {}.{}</translation>
    </message>
    <message>
        <source> House: suction {} on top of its own stack effect, exhaust {}, neutral plane {}.</source>
        <translation> Haus: Unterdruck {} zu seinem eigenen Auftrieb, Abluft {}, neutrale Ebene {}.</translation>
    </message>
    <message>
        <source> Priming: {} over {}.</source>
        <translation> Vorwärmen: {} über {}.</translation>
    </message>
    <message>
        <source> Priming is left out: there is no tee with a shut port on the way up the stack.</source>
        <translation> Vorwärmen fällt weg: es gibt kein T-Stück mit verschlossenem Stutzen auf dem Weg den Schornstein hinauf.</translation>
    </message>
    <message>
        <source> A fan is left out: no run of the stack has room for one.</source>
        <translation> Ein Gebläse fällt weg: kein Strang des Schornsteins hat Platz dafür.</translation>
    </message>
    <message>
        <source> Fan: {}, {} from the match&apos;s minute on.</source>
        <translation> Gebläse: {}, {} ab der Minute des Streichholzes.</translation>
    </message>
    <message>
        <source>the design&apos;s own</source>
        <translation>das des Entwurfs</translation>
    </message>
    <message>
        <source>a generic inducer beside the stack&apos;s foot</source>
        <translation>ein gewöhnlicher Saugzug neben dem Fuß des Schornsteins</translation>
    </message>
    <message>
        <source>None: the whole fire at once</source>
        <translation>Keine: das ganze Feuer auf einmal</translation>
    </message>
    <message>
        <source>Kindling</source>
        <translation>Kleinholz</translation>
    </message>
    <message>
        <source>Priming fire in the stack&apos;s foot</source>
        <translation>Vorwärmfeuer im Fuß des Schornsteins</translation>
    </message>
    <message>
        <source>Bypass</source>
        <translation>Umgehung</translation>
    </message>
    <message>
        <source>Duct fan in the stream, stack&apos;s foot</source>
        <translation>Rohrgebläse im Gasstrom, Fuß des Schornsteins</translation>
    </message>
    <message>
        <source>Duct fan in the stream, under the cap</source>
        <translation>Rohrgebläse im Gasstrom, unter der Haube</translation>
    </message>
    <message>
        <source>Fan on top</source>
        <translation>Gebläse auf der Mündung</translation>
    </message>
    <message>
        <source>Side inducer at {:.0f} %</source>
        <translation>Saugzug daneben mit {:.0f} %</translation>
    </message>
    <message>
        <source>There is no tee with a shut port on the way up the stack.</source>
        <translation>Es gibt kein T-Stück mit verschlossenem Stutzen auf dem Weg den Schornstein hinauf.</translation>
    </message>
    <message>
        <source>No run of the stack has room for it.</source>
        <translation>Kein Strang des Schornsteins hat Platz dafür.</translation>
    </message>
    <message>
        <source>No bypass is drawn: draw one to try it.</source>
        <translation>Es ist keine Umgehung gezeichnet: eine zeichnen, um sie zu probieren.</translation>
    </message>
    <message>
        <source>The runs did not come to an end.</source>
        <translation>Die Läufe kamen nicht zu einem Ende.</translation>
    </message>
    <message>
        <source>It draws before anything is lit and takes the whole fire at once.</source>
        <translation>Er zieht, bevor etwas brennt, und verträgt das ganze Feuer auf einmal.</translation>
    </message>
    <message>
        <source>A small fire in a heater shut until the match is enough; it costs nothing and nothing can break.</source>
        <translation>Ein kleines Feuer in einem Ofen, der bis zum Streichholz zu ist, genügt; es kostet nichts, und nichts kann kaputtgehen.</translation>
    </message>
    <message>
        <source>After {} it holds by itself.</source>
        <translation>Nach {} hält er von selbst.</translation>
    </message>
    <message>
        <source>does not draw even with the fan on</source>
        <translation>zieht nicht einmal mit laufendem Gebläse</translation>
    </message>
    <message>
        <source>goes on drawing</source>
        <translation>zieht weiter</translation>
    </message>
    <message>
        <source>starves after {} min</source>
        <translation>bekommt nach {} min zu wenig Luft</translation>
    </message>
    <message>
        <source>turns after {} min</source>
        <translation>kehrt sich nach {} min um</translation>
    </message>
    <message>
        <source>{} of smoke into the room</source>
        <translation>{} Rauch in den Raum</translation>
    </message>
    <message>
        <source>Power cut with a loaded feed: in a neutral house it {}; with {:.0f} Pa of suction in the house it {}.</source>
        <translation>Stromausfall bei voller Beschickung: in einem neutralen Haus: {}; mit {:.0f} Pa Unterdruck im Haus: {}.</translation>
    </message>
    <message>
        <source>“{0}{2}{1}” could mean {0}{3}{1} or {0}{1}: write it one of these ways.</source>
        <translation>„{0}{2}{1}“ kann {0}{3}{1} oder {0}{1} heißen: auf eine dieser Arten schreiben.</translation>
    </message>
    <message>
        <source>“{}” is not {}: write it like {}.</source>
        <translation>„{}“ ist nicht {}: schreiben wie {}.</translation>
    </message>
    <message>
        <source>a length</source>
        <translation>eine Länge</translation>
    </message>
    <message>
        <source>1200, 1.2 m, 80 in or 6 ft 4 in</source>
        <translation>1200, 1,2 m, 80 in oder 6 ft 4 in</translation>
    </message>
    <message>
        <source>Nothing is written: {} is wanted here.</source>
        <translation>Es steht nichts da: hier gehört {} hin.</translation>
    </message>
    <message>
        <source>Nothing is written: a length is wanted here.</source>
        <translation>Es steht nichts da: hier gehört eine Länge hin.</translation>
    </message>
    <message>
        <source>5</source>
        <translation>5</translation>
    </message>
    <message>
        <source>Nothing is written: a name is wanted here.</source>
        <translation>Es steht nichts da: hier gehört ein Name hin.</translation>
    </message>
    <message>
        <source>an angle</source>
        <translation>ein Winkel</translation>
    </message>
    <message>
        <source>45 or 45 deg</source>
        <translation>45 oder 45 deg</translation>
    </message>
    <message>
        <source>a share</source>
        <translation>ein Anteil</translation>
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
        <translation>ein Druck</translation>
    </message>
    <message>
        <source>5 Pa or 0.02 in w.c.</source>
        <translation>5 Pa oder 0,02 in w.c.</translation>
    </message>
    <message>
        <source>a temperature</source>
        <translation>eine Temperatur</translation>
    </message>
    <message>
        <source>20 C or 68 F</source>
        <translation>20 C oder 68 F</translation>
    </message>
    <message>
        <source>a burn rate</source>
        <translation>ein Abbrand</translation>
    </message>
    <message>
        <source>3 kg/h or 6.6 lb/h</source>
        <translation>3 kg/h oder 6,6 lb/h</translation>
    </message>
    <message>
        <source>a speed</source>
        <translation>eine Geschwindigkeit</translation>
    </message>
    <message>
        <source>4 m/s or 9 mph</source>
        <translation>4 m/s oder 9 mph</translation>
    </message>
    <message>
        <source>a flow of air</source>
        <translation>ein Luftstrom</translation>
    </message>
    <message>
        <source>90 m3/h or 53 cfm</source>
        <translation>90 m3/h oder 53 cfm</translation>
    </message>
    <message>
        <source>a volume</source>
        <translation>ein Volumen</translation>
    </message>
    <message>
        <source>300 m3 or 10600 ft3</source>
        <translation>300 m3 oder 10600 ft3</translation>
    </message>
    <message>
        <source>a density</source>
        <translation>eine Dichte</translation>
    </message>
    <message>
        <source>1.2 kg/m3 or 0.075 lb/ft3</source>
        <translation>1,2 kg/m3 oder 0,075 lb/ft3</translation>
    </message>
    <message>
        <source>a power</source>
        <translation>eine Leistung</translation>
    </message>
    <message>
        <source>30 W</source>
        <translation>30 W</translation>
    </message>
    <message>
        <source>“{}”, line {}: {}</source>
        <translation>„{}“, Zeile {}: {}</translation>
    </message>
    <message>
        <source>the columns “time” and “temperature_C” are wanted.</source>
        <translation>die Spalten „time“ und „temperature_C“ werden gebraucht.</translation>
    </message>
    <message>
        <source>the row is too short.</source>
        <translation>die Zeile ist zu kurz.</translation>
    </message>
    <message>
        <source>“{}” is no time like 2024-04-06T17:00.</source>
        <translation>„{}“ ist keine Zeit wie 2024-04-06T17:00.</translation>
    </message>
    <message>
        <source>the temperature is missing.</source>
        <translation>die Temperatur fehlt.</translation>
    </message>
    <message>
        <source>“{}” is no temperature.</source>
        <translation>„{}“ ist keine Temperatur.</translation>
    </message>
    <message>
        <source>the row is not later than the one before.</source>
        <translation>die Zeile ist nicht später als die davor.</translation>
    </message>
    <message>
        <source>{:.0f} minutes are missing before this row; the rows before are {:.0f} minutes apart.</source>
        <translation>Vor dieser Zeile fehlen {:.0f} Minuten; die Zeilen davor liegen {:.0f} Minuten auseinander.</translation>
    </message>
    <message>
        <source>“{}” is empty.</source>
        <translation>„{}“ ist leer.</translation>
    </message>
    <message>
        <source>draws</source>
        <translation>zieht</translation>
    </message>
    <message>
        <source>marginal</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>unsafe: the draft depends on a fan</source>
        <translation>unsicher: der Zug hängt am Gebläse</translation>
    </message>
    <message>
        <source>will not draw</source>
        <translation>zieht nicht</translation>
    </message>
    <message>
        <source>cold bench</source>
        <translation>kalte Bank</translation>
    </message>
    <message>
        <source>one hour</source>
        <translation>eine Stunde</translation>
    </message>
    <message>
        <source>charged</source>
        <translation>durchwärmt</translation>
    </message>
    <message>
        <source>fault</source>
        <translation>Fehler</translation>
    </message>
    <message>
        <source>caution</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>beyond</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>standing</source>
        <translation>steht</translation>
    </message>
    <message>
        <source>no piece</source>
        <translation>kein Teil</translation>
    </message>
    <message>
        <source>Unknown piece “{}”</source>
        <translation>Unbekanntes Teil „{}“</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>in {}, {} along</source>
        <translation>in {}, {} weit</translation>
    </message>
    <message>
        <source>A carbon-monoxide alarm belongs in the heater&apos;s room and near every bedroom.</source>
        <translation>Ein Kohlenmonoxidmelder gehört in den Raum des Ofens und in die Nähe jedes Schlafzimmers.</translation>
    </message>
    <message>
        <source>Keep the clearances to everything that burns; wood behind masonry heats up too.</source>
        <translation>Abstand zu allem Brennbaren halten; auch Holz hinter Mauerwerk wird heiß.</translation>
    </message>
    <message>
        <source>A bench weighs tonnes: let a qualified person judge the floor.</source>
        <translation>Eine Bank wiegt Tonnen: den Boden von einer Fachperson beurteilen lassen.</translation>
    </message>
    <message>
        <source>Local code and permit come first. A long run with bends breaks the usual rules for connectors: ask before building.</source>
        <translation>Vorschriften und Genehmigung gehen vor. Ein langer Strang mit Bögen verletzt die üblichen Regeln für Verbindungsstücke: vor dem Bau fragen.</translation>
    </message>
    <message>
        <source>Have the chimney inspected by a licensed chimney professional before the first fire, and every year after.</source>
        <translation>Den Schornstein vor dem ersten Feuer und danach jedes Jahr vom Schornsteinfeger prüfen lassen.</translation>
    </message>
    <message>
        <source>The numbers are estimates for planning. Wood fires vary, and so do joints.</source>
        <translation>Die Zahlen sind Schätzungen für die Planung. Holzfeuer schwanken, und Verbindungen auch.</translation>
    </message>
    <message>
        <source>draft to spare, cold bench</source>
        <translation>Zugreserve, kalte Bank</translation>
    </message>
    <message>
        <source>draft to spare, one hour</source>
        <translation>Zugreserve, eine Stunde</translation>
    </message>
    <message>
        <source>draft to spare, charged</source>
        <translation>Zugreserve, durchwärmt</translation>
    </message>
    <message>
        <source>draft before anything burns</source>
        <translation>Zug, bevor etwas brennt</translation>
    </message>
    <message>
        <source>excess air where it settles</source>
        <translation>Luftüberschuss, wo es sich einstellt</translation>
    </message>
    <message>
        <source>temperature behind the fire</source>
        <translation>Temperatur hinter dem Feuer</translation>
    </message>
    <message>
        <source>exit temperature</source>
        <translation>Austrittstemperatur</translation>
    </message>
    <message>
        <source>where walls get wet</source>
        <translation>wo Wände nass werden</translation>
    </message>
    <message>
        <source>heat to the room</source>
        <translation>Wärme in den Raum</translation>
    </message>
    <message>
        <source>heat into the mass</source>
        <translation>Wärme in die Masse</translation>
    </message>
    <message>
        <source>heat that leaves with the gas</source>
        <translation>Wärme, die mit dem Gas geht</translation>
    </message>
    <message>
        <source>outside the range of its source, {}</source>
        <translation>außerhalb des Bereichs ihrer Quelle, {}</translation>
    </message>
    <message>
        <source>range {}</source>
        <translation>Bereich {}</translation>
    </message>
    <message>
        <source>SI base units; a temperature in a relation is in kelvin. Values stand to more digits than they mean, so that whoever works with them gets six back.</source>
        <translation>SI-Basiseinheiten; eine Temperatur in einer Beziehung steht in Kelvin. Werte stehen mit mehr Stellen, als sie bedeuten, damit wer damit rechnet, sechs zurückbekommt.</translation>
    </message>
    <message>
        <source>A fixed sum taken off the design margin: 0 where the cap stands clear of the roof, 25 for an inland and 40 for a coastal site where it does not.</source>
        <translation>Fester Abzug von der Reserve: 0, wo die Haube frei über dem Dach steht, sonst 25 im Binnenland und 40 an der Küste.</translation>
    </message>
    <message>
        <source>A joint that is not tight: a crack in the flue&apos;s side. It lets room air in, or smoke out where the flue presses outwards.</source>
        <translation>Eine Fuge, die nicht dicht ist: ein Riss in der Seite des Zugs. Er lässt Raumluft ein, oder Rauch aus, wo der Zug nach außen drückt.</translation>
    </message>
    <message>
        <source>A run that is too long</source>
        <translation>Ein zu langer Strang</translation>
    </message>
    <message>
        <source>Above the heater&apos;s floor: the top of whatever roof, wall or tree stands within 3 m (10 ft) of the chimney&apos;s top. 0 where nothing stands higher than the roof at the chimney.</source>
        <translation>Über dem Boden am Ofen: Oberkante von Dach, Wand oder Baum im Umkreis von 3 m (10 ft) um den Schornsteinkopf. 0, wo nichts höher ist als das Dach am Schornstein.</translation>
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
        <source>Along the first wall</source>
        <translation>An der ersten Wand entlang</translation>
    </message>
    <message>
        <source>Along the joint: all round a 150 mm pipe is 470 mm.</source>
        <translation>Entlang der Fuge: rund um ein 150-mm-Rohr sind es 470 mm.</translation>
    </message>
    <message>
        <source>Along the second wall</source>
        <translation>An der zweiten Wand entlang</translation>
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
        <source>Ash pit</source>
        <translation>Aschegrube</translation>
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
        <source>Back along the first wall</source>
        <translation>Zurück an der ersten Wand</translation>
    </message>
    <message>
        <source>Back along the second wall</source>
        <translation>Zurück an der zweiten Wand</translation>
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
        <source>Bench with a bypass, 150 mm</source>
        <translation>Bank mit Umgehung, 150 mm</translation>
    </message>
    <message>
        <source>Bench, back</source>
        <translation>Bank, zurück</translation>
    </message>
    <message>
        <source>Bench, out</source>
        <translation>Bank, hin</translation>
    </message>
    <message>
        <source>Bench, to the wall</source>
        <translation>Bank, zur Wand</translation>
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
        <source>Blade reaching in from the side, motor outside, blowing the way it is drawn. Off, it hardly stands in the way.</source>
        <translation>Flügelrad, das von der Seite hineinreicht, Motor außen, es bläst, wie es gezeichnet ist. Aus steht es kaum im Weg.</translation>
    </message>
    <message>
        <source>Bore of the flap standing wide open.</source>
        <translation>Lichte Weite der ganz offenen Klappe.</translation>
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
        <source>Brush with its rods</source>
        <translation>Bürste mit Gestänge</translation>
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
        <source>Burn tunnel</source>
        <translation>Brenntunnel</translation>
    </message>
    <message>
        <source>Bypass link</source>
        <translation>Umgehung</translation>
    </message>
    <message>
        <source>Cap</source>
        <translation>Haube</translation>
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
        <source>Carbon-monoxide alarm</source>
        <translation>Kohlenmonoxidmelder</translation>
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
        <source>Chimney below the ceiling</source>
        <translation>Schornstein unter der Decke</translation>
    </message>
    <message>
        <source>Chimney inside the gable</source>
        <translation>Schornstein innen am Giebel</translation>
    </message>
    <message>
        <source>Chimney length through ceiling, attic and roof.</source>
        <translation>Schornsteinstück durch Decke, Dachraum und Dach.</translation>
    </message>
    <message>
        <source>Chimney on the outside wall</source>
        <translation>Schornstein an der Außenwand</translation>
    </message>
    <message>
        <source>Chimney on the upper floor</source>
        <translation>Schornstein im oberen Geschoss</translation>
    </message>
    <message>
        <source>Chimney over the ridge</source>
        <translation>Schornstein über dem First</translation>
    </message>
    <message>
        <source>Chimney over the roof</source>
        <translation>Schornstein über dem Dach</translation>
    </message>
    <message>
        <source>Chimney, lower length</source>
        <translation>Schornstein, unteres Stück</translation>
    </message>
    <message>
        <source>Chimney, middle length</source>
        <translation>Schornstein, mittleres Stück</translation>
    </message>
    <message>
        <source>Chimney, upper length</source>
        <translation>Schornstein, oberes Stück</translation>
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
        <source>Cleanout at the foot</source>
        <translation>Reinigungsöffnung am Fuß</translation>
    </message>
    <message>
        <source>Cleanout cap</source>
        <translation>Reinigungsdeckel</translation>
    </message>
    <message>
        <source>Cleanout halfway</source>
        <translation>Reinigungsöffnung auf halbem Weg</translation>
    </message>
    <message>
        <source>Cleanout tee</source>
        <translation>Reinigungs-T-Stück</translation>
    </message>
    <message>
        <source>Clear of what burns</source>
        <translation>Frei von Brennbarem</translation>
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
        <source>Corner</source>
        <translation>Ecke</translation>
    </message>
    <message>
        <source>Corner, back</source>
        <translation>Ecke, zurück</translation>
    </message>
    <message>
        <source>Cover halfway</source>
        <translation>Deckel auf halbem Weg</translation>
    </message>
    <message>
        <source>Crack, length</source>
        <translation>Riss, Länge</translation>
    </message>
    <message>
        <source>Crack, width</source>
        <translation>Riss, Breite</translation>
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
        <source>Down pipe</source>
        <translation>Fallrohr</translation>
    </message>
    <message>
        <source>Down to the floor run</source>
        <translation>Hinunter zum Strang im Boden</translation>
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
        <source>Drain and cleanout</source>
        <translation>Ablauf und Reinigungsöffnung</translation>
    </message>
    <message>
        <source>Drawn or stamped bend without seams across the flow.</source>
        <translation>Gezogener oder gepresster Bogen ohne Nähte quer zum Strom.</translation>
    </message>
    <message>
        <source>Drum</source>
        <translation>Fass</translation>
    </message>
    <message>
        <source>Drums split lengthwise and laid open side down under the seat: a wide, slow channel.</source>
        <translation>Längs geteilte Fässer, offen nach unten unter dem Sitz: ein weiter, langsamer Kanal.</translation>
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
        <source>Electrical, at full speed in gas of the density above.</source>
        <translation>Elektrisch, bei voller Drehzahl in Gas der obigen Dichte.</translation>
    </message>
    <message>
        <source>End, first quarter</source>
        <translation>Ende, erstes Viertel</translation>
    </message>
    <message>
        <source>End, second quarter</source>
        <translation>Ende, zweites Viertel</translation>
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
        <source>Extractor on top of the stack, motor out of the gas. Off, it stands in the way like a cap.</source>
        <translation>Sauger auf dem Schornstein, Motor außerhalb des Gases. Aus steht er im Weg wie eine Haube.</translation>
    </message>
    <message>
        <source>Factory-made chimney length with insulation between its walls.</source>
        <translation>Fertiges Schornsteinstück mit Dämmung zwischen den Wänden.</translation>
    </message>
    <message>
        <source>Fan with its motor in the stream, blowing the way it is drawn. Off, blades and motor stand in the way.</source>
        <translation>Gebläse mit dem Motor im Gasstrom, es bläst, wie es gezeichnet ist. Aus stehen Flügel und Motor im Weg.</translation>
    </message>
    <message>
        <source>Far bore</source>
        <translation>Ferne Weite</translation>
    </message>
    <message>
        <source>Far end, first quarter</source>
        <translation>Ende, erstes Viertel</translation>
    </message>
    <message>
        <source>Far end, second quarter</source>
        <translation>Ende, zweites Viertel</translation>
    </message>
    <message>
        <source>Feed tube</source>
        <translation>Füllschacht</translation>
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
        <source>Flap</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>Flat or conical hat over the open pipe.</source>
        <translation>Flacher oder kegeliger Hut über dem offenen Rohr.</translation>
    </message>
    <message>
        <source>Flow</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>Flow safety</source>
        <translation>Sicherheit des Stroms</translation>
    </message>
    <message>
        <source>Foot of the chimney</source>
        <translation>Fuß des Schornsteins</translation>
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
        <source>Gas density</source>
        <translation>Dichte des Gases</translation>
    </message>
    <message>
        <source>Gas leaves</source>
        <translation>Gas tritt aus</translation>
    </message>
    <message>
        <source>Gas up to</source>
        <translation>Gas bis</translation>
    </message>
    <message>
        <source>Generic duct fan in the stream</source>
        <translation>Rohrgebläse im Gasstrom, allgemein</translation>
    </message>
    <message>
        <source>Generic side-mounted inducer</source>
        <translation>Saugzug an der Seite, allgemein</translation>
    </message>
    <message>
        <source>Generic stack-top fan</source>
        <translation>Sauger auf der Mündung, allgemein</translation>
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
        <source>Greenhouse, floor run</source>
        <translation>Gewächshaus, Strang im Boden</translation>
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
        <source>Head</source>
        <translation>Förderhöhe</translation>
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
        <source>Highest thing near the cap</source>
        <translation>Höchstes bei der Haube</translation>
    </message>
    <message>
        <source>Hottest gas that may pass the fan, by its maker.</source>
        <translation>Heißestes Gas, das durch das Gebläse gehen darf, laut Hersteller.</translation>
    </message>
    <message>
        <source>Hottest that the motor may get, by its maker.</source>
        <translation>Wie heiß der Motor höchstens werden darf, laut Hersteller.</translation>
    </message>
    <message>
        <source>House volume</source>
        <translation>Hausvolumen</translation>
    </message>
    <message>
        <source>How far it gapes.</source>
        <translation>Wie weit er klafft.</translation>
    </message>
    <message>
        <source>How far the blade is turned out of the flow: 0 open, 90 shut.</source>
        <translation>Wie weit die Klappe aus dem Strom gedreht ist: 0 offen, 90 zu.</translation>
    </message>
    <message>
        <source>How far the draft must lie above the set draft for the flap to stand wide open.</source>
        <translation>Wie weit der Zug über dem eingestellten liegen muss, bis die Klappe ganz offen steht.</translation>
    </message>
    <message>
        <source>How far the flow turns.</source>
        <translation>Wie weit der Strom abbiegt.</translation>
    </message>
    <message>
        <source>How far the longest brush at hand reaches into the flue. It passes one turn and not two.</source>
        <translation>Wie weit die längste vorhandene Bürste in den Zug reicht. Sie geht um einen Bogen und nicht um zwei.</translation>
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
        <source>Inducer</source>
        <translation>Saugzug</translation>
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
        <source>Into the floor run</source>
        <translation>In den Strang im Boden</translation>
    </message>
    <message>
        <source>Invented, to show a client who wants every wall warm. Four runs of six and a half metres of 150 mm pipe lie in one wide platform, and the chimney ends just over a low roof. By the time the gas reaches the chimney it is barely warmer than the room, and there is nothing left to lift it. No cap, no elbow and no drier wood mends that; a shorter run and a taller chimney do.</source>
        <translation>Erfunden, für einen Kunden, der jede Wand warm haben will. Vier Züge von sechseinhalb Metern 150-mm-Rohr liegen in einer breiten Liegefläche, und der Schornstein endet knapp über einem niedrigen Dach. Bis das Gas am Schornstein ist, ist es kaum wärmer als der Raum, und nichts hebt es mehr. Keine Haube, kein Bogen und kein trockeneres Holz hilft da; ein kürzerer Strang und ein höherer Schornstein helfen.</translation>
    </message>
    <message>
        <source>Invented, to show what a power cut does. The same platform with a run that is too long, and an inducer bought second-hand and set at the foot of the chimney. A bath fan and a drier run in the house, and the day is mild. While the inducer turns the fire burns well, and by its own sheet the fan copes. When the power fails with wood in the feed, the fire starves and smokes. A shorter run and a taller chimney do without it: a fan may help a heater start, never hold it.</source>
        <translation>Erfunden, um zu zeigen, was ein Stromausfall anrichtet. Dieselbe Liegefläche mit einem zu langen Strang und einem gebraucht gekauften Saugzug am Fuß des Schornsteins. Im Haus laufen ein Badlüfter und ein Trockner, und der Tag ist mild. Solange der Saugzug dreht, brennt das Feuer gut, und nach seinem Blatt verträgt es das Gebläse. Fällt der Strom bei Holz in der Beschickung aus, erstickt das Feuer und raucht. Ein kürzerer Strang und ein höherer Schornstein kommen ohne aus: ein Gebläse darf einem Ofen beim Angehen helfen, ihn aber nie halten.</translation>
    </message>
    <message>
        <source>Invented. A lean-to glasshouse that is fired on frosty nights. The drum stands at the east end; from there a 200 mm pipe goes down and runs under the path for nine metres, and comes up into a chimney on the gable. Damp ground takes most of the heat, which is what the grower wants, and leaves little for the chimney, which is what the grower fears.</source>
        <translation>Erfunden. Ein angebautes Glashaus, das in Frostnächten geheizt wird. Das Fass steht am Ostende; von dort geht ein 200-mm-Rohr hinunter, läuft neun Meter unter dem Weg und kommt in einen Schornstein am Giebel herauf. Das feuchte Erdreich nimmt die meiste Wärme, was der Gärtner will, und lässt dem Schornstein wenig, was der Gärtner fürchtet.</translation>
    </message>
    <message>
        <source>Invented. A one-room cottage on a February morning, frost outside and the stove lit every day. The bench is a day bed: two metres out, two metres back, the pipe in cob, and a straight chimney through the roof beside the drum. Nothing about it is remarkable, which is why it draws.</source>
        <translation>Erfunden. Ein Häuschen mit einem Raum an einem Februarmorgen, Frost draußen, und der Ofen wird jeden Tag geheizt. Die Bank ist ein Tagesbett: zwei Meter hin, zwei Meter zurück, das Rohr in Strohlehm, und ein gerader Schornstein durch das Dach neben dem Fass. Nichts daran ist besonders, und deshalb zieht er.</translation>
    </message>
    <message>
        <source>Invented. A workshop on an October morning that is lit twice a week and so begins cold each time. A short link leads past the bench to the foot of the chimney; its blade stands open while the chimney warms, and nearly a third of the gas goes that way. Shut the blade and all of it warms the bench. The lid at the foot is for a priming fire: take it off and see how much room air the chimney would rather have than the heater&apos;s smoke.</source>
        <translation>Erfunden. Eine Werkstatt an einem Oktobermorgen, die zweimal in der Woche geheizt wird und deshalb jedes Mal kalt beginnt. Ein kurzes Rohr führt an der Bank vorbei zum Fuß des Schornsteins; seine Klappe steht offen, solange der Schornstein warm wird, und fast ein Drittel des Gases geht dort entlang. Klappe zu, und alles wärmt die Bank. Der Deckel am Fuß ist für ein Vorwärmfeuer: abnehmen und sehen, wie viel lieber der Schornstein Raumluft hätte als den Rauch des Ofens.</translation>
    </message>
    <message>
        <source>Invented. The first mild evening of April in a house that has been empty for a week: eleven degrees inside, fourteen outside. The bench runs along two walls and back again, about thirteen metres of 200 mm pipe, and the chimney is short because the ridge is low. In January it draws; tonight it is on the edge until the bench has taken up some heat.</source>
        <translation>Erfunden. Der erste milde Aprilabend in einem Haus, das eine Woche leer stand: elf Grad drinnen, vierzehn draußen. Die Bank läuft an zwei Wänden entlang und wieder zurück, etwa dreizehn Meter 200-mm-Rohr, und der Schornstein ist kurz, weil der First niedrig ist. Im Januar zieht er; heute Abend steht es auf der Kippe, bis die Bank etwas Wärme aufgenommen hat.</translation>
    </message>
    <message>
        <source>Invented. To keep the roof whole, the builder took the pipe through the north wall and up the outside in plain single-wall pipe. The bench works and the room is warm, but the chimney stands in the frost and the wood has seen one summer only: from the foot up the inner wall is below the dew point, and water runs down to the cleanout. The same chimney indoors, or insulated, would be dry.</source>
        <translation>Erfunden. Um das Dach ganz zu lassen, führte der Erbauer das Rohr durch die Nordwand und außen mit einfachem Rohr hinauf. Die Bank tut ihren Dienst und der Raum ist warm, aber der Schornstein steht im Frost, und das Holz hat nur einen Sommer gesehen: vom Fuß an liegt die Innenwand unter dem Taupunkt, und Wasser läuft zur Reinigungsöffnung herab. Derselbe Schornstein im Haus, oder gedämmt, wäre trocken.</translation>
    </message>
    <message>
        <source>Its data sheet: a generic one with an invented curve, or your own.</source>
        <translation>Sein Datenblatt: ein allgemeines mit erfundener Kennlinie oder Ihr eigenes.</translation>
    </message>
    <message>
        <source>Kept going by a fan</source>
        <translation>Von einem Gebläse gehalten</translation>
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
        <source>Leaky joint</source>
        <translation>Undichte Fuge</translation>
    </message>
    <message>
        <source>Left open</source>
        <translation>Bleibt offen</translation>
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
        <source>Lid</source>
        <translation>Deckel</translation>
    </message>
    <message>
        <source>Lid on an open end, to be taken off for cleaning or for a priming fire; with the lid off the end stands open to the room.</source>
        <translation>Deckel auf einem offenen Ende, zum Abnehmen für das Reinigen oder für ein Vorwärmfeuer; ohne Deckel steht das Ende zum Raum offen.</translation>
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
        <source>Load per area under the bench that the floor is good for: 1900 Pa (40 psf) is what house floors are usually built for; a slab on the ground carries many times that.</source>
        <translation>Last je Fläche unter der Bank, die der Boden verträgt: 1900 Pa (40 psf) ist das Übliche für Wohnböden; eine Platte auf dem Erdreich trägt ein Vielfaches.</translation>
    </message>
    <message>
        <source>Long bench in spring, 200 mm</source>
        <translation>Lange Bank im Frühling, 200 mm</translation>
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
        <source>Motor</source>
        <translation>Motor</translation>
    </message>
    <message>
        <source>Motor up to</source>
        <translation>Motor bis</translation>
    </message>
    <message>
        <source>Nearest wood, furniture or plasterboard on studs, as built: for a bare drum 920 mm (36 in) is the usual least.</source>
        <translation>Nächstes Holz, Möbel oder Gipskarton auf Ständern, wie gebaut: für ein bloßes Fass sind 920 mm (36 in) das übliche Mindestmaß.</translation>
    </message>
    <message>
        <source>Nearest wood, furniture or plasterboard on studs, as built: for a single wall 460 mm (18 in) is the usual least.</source>
        <translation>Nächstes Holz, Möbel oder Gipskarton auf Ständern, wie gebaut: für eine einfache Wand sind 460 mm (18 in) das übliche Mindestmaß.</translation>
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
        <source>Of the full speed of its data sheet; at 0 it is off and stands in the way.</source>
        <translation>Von der vollen Drehzahl seines Datenblatts; bei 0 ist es aus und steht im Weg.</translation>
    </message>
    <message>
        <source>Of the gas for which the sheet states its heads: 1.2 for standard air at 20 °C, 0.83 for a sheet that holds at 150 °C.</source>
        <translation>Des Gases, für das das Blatt seine Förderhöhen nennt: 1,2 für normale Luft von 20 °C, 0,83 für ein Blatt, das bei 150 °C gilt.</translation>
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
        <source>On: shut. Off: the end stands open, air or smoke can pass it.</source>
        <translation>Auf: verschlossen. Ab: das Ende steht offen, Luft oder Rauch kann hindurch.</translation>
    </message>
    <message>
        <source>On: the branch is shut unless a piece is joined to it. Off: it stands open, air or smoke can pass it.</source>
        <translation>Auf: der Abzweig ist verschlossen, solange kein Teil daran sitzt. Ab: er steht offen, Luft oder Rauch kann hindurch.</translation>
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
        <source>Power</source>
        <translation>Leistung</translation>
    </message>
    <message>
        <source>Priming lid</source>
        <translation>Deckel zum Vorwärmen</translation>
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
        <translation>Runder Füllschacht</translation>
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
        <source>Run 1</source>
        <translation>Zug 1</translation>
    </message>
    <message>
        <source>Run 2</source>
        <translation>Zug 2</translation>
    </message>
    <message>
        <source>Run 3</source>
        <translation>Zug 3</translation>
    </message>
    <message>
        <source>Run 4</source>
        <translation>Zug 4</translation>
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
        <source>Share of the flap&apos;s area that is open while it is shut.</source>
        <translation>Anteil der Klappenfläche, der offen ist, wenn sie zu ist.</translation>
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
        <source>Short way past the bench with a blade in it, from one tee to another.</source>
        <translation>Kurzer Weg an der Bank vorbei mit einer Drosselklappe darin, von einem T-Stück zum anderen.</translation>
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
        <source>Small bench, 150 mm</source>
        <translation>Kleine Bank, 150 mm</translation>
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
        <source>Stove pipe</source>
        <translation>Ofenrohr</translation>
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
        <source>Tee before the bench</source>
        <translation>T-Stück vor der Bank</translation>
    </message>
    <message>
        <source>Tee behind the bench</source>
        <translation>T-Stück hinter der Bank</translation>
    </message>
    <message>
        <source>Tee in the run with a lid on its branch: where soot and fly ash come out, and where a priming fire is lit with the lid off.</source>
        <translation>T-Stück im Strang mit einem Deckel auf dem Abzweig: hier kommen Ruß und Flugasche heraus, und hier wird bei abgenommenem Deckel ein Vorwärmfeuer gemacht.</translation>
    </message>
    <message>
        <source>The floor carries</source>
        <translation>Der Boden trägt</translation>
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
        <source>Through the attic</source>
        <translation>Durch den Dachraum</translation>
    </message>
    <message>
        <source>Through the ceiling</source>
        <translation>Durch die Decke</translation>
    </message>
    <message>
        <source>Through the fan at that head; the first point of a curve stands at no flow.</source>
        <translation>Durch das Gebläse bei dieser Förderhöhe; der erste Punkt einer Kennlinie hat keinen Strom.</translation>
    </message>
    <message>
        <source>Through the glazing</source>
        <translation>Durch die Verglasung</translation>
    </message>
    <message>
        <source>Through the roof</source>
        <translation>Durch das Dach</translation>
    </message>
    <message>
        <source>Through the wall</source>
        <translation>Durch die Wand</translation>
    </message>
    <message>
        <source>To the wall</source>
        <translation>Zur Wand</translation>
    </message>
    <message>
        <source>Tunnel wall; the ground is said below.</source>
        <translation>Kanalwand; das Erdreich steht unten.</translation>
    </message>
    <message>
        <source>Turn 1, first quarter</source>
        <translation>Bogen 1, erstes Viertel</translation>
    </message>
    <message>
        <source>Turn 1, second quarter</source>
        <translation>Bogen 1, zweites Viertel</translation>
    </message>
    <message>
        <source>Turn 2, first quarter</source>
        <translation>Bogen 2, erstes Viertel</translation>
    </message>
    <message>
        <source>Turn 2, second quarter</source>
        <translation>Bogen 2, zweites Viertel</translation>
    </message>
    <message>
        <source>Turn 3, first quarter</source>
        <translation>Bogen 3, erstes Viertel</translation>
    </message>
    <message>
        <source>Turn 3, second quarter</source>
        <translation>Bogen 3, zweites Viertel</translation>
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
        <source>Under the path, first half</source>
        <translation>Unter dem Weg, erste Hälfte</translation>
    </message>
    <message>
        <source>Under the path, second half</source>
        <translation>Unter dem Weg, zweite Hälfte</translation>
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
        <source>Velocity heads of the bore that the fan takes while it is off: large with blades and motor in the way, near nought for a blade at the side.</source>
        <translation>Staudrücke der lichten Weite, die das Gebläse nimmt, wenn es aus ist: groß mit Flügeln und Motor im Weg, fast nichts für ein Flügelrad an der Seite.</translation>
    </message>
    <message>
        <source>Velocity heads that the cap takes beyond the free exit.</source>
        <translation>Staudrücke, die die Haube über den freien Austritt hinaus kostet.</translation>
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
        <source>Weighted flap in the stack&apos;s side that lets in room air above its set draft, so that a strong day pulls no harder at the fire.</source>
        <translation>Beschwerte Klappe in der Seite des Schornsteins, die über ihrem eingestellten Zug Raumluft einlässt, damit ein starker Tag nicht stärker am Feuer zieht.</translation>
    </message>
    <message>
        <source>What burns. Woods differ little by weight; wetness differs much.</source>
        <translation>Was brennt. Hölzer unterscheiden sich je Gewicht wenig; die Nässe viel.</translation>
    </message>
    <message>
        <source>What is outside its wall and beyond the crack: the room, or outdoor air.</source>
        <translation>Was außerhalb seiner Wand und jenseits des Risses ist: der Raum oder die Außenluft.</translation>
    </message>
    <message>
        <source>What is outside its wall, and what it opens to with the lid off: the room, or outdoor air.</source>
        <translation>Was außerhalb seiner Wand ist, und wohin es sich ohne Deckel öffnet: der Raum oder die Außenluft.</translation>
    </message>
    <message>
        <source>What is outside its wall.</source>
        <translation>Was außerhalb seiner Wand ist.</translation>
    </message>
    <message>
        <source>What the fan raises the pressure by at that flow and full speed.</source>
        <translation>Um wie viel das Gebläse den Druck bei diesem Strom und voller Drehzahl hebt.</translation>
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
        <source>Whether there is one in the heater&apos;s room and outside every bedroom.</source>
        <translation>Ob es einen im Raum des Ofens und vor jedem Schlafzimmer gibt.</translation>
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
        <source>Wide open above</source>
        <translation>Ganz offen ab</translation>
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
        <source>Wood as fired, at full burn: weigh an hour&apos;s wood, or take the usual value of the bore.</source>
        <translation>Holz wie verfeuert, bei vollem Brand: das Holz einer Stunde wiegen oder den üblichen Wert der Weite nehmen.</translation>
    </message>
    <message>
        <source>Wye</source>
        <translation>Y-Stück</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>attic</source>
        <translation>Dachraum</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>Bank</translation>
    </message>
    <message>
        <source>beyond validity</source>
        <translation>außerhalb der Gültigkeit</translation>
    </message>
    <message>
        <source>bore mismatch</source>
        <translation>Weiten passen nicht</translation>
    </message>
    <message>
        <source>branch blows out</source>
        <translation>Abzweig bläst aus</translation>
    </message>
    <message>
        <source>branch draws air</source>
        <translation>Abzweig zieht Luft</translation>
    </message>
    <message>
        <source>branch smokes</source>
        <translation>Abzweig raucht</translation>
    </message>
    <message>
        <source>can run backwards</source>
        <translation>kann rückwärts laufen</translation>
    </message>
    <message>
        <source>cardboard</source>
        <translation>Pappe</translation>
    </message>
    <message>
        <source>choke inlet</source>
        <translation>Einlass drosseln</translation>
    </message>
    <message>
        <source>clash</source>
        <translation>Zusammenstoß</translation>
    </message>
    <message>
        <source>crumpled newspaper</source>
        <translation>zerknüllte Zeitung</translation>
    </message>
    <message>
        <source>dry kindling</source>
        <translation>trockenes Kleinholz</translation>
    </message>
    <message>
        <source>duct</source>
        <translation>Leitung</translation>
    </message>
    <message>
        <source>duplicate id</source>
        <translation>doppelte Kennung</translation>
    </message>
    <message>
        <source>entry</source>
        <translation>am Eingang</translation>
    </message>
    <message>
        <source>exit too hot</source>
        <translation>Austritt zu heiß</translation>
    </message>
    <message>
        <source>fan against flow</source>
        <translation>Gebläse gegen den Strom</translation>
    </message>
    <message>
        <source>fan beyond sheet</source>
        <translation>jenseits des Blatts</translation>
    </message>
    <message>
        <source>fan curve</source>
        <translation>Kennlinie</translation>
    </message>
    <message>
        <source>fan curve rises</source>
        <translation>Kennlinie steigt</translation>
    </message>
    <message>
        <source>fan dependent</source>
        <translation>hängt am Gebläse</translation>
    </message>
    <message>
        <source>fan gas too hot</source>
        <translation>Gas am Gebläse zu heiß</translation>
    </message>
    <message>
        <source>fan motor too hot</source>
        <translation>Motor zu heiß</translation>
    </message>
    <message>
        <source>fan motor wet</source>
        <translation>Motor nass</translation>
    </message>
    <message>
        <source>far</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>flap opens</source>
        <translation>Klappe öffnet</translation>
    </message>
    <message>
        <source>floor overloaded</source>
        <translation>Boden überlastet</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Lücke</translation>
    </message>
    <message>
        <source>gas too fast</source>
        <translation>Gas zu schnell</translation>
    </message>
    <message>
        <source>gas too slow</source>
        <translation>Gas zu langsam</translation>
    </message>
    <message>
        <source>ground</source>
        <translation>Erdreich</translation>
    </message>
    <message>
        <source>hidden single wall</source>
        <translation>verdeckte einfache Wand</translation>
    </message>
    <message>
        <source>house suction</source>
        <translation>Unterdruck im Haus</translation>
    </message>
    <message>
        <source>in</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>joined to air</source>
        <translation>an Luft angeschlossen</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>nicht gerechnet</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>Ring</translation>
    </message>
    <message>
        <source>low outlet</source>
        <translation>Mündung zu niedrig</translation>
    </message>
    <message>
        <source>missing cleanout</source>
        <translation>Reinigungsöffnung fehlt</translation>
    </message>
    <message>
        <source>narrowing</source>
        <translation>Engstelle</translation>
    </message>
    <message>
        <source>near combustibles</source>
        <translation>nahe an Brennbarem</translation>
    </message>
    <message>
        <source>never draws forward</source>
        <translation>zieht nie vorwärts</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>no alarm note</source>
        <translation>kein Melder genannt</translation>
    </message>
    <message>
        <source>no fire</source>
        <translation>kein Feuer</translation>
    </message>
    <message>
        <source>no inlet</source>
        <translation>kein Einlass</translation>
    </message>
    <message>
        <source>no outlet</source>
        <translation>kein Ausgang</translation>
    </message>
    <message>
        <source>no pieces</source>
        <translation>keine Teile</translation>
    </message>
    <message>
        <source>on</source>
        <translation>auf</translation>
    </message>
    <message>
        <source>open end</source>
        <translation>offenes Ende</translation>
    </message>
    <message>
        <source>out</source>
        <translation>Ausgang</translation>
    </message>
    <message>
        <source>out of range</source>
        <translation>außerhalb des Zulässigen</translation>
    </message>
    <message>
        <source>overdrawn</source>
        <translation>zu viel Luft</translation>
    </message>
    <message>
        <source>port taken</source>
        <translation>Anschluss belegt</translation>
    </message>
    <message>
        <source>relation left</source>
        <translation>Bereich der Beziehung verlassen</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>round figures of the building trade, no source</source>
        <translation>runde Zahlen des Baugewerbes, keine Quelle</translation>
    </message>
    <message>
        <source>seat too hot</source>
        <translation>Sitz zu heiß</translation>
    </message>
    <message>
        <source>several fires</source>
        <translation>mehrere Feuer</translation>
    </message>
    <message>
        <source>several inlets</source>
        <translation>mehrere Einlässe</translation>
    </message>
    <message>
        <source>several outlets</source>
        <translation>mehrere Ausgänge</translation>
    </message>
    <message>
        <source>smoke leak</source>
        <translation>Rauchaustritt</translation>
    </message>
    <message>
        <source>through house</source>
        <translation>durch das Haus</translation>
    </message>
    <message>
        <source>unknown fan</source>
        <translation>unbekanntes Gebläse</translation>
    </message>
    <message>
        <source>unknown material</source>
        <translation>unbekanntes Material</translation>
    </message>
    <message>
        <source>unknown port</source>
        <translation>unbekannter Anschluss</translation>
    </message>
    <message>
        <source>unknown type</source>
        <translation>unbekannte Art</translation>
    </message>
    <message>
        <source>unknown wall</source>
        <translation>unbekannte Wand</translation>
    </message>
    <message>
        <source>unknown wood</source>
        <translation>unbekanntes Holz</translation>
    </message>
    <message>
        <source>unreached</source>
        <translation>nicht auf dem Weg</translation>
    </message>
    <message>
        <source>unsolved</source>
        <translation>ungelöst</translation>
    </message>
    <message>
        <source>wall layers</source>
        <translation>Schichten der Wand</translation>
    </message>
    <message>
        <source>water pools</source>
        <translation>Wasser sammelt sich</translation>
    </message>
    <message>
        <source>waxed cardboard</source>
        <translation>gewachste Pappe</translation>
    </message>
    <message>
        <source>wet wall</source>
        <translation>nasse Wand</translation>
    </message>
    <message>
        <source>wrong fall</source>
        <translation>falsches Gefälle</translation>
    </message>
    <message>
        <source>wrong kind</source>
        <translation>falsche Art</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>shut</source>
        <translation>zu</translation>
    </message>
    <message>
        <source>{} open</source>
        <translation>{} offen</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>E</source>
        <translation>O</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Balance at that flow</source>
        <translation>Gleichgewicht bei diesem Strom</translation>
    </message>
    <message>
        <source>Beside the walk&apos;s own row</source>
        <translation>Neben der Zeile des Durchgangs</translation>
    </message>
    <message>
        <source>Darcy friction factor</source>
        <translation>Reibungszahl nach Darcy</translation>
    </message>
    <message>
        <source>Draft before anything burns</source>
        <translation>Zug, bevor etwas brennt</translation>
    </message>
    <message>
        <source>Ends of the path</source>
        <translation>Enden des Weges</translation>
    </message>
    <message>
        <source>Ends that are open to the air</source>
        <translation>Enden, die zur Luft offen sind</translation>
    </message>
    <message>
        <source>Film inside</source>
        <translation>Übergang innen</translation>
    </message>
    <message>
        <source>Film outside</source>
        <translation>Übergang außen</translation>
    </message>
    <message>
        <source>Fire in the gas&apos;s way</source>
        <translation>Feuer im Weg des Gases</translation>
    </message>
    <message>
        <source>From the fire to the cap</source>
        <translation>Vom Feuer zur Haube</translation>
    </message>
    <message>
        <source>Graetz number</source>
        <translation>Graetz-Zahl</translation>
    </message>
    <message>
        <source>Lewis number</source>
        <translation>Lewis-Zahl</translation>
    </message>
    <message>
        <source>Nusselt number across a cylinder</source>
        <translation>Nusselt-Zahl quer über einen Zylinder</translation>
    </message>
    <message>
        <source>Nusselt number of free convection on a level cylinder</source>
        <translation>Nusselt-Zahl freier Konvektion an einem liegenden Zylinder</translation>
    </message>
    <message>
        <source>Nusselt number of free convection on a seat facing up</source>
        <translation>Nusselt-Zahl freier Konvektion an einer nach oben zeigenden Sitzfläche</translation>
    </message>
    <message>
        <source>Nusselt number of free convection on an upright wall</source>
        <translation>Nusselt-Zahl freier Konvektion an einer senkrechten Wand</translation>
    </message>
    <message>
        <source>Nusselt number, laminar</source>
        <translation>Nusselt-Zahl, laminar</translation>
    </message>
    <message>
        <source>Nusselt number, turbulent, far from the entry</source>
        <translation>Nusselt-Zahl, turbulent, fern vom Eintritt</translation>
    </message>
    <message>
        <source>Piece by piece</source>
        <translation>Teil für Teil</translation>
    </message>
    <message>
        <source>Prandtl number</source>
        <translation>Prandtl-Zahl</translation>
    </message>
    <message>
        <source>Prandtl number there</source>
        <translation>Prandtl-Zahl dort</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Rayleigh number</source>
        <translation>Rayleigh-Zahl</translation>
    </message>
    <message>
        <source>Reynolds number</source>
        <translation>Reynolds-Zahl</translation>
    </message>
    <message>
        <source>Reynolds number across the pipe</source>
        <translation>Reynolds-Zahl quer zum Rohr</translation>
    </message>
    <message>
        <source>S_E, it is a loss</source>
        <translation>S_E, es ist ein Verlust</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Side branches</source>
        <translation>Seitenabzweige</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Schornstein</translation>
    </message>
    <message>
        <source>Stretch by stretch</source>
        <translation>Strecke für Strecke</translation>
    </message>
    <message>
        <source>The whole piece</source>
        <translation>Das ganze Teil</translation>
    </message>
    <message>
        <source>What flows in this branch</source>
        <translation>Was in diesem Abzweig strömt</translation>
    </message>
    <message>
        <source>Wood and fire</source>
        <translation>Holz und Feuer</translation>
    </message>
    <message>
        <source>absolute pressure</source>
        <translation>absoluter Druck</translation>
    </message>
    <message>
        <source>acceleration in the piece</source>
        <translation>Beschleunigung im Teil</translation>
    </message>
    <message>
        <source>added over its slices</source>
        <translation>über seine Scheiben summiert</translation>
    </message>
    <message>
        <source>added over the branch&apos;s slices</source>
        <translation>über die Scheiben des Abzweigs summiert</translation>
    </message>
    <message>
        <source>added over the piece&apos;s slices</source>
        <translation>über die Scheiben des Teils summiert</translation>
    </message>
    <message>
        <source>air does not radiate</source>
        <translation>Luft strahlt nicht</translation>
    </message>
    <message>
        <source>air that comes in</source>
        <translation>Luft, die eintritt</translation>
    </message>
    <message>
        <source>air that reaches the fire</source>
        <translation>Luft, die das Feuer erreicht</translation>
    </message>
    <message>
        <source>all that lies behind the inner face</source>
        <translation>alles hinter der Innenseite</translation>
    </message>
    <message>
        <source>allowance for wind</source>
        <translation>Zuschlag für Wind</translation>
    </message>
    <message>
        <source>altitude</source>
        <translation>Meereshöhe</translation>
    </message>
    <message>
        <source>area over perimeter of the seat</source>
        <translation>Fläche durch Umfang des Sitzes</translation>
    </message>
    <message>
        <source>argon by volume</source>
        <translation>Argon nach Volumen</translation>
    </message>
    <message>
        <source>as it has mixed where the branches meet, by the balance of each gas</source>
        <translation>wie es sich gemischt hat, wo die Abzweige zusammenkommen, nach der Bilanz jedes Gases</translation>
    </message>
    <message>
        <source>as the slice before leaves it</source>
        <translation>wie die Scheibe davor es verlässt</translation>
    </message>
    <message>
        <source>as wanted</source>
        <translation>wie gewünscht</translation>
    </message>
    <message>
        <source>ash, share of the dry wood</source>
        <translation>Asche, Anteil am trockenen Holz</translation>
    </message>
    <message>
        <source>behind the junction</source>
        <translation>hinter der Vereinigung</translation>
    </message>
    <message>
        <source>between laminar and turbulent</source>
        <translation>zwischen laminar und turbulent</translation>
    </message>
    <message>
        <source>blade</source>
        <translation>Klappe</translation>
    </message>
    <message>
        <source>bore</source>
        <translation>lichte Weite</translation>
    </message>
    <message>
        <source>bore that the resistances refer to</source>
        <translation>lichte Weite, auf die sich die Widerstände beziehen</translation>
    </message>
    <message>
        <source>both together</source>
        <translation>beide zusammen</translation>
    </message>
    <message>
        <source>buoyancy</source>
        <translation>Auftrieb</translation>
    </message>
    <message>
        <source>buoyancy in the piece</source>
        <translation>Auftrieb im Teil</translation>
    </message>
    <message>
        <source>buoyancy of the air that stands in it</source>
        <translation>Auftrieb der Luft, die darin steht</translation>
    </message>
    <message>
        <source>by polynomial</source>
        <translation>nach Polynom</translation>
    </message>
    <message>
        <source>by polynomial, from the enthalpies at both ends</source>
        <translation>nach Polynom, aus den Enthalpien an beiden Enden</translation>
    </message>
    <message>
        <source>by polynomial, mixed by mole fraction</source>
        <translation>nach Polynom, nach Molanteil gemischt</translation>
    </message>
    <message>
        <source>by polynomial, of the gas the branch carries</source>
        <translation>nach Polynom, des Gases im Abzweig</translation>
    </message>
    <message>
        <source>by polynomial: (h(T_in) - h(T_L)) / (T_in - T_L)</source>
        <translation>nach Polynom: (h(T_in) - h(T_L)) / (T_in - T_L)</translation>
    </message>
    <message>
        <source>by polynomial: (h(T_in) - h(T_out)) / (T_in - T_out)</source>
        <translation>nach Polynom: (h(T_in) - h(T_out)) / (T_in - T_out)</translation>
    </message>
    <message>
        <source>by polynomial: the temperature at which the gas holds that enthalpy</source>
        <translation>nach Polynom: die Temperatur, bei der das Gas diese Enthalpie hat</translation>
    </message>
    <message>
        <source>by polynomial: the temperature at which the mixed gas holds that enthalpy</source>
        <translation>nach Polynom: die Temperatur, bei der das Gemisch diese Enthalpie hat</translation>
    </message>
    <message>
        <source>by polynomial: weighted sum of grey gases</source>
        <translation>nach Polynom: gewichtete Summe grauer Gase</translation>
    </message>
    <message>
        <source>by table</source>
        <translation>nach Tabelle</translation>
    </message>
    <message>
        <source>by the published equation</source>
        <translation>nach der veröffentlichten Gleichung</translation>
    </message>
    <message>
        <source>by the same polynomial at T_w</source>
        <translation>nach demselben Polynom bei T_w</translation>
    </message>
    <message>
        <source>carbon dioxide by volume</source>
        <translation>Kohlendioxid nach Volumen</translation>
    </message>
    <message>
        <source>carbon in a kilogram of wood, and the CO2 it makes</source>
        <translation>Kohlenstoff in einem Kilogramm Holz und das CO2 daraus</translation>
    </message>
    <message>
        <source>carbon, share of the dry, ash-free wood</source>
        <translation>Kohlenstoff, Anteil am trockenen, aschefreien Holz</translation>
    </message>
    <message>
        <source>centre line under the surface</source>
        <translation>Mittellinie unter der Oberfläche</translation>
    </message>
    <message>
        <source>conduction shape factor, per metre of run</source>
        <translation>Formfaktor der Wärmeleitung, je Meter Strang</translation>
    </message>
    <message>
        <source>conductivity</source>
        <translation>Wärmeleitfähigkeit</translation>
    </message>
    <message>
        <source>conductivity there</source>
        <translation>Wärmeleitfähigkeit dort</translation>
    </message>
    <message>
        <source>convective film</source>
        <translation>konvektiver Übergang</translation>
    </message>
    <message>
        <source>density</source>
        <translation>Dichte</translation>
    </message>
    <message>
        <source>density of dry air there</source>
        <translation>Dichte trockener Luft dort</translation>
    </message>
    <message>
        <source>density of the outdoor air</source>
        <translation>Dichte der Außenluft</translation>
    </message>
    <message>
        <source>density of the room air</source>
        <translation>Dichte der Raumluft</translation>
    </message>
    <message>
        <source>density of vapour alone there</source>
        <translation>Dichte des Dampfs allein dort</translation>
    </message>
    <message>
        <source>density on entering</source>
        <translation>Dichte beim Eintritt</translation>
    </message>
    <message>
        <source>density on leaving</source>
        <translation>Dichte beim Austritt</translation>
    </message>
    <message>
        <source>density there</source>
        <translation>Dichte dort</translation>
    </message>
    <message>
        <source>depth with the film turned into cover</source>
        <translation>Tiefe, der Übergang in Überdeckung umgerechnet</translation>
    </message>
    <message>
        <source>diameter over that length</source>
        <translation>Durchmesser auf dieser Länge</translation>
    </message>
    <message>
        <source>diffusivity of vapour there</source>
        <translation>Diffusionskoeffizient von Dampf dort</translation>
    </message>
    <message>
        <source>draft to spare</source>
        <translation>Zugreserve</translation>
    </message>
    <message>
        <source>draft to spare while the fans run</source>
        <translation>Zugreserve bei laufenden Gebläsen</translation>
    </message>
    <message>
        <source>dry air that just burns a kilogram of wood</source>
        <translation>trockene Luft, die ein Kilogramm Holz gerade verbrennt</translation>
    </message>
    <message>
        <source>dry, ash-free share of the wood as fired</source>
        <translation>trockener, aschefreier Anteil des Holzes wie verfeuert</translation>
    </message>
    <message>
        <source>emissivity of the gas</source>
        <translation>Emissionsgrad des Gases</translation>
    </message>
    <message>
        <source>emissivity of the outer face</source>
        <translation>Emissionsgrad der Außenseite</translation>
    </message>
    <message>
        <source>emissivity of the sooted wall</source>
        <translation>Emissionsgrad der verrußten Wand</translation>
    </message>
    <message>
        <source>enthalpy of the air that came in</source>
        <translation>Enthalpie der eingetretenen Luft</translation>
    </message>
    <message>
        <source>enthalpy of the flue gas</source>
        <translation>Enthalpie des Abgases</translation>
    </message>
    <message>
        <source>enthalpy of the gas that leaves</source>
        <translation>Enthalpie des austretenden Gases</translation>
    </message>
    <message>
        <source>enthalpy of what has mixed</source>
        <translation>Enthalpie des Gemischten</translation>
    </message>
    <message>
        <source>excess air</source>
        <translation>Luftüberschuss</translation>
    </message>
    <message>
        <source>excess-air ratio</source>
        <translation>Luftverhältnis</translation>
    </message>
    <message>
        <source>fall of the gas&apos;s temperature</source>
        <translation>Abfall der Gastemperatur</translation>
    </message>
    <message>
        <source>film inside</source>
        <translation>Übergang innen</translation>
    </message>
    <message>
        <source>film inside as a resistance</source>
        <translation>Übergang innen als Widerstand</translation>
    </message>
    <message>
        <source>film of its radiation</source>
        <translation>Übergang seiner Strahlung</translation>
    </message>
    <message>
        <source>film of the gas around the riser</source>
        <translation>Übergang des Gases um das Steigrohr</translation>
    </message>
    <message>
        <source>film of the gas&apos;s radiation</source>
        <translation>Übergang der Strahlung des Gases</translation>
    </message>
    <message>
        <source>film of the wind</source>
        <translation>Übergang durch Wind</translation>
    </message>
    <message>
        <source>film on the ground</source>
        <translation>Übergang zum Erdreich</translation>
    </message>
    <message>
        <source>film outside</source>
        <translation>Übergang außen</translation>
    </message>
    <message>
        <source>film outside, on the inner face</source>
        <translation>Übergang außen, auf die Innenseite bezogen</translation>
    </message>
    <message>
        <source>flow of the exhaust fans</source>
        <translation>Strom der Ablüfter</translation>
    </message>
    <message>
        <source>flow through it reduced to full speed</source>
        <translation>Strom hindurch, auf volle Drehzahl bezogen</translation>
    </message>
    <message>
        <source>flow through the fan</source>
        <translation>Strom durch das Gebläse</translation>
    </message>
    <message>
        <source>flue gas</source>
        <translation>Abgas</translation>
    </message>
    <message>
        <source>flue gas of a kilogram of wood</source>
        <translation>Abgas eines Kilogramms Holz</translation>
    </message>
    <message>
        <source>flue gas that leaves it</source>
        <translation>Abgas, das es verlässt</translation>
    </message>
    <message>
        <source>forced film</source>
        <translation>Übergang erzwungener Konvektion</translation>
    </message>
    <message>
        <source>found by repetition; it comes back at the end of the heat</source>
        <translation>durch Wiederholung gefunden; sie kehrt am Ende der Wärme wieder</translation>
    </message>
    <message>
        <source>free area</source>
        <translation>freier Querschnitt</translation>
    </message>
    <message>
        <source>free area before the step</source>
        <translation>freier Querschnitt vor dem Sprung</translation>
    </message>
    <message>
        <source>free film</source>
        <translation>Übergang freier Konvektion</translation>
    </message>
    <message>
        <source>friction and fittings in the piece</source>
        <translation>Reibung und Formstücke im Teil</translation>
    </message>
    <message>
        <source>from gas to surroundings</source>
        <translation>vom Gas zur Umgebung</translation>
    </message>
    <message>
        <source>from the balance of flows and pressures</source>
        <translation>aus der Bilanz der Ströme und Drücke</translation>
    </message>
    <message>
        <source>gas above that level on entering</source>
        <translation>Gas über diesem Niveau beim Eintritt</translation>
    </message>
    <message>
        <source>gas above the wall&apos;s inner face</source>
        <translation>Gas über der Innenseite der Wand</translation>
    </message>
    <message>
        <source>gas at the cap</source>
        <translation>Gas an der Haube</translation>
    </message>
    <message>
        <source>gas behind the fire</source>
        <translation>Gas hinter dem Feuer</translation>
    </message>
    <message>
        <source>gas constant of that air</source>
        <translation>Gaskonstante dieser Luft</translation>
    </message>
    <message>
        <source>gas constant of the gas</source>
        <translation>Gaskonstante des Gases</translation>
    </message>
    <message>
        <source>gas density for which its sheet holds</source>
        <translation>Gasdichte, für die sein Blatt gilt</translation>
    </message>
    <message>
        <source>gas in the branch</source>
        <translation>Gas im Abzweig</translation>
    </message>
    <message>
        <source>gas that comes in, as it has mixed</source>
        <translation>eintretendes Gas, wie es sich gemischt hat</translation>
    </message>
    <message>
        <source>gas that enters the slice</source>
        <translation>Gas, das in die Scheibe eintritt</translation>
    </message>
    <message>
        <source>gas that goes out</source>
        <translation>Gas, das hinausgeht</translation>
    </message>
    <message>
        <source>gas that leaves it</source>
        <translation>Gas, das es verlässt</translation>
    </message>
    <message>
        <source>gas that leaves the branch</source>
        <translation>Gas, das den Abzweig verlässt</translation>
    </message>
    <message>
        <source>gas that leaves the piece</source>
        <translation>Gas, das das Teil verlässt</translation>
    </message>
    <message>
        <source>gas that leaves the slice</source>
        <translation>Gas, das die Scheibe verlässt</translation>
    </message>
    <message>
        <source>gas that leaves the slice, as the walk has it</source>
        <translation>Gas, das die Scheibe verlässt, nach dem Durchgang</translation>
    </message>
    <message>
        <source>gas that passes</source>
        <translation>Gas, das hindurchgeht</translation>
    </message>
    <message>
        <source>gas, mean over the slice</source>
        <translation>Gas, Mittel über die Scheibe</translation>
    </message>
    <message>
        <source>gauge and velocity head on entering</source>
        <translation>Überdruck und Staudruck beim Eintritt</translation>
    </message>
    <message>
        <source>gauge of the room at that height</source>
        <translation>Überdruck des Raums in dieser Höhe</translation>
    </message>
    <message>
        <source>gauge of the room at the inlet</source>
        <translation>Überdruck des Raums am Einlass</translation>
    </message>
    <message>
        <source>gauge of the wind at the cap</source>
        <translation>Überdruck des Windes an der Haube</translation>
    </message>
    <message>
        <source>gauge pressure on leaving</source>
        <translation>Überdruck beim Austritt</translation>
    </message>
    <message>
        <source>head of the sheet at that flow</source>
        <translation>Förderhöhe des Blatts bei diesem Strom</translation>
    </message>
    <message>
        <source>heat added to the gas</source>
        <translation>dem Gas zugeführte Wärme</translation>
    </message>
    <message>
        <source>heat capacity</source>
        <translation>Wärmekapazität</translation>
    </message>
    <message>
        <source>heat capacity there</source>
        <translation>Wärmekapazität dort</translation>
    </message>
    <message>
        <source>heat capacity, mean from T_L to T_in</source>
        <translation>Wärmekapazität, Mittel von T_L bis T_in</translation>
    </message>
    <message>
        <source>heat capacity, mean over the piece</source>
        <translation>Wärmekapazität, Mittel über das Teil</translation>
    </message>
    <message>
        <source>heat capacity, mean over the slice</source>
        <translation>Wärmekapazität, Mittel über die Scheibe</translation>
    </message>
    <message>
        <source>heat put in by the riser within</source>
        <translation>vom Steigrohr darin zugeführte Wärme</translation>
    </message>
    <message>
        <source>heat released</source>
        <translation>freigesetzte Wärme</translation>
    </message>
    <message>
        <source>heat that leaves with the gas, above the air that came in</source>
        <translation>Wärme, die mit dem Gas geht, über der eingetretenen Luft</translation>
    </message>
    <message>
        <source>heat the gas loses</source>
        <translation>Wärme, die das Gas verliert</translation>
    </message>
    <message>
        <source>heat the gas loses in the branch</source>
        <translation>Wärme, die das Gas im Abzweig verliert</translation>
    </message>
    <message>
        <source>heat the gas loses in the piece</source>
        <translation>Wärme, die das Gas im Teil verliert</translation>
    </message>
    <message>
        <source>heat through its walls</source>
        <translation>Wärme durch seine Wände</translation>
    </message>
    <message>
        <source>heat through the inner face</source>
        <translation>Wärme durch die Innenseite</translation>
    </message>
    <message>
        <source>heat through the wall</source>
        <translation>Wärme durch die Wand</translation>
    </message>
    <message>
        <source>heat through the wall, as the walk has it</source>
        <translation>Wärme durch die Wand, nach dem Durchgang</translation>
    </message>
    <message>
        <source>height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>height of the chamber</source>
        <translation>Höhe der Kammer</translation>
    </message>
    <message>
        <source>height of the inlet above the floor</source>
        <translation>Höhe des Einlasses über dem Boden</translation>
    </message>
    <message>
        <source>height of the mass</source>
        <translation>Höhe der Masse</translation>
    </message>
    <message>
        <source>height of the slice&apos;s end above the floor</source>
        <translation>Höhe des Scheibenendes über dem Boden</translation>
    </message>
    <message>
        <source>height of the wall</source>
        <translation>Höhe der Wand</translation>
    </message>
    <message>
        <source>how warm it is there</source>
        <translation>wie warm es dort ist</translation>
    </message>
    <message>
        <source>hydraulic diameter</source>
        <translation>hydraulischer Durchmesser</translation>
    </message>
    <message>
        <source>hydrogen, likewise</source>
        <translation>Wasserstoff, ebenso</translation>
    </message>
    <message>
        <source>inner face above the dew point: wet where this is not positive</source>
        <translation>Innenseite über dem Taupunkt: nass, wo das nicht positiv ist</translation>
    </message>
    <message>
        <source>inner face of the wall</source>
        <translation>Innenseite der Wand</translation>
    </message>
    <message>
        <source>inner face, as the walk has it</source>
        <translation>Innenseite, nach dem Durchgang</translation>
    </message>
    <message>
        <source>inside diameter of the jacket</source>
        <translation>Innendurchmesser des Mantels</translation>
    </message>
    <message>
        <source>its gas there</source>
        <translation>sein Gas dort</translation>
    </message>
    <message>
        <source>its partial pressure here</source>
        <translation>sein Teildruck hier</translation>
    </message>
    <message>
        <source>its temperature</source>
        <translation>seine Temperatur</translation>
    </message>
    <message>
        <source>layers of the wall</source>
        <translation>Schichten der Wand</translation>
    </message>
    <message>
        <source>length of the slice</source>
        <translation>Länge der Scheibe</translation>
    </message>
    <message>
        <source>level the gas tends to</source>
        <translation>Niveau, auf das das Gas zugeht</translation>
    </message>
    <message>
        <source>linear between the material&apos;s points</source>
        <translation>gerade zwischen den Punkten des Materials</translation>
    </message>
    <message>
        <source>loss at the mouth: the jet&apos;s velocity head, not in dp</source>
        <translation>Verlust an der Mündung: Staudruck des Strahls, nicht in dp</translation>
    </message>
    <message>
        <source>loss by acceleration</source>
        <translation>Verlust durch Beschleunigung</translation>
    </message>
    <message>
        <source>loss: acceleration</source>
        <translation>Verlust: Beschleunigung</translation>
    </message>
    <message>
        <source>loss: acceleration of the gas, negative where it cools</source>
        <translation>Verlust: Beschleunigung des Gases, negativ, wo es kühlt</translation>
    </message>
    <message>
        <source>loss: blade</source>
        <translation>Verlust: Klappe</translation>
    </message>
    <message>
        <source>loss: fittings, steps, entry and exit</source>
        <translation>Verlust: Formstücke, Sprünge, Eintritt und Austritt</translation>
    </message>
    <message>
        <source>loss: fittings, steps, entry and exit, and the junction before it</source>
        <translation>Verlust: Formstücke, Sprünge, Eintritt und Austritt, und die Vereinigung davor</translation>
    </message>
    <message>
        <source>loss: friction</source>
        <translation>Verlust: Reibung</translation>
    </message>
    <message>
        <source>loss: rain cap</source>
        <translation>Verlust: Regenhaube</translation>
    </message>
    <message>
        <source>loss: rim, when air comes down</source>
        <translation>Verlust: Rand, wenn Luft herabkommt</translation>
    </message>
    <message>
        <source>loss: step in area</source>
        <translation>Verlust: Sprung des Querschnitts</translation>
    </message>
    <message>
        <source>losses together</source>
        <translation>Verluste zusammen</translation>
    </message>
    <message>
        <source>mass flux</source>
        <translation>Massenstromdichte</translation>
    </message>
    <message>
        <source>mass transfer coefficient</source>
        <translation>Stoffübergangszahl</translation>
    </message>
    <message>
        <source>mean beam length</source>
        <translation>mittlere Strahlenlänge</translation>
    </message>
    <message>
        <source>mean of the slices around it, walked through until both agree</source>
        <translation>Mittel der Scheiben darum, durchgegangen, bis beide übereinstimmen</translation>
    </message>
    <message>
        <source>measured suction of the house</source>
        <translation>gemessener Unterdruck des Hauses</translation>
    </message>
    <message>
        <source>midway between gas and wall</source>
        <translation>mitten zwischen Gas und Wand</translation>
    </message>
    <message>
        <source>midway between outer face and surroundings</source>
        <translation>mitten zwischen Außenseite und Umgebung</translation>
    </message>
    <message>
        <source>moist air, with the vapour it brings</source>
        <translation>feuchte Luft mit ihrem Dampf</translation>
    </message>
    <message>
        <source>moisture, share of the wood as fired</source>
        <translation>Feuchte, Anteil am Holz wie verfeuert</translation>
    </message>
    <message>
        <source>molar mass of dry air</source>
        <translation>molare Masse trockener Luft</translation>
    </message>
    <message>
        <source>molar mass of the flue gas</source>
        <translation>molare Masse des Abgases</translation>
    </message>
    <message>
        <source>molar mass of the gas</source>
        <translation>molare Masse des Gases</translation>
    </message>
    <message>
        <source>molar mass of the moist air</source>
        <translation>molare Masse der feuchten Luft</translation>
    </message>
    <message>
        <source>net heating value as fired</source>
        <translation>Heizwert wie verfeuert</translation>
    </message>
    <message>
        <source>net heating value of the dry, ash-free wood</source>
        <translation>Heizwert des trockenen, aschefreien Holzes</translation>
    </message>
    <message>
        <source>neutral plane above the floor</source>
        <translation>neutrale Ebene über dem Boden</translation>
    </message>
    <message>
        <source>nitrogen by volume</source>
        <translation>Stickstoff nach Volumen</translation>
    </message>
    <message>
        <source>nitrogen in the wood</source>
        <translation>Stickstoff im Holz</translation>
    </message>
    <message>
        <source>nitrogen, likewise</source>
        <translation>Stickstoff, ebenso</translation>
    </message>
    <message>
        <source>none of its own</source>
        <translation>keine eigene</translation>
    </message>
    <message>
        <source>number of transfer units of the slice</source>
        <translation>Zahl der Übertragungseinheiten der Scheibe</translation>
    </message>
    <message>
        <source>outer face</source>
        <translation>Außenseite</translation>
    </message>
    <message>
        <source>outer face above T_b</source>
        <translation>Außenseite über T_b</translation>
    </message>
    <message>
        <source>outer face above it</source>
        <translation>Außenseite darüber</translation>
    </message>
    <message>
        <source>outside diameter</source>
        <translation>Außendurchmesser</translation>
    </message>
    <message>
        <source>outside diameter of the core</source>
        <translation>Außendurchmesser des Kerns</translation>
    </message>
    <message>
        <source>overall coefficient on the inner face</source>
        <translation>Wärmedurchgang auf die Innenseite</translation>
    </message>
    <message>
        <source>overall coefficient, as the walk has it</source>
        <translation>Wärmedurchgang, nach dem Durchgang</translation>
    </message>
    <message>
        <source>oxygen by volume</source>
        <translation>Sauerstoff nach Volumen</translation>
    </message>
    <message>
        <source>oxygen in dry air by volume</source>
        <translation>Sauerstoff in trockener Luft nach Volumen</translation>
    </message>
    <message>
        <source>oxygen needed from the air</source>
        <translation>Sauerstoff, den die Luft liefern muss</translation>
    </message>
    <message>
        <source>oxygen, likewise</source>
        <translation>Sauerstoff, ebenso</translation>
    </message>
    <message>
        <source>partial pressure of the CO2 that the fire has put into it</source>
        <translation>Teildruck des CO2, das das Feuer hineingebracht hat</translation>
    </message>
    <message>
        <source>partial pressure of the vapour</source>
        <translation>Teildruck des Dampfs</translation>
    </message>
    <message>
        <source>partial pressure of the vapour that the fire has put into it</source>
        <translation>Teildruck des Dampfs, den das Feuer hineingebracht hat</translation>
    </message>
    <message>
        <source>path above room: smoke leaks out where this is positive</source>
        <translation>Weg über Raum: Rauch tritt aus, wo das positiv ist</translation>
    </message>
    <message>
        <source>perimeter that gives heat away</source>
        <translation>Umfang, der Wärme abgibt</translation>
    </message>
    <message>
        <source>perimeter that gives heat away: the outer one</source>
        <translation>Umfang, der Wärme abgibt: der äußere</translation>
    </message>
    <message>
        <source>rain cap</source>
        <translation>Regenhaube</translation>
    </message>
    <message>
        <source>raised by fans</source>
        <translation>von Gebläsen gehoben</translation>
    </message>
    <message>
        <source>raised by its fan</source>
        <translation>von seinem Gebläse gehoben</translation>
    </message>
    <message>
        <source>raised by the fan</source>
        <translation>vom Gebläse gehoben</translation>
    </message>
    <message>
        <source>raised by the fan of the piece</source>
        <translation>vom Gebläse des Teils gehoben</translation>
    </message>
    <message>
        <source>relative humidity of the outdoor air</source>
        <translation>relative Feuchte der Außenluft</translation>
    </message>
    <message>
        <source>relative humidity of the room air</source>
        <translation>relative Feuchte der Raumluft</translation>
    </message>
    <message>
        <source>relative roughness</source>
        <translation>relative Rauheit</translation>
    </message>
    <message>
        <source>resistance of friction and fittings</source>
        <translation>Widerstand von Reibung und Formstücken</translation>
    </message>
    <message>
        <source>rim, when air comes down</source>
        <translation>Rand, wenn Luft herabkommt</translation>
    </message>
    <message>
        <source>rise of the slice</source>
        <translation>Steigung der Scheibe</translation>
    </message>
    <message>
        <source>rise of the stretch</source>
        <translation>Steigung der Strecke</translation>
    </message>
    <message>
        <source>rough and turbulent part</source>
        <translation>rauer, turbulenter Teil</translation>
    </message>
    <message>
        <source>roughness</source>
        <translation>Rauheit</translation>
    </message>
    <message>
        <source>safety on the acceleration</source>
        <translation>Sicherheit auf die Beschleunigung</translation>
    </message>
    <message>
        <source>safety on the resistance</source>
        <translation>Sicherheit auf den Widerstand</translation>
    </message>
    <message>
        <source>saturation pressure at T_o</source>
        <translation>Sättigungsdruck bei T_o</translation>
    </message>
    <message>
        <source>saturation pressure at T_r</source>
        <translation>Sättigungsdruck bei T_r</translation>
    </message>
    <message>
        <source>saturation pressure at the wall</source>
        <translation>Sättigungsdruck an der Wand</translation>
    </message>
    <message>
        <source>share of the heat that leaves unburned</source>
        <translation>Anteil der Wärme, der unverbrannt geht</translation>
    </message>
    <message>
        <source>share of the mass&apos;s outline that faces the room</source>
        <translation>Anteil des Umrisses der Masse, der zum Raum zeigt</translation>
    </message>
    <message>
        <source>share of the vapour that has not condensed before</source>
        <translation>Anteil des Dampfs, der vorher nicht kondensiert ist</translation>
    </message>
    <message>
        <source>share of the wall&apos;s radiation that the gas absorbs</source>
        <translation>Anteil der Wandstrahlung, den das Gas aufnimmt</translation>
    </message>
    <message>
        <source>side of the square of equal area</source>
        <translation>Seite des flächengleichen Quadrats</translation>
    </message>
    <message>
        <source>speed of the fan, of its full speed</source>
        <translation>Drehzahl des Gebläses, von seiner vollen</translation>
    </message>
    <message>
        <source>standing draft; negative: air comes down the stack</source>
        <translation>Ruhezug; negativ: Luft kommt den Schornstein herab</translation>
    </message>
    <message>
        <source>step to a wider area, on the narrow head</source>
        <translation>Sprung auf einen weiteren Querschnitt, auf den Staudruck der engen Seite</translation>
    </message>
    <message>
        <source>suction by the exhaust fans</source>
        <translation>Unterdruck durch die Ablüfter</translation>
    </message>
    <message>
        <source>suction of the house</source>
        <translation>Unterdruck des Hauses</translation>
    </message>
    <message>
        <source>surface of the seat over the inner face</source>
        <translation>Oberfläche des Sitzes durch Innenseite</translation>
    </message>
    <message>
        <source>surface that gives heat away</source>
        <translation>Oberfläche, die Wärme abgibt</translation>
    </message>
    <message>
        <source>temperature of the gas that leaves</source>
        <translation>Temperatur des austretenden Gases</translation>
    </message>
    <message>
        <source>temperature of the outdoor air</source>
        <translation>Temperatur der Außenluft</translation>
    </message>
    <message>
        <source>temperature of the room air</source>
        <translation>Temperatur der Raumluft</translation>
    </message>
    <message>
        <source>the T_m set out with</source>
        <translation>das T_m, mit dem begonnen wurde</translation>
    </message>
    <message>
        <source>the air around it</source>
        <translation>die Luft darum</translation>
    </message>
    <message>
        <source>the air mdot_a, before the fire</source>
        <translation>die Luft mdot_a, vor dem Feuer</translation>
    </message>
    <message>
        <source>the dT_s set out with</source>
        <translation>das dT_s, mit dem begonnen wurde</translation>
    </message>
    <message>
        <source>the dT_w set out with</source>
        <translation>das dT_w, mit dem begonnen wurde</translation>
    </message>
    <message>
        <source>the flue gas mdot_g</source>
        <translation>das Abgas mdot_g</translation>
    </message>
    <message>
        <source>the gas around the riser</source>
        <translation>das Gas um das Steigrohr</translation>
    </message>
    <message>
        <source>the same by mass, stoichiometric air</source>
        <translation>dasselbe nach Masse, nötige Luft</translation>
    </message>
    <message>
        <source>the same on leaving</source>
        <translation>dasselbe beim Austritt</translation>
    </message>
    <message>
        <source>the same walk with the fans at their speed</source>
        <translation>derselbe Durchgang mit laufenden Gebläsen</translation>
    </message>
    <message>
        <source>the same with the entry</source>
        <translation>dasselbe mit dem Eintritt</translation>
    </message>
    <message>
        <source>the walk repeats a slice a fixed number of times, here it was repeated to rest</source>
        <translation>der Durchgang wiederholt eine Scheibe eine feste Zahl von Malen, hier wurde bis zur Ruhe wiederholt</translation>
    </message>
    <message>
        <source>the wall&apos;s own temperature</source>
        <translation>die eigene Temperatur der Wand</translation>
    </message>
    <message>
        <source>through the walls of a side branch</source>
        <translation>durch die Wände eines Seitenabzweigs</translation>
    </message>
    <message>
        <source>through the walls of the piece</source>
        <translation>durch die Wände des Teils</translation>
    </message>
    <message>
        <source>transitional part</source>
        <translation>Übergangsteil</translation>
    </message>
    <message>
        <source>unbroken length of this section</source>
        <translation>ununterbrochene Länge dieses Querschnitts</translation>
    </message>
    <message>
        <source>vapour in the air that feeds the fire, by volume</source>
        <translation>Dampf in der Luft zum Feuer, nach Volumen</translation>
    </message>
    <message>
        <source>vapour in the gas as it left the fire</source>
        <translation>Dampf im Gas, wie es das Feuer verließ</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>velocity head on entering</source>
        <translation>Staudruck beim Eintritt</translation>
    </message>
    <message>
        <source>velocity head on leaving</source>
        <translation>Staudruck beim Austritt</translation>
    </message>
    <message>
        <source>viscosity</source>
        <translation>Zähigkeit</translation>
    </message>
    <message>
        <source>viscosity there</source>
        <translation>Zähigkeit dort</translation>
    </message>
    <message>
        <source>volume of the house</source>
        <translation>Volumen des Hauses</translation>
    </message>
    <message>
        <source>water in the wood</source>
        <translation>Wasser im Holz</translation>
    </message>
    <message>
        <source>water made by its hydrogen</source>
        <translation>Wasser aus seinem Wasserstoff</translation>
    </message>
    <message>
        <source>water that condenses in it</source>
        <translation>Wasser, das darin kondensiert</translation>
    </message>
    <message>
        <source>water that condenses in the slice</source>
        <translation>Wasser, das in der Scheibe kondensiert</translation>
    </message>
    <message>
        <source>water that the wall takes per surface</source>
        <translation>Wasser, das die Wand je Fläche aufnimmt</translation>
    </message>
    <message>
        <source>water vapour by volume</source>
        <translation>Wasserdampf nach Volumen</translation>
    </message>
    <message>
        <source>wetted perimeter</source>
        <translation>benetzter Umfang</translation>
    </message>
    <message>
        <source>what drives the gas</source>
        <translation>was das Gas treibt</translation>
    </message>
    <message>
        <source>what flows in this branch</source>
        <translation>was in diesem Abzweig strömt</translation>
    </message>
    <message>
        <source>what has mixed where the branches meet</source>
        <translation>was sich gemischt hat, wo die Abzweige zusammenkommen</translation>
    </message>
    <message>
        <source>what holds it back; the same, so the flow stays</source>
        <translation>was es zurückhält; dasselbe, also bleibt der Strom</translation>
    </message>
    <message>
        <source>what running fans add, and what they no longer stand in the way</source>
        <translation>was laufende Gebläse zugeben, und was sie nicht mehr versperren</translation>
    </message>
    <message>
        <source>what stands around it</source>
        <translation>was darum steht</translation>
    </message>
    <message>
        <source>what the last branch leaves</source>
        <translation>was der letzte Abzweig übrig lässt</translation>
    </message>
    <message>
        <source>what the last piece leaves</source>
        <translation>was das letzte Teil übrig lässt</translation>
    </message>
    <message>
        <source>what the piece adds to the gauge and velocity head</source>
        <translation>was das Teil zu Überdruck und Staudruck gibt</translation>
    </message>
    <message>
        <source>what the slice&apos;s wall lets through</source>
        <translation>was die Wand der Scheibe durchlässt</translation>
    </message>
    <message>
        <source>what the wall loses heat to</source>
        <translation>wohin die Wand Wärme verliert</translation>
    </message>
    <message>
        <source>where drive and losses balance along the path</source>
        <translation>wo Antrieb und Verluste entlang des Weges im Gleichgewicht sind</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>width of the mass</source>
        <translation>Breite der Masse</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>wind pressure coefficient at the cap</source>
        <translation>Druckbeiwert des Windes an der Haube</translation>
    </message>
    <message>
        <source>with cp by polynomial</source>
        <translation>mit cp nach Polynom</translation>
    </message>
    <message>
        <source>wood burnt</source>
        <translation>verbranntes Holz</translation>
    </message>
    <message>
        <source>curve that rises and falls only with its points: {}</source>
        <translation>Kennlinie, die nur mit ihren Punkten steigt und fällt: {}</translation>
    </message>
    <message>
        <source>the piece, and slice {} of {} in its middle</source>
        <translation>das Teil, und Scheibe {} von {} in seiner Mitte</translation>
    </message>
    <message>
        <source>the piece, and slice {} of {} with its fan</source>
        <translation>das Teil, und Scheibe {} von {} mit seinem Gebläse</translation>
    </message>
    <message>
        <source>resistance of the {}, on the inner face</source>
        <translation>Widerstand, auf die Innenseite bezogen: {}</translation>
    </message>
    <message>
        <source>its enthalpy, nought at {} degC</source>
        <translation>seine Enthalpie, null bei {} °C</translation>
    </message>
    <message>
        <source>conductivity of the {} at {} degC</source>
        <translation>Wärmeleitfähigkeit: {} bei {} °C</translation>
    </message>
    <message>
        <source>air changes an hour at {} Pa</source>
        <translation>Luftwechsel je Stunde bei {} Pa</translation>
    </message>
    <message>
        <source>outside diameter of the {}</source>
        <translation>Außendurchmesser: {}</translation>
    </message>
    <message>
        <source>added over its {} slices</source>
        <translation>über seine {} Scheiben summiert</translation>
    </message>
    <message>
        <source>the {}&apos;s own temperature</source>
        <translation>eigene Temperatur: {}</translation>
    </message>
    <message>
        <source>conductivity of the {}</source>
        <translation>Wärmeleitfähigkeit: {}</translation>
    </message>
    <message>
        <source>what branch {} brings</source>
        <translation>was Abzweig {} bringt</translation>
    </message>
    <message>
        <source>Where branch {} ends</source>
        <translation>Wo Abzweig {} endet</translation>
    </message>
    <message>
        <source>thickness of the {}</source>
        <translation>Dicke: {}</translation>
    </message>
    <message>
        <source>slice {} of {}</source>
        <translation>Scheibe {} von {}</translation>
    </message>
    <message>
        <source>Branch {}</source>
        <translation>Abzweig {}</translation>
    </message>
    <message>
        <source>loss: {}</source>
        <translation>Verlust: {}</translation>
    </message>
    <message>
        <source>0.9-1.3 m for 150-200 mm systems</source>
        <translation>0,9–1,3 m bei Systemen von 150–200 mm</translation>
    </message>
    <message>
        <source>1-1.5 kg/h at 100 mm, 2-3 at 150 mm, 4-6 at 200 mm</source>
        <translation>1–1,5 kg/h bei 100 mm, 2–3 bei 150 mm, 4–6 bei 200 mm</translation>
    </message>
    <message>
        <source>100 to 500 m³/h for fans of 150 to 200 mm</source>
        <translation>100 bis 500 m³/h bei Gebläsen von 150 bis 200 mm</translation>
    </message>
    <message>
        <source>100, 150 and 200 mm are the usual systems</source>
        <translation>100, 150 und 200 mm sind die üblichen Systeme</translation>
    </message>
    <message>
        <source>15-20 mm liner, one leaf of brick laid tight</source>
        <translation>Rohr von 15–20 mm, eine Ziegelschale dicht darum</translation>
    </message>
    <message>
        <source>150 mm with 50 mm of ceramic fibre</source>
        <translation>150 mm mit 50 mm Keramikfaser</translation>
    </message>
    <message>
        <source>1700-1800 kg/m3, 0.7-0.9 W/mK</source>
        <translation>1700–1800 kg/m³, 0,7–0,9 W/mK</translation>
    </message>
    <message>
        <source>18 gauge open-head drum</source>
        <translation>Deckelfass, 18 gauge</translation>
    </message>
    <message>
        <source>20 gauge drum cut lengthwise</source>
        <translation>der Länge nach geschnittenes Fass, 20 gauge</translation>
    </message>
    <message>
        <source>20 to 100 Pa at no flow for small flue fans, more on top of a stack</source>
        <translation>20 bis 100 Pa ohne Strom bei kleinen Rauchgasgebläsen, mehr auf einem Schornstein</translation>
    </message>
    <message>
        <source>24 gauge stove pipe</source>
        <translation>Ofenrohr, 24 gauge</translation>
    </message>
    <message>
        <source>26 gauge duct</source>
        <translation>Luftleitung, 26 gauge</translation>
    </message>
    <message>
        <source>3-2-10: IRC R1003.9 and NFPA 211, 3 ft over the roof where it comes through</source>
        <translation>3-2-10: IRC R1003.9 und NFPA 211, 3 ft über dem Dach am Durchgang</translation>
    </message>
    <message>
        <source>32 mm splits, 50 mm of perlite</source>
        <translation>32-mm-Platten, 50 mm Perlit</translation>
    </message>
    <message>
        <source>5 Pa was long the Canadian limit for houses with a chimney</source>
        <translation>5 Pa war lange die kanadische Grenze für Häuser mit Schornstein</translation>
    </message>
    <message>
        <source>A fire every morning and evening while outdoors follows the hour.</source>
        <translation>Morgens und abends ein Feuer, draußen folgt der Tageszeit.</translation>
    </message>
    <message>
        <source>ACGIH Industrial Ventilation, rain cap by gap</source>
        <translation>ACGIH Industrial Ventilation, Regenhaube nach Spalt</translation>
    </message>
    <message>
        <source>ACGIH&apos;s table covers 0.45-1.0</source>
        <translation>die Tabelle der ACGIH reicht von 0,45 bis 1,0</translation>
    </message>
    <message>
        <source>ASHRAE HVAC Systems &amp; Equipment, chimney chapter</source>
        <translation>ASHRAE HVAC Systems &amp; Equipment, Kapitel Schornsteine</translation>
    </message>
    <message>
        <source>ASHRAE HVAC Systems &amp; Equipment, chimney chapter: open straight head 0 beyond the velocity head</source>
        <translation>ASHRAE HVAC Systems &amp; Equipment, Kapitel Schornsteine: offener gerader Kopf 0 über den Staudruck hinaus</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, fired clay brick 1600 kg/m3</source>
        <translation>ASHRAE Handbook Fundamentals, gebrannter Tonziegel 1600 kg/m³</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, loose perlite 100 kg/m3 at room temperature; twice that at 400 degC from memory</source>
        <translation>ASHRAE Handbook Fundamentals, loser Perlit 100 kg/m³ bei Raumtemperatur; das Doppelte bei 400 °C aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, perlite concrete 480 kg/m3, standing in for perlite and clay slip</source>
        <translation>ASHRAE Handbook Fundamentals, Perlitbeton 480 kg/m³, steht für Perlit mit Tonschlicker</translation>
    </message>
    <message>
        <source>ASHRAE Handbook Fundamentals, rock wool felt 100 kg/m3 at room temperature; hot values from memory</source>
        <translation>ASHRAE Handbook Fundamentals, Steinwollfilz 100 kg/m³ bei Raumtemperatur; heiße Werte aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Canadian practice for houses with a chimney; CSA F300:22 no longer sets it for solid fuel and asks for carbon-monoxide alarms instead</source>
        <translation>kanadische Praxis für Häuser mit Schornstein; CSA F300:22 setzt sie für Festbrennstoff nicht mehr fest und verlangt stattdessen Kohlenmonoxidmelder</translation>
    </message>
    <message>
        <source>Crane TP-410 (2009), tees and wyes</source>
        <translation>Crane TP-410 (2009), T-Stücke und Hosenstücke</translation>
    </message>
    <message>
        <source>Crane TP-410, gradual contraction and enlargement</source>
        <translation>Crane TP-410, allmähliche Verengung und Erweiterung</translation>
    </message>
    <message>
        <source>Crane TP-410, gradual contraction and enlargement, on the diameters of equal area</source>
        <translation>Crane TP-410, allmähliche Verengung und Erweiterung, auf die Durchmesser gleicher Fläche</translation>
    </message>
    <message>
        <source>Crane covers 30, 45 and 60 degrees</source>
        <translation>Crane kennt 30, 45 und 60 Grad</translation>
    </message>
    <message>
        <source>EN 12524, clay or silt (1200-1800 kg/m3, 1670-2500 J/kgK)</source>
        <translation>EN 12524, Ton oder Schluff (1200–1800 kg/m³, 1670–2500 J/kgK)</translation>
    </message>
    <message>
        <source>EN 12524, clay roof tile, standing in for flue tile</source>
        <translation>EN 12524, Tondachziegel, steht für Schornsteinrohr</translation>
    </message>
    <message>
        <source>EN 12524, concrete 2200 kg/m3</source>
        <translation>EN 12524, Beton 2200 kg/m³</translation>
    </message>
    <message>
        <source>EN 12524, granite</source>
        <translation>EN 12524, Granit</translation>
    </message>
    <message>
        <source>EN 12524, lime and sand plaster</source>
        <translation>EN 12524, Kalk-Sand-Putz</translation>
    </message>
    <message>
        <source>EN 12524, sand or gravel (1700-2200 kg/m3, 910-1180 J/kgK)</source>
        <translation>EN 12524, Sand oder Kies (1700–2200 kg/m³, 910–1180 J/kgK)</translation>
    </message>
    <message>
        <source>EN 12524, stainless steel</source>
        <translation>EN 12524, nichtrostender Stahl</translation>
    </message>
    <message>
        <source>EN 12524, steel</source>
        <translation>EN 12524, Stahl</translation>
    </message>
    <message>
        <source>EN 12524, steel; held constant with temperature (a thin sheet resists next to nothing)</source>
        <translation>EN 12524, Stahl; über die Temperatur konstant gehalten (ein dünnes Blech dämmt so gut wie nichts)</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, brick</source>
        <translation>EN 13384-1 Tabelle B.4, Ziegel</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, clay liner; salt-glazed ware is 1.4 mm (Idelchik)</source>
        <translation>EN 13384-1 Tabelle B.4, Tonrohr; salzglasiertes Rohr hat 1,4 mm (Idelchik)</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, concrete; 0.3-3 mm in Perry&apos;s Handbook</source>
        <translation>EN 13384-1 Tabelle B.4, Beton; 0,3–3 mm in Perry&apos;s Handbook</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, folded metal; clean galvanised iron is 0.152 mm (Perry&apos;s Handbook)</source>
        <translation>EN 13384-1 Tabelle B.4, gefalztes Blech; sauberes verzinktes Eisen hat 0,152 mm (Perry&apos;s Handbook)</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, stainless steel</source>
        <translation>EN 13384-1 Tabelle B.4, nichtrostender Stahl</translation>
    </message>
    <message>
        <source>EN 13384-1 Table B.4, welded steel; new pipe is 0.05 mm, a season&apos;s soot makes it rougher</source>
        <translation>EN 13384-1 Tabelle B.4, geschweißter Stahl; neues Rohr hat 0,05 mm, der Ruß eines Winters macht es rauer</translation>
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
        <translation>Anwendungsbereich EN 15544: geprüfte Feuerräume laufen mit dem 1,95- bis 3,95-fachen der nötigen Luft</translation>
    </message>
    <message>
        <source>EN 15544, fireclay 2-3 mm</source>
        <translation>EN 15544, Schamotte 2–3 mm</translation>
    </message>
    <message>
        <source>EN 15544, gas velocity in the channels 1.2-6 m/s</source>
        <translation>EN 15544, Gasgeschwindigkeit in den Zügen 1,2–6 m/s</translation>
    </message>
    <message>
        <source>IRC M1803 and NFPA 211: no connector through attics and concealed spaces</source>
        <translation>IRC M1803 und NFPA 211: kein Verbindungsstück durch Dachräume und verdeckte Räume</translation>
    </message>
    <message>
        <source>IRC R315 puts one outside every sleeping area; CSA F300:22 asks for one with all solid fuel</source>
        <translation>IRC R315 verlangt einen vor jedem Schlafbereich; CSA F300:22 einen bei jedem Festbrennstoff</translation>
    </message>
    <message>
        <source>IRC R315; CSA F300:22</source>
        <translation>IRC R315; CSA F300:22</translation>
    </message>
    <message>
        <source>ISO 13732-1, skin in contact for eight hours and more</source>
        <translation>ISO 13732-1, Haut acht Stunden und länger in Berührung</translation>
    </message>
    <message>
        <source>ISO 17225-1 Annex B, coniferous wood: C 51 H 6.3 O 42 N 0.1 %, 19.1 MJ/kg dry</source>
        <translation>ISO 17225-1 Anhang B, Nadelholz: C 51 H 6,3 O 42 N 0,1 %, 19,1 MJ/kg trocken</translation>
    </message>
    <message>
        <source>ISO 2533 standard atmosphere covers it</source>
        <translation>die Normatmosphäre ISO 2533 reicht so weit</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, concrete 0.88-0.93</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, Beton 0,88–0,93</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, fireclay brick 0.75 hot to 0.9 near room temperature</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, Schamotte 0,75 heiß bis 0,9 bei Raumtemperatur</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, lightly oxidised stainless 0.22-0.35</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, leicht oxidierter nichtrostender Stahl 0,22–0,35</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, oxidised zinc</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, oxidiertes Zink</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, plaster</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, Putz</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, red brick</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, roter Ziegel</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, rock 0.88-0.95</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, Gestein 0,88–0,95</translation>
    </message>
    <message>
        <source>Incropera &amp; DeWitt, Table A.11, soil</source>
        <translation>Incropera &amp; DeWitt, Tabelle A.11, Erdreich</translation>
    </message>
    <message>
        <source>Kindling, then four loads one after the other; the rest of the night it cools.</source>
        <translation>Kleinholz, dann vier Auflagen nacheinander; den Rest der Nacht kühlt er aus.</translation>
    </message>
    <message>
        <source>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, fuel tables: fir mill waste; heating value by Channiwala &amp; Parikh 2002</source>
        <translation>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, Brennstofftabellen: Sägewerksreste von Tanne; Heizwert nach Channiwala &amp; Parikh 2002</translation>
    </message>
    <message>
        <source>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, fuel tables: red oak sawdust; heating value by Channiwala &amp; Parikh 2002</source>
        <translation>Miles et al. 1995, Alkali Deposits in Biomass Power Plants, Brennstofftabellen: Sägemehl von Roteiche; Heizwert nach Channiwala &amp; Parikh 2002</translation>
    </message>
    <message>
        <source>NFPA 211, single-wall connector</source>
        <translation>NFPA 211, einwandiges Verbindungsstück</translation>
    </message>
    <message>
        <source>NFPA 211: single-wall connector 18 in from combustibles</source>
        <translation>NFPA 211: einwandiges Verbindungsstück 18 in von Brennbarem</translation>
    </message>
    <message>
        <source>NFPA 211: unlisted appliance 36 in from combustibles</source>
        <translation>NFPA 211: nicht geprüftes Gerät 36 in von Brennbarem</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7A and its note for angles</source>
        <translation>SMACNA HVAC Systems Duct Design, 4. Aufl., Tabelle A-7A und ihre Anmerkung zu Winkeln</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7B; other angles by A-7A&apos;s note</source>
        <translation>SMACNA HVAC Systems Duct Design, 4. Aufl., Tabelle A-7B; andere Winkel nach der Anmerkung zu A-7A</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7C, with its Reynolds correction</source>
        <translation>SMACNA HVAC Systems Duct Design, 4. Aufl., Tabelle A-7C, mit ihrer Reynolds-Korrektur</translation>
    </message>
    <message>
        <source>SMACNA HVAC Systems Duct Design, 4th ed., Table A-7D, with its Reynolds correction</source>
        <translation>SMACNA HVAC Systems Duct Design, 4. Aufl., Tabelle A-7D, mit ihrer Reynolds-Korrektur</translation>
    </message>
    <message>
        <source>SMACNA Table A-7A covers 0.5-2.5</source>
        <translation>SMACNA Tabelle A-7A reicht von 0,5 bis 2,5</translation>
    </message>
    <message>
        <source>SMACNA Table A-7B covers 0.75-2.0</source>
        <translation>SMACNA Tabelle A-7B reicht von 0,75 bis 2,0</translation>
    </message>
    <message>
        <source>Spring start</source>
        <translation>Frühlingsstart</translation>
    </message>
    <message>
        <source>Start with a fan on top</source>
        <translation>Start mit Sauger auf der Mündung</translation>
    </message>
    <message>
        <source>Start with a side inducer</source>
        <translation>Start mit Saugzug an der Seite</translation>
    </message>
    <message>
        <source>Start with priming</source>
        <translation>Start mit Vorwärmen</translation>
    </message>
    <message>
        <source>The house four degrees colder than outdoors, no aid.</source>
        <translation>Das Haus vier Grad kälter als draußen, keine Hilfe.</translation>
    </message>
    <message>
        <source>The same, with a priming fire at the stack&apos;s foot first.</source>
        <translation>Dasselbe, zuerst mit einem Vorwärmfeuer am Fuß des Schornsteins.</translation>
    </message>
    <message>
        <source>The same, with the fan on top running for the first minutes.</source>
        <translation>Dasselbe, in den ersten Minuten läuft der Sauger auf der Mündung.</translation>
    </message>
    <message>
        <source>The same, with the inducer beside the stack running.</source>
        <translation>Dasselbe, mit laufendem Saugzug neben dem Schornstein.</translation>
    </message>
    <message>
        <source>Three days of charging</source>
        <translation>Drei Tage Durchwärmen</translation>
    </message>
    <message>
        <source>Typical evening</source>
        <translation>Gewöhnlicher Abend</translation>
    </message>
    <message>
        <source>VDI Heat Atlas, refractories, fireclay brick, 400-1200 degC; continued in a straight line to -30 degC (chosen); specific heat that of 600 degC</source>
        <translation>VDI-Wärmeatlas, Feuerfestes, Schamotte, 400–1200 °C; geradlinig bis −30 °C fortgesetzt (gewählt); Wärmekapazität die bei 600 °C</translation>
    </message>
    <message>
        <source>VDI Heat Atlas, refractories, insulating brick L1260, 400-1200 degC; continued in a straight line to -30 degC (chosen); specific heat that of 400 degC</source>
        <translation>VDI-Wärmeatlas, Feuerfestes, Leichtstein L1260, 400–1200 °C; geradlinig bis −30 °C fortgesetzt (gewählt); Wärmekapazität die bei 400 °C</translation>
    </message>
    <message>
        <source>Weisbach, in Idelchik; nearly shut as a sharp-edged restriction</source>
        <translation>Weisbach, bei Idelchik; fast geschlossen als scharfkantige Blende</translation>
    </message>
    <message>
        <source>a 200 litre drum is 572 mm wide</source>
        <translation>ein 200-Liter-Fass ist 572 mm weit</translation>
    </message>
    <message>
        <source>a 200 litre drum is 850-890 mm high</source>
        <translation>ein 200-Liter-Fass ist 850–890 mm hoch</translation>
    </message>
    <message>
        <source>a J-shaped heater</source>
        <translation>ein J-förmiger Ofen</translation>
    </message>
    <message>
        <source>a barrel over the riser</source>
        <translation>ein Fass über dem Steigrohr</translation>
    </message>
    <message>
        <source>a brick</source>
        <translation>ein Ziegel</translation>
    </message>
    <message>
        <source>a brick on edge</source>
        <translation>ein Ziegel hochkant</translation>
    </message>
    <message>
        <source>a clean hand-fed fire</source>
        <translation>ein sauberes, von Hand beschicktes Feuer</translation>
    </message>
    <message>
        <source>a clean screen</source>
        <translation>ein sauberes Gitter</translation>
    </message>
    <message>
        <source>a common square liner</source>
        <translation>ein gängiges quadratisches Schornsteinrohr</translation>
    </message>
    <message>
        <source>a feed mouth two thirds covered at full burn</source>
        <translation>eine Beschickungsöffnung, bei vollem Abbrand zu zwei Dritteln bedeckt</translation>
    </message>
    <message>
        <source>a flap hangs in a ring and does not seal</source>
        <translation>eine Klappe hängt in einem Ring und dichtet nicht</translation>
    </message>
    <message>
        <source>a flap swings with its weight&apos;s lever; no maker&apos;s curve at hand</source>
        <translation>eine Klappe schwenkt mit dem Hebel ihres Gewichts; keine Herstellerkurve zur Hand</translation>
    </message>
    <message>
        <source>a heated house</source>
        <translation>ein beheiztes Haus</translation>
    </message>
    <message>
        <source>a lived-in house; a greenhouse is nearer 0.9</source>
        <translation>ein bewohntes Haus; ein Gewächshaus liegt eher bei 0,9</translation>
    </message>
    <message>
        <source>a seat is 400-500 mm high</source>
        <translation>ein Sitz ist 400–500 mm hoch</translation>
    </message>
    <message>
        <source>a seat is 450-600 mm deep</source>
        <translation>ein Sitz ist 450–600 mm tief</translation>
    </message>
    <message>
        <source>a small to middling house</source>
        <translation>ein kleines bis mittleres Haus</translation>
    </message>
    <message>
        <source>a tunnel under the heated floor</source>
        <translation>ein Kanal unter dem beheizten Boden</translation>
    </message>
    <message>
        <source>about 3.2 m2 of inside surface, what a 150 mm J-type is said to bear</source>
        <translation>etwa 3,2 m² Innenfläche, was ein J-Ofen mit 150 mm vertragen soll</translation>
    </message>
    <message>
        <source>about three times the flue&apos;s area</source>
        <translation>etwa das Dreifache der Fläche des Zugs</translation>
    </message>
    <message>
        <source>above 60 % the wood does not keep itself burning</source>
        <translation>über 60 % brennt das Holz nicht von selbst weiter</translation>
    </message>
    <message>
        <source>adjustable stovepipe elbows have four</source>
        <translation>verstellbare Ofenrohrbögen haben vier</translation>
    </message>
    <message>
        <source>against the branch&apos;s lean: the tee&apos;s coefficient times SMACNA&apos;s factor for the angle</source>
        <translation>gegen die Neigung des Abzweigs: Beiwert des T-Stücks mal Faktor der SMACNA für den Winkel</translation>
    </message>
    <message>
        <source>air coming down: entry into a free pipe end, Idelchik in ASHRAE</source>
        <translation>Luft, die herabkommt: Eintritt in ein freies Rohrende, Idelchik bei ASHRAE</translation>
    </message>
    <message>
        <source>air slots together about a quarter of the riser&apos;s area</source>
        <translation>Luftschlitze zusammen etwa ein Viertel der Fläche des Steigrohrs</translation>
    </message>
    <message>
        <source>air that joins the run: Crane TP-410 (2009), tees</source>
        <translation>Luft, die dazukommt: Crane TP-410 (2009), T-Stücke</translation>
    </message>
    <message>
        <source>an 8 m/s gust blowing down at 45 degrees was measured at 17 Pa, a coefficient of 0.44</source>
        <translation>eine Bö von 8 m/s unter 45 Grad nach unten ergab gemessen 17 Pa, ein Beiwert von 0,44</translation>
    </message>
    <message>
        <source>an open mouth is usual</source>
        <translation>eine offene Mündung ist üblich</translation>
    </message>
    <message>
        <source>an unused end gets a cap</source>
        <translation>ein unbenutztes Ende bekommt einen Deckel</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>wie gezeichnet</translation>
    </message>
    <message>
        <source>as dug</source>
        <translation>wie gegraben</translation>
    </message>
    <message>
        <source>as found</source>
        <translation>wie vorgefunden</translation>
    </message>
    <message>
        <source>as high as the box</source>
        <translation>so hoch wie die Kammer</translation>
    </message>
    <message>
        <source>as low as it will go</source>
        <translation>so tief, wie es geht</translation>
    </message>
    <message>
        <source>as made</source>
        <translation>wie gemacht</translation>
    </message>
    <message>
        <source>as set</source>
        <translation>wie eingestellt</translation>
    </message>
    <message>
        <source>as used</source>
        <translation>wie benutzt</translation>
    </message>
    <message>
        <source>as wide as the box</source>
        <translation>so breit wie die Kammer</translation>
    </message>
    <message>
        <source>at least 38 mm for 150 mm, 50 mm for 200 mm</source>
        <translation>mindestens 38 mm bei 150 mm, 50 mm bei 200 mm</translation>
    </message>
    <message>
        <source>below it fly ash settles and the cap takes every gust</source>
        <translation>darunter setzt sich Flugasche ab und die Haube nimmt jede Bö auf</translation>
    </message>
    <message>
        <source>between 100 and 150 mm, by area</source>
        <translation>zwischen 100 und 150 mm, nach Fläche</translation>
    </message>
    <message>
        <source>between 150 and 200 mm, by area</source>
        <translation>zwischen 150 und 200 mm, nach Fläche</translation>
    </message>
    <message>
        <source>between the broadleaf row of ISO 17225-1 Annex B and published analyses of oak; dry wood 18.4-19.2 MJ/kg</source>
        <translation>zwischen der Laubholzzeile von ISO 17225-1 Anhang B und veröffentlichten Analysen von Eiche; trockenes Holz 18,4–19,2 MJ/kg</translation>
    </message>
    <message>
        <source>beyond the sheet&apos;s points, running backward and standing still: our own choice</source>
        <translation>jenseits der Punkte des Blatts, rückwärts und im Stillstand: unsere eigene Wahl</translation>
    </message>
    <message>
        <source>blower-door figures as quoted in energy audits</source>
        <translation>Werte von Gebläsetüren, wie in der Energieberatung genannt</translation>
    </message>
    <message>
        <source>brick laid flat, one leaf</source>
        <translation>Ziegel flach, eine Schale</translation>
    </message>
    <message>
        <source>brick laid on edge</source>
        <translation>Ziegel hochkant</translation>
    </message>
    <message>
        <source>brick on edge, laid in the ground</source>
        <translation>Ziegel hochkant, im Erdreich verlegt</translation>
    </message>
    <message>
        <source>builders&apos; logs</source>
        <translation>Aufzeichnungen von Ofenbauern</translation>
    </message>
    <message>
        <source>builders&apos; logs; wood used in a month of firing agrees</source>
        <translation>Aufzeichnungen von Ofenbauern; der Holzverbrauch eines Monats passt dazu</translation>
    </message>
    <message>
        <source>cob or stone in cob is what most benches are made of</source>
        <translation>aus Strohlehm, oder Stein in Strohlehm, sind die meisten Bänke</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>condensate and cleanings run down: common practice, no source</source>
        <translation>Kondensat und Kehrwasser laufen hinab: übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>dense grade; 3-6.5 W/mK by grade</source>
        <translation>dichte Sorte; je nach Sorte 3–6,5 W/mK</translation>
    </message>
    <message>
        <source>dew point of the gas against the wall (see the working)</source>
        <translation>Taupunkt des Gases gegen die Wand (siehe Rechenweg)</translation>
    </message>
    <message>
        <source>earth-building practice: 1450-1800 kg/m3, 0.5-0.9 W/mK, 850-1000 J/kgK; wet cob conducts up to twice as much</source>
        <translation>Lehmbaupraxis: 1450–1800 kg/m³, 0,5–0,9 W/mK, 850–1000 J/kgK; nasser Strohlehm leitet bis zum Doppelten</translation>
    </message>
    <message>
        <source>equivalent of a 10 mm gap: still air by Perry&apos;s fit and grey radiation between two stainless faces of emissivity 0.3; no convection at that width</source>
        <translation>gleichwertig einem Spalt von 10 mm: ruhende Luft nach Perry und graue Strahlung zwischen zwei Edelstahlflächen mit Emissionsgrad 0,3; keine Konvektion bei dieser Weite</translation>
    </message>
    <message>
        <source>even leaks put it near mid-height</source>
        <translation>gleichmäßige Undichten legen sie etwa auf halbe Höhe</translation>
    </message>
    <message>
        <source>fan laws: flow with speed, head with density and speed squared (AMCA 210, ISO 5801)</source>
        <translation>Ähnlichkeitsgesetze: Strom mit der Drehzahl, Förderhöhe mit Dichte und Drehzahl im Quadrat (AMCA 210, ISO 5801)</translation>
    </message>
    <message>
        <source>feed : tunnel : riser about 1 : 2 : 4</source>
        <translation>Beschickung : Tunnel : Steigrohr etwa 1 : 2 : 4</translation>
    </message>
    <message>
        <source>felled this season</source>
        <translation>in diesem Jahr gefällt</translation>
    </message>
    <message>
        <source>flow through the crack: sharp-edged opening, ASHRAE Fundamentals, coefficient 0.6</source>
        <translation>Strom durch den Riss: scharfkantige Öffnung, ASHRAE Fundamentals, Beiwert 0,6</translation>
    </message>
    <message>
        <source>flow through the flap: sharp-edged opening, ASHRAE Fundamentals, coefficient 0.6</source>
        <translation>Strom durch die Klappe: scharfkantige Öffnung, ASHRAE Fundamentals, Beiwert 0,6</translation>
    </message>
    <message>
        <source>friction by Churchill (1977) on the roughness of the wall&apos;s inner face</source>
        <translation>Reibung nach Churchill (1977) auf der Rauheit der Innenseite der Wand</translation>
    </message>
    <message>
        <source>half way up</source>
        <translation>auf halber Höhe</translation>
    </message>
    <message>
        <source>how a stick fire burns: common practice, no source</source>
        <translation>wie ein Holzfeuer brennt: übliche Praxis, keine Quelle</translation>
    </message>
    <message>
        <source>insulating brick on edge</source>
        <translation>Leichtstein hochkant</translation>
    </message>
    <message>
        <source>invented curve of a centrifugal extractor, a parabola</source>
        <translation>erfundene Kennlinie eines Radialgebläses, eine Parabel</translation>
    </message>
    <message>
        <source>invented curve of a small blade that reaches in from the side</source>
        <translation>erfundene Kennlinie eines kleinen Flügelrads, das von der Seite hineinreicht</translation>
    </message>
    <message>
        <source>invented curve of an ordinary 150 mm duct fan</source>
        <translation>erfundene Kennlinie eines gewöhnlichen Rohrgebläses von 150 mm</translation>
    </message>
    <message>
        <source>invented curve of the usual size: take the maker&apos;s</source>
        <translation>erfundene Kennlinie üblicher Größe: die des Herstellers nehmen</translation>
    </message>
    <message>
        <source>lid off: entry into a free pipe end, Idelchik diagram 3-1 in SMACNA</source>
        <translation>Deckel ab: Eintritt in ein freies Rohrende, Idelchik Diagramm 3-1 bei SMACNA</translation>
    </message>
    <message>
        <source>low on the side</source>
        <translation>unten an der Seite</translation>
    </message>
    <message>
        <source>made in the bores of the usual systems</source>
        <translation>in den Weiten der üblichen Systeme gemacht</translation>
    </message>
    <message>
        <source>masonry heaters leave the chimney at about 120 °C at most; 150 °C is well over it</source>
        <translation>Grundöfen verlassen den Schornstein mit höchstens etwa 120 °C; 150 °C liegt weit darüber</translation>
    </message>
    <message>
        <source>mesh and louvre of an air inlet</source>
        <translation>Gitter und Lamellen eines Lufteinlasses</translation>
    </message>
    <message>
        <source>most ground under houses is loam or clay</source>
        <translation>der Grund unter Häusern ist meist Lehm oder Ton</translation>
    </message>
    <message>
        <source>never less than the system&apos;s area</source>
        <translation>nie weniger als der Querschnitt des Systems</translation>
    </message>
    <message>
        <source>never narrower than the system&apos;s own section; a few per cent are within a sheet&apos;s play</source>
        <translation>nie enger als der Querschnitt des Systems; einige Prozent liegen im Spiel eines Blechs</translation>
    </message>
    <message>
        <source>never the face of a flue</source>
        <translation>nie die Innenseite eines Zugs</translation>
    </message>
    <message>
        <source>no published value: idle blades and motor in the way</source>
        <translation>kein veröffentlichter Wert: stehende Flügel und Motor im Weg</translation>
    </message>
    <message>
        <source>no source: read the maker&apos;s sheet</source>
        <translation>keine Quelle: das Blatt des Herstellers lesen</translation>
    </message>
    <message>
        <source>non-metallic surface</source>
        <translation>nichtmetallische Oberfläche</translation>
    </message>
    <message>
        <source>nothing passes it while the lid is on</source>
        <translation>solange der Deckel auf ist, geht nichts hindurch</translation>
    </message>
    <message>
        <source>one or two storeys</source>
        <translation>ein oder zwei Geschosse</translation>
    </message>
    <message>
        <source>open end: entry into a free pipe end, Idelchik diagram 3-1 in SMACNA</source>
        <translation>offenes Ende: Eintritt in ein freies Rohrende, Idelchik Diagramm 3-1 bei SMACNA</translation>
    </message>
    <message>
        <source>ordinary duct fans stand 40 to 60 °C, flue fans 200 to 250 °C</source>
        <translation>gewöhnliche Rohrgebläse vertragen 40 bis 60 °C, Rauchgasgebläse 200 bis 250 °C</translation>
    </message>
    <message>
        <source>oversized so that it can be swept</source>
        <translation>übergroß, damit sich kehren lässt</translation>
    </message>
    <message>
        <source>oxidised or stove-painted steel, 0.8-0.95 in handbook tables</source>
        <translation>oxidierter oder mit Ofenlack gestrichener Stahl, 0,8–0,95 in Handbuchtabellen</translation>
    </message>
    <message>
        <source>partly covered opening: Idelchik, Handbook of Hydraulic Resistance</source>
        <translation>teilweise verdeckte Öffnung: Idelchik, Handbook of Hydraulic Resistance</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 2 x base</source>
        <translation>Verhältnisse der offenen Pläne für Füllkammern, von einer Grundzahl 0,72 × Weite des Steigrohrs: 2 × Grundzahl</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 2.2 x base</source>
        <translation>Verhältnisse der offenen Pläne für Füllkammern, von einer Grundzahl 0,72 × Weite des Steigrohrs: 2,2 × Grundzahl</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 3 x base</source>
        <translation>Verhältnisse der offenen Pläne für Füllkammern, von einer Grundzahl 0,72 × Weite des Steigrohrs: 3 × Grundzahl</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: 4.5 x base</source>
        <translation>Verhältnisse der offenen Pläne für Füllkammern, von einer Grundzahl 0,72 × Weite des Steigrohrs: 4,5 × Grundzahl</translation>
    </message>
    <message>
        <source>proportions of the open batch-box plans, from a base of 0.72 of the riser&apos;s bore: half the base</source>
        <translation>Verhältnisse der offenen Pläne für Füllkammern, von einer Grundzahl 0,72 × Weite des Steigrohrs: halbe Grundzahl</translation>
    </message>
    <message>
        <source>rated flows of common devices in energy-audit manuals</source>
        <translation>Nennströme gängiger Geräte in Handbüchern zur Energieberatung</translation>
    </message>
    <message>
        <source>residential live load of the building codes, 40 psf</source>
        <translation>Nutzlast für Wohnungen der Bauvorschriften, 40 psf</translation>
    </message>
    <message>
        <source>residential live load of the building codes, 40 psf (1.9 kPa)</source>
        <translation>Nutzlast für Wohnungen der Bauvorschriften, 40 psf (1,9 kPa)</translation>
    </message>
    <message>
        <source>rigidised blanket taken as fireclay</source>
        <translation>verfestigte Matte, wie Schamotte</translation>
    </message>
    <message>
        <source>rising 1-2 cm per metre, or falling to a drain: builders do either; the building codes&apos; connector rise is a quarter inch per foot</source>
        <translation>1–2 cm je Meter steigend oder zu einem Ablauf fallend: beides wird gebaut; die Bauvorschriften für Verbindungsstücke sagen einen Viertelzoll je Fuß</translation>
    </message>
    <message>
        <source>rods bend round one turn and not round two</source>
        <translation>Stangen biegen sich um einen Bogen und nicht um zwei</translation>
    </message>
    <message>
        <source>rods come by the metre, five or six to a set</source>
        <translation>Stangen gibt es zu einem Meter, fünf oder sechs im Satz</translation>
    </message>
    <message>
        <source>sawn stone with joints, taken as fireclay</source>
        <translation>gesägter Stein mit Fugen, wie Schamotte</translation>
    </message>
    <message>
        <source>smoothed by hand, taken as fireclay</source>
        <translation>von Hand geglättet, wie Schamotte</translation>
    </message>
    <message>
        <source>soot in a screen: sharp-edged restriction, Idelchik</source>
        <translation>Ruß in einem Gitter: scharfkantige Blende, Idelchik</translation>
    </message>
    <message>
        <source>spark screen: ASHRAE HVAC Systems &amp; Equipment, chimney chapter</source>
        <translation>Funkengitter: ASHRAE HVAC Systems &amp; Equipment, Kapitel Schornsteine</translation>
    </message>
    <message>
        <source>standard air of AMCA 210 and ISO 5801</source>
        <translation>Normluft nach AMCA 210 und ISO 5801</translation>
    </message>
    <message>
        <source>steps in area by Borda-Carnot and Idelchik, added between pieces</source>
        <translation>Sprünge der Fläche nach Borda-Carnot und Idelchik, zwischen Teilen hinzugefügt</translation>
    </message>
    <message>
        <source>stove dampers do not shut tight, many are cut out on purpose</source>
        <translation>Drosselklappen schließen nicht dicht, viele sind mit Absicht ausgeschnitten</translation>
    </message>
    <message>
        <source>stoves are tested at 12 Pa</source>
        <translation>Öfen werden bei 12 Pa geprüft</translation>
    </message>
    <message>
        <source>straight past a shut branch: Rennels &amp; Hudson, Pipe Flow (2012)</source>
        <translation>gerade an einem geschlossenen Abzweig vorbei: Rennels &amp; Hudson, Pipe Flow (2012)</translation>
    </message>
    <message>
        <source>taken as brick masonry of EN 13384-1 Table B.4</source>
        <translation>wie Ziegelmauerwerk nach EN 13384-1 Tabelle B.4</translation>
    </message>
    <message>
        <source>taken as fireclay brick, Incropera &amp; DeWitt, Table A.11</source>
        <translation>wie Schamotte, Incropera &amp; DeWitt, Tabelle A.11</translation>
    </message>
    <message>
        <source>taken as fireclay of EN 15544</source>
        <translation>wie Schamotte nach EN 15544</translation>
    </message>
    <message>
        <source>taken as masonry of EN 13384-1 Table B.4</source>
        <translation>wie Mauerwerk nach EN 13384-1 Tabelle B.4</translation>
    </message>
    <message>
        <source>tested masonry-heater fireboxes run at 1.95-3.95 (EN 15544 scope)</source>
        <translation>geprüfte Feuerräume von Grundöfen laufen mit 1,95–3,95 (Anwendungsbereich EN 15544)</translation>
    </message>
    <message>
        <source>that of its stainless faces</source>
        <translation>der seiner Edelstahlflächen</translation>
    </message>
    <message>
        <source>the 3-2-10 practice of the building codes</source>
        <translation>die 3-2-10-Regel der Bauvorschriften</translation>
    </message>
    <message>
        <source>the calculation: see the working of the piece</source>
        <translation>die Rechnung: siehe den Rechenweg des Teils</translation>
    </message>
    <message>
        <source>the code of the place says where one is wanted</source>
        <translation>die örtliche Vorschrift sagt, wo eines verlangt ist</translation>
    </message>
    <message>
        <source>the drawing itself</source>
        <translation>die Zeichnung selbst</translation>
    </message>
    <message>
        <source>the fan&apos;s data sheet against the calculation</source>
        <translation>das Datenblatt des Gebläses gegen die Rechnung</translation>
    </message>
    <message>
        <source>the mass around it is the wall</source>
        <translation>die Masse darum ist die Wand</translation>
    </message>
    <message>
        <source>the middle of the list</source>
        <translation>die Mitte der Liste</translation>
    </message>
    <message>
        <source>the plume rises without loss of heat, the sinking layer fills the chamber</source>
        <translation>der Strahl steigt ohne Wärmeverlust, die sinkende Schicht füllt die Kammer</translation>
    </message>
    <message>
        <source>the square with the area of a 150 mm pipe</source>
        <translation>das Quadrat mit der Fläche eines 150-mm-Rohrs</translation>
    </message>
    <message>
        <source>top and front of a bench that stands on the floor against a wall</source>
        <translation>Oberseite und Vorderseite einer Bank, die an einer Wand auf dem Boden steht</translation>
    </message>
    <message>
        <source>trowelled, between fireclay and tile</source>
        <translation>mit der Kelle gezogen, zwischen Schamotte und Tonrohr</translation>
    </message>
    <message>
        <source>two turns of 25 mm blanket in a wire or tin sleeve</source>
        <translation>zwei Lagen 25-mm-Matte in einer Hülse aus Draht oder Blech</translation>
    </message>
    <message>
        <source>usual close-clearance pipe</source>
        <translation>übliches Rohr für geringe Abstände</translation>
    </message>
    <message>
        <source>usual data sheet of 128 kg/m3 blanket</source>
        <translation>übliches Datenblatt einer Matte mit 128 kg/m³</translation>
    </message>
    <message>
        <source>usual factory-built chimney</source>
        <translation>üblicher Systemschornstein</translation>
    </message>
    <message>
        <source>weather of the place</source>
        <translation>Wetter des Orts</translation>
    </message>
    <message>
        <source>what a kiln delivers, kept indoors</source>
        <translation>was eine Trockenkammer liefert, innen gelagert</translation>
    </message>
    <message>
        <source>what a pin meter shows on a fresh split</source>
        <translation>was ein Messgerät mit Stiften an einer frischen Spaltfläche zeigt</translation>
    </message>
    <message>
        <source>what is usually built</source>
        <translation>was üblicherweise gebaut wird</translation>
    </message>
    <message>
        <source>yearly mean air temperature holds a few metres down</source>
        <translation>das Jahresmittel der Lufttemperatur gilt einige Meter tief</translation>
    </message>
    <message>
        <source>no wall is wet; the one nearest to its dew point: slice {} of {}</source>
        <translation>keine Wand ist nass; am nächsten an ihrem Taupunkt: Scheibe {} von {}</translation>
    </message>
    <message>
        <source>where walls begin to be wet: slice {} of {}</source>
        <translation>wo Wände nass zu werden beginnen: Scheibe {} von {}</translation>
    </message>
    <message>
        <source>starts</source>
        <translation>geht an</translation>
    </message>
    <message>
        <source>draws alone from</source>
        <translation>zieht allein ab</translation>
    </message>
    <message>
        <source>smoke</source>
        <translation>Rauch</translation>
    </message>
    <message>
        <source>motor / rated</source>
        <translation>Motor / zulässig</translation>
    </message>
    <message>
        <source>dew at motor</source>
        <translation>Wasser am Motor</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außen</translation>
    </message>
    <message>
        <source>dry</source>
        <translation>trocken</translation>
    </message>
    <message>
        <source>fire colder by</source>
        <translation>Feuer kälter um</translation>
    </message>
    <message>
        <source>power cut, left on</source>
        <translation>Stromausfall, eingeschaltet</translation>
    </message>
    <message>
        <source>price</source>
        <translation>Preis</translation>
    </message>
    <message>
        <source>ten years</source>
        <translation>zehn Jahre</translation>
    </message>
    <message>
        <source>Chilton &amp; Colburn analogy</source>
        <translation>Analogie von Chilton &amp; Colburn</translation>
    </message>
    <message>
        <source>Dalton&apos;s law</source>
        <translation>Gesetz von Dalton</translation>
    </message>
    <message>
        <source>EN 13384-1, external values</source>
        <translation>EN 13384-1, Außenwerte</translation>
    </message>
    <message>
        <source>Fourier&apos;s law</source>
        <translation>Gesetz von Fourier</translation>
    </message>
    <message>
        <source>Stefan flow, Incropera &amp; DeWitt ch. 14</source>
        <translation>Stefan-Strom, Incropera &amp; DeWitt Kap. 14</translation>
    </message>
    <message>
        <source>Stefan-Boltzmann law</source>
        <translation>Gesetz von Stefan-Boltzmann</translation>
    </message>
    <message>
        <source>a film acts like k/h of cover</source>
        <translation>ein Übergang wirkt wie k/h Überdeckung</translation>
    </message>
    <message>
        <source>definition</source>
        <translation>Definition</translation>
    </message>
    <message>
        <source>equal area</source>
        <translation>gleiche Fläche</translation>
    </message>
    <message>
        <source>exact for one level and constant properties</source>
        <translation>exakt für ein Niveau und konstante Stoffwerte</translation>
    </message>
    <message>
        <source>exact, as q</source>
        <translation>exakt, wie q</translation>
    </message>
    <message>
        <source>fan laws, AMCA 210 and ISO 5801</source>
        <translation>Ähnlichkeitsgesetze, AMCA 210 und ISO 5801</translation>
    </message>
    <message>
        <source>first law</source>
        <translation>erster Hauptsatz</translation>
    </message>
    <message>
        <source>free exit</source>
        <translation>freier Austritt</translation>
    </message>
    <message>
        <source>geometry</source>
        <translation>Geometrie</translation>
    </message>
    <message>
        <source>hydrostatics</source>
        <translation>Hydrostatik</translation>
    </message>
    <message>
        <source>ideal gas</source>
        <translation>ideales Gas</translation>
    </message>
    <message>
        <source>invented, as if read off a label</source>
        <translation>erfunden, wie von einem Typenschild abgelesen</translation>
    </message>
    <message>
        <source>it is in the cover</source>
        <translation>es steckt in der Überdeckung</translation>
    </message>
    <message>
        <source>linear blend between Re 2300 and 4000</source>
        <translation>lineare Mischung zwischen Re 2300 und 4000</translation>
    </message>
    <message>
        <source>midway between its faces</source>
        <translation>mitten zwischen ihren Seiten</translation>
    </message>
    <message>
        <source>momentum at constant area</source>
        <translation>Impuls bei gleichem Querschnitt</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>keine Quelle</translation>
    </message>
    <message>
        <source>power law of blower-door tests (ISO 9972), exponent customary</source>
        <translation>Potenzgesetz der Messung mit der Gebläsetür (ISO 9972), üblicher Exponent</translation>
    </message>
    <message>
        <source>stoichiometry; IUPAC conventional atomic weights</source>
        <translation>Stöchiometrie; IUPAC, konventionelle Atomgewichte</translation>
    </message>
    <message>
        <source>the drawing</source>
        <translation>die Zeichnung</translation>
    </message>
    <message>
        <source>the walk along the path</source>
        <translation>der Durchgang entlang des Weges</translation>
    </message>
    <message>
        <source>in the stream</source>
        <translation>im Strom</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>nicht gesagt</translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s)</source>
        <translation>
            <numerusform>%n Teil</numerusform>
            <numerusform>%n Teile</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s).</source>
        <translation>
            <numerusform>%n Teil.</numerusform>
            <numerusform>%n Teile.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n piece(s) selected.</source>
        <translation>
            <numerusform>%n Teil gewählt.</numerusform>
            <numerusform>%n Teile gewählt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Move %n piece(s)</source>
        <translation>
            <numerusform>%n Teil bewegen</numerusform>
            <numerusform>%n Teile bewegen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, %n piece(s)</source>
        <translation>
            <numerusform>%1, %n Teil</numerusform>
            <numerusform>%1, %n Teile</numerusform>
        </translation>
    </message>
    <message>
        <source>... and {} more.</source>
        <translation>… und {} weitere.</translation>
    </message>
    <message>
        <source>The quick estimate stays; the points worked out so far too</source>
        <translation>Die Schnellschätzung bleibt; die bisher gerechneten Punkte auch</translation>
    </message>
    <message>
        <source>worked out step by step in time, the worst of three bench ages; dotted: the quick estimate</source>
        <translation>Schritt für Schritt in der Zeit gerechnet, der ungünstigste von drei Bankzuständen; gepunktet: die Schnellschätzung</translation>
    </message>
    <message>
        <source>stopped after %1 of %2 points in time; the limit is that of the quick estimate</source>
        <translation>nach %1 von %2 Punkten in der Zeit angehalten; die Grenze ist die der Schnellschätzung</translation>
    </message>
    <message>
        <source>quick estimate; worked out in time: %1 of %2 points</source>
        <translation>Schnellschätzung; in der Zeit gerechnet: %1 von %2 Punkten</translation>
    </message>
    <message>
        <source>quick estimate, the worst of three bench ages</source>
        <translation>Schnellschätzung, der ungünstigste von drei Bankzuständen</translation>
    </message>
    <message>
        <source>quick estimate, the worst of three bench ages; a path that branches has no steps in time</source>
        <translation>Schnellschätzung, der ungünstigste von drei Bankzuständen; ein Weg mit Abzweigen hat keine Schritte in der Zeit</translation>
    </message>
    <message>
        <source>From {} to {} the flue is up to {} above the room, so a leaky joint lets smoke into the room.</source>
        <translation>Von {} bis {} liegt der Zug bis zu {} über dem Raum, eine undichte Verbindung lässt also Rauch in den Raum.</translation>
    </message>
    <message>
        <source>{}: once the heater is warm, choke the mouth from {} to {} of its section and the fire gets the wanted air; open it to light.</source>
        <translation>{}: wenn der Ofen warm ist, die Mündung von {} auf {} ihres Querschnitts drosseln, und das Feuer bekommt die gewünschte Luft; zum Anzünden öffnen.</translation>
    </message>
    <message>
        <source>%1 (warm and shut: %2 to spare)</source>
        <translation>%1 (warm und zu: %2 Reserve)</translation>
    </message>
    <message>
        <source>Lead a bypass past the bench, open to light</source>
        <translation>Eine Umgehung an der Bank vorbei legen, zum Anzünden offen</translation>
    </message>
    <message>
        <source>Estimate: a closed form for a cylinder warming in a mass stands in until the heating-up has been followed in time.</source>
        <translation>Schätzung: eine geschlossene Formel für einen Zylinder, der sich in einer Masse erwärmt, steht ein, bis das Aufheizen in der Zeit verfolgt ist.</translation>
    </message>
    <message>
        <source>The young ages are followed in time from the match on.</source>
        <translation>Die jungen Zustände werden vom Streichholz an in der Zeit verfolgt.</translation>
    </message>
    <message>
        <source>≈ quick estimate: %1%2</source>
        <translation>≈ Schnellschätzung: %1%2</translation>
    </message>
    <message>
        <source>; they are being followed in time …</source>
        <translation>; sie werden in der Zeit verfolgt …</translation>
    </message>
    <message>
        <source>Unsafe: the draft depends on a fan.</source>
        <translation>Unsicher: der Zug hängt am Gebläse.</translation>
    </message>
    <message>
        <source>A fan runs in this design.</source>
        <translation>In diesem Entwurf läuft ein Gebläse.</translation>
    </message>
    <message>
        <source>What a power cut does is being worked out …</source>
        <translation>Was ein Stromausfall anrichtet, wird gerechnet …</translation>
    </message>
    <message>
        <source>What a power cut does could not be computed: take it for unsafe.</source>
        <translation>Was ein Stromausfall anrichtet, ließ sich nicht rechnen: als unsicher nehmen.</translation>
    </message>
    <message>
        <source>Unsafe: without the fan there is no draft to spare.</source>
        <translation>Unsicher: ohne Gebläse bleibt keine Zugreserve.</translation>
    </message>
    <message>
        <source>A power cut does no harm here.</source>
        <translation>Ein Stromausfall schadet hier nicht.</translation>
    </message>
    <message>
        <source>With every fan standing still no flow to the cap holds itself.</source>
        <translation>Stehen alle Gebläse, hält sich kein Strom zur Haube.</translation>
    </message>
    <message>
        <source>With every fan standing still it settles at %1 times the air it needs, exit %2.</source>
        <translation>Stehen alle Gebläse, stellt es sich beim %1-fachen der nötigen Luft ein, Austritt %2.</translation>
    </message>
    <message>
        <source>; for %1 the air at the mouth is so slow that smoke can pass it</source>
        <translation>; %1 lang ist die Luft an der Mündung so langsam, dass Rauch gegen sie ankommt</translation>
    </message>
    <message>
        <source>In %1 it %2.</source>
        <translation>In %1: %2.</translation>
    </message>
    <message>
        <source>On this time line the draft holds only with the fan on. That is unsafe.</source>
        <translation>In diesem Zeitplan hält der Zug nur mit laufendem Gebläse. Das ist unsicher.</translation>
    </message>
    <message>
        <source>While the fan runs on this time line, the fire depends on it.</source>
        <translation>Solange das Gebläse in diesem Zeitplan läuft, hängt das Feuer an ihm.</translation>
    </message>
    <message>
        <source>A power cut so late on this time line does no harm, one in a standard start does.</source>
        <translation>Ein so später Stromausfall in diesem Zeitplan schadet nicht, einer bei einem gewöhnlichen Start schon.</translation>
    </message>
    <message>
        <source>A power cut while the fan runs on this time line does no harm.</source>
        <translation>Ein Stromausfall bei laufendem Gebläse in diesem Zeitplan schadet nicht.</translation>
    </message>
    <message>
        <source>Standard start, from cold walls. %1</source>
        <translation>Gewöhnlicher Start, von kalten Wänden. %1</translation>
    </message>
    <message>
        <source>%1&amp;nbsp; &lt;b&gt;%2&lt;/b&gt;: %3</source>
        <translation>%1&amp;nbsp; &lt;b&gt;%2&lt;/b&gt;: %3</translation>
    </message>
    <message>
        <source>more than </source>
        <translation>mehr als </translation>
    </message>
    <message>
        <source> Allowed: {}.</source>
        <translation> Erlaubt: {}.</translation>
    </message>
    <message>
        <source> Allowed: more than {}.</source>
        <translation> Erlaubt: mehr als {}.</translation>
    </message>
    <message>
        <source> Allowed: {} or more.</source>
        <translation> Erlaubt: {} oder mehr.</translation>
    </message>
    <message>
        <source> Allowed: {}{} to {}.</source>
        <translation> Erlaubt: {}{} bis {}.</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is negative.{}</source>
        <translation>{}: {} ({}) ist negativ.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is too little.{}</source>
        <translation>{}: {} ({}) ist zu wenig.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, goes beyond the end of the run.{}</source>
        <translation>{}: {} ({}) geht über das Ende des Laufs hinaus.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is before that of the entry before it.{}</source>
        <translation>{}: {} ({}) liegt vor dem des Eintrags davor.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is before the entry before it has ended.{}</source>
        <translation>{}: {} ({}) liegt, bevor der Eintrag davor zu Ende ist.{}</translation>
    </message>
    <message>
        <source>{}: the {}, {}, is out of range.{}</source>
        <translation>{}: {} ({}) ist außerhalb des Zulässigen.{}</translation>
    </message>
    <message>
        <source>{}: the course of temperatures does not reach over the whole run: this end is at {}.{}</source>
        <translation>{}: der Temperaturverlauf reicht nicht über den ganzen Lauf: dieses Ende liegt bei {}.{}</translation>
    </message>
    <message>
        <source>not colder</source>
        <translation>nicht kälter</translation>
    </message>
    <message>
        <source>Walls soaked at their surroundings. By itself: it stands open {} before the whole fire is lit. Kindling: it stands shut until the match, so the air in it is still; {} for {}, then {}. It holds when for {} after the last aid the gas runs forward, no more than {} of smoke comes into the room and {} of the wood burns with at least {:g} times the air it needs.</source>
        <translation>Wände durchwärmt wie ihre Umgebung. Von selbst: er steht {} offen, bevor das ganze Feuer angezündet wird. Kleinholz: er ist bis zum Streichholz zu, die Luft darin steht also; {} lang {}, dann {}. Er hält, wenn {} lang nach der letzten Hilfe das Gas vorwärts läuft, nicht mehr als {} Rauch in den Raum kommt und {} des Holzes mit mindestens dem {:g}-fachen der nötigen Luft brennt.</translation>
    </message>
    <message>
        <source>{} over {} min</source>
        <translation>{} über {} min</translation>
    </message>
    <message>
        <source>the gas at the fan gets to {}; its limit is {}</source>
        <translation>das Gas am Gebläse kommt auf {}; seine Grenze ist {}</translation>
    </message>
    <message>
        <source>the motor gets to {}; its limit is {}</source>
        <translation>der Motor kommt auf {}; seine Grenze ist {}</translation>
    </message>
    <message>
        <source>After {} it holds by itself; practice allows 5 to 10 min.</source>
        <translation>Nach {} hält er von selbst; üblich sind 5 bis 10 min.</translation>
    </message>
    <message>
        <source>It holds after {}, but left on {}.</source>
        <translation>Er hält nach {}, aber eingeschaltet gelassen: {}.</translation>
    </message>
    <message>
        <source>It holds after {}, but left on, water condenses at the motor for {} min.</source>
        <translation>Er hält nach {}, aber eingeschaltet gelassen schlägt sich {} min lang Wasser am Motor nieder.</translation>
    </message>
    <message>
        <source>Unsafe: in the house as it is it draws enough only while the fan runs. {}</source>
        <translation>Unsicher: im Haus, wie es ist, zieht er nur genug, solange das Gebläse läuft. {}</translation>
    </message>
    <message>
        <source>It runs backward {} min after the beginning.</source>
        <translation>Er läuft {} min nach dem Anfang rückwärts.</translation>
    </message>
    <message>
        <source>Smoke comes into the room {} min after the beginning.</source>
        <translation>Rauch kommt {} min nach dem Anfang in den Raum.</translation>
    </message>
    <message>
        <source>It starves: too much of the wood burns with too little air.</source>
        <translation>Ihm fehlt Luft: zu viel des Holzes brennt mit zu wenig Luft.</translation>
    </message>
    <message>
        <source>Ten years: {:.0f} starts a year, a fan that may not be switched off runs {} h each; prices are common practice or your own figures.</source>
        <translation>Zehn Jahre: {:.0f} Starts im Jahr, ein Gebläse, das nicht ausgeschaltet werden darf, läuft je {} h; Preise sind übliche Praxis oder Ihre eigenen Zahlen.</translation>
    </message>
    <message>
        <source>UNSAFE: the draft holds only while the fan runs.</source>
        <translation>UNSICHER: der Zug hält nur, solange das Gebläse läuft.</translation>
    </message>
    <message>
        <source>UNSAFE: it does not draw, even with the fan on.</source>
        <translation>UNSICHER: er zieht nicht, auch nicht mit laufendem Gebläse.</translation>
    </message>
    <message>
        <source>UNSAFE in a house under suction: there the draft holds only while the fan runs.</source>
        <translation>UNSICHER in einem Haus mit Unterdruck: dort hält der Zug nur, solange das Gebläse läuft.</translation>
    </message>
    <message>
        <source>UNSAFE in a house under suction: there it does not draw, even with the fan on.</source>
        <translation>UNSICHER in einem Haus mit Unterdruck: dort zieht er nicht, auch nicht mit laufendem Gebläse.</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Leave the table ou&amp;t</source>
        <translation>Die Tabelle weg&amp;lassen</translation>
    </message>
    <message>
        <source>Compare &amp;with</source>
        <translation>Ver&amp;gleichen mit</translation>
    </message>
    <message>
        <source>Trying starts…</source>
        <translation>Starts werden probiert…</translation>
    </message>
    <message>
        <source>Piece:&#xa0;saw&#xa0;to</source>
        <translation>Teil: sägen auf</translation>
    </message>
    <message>
        <source>Each pipe is sawn longer by what is pushed into the next, %1; each cut takes %2.</source>
        <translation>Jedes Rohr wird länger gesägt um das, was ins nächste geschoben wird, %1; jeder Schnitt nimmt %2.</translation>
    </message>
    <message>
        <source>None.</source>
        <translation>Keine.</translation>
    </message>
    <message>
        <source>Rests on</source>
        <translation>Beruht auf</translation>
    </message>
    <message>
        <source>Let stand because</source>
        <translation>Stehen gelassen, weil</translation>
    </message>
    <message>
        <source>Before: %1</source>
        <translation>Vorher: %1</translation>
    </message>
    <message>
        <source>Now: %1</source>
        <translation>Jetzt: %1</translation>
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
        <translation>mit %1 vorwärmen, %2</translation>
    </message>
    <message>
        <source>fan, %1</source>
        <translation>Gebläse, %1</translation>
    </message>
    <message>
        <source>It draws before anything burns: light the whole fire.</source>
        <translation>Er zieht, bevor etwas brennt: das ganze Feuer anzünden.</translation>
    </message>
    <message>
        <source>Keep it shut until the match. A small fire at the foot of %1 first: %2 of thin kindling for %3. Then the rest.</source>
        <translation>Bis zum Streichholz geschlossen halten. Zuerst ein kleines Feuer am Fuß von %1: %2 dünnes Kleinholz, %3 lang. Dann den Rest.</translation>
    </message>
    <message>
        <source>Burn that much crumpled newspaper, over that time, behind the open cap of %1. Shut it; then kindle at the foot.</source>
        <translation>So viel zerknüllte Zeitung in dieser Zeit hinter dem offenen Deckel von %1 verbrennen. Schließen; dann am Fuß Kleinholz anzünden.</translation>
    </message>
    <message>
        <source>the stack&apos;s foot</source>
        <translation>der Fuß des Schornsteins</translation>
    </message>
    <message>
        <source>Switch on %1 a minute before the match, kindle at the foot, switch it off after that time.</source>
        <translation>%1 eine Minute vor dem Streichholz einschalten, am Fuß Kleinholz anzünden, nach dieser Zeit ausschalten.</translation>
    </message>
    <message>
        <source>the fan</source>
        <translation>das Gebläse</translation>
    </message>
    <message>
        <source>Nothing of this gets it going. Warm the room, or wait until it is cooler outdoors.</source>
        <translation>Nichts davon bringt ihn in Gang. Den Raum wärmen oder warten, bis es draußen kühler ist.</translation>
    </message>
    <message>
        <source>Outdoors, %1</source>
        <translation>Draußen, %1</translation>
    </message>
    <message>
        <source>No. Do not light it until that is changed.</source>
        <translation>Nein. Nicht anzünden, bis das geändert ist.</translation>
    </message>
    <message>
        <source>Calculated for a heater that is cold through and stands as warm as the room, in calm air. Wind, exhaust fans or soot change it: the match has the last word.</source>
        <translation>Gerechnet für einen Ofen, der durch und durch kalt und so warm wie der Raum ist, bei Windstille. Wind, Ablüfter oder Ruß ändern es: das Streichholz hat das letzte Wort.</translation>
    </message>
    <message>
        <source>prime at %1 and hold it there again; if it still leans out, light nothing today</source>
        <translation>bei %1 vorwärmen und noch einmal dorthin halten; neigt sie sich immer noch heraus, heute nichts anzünden</translation>
    </message>
    <message>
        <source>burn two sheets of newspaper, one after the other, behind %1, shut it and hold it there again</source>
        <translation>zwei Bogen Zeitung nacheinander hinter %1 verbrennen, schließen und noch einmal dorthin halten</translation>
    </message>
    <message>
        <source>Hold a burning match to %1: the flame must lean in. If it leans out, or hangs still, %2.</source>
        <translation>Ein brennendes Streichholz an %1 halten: die Flamme muss sich hineinneigen. Neigt sie sich heraus oder steht sie still, %2.</translation>
    </message>
    <message>
        <source>. Dimensions of the axis in&#xa0;mm</source>
        <translation>. Maße der Achse in mm</translation>
    </message>
    <message>
        <source>, levels in&#xa0;m</source>
        <translation>, Höhen in m</translation>
    </message>
    <message>
        <source>%1 of %2 to %3</source>
        <translation>%1 von %2 bis %3</translation>
    </message>
    <message>
        <source>Curves over time</source>
        <translation>Kurven über die Zeit</translation>
    </message>
    <message>
        <source>Event</source>
        <translation>Ereignis</translation>
    </message>
    <message>
        <source>Fields</source>
        <translation>Felder</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Start page</source>
        <translation>Startseite</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
</TS>
