/** German helps of the plan's fields, by their English sentence. */
export const fieldHelps: Readonly<Record<string, string>> = {
  'Set on the sample plans: their figures describe no real product.':
    'In den Beispielplänen gesetzt: Ihre Zahlen beschreiben kein wirkliches Produkt.',
  'What its capacitors and transistors stand, from its sheet.':
    'Was Kondensatoren und Transistoren aushalten, laut Datenblatt.',
  'Loaded voltage below which it stops the motor. Unknown or none: nothing protects a lead pack.':
    'Spannung unter Last, unter der sie den Motor abschaltet. Unbekannt oder keine: Nichts schützt einen Bleiakku.',
  'Not known: 1 V per 12 V above the cutoff.': 'Nicht bekannt: 1 V je 12 V über der Abschaltung.',
  'How long the voltage must stay below the cutoff.':
    'Wie lange die Spannung unter der Abschaltung bleiben muss.',
  'Drawn from the pack while switched on.': 'Aus dem Akku, solange eingeschaltet ist.',
  'The same leg as amps, as a log or driven with the motor model: kept to be set beside the load that counts.':
    'Derselbe Abschnitt als Ampere, als Aufzeichnung oder mit dem Motormodell gefahren: aufgehoben, um ihn neben die Last zu stellen, die zählt.',
  'A leg in the other direction begins once the machine stands.':
    'Ein Abschnitt in der anderen Richtung beginnt, sobald die Maschine steht.',
  'Many controllers give only half of the voltage in reverse or in a slow position. 100 %: no such limit.':
    'Viele Steuerungen geben rückwärts oder in einer langsamen Stellung nur die halbe Spannung. 100 %: keine solche Grenze.',
  'Where the current was read.': 'Wo der Strom gemessen wurde.',
  'None: the road resistance is that of the table, or was typed in.':
    'Keine: Der Fahrwiderstand ist der der Tabelle oder wurde eingetippt.',
  'Ramps, throttle and losses; needed where legs are driven with the motor model.':
    'Rampen, Gas und Verluste; nötig, wo Abschnitte mit dem Motormodell gefahren werden.',
  'pwm: an electronic controller. switch: a plain switch or relay, full voltage at once.':
    'pwm: eine elektronische Steuerung. switch: ein einfacher Schalter oder ein Relais, sofort volle Spannung.',
  'Seconds from zero to full duty.': 'Sekunden von null bis voll.',
  'Not known: 96 % for an electronic controller, 100 % for a switch.':
    'Nicht bekannt: 96 % für eine elektronische Steuerung, 100 % für einen Schalter.',
  'Some controllers limp before they cut off. Not set: no such stage.':
    'Manche Steuerungen drosseln, bevor sie abschalten. Nicht gesetzt: keine solche Stufe.',
  'Share of its current limits while it limps.': 'Anteil der Stromgrenzen im gedrosselten Betrieb.',
  'Signal at which the duty leaves zero: the lower dead band ends here.':
    'Signal, bei dem das Tastverhältnis null verlässt: Hier endet das untere Totband.',
  'Signal from which the duty is full: the upper dead band begins here.':
    'Signal, ab dem voll gegeben wird: Hier beginnt das obere Totband.',
  '1: duty rises evenly. Above 1: gentle at first.':
    '1: steigt gleichmäßig. Über 1: anfangs sanft.',
  'Out and back, with switch and connectors. 3 to 15 mΩ is usual.':
    'Hin und zurück, mit Schalter und Steckern. Üblich sind 3 bis 15 mΩ.',
  'A step-down cannot give out more than this share of its input voltage.':
    'Mehr als diesen Anteil der Eingangsspannung kann ein Abwärtswandler nicht abgeben.',
  'Lower-case letters, digits and hyphens; unique in its list.':
    'Kleinbuchstaben, Ziffern und Bindestriche; in der Liste nur einmal.',
  'converter: through the step-down. pack: straight from the pack. mid-point: tapped between blocks of a series string.':
    'converter: über den Wandler. pack: direkt vom Akku. mid-point: zwischen den Blöcken eines Strangs abgegriffen.',
  'How the current depends on the voltage.': 'Wie der Strom von der Spannung abhängt.',
  'Drawn whatever the voltage, as a clamp meter reads it.':
    'Unabhängig von der Spannung gezogen, wie eine Stromzange es anzeigt.',
  'Constant power: the current rises as the voltage sags.':
    'Gleichbleibende Leistung: Der Strom steigt, wenn die Spannung einbricht.',
  'A plain resistor, such as a filament lamp or a heater.':
    'Ein einfacher Widerstand, etwa eine Glühlampe oder Heizung.',
  'At its own supply voltage.': 'Bei der eigenen Versorgungsspannung.',
  'Motors, gears, masses and brakes. Without it the legs of an outing are given in amperes or watts.':
    'Motoren, Getriebe, Massen und Bremsen. Ohne sie werden Abschnitte in Ampere oder Watt angegeben.',
  'What wheels, gears and rotors add to the inertia. 5 % is usual.':
    'Was Räder, Getriebe und Läufer zur Trägheit beitragen. Üblich sind 5 %.',
  'Loaded: twice the height of the axle above the ground.':
    'Belastet: die doppelte Höhe der Achse über dem Boden.',
  'Hard plastic wheels slip at about half the force of rubber.':
    'Harte Kunststoffräder rutschen etwa bei der halben Kraft von Gummi.',
  'Drag coefficient times front area. Not known: 0.5 m², a seated rider.':
    'Widerstandsbeiwert mal Stirnfläche. Nicht bekannt: 0,5 m², ein sitzender Fahrer.',
  'From the label. The other readings hold at this voltage unless a test voltage is given.':
    'Vom Typenschild. Die anderen Messwerte gelten bei dieser Spannung, wenn keine Prüfspannung angegeben ist.',
  'Voltage at the terminals during the no-load and stall readings. Not known: the rated voltage.':
    'Klemmenspannung bei Leerlauf- und Blockiermessung. Nicht bekannt: die Nennspannung.',
  'Of the motor shaft, wheels off the ground.': 'Der Motorwelle, Räder in der Luft.',
  'The speed constant, where the sheet states it.':
    'Die Drehzahlkonstante, wo das Datenblatt sie nennt.',
  'With brushes, at 20 °C: volts over amps with the shaft held, or a four-wire reading.':
    'Mit Bürsten, bei 20 °C: Volt durch Ampere bei festgehaltener Welle, oder Vierleitermessung.',
  'At the test voltage with the shaft held.': 'Bei der Prüfspannung mit festgehaltener Welle.',
  'Continuous current from the label.': 'Dauerstrom vom Typenschild.',
  'At the shaft, continuous.': 'An der Welle, dauernd.',
  'Winding to air. Not known: from the rated point, which is taken to heat the winding by 80 K.':
    'Wicklung zur Luft. Nicht bekannt: aus dem Nennpunkt, der die Wicklung um 80 K erwärmen soll.',
  'Not known: from the mass, or 20 minutes.': 'Nicht bekannt: aus der Masse, oder 20 Minuten.',
  'Not known: 120 °C, insulation class E with a margin.':
    'Nicht bekannt: 120 °C, Isolierstoffklasse E mit Abstand.',
  'What magnets and brushes stand for a moment.':
    'Was Magnete und Bürsten einen Augenblick lang aushalten.',
  'All of one type, geared to the same wheels.': 'Alle vom selben Typ, auf dieselben Räder.',
  'Turns of the motor for one turn of the wheel.': 'Umdrehungen des Motors je Umdrehung des Rads.',
  'About 95 % a stage; 75 to 85 % for a small gearbox of three stages.':
    'Etwa 95 % je Stufe; 75 bis 85 % für ein kleines Getriebe mit drei Stufen.',
  'In series they share the voltage (slow), in parallel the current (fast).':
    'In Reihe teilen sie die Spannung (langsam), parallel den Strom (schnell).',
  'coast: the motor turns freely. short: its terminals are joined. resistor: through a resistor. regeneration: back into the pack.':
    'coast: Der Motor dreht frei. short: Die Klemmen werden verbunden. resistor: über einen Widerstand. regeneration: zurück in den Akku.',
  "Multiple of the rated power. 5 for metal-element power resistors; more only if the part's sheet says so.":
    'Vielfaches der Nennleistung. 5 bei Metallelement-Leistungswiderständen; mehr nur laut Datenblatt.',
  "For one stop, from the part's sheet. Not known: overload factor x rated power x 5 s.":
    'Für einen Halt, aus dem Datenblatt. Nicht bekannt: Überlastfaktor x Nennleistung x 5 s.',
  'Not known: 150 s.': 'Nicht bekannt: 150 s.',
  'Not known: 250 K, usual for wirewound parts.':
    'Nicht bekannt: 250 K, üblich für Drahtwiderstände.',
  'Motor current while braking into the pack.': 'Motorstrom beim Bremsen in den Akku.',
  'Deceleration the mechanical foot or hand brake reaches. Not set: there is none.':
    'Verzögerung, die die mechanische Fuß- oder Handbremse erreicht. Nicht gesetzt: Es gibt keine.',
  'manual: the rider sets it. automatic: closes when the current is off.':
    'manual: Der Fahrer zieht sie an. automatic: schließt, wenn der Strom weg ist.',
  'A switch, contactor or pull-out plug in the main line that opens it whatever the controller does.':
    'Ein Schalter, Schütz oder Stecker in der Hauptleitung, der sie öffnet, was immer die Steuerung tut.',
  'While the machine is moving.': 'Während die Maschine fährt.',
  'The DC rating; an AC rating says nothing about direct current.':
    'Der Gleichstromwert; ein Wechselstromwert sagt über Gleichstrom nichts.',
  'At that direct voltage.': 'Bei dieser Gleichspannung.',
  'The controller stops when a throttle wire breaks or shorts.':
    'Die Steuerung hält an, wenn ein Gasdraht bricht oder kurzschließt.',
  'It does not move when switched on with the pedal pressed.':
    'Sie fährt nicht an, wenn sie mit getretenem Pedal eingeschaltet wird.',
  'For this rider in this place.': 'Für diesen Fahrer an diesem Ort.',
  'Rise over run: 10 % is one metre up in ten along.':
    'Höhe durch Weg: 10 % ist ein Meter hinauf auf zehn Meter.',
  '100 until a reading of current on level ground scales it.':
    '100, bis eine Strommessung auf ebenem Boden ihn anpasst.',
  'Of the blocks at the start and the air around them.':
    'Der Blöcke am Anfang und der Luft um sie.',
  'Repeated in order until a cutoff trips or the longest time is reached.':
    'Der Reihe nach wiederholt, bis eine Abschaltung auslöst oder die längste Zeit erreicht ist.',
  'None: the machine stands, accessories go on.':
    'Keine: Die Maschine steht, die Verbraucher laufen weiter.',
  'From least to most known: amps, a log, or the motor and machine model.':
    'Vom wenigsten zum meisten Wissen: Ampere, eine Aufzeichnung, oder Motor- und Maschinenmodell.',
  'Rise over run; negative is downhill.': 'Höhe durch Weg; negativ geht es bergab.',
  'Not set: the first gear.': 'Nicht gesetzt: der erste Gang.',
  'Travel of the pedal.': 'Weg des Pedals.',
  'Full throttle until it is reached, then held.': 'Vollgas, bis es erreicht ist, dann gehalten.',
  'The leg ends after this distance, at the latest after its duration. Not set: after its duration.':
    'Der Abschnitt endet nach dieser Strecke, spätestens nach seiner Dauer. Nicht gesetzt: nach der Dauer.',
  'The leg is cut into this many equal stretches, each begun from a stand. 0: it rolls on from the leg before.':
    'Der Abschnitt wird in so viele gleiche Stücke geteilt, jedes aus dem Stand. 0: Er rollt aus dem vorigen weiter.',
  'At the end of each stretch, braking included.': 'Am Ende jedes Stücks, mit dem Bremsen.',
  'Share of the load stated for the machine: 0 when it goes empty.':
    'Anteil der Last, die bei der Maschine steht: 0, wenn sie leer fährt.',
  'From the pack, over the whole leg.': 'Aus dem Akku, über den ganzen Abschnitt.',
  'current: the amps as logged. power: the watts as logged, for a pack of another voltage.':
    'current: die Ampere wie aufgezeichnet. power: die Watt wie aufgezeichnet, für einen Akku anderer Spannung.',
  'Each value holds from its time to the next.':
    'Jeder Wert gilt von seiner Zeit bis zur nächsten.',
  'Empty where the log has none.': 'Leer, wo die Aufzeichnung keine hat.',
  'After the cutoff: how much more runs after this rest.':
    'Nach der Abschaltung: wie viel nach dieser Pause noch läuft.',
  'agm, gel, flooded: lead-acid. lfp: lithium iron phosphate. nmc: lithium nickel-manganese-cobalt and its kin.':
    'agm, gel, flooded: Blei. lfp: Lithium-Eisenphosphat. nmc: Lithium-Nickel-Mangan-Kobalt und Verwandte.',
  'Six for a 12 V lead block, eight for a 24 V LFP pack.':
    'Sechs bei einem 12-V-Bleiblock, acht bei einem 24-V-LFP-Akku.',
  'Hours over which the rated capacity was delivered: 20 for most lead blocks, 5 or 1 for lithium.':
    'Stunden, über die die Nennkapazität entnommen wurde: 20 bei den meisten Bleiblöcken, 5 oder 1 bei Lithium.',
  '1 means no rate loss. Not known: the default of the chemistry, which is a wide guess.':
    '1 heißt kein Ratenverlust. Nicht bekannt: der übliche Wert der Chemie, eine weite Schätzung.',
  'Capacities the maker states at several rates.':
    'Kapazitäten, die der Hersteller für mehrere Zeiten nennt.',
  'Block voltage at which the maker stopped. Not known: the usual end voltage of the chemistry at that rate.':
    'Blockspannung, bei der der Hersteller aufhörte. Nicht bekannt: der übliche Entladeschluss der Chemie bei dieser Rate.',
  'Voltage against time at constant currents.': 'Spannung über der Zeit bei festen Strömen.',
  'Direct-current resistance of the whole block, new, full, at 25 °C. Not known: typical for chemistry and capacity.':
    'Gleichstromwiderstand des ganzen Blocks, neu, voll, bei 25 °C. Nicht bekannt: üblich für Chemie und Kapazität.',
  "From the maker's sheet, at 25 °C. Not known: usual for the chemistry.":
    'Aus dem Datenblatt, bei 25 °C. Nicht bekannt: üblich für die Chemie.',
  'Built into the block. None for lead blocks.': 'In den Block eingebaut. Keines bei Bleiblöcken.',
  'Current at which the BMS opens at once or within seconds.':
    'Strom, bei dem das BMS sofort oder in Sekunden öffnet.',
  'Cell-group voltage at which discharge is allowed again.':
    'Zellspannung, bei der wieder entladen werden darf.',
  "For one block, in the plan's currency.": 'Für einen Block, in der Währung des Plans.',
  'Which library or own part these figures were copied from. Editing a figure never changes the part.':
    'Aus welchem Teil diese Zahlen übernommen wurden. Eine Zahl zu ändern, ändert das Teil nie.',
  'Set by the bench from measurements; none: the figures above count.':
    'Vom Messplatz aus Messungen gesetzt; keine: Es gelten die Zahlen oben.',
  "Measured behaviour that replaces the label's figures in every simulation.":
    'Gemessenes Verhalten, das die Angaben des Etiketts in jeder Simulation ersetzt.',
  'Which readings or log the values were fitted from, and when.':
    'Aus welchen Messwerten oder welcher Aufzeichnung die Werte stammen, und wann.',
  'Block temperature at which capacity and resistances below hold.':
    'Blocktemperatur, bei der Kapazität und Widerstände unten gelten.',
  'Ageing is reckoned from here on.': 'Ab hier wird die Alterung gerechnet.',
  'In both wells, from full to the lowest point of the open-circuit curve.':
    'In beiden Töpfen, von voll bis zum tiefsten Punkt der Ruhespannungskurve.',
  '1 means no rate loss.': '1 heißt kein Ratenverlust.',
  'Of the whole block, at the temperature of the fit.':
    'Des ganzen Blocks, bei der Temperatur der Anpassung.',
  'Grows with 1/s - 1 as the head s of the available well falls.':
    'Wächst mit 1/s - 1, wenn der Stand s des verfügbaren Topfs fällt.',
  'Resistances scale with exp(rate × (temperature of the fit - temperature)).':
    'Widerstände ändern sich mit exp(Rate × (Temperatur der Anpassung - Temperatur)).',
  'Not known: usual for chemistry and capacity.': 'Nicht bekannt: üblich für Chemie und Kapazität.',
  'Not known: estimated from the size.': 'Nicht bekannt: aus der Größe geschätzt.',
  'Of the whole block, from 0 to 100 %, charge and voltage rising.':
    'Des ganzen Blocks, von 0 bis 100 %, Ladung und Spannung steigend.',
  'Of each string: lugs, links and fuse together. 1 to 4 mΩ is usual.':
    'Jedes Strangs: Schuhe, Verbinder und Sicherung zusammen. Üblich sind 1 bis 4 mΩ.',
  'Full-depth equivalents so far.': 'Bisherige Zyklen, auf volle Tiefe umgerechnet.',
  '1 is at the negative end.': '1 ist am Minusende.',
  'Not known: the same as the rest of the pack.': 'Nicht bekannt: wie der übrige Akku.',
  'Meter reading after some hours without load, for the findings.':
    'Messwert nach einigen Stunden ohne Last, für die Befunde.',
  'To spare the pack. Not set: until a cutoff trips.':
    'Um den Akku zu schonen. Nicht gesetzt: bis eine Abschaltung auslöst.',
  'staged: current, then voltage, then float or stop. constant-voltage: current limit then voltage for ever. wall-supply: an unregulated plug-in supply.':
    'staged: Strom, dann Spannung, dann Erhaltung oder Ende. constant-voltage: Stromgrenze, dann Spannung auf Dauer. wall-supply: ein ungeregeltes Steckernetzteil.',
  'Chemistries the label names.': 'Chemien, die das Etikett nennt.',
  'Cells in series the charger is made for: 12 for 24 V lead, 8 for 24 V LFP, 7 for 24 V class NMC.':
    'Zellen in Reihe, für die das Ladegerät gemacht ist: 12 bei 24 V Blei, 8 bei 24 V LFP, 7 bei 24-V-NMC.',
  'Highest voltage at 25 °C; for a wall supply, its voltage without load.':
    'Höchste Spannung bei 25 °C; bei einem Steckernetzteil die Spannung ohne Last.',
  'Held after the charge. Leave unknown where the charger stops instead.':
    'Nach dem Laden gehalten. Unbekannt lassen, wo das Ladegerät stattdessen endet.',
  'Only for a wall supply: how far its voltage falls with current.':
    'Nur beim Steckernetzteil: wie weit die Spannung mit dem Strom fällt.',
  '0 when the charger has none.': '0, wenn das Ladegerät keine hat.',
  'What port and lead carry continuously.': 'Was Buchse und Leitung dauernd tragen.',
  'Only where this option needs another controller than the machine has.':
    'Nur wo diese Variante eine andere Steuerung braucht als die der Maschine.',
  'Parts the user added; offered beside the library.':
    'Selbst hinzugefügte Teile; stehen neben der Bibliothek zur Wahl.',
  'Makers state 14.4 to 14.7 V.': 'Hersteller nennen 14,4 bis 14,7 V.',
  'Rating at least this many times the continuous current.':
    'Nennwert mindestens so oft wie der Dauerstrom.',
  'Below this factor, and above 1, a warning.': 'Unter diesem Faktor und über 1 eine Warnung.',
  'Makers state one to six months; warmer means oftener.':
    'Hersteller nennen ein bis sechs Monate; wärmer heißt öfter.',
  'When the machine is used and when it can be charged. None yet: the place Charging starts one.':
    'Wann die Maschine benutzt wird und wann sie laden kann. Noch keine: Der Ort Laden legt eine an.',
  'Minutes after midnight.': 'Minuten nach Mitternacht.',
  'Not set: the minutes wanted of the outing.': 'Nicht gesetzt: die gewünschten Minuten der Fahrt.',
  'How often it really takes place.': 'Wie oft es wirklich stattfindet.',
  'Minutes after midnight; earlier than the beginning means the next day.':
    'Minuten nach Mitternacht; früher als der Beginn heißt am nächsten Tag.',
  "In the plan's currency.": 'In der Währung des Plans.',
  'open-air: outdoors or under a roof. ventilated-room: garage or shed with openings. closed-room: cellar, cupboard, cabin. sleeping-room: anywhere people sleep.':
    'open-air: draußen oder unter Dach. ventilated-room: Garage oder Schuppen mit Öffnungen. closed-room: Keller, Schrank, Kabine. sleeping-room: überall, wo jemand schläft.',
  'Free area of the inlet; the outlet is as large.':
    'Freie Fläche des Einlasses; der Auslass ist ebenso groß.',
  'A hallway, a stair or beside the only door.':
    'Ein Flur, eine Treppe oder neben der einzigen Tür.',
  'Not known: as outdoors.': 'Nicht bekannt: wie draußen.',
  '7 north of the equator, 1 south of it.': '7 nördlich des Äquators, 1 südlich davon.',
  'The rest of the year the machine is stored.': 'Den Rest des Jahres steht die Maschine im Lager.',
  'Another number deals other weeks.': 'Eine andere Zahl würfelt andere Wochen.',
  'Then standby drain stops and only self-discharge is left.':
    'Dann ruht der Standby-Verbrauch, und nur die Selbstentladung bleibt.',
  'Lowest charge you want to see at the end of an outing.':
    'Niedrigste Ladung, die am Ende einer Fahrt übrig sein soll.',
  '2: one drives while the other charges.': '2: Einer fährt, während der andere lädt.',
  'after-use: in the first window after an outing. nightly: in the last window of every day. weekend: on Saturday and Sunday only. own: on the days chosen.':
    'after-use: im ersten Fenster nach einer Fahrt. nightly: im letzten Fenster jedes Tages. weekend: nur am Samstag und Sonntag. own: an den gewählten Tagen.',
  'Not set: lead full, lithium full.': 'Nicht gesetzt: Blei voll, Lithium voll.',
  'None yet: the place Wiring proposes one from the plan.':
    'Noch keine: Der Ort Verkabelung schlägt eine aus dem Plan vor.',
  'string: the blocks in series, one stands for every equal string. pack: where the strings come together.':
    'string: die Blöcke in Reihe, einer steht für jeden gleichen Strang. pack: wo die Stränge zusammenkommen.',
  'Which accessory of the machine this is.': 'Welcher Verbraucher der Maschine das ist.',
  'Motor: winding with brushes, all motors as joined. Not known: from the drive. Brake resistor: its own.':
    'Motor: Wicklung mit Bürsten, alle Motoren wie verschaltet. Nicht bekannt: aus dem Antrieb. Bremswiderstand: sein eigener.',
  'Of the controller; printed on the capacitors behind its supply terminals.':
    'Der Steuerung; aufgedruckt auf den Kondensatoren hinter den Versorgungsklemmen.',
  'Not known: read the jacket or measure the strands.':
    'Nicht bekannt: den Aufdruck lesen oder die Litzen messen.',
  'Fine-stranded copper, as printed on the jacket.':
    'Feindrähtiges Kupfer, wie auf dem Mantel gedruckt.',
  '18 is thin, 4 is thick. 1/0 to 4/0 are written 0, -1, -2, -3.':
    '18 ist dünn, 4 ist dick. 1/0 bis 4/0 schreibt man 0, -1, -2, -3.',
  'The return is counted by itself.': 'Der Rückweg wird von selbst gezählt.',
  'Printed on the jacket. Household flex mostly 70 (take 60), automotive PVC 105, silicone more (take 105).':
    'Auf dem Mantel gedruckt. Haushaltsleitung meist 70 (60 nehmen), Fahrzeug-PVC 105, Silikon mehr (105 nehmen).',
  'cross-linked also for rubber and silicone.':
    'cross-linked (vernetzt) auch für Gummi und Silikon.',
  'This branch alone is 2 wires and counts as not bundled; 3 and more heat each other.':
    'Dieser Zweig allein ist 2 Leiter und gilt als nicht gebündelt; 3 und mehr erwärmen einander.',
  'Beside motors and brake resistors warmer than outside. Not known: 30 °C, or the outing where hotter.':
    'Neben Motoren und Bremswiderständen wärmer als außen. Nicht bekannt: 30 °C, oder die Fahrt, wo sie heißer ist.',
  'blade: plug-in car fuse. bolt-down: strip under screws. high-breaking: fast, sand-filled, for thousands of amperes. breakers: with a lever, or closing again by themselves.':
    'blade: Flachsicherung. bolt-down: Streifen unter Schrauben. high-breaking: flink, sandgefüllt, für Tausende Ampere. breakers: mit Hebel oder selbst wieder schließend.',
  'Largest current it can open at that voltage. 1000 A for blade fuses.':
    'Größter Strom, den sie bei dieser Spannung öffnen kann. 1000 A bei Flachsicherungen.',
  'Wire between the battery terminal or bus and the fuse: nothing protects it.':
    'Leitung zwischen Batterieklemme oder Sammelpunkt und Sicherung: Nichts schützt sie.',
  '0 when only an alternating rating is printed: it then has none for direct current.':
    '0, wenn nur ein Wechselstromwert aufgedruckt ist: Für Gleichstrom hat er dann keinen.',
  'Direct current it can open at its rated voltage.':
    'Gleichstrom, den er bei seiner Nennspannung öffnen kann.',
  'hand: a lever or plug. own-circuit: a coil with its own switch. controller: the controller itself holds it, so a failed controller may not let go.':
    'hand: Hebel oder Stecker. own-circuit: eine Spule mit eigenem Schalter. controller: Die Steuerung selbst hält ihn, also lässt eine defekte vielleicht nicht los.',
  'none: no coil, worked by hand.': 'none: keine Spule, von Hand betätigt.',
  'Bridges the open contacts. None fitted: leave unknown.':
    'Überbrückt die offenen Kontakte. Keiner eingebaut: unbekannt lassen.',
  'With the wire that is crimped in it: the same shell carries less on thin wire.':
    'Mit der darin vercrimpten Leitung: Dasselbe Gehäuse trägt mit dünner Leitung weniger.',
  'Meter across the joint while a known current flows.':
    'Messgerät über der Verbindung, während ein bekannter Strom fließt.',
  "A contact in the charge port or the controller's inhibit input.":
    'Ein Kontakt in der Ladebuchse oder der Sperreingang der Steuerung.',
  'Time at the starting current, for the fuse.': 'Zeit beim Anfahrstrom, für die Sicherung.',
  "Against the pack's minus.": 'Gegen das Minus des Akkus.',
  "Against the pack's minus, throttle at rest.": 'Gegen das Minus des Akkus, Gas in Ruhe.',
  "Wheels off the ground, against the pack's minus.":
    'Räder in der Luft, gegen das Minus des Akkus.',
  'Pack disconnected. Write 100000000 for no reading.':
    'Akku abgeklemmt. 100000000 schreiben für keine Anzeige.',
  'Wires with which the continuity test beeps, pack disconnected.':
    'Leitungen, mit denen die Durchgangsprüfung piept, Akku abgeklemmt.',
  'Readings taken on the machine as built and the fits made from them.':
    'Messwerte an der gebauten Maschine und die Anpassungen daraus.',
  'Year-month-day.': 'Jahr-Monat-Tag.',
  'The pack the reading was taken on.': 'Der Akku, an dem gemessen wurde.',
  'Position in the string, 1 at the negative end; 0 means the whole pack.':
    'Stelle im Strang, 1 am Minusende; 0 heißt der ganze Akku.',
  'Of the instrument and the way it was held, as a share of the reading.':
    'Des Messgeräts und der Handhabung, als Anteil am Messwert.',
  'Which lug, switch, fuse or lead the probes stood on.':
    'An welchem Schuh, Schalter, welcher Sicherung oder Leitung die Spitzen standen.',
  'Motor, controller, block, connector.': 'Motor, Steuerung, Block, Steckverbinder.',
  'No: the value comes from the usual figures of the chemistry.':
    'Nein: Der Wert stammt aus den üblichen Zahlen der Chemie.',
  'Accessories off. With it the reading tells the road resistance.':
    'Verbraucher aus. Damit sagt der Messwert den Rollwiderstand.',
  'None: no volts were fitted.': 'Keine: Es wurden keine Spannungen angepasst.',
  'None: the fit did not touch them.': 'Keine: Die Anpassung hat sie nicht berührt.',
  'What is put back when the block returns to its label.':
    'Was zurückkommt, wenn der Block zum Etikett zurückkehrt.',
};
