<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de">
<context>
    <name>AdjustPanel</name>
    <message>
        <source>As &amp;found</source>
        <translation>Wie ge&amp;funden</translation>
    </message>
    <message>
        <source>&amp;Choose…</source>
        <translation>Wäh&amp;len…</translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Trimmhöhe</translation>
    </message>
    <message>
        <source>Chain mark</source>
        <translation>Kettenmarke</translation>
    </message>
    <message>
        <source>Back to the setting that the search found</source>
        <translation>Zurück zu der Einstellung, die die Suche gefunden hat</translation>
    </message>
    <message>
        <source>Choose this option at this setting, with a name</source>
        <translation>Diese Möglichkeit mit dieser Einstellung wählen, mit Namen</translation>
    </message>
    <message>
        <source>T&amp;ilt</source>
        <translation>Ne&amp;igung</translation>
    </message>
    <message>
        <source>T&amp;rim</source>
        <translation>T&amp;rimmhöhe</translation>
    </message>
    <message>
        <source>&amp;Mark</source>
        <translation>&amp;Marke</translation>
    </message>
    <message>
        <source>A failing option cannot be chosen.</source>
        <translation>Eine Möglichkeit, die eine Regel verletzt, kann nicht gewählt werden.</translation>
    </message>
    <message>
        <source>no setting is possible</source>
        <translation>keine Einstellung ist möglich</translation>
    </message>
</context>
<context>
    <name>AskDialog</name>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>&amp;By</source>
        <translation>&amp;Von</translation>
    </message>
</context>
<context>
    <name>BuildPlace</name>
    <message>
        <source>Build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Marks used before</source>
        <translation>Früher benutzte Marken</translation>
    </message>
    <message>
        <source>Nothing is chosen for this hang. Go to Options (Ctrl+2) and choose one; what is to be built then stands here.</source>
        <translation>Für diese Hängung ist nichts gewählt. Unter Möglichkeiten (Strg+2) eine wählen; was aufzubauen ist, steht dann hier.</translation>
    </message>
    <message>
        <source>Mark and angles</source>
        <translation>Marke und Winkel</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Schritte</translation>
    </message>
    <message>
        <source>No mark is recorded for this stack, bar and chain.</source>
        <translation>Für diesen Stapel, Rahmen und diese Kette ist keine Marke festgehalten.</translation>
    </message>
    <message>
        <source>No mark contains these words.</source>
        <translation>Keine Marke enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Marks used before – records, not verdicts</source>
        <translation>Früher benutzte Marken – Aufzeichnungen, keine Urteile</translation>
    </message>
    <message>
        <source>What was used today</source>
        <translation>Was heute benutzt wurde</translation>
    </message>
    <message>
        <source>The choice itself still stands. Choose the option again to freeze it anew.</source>
        <translation>Die Wahl selbst gilt weiter. Die Möglichkeit noch einmal wählen, um sie neu festzuhalten.</translation>
    </message>
    <message>
        <source>The steps are being computed …</source>
        <translation>Die Schritte werden berechnet …</translation>
    </message>
    <message>
        <source>The steps of this build cannot be computed.</source>
        <translation>Die Schritte dieses Aufbaus lassen sich nicht berechnen.</translation>
    </message>
    <message>
        <source>The hold point was not signed; it stands open. Try again.</source>
        <translation>Der Haltepunkt wurde nicht unterschrieben; er ist offen. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Load sheet…</source>
        <translation>Lastblatt…</translation>
    </message>
    <message>
        <source>Build sheet…</source>
        <translation>Aufbaublatt…</translation>
    </message>
    <message>
        <source>Prep list…</source>
        <translation>Packliste…</translation>
    </message>
    <message>
        <source>Examination register…</source>
        <translation>Prüfregister…</translation>
    </message>
    <message>
        <source>Tour summary…</source>
        <translation>Übersicht der Tour…</translation>
    </message>
    <message>
        <source>There is nothing to print yet: no show is chosen at the top of this place.</source>
        <translation>Noch ist nichts zu drucken: Oben ist keine Show gewählt.</translation>
    </message>
    <message>
        <source>The sheet was not made. Nothing has changed; try again.</source>
        <translation>Das Blatt wurde nicht gemacht. Nichts hat sich geändert; noch einmal versuchen.</translation>
    </message>
    <message>
        <source>The mark was not recorded; what you typed is still there. Try again.</source>
        <translation>Die Marke wurde nicht festgehalten; was eingegeben wurde, steht noch da. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Mark and angles, steps, or once flown</source>
        <translation>Marke und Winkel, Schritte, oder nach dem Hochziehen</translation>
    </message>
    <message>
        <source>Once flown</source>
        <translation>Nach dem Hochziehen</translation>
    </message>
    <message>
        <source>A unit that is dead at load-in gives its place to another</source>
        <translation>Ein Gerät, das beim Load-in ausfällt, macht einem anderen Platz</translation>
    </message>
    <message>
        <source>Nothing was swapped; all stands as before.</source>
        <translation>Nichts wurde getauscht; alles steht wie zuvor.</translation>
    </message>
    <message>
        <source>Offline copy of this show…</source>
        <translation>Kopie dieser Show für unterwegs…</translation>
    </message>
    <message>
        <source>There is nothing to copy yet: no show is chosen at the top of this place.</source>
        <translation>Noch gibt es nichts zu kopieren: Oben ist keine Show gewählt.</translation>
    </message>
    <message>
        <source>Offline copy of %1</source>
        <translation>Kopie von %1 für unterwegs</translation>
    </message>
    <message>
        <source>Hangbook store (*.hangbook)</source>
        <translation>Hangbook-Bestand (*.hangbook)</translation>
    </message>
    <message>
        <source>There is no copy. Name another file, or try again.</source>
        <translation>Es gibt keine Kopie. Eine andere Datei nennen, oder noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Swap &amp;a unit…</source>
        <translation>Gerät t&amp;auschen…</translation>
    </message>
    <message>
        <source>What was chosen for this hang, as frozen with the choice: the chain mark and the angles that the links beside it would give, trim, tape height, pick loads and what an inclinometer on each cabinet&apos;s side must read. Beside it the marks that were used before with the same stack: they are records, not verdicts. Record below what was really used; a record is never changed, only corrected by a later one. A mark is never changed in the air. Once flown tries another aim, trim or wind, lists what changes and in which order it is done, and keeps it with a name and a reason. Units by serial records which unit hangs where, scanned from the bar down. Print shows a sheet as it will stand on A4 or US Letter and keeps it as PDF or CSV: load sheet, build sheet, prep list, the show&apos;s examination register, the tour&apos;s summary.</source>
        <translation>Was für diese Hängung gewählt wurde, festgehalten mit der Wahl: die Kettenmarke und die Winkel, die die Glieder daneben ergäben, Trimmhöhe, Bandmaß, Lasten der Anschläge und was ein Neigungsmesser an der Seite jeder Box zeigen muss. Daneben die Marken, die früher mit demselben Stapel benutzt wurden: Sie sind Aufzeichnungen, keine Urteile. Unten wird festgehalten, was wirklich benutzt wurde; eine Aufzeichnung wird nie geändert, nur durch eine spätere berichtigt. Eine Marke wird nie in der Luft geändert. „Nach dem Hochziehen“ versucht eine andere Neigung, Trimmhöhe oder anderen Wind, zählt auf, was sich ändert und in welcher Reihenfolge es getan wird, und hält es mit Namen und Grund fest. „Einheiten nach Seriennummer“ hält fest, welche Einheit wo hängt, vom Rahmen abwärts gescannt. Drucken zeigt ein Blatt, wie es auf A4 oder US Letter stehen wird, und hält es als PDF oder CSV fest: Lastblatt, Aufbaublatt, Packliste, Prüfregister der Show, Übersicht der Tour.</translation>
    </message>
    <message>
        <source>&amp;Units by serial…</source>
        <translation>E&amp;inheiten nach Seriennummer…</translation>
    </message>
    <message>
        <source>Which unit hangs where in this hang, scanned or typed from the bar down</source>
        <translation>Welche Einheit wo in dieser Hängung hängt, vom Rahmen abwärts gescannt oder getippt</translation>
    </message>
    <message>
        <source>No unit was recorded; all stands as before.</source>
        <translation>Keine Einheit wurde festgehalten; alles steht wie zuvor.</translation>
    </message>
</context>
<context>
    <name>BuildSheet</name>
    <message>
        <source>out of travel</source>
        <translation>außerhalb des Wegs</translation>
    </message>
    <message>
        <source>At this mark the joint stands at %1</source>
        <translation>Bei dieser Marke steht das Gelenk auf %1</translation>
    </message>
    <message>
        <source>Mark %1: %2</source>
        <translation>Marke %1: %2</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Cabinet, from the bar down</source>
        <translation>Box, vom Rahmen abwärts</translation>
    </message>
    <message>
        <source>Inclinometer</source>
        <translation>Neigungsmesser</translation>
    </message>
    <message>
        <source>What an inclinometer on its side reads; negative looks down</source>
        <translation>Was ein Neigungsmesser an ihrer Seite zeigt; negativ blickt nach unten</translation>
    </message>
    <message>
        <source>NOT CLEARED TO LIFT</source>
        <translation>NICHT ZUM HEBEN FREIGEGEBEN</translation>
    </message>
    <message>
        <source>Chain mark</source>
        <translation>Kettenmarke</translation>
    </message>
    <message>
        <source>Cabinets and their angles</source>
        <translation>Boxen und ihre Winkel</translation>
    </message>
    <message>
        <source>Chosen by %1 on %2</source>
        <translation>Gewählt von %1 am %2</translation>
    </message>
    <message>
        <source> – %1</source>
        <translation> – %1</translation>
    </message>
    <message>
        <source>Chain mark %1</source>
        <translation>Kettenmarke %1</translation>
    </message>
    <message>
        <source>No chain in this stack</source>
        <translation>Keine Kette in diesem Stapel</translation>
    </message>
    <message>
        <source>Stack</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>Bar and picks</source>
        <translation>Rahmen und Anschläge</translation>
    </message>
    <message>
        <source>Hoists and points</source>
        <translation>Kettenzüge und Punkte</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 an %2</translation>
    </message>
    <message>
        <source>Tilt and pan</source>
        <translation>Neigung und Schwenk</translation>
    </message>
    <message>
        <source>Trim, lowest edge</source>
        <translation>Trimmhöhe, unterste Kante</translation>
    </message>
    <message>
        <source>Tape to the bar&apos;s datum</source>
        <translation>Bandmaß zum Bezugspunkt des Rahmens</translation>
    </message>
    <message>
        <source>Pick loads, at rest</source>
        <translation>Lasten der Anschläge, in Ruhe</translation>
    </message>
</context>
<context>
    <name>BuildSteps</name>
    <message>
        <source>Sign</source>
        <translation>Unterschreiben</translation>
    </message>
    <message>
        <source>Skip, with this reason</source>
        <translation>Übergehen, mit diesem Grund</translation>
    </message>
    <message>
        <source>Up: the build</source>
        <translation>Auf: der Aufbau</translation>
    </message>
    <message>
        <source>Down: the load-out</source>
        <translation>Ab: der Abbau</translation>
    </message>
    <message>
        <source>Build or load-out</source>
        <translation>Aufbau oder Abbau</translation>
    </message>
    <message>
        <source>Steps in order</source>
        <translation>Schritte der Reihe nach</translation>
    </message>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Reason to skip the hold point</source>
        <translation>Grund, den Haltepunkt zu übergehen</translation>
    </message>
    <message>
        <source>Reason, to skip it</source>
        <translation>Grund, ihn zu übergehen</translation>
    </message>
    <message>
        <source>No hold point stands open.</source>
        <translation>Kein Haltepunkt ist offen.</translation>
    </message>
    <message>
        <source>Next hold point: %1</source>
        <translation>Nächster Haltepunkt: %1</translation>
    </message>
    <message>
        <source>NOT POSSIBLE:</source>
        <translation>NICHT MÖGLICH:</translation>
    </message>
    <message>
        <source>UNPROVEN, not known:</source>
        <translation>UNBELEGT, nicht bekannt:</translation>
    </message>
    <message>
        <source>Left and right as seen from the stage, looking at the audience. Heights above the floor under the hang, after the step.</source>
        <translation>Links und rechts von der Bühne aus gesehen, mit Blick zum Publikum. Höhen über dem Boden unter der Hängung, nach dem Schritt.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Schritt</translation>
    </message>
    <message>
        <source>Hooks by</source>
        <translation>Haken um</translation>
    </message>
    <message>
        <source>Hooks at</source>
        <translation>Haken auf</translation>
    </message>
    <message>
        <source>Lowest at</source>
        <translation>Unterkante auf</translation>
    </message>
    <message>
        <source> (%1 people)</source>
        <translation> (%1 Personen)</translation>
    </message>
    <message>
        <source>Nobody beneath.</source>
        <translation>Niemand darunter.</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>skipped by %1, %2: %3</source>
        <translation>übergangen von %1, %2: %3</translation>
    </message>
    <message>
        <source>signed by %1, %2</source>
        <translation>unterschrieben von %1, %2</translation>
    </message>
    <message>
        <source>Hold point: %1.</source>
        <translation>Haltepunkt: %1.</translation>
    </message>
    <message>
        <source>Unproven, not known:</source>
        <translation>Unbelegt, nicht bekannt:</translation>
    </message>
</context>
<context>
    <name>CheckPanel</name>
    <message>
        <source>&amp;Check the tour</source>
        <translation>Tour &amp;prüfen</translation>
    </message>
    <message>
        <source>Check all a&amp;fresh</source>
        <translation>Alles &amp;neu prüfen</translation>
    </message>
    <message>
        <source>Also what was checked before and has not changed since</source>
        <translation>Auch, was schon geprüft war und sich seither nicht geändert hat</translation>
    </message>
    <message>
        <source>Check of the tour</source>
        <translation>Prüfung der Tour</translation>
    </message>
    <message>
        <source>No tour yet. Import one to check all of its shows.</source>
        <translation>Noch keine Tour. Eine einlesen, um alle ihre Shows zu prüfen.</translation>
    </message>
    <message>
        <source>Checks every option of every show of %1, on all cores; what has not changed since it was checked is not checked again.</source>
        <translation>Prüft jede Möglichkeit jeder Show von %1, auf allen Kernen; was sich seit der letzten Prüfung nicht geändert hat, wird nicht noch einmal geprüft.</translation>
    </message>
    <message>
        <source>What was checked by then is kept.</source>
        <translation>Was bis dahin geprüft war, bleibt.</translation>
    </message>
    <message>
        <source>Checking every option of every show of %1 …</source>
        <translation>Jede Möglichkeit jeder Show von %1 wird geprüft …</translation>
    </message>
</context>
<context>
    <name>ChooseDialog</name>
    <message>
        <source>Choose an option</source>
        <translation>Eine Möglichkeit wählen</translation>
    </message>
    <message>
        <source>Who chooses</source>
        <translation>Wer wählt</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Needed: why it is pencilled in all the same</source>
        <translation>Nötig: warum sie trotzdem vorgemerkt wird</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann frei bleiben</translation>
    </message>
    <message>
        <source>Because of: %1.</source>
        <translation>Wegen: %1.</translation>
    </message>
    <message>
        <source>NOT CLEARED TO LIFT</source>
        <translation>NICHT ZUM HEBEN FREIGEGEBEN</translation>
    </message>
    <message>
        <source>It can be pencilled in with a name and a reason. Every sheet of it says NOT CLEARED TO LIFT until the missing figures are entered and it is chosen again.</source>
        <translation>Sie kann mit Namen und Grund vorgemerkt werden. Jedes Blatt davon trägt NICHT ZUM HEBEN FREIGEGEBEN, bis die fehlenden Angaben eingetragen sind und sie noch einmal gewählt wird.</translation>
    </message>
    <message>
        <source>&amp;Chosen by</source>
        <translation>&amp;Gewählt von</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>G&amp;rund</translation>
    </message>
    <message>
        <source>Pencil it in</source>
        <translation>Vormerken</translation>
    </message>
    <message>
        <source>Choose it</source>
        <translation>Wählen</translation>
    </message>
</context>
<context>
    <name>Choosing</name>
    <message>
        <source>Nothing was chosen; what was chosen before still stands. Read the store again with F5.</source>
        <translation>Nichts wurde gewählt; was vorher gewählt war, gilt weiter. Den Bestand mit F5 neu lesen.</translation>
    </message>
    <message>
        <source>Nothing was chosen for this hang at an earlier show of the tour.</source>
        <translation>Für diese Hängung wurde bei keiner früheren Show der Tour etwas gewählt.</translation>
    </message>
    <message>
        <source>Nothing was chosen for this hang at an earlier show in this venue.</source>
        <translation>Für diese Hängung wurde bei keiner früheren Show an diesem Ort etwas gewählt.</translation>
    </message>
    <message>
        <source>What hung at %1 (%2) cannot hang here: no way of reaching this venue&apos;s points fits, or the makers&apos; data no longer have it.</source>
        <translation>Was in %1 (%2) hing, kann hier nicht hängen: Keine Art, die Punkte dieses Orts zu erreichen, passt, oder die Daten der Hersteller kennen es nicht mehr.</translation>
    </message>
    <message>
        <source>As at %1, chosen on %2 by %3 (then %4). By today&apos;s rules here: %5.</source>
        <translation>Wie in %1, gewählt am %2 von %3 (damals %4). Nach den heutigen Regeln hier: %5.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>The search was cancelled. Nothing was changed.</source>
        <translation>Die Suche wurde abgebrochen. Nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>ClashPanel</name>
    <message>
        <source>Clashes of the route</source>
        <translation>Konflikte der Route</translation>
    </message>
    <message>
        <source>Looking through gear, examinations and travel …</source>
        <translation>Material, Prüfungen und Fahrten werden durchgesehen …</translation>
    </message>
    <message>
        <source>No clash contains these words.</source>
        <translation>Kein Konflikt enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Nothing clashes in what is known: stops without times, places or chosen options are not judged.</source>
        <translation>Nichts steht im Widerspruch, soweit bekannt: Halte ohne Zeiten, Orte oder gewählte Möglichkeiten werden nicht beurteilt.</translation>
    </message>
    <message>
        <source>The route could not be searched for clashes.</source>
        <translation>Die Route konnte nicht auf Konflikte durchgesehen werden.</translation>
    </message>
</context>
<context>
    <name>ColumnsTable</name>
    <message>
        <source>Columns of the file and what they are read as</source>
        <translation>Spalten der Datei und als was sie gelesen werden</translation>
    </message>
    <message>
        <source>In the file</source>
        <translation>In der Datei</translation>
    </message>
    <message>
        <source>Holds</source>
        <translation>Enthält</translation>
    </message>
    <message>
        <source>Is read as</source>
        <translation>Wird gelesen als</translation>
    </message>
    <message>
        <source>(no heading)</source>
        <translation>(ohne Überschrift)</translation>
    </message>
    <message>
        <source>What column %1 is read as</source>
        <translation>Als was Spalte %1 gelesen wird</translation>
    </message>
    <message>
        <source>as it stands</source>
        <translation>wie sie steht</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>ausgelassen</translation>
    </message>
</context>
<context>
    <name>DataPlace</name>
    <message>
        <source>Data</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>Records</source>
        <translation>Einträge</translation>
    </message>
    <message>
        <source>Figures of the record</source>
        <translation>Angaben des Eintrags</translation>
    </message>
    <message>
        <source>No venues, makers&apos; data or people yet. Import them as CSV files.</source>
        <translation>Noch keine Orte, Herstellerdaten oder Personen. Als CSV-Dateien einlesen.</translation>
    </message>
    <message>
        <source>No record contains these words.</source>
        <translation>Kein Eintrag enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Select a record to see each of its figures with its source and date.</source>
        <translation>Einen Eintrag auswählen, um jede seiner Angaben mit Quelle und Datum zu sehen.</translation>
    </message>
    <message>
        <source>No figure contains these words.</source>
        <translation>Keine Angabe enthält diese Wörter.</translation>
    </message>
    <message>
        <source>What the last edit changed</source>
        <translation>Was die letzte Änderung geändert hat</translation>
    </message>
    <message>
        <source>&amp;Edit it…</source>
        <translation>&amp;Bearbeiten…</translation>
    </message>
    <message>
        <source>Edit the selected record</source>
        <translation>Den ausgewählten Eintrag bearbeiten</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Neu</translation>
    </message>
    <message>
        <source>Re&amp;move…</source>
        <translation>Ent&amp;fernen…</translation>
    </message>
    <message>
        <source>F2: change the selected record&apos;s figures, a venue&apos;s points and seats, a stacking table&apos;s joints too</source>
        <translation>F2: Angaben des ausgewählten Eintrags ändern, bei einem Ort auch Punkte und Plätze, bei einer Stapeltabelle die Gelenke</translation>
    </message>
    <message>
        <source>Insert: a new record, empty or as a copy of the selected one</source>
        <translation>Einfg: ein neuer Eintrag, leer oder als Abschrift des ausgewählten</translation>
    </message>
    <message>
        <source>Delete: take the selected record out, where nothing names it</source>
        <translation>Entf: den ausgewählten Eintrag herausnehmen, wo nichts ihn nennt</translation>
    </message>
    <message>
        <source>Add a record</source>
        <translation>Einen Eintrag hinzufügen</translation>
    </message>
    <message>
        <source>Remove the selected record</source>
        <translation>Den ausgewählten Eintrag entfernen</translation>
    </message>
    <message>
        <source>Venues, makers&apos; data, house rules and people. Select one to see each of its figures with where it came from and of which date. A figure that is not known is never taken as 0: the rules that need it stay unproven until it is entered. F2 edits the selected record with its parts: a venue&apos;s points and seats, a stacking table&apos;s joints. Insert adds a record, Delete takes one out that nothing names.</source>
        <translation>Orte, Herstellerdaten, Hausregeln und Personen. Einen Eintrag auswählen, um jede seiner Angaben mit Herkunft und Datum zu sehen. Eine Angabe, die nicht bekannt ist, gilt nie als 0: die Regeln, die sie brauchen, bleiben unbewiesen, bis sie eingetragen ist. F2 bearbeitet den ausgewählten Eintrag mit seinen Teilen: Punkte und Plätze eines Ortes, Gelenke einer Stapeltabelle. Einfg fügt einen Eintrag hinzu, Entf nimmt einen heraus, den nichts nennt.</translation>
    </message>
    <message>
        <source>%1 is saved. %2</source>
        <translation>%1 ist gesichert. %2</translation>
    </message>
    <message>
        <source>&amp;Copy of %1…</source>
        <translation>&amp;Abschrift von %1…</translation>
    </message>
    <message>
        <source>&amp;Copy of the selected one…</source>
        <translation>&amp;Abschrift des ausgewählten…</translation>
    </message>
    <message>
        <source>New: %1…</source>
        <translation>Neu: %1…</translation>
    </message>
    <message>
        <source>%1 is removed. Undo brings it back.</source>
        <translation>%1 ist entfernt. Rückgängig holt es zurück.</translation>
    </message>
    <message>
        <source>Nothing was removed.</source>
        <translation>Nichts wurde entfernt.</translation>
    </message>
    <message>
        <source>The plugs were not read.</source>
        <translation>Die Stecker wurden nicht gelesen.</translation>
    </message>
</context>
<context>
    <name>DueChart</name>
    <message>
        <source>Examinations that fall due week by week, against the route</source>
        <translation>Prüfungen, die Woche für Woche fällig werden, gegen die Route</translation>
    </message>
    <message>
        <source>%1 overdue or without a record.</source>
        <translation>%1 überfällig oder ohne Aufzeichnung.</translation>
    </message>
    <message>
        <source>Week of %1: %2.</source>
        <translation>Woche vom %1: %2.</translation>
    </message>
    <message>
        <source>gear away</source>
        <translation>Gerät unterwegs</translation>
    </message>
    <message>
        <source>fall due in the week</source>
        <translation>werden in der Woche fällig</translation>
    </message>
</context>
<context>
    <name>EditDialog</name>
    <message>
        <source>Who saves it</source>
        <translation>Wer es sichert</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Sichern</translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation>A&amp;bbrechen</translation>
    </message>
    <message>
        <source>What is wrong, or what it changes</source>
        <translation>Was falsch ist, oder was es ändert</translation>
    </message>
    <message>
        <source>Sa&amp;ved by</source>
        <translation>Gesichert &amp;von</translation>
    </message>
    <message>
        <source>Cannot be saved yet. %1</source>
        <translation>Kann noch nicht gesichert werden. %1</translation>
    </message>
    <message>
        <source>Nothing is changed yet.</source>
        <translation>Noch ist nichts geändert.</translation>
    </message>
    <message>
        <source>To save it, say who does.</source>
        <translation>Zum Sichern sagen, wer es tut.</translation>
    </message>
    <message>
        <source>Not saved yet.</source>
        <translation>Noch nicht gesichert.</translation>
    </message>
    <message>
        <source>Nothing was saved; what you typed still stands here.</source>
        <translation>Nichts wurde gesichert; was eingegeben wurde, steht noch hier.</translation>
    </message>
    <message>
        <source>What you changed is not saved. Cancel once more leaves it behind.</source>
        <translation>Die Änderungen sind nicht gesichert. Noch einmal Abbrechen lässt sie zurück.</translation>
    </message>
</context>
<context>
    <name>Editing</name>
    <message>
        <source>&amp;Take back what is chosen…</source>
        <translation>Das Gewählte &amp;zurücknehmen…</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Undone: %1</source>
        <translation>Rückgängig gemacht: %1</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>“%1” was not undone; what stands is as it was.</source>
        <translation>„%1“ wurde nicht rückgängig gemacht; alles steht, wie es war.</translation>
    </message>
    <message>
        <source>“%1” was not done again; what stands is as it was.</source>
        <translation>„%1“ wurde nicht wiederholt; alles steht, wie es war.</translation>
    </message>
    <message>
        <source>Taken back: the choice for %1 at %2</source>
        <translation>Zurückgenommen: die Wahl für %1 in %2</translation>
    </message>
    <message>
        <source>What is chosen still stands.</source>
        <translation>Das Gewählte gilt weiter.</translation>
    </message>
</context>
<context>
    <name>Elevation</name>
    <message>
        <source>Side elevation</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>Whole room	0</source>
        <translation>Ganzer Raum	0</translation>
    </message>
    <message>
        <source>Hang alone	H</source>
        <translation>Hängung allein	H</translation>
    </message>
    <message>
        <source>Copy as picture	Ctrl+C</source>
        <translation>Als Bild kopieren	Strg+C</translation>
    </message>
</context>
<context>
    <name>ExaminationsPlace</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Examinations</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>File of the certificate</source>
        <translation>Datei der Bescheinigung</translation>
    </message>
    <message>
        <source>Calendar file</source>
        <translation>Kalenderdatei</translation>
    </message>
    <message>
        <source>Calendar (*.ics)</source>
        <translation>Kalender (*.ics)</translation>
    </message>
    <message>
        <source>No unit owes an examination. Enter units and examination rules, or import them.</source>
        <translation>Kein Gerät schuldet eine Prüfung. Geräte und Prüfregeln eintragen oder einlesen.</translation>
    </message>
    <message>
        <source>No line contains these words.</source>
        <translation>Keine Zeile enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Where it is best examined</source>
        <translation>Wo es am besten geprüft wird</translation>
    </message>
    <message>
        <source>What falls due within a year as a file that calendar programs read (iCalendar); a search leaves nothing out of it.</source>
        <translation>Was binnen eines Jahres fällig wird, als Datei, die Kalenderprogramme lesen (iCalendar); eine Suche lässt darin nichts weg.</translation>
    </message>
    <message>
        <source>Every unit and every examination that it owes, earliest first. “Stands until” is the last day on which the last examination stands: months are counted so that the day is never overshot. “Best examined” names the last days at the warehouse before that, or the last stop of the route, so that the fewest units are missed; “ahead” says that it falls due while the gear is away. The chart shows how many fall due in each week, against the days on which the gear is away.

Select a line, give the result, and record it. A failed examination quarantines the unit at once. What is overdue is never hidden without a word, whatever is searched for.</source>
        <translation>Jedes Gerät und jede Prüfung, die es schuldet, die früheste zuerst. „Gilt bis“ ist der letzte Tag, an dem die letzte Prüfung gilt: Monate werden so gezählt, dass der Tag nie überschritten wird. „Am besten geprüft“ nennt die letzten Tage im Lager davor oder den letzten Halt der Route, sodass die wenigsten Geräte fehlen; „voraus“ heißt, dass sie fällig wird, während das Gerät unterwegs ist. Das Diagramm zeigt, wie viele in jeder Woche fällig werden, gegen die Tage, an denen das Gerät unterwegs ist.

Eine Zeile auswählen, das Ergebnis angeben und festhalten. Eine nicht bestandene Prüfung sperrt das Gerät sofort. Was überfällig ist, wird nie wortlos verborgen, wonach auch gesucht wird.</translation>
    </message>
    <message>
        <source>%1 overdue · %2 without a record</source>
        <translation>%1 überfällig · %2 ohne Aufzeichnung</translation>
    </message>
    <message>
        <source>Wherever it is best done</source>
        <translation>Überall, wo es am besten ist</translation>
    </message>
    <message>
        <source>%1 overdue or never examined that this search leaves out.</source>
        <translation>%1 überfällig oder nie geprüft, die diese Suche weglässt.</translation>
    </message>
    <message>
        <source>%1 examinations due within a year are in %2.</source>
        <translation>%1 Prüfungen, die binnen eines Jahres fällig werden, stehen in %2.</translation>
    </message>
    <message>
        <source>No calendar was written.</source>
        <translation>Kein Kalender wurde geschrieben.</translation>
    </message>
    <message>
        <source>%1 is recorded.</source>
        <translation>%1 ist festgehalten.</translation>
    </message>
    <message>
        <source>%1 is recorded. %2</source>
        <translation>%1 ist festgehalten. %2</translation>
    </message>
    <message>
        <source>The examination was not recorded; what you typed is still there. Try again.</source>
        <translation>Die Prüfung wurde nicht festgehalten; was eingegeben wurde, steht noch da. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Calen&amp;dar file…</source>
        <translation>Kalen&amp;derdatei…</translation>
    </message>
</context>
<context>
    <name>ExamineForm</name>
    <message>
        <source>Who examined it</source>
        <translation>Wer geprüft hat</translation>
    </message>
    <message>
        <source>Whoever records it</source>
        <translation>Wer es festhält</translation>
    </message>
    <message>
        <source>Number of the certificate</source>
        <translation>Nummer der Bescheinigung</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann frei bleiben</translation>
    </message>
    <message>
        <source>File of the certificate</source>
        <translation>Datei der Bescheinigung</translation>
    </message>
    <message>
        <source>…</source>
        <translation>…</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Who records it</source>
        <translation>Wer es festhält</translation>
    </message>
    <message>
        <source>&amp;Record it</source>
        <translation>&amp;Festhalten</translation>
    </message>
    <message>
        <source>Day of the examination</source>
        <translation>Tag der Prüfung</translation>
    </message>
    <message>
        <source>Result</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Look for the certificate&apos;s file</source>
        <translation>Die Datei der Bescheinigung suchen</translation>
    </message>
    <message>
        <source>What follows from the last record</source>
        <translation>Was aus der letzten Aufzeichnung folgt</translation>
    </message>
    <message>
        <source>Record an examination</source>
        <translation>Eine Prüfung festhalten</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Re&amp;sult</source>
        <translation>E&amp;rgebnis</translation>
    </message>
    <message>
        <source>E&amp;xaminer</source>
        <translation>&amp;Prüfer</translation>
    </message>
    <message>
        <source>&amp;Certificate</source>
        <translation>&amp;Bescheinigung</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Re&amp;mark</source>
        <translation>Be&amp;merkung</translation>
    </message>
    <message>
        <source>&amp;By</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>%1, %2: %3, at %4</source>
        <translation>%1, %2: %3, in %4</translation>
    </message>
    <message>
        <source>Select a line to record its examination.</source>
        <translation>Eine Zeile auswählen, um ihre Prüfung festzuhalten.</translation>
    </message>
    <message>
        <source>Needed: what was found</source>
        <translation>Nötig: was gefunden wurde</translation>
    </message>
    <message>
        <source>%1 is quarantined at once, and the shows that counted on it are named.</source>
        <translation>%1 wird sofort gesperrt, und die Shows, die damit rechneten, werden genannt.</translation>
    </message>
    <message>
        <source>choose…</source>
        <translation>wählen…</translation>
    </message>
</context>
<context>
    <name>FieldForm</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>Figures</name>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>Find  (Ctrl+K)</source>
        <translation>Finden  (Strg+K)</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Find anything by its name</source>
        <translation>Alles nach seinem Namen finden</translation>
    </message>
    <message>
        <source>Part of a show, venue, point, serial, mark, option, type, examination, person or place; Enter goes to the first, the arrows choose another (Ctrl+K)</source>
        <translation>Teil von Show, Ort, Punkt, Seriennummer, Marke, Möglichkeit, Typ, Prüfung, Person oder Bereich; die Eingabetaste geht zum ersten, die Pfeile wählen einen anderen (Strg+K)</translation>
    </message>
    <message>
        <source>Nothing contains these words</source>
        <translation>Nichts enthält diese Wörter</translation>
    </message>
    <message numerus="yes">
        <source>… and %n more: type more of it</source>
        <translation>
            <numerusform>… und %n weiterer: mehr davon eingeben</numerusform>
            <numerusform>… und %n weitere: mehr davon eingeben</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>FirstPage</name>
    <message>
        <source>Open the &amp;demo tour</source>
        <translation>Die &amp;Beispieltour öffnen</translation>
    </message>
    <message>
        <source>&amp;Import spreadsheets…</source>
        <translation>Tabellen &amp;einlesen…</translation>
    </message>
    <message>
        <source>Start &amp;blank</source>
        <translation>&amp;Leer anfangen</translation>
    </message>
    <message>
        <source>How to begin</source>
        <translation>Wie anfangen</translation>
    </message>
    <message>
        <source>This store is empty. How would you like to begin?</source>
        <translation>Dieser Bestand ist leer. Wie soll es losgehen?</translation>
    </message>
    <message>
        <source>An invented band on eleven invented stops, with its gear, venues and examinations. Nothing in it is real; use it to look around.</source>
        <translation>Eine erfundene Band auf elf erfundenen Halten, mit Gerät, Orten und Prüfungen. Nichts darin ist echt; zum Umsehen.</translation>
    </message>
    <message>
        <source>Choose the folder that holds your CSV files. Everything is read, or nothing: a row that cannot be read is named with its file and line.</source>
        <translation>Den Ordner mit den CSV-Dateien wählen. Alles wird gelesen, oder nichts: Eine Zeile, die sich nicht lesen lässt, wird mit Datei und Zeile genannt.</translation>
    </message>
    <message>
        <source>Go straight to the empty lists.</source>
        <translation>Geradewegs zu den leeren Listen.</translation>
    </message>
    <message>
        <source>Before you rely on it</source>
        <translation>Bevor Sie sich darauf verlassen</translation>
    </message>
    <message>
        <source>Folder with CSV files</source>
        <translation>Ordner mit CSV-Dateien</translation>
    </message>
    <message>
        <source>Writing the demo tour into the store …</source>
        <translation>Die Beispieltour wird in den Bestand geschrieben …</translation>
    </message>
    <message>
        <source>The store is still empty. Try again, or start blank.</source>
        <translation>Der Bestand ist noch leer. Noch einmal versuchen oder leer anfangen.</translation>
    </message>
    <message>
        <source>Reading %1 …</source>
        <translation>%1 wird gelesen …</translation>
    </message>
    <message>
        <source>Nothing of that folder was kept. Mend the file and import again.</source>
        <translation>Nichts aus diesem Ordner wurde behalten. Die Datei berichtigen und noch einmal einlesen.</translation>
    </message>
</context>
<context>
    <name>FleetPlace</name>
    <message>
        <source>%1 is quarantined.</source>
        <translation>%1 ist gesperrt.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1 now lacks %2</source>
        <translation>%1 fehlt jetzt %2</translation>
    </message>
    <message>
        <source>%1 has it out; others can stand in</source>
        <translation>%1 hat es draußen; andere können einspringen</translation>
    </message>
    <message>
        <source>%1: others can stand in</source>
        <translation>%1: andere können einspringen</translation>
    </message>
    <message>
        <source>Fleet</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>No units yet. Import your gear list as a CSV file, or open the demo tour in a store of its own to see how one looks.</source>
        <translation>Noch kein Gerät. Die Geräteliste als CSV-Datei einlesen oder die Beispieltour in einem eigenen Bestand öffnen, um zu sehen, wie eine aussieht.</translation>
    </message>
    <message>
        <source>No unit contains these words.</source>
        <translation>Kein Gerät enthält diese Wörter.</translation>
    </message>
    <message>
        <source>Labels with a QR code, of the selected unit or of all that the list shows, as PDF.</source>
        <translation>Etiketten mit QR-Code, des ausgewählten Geräts oder aller, die die Liste zeigt, als PDF.</translation>
    </message>
    <message>
        <source>Parts of the fleet</source>
        <translation>Teile des Geräteparks</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Geräte</translation>
    </message>
    <message>
        <source>Stoc&amp;k against demand</source>
        <translation>Be&amp;stand gegen Bedarf</translation>
    </message>
    <message>
        <source>Carts and t&amp;rucks</source>
        <translation>&amp;Wagen und Lkw</translation>
    </message>
    <message>
        <source>What follows from the last record</source>
        <translation>Was aus der letzten Aufzeichnung folgt</translation>
    </message>
    <message>
        <source>Some pieces of a counted batch become a batch of their own.</source>
        <translation>Einige Stücke einer gezählten Menge werden eine eigene Menge.</translation>
    </message>
    <message>
        <source>All that is recorded of this unit, the newest first</source>
        <translation>Alles, was von diesem Gerät festgehalten ist, das Neueste zuerst</translation>
    </message>
    <message>
        <source>Every serial-numbered unit and counted batch: where it is, which cart it rides on, its state and the examination that it owes next; below, all that is recorded of the selected one. Click a heading to sort; serials sort by their numbers. Type words into the search field to narrow the list: all of them must occur in a line.

Stock against demand: for any day what there is of each type, what is kept back or due, what the shows that are away then want, and below what any show to come lacks, with what would fill it. Carts and trucks: which carts a show needs, and what is in a truck in the order in which it comes out.

Scanning: set what a scan does and scan. It does not matter where the keyboard is: what a scanner types comes to its field. A cart&apos;s code moves the cart and everything on it. A scan is in the store when its answer is shown. “Take last one back” corrects it; nothing is erased.</source>
        <translation>Jedes Gerät mit Seriennummer und jede gezählte Menge: wo es ist, auf welchem Wagen es steht, sein Zustand und die Prüfung, die es als nächste schuldet; darunter alles, was vom ausgewählten festgehalten ist. Ein Klick auf eine Überschrift sortiert; Seriennummern nach ihren Zahlen. Wörter im Suchfeld machen die Liste kürzer: Alle müssen in einer Zeile stehen.

Bestand gegen Bedarf: für jeden Tag, was von jedem Typ da ist, was zurückgehalten oder fällig ist, was die Shows dann wollen, die unterwegs sind, und darunter, was irgendeiner kommenden Show fehlt und was es füllen würde. Wagen und Lkw: welche Wagen eine Show braucht und was in einem Lkw steht, in der Reihenfolge, in der es herauskommt.

Scannen: einstellen, was ein Scan tut, und scannen. Wo die Tastatur gerade ist, ist gleich: Was ein Scanner tippt, kommt in sein Feld. Der Code eines Wagens bewegt den Wagen und alles darauf. Ein Scan ist im Bestand, wenn seine Antwort zu sehen ist. „Letzten zurücknehmen“ berichtigt ihn; nichts wird gelöscht.</translation>
    </message>
    <message>
        <source>%1 away · %2 not to be used</source>
        <translation>%1 unterwegs · %2 nicht zu benutzen</translation>
    </message>
    <message>
        <source>Select a unit to see all that is recorded of it</source>
        <translation>Ein Gerät auswählen, um alles zu sehen, was davon festgehalten ist</translation>
    </message>
    <message>
        <source>%1 · %2 · %3 at %4</source>
        <translation>%1 · %2 · %3 in %4</translation>
    </message>
    <message>
        <source>The list itself still stands. Select the unit again.</source>
        <translation>Die Liste selbst gilt weiter. Das Gerät noch einmal auswählen.</translation>
    </message>
    <message>
        <source>%1 labels are in %2.</source>
        <translation>%1 Etiketten stehen in %2.</translation>
    </message>
    <message>
        <source>No labels were written.</source>
        <translation>Keine Etiketten wurden geschrieben.</translation>
    </message>
    <message>
        <source>Nothing was recorded.</source>
        <translation>Nichts wurde festgehalten.</translation>
    </message>
    <message>
        <source>St&amp;ate…</source>
        <translation>&amp;Zustand…</translation>
    </message>
    <message>
        <source>What happe&amp;ned…</source>
        <translation>Was &amp;geschah…</translation>
    </message>
    <message>
        <source>S&amp;plit…</source>
        <translation>&amp;Teilen…</translation>
    </message>
    <message>
        <source>&amp;Labels…</source>
        <translation>Eti&amp;ketten…</translation>
    </message>
</context>
<context>
    <name>FlownPanel</name>
    <message>
        <source>Rule: %1</source>
        <translation>Regel: %1</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>Signed</source>
        <translation>Unterschrieben</translation>
    </message>
    <message>
        <source>Would be</source>
        <translation>Wäre</translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Pan, to the left is positive</source>
        <translation>Schwenk, nach links ist positiv</translation>
    </message>
    <message>
        <source>Trim, lowest edge</source>
        <translation>Trimmhöhe, unterste Kante</translation>
    </message>
    <message>
        <source>Wind that it is to stand in</source>
        <translation>Wind, in dem sie stehen soll</translation>
    </message>
    <message>
        <source>As si&amp;gned</source>
        <translation>Wie &amp;unterschrieben</translation>
    </message>
    <message>
        <source>&amp;Undo the last move</source>
        <translation>Letzten Zug &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Sign…</source>
        <translation>Unter&amp;schreiben…</translation>
    </message>
    <message>
        <source>What changes against the signed setting</source>
        <translation>Was sich gegen die unterschriebene Einstellung ändert</translation>
    </message>
    <message>
        <source>Steps in order, and what was signed before</source>
        <translation>Schritte der Reihe nach, und was vorher unterschrieben war</translation>
    </message>
    <message>
        <source>Back to the signed setting; nothing is kept</source>
        <translation>Zurück zur unterschriebenen Einstellung; nichts wird behalten</translation>
    </message>
    <message>
        <source>Try the setting that it was moved from; it is signed like any other move</source>
        <translation>Die Einstellung versuchen, von der sie bewegt wurde; sie wird wie jede andere Bewegung unterschrieben</translation>
    </message>
    <message>
        <source>T&amp;ilt</source>
        <translation>Ne&amp;igung</translation>
    </message>
    <message>
        <source>&amp;Pan</source>
        <translation>Sch&amp;wenk</translation>
    </message>
    <message>
        <source>T&amp;rim</source>
        <translation>T&amp;rimmhöhe</translation>
    </message>
    <message>
        <source>&amp;Wind</source>
        <translation>Win&amp;d</translation>
    </message>
    <message>
        <source>Nothing can be tried for this hang.</source>
        <translation>Für diese Hängung lässt sich nichts versuchen.</translation>
    </message>
    <message>
        <source>The signed setting still stands.</source>
        <translation>Die unterschriebene Einstellung gilt weiter.</translation>
    </message>
    <message>
        <source>Signed: revision %1 by %2.</source>
        <translation>Unterschrieben: Revision %1 von %2.</translation>
    </message>
    <message>
        <source> As signed.</source>
        <translation> Wie unterschrieben.</translation>
    </message>
    <message>
        <source> As signed; the data have changed since.</source>
        <translation> Wie unterschrieben; die Daten haben sich seither geändert.</translation>
    </message>
    <message>
        <source> What is tried fails and cannot be signed.</source>
        <translation> Was versucht wird, verletzt eine Regel und kann nicht unterschrieben werden.</translation>
    </message>
    <message>
        <source> What is tried is not signed yet.</source>
        <translation> Was versucht wird, ist noch nicht unterschrieben.</translation>
    </message>
    <message>
        <source>Why it fails or is unproven:</source>
        <translation>Warum sie verletzt oder unbelegt ist:</translation>
    </message>
    <message>
        <source>Unproven:</source>
        <translation>Unbelegt:</translation>
    </message>
    <message>
        <source>Signed settings, newest first</source>
        <translation>Unterschriebene Einstellungen, die neueste zuerst</translation>
    </message>
    <message>
        <source>moved from revision %1</source>
        <translation>bewegt von Revision %1</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>Revision %1, %2 by %3, %4: tilt %5, trim %6%7</source>
        <translation>Revision %1, %2 von %3, %4: Neigung %5, Trimmhöhe %6%7</translation>
    </message>
    <message>
        <source> – %1</source>
        <translation> – %1</translation>
    </message>
    <message>
        <source>Wind counts outdoors alone</source>
        <translation>Wind zählt nur im Freien</translation>
    </message>
    <message>
        <source>Nothing was signed; the setting before still stands. Read the store again with F5.</source>
        <translation>Nichts wurde unterschrieben; die Einstellung davor gilt weiter. Den Bestand mit F5 neu lesen.</translation>
    </message>
    <message>
        <source>Not known to be up. Not signed since it was last moved: %1. Sign them under Steps.</source>
        <translation>Nicht belegt, dass sie hängt. Seit der letzten Bewegung nicht unterschrieben: %1. Unter Schritte unterschreiben.</translation>
    </message>
    <message>
        <source>Not known to be up. Hold points not signed yet: %1. Sign them under Steps.</source>
        <translation>Nicht belegt, dass sie hängt. Noch nicht unterschriebene Haltepunkte: %1. Unter Schritte unterschreiben.</translation>
    </message>
</context>
<context>
    <name>HappenedDialog</name>
    <message>
        <source>Who records it</source>
        <translation>Wer es festhält</translation>
    </message>
    <message>
        <source>Photograph or other file</source>
        <translation>Foto oder andere Datei</translation>
    </message>
    <message>
        <source>What happened to %1</source>
        <translation>Was mit %1 geschah</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>Was geschah</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>How often</source>
        <translation>Wie oft</translation>
    </message>
    <message>
        <source>not counted</source>
        <translation>nicht gezählt</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Wie lange</translation>
    </message>
    <message>
        <source> h</source>
        <translation> h</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann frei bleiben</translation>
    </message>
    <message>
        <source>Look for the file</source>
        <translation>Die Datei suchen</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Times used</source>
        <translation>Mal be&amp;nutzt</translation>
    </message>
    <message>
        <source>&amp;Hours used</source>
        <translation>&amp;Stunden benutzt</translation>
    </message>
    <message>
        <source>&amp;In words</source>
        <translation>&amp;In Worten</translation>
    </message>
    <message>
        <source>&amp;Photograph</source>
        <translation>&amp;Foto</translation>
    </message>
    <message>
        <source>Record it</source>
        <translation>Festhalten</translation>
    </message>
    <message>
        <source>Needed: what was seen</source>
        <translation>Nötig: was zu sehen war</translation>
    </message>
    <message>
        <source>%1 is quarantined at once, and the shows that counted on it are named.</source>
        <translation>%1 wird sofort gesperrt, und die Shows, die damit rechneten, werden genannt.</translation>
    </message>
    <message>
        <source>Where a rule asks for an examination after such an event, one is due now.</source>
        <translation>Wo eine Regel nach so einem Ereignis eine Prüfung verlangt, ist jetzt eine fällig.</translation>
    </message>
    <message>
        <source>Counts towards rules that count uses or hours.</source>
        <translation>Zählt für Regeln, die Einsätze oder Stunden zählen.</translation>
    </message>
    <message>
        <source>Where a rule asks for an examination after assembly at a new site, one is due now.</source>
        <translation>Wo eine Regel nach dem Aufbau an neuem Ort eine Prüfung verlangt, ist jetzt eine fällig.</translation>
    </message>
</context>
<context>
    <name>HousePanel</name>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>What would it change?</source>
        <translation>Was würde es ändern?</translation>
    </message>
    <message>
        <source>Si&amp;gn it</source>
        <translation>Unters&amp;chreiben</translation>
    </message>
    <message>
        <source>Withdraw it</source>
        <translation>Zurückziehen</translation>
    </message>
    <message>
        <source>House rules as they stand for this show</source>
        <translation>Hausregeln, wie sie für diese Show gelten</translation>
    </message>
    <message>
        <source>For which it counts</source>
        <translation>Wofür sie zählt</translation>
    </message>
    <message>
        <source>this tour</source>
        <translation>diese Tour</translation>
    </message>
    <message>
        <source>this venue</source>
        <translation>dieser Ort</translation>
    </message>
    <message>
        <source>this show</source>
        <translation>diese Show</translation>
    </message>
    <message>
        <source>Its value</source>
        <translation>Ihr Wert</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Needed: why</source>
        <translation>Nötig: warum</translation>
    </message>
    <message>
        <source>Takes every statement of this figure off that place&apos;s list</source>
        <translation>Nimmt jede Festlegung dieser Angabe dort von der Liste</translation>
    </message>
    <message>
        <source>What it changes</source>
        <translation>Was es ändert</translation>
    </message>
    <message>
        <source>Judging every chosen option that it counts for …</source>
        <translation>Jede gewählte Möglichkeit, für die sie zählt, wird beurteilt …</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>HungDialog</name>
    <message>
        <source>Units by serial: hang %1 at %2</source>
        <translation>Einheiten nach Seriennummer: Hängung %1 in %2</translation>
    </message>
    <message>
        <source>Scan or type the serials from the bar down: each goes to the place that is selected, and the next open one is selected. Nothing is recorded before you say so. The loads stay those of the types; the sheets then say what each unit weighs and who weighed it.</source>
        <translation>Seriennummern vom Rahmen abwärts scannen oder tippen: Jede kommt an den gewählten Platz, und der nächste offene wird gewählt. Nichts wird festgehalten, bevor Sie es sagen. Die Lasten bleiben die der Typen; die Blätter sagen dann, was jede Einheit wiegt und wer sie gewogen hat.</translation>
    </message>
    <message>
        <source>&amp;Record them</source>
        <translation>&amp;Festhalten</translation>
    </message>
    <message>
        <source>&amp;Take this place back</source>
        <translation>Diesen Platz &amp;zurücknehmen</translation>
    </message>
    <message>
        <source>Scan its label, or type its serial and press Enter</source>
        <translation>Etikett scannen, oder Seriennummer tippen und die Eingabetaste drücken</translation>
    </message>
    <message>
        <source>&amp;Serial</source>
        <translation>&amp;Seriennummer</translation>
    </message>
    <message>
        <source>The serial of the unit at the selected place</source>
        <translation>Seriennummer der Einheit am gewählten Platz</translation>
    </message>
    <message>
        <source>&amp;Places</source>
        <translation>&amp;Plätze</translation>
    </message>
    <message>
        <source>Places from the bar down, with their units</source>
        <translation>Plätze vom Rahmen abwärts, mit ihren Einheiten</translation>
    </message>
    <message>
        <source>What is recorded, and what is refused</source>
        <translation>Was festgehalten ist und was abgelehnt wird</translation>
    </message>
    <message>
        <source>Who records it</source>
        <translation>Wer es festhält</translation>
    </message>
    <message>
        <source>Being read …</source>
        <translation>Wird gelesen …</translation>
    </message>
    <message>
        <source>Every place has its unit. Select the one that %1 takes.</source>
        <translation>Jeder Platz hat seine Einheit. Wählen Sie den, den %1 einnimmt.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 of %2 places recorded.</source>
        <translation>%1 von %2 Plätzen festgehalten.</translation>
    </message>
    <message>
        <source>Bar and cabinets weigh %1; the loads count %2.</source>
        <translation>Rahmen und Boxen wiegen %1; die Lasten zählen %2.</translation>
    </message>
    <message>
        <source>The loads count %1 for bar and cabinets.</source>
        <translation>Die Lasten zählen %1 für Rahmen und Boxen.</translation>
    </message>
</context>
<context>
    <name>ImportDialog</name>
    <message>
        <source>%1: %2 new, %3 changed, %4 the same already</source>
        <translation>%1: %2 neu, %3 geändert, %4 schon gleich</translation>
    </message>
    <message>
        <source>Who takes it in</source>
        <translation>Wer sie einliest</translation>
    </message>
    <message>
        <source>Spreadsheet</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Spreadsheets as text (*.csv *.tsv *.txt);;All files (*)</source>
        <translation>Tabellen als Text (*.csv *.tsv *.txt);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Take a spreadsheet in</source>
        <translation>Eine Tabelle einlesen</translation>
    </message>
    <message>
        <source>What the look at the file says</source>
        <translation>Was der Blick in die Datei ergibt</translation>
    </message>
    <message>
        <source>What would change, and what cannot be read</source>
        <translation>Was sich ändern würde und was sich nicht lesen lässt</translation>
    </message>
    <message>
        <source>&amp;Take it in</source>
        <translation>&amp;Einlesen</translation>
    </message>
    <message>
        <source>Name a file to see what it holds. Nothing is written before you take it in.</source>
        <translation>Eine Datei nennen, um zu sehen, was sie enthält. Nichts wird geschrieben, bevor sie eingelesen wird.</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>What the file holds</source>
        <translation>Was die Datei enthält</translation>
    </message>
    <message>
        <source>Line of the headings</source>
        <translation>Zeile der Überschriften</translation>
    </message>
    <message>
        <source>the first</source>
        <translation>die erste</translation>
    </message>
    <message>
        <source>How dates are written</source>
        <translation>Wie Daten geschrieben sind</translation>
    </message>
    <message>
        <source>2027-04-02; others such as dd.MM.yyyy; MM/dd/yyyy</source>
        <translation>2027-04-02; andere wie dd.MM.yyyy; MM/dd/yyyy</translation>
    </message>
    <message>
        <source>The same on every line</source>
        <translation>In jeder Zeile gleich</translation>
    </message>
    <message>
        <source>such as kind=hoist; owner=North Yard</source>
        <translation>etwa kind=hoist; owner=North Yard</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Holds</source>
        <translation>Ent&amp;hält</translation>
    </message>
    <message>
        <source>Headings on &amp;line</source>
        <translation>Überschriften in &amp;Zeile</translation>
    </message>
    <message>
        <source>&amp;Dates as</source>
        <translation>D&amp;aten als</translation>
    </message>
    <message>
        <source>On &amp;every line</source>
        <translation>&amp;In jeder Zeile</translation>
    </message>
    <message>
        <source>B&amp;y</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>Looking at the file …</source>
        <translation>Die Datei wird angesehen …</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Nichts wurde geschrieben.</translation>
    </message>
    <message>
        <source>Columns as %1 read them.</source>
        <translation>Spalten, wie %1 sie gelesen hat.</translation>
    </message>
    <message>
        <source>%1. Read as %2.</source>
        <translation>%1. Gelesen als %2.</translation>
    </message>
    <message>
        <source>%1 cannot be read as it stands. Nothing of the file is taken in before it can.</source>
        <translation>%1 lässt sich nicht lesen, wie es steht. Solange wird nichts aus der Datei eingelesen.</translation>
    </message>
    <message>
        <source>One thing</source>
        <translation>Eines</translation>
    </message>
    <message>
        <source>%1 things</source>
        <translation>%1 Dinge</translation>
    </message>
    <message>
        <source>Taking it in …</source>
        <translation>Sie wird eingelesen …</translation>
    </message>
    <message>
        <source>Nothing of the file was kept.</source>
        <translation>Nichts aus der Datei wurde behalten.</translation>
    </message>
    <message>
        <source>&amp;Browse…</source>
        <translation>&amp;Suchen…</translation>
    </message>
</context>
<context>
    <name>KeysDialog</name>
    <message>
        <source>Tab, Shift+Tab</source>
        <translation>Tab, Umschalt+Tab</translation>
    </message>
    <message>
        <source>Next and previous field or list</source>
        <translation>Nächstes und voriges Feld, nächste und vorige Liste</translation>
    </message>
    <message>
        <source>Up, Down, Page Up, Page Down, Home, End</source>
        <translation>Auf, Ab, Bild auf, Bild ab, Pos1, Ende</translation>
    </message>
    <message>
        <source>Move in a list</source>
        <translation>Sich in einer Liste bewegen</translation>
    </message>
    <message>
        <source>Alt+letter</source>
        <translation>Alt+Buchstabe</translation>
    </message>
    <message>
        <source>The button, field or menu whose letter is underlined</source>
        <translation>Der Knopf, das Feld oder das Menü mit dem unterstrichenen Buchstaben</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>Leave a dialog; close the answers of the search</source>
        <translation>Einen Dialog verlassen; die Antworten der Suche schließen</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Alle Tasten</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>What they do</source>
        <translation>Was sie tun</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>everywhere</source>
        <translation>überall</translation>
    </message>
</context>
<context>
    <name>LabelsDialog</name>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>Label roll</source>
        <translation>Etikettenrolle</translation>
    </message>
    <message>
        <source>%1, %2 × %3 labels</source>
        <translation>%1, %2 × %3 Etiketten</translation>
    </message>
    <message>
        <source>%1, one a page</source>
        <translation>%1, eines je Seite</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Print labels</source>
        <translation>Etiketten drucken</translation>
    </message>
    <message>
        <source>Which units</source>
        <translation>Welche Geräte</translation>
    </message>
    <message>
        <source>%1 alone</source>
        <translation>%1 allein</translation>
    </message>
    <message>
        <source>All %1 that the list shows</source>
        <translation>Alle %1, die die Liste zeigt</translation>
    </message>
    <message>
        <source>Sheet</source>
        <translation>Bogen</translation>
    </message>
    <message>
        <source>Places of the first sheet that are used already</source>
        <translation>Plätze des ersten Bogens, die schon benutzt sind</translation>
    </message>
    <message>
        <source>The PDF to write</source>
        <translation>Das PDF, das geschrieben wird</translation>
    </message>
    <message>
        <source>Choose the file</source>
        <translation>Die Datei wählen</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Geräte</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Bogen</translation>
    </message>
    <message>
        <source>&amp;Leave free</source>
        <translation>Frei &amp;lassen</translation>
    </message>
    <message>
        <source>&amp;PDF</source>
        <translation>&amp;PDF</translation>
    </message>
    <message>
        <source>Write it</source>
        <translation>Schreiben</translation>
    </message>
    <message>
        <source>none: the first sheet is whole</source>
        <translation>keine: der erste Bogen ist ganz</translation>
    </message>
    <message>
        <source> labels</source>
        <translation> Etiketten</translation>
    </message>
    <message>
        <source>Needed: its name</source>
        <translation>Nötig: ihr Name</translation>
    </message>
</context>
<context>
    <name>ListPage</name>
    <message>
        <source>Search in %1</source>
        <translation>In %1 suchen</translation>
    </message>
    <message>
        <source>Words to look for</source>
        <translation>Suchwörter</translation>
    </message>
    <message>
        <source>1 row</source>
        <translation>1 Zeile</translation>
    </message>
    <message>
        <source>%1 rows</source>
        <translation>%1 Zeilen</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Looking …</source>
        <translation>Wird gesucht …</translation>
    </message>
</context>
<context>
    <name>LoadChart</name>
    <message>
        <source>%1: point %2 carries %3 of %4.</source>
        <translation>%1: Punkt %2 trägt %3 von %4.</translation>
    </message>
    <message>
        <source>Nothing is chosen yet, so there are no loads to show.</source>
        <translation>Noch ist nichts gewählt, also gibt es keine Lasten zu zeigen.</translation>
    </message>
    <message>
        <source>Heaviest point of each stop</source>
        <translation>Schwerster Punkt jedes Halts</translation>
    </message>
    <message>
        <source>heaviest point, at rest</source>
        <translation>schwerster Punkt, in Ruhe</translation>
    </message>
    <message>
        <source>what it may carry</source>
        <translation>was er tragen darf</translation>
    </message>
    <message>
        <source>Stops %1 to %2 of %3</source>
        <translation>Halte %1 bis %2 von %3</translation>
    </message>
</context>
<context>
    <name>LoadPage</name>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>Truck or place</source>
        <translation>Lkw oder Platz</translation>
    </message>
    <message>
        <source>Carts that the show needs, in the order in which they are needed</source>
        <translation>Wagen, die die Show braucht, in der Reihenfolge, in der sie gebraucht werden</translation>
    </message>
    <message>
        <source>&amp;Carts for the show</source>
        <translation>&amp;Wagen für die Show</translation>
    </message>
    <message>
        <source>What is in the truck, in the order in which it comes out</source>
        <translation>Was im Lkw steht, in der Reihenfolge, in der es herauskommt</translation>
    </message>
    <message>
        <source>&amp;Loaded in</source>
        <translation>&amp;Geladen in</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No shows yet. Import them as a CSV file.</source>
        <translation>Noch keine Shows. Als CSV-Datei einlesen.</translation>
    </message>
    <message>
        <source>Nothing is chosen for this show yet: which cabinets travel is not known. Choose an option for each hang in Options.</source>
        <translation>Für diese Show ist noch nichts gewählt: Welche Boxen reisen, ist nicht bekannt. Unter Möglichkeiten für jede Hängung eine wählen.</translation>
    </message>
    <message>
        <source>%1 carts for what is chosen, in the order in which they are needed under the hangs.</source>
        <translation>%1 Wagen für das Gewählte, in der Reihenfolge, in der sie unter den Hängungen gebraucht werden.</translation>
    </message>
    <message>
        <source>First comes out what goes up first%1. To load, go from the last to the first.</source>
        <translation>Zuerst kommt heraus, was zuerst hinaufgeht%1. Geladen wird vom Letzten zum Ersten.</translation>
    </message>
    <message>
        <source> at the show above</source>
        <translation> bei der Show oben</translation>
    </message>
    <message>
        <source>Nothing is recorded anywhere yet.</source>
        <translation>Noch ist nirgends etwas festgehalten.</translation>
    </message>
    <message>
        <source>Nothing is recorded in %1. Set the scanner to “Into a truck” and scan.</source>
        <translation>In %1 ist nichts festgehalten. Den Scanner auf „In einen Lkw“ stellen und scannen.</translation>
    </message>
    <message>
        <source>payload: %1 of %2</source>
        <translation>Zuladung: %1 von %2</translation>
    </message>
    <message>
        <source>payload: %1; what it may carry is not stated</source>
        <translation>Zuladung: %1; was er tragen darf, ist nicht angegeben</translation>
    </message>
    <message>
        <source>; without a known mass: %1</source>
        <translation>; ohne bekannte Masse: %1</translation>
    </message>
    <message>
        <source>floor: %1 of %2 of its length</source>
        <translation>Boden: %1 von %2 seiner Länge</translation>
    </message>
    <message>
        <source>floor: %1 of its length; how long it is is not stated</source>
        <translation>Boden: %1 seiner Länge; wie lang er ist, ist nicht angegeben</translation>
    </message>
    <message>
        <source>; without a known size: %1</source>
        <translation>; ohne bekannte Größe: %1</translation>
    </message>
</context>
<context>
    <name>MoveDialog</name>
    <message>
        <source>Who signs</source>
        <translation>Wer unterschreibt</translation>
    </message>
    <message>
        <source>Sign the new setting</source>
        <translation>Die neue Einstellung unterschreiben</translation>
    </message>
    <message>
        <source>Why it is moved</source>
        <translation>Warum sie bewegt wird</translation>
    </message>
    <message>
        <source>Needed: why it is moved</source>
        <translation>Nötig: warum sie bewegt wird</translation>
    </message>
    <message>
        <source>Sign only what hangs as it says here. In this order:</source>
        <translation>Nur unterschreiben, was hängt, wie es hier steht. In dieser Reihenfolge:</translation>
    </message>
    <message>
        <source>Nothing moves; the wind that it is to stand in is another one.</source>
        <translation>Nichts bewegt sich; der Wind, in dem sie stehen soll, ist ein anderer.</translation>
    </message>
    <message>
        <source>NOT CLEARED TO LIFT</source>
        <translation>NICHT ZUM HEBEN FREIGEGEBEN</translation>
    </message>
    <message>
        <source>Signed &amp;by</source>
        <translation>Unterschrieben &amp;von</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>G&amp;rund</translation>
    </message>
    <message>
        <source>&amp;Sign it</source>
        <translation>&amp;Unterschreiben</translation>
    </message>
    <message>
        <source>Is it up? Nobody signed: %1.</source>
        <translation>Hängt sie? Niemand hat unterschrieben: %1.</translation>
    </message>
</context>
<context>
    <name>NameBox</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
</context>
<context>
    <name>OptionSearch</name>
    <message>
        <source>Nothing was changed. Mend what it names, then search again.</source>
        <translation>Nichts wurde geändert. Berichtigen, was genannt ist, dann noch einmal suchen.</translation>
    </message>
    <message>
        <source>The order is as it was.</source>
        <translation>Die Reihenfolge ist, wie sie war.</translation>
    </message>
    <message>
        <source>The search was cancelled. Nothing was changed.</source>
        <translation>Die Suche wurde abgebrochen. Nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>OptionsPlace</name>
    <message>
        <source>Order among options of like verdict</source>
        <translation>Reihenfolge unter Möglichkeiten mit gleichem Urteil</translation>
    </message>
    <message>
        <source>cover first</source>
        <translation>Abdeckung zuerst</translation>
    </message>
    <message>
        <source>lightest first</source>
        <translation>leichteste zuerst</translation>
    </message>
    <message>
        <source>least gear first</source>
        <translation>wenigstes Gerät zuerst</translation>
    </message>
    <message>
        <source>fewest changes first</source>
        <translation>wenigste Änderungen zuerst</translation>
    </message>
    <message>
        <source>shortest build first</source>
        <translation>kürzester Aufbau zuerst</translation>
    </message>
    <message>
        <source>Rules, what would do, side by side, house rules</source>
        <translation>Regeln, was genügen würde, Vergleich, Hausregeln</translation>
    </message>
    <message>
        <source>R&amp;ules</source>
        <translation>R&amp;egeln</translation>
    </message>
    <message>
        <source>&amp;What would do</source>
        <translation>&amp;Was genügen würde</translation>
    </message>
    <message>
        <source>Si&amp;de by side</source>
        <translation>&amp;Nebeneinander</translation>
    </message>
    <message>
        <source>House rules</source>
        <translation>Hausregeln</translation>
    </message>
    <message>
        <source>Find what was chosen for this hang at the show before, by today&apos;s rules here</source>
        <translation>Finden, was für diese Hängung bei der Show davor gewählt war, nach den heutigen Regeln hier</translation>
    </message>
    <message>
        <source>Find what was chosen for this hang the last time in this venue</source>
        <translation>Finden, was für diese Hängung das letzte Mal an diesem Ort gewählt war</translation>
    </message>
    <message>
        <source>How far the search is</source>
        <translation>Wie weit die Suche ist</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>every verdict</source>
        <translation>jedes Urteil</translation>
    </message>
    <message>
        <source>Rule sheet</source>
        <translation>Regelblatt</translation>
    </message>
    <message>
        <source>The selected rule in full</source>
        <translation>Die ausgewählte Regel im Ganzen</translation>
    </message>
    <message>
        <source>In the room, or the window of settings</source>
        <translation>Im Raum, oder das Feld der Einstellungen</translation>
    </message>
    <message>
        <source>In the r&amp;oom</source>
        <translation>Im Ra&amp;um</translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation>Eins&amp;tellungen</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Möglichkeiten</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Same as &amp;yesterday…</source>
        <translation>Wie &amp;gestern…</translation>
    </message>
    <message>
        <source>Same as last time her&amp;e…</source>
        <translation>Wie letztes Mal &amp;hier…</translation>
    </message>
    <message>
        <source>Looking at every stack that the makers&apos; tables allow …</source>
        <translation>Jeder Stapel, den die Tabellen der Hersteller erlauben, wird angesehen …</translation>
    </message>
    <message>
        <source>Every option that makers&apos; data, venue and fleet allow for this hang, each with its verdict at its best setting. Select one to see it to scale in the room and to read what each rule says. Change tilt, trim or mark: everything is judged again while you do. Choosing asks for a name; an option that fails cannot be chosen, and one that is unproven needs a reason and is NOT CLEARED TO LIFT.

In the drawing: take hold of the hang to move it up or down; wheel or + and − zoom, drag or arrow keys move, 0 shows the room, H the hang, Ctrl+C copies the picture. Beside it the window of settings: at which tilts and trims the option stands, which rule ends it where, and at which tilts each link of the chain leaves a trim; arrow keys move the point, page up and down the mark, and the rules follow.

Under it: the rules; what would do where it fails, or what breaks first and how far away that is; and two to four options side by side (Ctrl+B puts the selected one there). Same as yesterday, or as last time here, finds what hung then by today&apos;s rules and offers to choose it. House rules say what stands for this show and who set it where; one that is stated is signed, tightens only where makers, venue or law have a say, and tells which chosen options change their verdict. The order is remembered; an option that another one beats in every respect says by which.</source>
        <translation>Jede Möglichkeit, die Herstellerdaten, Ort und Gerät für diese Hängung zulassen, jede mit ihrem Urteil bei ihrer besten Einstellung. Eine auswählen, um sie maßstäblich im Raum zu sehen und zu lesen, was jede Regel sagt. Neigung, Trimmhöhe oder Marke ändern: Alles wird dabei neu beurteilt. Wählen verlangt einen Namen; eine Möglichkeit, die eine Regel verletzt, kann nicht gewählt werden, und eine unbelegte braucht einen Grund und ist NICHT ZUM HEBEN FREIGEGEBEN.

In der Zeichnung: die Hängung anfassen und auf oder ab bewegen; Rad oder + und − vergrößern und verkleinern, Ziehen oder Pfeiltasten verschieben, 0 zeigt den Raum, H die Hängung, Strg+C kopiert das Bild. Daneben das Feld der Einstellungen: bei welchen Neigungen und Trimmhöhen die Möglichkeit besteht, welche Regel sie wo beendet und bei welchen Neigungen jedes Glied der Kette eine Trimmhöhe lässt; Pfeiltasten bewegen den Punkt, Bild auf und ab die Marke, und die Regeln folgen.

Darunter: die Regeln; was genügen würde, wo sie verletzt sind, oder was zuerst bricht und wie weit das weg ist; und zwei bis vier Möglichkeiten nebeneinander (Strg+B stellt die ausgewählte dazu). Wie gestern, oder wie letztes Mal hier, findet nach den heutigen Regeln, was damals hing, und bietet an, es zu wählen. Hausregeln sagen, was für diese Show gilt und wer es wo festgelegt hat; eine festgelegte ist unterschrieben, macht nur strenger, wo Hersteller, Ort oder Gesetz mitreden, und sagt, welche gewählten Möglichkeiten ihr Urteil ändern. Die Reihenfolge wird behalten; eine Möglichkeit, die eine andere in jeder Hinsicht übertrifft, sagt, welche.</translation>
    </message>
    <message>
        <source>No option at all: no maker&apos;s stacking table, bar and hoist fit the points that this hang may use. Enter them in Data.</source>
        <translation>Gar keine Möglichkeit: Keine Stapeltabelle, kein Rahmen und kein Kettenzug passen zu den Punkten, die diese Hängung benutzen darf. Unter Daten eintragen.</translation>
    </message>
    <message>
        <source>No option fits these words and this verdict.</source>
        <translation>Keine Möglichkeit passt zu diesen Wörtern und diesem Urteil.</translation>
    </message>
    <message>
        <source>Order among options of like verdict; it is remembered.</source>
        <translation>Reihenfolge unter Möglichkeiten mit gleichem Urteil; sie wird behalten.</translation>
    </message>
    <message>
        <source>Counted from what was chosen at %1; it is remembered.</source>
        <translation>Gezählt von dem, was in %1 gewählt war; sie wird behalten.</translation>
    </message>
    <message>
        <source>Nothing was chosen at the show before, so there is nothing to count from: what covers most comes first.</source>
        <translation>Bei der Show davor war nichts gewählt, also gibt es nichts, wovon zu zählen wäre: Was am meisten abdeckt, kommt zuerst.</translation>
    </message>
    <message>
        <source>%1 options: %2 hold, %3 tight, %4 unproven, %5 fail · %6 settings decided</source>
        <translation>%1 Möglichkeiten: %2 halten, %3 knapp, %4 unbelegt, %5 verletzt · %6 Einstellungen</translation>
    </message>
    <message>
        <source>No show with a hang is chosen. Enter a show with its hangs, or import a tour.</source>
        <translation>Keine Show mit einer Hängung ist gewählt. Eine Show mit ihren Hängungen eintragen oder eine Tour einlesen.</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Select an option to see it in the room.</source>
        <translation>Eine Möglichkeit auswählen, um sie im Raum zu sehen.</translation>
    </message>
    <message>
        <source>%1 Limit from: %2</source>
        <translation>%1 Grenze aus: %2</translation>
    </message>
    <message>
        <source>tilt %1, trim %2</source>
        <translation>Neigung %1, Trimmhöhe %2</translation>
    </message>
    <message>
        <source>%1, mark %2</source>
        <translation>%1, Marke %2</translation>
    </message>
    <message>
        <source>points %1</source>
        <translation>Punkte %1</translation>
    </message>
    <message>
        <source>%1 below the hooks</source>
        <translation>%1 unter den Haken</translation>
    </message>
    <message>
        <source>%1 It is not in this list: read the store again with F5.</source>
        <translation>%1 Sie ist nicht in dieser Liste: den Bestand mit F5 neu lesen.</translation>
    </message>
    <message>
        <source>%1 A failing option cannot be chosen; what would do stands below.</source>
        <translation>%1 Eine Möglichkeit, die eine Regel verletzt, kann nicht gewählt werden; was genügen würde, steht unten.</translation>
    </message>
    <message>
        <source>Put the selected option beside others, or take it away</source>
        <translation>Die ausgewählte Möglichkeit neben andere stellen oder wegnehmen</translation>
    </message>
</context>
<context>
    <name>PartTable</name>
    <message>
        <source>What is wrong</source>
        <translation>Was falsch ist</translation>
    </message>
    <message>
        <source>&amp;Remove the selected one</source>
        <translation>Den ausgewählten Eintrag &amp;entfernen</translation>
    </message>
    <message>
        <source>No rows yet.</source>
        <translation>Noch keine Zeilen.</translation>
    </message>
</context>
<context>
    <name>PlacesList</name>
    <message>
        <source>Places</source>
        <translation>Bereiche</translation>
    </message>
</context>
<context>
    <name>PlugDialog</name>
    <message>
        <source>Plugs of the hang</source>
        <translation>Stecker der Hängung</translation>
    </message>
    <message>
        <source>&amp;Add a plug</source>
        <translation>Stecker &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Plugs of %1, %2</source>
        <translation>Stecker von %1, %2</translation>
    </message>
    <message>
        <source>A row for each end of a loom in a cabinet. Cabinet is its number in the stack, 1 at the bar, and type its type: where another stands there, the plug is not meant for it. Each end goes in once in a show; a channel needs its rack.</source>
        <translation>Eine Zeile je Ende eines Kabelbaums in einer Box. Cabinet ist ihre Nummer im Stapel, 1 am Rahmen, type ihr Typ: wo eine andere steht, ist der Stecker nicht für sie gedacht. Jedes Ende steckt in einer Show nur einmal; ein channel (Kanal) braucht sein Rack.</translation>
    </message>
    <message>
        <source>Nothing is computed with plugs: they are printed on the build sheet. What is not stated stays the maker&apos;s data.</source>
        <translation>Mit Steckern wird nichts berechnet: sie stehen auf dem Aufbaublatt. Was nicht angegeben ist, bleibt Sache der Herstellerdaten.</translation>
    </message>
    <message>
        <source>Plug in row %1: %2. Fields to mend: %3.</source>
        <translation>Stecker in Zeile %1: %2. Zu berichtigende Felder: %3.</translation>
    </message>
    <message>
        <source>%1 plugs before, %2 now.</source>
        <translation>Vorher %1 Stecker, jetzt %2.</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Wird gesichert …</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
</context>
<context>
    <name>Record</name>
    <message>
        <source>%1, from</source>
        <translation>%1, von</translation>
    </message>
    <message>
        <source>%1, to</source>
        <translation>%1, bis</translation>
    </message>
    <message>
        <source>%1, forward</source>
        <translation>%1, nach vorn</translation>
    </message>
    <message>
        <source>%1, up</source>
        <translation>%1, nach oben</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>venue</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>cabinet</source>
        <translation>Box</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>hoist</source>
        <translation>Kettenzug</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>Zubehör</translation>
    </message>
    <message>
        <source>cart</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>stacking table</source>
        <translation>Stapeltabelle</translation>
    </message>
    <message>
        <source>house rule</source>
        <translation>Hausregel</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>Steckverbinder</translation>
    </message>
    <message>
        <source>plugs</source>
        <translation>Stecker</translation>
    </message>
</context>
<context>
    <name>RecordDialog</name>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>A figure may be typed with its unit: 92 kg, 203 lb, 310 mm. A place is “x z”, x forward and z up, in metres; an outline is its corners, “x z; x z; …”. Empty means not known, and leaves the rules that need it unproven.</source>
        <translation>Eine Angabe darf mit ihrer Einheit getippt werden: 92 kg, 203 lb, 310 mm. Eine Stelle ist „x z“, x nach vorn und z nach oben, in Metern; ein Umriss sind seine Ecken, „x z; x z; …“. Leer heißt nicht bekannt und lässt die Regeln, die sie brauchen, unbelegt.</translation>
    </message>
    <message>
        <source>%1: %2 → %3</source>
        <translation>%1: %2 → %3</translation>
    </message>
    <message>
        <source>New record: %1</source>
        <translation>Neuer Eintrag: %1</translation>
    </message>
    <message>
        <source>Parts of the record</source>
        <translation>Teile des Eintrags</translation>
    </message>
    <message>
        <source>&amp;Figures</source>
        <translation>An&amp;gaben</translation>
    </message>
    <message>
        <source>%1: %2. Fields to mend: %3.</source>
        <translation>%1: %2. Zu berichtigende Felder: %3.</translation>
    </message>
    <message>
        <source>%1: %2 before, %3 now</source>
        <translation>%1: vorher %2, jetzt %3</translation>
    </message>
    <message>
        <source>Saving …</source>
        <translation>Wird gesichert …</translation>
    </message>
    <message>
        <source>A figure may be typed with its unit: 92 kg, 203 lb, 310 mm. Empty means not known, and leaves the rules that need it unproven.</source>
        <translation>Eine Angabe darf mit ihrer Einheit eingegeben werden: 92 kg, 203 lb, 310 mm. Leer heißt nicht bekannt und lässt die Regeln, die sie brauchen, unbewiesen.</translation>
    </message>
</context>
<context>
    <name>RecordForm</name>
    <message>
        <source>Who used it</source>
        <translation>Wer sie benutzt hat</translation>
    </message>
    <message>
        <source>&amp;Record it</source>
        <translation>&amp;Festhalten</translation>
    </message>
    <message>
        <source>Mark that was used</source>
        <translation>Marke, die benutzt wurde</translation>
    </message>
    <message>
        <source>Measured angle</source>
        <translation>Gemessener Winkel</translation>
    </message>
    <message>
        <source>Serial of the chain</source>
        <translation>Seriennummer der Kette</translation>
    </message>
    <message>
        <source>Weather</source>
        <translation>Wetter</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>May be left out, such as -7.5°</source>
        <translation>Kann frei bleiben, etwa -7,5°</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann frei bleiben</translation>
    </message>
    <message>
        <source>Mar&amp;k used</source>
        <translation>Mar&amp;ke</translation>
    </message>
    <message>
        <source>&amp;Joint angle measured</source>
        <translation>Gelenkwinkel &amp;gemessen</translation>
    </message>
    <message>
        <source>&amp;Chain serial</source>
        <translation>&amp;Seriennummer der Kette</translation>
    </message>
    <message>
        <source>&amp;Weather</source>
        <translation>&amp;Wetter</translation>
    </message>
    <message>
        <source>B&amp;y</source>
        <translation>&amp;Von</translation>
    </message>
    <message>
        <source>There is no chain mark to record here.</source>
        <translation>Hier ist keine Kettenmarke festzuhalten.</translation>
    </message>
</context>
<context>
    <name>RemoveDialog</name>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>%1 is taken out with all of its figures and parts. It stays where something names it: then you are told what. Undo brings it back.</source>
        <translation>%1 wird mit allen Angaben und Teilen herausgenommen. Wo etwas es nennt, bleibt es: dann wird gesagt, was. Rückgängig holt es zurück.</translation>
    </message>
    <message>
        <source>Remove it</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Who removes it</source>
        <translation>Wer es entfernt</translation>
    </message>
</context>
<context>
    <name>RoutePlace</name>
    <message>
        <source>Route</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>Shows</source>
        <translation>Shows</translation>
    </message>
    <message>
        <source>No shows yet. Import a tour as a CSV file to see its stops here.</source>
        <translation>Noch keine Shows. Eine Tour als CSV-Datei einlesen, um ihre Halte hier zu sehen.</translation>
    </message>
    <message>
        <source>No stop contains these words.</source>
        <translation>Kein Halt enthält diese Wörter.</translation>
    </message>
    <message>
        <source>&amp;Loads</source>
        <translation>&amp;Lasten</translation>
    </message>
    <message>
        <source>Chec&amp;k</source>
        <translation>&amp;Prüfung</translation>
    </message>
    <message>
        <source>The stops in order of date, with the verdict of what has been chosen for them: the worst of all their hangs. Press Enter on a stop to look at its options. Loads are at rest, as frozen with the choice.

The check decides every option of every show of the tour on all cores and judges what is chosen by today&apos;s rules and data. It can be stopped: what was done is kept, and only what an edit touched is checked again.

Clashes says in words what does not go together from today on, and names a way out: gear that shows which are away at once want too much of, examinations that run out while the gear is away, and stops that no truck can reach in time.</source>
        <translation>Die Halte nach Datum, mit dem Urteil über das, was für sie gewählt ist: das schlechteste aller ihrer Hängungen. Eingabetaste auf einem Halt zeigt seine Möglichkeiten. Lasten sind in Ruhe, wie mit der Wahl festgehalten.

Die Prüfung entscheidet jede Möglichkeit jeder Show der Tour auf allen Kernen und beurteilt das Gewählte nach den heutigen Regeln und Daten. Sie kann angehalten werden: Was getan ist, bleibt, und nur was eine Änderung berührt hat, wird noch einmal geprüft.

Konflikte sagt in Worten, was von heute an nicht zusammengeht, und nennt einen Ausweg: Material, von dem Shows, die zugleich unterwegs sind, zu viel brauchen, Prüfungen, die ablaufen, während das Material unterwegs ist, und Halte, die kein Lastwagen rechtzeitig erreicht.</translation>
    </message>
    <message>
        <source>%1 of %2 stops chosen</source>
        <translation>%1 von %2 Halten gewählt</translation>
    </message>
    <message>
        <source>Loads through the tour, the check of all its shows, or what clashes</source>
        <translation>Lasten über die Tour, die Prüfung aller ihrer Shows oder was nicht zusammengeht</translation>
    </message>
    <message>
        <source>Cl&amp;ashes</source>
        <translation>Konfl&amp;ikte</translation>
    </message>
</context>
<context>
    <name>ScanBench</name>
    <message>
        <source>booked</source>
        <translation>gebucht</translation>
    </message>
    <message>
        <source>there already</source>
        <translation>schon dort</translation>
    </message>
    <message>
        <source>unknown code</source>
        <translation>unbekannter Code</translation>
    </message>
    <message>
        <source>wrong place</source>
        <translation>falscher Platz</translation>
    </message>
    <message>
        <source>refused</source>
        <translation>abgelehnt</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>Take last &amp;one back</source>
        <translation>&amp;Letzten zurücknehmen</translation>
    </message>
    <message>
        <source>Code to be booked</source>
        <translation>Code, der gebucht wird</translation>
    </message>
    <message>
        <source>Scan or type a serial</source>
        <translation>Scannen oder tippen</translation>
    </message>
    <message>
        <source>Answer to the last scan</source>
        <translation>Antwort auf den letzten Scan</translation>
    </message>
    <message>
        <source>The answer in words</source>
        <translation>Die Antwort in Worten</translation>
    </message>
    <message>
        <source>Each thing of the last booked scan is where it was before.</source>
        <translation>Alles vom letzten gebuchten Scan ist wieder, wo es war.</translation>
    </message>
    <message>
        <source>Scans so far, the newest first</source>
        <translation>Bisherige Scans, der neueste zuerst</translation>
    </message>
    <message>
        <source>Scanning</source>
        <translation>Scannen</translation>
    </message>
    <message>
        <source>Nothing was scanned yet. Whatever a scanner types while this place is open comes here.</source>
        <translation>Noch nichts gescannt. Was ein Scanner tippt, solange dieser Bereich offen ist, kommt hierher.</translation>
    </message>
    <message>
        <source>%1 booked · %2 not</source>
        <translation>%1 gebucht · %2 nicht</translation>
    </message>
    <message>
        <source>not booked</source>
        <translation>nicht gebucht</translation>
    </message>
    <message>
        <source>Nothing was booked. Scan it once more.</source>
        <translation>Nichts wurde gebucht. Noch einmal scannen.</translation>
    </message>
    <message>
        <source>last one</source>
        <translation>letzter</translation>
    </message>
    <message>
        <source>not taken back</source>
        <translation>nicht zurückgenommen</translation>
    </message>
    <message>
        <source>What was booked still stands. Try again.</source>
        <translation>Das Gebuchte gilt weiter. Noch einmal versuchen.</translation>
    </message>
    <message>
        <source>%1; then scan %2 once more.</source>
        <translation>%1; dann %2 noch einmal scannen.</translation>
    </message>
</context>
<context>
    <name>ScanTaskForm</name>
    <message>
        <source>Truck</source>
        <translation>Lkw</translation>
    </message>
    <message>
        <source>May be left out</source>
        <translation>Kann frei bleiben</translation>
    </message>
    <message>
        <source>Where you stand</source>
        <translation>Wo Sie stehen</translation>
    </message>
    <message>
        <source>Where you stand; anywhere</source>
        <translation>Wo Sie stehen; irgendwo</translation>
    </message>
    <message>
        <source>Who scans</source>
        <translation>Wer scannt</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>What a scan does</source>
        <translation>Was ein Scan tut</translation>
    </message>
    <message>
        <source>Back into a place</source>
        <translation>Zurück an einen Platz</translation>
    </message>
    <message>
        <source>Out to a show</source>
        <translation>Hinaus zu einer Show</translation>
    </message>
    <message>
        <source>Onto a cart</source>
        <translation>Auf einen Wagen</translation>
    </message>
    <message>
        <source>Into a truck</source>
        <translation>In einen Lkw</translation>
    </message>
    <message>
        <source>To another place</source>
        <translation>An einen anderen Platz</translation>
    </message>
    <message>
        <source>What is recorded somewhere else is then answered as a wrong place, and stays.</source>
        <translation>Was anderswo festgehalten ist, wird dann als falscher Platz beantwortet und bleibt.</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>Wh&amp;ere to</source>
        <translation>W&amp;ohin</translation>
    </message>
    <message>
        <source>&amp;Truck</source>
        <translation>&amp;Lkw</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>V&amp;on</translation>
    </message>
    <message>
        <source>&amp;By</source>
        <translation>D&amp;urch</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>Cart</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Serial of the cart</source>
        <translation>Seriennummer des Wagens</translation>
    </message>
    <message>
        <source>Its name</source>
        <translation>Sein Name</translation>
    </message>
    <message>
        <source>Say who scans first</source>
        <translation>Zuerst sagen, wer scannt</translation>
    </message>
    <message>
        <source>Choose the show first</source>
        <translation>Zuerst die Show wählen</translation>
    </message>
    <message>
        <source>Say which cart first</source>
        <translation>Zuerst sagen, welcher Wagen</translation>
    </message>
    <message>
        <source>Say where to first</source>
        <translation>Zuerst sagen, wohin</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>What is shown is what was read before. Try again with F5.</source>
        <translation>Zu sehen ist, was vorher gelesen wurde. Mit F5 noch einmal versuchen.</translation>
    </message>
    <message>
        <source>Nothing was changed. Mend what it names and try again with F5, or start with --store and another place.</source>
        <translation>Nichts wurde geändert. Berichtigen, was genannt ist, und mit F5 noch einmal versuchen, oder mit --store und einem anderen Platz starten.</translation>
    </message>
    <message>
        <source>The program met something that it did not expect (%1).</source>
        <translation>Das Programm traf auf etwas Unerwartetes (%1).</translation>
    </message>
    <message>
        <source>The program met something that it did not expect.</source>
        <translation>Das Programm traf auf etwas Unerwartetes.</translation>
    </message>
</context>
<context>
    <name>SettingJudge</name>
    <message>
        <source>What is shown is the last setting that could be judged.</source>
        <translation>Zu sehen ist die letzte Einstellung, die sich beurteilen ließ.</translation>
    </message>
</context>
<context>
    <name>SettingMapPanel</name>
    <message>
        <source>Work it out</source>
        <translation>Ausrechnen</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Angehalten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Select an option to see at which tilts and trims it stands.</source>
        <translation>Eine Möglichkeit auswählen, um zu sehen, bei welchen Neigungen und Trimmhöhen sie besteht.</translation>
    </message>
    <message>
        <source>Running all rules at every tilt and trim …</source>
        <translation>Alle Regeln werden bei jeder Neigung und Trimmhöhe angewandt …</translation>
    </message>
    <message>
        <source>There is no map.</source>
        <translation>Es gibt kein Feld.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Working it out …</source>
        <translation>Wird ausgerechnet …</translation>
    </message>
    <message>
        <source>No setting is possible: %1.</source>
        <translation>Keine Einstellung ist möglich: %1.</translation>
    </message>
    <message>
        <source>Mark %1: </source>
        <translation>Marke %1: </translation>
    </message>
    <message>
        <source>%1each bar is one tilt of the %2 grid, run at every cm of trim (%3 settings). Nothing is said between bars.</source>
        <translation>%1jeder Balken ist eine Neigung des Rasters von %2, bei jedem cm Trimmhöhe angewandt (%3 Einstellungen). Zwischen den Balken wird nichts behauptet.</translation>
    </message>
</context>
<context>
    <name>SettingMapView</name>
    <message>
        <source>Tilts and trims at which it stands</source>
        <translation>Neigungen und Trimmhöhen, bei denen sie besteht</translation>
    </message>
    <message>
        <source>Left and right: one tilt. Up and down: one centimetre of trim, with Shift ten. Page up and down: one link of the chain. Ctrl+C copies the picture.</source>
        <translation>Links und rechts: eine Neigung. Auf und ab: ein Zentimeter Trimmhöhe, mit Umschalt zehn. Bild auf und ab: ein Glied der Kette. Strg+C kopiert das Bild.</translation>
    </message>
</context>
<context>
    <name>SheetPreview</name>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>US Letter</source>
        <translation>US Letter</translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation>&amp;Papier</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Keep the sheet</source>
        <translation>Das Blatt behalten</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;Spreadsheet (*.csv)</source>
        <translation>PDF (*.pdf);;Tabelle (*.csv)</translation>
    </message>
    <message>
        <source>It was not written. %1</source>
        <translation>Es wurde nicht geschrieben. %1</translation>
    </message>
    <message>
        <source>Drawing the pages…</source>
        <translation>Die Seiten werden gezeichnet …</translation>
    </message>
    <message>
        <source>The sheet is not shown. Nothing has changed; try again.</source>
        <translation>Das Blatt wird nicht gezeigt. Nichts hat sich geändert; bitte noch einmal versuchen.</translation>
    </message>
</context>
<context>
    <name>ShowChooser</name>
    <message>
        <source>Show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Hängung</translation>
    </message>
    <message>
        <source>&amp;Show</source>
        <translation>&amp;Show</translation>
    </message>
    <message>
        <source>Han&amp;g</source>
        <translation>Hän&amp;gung</translation>
    </message>
</context>
<context>
    <name>SideBySidePanel</name>
    <message>
        <source>Take all away</source>
        <translation>Alle wegnehmen</translation>
    </message>
    <message>
        <source>Options side by side</source>
        <translation>Möglichkeiten nebeneinander</translation>
    </message>
    <message>
        <source>Ctrl+B, also from the list</source>
        <translation>Strg+B, auch aus der Liste</translation>
    </message>
    <message>
        <source>Take the selected one &amp;away</source>
        <translation>&amp;Die ausgewählte wegnehmen</translation>
    </message>
    <message>
        <source>Put the selected one &amp;beside</source>
        <translation>Die ausgewählte dazu&amp;stellen</translation>
    </message>
    <message>
        <source>Put two to four options beside one another: select each in the list and press Ctrl+B.</source>
        <translation>Zwei bis vier Möglichkeiten nebeneinanderstellen: jede in der Liste auswählen und Strg+B drücken.</translation>
    </message>
    <message>
        <source>No. %1 stands alone. Select another one and press Ctrl+B.</source>
        <translation>Nr. %1 steht allein. Eine andere auswählen und Strg+B drücken.</translation>
    </message>
    <message>
        <source>%1 options; what they differ in comes first. A verdict stands at each rule.</source>
        <translation>%1 Möglichkeiten; worin sie sich unterscheiden, kommt zuerst. Bei jeder Regel steht ein Urteil.</translation>
    </message>
</context>
<context>
    <name>SplitDialog</name>
    <message>
        <source>Who splits it</source>
        <translation>Wer sie teilt</translation>
    </message>
    <message>
        <source>Split %1</source>
        <translation>%1 teilen</translation>
    </message>
    <message>
        <source>How many pieces</source>
        <translation>Wie viele Stücke</translation>
    </message>
    <message>
        <source>Serial of the new batch</source>
        <translation>Seriennummer der neuen Menge</translation>
    </message>
    <message>
        <source>Needed: its own serial</source>
        <translation>Nötig: eine eigene Seriennummer</translation>
    </message>
    <message>
        <source>%1 has %2 pieces of %3 at %4. What is split off has the same history: nothing falls due later than before. Print a label for it.</source>
        <translation>%1 hat %2 Stück von %3 in %4. Was abgeteilt wird, hat dieselbe Geschichte: Nichts wird später fällig als vorher. Ein Etikett dafür drucken.</translation>
    </message>
    <message>
        <source>&amp;Pieces</source>
        <translation>&amp;Stücke</translation>
    </message>
    <message>
        <source>&amp;New serial</source>
        <translation>&amp;Neue Seriennummer</translation>
    </message>
    <message>
        <source>Split it</source>
        <translation>Teilen</translation>
    </message>
</context>
<context>
    <name>StateDialog</name>
    <message>
        <source>Who changes it</source>
        <translation>Wer ihn ändert</translation>
    </message>
    <message>
        <source>State of %1</source>
        <translation>Zustand von %1</translation>
    </message>
    <message>
        <source>New state</source>
        <translation>Neuer Zustand</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Needed: what was found or done</source>
        <translation>Nötig: was gefunden oder getan wurde</translation>
    </message>
    <message>
        <source>%1, %2, is %3 at %4. What it is set to stands until somebody changes it again; a released unit still owes every examination that is due.</source>
        <translation>%1, %2, ist %3 in %4. Der neue Zustand gilt, bis ihn jemand wieder ändert; ein freigegebenes Gerät schuldet weiter jede fällige Prüfung.</translation>
    </message>
    <message>
        <source>&amp;New state</source>
        <translation>&amp;Neuer Zustand</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>G&amp;rund</translation>
    </message>
    <message>
        <source>Change it</source>
        <translation>Ändern</translation>
    </message>
</context>
<context>
    <name>StockChart</name>
    <message>
        <source>%1: short for the first time on %2, %3 wanted and %4 fit.</source>
        <translation>%1: zum ersten Mal zu wenig am %2, %3 gebraucht und %4 brauchbar.</translation>
    </message>
    <message>
        <source>%1: never short within a year.</source>
        <translation>%1: binnen eines Jahres nie zu wenig.</translation>
    </message>
    <message>
        <source>Stock of the selected type against demand</source>
        <translation>Bestand des ausgewählten Typs gegen den Bedarf</translation>
    </message>
    <message>
        <source>wanted by shows</source>
        <translation>von Shows gebraucht</translation>
    </message>
    <message>
        <source>%1, fit for use</source>
        <translation>%1, brauchbar</translation>
    </message>
</context>
<context>
    <name>StockPage</name>
    <message>
        <source>Stock</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>No units and no demand yet. Import your gear list as a CSV file.</source>
        <translation>Noch kein Gerät und kein Bedarf. Die Geräteliste als CSV-Datei einlesen.</translation>
    </message>
    <message>
        <source>No type contains these words.</source>
        <translation>Kein Typ enthält diese Wörter.</translation>
    </message>
    <message>
        <source>The day that is looked at</source>
        <translation>Der Tag, der angesehen wird</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>What shows to come lack</source>
        <translation>Was kommenden Shows fehlt</translation>
    </message>
    <message>
        <source>Stock and demand could not be compared.</source>
        <translation>Bestand und Bedarf ließen sich nicht vergleichen.</translation>
    </message>
    <message>
        <source>On %1 no show is away.</source>
        <translation>Am %1 ist keine Show unterwegs.</translation>
    </message>
    <message>
        <source>Away on %1: %2.</source>
        <translation>Unterwegs am %1: %2.</translation>
    </message>
    <message>
        <source>Nothing is chosen yet for %1 hangs: what they will take is not counted.</source>
        <translation>Für %1 Hängungen ist noch nichts gewählt: Was sie brauchen werden, zählt nicht mit.</translation>
    </message>
    <message>
        <source>No show to come lacks anything of what is chosen so far</source>
        <translation>Keiner kommenden Show fehlt etwas vom bisher Gewählten</translation>
    </message>
    <message>
        <source>No show to come lacks anything</source>
        <translation>Keiner kommenden Show fehlt etwas</translation>
    </message>
</context>
<context>
    <name>SwapDialog</name>
    <message>
        <source>Swap a unit at %1</source>
        <translation>Gerät bei %1 tauschen</translation>
    </message>
    <message>
        <source>A unit that is dead at load-in gives its place to another of its type. Mass, examination and mark are checked again; the dead one is quarantined, the hangs that take such a unit are chosen anew, and their sheets come out as a new revision.</source>
        <translation>Ein Gerät, das beim Load-in ausfällt, macht einem anderen seines Typs Platz. Masse, Prüfung und Marke werden noch einmal geprüft; das ausgefallene wird gesperrt, die Hängungen, die ein solches Gerät tragen, werden neu gewählt, und ihre Blätter erscheinen als neue Revision.</translation>
    </message>
    <message>
        <source>&amp;Swap them</source>
        <translation>&amp;Tauschen</translation>
    </message>
    <message>
        <source>Scan its label, or type its serial or type</source>
        <translation>Etikett scannen, oder Seriennummer oder Typ eingeben</translation>
    </message>
    <message>
        <source>&amp;Dead</source>
        <translation>&amp;Ausgefallen</translation>
    </message>
    <message>
        <source>The unit that is dead</source>
        <translation>Das ausgefallene Gerät</translation>
    </message>
    <message>
        <source>Stand-&amp;in</source>
        <translation>&amp;Ersatz</translation>
    </message>
    <message>
        <source>What takes its place</source>
        <translation>Was seinen Platz einnimmt</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Danach</translation>
    </message>
    <message>
        <source>What the hangs then are</source>
        <translation>Was die Hängungen danach sind</translation>
    </message>
    <message>
        <source>&amp;Changes</source>
        <translation>Änder&amp;ungen</translation>
    </message>
    <message>
        <source>What changes against the signed settings</source>
        <translation>Was sich gegenüber den unterschriebenen Einstellungen ändert</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>&amp;Grund</translation>
    </message>
    <message>
        <source>What is wrong with it</source>
        <translation>Was ihm fehlt</translation>
    </message>
    <message>
        <source>Needed: what is wrong with the dead one</source>
        <translation>Nötig: was dem ausgefallenen fehlt</translation>
    </message>
    <message>
        <source>Who swaps it</source>
        <translation>Wer tauscht</translation>
    </message>
    <message>
        <source>not weighed</source>
        <translation>nicht gewogen</translation>
    </message>
    <message>
        <source>examined %1: %2</source>
        <translation>geprüft am %1: %2</translation>
    </message>
    <message>
        <source>no examination recorded</source>
        <translation>keine Prüfung erfasst</translation>
    </message>
    <message>
        <source>%1 at %2, %3, %4</source>
        <translation>%1 in %2, %3, %4</translation>
    </message>
    <message>
        <source> – unproven: %1</source>
        <translation> – unbelegt: %1</translation>
    </message>
    <message>
        <source> – may not go: %1</source>
        <translation> – darf nicht mit: %1</translation>
    </message>
    <message>
        <source>No other unit of its type may stand in: bring one that is ready and examined.</source>
        <translation>Kein anderes Gerät dieses Typs darf einspringen: Es braucht eines, das bereit und geprüft ist.</translation>
    </message>
    <message>
        <source>Being checked …</source>
        <translation>Wird geprüft …</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>the mark stays %1</source>
        <translation>die Marke bleibt %1</translation>
    </message>
    <message>
        <source>no chain</source>
        <translation>keine Kette</translation>
    </message>
    <message>
        <source>NOT CLEARED TO LIFT: %1</source>
        <translation>NICHT ZUM HEBEN FREIGEGEBEN: %1</translation>
    </message>
    <message>
        <source>%1, %2 at %3, %4</source>
        <translation>%1, %2 in %3, %4</translation>
    </message>
    <message>
        <source>Hang %1: revision %2 follows %3, %4.</source>
        <translation>Hängung %1: Revision %2 folgt auf %3, %4.</translation>
    </message>
    <message>
        <source>It fails and cannot be chosen: %1</source>
        <translation>Sie ist verletzt und kann nicht gewählt werden: %1</translation>
    </message>
    <message>
        <source>No figure changes. Print the sheets again, and sign the hold points again.</source>
        <translation>Keine Zahl ändert sich. Die Blätter neu drucken und die Haltepunkte neu unterschreiben.</translation>
    </message>
    <message>
        <source>Print the sheets again, and sign the hold points again.</source>
        <translation>Die Blätter neu drucken und die Haltepunkte neu unterschreiben.</translation>
    </message>
    <message>
        <source>What the hangs then are, in words</source>
        <translation>Was die Hängungen dann sind, in Worten</translation>
    </message>
</context>
<context>
    <name>TypePicture</name>
    <message>
        <source>Side view</source>
        <translation>Seitenansicht</translation>
    </message>
    <message>
        <source>Corners of the outline: %1. Drawn: %2.</source>
        <translation>Ecken des Umrisses: %1. Gezeichnet: %2.</translation>
    </message>
    <message>
        <source>Nothing to draw yet: type the outline&apos;s corners.</source>
        <translation>Noch nichts zu zeichnen: die Ecken des Umrisses eingeben.</translation>
    </message>
    <message>
        <source>forward →</source>
        <translation>nach vorn →</translation>
    </message>
</context>
<context>
    <name>VenueDialog</name>
    <message>
        <source>Points of the venue</source>
        <translation>Punkte des Orts</translation>
    </message>
    <message>
        <source>&amp;Add a point</source>
        <translation>Punkt &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Bays, trusses and beams of the venue</source>
        <translation>Felder, Traversen und Träger des Orts</translation>
    </message>
    <message>
        <source>&amp;What would it change?</source>
        <translation>&amp;Was würde es ändern?</translation>
    </message>
    <message>
        <source>Edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>Parts of the venue</source>
        <translation>Teile des Orts</translation>
    </message>
    <message>
        <source>&amp;Points</source>
        <translation>&amp;Punkte</translation>
    </message>
    <message>
        <source>&amp;Bays</source>
        <translation>&amp;Felder</translation>
    </message>
    <message>
        <source>A figure may be typed with its unit: 41 ft 6 in, 1.2 t. Empty means not known, and leaves the rules that need it unproven.</source>
        <translation>Eine Angabe darf mit ihrer Einheit getippt werden: 41 ft 6 in, 1.2 t. Leer heißt nicht bekannt und lässt die Regeln, die sie brauchen, unbelegt.</translation>
    </message>
    <message>
        <source>Point without a name</source>
        <translation>Punkt ohne Namen</translation>
    </message>
    <message>
        <source>Bay without a name</source>
        <translation>Feld ohne Namen</translation>
    </message>
    <message>
        <source>Judging every option that is chosen in this venue …</source>
        <translation>Jede Möglichkeit, die an diesem Ort gewählt ist, wird beurteilt …</translation>
    </message>
    <message>
        <source>Bridle without a name</source>
        <translation>Bridle ohne Namen</translation>
    </message>
    <message>
        <source>Obstruction without a name</source>
        <translation>Hindernis ohne Namen</translation>
    </message>
    <message>
        <source>Section without a name</source>
        <translation>Block ohne Namen</translation>
    </message>
    <message>
        <source>&amp;Add a bay</source>
        <translation>Feld &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Bridles of the venue</source>
        <translation>Bridles des Ortes</translation>
    </message>
    <message>
        <source>&amp;Add a bridle</source>
        <translation>Bridle &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Brid&amp;les</source>
        <translation>Brid&amp;les</translation>
    </message>
    <message>
        <source>Height is that of the apex, where its lowest shackle bears. Without a place of its own the apex is midway between the points.</source>
        <translation>Die Höhe ist die der Spitze, wo ihr unterster Schäkel trägt. Ohne eigene Stelle liegt die Spitze mitten zwischen den Punkten.</translation>
    </message>
    <message>
        <source>Audience sections of the venue</source>
        <translation>Publikumsblöcke des Ortes</translation>
    </message>
    <message>
        <source>&amp;Add a section</source>
        <translation>Block &amp;hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Seats</source>
        <translation>P&amp;lätze</translation>
    </message>
    <message>
        <source>Floor: distance and height, first row to last, “5 0; 32 1.5”. Either left from and left to, or a front line: its middle, bearing, width and radius, all five.</source>
        <translation>Boden: Abstand und Höhe, erste bis letzte Reihe, „5 0; 32 1,5“. Entweder links von und links bis, oder eine vordere Linie: Mitte, Richtung, Breite und Radius, alle fünf.</translation>
    </message>
    <message>
        <source>What stands under the low steel</source>
        <translation>Was unter dem tiefsten Stahl steht</translation>
    </message>
    <message>
        <source>&amp;Add an obstruction</source>
        <translation>Hindernis &amp;hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Obstructions</source>
        <translation>Hinde&amp;rnisse</translation>
    </message>
    <message>
        <source>&amp;Figures</source>
        <translation>An&amp;gaben</translation>
    </message>
    <message>
        <source>%1: %2. Fields to mend: %3.</source>
        <translation>%1: %2. Zu berichtigende Felder: %3.</translation>
    </message>
</context>
<context>
    <name>VenuePlan</name>
    <message>
        <source>one without a name</source>
        <translation>einer ohne Namen</translation>
    </message>
    <message>
        <source>Points drawn: %1 of %2.</source>
        <translation>Punkte gezeichnet: %1 von %2.</translation>
    </message>
    <message>
        <source> Not drawn, since the place cannot be read: %1.</source>
        <translation> Nicht gezeichnet, weil die Stelle nicht lesbar ist: %1.</translation>
    </message>
    <message>
        <source>audience ↑</source>
        <translation>Publikum ↑</translation>
    </message>
    <message>
        <source>← stage left</source>
        <translation>← Bühne links</translation>
    </message>
    <message>
        <source>datum</source>
        <translation>Bezugspunkt</translation>
    </message>
    <message>
        <source>No points yet. Add one, and it is drawn here.</source>
        <translation>Noch keine Punkte. Einen hinzufügen, und er wird hier gezeichnet.</translation>
    </message>
    <message>
        <source>Plan of the venue</source>
        <translation>Grundriss des Ortes</translation>
    </message>
    <message>
        <source> Seats drawn: %1.</source>
        <translation> Gezeichnete Plätze: %1.</translation>
    </message>
    <message>
        <source> Obstructions drawn: %1.</source>
        <translation> Gezeichnete Hindernisse: %1.</translation>
    </message>
</context>
<context>
    <name>VenueSide</name>
    <message>
        <source>The venue from the side</source>
        <translation>Der Ort von der Seite</translation>
    </message>
    <message>
        <source>low steel %1</source>
        <translation>tiefster Stahl %1</translation>
    </message>
    <message>
        <source>most trim %1</source>
        <translation>höchster Trim %1</translation>
    </message>
    <message>
        <source>least trim %1</source>
        <translation>tiefster Trim %1</translation>
    </message>
    <message>
        <source>%1: ears not known, floor from %2 at %3 to %4 at %5</source>
        <translation>%1: Ohren nicht bekannt, Boden von %2 bei %3 bis %4 bei %5</translation>
    </message>
    <message>
        <source>%1: ears from %2 at %3 to %4 at %5</source>
        <translation>%1: Ohren von %2 bei %3 bis %4 bei %5</translation>
    </message>
    <message>
        <source>%1: ears not known</source>
        <translation>%1: Ohren nicht bekannt</translation>
    </message>
    <message>
        <source>datum</source>
        <translation>Bezugspunkt</translation>
    </message>
    <message>
        <source>%1 from it</source>
        <translation>%1 davon</translation>
    </message>
    <message>
        <source>No seats yet: add a section, and it is drawn here.</source>
        <translation>Noch keine Plätze: einen Block hinzufügen, dann wird er hier gezeichnet.</translation>
    </message>
    <message>
        <source>%1: %2, trim %3</source>
        <translation>%1: %2, Trim %3</translation>
    </message>
</context>
<context>
    <name>VerdictLabel</name>
    <message>
        <source>no verdict</source>
        <translation>kein Urteil</translation>
    </message>
</context>
<context>
    <name>Window</name>
    <message>
        <source>&amp;Store</source>
        <translation>&amp;Bestand</translation>
    </message>
    <message>
        <source>&amp;Read again</source>
        <translation>&amp;Neu lesen</translation>
    </message>
    <message>
        <source>&amp;Import a spreadsheet…</source>
        <translation>Eine Tabelle &amp;einlesen…</translation>
    </message>
    <message>
        <source>Import a &amp;folder of spreadsheets…</source>
        <translation>Einen &amp;Ordner mit Tabellen einlesen…</translation>
    </message>
    <message>
        <source>Folder with CSV files</source>
        <translation>Ordner mit CSV-Dateien</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>Be&amp;enden</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Metric units (m, kg, kN)</source>
        <translation>&amp;Metrische Einheiten (m, kg, kN)</translation>
    </message>
    <message>
        <source>&amp;US customary units (ft, lb, lbf)</source>
        <translation>&amp;US-Einheiten (ft, lb, lbf)</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;This place</source>
        <translation>&amp;Dieser Bereich</translation>
    </message>
    <message>
        <source>&amp;About Hangbook</source>
        <translation>Ü&amp;ber Hangbook</translation>
    </message>
    <message>
        <source>Hangbook</source>
        <translation>Hangbook</translation>
    </message>
    <message>
        <source>Saved at %1</source>
        <translation>Gesichert um %1</translation>
    </message>
    <message>
        <source>%1 – Hangbook</source>
        <translation>%1 – Hangbook</translation>
    </message>
    <message>
        <source>What went wrong</source>
        <translation>Was schiefging</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close this message</source>
        <translation>Diese Meldung schließen</translation>
    </message>
    <message>
        <source>Store: %1</source>
        <translation>Bestand: %1</translation>
    </message>
    <message>
        <source>Everything is saved</source>
        <translation>Alles ist gesichert</translation>
    </message>
    <message>
        <source>Opening the store …</source>
        <translation>Der Bestand wird geöffnet …</translation>
    </message>
    <message>
        <source>There is no show named “%1” in this store. Choose one from the list of the Route.</source>
        <translation>In diesem Bestand gibt es keine Show namens „%1“. Eine aus der Liste der Route wählen.</translation>
    </message>
    <message>
        <source>About Hangbook</source>
        <translation>Über Hangbook</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Find anything</source>
        <translation>Alles &amp;finden</translation>
    </message>
    <message>
        <source>All &amp;keys</source>
        <translation>Alle &amp;Tasten</translation>
    </message>
    <message>
        <source>%1 · saved at %2</source>
        <translation>%1 · gesichert um %2</translation>
    </message>
    <message>
        <source>Go to %1</source>
        <translation>Zu %1</translation>
    </message>
    <message>
        <source>Ctrl+1 to Ctrl+6 go from place to place, Ctrl+K finds anything, F5 reads the store again. Ctrl+F1 lists all keys.</source>
        <translation>Strg+1 bis Strg+6 gehen von Bereich zu Bereich, Strg+K findet alles, F5 liest den Bestand neu. Strg+F1 zeigt alle Tasten.</translation>
    </message>
</context>
<context>
    <name>WithdrawDialog</name>
    <message>
        <source>Take back what is chosen</source>
        <translation>Das Gewählte zurücknehmen</translation>
    </message>
    <message>
        <source>Take it back</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Reason</source>
        <translation>G&amp;rund</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>Grund</translation>
    </message>
    <message>
        <source>Needed: why</source>
        <translation>Nötig: warum</translation>
    </message>
    <message>
        <source>Who takes it back</source>
        <translation>Wer sie zurücknimmt</translation>
    </message>
    <message>
        <source>Chosen for %1 at %2: %3, by %4 on %5. Taken back, its gear is free again and its sheets are no longer made; it stays in the history and can be undone.</source>
        <translation>Für %1 in %2 ist gewählt: %3, von %4 am %5. Zurückgenommen ist ihr Gerät wieder frei, und ihre Blätter werden nicht mehr gemacht; sie bleibt im Verlauf stehen und lässt sich rückgängig machen.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Not measured</source>
        <translation>Nicht gemessen</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Marke</translation>
    </message>
    <message>
        <source>Measured</source>
        <translation>Gemessen</translation>
    </message>
    <message>
        <source>Angle of the held cabinet&apos;s joint, as measured</source>
        <translation>Winkel des Gelenks der gehaltenen Box, wie gemessen</translation>
    </message>
    <message>
        <source>Tilt</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Chain</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>Serial of the chain</source>
        <translation>Seriennummer der Kette</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Point %1</source>
        <translation>Punkt %1</translation>
    </message>
    <message>
        <source>%1, capacity (%2)</source>
        <translation>%1, Tragfähigkeit (%2)</translation>
    </message>
    <message>
        <source>%1, height</source>
        <translation>%1, Höhe</translation>
    </message>
    <message>
        <source>%1, to stage left</source>
        <translation>%1, zur Bühne links</translation>
    </message>
    <message>
        <source>Town</source>
        <translation>Stadt</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>Datum</source>
        <translation>Bezugspunkt</translation>
    </message>
    <message>
        <source>Outdoors</source>
        <translation>Im Freien</translation>
    </message>
    <message>
        <source>Low steel</source>
        <translation>Tiefster Stahl</translation>
    </message>
    <message>
        <source>Least trim</source>
        <translation>Kleinste Trimmhöhe</translation>
    </message>
    <message>
        <source>Most trim</source>
        <translation>Größte Trimmhöhe</translation>
    </message>
    <message>
        <source>Access</source>
        <translation>Zugang</translation>
    </message>
    <message>
        <source>%1, load of other departments</source>
        <translation>%1, Last anderer Gewerke</translation>
    </message>
    <message>
        <source>%1, underside</source>
        <translation>%1, Unterseite</translation>
    </message>
    <message>
        <source>%1, ear height</source>
        <translation>%1, Ohrhöhe</translation>
    </message>
    <message>
        <source>%1, first row behind its front line</source>
        <translation>%1, erste Reihe hinter ihrer Vorderlinie</translation>
    </message>
    <message>
        <source>%1, first row at</source>
        <translation>%1, erste Reihe auf</translation>
    </message>
    <message>
        <source>%1, last row behind its front line</source>
        <translation>%1, letzte Reihe hinter ihrer Vorderlinie</translation>
    </message>
    <message>
        <source>%1, last row at</source>
        <translation>%1, letzte Reihe auf</translation>
    </message>
    <message>
        <source>%1, front line at x</source>
        <translation>%1, Vorderlinie bei x</translation>
    </message>
    <message>
        <source>%1, front line at y</source>
        <translation>%1, Vorderlinie bei y</translation>
    </message>
    <message>
        <source>%1, bearing to the rear</source>
        <translation>%1, Richtung nach hinten</translation>
    </message>
    <message>
        <source>%1, width</source>
        <translation>%1, Breite</translation>
    </message>
    <message>
        <source>%1, radius of the front line (0 = straight)</source>
        <translation>%1, Radius der Vorderlinie (0 = gerade)</translation>
    </message>
    <message>
        <source>Role</source>
        <translation>Rolle</translation>
    </message>
    <message>
        <source>%1, signed by %2</source>
        <translation>%1, unterschrieben von %2</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Value, %1</source>
        <translation>Wert, %1</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterschrieben von</translation>
    </message>
    <message>
        <source>%1 under %2, %3</source>
        <translation>%1 unter %2, %3</translation>
    </message>
    <message>
        <source>the bar</source>
        <translation>dem Rahmen</translation>
    </message>
    <message>
        <source>, %1 holes</source>
        <translation>, %1 Löcher</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Familie</translation>
    </message>
    <message>
        <source>Mass</source>
        <translation>Masse</translation>
    </message>
    <message>
        <source>Centre of gravity</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>Pin of the cabinet below</source>
        <translation>Bolzen der Box darunter</translation>
    </message>
    <message>
        <source>Corners of the outline</source>
        <translation>Ecken des Umrisses</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Chain eye</source>
        <translation>Kettenöse</translation>
    </message>
    <message>
        <source>Rear contact</source>
        <translation>Hintere Auflage</translation>
    </message>
    <message>
        <source>Covers the audience</source>
        <translation>Deckt Publikum ab</translation>
    </message>
    <message>
        <source>Cover, lower edge</source>
        <translation>Abdeckung, untere Kante</translation>
    </message>
    <message>
        <source>Cover, upper edge</source>
        <translation>Abdeckung, obere Kante</translation>
    </message>
    <message>
        <source>Cover, across</source>
        <translation>Abdeckung, quer</translation>
    </message>
    <message>
        <source>Throw</source>
        <translation>Reichweite</translation>
    </message>
    <message>
        <source>Level at 1 m, dB</source>
        <translation>Pegel in 1 m, dB</translation>
    </message>
    <message>
        <source>Face, m²</source>
        <translation>Fläche, m²</translation>
    </message>
    <message>
        <source>Force coefficient</source>
        <translation>Kraftbeiwert</translation>
    </message>
    <message>
        <source>Frame mass</source>
        <translation>Masse des Gestells</translation>
    </message>
    <message>
        <source>Frame centre of gravity</source>
        <translation>Schwerpunkt des Gestells</translation>
    </message>
    <message>
        <source>Stack pin</source>
        <translation>Bolzen des Stapels</translation>
    </message>
    <message>
        <source>Chain anchor</source>
        <translation>Anschlag der Kette</translation>
    </message>
    <message>
        <source>Head mass</source>
        <translation>Masse des Kopfs</translation>
    </message>
    <message>
        <source>Head centre of gravity</source>
        <translation>Schwerpunkt des Kopfs</translation>
    </message>
    <message>
        <source>Tilt axis</source>
        <translation>Achse der Neigung</translation>
    </message>
    <message>
        <source>Tilt travel</source>
        <translation>Weg der Neigung</translation>
    </message>
    <message>
        <source>Pan travel</source>
        <translation>Weg des Schwenks</translation>
    </message>
    <message>
        <source>Most swing</source>
        <translation>Größter Ausschlag</translation>
    </message>
    <message>
        <source>Tilt step</source>
        <translation>Schritt der Neigung</translation>
    </message>
    <message>
        <source>Datum for the tape</source>
        <translation>Bezugspunkt für das Bandmaß</translation>
    </message>
    <message>
        <source>%1, spacing</source>
        <translation>%1, Abstand</translation>
    </message>
    <message>
        <source>%1, limit below the picks</source>
        <translation>%1, Grenze unter den Anschlägen</translation>
    </message>
    <message>
        <source>%1, most cabinets</source>
        <translation>%1, höchstens Boxen</translation>
    </message>
    <message>
        <source>Working load limit</source>
        <translation>Tragfähigkeit (WLL)</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Masse des Gehäuses</translation>
    </message>
    <message>
        <source>Body climbs</source>
        <translation>Gehäuse klettert</translation>
    </message>
    <message>
        <source>Chain, per metre</source>
        <translation>Kette, je Meter</translation>
    </message>
    <message>
        <source>Chain bag</source>
        <translation>Kettensack</translation>
    </message>
    <message>
        <source>Chain length</source>
        <translation>Kettenlänge</translation>
    </message>
    <message>
        <source>Closed length</source>
        <translation>Kürzeste Länge</translation>
    </message>
    <message>
        <source>Speed</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>Hoisting class</source>
        <translation>Hubklasse</translation>
    </message>
    <message>
        <source>Holds over people without secondary</source>
        <translation>Hält ohne Sicherung über Personen</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Teilung</translation>
    </message>
    <message>
        <source>Fixed length</source>
        <translation>Feste Länge</translation>
    </message>
    <message>
        <source>Links</source>
        <translation>Glieder</translation>
    </message>
    <message>
        <source>Mass per metre</source>
        <translation>Masse je Meter</translation>
    </message>
    <message>
        <source>Discarded at a stretch of</source>
        <translation>Abgelegt bei einer Längung von</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Carries</source>
        <translation>Trägt</translation>
    </message>
    <message>
        <source>Most cabinets</source>
        <translation>Höchstens Boxen</translation>
    </message>
    <message>
        <source>Mass, empty</source>
        <translation>Masse, leer</translation>
    </message>
    <message>
        <source>Height, loaded</source>
        <translation>Höhe, beladen</translation>
    </message>
    <message>
        <source>Bars</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>%1: %2 to %3</source>
        <translation>%1: %2 bis %3</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>keine Quelle</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Maker, town</source>
        <translation>Hersteller, Stadt</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Figures without which a rule may stay unproven</source>
        <translation>Angaben, ohne die eine Regel unbelegt bleiben kann</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Dated</source>
        <translation>Vom</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Angabe</translation>
    </message>
    <message>
        <source>none stated</source>
        <translation>keine angegeben</translation>
    </message>
    <message>
        <source>At %1 from %2 to %3.</source>
        <translation>In %1 vom %2 bis %3.</translation>
    </message>
    <message>
        <source> It falls due while the gear is away: examine it before it leaves.</source>
        <translation> Sie wird fällig, während das Gerät unterwegs ist: vor der Abfahrt prüfen.</translation>
    </message>
    <message>
        <source>now, at %1</source>
        <translation>jetzt, in %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1, ahead</source>
        <translation>%1, voraus</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Stands until</source>
        <translation>Gilt bis</translation>
    </message>
    <message>
        <source>The last day on which the last examination stands</source>
        <translation>Der letzte Tag, an dem die letzte Prüfung gilt</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Serial</source>
        <translation>Seriennummer</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Typ</translation>
    </message>
    <message>
        <source>Examination</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Best examined</source>
        <translation>Am besten geprüft</translation>
    </message>
    <message>
        <source>Where the fewest units are away and the interval is used up: the last days at the warehouse before it falls due, else the last stop before</source>
        <translation>Wo die wenigsten Geräte unterwegs sind und die Frist ausgeschöpft ist: die letzten Tage im Lager vor der Fälligkeit, sonst der letzte Halt davor</translation>
    </message>
    <message>
        <source>Last done</source>
        <translation>Zuletzt</translation>
    </message>
    <message>
        <source>Is at</source>
        <translation>Ist in</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation>keine festgehalten</translation>
    </message>
    <message>
        <source>not met</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>überfällig</translation>
    </message>
    <message>
        <source>The last examination no longer stands.</source>
        <translation>Die letzte Prüfung gilt nicht mehr.</translation>
    </message>
    <message>
        <source>due soon</source>
        <translation>bald fällig</translation>
    </message>
    <message>
        <source>Thirty days or less are left.</source>
        <translation>Es bleiben dreißig Tage oder weniger.</translation>
    </message>
    <message>
        <source>in order</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>The last examination stands.</source>
        <translation>Die letzte Prüfung gilt.</translation>
    </message>
    <message>
        <source>On cart</source>
        <translation>Auf Wagen</translation>
    </message>
    <message>
        <source>Next examination</source>
        <translation>Nächste Prüfung</translation>
    </message>
    <message>
        <source>Weighed</source>
        <translation>Gewogen</translation>
    </message>
    <message>
        <source>Mass as weighed by the crew; it stands before the maker&apos;s figure</source>
        <translation>Masse, wie von der Crew gewogen; sie steht vor der Angabe des Herstellers</translation>
    </message>
    <message>
        <source>Owner</source>
        <translation>Eigner</translation>
    </message>
    <message>
        <source>Not to be used.</source>
        <translation>Nicht zu benutzen.</translation>
    </message>
    <message>
        <source>Not to be used before it is back.</source>
        <translation>Nicht zu benutzen, bevor es zurück ist.</translation>
    </message>
    <message>
        <source>no rule</source>
        <translation>keine Regel</translation>
    </message>
    <message>
        <source>No examination rule speaks of it.</source>
        <translation>Keine Prüfregel spricht davon.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, overdue</source>
        <translation>%1, überfällig</translation>
    </message>
    <message>
        <source>%1, place %2</source>
        <translation>%1, Platz %2</translation>
    </message>
    <message>
        <source>Not weighed; the maker&apos;s figure counts.</source>
        <translation>Nicht gewogen; die Angabe des Herstellers zählt.</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigen</translation>
    </message>
    <message>
        <source>%1, until %2</source>
        <translation>%1, bis %2</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>A mass in it is not known.</source>
        <translation>Eine Masse darin ist nicht bekannt.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Cart</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>Rides on it</source>
        <translation>Steht darauf</translation>
    </message>
    <message>
        <source>For the hang</source>
        <translation>Für die Hängung</translation>
    </message>
    <message>
        <source>Gross</source>
        <translation>Brutto</translation>
    </message>
    <message>
        <source>no cart known</source>
        <translation>kein Wagen bekannt</translation>
    </message>
    <message>
        <source>No type of cart says that it takes this cabinet, or how many.</source>
        <translation>Kein Wagentyp sagt, dass er diese Box aufnimmt, oder wie viele.</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, shared</source>
        <translation>%1, geteilt</translation>
    </message>
    <message>
        <source>What is left over on one side is wheeled across to the other.</source>
        <translation>Was auf einer Seite übrig ist, wird zur anderen hinübergerollt.</translation>
    </message>
    <message>
        <source>Out</source>
        <translation>Heraus</translation>
    </message>
    <message>
        <source>The order in which it comes out; to load, go from the last to the first</source>
        <translation>Die Reihenfolge, in der es herauskommt; geladen wird vom Letzten zum Ersten</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>On the floor</source>
        <translation>Auf dem Boden</translation>
    </message>
    <message>
        <source>being booked</source>
        <translation>wird gebucht</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>Code</source>
        <translation>Code</translation>
    </message>
    <message>
        <source>In words</source>
        <translation>In Worten</translation>
    </message>
    <message>
        <source>examine %1</source>
        <translation>%1 prüfen</translation>
    </message>
    <message>
        <source>release or repair %1</source>
        <translation>%1 freigeben oder instand setzen</translation>
    </message>
    <message>
        <source>hire in %1</source>
        <translation>%1 zumieten</translation>
    </message>
    <message>
        <source>short of %1</source>
        <translation>es fehlen %1</translation>
    </message>
    <message>
        <source>The shows that are away on this day want more than are fit.</source>
        <translation>Die Shows, die an diesem Tag unterwegs sind, wollen mehr, als brauchbar sind.</translation>
    </message>
    <message>
        <source>No rule says how often %1 of these must be examined.</source>
        <translation>Keine Regel sagt, wie oft %1 davon geprüft werden müssen.</translation>
    </message>
    <message>
        <source>Owned</source>
        <translation>Eigen</translation>
    </message>
    <message>
        <source>Hired</source>
        <translation>Gemietet</translation>
    </message>
    <message>
        <source>Of others, and not due back before this day</source>
        <translation>Von anderen, und nicht vor diesem Tag zurückzugeben</translation>
    </message>
    <message>
        <source>Away now</source>
        <translation>Jetzt unterwegs</translation>
    </message>
    <message>
        <source>Recorded as away today, whichever day is looked at</source>
        <translation>Heute als unterwegs festgehalten, welcher Tag auch angesehen wird</translation>
    </message>
    <message>
        <source>Kept back</source>
        <translation>Zurückgehalten</translation>
    </message>
    <message>
        <source>Quarantined or in repair</source>
        <translation>Gesperrt oder in Reparatur</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>An examination does not stand on this day</source>
        <translation>Eine Prüfung gilt an diesem Tag nicht</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gebraucht</translation>
    </message>
    <message>
        <source>By what is chosen for the shows that are away on this day</source>
        <translation>Von dem, was für die Shows gewählt ist, die an diesem Tag unterwegs sind</translation>
    </message>
    <message>
        <source>Free</source>
        <translation>Frei</translation>
    </message>
    <message>
        <source>Owned and hired, without what is kept back, due or wanted</source>
        <translation>Eigen und gemietet, ohne was zurückgehalten, fällig oder gebraucht ist</translation>
    </message>
    <message>
        <source>Wanted by</source>
        <translation>Gebraucht von</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>Lacks</source>
        <translation>Fehlt</translation>
    </message>
    <message>
        <source>Short of</source>
        <translation>Zu wenig um</translation>
    </message>
    <message>
        <source>On</source>
        <translation>Am</translation>
    </message>
    <message>
        <source>The first of its worst days; all shows that are away then take from the same stock</source>
        <translation>Der erste ihrer schlimmsten Tage; alle Shows, die dann unterwegs sind, nehmen vom selben Bestand</translation>
    </message>
    <message>
        <source>What would fill it</source>
        <translation>Was es füllen würde</translation>
    </message>
    <message>
        <source>Of the tour %1</source>
        <translation>Von der Tour %1</translation>
    </message>
    <message>
        <source>moved</source>
        <translation>bewegt</translation>
    </message>
    <message>
        <source>entered</source>
        <translation>eingetragen</translation>
    </message>
    <message>
        <source>out</source>
        <translation>hinaus</translation>
    </message>
    <message>
        <source>in</source>
        <translation>herein</translation>
    </message>
    <message>
        <source>onto a cart</source>
        <translation>auf einen Wagen</translation>
    </message>
    <message>
        <source>into a truck</source>
        <translation>in einen Lkw</translation>
    </message>
    <message>
        <source>state</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>zurückgenommen</translation>
    </message>
    <message>
        <source>on cart %1</source>
        <translation>auf Wagen %1</translation>
    </message>
    <message>
        <source>for %1</source>
        <translation>für %1</translation>
    </message>
    <message>
        <source>examined</source>
        <translation>geprüft</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>von %1</translation>
    </message>
    <message>
        <source>%1 times</source>
        <translation>%1-mal</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>file</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>SHA-256 %1…</source>
        <translation>SHA-256 %1…</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Recorded by</source>
        <translation>Festgehalten von</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>corrected since: %1</source>
        <translation>seither berichtigt: %1</translation>
    </message>
    <message>
        <source>The figures here support the maker&apos;s manual, local codes and a competent person&apos;s judgement. They do not replace them. “Holds” means within the limits that were entered; it is never permission to lift. The building, trusses and how loads move lie outside this program and belong to the engineer who answers for them.</source>
        <translation>Die Angaben hier unterstützen das Handbuch des Herstellers, örtliche Vorschriften und das Urteil einer befähigten Person. Sie ersetzen sie nicht. „Hält“ heißt innerhalb der eingetragenen Grenzen; es ist nie eine Erlaubnis zu heben. Das Gebäude, Traversen und die Bewegung von Lasten liegen außerhalb dieses Programms und gehören der Ingenieurin oder dem Ingenieur, die dafür einstehen.</translation>
    </message>
    <message>
        <source>Hangbook %1 works out which loudspeaker stack a venue can take, what hangs from each point, how high it ends up and at which link the chain goes.

Free software under the GNU General Public License, version 3 or any later version (GPL-3.0-or-later). It comes without any warranty.</source>
        <translation>Hangbook %1 rechnet aus, welchen Lautsprecherstapel ein Ort aufnehmen kann, was an jedem Punkt hängt, wie hoch es endet und an welches Glied die Kette kommt.

Freie Software unter der GNU General Public License, Version 3 oder jeder späteren Version (GPL-3.0-or-later). Sie kommt ohne jede Gewährleistung.</translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation>nicht lesbar</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Record</source>
        <translation>Eintrag</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Stands / was read</source>
        <translation>Steht / gelesen</translation>
    </message>
    <message>
        <source>Becomes / is expected</source>
        <translation>Wird / erwartet</translation>
    </message>
    <message>
        <source>only higher</source>
        <translation>nur höher</translation>
    </message>
    <message>
        <source>only lower</source>
        <translation>nur niedriger</translation>
    </message>
    <message>
        <source>either way, signed</source>
        <translation>beides, unterschrieben</translation>
    </message>
    <message>
        <source>tour</source>
        <translation>Tour</translation>
    </message>
    <message>
        <source>venue</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>House rule</source>
        <translation>Hausregel</translation>
    </message>
    <message>
        <source>Stands at</source>
        <translation>Gilt mit</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>May move</source>
        <translation>Darf sich ändern</translation>
    </message>
    <message>
        <source>Set for</source>
        <translation>Festgelegt für</translation>
    </message>
    <message>
        <source>Where it comes from</source>
        <translation>Woher sie kommt</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Was sie ist</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 (not signed: proves nothing)</source>
        <translation>%1 (nicht unterschrieben: belegt nichts)</translation>
    </message>
    <message>
        <source>Chosen options that it counts for: %1; all would be judged again.</source>
        <translation>Gewählte Möglichkeiten, für die sie zählt: %1; alle würden neu beurteilt.</translation>
    </message>
    <message>
        <source>Chosen options that it counts for, judged again: %1.</source>
        <translation>Gewählte Möglichkeiten, für die sie zählt, neu beurteilt: %1.</translation>
    </message>
    <message>
        <source>None would change its verdict.</source>
        <translation>Keine würde ihr Urteil ändern.</translation>
    </message>
    <message>
        <source>None changed its verdict.</source>
        <translation>Keine hat ihr Urteil geändert.</translation>
    </message>
    <message>
        <source>%1, %2: %3 → %4. %5</source>
        <translation>%1, %2: %3 → %4. %5</translation>
    </message>
    <message>
        <source>no further tilt is possible</source>
        <translation>keine weitere Neigung ist möglich</translation>
    </message>
    <message>
        <source>Point at tilt %1, trim %2%3.</source>
        <translation>Punkt bei Neigung %1, Trimmhöhe %2%3.</translation>
    </message>
    <message>
        <source>: %1</source>
        <translation>: %1</translation>
    </message>
    <message>
        <source>At this tilt the trim may lie at %1 %2: below, %3; above, %4.</source>
        <translation>Bei dieser Neigung darf die Trimmhöhe bei %1 %2 liegen: darunter %3; darüber %4.</translation>
    </message>
    <message>
        <source>Tilts %1 to %2 leave a trim. Lower: %3. Higher: %4.</source>
        <translation>Neigungen von %1 bis %2 lassen eine Trimmhöhe. Niedriger: %3. Höher: %4.</translation>
    </message>
    <message>
        <source>No tilt of the grid leaves a trim: %1.</source>
        <translation>Keine Neigung des Rasters lässt eine Trimmhöhe: %1.</translation>
    </message>
    <message>
        <source>Marks that leave a trim at some tilt: %1.</source>
        <translation>Marken, die bei irgendeiner Neigung eine Trimmhöhe lassen: %1.</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Sorted by it, the options stand in the chosen order: what holds first</source>
        <translation>Danach sortiert stehen die Möglichkeiten in der gewählten Reihenfolge: was hält, zuerst</translation>
    </message>
    <message>
        <source>Place in the chosen order</source>
        <translation>Platz in der gewählten Reihenfolge</translation>
    </message>
    <message>
        <source>Stack, from the bar down</source>
        <translation>Stapel, vom Rahmen abwärts</translation>
    </message>
    <message>
        <source>Bar</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Picks</source>
        <translation>Anschläge</translation>
    </message>
    <message>
        <source>Hoist</source>
        <translation>Kettenzug</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>Punkte</translation>
    </message>
    <message>
        <source>Trim, %1</source>
        <translation>Trimmhöhe, %1</translation>
    </message>
    <message>
        <source>Where the lowest edge may be for every rule to hold</source>
        <translation>Wo die unterste Kante sein darf, damit jede Regel hält</translation>
    </message>
    <message>
        <source>Link that the chain is clipped at</source>
        <translation>Glied, an dem die Kette eingehängt ist</translation>
    </message>
    <message>
        <source>Point</source>
        <translation>Punkt</translation>
    </message>
    <message>
        <source>Heaviest point in % of its limit</source>
        <translation>Schwerster Punkt in % seiner Grenze</translation>
    </message>
    <message>
        <source>Cover</source>
        <translation>Abdeckung</translation>
    </message>
    <message>
        <source>Share of the audience that is covered</source>
        <translation>Anteil des Publikums, der abgedeckt ist</translation>
    </message>
    <message>
        <source>No. of an option that is no worse in verdict, cover, mass, cabinets and hoists, steps of the build and greatest use of a limit, and better in one of them</source>
        <translation>Nr. einer Möglichkeit, die in Urteil, Abdeckung, Masse, Boxen und Kettenzügen, Schritten des Aufbaus und größter Auslastung nicht schlechter und in einem davon besser ist</translation>
    </message>
    <message>
        <source>There is no trim at which every rule holds.</source>
        <translation>Es gibt keine Trimmhöhe, bei der jede Regel hält.</translation>
    </message>
    <message>
        <source>Not lower: %1. Not higher: %2.</source>
        <translation>Nicht niedriger: %1. Nicht höher: %2.</translation>
    </message>
    <message>
        <source>no limit</source>
        <translation>keine Grenze</translation>
    </message>
    <message>
        <source>%1 (chosen)</source>
        <translation>%1 (gewählt)</translation>
    </message>
    <message>
        <source>No chain in this stack, or no setting possible</source>
        <translation>Keine Kette in diesem Stapel, oder keine Einstellung möglich</translation>
    </message>
    <message>
        <source>No other option beats it in every respect.</source>
        <translation>Keine andere Möglichkeit übertrifft sie in jeder Hinsicht.</translation>
    </message>
    <message>
        <source>No. %1</source>
        <translation>Nr. %1</translation>
    </message>
    <message>
        <source>No. %1 (%2) is no worse in anything and better in something.</source>
        <translation>Nr. %1 (%2) ist in nichts schlechter und in etwas besser.</translation>
    </message>
    <message>
        <source>mark %1</source>
        <translation>Marke %1</translation>
    </message>
    <message>
        <source>not looked further</source>
        <translation>nicht weiter gesucht</translation>
    </message>
    <message>
        <source>fails</source>
        <translation>verletzt</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Limit</source>
        <translation>Grenze</translation>
    </message>
    <message>
        <source>Use of the limit</source>
        <translation>Auslastung der Grenze</translation>
    </message>
    <message>
        <source>The stroke stands at 100 %</source>
        <translation>Der Strich steht bei 100 %</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Was sie sagt</translation>
    </message>
    <message>
        <source>Where the limit comes from</source>
        <translation>Woher die Grenze kommt</translation>
    </message>
    <message>
        <source>not asked</source>
        <translation>nicht gefragt</translation>
    </message>
    <message>
        <source>low steel %1</source>
        <translation>tiefster Stahl %1</translation>
    </message>
    <message>
        <source>partly not covered</source>
        <translation>teils nicht abgedeckt</translation>
    </message>
    <message>
        <source>not covered</source>
        <translation>nicht abgedeckt</translation>
    </message>
    <message>
        <source>Side elevation of the hang %1 with %2 cabinets.</source>
        <translation>Seitenansicht der Hängung %1 mit %2 Boxen.</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>Chain at mark %1.</source>
        <translation>Kette an Marke %1.</translation>
    </message>
    <message>
        <source>Every sampled row is covered.</source>
        <translation>Jede betrachtete Reihe ist abgedeckt.</translation>
    </message>
    <message>
        <source>Some rows are not covered.</source>
        <translation>Einige Reihen sind nicht abgedeckt.</translation>
    </message>
    <message>
        <source>No. %1 · %2%3</source>
        <translation>Nr. %1 · %2%3</translation>
    </message>
    <message>
        <source> (chosen)</source>
        <translation> (gewählt)</translation>
    </message>
    <message>
        <source>In what they differ</source>
        <translation>Worin sie sich unterscheiden</translation>
    </message>
    <message>
        <source>In what they are alike</source>
        <translation>Worin sie gleich sind</translation>
    </message>
    <message>
        <source>%1 more on the bar</source>
        <translation>%1 mehr am Rahmen</translation>
    </message>
    <message>
        <source>%1 less under low steel</source>
        <translation>%1 weniger unter dem tiefsten Stahl</translation>
    </message>
    <message>
        <source>%1 lower</source>
        <translation>%1 niedriger</translation>
    </message>
    <message>
        <source>%1 higher</source>
        <translation>%1 höher</translation>
    </message>
    <message>
        <source>%1 further down</source>
        <translation>%1 weiter nach unten</translation>
    </message>
    <message>
        <source>%1 further up</source>
        <translation>%1 weiter nach oben</translation>
    </message>
    <message>
        <source>%1 shorter</source>
        <translation>%1 kürzer</translation>
    </message>
    <message>
        <source>%1 longer</source>
        <translation>%1 länger</translation>
    </message>
    <message>
        <source>%1 more wind</source>
        <translation>%1 mehr Wind</translation>
    </message>
    <message>
        <source>not even %1</source>
        <translation>nicht einmal %1</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Stands at every step of %1; no farther was tried.</source>
        <translation>Besteht bei jedem Schritt von %1; weiter wurde nicht versucht.</translation>
    </message>
    <message>
        <source>%1: it still stands, and no farther was tried.</source>
        <translation>%1: Sie besteht noch, und weiter wurde nicht versucht.</translation>
    </message>
    <message>
        <source>not possible</source>
        <translation>nicht möglich</translation>
    </message>
    <message>
        <source>One step on: %1</source>
        <translation>Ein Schritt weiter: %1</translation>
    </message>
    <message>
        <source>%1 and no farther. One step on (%2) it %3, by %4: %5</source>
        <translation>%1 und nicht weiter. Einen Schritt weiter (%2) ist sie %3, wegen %4: %5</translation>
    </message>
    <message>
        <source>is unproven</source>
        <translation>unbelegt</translation>
    </message>
    <message>
        <source>Run again: %1; anything nearer: %2.</source>
        <translation>Noch einmal angewandt: %1; alles Nähere: %2.</translation>
    </message>
    <message>
        <source>%1: %2; one step less: %3.</source>
        <translation>%1: %2; einen Schritt weniger: %3.</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>; and: </source>
        <translation>; und: </translation>
    </message>
    <message>
        <source> Then at tilt %1, trim %2%3.</source>
        <translation> Dann bei Neigung %1, Trimmhöhe %2%3.</translation>
    </message>
    <message>
        <source>, mark %1</source>
        <translation>, Marke %1</translation>
    </message>
    <message>
        <source> That is another option of the list.</source>
        <translation> Das ist eine andere Möglichkeit der Liste.</translation>
    </message>
    <message>
        <source>%1. %2%3</source>
        <translation>%1. %2%3</translation>
    </message>
    <message>
        <source>Unproven until what it lacks is asked for and entered.</source>
        <translation>Unbelegt, bis das Fehlende erfragt und eingetragen ist.</translation>
    </message>
    <message>
        <source>Not proven, by %1: %2</source>
        <translation>Nicht belegt, wegen %1: %2</translation>
    </message>
    <message>
        <source>It fails. No single change would do, and no pair of two. All rules were run %1 times.</source>
        <translation>Sie ist verletzt. Keine einzelne Änderung würde genügen, und kein Paar von zweien. Alle Regeln wurden %1-mal angewandt.</translation>
    </message>
    <message>
        <source>It fails. Each line would do by itself. All rules were run %1 times.</source>
        <translation>Sie ist verletzt. Jede Zeile würde für sich genügen. Alle Regeln wurden %1-mal angewandt.</translation>
    </message>
    <message>
        <source>It fails, and no single change would do; each line is a pair of two that does. All rules were run %1 times.</source>
        <translation>Sie ist verletzt, und keine einzelne Änderung würde genügen; jede Zeile ist ein Paar, das genügt. Alle Regeln wurden %1-mal angewandt.</translation>
    </message>
    <message>
        <source> With what says unproven it no longer fails, but is not proven either.</source>
        <translation> Mit dem, was unbelegt ist, ist sie nicht mehr verletzt, aber auch nicht belegt.</translation>
    </message>
    <message>
        <source>It is unproven. Nothing here mends that but the figures that are missing.</source>
        <translation>Sie ist unbelegt. Daran ändern nur die fehlenden Angaben etwas.</translation>
    </message>
    <message>
        <source>It stands; there is no direction in which it could be moved.</source>
        <translation>Sie besteht; es gibt keine Richtung, in die sie sich bewegen ließe.</translation>
    </message>
    <message>
        <source>It stands. From this setting, each way by itself; what breaks first in each unit comes first.</source>
        <translation>Sie besteht. Von dieser Einstellung aus, jeder Weg für sich; was in jeder Einheit zuerst bricht, kommt zuerst.</translation>
    </message>
    <message>
        <source>What would do, or how far it may go</source>
        <translation>Was genügen würde, oder wie weit es gehen darf</translation>
    </message>
    <message>
        <source>Now → then</source>
        <translation>Jetzt → dann</translation>
    </message>
    <message>
        <source>Verdict then</source>
        <translation>Urteil dann</translation>
    </message>
    <message>
        <source>With the change; of a way to a limit one step beyond it</source>
        <translation>Mit der Änderung; bei einem Weg zur Grenze einen Schritt darüber hinaus</translation>
    </message>
    <message>
        <source>What breaks first</source>
        <translation>Was zuerst bricht</translation>
    </message>
    <message>
        <source>Proved by running all rules</source>
        <translation>Belegt durch Anwenden aller Regeln</translation>
    </message>
    <message>
        <source>Hang</source>
        <translation>Hängung</translation>
    </message>
    <message>
        <source>Options</source>
        <translation>Möglichkeiten</translation>
    </message>
    <message>
        <source>Hold</source>
        <translation>Halten</translation>
    </message>
    <message>
        <source>Tight</source>
        <translation>Knapp</translation>
    </message>
    <message>
        <source>Unproven</source>
        <translation>Unbelegt</translation>
    </message>
    <message>
        <source>Fail</source>
        <translation>Verletzt</translation>
    </message>
    <message>
        <source>Best</source>
        <translation>Beste</translation>
    </message>
    <message>
        <source>Its stack</source>
        <translation>Ihr Stapel</translation>
    </message>
    <message>
        <source>Chosen now</source>
        <translation>Jetzt gewählt</translation>
    </message>
    <message>
        <source>As the rules judge it today</source>
        <translation>Wie die Regeln sie heute beurteilen</translation>
    </message>
    <message>
        <source>Because of</source>
        <translation>Wegen</translation>
    </message>
    <message>
        <source>Checked</source>
        <translation>Geprüft</translation>
    </message>
    <message>
        <source>before: nothing that decides it has changed since it was checked</source>
        <translation>vorher: Nichts, was sie entscheidet, hat sich seit der Prüfung geändert</translation>
    </message>
    <message>
        <source>not decided</source>
        <translation>nicht entschieden</translation>
    </message>
    <message>
        <source>not chosen</source>
        <translation>nicht gewählt</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>%1 of %2 shows, %3 settings decided.</source>
        <translation>%1 von %2 Shows, %3 Einstellungen entschieden.</translation>
    </message>
    <message>
        <source> Every hang has an option that stands.</source>
        <translation> Jede Hängung hat eine Möglichkeit, die besteht.</translation>
    </message>
    <message>
        <source> Hangs without an option that stands: %1.</source>
        <translation> Hängungen ohne eine Möglichkeit, die besteht: %1.</translation>
    </message>
    <message>
        <source> Chosen options that fail or are unproven today: %1.</source>
        <translation> Gewählte Möglichkeiten, die heute verletzt oder unbelegt sind: %1.</translation>
    </message>
    <message>
        <source> Stopped before the end; what was checked is kept, and the next check goes on from there.</source>
        <translation> Vor dem Ende angehalten; was geprüft ist, bleibt, und die nächste Prüfung macht dort weiter.</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Days on</source>
        <translation>Tage seit</translation>
    </message>
    <message>
        <source>Days since the stop before</source>
        <translation>Tage seit dem Halt davor</translation>
    </message>
    <message>
        <source>The shortest way over the ground from the stop before; no road is shorter</source>
        <translation>Der kürzeste Weg über den Boden vom Halt davor; keine Straße ist kürzer</translation>
    </message>
    <message>
        <source>Venue</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Load-in</source>
        <translation>Load-in</translation>
    </message>
    <message>
        <source>By the venue&apos;s own clock</source>
        <translation>Nach der Uhr des Orts</translation>
    </message>
    <message>
        <source>The worst of the chosen options</source>
        <translation>Das schlechteste der gewählten Möglichkeiten</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Hangs that have an option</source>
        <translation>Hängungen, die eine Möglichkeit haben</translation>
    </message>
    <message>
        <source>Heaviest</source>
        <translation>Schwerster</translation>
    </message>
    <message>
        <source>Static load of the heaviest point of the chosen options</source>
        <translation>Ruhende Last des schwersten Punkts der gewählten Möglichkeiten</translation>
    </message>
    <message>
        <source>Stacks</source>
        <translation>Stapel</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>Point %1, load at rest</source>
        <translation>Punkt %1, Last in Ruhe</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>hält</translation>
    </message>
    <message>
        <source>tight</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>unproven</source>
        <translation>unbelegt</translation>
    </message>
    <message>
        <source>Within every limit entered here. That is not permission to lift.</source>
        <translation>Innerhalb jeder hier eingetragenen Grenze. Das ist keine Erlaubnis zu heben.</translation>
    </message>
    <message>
        <source>Within every limit entered here, but close to at least one of them.</source>
        <translation>Innerhalb jeder hier eingetragenen Grenze, aber nahe an mindestens einer.</translation>
    </message>
    <message>
        <source>A figure that a rule needs is missing, out of date or of unknown basis.</source>
        <translation>Eine Angabe, die eine Regel braucht, fehlt, ist veraltet oder von unbekannter Grundlage.</translation>
    </message>
    <message>
        <source>Beyond at least one limit. It cannot be chosen.</source>
        <translation>Jenseits mindestens einer Grenze. Sie kann nicht gewählt werden.</translation>
    </message>
    <message>
        <source>load on each point</source>
        <translation>Last auf jedem Punkt</translation>
    </message>
    <message>
        <source>load on truss or bay</source>
        <translation>Last auf Traverse oder Feld</translation>
    </message>
    <message>
        <source>hoists</source>
        <translation>Kettenzüge</translation>
    </message>
    <message>
        <source>bar</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>number of cabinets</source>
        <translation>Zahl der Boxen</translation>
    </message>
    <message>
        <source>joints and pins</source>
        <translation>Gelenke und Bolzen</translation>
    </message>
    <message>
        <source>seated joints shut</source>
        <translation>aufsitzende Gelenke geschlossen</translation>
    </message>
    <message>
        <source>chain</source>
        <translation>Kette</translation>
    </message>
    <message>
        <source>lean of the hoists&apos; chains</source>
        <translation>Schrägzug der Hubketten</translation>
    </message>
    <message>
        <source>bridles</source>
        <translation>Bridles</translation>
    </message>
    <message>
        <source>one hoist higher</source>
        <translation>ein Kettenzug höher</translation>
    </message>
    <message>
        <source>share of each pick</source>
        <translation>Anteil jedes Anschlags</translation>
    </message>
    <message>
        <source>shackles and steel</source>
        <translation>Schäkel und Seile</translation>
    </message>
    <message>
        <source>wind</source>
        <translation>Wind</translation>
    </message>
    <message>
        <source>lowest edge</source>
        <translation>unterste Kante</translation>
    </message>
    <message>
        <source>headroom</source>
        <translation>Höhe darüber</translation>
    </message>
    <message>
        <source>hoist chain reaches</source>
        <translation>Hubkette reicht</translation>
    </message>
    <message>
        <source>travel of bar and joint</source>
        <translation>Weg von Rahmen und Gelenk</translation>
    </message>
    <message>
        <source>audience covered</source>
        <translation>Publikum abgedeckt</translation>
    </message>
    <message>
        <source>level front to back</source>
        <translation>Pegel vorn zu hinten</translation>
    </message>
    <message>
        <source>units free</source>
        <translation>Geräte frei</translation>
    </message>
    <message>
        <source>examinations stand</source>
        <translation>Prüfungen gelten</translation>
    </message>
    <message>
        <source>whole carts</source>
        <translation>ganze Wagen</translation>
    </message>
    <message>
        <source>chain of that pitch</source>
        <translation>Kette dieser Teilung</translation>
    </message>
    <message>
        <source>cabinet</source>
        <translation>Box</translation>
    </message>
    <message>
        <source>hoist</source>
        <translation>Kettenzug</translation>
    </message>
    <message>
        <source>cart</source>
        <translation>Wagen</translation>
    </message>
    <message>
        <source>hardware</source>
        <translation>Zubehör</translation>
    </message>
    <message>
        <source>loom</source>
        <translation>Kabelbaum</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>bereit</translation>
    </message>
    <message>
        <source>away</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>quarantined</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>in repair</source>
        <translation>in Reparatur</translation>
    </message>
    <message>
        <source>written off</source>
        <translation>ausgemustert</translation>
    </message>
    <message>
        <source>pass</source>
        <translation>bestanden</translation>
    </message>
    <message>
        <source>pass with remark</source>
        <translation>bestanden mit Bemerkung</translation>
    </message>
    <message>
        <source>fail</source>
        <translation>nicht bestanden</translation>
    </message>
    <message>
        <source>used</source>
        <translation>benutzt</translation>
    </message>
    <message>
        <source>harmed perhaps</source>
        <translation>vielleicht beschädigt</translation>
    </message>
    <message>
        <source>assembled</source>
        <translation>aufgebaut</translation>
    </message>
    <message>
        <source>fault found</source>
        <translation>Fehler gefunden</translation>
    </message>
    <message>
        <source>side pair</source>
        <translation>Seitenpaar</translation>
    </message>
    <message>
        <source>fore-aft</source>
        <translation>vorn-hinten</translation>
    </message>
    <message>
        <source>single</source>
        <translation>einzeln</translation>
    </message>
    <message>
        <source>basis not known</source>
        <translation>Grundlage nicht bekannt</translation>
    </message>
    <message>
        <source>at rest</source>
        <translation>in Ruhe</translation>
    </message>
    <message>
        <source>with dynamic factor</source>
        <translation>mit dynamischem Beiwert</translation>
    </message>
    <message>
        <source>seated</source>
        <translation>aufsitzend</translation>
    </message>
    <message>
        <source>pinned</source>
        <translation>verbolzt</translation>
    </message>
    <message>
        <source>pivot</source>
        <translation>Drehgelenk</translation>
    </message>
    <message>
        <source>shackle</source>
        <translation>Schäkel</translation>
    </message>
    <message>
        <source>sling</source>
        <translation>Schlinge</translation>
    </message>
    <message>
        <source>clip</source>
        <translation>Haken</translation>
    </message>
    <message>
        <source>pin</source>
        <translation>Bolzen</translation>
    </message>
    <message>
        <source>secondary steel</source>
        <translation>Sicherungsseil</translation>
    </message>
    <message>
        <source>To audience</source>
        <translation>Zum Publikum</translation>
    </message>
    <message>
        <source>To stage left</source>
        <translation>Zur Bühne links</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Capacity</source>
        <translation>Tragfähigkeit</translation>
    </message>
    <message>
        <source>Basis</source>
        <translation>Grundlage</translation>
    </message>
    <message>
        <source>Bay</source>
        <translation>Feld</translation>
    </message>
    <message>
        <source>Others&apos; load</source>
        <translation>Last anderer</translation>
    </message>
    <message>
        <source>Said by</source>
        <translation>Gesagt von</translation>
    </message>
    <message>
        <source>Said on</source>
        <translation>Gesagt am</translation>
    </message>
    <message>
        <source>expected %1</source>
        <translation>erwartet %1</translation>
    </message>
    <message>
        <source>read “%1”, expected %2</source>
        <translation>gelesen „%1“, erwartet %2</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Route</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>Build</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Fleet</source>
        <translation>Gerät</translation>
    </message>
    <message>
        <source>Fleet: stock against demand</source>
        <translation>Gerät: Bestand gegen Bedarf</translation>
    </message>
    <message>
        <source>Fleet: truck loads</source>
        <translation>Gerät: Ladung der Lkw</translation>
    </message>
    <message>
        <source>Examinations</source>
        <translation>Prüfungen</translation>
    </message>
    <message>
        <source>Data</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>All keys</source>
        <translation>Alle Tasten</translation>
    </message>
    <message>
        <source>help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Explain this place</source>
        <translation>Diesen Bereich erklären</translation>
    </message>
    <message>
        <source>About Hangbook: licence and cautions</source>
        <translation>Über Hangbook: Lizenz und Hinweise</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>point of %1</source>
        <translation>Punkt von %1</translation>
    </message>
    <message>
        <source>due %1</source>
        <translation>fällig %1</translation>
    </message>
    <message>
        <source>examination</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>cabinet type</source>
        <translation>Boxentyp</translation>
    </message>
    <message>
        <source>bar type</source>
        <translation>Rahmentyp</translation>
    </message>
    <message>
        <source>hoist type</source>
        <translation>Kettenzugtyp</translation>
    </message>
    <message>
        <source>chain type</source>
        <translation>Kettentyp</translation>
    </message>
    <message>
        <source>hardware type</source>
        <translation>Zubehörtyp</translation>
    </message>
    <message>
        <source>cart type</source>
        <translation>Wagentyp</translation>
    </message>
    <message>
        <source>stacking table</source>
        <translation>Stapeltabelle</translation>
    </message>
    <message>
        <source>person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>take back the choice for %1 at %2</source>
        <translation>Wahl für %1 in %2 zurücknehmen</translation>
    </message>
    <message>
        <source>choose %1 for %2 at %3</source>
        <translation>%1 für %2 in %3 wählen</translation>
    </message>
    <message>
        <source>trim %1</source>
        <translation>Trimmhöhe %1</translation>
    </message>
    <message>
        <source>tilt %1</source>
        <translation>Neigung %1</translation>
    </message>
    <message>
        <source>pan %1</source>
        <translation>Schwenk %1</translation>
    </message>
    <message>
        <source>no mark</source>
        <translation>keine Marke</translation>
    </message>
    <message>
        <source>other holes</source>
        <translation>andere Löcher</translation>
    </message>
    <message>
        <source>%1 for %2 at %3</source>
        <translation>%1 für %2 in %3</translation>
    </message>
    <message>
        <source>withdraw house rule %1 of %2</source>
        <translation>Hausregel %1 von %2 zurückziehen</translation>
    </message>
    <message>
        <source>house rule %1 of %2</source>
        <translation>Hausregel %1 von %2</translation>
    </message>
    <message>
        <source>edit %1</source>
        <translation>%1 bearbeiten</translation>
    </message>
    <message>
        <source>top front pin</source>
        <translation>oberer vorderer Bolzen</translation>
    </message>
    <message>
        <source>next pin</source>
        <translation>nächster Bolzen</translation>
    </message>
    <message>
        <source>chain eye</source>
        <translation>Kettenöse</translation>
    </message>
    <message>
        <source>rear contact</source>
        <translation>hintere Auflage</translation>
    </message>
    <message>
        <source>centre of gravity</source>
        <translation>Schwerpunkt</translation>
    </message>
    <message>
        <source>stack pin</source>
        <translation>Bolzen des Stapels</translation>
    </message>
    <message>
        <source>chain anchor</source>
        <translation>Anschlag der Kette</translation>
    </message>
    <message>
        <source>datum</source>
        <translation>Bezugspunkt</translation>
    </message>
    <message>
        <source>swap %1 for %2</source>
        <translation>%1 gegen %2 tauschen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1: %2 too few for the shows that are away at once: %3.</source>
        <translation>%1: %2 zu wenig für die Shows, die zugleich unterwegs sind: %3.</translation>
    </message>
    <message>
        <source>%1: %2 too few for %3.</source>
        <translation>%1: %2 zu wenig für %3.</translation>
    </message>
    <message>
        <source>Before the gear leaves on %1: %2.</source>
        <translation>Bevor das Material am %1 abgeht: %2.</translation>
    </message>
    <message>
        <source>At once: %1.</source>
        <translation>Sofort: %1.</translation>
    </message>
    <message>
        <source>%1 falls due for “%2” on %3, while the gear is away.</source>
        <translation>%1 wird für „%2“ am %3 fällig, während das Material unterwegs ist.</translation>
    </message>
    <message>
        <source>%1 examinations fall due while the gear is away, the first of %2 on %3.</source>
        <translation>%1 Prüfungen werden fällig, während das Material unterwegs ist, die erste von %2 am %3.</translation>
    </message>
    <message>
        <source>at the warehouse</source>
        <translation>im Lager</translation>
    </message>
    <message>
        <source>Examine ahead of the day: %1, on %2.</source>
        <translation>Vor der Zeit prüfen: %1, am %2.</translation>
    </message>
    <message>
        <source>Examine ahead of the day: %1, between %2 and %3.</source>
        <translation>Vor der Zeit prüfen: %1, zwischen %2 und %3.</translation>
    </message>
    <message>
        <source>From the load-out at %1 (%2) to the load-in here are %3 h for %4 over the ground.</source>
        <translation>Vom Abbau in %1 (%2) bis zum Aufbau hier sind es %3 h für %4 über Grund.</translation>
    </message>
    <message>
        <source>No truck is here before %1: load in later, or take other gear.</source>
        <translation>Vor %1 ist kein Lastwagen hier: später aufbauen oder anderes Material nehmen.</translation>
    </message>
    <message>
        <source>%1 is over on %2, and %3 lie between.</source>
        <translation>%1 ist am %2 zu Ende, und %3 liegen dazwischen.</translation>
    </message>
    <message>
        <source>No truck is here before %1: begin later, or take other gear.</source>
        <translation>Vor %1 ist kein Lastwagen hier: später beginnen oder anderes Material nehmen.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Clash</source>
        <translation>Konflikt</translation>
    </message>
    <message>
        <source>What does not go together</source>
        <translation>Was nicht zusammengeht</translation>
    </message>
    <message>
        <source>A way out</source>
        <translation>Ein Ausweg</translation>
    </message>
    <message>
        <source>gear</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>travel</source>
        <translation>Fahrt</translation>
    </message>
    <message>
        <source>Steels</source>
        <translation>Seile</translation>
    </message>
    <message>
        <source>Shackle</source>
        <translation>Schäkel</translation>
    </message>
    <message>
        <source>Tolerance</source>
        <translation>Toleranz</translation>
    </message>
    <message>
        <source>Audience from</source>
        <translation>Publikum von</translation>
    </message>
    <message>
        <source>Audience to</source>
        <translation>Publikum bis</translation>
    </message>
    <message>
        <source>Left from</source>
        <translation>Links von</translation>
    </message>
    <message>
        <source>Left to</source>
        <translation>Links bis</translation>
    </message>
    <message>
        <source>Underside</source>
        <translation>Unterkante</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Ohren</translation>
    </message>
    <message>
        <source>Front, audience</source>
        <translation>Vorn, Publikum</translation>
    </message>
    <message>
        <source>Front, left</source>
        <translation>Vorn, links</translation>
    </message>
    <message>
        <source>Bearing</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>Radius</source>
        <translation>Radius</translation>
    </message>
    <message>
        <source>from the datum towards the audience</source>
        <translation>vom Bezugspunkt zum Publikum hin</translation>
    </message>
    <message>
        <source>from the datum to stage left; to stage right is negative</source>
        <translation>vom Bezugspunkt zur Bühne links; nach rechts ist negativ</translation>
    </message>
    <message>
        <source>at rest, dynamic or unknown</source>
        <translation>at rest (ruhend), dynamic (dynamisch) oder unknown (unbekannt)</translation>
    </message>
    <message>
        <source>two or three of the venue&apos;s points: L1; L2</source>
        <translation>zwei oder drei Punkte des Ortes: L1; L2</translation>
    </message>
    <message>
        <source>types of hardware that a leg may be made up from, separated by ;</source>
        <translation>Typen von Anschlagmitteln, aus denen ein Strang bestehen darf, getrennt durch ;</translation>
    </message>
    <message>
        <source>type of hardware above each steel and at the apex</source>
        <translation>Typ des Anschlagmittels über jedem Seil und an der Spitze</translation>
    </message>
    <message>
        <source>how far a leg may be from its wanted length</source>
        <translation>wie weit ein Strang von seiner gewollten Länge abweichen darf</translation>
    </message>
    <message>
        <source>where it begins, from the datum towards the audience</source>
        <translation>wo es beginnt, vom Bezugspunkt zum Publikum hin</translation>
    </message>
    <message>
        <source>where it ends, from the datum towards the audience</source>
        <translation>wo es endet, vom Bezugspunkt zum Publikum hin</translation>
    </message>
    <message>
        <source>where it begins across; stage right is negative</source>
        <translation>wo es quer beginnt; Bühne rechts ist negativ</translation>
    </message>
    <message>
        <source>where it ends across; stage left is positive</source>
        <translation>wo es quer endet; Bühne links ist positiv</translation>
    </message>
    <message>
        <source>height of its lowest edge</source>
        <translation>Höhe seiner untersten Kante</translation>
    </message>
    <message>
        <source>distance and height of the floor, first row to last: 5 0; 32 1.5. The distance counts from the datum, or from the front line where there is one</source>
        <translation>Abstand und Höhe des Bodens, erste bis letzte Reihe: 5 0; 32 1,5. Der Abstand zählt vom Bezugspunkt, oder von der vorderen Linie, wo es eine gibt</translation>
    </message>
    <message>
        <source>of those who sit or stand there, above the floor</source>
        <translation>derer, die dort sitzen oder stehen, über dem Boden</translation>
    </message>
    <message>
        <source>middle of the first row, from the datum towards the audience</source>
        <translation>Mitte der ersten Reihe, vom Bezugspunkt zum Publikum hin</translation>
    </message>
    <message>
        <source>middle of the first row, from the datum to stage left</source>
        <translation>Mitte der ersten Reihe, vom Bezugspunkt zur Bühne links</translation>
    </message>
    <message>
        <source>from the first row to the last: 0 straight away from the stage, positive to stage left</source>
        <translation>von der ersten Reihe zur letzten: 0 gerade von der Bühne weg, positiv zur Bühne links</translation>
    </message>
    <message>
        <source>of the first row</source>
        <translation>der ersten Reihe</translation>
    </message>
    <message>
        <source>of the first row: 0 straight, positive curved round the stage</source>
        <translation>der ersten Reihe: 0 gerade, positiv um die Bühne gekrümmt</translation>
    </message>
    <message>
        <source>&amp;Joints</source>
        <translation>&amp;Gelenke</translation>
    </message>
    <message>
        <source>Joints</source>
        <translation>Gelenke</translation>
    </message>
    <message>
        <source>&amp;Add a joint</source>
        <translation>Gelenk &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Joint in row %1</source>
        <translation>Gelenk in Zeile %1</translation>
    </message>
    <message>
        <source>Above is the type over the joint, empty straight under the bar; below the type under it. Joint: seated, pinned or pivot. Angles: one for each hole, “0; -2.5”; a pivot has a travel, “-30; 0”. A pair that no row joins may not stand so.</source>
        <translation>Above ist der Typ über dem Gelenk, leer gleich unter dem Rahmen; below der Typ darunter. Joint: seated (aufsitzend), pinned (verbolzt) oder pivot (drehend). Angles: einer je Loch, „0; -2.5“; ein drehendes hat einen Weg, „-30; 0“. Ein Paar, das keine Zeile verbindet, darf so nicht stehen.</translation>
    </message>
    <message>
        <source>&amp;How many</source>
        <translation>&amp;Wie viele</translation>
    </message>
    <message>
        <source>Permitted numbers</source>
        <translation>Erlaubte Zahlen</translation>
    </message>
    <message>
        <source>&amp;Add a type</source>
        <translation>Typ &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Number in row %1</source>
        <translation>Zahl in Zeile %1</translation>
    </message>
    <message>
        <source>A type without a row may not stand in a stack of this table at all.</source>
        <translation>Ein Typ ohne Zeile darf in einem Stapel dieser Tabelle gar nicht stehen.</translation>
    </message>
    <message>
        <source>&amp;Picks</source>
        <translation>&amp;Anschläge</translation>
    </message>
    <message>
        <source>Ways of picking it up</source>
        <translation>Arten, ihn anzuschlagen</translation>
    </message>
    <message>
        <source>&amp;Add a way</source>
        <translation>Art &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Picks in row %1</source>
        <translation>Anschläge in Zeile %1</translation>
    </message>
    <message>
        <source>Arrangement: side-pair, fore-aft-pair or single. A side pair has a spacing, a fore-aft pair two places, a single pick one.</source>
        <translation>Arrangement: side-pair (Paar nebeneinander), fore-aft-pair (Paar hintereinander) oder single (einzeln). Ein Paar nebeneinander hat einen Abstand, eines hintereinander zwei Stellen, ein einzelner eine.</translation>
    </message>
    <message>
        <source>Soc&amp;kets</source>
        <translation>Bu&amp;chsen</translation>
    </message>
    <message>
        <source>Sockets</source>
        <translation>Buchsen</translation>
    </message>
    <message>
        <source>&amp;Add a socket</source>
        <translation>Buchse &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Socket in row %1</source>
        <translation>Buchse in Zeile %1</translation>
    </message>
    <message>
        <source>Name as written beside it; connector is the kind that it takes.</source>
        <translation>Name, wie er daneben steht; connector ist die Art, die sie aufnimmt.</translation>
    </message>
    <message>
        <source>&amp;Ends</source>
        <translation>&amp;Enden</translation>
    </message>
    <message>
        <source>Ends of the loom</source>
        <translation>Enden des Kabelbaums</translation>
    </message>
    <message>
        <source>&amp;Add an end</source>
        <translation>Ende &amp;hinzufügen</translation>
    </message>
    <message>
        <source>End in row %1</source>
        <translation>Ende in Zeile %1</translation>
    </message>
    <message>
        <source>Only a loom has ends. Name as written on it; reach along the loom from its end at the rack.</source>
        <translation>Nur ein Kabelbaum hat Enden. Name, wie er darauf steht; reach entlang des Kabelbaums von seinem Ende am Rack.</translation>
    </message>
    <message>
        <source>connector</source>
        <translation>Steckverbinder</translation>
    </message>
    <message>
        <source>new record %1</source>
        <translation>neuer Eintrag %1</translation>
    </message>
    <message>
        <source>remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>import of %1</source>
        <translation>Import von %1</translation>
    </message>
    <message>
        <source>loudspeaker</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>signal</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>power</source>
        <translation>Strom</translation>
    </message>
    <message>
        <source>signal and power</source>
        <translation>Signal und Strom</translation>
    </message>
    <message>
        <source>Next part</source>
        <translation>Nächster Teil</translation>
    </message>
    <message>
        <source>Part before it</source>
        <translation>Teil davor</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>plugs of %1 at %2</source>
        <translation>Stecker von %1 in %2</translation>
    </message>
    <message>
        <source>maker&apos;s figure</source>
        <translation>Angabe des Herstellers</translation>
    </message>
    <message>
        <source>stated by nobody</source>
        <translation>von niemandem angegeben</translation>
    </message>
    <message>
        <source>weighed %1 by %2</source>
        <translation>gewogen am %1 von %2</translation>
    </message>
    <message>
        <source>on a day not written down</source>
        <translation>an einem nicht notierten Tag</translation>
    </message>
    <message>
        <source>somebody not named</source>
        <translation>jemandem ohne Namen</translation>
    </message>
    <message>
        <source>Cabinet %1</source>
        <translation>Box %1</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Whose figure</source>
        <translation>Wessen Angabe</translation>
    </message>
    <message>
        <source>What is missing or wrong</source>
        <translation>Was fehlt oder nicht stimmt</translation>
    </message>
    <message>
        <source>not recorded by serial</source>
        <translation>nicht nach Seriennummer festgehalten</translation>
    </message>
    <message>
        <source>its mass is not known</source>
        <translation>seine Masse ist nicht bekannt</translation>
    </message>
    <message>
        <source>units by serial of %1 at %2</source>
        <translation>Einheiten nach Seriennummer von %1 in %2</translation>
    </message>
    <message>
        <source>Behind</source>
        <translation>Hinter</translation>
    </message>
    <message>
        <source>Travel</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>%1, to the audience</source>
        <translation>%1, zum Publikum</translation>
    </message>
    <message>
        <source>%1 by then</source>
        <translation>%1 bis dahin</translation>
    </message>
    <message>
        <source>trim</source>
        <translation>Trimmhöhe</translation>
    </message>
    <message>
        <source>units</source>
        <translation>Geräte</translation>
    </message>
    <message>
        <source>carts</source>
        <translation>Wagen</translation>
    </message>
</context>
<context>
    <name>WorkLine</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>How far it is</source>
        <translation>Wie weit es ist</translation>
    </message>
</context>
<context>
    <name>WouldDoPanel</name>
    <message>
        <source>Work it out</source>
        <translation>Ausrechnen</translation>
    </message>
    <message>
        <source>What would do, or what breaks first</source>
        <translation>Was genügen würde, oder was zuerst bricht</translation>
    </message>
    <message>
        <source>The selected line in full</source>
        <translation>Die ausgewählte Zeile im Ganzen</translation>
    </message>
    <message>
        <source>Stopped. Nothing was changed.</source>
        <translation>Angehalten. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Select an option to see what would do for it, or what breaks first.</source>
        <translation>Eine Möglichkeit auswählen, um zu sehen, was für sie genügen würde oder was zuerst bricht.</translation>
    </message>
    <message>
        <source>Nothing was changed.</source>
        <translation>Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>Running all rules on changed copies of the show …</source>
        <translation>Alle Regeln werden auf geänderte Kopien der Show angewandt …</translation>
    </message>
</context>
</TS>
