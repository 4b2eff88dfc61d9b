<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="hi">
<context>
    <name>CalendarDrawing</name>
    <message>
        <source>in time</source>
        <translation>समय पर</translation>
    </message>
    <message>
        <source>late</source>
        <translation>देर से</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>नहीं हुआ</translation>
    </message>
    <message>
        <source>from paper</source>
        <translation>काग़ज़ से</translation>
    </message>
    <message>
        <source>amended</source>
        <translation>सुधारा गया</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>There is nothing to draw yet.</source>
        <translation>अभी दिखाने को कुछ नहीं है।</translation>
    </message>
</context>
<context>
    <name>ErrorText</name>
    <message>
        <source>This cannot be taken as it is.</source>
        <translation>यह इस रूप में नहीं लिया जा सकता।</translation>
    </message>
    <message>
        <source>The document breaks its own rules.</source>
        <translation>यह दस्तावेज़ अपने नियमों से मेल नहीं खाता।</translation>
    </message>
    <message>
        <source>It is not there.</source>
        <translation>यह नहीं मिला।</translation>
    </message>
    <message>
        <source>It is there already.</source>
        <translation>यह पहले से मौजूद है।</translation>
    </message>
    <message>
        <source>The file cannot be written. Nothing was lost.</source>
        <translation>फ़ाइल में लिखा नहीं जा सकता। कुछ खोया नहीं है।</translation>
    </message>
    <message>
        <source>The disk is full. Nothing was lost.</source>
        <translation>डिस्क भरी है। कुछ खोया नहीं है।</translation>
    </message>
    <message>
        <source>Another program holds the file. Nothing was lost.</source>
        <translation>फ़ाइल दूसरे प्रोग्राम में खुली है। कुछ खोया नहीं है।</translation>
    </message>
    <message>
        <source>The database file is damaged.</source>
        <translation>डेटाबेस फ़ाइल खराब है।</translation>
    </message>
    <message>
        <source>A later version of Cradlepost wrote this file.</source>
        <translation>यह फ़ाइल Cradlepost के नए वर्शन की है।</translation>
    </message>
    <message>
        <source>This file is no Cradlepost database.</source>
        <translation>यह फ़ाइल Cradlepost का डेटाबेस नहीं है।</translation>
    </message>
    <message>
        <source>A record does not hold: it was changed after it was signed.</source>
        <translation>एक रिकॉर्ड सही नहीं: हस्ताक्षर के बाद बदला गया।</translation>
    </message>
    <message>
        <source>The file system refused.</source>
        <translation>फ़ाइल सिस्टम ने मना किया।</translation>
    </message>
    <message>
        <source>Give this user the right to write to the file and its folder, then try again.</source>
        <translation>इस यूज़र को फ़ाइल और फ़ोल्डर में लिखने की अनुमति दें, फिर दोबारा करें।</translation>
    </message>
    <message>
        <source>Free some space, then try again.</source>
        <translation>कुछ जगह खाली करें, फिर दोबारा करें।</translation>
    </message>
    <message>
        <source>Close the other program, then try again.</source>
        <translation>दूसरा प्रोग्राम बंद करें, फिर दोबारा करें।</translation>
    </message>
    <message>
        <source>Keep a copy of the file, then restore the last backup.</source>
        <translation>फ़ाइल की कॉपी रखें, फिर पिछला बैकअप लौटाएँ।</translation>
    </message>
    <message>
        <source>Open it with that version or a later one.</source>
        <translation>इसे उसी वर्शन या उससे नए में खोलें।</translation>
    </message>
    <message>
        <source>Keep a copy of the file and tell whoever answers for the records.</source>
        <translation>फ़ाइल की कॉपी रखें और रिकॉर्ड के ज़िम्मेदार को बताएँ।</translation>
    </message>
    <message>
        <source>These numbers do not give that figure.</source>
        <translation>इन अंकों से यह आँकड़ा नहीं निकलता।</translation>
    </message>
</context>
<context>
    <name>GapText</name>
    <message>
        <source>%1; open %2</source>
        <translation>%1; %2 से बाक़ी</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>अभी कोई नहीं</translation>
    </message>
    <message>
        <source>late</source>
        <translation>देर</translation>
    </message>
    <message numerus="yes">
        <source>open %1, found %n time(s)</source>
        <translation>
            <numerusform>%1 बाक़ी रही, %n बार मिली</numerusform>
            <numerusform>%1 बाक़ी रही, %n बार मिली</numerusform>
        </translation>
    </message>
    <message>
        <source>no longer applies</source>
        <translation>अब लागू नहीं</translation>
    </message>
    <message numerus="yes">
        <source>Open since %1, found in %n round(s) and checks.</source>
        <translation>
            <numerusform>%1 से बाक़ी, %n राउंड या जाँच में मिली।</numerusform>
            <numerusform>%1 से बाक़ी, %n राउंड और जाँच में मिली।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>It was open %n time(s) before.</source>
        <translation>
            <numerusform>पहले %n बार और हुई थी।</numerusform>
            <numerusform>पहले %n बार और हुई थी।</numerusform>
        </translation>
    </message>
    <message>
        <source>It was never open before.</source>
        <translation>पहले कभी नहीं हुई थी।</translation>
    </message>
    <message>
        <source>No open gap</source>
        <translation>कोई कमी बाक़ी नहीं</translation>
    </message>
    <message numerus="yes">
        <source>%n open gap(s)</source>
        <translation>
            <numerusform>%n कमी बाक़ी</numerusform>
            <numerusform>%n कमियाँ बाक़ी</numerusform>
        </translation>
    </message>
    <message>
        <source>Every item that was looked at is met.</source>
        <translation>जो देखा, सब ठीक है।</translation>
    </message>
    <message numerus="yes">
        <source>%n critical: mend before the next birth.</source>
        <translation>
            <numerusform>%n गंभीर: अगली डिलीवरी से पहले ठीक करें।</numerusform>
            <numerusform>%n गंभीर: अगली डिलीवरी से पहले ठीक करें।</numerusform>
        </translation>
    </message>
    <message>
        <source>None is critical.</source>
        <translation>कोई गंभीर नहीं।</translation>
    </message>
    <message numerus="yes">
        <source>%n late.</source>
        <translation>
            <numerusform>%n में देर।</numerusform>
            <numerusform>%n में देर।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n without anyone who mends it.</source>
        <translation>
            <numerusform>%n कमी किसी के ज़िम्मे नहीं।</numerusform>
            <numerusform>%n कमियाँ किसी के ज़िम्मे नहीं।</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MapDrawing</name>
    <message>
        <source>no data</source>
        <translation>आँकड़ा नहीं</translation>
    </message>
</context>
<context>
    <name>ReasonText</name>
    <message>
        <source>absent</source>
        <translation>नहीं है</translation>
    </message>
    <message>
        <source>not working</source>
        <translation>खराब</translation>
    </message>
    <message>
        <source>not clean</source>
        <translation>साफ़ नहीं</translation>
    </message>
    <message>
        <source>expired</source>
        <translation>एक्सपायर</translation>
    </message>
    <message>
        <source>out of limits</source>
        <translation>सीमा से बाहर</translation>
    </message>
    <message>
        <source>not met, reason not known</source>
        <translation>ठीक नहीं, वजह पता नहीं</translation>
    </message>
    <message>
        <source>%1, below %2</source>
        <translation>%1, %2 से कम</translation>
    </message>
    <message>
        <source>%1, above %2</source>
        <translation>%1, %2 से ज़्यादा</translation>
    </message>
    <message numerus="yes">
        <source>on for %1 of %n minute(s)</source>
        <translation>
            <numerusform>%n में से %1 मिनट चालू</numerusform>
            <numerusform>%n में से %1 मिनट चालू</numerusform>
        </translation>
    </message>
    <message>
        <source>failed step %1 of %2: %3</source>
        <translation>जाँच %1 फ़ेल (कुल %2): %3</translation>
    </message>
    <message>
        <source>%1 of %2 there</source>
        <translation>%2 में से %1 मौजूद</translation>
    </message>
    <message>
        <source>%1 of %2 in date</source>
        <translation>%2 में से %1 की तारीख़ सही</translation>
    </message>
    <message>
        <source>%1 whole of %2; short of: %3</source>
        <translation>%2 में से %1 पूरी; कम: %3</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>नहीं देखा</translation>
    </message>
    <message>
        <source>function test not finished</source>
        <translation>जाँच पूरी नहीं</translation>
    </message>
    <message>
        <source>used, not seen again since</source>
        <translation>इस्तेमाल हुआ, फिर नहीं देखा</translation>
    </message>
    <message>
        <source>%1 to %2 %3</source>
        <translation>%1 से %2 %3</translation>
    </message>
    <message>
        <source>at least %1 %2</source>
        <translation>कम से कम %1 %2</translation>
    </message>
    <message>
        <source>at most %1 %2</source>
        <translation>ज़्यादा से ज़्यादा %1 %2</translation>
    </message>
    <message numerus="yes">
        <source>at least %n minute(s)</source>
        <translation>
            <numerusform>कम से कम %n मिनट</numerusform>
            <numerusform>कम से कम %n मिनट</numerusform>
        </translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>कम से कम %1</translation>
    </message>
    <message numerus="yes">
        <source>at least %n whole kit(s)</source>
        <translation>
            <numerusform>कम से कम %n पूरी किट</numerusform>
            <numerusform>कम से कम %n पूरी किट</numerusform>
        </translation>
    </message>
    <message>
        <source>on since %1</source>
        <translation>%1 से चालू</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n step(s) passed</source>
        <translation>
            <numerusform>%n में से %1 जाँच सही</numerusform>
            <numerusform>%n में से %1 जाँच सही</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s)</source>
        <translation>
            <numerusform>%n पूरी किट</numerusform>
            <numerusform>%n पूरी किट</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s) left</source>
        <translation>
            <numerusform>%n मिनट बाक़ी</numerusform>
            <numerusform>%n मिनट बाक़ी</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 min left, at least %n minute(s) wanted</source>
        <translation>
            <numerusform>%1 मिनट बाक़ी, चाहिए %n</numerusform>
            <numerusform>%1 मिनट बाक़ी, चाहिए %n</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReportText</name>
    <message>
        <source>%1 of %2</source>
        <comment>page</comment>
        <translation>%2 में से %1</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>पृष्ठ %1</translation>
    </message>
    <message>
        <source>%1 (continued)</source>
        <translation>%1 (जारी)</translation>
    </message>
    <message>
        <source>There is nothing to show for these days.</source>
        <translation>इन दिनों के लिए दिखाने को कुछ नहीं है।</translation>
    </message>
    <message>
        <source>The numbers behind it</source>
        <translation>इसके पीछे के आँकड़े</translation>
    </message>
    <message>
        <source>How these figures are made</source>
        <translation>ये आँकड़े कैसे बने हैं</translation>
    </message>
    <message>
        <source>Please note</source>
        <translation>कृपया ध्यान दें</translation>
    </message>
    <message>
        <source>To check this report</source>
        <translation>इस रिपोर्ट की जाँच के लिए</translation>
    </message>
    <message>
        <source>Made %1 at station %2.</source>
        <translation>%1 को स्टेशन %2 पर बनी।</translation>
    </message>
    <message>
        <source>Last record of the ledger then: %1</source>
        <translation>उस समय बही का अंतिम अभिलेख: %1</translation>
    </message>
    <message>
        <source>“cradlepost verify” at that station shows whether the ledger is whole, with this record in it.</source>
        <translation>उस स्टेशन पर “cradlepost verify” दिखाता है कि बही पूरी है या नहीं, और यह अभिलेख उसमें है या नहीं।</translation>
    </message>
    <message>
        <source>Made %1 · ledger %2…</source>
        <translation>%1 को बनी · बही %2…</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>हाँ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>नहीं</translation>
    </message>
</context>
<context>
    <name>RoundText</name>
    <message>
        <source>Round of the day shift</source>
        <translation>दिन की शिफ्ट का राउंड</translation>
    </message>
    <message>
        <source>Round of the night shift</source>
        <translation>रात की शिफ्ट का राउंड</translation>
    </message>
    <message>
        <source>Round of the morning shift</source>
        <translation>सुबह की शिफ्ट का राउंड</translation>
    </message>
    <message>
        <source>Round of the evening shift</source>
        <translation>शाम की शिफ्ट का राउंड</translation>
    </message>
    <message>
        <source>Round of the shift %1</source>
        <translation>शिफ्ट %1 का राउंड</translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n answered</source>
        <translation>
            <numerusform>%n में से %1 जवाब</numerusform>
            <numerusform>%n में से %1 जवाब</numerusform>
        </translation>
    </message>
    <message>
        <source>Take up the round · %1</source>
        <translation>राउंड जारी रखें · %1</translation>
    </message>
    <message>
        <source>Take up the re-check · %1</source>
        <translation>दोबारा जाँच जारी रखें · %1</translation>
    </message>
    <message>
        <source>Take up the check before a birth · %1</source>
        <translation>डिलीवरी से पहले की जाँच जारी रखें · %1</translation>
    </message>
    <message>
        <source>Take up the check after use · %1</source>
        <translation>इस्तेमाल के बाद की जाँच जारी रखें · %1</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>राउंड शुरू करें</translation>
    </message>
    <message>
        <source>Re-check what is missing</source>
        <translation>कमियाँ दोबारा जाँचें</translation>
    </message>
    <message>
        <source>Check before a birth</source>
        <translation>डिलीवरी से पहले की जाँच</translation>
    </message>
    <message>
        <source>Check after use</source>
        <translation>इस्तेमाल के बाद की जाँच</translation>
    </message>
    <message>
        <source>%1, begun %2</source>
        <extracomment>%1 initials, %2 a time</extracomment>
        <translation>%1, शुरू %2</translation>
    </message>
    <message>
        <source>It counts for %1, and is late.</source>
        <translation>यह %1 के लिए गिना जाएगा, देर से।</translation>
    </message>
    <message>
        <source>Take up the spot check · %1</source>
        <translation>स्वतंत्र जाँच आगे बढ़ाएँ · %1</translation>
    </message>
    <message>
        <source>Spot check</source>
        <translation>स्वतंत्र जाँच</translation>
    </message>
</context>
<context>
    <name>ShiftText</name>
    <message>
        <source>Nobody has finished a round in this shift, so nothing is known of it.</source>
        <translation>इस शिफ्ट में अभी कोई राउंड पूरा नहीं हुआ, इसलिए हाल पता नहीं।</translation>
    </message>
    <message numerus="yes">
        <source>**One is being walked: %1 of %n item(s) answered.**</source>
        <translation>
            <numerusform>**एक राउंड चल रहा है: %n में से %1 जवाब।**</numerusform>
            <numerusform>**एक राउंड चल रहा है: %n में से %1 जवाब।**</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Earlier shifts left %n gap(s) open.</source>
        <translation>
            <numerusform>पिछली शिफ्टों की %n कमी बाक़ी है।</numerusform>
            <numerusform>पिछली शिफ्टों की %n कमियाँ बाक़ी हैं।</numerusform>
        </translation>
    </message>
    <message>
        <source>late</source>
        <translation>देर</translation>
    </message>
    <message>
        <source>%1; open %2</source>
        <translation>%1; %2 से बाक़ी</translation>
    </message>
    <message>
        <source>Look at it now</source>
        <translation>अभी देखें</translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>अभी कोई नहीं</translation>
    </message>
    <message>
        <source>runs by itself</source>
        <translation>अपने आप</translation>
    </message>
    <message>
        <source>seen %1, %2 ago</source>
        <translation>देखा %1, %2 पहले</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>लागू नहीं</translation>
    </message>
    <message>
        <source>ready at %1</source>
        <translation>%1 पर तैयार</translation>
    </message>
    <message>
        <source>warming, %1 to go</source>
        <translation>गर्म हो रहा, %1 बाक़ी</translation>
    </message>
    <message numerus="yes">
        <source>on for %1 of %n minute(s), since %2</source>
        <translation>
            <numerusform>%2 से चालू, %n में से %1 मिनट</numerusform>
            <numerusform>%2 से चालू, %n में से %1 मिनट</numerusform>
        </translation>
    </message>
    <message>
        <source>warm since %1</source>
        <translation>%1 से गर्म</translation>
    </message>
    <message>
        <source>on since %1 · %2</source>
        <translation>%1 से चालू · %2</translation>
    </message>
    <message>
        <source>short of: %1</source>
        <translation>कम: %1</translation>
    </message>
    <message>
        <source>limits %1</source>
        <translation>सीमा %1</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>no round</source>
        <translation>राउंड नहीं</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message numerus="yes">
        <source>%1: a gap in %2 of %n round(s)</source>
        <translation>
            <numerusform>%1: %n में से %2 राउंड में कमी</numerusform>
            <numerusform>%1: %n में से %2 राउंड में कमी</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No gap in %n round(s)</source>
        <translation>
            <numerusform>%n राउंड में कोई कमी नहीं</numerusform>
            <numerusform>%n राउंड में कोई कमी नहीं</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1, last %n day(s)</source>
        <translation>
            <numerusform>%1, पिछला %n दिन</numerusform>
            <numerusform>%1, पिछले %n दिन</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1; %n shift(s) without a round</source>
        <translation>
            <numerusform>%1; %n शिफ्ट में राउंड नहीं</numerusform>
            <numerusform>%1; %n शिफ्टों में राउंड नहीं</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TimeText</name>
    <message>
        <source>Day</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>Night</source>
        <translation>रात</translation>
    </message>
    <message>
        <source>Morning</source>
        <translation>सुबह</translation>
    </message>
    <message>
        <source>Evening</source>
        <translation>शाम</translation>
    </message>
    <message>
        <source>%1, %2 · %3 to %4</source>
        <extracomment>%1 name of the shift, %2 day, %3 and %4 clock times</extracomment>
        <translation>%1, %2 · %3 से %4</translation>
    </message>
    <message numerus="yes">
        <source>%n min</source>
        <comment>a length of time</comment>
        <translation>
            <numerusform>%n मिनट</numerusform>
            <numerusform>%n मिनट</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n h</source>
        <comment>a length of time in hours</comment>
        <translation>
            <numerusform>%n घंटा</numerusform>
            <numerusform>%n घंटे</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <comment>a length of time</comment>
        <translation>
            <numerusform>%n दिन</numerusform>
            <numerusform>%n दिन</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>VerdictText</name>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 an item of the checklist, %2 why it is not met</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n critical gap(s).</source>
        <translation>
            <numerusform>%n गंभीर कमी।</numerusform>
            <numerusform>%n गंभीर कमियाँ।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n critical item(s) not seen.</source>
        <translation>
            <numerusform>%n अति ज़रूरी चीज़ नहीं देखी।</numerusform>
            <numerusform>%n अति ज़रूरी चीज़ें नहीं देखीं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lesser gap(s).</source>
        <translation>
            <numerusform>%n छोटी कमी।</numerusform>
            <numerusform>%n छोटी कमियाँ।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s), none critical.</source>
        <translation>
            <numerusform>%n कमी, गंभीर नहीं।</numerusform>
            <numerusform>%n कमियाँ, कोई गंभीर नहीं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n lesser item(s) not seen.</source>
        <translation>
            <numerusform>%n चीज़ नहीं देखी, अति ज़रूरी नहीं।</numerusform>
            <numerusform>%n चीज़ें नहीं देखीं, कोई अति ज़रूरी नहीं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %n item(s) met, round finished %2.</source>
        <translation>
            <numerusform>%n में से %1 चीज़ ठीक, राउंड पूरा %2।</numerusform>
            <numerusform>%n में से %1 चीज़ें ठीक, राउंड पूरा %2।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to go</source>
        <translation>
            <numerusform>%n चीज़ बाक़ी</numerusform>
            <numerusform>%n चीज़ें बाक़ी</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1 of %2 items met · readiness index %3, mean of %n section(s)</source>
        <translation>
            <numerusform>%2 में से %1 चीज़ें ठीक · तैयारी इंडेक्स %3, %n भाग का</numerusform>
            <numerusform>%2 में से %1 चीज़ें ठीक · तैयारी इंडेक्स %3, %n भागों का औसत</numerusform>
        </translation>
    </message>
    <message>
        <source>What was warming is warm by the clock now.</source>
        <translation>जो गर्म हो रहा था, घड़ी के हिसाब से अब गर्म है।</translation>
    </message>
</context>
<context>
    <name>WardText</name>
    <message>
        <source>Not ready</source>
        <translation>तैयार नहीं</translation>
    </message>
    <message>
        <source>Ready with gaps</source>
        <translation>कमियों के साथ तैयार</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>critical</source>
        <translation>अति ज़रूरी</translation>
    </message>
    <message>
        <source>major</source>
        <translation>ज़रूरी</translation>
    </message>
    <message>
        <source>minor</source>
        <translation>सामान्य</translation>
    </message>
    <message>
        <source>met</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>कमी</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>लागू नहीं</translation>
    </message>
    <message>
        <source>not checked</source>
        <translation>नहीं देखा</translation>
    </message>
    <message>
        <source>absent</source>
        <translation>नहीं है</translation>
    </message>
    <message>
        <source>not working</source>
        <translation>खराब</translation>
    </message>
    <message>
        <source>not clean</source>
        <translation>साफ़ नहीं</translation>
    </message>
    <message>
        <source>expired</source>
        <translation>एक्सपायर</translation>
    </message>
    <message>
        <source>out of limits</source>
        <translation>सीमा से बाहर</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
    <message>
        <source>Round of the shift</source>
        <translation>शिफ्ट का राउंड</translation>
    </message>
    <message>
        <source>Re-check of what is missing</source>
        <translation>कमियों की दोबारा जाँच</translation>
    </message>
    <message>
        <source>Check before a birth</source>
        <translation>डिलीवरी से पहले की जाँच</translation>
    </message>
    <message>
        <source>Check after use</source>
        <translation>इस्तेमाल के बाद की जाँच</translation>
    </message>
    <message>
        <source>no round</source>
        <translation>राउंड नहीं</translation>
    </message>
    <message>
        <source>critical gap</source>
        <translation>गंभीर कमी</translation>
    </message>
    <message>
        <source>Never delay the care of a mother or baby to fill this in. Leave at any time: every answer is kept.</source>
        <translation>इसे भरने के लिए माँ या बच्चे की देखभाल कभी न रोकें। कभी भी छोड़ सकते हैं: हर जवाब सेव रहता है।</translation>
    </message>
    <message>
        <source>Cradlepost supports local protocol and licensed clinical judgement and never replaces them. It is no medical device and gives no treatment advice. Its limits are defaults that the facility sets. It holds no patient data: write none into it.</source>
        <translation>Cradlepost लोकल प्रोटोकॉल और लाइसेंस वाले डॉक्टर-नर्स के क्लिनिकल फ़ैसले में मदद करता है, उनकी जगह कभी नहीं लेता। यह मेडिकल डिवाइस नहीं है और इलाज की सलाह नहीं देता। इसकी सीमाएँ शुरुआती हैं, अस्पताल अपनी तय करता है। इसमें मरीज़ की जानकारी नहीं रहती: यहाँ न लिखें।</translation>
    </message>
    <message>
        <source>Spot check</source>
        <translation>स्वतंत्र जाँच</translation>
    </message>
</context>
<context>
    <name>cradlepost::ActionTable</name>
    <message>
        <source>What is missing</source>
        <translation>क्या कमी है</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>क्या करें</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>कौन</translation>
    </message>
    <message>
        <source>By</source>
        <translation>कब तक</translation>
    </message>
    <message>
        <source>What to mend</source>
        <translation>क्या ठीक करें</translation>
    </message>
</context>
<context>
    <name>cradlepost::AnswerEditor</name>
    <message>
        <source>Gap</source>
        <translation>कमी</translation>
    </message>
</context>
<context>
    <name>cradlepost::ChartCanvas</name>
    <message>
        <source>Chart</source>
        <translation>चार्ट</translation>
    </message>
</context>
<context>
    <name>cradlepost::ChartView</name>
    <message>
        <source>Picture (*.png);;Drawing (*.svg);;Table (*.csv)</source>
        <translation>तस्वीर (*.png);;रेखाचित्र (*.svg);;तालिका (*.csv)</translation>
    </message>
    <message>
        <source>Save the chart</source>
        <translation>चार्ट सहेजें</translation>
    </message>
    <message>
        <source>Chart  T</source>
        <translation>चार्ट  T</translation>
    </message>
    <message>
        <source>Table  T</source>
        <translation>तालिका  T</translation>
    </message>
    <message>
        <source>Show the chart</source>
        <translation>चार्ट दिखाएँ</translation>
    </message>
    <message>
        <source>Show the table behind it</source>
        <translation>इसकी तालिका दिखाएँ</translation>
    </message>
    <message>
        <source>Save…</source>
        <translation>सहेजें…</translation>
    </message>
    <message>
        <source>Save this chart</source>
        <translation>यह चार्ट सहेजें</translation>
    </message>
</context>
<context>
    <name>cradlepost::ConfirmEditor</name>
    <message>
        <source>Met</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>Enter</source>
        <comment>the key</comment>
        <translation>Enter</translation>
    </message>
</context>
<context>
    <name>cradlepost::CountEditor</name>
    <message>
        <source>like 6 03/2027</source>
        <translation>जैसे 6 03/2027</translation>
    </message>
    <message>
        <source>Type how many there are, 0 for none.</source>
        <translation>कितने हैं, लिखें। न हों तो 0।</translation>
    </message>
    <message>
        <source>Type how many and their expiry, each lot after a comma: 6 03/2027, 4 12/2026. 0 for none.</source>
        <translation>गिनती और एक्सपायरी लिखें, हर लॉट कॉमा के बाद: 6 03/2027, 4 12/2026। न हों तो 0।</translation>
    </message>
    <message>
        <source>%1 is not a number of pieces.</source>
        <translation>%1 गिनती नहीं है।</translation>
    </message>
    <message>
        <source>How many, a blank, the expiry; the next lot after a comma.</source>
        <translation>गिनती, खाली जगह, एक्सपायरी; अगला लॉट कॉमा के बाद।</translation>
    </message>
    <message>
        <source>%1 in date · %2</source>
        <extracomment>%1 pieces that are not expired, %2 &quot;at least 10&quot;</extracomment>
        <translation>%1 की तारीख़ सही · %2</translation>
    </message>
    <message>
        <source>%1, expired: %2</source>
        <translation>%1, एक्सपायर: %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a lot: %1 pieces, %2 its expiry</extracomment>
        <translation>%1 नग (%2)</translation>
    </message>
</context>
<context>
    <name>cradlepost::CylinderEditor</name>
    <message>
        <source>L/min</source>
        <translation>L/min</translation>
    </message>
    <message>
        <source>Gauge</source>
        <translation>गेज</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>साइज़</translation>
    </message>
    <message>
        <source>Planned flow</source>
        <translation>तय फ़्लो</translation>
    </message>
    <message>
        <source>Size of the cylinder</source>
        <translation>सिलेंडर का साइज़</translation>
    </message>
    <message>
        <source>Type what the gauge shows, in %1.</source>
        <translation>गेज पर जो दिखे, %1 में लिखें।</translation>
    </message>
    <message>
        <source>Type the planned flow in L/min, above 0.</source>
        <translation>तय फ़्लो L/min में लिखें, 0 से ज़्यादा।</translation>
    </message>
    <message>
        <source>A flow of %1 L/min cannot be.</source>
        <translation>%1 L/min फ़्लो नहीं हो सकता।</translation>
    </message>
    <message>
        <source>%1 %2 cannot be: full is %3. Read it again, and see that the size is right.</source>
        <translation>%1 %2 नहीं हो सकता: भरा हुआ %3 है। दोबारा पढ़ें, साइज़ भी देखें।</translation>
    </message>
    <message>
        <source>= %1 at %2 L/min · %3</source>
        <translation>= %1, %2 L/min पर · %3</translation>
    </message>
    <message numerus="yes">
        <source>%n min</source>
        <comment>a length of time</comment>
        <translation>
            <numerusform>%n मिनट</numerusform>
            <numerusform>%n मिनट</numerusform>
        </translation>
    </message>
    <message>
        <source>Keys: s for the size, f for the flow and back.</source>
        <translation>s: साइज़। f: फ़्लो और वापस।</translation>
    </message>
</context>
<context>
    <name>cradlepost::FinishBar</name>
    <message>
        <source>Go on</source>
        <translation>जारी रखें</translation>
    </message>
    <message>
        <source>Finish as it stands</source>
        <translation>ऐसे ही पूरा करें</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Enter</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) not seen yet: they count as not checked.</source>
        <translation>
            <numerusform>%n चीज़ अभी नहीं देखी: “नहीं देखा” में गिनी जाएगी।</numerusform>
            <numerusform>%n चीज़ें अभी नहीं देखीं: “नहीं देखा” में गिनी जाएँगी।</numerusform>
        </translation>
    </message>
    <message>
        <source>All is answered.</source>
        <translation>सब जवाब हो गए।</translation>
    </message>
</context>
<context>
    <name>cradlepost::GapEditor</name>
    <message>
        <source>Keep</source>
        <translation>सेव करें</translation>
    </message>
    <message>
        <source>Nothing about a patient</source>
        <translation>मरीज़ के बारे में कुछ नहीं</translation>
    </message>
    <message>
        <source>Who mends it</source>
        <translation>किसके ज़िम्मे</translation>
    </message>
    <message>
        <source>By when</source>
        <translation>कब तक</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>टिप्पणी</translation>
    </message>
    <message>
        <source>No gap chosen</source>
        <translation>कोई कमी नहीं चुनी</translation>
    </message>
    <message>
        <source>Choose a gap to say who mends it and by when.</source>
        <translation>कमी चुनें, फिर बताएँ किसके ज़िम्मे और कब तक।</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>as it is</source>
        <translation>जैसा है</translation>
    </message>
    <message>
        <source>end of this shift</source>
        <translation>इस शिफ्ट का अंत</translation>
    </message>
    <message>
        <source>in 1 hour</source>
        <translation>1 घंटे में</translation>
    </message>
    <message>
        <source>in 1 day</source>
        <translation>1 दिन में</translation>
    </message>
    <message>
        <source>in 3 days</source>
        <translation>3 दिन में</translation>
    </message>
    <message>
        <source>in 7 days</source>
        <translation>7 दिन में</translation>
    </message>
    <message>
        <source>in 30 days</source>
        <translation>30 दिन में</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>सेव हुआ।</translation>
    </message>
</context>
<context>
    <name>cradlepost::GapsPage</name>
    <message>
        <source>Mended in the last 14 days</source>
        <translation>पिछले 14 दिन में ठीक हुईं</translation>
    </message>
    <message>
        <source>Re-check what is missing</source>
        <translation>कमियाँ दोबारा जाँचें</translation>
    </message>
    <message>
        <source>Open gaps</source>
        <translation>बाक़ी कमियाँ</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>कोई कमी बाक़ी नहीं।</translation>
    </message>
    <message>
        <source>Mended gaps</source>
        <translation>ठीक हुई कमियाँ</translation>
    </message>
    <message>
        <source>What was missing</source>
        <translation>क्या कमी थी</translation>
    </message>
    <message>
        <source>How long</source>
        <translation>कितने समय</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>कौन</translation>
    </message>
    <message>
        <source>Mended</source>
        <translation>कब ठीक</translation>
    </message>
    <message>
        <source>Nothing was mended in this time.</source>
        <translation>इस समय में कुछ ठीक नहीं हुआ।</translation>
    </message>
</context>
<context>
    <name>cradlepost::HeaderBar</name>
    <message>
        <source>Ward</source>
        <translation>वार्ड</translation>
    </message>
    <message>
        <source>In charge</source>
        <translation>इंचार्ज</translation>
    </message>
    <message>
        <source>Who walks the round: these initials go into each record</source>
        <translation>राउंड किसका: ये इनिशियल हर रिकॉर्ड में जाते हैं</translation>
    </message>
    <message>
        <source>Who is in charge?</source>
        <translation>इंचार्ज कौन?</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>saved %1:%2</source>
        <translation>सेव %1:%2</translation>
    </message>
</context>
<context>
    <name>cradlepost::ItemCard</name>
    <message>
        <source>This always applies here: it is met or a gap.</source>
        <translation>यह यहाँ हमेशा लागू है: ठीक या कमी।</translation>
    </message>
    <message>
        <source>Taken back. Esc brings it again.</source>
        <translation>वापस लिया। Esc से फिर आएगा।</translation>
    </message>
    <message>
        <source>%1 is kept. Esc shows it again, Delete takes it back.</source>
        <translation>%1 सेव है। Esc से फिर दिखेगा, Delete से हटेगा।</translation>
    </message>
    <message>
        <source>Enter makes it a gap instead of %1, Esc goes back.</source>
        <translation>Enter: %1 की जगह कमी। Esc: वापस।</translation>
    </message>
    <message>
        <source>Enter keeps what is typed instead of %1, Esc goes back.</source>
        <translation>Enter: %1 की जगह नया जवाब। Esc: वापस।</translation>
    </message>
    <message>
        <source>the answer</source>
        <translation>जवाब</translation>
    </message>
    <message>
        <source>%1 is kept. Take it back with Delete first.</source>
        <translation>%1 सेव है। पहले Delete से हटाएँ।</translation>
    </message>
    <message>
        <source>A gap instead of %1? Choose why, Enter accepts, Esc goes back.</source>
        <translation>%1 की जगह कमी? वजह चुनें। Enter: मंज़ूर। Esc: वापस।</translation>
    </message>
    <message>
        <source>Why? Choose, then Enter. Esc goes back.</source>
        <translation>वजह चुनें, फिर Enter। Esc: वापस।</translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation>लागू नहीं</translation>
    </message>
    <message>
        <source>Not kept yet: Enter keeps it.</source>
        <translation>अभी सेव नहीं: Enter से सेव होगा।</translation>
    </message>
</context>
<context>
    <name>cradlepost::KitEditor</name>
    <message>
        <source>%1, %2 a kit</source>
        <translation>%1, हर किट में %2</translation>
    </message>
    <message>
        <source>Count each part; 0 where there is none.</source>
        <translation>हर सामान गिनें। न हो तो 0।</translation>
    </message>
    <message numerus="yes">
        <source>Makes %n whole kit(s); %1 sets the limit.</source>
        <translation>
            <numerusform>%n पूरी किट बनेगी; सबसे कम: %1।</numerusform>
            <numerusform>%n पूरी किट बनेंगी; सबसे कम: %1।</numerusform>
        </translation>
    </message>
    <message>
        <source>Asked: %1.</source>
        <translation>चाहिए: %1।</translation>
    </message>
    <message>
        <source>Enter goes to the next part, arrows go back.</source>
        <translation>Enter: अगला सामान। तीर: पीछे।</translation>
    </message>
</context>
<context>
    <name>cradlepost::MainWindow</name>
    <message>
        <source>Cradlepost</source>
        <translation>Cradlepost</translation>
    </message>
    <message>
        <source>This shift</source>
        <translation>यह शिफ्ट</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>राउंड</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>कमियाँ</translation>
    </message>
    <message>
        <source>Stores</source>
        <translation>स्टोर</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>महीना</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>यूनिट</translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation>सेटिंग</translation>
    </message>
</context>
<context>
    <name>cradlepost::MarksLegend</name>
    <message>
        <source>Marks in use</source>
        <translation>निशानों का मतलब</translation>
    </message>
</context>
<context>
    <name>cradlepost::MeasureEditor</name>
    <message>
        <source>Type the reading, or − when there is none to read.</source>
        <translation>रीडिंग लिखें। न मिले तो −।</translation>
    </message>
    <message>
        <source>%1 is not a number. Type it as the instrument shows it.</source>
        <translation>%1 संख्या नहीं है। मशीन पर जैसा दिखे, लिखें।</translation>
    </message>
    <message>
        <source>%1 cannot be: only %2 to %3 %4 is possible. Read it again.</source>
        <translation>%1 नहीं हो सकता: %2 से %3 %4 ही संभव है। दोबारा पढ़ें।</translation>
    </message>
    <message>
        <source>− alone, then Enter: gap.</source>
        <translation>सिर्फ़ −, फिर Enter: कमी।</translation>
    </message>
    <message>
        <source>%1 · %2 to %3</source>
        <extracomment>%1 a unit, %2 and %3 limits</extracomment>
        <translation>%1 · %2 से %3</translation>
    </message>
    <message>
        <source>%1 · at least %2</source>
        <translation>%1 · कम से कम %2</translation>
    </message>
    <message>
        <source>%1 · at most %2</source>
        <translation>%1 · ज़्यादा से ज़्यादा %2</translation>
    </message>
</context>
<context>
    <name>cradlepost::NavigationRail</name>
    <message>
        <source>Places</source>
        <translation>पेज</translation>
    </message>
</context>
<context>
    <name>cradlepost::OutcomeMark</name>
    <message>
        <source>Met</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>Critical gap</source>
        <translation>गंभीर कमी</translation>
    </message>
    <message>
        <source>Gap</source>
        <translation>कमी</translation>
    </message>
    <message>
        <source>Does not apply</source>
        <translation>लागू नहीं</translation>
    </message>
    <message>
        <source>Not checked</source>
        <translation>नहीं देखा</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>देर</translation>
    </message>
</context>
<context>
    <name>cradlepost::ReadinessStrip</name>
    <message>
        <source>still to come</source>
        <translation>अभी आना है</translation>
    </message>
    <message numerus="yes">
        <source>(the last %Ln day(s) shown)</source>
        <extracomment>behind the title of the strip when not all of its days fit</extracomment>
        <translation>
            <numerusform>(पिछला %Ln दिन)</numerusform>
            <numerusform>(पिछले %Ln दिन)</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::ResultPane</name>
    <message>
        <source>See This shift</source>
        <translation>यह शिफ्ट देखें</translation>
    </message>
    <message>
        <source>Nothing is missing.</source>
        <translation>कोई कमी नहीं।</translation>
    </message>
    <message numerus="yes">
        <source>%n lesser item(s) were not seen.</source>
        <translation>
            <numerusform>%n चीज़ नहीं देखी, अति ज़रूरी नहीं।</numerusform>
            <numerusform>%n चीज़ें नहीं देखीं, कोई अति ज़रूरी नहीं।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1. Saved as record %2 of station %3…</source>
        <translation>%1। रिकॉर्ड %2 में सेव, स्टेशन %3…</translation>
    </message>
    <message>
        <source>Another check</source>
        <translation>दूसरी जाँच</translation>
    </message>
    <message>
        <source>**%1** is done, finished %2.</source>
        <extracomment>%1 what was walked, %2 a time</extracomment>
        <translation>**%1**: काम पूरा, समय %2।</translation>
    </message>
    <message numerus="yes">
        <source>**%1** is done: %2 of %n item(s) looked at. It changes no verdict and no gap.</source>
        <extracomment>%1 the words &quot;Spot check&quot;, %2 how many of the items were looked at</extracomment>
        <translation>
            <numerusform>**%1** पूरी हुई: %n चीज़ में से %2 देखी गई। इससे न फ़ैसला बदलता है, न कोई कमी।</numerusform>
            <numerusform>**%1** पूरी हुई: %n चीज़ों में से %2 देखी गईं। इससे न फ़ैसला बदलता है, न कोई कमी।</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>cradlepost::RoundPage</name>
    <message>
        <source>First say who walks it: choose or type initials.</source>
        <translation>पहले बताएँ राउंड किसका है: इनिशियल चुनें या लिखें।</translation>
    </message>
</context>
<context>
    <name>cradlepost::SectionList</name>
    <message>
        <source>%1 of %2</source>
        <extracomment>how many of a section&apos;s items were answered</extracomment>
        <translation>%1 / %2</translation>
    </message>
    <message>
        <source>Sections</source>
        <translation>भाग</translation>
    </message>
</context>
<context>
    <name>cradlepost::SetupPage</name>
    <message>
        <source>This ward</source>
        <translation>यह वार्ड</translation>
    </message>
    <message>
        <source>Two shifts of 12 hours</source>
        <translation>12 घंटे की दो शिफ्ट</translation>
    </message>
    <message>
        <source>Three shifts of 8 hours</source>
        <translation>8 घंटे की तीन शिफ्ट</translation>
    </message>
    <message>
        <source>Our own</source>
        <translation>अपनी</translation>
    </message>
    <message>
        <source>Initials, with commas between</source>
        <translation>इनिशियल, बीच में कॉमा</translation>
    </message>
    <message>
        <source>Name of the ward</source>
        <translation>वार्ड का नाम</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>टाइम ज़ोन</translation>
    </message>
    <message>
        <source>Shifts</source>
        <translation>शिफ्ट</translation>
    </message>
    <message>
        <source>Start and name of each shift</source>
        <translation>हर शिफ्ट का समय और नाम</translation>
    </message>
    <message>
        <source>Who walks rounds</source>
        <translation>राउंड किन-किन का</translation>
    </message>
    <message>
        <source>Save the ward</source>
        <translation>वार्ड सेव करें</translation>
    </message>
    <message>
        <source>Limits: %1</source>
        <translation>सीमा: %1</translation>
    </message>
    <message>
        <source>This computer</source>
        <translation>यह कंप्यूटर</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>सिस्टम जैसा</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>उजला</translation>
    </message>
    <message>
        <source>Dark, for the night shift</source>
        <translation>गहरा, रात की शिफ्ट के लिए</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>भाषा</translation>
    </message>
    <message>
        <source>Text size</source>
        <translation>अक्षरों का साइज़</translation>
    </message>
    <message>
        <source>Light and dark</source>
        <translation>उजला या गहरा</translation>
    </message>
    <message>
        <source>Database</source>
        <translation>डेटाबेस</translation>
    </message>
    <message>
        <source>Verify every record</source>
        <translation>हर रिकॉर्ड जाँचें</translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation>अभी बैकअप लें</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>सेव हुआ।</translation>
    </message>
    <message>
        <source>The ward has no name.</source>
        <translation>वार्ड का नाम लिखें।</translation>
    </message>
    <message>
        <source>Nobody is named who walks rounds.</source>
        <translation>राउंड करने वालों के इनिशियल लिखें।</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) verified: every signature holds and nothing was changed.</source>
        <translation>
            <numerusform>%n रिकॉर्ड जाँचा: हस्ताक्षर सही, कुछ बदला नहीं।</numerusform>
            <numerusform>%n रिकॉर्ड जाँचे: हस्ताक्षर सही, कुछ बदला नहीं।</numerusform>
        </translation>
    </message>
    <message>
        <source>Backed up to %1. Keep a copy away from this computer.</source>
        <translation>बैकअप %1 में है। एक कॉपी इस कंप्यूटर से अलग रखें।</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>स्रोत: %1</translation>
    </message>
</context>
<context>
    <name>cradlepost::SinceEditor</name>
    <message>
        <source>hh:mm</source>
        <comment>a clock time, as a placeholder</comment>
        <translation>घं:मि</translation>
    </message>
    <message>
        <source>Type when it was switched on, as 19:24 or 1924.</source>
        <translation>कब चालू किया, लिखें: 19:24 या 1924।</translation>
    </message>
    <message>
        <source>%1 is no clock time. Type it as 19:24 or 1924.</source>
        <translation>%1 समय नहीं है। 19:24 या 1924 जैसा लिखें।</translation>
    </message>
    <message>
        <source>Enter alone: switched on just now.</source>
        <translation>सिर्फ़ Enter: अभी चालू किया।</translation>
    </message>
    <message>
        <source>warming, ready at %1
%2 to go</source>
        <extracomment>%1 a clock time, %2 a length of time</extracomment>
        <translation>गर्म हो रहा, %1 पर तैयार
%2 बाक़ी</translation>
    </message>
    <message>
        <source>warm since %1</source>
        <translation>%1 से गर्म</translation>
    </message>
</context>
<context>
    <name>cradlepost::StandingSheet</name>
    <message>
        <source>As it stands</source>
        <translation>अभी की स्थिति</translation>
    </message>
    <message>
        <source>As it stands: %1. %2</source>
        <translation>अभी की स्थिति: %1। %2</translation>
    </message>
</context>
<context>
    <name>cradlepost::StartPane</name>
    <message>
        <source>Who walks it</source>
        <translation>राउंड किसका</translation>
    </message>
    <message>
        <source>Keep it</source>
        <translation>रखें</translation>
    </message>
    <message numerus="yes">
        <source>**%1** is begun: %2 of %n item(s) answered, by %3.</source>
        <translation>
            <numerusform>**%1** शुरू है: %n में से %2 जवाब, %3।</numerusform>
            <numerusform>**%1** शुरू है: %n में से %2 जवाब, %3।</numerusform>
        </translation>
    </message>
    <message>
        <source>**%1** is done. %2</source>
        <translation>**%1** पूरा। %2</translation>
    </message>
    <message numerus="yes">
        <source>**%1**: %2. %n item(s) in %3.</source>
        <translation>
            <numerusform>**%1**: %2। %3 में %n चीज़।</numerusform>
            <numerusform>**%1**: %2। %3 में %n चीज़ें।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n section(s)</source>
        <translation>
            <numerusform>%n भाग</numerusform>
            <numerusform>%n भागों</numerusform>
        </translation>
    </message>
    <message>
        <source>Drop it</source>
        <translation>हाँ, हटाएँ</translation>
    </message>
    <message>
        <source>Put it aside</source>
        <translation>हटाएँ</translation>
    </message>
    <message numerus="yes">
        <source>%n answer(s) are dropped and nothing is recorded.</source>
        <translation>
            <numerusform>%n जवाब हट जाएगा, कुछ दर्ज नहीं होगा।</numerusform>
            <numerusform>%n जवाब हट जाएँगे, कुछ दर्ज नहीं होगा।</numerusform>
        </translation>
    </message>
    <message>
        <source>First say who walks it: choose or type initials.</source>
        <translation>पहले बताएँ राउंड किसका है: इनिशियल चुनें या लिखें।</translation>
    </message>
    <message>
        <source>Look at things again yourself, without seeing what the round said of them.</source>
        <translation>चीज़ों को ख़ुद दोबारा देखें, बिना यह जाने कि राउंड ने उनके बारे में क्या कहा।</translation>
    </message>
</context>
<context>
    <name>cradlepost::StepTile</name>
    <message>
        <source>passed</source>
        <translation>सही</translation>
    </message>
    <message>
        <source>failed</source>
        <translation>फ़ेल</translation>
    </message>
    <message>
        <source>to do</source>
        <translation>बाक़ी</translation>
    </message>
    <message>
        <source>now: Enter passed, − failed</source>
        <translation>अभी: Enter सही, − फ़ेल</translation>
    </message>
</context>
<context>
    <name>cradlepost::StepsEditor</name>
    <message>
        <source>%1. %2</source>
        <extracomment>%1 number of a step, %2 what to do</extracomment>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Its number</source>
        <comment>of the device that is tested</comment>
        <translation>इसका नंबर</translation>
    </message>
    <message>
        <source>Number of the device that is tested</source>
        <translation>जाँची जा रही मशीन का नंबर</translation>
    </message>
    <message>
        <source>The number of the device is too long.</source>
        <translation>मशीन का नंबर बहुत लंबा है।</translation>
    </message>
    <message>
        <source>%1 Enter goes on.</source>
        <translation>%1 आगे के लिए Enter।</translation>
    </message>
    <message>
        <source>Arrows go back. Type its number at any time.</source>
        <translation>तीर: पीछे। नंबर कभी भी लिखें।</translation>
    </message>
    <message>
        <source>Failed</source>
        <translation>फ़ेल</translation>
    </message>
</context>
<context>
    <name>cradlepost::ThisShiftPage</name>
    <message>
        <source>Mend first</source>
        <translation>पहले यह ठीक करें</translation>
    </message>
    <message>
        <source>Check before a birth</source>
        <translation>डिलीवरी से पहले की जाँच</translation>
    </message>
    <message>
        <source>Used: check after use</source>
        <translation>इस्तेमाल हुआ: बाद की जाँच</translation>
    </message>
    <message>
        <source>Left open by earlier shifts</source>
        <translation>पिछली शिफ्टों से बाक़ी</translation>
    </message>
    <message numerus="yes">
        <source>All %n</source>
        <translation>
            <numerusform>सब %n</numerusform>
            <numerusform>सब %n</numerusform>
        </translation>
    </message>
    <message>
        <source>Take up the round</source>
        <translation>राउंड जारी रखें</translation>
    </message>
    <message>
        <source>Begin the round</source>
        <translation>राउंड शुरू करें</translation>
    </message>
    <message>
        <source>Finish the check after use</source>
        <translation>इस्तेमाल के बाद की जाँच पूरी करें</translation>
    </message>
    <message>
        <source>Re-check what is missing</source>
        <translation>कमियाँ दोबारा जाँचें</translation>
    </message>
</context>
<context>
    <name>cradlepost::TroubleBar</name>
    <message>
        <source>Keep it now</source>
        <translation>अभी सेव करें</translation>
    </message>
    <message>
        <source>%1 %2 The answers are held here and kept with the next one.</source>
        <translation>%1 %2 जवाब यहाँ हैं, अगले जवाब के साथ सेव होंगे।</translation>
    </message>
</context>
<context>
    <name>cradlepost::VerdictBanner</name>
    <message>
        <source>Not ready</source>
        <translation>तैयार नहीं</translation>
    </message>
    <message>
        <source>Ready with gaps</source>
        <translation>कमियों के साथ तैयार</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>No round yet</source>
        <translation>अभी राउंड नहीं</translation>
    </message>
</context>
<context>
    <name>cradlepost::WalkPane</name>
    <message>
        <source>Section</source>
        <translation>भाग</translation>
    </message>
    <message>
        <source>Finish the round</source>
        <translation>राउंड पूरा करें</translation>
    </message>
    <message>
        <source>Finish the check</source>
        <translation>जाँच पूरी करें</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n item(s)</source>
        <translation>
            <numerusform>%1 · %n चीज़</numerusform>
            <numerusform>%1 · %n चीज़ें</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 · %2 of %3</source>
        <translation>%1 · %3 में से %2</translation>
    </message>
</context>
<context>
    <name>cradlepost::WalkSide</name>
    <message>
        <source>Leave it for now</source>
        <translation>अभी छोड़ें</translation>
    </message>
</context>
<context>
    <name>cradlepost::WhoRow</name>
    <message>
        <source>or type initials</source>
        <translation>या इनिशियल लिखें</translation>
    </message>
    <message>
        <source>Initials of who walks the round</source>
        <translation>राउंड करने वाले के इनिशियल</translation>
    </message>
</context>
<context>
    <name>PaperText</name>
    <message>
        <source>Line %1</source>
        <translation>पंक्ति %1</translation>
    </message>
    <message>
        <source>Line %1, field %2 (%3)</source>
        <extracomment>%2 the how-many-eth field of the line, %3 the name of its column</extracomment>
        <translation>पंक्ति %1, खाना %2 (%3)</translation>
    </message>
    <message>
        <source>The file is too large: %1 bytes of at most %2. Split it.</source>
        <translation>फ़ाइल बहुत बड़ी है: %1 बाइट, ज़्यादा से ज़्यादा %2। इसे बाँटें।</translation>
    </message>
    <message>
        <source>This is no text in UTF-8. Save the sheet as “CSV UTF-8”.</source>
        <translation>यह UTF-8 में लिखा पाठ नहीं है। शीट को “CSV UTF-8” के रूप में सहेजें।</translation>
    </message>
    <message>
        <source>There is no round in it. Write one round a line below the names of the columns.</source>
        <translation>इसमें कोई राउंड नहीं है। कॉलम के नामों के नीचे हर पंक्ति में एक राउंड लिखें।</translation>
    </message>
    <message>
        <source>%1 lines are more than the %2 that are taken at once. Split the sheet.</source>
        <translation>%1 पंक्तियाँ एक बार में ली जाने वाली %2 से ज़्यादा हैं। शीट को बाँटें।</translation>
    </message>
    <message>
        <source>No item of the checklist has the name “%1”. Use the names of the template.</source>
        <translation>चेकलिस्ट में “%1” नाम की कोई चीज़ नहीं है। नमूने के नाम लिखें।</translation>
    </message>
    <message>
        <source>The column “%1” is there twice.</source>
        <translation>कॉलम “%1” दो बार है।</translation>
    </message>
    <message>
        <source>The column “%1” is missing. Use the names of the template.</source>
        <translation>कॉलम “%1” नहीं है। नमूने के नाम लिखें।</translation>
    </message>
    <message>
        <source>The line has %1 fields, the line of names has %2.</source>
        <translation>इस पंक्ति में %1 खाने हैं, नामों की पंक्ति में %2।</translation>
    </message>
    <message>
        <source>This is no table as CSV has it: %1.</source>
        <translation>यह CSV के नियम की तालिका नहीं है: %1।</translation>
    </message>
    <message>
        <source>“%1” is no date. Write it as 2026-03-14.</source>
        <translation>“%1” तारीख़ नहीं है। इसे 2026-03-14 की तरह लिखें।</translation>
    </message>
    <message>
        <source>“%1” is no shift of that day. It has: %2.</source>
        <translation>“%1” उस दिन की पाली नहीं है। उस दिन हैं: %2।</translation>
    </message>
    <message>
        <source>“%1” is no clock time. Write it as 07:45.</source>
        <translation>“%1” घड़ी का समय नहीं है। इसे 07:45 की तरह लिखें।</translation>
    </message>
    <message>
        <source>%1 is not in the shift (%2), nor in the three hours after it.</source>
        <translation>%1 न पाली (%2) में है, न उसके बाद के तीन घंटों में।</translation>
    </message>
    <message>
        <source>“%1” are no initials. Write 1 to 12 characters, no full name.</source>
        <translation>“%1” नाम के अक्षर नहीं हैं। 1 से 12 अक्षर लिखें, पूरा नाम नहीं।</translation>
    </message>
    <message>
        <source>This round would be finished in the future. See the date and the time.</source>
        <translation>यह राउंड आगे के समय में पूरा होगा। तारीख़ और समय देखें।</translation>
    </message>
    <message>
        <source>The unit had no shifts on that day.</source>
        <translation>उस दिन यूनिट की कोई पाली तय नहीं थी।</translation>
    </message>
    <message>
        <source>The unit had no checklist on that day.</source>
        <translation>उस दिन यूनिट की कोई चेकलिस्ट नहीं थी।</translation>
    </message>
    <message>
        <source>This shift has its round already.</source>
        <translation>इस पाली का राउंड पहले से है।</translation>
    </message>
    <message>
        <source>Line %1 has the same shift already.</source>
        <translation>पंक्ति %1 में यही पाली पहले से है।</translation>
    </message>
    <message>
        <source>Nothing was checked in this round. Take the line out.</source>
        <translation>इस राउंड में कुछ नहीं देखा गया। यह पंक्ति हटा दें।</translation>
    </message>
    <message>
        <source>The checklist of that day does not ask this. Leave the field empty.</source>
        <translation>उस दिन की चेकलिस्ट यह नहीं पूछती। खाना ख़ाली छोड़ें।</translation>
    </message>
    <message>
        <source>“%1” is not among the people of the unit. The round is taken all the same.</source>
        <translation>“%1” यूनिट के लोगों में नहीं है। राउंड फिर भी लिया जाता है।</translation>
    </message>
    <message>
        <source>“%1” cannot be. The field takes: %2; or nothing, when it was not checked.</source>
        <translation>“%1” नहीं हो सकता। इस खाने में आता है: %2; या कुछ नहीं, जब देखा नहीं गया।</translation>
    </message>
</context>
</TS>
