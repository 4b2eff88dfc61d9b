<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>GapText</name>
    <message numerus="yes">
        <source>open %1, found %n time(s)</source>
        <translation>
            <numerusform>open %1, found %n time</numerusform>
            <numerusform>open %1, found %n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Open since %1, found in %n round(s) and checks.</source>
        <translation>
            <numerusform>Open since %1, found in %n round or check.</numerusform>
            <numerusform>Open since %1, found in %n rounds and checks.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It was open %n time(s) before.</source>
        <translation>
            <numerusform>It was open %n time before.</numerusform>
            <numerusform>It was open %n times before.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n open gap(s)</source>
        <translation>
            <numerusform>%n open gap</numerusform>
            <numerusform>%n open gaps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n critical: mend before the next birth.</source>
        <translation>
            <numerusform>%n critical: mend before the next birth.</numerusform>
            <numerusform>%n critical: mend before the next birth.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n late.</source>
        <translation>
            <numerusform>%n late.</numerusform>
            <numerusform>%n late.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without anyone who mends it.</source>
        <translation>
            <numerusform>%n without anyone who mends it.</numerusform>
            <numerusform>%n without anyone who mends them.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReasonText</name>
    <message numerus="yes">
        <source>on for %1 of %n minute(s)</source>
        <translation>
            <numerusform>on for %1 of %n minute</numerusform>
            <numerusform>on for %1 of %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at least %n minute(s)</source>
        <translation>
            <numerusform>at least %n minute</numerusform>
            <numerusform>at least %n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>at least %n whole kit(s)</source>
        <translation>
            <numerusform>at least %n whole kit</numerusform>
            <numerusform>at least %n whole kits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n step(s) passed</source>
        <translation>
            <numerusform>%1 of %n step passed</numerusform>
            <numerusform>%1 of %n steps passed</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s)</source>
        <translation>
            <numerusform>%n whole kit</numerusform>
            <numerusform>%n whole kits</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) left</source>
        <translation>
            <numerusform>%n minute left</numerusform>
            <numerusform>%n minutes left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 min left, at least %n minute(s) wanted</source>
        <translation>
            <numerusform>%1 min left, at least %n minute wanted</numerusform>
            <numerusform>%1 min left, at least %n minutes wanted</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RoundText</name>
    <message numerus="yes">
        <source>%1 of %n answered</source>
        <translation>
            <numerusform>%1 of %n answered</numerusform>
            <numerusform>%1 of %n answered</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ShiftText</name>
    <message numerus="yes">
        <source>**One is being walked: %1 of %n item(s) answered.**</source>
        <translation>
            <numerusform>**One is being walked: %1 of %n item answered.**</numerusform>
            <numerusform>**One is being walked: %1 of %n items answered.**</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Earlier shifts left %n gap(s) open.</source>
        <translation>
            <numerusform>Earlier shifts left %n gap open.</numerusform>
            <numerusform>Earlier shifts left %n gaps open.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>on for %1 of %n minute(s), since %2</source>
        <translation>
            <numerusform>on for %1 of %n minute, since %2</numerusform>
            <numerusform>on for %1 of %n minutes, since %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: a gap in %2 of %n round(s)</source>
        <translation>
            <numerusform>%1: a gap in %2 of %n round</numerusform>
            <numerusform>%1: a gap in %2 of %n rounds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No gap in %n round(s)</source>
        <translation>
            <numerusform>No gap in %n round</numerusform>
            <numerusform>No gap in %n rounds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, last %n day(s)</source>
        <translation>
            <numerusform>%1, last %n day</numerusform>
            <numerusform>%1, last %n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n shift(s) without a round</source>
        <translation>
            <numerusform>%1; %n shift without a round</numerusform>
            <numerusform>%1; %n shifts without a round</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TimeText</name>
    <message numerus="yes">
        <source>%n min</source>
        <comment>a length of time</comment>
        <translation>
            <numerusform>%n min</numerusform>
            <numerusform>%n min</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h</source>
        <comment>a length of time in hours</comment>
        <translation>
            <numerusform>%n h</numerusform>
            <numerusform>%n h</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <comment>a length of time</comment>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VerdictText</name>
    <message numerus="yes">
        <source>%n critical gap(s).</source>
        <translation>
            <numerusform>%n critical gap.</numerusform>
            <numerusform>%n critical gaps.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n critical item(s) not seen.</source>
        <translation>
            <numerusform>%n critical item not seen.</numerusform>
            <numerusform>%n critical items not seen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lesser gap(s).</source>
        <translation>
            <numerusform>%n lesser gap.</numerusform>
            <numerusform>%n lesser gaps.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s), none critical.</source>
        <translation>
            <numerusform>%n gap, not critical.</numerusform>
            <numerusform>%n gaps, none critical.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lesser item(s) not seen.</source>
        <translation>
            <numerusform>%n lesser item not seen.</numerusform>
            <numerusform>%n lesser items not seen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n item(s) met, round finished %2.</source>
        <translation>
            <numerusform>%1 of %n item met, round finished %2.</numerusform>
            <numerusform>%1 of %n items met, round finished %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to go</source>
        <translation>
            <numerusform>%n item to go</numerusform>
            <numerusform>%n items to go</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %2 items met · readiness index %3, mean of %n section(s)</source>
        <translation>
            <numerusform>Items met: %1 of %2 · readiness index %3, of %n section</numerusform>
            <numerusform>Items met: %1 of %2 · readiness index %3, mean of %n sections</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::CylinderEditor</name>
    <message numerus="yes">
        <source>%n min</source>
        <comment>a length of time</comment>
        <translation>
            <numerusform>%n min</numerusform>
            <numerusform>%n min</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::FinishBar</name>
    <message numerus="yes">
        <source>%n item(s) not seen yet: they count as not checked.</source>
        <translation>
            <numerusform>%n item not seen yet: it counts as not checked.</numerusform>
            <numerusform>%n items not seen yet: they count as not checked.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::KitEditor</name>
    <message numerus="yes">
        <source>Makes %n whole kit(s); %1 sets the limit.</source>
        <translation>
            <numerusform>Makes %n whole kit; %1 sets the limit.</numerusform>
            <numerusform>Makes %n whole kits; %1 sets the limit.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::ReadinessStrip</name>
    <message numerus="yes">
        <source>(the last %Ln day(s) shown)</source>
        <extracomment>behind the title of the strip when not all of its days fit</extracomment>
        <translation>
            <numerusform>(the last %Ln day shown)</numerusform>
            <numerusform>(the last %Ln days shown)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::ResultPane</name>
    <message numerus="yes">
        <source>%n lesser item(s) were not seen.</source>
        <translation>
            <numerusform>%n lesser item was not seen.</numerusform>
            <numerusform>%n lesser items were not seen.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>**%1** is done: %2 of %n item(s) looked at. It changes no verdict and no gap.</source>
        <extracomment>%1 the words &quot;Spot check&quot;, %2 how many of the items were looked at</extracomment>
        <translation>
            <numerusform>**%1** is done: %2 of %n item looked at. It changes no verdict and no gap.</numerusform>
            <numerusform>**%1** is done: %2 of %n items looked at. It changes no verdict and no gap.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::SetupPage</name>
    <message numerus="yes">
        <source>%n record(s) verified: every signature holds and nothing was changed.</source>
        <translation>
            <numerusform>%n record verified: its signature holds and nothing was changed.</numerusform>
            <numerusform>%n records verified: every signature holds and nothing was changed.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::StartPane</name>
    <message numerus="yes">
        <source>**%1** is begun: %2 of %n item(s) answered, by %3.</source>
        <translation>
            <numerusform>**%1** is begun: %2 of %n item answered, by %3.</numerusform>
            <numerusform>**%1** is begun: %2 of %n items answered, by %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>**%1**: %2. %n item(s) in %3.</source>
        <translation>
            <numerusform>**%1**: %2. %n item in %3.</numerusform>
            <numerusform>**%1**: %2. %n items in %3.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n section(s)</source>
        <translation>
            <numerusform>%n section</numerusform>
            <numerusform>%n sections</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n answer(s) are dropped and nothing is recorded.</source>
        <translation>
            <numerusform>%n answer is dropped and nothing is recorded.</numerusform>
            <numerusform>%n answers are dropped and nothing is recorded.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::ThisShiftPage</name>
    <message numerus="yes">
        <source>All %n</source>
        <translation>
            <numerusform>All %n</numerusform>
            <numerusform>All %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::WalkPane</name>
    <message numerus="yes">
        <source>%1 · %n item(s)</source>
        <translation>
            <numerusform>%1 · %n item</numerusform>
            <numerusform>%1 · %n items</numerusform>
        </translation>
    </message>
</context>
</TS>
