<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="es">
<context>
    <name>AudienceWords</name>
    <message>
        <source>The time counts only from a full rolling boil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time counts only from a full rolling boil: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time counts only from a full column of steam.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before any pressure builds, steam must drive the air out for ten minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the boil stops, the whole time starts again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the steam stops, the whole time starts again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If the pressure falls below the table&apos;s, the whole time starts again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steam drives the air out for ten full minutes before the vent is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time counts only once the weight jiggles or rocks as its maker says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time counts only once the gauge shows the pressure of the table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure falls by itself: nothing cools the canner, nothing opens it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pressure left: ten more minutes before the lid is opened, away from the face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat off, lid off: the jars rest five minutes before they are lifted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the bands alone: jars cool 12 to 24 hours before the seals are checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, to %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BoardWords</name>
    <message>
        <source>Until: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of %2 jars done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Also under way: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>My hands now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch for the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its time is over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next press starts the clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heat off, touch nothing else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heat off, take the canner lid off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 has had its whole process time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions. Then back to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See that it is off: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the lid away from the face, then lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Straight up, an inch apart, bands alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heat counts for nothing before this is confirmed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Did it hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold = yes: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If nobody can say so: L, lost, counts again from the full time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moment to say: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing wants your hands. The board will call.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until it is seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over by %1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>look %1 at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>watch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ for %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ NOT for %1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keep going until: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait and talk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch for the rolling boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Watch for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let the jars rest for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every load
is in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. What would help:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class ends in its slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing has to be changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would help has not been worked out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: class ends %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing left to change saves time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must be said: %1 open, %2 said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ All of it is said.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChoiceWords</name>
    <message>
        <source>Steam lost on %1: count again from the full time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boil lost on %1: count again from the full time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure lost on %1: count again from the full time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steam lost on %1: vent again for the full time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swapped (what for what): %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a question off for later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answered: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set %1 aside: these jars are not processed here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the class now: the room is free</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>KeyWords</name>
    <message>
        <source>Seen (hold)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where was I</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step in full</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audience</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light/dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Paper</name>
    <message>
        <source>%1  ·  page %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RecallWords</name>
    <message>
        <source>%1 ago — %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 — for %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short press: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held press: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait; the board will call.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ScreenWords</name>
    <message>
        <source>%1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This screen: %1 inches, measured by hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This screen: %1 inches, as it says itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This screen does not say how large it is; taken for %1 inches. Measure it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ The board&apos;s large lines stand at %1 minutes of arc from %2, and %3 are wanted. Put the screen at %4, or use a larger one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ Countdowns of %1 stations side by side are smaller than wanted from %2: this screen has room for %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The board&apos;s large lines can be read from %1.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SpeechWords</name>
    <message>
        <source>no voice is installed on this machine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this program was built without speech</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TimeWords</name>
    <message>
        <source>%1 h %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 h %2 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min behind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min ahead</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>%1 to %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steady steam seen on %1 — vent %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The vent is closed — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 psi seen on %2 — %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pressure left in %1 — ten minutes more before the lid opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat is off, the pressure falls by itself — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat is off, lid is off — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>full column of steam seen on %1 — %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rolling boil seen on %1 — %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the steam on %1 held through the %2 nobody watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pressure on %1 held through the %2 nobody watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the boil on %1 held through the %2 nobody watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This canner is not of the kind that does so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First confirm the water in the canner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No canner is being vented there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The venting is not over: %1 to go, until %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the venting were not watched. Confirm that the steam held, or vent again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No canner is coming to pressure there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The count starts at %1 psi, not below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pressure is falling there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lid stays on for ten minutes after the pressure is gone: %1 to go, until %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars cool 12 to 24 hours before their seals are checked: %1 to go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pressure was lost just now and the venting still holds; steam lost as well can be said in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: confirm the water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: venting ends within a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: venting complete. Close the vent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: process time complete. Heat off, nothing else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: process time complete. Heat off, lid off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: the wait is over. Open the lid, lift the jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: rest is over. Lift the jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 were not watched. Did it hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 of the boil were not watched. Did it hold?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: look for the steam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: look for the rolling boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars being filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heating to the boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heating to steam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>venting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coming to pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at a rolling boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at pressure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in full steam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>losing its pressure, heat off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waiting, lid on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>resting, heat off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>being lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cooling, untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seals checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 in 10 by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; %2 in the slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest heat-on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest in: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>■ PAST by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>▲ SOON: in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a second pair of hands saves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a third pair of hands saves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one more pair of hands saves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closing before the last load is lifted (%2 stays) saves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaving out one talking point saves %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaving out %1 talking points saves %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, and nothing left to change saves time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan has a fault (%1): advice goes by the plain order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice has a fault (%1): what is shown is older</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Searching for the shortest sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Searching: best so far %1, at least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sheet was found that keeps every limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search was stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the slot: %1
Half of %2 runs end by %3
8 in 10 end by %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 TOO LATE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %2  ·  %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1  %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◆ critical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing tried so far makes this class fit its slot. The nearest to it is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that can be made ahead makes this class fit its slot. The nearest to it is shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class fits its slot with nothing made ahead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class fits its slot with nothing made ahead and some talk left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make one stage ahead and the class fits its slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make %1 stages ahead and the class fits its slot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; nothing smaller does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 in 10 classes end by %1 with nothing made ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, and by %1 with what is marked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; the room must be empty at %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load %1 in %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 quarter-pint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 quarter-pints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 half-pint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 half-pints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 twelve-ounce jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 twelve-ounce jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 pint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pints</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 pint-and-a-half</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pint-and-a-halfs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 quart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 quarts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 half-gallon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 half-gallons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done once — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looked — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Said — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lift the jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lift %1 of %2, rested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 — done; start: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to work — questions so far: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen to be off — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the class — the room is free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the session — the kitchen is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class has not started yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class has started already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This session is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such step in this class.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such load in this class.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is running already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is not running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is done already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step cannot be left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing there needs a look now and then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No load is being brought to the boil there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No process time is being counted there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The boil was watched all the time; there is nothing to confirm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals are checked once the jars have been lifted and cooled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sealed, unsealed and broken jars do not add up to the jars of the load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such talking point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That point has been said.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is nothing to take back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points that must be said are still open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few words are needed here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That text is too long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The canner moves on by what is seen: boil, steam or pressure seen or lost, heat off, jars lifted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class is asking already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is asking just now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading needs a unit: °C, °F, pH, psi or kPa.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This step is not done jar by jar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All jars of this step are counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That question is not open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no such station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The newest press stays as it is: %1. Nothing older is taken back past it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost steam is not taken back: the canner vents again for the full time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lost pressure is not taken back: the count starts again from the full time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A load that was set aside is not taken back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lost boil is not taken back: the count starts again from the full time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back — %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not before this has ended: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place is free for it: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No place is free for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The process time is not over: %1 to go, until %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of this boil were not watched. Confirm that it held, or count again from the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The jars rest first: %1 to go, until %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken: a reading lies between %1 and %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is known to be on: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody has said yet that it is off: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 waited %2 too long. First: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A load is still open: it is neither lifted nor set aside.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>LOOK</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SOON</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>DUE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>TIME UP</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ANSWER</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A look is wanted: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A look is overdue: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is up: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for its end: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: process time ends within a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: rest ends within a minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot wait much longer: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has waited too long: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class ends soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class should end now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looked after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steam seen, venting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steam lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vent closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure reached</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pressure left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rolling boil seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boil lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>boil vouched for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat off, rest begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>questions began</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back from questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>question put off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>question answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swapped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jar done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seen to be off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>session closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 after %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2 — %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2, %3 of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taken back: press no. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pedal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mouse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>terminal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after what comes before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hand was free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hand was free: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits for a place: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits for a place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not earlier, so that it need not wait for: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not earlier, so that it need not wait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looks at a tray come first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is under way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands throughout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands at the end</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell</name>
    <message>
        <source>REHEARSAL – not for a jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canned %1  ·  lot %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeps: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergens: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seal: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refrigerate after opening. Made at %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a sheet has 1 to 500 labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a label is at least 15 mm wide and 10 mm high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the labels would overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the labels need %1 x %2 mm and the page has %3 x %4 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helper %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(every %1 to %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 pack, %3: %4 at %5. Table: %6. Source: %7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For %1 jars (%2). Source: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Processing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Storage: %1. Shelf life: %2. Refrigerate after opening.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2. Class ends %3, kitchen ends %4. Stays to the end: %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody named</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To take home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class report: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>REHEARSAL: no class was held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class, hours planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class, hours taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen, hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>People attending</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2 jars (%3)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must-say points said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT said</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::AltitudePage</name>
    <message>
        <source>Why this altitude needs more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No time is reckoned from this. Published times come from tests of whole jars, in which heat creeps to the middle and acid does a part; they grow by less than the picture says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 °C (%2 °F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Here, at %1, water boils at %2; at sea level at %3. It gets no hotter, however high the flame. For hardy spores the rule is: %4 °C cooler takes ten times as long. A minute of boiling here does the work of %5 at sea level, and it takes %6 to match one there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This class has no jars in a canner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this class uses:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::AltitudePlot</name>
    <message>
        <source>What matches one minute of boiling at sea level, by altitude; the text says it in words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%L1 ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Illustration: to match 1 min at sea level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>here: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::AudienceWindow</name>
    <message>
        <source>Brinebell — for the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audience screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audience screen: a window, because there is no second display. A closes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Audience screen: fills %1. A closes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The display %1 is gone: the audience screen is a window behind the board.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::AwakeKeeper</name>
    <message>
        <source>The screen may sleep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The laptop may fall asleep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ChoicePanel</name>
    <message>
        <source>A question over the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A digit chooses. Esc goes back and changes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words for the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few words for the record:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes, do it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few words for the record; without any it says that no reason was given:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ClockLine</name>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>class end
(%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen ends %1 (%2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class end: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ClosingPanel</name>
    <message>
        <source>Not said: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open (%2): set it aside?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May still be on: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Question put off: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is open before the close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line %1 of what is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold C 1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open before the close: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>… and %1 more. A digit settles a line, Esc goes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A digit settles a line, Esc goes back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 all the same; the log keeps what is open</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::CuePlayer</name>
    <message>
        <source>the sound output is being looked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the program %1 cannot be started, so cues are only shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the chosen sound output is not there, so the default one is used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no sound output was found, so cues are only shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sound output did not take the last cue, so cues may only be shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sound service does not answer, so cues are only shown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::CueRhythm</name>
    <message numerus="yes">
        <source>%n pulse(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>brinebell::KnownOutline</name>
    <message>
        <source>Outline to lay the card or the ruler against</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::MainWindow</name>
    <message>
        <source>Brinebell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The audience screen is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logbook cannot be used, so nothing is kept: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A canning class is being taught</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the board?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class is still running. Clocks and cues stop while you are away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A rehearsal that is left is not taken up again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The session can be taken up again when the program is next started.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stay on the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::MakeAheadPanel</name>
    <message>
        <source>Stop tr&amp;ying</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes before class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the class file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stages that can be made ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trying what could be made ahead: %1 of %2 sets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trying what could be made ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stopped after %1 sets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>◆ yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no need</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made in class</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::MeasureDialog</name>
    <message>
        <source>A &amp;bank card or driving licence (85.60 mm wide)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A &amp;ruler: from 0 to 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measure this screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it flat on the screen, its left edge on the left line. Then make the drawing as wide as it is: left and right arrow for a hair, page keys for more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Much n&amp;arrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Narrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Much wider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It &amp;fits: keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pixels are a millimetre here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::NextPanel</name>
    <message>
        <source>▶ Then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::PauseBanner</name>
    <message>
        <source>QUESTIONS: hands stop, pots run on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Q or Space: back to work. P: put one off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Q or Space: back to work. P: %1 put off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions for %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::PreparePage</name>
    <message>
        <source>Classes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a class file…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the file &amp;again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why this altitude needs more…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Past sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound chec&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to know about this class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Start live class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rehearse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed of the rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speeds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in real time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 times as fast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make ahead…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a class file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class files (*.toml)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing stands against this run sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No class chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a class at the left, or open a class file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This class cannot be read yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend what is named below in any text editor, then press “Read the file again”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one helper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 helpers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 before the room must be empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 AFTER the room must be empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class ends %1, %2. Kitchen ends %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 stays until then.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ProspectPanel</name>
    <message>
        <source>S&amp;top the search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The end of the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If slow, the class ends later by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and %1 more below, under Latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that is slow alone</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ReadingPanel</name>
    <message>
        <source>The class as a whole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A reading for the log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rub out the last digit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Log it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Digits, Enter: log. Up, Down: unit. Tab: where. Esc: back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in the number first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::RecallPanel</name>
    <message>
        <source>Done last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed. Any key goes back to the board.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::RehearsalBar</name>
    <message>
        <source>The boil is 15 minutes late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The boil is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A jar breaks in the canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The burner under the canner fails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The canner&apos;s lid is stuck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The class asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power is cut for 3 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faster</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forward to the next event</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go wrong…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock stopped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>real time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 times as fast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start the clock</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::RemedyPanel</name>
    <message>
        <source>Nothing was changed. Any key goes back to the board.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ResumePage</name>
    <message>
        <source>A class is not finished</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take it up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Not now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“%1” in %2 was started on %3 and has no end in the logbook. All that was pressed is kept. Taken up again, the board asks about every boil that nobody watched in between.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ReviewModel</name>
    <message>
        <source>%1 (boil lost once)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (boil lost %2 times)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, not ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min longer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 min shorter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Took</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned (outline) and as it went (filled)</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ReviewPage</name>
    <message>
        <source>Past sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned and as it went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Label text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned and as it &amp;went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Batch record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Prepare a class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as &amp;CSV…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as &amp;JSON…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as JSON</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session is in the logbook yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not ended</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class ended after %1 (planned %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kitchen after %1 (planned %2)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>points said: %1, open: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>presses taken back: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::RunSheetModel</name>
    <message>
        <source>teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>helper %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Latest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why then</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::ScreenPanel</name>
    <message>
        <source>Measure this s&amp;creen…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light board and audience screen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::SessionListModel</name>
    <message>
        <source>rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>live</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kitchen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::SheetChart</name>
    <message>
        <source>Run sheet at a glance; the table says the same in words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Helper %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ends ┃  room ┇  critical ▂</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::SoundControl</name>
    <message>
        <source>sound is not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>speech is not used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chosen sound output is not there: cues come from the default one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sound device: the screen shows every cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sound (%1): the screen shows every cue</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::SoundPage</name>
    <message>
        <source>Tick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Due</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at what is on: turn the tray, stir the pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something falls due within a minute.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands are wanted now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A count is over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer before anything else: nobody watched the canner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every %1 s until answered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play each cue from where you will stand, with the hood and a pot running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is used again as soon as it is back. Or choose another output below.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plug in or switch on a loudspeaker; it is found within a few seconds. A class can be held without sound: the screen shows every cue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look whether the output is muted, asleep or used by another program, then play a cue again. The screen shows every cue.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its pulses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it means</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;%1   %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Play the cue “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound outputs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look a&amp;gain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quiet, for filming: cues are only shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Say in words, after the tone, what a cue is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These settings cannot be saved and hold until the program is closed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop is lowered to a quarter and still sounds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back to the board  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back to the class  (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sound is ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not in quiet mode.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>names are not spoken: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The default output</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The default output: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (not there now)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only shown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1. Stop never falls below %2: somebody may be hurt.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::StagePage</name>
    <message>
        <source>Live board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cues that stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Faults that stand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold Space 1 s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drill holds it back until %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearsal, %1 times as fast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any key goes back to the board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The question above comes first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to answer now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not saved, %1 waiting: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken: too close behind the press before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken: what a press does had just changed. Read it, then press.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for a short press.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken: keep it down for one second.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing waits for a held press.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken: the question above comes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which load lost its boil, steam or pressure?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under which load is the heat off?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note for the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions put off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What else?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is seen?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No point with that number is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill: held back until %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in hand has a jar left to count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is ahead that comes by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What goes wrong?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That drill does not fit just now.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>brinebell::StepPanel</name>
    <message>
        <source>Amounts for this batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How, and until when</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Must be said next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swaps, by the tested recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed. Any key goes back to the board.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recipe names none for what is in hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing beyond the usual</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>core</name>
    <message>
        <source>{} is not a date and time such as 2026-09-12T17:30:00-06:00</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is outside the years 1970 to 9999</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an array</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>true or false</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a date or time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not valid TOML: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} characters; at most {} are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} with a control character other than line feed and tab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nested deeper than {} levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an array of {} elements; at most {} are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: expected {}, found {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: must be {}, found {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: must not be empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: must be {} to {}, found {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an array of texts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an array of whole numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an array of tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file has {} bytes; at most {} are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown key &quot;{}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be {} to {}, found {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low, likely and high must not fall, found {}, {}, {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an id is lower-case letters, digits and single hyphens, at most {} characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: {} is there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: {} found; at most {} are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot write</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot flush the folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot keep the file&apos;s rights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot flush to the disk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot replace the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not a plain file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is larger than {} bytes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot create a file beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is not valid UTF-8 here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>characters other than plain letters, digits and signs belong in quotes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a name with more than {} dots; at most {} levels are read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} at {:.0f} W does not bring {} to {:.0f} °C within {}; it takes at least {:.0f} W</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} has neither heating times nor water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} has no heat and power to work heating times out from; write both there, or heat_to_preheat and heat_to_boil at the canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} holds fewer than {} quarts; times were not tested in so small a pressure canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be {} m to {} m, found {:.1f} m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be {} °C to {} °C, found {:.1f} °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be {} L to {} L, found {:.1f} L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>altitude_from: there is no altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind: a canner is written as [[canner]]</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jar: {} is there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>capacity: at least one jar size is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>burner: no station is called {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>burner: {} is a {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: there is no water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>confirmed_by: say which entry was confirmed, in a table [[confirmed]] with entry, by and on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} (as planned)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by a key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by a held key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the pedal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the mouse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on taking the session up again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the console</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the start of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the start of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the passing over of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the water confirmed,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steam seen,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steam lost,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the vent closed,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure reached,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure lost,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pressure gone,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a boil seen,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a boil lost,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time nobody watched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a boil vouched for,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat off,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the setting aside of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a seal check,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a point said:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a note:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>questions,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end of questions,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a reading,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a question put off:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a question answered,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a swap in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a jar counted in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the heat seen off,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an undoing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end of the class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the closing of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Batch record: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>REHEARSAL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing was canned; times and counts are for practice only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teacher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Helpers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} planned (names {})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boil watcher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stays to the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>UTC, counted from the start of the session by the machine&apos;s own clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not closed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source and edition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NOT held against a tested recipe: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ingredients planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Produce, its origin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind and amount as planned above; strength as bought {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lids</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Headspace as filled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH, if taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shelf life</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Storage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load {} of {}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none: not canned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Method, pack, jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, {} pack, {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lowered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not lowered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not confirmed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Venting required</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steam seen at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, entered {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vent closed at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, after {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>STEAM LOST at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, after {}; the full {} start again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge pressure required</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} psi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boil seen at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BOIL LOST at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full steam seen at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure reached at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PRESSURE LOST at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Process time required</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table row and band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held against the page by {} on {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} psi, </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, {}entered {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count complete at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not completed: set aside before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not completed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not completed; due at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unwatched time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody vouched for the boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vouched for, name not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vouched for by {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not turned off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Process time kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pressure gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not seen to be gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SET ASIDE at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SEAL CHECK DUE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {} to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before the jars had cooled 12 h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals counted before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, by {}: {} sealed, {} unsealed, {} broken; corrected since{}{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SEALS CHECKED EARLY</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals checked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} planned: {} sealed, {} unsealed, {} broken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsealed jars went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none were unsealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not counted yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Disposition</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> load {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swapped in{}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>read {}{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skipped{}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken back: {}{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Departures and notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Departures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Review</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reviewed by, date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Initials</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its kind {}, boot identity {} or cause {} is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its activity {} is not in the session&apos;s network</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its load {} is not one of the session&apos;s {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its moment or its value is out of range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a count of jars is below zero or too large</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>session {}, event {}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>session {}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} has no &quot;{}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; of {} is of the wrong kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; of {} is not a moment: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; of {} is out of range: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is not known: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>event {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kind of event {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the cause of event {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the boot identity of event {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the activity of event {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the load of event {} is not one of the session&apos;s {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;boot_ms&quot; of event {} is out of range: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;value&quot; of event {} is out of range: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the network is not sound: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the id of the session is not one of ours: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is longer than {} MiB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the document is too long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it nests deeper than {} levels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not a whole JSON document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not a session: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the altitude {} cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {} of {}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {}: its {} of {} are not those of the published table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the session never started</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its start is more than a day from the day it is filed under</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>event {} is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the class is not closed yet; close it where it runs, then bring it here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checked {}, {} of {} sealed; this label is for sealed jars only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check by {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the seals were checked and no jar had sealed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>set aside: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this load has not been processed and lifted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} (from the day canned)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not for a jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>NO LABEL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>for {} jar{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Canned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Once open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>refrigerate after opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>event {} cannot follow event {} of session {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>event {} names activity {}, and there are {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook was opened for reading only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no session begins with {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>more than one session begins with {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>session {} is here already and tells something else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the folder&apos;s rights cannot be set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook cannot be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook cannot be opened: this is not a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook&apos;s rights cannot be set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook has version {} of its layout and must first be opened for writing, which brings it to version {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file cannot be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file&apos;s rights cannot be set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lock file cannot be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a live session is already running in this logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook cannot be locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook may be read but not written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the disk does not carry a write-ahead log</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program is writing to the logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another program has written to this session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not a logbook</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook is damaged</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the logbook cannot be read or written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack in, half full of water, highest heat, lid on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars upright, water {} over the lids, lid on, highest heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water {} over the lids, lid on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the canner to a full rolling boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full rolling boil all over, lid on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lid on; the boil must not stop; jars stay covered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heat off, take the lid off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait five minutes before lifting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack in, water in the base as its maker says, highest heat, lid on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot jars upright on the rack, with little time to cool, lid on, highest heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base filled with water as its maker says, lid on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the canner to a full column of steam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unbroken column of steam, 8 in or longer, at {:.0f} °F ({:.0f} °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The steam must not stop; the lid is not opened for any reason</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rack in, 2 to 3 in of hot water, highest heat, lid not locked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Jars upright on the rack, 2 to 3 in of water, lid locked, vent open, highest heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 to 3 in of water in the bottom, lid locked, vent open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the canner to a steady column of steam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steam leaves the vent in a strong, steady funnel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge at {} psi or a little over, never below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {} psi weight keeps rocking as its maker says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the petcock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the weight off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wait ten minutes, then open the lid away from the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the lid, lift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shut the petcock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put the {} psi weight on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge at {} psi or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {} psi weight jiggles or rocks as its maker says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>under 1 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over 99 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected one number without a unit, as in &quot;1/2&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be above 0 and at most 10 batches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} must be relative to the class file, with &quot;/&quot; between folders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} leaves the folder above the class file&apos;s own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>venue: {} has no altitude, and without it no process time is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slot: opening and closing leave no time in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made_ahead: {} has no stage {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made_ahead: {} is there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>made_ahead: step {} comes after {}, which is not made ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jar: {} is tested up to {} jars, not for a {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars: {} found; this much of the batch fills at most {} {} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>canner: {} has no canner {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jar: {} takes no {} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recipe: {} is a dish of this class already; raise its batch instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may_drop: a point that must be said is never dropped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dish: a class has at least one dish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; (at least {})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; must be followed by &quot;{}&quot; within {}, but {} must come between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}&quot;{}&quot; followed by &quot;{}&quot; within {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>these limits cannot all be kept: {}; they leave {} in all, but {} must come between, {} in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; can never start: a station it needs is held by something that waits for it; free the station first, or bring one more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start &quot;{}&quot; later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>good</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kitchen ends {} after it must be empty; make a stage ahead or drop the last load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kitchen ends at {}, {} after the class, and nobody is named to stay; name a kitchen closer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no wait is long enough to say &quot;{}&quot; ({}); say it over the work, or tie it to a step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {} of &quot;{}&quot; takes {} lines of {} characters in letters that can be read from the counter, and a 15.6-inch screen has room for {}; {}bring the screen nearer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shorten it, or </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>end-point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>looks come {} late in all; ask for a helper, or start less at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (not to be left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} &quot;{}&quot; {} {}{} at {}{}; {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the look at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>: the hands are on {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask for a helper, or start one of them at another time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start one of them at another time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} cues sound in {}, more than {} in ten minutes for each of the {} in the kitchen; ask for a helper, or make a stage ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} and {} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} wanted for at least {} in all ({}), and the slot has {}; bring one more, or make a stage ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by their order alone {} things want {} at once from {} on: &quot;{}&quot; waits for it until {}; bring one more, or make a stage ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the class would last for years; look at the durations of its steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the class comes to a stand before its end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the sheet that was found breaks a rule of the kitchen: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the search claims that no sheet is shorter than {} s, and the dispatcher made one of {} s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not keep every limit; how short such a sheet can be is not proved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shortest possible, proved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} longer than the shortest possible, which is proved, because it holds up better</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>within {} % of the shortest possible</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>source not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}, load {}: {} ({})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Welcome the class, wash hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: a class version of {}, with no departure that its rules refuse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: NOT held against a tested recipe, and not to be eaten; its file says: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: its amounts come from memory; hold them against {} before class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: {} loads make about {} activities; at most {} fit a class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: the venue has no canner &quot;{}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: {} takes no {} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: acid that must be in it: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> in each jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (optional)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; is done for each load and cannot be made ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; is made ahead but follows &quot;{}&quot;, which is not</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; is over before its hand work is, for so small a batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: &quot;{}&quot; needs a {} and the venue has none free of canners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: {} stands on a {} in one step and a {} in another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the class: questions, what to take home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the class ends before the last load is lifted; {} stays for the kitchen end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: no class runs without the altitude of its kitchen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: jars for so short a process must be boiled under water first, and {} cannot; use a boiling-water canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: its heating times are worked out from its burner and its water, not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the canner on to heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at 140 °F (60 °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water at 180 °F (82 °C)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: the venue has no burner &quot;{}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower {} into the canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water back down to 140 °F (60 °C) before the jars go in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {} is a raw pack and the water has boiled before it: let it fall to 140 °F (60 °C) before lowering{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, or put the raw-pack dish first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steam and hot water: lift the lid away from you, use the jar lifter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Process {} for {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} {} out, upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a towel, an inch apart, no draught; leave the bands alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot jars: jar lifter below the band, no tilting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} load {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sterilise {} in the canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upright, covered by 1 in of water, {} from the full boil</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full rolling boil, then the whole time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge at zero and the lock down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}; a heavy older canner without a lock: {} min after heat off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Vent the canner for {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The steam must not stop; after the whole time {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring the canner to {} psi</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High heat; lower it a little as the pressure comes near</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the heat off, let the pressure fall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By itself: no water, no cold towel; weight and vent stay untouched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is not an amount such as 1 1/2 tsp: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is more than {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is finer than 1/{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it cannot be below zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the range runs downward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>unknown unit {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>factor {}/{} is below 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} times {}/{} is more than {}, or too fine to hold exactly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}/{} {} {}/{} needs more than the 63 bits of an exact fraction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number has more than {} digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a thousands comma stands after one to three digits that are not zero</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a thousands comma stands before three digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fraction lacks the number below its line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fraction has zero below its line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a fraction has {} below its line, more than {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fraction after a whole number is not below one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no digit follows the decimal point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is not {}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is outside {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the unit is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a length such as 4,200 ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>-100 km to 100 km</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a mass such as 5 lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 1,000 kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a volume such as 2 cups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 1,000 L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a temperature such as 180 °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>absolute zero to 1,000 °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a pressure such as 101.3 kPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 10 MPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a power such as 15,000 Btu/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 100 kW</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a duration such as 1 h 30 min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0 to 400 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its parts cannot be added exactly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it does not come to whole seconds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}; tested as {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} pack; tested as {} pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another headspace than that of the tested recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: larger than the tested {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tested recipe has no ingredient {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another role than in the tested recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured for the batch in one recipe and for each jar in the other</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only acids have tested stand-ins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said to be dried; tested with a dried one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}; tested with {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of another kind than the tested one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} cannot be compared with the tested {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is not in the tested recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>adds acid to the tested recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is {} times the tested amount, {} only {} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is {} times the tested amount, {} is {} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is {} times the tested amount for a jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} of {} {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is no dried spice by its name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is not measured with spoons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is more than 1 tbsp of spices of your own for each pint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is a dried spice of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} from amounts that were tested for {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}; tested {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the strength of the vinegar is not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{:g} % acidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} does not say that it comes from a bottle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fresh juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>home-made vinegar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the kind of acid is not said</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is not a plain name for {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} for {}, which the tested recipe does not offer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is left out and so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>our own rule, which only refuses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tested recipe may be made in any size of batch as long as every proportion stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the proportions of vinegar, food and water are never altered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no acid of a tested recipe may be reduced: each was tested with this much food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low-acid vegetables may be reduced, never increased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another food has another acidity and lets heat through differently: the recipe is no longer tested</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oil was tested with its acid and its food, and is never added to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lemon and lime juice come from a bottle, because its strength is constant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vinegar has 5 % acidity, cider or white, and is not home-made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottled lemon or lime juice may stand in for vinegar, cup for cup, where the source says so</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vinegar may not stand in for lemon juice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>citric acid may not stand in for juice or vinegar unless the recipe was tested with it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dried spices may vary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fresh herbs and garlic may not be increased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt may be cut in vegetables, tomatoes and quick pickles, never in fermented food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sugar may be cut in fruit, tomatoes and quick pickles; jam needs a tested recipe with less sugar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars stay within the sizes that were tested; smaller ones may be used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>headspace is as published for the product</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the process time was tested for this product and this pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the tested amounts fill no more jars than published, or each jar would hold less acid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what cannot be compared with the tested recipe is not guessed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a percentage, as in &quot;5 %&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be at most 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>per_jar: false, yet per_jar_of names the jar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strength: only of kind &quot;vinegar&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars: {} is there already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars: at least one jar size is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yield: must be counted in jars, as in &quot;8 pints&quot;; {} is no jar size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yield: must be 1 to {} jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yield: {} is not among the recipe&apos;s jars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>product: no published entry for {}, {} pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars: no published entry for {} in a {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>headspace: {} found; {} publishes {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ingredients: no ingredient is called {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step: a recipe has at least one step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps: a stage replaces at least one step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps: no step is called {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps: {} is done for each load or jar, and cannot be done before class</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps: {} is already in stage {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steps: {} comes after {}, which is in no stage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after: no step is called {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before: no step is called {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before: {} does not come after {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel: {} stands on a {} in an earlier step, here on a {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after: steps in a circle: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>title: {} words; at most {} can be read from the counter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap_high: must not be shorter than gap_low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes: must not be longer than gap_low</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}: only for hands &quot;ends&quot; or &quot;pulses&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands: &quot;ends&quot; needs hands_at_start, hands_at_end or both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hands: {} s at the ends of a step that may take only {} s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pulse: only for hands &quot;pulses&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may_pause: only for hands &quot;throughout&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vessel: needs the station that it stands on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duration_scales: only for a step done once for the batch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>id: &quot;lower&quot; is the lowering of the load into the canner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ends_by_sight: look_for must say what is to be seen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>step: no step is called {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{}.toml (built in)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version_of: no tested recipe {} is built in, and {}: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version_of: the tested recipe has a fault: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version_of: {} is not a tested recipe of the name {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>held against {}: </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an altitude of {:.6g} m; the range is {} to {} m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an air pressure of {:.6g} kPa; the range is {} to {} kPa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the published tables have no entry {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} names nobody</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a day, as in &quot;2026-08-01&quot;; {} found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>entry: {} is confirmed already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; is not a {}; known are {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is kept for comparison only and never gives a time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no published process for &quot;{}&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; near names: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} has no tested time for {}; listed: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} pack by {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} has no tested time for a jar as large as a {} jar; listed: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the figures of {} come from memory; they answer only when a named person has held them against {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no published figure above 10,000 ft; the altitude is {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {} table of {} ends at {} ft; the altitude is {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is not allowed at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a steam canner may run at most {} minutes; {} takes {} at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no time is listed for {} jars; this is the time for {} jars, a rule known only at second hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figures from memory, confirmed by {}{}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above 8,000 ft Utah State University Extension publishes {} minutes; use the longer time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above 8,000 ft some published tables end; the top band of this one has no upper edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any altitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brinebell is a timer, not an authority. It defers to the published tables of the USDA Complete Guide to Home Canning and the National Center for Home Food Preservation, to your local codes, to your county extension office, and to licensed practice. Hold every time and amount against the printed page before you teach from it. When in doubt about a jar, nobody tastes it: discard it as your extension office advises.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the tested recipe and the published process time for your altitude, jar size and pack. Local codes, your extension office and licensed practice come before this sheet. If in doubt about a jar, do not taste it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water has no boiling point at {:.6g} Pa; the range is {:.6g} to {:.6g} Pa</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>event {} ({}) does not fit what came before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>and {} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety points left unsaid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not said to be off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed with {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first &quot;{}&quot; must be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no station is free for {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the venting is not over: {} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody watched the steam for {}: confirm that it held, or vent again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the count starts at {} psi, not below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the pressure was lost just now; the steam is lost only if said again in {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the process time is not over: {} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody watched the boil for {}: confirm that it held, or start again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars rest five minutes after the heat is off: {} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lid stays on for ten minutes after the pressure is gone: {} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>jars cool 12 to 24 hours before their seals are checked: {} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{} is not taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the newest press stays as it is: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {} is not cooling yet; finish it or set it aside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the reading is outside {} to {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is known to be on at {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nobody has said that {} is off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;{}&quot; has waited {} too long: {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {} of load {} is 15 minutes late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the {} of load {} is lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a jar broke in load {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the burner under load {} failed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the canner&apos;s lid is stuck over load {}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rehearsal came to a stand: nothing leads on to the end of the class</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>main</name>
    <message>
        <source>Timer and step guide for people who teach home canning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A class file to open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The logbook to use.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearse the class at once, at 1 to 60 times the speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>--rehearse: a whole number from 1 to 60</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
