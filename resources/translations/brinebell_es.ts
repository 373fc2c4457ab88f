<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AfterWords</name>
    <message>
        <source>put into the refrigerator</source>
        <translation>puestos en el refrigerador</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelados</translation>
    </message>
    <message>
        <source>processed again within 24 hours, full time, new lid</source>
        <translation>procesados otra vez dentro de 24 horas, tiempo completo, tapa nueva</translation>
    </message>
    <message>
        <source>thrown away</source>
        <translation>tirados</translation>
    </message>
    <message>
        <source>kept to be shown</source>
        <translation>guardados para mostrar</translation>
    </message>
    <message>
        <source>eaten</source>
        <translation>consumidos</translation>
    </message>
    <message>
        <source>taken home</source>
        <translation>llevados a casa</translation>
    </message>
    <message>
        <source>taken home before the seals were tested</source>
        <translation>llevados a casa antes de probar los sellos</translation>
    </message>
    <message>
        <source>People attending</source>
        <translation>Personas que asistieron</translation>
    </message>
    <message>
        <source>Of them, new to canning</source>
        <translation>De ellas, nuevas en la conserva</translation>
    </message>
    <message>
        <source>Teacher&apos;s hours, with getting ready and clearing up</source>
        <translation>Horas de quien enseña, con preparación y limpieza</translation>
    </message>
    <message>
        <source>Volunteers&apos; hours, all together</source>
        <translation>Horas de voluntarios, todos juntos</translation>
    </message>
    <message>
        <source>Accidents</source>
        <translation>Accidentes</translation>
    </message>
</context>
<context>
    <name>AudienceWords</name>
    <message>
        <source>The time counts only from a full rolling boil.</source>
        <translation>El tiempo cuenta solo desde el hervor pleno.</translation>
    </message>
    <message>
        <source>The time counts only from a full rolling boil: %1.</source>
        <translation>El tiempo cuenta solo desde el hervor pleno: %1.</translation>
    </message>
    <message>
        <source>The time counts only from a full column of steam.</source>
        <translation>El tiempo cuenta solo desde la columna plena de vapor.</translation>
    </message>
    <message>
        <source>Before any pressure builds, steam must drive the air out for ten minutes.</source>
        <translation>Antes de que suba la presión, el vapor debe expulsar el aire durante diez minutos.</translation>
    </message>
    <message>
        <source>If the boil stops, the whole time starts again.</source>
        <translation>Si el hervor se pierde, todo el tiempo empieza de nuevo.</translation>
    </message>
    <message>
        <source>If the steam stops, the whole time starts again.</source>
        <translation>Si el vapor se pierde, todo el tiempo empieza de nuevo.</translation>
    </message>
    <message>
        <source>If the pressure falls below the table&apos;s, the whole time starts again.</source>
        <translation>Si la presión baja de la de la tabla, todo el tiempo empieza de nuevo.</translation>
    </message>
    <message>
        <source>Steam drives the air out for ten full minutes before the vent is closed.</source>
        <translation>El vapor expulsa el aire diez minutos completos antes de cerrar la salida.</translation>
    </message>
    <message>
        <source>The time counts only once the weight jiggles or rocks as its maker says.</source>
        <translation>El tiempo cuenta solo cuando la pesa se agita o se mece como dice su fabricante.</translation>
    </message>
    <message>
        <source>The time counts only once the gauge shows the pressure of the table.</source>
        <translation>El tiempo cuenta solo cuando el manómetro marca la presión de la tabla.</translation>
    </message>
    <message>
        <source>The pressure falls by itself: nothing cools the canner, nothing opens it.</source>
        <translation>La presión baja por sí sola: nada enfría la envasadora, nada la abre.</translation>
    </message>
    <message>
        <source>No pressure left: ten more minutes before the lid is opened, away from the face.</source>
        <translation>Ya no hay presión: diez minutos más antes de abrir la tapa, lejos de la cara.</translation>
    </message>
    <message>
        <source>Heat off, lid off: the jars rest five minutes before they are lifted.</source>
        <translation>Fuego apagado, sin tapa: los frascos reposan cinco minutos antes de sacarlos.</translation>
    </message>
    <message>
        <source>Leave the bands alone: jars cool 12 to 24 hours before the seals are checked.</source>
        <translation>No toque las bandas: los frascos se enfrían de 12 a 24 horas antes de revisar los sellos.</translation>
    </message>
    <message>
        <source>%1, to %2</source>
        <translation>%1, a %2</translation>
    </message>
    <message>
        <source>over</source>
        <translation>terminado</translation>
    </message>
    <message>
        <source>%1, since %2</source>
        <translation>%1, desde las %2</translation>
    </message>
</context>
<context>
    <name>BoardWords</name>
    <message>
        <source>Until: %1</source>
        <translation>Hasta: %1</translation>
    </message>
    <message>
        <source>%1 of %2 jars done</source>
        <translation>%1 de %2 frascos listos</translation>
    </message>
    <message>
        <source>look %1</source>
        <translation>mirada %1</translation>
    </message>
    <message>
        <source>%1 jars</source>
        <translation>%1 frascos</translation>
    </message>
    <message>
        <source>Also under way: %1.</source>
        <translation>También en marcha: %1.</translation>
    </message>
    <message>
        <source>My hands now</source>
        <translation>Mis manos ahora</translation>
    </message>
    <message>
        <source>Watch for the end</source>
        <translation>Esté atento al final</translation>
    </message>
    <message>
        <source>Its time is over</source>
        <translation>Su tiempo terminó</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>Listo</translation>
    </message>
    <message>
        <source>The next press starts the clock.</source>
        <translation>La próxima pulsación pone en marcha el reloj.</translation>
    </message>
    <message>
        <source>Start now</source>
        <translation>Empiece ahora</translation>
    </message>
    <message>
        <source>Look now</source>
        <translation>Mire ahora</translation>
    </message>
    <message>
        <source>Say now</source>
        <translation>Diga ahora</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>Turn the heat off, touch nothing else</source>
        <translation>Apague el fuego, no toque nada más</translation>
    </message>
    <message>
        <source>Turn the heat off, take the canner lid off</source>
        <translation>Apague el fuego, quite la tapa de la envasadora</translation>
    </message>
    <message>
        <source>%1 has had its whole process time.</source>
        <translation>%1 tuvo todo su tiempo de procesamiento.</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>Answer the class</source>
        <translation>Responda a la clase</translation>
    </message>
    <message>
        <source>Questions. Then back to</source>
        <translation>Preguntas. Luego, de vuelta a</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Mire</translation>
    </message>
    <message>
        <source>See that it is off: %1</source>
        <translation>Compruebe que está apagado: %1</translation>
    </message>
    <message>
        <source>Hands free</source>
        <translation>Manos libres</translation>
    </message>
    <message>
        <source>Open the lid away from the face, then lift</source>
        <translation>Abra la tapa lejos de la cara y luego saque</translation>
    </message>
    <message>
        <source>Straight up, an inch apart, bands alone</source>
        <translation>Rectos hacia arriba, a una pulgada entre sí, sin tocar las bandas</translation>
    </message>
    <message>
        <source>The heat counts for nothing before this is confirmed.</source>
        <translation>El calor no cuenta hasta que esto se confirme.</translation>
    </message>
    <message>
        <source>Answer first</source>
        <translation>Responda primero</translation>
    </message>
    <message>
        <source>Did it hold?</source>
        <translation>¿Se mantuvo?</translation>
    </message>
    <message>
        <source>Hold = yes: %1</source>
        <translation>Mantener = sí: %1</translation>
    </message>
    <message>
        <source>If nobody can say so: L, lost, counts again from the full time.</source>
        <translation>Si nadie puede decirlo: L, perdido, cuenta otra vez desde el tiempo completo.</translation>
    </message>
    <message>
        <source>A moment to say: %1</source>
        <translation>Un momento para decir: %1</translation>
    </message>
    <message>
        <source>Nothing wants your hands. The board will call.</source>
        <translation>Nada pide sus manos. El tablero avisará.</translation>
    </message>
    <message>
        <source>until it is seen</source>
        <translation>hasta que se vea</translation>
    </message>
    <message>
        <source>until: %1</source>
        <translation>hasta: %1</translation>
    </message>
    <message>
        <source>over by %1 min</source>
        <translation>pasado por %1 min</translation>
    </message>
    <message>
        <source>since %1</source>
        <translation>desde %1</translation>
    </message>
    <message>
        <source>look %1 at %2</source>
        <translation>mirada %1 a las %2</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>hasta las %1</translation>
    </message>
    <message>
        <source>watch</source>
        <translation>vigilar</translation>
    </message>
    <message>
        <source>on</source>
        <translation>encendido</translation>
    </message>
    <message>
        <source>✓ for %1: %2</source>
        <translation>✓ para %1: %2</translation>
    </message>
    <message>
        <source>✗ NOT for %1: %2</source>
        <translation>✗ NO para %1: %2</translation>
    </message>
    <message>
        <source>keep going until: %1</source>
        <translation>siga hasta: %1</translation>
    </message>
    <message>
        <source>Wait and talk</source>
        <translation>Espere y hable</translation>
    </message>
    <message>
        <source>Watch for the rolling boil</source>
        <translation>Esté atento al hervor pleno</translation>
    </message>
    <message>
        <source>Watch for: %1</source>
        <translation>Esté atento a: %1</translation>
    </message>
    <message>
        <source>nothing more</source>
        <translation>nada más</translation>
    </message>
    <message>
        <source>let the jars rest for %1</source>
        <translation>deje reposar los frascos por %1</translation>
    </message>
    <message>
        <source>free</source>
        <translation>libre</translation>
    </message>
    <message>
        <source>kept</source>
        <translation>mantenido</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>previsto %1</translation>
    </message>
    <message>
        <source>every load
is in</source>
        <translation>todas las cargas
están dentro</translation>
    </message>
    <message>
        <source>not started</source>
        <translation>no empezada</translation>
    </message>
    <message>
        <source>%1. What would help:</source>
        <translation>%1. Qué ayudaría:</translation>
    </message>
    <message>
        <source>The class ends in its slot</source>
        <translation>La clase termina en su horario</translation>
    </message>
    <message>
        <source>Nothing has to be changed.</source>
        <translation>No hay que cambiar nada.</translation>
    </message>
    <message>
        <source>What would help has not been worked out.</source>
        <translation>Aún no se ha calculado qué ayudaría.</translation>
    </message>
    <message>
        <source>%1: class ends %2</source>
        <translation>%1: la clase termina %2</translation>
    </message>
    <message>
        <source>Nothing left to change saves time.</source>
        <translation>Nada que quede por cambiar ahorra tiempo.</translation>
    </message>
    <message>
        <source>Must be said: %1 open, %2 said</source>
        <translation>Hay que decir: %1 pendientes, %2 dichos</translation>
    </message>
    <message>
        <source>✓ All of it is said.</source>
        <translation>✓ Todo está dicho.</translation>
    </message>
</context>
<context>
    <name>ChoiceFields</name>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Idioma</translation>
    </message>
    <message>
        <source>As the desktop has it</source>
        <translation>Como lo tenga el escritorio</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>&amp;Unidades</translation>
    </message>
    <message>
        <source>Pounds, cups, feet, °F</source>
        <translation>Libras, tazas, pies, °F</translation>
    </message>
    <message>
        <source>Grams, litres, metres, °C</source>
        <translation>Gramos, litros, metros, °C</translation>
    </message>
    <message>
        <source>&amp;Clock</source>
        <translation>&amp;Reloj</translation>
    </message>
    <message>
        <source>7:12 pm</source>
        <translation>7:12 p. m.</translation>
    </message>
    <message>
        <source>19:12</source>
        <translation>19:12</translation>
    </message>
    <message>
        <source>&amp;Decimals</source>
        <translation>&amp;Decimales</translation>
    </message>
    <message>
        <source>As the language has it</source>
        <translation>Como lo tenga el idioma</translation>
    </message>
    <message>
        <source>&amp;Reading distance, from the counter to the screen</source>
        <translation>&amp;Distancia de lectura, del mostrador a la pantalla</translation>
    </message>
    <message>
        <source>With its unit: 8 ft or 2.5 m. It sets how large the board&apos;s letters are.</source>
        <translation>Con su unidad: 8 ft o 2.5 m. De ella depende el tamaño de las letras del tablero.</translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>Steam lost on %1: count again from the full time</source>
        <translation>Vapor perdido en %1: cuente de nuevo el tiempo completo</translation>
    </message>
    <message>
        <source>Boil lost on %1: count again from the full time</source>
        <translation>Hervor perdido en %1: cuente de nuevo el tiempo completo</translation>
    </message>
    <message>
        <source>Pressure lost on %1: count again from the full time</source>
        <translation>Presión perdida en %1: cuente de nuevo el tiempo completo</translation>
    </message>
    <message>
        <source>Steam lost on %1: vent again for the full time</source>
        <translation>Vapor perdido en %1: purgue de nuevo el tiempo completo</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Omitir: %1</translation>
    </message>
    <message>
        <source>Swapped (what for what): %1</source>
        <translation>Cambiado (qué por qué): %1</translation>
    </message>
    <message>
        <source>Put a question off for later</source>
        <translation>Dejar una pregunta para después</translation>
    </message>
    <message>
        <source>Answered: %1</source>
        <translation>Respondida: %1</translation>
    </message>
    <message>
        <source>Set %1 aside: these jars are not processed here</source>
        <translation>Apartar %1: estos frascos no se procesan aquí</translation>
    </message>
    <message>
        <source>End the class now: the room is free</source>
        <translation>Terminar la clase ahora: la sala queda libre</translation>
    </message>
</context>
<context>
    <name>ClassEditor</name>
    <message>
        <source>one number above 0 without a unit, as in 1/2</source>
        <translation>un número mayor que 0 sin unidad, como 1/2</translation>
    </message>
</context>
<context>
    <name>ClassReport</name>
    <message>
        <source>not ended</source>
        <translation>sin terminar</translation>
    </message>
    <message>
        <source>Class, hours planned</source>
        <translation>Clase, horas previstas</translation>
    </message>
    <message>
        <source>Class, hours taught</source>
        <translation>Clase, horas impartidas</translation>
    </message>
    <message>
        <source>Kitchen, hours</source>
        <translation>Cocina, horas</translation>
    </message>
    <message>
        <source>Contact hours (people times hours taught)</source>
        <translation>Horas de contacto (personas por horas impartidas)</translation>
    </message>
    <message>
        <source>Jars canned: %1, %2</source>
        <translation>Frascos envasados: %1, %2</translation>
    </message>
    <message>
        <source>%1: %2 sealed, %3 not sealed, %4 broken, %5 not checked yet</source>
        <translation>%1: %2 sellados, %3 sin sellar, %4 rotos, %5 aún sin revisar</translation>
    </message>
    <message>
        <source>Jars set aside</source>
        <translation>Frascos apartados</translation>
    </message>
    <message>
        <source>Stops for questions, questions put off</source>
        <translation>Pausas para preguntas, preguntas aplazadas</translation>
    </message>
    <message>
        <source>Points said</source>
        <translation>Puntos dichos</translation>
    </message>
    <message>
        <source>NOT said</source>
        <translation>NO dicho</translation>
    </message>
    <message>
        <source>Who came</source>
        <translation>Quiénes vinieron</translation>
    </message>
    <message>
        <source>Skill from 1 (never canned) to 5 (cans every year). Ask for no more than your office needs.</source>
        <translation>Experiencia de 1 (nunca ha envasado) a 5 (envasa cada año). No pida más de lo que su oficina necesita.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>County or town</source>
        <translation>Condado o ciudad</translation>
    </message>
    <message>
        <source>New or returning</source>
        <translation>Nuevo o repite</translation>
    </message>
    <message>
        <source>Skill before</source>
        <translation>Antes</translation>
    </message>
    <message>
        <source>Skill after</source>
        <translation>Después</translation>
    </message>
    <message>
        <source>Class report: %1</source>
        <translation>Informe de la clase: %1</translation>
    </message>
    <message>
        <source>REHEARSAL: no class was held</source>
        <translation>ENSAYO: no se impartió ninguna clase</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Quien enseña</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Comienzo</translation>
    </message>
    <message>
        <source>Dish</source>
        <translation>Plato</translation>
    </message>
    <message>
        <source>%1, %2 jars planned (%3)</source>
        <translation>%1, %2 frascos previstos (%3)</translation>
    </message>
</context>
<context>
    <name>DeskWords</name>
    <message>
        <source>quarter-pint</source>
        <translation>cuarto de pinta</translation>
    </message>
    <message>
        <source>half-pint</source>
        <translation>media pinta</translation>
    </message>
    <message>
        <source>12-ounce</source>
        <translation>12 onzas</translation>
    </message>
    <message>
        <source>pint</source>
        <translation>pinta</translation>
    </message>
    <message>
        <source>1½-pint</source>
        <translation>pinta y media</translation>
    </message>
    <message>
        <source>quart</source>
        <translation>cuarto de galón</translation>
    </message>
    <message>
        <source>half-gallon</source>
        <translation>medio galón</translation>
    </message>
    <message>
        <source>one duration, or three: short, likely, long</source>
        <translation>una duración, o tres: corta, probable, larga</translation>
    </message>
    <message>
        <source>the three must not fall, and the longest is more than zero</source>
        <translation>las tres no deben disminuir, y la más larga es mayor que cero</translation>
    </message>
    <message>
        <source>a whole number from %L1 to %L2</source>
        <translation>un número entero de %L1 a %L2</translation>
    </message>
</context>
<context>
    <name>HelpWords</name>
    <message>
        <source>Welcome</source>
        <translation>Bienvenida</translation>
    </message>
    <message>
        <source>Type how high your kitchen lies, with its unit, and how that is known. The line below repeats it in both units and says where water boils there: if that surprises you, look again.
Begin makes a kitchen of it, which you can describe further under Kitchens. Skip this leaves everything for later.</source>
        <translation>Escriba a qué altitud está su cocina, con su unidad, y cómo se conoce. La línea de abajo la repite en ambas unidades y dice a qué temperatura hierve allí el agua: si le sorprende, mire otra vez.
«Empezar» hace de ello una cocina, que puede describir mejor en Cocinas. «Omitir esto» lo deja todo para más tarde.</translation>
    </message>
    <message>
        <source>Front page</source>
        <translation>Portada</translation>
    </message>
    <message>
        <source>From here you reach everything. Prepare is where a class is read, rehearsed and taught; Kitchens and Recipes are what classes are made of; past sessions have their records and labels.</source>
        <translation>Desde aquí se llega a todo. En «Preparar» se lee, se ensaya y se da una clase; de cocinas y recetas se hacen las clases; las sesiones pasadas tienen sus registros y etiquetas.</translation>
    </message>
    <message>
        <source>An unfinished session</source>
        <translation>Una sesión sin terminar</translation>
    </message>
    <message>
        <source>The program ended while a class was running. Taking it up again shows the board as it stood. Counts of the canner that nobody watched wait for somebody to vouch for the boil, or start again.</source>
        <translation>El programa terminó mientras corría una clase. Al retomarla, el tablero aparece como estaba. Los conteos de la envasadora que nadie vigiló esperan a que alguien responda por el hervor, o vuelven a empezar.</translation>
    </message>
    <message>
        <source>Prepare</source>
        <translation>Preparar</translation>
    </message>
    <message>
        <source>Choose a class at the left. Its run sheet stands at the right: first when everything starts and by whom, then what speaks against it and where each process time comes from. A better sheet is searched for meanwhile; what is on screen can be started at any time.
Rehearse before you teach: the same board on a clock of its own. Make ahead finds what to prepare before class so that it fits its slot. Lists says what to buy and to bring.</source>
        <translation>Elija una clase a la izquierda. A la derecha está su hoja de ruta: primero cuándo empieza cada cosa y quién la hace, después qué habla en contra y de dónde viene cada tiempo de procesamiento. Mientras tanto se busca una hoja mejor; lo que está en pantalla se puede empezar en cualquier momento.
Ensaye antes de dar la clase: el mismo tablero con su propio reloj. «Adelantar» encuentra qué preparar antes para que la clase quepa en su horario. «Listas» dice qué comprar y qué llevar.</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>What the class wants before it, from its recipes, its kitchen and its run sheet. Amounts of all dishes are added up and rounded up to what a shop sells; what is needed exactly stands behind them. Weigh and measure for the recipe by the recipe, not by this list.
The PDF has a box to tick at each line.</source>
        <translation>Lo que la clase necesita antes de empezar, según sus recetas, su cocina y su hoja de ruta. Las cantidades de todos los platos se suman y se redondean hacia arriba a lo que vende una tienda; detrás está lo que hace falta exactamente. Para la receta, pese y mida según la receta, no según esta lista.
El PDF tiene una casilla en cada línea.</translation>
    </message>
    <message>
        <source>Kitchens</source>
        <translation>Cocinas</translation>
    </message>
    <message>
        <source>A kitchen has an altitude, stations (burners, oven, sink, board, counter) and canners with the jars that one load holds. A fault stands at its field as you type, and in the list below, from which Enter leads to the field. Everything is saved by itself, and undone step by step.</source>
        <translation>Una cocina tiene altitud, puestos (quemadores, horno, fregadero, tabla, mostrador) y envasadoras con los frascos que caben en una carga. Cada falta aparece en su campo mientras escribe, y en la lista de abajo, desde la que Intro lleva al campo. Todo se guarda solo y se deshace paso a paso.</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Recetas</translation>
    </message>
    <message>
        <source>Tested recipes can be read and not changed. Make a class version copies one: its steps, words and durations are yours, and at each ingredient the guard says what the tested recipe does not allow, and why. Nothing turns the guard off.</source>
        <translation>Las recetas probadas se pueden leer, no cambiar. «Hacer una versión de clase» copia una: sus pasos, palabras y duraciones son suyos, y en cada ingrediente la guarda dice qué no permite la receta probada, y por qué. Nada apaga la guarda.</translation>
    </message>
    <message>
        <source>Classes</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>A class takes dishes from the recipes, a kitchen, a day and a slot. Say how much of each batch is made and in how many jars, who helps, who stays for the kitchen&apos;s end, what is made ahead and what must be said. A fault stands at its field as you type. Everything is saved by itself, and undone step by step.</source>
        <translation>Una clase toma platos de las recetas, una cocina, un día y un horario. Diga cuánto de cada lote se hace y en cuántos frascos, quién ayuda, quién se queda hasta el cierre de la cocina, qué se adelanta y qué hay que decir. Cada falta aparece en su campo mientras escribe. Todo se guarda solo y se deshace paso a paso.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>What you choose is kept and shown at once. Units, clock and decimals change what is shown and nothing in your files; process times are never converted. Measure the screen once, so that the board&apos;s letters can be read from where you stand.</source>
        <translation>Lo que elige se guarda y se muestra enseguida. Unidades, reloj y decimales cambian lo que se muestra y nada en sus archivos; los tiempos de procesamiento nunca se convierten. Mida la pantalla una vez, para que las letras del tablero se puedan leer desde donde usted está.</translation>
    </message>
    <message>
        <source>Sound check</source>
        <translation>Prueba de sonido</translation>
    </message>
    <message>
        <source>Play every cue and listen from the counter. Choose the output and how loud; in quiet mode only the stop cue sounds, lowered. Whatever sounds also stands on the board.</source>
        <translation>Toque cada aviso y escuche desde el mostrador. Elija la salida y el volumen; en modo silencioso solo suena el aviso de alto, más bajo. Todo lo que suena está también en el tablero.</translation>
    </message>
    <message>
        <source>The board</source>
        <translation>El tablero</translation>
    </message>
    <message>
        <source>Space, Enter, Right, Down, Page Down or the big button does the next thing that the board names. What can hurt takes the same key held for a second. Left, Up and Page Up look back and change nothing; U takes back the last press.
A process time counts only from a full rolling boil (or steam, or pressure) that somebody has seen. When it is lost, press L: the count starts again from the full time.</source>
        <translation>Espacio, Intro, Derecha, Abajo, Av Pág o el botón grande hacen lo siguiente que nombra el tablero. Lo que puede hacer daño pide la misma tecla sostenida un segundo. Izquierda, Arriba y Re Pág miran atrás y no cambian nada; U deshace la última pulsación.
Un tiempo de procesamiento solo cuenta desde un hervor pleno (o vapor, o presión) que alguien ha visto. Cuando se pierde, pulse L: el conteo empieza otra vez desde el tiempo completo.</translation>
    </message>
    <message>
        <source>Past sessions</source>
        <translation>Sesiones pasadas</translation>
    </message>
    <message>
        <source>Space   Next</source>
        <translation>Espacio   Siguiente</translation>
    </message>
    <message>
        <source>+ −   Speed of a rehearsal</source>
        <translation>+ −   Velocidad de un ensayo</translation>
    </message>
    <message>
        <source>Z   Stop a rehearsal&apos;s clock</source>
        <translation>Z   Parar el reloj de un ensayo</translation>
    </message>
    <message>
        <source>F   To a rehearsal&apos;s next event</source>
        <translation>F   Al próximo suceso de un ensayo</translation>
    </message>
    <message>
        <source>G   Something goes wrong</source>
        <translation>G   Algo sale mal</translation>
    </message>
    <message>
        <source>Tab   To the next field; Shift+Tab back</source>
        <translation>Tab   Al campo siguiente; Mayús+Tab atrás</translation>
    </message>
    <message>
        <source>Ctrl+Z   Undo</source>
        <translation>Ctrl+Z   Deshacer</translation>
    </message>
    <message>
        <source>Ctrl+Shift+Z   Redo</source>
        <translation>Ctrl+Mayús+Z   Rehacer</translation>
    </message>
    <message>
        <source>F11   Full screen</source>
        <translation>F11   Pantalla completa</translation>
    </message>
    <message>
        <source>F1   This help</source>
        <translation>F1   Esta ayuda</translation>
    </message>
    <message>
        <source>Choose a session to see how it went beside its plan: each step as planned and as lived. Nothing here changes what was lived.</source>
        <translation>Elija una sesión para ver cómo fue junto a su plan: cada paso como se planeó y como se vivió. Nada aquí cambia lo vivido.</translation>
    </message>
    <message>
        <source>Seal check</source>
        <translation>Revisión de sellos</translation>
    </message>
    <message>
        <source>Jars cool for 12 to 24 hours, then somebody presses every lid. Count each load: sealed, not sealed, broken; they must add up. Say what was done with the unsealed ones, which can be saved for 24 hours, and who looked. Each load is saved by itself; what is left is asked for again at the next start.
A count that was wrong is corrected by another one: both stay in the batch record.</source>
        <translation>Los frascos se enfrían de 12 a 24 horas y luego alguien presiona cada tapa. Cuente cada carga: sellados, sin sellar, rotos; deben sumar el total. Diga qué se hizo con los no sellados, que pueden salvarse durante 24 horas, y quién los revisó. Cada carga se guarda por sí sola; lo que falta se pregunta otra vez en el próximo inicio.
Un recuento equivocado se corrige con otro: ambos quedan en el registro del lote.</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papeles</translation>
    </message>
    <message>
        <source>The first three papers are of a class that is planned, the others of a session that was taught. What you see is what is printed, or saved as PDF. Labels take the measures of your sheet: print one on plain paper first and hold it against the labels. The figures of the report are kept in the logbook.</source>
        <translation>Los tres primeros papeles son de una clase prevista, los demás de una sesión impartida. Lo que ve es lo que se imprime o se guarda como PDF. Las etiquetas usan las medidas de su hoja: imprima antes una en papel común y póngala sobre las etiquetas. Los datos del informe se guardan en la bitácora.</translation>
    </message>
    <message>
        <source>Export and import</source>
        <translation>Exportar e importar</translation>
    </message>
    <message>
        <source>CSV is for spreadsheets, JSON holds all of a session and can be brought in elsewhere. Import takes such JSON files and whole logbooks. A session that is here already stays once; what does not hold together is refused with its reason, and nothing else is touched by it.</source>
        <translation>CSV es para hojas de cálculo; JSON contiene toda una sesión y puede incorporarse en otro lugar. Importar admite esos archivos JSON y bitácoras enteras. Una sesión que ya está aquí queda una sola vez; lo que no es coherente se rechaza con su motivo, y nada más se ve afectado.</translation>
    </message>
    <message>
        <source>Choose the kitchen and the slot, then the dishes from the recipe shelf and what is said. The run sheet below follows each edit; while a new one is sought, the last good one stays and says that it is older. Everything is saved by itself.</source>
        <translation>Elija la cocina y el turno, luego los platos del estante de recetas y lo que se dice. La hoja de ruta de abajo sigue cada cambio; mientras se busca una nueva, la última buena se queda y dice que es anterior. Todo se guarda solo.</translation>
    </message>
</context>
<context>
    <name>KeyWords</name>
    <message>
        <source>Seen (hold)</source>
        <translation>Visto (mantener)</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Perdido</translation>
    </message>
    <message>
        <source>Heat off</source>
        <translation>Fuego apagado</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Deshacer</translation>
    </message>
    <message>
        <source>Said</source>
        <translation>Dicho</translation>
    </message>
    <message>
        <source>Jar</source>
        <translation>Frasco</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>Preguntas</translation>
    </message>
    <message>
        <source>Put off</source>
        <translation>Dejar</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valor</translation>
    </message>
    <message>
        <source>Where was I</source>
        <translation>Dónde iba</translation>
    </message>
    <message>
        <source>If late</source>
        <translation>Si hay retraso</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Cerrar</translation>
    </message>
    <message>
        <source>Step in full</source>
        <translation>Paso entero</translation>
    </message>
    <message>
        <source>Audience</source>
        <translation>Público</translation>
    </message>
    <message>
        <source>Light/dark</source>
        <translation>Claro/oscuro</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Más</translation>
    </message>
    <message>
        <source>Sound</source>
        <translation>Sonido</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Salir</translation>
    </message>
</context>
<context>
    <name>LabelSheetWords</name>
    <message>
        <source>Best by: not recorded</source>
        <translation>Mejor antes de: sin anotar</translation>
    </message>
    <message>
        <source>Best by %1 (%2)</source>
        <translation>Mejor antes del %1 (%2)</translation>
    </message>
    <message>
        <source>Best by: %1, from the day canned</source>
        <translation>Mejor antes de: %1, desde el día de envasado</translation>
    </message>
    <message>
        <source>REHEARSAL – not for a jar</source>
        <translation>ENSAYO – no es para un frasco</translation>
    </message>
    <message>
        <source>Canned %1  ·  lot %2</source>
        <translation>Envasado %1  ·  lote %2</translation>
    </message>
    <message>
        <source>Allergens: %1</source>
        <translation>Alérgenos: %1</translation>
    </message>
    <message>
        <source>Seal: checked %1</source>
        <translation>Sello: revisado %1</translation>
    </message>
    <message>
        <source>Seal: check by %1</source>
        <translation>Sello: revisar antes del %1</translation>
    </message>
    <message>
        <source>Refrigerate after opening. Made at %1</source>
        <translation>Refrigere después de abrir. Hecho en %1</translation>
    </message>
    <message>
        <source>a sheet has 1 to 500 labels</source>
        <translation>una hoja tiene de 1 a 500 etiquetas</translation>
    </message>
    <message>
        <source>a measure of the sheet is not a number</source>
        <translation>una medida de la hoja no es un número</translation>
    </message>
    <message>
        <source>a label is at least 15 mm wide and 10 mm high</source>
        <translation>una etiqueta mide al menos 15 mm de ancho y 10 mm de alto</translation>
    </message>
    <message>
        <source>the labels would overlap</source>
        <translation>las etiquetas se encimarían</translation>
    </message>
    <message>
        <source>the labels need %1 x %2 mm and the page has %3 x %4 mm</source>
        <translation>las etiquetas necesitan %1 x %2 mm y la página tiene %3 x %4 mm</translation>
    </message>
    <message>
        <source>30 on Letter, 66.7 x 25.4 mm</source>
        <translation>30 en Carta, 66,7 x 25,4 mm</translation>
    </message>
    <message>
        <source>10 on Letter, 101.6 x 50.8 mm</source>
        <translation>10 en Carta, 101,6 x 50,8 mm</translation>
    </message>
    <message>
        <source>21 on A4, 63.5 x 38.1 mm</source>
        <translation>21 en A4, 63,5 x 38,1 mm</translation>
    </message>
    <message>
        <source>8 on A4, 99.1 x 67.7 mm</source>
        <translation>8 en A4, 99,1 x 67,7 mm</translation>
    </message>
</context>
<context>
    <name>ListWords</name>
    <message>
        <source>%1 (optional)</source>
        <translation>%1 (opcional)</translation>
    </message>
    <message>
        <source>%1 · for %2</source>
        <translation>%1 · para %2</translation>
    </message>
    <message>
        <source>%1 · %2 needed, for %3</source>
        <translation>%1 · hacen falta %2, para %3</translation>
    </message>
    <message>
        <source>Jars, %1: %2 and %3 to spare</source>
        <translation>Frascos, %1: %2 y %3 de reserva</translation>
    </message>
    <message>
        <source>New lids: %1 and %2 to spare. Bands: %1</source>
        <translation>Tapas nuevas: %1 y %2 de reserva. Aros: %1</translation>
    </message>
    <message>
        <source>Burners alight at once: %1, first at %2</source>
        <translation>Quemadores encendidos a la vez: %1, por primera vez a las %2</translation>
    </message>
    <message>
        <source>Be in the kitchen by %1: set out, and heat water before anything is cut. The class starts at %2</source>
        <translation>Esté en la cocina a las %1: prepare todo y caliente agua antes de cortar nada. La clase empieza a las %2</translation>
    </message>
    <message>
        <source>The canner&apos;s burner is on by %1 at the latest</source>
        <translation>El quemador de la envasadora está encendido a las %1 a más tardar</translation>
    </message>
    <message>
        <source>%1 (%2, about %3): %4. Keep: %5</source>
        <translation>%1 (%2, unos %3): %4. Se guarda: %5</translation>
    </message>
    <message>
        <source>%1: hold its amounts against the printed source</source>
        <translation>%1: compare sus cantidades con la fuente impresa</translation>
    </message>
    <message>
        <source>The day before: shop, look over every jar rim, wash jars and lids</source>
        <translation>El día antes: comprar, revisar el borde de cada frasco, lavar frascos y tapas</translation>
    </message>
    <message>
        <source>Rehearse the class, and hear the sound check from where you will stand</source>
        <translation>Ensaye la clase y oiga la prueba de sonido desde donde va a estar</translation>
    </message>
    <message>
        <source>Print the run sheet and the lists; charge the laptop and take its cable</source>
        <translation>Imprima la hoja de ruta y las listas; cargue el portátil y lleve su cable</translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation>Compras</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Equipo</translation>
    </message>
    <message>
        <source>Before class</source>
        <translation>Antes de la clase</translation>
    </message>
    <message>
        <source>Canner: %1; loads: %2, jars in one at most: %3</source>
        <translation>Envasadora: %1; cargas: %2, frascos en una como máximo: %3</translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>%1  ·  page %2 of %3</source>
        <translation>%1  ·  página %2 de %3</translation>
    </message>
</context>
<context>
    <name>PapersWords</name>
    <message>
        <source>teacher</source>
        <translation>docente</translation>
    </message>
    <message>
        <source>helper %1</source>
        <translation>ayudante %1</translation>
    </message>
    <message>
        <source>End: %1</source>
        <translation>Fin: %1</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Hora</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Quién</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Qué</translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Busque</translation>
    </message>
    <message>
        <source>(every %1 to %2)</source>
        <translation>(cada %1 a %2)</translation>
    </message>
    <message>
        <source>To be said</source>
        <translation>Hay que decir</translation>
    </message>
    <message>
        <source>%1, %2 pack, %3: %4 at %5. Table: %6. Source: %7</source>
        <translation>%1, envasado %2, %3: %4 a %5. Tabla: %6. Fuente: %7</translation>
    </message>
    <message>
        <source>Look for: %1.</source>
        <translation>Busque: %1.</translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation>Cuidado: %1</translation>
    </message>
    <message>
        <source>For %1 jars (%2). Source: %3</source>
        <translation>Para %1 frascos (%2). Fuente: %3</translation>
    </message>
    <message>
        <source>Processing</source>
        <translation>Procesamiento</translation>
    </message>
    <message>
        <source>Storage: %1. Shelf life: %2. Refrigerate after opening.</source>
        <translation>Guardar: %1. Duración: %2. Refrigere después de abrir.</translation>
    </message>
    <message>
        <source>Allergens: %1</source>
        <translation>Alérgenos: %1</translation>
    </message>
    <message>
        <source>Run sheet: %1</source>
        <translation>Hoja de ruta: %1</translation>
    </message>
    <message>
        <source>%1, %2. Class ends %3, kitchen ends %4. Stays to the end: %5.</source>
        <translation>%1, %2. La clase termina a las %3, la cocina a las %4. Se queda hasta el final: %5.</translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation>nadie nombrado</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>To take home</source>
        <translation>Para llevar a casa</translation>
    </message>
    <message>
        <source>What is empty was not recorded: write it in.</source>
        <translation>Lo que está vacío no se anotó: escríbalo a mano.</translation>
    </message>
</context>
<context>
    <name>RecallWords</name>
    <message>
        <source>%1 ago — %2</source>
        <translation>hace %1 — %2</translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation>Nada todavía.</translation>
    </message>
    <message>
        <source>%1 — for %2</source>
        <translation>%1 — por %2</translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation>Nada.</translation>
    </message>
    <message>
        <source>Short press: %1</source>
        <translation>Pulsación corta: %1</translation>
    </message>
    <message>
        <source>Held press: %1</source>
        <translation>Pulsación mantenida: %1</translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation>Después: %1</translation>
    </message>
    <message>
        <source>Wait; the board will call.</source>
        <translation>Espere; el tablero avisará.</translation>
    </message>
</context>
<context>
    <name>RecipeEditor</name>
    <message>
        <source>a percentage, as in 5 %</source>
        <translation>un porcentaje, como 5 %</translation>
    </message>
</context>
<context>
    <name>ScreenWords</name>
    <message>
        <source>This screen: %1 inches, measured by hand.</source>
        <translation>Esta pantalla: %1 pulgadas, medida a mano.</translation>
    </message>
    <message>
        <source>This screen: %1 inches, as it says itself.</source>
        <translation>Esta pantalla: %1 pulgadas, según ella misma.</translation>
    </message>
    <message>
        <source>This screen does not say how large it is; taken for %1 inches. Measure it.</source>
        <translation>Esta pantalla no dice su tamaño; se supone de %1 pulgadas. Mídala.</translation>
    </message>
    <message>
        <source>▲ The board&apos;s large lines stand at %1 minutes of arc from %2, and %3 are wanted. Put the screen at %4, or use a larger one.</source>
        <translation>▲ Las líneas grandes del tablero miden %1 minutos de arco desde %2 y se quieren %3. Ponga la pantalla a %4 o use una más grande.</translation>
    </message>
    <message>
        <source>▲ Countdowns of %1 stations side by side are smaller than wanted from %2: this screen has room for %3.</source>
        <translation>▲ Las cuentas atrás de %1 estaciones juntas son más pequeñas de lo deseado desde %2: esta pantalla tiene lugar para %3.</translation>
    </message>
    <message>
        <source>The board&apos;s large lines can be read from %1.</source>
        <translation>Las líneas grandes del tablero se leen desde %1.</translation>
    </message>
</context>
<context>
    <name>SpeechWords</name>
    <message>
        <source>no voice is installed on this machine</source>
        <translation>no hay ninguna voz instalada en este equipo</translation>
    </message>
    <message>
        <source>this program was built without speech</source>
        <translation>este programa se compiló sin voz</translation>
    </message>
</context>
<context>
    <name>TimeWords</name>
    <message>
        <source>%1 h %2</source>
        <translation>%1 h %2</translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation>%1 s</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation>%1 h %2 min</translation>
    </message>
    <message>
        <source>on time</source>
        <translation>a tiempo</translation>
    </message>
    <message>
        <source>%1 min behind</source>
        <translation>%1 min de retraso</translation>
    </message>
    <message>
        <source>%1 min ahead</source>
        <translation>%1 min de adelanto</translation>
    </message>
    <message>
        <source>%1 am</source>
        <translation>%1 a. m.</translation>
    </message>
    <message>
        <source>%1 pm</source>
        <translation>%1 p. m.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 a %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>steady steam seen on %1 — vent %2</source>
        <translation>vapor constante visto en %1 — purgar %2</translation>
    </message>
    <message>
        <source>The vent is closed — %1</source>
        <translation>La salida está cerrada — %1</translation>
    </message>
    <message>
        <source>%1 psi seen on %2 — %3</source>
        <translation>%1 psi vistos en %2 — %3</translation>
    </message>
    <message>
        <source>no pressure left in %1 — ten minutes more before the lid opens</source>
        <translation>no queda presión en %1 — diez minutos más antes de abrir la tapa</translation>
    </message>
    <message>
        <source>Heat is off, the pressure falls by itself — %1</source>
        <translation>Fuego apagado, la presión baja por sí sola — %1</translation>
    </message>
    <message>
        <source>Heat is off, lid is off — %1</source>
        <translation>Fuego apagado, sin tapa — %1</translation>
    </message>
    <message>
        <source>full column of steam seen on %1 — %2</source>
        <translation>columna plena de vapor vista en %1 — %2</translation>
    </message>
    <message>
        <source>rolling boil seen on %1 — %2</source>
        <translation>hervor pleno visto en %1 — %2</translation>
    </message>
    <message>
        <source>the steam on %1 held through the %2 nobody watched</source>
        <translation>el vapor en %1 se mantuvo durante los %2 que nadie vigiló</translation>
    </message>
    <message>
        <source>the pressure on %1 held through the %2 nobody watched</source>
        <translation>la presión en %1 se mantuvo durante los %2 que nadie vigiló</translation>
    </message>
    <message>
        <source>the boil on %1 held through the %2 nobody watched</source>
        <translation>el hervor en %1 se mantuvo durante los %2 que nadie vigiló</translation>
    </message>
    <message>
        <source>This canner is not of the kind that does so.</source>
        <translation>Esta envasadora no es de las que hacen eso.</translation>
    </message>
    <message>
        <source>First confirm the water in the canner.</source>
        <translation>Confirme primero el agua de la envasadora.</translation>
    </message>
    <message>
        <source>No canner is being vented there.</source>
        <translation>Allí no se está purgando ninguna envasadora.</translation>
    </message>
    <message>
        <source>The venting is not over: %1 to go, until %2.</source>
        <translation>La purga no ha terminado: faltan %1, hasta las %2.</translation>
    </message>
    <message>
        <source>%1 of the venting were not watched. Confirm that the steam held, or vent again.</source>
        <translation>%1 de la purga no se vigilaron. Confirme que el vapor se mantuvo o purgue otra vez.</translation>
    </message>
    <message>
        <source>No canner is coming to pressure there.</source>
        <translation>Allí ninguna envasadora está tomando presión.</translation>
    </message>
    <message>
        <source>The count starts at %1 psi, not below.</source>
        <translation>La cuenta empieza con %1 psi, no con menos.</translation>
    </message>
    <message>
        <source>No pressure is falling there.</source>
        <translation>Allí no está bajando ninguna presión.</translation>
    </message>
    <message>
        <source>The lid stays on for ten minutes after the pressure is gone: %1 to go, until %2.</source>
        <translation>La tapa se queda puesta diez minutos después de irse la presión: faltan %1, hasta las %2.</translation>
    </message>
    <message>
        <source>Jars cool 12 to 24 hours before their seals are checked: %1 to go.</source>
        <translation>Los frascos se enfrían de 12 a 24 horas antes de revisar sus sellos: faltan %1.</translation>
    </message>
    <message>
        <source>The pressure was lost just now and the venting still holds; steam lost as well can be said in %1.</source>
        <translation>La presión se acaba de perder y la purga sigue valiendo; si también se perdió el vapor, puede decirse en %1.</translation>
    </message>
    <message>
        <source>%1: confirm the water</source>
        <translation>%1: confirme el agua</translation>
    </message>
    <message>
        <source>%1: venting ends within a minute</source>
        <translation>%1: la purga termina en menos de un minuto</translation>
    </message>
    <message>
        <source>%1: venting complete. Close the vent</source>
        <translation>%1: purga completa. Cierre la salida</translation>
    </message>
    <message>
        <source>%1: process time complete. Heat off, nothing else</source>
        <translation>%1: tiempo de procesamiento completo. Apague el fuego, nada más</translation>
    </message>
    <message>
        <source>%1: process time complete. Heat off, lid off</source>
        <translation>%1: tiempo de procesamiento completo. Apague el fuego, quite la tapa</translation>
    </message>
    <message>
        <source>%1: the wait is over. Open the lid, lift the jars</source>
        <translation>%1: la espera terminó. Abra la tapa, saque los frascos</translation>
    </message>
    <message>
        <source>%1: rest is over. Lift the jars</source>
        <translation>%1: el reposo terminó. Saque los frascos</translation>
    </message>
    <message>
        <source>%1: %2 were not watched. Did it hold?</source>
        <translation>%1: %2 no se vigilaron. ¿Se mantuvo?</translation>
    </message>
    <message>
        <source>%1: %2 of the boil were not watched. Did it hold?</source>
        <translation>%1: %2 del hervor no se vigilaron. ¿Se mantuvo?</translation>
    </message>
    <message>
        <source>%1: look for the steam</source>
        <translation>%1: busque el vapor</translation>
    </message>
    <message>
        <source>%1: look for the rolling boil</source>
        <translation>%1: busque el hervor pleno</translation>
    </message>
    <message>
        <source>jars being filled</source>
        <translation>llenando frascos</translation>
    </message>
    <message>
        <source>heating to the boil</source>
        <translation>calentando hasta hervir</translation>
    </message>
    <message>
        <source>heating to steam</source>
        <translation>calentando hasta dar vapor</translation>
    </message>
    <message>
        <source>venting</source>
        <translation>purgando</translation>
    </message>
    <message>
        <source>coming to pressure</source>
        <translation>tomando presión</translation>
    </message>
    <message>
        <source>at a rolling boil</source>
        <translation>en hervor pleno</translation>
    </message>
    <message>
        <source>at pressure</source>
        <translation>a presión</translation>
    </message>
    <message>
        <source>in full steam</source>
        <translation>en pleno vapor</translation>
    </message>
    <message>
        <source>losing its pressure, heat off</source>
        <translation>perdiendo su presión, fuego apagado</translation>
    </message>
    <message>
        <source>waiting, lid on</source>
        <translation>en espera, con tapa</translation>
    </message>
    <message>
        <source>resting, heat off</source>
        <translation>en reposo, fuego apagado</translation>
    </message>
    <message>
        <source>being lifted</source>
        <translation>sacando los frascos</translation>
    </message>
    <message>
        <source>cooling, untouched</source>
        <translation>enfriándose, sin tocar</translation>
    </message>
    <message>
        <source>seals checked</source>
        <translation>sellos revisados</translation>
    </message>
    <message>
        <source>set aside</source>
        <translation>apartada</translation>
    </message>
    <message>
        <source>8 in 10 by %1</source>
        <translation>8 de cada 10 antes de las %1</translation>
    </message>
    <message>
        <source>%1; %2 in the slot</source>
        <translation>%1; %2 en el horario</translation>
    </message>
    <message>
        <source>latest heat-on</source>
        <translation>encender a más tardar</translation>
    </message>
    <message>
        <source>latest in: %1</source>
        <translation>cargar a más tardar: en %1</translation>
    </message>
    <message>
        <source>■ PAST by %1</source>
        <translation>■ PASADO por %1</translation>
    </message>
    <message>
        <source>▲ SOON: in %1</source>
        <translation>▲ PRONTO: en %1</translation>
    </message>
    <message>
        <source>in %1</source>
        <translation>en %1</translation>
    </message>
    <message>
        <source>a second pair of hands saves %1</source>
        <translation>un segundo par de manos ahorra %1</translation>
    </message>
    <message>
        <source>a third pair of hands saves %1</source>
        <translation>un tercer par de manos ahorra %1</translation>
    </message>
    <message>
        <source>one more pair of hands saves %1</source>
        <translation>un par de manos más ahorra %1</translation>
    </message>
    <message>
        <source>closing before the last load is lifted (%2 stays) saves %1</source>
        <translation>cerrar antes de sacar la última carga (%2 se queda) ahorra %1</translation>
    </message>
    <message>
        <source>leaving out one talking point saves %1</source>
        <translation>omitir un punto de la charla ahorra %1</translation>
    </message>
    <message>
        <source>leaving out %1 talking points saves %2</source>
        <translation>omitir %1 puntos de la charla ahorra %2</translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation>%1 de retraso</translation>
    </message>
    <message>
        <source>%1, and nothing left to change saves time</source>
        <translation>%1, y nada que quede por cambiar ahorra tiempo</translation>
    </message>
    <message>
        <source>The plan has a fault (%1): advice goes by the plain order</source>
        <translation>El plan tiene un fallo (%1): los consejos siguen el orden simple</translation>
    </message>
    <message>
        <source>Advice has a fault (%1): what is shown is older</source>
        <translation>Los consejos tienen un fallo (%1): lo que se ve es más antiguo</translation>
    </message>
    <message>
        <source>Searching for the shortest sheet</source>
        <translation>Buscando la hoja de ruta más corta</translation>
    </message>
    <message>
        <source>Searching: best so far %1, at least %2</source>
        <translation>Buscando: la mejor hasta ahora %1, al menos %2</translation>
    </message>
    <message>
        <source>No sheet was found that keeps every limit</source>
        <translation>No se encontró ninguna hoja que respete todos los límites</translation>
    </message>
    <message>
        <source>The search was stopped</source>
        <translation>La búsqueda se detuvo</translation>
    </message>
    <message>
        <source>In the slot: %1
Half of %2 runs end by %3
8 in 10 end by %4</source>
        <translation>En el horario: %1
La mitad de %2 ensayos termina a las %3
8 de cada 10 terminan a las %4</translation>
    </message>
    <message>
        <source>Heat on</source>
        <translation>Encender</translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation>%1 dentro</translation>
    </message>
    <message>
        <source>%1 to spare</source>
        <translation>%1 de sobra</translation>
    </message>
    <message>
        <source>%1 TOO LATE</source>
        <translation>%1 DEMASIADO TARDE</translation>
    </message>
    <message>
        <source>%1 %2  ·  %3</source>
        <translation>%1 %2  ·  %3</translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation>%1  %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>◆ critical</source>
        <translation>◆ crítico</translation>
    </message>
    <message>
        <source>Nothing tried so far makes this class fit its slot. The nearest to it is shown.</source>
        <translation>Nada de lo probado hace caber esta clase en su horario. Se muestra lo más cercano.</translation>
    </message>
    <message>
        <source>Nothing that can be made ahead makes this class fit its slot. The nearest to it is shown.</source>
        <translation>Nada que pueda hacerse antes hace caber esta clase en su horario. Se muestra lo más cercano.</translation>
    </message>
    <message>
        <source>The class fits its slot with nothing made ahead.</source>
        <translation>La clase cabe en su horario sin hacer nada antes.</translation>
    </message>
    <message>
        <source>The class fits its slot with nothing made ahead and some talk left out.</source>
        <translation>La clase cabe en su horario sin hacer nada antes y omitiendo parte de la charla.</translation>
    </message>
    <message>
        <source>Make one stage ahead and the class fits its slot</source>
        <translation>Haga una etapa antes y la clase cabe en su horario</translation>
    </message>
    <message>
        <source>Make %1 stages ahead and the class fits its slot</source>
        <translation>Haga %1 etapas antes y la clase cabe en su horario</translation>
    </message>
    <message>
        <source>%1; nothing smaller does.</source>
        <translation>%1; con menos no cabe.</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>8 in 10 classes end by %1 with nothing made ahead</source>
        <translation>8 de cada 10 clases terminan a las %1 sin hacer nada antes</translation>
    </message>
    <message>
        <source>, and by %1 with what is marked</source>
        <translation>, y a las %1 con lo marcado</translation>
    </message>
    <message>
        <source>; the room must be empty at %1.</source>
        <translation>; la sala debe quedar vacía a las %1.</translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation>Omitir: %1</translation>
    </message>
    <message>
        <source>the load</source>
        <translation>la carga</translation>
    </message>
    <message>
        <source>load %1 in %2</source>
        <translation>carga %1 en %2</translation>
    </message>
    <message>
        <source>load %1</source>
        <translation>carga %1</translation>
    </message>
    <message>
        <source>1 quarter-pint</source>
        <translation>1 frasco de cuarto de pinta</translation>
    </message>
    <message>
        <source>%1 quarter-pints</source>
        <translation>%1 frascos de cuarto de pinta</translation>
    </message>
    <message>
        <source>1 half-pint</source>
        <translation>1 frasco de media pinta</translation>
    </message>
    <message>
        <source>%1 half-pints</source>
        <translation>%1 frascos de media pinta</translation>
    </message>
    <message>
        <source>1 twelve-ounce jar</source>
        <translation>1 frasco de doce onzas</translation>
    </message>
    <message>
        <source>%1 twelve-ounce jars</source>
        <translation>%1 frascos de doce onzas</translation>
    </message>
    <message>
        <source>1 pint</source>
        <translation>1 frasco de pinta</translation>
    </message>
    <message>
        <source>%1 pints</source>
        <translation>%1 frascos de pinta</translation>
    </message>
    <message>
        <source>1 pint-and-a-half</source>
        <translation>1 frasco de pinta y media</translation>
    </message>
    <message>
        <source>%1 pint-and-a-halfs</source>
        <translation>%1 frascos de pinta y media</translation>
    </message>
    <message>
        <source>1 quart</source>
        <translation>1 frasco de cuarto de galón</translation>
    </message>
    <message>
        <source>%1 quarts</source>
        <translation>%1 frascos de cuarto de galón</translation>
    </message>
    <message>
        <source>1 half-gallon</source>
        <translation>1 frasco de medio galón</translation>
    </message>
    <message>
        <source>%1 half-gallons</source>
        <translation>%1 frascos de medio galón</translation>
    </message>
    <message>
        <source>Start the class</source>
        <translation>Empezar la clase</translation>
    </message>
    <message>
        <source>Start — %1</source>
        <translation>Empezar — %1</translation>
    </message>
    <message>
        <source>Done — %1</source>
        <translation>Hecho — %1</translation>
    </message>
    <message>
        <source>Done once — %1</source>
        <translation>Hecho una vez — %1</translation>
    </message>
    <message>
        <source>Looked — %1</source>
        <translation>Mirado — %1</translation>
    </message>
    <message>
        <source>Said — %1</source>
        <translation>Dicho — %1</translation>
    </message>
    <message>
        <source>lift the jars</source>
        <translation>sacar los frascos</translation>
    </message>
    <message>
        <source>lift %1 of %2, rested</source>
        <translation>sacar %1 de %2, ya reposados</translation>
    </message>
    <message>
        <source>%1 — done; start: %2</source>
        <translation>%1 — hecho; empezar: %2</translation>
    </message>
    <message>
        <source>Back to work — questions so far: %1</source>
        <translation>De vuelta al trabajo — preguntas hasta ahora: %1</translation>
    </message>
    <message>
        <source>Seen to be off — %1</source>
        <translation>Visto apagado — %1</translation>
    </message>
    <message>
        <source>End the class — the room is free</source>
        <translation>Terminar la clase — la sala queda libre</translation>
    </message>
    <message>
        <source>Close the session — the kitchen is done</source>
        <translation>Cerrar la sesión — la cocina terminó</translation>
    </message>
    <message>
        <source>The class has not started yet.</source>
        <translation>La clase aún no ha empezado.</translation>
    </message>
    <message>
        <source>The class has started already.</source>
        <translation>La clase ya empezó.</translation>
    </message>
    <message>
        <source>This session is closed.</source>
        <translation>Esta sesión está cerrada.</translation>
    </message>
    <message>
        <source>There is no such step in this class.</source>
        <translation>No hay tal paso en esta clase.</translation>
    </message>
    <message>
        <source>There is no such load in this class.</source>
        <translation>No hay tal carga en esta clase.</translation>
    </message>
    <message>
        <source>That is running already.</source>
        <translation>Eso ya está en marcha.</translation>
    </message>
    <message>
        <source>That is not running.</source>
        <translation>Eso no está en marcha.</translation>
    </message>
    <message>
        <source>That is done already.</source>
        <translation>Eso ya está hecho.</translation>
    </message>
    <message>
        <source>This step cannot be left out.</source>
        <translation>Este paso no se puede omitir.</translation>
    </message>
    <message>
        <source>Nothing there needs a look now and then.</source>
        <translation>Nada allí necesita una mirada de vez en cuando.</translation>
    </message>
    <message>
        <source>No load is being brought to the boil there.</source>
        <translation>Allí no se está llevando ninguna carga al hervor.</translation>
    </message>
    <message>
        <source>No process time is being counted there.</source>
        <translation>Allí no se cuenta ningún tiempo de procesamiento.</translation>
    </message>
    <message>
        <source>The boil was watched all the time; there is nothing to confirm.</source>
        <translation>El hervor se vigiló todo el tiempo; no hay nada que confirmar.</translation>
    </message>
    <message>
        <source>Seals are checked once the jars have been lifted and cooled.</source>
        <translation>Los sellos se revisan cuando los frascos se han sacado y enfriado.</translation>
    </message>
    <message>
        <source>Sealed, unsealed and broken jars do not add up to the jars of the load.</source>
        <translation>Sellados, sin sellar y rotos no suman los frascos de la carga.</translation>
    </message>
    <message>
        <source>There is no such talking point.</source>
        <translation>No hay tal punto de la charla.</translation>
    </message>
    <message>
        <source>That point has been said.</source>
        <translation>Ese punto ya se dijo.</translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation>No hay nada que deshacer.</translation>
    </message>
    <message>
        <source>Points that must be said are still open.</source>
        <translation>Quedan puntos que hay que decir.</translation>
    </message>
    <message>
        <source>A few words are needed here.</source>
        <translation>Aquí hacen falta unas palabras.</translation>
    </message>
    <message>
        <source>That text is too long.</source>
        <translation>Ese texto es demasiado largo.</translation>
    </message>
    <message>
        <source>The canner moves on by what is seen: boil, steam or pressure seen or lost, heat off, jars lifted.</source>
        <translation>La envasadora avanza por lo que se ve: hervor, vapor o presión vistos o perdidos, fuego apagado, frascos sacados.</translation>
    </message>
    <message>
        <source>The class is asking already.</source>
        <translation>La clase ya está preguntando.</translation>
    </message>
    <message>
        <source>Nobody is asking just now.</source>
        <translation>Nadie pregunta en este momento.</translation>
    </message>
    <message>
        <source>A reading needs a unit: °C, °F, pH, psi or kPa.</source>
        <translation>Una lectura necesita unidad: °C, °F, pH, psi o kPa.</translation>
    </message>
    <message>
        <source>This step is not done jar by jar.</source>
        <translation>Este paso no se hace frasco por frasco.</translation>
    </message>
    <message>
        <source>All jars of this step are counted.</source>
        <translation>Ya se contaron todos los frascos de este paso.</translation>
    </message>
    <message>
        <source>That question is not open.</source>
        <translation>Esa pregunta no está pendiente.</translation>
    </message>
    <message>
        <source>There is no such station.</source>
        <translation>No hay tal estación.</translation>
    </message>
    <message>
        <source>The newest press stays as it is: %1. Nothing older is taken back past it.</source>
        <translation>La última pulsación queda como está: %1. Nada anterior se deshace por encima de ella.</translation>
    </message>
    <message>
        <source>Lost steam is not taken back: the canner vents again for the full time.</source>
        <translation>El vapor perdido no se deshace: la envasadora purga otra vez el tiempo completo.</translation>
    </message>
    <message>
        <source>Lost pressure is not taken back: the count starts again from the full time.</source>
        <translation>La presión perdida no se deshace: la cuenta empieza otra vez desde el tiempo completo.</translation>
    </message>
    <message>
        <source>A load that was set aside is not taken back.</source>
        <translation>Una carga apartada no se deshace.</translation>
    </message>
    <message>
        <source>A lost boil is not taken back: the count starts again from the full time.</source>
        <translation>Un hervor perdido no se deshace: la cuenta empieza otra vez desde el tiempo completo.</translation>
    </message>
    <message>
        <source>Taken back — %1</source>
        <translation>Deshecho — %1</translation>
    </message>
    <message>
        <source>Not before this has ended: %1.</source>
        <translation>No antes de que esto termine: %1.</translation>
    </message>
    <message>
        <source>No place is free for it: %1.</source>
        <translation>No hay lugar libre para ello: %1.</translation>
    </message>
    <message>
        <source>No place is free for it.</source>
        <translation>No hay lugar libre para ello.</translation>
    </message>
    <message>
        <source>The process time is not over: %1 to go, until %2.</source>
        <translation>El tiempo de procesamiento no ha terminado: faltan %1, hasta las %2.</translation>
    </message>
    <message>
        <source>%1 of this boil were not watched. Confirm that it held, or count again from the start.</source>
        <translation>%1 de este hervor no se vigilaron. Confirme que se mantuvo o cuente otra vez desde el principio.</translation>
    </message>
    <message>
        <source>The jars rest first: %1 to go, until %2.</source>
        <translation>Los frascos reposan primero: faltan %1, hasta las %2.</translation>
    </message>
    <message>
        <source>Not taken: a reading lies between %1 and %2.</source>
        <translation>No aceptado: una lectura está entre %1 y %2.</translation>
    </message>
    <message>
        <source>Nothing is known to be on: %1.</source>
        <translation>No consta que nada esté encendido: %1.</translation>
    </message>
    <message>
        <source>Nobody has said yet that it is off: %1.</source>
        <translation>Nadie ha dicho aún que está apagado: %1.</translation>
    </message>
    <message>
        <source>%1 waited %2 too long. First: %3</source>
        <translation>%1 esperó %2 de más. Primero: %3</translation>
    </message>
    <message>
        <source>A load is still open: it is neither lifted nor set aside.</source>
        <translation>Queda una carga abierta: ni sacada ni apartada.</translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation>MIRE</translation>
    </message>
    <message>
        <source>SOON</source>
        <translation>PRONTO</translation>
    </message>
    <message>
        <source>DUE</source>
        <translation>AHORA</translation>
    </message>
    <message>
        <source>TIME UP</source>
        <translation>TIEMPO</translation>
    </message>
    <message>
        <source>ANSWER</source>
        <translation>RESPONDA</translation>
    </message>
    <message>
        <source>A look is wanted: %1</source>
        <translation>Se quiere una mirada: %1</translation>
    </message>
    <message>
        <source>A look is overdue: %1</source>
        <translation>Una mirada se retrasa: %1</translation>
    </message>
    <message>
        <source>Time is up: %1</source>
        <translation>Se acabó el tiempo: %1</translation>
    </message>
    <message>
        <source>Look for its end: %1</source>
        <translation>Busque su final: %1</translation>
    </message>
    <message>
        <source>%1: process time ends within a minute</source>
        <translation>%1: el tiempo de procesamiento termina en menos de un minuto</translation>
    </message>
    <message>
        <source>%1: rest ends within a minute</source>
        <translation>%1: el reposo termina en menos de un minuto</translation>
    </message>
    <message>
        <source>Cannot wait much longer: %1</source>
        <translation>No puede esperar mucho más: %1</translation>
    </message>
    <message>
        <source>Has waited too long: %1</source>
        <translation>Ha esperado demasiado: %1</translation>
    </message>
    <message>
        <source>The class ends soon</source>
        <translation>La clase termina pronto</translation>
    </message>
    <message>
        <source>The class should end now</source>
        <translation>La clase debería terminar ahora</translation>
    </message>
    <message>
        <source>class started</source>
        <translation>clase empezada</translation>
    </message>
    <message>
        <source>started</source>
        <translation>empezado</translation>
    </message>
    <message>
        <source>done</source>
        <translation>hecho</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>looked after</source>
        <translation>mirado</translation>
    </message>
    <message>
        <source>water confirmed</source>
        <translation>agua confirmada</translation>
    </message>
    <message>
        <source>steam seen, venting</source>
        <translation>vapor visto, purgando</translation>
    </message>
    <message>
        <source>steam lost</source>
        <translation>vapor perdido</translation>
    </message>
    <message>
        <source>vent closed</source>
        <translation>salida cerrada</translation>
    </message>
    <message>
        <source>pressure reached</source>
        <translation>presión alcanzada</translation>
    </message>
    <message>
        <source>pressure lost</source>
        <translation>presión perdida</translation>
    </message>
    <message>
        <source>no pressure left</source>
        <translation>ya sin presión</translation>
    </message>
    <message>
        <source>rolling boil seen</source>
        <translation>hervor pleno visto</translation>
    </message>
    <message>
        <source>boil lost</source>
        <translation>hervor perdido</translation>
    </message>
    <message>
        <source>not watched</source>
        <translation>sin vigilar</translation>
    </message>
    <message>
        <source>boil vouched for</source>
        <translation>hervor avalado</translation>
    </message>
    <message>
        <source>heat off, rest begins</source>
        <translation>fuego apagado, empieza el reposo</translation>
    </message>
    <message>
        <source>said</source>
        <translation>dicho</translation>
    </message>
    <message>
        <source>note</source>
        <translation>nota</translation>
    </message>
    <message>
        <source>taken back</source>
        <translation>deshecho</translation>
    </message>
    <message>
        <source>questions began</source>
        <translation>empezaron preguntas</translation>
    </message>
    <message>
        <source>back from questions</source>
        <translation>de vuelta de las preguntas</translation>
    </message>
    <message>
        <source>read</source>
        <translation>leído</translation>
    </message>
    <message>
        <source>question put off</source>
        <translation>pregunta dejada</translation>
    </message>
    <message>
        <source>question answered</source>
        <translation>pregunta respondida</translation>
    </message>
    <message>
        <source>swapped</source>
        <translation>cambiado</translation>
    </message>
    <message>
        <source>jar done</source>
        <translation>frasco hecho</translation>
    </message>
    <message>
        <source>seen to be off</source>
        <translation>visto apagado</translation>
    </message>
    <message>
        <source>class ended</source>
        <translation>clase terminada</translation>
    </message>
    <message>
        <source>session closed</source>
        <translation>sesión cerrada</translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation>%1 después de %2</translation>
    </message>
    <message>
        <source>%1: %2 — %3</source>
        <translation>%1: %2 — %3</translation>
    </message>
    <message>
        <source>%1: %2, %3 of %4</source>
        <translation>%1: %2, %3 de %4</translation>
    </message>
    <message>
        <source>Taken back: press no. %1</source>
        <translation>Deshecho: pulsación n.º %1</translation>
    </message>
    <message>
        <source>key</source>
        <translation>tecla</translation>
    </message>
    <message>
        <source>held key</source>
        <translation>tecla mantenida</translation>
    </message>
    <message>
        <source>pedal</source>
        <translation>pedal</translation>
    </message>
    <message>
        <source>mouse</source>
        <translation>ratón</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>reloj</translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation>retomada</translation>
    </message>
    <message>
        <source>rehearsal</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>terminal</source>
        <translation>terminal</translation>
    </message>
    <message>
        <source>at the start</source>
        <translation>al empezar</translation>
    </message>
    <message>
        <source>after what comes before</source>
        <translation>después de lo anterior</translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation>después de: %1</translation>
    </message>
    <message>
        <source>no hand was free</source>
        <translation>no había manos libres</translation>
    </message>
    <message>
        <source>no hand was free: %1</source>
        <translation>no había manos libres: %1</translation>
    </message>
    <message>
        <source>waits for a place: %1</source>
        <translation>espera lugar: %1</translation>
    </message>
    <message>
        <source>waits for a place</source>
        <translation>espera lugar</translation>
    </message>
    <message>
        <source>not earlier, so that it need not wait for: %1</source>
        <translation>no antes, para que no tenga que esperar: %1</translation>
    </message>
    <message>
        <source>not earlier, so that it need not wait</source>
        <translation>no antes, para que no tenga que esperar</translation>
    </message>
    <message>
        <source>looks at a tray come first</source>
        <translation>las miradas a la bandeja van primero</translation>
    </message>
    <message>
        <source>is under way</source>
        <translation>está en marcha</translation>
    </message>
    <message>
        <source>hands throughout</source>
        <translation>manos todo el tiempo</translation>
    </message>
    <message>
        <source>hands at the start</source>
        <translation>manos al principio</translation>
    </message>
    <message>
        <source>a look</source>
        <translation>una mirada</translation>
    </message>
    <message>
        <source>hands at the end</source>
        <translation>manos al final</translation>
    </message>
    <message>
        <source>lid off, away from the face — lift %1 of %2</source>
        <translation>tapa fuera, lejos de la cara — sacar %1 de %2</translation>
    </message>
    <message>
        <source>Nobody knows such a place for jars.</source>
        <translation>Nadie conoce tal destino para los frascos.</translation>
    </message>
    <message>
        <source>No jar of this load was found unsealed.</source>
        <translation>Ningún frasco de esta carga se halló sin sellar.</translation>
    </message>
    <message>
        <source>The class report has no such figure.</source>
        <translation>El informe de la clase no tiene tal dato.</translation>
    </message>
    <message>
        <source>That figure is not one a class can have.</source>
        <translation>Una clase no puede tener esa cifra.</translation>
    </message>
    <message>
        <source>where jars went</source>
        <translation>destino de los frascos</translation>
    </message>
    <message>
        <source>figure for the report</source>
        <translation>dato para el informe</translation>
    </message>
</context>
<context>
    <name>brinebell::AltitudePage</name>
    <message>
        <source>Why this altitude needs more</source>
        <translation>Por qué esta altitud necesita más</translation>
    </message>
    <message>
        <source>No time is reckoned from this. Published times come from tests of whole jars, in which heat creeps to the middle and acid does a part; they grow by less than the picture says.</source>
        <translation>De aquí no se calcula ningún tiempo. Los tiempos publicados vienen de pruebas con frascos enteros, donde el calor llega despacio al centro y el ácido hace su parte; crecen menos de lo que dice la gráfica.</translation>
    </message>
    <message>
        <source>This class has no jars in a canner.</source>
        <translation>Esta clase no tiene frascos en una envasadora.</translation>
    </message>
    <message>
        <source>What this class uses:</source>
        <translation>Lo que usa esta clase:</translation>
    </message>
    <message>
        <source>%L1 °C (%L2 °F)</source>
        <translation>%L1 °C (%L2 °F)</translation>
    </message>
    <message>
        <source>Here, at %1, water boils at %2; at sea level at %3. It gets no hotter, however high the flame. For hardy spores the rule is: %4 °C cooler takes ten times as long. A minute of boiling here does the work of %L5 at sea level, and it takes %L6 to match one there.</source>
        <translation>Aquí, a %1, el agua hierve a %2; al nivel del mar, a %3. No se calienta más, por alta que esté la llama. Para esporas resistentes la regla es: %4 °C menos tardan diez veces más. Un minuto de hervor aquí hace el trabajo de %L5 al nivel del mar, y hacen falta %L6 para igualar uno de allá.</translation>
    </message>
</context>
<context>
    <name>brinebell::AltitudePlot</name>
    <message>
        <source>What matches one minute of boiling at sea level, by altitude; the text says it in words</source>
        <translation>Lo que iguala un minuto de hervor al nivel del mar, según la altitud; el texto lo dice en palabras</translation>
    </message>
    <message>
        <source>0</source>
        <translation>0</translation>
    </message>
    <message>
        <source>%L1 ft</source>
        <translation>%L1 pies</translation>
    </message>
    <message>
        <source>Illustration: to match 1 min at sea level</source>
        <translation>Ilustración: para igualar 1 min al nivel del mar</translation>
    </message>
    <message>
        <source>%L1 m</source>
        <translation>%L1 m</translation>
    </message>
    <message>
        <source>here: %L1</source>
        <translation>aquí: %L1</translation>
    </message>
</context>
<context>
    <name>brinebell::AudienceWindow</name>
    <message>
        <source>Brinebell — for the room</source>
        <translation>Brinebell — para la sala</translation>
    </message>
    <message>
        <source>Audience screen</source>
        <translation>Pantalla del público</translation>
    </message>
    <message>
        <source>Audience screen: a window, because there is no second display. A closes it.</source>
        <translation>Pantalla del público: una ventana, porque no hay segunda pantalla. A la cierra.</translation>
    </message>
    <message>
        <source>Audience screen: fills %1. A closes it.</source>
        <translation>Pantalla del público: llena %1. A la cierra.</translation>
    </message>
    <message>
        <source>The display %1 is gone: the audience screen is a window behind the board.</source>
        <translation>La pantalla %1 ya no está: la del público es una ventana detrás del tablero.</translation>
    </message>
</context>
<context>
    <name>brinebell::AwakeKeeper</name>
    <message>
        <source>The screen may sleep</source>
        <translation>La pantalla puede apagarse</translation>
    </message>
    <message>
        <source>The laptop may fall asleep</source>
        <translation>El equipo puede dormirse</translation>
    </message>
</context>
<context>
    <name>brinebell::ChoicePanel</name>
    <message>
        <source>A question over the board</source>
        <translation>Una pregunta sobre el tablero</translation>
    </message>
    <message>
        <source>A digit chooses. Esc goes back and changes nothing.</source>
        <translation>Un número elige. Esc vuelve y no cambia nada.</translation>
    </message>
    <message>
        <source>Words for the record</source>
        <translation>Palabras para el registro</translation>
    </message>
    <message>
        <source>A few words for the record:</source>
        <translation>Unas palabras para el registro:</translation>
    </message>
    <message>
        <source>Yes, do it</source>
        <translation>Sí, hágalo</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>A few words for the record; without any it says that no reason was given:</source>
        <translation>Unas palabras para el registro; sin ellas constará que no se dio motivo:</translation>
    </message>
</context>
<context>
    <name>brinebell::ClassEditor</name>
    <message>
        <source>Classes</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>The sheet below is older: a new one is being sought.</source>
        <translation>La hoja de abajo es anterior: se busca una nueva.</translation>
    </message>
    <message>
        <source>A first sheet, by the usual order; a better one is being sought.</source>
        <translation>Una primera hoja, en el orden usual; se busca una mejor.</translation>
    </message>
    <message>
        <source>Warnings and notes of the sheet</source>
        <translation>Advertencias y notas de la hoja</translation>
    </message>
    <message>
        <source>Prepare this c&amp;lass</source>
        <translation>Preparar esta c&amp;lase</translation>
    </message>
    <message>
        <source>▲ The sheet below is older: the class has faults.</source>
        <translation>▲ La hoja de abajo es anterior: la clase tiene errores.</translation>
    </message>
    <message>
        <source>No sheet yet: the class has faults.</source>
        <translation>Todavía no hay hoja: la clase tiene errores.</translation>
    </message>
    <message>
        <source>The class ends at %1, the kitchen at %2.</source>
        <translation>La clase termina a las %1, la cocina a las %2.</translation>
    </message>
    <message>
        <source>A class needs a kitchen first, with its altitude and a canner: make one under Kitchens.</source>
        <translation>Una clase necesita antes una cocina con su altitud y una envasadora: créela en Cocinas.</translation>
    </message>
    <message>
        <source>New class</source>
        <translation>Clase nueva</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Docente</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (copia)</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Dishes</source>
        <translation>Platos</translation>
    </message>
    <message>
        <source>What is said</source>
        <translation>Qué se dice</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>Our own teaching note</source>
        <translation>Nota didáctica propia</translation>
    </message>
    <message>
        <source>Every recipe of the shelf is a dish of this class already.</source>
        <translation>Todas las recetas del estante son ya platos de esta clase.</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Title of the class</source>
        <translation>Título de la clase</translation>
    </message>
    <message>
        <source>Who teaches</source>
        <translation>Quién enseña</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empieza</translation>
    </message>
    <message>
        <source>day and time as in 2026-09-17 18:00 are expected</source>
        <translation>se espera un día y una hora como 2026-09-17 18:00</translation>
    </message>
    <message>
        <source>Year, month, day and time by the clock of this computer: 2026-09-17 18:00.</source>
        <translation>Año, mes, día y hora según el reloj de este equipo: 2026-09-17 18:00.</translation>
    </message>
    <message>
        <source>Slot: the room must be empty after</source>
        <translation>Turno: la sala debe quedar vacía tras</translation>
    </message>
    <message>
        <source>The kitchen must be empty after</source>
        <translation>La cocina debe quedar vacía tras</translation>
    </message>
    <message>
        <source>Empty where it is not limited.</source>
        <translation>Vacío si no tiene límite.</translation>
    </message>
    <message>
        <source>Helpers</source>
        <translation>Ayudantes</translation>
    </message>
    <message>
        <source>Who stays until the last load is lifted</source>
        <translation>Quién se queda hasta sacar la última carga</translation>
    </message>
    <message>
        <source>Opening: welcome and hand washing</source>
        <translation>Apertura: bienvenida y lavado de manos</translation>
    </message>
    <message>
        <source>Closing: questions and good-bye</source>
        <translation>Cierre: preguntas y despedida</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Ten batches are too few for so many jars.</source>
        <translation>Diez tandas no bastan para tantos frascos.</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Tanda</translation>
    </message>
    <message>
        <source>Jars</source>
        <translation>Frascos</translation>
    </message>
    <message>
        <source>Size of the jars</source>
        <translation>Tamaño de los frascos</translation>
    </message>
    <message>
        <source>How much of the recipe&apos;s batch</source>
        <translation>Cuánto de la tanda de la receta</translation>
    </message>
    <message>
        <source>1 is the whole batch, 1/2 the half, 2 two batches.</source>
        <translation>1 es la tanda entera, 1/2 la mitad, 2 dos tandas.</translation>
    </message>
    <message>
        <source>&amp;Fit the batch to the jars</source>
        <translation>Ajustar la tanda a los &amp;frascos</translation>
    </message>
    <message>
        <source>Canner</source>
        <translation>Envasadora</translation>
    </message>
    <message>
        <source>Made ahead of the class</source>
        <translation>Preparado antes de la clase</translation>
    </message>
    <message>
        <source>It &amp;must be said</source>
        <translation>&amp;Hay que decirlo</translation>
    </message>
    <message>
        <source>It must be said</source>
        <translation>Debe decirse</translation>
    </message>
    <message>
        <source>It may be dropped &amp;when time is short</source>
        <translation>Puede omitirse si falta &amp;tiempo</translation>
    </message>
    <message>
        <source>It may be dropped</source>
        <translation>Puede omitirse</translation>
    </message>
    <message>
        <source>How long it takes</source>
        <translation>Cuánto tarda</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
</context>
<context>
    <name>brinebell::ClockLine</name>
    <message>
        <source>now</source>
        <translation>ahora</translation>
    </message>
    <message>
        <source>ends</source>
        <translation>termina</translation>
    </message>
    <message>
        <source>by</source>
        <translation>a las</translation>
    </message>
    <message>
        <source>class end
(%1)</source>
        <translation>fin de clase
(%1)</translation>
    </message>
    <message>
        <source>Kitchen ends %1 (%2)</source>
        <translation>La cocina termina %1 (%2)</translation>
    </message>
    <message>
        <source>Class end: %1</source>
        <translation>Fin de clase: %1</translation>
    </message>
</context>
<context>
    <name>brinebell::ClosingPanel</name>
    <message>
        <source>Not said: %1</source>
        <translation>Sin decir: %1</translation>
    </message>
    <message>
        <source>%1 is open (%2): set it aside?</source>
        <translation>%1 está abierta (%2): ¿apartarla?</translation>
    </message>
    <message>
        <source>May still be on: %1</source>
        <translation>Puede seguir encendido: %1</translation>
    </message>
    <message>
        <source>Question put off: %1</source>
        <translation>Pregunta dejada: %1</translation>
    </message>
    <message>
        <source>What is open before the close</source>
        <translation>Lo que queda abierto antes de cerrar</translation>
    </message>
    <message>
        <source>Line %1 of what is open</source>
        <translation>Línea %1 de lo que queda abierto</translation>
    </message>
    <message>
        <source>Hold C 1 s</source>
        <translation>Mantenga C 1 s</translation>
    </message>
    <message>
        <source>Nothing is open</source>
        <translation>No queda nada abierto</translation>
    </message>
    <message>
        <source>Open before the close: %1</source>
        <translation>Abierto antes de cerrar: %1</translation>
    </message>
    <message>
        <source>… and %1 more. A digit settles a line, Esc goes back.</source>
        <translation>… y %1 más. Un número resuelve una línea, Esc vuelve.</translation>
    </message>
    <message>
        <source>A digit settles a line, Esc goes back.</source>
        <translation>Un número resuelve una línea, Esc vuelve.</translation>
    </message>
    <message>
        <source>End the class</source>
        <translation>Terminar la clase</translation>
    </message>
    <message>
        <source>Close the session</source>
        <translation>Cerrar la sesión</translation>
    </message>
    <message>
        <source>%1 all the same; the log keeps what is open</source>
        <translation>%1 de todos modos; la bitácora guarda lo que queda abierto</translation>
    </message>
</context>
<context>
    <name>brinebell::CuePlayer</name>
    <message>
        <source>the sound output is being looked for</source>
        <translation>se busca la salida de sonido</translation>
    </message>
    <message>
        <source>the program %1 cannot be started, so cues are only shown</source>
        <translation>el programa %1 no arranca, así que los avisos solo se muestran</translation>
    </message>
    <message>
        <source>the chosen sound output is not there, so the default one is used</source>
        <translation>la salida de sonido elegida no está, así que se usa la predeterminada</translation>
    </message>
    <message>
        <source>no sound output was found, so cues are only shown</source>
        <translation>no hay salida de sonido, así que los avisos solo se muestran</translation>
    </message>
    <message>
        <source>the sound output did not take the last cue, so cues may only be shown</source>
        <translation>la salida de sonido no tomó el último aviso, así que puede que los avisos solo se muestren</translation>
    </message>
    <message>
        <source>the sound service does not answer, so cues are only shown</source>
        <translation>el servicio de sonido no responde, así que los avisos solo se muestran</translation>
    </message>
</context>
<context>
    <name>brinebell::CueRhythm</name>
    <message numerus="yes">
        <source>%n pulse(s)</source>
        <translation>
            <numerusform>%n pulso</numerusform>
            <numerusform>%n pulsos</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brinebell::DocumentPage</name>
    <message>
        <source>Sections</source>
        <translation>Secciones</translation>
    </message>
    <message>
        <source>Faults; Enter leads to the field</source>
        <translation>Faltas; Entrar lleva al campo</translation>
    </message>
    <message>
        <source>&amp;New</source>
        <translation>&amp;Nuevo</translation>
    </message>
    <message>
        <source>Make a &amp;class version</source>
        <translation>Hacer una versión de &amp;clase</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Copiar</translation>
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
        <source>&amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <source>What this section holds</source>
        <translation>Lo que hay en esta sección</translation>
    </message>
    <message>
        <source>A&amp;dd</source>
        <translation>&amp;Añadir</translation>
    </message>
    <message>
        <source>R&amp;emove</source>
        <translation>&amp;Quitar</translation>
    </message>
    <message>
        <source>U&amp;p</source>
        <translation>S&amp;ubir</translation>
    </message>
    <message>
        <source>D&amp;own</source>
        <translation>Ba&amp;jar</translation>
    </message>
    <message>
        <source>There is nothing here yet. New makes one.</source>
        <translation>Aquí no hay nada todavía. Nuevo crea uno.</translation>
    </message>
    <message>
        <source>Nothing here yet. Add makes the first.</source>
        <translation>Aquí no hay nada todavía. Añadir crea el primero.</translation>
    </message>
    <message>
        <source>Not saved yet: %1</source>
        <translation>Aún sin guardar: %1</translation>
    </message>
    <message>
        <source>Saved</source>
        <translation>Guardado</translation>
    </message>
    <message>
        <source>Saving…</source>
        <translation>Guardando…</translation>
    </message>
</context>
<context>
    <name>brinebell::ExchangePage</name>
    <message>
        <source>What became of each</source>
        <translation>Qué fue de cada una</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Archivo</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>What became of it</source>
        <translation>Resultado</translation>
    </message>
    <message>
        <source>Export and import</source>
        <translation>Exportar e importar</translation>
    </message>
    <message>
        <source>Choose one session or several to save them. Import takes sessions that were saved as JSON, and whole logbooks of other teachers; the same session twice is one.</source>
        <translation>Elija una o varias sesiones para guardarlas. Importar admite sesiones guardadas como JSON y bitácoras enteras de otras personas que enseñan; la misma sesión dos veces es una sola.</translation>
    </message>
    <message>
        <source>&amp;Front page</source>
        <translation>Página de &amp;inicio</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>I&amp;mportar…</translation>
    </message>
    <message>
        <source>Save as &amp;CSV…</source>
        <translation>Guardar como &amp;CSV…</translation>
    </message>
    <message>
        <source>Save as &amp;JSON…</source>
        <translation>Guardar como &amp;JSON…</translation>
    </message>
    <message>
        <source>Save into a folder</source>
        <translation>Guardar en una carpeta</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>%1 sessions saved into %2</source>
        <translation>%1 sesiones guardadas en %2</translation>
    </message>
    <message>
        <source>Import sessions</source>
        <translation>Importar sesiones</translation>
    </message>
    <message>
        <source>Sessions and logbooks (*.json *.sqlite);;All files (*)</source>
        <translation>Sesiones y bitácoras (*.json *.sqlite);;Todos los archivos (*)</translation>
    </message>
    <message>
        <source>Refused: %1</source>
        <translation>Rechazada: %1</translation>
    </message>
    <message>
        <source>brought in</source>
        <translation>incorporada</translation>
    </message>
    <message>
        <source>was here already</source>
        <translation>ya estaba aquí</translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>Importing…</source>
        <translation>Importando…</translation>
    </message>
    <message>
        <source>Nothing was imported: %1</source>
        <translation>No se importó nada: %1</translation>
    </message>
    <message>
        <source>%1 brought in, %2 here already, %3 refused.</source>
        <translation>%1 incorporadas, %2 ya estaban aquí, %3 rechazadas.</translation>
    </message>
</context>
<context>
    <name>brinebell::FrontPage</name>
    <message>
        <source>What is on today?</source>
        <translation>¿Qué toca hoy?</translation>
    </message>
    <message>
        <source>&amp;Prepare, rehearse or teach a class</source>
        <translation>&amp;Preparar, ensayar o dar una clase</translation>
    </message>
    <message>
        <source>Choose a class, see its run sheet, what to make ahead and when heat goes on.</source>
        <translation>Elija una clase, vea su hoja de ruta, qué hacer antes y cuándo encender.</translation>
    </message>
    <message>
        <source>&amp;Look back at past sessions</source>
        <translation>&amp;Mirar sesiones pasadas</translation>
    </message>
    <message>
        <source>How a class went beside its plan, batch records and labels.</source>
        <translation>Cómo fue una clase junto a su plan, registros de lote y etiquetas.</translation>
    </message>
    <message>
        <source>&amp;Check the sound</source>
        <translation>Probar el &amp;sonido</translation>
    </message>
    <message>
        <source>Hear every cue from where you will stand.</source>
        <translation>Oiga cada aviso desde donde va a estar.</translation>
    </message>
    <message>
        <source>&amp;Kitchens</source>
        <translation>C&amp;ocinas</translation>
    </message>
    <message>
        <source>Describe where you teach: its altitude, stations and canners.</source>
        <translation>Describir dónde se enseña: altitud, puestos y ollas.</translation>
    </message>
    <message>
        <source>&amp;Recipes</source>
        <translation>&amp;Recetas</translation>
    </message>
    <message>
        <source>Look at the tested recipes, make a class version, write your own.</source>
        <translation>Ver las recetas probadas, hacer una versión de clase, escribir las propias.</translation>
    </message>
    <message>
        <source>Se&amp;ttings</source>
        <translation>&amp;Ajustes</translation>
    </message>
    <message>
        <source>Units, clock, language, look and reading distance.</source>
        <translation>Unidades, reloj, idioma, aspecto y distancia de lectura.</translation>
    </message>
    <message>
        <source>F1 explains the page you are on, everywhere.</source>
        <translation>F1 explica la página en la que está, en todas partes.</translation>
    </message>
    <message>
        <source>Pr&amp;int</source>
        <translation>I&amp;mprimir</translation>
    </message>
    <message>
        <source>Run sheet, shopping list and handout; batch record, labels and report.</source>
        <translation>Hoja de ruta, lista de compras y hoja para asistentes; registro del lote, etiquetas e informe.</translation>
    </message>
    <message>
        <source>&amp;Export and import</source>
        <translation>&amp;Exportar e importar</translation>
    </message>
    <message>
        <source>Save sessions as files, bring in those of other teachers.</source>
        <translation>Guarde sesiones como archivos, incorpore las de otras personas.</translation>
    </message>
    <message>
        <source>Check the &amp;seals (S)</source>
        <translation>Revisar los se&amp;llos (S)</translation>
    </message>
    <message>
        <source>&amp;Build a class</source>
        <translation>Crear una &amp;clase</translation>
    </message>
    <message>
        <source>Dishes, jars, helpers and what is said; its run sheet as you go.</source>
        <translation>Platos, frascos, ayudantes y lo que se dice; su hoja de ruta al instante.</translation>
    </message>
</context>
<context>
    <name>brinebell::HelpPanel</name>
    <message>
        <source>Help</source>
        <translation>Ayuda</translation>
    </message>
    <message>
        <source>Help for this page</source>
        <translation>Ayuda de esta página</translation>
    </message>
    <message>
        <source>Close help (F1)</source>
        <translation>Cerrar la ayuda (F1)</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Teclas</translation>
    </message>
</context>
<context>
    <name>brinebell::KnownOutline</name>
    <message>
        <source>Outline to lay the card or the ruler against</source>
        <translation>Contorno para poner encima la tarjeta o la regla</translation>
    </message>
</context>
<context>
    <name>brinebell::LabelForm</name>
    <message>
        <source>Sheet</source>
        <translation>Hoja</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Hojas</translation>
    </message>
    <message>
        <source>as measured below</source>
        <translation>según las medidas de abajo</translation>
    </message>
    <message>
        <source>Paper of the labels</source>
        <translation>Papel de las etiquetas</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tamaños</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papel</translation>
    </message>
    <message>
        <source>Labels across</source>
        <translation>Etiquetas a lo ancho</translation>
    </message>
    <message>
        <source>Labels down</source>
        <translation>Etiquetas a lo alto</translation>
    </message>
    <message>
        <source>Width of a label</source>
        <translation>Ancho de una etiqueta</translation>
    </message>
    <message>
        <source>Height of a label</source>
        <translation>Alto de una etiqueta</translation>
    </message>
    <message>
        <source>Margin at the left</source>
        <translation>Margen izquierdo</translation>
    </message>
    <message>
        <source>Margin at the top</source>
        <translation>Margen superior</translation>
    </message>
    <message>
        <source>Gap between columns</source>
        <translation>Separación entre columnas</translation>
    </message>
    <message>
        <source>Gap between rows</source>
        <translation>Separación entre filas</translation>
    </message>
    <message>
        <source>First label to print</source>
        <translation>Primera etiqueta que se imprime</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>the sheet has %1 labels, so the first cannot be no. %2</source>
        <translation>la hoja tiene %1 etiquetas, así que la primera no puede ser la n.º %2</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
</context>
<context>
    <name>brinebell::LineField</name>
    <message>
        <source>Only the first %L1 characters fit here.</source>
        <translation>Aquí solo caben los primeros %L1 caracteres.</translation>
    </message>
    <message>
        <source>Control characters and invisible marks were left out.</source>
        <translation>Se quitaron caracteres de control y marcas invisibles.</translation>
    </message>
</context>
<context>
    <name>brinebell::ListsPage</name>
    <message>
        <source>&amp;Copy as text</source>
        <translation>&amp;Copiar como texto</translation>
    </message>
    <message>
        <source>Save as &amp;PDF…</source>
        <translation>Guardar como &amp;PDF…</translation>
    </message>
    <message>
        <source>Lists</source>
        <translation>Listas</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
    <message>
        <source>No class chosen</source>
        <translation>Ninguna clase elegida</translation>
    </message>
    <message>
        <source>The lists are on the clipboard.</source>
        <translation>Las listas están en el portapapeles.</translation>
    </message>
    <message>
        <source>Save the lists as PDF</source>
        <translation>Guardar las listas como PDF</translation>
    </message>
    <message>
        <source>lists</source>
        <translation>listas</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>Archivos PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
</context>
<context>
    <name>brinebell::MainWindow</name>
    <message>
        <source>Brinebell</source>
        <translation>Brinebell</translation>
    </message>
    <message>
        <source>The audience screen is closed.</source>
        <translation>La pantalla del público está cerrada.</translation>
    </message>
    <message>
        <source>The logbook cannot be used, so nothing is kept: %1</source>
        <translation>La bitácora no se puede usar, así que no se guarda nada: %1</translation>
    </message>
    <message>
        <source>A canning class is being taught</source>
        <translation>Se está dando una clase de envasado</translation>
    </message>
    <message>
        <source>Leave the board?</source>
        <translation>¿Salir del tablero?</translation>
    </message>
    <message>
        <source>The class is still running. Clocks and cues stop while you are away.</source>
        <translation>La clase sigue en marcha. Los relojes y avisos se detienen mientras no esté.</translation>
    </message>
    <message>
        <source>A rehearsal that is left is not taken up again.</source>
        <translation>Un ensayo que se deja no se retoma.</translation>
    </message>
    <message>
        <source>The session can be taken up again when the program is next started.</source>
        <translation>La sesión se puede retomar la próxima vez que se abra el programa.</translation>
    </message>
    <message>
        <source>&amp;Stay on the board</source>
        <translation>&amp;Seguir en el tablero</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>Sa&amp;lir</translation>
    </message>
    <message>
        <source>What is not saved is lost if you leave. Not saved, %1 waiting: %2</source>
        <translation>Lo que no está guardado se pierde si se va. Sin guardar, %1 en espera: %2</translation>
    </message>
</context>
<context>
    <name>brinebell::MakeAheadPanel</name>
    <message>
        <source>Stop tr&amp;ying</source>
        <translation>Dejar de &amp;probar</translation>
    </message>
    <message>
        <source>Make ahead</source>
        <translation>Hacer antes</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Etapa</translation>
    </message>
    <message>
        <source>Dish</source>
        <translation>Plato</translation>
    </message>
    <message>
        <source>Saves</source>
        <translation>Ahorra</translation>
    </message>
    <message>
        <source>Takes before class</source>
        <translation>Lleva antes de clase</translation>
    </message>
    <message>
        <source>In the class file</source>
        <translation>En el archivo de la clase</translation>
    </message>
    <message>
        <source>Stages that can be made ahead</source>
        <translation>Etapas que pueden hacerse antes</translation>
    </message>
    <message>
        <source>Trying what could be made ahead: %1 of %2 sets</source>
        <translation>Probando qué podría hacerse antes: %1 de %2 conjuntos</translation>
    </message>
    <message>
        <source>Trying what could be made ahead</source>
        <translation>Probando qué podría hacerse antes</translation>
    </message>
    <message>
        <source>Stopped after %1 sets.</source>
        <translation>Detenido tras %1 conjuntos.</translation>
    </message>
    <message>
        <source>◆ yes</source>
        <translation>◆ sí</translation>
    </message>
    <message>
        <source>no need</source>
        <translation>sin necesidad</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>made ahead</source>
        <translation>hecha antes</translation>
    </message>
    <message>
        <source>made in class</source>
        <translation>hecha en clase</translation>
    </message>
</context>
<context>
    <name>brinebell::MeasureDialog</name>
    <message>
        <source>A &amp;bank card or driving licence (85.60 mm wide)</source>
        <translation>Una &amp;tarjeta bancaria o licencia (85.60 mm de ancho)</translation>
    </message>
    <message>
        <source>A &amp;ruler: from 0 to 100 mm</source>
        <translation>Una &amp;regla: de 0 a 100 mm</translation>
    </message>
    <message>
        <source>Measure this screen</source>
        <translation>Medir esta pantalla</translation>
    </message>
    <message>
        <source>Lay it flat on the screen, its left edge on the left line. Then make the drawing as wide as it is: left and right arrow for a hair, page keys for more.</source>
        <translation>Póngala plana sobre la pantalla, el borde izquierdo en la línea izquierda. Luego haga el dibujo tan ancho como ella: flechas izquierda y derecha para un poco, teclas de página para más.</translation>
    </message>
    <message>
        <source>Much n&amp;arrower</source>
        <translation>Mucho más e&amp;strecho</translation>
    </message>
    <message>
        <source>&amp;Narrower</source>
        <translation>Más &amp;estrecho</translation>
    </message>
    <message>
        <source>&amp;Wider</source>
        <translation>Más &amp;ancho</translation>
    </message>
    <message>
        <source>&amp;Much wider</source>
        <translation>&amp;Mucho más ancho</translation>
    </message>
    <message>
        <source>It &amp;fits: keep it</source>
        <translation>&amp;Coincide: guardarlo</translation>
    </message>
    <message>
        <source>&amp;Change nothing</source>
        <translation>&amp;No cambiar nada</translation>
    </message>
    <message>
        <source>%L1 pixels are a millimetre here.</source>
        <translation>%L1 píxeles son un milímetro aquí.</translation>
    </message>
</context>
<context>
    <name>brinebell::NextPanel</name>
    <message>
        <source>▶ Then</source>
        <translation>▶ Después</translation>
    </message>
    <message>
        <source>Then</source>
        <translation>Después</translation>
    </message>
</context>
<context>
    <name>brinebell::PaperPage</name>
    <message>
        <source>Run sheet, in large type for the counter</source>
        <translation>Hoja de ruta, en letra grande para el mostrador</translation>
    </message>
    <message>
        <source>Equipment and shopping list</source>
        <translation>Lista de equipo y de compras</translation>
    </message>
    <message>
        <source>Handout for those who attend</source>
        <translation>Hoja para quienes asisten</translation>
    </message>
    <message>
        <source>Batch record</source>
        <translation>Registro del lote</translation>
    </message>
    <message>
        <source>Jar labels</source>
        <translation>Etiquetas de los frascos</translation>
    </message>
    <message>
        <source>Class report</source>
        <translation>Informe de la clase</translation>
    </message>
    <message>
        <source>Papers</source>
        <translation>Papeles</translation>
    </message>
    <message>
        <source>&amp;Front page</source>
        <translation>Página de &amp;inicio</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Classes</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>&amp;Open a class file…</source>
        <translation>&amp;Abrir un archivo de clase…</translation>
    </message>
    <message>
        <source>Of the class</source>
        <translation>De la clase</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source> min</source>
        <translation> min</translation>
    </message>
    <message>
        <source>&amp;Keep these in the logbook</source>
        <translation>Guardar en la &amp;bitácora</translation>
    </message>
    <message>
        <source>Preview</source>
        <translation>Vista previa</translation>
    </message>
    <message>
        <source>Size of the paper</source>
        <translation>Tamaño del papel</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tamaños</translation>
    </message>
    <message>
        <source>&amp;Larger</source>
        <translation>Ma&amp;yor</translation>
    </message>
    <message>
        <source>S&amp;maller</source>
        <translation>M&amp;enor</translation>
    </message>
    <message>
        <source>&amp;Whole page</source>
        <translation>Página &amp;completa</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>&amp;Guardar como PDF…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>Im&amp;primir…</translation>
    </message>
    <message>
        <source>Open a class file</source>
        <translation>Abrir un archivo de clase</translation>
    </message>
    <message>
        <source>Class files (*.toml)</source>
        <translation>Archivos de clase (*.toml)</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>No jar of this session may have a label. %1</source>
        <translation>Ningún frasco de esta sesión puede llevar etiqueta. %1</translation>
    </message>
    <message>
        <source>No class is chosen.</source>
        <translation>No hay ninguna clase elegida.</translation>
    </message>
    <message>
        <source>No session is chosen.</source>
        <translation>No hay ninguna sesión elegida.</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Guardar como PDF</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Guardado: %1</translation>
    </message>
    <message>
        <source>Not saved: %1</source>
        <translation>No se guardó: %1</translation>
    </message>
    <message>
        <source>The printer did not take it. Save it as a PDF and print that.</source>
        <translation>La impresora no lo aceptó. Guárdelo como PDF e imprima ese archivo.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>Enviado a la impresora.</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Carta</translation>
    </message>
    <message>
        <source>Nothing was kept: %1</source>
        <translation>No se guardó nada: %1</translation>
    </message>
</context>
<context>
    <name>brinebell::PauseBanner</name>
    <message>
        <source>QUESTIONS: hands stop, pots run on</source>
        <translation>PREGUNTAS: las manos paran, las ollas siguen</translation>
    </message>
    <message>
        <source>Q or Space: back to work. P: put one off</source>
        <translation>Q o Espacio: de vuelta al trabajo. P: dejar una para después</translation>
    </message>
    <message>
        <source>Q or Space: back to work. P: %1 put off</source>
        <translation>Q o Espacio: de vuelta al trabajo. P: %1 dejadas</translation>
    </message>
    <message>
        <source>Questions for %1</source>
        <translation>Preguntas desde hace %1</translation>
    </message>
</context>
<context>
    <name>brinebell::PreparePage</name>
    <message>
        <source>Classes</source>
        <translation>Clases</translation>
    </message>
    <message>
        <source>Class files</source>
        <translation>Archivos de clase</translation>
    </message>
    <message>
        <source>&amp;Open a class file…</source>
        <translation>&amp;Abrir un archivo de clase…</translation>
    </message>
    <message>
        <source>Read the file &amp;again</source>
        <translation>Leer el archivo &amp;otra vez</translation>
    </message>
    <message>
        <source>&amp;Why this altitude needs more…</source>
        <translation>¿&amp;Por qué esta altitud necesita más?…</translation>
    </message>
    <message>
        <source>&amp;Past sessions</source>
        <translation>&amp;Sesiones pasadas</translation>
    </message>
    <message>
        <source>Sound chec&amp;k</source>
        <translation>Prueba de s&amp;onido</translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation>Hoja de ruta</translation>
    </message>
    <message>
        <source>What to know about this class</source>
        <translation>Lo que conviene saber de esta clase</translation>
    </message>
    <message>
        <source>&amp;Start live class</source>
        <translation>Empezar clase en &amp;vivo</translation>
    </message>
    <message>
        <source>&amp;Rehearse</source>
        <translation>&amp;Ensayar</translation>
    </message>
    <message>
        <source>Speed of the rehearsal</source>
        <translation>Velocidad del ensayo</translation>
    </message>
    <message>
        <source>Speeds</source>
        <translation>Velocidades</translation>
    </message>
    <message>
        <source>in real time</source>
        <translation>en tiempo real</translation>
    </message>
    <message>
        <source>%1 times as fast</source>
        <translation>%1 veces más rápido</translation>
    </message>
    <message>
        <source>&amp;Make ahead…</source>
        <translation>&amp;Hacer antes…</translation>
    </message>
    <message>
        <source>Open a class file</source>
        <translation>Abrir un archivo de clase</translation>
    </message>
    <message>
        <source>Class files (*.toml)</source>
        <translation>Archivos de clase (*.toml)</translation>
    </message>
    <message>
        <source>Nothing stands against this run sheet.</source>
        <translation>Nada habla en contra de esta hoja de ruta.</translation>
    </message>
    <message>
        <source>No class chosen</source>
        <translation>Ninguna clase elegida</translation>
    </message>
    <message>
        <source>Choose a class at the left, or open a class file.</source>
        <translation>Elija una clase a la izquierda o abra un archivo de clase.</translation>
    </message>
    <message>
        <source>This class cannot be read yet</source>
        <translation>Esta clase aún no se puede leer</translation>
    </message>
    <message>
        <source>Mend what is named below in any text editor, then press “Read the file again”.</source>
        <translation>Corrija lo que se nombra abajo en cualquier editor de texto y pulse «Leer el archivo otra vez».</translation>
    </message>
    <message>
        <source>no helper</source>
        <translation>sin ayudante</translation>
    </message>
    <message>
        <source>one helper</source>
        <translation>un ayudante</translation>
    </message>
    <message>
        <source>%1 helpers</source>
        <translation>%1 ayudantes</translation>
    </message>
    <message>
        <source>%1 before the room must be empty</source>
        <translation>%1 antes de que la sala deba quedar vacía</translation>
    </message>
    <message>
        <source>%1 AFTER the room must be empty</source>
        <translation>%1 DESPUÉS de que la sala deba quedar vacía</translation>
    </message>
    <message>
        <source>Class ends %1, %2. Kitchen ends %3.</source>
        <translation>La clase termina a las %1, %2. La cocina termina a las %3.</translation>
    </message>
    <message>
        <source>%1 stays until then.</source>
        <translation>%1 se queda hasta entonces.</translation>
    </message>
    <message>
        <source>&amp;Front page</source>
        <translation>Página &amp;inicial</translation>
    </message>
    <message>
        <source>L&amp;ists…</source>
        <translation>L&amp;istas…</translation>
    </message>
    <message>
        <source>Pri&amp;nt…</source>
        <translation>I&amp;mprimir…</translation>
    </message>
</context>
<context>
    <name>brinebell::ProspectPanel</name>
    <message>
        <source>S&amp;top the search</source>
        <translation>De&amp;tener la búsqueda</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>La hoja</translation>
    </message>
    <message>
        <source>The end of the class</source>
        <translation>El fin de la clase</translation>
    </message>
    <message>
        <source>At the latest</source>
        <translation>A más tardar</translation>
    </message>
    <message>
        <source>If slow, the class ends later by</source>
        <translation>Si va lento, la clase termina más tarde por</translation>
    </message>
    <message>
        <source>and %1 more below, under Latest</source>
        <translation>y %1 más abajo, en A más tardar</translation>
    </message>
    <message>
        <source>Nothing that is slow alone</source>
        <translation>Nada que por sí solo vaya lento</translation>
    </message>
</context>
<context>
    <name>brinebell::ReadingPanel</name>
    <message>
        <source>The class as a whole</source>
        <translation>La clase en conjunto</translation>
    </message>
    <message>
        <source>A reading for the log</source>
        <translation>Una lectura para la bitácora</translation>
    </message>
    <message>
        <source>Rub out the last digit</source>
        <translation>Borrar el último dígito</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Log it</source>
        <translation>Anotarla</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Volver</translation>
    </message>
    <message>
        <source>Digits, Enter: log. Up, Down: unit. Tab: where. Esc: back</source>
        <translation>Dígitos, Intro: anotar. Arriba, Abajo: unidad. Tab: dónde. Esc: volver</translation>
    </message>
    <message>
        <source>Put in the number first.</source>
        <translation>Ponga primero el número.</translation>
    </message>
</context>
<context>
    <name>brinebell::RecallPanel</name>
    <message>
        <source>Done last</source>
        <translation>Lo último hecho</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>En marcha</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Sigue</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>Retrasado</translation>
    </message>
    <message>
        <source>Nothing was changed. Any key goes back to the board.</source>
        <translation>No se cambió nada. Cualquier tecla vuelve al tablero.</translation>
    </message>
</context>
<context>
    <name>brinebell::RecipeEditor</name>
    <message>
        <source>Recipes</source>
        <translation>Recetas</translation>
    </message>
    <message>
        <source>New recipe</source>
        <translation>Receta nueva</translation>
    </message>
    <message>
        <source>Wash jars and keep them hot</source>
        <translation>Lavar los frascos y mantenerlos calientes</translation>
    </message>
    <message>
        <source>%1, our version</source>
        <translation>%1, nuestra versión</translation>
    </message>
    <message>
        <source>A tested recipe: it is shown and not changed. “Make a class version” copies it for you to fit.</source>
        <translation>Una receta probada: se muestra y no se cambia. «Hacer una versión de clase» la copia para adaptarla.</translation>
    </message>
    <message>
        <source>A class version of “%1”. The guard holds every ingredient against it; what it refuses stands at the ingredient with rule and source.</source>
        <translation>Una versión de clase de «%1». La guardia compara cada ingrediente con ella; lo que rechaza aparece junto al ingrediente, con la regla y la fuente.</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Ingredients</source>
        <translation>Ingredientes</translation>
    </message>
    <message>
        <source>Steps</source>
        <translation>Pasos</translation>
    </message>
    <message>
        <source>Talk</source>
        <translation>Charla</translation>
    </message>
    <message>
        <source>Made ahead</source>
        <translation>Hecho antes</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>our own teaching note</source>
        <translation>nota docente propia</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>One a line.</source>
        <translation>Uno por línea.</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Título</translation>
    </message>
    <message>
        <source>Summary</source>
        <translation>Resumen</translation>
    </message>
    <message>
        <source>Source of the tested recipe, with edition</source>
        <translation>Fuente de la receta probada, con la edición</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Fuente</translation>
    </message>
    <message>
        <source>How sure the figures are</source>
        <translation>Cuán seguras son las cifras</translation>
    </message>
    <message>
        <source>Held against the source</source>
        <translation>Cotejadas con la fuente</translation>
    </message>
    <message>
        <source>From memory: to be held against the source</source>
        <translation>De memoria: hay que cotejarlas con la fuente</translation>
    </message>
    <message>
        <source>How sure</source>
        <translation>Cuán seguro</translation>
    </message>
    <message>
        <source>Product in the published tables</source>
        <translation>Producto en las tablas publicadas</translation>
    </message>
    <message>
        <source>Product</source>
        <translation>Producto</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Envasado</translation>
    </message>
    <message>
        <source>Hot</source>
        <translation>En caliente</translation>
    </message>
    <message>
        <source>Raw</source>
        <translation>En crudo</translation>
    </message>
    <message>
        <source>Jars that it is tested for</source>
        <translation>Frascos para los que está probada</translation>
    </message>
    <message>
        <source>Jars</source>
        <translation>Frascos</translation>
    </message>
    <message>
        <source>Yield of a whole batch</source>
        <translation>Rendimiento de una tanda entera</translation>
    </message>
    <message>
        <source>Yield</source>
        <translation>Rendimiento</translation>
    </message>
    <message>
        <source>Counted in jars: 6-8 pints.</source>
        <translation>Contado en frascos: 6-8 pints.</translation>
    </message>
    <message>
        <source>Headspace</source>
        <translation>Espacio libre</translation>
    </message>
    <message>
        <source>As published: 1/2 in.</source>
        <translation>Como se publicó: 1/2 in.</translation>
    </message>
    <message>
        <source>Keeps how long</source>
        <translation>Cuánto se conserva</translation>
    </message>
    <message>
        <source>Stored how</source>
        <translation>Cómo se guarda</translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation>Alérgenos</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>Utensilios</translation>
    </message>
    <message>
        <source>Name, as it stands after the amount</source>
        <translation>Nombre, tal como va después de la cantidad</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Cantidad</translation>
    </message>
    <message>
        <source>1 1/2 cups, 8-16 heads.</source>
        <translation>1 1/2 cups, 8-16 heads.</translation>
    </message>
    <message>
        <source>Tested: %1</source>
        <translation>Probado: %1</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Para qué sirve</translation>
    </message>
    <message>
        <source>Low-acid food</source>
        <translation>Alimento poco ácido</translation>
    </message>
    <message>
        <source>Acid food</source>
        <translation>Alimento ácido</translation>
    </message>
    <message>
        <source>Acid</source>
        <translation>Ácido</translation>
    </message>
    <message>
        <source>Oil</source>
        <translation>Aceite</translation>
    </message>
    <message>
        <source>Salt</source>
        <translation>Sal</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Azúcar</translation>
    </message>
    <message>
        <source>Spice</source>
        <translation>Especia</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>Firming</source>
        <translation>Para dar firmeza</translation>
    </message>
    <message>
        <source>Kind, of an acid or a spice</source>
        <translation>Tipo, de un ácido o una especia</translation>
    </message>
    <message>
        <source>Not said</source>
        <translation>No se dice</translation>
    </message>
    <message>
        <source>Vinegar from a shop</source>
        <translation>Vinagre de tienda</translation>
    </message>
    <message>
        <source>Home-made vinegar</source>
        <translation>Vinagre casero</translation>
    </message>
    <message>
        <source>Bottled lemon juice</source>
        <translation>Jugo de limón embotellado</translation>
    </message>
    <message>
        <source>Bottled lime juice</source>
        <translation>Jugo de lima embotellado</translation>
    </message>
    <message>
        <source>Fresh citrus juice</source>
        <translation>Jugo de cítricos fresco</translation>
    </message>
    <message>
        <source>Citric acid</source>
        <translation>Ácido cítrico</translation>
    </message>
    <message>
        <source>Dried</source>
        <translation>Seco</translation>
    </message>
    <message>
        <source>Fresh</source>
        <translation>Fresco</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>Strength, of a vinegar</source>
        <translation>Concentración, de un vinagre</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Concentración</translation>
    </message>
    <message>
        <source>It may be &amp;left out</source>
        <translation>Se puede &amp;omitir</translation>
    </message>
    <message>
        <source>The amount goes into each &amp;jar</source>
        <translation>La cantidad va en cada &amp;frasco</translation>
    </message>
    <message>
        <source>Stands in for the tested ingredient of this id</source>
        <translation>Sustituye al ingrediente probado con este id</translation>
    </message>
    <message>
        <source>May stand in for it</source>
        <translation>Puede sustituirlo</translation>
    </message>
    <message>
        <source>One a line; what the source allows.</source>
        <translation>Uno por línea; lo que permite la fuente.</translation>
    </message>
    <message>
        <source>May not, and people ask</source>
        <translation>No puede, y la gente pregunta</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Nota</translation>
    </message>
    <message>
        <source>Title, verb first, at most eight words</source>
        <translation>Título, con el verbo primero, ocho palabras como máximo</translation>
    </message>
    <message>
        <source>In full</source>
        <translation>Con detalle</translation>
    </message>
    <message>
        <source>End-point to look for</source>
        <translation>Señal de que está listo</translation>
    </message>
    <message>
        <source>It ends when somebody &amp;sees the end-point</source>
        <translation>Termina cuando alguien ve la &amp;señal</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>Cuánto dura</translation>
    </message>
    <message>
        <source>Short, likely, long: 4 min, 6 min, 9 min; or one duration for what is fixed.</source>
        <translation>Corto, probable, largo: 4 min, 6 min, 9 min; o una sola duración si es fija.</translation>
    </message>
    <message>
        <source>Where that is published; empty: our estimate</source>
        <translation>Dónde está publicado; vacío: estimación nuestra</translation>
    </message>
    <message>
        <source>Done once for</source>
        <translation>Se hace una vez por</translation>
    </message>
    <message>
        <source>The batch</source>
        <translation>La tanda</translation>
    </message>
    <message>
        <source>Each load</source>
        <translation>Cada carga</translation>
    </message>
    <message>
        <source>Each jar</source>
        <translation>Cada frasco</translation>
    </message>
    <message>
        <source>It &amp;grows with the batch</source>
        <translation>Aumenta con la &amp;tanda</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Nowhere in particular</source>
        <translation>En ningún sitio fijo</translation>
    </message>
    <message>
        <source>Burner</source>
        <translation>Quemador</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Sink</source>
        <translation>Fregadero</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Counter</source>
        <translation>Encimera</translation>
    </message>
    <message>
        <source>Vessel, where steps share one</source>
        <translation>Recipiente, si varios pasos comparten uno</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Precauciones</translation>
    </message>
    <message>
        <source>Add a limi&amp;t</source>
        <translation>Añadir un lími&amp;te</translation>
    </message>
    <message>
        <source>Add a limit</source>
        <translation>Añadir un límite</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Ninguna</translation>
    </message>
    <message>
        <source>Throughout</source>
        <translation>Todo el tiempo</translation>
    </message>
    <message>
        <source>At its start or end</source>
        <translation>Al principio o al final</translation>
    </message>
    <message>
        <source>A look every so often</source>
        <translation>Una mirada cada cierto tiempo</translation>
    </message>
    <message>
        <source>It can be left for a &amp;moment</source>
        <translation>Se puede dejar un &amp;momento</translation>
    </message>
    <message>
        <source>Hands at its start</source>
        <translation>Manos al principio</translation>
    </message>
    <message>
        <source>Hands at its end</source>
        <translation>Manos al final</translation>
    </message>
    <message>
        <source>Shortest time between looks</source>
        <translation>Tiempo más corto entre miradas</translation>
    </message>
    <message>
        <source>Longest time between looks</source>
        <translation>Tiempo más largo entre miradas</translation>
    </message>
    <message>
        <source>One look takes</source>
        <translation>Una mirada tarda</translation>
    </message>
    <message>
        <source>What is done at a look, verb first</source>
        <translation>Qué se hace en cada mirada, con el verbo primero</translation>
    </message>
    <message>
        <source>A look</source>
        <translation>Una mirada</translation>
    </message>
    <message>
        <source>No &amp;helper may do it</source>
        <translation>Ningún a&amp;yudante puede hacerlo</translation>
    </message>
    <message>
        <source>Only after these have ended</source>
        <translation>Solo cuando hayan terminado estos</translation>
    </message>
    <message>
        <source>Ingredients handled here</source>
        <translation>Ingredientes que se manejan aquí</translation>
    </message>
    <message>
        <source>Limit %L1: the longest wait after this step</source>
        <translation>Límite %L1: la espera más larga después de este paso</translation>
    </message>
    <message>
        <source>The load is lowered into the canner</source>
        <translation>Se baja la carga a la olla</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Antes de</translation>
    </message>
    <message>
        <source>At most</source>
        <translation>Como máximo</translation>
    </message>
    <message>
        <source>Kind of limit</source>
        <translation>Tipo de límite</translation>
    </message>
    <message>
        <source>Quality: may be stretched</source>
        <translation>Calidad: se puede estirar</translation>
    </message>
    <message>
        <source>Safety: never stretched</source>
        <translation>Seguridad: nunca se estira</translation>
    </message>
    <message>
        <source>What to do once it was stretched</source>
        <translation>Qué hacer cuando se estiró</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Qué hacer</translation>
    </message>
    <message>
        <source>Take limit &amp;%1 away</source>
        <translation>Quitar el límite &amp;%1</translation>
    </message>
    <message>
        <source>Take a limit away</source>
        <translation>Quitar un límite</translation>
    </message>
    <message>
        <source>What is said</source>
        <translation>Qué se dice</translation>
    </message>
    <message>
        <source>It &amp;must be said</source>
        <translation>&amp;Hay que decirlo</translation>
    </message>
    <message>
        <source>How long it takes</source>
        <translation>Cuánto tarda</translation>
    </message>
    <message>
        <source>Any time</source>
        <translation>En cualquier momento</translation>
    </message>
    <message>
        <source>At which step</source>
        <translation>En qué paso</translation>
    </message>
    <message>
        <source>Steps done before class</source>
        <translation>Pasos que se hacen antes de la clase</translation>
    </message>
    <message>
        <source>Bringing it out, verb first</source>
        <translation>Cómo se saca, con el verbo primero</translation>
    </message>
    <message>
        <source>How long that takes</source>
        <translation>Cuánto tarda eso</translation>
    </message>
    <message>
        <source>How it is kept until class</source>
        <translation>Cómo se guarda hasta la clase</translation>
    </message>
</context>
<context>
    <name>brinebell::RehearsalBar</name>
    <message>
        <source>The boil is 15 minutes late</source>
        <translation>El hervor tarda 15 minutos más</translation>
    </message>
    <message>
        <source>The boil is lost</source>
        <translation>El hervor se pierde</translation>
    </message>
    <message>
        <source>A jar breaks in the canner</source>
        <translation>Un frasco se rompe en la envasadora</translation>
    </message>
    <message>
        <source>The burner under the canner fails</source>
        <translation>El quemador de la envasadora falla</translation>
    </message>
    <message>
        <source>The canner&apos;s lid is stuck</source>
        <translation>La tapa de la envasadora se atasca</translation>
    </message>
    <message>
        <source>The class asks</source>
        <translation>La clase pregunta</translation>
    </message>
    <message>
        <source>The power is cut for 3 minutes</source>
        <translation>La luz se corta 3 minutos</translation>
    </message>
    <message>
        <source>Rehearsal</source>
        <translation>Ensayo</translation>
    </message>
    <message>
        <source>Slower</source>
        <translation>Más lento</translation>
    </message>
    <message>
        <source>Faster</source>
        <translation>Más rápido</translation>
    </message>
    <message>
        <source>Stop the clock</source>
        <translation>Parar el reloj</translation>
    </message>
    <message>
        <source>Forward to the next event</source>
        <translation>Adelante hasta el próximo suceso</translation>
    </message>
    <message>
        <source>Go wrong…</source>
        <translation>Que algo falle…</translation>
    </message>
    <message>
        <source>clock stopped</source>
        <translation>reloj parado</translation>
    </message>
    <message>
        <source>real time</source>
        <translation>tiempo real</translation>
    </message>
    <message>
        <source>%1 times as fast</source>
        <translation>%1 veces más rápido</translation>
    </message>
    <message>
        <source>Start the clock</source>
        <translation>Poner en marcha el reloj</translation>
    </message>
</context>
<context>
    <name>brinebell::RemedyPanel</name>
    <message>
        <source>Nothing was changed. Any key goes back to the board.</source>
        <translation>No se cambió nada. Cualquier tecla vuelve al tablero.</translation>
    </message>
</context>
<context>
    <name>brinebell::ResumePage</name>
    <message>
        <source>A class is not finished</source>
        <translation>Una clase no está terminada</translation>
    </message>
    <message>
        <source>&amp;Take it up again</source>
        <translation>&amp;Retomarla</translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation>&amp;Ahora no</translation>
    </message>
    <message>
        <source>“%1” in %2 was started on %3 and has no end in the logbook. All that was pressed is kept. Taken up again, the board asks about every boil that nobody watched in between.</source>
        <translation>«%1» en %2 empezó el %3 y no tiene fin en la bitácora. Se conserva todo lo pulsado. Al retomarla, el tablero pregunta por cada hervor que nadie vigiló entretanto.</translation>
    </message>
</context>
<context>
    <name>brinebell::ReviewModel</name>
    <message>
        <source>%1 (boil lost once)</source>
        <translation>%1 (hervor perdido una vez)</translation>
    </message>
    <message>
        <source>%1 (boil lost %2 times)</source>
        <translation>%1 (hervor perdido %2 veces)</translation>
    </message>
    <message>
        <source>left out</source>
        <translation>omitido</translation>
    </message>
    <message>
        <source>not done</source>
        <translation>no hecho</translation>
    </message>
    <message>
        <source>%1, not ended</source>
        <translation>%1, sin terminar</translation>
    </message>
    <message>
        <source>as planned</source>
        <translation>según lo previsto</translation>
    </message>
    <message>
        <source>%1 min longer</source>
        <translation>%1 min más largo</translation>
    </message>
    <message>
        <source>%1 min shorter</source>
        <translation>%1 min más corto</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Previsto</translation>
    </message>
    <message>
        <source>As it went</source>
        <translation>Como fue</translation>
    </message>
    <message>
        <source>Took</source>
        <translation>Duró</translation>
    </message>
    <message>
        <source>Planned (outline) and as it went (filled)</source>
        <translation>Previsto (contorno) y como fue (relleno)</translation>
    </message>
</context>
<context>
    <name>brinebell::ReviewPage</name>
    <message>
        <source>Past sessions</source>
        <translation>Sesiones pasadas</translation>
    </message>
    <message>
        <source>Planned and as it went</source>
        <translation>Previsto y como fue</translation>
    </message>
    <message>
        <source>Batch record</source>
        <translation>Registro del lote</translation>
    </message>
    <message>
        <source>Label text</source>
        <translation>Texto de la etiqueta</translation>
    </message>
    <message>
        <source>Planned and as it &amp;went</source>
        <translation>Previsto y como &amp;fue</translation>
    </message>
    <message>
        <source>&amp;Batch record</source>
        <translation>&amp;Registro del lote</translation>
    </message>
    <message>
        <source>&amp;Labels</source>
        <translation>&amp;Etiquetas</translation>
    </message>
    <message>
        <source>&amp;Prepare a class</source>
        <translation>&amp;Preparar una clase</translation>
    </message>
    <message>
        <source>Save as &amp;CSV…</source>
        <translation>Guardar como &amp;CSV…</translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation>Guardar como CSV</translation>
    </message>
    <message>
        <source>Save as &amp;JSON…</source>
        <translation>Guardar como &amp;JSON…</translation>
    </message>
    <message>
        <source>Save as JSON</source>
        <translation>Guardar como JSON</translation>
    </message>
    <message>
        <source>No session is in the logbook yet</source>
        <translation>Aún no hay sesiones en la bitácora</translation>
    </message>
    <message>
        <source>No session chosen</source>
        <translation>Ninguna sesión elegida</translation>
    </message>
    <message>
        <source>not ended</source>
        <translation>no terminada</translation>
    </message>
    <message>
        <source>Class ended after %1 (planned %2)</source>
        <translation>La clase terminó tras %1 (previsto %2)</translation>
    </message>
    <message>
        <source>kitchen after %1 (planned %2)</source>
        <translation>la cocina tras %1 (previsto %2)</translation>
    </message>
    <message>
        <source>points said: %1, open: %2</source>
        <translation>puntos dichos: %1, pendientes: %2</translation>
    </message>
    <message>
        <source>presses taken back: %1</source>
        <translation>pulsaciones deshechas: %1</translation>
    </message>
</context>
<context>
    <name>brinebell::RunSheetModel</name>
    <message>
        <source>teacher</source>
        <translation>docente</translation>
    </message>
    <message>
        <source>helper %1</source>
        <translation>ayudante %1</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>nadie</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Empieza</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Termina</translation>
    </message>
    <message>
        <source>Slack</source>
        <translation>Holgura</translation>
    </message>
    <message>
        <source>Latest</source>
        <translation>A más tardar</translation>
    </message>
    <message>
        <source>Step</source>
        <translation>Paso</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Dónde</translation>
    </message>
    <message>
        <source>Hands</source>
        <translation>Manos</translation>
    </message>
    <message>
        <source>Why then</source>
        <translation>Por qué entonces</translation>
    </message>
</context>
<context>
    <name>brinebell::ScreenPanel</name>
    <message>
        <source>Measure this s&amp;creen…</source>
        <translation>Medir esta &amp;pantalla…</translation>
    </message>
    <message>
        <source>&amp;Light board and audience screen</source>
        <translation>Tablero y pantalla del público en &amp;claro</translation>
    </message>
</context>
<context>
    <name>brinebell::SealPage</name>
    <message>
        <source>Still cooling: leave the jars alone until %1</source>
        <translation>Aún se enfrían: no toque los frascos hasta el %1</translation>
    </message>
    <message>
        <source>Due now, and until %1</source>
        <translation>Toca ahora, y hasta el %1</translation>
    </message>
    <message>
        <source>Late: it was due until %1</source>
        <translation>Con retraso: tocaba hasta el %1</translation>
    </message>
    <message>
        <source>The 24 hours were over on %1. A jar that is found unsealed only now can no longer be saved: throw its food away without tasting it. Choose another line only for what was done in time.</source>
        <translation>Las 24 horas terminaron el %1. Un frasco que se halla sin sellar solo ahora ya no puede salvarse: tire su contenido sin probarlo. Elija otra línea solo por lo que se hizo a tiempo.</translation>
    </message>
    <message>
        <source>An unsealed jar must be dealt with within 24 hours, so until %1: refrigerate it and use it within days; or freeze it with room at the top; or look for nicks in the rim, take a new lid and process it again for the full time.</source>
        <translation>Un frasco sin sellar debe atenderse dentro de 24 horas, o sea hasta el %1: refrigérelo y consúmalo en pocos días; o congélelo dejando espacio arriba; o revise el borde por si está mellado, ponga una tapa nueva y procéselo otra vez por el tiempo completo.</translation>
    </message>
    <message>
        <source>Check the seals</source>
        <translation>Revisar los sellos</translation>
    </message>
    <message>
        <source>Loads whose seals are not checked yet</source>
        <translation>Cargas cuyos sellos aún no se han revisado</translation>
    </message>
    <message>
        <source>&amp;Front page</source>
        <translation>Página de &amp;inicio</translation>
    </message>
    <message>
        <source>The seals were &amp;tested</source>
        <translation>Se &amp;probaron los sellos</translation>
    </message>
    <message>
        <source>The jars went &amp;home before anybody could test them</source>
        <translation>Los frascos se fueron a &amp;casa antes de que alguien pudiera probarlos</translation>
    </message>
    <message>
        <source>&amp;Save this load</source>
        <translation>&amp;Guardar esta carga</translation>
    </message>
    <message>
        <source>Take the bands off. Press the middle of each lid: a sealed lid curves down and does not move. Tapped with a spoon it rings clear. Do not tighten bands, and do not open a jar to fill it up.</source>
        <translation>Quite los aros. Presione el centro de cada tapa: una tapa sellada se curva hacia abajo y no se mueve. Golpeada con una cuchara suena clara. No apriete los aros ni abra un frasco para rellenarlo.</translation>
    </message>
    <message>
        <source>Sealed</source>
        <translation>Sellados</translation>
    </message>
    <message>
        <source>Not sealed</source>
        <translation>Sin sellar</translation>
    </message>
    <message>
        <source>Broken</source>
        <translation>Rotos</translation>
    </message>
    <message>
        <source>&amp;All sealed</source>
        <translation>&amp;Todos sellados</translation>
    </message>
    <message>
        <source>The unsealed ones were</source>
        <translation>Los no sellados fueron</translation>
    </message>
    <message>
        <source>choose what was done</source>
        <translation>elija qué se hizo</translation>
    </message>
    <message>
        <source>The sealed ones were</source>
        <translation>Los sellados fueron</translation>
    </message>
    <message>
        <source>not said</source>
        <translation>sin indicar</translation>
    </message>
    <message>
        <source>Checked by</source>
        <translation>Revisó</translation>
    </message>
    <message>
        <source>They have not cooled 12 hours; &amp;count them all the same</source>
        <translation>No se han enfriado 12 horas; c&amp;ontarlos de todos modos</translation>
    </message>
    <message>
        <source>1 jar</source>
        <translation>1 frasco</translation>
    </message>
    <message>
        <source>%1 jars</source>
        <translation>%1 frascos</translation>
    </message>
    <message>
        <source>%1, load %2 of %3: %4</source>
        <translation>%1, carga %2 de %3: %4</translation>
    </message>
    <message>
        <source>%1 · lot %2 · %3, %4</source>
        <translation>%1 · lote %2 · %3, %4</translation>
    </message>
    <message>
        <source>%1. Cooling began on %2.</source>
        <translation>%1. Empezaron a enfriarse el %2.</translation>
    </message>
    <message>
        <source>%1 of %2 jars counted</source>
        <translation>%1 de %2 frascos contados</translation>
    </message>
    <message>
        <source>Say what was done with the unsealed jars</source>
        <translation>Diga qué se hizo con los frascos no sellados</translation>
    </message>
    <message>
        <source>Say who checked them</source>
        <translation>Diga quién los revisó</translation>
    </message>
    <message>
        <source>The jars have not cooled 12 hours yet</source>
        <translation>Los frascos aún no se han enfriado 12 horas</translation>
    </message>
    <message>
        <source>The seals of 1 load were not checked within 24 hours.</source>
        <translation>Los sellos de 1 carga no se revisaron dentro de 24 horas.</translation>
    </message>
    <message>
        <source>The seals of %1 loads were not checked within 24 hours.</source>
        <translation>Los sellos de %1 cargas no se revisaron dentro de 24 horas.</translation>
    </message>
    <message>
        <source>The seals of 1 load are to be checked now.</source>
        <translation>Toca revisar ahora los sellos de 1 carga.</translation>
    </message>
    <message>
        <source>The seals of %1 loads are to be checked now.</source>
        <translation>Toca revisar ahora los sellos de %1 cargas.</translation>
    </message>
    <message>
        <source>Until %1 an unsealed jar can still be saved.</source>
        <translation>Hasta el %1 un frasco sin sellar aún puede salvarse.</translation>
    </message>
    <message>
        <source>1 load is still cooling.</source>
        <translation>1 carga aún se enfría.</translation>
    </message>
    <message>
        <source>%1 loads are still cooling.</source>
        <translation>%1 cargas aún se enfrían.</translation>
    </message>
    <message>
        <source>The first seal check is due from %1.</source>
        <translation>La primera revisión de sellos toca desde el %1.</translation>
    </message>
    <message>
        <source>No seals wait to be checked.</source>
        <translation>No hay sellos por revisar.</translation>
    </message>
    <message>
        <source>Saved: %1, load %2.</source>
        <translation>Guardado: %1, carga %2.</translation>
    </message>
    <message>
        <source>Saved. No seals wait to be checked any more.</source>
        <translation>Guardado. Ya no queda ningún sello por revisar.</translation>
    </message>
    <message>
        <source>Nothing was saved: %1</source>
        <translation>No se guardó nada: %1</translation>
    </message>
</context>
<context>
    <name>brinebell::SessionListModel</name>
    <message>
        <source>rehearsal</source>
        <translation>ensayo</translation>
    </message>
    <message>
        <source>live</source>
        <translation>en vivo</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>cerrada</translation>
    </message>
    <message>
        <source>not closed</source>
        <translation>sin cerrar</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Empezó</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Tipo</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Estado</translation>
    </message>
</context>
<context>
    <name>brinebell::SessionPicker</name>
    <message>
        <source>Find a session</source>
        <translation>Buscar una sesión</translation>
    </message>
    <message>
        <source>Find by day, class or kitchen</source>
        <translation>Buscar por día, clase o cocina</translation>
    </message>
    <message>
        <source>Past sessions</source>
        <translation>Sesiones pasadas</translation>
    </message>
</context>
<context>
    <name>brinebell::SettingsPage</name>
    <message>
        <source>For what is shown. Recipes and kitchens keep what their authors wrote; process times, pressures and the bands of the tables stand as published.</source>
        <translation>Para lo que se muestra. Las recetas y cocinas conservan lo que escribió su autor; los tiempos de procesamiento, las presiones y las franjas de las tablas quedan como se publicaron.</translation>
    </message>
    <message>
        <source>For what is shown. In a field a quantity is always typed with a point: 2.5 m.</source>
        <translation>Para lo que se muestra. En un campo, las cantidades se escriben siempre con punto: 2.5 m.</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Ajustes</translation>
    </message>
    <message>
        <source>Screen and look</source>
        <translation>Pantalla y aspecto</translation>
    </message>
    <message>
        <source>Show the &amp;welcome again</source>
        <translation>Mostrar otra vez la &amp;bienvenida</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Volver</translation>
    </message>
</context>
<context>
    <name>brinebell::SheetChart</name>
    <message>
        <source>Run sheet at a glance; the table says the same in words</source>
        <translation>La hoja de ruta de un vistazo; la tabla dice lo mismo en palabras</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Docente</translation>
    </message>
    <message>
        <source>Helper %1</source>
        <translation>Ayudante %1</translation>
    </message>
    <message>
        <source>ends ┃  room ┇  critical ▂</source>
        <translation>termina ┃  sala ┇  crítico ▂</translation>
    </message>
</context>
<context>
    <name>brinebell::SoundControl</name>
    <message>
        <source>sound is not used</source>
        <translation>el sonido no se usa</translation>
    </message>
    <message>
        <source>speech is not used</source>
        <translation>la voz no se usa</translation>
    </message>
    <message>
        <source>The chosen sound output is not there: cues come from the default one</source>
        <translation>La salida de sonido elegida no está: los avisos salen por la predeterminada</translation>
    </message>
    <message>
        <source>No sound device: the screen shows every cue</source>
        <translation>Sin dispositivo de sonido: la pantalla muestra cada aviso</translation>
    </message>
    <message>
        <source>No sound (%1): the screen shows every cue</source>
        <translation>Sin sonido (%1): la pantalla muestra cada aviso</translation>
    </message>
</context>
<context>
    <name>brinebell::SoundPage</name>
    <message>
        <source>Tick</source>
        <translation>Tic</translation>
    </message>
    <message>
        <source>Soon</source>
        <translation>Pronto</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Ahora</translation>
    </message>
    <message>
        <source>End</source>
        <translation>Termina</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Alto</translation>
    </message>
    <message>
        <source>Look at what is on: turn the tray, stir the pot.</source>
        <translation>Mire lo que está puesto: gire la bandeja, remueva la olla.</translation>
    </message>
    <message>
        <source>Something falls due within a minute.</source>
        <translation>Algo toca en menos de un minuto.</translation>
    </message>
    <message>
        <source>Hands are wanted now.</source>
        <translation>Se quieren manos ahora.</translation>
    </message>
    <message>
        <source>A count is over.</source>
        <translation>Terminó una cuenta.</translation>
    </message>
    <message>
        <source>Answer before anything else: nobody watched the canner.</source>
        <translation>Responda antes que nada: nadie vigiló la envasadora.</translation>
    </message>
    <message>
        <source>every %1 s until answered</source>
        <translation>cada %1 s hasta que se responda</translation>
    </message>
    <message>
        <source>once</source>
        <translation>una vez</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Play each cue from where you will stand, with the hood and a pot running.</source>
        <translation>Toque cada aviso desde donde va a estar, con la campana y una olla en marcha.</translation>
    </message>
    <message>
        <source>It is used again as soon as it is back. Or choose another output below.</source>
        <translation>Se usa de nuevo en cuanto vuelva. O elija otra salida abajo.</translation>
    </message>
    <message>
        <source>Plug in or switch on a loudspeaker; it is found within a few seconds. A class can be held without sound: the screen shows every cue.</source>
        <translation>Conecte o encienda un altavoz; se encuentra en pocos segundos. Una clase puede darse sin sonido: la pantalla muestra cada aviso.</translation>
    </message>
    <message>
        <source>Look whether the output is muted, asleep or used by another program, then play a cue again. The screen shows every cue.</source>
        <translation>Vea si la salida está silenciada, dormida o en uso por otro programa, y toque un aviso otra vez. La pantalla muestra cada aviso.</translation>
    </message>
    <message>
        <source>Sound check</source>
        <translation>Prueba de sonido</translation>
    </message>
    <message>
        <source>Cue</source>
        <translation>Aviso</translation>
    </message>
    <message>
        <source>Its pulses</source>
        <translation>Sus pulsos</translation>
    </message>
    <message>
        <source>What it means</source>
        <translation>Qué significa</translation>
    </message>
    <message>
        <source>Sounds</source>
        <translation>Suena</translation>
    </message>
    <message>
        <source>Level now</source>
        <translation>Nivel ahora</translation>
    </message>
    <message>
        <source>&amp;%1   %2</source>
        <translation>&amp;%1   %2</translation>
    </message>
    <message>
        <source>Play the cue “%1”</source>
        <translation>Tocar el aviso «%1»</translation>
    </message>
    <message>
        <source>Sound outputs</source>
        <translation>Salidas de sonido</translation>
    </message>
    <message>
        <source>Look a&amp;gain</source>
        <translation>Buscar &amp;otra vez</translation>
    </message>
    <message>
        <source>&amp;Quiet, for filming: cues are only shown</source>
        <translation>&amp;Silencio, para grabar: los avisos solo se muestran</translation>
    </message>
    <message>
        <source>&amp;Say in words, after the tone, what a cue is for</source>
        <translation>&amp;Decir con palabras, tras el tono, para qué es un aviso</translation>
    </message>
    <message>
        <source>These settings cannot be saved and hold until the program is closed.</source>
        <translation>Estos ajustes no se pueden guardar y valen hasta cerrar el programa.</translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation>&amp;Volumen</translation>
    </message>
    <message>
        <source>&amp;Output</source>
        <translation>&amp;Salida</translation>
    </message>
    <message>
        <source>Stop is lowered to a quarter and still sounds.</source>
        <translation>Alto baja a un cuarto y sigue sonando.</translation>
    </message>
    <message>
        <source>&amp;Back to the board  (Esc)</source>
        <translation>&amp;Volver al tablero  (Esc)</translation>
    </message>
    <message>
        <source>&amp;Back to the class  (Esc)</source>
        <translation>&amp;Volver a la clase  (Esc)</translation>
    </message>
    <message>
        <source>Sound is ready.</source>
        <translation>El sonido está listo.</translation>
    </message>
    <message>
        <source>Not in quiet mode.</source>
        <translation>No en modo silencioso.</translation>
    </message>
    <message>
        <source>names are not spoken: %1</source>
        <translation>los nombres no se dicen: %1</translation>
    </message>
    <message>
        <source>The default output</source>
        <translation>La salida predeterminada</translation>
    </message>
    <message>
        <source>The default output: %1</source>
        <translation>La salida predeterminada: %1</translation>
    </message>
    <message>
        <source>%1 (not there now)</source>
        <translation>%1 (ahora no está)</translation>
    </message>
    <message>
        <source>only shown</source>
        <translation>solo mostrado</translation>
    </message>
    <message>
        <source>%1. Stop never falls below %2: somebody may be hurt.</source>
        <translation>%1. Alto nunca baja de %2: alguien puede lastimarse.</translation>
    </message>
</context>
<context>
    <name>brinebell::StagePage</name>
    <message>
        <source>Live board</source>
        <translation>Tablero en vivo</translation>
    </message>
    <message>
        <source>Cues that stand</source>
        <translation>Avisos vigentes</translation>
    </message>
    <message>
        <source>Faults that stand</source>
        <translation>Fallos vigentes</translation>
    </message>
    <message>
        <source>Space</source>
        <translation>Espacio</translation>
    </message>
    <message>
        <source>Hold Space 1 s</source>
        <translation>Mantenga Espacio 1 s</translation>
    </message>
    <message>
        <source>The drill holds it back until %1.</source>
        <translation>El simulacro lo retiene hasta las %1.</translation>
    </message>
    <message>
        <source>Rehearsal, %1 times as fast</source>
        <translation>Ensayo, %1 veces más rápido</translation>
    </message>
    <message>
        <source>Rehearsal</source>
        <translation>Ensayo</translation>
    </message>
    <message>
        <source>Any key goes back to the board</source>
        <translation>Cualquier tecla vuelve al tablero</translation>
    </message>
    <message>
        <source>The question above comes first</source>
        <translation>La pregunta de arriba va primero</translation>
    </message>
    <message>
        <source>Nothing to answer now</source>
        <translation>Nada que responder ahora</translation>
    </message>
    <message>
        <source>Not saved, %1 waiting: %2</source>
        <translation>Sin guardar, %1 en espera: %2</translation>
    </message>
    <message>
        <source>Not taken: too close behind the press before.</source>
        <translation>No aceptado: muy cerca de la pulsación anterior.</translation>
    </message>
    <message>
        <source>Not taken: what a press does had just changed. Read it, then press.</source>
        <translation>No aceptado: lo que hace una pulsación acababa de cambiar. Léalo y luego pulse.</translation>
    </message>
    <message>
        <source>Nothing waits for a short press.</source>
        <translation>Nada espera una pulsación corta.</translation>
    </message>
    <message>
        <source>Not taken: keep it down for one second.</source>
        <translation>No aceptado: manténgala un segundo.</translation>
    </message>
    <message>
        <source>Nothing waits for a held press.</source>
        <translation>Nada espera una pulsación mantenida.</translation>
    </message>
    <message>
        <source>Not taken: the question above comes first.</source>
        <translation>No aceptado: la pregunta de arriba va primero.</translation>
    </message>
    <message>
        <source>Which load lost its boil, steam or pressure?</source>
        <translation>¿Qué carga perdió su hervor, vapor o presión?</translation>
    </message>
    <message>
        <source>Under which load is the heat off?</source>
        <translation>¿Bajo qué carga está apagado el fuego?</translation>
    </message>
    <message>
        <source>Note for the record</source>
        <translation>Nota para el registro</translation>
    </message>
    <message>
        <source>Questions put off</source>
        <translation>Preguntas dejadas</translation>
    </message>
    <message>
        <source>What else?</source>
        <translation>¿Qué más?</translation>
    </message>
    <message>
        <source>What is seen?</source>
        <translation>¿Qué se ve?</translation>
    </message>
    <message>
        <source>No point with that number is open.</source>
        <translation>No hay ningún punto pendiente con ese número.</translation>
    </message>
    <message>
        <source>Drill: held back until %1</source>
        <translation>Simulacro: retenido hasta las %1</translation>
    </message>
    <message>
        <source>Nothing in hand has a jar left to count.</source>
        <translation>Nada entre manos tiene un frasco por contar.</translation>
    </message>
    <message>
        <source>Nothing is ahead that comes by itself.</source>
        <translation>No hay nada por delante que llegue solo.</translation>
    </message>
    <message>
        <source>What goes wrong?</source>
        <translation>¿Qué falla?</translation>
    </message>
    <message>
        <source>Drill: %1.</source>
        <translation>Simulacro: %1.</translation>
    </message>
    <message>
        <source>That drill does not fit just now.</source>
        <translation>Ese simulacro no encaja ahora.</translation>
    </message>
</context>
<context>
    <name>brinebell::StepPanel</name>
    <message>
        <source>Amounts for this batch</source>
        <translation>Cantidades para esta tanda</translation>
    </message>
    <message>
        <source>How, and until when</source>
        <translation>Cómo, y hasta cuándo</translation>
    </message>
    <message>
        <source>Must be said next</source>
        <translation>Lo próximo que hay que decir</translation>
    </message>
    <message>
        <source>Swaps, by the tested recipe</source>
        <translation>Cambios, según la receta probada</translation>
    </message>
    <message>
        <source>Take care</source>
        <translation>Tenga cuidado</translation>
    </message>
    <message>
        <source>Nothing was changed. Any key goes back to the board.</source>
        <translation>No se cambió nada. Cualquier tecla vuelve al tablero.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>The recipe names none for what is in hand.</source>
        <translation>La receta no nombra ninguno para lo que tiene entre manos.</translation>
    </message>
    <message>
        <source>nothing beyond the usual</source>
        <translation>nada fuera de lo usual</translation>
    </message>
</context>
<context>
    <name>brinebell::TextField</name>
    <message>
        <source>Control characters and invisible marks were left out.</source>
        <translation>Se quitaron caracteres de control y marcas invisibles.</translation>
    </message>
    <message>
        <source>Only the first %L1 characters fit here.</source>
        <translation>Aquí solo caben los primeros %L1 caracteres.</translation>
    </message>
</context>
<context>
    <name>brinebell::VenueEditor</name>
    <message>
        <source>Kitchens</source>
        <translation>Cocinas</translation>
    </message>
    <message>
        <source>New kitchen</source>
        <translation>Cocina nueva</translation>
    </message>
    <message>
        <source>Burner</source>
        <translation>Quemador</translation>
    </message>
    <message>
        <source>%1 (copy)</source>
        <translation>%1 (copia)</translation>
    </message>
    <message>
        <source>▲ Without an altitude no class can run here: every process time depends on it.</source>
        <translation>▲ Sin altitud no se puede dar aquí ninguna clase: de ella depende cada tiempo de proceso.</translation>
    </message>
    <message>
        <source>Water boils at about %L1 °F (%L2 °C) here.</source>
        <translation>Aquí el agua hierve a unos %L1 °F (%L2 °C).</translation>
    </message>
    <message>
        <source>Band of the tables: %1; pints of chile salsa, for one, are boiled %L2 min.</source>
        <translation>Franja de las tablas: %1; las pintas de salsa de chile, por ejemplo, hierven %L2 min.</translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation>Cocina</translation>
    </message>
    <message>
        <source>Stations</source>
        <translation>Puestos</translation>
    </message>
    <message>
        <source>Canners</source>
        <translation>Ollas de envasado</translation>
    </message>
    <message>
        <source>Confirmed</source>
        <translation>Confirmado</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Añadir</translation>
    </message>
    <message>
        <source>New station</source>
        <translation>Puesto nuevo</translation>
    </message>
    <message>
        <source>New canner</source>
        <translation>Olla nueva</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Quitar</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Mover</translation>
    </message>
    <message>
        <source>Name of the kitchen</source>
        <translation>Nombre de la cocina</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>With its unit: 4,200 ft or 1280 m.</source>
        <translation>Con su unidad: 4,200 ft o 1280 m.</translation>
    </message>
    <message>
        <source>How the altitude is known</source>
        <translation>Cómo se conoce la altitud</translation>
    </message>
    <message>
        <source>the altitude comes first</source>
        <translation>primero va la altitud</translation>
    </message>
    <message>
        <source>A survey map, the county extension office. A guess sets a wrong process time.</source>
        <translation>Un mapa topográfico, la oficina de extensión del condado. Una suposición fija un tiempo de proceso equivocado.</translation>
    </message>
    <message>
        <source>Reading distance, from the counter to the screen</source>
        <translation>Distancia de lectura, de la encimera a la pantalla</translation>
    </message>
    <message>
        <source>Reading distance</source>
        <translation>Distancia de lectura</translation>
    </message>
    <message>
        <source>It sets how large the board&apos;s letters are: 2.5 m or 8 ft. How large this screen is, is measured on the Prepare page.</source>
        <translation>Fija el tamaño de las letras del tablero: 2.5 m u 8 ft. El tamaño de esta pantalla se mide en la página Preparar.</translation>
    </message>
    <message>
        <source>Room temperature</source>
        <translation>Temperatura de la sala</translation>
    </message>
    <message>
        <source>For heating times that are worked out: 68 °F or 20 °C.</source>
        <translation>Para los tiempos de calentamiento que se calculan: 68 °F o 20 °C.</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Nombre</translation>
    </message>
    <message>
        <source>What it is</source>
        <translation>Qué es</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Sink</source>
        <translation>Fregadero</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Counter</source>
        <translation>Encimera</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Calor</translation>
    </message>
    <message>
        <source>None, or not known</source>
        <translation>Ninguno, o no se sabe</translation>
    </message>
    <message>
        <source>Gas</source>
        <translation>Gas</translation>
    </message>
    <message>
        <source>Electric</source>
        <translation>Eléctrico</translation>
    </message>
    <message>
        <source>Induction</source>
        <translation>Inducción</translation>
    </message>
    <message>
        <source>Power</source>
        <translation>Potencia</translation>
    </message>
    <message>
        <source>15,000 Btu/h or 2500 W, from the plate of the range; empty where it is not known.</source>
        <translation>15,000 Btu/h o 2500 W, según la placa de la cocina; vacío si no se sabe.</translation>
    </message>
    <message>
        <source>Method</source>
        <translation>Método</translation>
    </message>
    <message>
        <source>Boiling water</source>
        <translation>Agua hirviendo</translation>
    </message>
    <message>
        <source>Atmospheric steam</source>
        <translation>Vapor atmosférico</translation>
    </message>
    <message>
        <source>Pressure, dial gauge</source>
        <translation>Presión, manómetro de aguja</translation>
    </message>
    <message>
        <source>Pressure, weighted gauge</source>
        <translation>Presión, válvula de contrapeso</translation>
    </message>
    <message>
        <source>Burner that it stands on</source>
        <translation>Quemador en el que está</translation>
    </message>
    <message>
        <source>Water in it before the jars go in</source>
        <translation>Agua que tiene antes de meter los frascos</translation>
    </message>
    <message>
        <source>Water</source>
        <translation>Agua</translation>
    </message>
    <message>
        <source>12 L or 3 gal. Heating times that are left empty are worked out from it.</source>
        <translation>12 L o 3 gal. Los tiempos de calentamiento que se dejan vacíos se calculan con ella.</translation>
    </message>
    <message>
        <source>The &amp;lid is on while it heats</source>
        <translation>La ta&amp;pa está puesta mientras calienta</translation>
    </message>
    <message>
        <source>Lid</source>
        <translation>Tapa</translation>
    </message>
    <message>
        <source>Short, likely, long: 17 min, 21 min, 27 min; or empty.</source>
        <translation>Corto, probable, largo: 17 min, 21 min, 27 min; o vacío.</translation>
    </message>
    <message>
        <source>Heating to the preheat temperature</source>
        <translation>Calentamiento hasta la temperatura previa</translation>
    </message>
    <message>
        <source>Heating to the boil, loaded</source>
        <translation>Calentamiento hasta hervir, con la carga</translation>
    </message>
    <message>
        <source>Jars in one load, on the rack</source>
        <translation>Frascos en una carga, sobre la rejilla</translation>
    </message>
    <message>
        <source>Jars in one load</source>
        <translation>Frascos en una carga</translation>
    </message>
    <message>
        <source>Entry of the tables that rests on memory</source>
        <translation>Entrada de las tablas que se cita de memoria</translation>
    </message>
    <message>
        <source>Entry</source>
        <translation>Entrada</translation>
    </message>
    <message>
        <source>Who held it against the printed page</source>
        <translation>Quién la cotejó con la página impresa</translation>
    </message>
    <message>
        <source>On which day</source>
        <translation>Qué día</translation>
    </message>
    <message>
        <source>Year, month, day: 2026-08-01.</source>
        <translation>Año, mes, día: 2026-08-01.</translation>
    </message>
</context>
<context>
    <name>brinebell::WelcomePage</name>
    <message>
        <source>&amp;Altitude of your kitchen</source>
        <translation>&amp;Altitud de su cocina</translation>
    </message>
    <message>
        <source>&amp;How the altitude is known</source>
        <translation>&amp;Cómo se conoce la altitud</translation>
    </message>
    <message>
        <source>Welcome to Brinebell</source>
        <translation>Le damos la bienvenida a Brinebell</translation>
    </message>
    <message>
        <source>Every process time depends on how high the kitchen lies, so that comes first. All of this can be changed later.</source>
        <translation>Todo tiempo de procesamiento depende de la altitud de la cocina; por eso va primero. Todo esto se puede cambiar después.</translation>
    </message>
    <message>
        <source>With its unit: 4,200 ft or 1280 m.</source>
        <translation>Con su unidad: 4,200 ft o 1280 m.</translation>
    </message>
    <message>
        <source>A survey map, the county extension office. A guess sets a wrong process time.</source>
        <translation>Un mapa topográfico, la oficina de extensión del condado. Una suposición fija un tiempo de procesamiento equivocado.</translation>
    </message>
    <message>
        <source>&amp;Begin</source>
        <translation>&amp;Empezar</translation>
    </message>
    <message>
        <source>Begin with the &amp;demonstration class</source>
        <translation>Empezar con la clase &amp;de demostración</translation>
    </message>
    <message>
        <source>&amp;Skip this</source>
        <translation>&amp;Omitir esto</translation>
    </message>
    <message>
        <source>%1 (%2): water boils at about %3 (%4).</source>
        <translation>%1 (%2): el agua hierve a unos %3 (%4).</translation>
    </message>
    <message>
        <source>My kitchen</source>
        <translation>Mi cocina</translation>
    </message>
    <message>
        <source>Burner 1</source>
        <translation>Quemador 1</translation>
    </message>
    <message>
        <source>Burner 2</source>
        <translation>Quemador 2</translation>
    </message>
    <message>
        <source>Burner 3</source>
        <translation>Quemador 3</translation>
    </message>
    <message>
        <source>Burner 4</source>
        <translation>Quemador 4</translation>
    </message>
    <message>
        <source>Oven</source>
        <translation>Horno</translation>
    </message>
    <message>
        <source>Sink</source>
        <translation>Fregadero</translation>
    </message>
    <message>
        <source>Board</source>
        <translation>Tabla</translation>
    </message>
    <message>
        <source>Counter</source>
        <translation>Mostrador</translation>
    </message>
    <message>
        <source>The altitude is wanted; skip this page where it is not known yet.</source>
        <translation>Falta la altitud; omita esta página si aún no la conoce.</translation>
    </message>
    <message>
        <source>Say how it is known: an altitude that nobody can trace is a guess.</source>
        <translation>Diga cómo se conoce: una altitud que nadie puede comprobar es una suposición.</translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>{} is not a date and time such as 2026-09-12T17:30:00-06:00</source>
        <translation>{} no es una fecha y hora como 2026-09-12T17:30:00-06:00</translation>
    </message>
    <message>
        <source>{} is outside the years 1970 to 9999</source>
        <translation>{} queda fuera de los años 1970 a 9999</translation>
    </message>
    <message>
        <source>a table</source>
        <translation>una tabla</translation>
    </message>
    <message>
        <source>an array</source>
        <translation>una lista</translation>
    </message>
    <message>
        <source>text</source>
        <translation>texto</translation>
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
        <source>true or false</source>
        <translation>verdadero o falso</translation>
    </message>
    <message>
        <source>a date or time</source>
        <translation>una fecha u hora</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nada</translation>
    </message>
    <message>
        <source>not valid TOML: {}</source>
        <translation>no es TOML válido: {}</translation>
    </message>
    <message>
        <source>{} of {} characters; at most {} are read</source>
        <translation>{} de {} caracteres; se leen como máximo {}</translation>
    </message>
    <message>
        <source>{} with a control character other than line feed and tab</source>
        <translation>{} con un carácter de control que no es salto de línea ni tabulador</translation>
    </message>
    <message>
        <source>a text</source>
        <translation>un texto</translation>
    </message>
    <message>
        <source>nested deeper than {} levels</source>
        <translation>anidado a más de {} niveles</translation>
    </message>
    <message>
        <source>an array of {} elements; at most {} are read</source>
        <translation>una lista de {} elementos; se leen como máximo {}</translation>
    </message>
    <message>
        <source>a key</source>
        <translation>una clave</translation>
    </message>
    <message>
        <source>{}: missing</source>
        <translation>{}: falta</translation>
    </message>
    <message>
        <source>{}: expected {}, found {}</source>
        <translation>{}: se esperaba {}, se encontró {}</translation>
    </message>
    <message>
        <source>{}: must be {}, found {}</source>
        <translation>{}: debe ser {}, se encontró {}</translation>
    </message>
    <message>
        <source>{}: must not be empty</source>
        <translation>{}: no debe estar vacío</translation>
    </message>
    <message>
        <source>{}: must be {} to {}, found {}</source>
        <translation>{}: debe ser de {} a {}, se encontró {}</translation>
    </message>
    <message>
        <source>an array of texts</source>
        <translation>una lista de textos</translation>
    </message>
    <message>
        <source>an array of whole numbers</source>
        <translation>una lista de números enteros</translation>
    </message>
    <message>
        <source>an array of tables</source>
        <translation>una lista de tablas</translation>
    </message>
    <message>
        <source>the file has {} bytes; at most {} are read</source>
        <translation>el archivo tiene {} bytes; se leen como máximo {}</translation>
    </message>
    <message>
        <source>unknown key &quot;{}&quot;</source>
        <translation>clave desconocida &quot;{}&quot;</translation>
    </message>
    <message>
        <source>must be {} to {}, found {}</source>
        <translation>debe ser de {} a {}, se encontró {}</translation>
    </message>
    <message>
        <source>low, likely and high must not fall, found {}, {}, {}</source>
        <translation>bajo, probable y alto no deben disminuir, se encontró {}, {}, {}</translation>
    </message>
    <message>
        <source>an id is lower-case letters, digits and single hyphens, at most {} characters</source>
        <translation>un id son letras minúsculas, dígitos y guiones sueltos, como máximo {} caracteres</translation>
    </message>
    <message>
        <source>{}: {} is there already</source>
        <translation>{}: {} ya está</translation>
    </message>
    <message>
        <source>{}: {} found; at most {} are read</source>
        <translation>{}: se encontraron {}; se leen como máximo {}</translation>
    </message>
    <message>
        <source>cannot write</source>
        <translation>no se puede escribir</translation>
    </message>
    <message>
        <source>cannot flush the folder</source>
        <translation>no se puede asegurar la carpeta en el disco</translation>
    </message>
    <message>
        <source>cannot keep the file&apos;s rights</source>
        <translation>no se pueden conservar los permisos del archivo</translation>
    </message>
    <message>
        <source>cannot flush to the disk</source>
        <translation>no se puede asegurar en el disco</translation>
    </message>
    <message>
        <source>cannot replace the file</source>
        <translation>no se puede reemplazar el archivo</translation>
    </message>
    <message>
        <source>cannot open</source>
        <translation>no se puede abrir</translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation>esto es una carpeta, no un archivo</translation>
    </message>
    <message>
        <source>this is not a plain file</source>
        <translation>esto no es un archivo común</translation>
    </message>
    <message>
        <source>cannot read</source>
        <translation>no se puede leer</translation>
    </message>
    <message>
        <source>the file is larger than {} bytes</source>
        <translation>el archivo supera {} bytes</translation>
    </message>
    <message>
        <source>cannot create a file beside it</source>
        <translation>no se puede crear un archivo junto a él</translation>
    </message>
    <message>
        <source>the file is not valid UTF-8 here</source>
        <translation>el archivo no es UTF-8 válido aquí</translation>
    </message>
    <message>
        <source>characters other than plain letters, digits and signs belong in quotes</source>
        <translation>los caracteres que no son letras simples, dígitos y signos van entre comillas</translation>
    </message>
    <message>
        <source>a name with more than {} dots; at most {} levels are read</source>
        <translation>un nombre con más de {} puntos; se leen como máximo {} niveles</translation>
    </message>
    <message>
        <source>{} at {:.0f} W does not bring {} to {:.0f} °C within {}; it takes at least {:.0f} W</source>
        <translation>{} con {:.0f} W no lleva {} a {:.0f} °C en {}; hacen falta al menos {:.0f} W</translation>
    </message>
    <message>
        <source>{} has neither heating times nor water</source>
        <translation>{} no tiene ni tiempos de calentamiento ni agua</translation>
    </message>
    <message>
        <source>{} has no heat and power to work heating times out from; write both there, or heat_to_preheat and heat_to_boil at the canner</source>
        <translation>{} no tiene calor ni potencia para calcular los tiempos de calentamiento; escriba ambos allí, o heat_to_preheat y heat_to_boil en la envasadora</translation>
    </message>
    <message>
        <source>{} holds fewer than {} quarts; times were not tested in so small a pressure canner</source>
        <translation>{} tiene menos de {} cuartos de galón; los tiempos no se probaron en una envasadora a presión tan pequeña</translation>
    </message>
    <message>
        <source>must be {} m to {} m, found {:.1f} m</source>
        <translation>debe ser de {} m a {} m, se encontró {:.1f} m</translation>
    </message>
    <message>
        <source>must be {} °C to {} °C, found {:.1f} °C</source>
        <translation>debe ser de {} °C a {} °C, se encontró {:.1f} °C</translation>
    </message>
    <message>
        <source>must be {} L to {} L, found {:.1f} L</source>
        <translation>debe ser de {} L a {} L, se encontró {:.1f} L</translation>
    </message>
    <message>
        <source>altitude_from: there is no altitude</source>
        <translation>altitude_from: no hay altitud</translation>
    </message>
    <message>
        <source>kind: a canner is written as [[canner]]</source>
        <translation>kind: una envasadora se escribe como [[canner]]</translation>
    </message>
    <message>
        <source>jar: {} is there already</source>
        <translation>jar: {} ya está</translation>
    </message>
    <message>
        <source>capacity: at least one jar size is needed</source>
        <translation>capacity: hace falta al menos un tamaño de frasco</translation>
    </message>
    <message>
        <source>burner: no station is called {}</source>
        <translation>burner: ninguna estación se llama {}</translation>
    </message>
    <message>
        <source>burner: {} is a {}</source>
        <translation>burner: {} es {}</translation>
    </message>
    <message>
        <source>{}: there is no water</source>
        <translation>{}: no hay agua</translation>
    </message>
    <message>
        <source>confirmed_by: say which entry was confirmed, in a table [[confirmed]] with entry, by and on</source>
        <translation>confirmed_by: diga qué entrada se confirmó, en una tabla [[confirmed]] con entry, by y on</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>no registrado</translation>
    </message>
    <message>
        <source>{} (as planned)</source>
        <translation>{} (según lo previsto)</translation>
    </message>
    <message>
        <source>by a key</source>
        <translation>con una tecla</translation>
    </message>
    <message>
        <source>by a held key</source>
        <translation>con una tecla mantenida</translation>
    </message>
    <message>
        <source>by the pedal</source>
        <translation>con el pedal</translation>
    </message>
    <message>
        <source>by the mouse</source>
        <translation>con el ratón</translation>
    </message>
    <message>
        <source>by the clock</source>
        <translation>por el reloj</translation>
    </message>
    <message>
        <source>on taking the session up again</source>
        <translation>al retomar la sesión</translation>
    </message>
    <message>
        <source>by the rehearsal</source>
        <translation>por el ensayo</translation>
    </message>
    <message>
        <source>by the console</source>
        <translation>por la consola</translation>
    </message>
    <message>
        <source>the start of the session</source>
        <translation>el inicio de la sesión</translation>
    </message>
    <message>
        <source>the start of</source>
        <translation>el inicio de</translation>
    </message>
    <message>
        <source>the end of</source>
        <translation>el final de</translation>
    </message>
    <message>
        <source>the passing over of</source>
        <translation>la omisión de</translation>
    </message>
    <message>
        <source>a look at</source>
        <translation>una mirada a</translation>
    </message>
    <message>
        <source>the water confirmed,</source>
        <translation>el agua confirmada,</translation>
    </message>
    <message>
        <source>steam seen,</source>
        <translation>vapor visto,</translation>
    </message>
    <message>
        <source>steam lost,</source>
        <translation>vapor perdido,</translation>
    </message>
    <message>
        <source>the vent closed,</source>
        <translation>la salida cerrada,</translation>
    </message>
    <message>
        <source>pressure reached,</source>
        <translation>presión alcanzada,</translation>
    </message>
    <message>
        <source>pressure lost,</source>
        <translation>presión perdida,</translation>
    </message>
    <message>
        <source>pressure gone,</source>
        <translation>ya sin presión,</translation>
    </message>
    <message>
        <source>a boil seen,</source>
        <translation>un hervor visto,</translation>
    </message>
    <message>
        <source>a boil lost,</source>
        <translation>un hervor perdido,</translation>
    </message>
    <message>
        <source>time nobody watched</source>
        <translation>tiempo que nadie vigiló</translation>
    </message>
    <message>
        <source>a boil vouched for,</source>
        <translation>un hervor avalado,</translation>
    </message>
    <message>
        <source>heat off,</source>
        <translation>fuego apagado,</translation>
    </message>
    <message>
        <source>the setting aside of</source>
        <translation>el apartar de</translation>
    </message>
    <message>
        <source>a seal check,</source>
        <translation>una revisión de sellos,</translation>
    </message>
    <message>
        <source>a point said:</source>
        <translation>un punto dicho:</translation>
    </message>
    <message>
        <source>a note:</source>
        <translation>una nota:</translation>
    </message>
    <message>
        <source>questions,</source>
        <translation>preguntas,</translation>
    </message>
    <message>
        <source>the end of questions,</source>
        <translation>el final de las preguntas,</translation>
    </message>
    <message>
        <source>a reading,</source>
        <translation>una lectura,</translation>
    </message>
    <message>
        <source>a question put off:</source>
        <translation>una pregunta dejada:</translation>
    </message>
    <message>
        <source>a question answered,</source>
        <translation>una pregunta respondida,</translation>
    </message>
    <message>
        <source>a swap in</source>
        <translation>un cambio en</translation>
    </message>
    <message>
        <source>a jar counted in</source>
        <translation>un frasco contado en</translation>
    </message>
    <message>
        <source>the heat seen off,</source>
        <translation>el fuego visto apagado,</translation>
    </message>
    <message>
        <source>an undoing</source>
        <translation>un deshacer</translation>
    </message>
    <message>
        <source>the end of the class</source>
        <translation>el fin de la clase</translation>
    </message>
    <message>
        <source>the closing of the session</source>
        <translation>el cierre de la sesión</translation>
    </message>
    <message>
        <source>Batch record: {}</source>
        <translation>Registro del lote: {}</translation>
    </message>
    <message>
        <source>REHEARSAL</source>
        <translation>ENSAYO</translation>
    </message>
    <message>
        <source>nothing was canned; times and counts are for practice only</source>
        <translation>no se envasó nada; tiempos y cuentas son solo de práctica</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Sesión</translation>
    </message>
    <message>
        <source>Class</source>
        <translation>Clase</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Lugar</translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation>Altitud</translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation>Docente</translation>
    </message>
    <message>
        <source>Helpers</source>
        <translation>Ayudantes</translation>
    </message>
    <message>
        <source>{} planned (names {})</source>
        <translation>{} previstos (nombres: {})</translation>
    </message>
    <message>
        <source>Boil watcher</source>
        <translation>Vigila el hervor</translation>
    </message>
    <message>
        <source>Stays to the end</source>
        <translation>Se queda hasta el final</translation>
    </message>
    <message>
        <source>Times</source>
        <translation>Horas</translation>
    </message>
    <message>
        <source>UTC, counted from the start of the session by the machine&apos;s own clock</source>
        <translation>UTC, contadas desde el inicio de la sesión con el reloj propio del equipo</translation>
    </message>
    <message>
        <source>Planned start</source>
        <translation>Inicio previsto</translation>
    </message>
    <message>
        <source>Started</source>
        <translation>Empezó</translation>
    </message>
    <message>
        <source>not started</source>
        <translation>no empezada</translation>
    </message>
    <message>
        <source>Closed</source>
        <translation>Cerrada</translation>
    </message>
    <message>
        <source>not closed yet</source>
        <translation>aún sin cerrar</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Receta</translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation>Fuente y edición</translation>
    </message>
    <message>
        <source>Tested</source>
        <translation>Probada</translation>
    </message>
    <message>
        <source>NOT held against a tested recipe: {}</source>
        <translation>NO comparada con una receta probada: {}</translation>
    </message>
    <message>
        <source>Jars planned</source>
        <translation>Frascos previstos</translation>
    </message>
    <message>
        <source>Ingredients planned</source>
        <translation>Ingredientes previstos</translation>
    </message>
    <message>
        <source>Produce, its origin</source>
        <translation>Producto y su origen</translation>
    </message>
    <message>
        <source>Acid</source>
        <translation>Ácido</translation>
    </message>
    <message>
        <source>kind and amount as planned above; strength as bought {}</source>
        <translation>clase y cantidad según lo previsto arriba; fuerza según compra: {}</translation>
    </message>
    <message>
        <source>Lids</source>
        <translation>Tapas</translation>
    </message>
    <message>
        <source>Headspace as filled</source>
        <translation>Espacio libre al llenar</translation>
    </message>
    <message>
        <source>pH, if taken</source>
        <translation>pH, si se midió</translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation>Alérgenos</translation>
    </message>
    <message>
        <source>Shelf life</source>
        <translation>Duración</translation>
    </message>
    <message>
        <source>Storage</source>
        <translation>Almacenamiento</translation>
    </message>
    <message>
        <source>Load {} of {}: {}</source>
        <translation>Carga {} de {}: {}</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>Lote</translation>
    </message>
    <message>
        <source>none: not canned</source>
        <translation>ninguno: no envasado</translation>
    </message>
    <message>
        <source>Canner</source>
        <translation>Envasadora</translation>
    </message>
    <message>
        <source>Burner</source>
        <translation>Quemador</translation>
    </message>
    <message>
        <source>Method, pack, jar</source>
        <translation>Método, envasado, frasco</translation>
    </message>
    <message>
        <source>{}, {} pack, {}</source>
        <translation>{}, envasado {}, {}</translation>
    </message>
    <message>
        <source>Start temperature</source>
        <translation>Temperatura inicial</translation>
    </message>
    <message>
        <source>Lowered</source>
        <translation>Bajada</translation>
    </message>
    <message>
        <source>not lowered</source>
        <translation>sin bajar</translation>
    </message>
    <message>
        <source>Water confirmed</source>
        <translation>Agua confirmada</translation>
    </message>
    <message>
        <source>not confirmed</source>
        <translation>sin confirmar</translation>
    </message>
    <message>
        <source>Venting required</source>
        <translation>Purga requerida</translation>
    </message>
    <message>
        <source>Steam seen at</source>
        <translation>Vapor visto a las</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>no visto</translation>
    </message>
    <message>
        <source>{}, entered {}</source>
        <translation>{}, anotado {}</translation>
    </message>
    <message>
        <source>Vent closed at</source>
        <translation>Salida cerrada a las</translation>
    </message>
    <message>
        <source>{}, after {}</source>
        <translation>{}, tras {}</translation>
    </message>
    <message>
        <source>STEAM LOST at</source>
        <translation>VAPOR PERDIDO a las</translation>
    </message>
    <message>
        <source>{}, after {}; the full {} start again</source>
        <translation>{}, tras {}; los {} completos empiezan de nuevo</translation>
    </message>
    <message>
        <source>Gauge pressure required</source>
        <translation>Presión manométrica requerida</translation>
    </message>
    <message>
        <source>{} psi</source>
        <translation>{} psi</translation>
    </message>
    <message>
        <source>Boil seen at</source>
        <translation>Hervor visto a las</translation>
    </message>
    <message>
        <source>BOIL LOST at</source>
        <translation>HERVOR PERDIDO a las</translation>
    </message>
    <message>
        <source>Full steam seen at</source>
        <translation>Pleno vapor visto a las</translation>
    </message>
    <message>
        <source>Pressure reached at</source>
        <translation>Presión alcanzada a las</translation>
    </message>
    <message>
        <source>PRESSURE LOST at</source>
        <translation>PRESIÓN PERDIDA a las</translation>
    </message>
    <message>
        <source>Process time required</source>
        <translation>Tiempo de proceso requerido</translation>
    </message>
    <message>
        <source>Table row and band</source>
        <translation>Fila y banda de la tabla</translation>
    </message>
    <message>
        <source>Table source</source>
        <translation>Fuente de la tabla</translation>
    </message>
    <message>
        <source>Row from memory</source>
        <translation>Fila de memoria</translation>
    </message>
    <message>
        <source>held against the page by {} on {}</source>
        <translation>comparada con la página por {} el {}</translation>
    </message>
    <message>
        <source>{} psi, </source>
        <translation>{} psi, </translation>
    </message>
    <message>
        <source>{}, {}entered {}</source>
        <translation>{}, {}anotado {}</translation>
    </message>
    <message>
        <source>Count complete at</source>
        <translation>Cuenta completa a las</translation>
    </message>
    <message>
        <source>not completed: set aside before</source>
        <translation>incompleta: apartada antes</translation>
    </message>
    <message>
        <source>not completed</source>
        <translation>incompleta</translation>
    </message>
    <message>
        <source>not completed; due at {}</source>
        <translation>incompleta; toca a las {}</translation>
    </message>
    <message>
        <source>Unwatched time</source>
        <translation>Tiempo sin vigilar</translation>
    </message>
    <message>
        <source>none</source>
        <translation>ninguno</translation>
    </message>
    <message>
        <source>nobody vouched for the boil</source>
        <translation>nadie avaló el hervor</translation>
    </message>
    <message>
        <source>vouched for, name not recorded</source>
        <translation>avalado, nombre no registrado</translation>
    </message>
    <message>
        <source>vouched for by {}</source>
        <translation>avalado por {}</translation>
    </message>
    <message>
        <source>Heat off</source>
        <translation>Fuego apagado</translation>
    </message>
    <message>
        <source>not turned off</source>
        <translation>sin apagar</translation>
    </message>
    <message>
        <source>Process time kept</source>
        <translation>Tiempo de proceso cumplido</translation>
    </message>
    <message>
        <source>Pressure gone</source>
        <translation>Sin presión</translation>
    </message>
    <message>
        <source>not seen to be gone</source>
        <translation>no se vio que se fuera</translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation>Sacada</translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation>sin sacar</translation>
    </message>
    <message>
        <source>SET ASIDE at</source>
        <translation>APARTADA a las</translation>
    </message>
    <message>
        <source>SEAL CHECK DUE</source>
        <translation>REVISAR SELLOS</translation>
    </message>
    <message>
        <source>from {} to {}</source>
        <translation>de {} a {}</translation>
    </message>
    <message>
        <source>before the jars had cooled 12 h</source>
        <translation>antes de que los frascos se enfriaran 12 h</translation>
    </message>
    <message>
        <source>Seals counted before</source>
        <translation>Sellos contados antes</translation>
    </message>
    <message>
        <source>{}, by {}: {} sealed, {} unsealed, {} broken; corrected since{}{}</source>
        <translation>{}, por {}: {} sellados, {} sin sellar, {} rotos; corregido después{}{}</translation>
    </message>
    <message>
        <source>SEALS CHECKED EARLY</source>
        <translation>SELLOS REVISADOS ANTES</translation>
    </message>
    <message>
        <source>Seals checked</source>
        <translation>Sellos revisados</translation>
    </message>
    <message>
        <source>Jars out</source>
        <translation>Frascos fuera</translation>
    </message>
    <message>
        <source>{} of {} planned: {} sealed, {} unsealed, {} broken</source>
        <translation>{} de {} previstos: {} sellados, {} sin sellar, {} rotos</translation>
    </message>
    <message>
        <source>Unsealed jars went</source>
        <translation>Los sin sellar fueron</translation>
    </message>
    <message>
        <source>none were unsealed</source>
        <translation>ninguno quedó sin sellar</translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation>aún sin contar</translation>
    </message>
    <message>
        <source>Disposition</source>
        <translation>Destino</translation>
    </message>
    <message>
        <source> load {}</source>
        <translation> carga {}</translation>
    </message>
    <message>
        <source>swapped in{}: {}</source>
        <translation>cambiado{}: {}</translation>
    </message>
    <message>
        <source>read {}{}</source>
        <translation>leído {}{}</translation>
    </message>
    <message>
        <source>skipped{}: {}</source>
        <translation>omitido{}: {}</translation>
    </message>
    <message>
        <source>taken back: {}{}</source>
        <translation>deshecho: {}{}</translation>
    </message>
    <message>
        <source>Departures and notes</source>
        <translation>Desviaciones y notas</translation>
    </message>
    <message>
        <source>Departures</source>
        <translation>Desviaciones</translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation>ninguna registrada</translation>
    </message>
    <message>
        <source>Review</source>
        <translation>Revisión</translation>
    </message>
    <message>
        <source>Reviewed by, date</source>
        <translation>Revisado por, fecha</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>Iniciales</translation>
    </message>
    <message>
        <source>Safety</source>
        <translation>Seguridad</translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation>falta</translation>
    </message>
    <message>
        <source>its kind {}, boot identity {} or cause {} is not known</source>
        <translation>su tipo {}, identidad de arranque {} o causa {} no se conoce</translation>
    </message>
    <message>
        <source>its activity {} is not in the session&apos;s network</source>
        <translation>su actividad {} no está en la red de la sesión</translation>
    </message>
    <message>
        <source>its load {} is not one of the session&apos;s {}</source>
        <translation>su carga {} no es una de las {} de la sesión</translation>
    </message>
    <message>
        <source>its moment or its value is out of range</source>
        <translation>su momento o su valor está fuera de rango</translation>
    </message>
    <message>
        <source>a count of jars is below zero or too large</source>
        <translation>una cuenta de frascos está bajo cero o es demasiado grande</translation>
    </message>
    <message>
        <source>session {}, event {}: {}</source>
        <translation>sesión {}, suceso {}: {}</translation>
    </message>
    <message>
        <source>session {}: {}</source>
        <translation>sesión {}: {}</translation>
    </message>
    <message>
        <source>{} has no &quot;{}&quot;</source>
        <translation>{} no tiene &quot;{}&quot;</translation>
    </message>
    <message>
        <source>&quot;{}&quot; of {} is of the wrong kind</source>
        <translation>&quot;{}&quot; de {} es del tipo equivocado</translation>
    </message>
    <message>
        <source>&quot;{}&quot; of {} is not a moment: {}</source>
        <translation>&quot;{}&quot; de {} no es un momento: {}</translation>
    </message>
    <message>
        <source>&quot;{}&quot; of {} is out of range: {}</source>
        <translation>&quot;{}&quot; de {} está fuera de rango: {}</translation>
    </message>
    <message>
        <source>{} is not known: {}</source>
        <translation>{} no se conoce: {}</translation>
    </message>
    <message>
        <source>event {}</source>
        <translation>suceso {}</translation>
    </message>
    <message>
        <source>the kind of event {}</source>
        <translation>el tipo del suceso {}</translation>
    </message>
    <message>
        <source>the cause of event {}</source>
        <translation>la causa del suceso {}</translation>
    </message>
    <message>
        <source>the boot identity of event {}</source>
        <translation>la identidad de arranque del suceso {}</translation>
    </message>
    <message>
        <source>the activity of event {}</source>
        <translation>la actividad del suceso {}</translation>
    </message>
    <message>
        <source>the load of event {} is not one of the session&apos;s {}</source>
        <translation>la carga del suceso {} no es una de las {} de la sesión</translation>
    </message>
    <message>
        <source>&quot;boot_ms&quot; of event {} is out of range: {}</source>
        <translation>&quot;boot_ms&quot; del suceso {} está fuera de rango: {}</translation>
    </message>
    <message>
        <source>&quot;value&quot; of event {} is out of range: {}</source>
        <translation>&quot;value&quot; del suceso {} está fuera de rango: {}</translation>
    </message>
    <message>
        <source>the network is not sound: {}</source>
        <translation>la red no es válida: {}</translation>
    </message>
    <message>
        <source>the id of the session is not one of ours: {}</source>
        <translation>el id de la sesión no es de los nuestros: {}</translation>
    </message>
    <message>
        <source>the file is longer than {} MiB</source>
        <translation>el archivo supera {} MiB</translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation>el archivo no se puede leer</translation>
    </message>
    <message>
        <source>the document is too long</source>
        <translation>el documento es demasiado largo</translation>
    </message>
    <message>
        <source>it nests deeper than {} levels</source>
        <translation>se anida a más de {} niveles</translation>
    </message>
    <message>
        <source>this is not a whole JSON document</source>
        <translation>esto no es un documento JSON completo</translation>
    </message>
    <message>
        <source>this is not a session: {}</source>
        <translation>esto no es una sesión: {}</translation>
    </message>
    <message>
        <source>the altitude {} cannot be read</source>
        <translation>la altitud {} no se puede leer</translation>
    </message>
    <message>
        <source>load {} of {}: {}</source>
        <translation>carga {} de {}: {}</translation>
    </message>
    <message>
        <source>load {}: its {} of {} are not those of the published table</source>
        <translation>carga {}: sus {} de {} no son los de la tabla publicada</translation>
    </message>
    <message>
        <source>the session never started</source>
        <translation>la sesión nunca empezó</translation>
    </message>
    <message>
        <source>its start is more than a day from the day it is filed under</source>
        <translation>su inicio está a más de un día del día en que está archivada</translation>
    </message>
    <message>
        <source>event {} is missing</source>
        <translation>falta el suceso {}</translation>
    </message>
    <message>
        <source>the class is not closed yet; close it where it runs, then bring it here</source>
        <translation>la clase aún no está cerrada; ciérrela donde se da y luego tráigala aquí</translation>
    </message>
    <message>
        <source>checked {}, {} of {} sealed; this label is for sealed jars only</source>
        <translation>revisado {}, {} de {} sellados; esta etiqueta es solo para frascos sellados</translation>
    </message>
    <message>
        <source>check by {}</source>
        <translation>revisar antes de {}</translation>
    </message>
    <message>
        <source>the seals were checked and no jar had sealed</source>
        <translation>los sellos se revisaron y ningún frasco selló</translation>
    </message>
    <message>
        <source>set aside: {}</source>
        <translation>apartada: {}</translation>
    </message>
    <message>
        <source>this load has not been processed and lifted</source>
        <translation>esta carga no se ha procesado y sacado</translation>
    </message>
    <message>
        <source>{} (from the day canned)</source>
        <translation>{} (desde el día de envasado)</translation>
    </message>
    <message>
        <source>not for a jar</source>
        <translation>no es para un frasco</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Contenido</translation>
    </message>
    <message>
        <source>NO LABEL</source>
        <translation>SIN ETIQUETA</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiquetas</translation>
    </message>
    <message>
        <source>for {} jar{}</source>
        <translation>para {} frasco{}</translation>
    </message>
    <message>
        <source>Canned</source>
        <translation>Envasado</translation>
    </message>
    <message>
        <source>Made at</source>
        <translation>Hecho en</translation>
    </message>
    <message>
        <source>Best by</source>
        <translation>Mejor antes de</translation>
    </message>
    <message>
        <source>Seals</source>
        <translation>Sellos</translation>
    </message>
    <message>
        <source>Once open</source>
        <translation>Una vez abierto</translation>
    </message>
    <message>
        <source>refrigerate after opening</source>
        <translation>refrigere después de abrir</translation>
    </message>
    <message>
        <source>event {} cannot follow event {} of session {}</source>
        <translation>el suceso {} no puede seguir al suceso {} de la sesión {}</translation>
    </message>
    <message>
        <source>event {} names activity {}, and there are {}</source>
        <translation>el suceso {} nombra la actividad {}, y hay {}</translation>
    </message>
    <message>
        <source>the logbook was opened for reading only</source>
        <translation>la bitácora se abrió solo para leer</translation>
    </message>
    <message>
        <source>no session begins with {}</source>
        <translation>ninguna sesión empieza con {}</translation>
    </message>
    <message>
        <source>more than one session begins with {}</source>
        <translation>más de una sesión empieza con {}</translation>
    </message>
    <message>
        <source>session {} is here already and tells something else</source>
        <translation>la sesión {} ya está aquí y cuenta otra cosa</translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation>no se puede crear la carpeta</translation>
    </message>
    <message>
        <source>the folder&apos;s rights cannot be set</source>
        <translation>no se pueden fijar los permisos de la carpeta</translation>
    </message>
    <message>
        <source>the logbook cannot be opened</source>
        <translation>no se puede abrir la bitácora</translation>
    </message>
    <message>
        <source>the logbook cannot be opened: this is not a file</source>
        <translation>no se puede abrir la bitácora: esto no es un archivo</translation>
    </message>
    <message>
        <source>the logbook&apos;s rights cannot be set</source>
        <translation>no se pueden fijar los permisos de la bitácora</translation>
    </message>
    <message>
        <source>the logbook has version {} of its layout and must first be opened for writing, which brings it to version {}</source>
        <translation>la bitácora tiene la versión {} de su formato y debe abrirse primero para escribir, lo que la lleva a la versión {}</translation>
    </message>
    <message>
        <source>the file cannot be made</source>
        <translation>no se puede crear el archivo</translation>
    </message>
    <message>
        <source>the file&apos;s rights cannot be set</source>
        <translation>no se pueden fijar los permisos del archivo</translation>
    </message>
    <message>
        <source>the lock file cannot be opened</source>
        <translation>no se puede abrir el archivo de bloqueo</translation>
    </message>
    <message>
        <source>a live session is already running in this logbook</source>
        <translation>ya hay una sesión en vivo en esta bitácora</translation>
    </message>
    <message>
        <source>the logbook cannot be locked</source>
        <translation>no se puede bloquear la bitácora</translation>
    </message>
    <message>
        <source>the logbook may be read but not written</source>
        <translation>la bitácora se puede leer pero no escribir</translation>
    </message>
    <message>
        <source>the disk does not carry a write-ahead log</source>
        <translation>el disco no admite un diario de escritura anticipada</translation>
    </message>
    <message>
        <source>another program is writing to the logbook</source>
        <translation>otro programa está escribiendo en la bitácora</translation>
    </message>
    <message>
        <source>another program has written to this session</source>
        <translation>otro programa escribió en esta sesión</translation>
    </message>
    <message>
        <source>this is not a logbook</source>
        <translation>esto no es una bitácora</translation>
    </message>
    <message>
        <source>the logbook is damaged</source>
        <translation>la bitácora está dañada</translation>
    </message>
    <message>
        <source>the logbook cannot be read or written</source>
        <translation>la bitácora no se puede leer ni escribir</translation>
    </message>
    <message>
        <source>Rack in, half full of water, highest heat, lid on</source>
        <translation>Rejilla dentro, agua hasta la mitad, fuego al máximo, tapa puesta</translation>
    </message>
    <message>
        <source>Jars upright, water {} over the lids, lid on, highest heat</source>
        <translation>Frascos derechos, agua {} sobre las tapas, tapa puesta, fuego al máximo</translation>
    </message>
    <message>
        <source>Water {} over the lids, lid on</source>
        <translation>Agua {} sobre las tapas, tapa puesta</translation>
    </message>
    <message>
        <source>Bring the canner to a full rolling boil</source>
        <translation>Lleve la envasadora a pleno hervor</translation>
    </message>
    <message>
        <source>Full rolling boil all over, lid on</source>
        <translation>Hervor pleno en toda la superficie, tapa puesta</translation>
    </message>
    <message>
        <source>Lid on; the boil must not stop; jars stay covered</source>
        <translation>Tapa puesta; el hervor no debe parar; los frascos siguen cubiertos</translation>
    </message>
    <message>
        <source>Turn the heat off, take the lid off</source>
        <translation>Apague el fuego, quite la tapa</translation>
    </message>
    <message>
        <source>Wait five minutes before lifting</source>
        <translation>Espere cinco minutos antes de sacar</translation>
    </message>
    <message>
        <source>Lift</source>
        <translation>Saque</translation>
    </message>
    <message>
        <source>Rack in, water in the base as its maker says, highest heat, lid on</source>
        <translation>Rejilla dentro, agua en la base como dice su fabricante, fuego al máximo, tapa puesta</translation>
    </message>
    <message>
        <source>Hot jars upright on the rack, with little time to cool, lid on, highest heat</source>
        <translation>Frascos calientes derechos en la rejilla, sin tiempo de enfriarse, tapa puesta, fuego al máximo</translation>
    </message>
    <message>
        <source>Base filled with water as its maker says, lid on</source>
        <translation>Base llena de agua como dice su fabricante, tapa puesta</translation>
    </message>
    <message>
        <source>Bring the canner to a full column of steam</source>
        <translation>Lleve la envasadora a una columna plena de vapor</translation>
    </message>
    <message>
        <source>Unbroken column of steam, 8 in or longer, at {:.0f} °F ({:.0f} °C)</source>
        <translation>Columna continua de vapor, de 8 in o más, a {:.0f} °F ({:.0f} °C)</translation>
    </message>
    <message>
        <source>The steam must not stop; the lid is not opened for any reason</source>
        <translation>El vapor no debe parar; la tapa no se abre por ningún motivo</translation>
    </message>
    <message>
        <source>Rack in, 2 to 3 in of hot water, highest heat, lid not locked yet</source>
        <translation>Rejilla dentro, 2 a 3 in de agua caliente, fuego al máximo, tapa aún sin asegurar</translation>
    </message>
    <message>
        <source>Jars upright on the rack, 2 to 3 in of water, lid locked, vent open, highest heat</source>
        <translation>Frascos derechos en la rejilla, 2 a 3 in de agua, tapa asegurada, salida abierta, fuego al máximo</translation>
    </message>
    <message>
        <source>2 to 3 in of water in the bottom, lid locked, vent open</source>
        <translation>2 a 3 in de agua en el fondo, tapa asegurada, salida abierta</translation>
    </message>
    <message>
        <source>Bring the canner to a steady column of steam</source>
        <translation>Lleve la envasadora a una columna constante de vapor</translation>
    </message>
    <message>
        <source>Steam leaves the vent in a strong, steady funnel</source>
        <translation>El vapor sale en un chorro fuerte y constante</translation>
    </message>
    <message>
        <source>Gauge at {} psi or a little over, never below</source>
        <translation>Manómetro en {} psi o un poco más, nunca menos</translation>
    </message>
    <message>
        <source>The {} psi weight keeps rocking as its maker says</source>
        <translation>La pesa de {} psi sigue meciéndose como dice su fabricante</translation>
    </message>
    <message>
        <source>Open the petcock</source>
        <translation>Abra la llave de vapor</translation>
    </message>
    <message>
        <source>Take the weight off</source>
        <translation>Quite la pesa</translation>
    </message>
    <message>
        <source>Wait ten minutes, then open the lid away from the face</source>
        <translation>Espere diez minutos y abra la tapa lejos de la cara</translation>
    </message>
    <message>
        <source>Open the lid, lift</source>
        <translation>Abra la tapa, saque</translation>
    </message>
    <message>
        <source>shut the petcock</source>
        <translation>cierre la llave de vapor</translation>
    </message>
    <message>
        <source>put the {} psi weight on</source>
        <translation>ponga la pesa de {} psi</translation>
    </message>
    <message>
        <source>Gauge at {} psi or more</source>
        <translation>Manómetro en {} psi o más</translation>
    </message>
    <message>
        <source>The {} psi weight jiggles or rocks as its maker says</source>
        <translation>La pesa de {} psi se agita o se mece como dice su fabricante</translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation>menos de 1 %</translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation>más de 99 %</translation>
    </message>
    <message>
        <source>expected one number without a unit, as in &quot;1/2&quot;</source>
        <translation>se esperaba un número sin unidad, como &quot;1/2&quot;</translation>
    </message>
    <message>
        <source>must be above 0 and at most 10 batches</source>
        <translation>debe ser más de 0 y como máximo 10 tandas</translation>
    </message>
    <message>
        <source>{} must be relative to the class file, with &quot;/&quot; between folders</source>
        <translation>{} debe ser relativo al archivo de la clase, con &quot;/&quot; entre carpetas</translation>
    </message>
    <message>
        <source>{} leaves the folder above the class file&apos;s own</source>
        <translation>{} sale de la carpeta superior a la del archivo de la clase</translation>
    </message>
    <message>
        <source>venue: {} has no altitude, and without it no process time is known</source>
        <translation>venue: {} no tiene altitud, y sin ella no se conoce ningún tiempo de procesamiento</translation>
    </message>
    <message>
        <source>slot: opening and closing leave no time in it</source>
        <translation>slot: la apertura y el cierre no dejan tiempo en él</translation>
    </message>
    <message>
        <source>made_ahead: {} has no stage {}</source>
        <translation>made_ahead: {} no tiene la etapa {}</translation>
    </message>
    <message>
        <source>made_ahead: {} is there already</source>
        <translation>made_ahead: {} ya está</translation>
    </message>
    <message>
        <source>made_ahead: step {} comes after {}, which is not made ahead</source>
        <translation>made_ahead: el paso {} va después de {}, que no se hace antes</translation>
    </message>
    <message>
        <source>jar: {} is tested up to {} jars, not for a {}</source>
        <translation>jar: {} está probada hasta frascos {}, no para {}</translation>
    </message>
    <message>
        <source>jars: {} found; this much of the batch fills at most {} {} jars</source>
        <translation>jars: se encontraron {}; esta parte de la tanda llena como máximo {} frascos {}</translation>
    </message>
    <message>
        <source>canner: {} has no canner {}</source>
        <translation>canner: {} no tiene la envasadora {}</translation>
    </message>
    <message>
        <source>jar: {} takes no {} jars</source>
        <translation>jar: {} no admite frascos {}</translation>
    </message>
    <message>
        <source>recipe: {} is a dish of this class already; raise its batch instead</source>
        <translation>recipe: {} ya es un plato de esta clase; aumente su tanda</translation>
    </message>
    <message>
        <source>may_drop: a point that must be said is never dropped</source>
        <translation>may_drop: un punto que hay que decir nunca se omite</translation>
    </message>
    <message>
        <source>dish: a class has at least one dish</source>
        <translation>dish: una clase tiene al menos un plato</translation>
    </message>
    <message>
        <source> and </source>
        <translation> y </translation>
    </message>
    <message>
        <source>&quot;{}&quot; (at least {})</source>
        <translation>&quot;{}&quot; (al menos {})</translation>
    </message>
    <message>
        <source>&quot;{}&quot; must be followed by &quot;{}&quot; within {}, but {} must come between</source>
        <translation>tras &quot;{}&quot; debe venir &quot;{}&quot; en {}, pero {} debe ir en medio</translation>
    </message>
    <message>
        <source>{}&quot;{}&quot; followed by &quot;{}&quot; within {}</source>
        <translation>{}tras &quot;{}&quot; viene &quot;{}&quot; en {}</translation>
    </message>
    <message>
        <source>these limits cannot all be kept: {}; they leave {} in all, but {} must come between, {} in all</source>
        <translation>estos límites no se pueden respetar todos: {}; dejan {} en total, pero {} debe ir en medio, {} en total</translation>
    </message>
    <message>
        <source>&quot;{}&quot; can never start: a station it needs is held by something that waits for it; free the station first, or bring one more</source>
        <translation>&quot;{}&quot; nunca puede empezar: una estación que necesita está ocupada por algo que lo espera; libere antes la estación o traiga una más</translation>
    </message>
    <message>
        <source>start &quot;{}&quot; later</source>
        <translation>empiece &quot;{}&quot; más tarde</translation>
    </message>
    <message>
        <source>safe</source>
        <translation>seguro</translation>
    </message>
    <message>
        <source>good</source>
        <translation>bueno</translation>
    </message>
    <message>
        <source>the kitchen ends {} after it must be empty; make a stage ahead or drop the last load</source>
        <translation>la cocina termina {} después de cuando debe quedar vacía; haga una etapa antes u omita la última carga</translation>
    </message>
    <message>
        <source>the kitchen ends at {}, {} after the class, and nobody is named to stay; name a kitchen closer</source>
        <translation>la cocina termina a las {}, {} después de la clase, y no se nombra a nadie que se quede; nombre a quien cierre la cocina</translation>
    </message>
    <message>
        <source>no wait is long enough to say &quot;{}&quot; ({}); say it over the work, or tie it to a step</source>
        <translation>ninguna espera basta para decir &quot;{}&quot; ({}); dígalo durante el trabajo o únalo a un paso</translation>
    </message>
    <message>
        <source>the {} of &quot;{}&quot; takes {} lines of {} characters in letters that can be read from the counter, and a 15.6-inch screen has room for {}; {}bring the screen nearer</source>
        <translation>{} de &quot;{}&quot; ocupa {} líneas de {} caracteres en letras que se leen desde el mostrador, y una pantalla de 15.6 pulgadas tiene lugar para {}; {}acerque la pantalla</translation>
    </message>
    <message>
        <source>shorten it, or </source>
        <translation>acórtelo, o </translation>
    </message>
    <message>
        <source>title</source>
        <translation>el título</translation>
    </message>
    <message>
        <source>end-point</source>
        <translation>el punto final</translation>
    </message>
    <message>
        <source>looks come {} late in all; ask for a helper, or start less at once</source>
        <translation>las miradas llegan en total {} tarde; pida un ayudante o empiece menos a la vez</translation>
    </message>
    <message>
        <source> (not to be left)</source>
        <translation> (no se puede dejar)</translation>
    </message>
    <message>
        <source>{} &quot;{}&quot; {} {}{} at {}{}; {}</source>
        <translation>{} &quot;{}&quot; {} {}{} a las {}{}; {}</translation>
    </message>
    <message>
        <source>the look at</source>
        <translation>la mirada a</translation>
    </message>
    <message>
        <source>comes</source>
        <translation>llega</translation>
    </message>
    <message>
        <source>waits</source>
        <translation>espera</translation>
    </message>
    <message>
        <source> late</source>
        <translation> tarde</translation>
    </message>
    <message>
        <source>: the hands are on {}</source>
        <translation>: las manos están en {}</translation>
    </message>
    <message>
        <source>ask for a helper, or start one of them at another time</source>
        <translation>pida un ayudante o empiece uno de ellos a otra hora</translation>
    </message>
    <message>
        <source>start one of them at another time</source>
        <translation>empiece uno de ellos a otra hora</translation>
    </message>
    <message>
        <source>{} cues sound in {}, more than {} in ten minutes for each of the {} in the kitchen; ask for a helper, or make a stage ahead</source>
        <translation>suenan {} avisos en {}, más de {} en diez minutos para cada una de las {} personas de la cocina; pida un ayudante o haga una etapa antes</translation>
    </message>
    <message>
        <source>{} and {} more</source>
        <translation>{} y {} más</translation>
    </message>
    <message>
        <source>{} {} wanted for at least {} in all ({}), and the slot has {}; bring one more, or make a stage ahead</source>
        <translation>{} {} necesario al menos {} en total ({}), y el horario tiene {}; traiga uno más o haga una etapa antes</translation>
    </message>
    <message>
        <source>is</source>
        <translation>es</translation>
    </message>
    <message>
        <source>are</source>
        <translation>son</translation>
    </message>
    <message>
        <source>by their order alone {} things want {} at once from {} on: &quot;{}&quot; waits for it until {}; bring one more, or make a stage ahead</source>
        <translation>solo por su orden, {} cosas quieren {} a la vez desde las {}: &quot;{}&quot; lo espera hasta las {}; traiga uno más o haga una etapa antes</translation>
    </message>
    <message>
        <source>the class would last for years; look at the durations of its steps</source>
        <translation>la clase duraría años; mire las duraciones de sus pasos</translation>
    </message>
    <message>
        <source>the class comes to a stand before its end</source>
        <translation>la clase se atasca antes de su final</translation>
    </message>
    <message>
        <source>the sheet that was found breaks a rule of the kitchen: {}</source>
        <translation>la hoja encontrada rompe una regla de la cocina: {}</translation>
    </message>
    <message>
        <source>the search claims that no sheet is shorter than {} s, and the dispatcher made one of {} s</source>
        <translation>la búsqueda afirma que ninguna hoja dura menos de {} s, y el despachador hizo una de {} s</translation>
    </message>
    <message>
        <source>does not keep every limit; how short such a sheet can be is not proved</source>
        <translation>no respeta todos los límites; no está probado cuán corta puede ser una hoja así</translation>
    </message>
    <message>
        <source>shortest possible, proved</source>
        <translation>la más corta posible, probado</translation>
    </message>
    <message>
        <source>{} longer than the shortest possible, which is proved, because it holds up better</source>
        <translation>{} más larga que la más corta posible, que está probada, porque resiste mejor</translation>
    </message>
    <message>
        <source>within {} % of the shortest possible</source>
        <translation>a {} % o menos de la más corta posible</translation>
    </message>
    <message>
        <source>source not recorded</source>
        <translation>fuente no registrada</translation>
    </message>
    <message>
        <source>{}, load {}: {} ({})</source>
        <translation>{}, carga {}: {} ({})</translation>
    </message>
    <message>
        <source>jars</source>
        <translation>frascos</translation>
    </message>
    <message>
        <source>Welcome the class, wash hands</source>
        <translation>Dé la bienvenida, lávense las manos</translation>
    </message>
    <message>
        <source>{}: a class version of {}, with no departure that its rules refuse</source>
        <translation>{}: una versión de clase de {}, sin desviaciones que sus reglas rechacen</translation>
    </message>
    <message>
        <source>{}: NOT held against a tested recipe, and not to be eaten; its file says: {}</source>
        <translation>{}: NO comparada con una receta probada, y no es para comer; su archivo dice: {}</translation>
    </message>
    <message>
        <source>{}: its amounts come from memory; hold them against {} before class</source>
        <translation>{}: sus cantidades vienen de memoria; compárelas con {} antes de la clase</translation>
    </message>
    <message>
        <source>{}: {} loads make about {} activities; at most {} fit a class</source>
        <translation>{}: {} cargas dan unas {} actividades; en una clase caben como máximo {}</translation>
    </message>
    <message>
        <source>{}: the venue has no canner &quot;{}&quot;</source>
        <translation>{}: el lugar no tiene la envasadora &quot;{}&quot;</translation>
    </message>
    <message>
        <source>{}: {} takes no {} jars</source>
        <translation>{}: {} no admite frascos {}</translation>
    </message>
    <message>
        <source>{}: acid that must be in it: {}</source>
        <translation>{}: ácido que debe llevar: {}</translation>
    </message>
    <message>
        <source> in each jar</source>
        <translation> en cada frasco</translation>
    </message>
    <message>
        <source> (optional)</source>
        <translation> (opcional)</translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; is done for each load and cannot be made ahead</source>
        <translation>{}: &quot;{}&quot; se hace para cada carga y no se puede hacer antes</translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; is made ahead but follows &quot;{}&quot;, which is not</source>
        <translation>{}: &quot;{}&quot; se hace antes pero sigue a &quot;{}&quot;, que no</translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; is over before its hand work is, for so small a batch</source>
        <translation>{}: &quot;{}&quot; termina antes que su trabajo a mano, con una tanda tan pequeña</translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; needs a {} and the venue has none free of canners</source>
        <translation>{}: &quot;{}&quot; necesita {} y el lugar no tiene ninguno libre de envasadoras</translation>
    </message>
    <message>
        <source>{}: {} stands on a {} in one step and a {} in another</source>
        <translation>{}: {} está en {} en un paso y en {} en otro</translation>
    </message>
    <message>
        <source>Close the class: questions, what to take home</source>
        <translation>Cierre la clase: preguntas, qué llevar a casa</translation>
    </message>
    <message>
        <source>the class ends before the last load is lifted; {} stays for the kitchen end</source>
        <translation>la clase termina antes de sacar la última carga; {} se queda hasta el final de la cocina</translation>
    </message>
    <message>
        <source>{}: no class runs without the altitude of its kitchen</source>
        <translation>{}: ninguna clase se da sin la altitud de su cocina</translation>
    </message>
    <message>
        <source>{}: jars for so short a process must be boiled under water first, and {} cannot; use a boiling-water canner</source>
        <translation>{}: los frascos de un proceso tan corto deben hervirse antes bajo agua, y {} no puede; use una envasadora de agua hirviendo</translation>
    </message>
    <message>
        <source>{}: its heating times are worked out from its burner and its water, not measured</source>
        <translation>{}: sus tiempos de calentamiento se calculan con su quemador y su agua, no se midieron</translation>
    </message>
    <message>
        <source>Set the canner on to heat</source>
        <translation>Ponga la envasadora a calentar</translation>
    </message>
    <message>
        <source>Water at 140 °F (60 °C)</source>
        <translation>Agua a 140 °F (60 °C)</translation>
    </message>
    <message>
        <source>Water at 180 °F (82 °C)</source>
        <translation>Agua a 180 °F (82 °C)</translation>
    </message>
    <message>
        <source>{}: the venue has no burner &quot;{}&quot;</source>
        <translation>{}: el lugar no tiene el quemador &quot;{}&quot;</translation>
    </message>
    <message>
        <source>Lower {} into the canner</source>
        <translation>Baje {} a la envasadora</translation>
    </message>
    <message>
        <source>Water back down to 140 °F (60 °C) before the jars go in</source>
        <translation>El agua de vuelta a 140 °F (60 °C) antes de meter los frascos</translation>
    </message>
    <message>
        <source>load {} is a raw pack and the water has boiled before it: let it fall to 140 °F (60 °C) before lowering{}</source>
        <translation>la carga {} es un envasado en crudo y el agua hirvió antes: deje que baje a 140 °F (60 °C) antes de bajarla{}</translation>
    </message>
    <message>
        <source>, or put the raw-pack dish first</source>
        <translation>, o ponga primero el plato en crudo</translation>
    </message>
    <message>
        <source>Steam and hot water: lift the lid away from you, use the jar lifter</source>
        <translation>Vapor y agua caliente: levante la tapa lejos de usted, use las pinzas para frascos</translation>
    </message>
    <message>
        <source>Process {} for {}</source>
        <translation>Procese {} por {}</translation>
    </message>
    <message>
        <source>{} {} out, upright</source>
        <translation>{} {}, derechos</translation>
    </message>
    <message>
        <source>On a towel, an inch apart, no draught; leave the bands alone</source>
        <translation>Sobre una toalla, a una pulgada, sin corriente de aire; no toque las bandas</translation>
    </message>
    <message>
        <source>Hot jars: jar lifter below the band, no tilting</source>
        <translation>Frascos calientes: pinzas bajo la banda, sin inclinar</translation>
    </message>
    <message>
        <source>{} load {}</source>
        <translation>{} carga {}</translation>
    </message>
    <message>
        <source>Sterilise {} in the canner</source>
        <translation>Esterilice {} en la envasadora</translation>
    </message>
    <message>
        <source>Upright, covered by 1 in of water, {} from the full boil</source>
        <translation>Derechos, cubiertos por 1 in de agua, {} desde el hervor pleno</translation>
    </message>
    <message>
        <source>Full rolling boil, then the whole time</source>
        <translation>Hervor pleno, y luego todo el tiempo</translation>
    </message>
    <message>
        <source>Gauge at zero and the lock down</source>
        <translation>Manómetro en cero y seguro abajo</translation>
    </message>
    <message>
        <source>Lock down</source>
        <translation>Seguro abajo</translation>
    </message>
    <message>
        <source>{}; a heavy older canner without a lock: {} min after heat off</source>
        <translation>{}; una envasadora pesada y antigua sin seguro: {} min después de apagar</translation>
    </message>
    <message>
        <source>Vent the canner for {}</source>
        <translation>Purgue la envasadora por {}</translation>
    </message>
    <message>
        <source>The steam must not stop; after the whole time {}</source>
        <translation>El vapor no debe parar; tras todo el tiempo, {}</translation>
    </message>
    <message>
        <source>Bring the canner to {} psi</source>
        <translation>Lleve la envasadora a {} psi</translation>
    </message>
    <message>
        <source>High heat; lower it a little as the pressure comes near</source>
        <translation>Fuego alto; bájelo un poco al acercarse la presión</translation>
    </message>
    <message>
        <source>Turn the heat off, let the pressure fall</source>
        <translation>Apague el fuego, deje bajar la presión</translation>
    </message>
    <message>
        <source>By itself: no water, no cold towel; weight and vent stay untouched</source>
        <translation>Por sí sola: sin agua, sin toalla fría; pesa y salida no se tocan</translation>
    </message>
    <message>
        <source>{} is not an amount such as 1 1/2 tsp: {}</source>
        <translation>{} no es una cantidad como 1 1/2 tsp: {}</translation>
    </message>
    <message>
        <source>it is more than {}</source>
        <translation>es más de {}</translation>
    </message>
    <message>
        <source>it is finer than 1/{}</source>
        <translation>es más fino que 1/{}</translation>
    </message>
    <message>
        <source>it cannot be below zero</source>
        <translation>no puede estar bajo cero</translation>
    </message>
    <message>
        <source>the range runs downward</source>
        <translation>el intervalo va hacia abajo</translation>
    </message>
    <message>
        <source>unknown unit {}</source>
        <translation>unidad desconocida {}</translation>
    </message>
    <message>
        <source>factor {}/{} is below 0</source>
        <translation>el factor {}/{} está bajo 0</translation>
    </message>
    <message>
        <source>{} times {}/{} is more than {}, or too fine to hold exactly</source>
        <translation>{} por {}/{} es más de {}, o demasiado fino para guardarlo exacto</translation>
    </message>
    <message>
        <source>{}/{} {} {}/{} needs more than the 63 bits of an exact fraction</source>
        <translation>{}/{} {} {}/{} necesita más de los 63 bits de una fracción exacta</translation>
    </message>
    <message>
        <source>a number has more than {} digits</source>
        <translation>un número tiene más de {} dígitos</translation>
    </message>
    <message>
        <source>a thousands comma stands after one to three digits that are not zero</source>
        <translation>una coma de millares va tras uno a tres dígitos que no son cero</translation>
    </message>
    <message>
        <source>a thousands comma stands before three digits</source>
        <translation>una coma de millares va antes de tres dígitos</translation>
    </message>
    <message>
        <source>a fraction lacks the number below its line</source>
        <translation>a una fracción le falta el número bajo su línea</translation>
    </message>
    <message>
        <source>a fraction has zero below its line</source>
        <translation>una fracción tiene cero bajo su línea</translation>
    </message>
    <message>
        <source>a fraction has {} below its line, more than {}</source>
        <translation>una fracción tiene {} bajo su línea, más de {}</translation>
    </message>
    <message>
        <source>the fraction after a whole number is not below one</source>
        <translation>la fracción tras un número entero no es menor que uno</translation>
    </message>
    <message>
        <source>no digit follows the decimal point</source>
        <translation>ningún dígito sigue al punto decimal</translation>
    </message>
    <message>
        <source>a number is missing</source>
        <translation>falta un número</translation>
    </message>
    <message>
        <source>{} is not {}: {}</source>
        <translation>{} no es {}: {}</translation>
    </message>
    <message>
        <source>{} is outside {}</source>
        <translation>{} queda fuera de {}</translation>
    </message>
    <message>
        <source>the unit is missing</source>
        <translation>falta la unidad</translation>
    </message>
    <message>
        <source>a length such as 4,200 ft</source>
        <translation>una longitud como 4,200 ft</translation>
    </message>
    <message>
        <source>-100 km to 100 km</source>
        <translation>-100 km a 100 km</translation>
    </message>
    <message>
        <source>a mass such as 5 lb</source>
        <translation>una masa como 5 lb</translation>
    </message>
    <message>
        <source>0 to 1,000 kg</source>
        <translation>0 a 1,000 kg</translation>
    </message>
    <message>
        <source>a volume such as 2 cups</source>
        <translation>un volumen como 2 cups</translation>
    </message>
    <message>
        <source>0 to 1,000 L</source>
        <translation>0 a 1,000 L</translation>
    </message>
    <message>
        <source>a temperature such as 180 °F</source>
        <translation>una temperatura como 180 °F</translation>
    </message>
    <message>
        <source>absolute zero to 1,000 °C</source>
        <translation>el cero absoluto a 1,000 °C</translation>
    </message>
    <message>
        <source>a pressure such as 101.3 kPa</source>
        <translation>una presión como 101.3 kPa</translation>
    </message>
    <message>
        <source>0 to 10 MPa</source>
        <translation>0 a 10 MPa</translation>
    </message>
    <message>
        <source>a power such as 15,000 Btu/h</source>
        <translation>una potencia como 15,000 Btu/h</translation>
    </message>
    <message>
        <source>0 to 100 kW</source>
        <translation>0 a 100 kW</translation>
    </message>
    <message>
        <source>a duration such as 1 h 30 min</source>
        <translation>una duración como 1 h 30 min</translation>
    </message>
    <message>
        <source>0 to 400 days</source>
        <translation>0 a 400 días</translation>
    </message>
    <message>
        <source>its parts cannot be added exactly</source>
        <translation>sus partes no se pueden sumar con exactitud</translation>
    </message>
    <message>
        <source>it does not come to whole seconds</source>
        <translation>no da segundos enteros</translation>
    </message>
    <message>
        <source>{}; tested as {}</source>
        <translation>{}; probada como {}</translation>
    </message>
    <message>
        <source>{} pack; tested as {} pack</source>
        <translation>envasado {}; probada con envasado {}</translation>
    </message>
    <message>
        <source>another headspace than that of the tested recipe</source>
        <translation>otro espacio libre que el de la receta probada</translation>
    </message>
    <message>
        <source>{}: larger than the tested {}</source>
        <translation>{}: más grande que el probado {}</translation>
    </message>
    <message>
        <source>the tested recipe has no ingredient {}</source>
        <translation>la receta probada no tiene el ingrediente {}</translation>
    </message>
    <message>
        <source>another role than in the tested recipe</source>
        <translation>otra función que en la receta probada</translation>
    </message>
    <message>
        <source>measured for the batch in one recipe and for each jar in the other</source>
        <translation>medido para la tanda en una receta y para cada frasco en la otra</translation>
    </message>
    <message>
        <source>only acids have tested stand-ins</source>
        <translation>solo los ácidos tienen sustitutos probados</translation>
    </message>
    <message>
        <source>not said to be dried; tested with a dried one</source>
        <translation>no se dice que esté seco; se probó con uno seco</translation>
    </message>
    <message>
        <source>{}; tested with {}</source>
        <translation>{}; probado con {}</translation>
    </message>
    <message>
        <source>of another kind than the tested one</source>
        <translation>de otra clase que el probado</translation>
    </message>
    <message>
        <source>{} cannot be compared with the tested {}</source>
        <translation>{} no se puede comparar con el probado {}</translation>
    </message>
    <message>
        <source>is not in the tested recipe</source>
        <translation>no está en la receta probada</translation>
    </message>
    <message>
        <source>adds acid to the tested recipe</source>
        <translation>añade ácido a la receta probada</translation>
    </message>
    <message>
        <source>{} is {} times the tested amount, {} only {} times</source>
        <translation>{} es {} veces la cantidad probada, {} solo {} veces</translation>
    </message>
    <message>
        <source>{} is {} times the tested amount, {} is {} times</source>
        <translation>{} es {} veces la cantidad probada, {} es {} veces</translation>
    </message>
    <message>
        <source>{} is {} times the tested amount for a jar</source>
        <translation>{} es {} veces la cantidad probada para un frasco</translation>
    </message>
    <message>
        <source>{} of {} {}</source>
        <translation>{} de {} {}</translation>
    </message>
    <message>
        <source>is no dried spice by its name</source>
        <translation>no es una especia seca por su nombre</translation>
    </message>
    <message>
        <source>is not measured with spoons</source>
        <translation>no se mide con cucharas</translation>
    </message>
    <message>
        <source>is more than 1 tbsp of spices of your own for each pint</source>
        <translation>es más de 1 tbsp de especias propias por cada pinta</translation>
    </message>
    <message>
        <source>{} is a dried spice of your own</source>
        <translation>{} es una especia seca propia</translation>
    </message>
    <message>
        <source>{} from amounts that were tested for {}</source>
        <translation>{} de cantidades que se probaron para {}</translation>
    </message>
    <message>
        <source>{}; tested {}</source>
        <translation>{}; probado {}</translation>
    </message>
    <message>
        <source>the strength of the vinegar is not said</source>
        <translation>no se dice la fuerza del vinagre</translation>
    </message>
    <message>
        <source>{:g} % acidity</source>
        <translation>{:g} % de acidez</translation>
    </message>
    <message>
        <source>{} does not say that it comes from a bottle</source>
        <translation>{} no dice que venga de una botella</translation>
    </message>
    <message>
        <source>fresh juice</source>
        <translation>jugo fresco</translation>
    </message>
    <message>
        <source>home-made vinegar</source>
        <translation>vinagre casero</translation>
    </message>
    <message>
        <source>the kind of acid is not said</source>
        <translation>no se dice la clase de ácido</translation>
    </message>
    <message>
        <source>{} is not a plain name for {}</source>
        <translation>{} no es un nombre claro para {}</translation>
    </message>
    <message>
        <source>{} for {}, which the tested recipe does not offer</source>
        <translation>{} por {}, lo que la receta probada no ofrece</translation>
    </message>
    <message>
        <source>{} is left out and so</source>
        <translation>se omite {} y por eso</translation>
    </message>
    <message>
        <source>our own rule, which only refuses</source>
        <translation>regla nuestra, que solo rechaza</translation>
    </message>
    <message>
        <source>a tested recipe may be made in any size of batch as long as every proportion stays</source>
        <translation>una receta probada puede hacerse en tandas de cualquier tamaño mientras se mantenga cada proporción</translation>
    </message>
    <message>
        <source>the proportions of vinegar, food and water are never altered</source>
        <translation>las proporciones de vinagre, alimento y agua nunca se cambian</translation>
    </message>
    <message>
        <source>no acid of a tested recipe may be reduced: each was tested with this much food</source>
        <translation>ningún ácido de una receta probada puede reducirse: cada uno se probó con esta cantidad de alimento</translation>
    </message>
    <message>
        <source>low-acid vegetables may be reduced, never increased</source>
        <translation>las verduras poco ácidas pueden reducirse, nunca aumentarse</translation>
    </message>
    <message>
        <source>another food has another acidity and lets heat through differently: the recipe is no longer tested</source>
        <translation>otro alimento tiene otra acidez y deja pasar el calor de otro modo: la receta deja de estar probada</translation>
    </message>
    <message>
        <source>oil was tested with its acid and its food, and is never added to</source>
        <translation>el aceite se probó con su ácido y su alimento, y nunca se añade más</translation>
    </message>
    <message>
        <source>lemon and lime juice come from a bottle, because its strength is constant</source>
        <translation>el jugo de limón y de lima viene de botella, porque su fuerza es constante</translation>
    </message>
    <message>
        <source>vinegar has 5 % acidity, cider or white, and is not home-made</source>
        <translation>el vinagre tiene 5 % de acidez, de manzana o blanco, y no es casero</translation>
    </message>
    <message>
        <source>bottled lemon or lime juice may stand in for vinegar, cup for cup, where the source says so</source>
        <translation>el jugo de limón o lima embotellado puede sustituir al vinagre, taza por taza, donde la fuente lo diga</translation>
    </message>
    <message>
        <source>vinegar may not stand in for lemon juice</source>
        <translation>el vinagre no puede sustituir al jugo de limón</translation>
    </message>
    <message>
        <source>citric acid may not stand in for juice or vinegar unless the recipe was tested with it</source>
        <translation>el ácido cítrico no puede sustituir al jugo ni al vinagre, salvo que la receta se haya probado con él</translation>
    </message>
    <message>
        <source>dried spices may vary</source>
        <translation>las especias secas pueden variar</translation>
    </message>
    <message>
        <source>fresh herbs and garlic may not be increased</source>
        <translation>las hierbas frescas y el ajo no pueden aumentarse</translation>
    </message>
    <message>
        <source>salt may be cut in vegetables, tomatoes and quick pickles, never in fermented food</source>
        <translation>la sal puede reducirse en verduras, tomates y encurtidos rápidos, nunca en alimentos fermentados</translation>
    </message>
    <message>
        <source>sugar may be cut in fruit, tomatoes and quick pickles; jam needs a tested recipe with less sugar</source>
        <translation>el azúcar puede reducirse en fruta, tomates y encurtidos rápidos; la mermelada necesita una receta probada con menos azúcar</translation>
    </message>
    <message>
        <source>jars stay within the sizes that were tested; smaller ones may be used</source>
        <translation>los frascos quedan dentro de los tamaños probados; pueden usarse más pequeños</translation>
    </message>
    <message>
        <source>headspace is as published for the product</source>
        <translation>el espacio libre es el publicado para el producto</translation>
    </message>
    <message>
        <source>the process time was tested for this product and this pack</source>
        <translation>el tiempo de procesamiento se probó para este producto y este envasado</translation>
    </message>
    <message>
        <source>the tested amounts fill no more jars than published, or each jar would hold less acid</source>
        <translation>las cantidades probadas no llenan más frascos que los publicados, o cada frasco tendría menos ácido</translation>
    </message>
    <message>
        <source>what cannot be compared with the tested recipe is not guessed</source>
        <translation>lo que no se puede comparar con la receta probada no se adivina</translation>
    </message>
    <message>
        <source>expected a percentage, as in &quot;5 %&quot;</source>
        <translation>se esperaba un porcentaje, como &quot;5 %&quot;</translation>
    </message>
    <message>
        <source>must be at most 100 %</source>
        <translation>debe ser como máximo 100 %</translation>
    </message>
    <message>
        <source>per_jar: false, yet per_jar_of names the jar</source>
        <translation>per_jar: falso, y sin embargo per_jar_of nombra el frasco</translation>
    </message>
    <message>
        <source>strength: only of kind &quot;vinegar&quot;</source>
        <translation>strength: solo con la clase &quot;vinegar&quot;</translation>
    </message>
    <message>
        <source>jars: {} is there already</source>
        <translation>jars: {} ya está</translation>
    </message>
    <message>
        <source>jars: at least one jar size is needed</source>
        <translation>jars: hace falta al menos un tamaño de frasco</translation>
    </message>
    <message>
        <source>yield: must be counted in jars, as in &quot;8 pints&quot;; {} is no jar size</source>
        <translation>yield: debe contarse en frascos, como &quot;8 pints&quot;; {} no es un tamaño de frasco</translation>
    </message>
    <message>
        <source>yield: must be 1 to {} jars</source>
        <translation>yield: debe ser de 1 a {} frascos</translation>
    </message>
    <message>
        <source>yield: {} is not among the recipe&apos;s jars</source>
        <translation>yield: {} no está entre los frascos de la receta</translation>
    </message>
    <message>
        <source>product: no published entry for {}, {} pack</source>
        <translation>product: no hay entrada publicada para {}, envasado {}</translation>
    </message>
    <message>
        <source>jars: no published entry for {} in a {}</source>
        <translation>jars: no hay entrada publicada para {} en un frasco {}</translation>
    </message>
    <message>
        <source>headspace: {} found; {} publishes {}</source>
        <translation>headspace: se encontró {}; {} publica {}</translation>
    </message>
    <message>
        <source>ingredients: no ingredient is called {}</source>
        <translation>ingredients: ningún ingrediente se llama {}</translation>
    </message>
    <message>
        <source>step: a recipe has at least one step</source>
        <translation>step: una receta tiene al menos un paso</translation>
    </message>
    <message>
        <source>steps: a stage replaces at least one step</source>
        <translation>steps: una etapa reemplaza al menos un paso</translation>
    </message>
    <message>
        <source>steps: no step is called {}</source>
        <translation>steps: ningún paso se llama {}</translation>
    </message>
    <message>
        <source>steps: {} is done for each load or jar, and cannot be done before class</source>
        <translation>steps: {} se hace para cada carga o frasco, y no puede hacerse antes de clase</translation>
    </message>
    <message>
        <source>steps: {} is already in stage {}</source>
        <translation>steps: {} ya está en la etapa {}</translation>
    </message>
    <message>
        <source>steps: {} comes after {}, which is in no stage</source>
        <translation>steps: {} va después de {}, que no está en ninguna etapa</translation>
    </message>
    <message>
        <source>after: no step is called {}</source>
        <translation>after: ningún paso se llama {}</translation>
    </message>
    <message>
        <source>before: no step is called {}</source>
        <translation>before: ningún paso se llama {}</translation>
    </message>
    <message>
        <source>before: {} does not come after {}</source>
        <translation>before: {} no va después de {}</translation>
    </message>
    <message>
        <source>vessel: {} stands on a {} in an earlier step, here on a {}</source>
        <translation>vessel: {} está en {} en un paso anterior, aquí en {}</translation>
    </message>
    <message>
        <source>after: steps in a circle: {}</source>
        <translation>after: pasos en círculo: {}</translation>
    </message>
    <message>
        <source>title: {} words; at most {} can be read from the counter</source>
        <translation>title: {} palabras; desde el mostrador se leen como máximo {}</translation>
    </message>
    <message>
        <source>gap_high: must not be shorter than gap_low</source>
        <translation>gap_high: no debe ser más corto que gap_low</translation>
    </message>
    <message>
        <source>takes: must not be longer than gap_low</source>
        <translation>takes: no debe ser más largo que gap_low</translation>
    </message>
    <message>
        <source>{}: only for hands &quot;ends&quot; or &quot;pulses&quot;</source>
        <translation>{}: solo con hands &quot;ends&quot; o &quot;pulses&quot;</translation>
    </message>
    <message>
        <source>hands: &quot;ends&quot; needs hands_at_start, hands_at_end or both</source>
        <translation>hands: &quot;ends&quot; necesita hands_at_start, hands_at_end o ambos</translation>
    </message>
    <message>
        <source>hands: {} s at the ends of a step that may take only {} s</source>
        <translation>hands: {} s en los extremos de un paso que puede durar solo {} s</translation>
    </message>
    <message>
        <source>pulse: only for hands &quot;pulses&quot;</source>
        <translation>pulse: solo con hands &quot;pulses&quot;</translation>
    </message>
    <message>
        <source>may_pause: only for hands &quot;throughout&quot;</source>
        <translation>may_pause: solo con hands &quot;throughout&quot;</translation>
    </message>
    <message>
        <source>vessel: needs the station that it stands on</source>
        <translation>vessel: necesita la estación sobre la que está</translation>
    </message>
    <message>
        <source>duration_scales: only for a step done once for the batch</source>
        <translation>duration_scales: solo para un paso que se hace una vez por tanda</translation>
    </message>
    <message>
        <source>id: &quot;lower&quot; is the lowering of the load into the canner</source>
        <translation>id: &quot;lower&quot; es la bajada de la carga a la envasadora</translation>
    </message>
    <message>
        <source>ends_by_sight: look_for must say what is to be seen</source>
        <translation>ends_by_sight: look_for debe decir qué hay que ver</translation>
    </message>
    <message>
        <source>step: no step is called {}</source>
        <translation>step: ningún paso se llama {}</translation>
    </message>
    <message>
        <source>{}.toml (built in)</source>
        <translation>{}.toml (incluida)</translation>
    </message>
    <message>
        <source>version_of: no tested recipe {} is built in, and {}: {}</source>
        <translation>version_of: la receta probada {} no viene incluida, y {}: {}</translation>
    </message>
    <message>
        <source>version_of: the tested recipe has a fault: {}</source>
        <translation>version_of: la receta probada tiene un fallo: {}</translation>
    </message>
    <message>
        <source>version_of: {} is not a tested recipe of the name {}</source>
        <translation>version_of: {} no es una receta probada de nombre {}</translation>
    </message>
    <message>
        <source>held against {}: </source>
        <translation>comparada con {}: </translation>
    </message>
    <message>
        <source>an altitude of {:.6g} m; the range is {} to {} m</source>
        <translation>una altitud de {:.6g} m; el intervalo es de {} a {} m</translation>
    </message>
    <message>
        <source>an air pressure of {:.6g} kPa; the range is {} to {} kPa</source>
        <translation>una presión de aire de {:.6g} kPa; el intervalo es de {} a {} kPa</translation>
    </message>
    <message>
        <source>the published tables have no entry {}</source>
        <translation>las tablas publicadas no tienen la entrada {}</translation>
    </message>
    <message>
        <source>{} names nobody</source>
        <translation>{} no nombra a nadie</translation>
    </message>
    <message>
        <source>expected a day, as in &quot;2026-08-01&quot;; {} found</source>
        <translation>se esperaba un día, como &quot;2026-08-01&quot;; se encontró {}</translation>
    </message>
    <message>
        <source>entry: {} is confirmed already</source>
        <translation>entry: {} ya está confirmada</translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a {}; known are {}</source>
        <translation>&quot;{}&quot; no es {}; se conocen {}</translation>
    </message>
    <message>
        <source>{} is kept for comparison only and never gives a time</source>
        <translation>{} se guarda solo para comparar y nunca da un tiempo</translation>
    </message>
    <message>
        <source>no published process for &quot;{}&quot;</source>
        <translation>no hay proceso publicado para &quot;{}&quot;</translation>
    </message>
    <message>
        <source>; near names: {}</source>
        <translation>; nombres parecidos: {}</translation>
    </message>
    <message>
        <source>{} has no tested time for {}; listed: {}</source>
        <translation>{} no tiene tiempo probado para {}; figuran: {}</translation>
    </message>
    <message>
        <source>{} pack by {}</source>
        <translation>envasado {} por {}</translation>
    </message>
    <message>
        <source>{} has no tested time for a jar as large as a {} jar; listed: {}</source>
        <translation>{} no tiene tiempo probado para un frasco tan grande como {}; figuran: {}</translation>
    </message>
    <message>
        <source>the figures of {} come from memory; they answer only when a named person has held them against {}</source>
        <translation>las cifras de {} vienen de memoria; responden solo cuando una persona con nombre las ha comparado con {}</translation>
    </message>
    <message>
        <source>no published figure above 10,000 ft; the altitude is {}</source>
        <translation>no hay cifra publicada por encima de 10,000 ft; la altitud es {}</translation>
    </message>
    <message>
        <source>the {} table of {} ends at {} ft; the altitude is {}</source>
        <translation>la tabla {} de {} termina en {} ft; la altitud es {}</translation>
    </message>
    <message>
        <source>{} is not allowed at {}</source>
        <translation>{} no está permitido a {}</translation>
    </message>
    <message>
        <source>a steam canner may run at most {} minutes; {} takes {} at {}</source>
        <translation>una envasadora de vapor puede funcionar como máximo {} minutos; {} lleva {} a {}</translation>
    </message>
    <message>
        <source>no time is listed for {} jars; this is the time for {} jars, a rule known only at second hand</source>
        <translation>no figura tiempo para frascos {}; este es el de los frascos {}, una regla conocida solo de segunda mano</translation>
    </message>
    <message>
        <source>figures from memory, confirmed by {}{}</source>
        <translation>cifras de memoria, confirmadas por {}{}</translation>
    </message>
    <message>
        <source>above 8,000 ft Utah State University Extension publishes {} minutes; use the longer time</source>
        <translation>por encima de 8,000 ft la Extensión de la Universidad Estatal de Utah publica {} minutos; use el tiempo más largo</translation>
    </message>
    <message>
        <source>above 8,000 ft some published tables end; the top band of this one has no upper edge</source>
        <translation>por encima de 8,000 ft terminan algunas tablas publicadas; la banda superior de esta no tiene borde superior</translation>
    </message>
    <message>
        <source>above {}</source>
        <translation>por encima de {}</translation>
    </message>
    <message>
        <source>any altitude</source>
        <translation>cualquier altitud</translation>
    </message>
    <message>
        <source>Brinebell is a timer, not an authority. It defers to the published tables of the USDA Complete Guide to Home Canning and the National Center for Home Food Preservation, to your local codes, to your county extension office, and to licensed practice. Hold every time and amount against the printed page before you teach from it. When in doubt about a jar, nobody tastes it: discard it as your extension office advises.</source>
        <translation>Brinebell es un reloj, no una autoridad. Se remite a las tablas publicadas de la USDA Complete Guide to Home Canning y del National Center for Home Food Preservation, a sus normas locales, a la oficina de extensión de su condado y al ejercicio profesional con licencia. Compare cada tiempo y cantidad con la página impresa antes de enseñar con ellos. Si hay duda sobre un frasco, nadie lo prueba: deséchelo como aconseje su oficina de extensión.</translation>
    </message>
    <message>
        <source>Follow the tested recipe and the published process time for your altitude, jar size and pack. Local codes, your extension office and licensed practice come before this sheet. If in doubt about a jar, do not taste it.</source>
        <translation>Siga la receta probada y el tiempo de procesamiento publicado para su altitud, tamaño de frasco y envasado. Las normas locales, la oficina de extensión y el ejercicio profesional con licencia van antes que esta hoja. Si duda de un frasco, no lo pruebe.</translation>
    </message>
    <message>
        <source>water has no boiling point at {:.6g} Pa; the range is {:.6g} to {:.6g} Pa</source>
        <translation>el agua no tiene punto de ebullición a {:.6g} Pa; el intervalo es de {:.6g} a {:.6g} Pa</translation>
    </message>
    <message>
        <source>event {} ({}) does not fit what came before it</source>
        <translation>el suceso {} ({}) no encaja con lo anterior</translation>
    </message>
    <message>
        <source>and {} more</source>
        <translation>y {} más</translation>
    </message>
    <message>
        <source>safety points left unsaid</source>
        <translation>puntos de seguridad sin decir</translation>
    </message>
    <message>
        <source>not said to be off</source>
        <translation>sin constar como apagado</translation>
    </message>
    <message>
        <source>closed with {}</source>
        <translation>cerrada con {}</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>sin motivo dado</translation>
    </message>
    <message>
        <source>first &quot;{}&quot; must be done</source>
        <translation>antes debe hacerse &quot;{}&quot;</translation>
    </message>
    <message>
        <source>no station is free for {}</source>
        <translation>ninguna estación está libre para {}</translation>
    </message>
    <message>
        <source>the venting is not over: {} to go</source>
        <translation>la purga no ha terminado: faltan {}</translation>
    </message>
    <message>
        <source>nobody watched the steam for {}: confirm that it held, or vent again</source>
        <translation>nadie vigiló el vapor durante {}: confirme que se mantuvo o purgue otra vez</translation>
    </message>
    <message>
        <source>the count starts at {} psi, not below</source>
        <translation>la cuenta empieza con {} psi, no con menos</translation>
    </message>
    <message>
        <source>the pressure was lost just now; the steam is lost only if said again in {}</source>
        <translation>la presión se acaba de perder; el vapor se da por perdido solo si se repite en {}</translation>
    </message>
    <message>
        <source>the process time is not over: {} to go</source>
        <translation>el tiempo de procesamiento no ha terminado: faltan {}</translation>
    </message>
    <message>
        <source>nobody watched the boil for {}: confirm that it held, or start again</source>
        <translation>nadie vigiló el hervor durante {}: confirme que se mantuvo o empiece otra vez</translation>
    </message>
    <message>
        <source>jars rest five minutes after the heat is off: {} to go</source>
        <translation>los frascos reposan cinco minutos tras apagar el fuego: faltan {}</translation>
    </message>
    <message>
        <source>the lid stays on for ten minutes after the pressure is gone: {} to go</source>
        <translation>la tapa se queda puesta diez minutos después de irse la presión: faltan {}</translation>
    </message>
    <message>
        <source>jars cool 12 to 24 hours before their seals are checked: {} to go</source>
        <translation>los frascos se enfrían de 12 a 24 horas antes de revisar sus sellos: faltan {}</translation>
    </message>
    <message>
        <source>{} is not taken back</source>
        <translation>{} no se deshace</translation>
    </message>
    <message>
        <source>the newest press stays as it is: {}</source>
        <translation>la última pulsación queda como está: {}</translation>
    </message>
    <message>
        <source>load {} is not cooling yet; finish it or set it aside</source>
        <translation>la carga {} aún no se enfría; termínela o apártela</translation>
    </message>
    <message>
        <source>the reading is outside {} to {}</source>
        <translation>la lectura queda fuera de {} a {}</translation>
    </message>
    <message>
        <source>nothing is known to be on at {}</source>
        <translation>no consta que nada esté encendido en {}</translation>
    </message>
    <message>
        <source>nobody has said that {} is off</source>
        <translation>nadie ha dicho que {} esté apagado</translation>
    </message>
    <message>
        <source>&quot;{}&quot; has waited {} too long: {}</source>
        <translation>&quot;{}&quot; ha esperado {} de más: {}</translation>
    </message>
    <message>
        <source>the {} of load {} is 15 minutes late</source>
        <translation>{} de la carga {} tarda 15 minutos más</translation>
    </message>
    <message>
        <source>the {} of load {} is lost</source>
        <translation>{} de la carga {} se perdió</translation>
    </message>
    <message>
        <source>a jar broke in load {}</source>
        <translation>se rompió un frasco en la carga {}</translation>
    </message>
    <message>
        <source>the burner under load {} failed</source>
        <translation>falló el quemador bajo la carga {}</translation>
    </message>
    <message>
        <source>the canner&apos;s lid is stuck over load {}</source>
        <translation>la tapa de la envasadora está atascada sobre la carga {}</translation>
    </message>
    <message>
        <source>the rehearsal came to a stand: nothing leads on to the end of the class</source>
        <translation>el ensayo se atascó: nada lleva al final de la clase</translation>
    </message>
    <message>
        <source>cannot keep the old file</source>
        <translation>no se puede conservar el archivo anterior</translation>
    </message>
    <message>
        <source>this is a link to another place, which is not written to</source>
        <translation>esto es un enlace a otro lugar, en el que no se escribe</translation>
    </message>
    <message>
        <source>{} lies outside the folder above {}</source>
        <translation>{} está fuera de la carpeta superior a {}</translation>
    </message>
    <message>
        <source>drill: {}</source>
        <translation>simulacro: {}</translation>
    </message>
    <message>
        <source>the class asks</source>
        <translation>la clase pregunta</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>la presión</translation>
    </message>
    <message>
        <source>boil</source>
        <translation>el hervor</translation>
    </message>
    <message>
        <source>steam</source>
        <translation>el vapor</translation>
    </message>
    <message>
        <source>the power is cut for 3 minutes</source>
        <translation>la luz se corta 3 minutos</translation>
    </message>
    <message>
        <source>{} at {}</source>
        <translation>{} a las {}</translation>
    </message>
    <message>
        <source>{} up to {}; {}</source>
        <translation>{} hasta {}; {}</translation>
    </message>
    <message>
        <source>{}, by {}</source>
        <translation>{}, por {}</translation>
    </message>
    <message>
        <source>{} ({:.0f} to {:.0f} %)</source>
        <translation>{} ({:.0f} a {:.0f} %)</translation>
    </message>
    <message>
        <source>{} to {}</source>
        <translation>{} a {}</translation>
    </message>
    <message>
        <source>SEALS CHECKED LATE</source>
        <translation>SELLOS REVISADOS TARDE</translation>
    </message>
    <message>
        <source>{} after cooling began; 24 h is the latest at which an unsealed jar can be saved</source>
        <translation>{} después de empezar a enfriarse; 24 h es lo más tarde en que un frasco sin sellar puede salvarse</translation>
    </message>
    <message>
        <source>where jars went,</source>
        <translation>destino de los frascos,</translation>
    </message>
    <message>
        <source>a figure for the report,</source>
        <translation>un dato para el informe,</translation>
    </message>
    <message>
        <source>refrigerated</source>
        <translation>refrigerados</translation>
    </message>
    <message>
        <source>frozen</source>
        <translation>congelados</translation>
    </message>
    <message>
        <source>processed again within 24 hours, for the full time, with new lids</source>
        <translation>procesados otra vez dentro de 24 horas, por el tiempo completo, con tapas nuevas</translation>
    </message>
    <message>
        <source>discarded</source>
        <translation>desechados</translation>
    </message>
    <message>
        <source>kept to be shown</source>
        <translation>guardados para mostrar</translation>
    </message>
    <message>
        <source>eaten</source>
        <translation>consumidos</translation>
    </message>
    <message>
        <source>taken home</source>
        <translation>llevados a casa</translation>
    </message>
    <message>
        <source>taken home before the seals were tested; told how to test them</source>
        <translation>llevados a casa antes de probar los sellos; se explicó cómo probarlos</translation>
    </message>
    <message>
        <source>boiling-water</source>
        <translation>agua hirviendo</translation>
    </message>
    <message>
        <source>atmospheric-steam</source>
        <translation>vapor atmosférico</translation>
    </message>
    <message>
        <source>pressure-dial</source>
        <translation>presión (manómetro de aguja)</translation>
    </message>
    <message>
        <source>pressure-weighted</source>
        <translation>presión (pesa)</translation>
    </message>
    <message>
        <source>hot</source>
        <translation>caliente</translation>
    </message>
    <message>
        <source>raw</source>
        <translation>crudo</translation>
    </message>
    <message>
        <source>quarter-pint</source>
        <translation>cuarto de pinta</translation>
    </message>
    <message>
        <source>half-pint</source>
        <translation>media pinta</translation>
    </message>
    <message>
        <source>12-ounce</source>
        <translation>12 onzas</translation>
    </message>
    <message>
        <source>pint</source>
        <translation>pinta</translation>
    </message>
    <message>
        <source>1-1/2-pint</source>
        <translation>pinta y media</translation>
    </message>
    <message>
        <source>quart</source>
        <translation>cuarto de galón</translation>
    </message>
    <message>
        <source>half-gallon</source>
        <translation>medio galón</translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Timer and step guide for people who teach home canning.</source>
        <translation>Reloj y guía de pasos para quienes enseñan a envasar en casa.</translation>
    </message>
    <message>
        <source>A class file to open.</source>
        <translation>Un archivo de clase que abrir.</translation>
    </message>
    <message>
        <source>The logbook to use.</source>
        <translation>La bitácora que usar.</translation>
    </message>
    <message>
        <source>Rehearse the class at once, at 1 to 60 times the speed.</source>
        <translation>Ensayar la clase enseguida, de 1 a 60 veces más rápido.</translation>
    </message>
    <message>
        <source>--rehearse: a whole number from 1 to 60</source>
        <translation>--rehearse: un número entero de 1 a 60</translation>
    </message>
</context>
</TS>
