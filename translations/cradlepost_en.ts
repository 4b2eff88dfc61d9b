<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>BoardText</name>
    <message numerus="yes">
        <source>%n birth(s) expected, the next %1.</source>
        <translation>
            <numerusform>%n birth expected, %1.</numerusform>
            <numerusform>%n births expected, the next %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s) left.</source>
        <translation>
            <numerusform>%n whole kit left.</numerusform>
            <numerusform>%n whole kits left.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DistrictDocument</name>
    <message numerus="yes">
        <source>%n unit(s)</source>
        <translation>
            <numerusform>%n unit</numerusform>
            <numerusform>%n units</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DistrictText</name>
    <message numerus="yes">
        <source>%1 rounds without a critical gap in %n unit(s)</source>
        <translation>
            <numerusform>%1 rounds without a critical gap in %n unit</numerusform>
            <numerusform>%1 rounds without a critical gap in %n units</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No round was done in %n shift(s) due: there is nothing to compare.</source>
        <translation>
            <numerusform>No round was done in %n shift due: there is nothing to compare.</numerusform>
            <numerusform>No round was done in %n shifts due: there is nothing to compare.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) cannot be told apart from the district&apos;s %1.</source>
        <translation>
            <numerusform>%n unit cannot be told apart from the district&apos;s %1.</numerusform>
            <numerusform>%n units cannot be told apart from the district&apos;s %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no round for up to %n day(s) in a row.</source>
        <translation>
            <numerusform>%1: no round for up to %n day in a row.</numerusform>
            <numerusform>%1: no round for up to %n days in a row.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n critical gap(s) open, the oldest for %1: %2</source>
        <translation>
            <numerusform>%n critical gap open, the oldest for %1: %2</numerusform>
            <numerusform>%n critical gaps open, the oldest for %1: %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>no round for %n day(s) in a row</source>
        <translation>
            <numerusform>no round for %n day in a row</numerusform>
            <numerusform>no round for %n days in a row</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) about the entries</source>
        <translation>
            <numerusform>%n question about the entries</numerusform>
            <numerusform>%n questions about the entries</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Stock that others can spare would help %1: %n item(s).</source>
        <translation>
            <numerusform>Stock that others can spare would help %1: %n item.</numerusform>
            <numerusform>Stock that others can spare would help %1: %n items.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n stock item(s) out or about to run out: %1</source>
        <translation>
            <numerusform>%n stock item out or about to run out: %1</numerusform>
            <numerusform>%n stock items out or about to run out: %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n piece(s) from %2 to %3</source>
        <extracomment>%1 a stock item, %2 the unit that gives, %3 the one that takes</extracomment>
        <translation>
            <numerusform>%1: %n piece from %2 to %3</numerusform>
            <numerusform>%1: %n pieces from %2 to %3</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>DoneSheet</name>
    <message numerus="yes">
        <source>, %n late</source>
        <extracomment>appended to &quot;Rounds done: 88 of 93 due&quot;</extracomment>
        <translation>
            <numerusform>, %n late</numerusform>
            <numerusform>, %n late</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) amended later.</source>
        <translation>
            <numerusform>%n round amended later.</numerusform>
            <numerusform>%n rounds amended later.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) entered from paper: nothing is said of their time.</source>
        <translation>
            <numerusform>%n round entered from paper: nothing is said of their time.</numerusform>
            <numerusform>%n rounds entered from paper: nothing is said of their time.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>GapSheet</name>
    <message numerus="yes">
        <source>%n gap(s) open before the span are left out.</source>
        <translation>
            <numerusform>One gap open before the span is left out.</numerusform>
            <numerusform>%n gaps open before the span are left out.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) still open</source>
        <translation>
            <numerusform>%n gap still open</numerusform>
            <numerusform>%n gaps still open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n for more than a week</source>
        <extracomment>appended to &quot;9 gaps still open&quot;</extracomment>
        <translation>
            <numerusform>, %n for more than a week</numerusform>
            <numerusform>, %n for more than a week</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without an owner.</source>
        <translation>
            <numerusform>%n without an owner.</numerusform>
            <numerusform>%n without an owner.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n time(s), %2</source>
        <translation>
            <numerusform>%1 · once, %2</numerusform>
            <numerusform>%1 · %n times, %2</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lasted longer than is shown here, up to %1.</source>
        <translation>
            <numerusform>%n lasted longer than is shown here, up to %1.</numerusform>
            <numerusform>%n lasted longer than is shown here, up to %1.</numerusform>
        </translation>
    </message>
</context>
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
    <message numerus="yes">
        <source>; open %n time(s) before</source>
        <translation>
            <numerusform>; open %n time before</numerusform>
            <numerusform>; open %n times before</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It was said to be mended and was not, %n time(s).</source>
        <translation>
            <numerusform>It was said to be mended and was not, %n time.</numerusform>
            <numerusform>It was said to be mended and was not, %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>**%1 comes back most: open %n time(s) before.**</source>
        <translation>
            <numerusform>**%1 comes back most: open %n time before.**</numerusform>
            <numerusform>**%1 comes back most: open %n times before.**</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>HandoverText</name>
    <message numerus="yes">
        <source>**%n critical gap(s)** open</source>
        <translation>
            <numerusform>**%n critical gap** open</numerusform>
            <numerusform>**%n critical gaps** open</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>**%n birth(s)** expected</source>
        <translation>
            <numerusform>**%n birth** expected</numerusform>
            <numerusform>**%n births** expected</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more birth(s)</source>
        <translation>
            <numerusform>and %n more birth</numerusform>
            <numerusform>and %n more births</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s) left</source>
        <translation>
            <numerusform>%n whole kit left</numerusform>
            <numerusform>%n whole kits left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Short: **%1**, %n left</source>
        <translation>
            <numerusform>Short: **%1**, %n left</numerusform>
            <numerusform>Short: **%1**, %n left</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more gap(s), see Gaps</source>
        <translation>
            <numerusform>and %n more gap, see Gaps</numerusform>
            <numerusform>and %n more gaps, see Gaps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more item(s), see Stores</source>
        <translation>
            <numerusform>and %n more item, see Stores</numerusform>
            <numerusform>and %n more items, see Stores</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more thing(s) to do</source>
        <translation>
            <numerusform>and %n more thing to do</numerusform>
            <numerusform>and %n more things to do</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more change(s)</source>
        <translation>
            <numerusform>and %n more change</numerusform>
            <numerusform>and %n more changes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ItemSheet</name>
    <message numerus="yes">
        <source>Where readiness is lost: %n item(s) carry %1 of it</source>
        <translation>
            <numerusform>Where readiness is lost: one item carries %1 of it</numerusform>
            <numerusform>Where readiness is lost: %n items carry %1 of it</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MonthText</name>
    <message numerus="yes">
        <source>%n shift(s) without a round</source>
        <translation>
            <numerusform>%n shift without a round</numerusform>
            <numerusform>%n shifts without a round</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No round was done in %n shift(s): there is nothing to say about readiness.</source>
        <translation>
            <numerusform>No round was done in %n shift: there is nothing to say about readiness.</numerusform>
            <numerusform>No round was done in %n shifts: there is nothing to say about readiness.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n critical gap(s) still open, the oldest for %1: %2.</source>
        <translation>
            <numerusform>%n critical gap still open, the oldest for %1: %2.</numerusform>
            <numerusform>%n critical gaps still open, the oldest for %1: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Items met from week to week moved no more than chance explains, against the %n week(s) before.</source>
        <translation>
            <numerusform>Items met from week to week moved no more than chance explains, against the week before.</numerusform>
            <numerusform>Items met from week to week moved no more than chance explains, against the %n weeks before.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n items make up %1 of what was lost: %2.</source>
        <translation>
            <numerusform>One item makes up %1 of what was lost: %2.</numerusform>
            <numerusform>%n items make up %1 of what was lost: %2.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 was out of use for %2, %n time(s).</source>
        <translation>
            <numerusform>%1 was out of use once, for %2.</numerusform>
            <numerusform>%1 was out of use %n times, for %2 together.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: %n reading(s), all the same. Ask whether the instrument works.</source>
        <translation>
            <numerusform>%1: %n reading, all the same. Ask whether the instrument works.</numerusform>
            <numerusform>%1: %n readings, all the same. Ask whether the instrument works.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReadingSheet</name>
    <message numerus="yes">
        <source>%1 to below %2 %3: %n reading(s)</source>
        <translation>
            <numerusform>%1 to below %2 %3: %n reading</numerusform>
            <numerusform>%1 to below %2 %3: %n readings</numerusform>
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
    <message numerus="yes">
        <source>%n whole kit(s) left</source>
        <translation>
            <numerusform>%n whole kit left</numerusform>
            <numerusform>%n whole kits left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StandingSheet</name>
    <message numerus="yes">
        <source>%n unit(s) stand out from the district</source>
        <translation>
            <numerusform>One unit stands out from the district</numerusform>
            <numerusform>%n units stand out from the district</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StockSheet</name>
    <message numerus="yes">
        <source>Stock that could move: %n transfer(s) would help</source>
        <translation>
            <numerusform>Stock that could move: %n transfer would help</numerusform>
            <numerusform>Stock that could move: %n transfers would help</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>StoresText</name>
    <message numerus="yes">
        <source>%n reading(s) left out in 60 days; two a day are due.</source>
        <translation>
            <numerusform>%n reading left out in 60 days; two a day are due.</numerusform>
            <numerusform>%n readings left out in 60 days; two a day are due.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n device(s) with late upkeep.</source>
        <translation>
            <numerusform>%n device with late upkeep.</numerusform>
            <numerusform>%n devices with late upkeep.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s), one in %1.</source>
        <translation>
            <numerusform>%n failure, one in %1.</numerusform>
            <numerusform>%n failures, one in %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to order.</source>
        <translation>
            <numerusform>%n item to order.</numerusform>
            <numerusform>%n items to order.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n expired piece(s) to take off.</source>
        <translation>
            <numerusform>%n expired piece to take off.</numerusform>
            <numerusform>%n expired pieces to take off.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last round counted otherwise %n time(s).</source>
        <translation>
            <numerusform>The last round counted otherwise %n time.</numerusform>
            <numerusform>The last round counted otherwise %n times.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n shift(s)</source>
        <translation>
            <numerusform>%n shift</numerusform>
            <numerusform>%n shifts</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n day</numerusform>
            <numerusform>%n days</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Delivered every %n day(s).</source>
        <translation>
            <numerusform>Delivered every %n day.</numerusform>
            <numerusform>Delivered every %n days.</numerusform>
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
    <name>TrustSheet</name>
    <message numerus="yes">
        <source>Can the entries be trusted? %n question(s) to ask</source>
        <translation>
            <numerusform>Can the entries be trusted? %n question to ask</numerusform>
            <numerusform>Can the entries be trusted? %n questions to ask</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Agreement with %n spot check(s): AC1 %1</source>
        <translation>
            <numerusform>Agreement with %n spot check: AC1 %1</numerusform>
            <numerusform>Agreement with %n spot checks: AC1 %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>UnitSheet</name>
    <message numerus="yes">
        <source>Rounds with a gap, of those that looked, in per cent; a crossed cell: does not apply or nobody looked. The %n item(s) missing most by weight; all of them are in the table.</source>
        <translation>
            <numerusform>Rounds with a gap, of those that looked, in per cent; a crossed cell: does not apply or nobody looked. The item missing most by weight; all of them are in the table.</numerusform>
            <numerusform>Rounds with a gap, of those that looked, in per cent; a crossed cell: does not apply or nobody looked. The %n items missing most by weight; all of them are in the table.</numerusform>
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
    <name>VisitSheet</name>
    <message numerus="yes">
        <source>Whom to see first: %n unit(s) call for a visit</source>
        <translation>
            <numerusform>Whom to see first: one unit calls for a visit</numerusform>
            <numerusform>Whom to see first: %n units call for a visit</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) fell silent</source>
        <translation>
            <numerusform>%n unit fell silent</numerusform>
            <numerusform>%n units fell silent</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) changed more than chance explains</source>
        <translation>
            <numerusform>%n unit changed more than chance explains</numerusform>
            <numerusform>%n units changed more than chance explains</numerusform>
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
    <name>cradlepost::DistancePanel</name>
    <message numerus="yes">
        <source>%n way(s) known. Stock moves only where a way is known.</source>
        <translation>
            <numerusform>%n way known. Stock moves only where a way is known.</numerusform>
            <numerusform>%n ways known. Stock moves only where a way is known.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) kept.</source>
        <translation>
            <numerusform>%n way kept.</numerusform>
            <numerusform>%n ways kept.</numerusform>
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
    <name>cradlepost::IdeaPanel</name>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
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
    <name>cradlepost::MonthPage</name>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n item</numerusform>
            <numerusform>%n items</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::NoticeBar</name>
    <message numerus="yes">
        <source>%1 · %n more</source>
        <extracomment>a notice, and how many more are due</extracomment>
        <translation>
            <numerusform>%1 · %n more</numerusform>
            <numerusform>%1 · %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::PaperPanel</name>
    <message numerus="yes">
        <source>Enter %n round(s)</source>
        <translation>
            <numerusform>Enter %n round</numerusform>
            <numerusform>Enter %n rounds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) can be entered.</source>
        <translation>
            <numerusform>%n round can be entered.</numerusform>
            <numerusform>%n rounds can be entered.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): nothing was entered. Mend the sheet and read it again.</source>
        <translation>
            <numerusform>%n fault: nothing was entered. Mend the sheet and read it again.</numerusform>
            <numerusform>%n faults: nothing was entered. Mend the sheet and read it again.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) entered from paper.</source>
        <translation>
            <numerusform>%n round entered from paper.</numerusform>
            <numerusform>%n rounds entered from paper.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::PutRightPane</name>
    <message numerus="yes">
        <source>It was put right %n time(s) before.</source>
        <translation>
            <numerusform>It was put right once before.</numerusform>
            <numerusform>It was put right %n times before.</numerusform>
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
    <name>cradlepost::UnitsPage</name>
    <message numerus="yes">
        <source>%1 · %n unit(s)</source>
        <extracomment>%1 a month or a span of months</extracomment>
        <translation>
            <numerusform>%1 · %n unit</numerusform>
            <numerusform>%1 · %n units</numerusform>
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
