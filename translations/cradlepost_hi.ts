<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="hi">
<context>
    <name>BoardText</name>
    <message>
        <source>one baby</source>
        <translation>एक शिशु</translation>
    </message>
    <message>
        <source>twins</source>
        <translation>जुड़वाँ</translation>
    </message>
    <message>
        <source>triplets</source>
        <translation>तीन शिशु</translation>
    </message>
    <message>
        <source>quadruplets</source>
        <translation>चार शिशु</translation>
    </message>
    <message>
        <source>%1, preterm</source>
        <extracomment>%1 is how many: &quot;twins&quot;</extracomment>
        <translation>%1, समय से पहले</translation>
    </message>
    <message>
        <source>about %1, %2</source>
        <translation>लगभग %1, %2</translation>
    </message>
    <message>
        <source>%1 is warm</source>
        <translation>%1 गरम है</translation>
    </message>
    <message>
        <source>%1 is warm from %2</source>
        <translation>%1 %2 से गरम</translation>
    </message>
    <message>
        <source>switch %1 on by %2</source>
        <translation>%1 को %2 तक चालू करें</translation>
    </message>
    <message>
        <source>switch %1 on now: warm from %2, too late</source>
        <translation>%1 को अभी चालू करें: %2 से गरम, देर से</translation>
    </message>
    <message>
        <source>%1 is warm from %2, too late</source>
        <translation>%1 %2 से गरम, देर से</translation>
    </message>
    <message>
        <source>no warmer is free</source>
        <translation>कोई वार्मर खाली नहीं</translation>
    </message>
    <message>
        <source>; </source>
        <translation>; </translation>
    </message>
    <message>
        <source>kits were not counted</source>
        <translation>किट नहीं गिनी गईं</translation>
    </message>
    <message>
        <source>a kit is ready</source>
        <translation>किट तैयार है</translation>
    </message>
    <message>
        <source>no kit is left</source>
        <translation>कोई किट नहीं बची</translation>
    </message>
    <message>
        <source>on for %1, since %2</source>
        <translation>%1 से चालू, %2 से</translation>
    </message>
    <message>
        <source>warm since %1</source>
        <translation>%1 से गरम</translation>
    </message>
    <message>
        <source>ready at %1</source>
        <translation>%1 पर तैयार</translation>
    </message>
    <message>
        <source>went off at %1 with a birth expected about %2: by mistake?</source>
        <translation>%1 पर बंद हुआ जबकि लगभग %2 पर प्रसव होना है: गलती से?</translation>
    </message>
    <message>
        <source>No birth is on the board</source>
        <translation>बोर्ड पर कोई प्रसव नहीं</translation>
    </message>
    <message>
        <source>A baby %1 has no warm place in time</source>
        <translation>शिशु (%1) के लिए समय पर गरम जगह नहीं</translation>
    </message>
    <message>
        <source>Switch %1 on by %2</source>
        <translation>%1 को %2 तक चालू करें</translation>
    </message>
    <message>
        <source>A warm place for every baby expected</source>
        <translation>हर आने वाले शिशु के लिए गरम जगह है</translation>
    </message>
    <message>
        <source>A birth is expected without a kit</source>
        <translation>एक प्रसव के लिए किट नहीं है</translation>
    </message>
    <message numerus="yes">
        <source>%n birth(s) expected, the next %1.</source>
        <translation>
            <numerusform>%n प्रसव अपेक्षित, %1।</numerusform>
            <numerusform>%n प्रसव अपेक्षित, अगला %1।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s) left.</source>
        <translation>
            <numerusform>%n पूरी किट बची।</numerusform>
            <numerusform>%n पूरी किट बचीं।</numerusform>
        </translation>
    </message>
    <message>
        <source>Nobody has counted the kits in this shift.</source>
        <translation>इस शिफ्ट में किसी ने किट नहीं गिनीं।</translation>
    </message>
    <message>
        <source>No warmer is on the register of devices yet.</source>
        <translation>उपकरण सूची में अभी कोई वार्मर नहीं है।</translation>
    </message>
    <message>
        <source>off, as far as entered</source>
        <translation>बंद, जितना दर्ज है</translation>
    </message>
</context>
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
    <name>ChangesSheet</name>
    <message>
        <source>No change idea was tried in this time</source>
        <translation>इस समय में बदलाव का कोई सुझाव नहीं आज़माया गया</translation>
    </message>
    <message>
        <source>“%1”: more items met since</source>
        <translation>“%1”: इसके बाद ज़्यादा चीज़ें ठीक</translation>
    </message>
    <message>
        <source>“%1”: fewer items met since</source>
        <translation>“%1”: इसके बाद कम चीज़ें ठीक</translation>
    </message>
    <message>
        <source>Change ideas: too early to say</source>
        <translation>बदलाव के सुझाव: अभी कुछ कहना जल्दी होगा</translation>
    </message>
    <message>
        <source>before</source>
        <translation>पहले</translation>
    </message>
    <message>
        <source>since</source>
        <translation>बाद में</translation>
    </message>
    <message>
        <source>Items met of those looked at, of the items named in the idea. It shows that something changed then, not that the idea did it.</source>
        <translation>सुझाव में बताई गई चीज़ों में से जितनी देखी गईं, उनमें ठीक चीज़ें। इससे दिखता है कि उस समय कुछ बदला, यह नहीं कि सुझाव से बदला।</translation>
    </message>
</context>
<context>
    <name>CodeText</name>
    <message>
        <source>above</source>
        <translation>ऊपर</translation>
    </message>
    <message>
        <source>agreement coefficient AC1</source>
        <translation>सहमति गुणांक AC1</translation>
    </message>
    <message>
        <source>kappa adjusted for prevalence and bias</source>
        <translation>prevalence और bias के लिए समायोजित kappa</translation>
    </message>
    <message>
        <source>answers that agree with spot checks</source>
        <translation>स्वतंत्र जाँच से मेल खाते जवाब</translation>
    </message>
    <message>
        <source>all</source>
        <translation>सब</translation>
    </message>
    <message>
        <source>rounds amended</source>
        <translation>सुधारे गए राउंड</translation>
    </message>
    <message>
        <source>rounds amended after their shift</source>
        <translation>शिफ्ट के बाद सुधारे गए राउंड</translation>
    </message>
    <message>
        <source>spot checks disagree</source>
        <translation>स्वतंत्र जाँच से मेल नहीं</translation>
    </message>
    <message>
        <source>rounds late</source>
        <translation>देर से हुए राउंड</translation>
    </message>
    <message>
        <source>rounds entered too fast</source>
        <translation>बहुत जल्दी भरे गए राउंड</translation>
    </message>
    <message>
        <source>rounds repeated</source>
        <translation>दोहराए गए राउंड</translation>
    </message>
    <message>
        <source>readings rounded</source>
        <translation>गोल की गई रीडिंग</translation>
    </message>
    <message>
        <source>readings that never vary</source>
        <translation>कभी न बदलने वाली रीडिंग</translation>
    </message>
    <message>
        <source>equipment</source>
        <translation>उपकरण</translation>
    </message>
    <message>
        <source>rounds faster than the floor</source>
        <translation>न्यूनतम समय से जल्दी हुए राउंड</translation>
    </message>
    <message>
        <source>a point beyond its limits</source>
        <translation>सीमा से बाहर एक बिंदु</translation>
    </message>
    <message>
        <source>by shift</source>
        <translation>शिफ्ट के हिसाब से</translation>
    </message>
    <message>
        <source>by weekday</source>
        <translation>हफ़्ते के दिन के हिसाब से</translation>
    </message>
    <message>
        <source>better since the change</source>
        <translation>बदलाव के बाद बेहतर</translation>
    </message>
    <message>
        <source>change: too early to say</source>
        <translation>बदलाव: अभी कुछ कहना जल्दी होगा</translation>
    </message>
    <message>
        <source>worse since the change</source>
        <translation>बदलाव के बाद खराब</translation>
    </message>
    <message>
        <source>change ideas</source>
        <translation>बदलाव के सुझाव</translation>
    </message>
    <message>
        <source>rounds done of those due</source>
        <translation>तय राउंड में से हुए</translation>
    </message>
    <message>
        <source>week by week</source>
        <translation>हफ़्ते-दर-हफ़्ते</translation>
    </message>
    <message>
        <source>critical</source>
        <translation>अति ज़रूरी</translation>
    </message>
    <message>
        <source>critical gaps open</source>
        <translation>बाक़ी गंभीर कमियाँ</translation>
    </message>
    <message>
        <source>rounds done</source>
        <translation>जो राउंड हुए</translation>
    </message>
    <message>
        <source>pairs of equal rounds</source>
        <translation>एक जैसे राउंडों के जोड़े</translation>
    </message>
    <message>
        <source>chance of so many equal pairs</source>
        <translation>इतने एक जैसे जोड़े होने की संभावना</translation>
    </message>
    <message>
        <source>equal pairs by chance</source>
        <translation>संयोग से एक जैसे जोड़े</translation>
    </message>
    <message>
        <source>equipment out of use</source>
        <translation>बंद पड़े उपकरण</translation>
    </message>
    <message>
        <source>fell</source>
        <translation>घटा</translation>
    </message>
    <message>
        <source>how ready</source>
        <translation>कितने तैयार</translation>
    </message>
    <message>
        <source>in time</source>
        <translation>समय पर</translation>
    </message>
    <message>
        <source>rounds missing</source>
        <translation>जो राउंड नहीं हुए</translation>
    </message>
    <message>
        <source>items by week</source>
        <translation>हफ़्ते के हिसाब से चीज़ें</translation>
    </message>
    <message>
        <source>items met</source>
        <translation>ठीक चीज़ें</translation>
    </message>
    <message>
        <source>kappa</source>
        <translation>kappa</translation>
    </message>
    <message>
        <source>late</source>
        <translation>देर से</translation>
    </message>
    <message>
        <source>items looked at</source>
        <translation>देखी गई चीज़ें</translation>
    </message>
    <message>
        <source>lost readiness</source>
        <translation>घटी हुई तैयारी</translation>
    </message>
    <message>
        <source>items that lose most</source>
        <translation>सबसे ज़्यादा तैयारी घटाने वाली चीज़ें</translation>
    </message>
    <message>
        <source>lowest readiness index</source>
        <translation>सबसे कम तैयारी इंडेक्स</translation>
    </message>
    <message>
        <source>major</source>
        <translation>ज़रूरी</translation>
    </message>
    <message>
        <source>mean readiness index</source>
        <translation>औसत तैयारी इंडेक्स</translation>
    </message>
    <message>
        <source>median length of a round</source>
        <translation>राउंड में लगा मीडियन समय</translation>
    </message>
    <message>
        <source>median time for an item</source>
        <translation>हर चीज़ पर लगा मीडियन समय</translation>
    </message>
    <message>
        <source>minor</source>
        <translation>सामान्य</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>नहीं हुआ</translation>
    </message>
    <message>
        <source>no change beyond chance</source>
        <translation>संयोग से ज़्यादा बदलाव नहीं</translation>
    </message>
    <message>
        <source>without a critical gap</source>
        <translation>बिना गंभीर कमी</translation>
    </message>
    <message>
        <source>nothing seen</source>
        <translation>कुछ नहीं देखा गया</translation>
    </message>
    <message>
        <source>all the same</source>
        <translation>सब एक जैसे</translation>
    </message>
    <message>
        <source>does not apply</source>
        <translation>लागू नहीं</translation>
    </message>
    <message>
        <source>not ready</source>
        <translation>तैयार नहीं</translation>
    </message>
    <message>
        <source>no rounds</source>
        <translation>राउंड नहीं</translation>
    </message>
    <message>
        <source>open gaps</source>
        <translation>बाक़ी कमियाँ</translation>
    </message>
    <message>
        <source>pairs</source>
        <translation>जोड़े</translation>
    </message>
    <message>
        <source>from paper</source>
        <translation>काग़ज़ से</translation>
    </message>
    <message>
        <source>readiness</source>
        <translation>तैयारी</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>रीडिंग</translation>
    </message>
    <message>
        <source>readings outside their limits</source>
        <translation>सीमा से बाहर रीडिंग</translation>
    </message>
    <message>
        <source>ready</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>ready with gaps</source>
        <translation>कमियों के साथ तैयार</translation>
    </message>
    <message>
        <source>rounds recorded after their shift</source>
        <translation>शिफ्ट के बाद दर्ज राउंड</translation>
    </message>
    <message>
        <source>rounds that repeat an earlier one</source>
        <translation>पहले के किसी राउंड जैसे राउंड</translation>
    </message>
    <message>
        <source>time to mend</source>
        <translation>ठीक होने में लगा समय</translation>
    </message>
    <message>
        <source>rose</source>
        <translation>बढ़ा</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>राउंड</translation>
    </message>
    <message>
        <source>a run on one side of the centre</source>
        <translation>बीच की रेखा के एक ही ओर लगातार बिंदु</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>अभी नहीं हुआ</translation>
    </message>
    <message>
        <source>limits set</source>
        <translation>सीमा तय</translation>
    </message>
    <message>
        <source>share</source>
        <translation>हिस्सा</translation>
    </message>
    <message>
        <source>shift</source>
        <translation>शिफ्ट</translation>
    </message>
    <message>
        <source>a shift stands out</source>
        <translation>एक शिफ्ट अलग दिखती है</translation>
    </message>
    <message>
        <source>spot checks</source>
        <translation>स्वतंत्र जाँच</translation>
    </message>
    <message>
        <source>too few</source>
        <translation>बहुत कम</translation>
    </message>
    <message>
        <source>too few points</source>
        <translation>बहुत कम बिंदु</translation>
    </message>
    <message>
        <source>too little to say</source>
        <translation>कुछ कहने के लिए बहुत कम</translation>
    </message>
    <message>
        <source>a trend</source>
        <translation>रुझान</translation>
    </message>
    <message>
        <source>trust in the entries</source>
        <translation>एंट्री पर भरोसा</translation>
    </message>
    <message>
        <source>weekday</source>
        <translation>हफ़्ते का दिन</translation>
    </message>
    <message>
        <source>a weekday stands out</source>
        <translation>हफ़्ते का एक दिन अलग दिखता है</translation>
    </message>
    <message>
        <source>entries to ask about</source>
        <translation>प्रविष्टियाँ जिनके बारे में पूछना है</translation>
    </message>
    <message>
        <source>below what chance allows</source>
        <translation>संयोग की सीमा से नीचे</translation>
    </message>
    <message>
        <source>each critical gap open</source>
        <translation>हर बाक़ी गंभीर कमी</translation>
    </message>
    <message>
        <source>each week of the oldest</source>
        <translation>सबसे पुरानी कमी का हर हफ़्ता</translation>
    </message>
    <message>
        <source>limits widened by random effects: p of the test</source>
        <translation>random effects से चौड़ी की गई सीमाएँ: जाँच का p</translation>
    </message>
    <message>
        <source>limits widened by the factor of spread: p of the test</source>
        <translation>फैलाव के गुणक से चौड़ी की गई सीमाएँ: जाँच का p</translation>
    </message>
    <message>
        <source>limits of chance alone: p of the test</source>
        <translation>केवल संयोग की सीमाएँ: जाँच का p</translation>
    </message>
    <message>
        <source>factor of spread, winsorised</source>
        <translation>फैलाव का गुणक, winsorised</translation>
    </message>
    <message>
        <source>standard deviation between units</source>
        <translation>यूनिटों के बीच मानक विचलन</translation>
    </message>
    <message>
        <source>the engineer</source>
        <translation>इंजीनियर</translation>
    </message>
    <message>
        <source>funnel</source>
        <translation>funnel</translation>
    </message>
    <message>
        <source>clearly higher</source>
        <translation>साफ़ तौर पर ऊपर</translation>
    </message>
    <message>
        <source>items</source>
        <translation>चीज़ें</translation>
    </message>
    <message>
        <source>log-likelihood, random effects</source>
        <translation>log-likelihood, random effects</translation>
    </message>
    <message>
        <source>log-likelihood, factor of spread</source>
        <translation>log-likelihood, फैलाव का गुणक</translation>
    </message>
    <message>
        <source>clearly lower</source>
        <translation>साफ़ तौर पर नीचे</translation>
    </message>
    <message>
        <source>months</source>
        <translation>महीने</translation>
    </message>
    <message>
        <source>most critical gaps counted</source>
        <translation>ज़्यादा से ज़्यादा गिनी गई गंभीर कमियाँ</translation>
    </message>
    <message>
        <source>most items counted</source>
        <translation>ज़्यादा से ज़्यादा गिनी गई चीज़ें</translation>
    </message>
    <message>
        <source>most questions counted</source>
        <translation>ज़्यादा से ज़्यादा गिने गए सवाल</translation>
    </message>
    <message>
        <source>most silent weeks counted</source>
        <translation>ज़्यादा से ज़्यादा गिने गए बिना रिपोर्ट के हफ़्ते</translation>
    </message>
    <message>
        <source>most weeks counted</source>
        <translation>ज़्यादा से ज़्यादा गिने गए हफ़्ते</translation>
    </message>
    <message>
        <source>nobody first</source>
        <translation>कोई पहले नहीं</translation>
    </message>
    <message>
        <source>not to be told apart</source>
        <translation>फ़र्क़ संयोग से ज़्यादा नहीं</translation>
    </message>
    <message>
        <source>often missing</source>
        <translation>अक्सर कमी</translation>
    </message>
    <message>
        <source>each question</source>
        <translation>हर सवाल</translation>
    </message>
    <message>
        <source>questions about the entries</source>
        <translation>प्रविष्टियों के बारे में सवाल</translation>
    </message>
    <message>
        <source>reporting</source>
        <translation>रिपोर्टिंग</translation>
    </message>
    <message>
        <source>a good room fails</source>
        <translation>अच्छा कमरा असफल</translation>
    </message>
    <message>
        <source>items that must be met</source>
        <translation>चीज़ें जो ठीक होनी चाहिए</translation>
    </message>
    <message>
        <source>a poor room passes</source>
        <translation>ख़राब कमरा सफल</translation>
    </message>
    <message>
        <source>items to look at on a visit</source>
        <translation>दौरे पर देखने की चीज़ें</translation>
    </message>
    <message>
        <source>see first</source>
        <translation>पहले देखें</translation>
    </message>
    <message>
        <source>side by side</source>
        <translation>साथ-साथ</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>रिपोर्ट नहीं आ रही</translation>
    </message>
    <message>
        <source>each silent week</source>
        <translation>बिना रिपोर्ट का हर हफ़्ता</translation>
    </message>
    <message>
        <source>the supervisor</source>
        <translation>सुपरवाइज़र</translation>
    </message>
    <message>
        <source>supplies</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>visits</source>
        <translation>दौरे</translation>
    </message>
    <message>
        <source>stock that could move</source>
        <translation>जो सामान दूसरी जगह दिया जा सकता है</translation>
    </message>
    <message>
        <source>most stock items counted</source>
        <translation>अधिक से अधिक कितने सामान गिने जाएँ</translation>
    </message>
    <message>
        <source>does not reach the standard</source>
        <translation>मानक तक नहीं पहुँचता</translation>
    </message>
    <message>
        <source>reaches the standard</source>
        <translation>मानक तक पहुँचता है</translation>
    </message>
    <message>
        <source>stock out or about to run out</source>
        <translation>सामान खत्म या खत्म होने वाला</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>not decided, too few looked at</source>
        <translation>तय नहीं, बहुत कम देखे गए</translation>
    </message>
</context>
<context>
    <name>ComparisonSheet</name>
    <message>
        <source>Two spans: too few rounds to compare</source>
        <translation>दो अवधियाँ: तुलना के लिए राउंड बहुत कम</translation>
    </message>
    <message>
        <source>More shifts ready than in %1: %2 points more (%3)</source>
        <translation>%1 के मुक़ाबले ज़्यादा शिफ्टें तैयार: %2 प्रतिशत अंक ज़्यादा (%3)</translation>
    </message>
    <message>
        <source>Fewer shifts ready than in %1: %2 points (%3)</source>
        <translation>%1 के मुक़ाबले कम शिफ्टें तैयार: %2 प्रतिशत अंक (%3)</translation>
    </message>
    <message>
        <source>No difference that chance would not make against %1 (%2 points, %3)</source>
        <translation>%1 के मुक़ाबले ऐसा कोई फ़र्क़ नहीं जो संयोग से न हो सके (%2 प्रतिशत अंक, %3)</translation>
    </message>
    <message>
        <source>Shifts without a critical gap</source>
        <translation>शिफ्टें बिना गंभीर कमी के</translation>
    </message>
    <message>
        <source>Shifts with nothing missing</source>
        <translation>शिफ्टें जिनमें कोई कमी नहीं</translation>
    </message>
    <message>
        <source>Rounds done</source>
        <translation>जो राउंड हुए</translation>
    </message>
    <message>
        <source>Difference with 95% limits (Newcombe&apos;s hybrid score method). Items in the table: Fisher&apos;s exact test, adjusted for their number (Benjamini-Hochberg).</source>
        <translation>फ़र्क़ 95% सीमाओं के साथ (Newcombe की hybrid score विधि)। तालिका की चीज़ें: Fisher का exact टेस्ट, उनकी गिनती के लिए समायोजित (Benjamini-Hochberg)।</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>an interval, %1 and %2 numbers</extracomment>
        <translation>%1 से %2</translation>
    </message>
</context>
<context>
    <name>CourseSheet</name>
    <message>
        <source>Items met each week</source>
        <translation>हर हफ़्ते ठीक चीज़ें</translation>
    </message>
    <message>
        <source>Shifts without a critical gap, each week</source>
        <translation>हर हफ़्ते शिफ्टें बिना गंभीर कमी के</translation>
    </message>
    <message>
        <source>Shifts with nothing missing, each week</source>
        <translation>हर हफ़्ते शिफ्टें जिनमें कोई कमी नहीं</translation>
    </message>
    <message>
        <source>%1: %2 fell from the week of %3</source>
        <translation>%1, %2: %3 वाले हफ़्ते से गिरावट</translation>
    </message>
    <message>
        <source>%1: %2 rose from the week of %3</source>
        <translation>%1, %2: %3 वाले हफ़्ते से बढ़ोतरी</translation>
    </message>
    <message>
        <source>%1: too few weeks before to tell a change</source>
        <translation>%1: बदलाव बताने के लिए पहले के हफ़्ते बहुत कम</translation>
    </message>
    <message>
        <source>%1: no more change than chance explains</source>
        <translation>%1: संयोग से ज़्यादा बदलाव नहीं</translation>
    </message>
    <message>
        <source>p′ chart, n %1 to %2 a week; limits at %3 sigma from the weeks before the span; a diamond is more than chance explains. A week without a round has no point.</source>
        <extracomment>%1 and %2 counts, %3 a number</extracomment>
        <translation>p′ चार्ट, हफ़्ते में n %1 से %2; अवधि से पहले के हफ़्तों से निकाली गई सीमाएँ, %3 सिग्मा पर; हीरे का निशान यानी संयोग से ज़्यादा बदलाव। जिस हफ़्ते राउंड नहीं हुआ, उसका बिंदु नहीं है।</translation>
    </message>
    <message>
        <source>%1, week of %2: %3</source>
        <extracomment>%1 &quot;Nights&quot;, %2 a day, %3 &quot;81% (408 of 504)&quot;</extracomment>
        <translation>%1, %2 वाला हफ़्ता: %3</translation>
    </message>
</context>
<context>
    <name>DistrictDocument</name>
    <message>
        <source>Labour wards of a district</source>
        <translation>ज़िले के लेबर रूम</translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s)</source>
        <translation>
            <numerusform>%n यूनिट</numerusform>
            <numerusform>%n यूनिटें</numerusform>
        </translation>
    </message>
    <message>
        <source>The figures</source>
        <translation>आँकड़े</translation>
    </message>
    <message>
        <source>A round that was not done is no data, never 0%. A shift counts as without a critical gap when its round found none and left nothing critical unchecked.</source>
        <translation>जो राउंड नहीं हुआ उसका कोई आँकड़ा नहीं है, वह कभी 0% नहीं है। शिफ्ट तब बिना गंभीर कमी के गिनी जाती है जब उसके राउंड में कोई गंभीर कमी न मिली हो और कोई अति ज़रूरी चीज़ बिना जाँच के न छूटी हो।</translation>
    </message>
    <message>
        <source>Funnel: D. J. Spiegelhalter (2005). %1</source>
        <translation>Funnel: D. J. Spiegelhalter (2005)। %1</translation>
    </message>
    <message>
        <source>Against units of the same level and against the span before: Newcombe&apos;s hybrid score limits, widened for rounds that are alike from shift to shift. By shift of the day: indirect standardisation; a ratio compares a unit with the district, not with another unit.</source>
        <translation>उसी स्तर की यूनिटों और पिछली अवधि से तुलना: Newcombe की hybrid score सीमाएँ, जो एक-दूसरे जैसे राउंडों के लिए चौड़ी की गई हैं। दिन की शिफ्ट के हिसाब से: indirect standardisation; अनुपात यूनिट की तुलना ज़िले से करता है, किसी दूसरी यूनिट से नहीं।</translation>
    </message>
    <message>
        <source>Visits: points as shown; they order visits and rank nobody. Questions about the entries are reasons to ask, never a proof.</source>
        <translation>दौरे: अंक जैसे दिखाए गए हैं; वे दौरों का क्रम बताते हैं, किसी को दर्जा नहीं देते। प्रविष्टियों के बारे में सवाल पूछने की वजह हैं, कभी सबूत नहीं।</translation>
    </message>
    <message>
        <source>Stock that could move: as the units&apos; books stand now; as many pieces as can be given, over the least distance. A giver keeps its par, and what it uses in %1 days or until its delivery.</source>
        <translation>जो सामान दूसरी जगह दिया जा सकता है: यूनिटों की सामान बही के अभी के हिसाब से; जितने नग दिए जा सकें, सबसे कम दूरी पर। देने वाली यूनिट अपना तय स्टॉक रखती है, और उतना जितना वह %1 दिन में या अगली आपूर्ति तक लगाती है।</translation>
    </message>
</context>
<context>
    <name>DistrictScene</name>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of months</extracomment>
        <translation>%1 से %2</translation>
    </message>
</context>
<context>
    <name>DistrictText</name>
    <message>
        <source>See %1 first</source>
        <translation>पहले %1 देखें</translation>
    </message>
    <message>
        <source>No unit needs you more than the others</source>
        <translation>किसी यूनिट को दूसरों से ज़्यादा आपकी ज़रूरत नहीं</translation>
    </message>
    <message>
        <source>No rounds</source>
        <translation>कोई राउंड नहीं</translation>
    </message>
    <message numerus="yes">
        <source>%1 rounds without a critical gap in %n unit(s)</source>
        <translation>
            <numerusform>%n यूनिट में बिना गंभीर कमी के राउंड: %1</numerusform>
            <numerusform>%n यूनिटों में बिना गंभीर कमी के राउंड: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>See %1 first; most of it is for %2.</source>
        <translation>पहले %1 देखें; ज़्यादातर काम %2 के लिए है।</translation>
    </message>
    <message>
        <source>Nothing found calls for a visit before the others.</source>
        <translation>ऐसा कुछ नहीं मिला जिसके लिए किसी का दौरा पहले करना पड़े।</translation>
    </message>
    <message numerus="yes">
        <source>No round was done in %n shift(s) due: there is nothing to compare.</source>
        <translation>
            <numerusform>%n तय शिफ्ट में कोई राउंड नहीं हुआ: तुलना के लिए कुछ नहीं है।</numerusform>
            <numerusform>%n तय शिफ्टों में कोई राउंड नहीं हुआ: तुलना के लिए कुछ नहीं है।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 fell more than chance explains: %2 of shifts without a critical gap, before it %3.</source>
        <translation>%1: संयोग से ज़्यादा गिरावट: बिना गंभीर कमी की शिफ्टें %2, इससे पहले %3।</translation>
    </message>
    <message>
        <source>%1 rose more than chance explains: %2 of shifts without a critical gap, before it %3.</source>
        <translation>%1: संयोग से ज़्यादा बढ़ोतरी: बिना गंभीर कमी की शिफ्टें %2, इससे पहले %3।</translation>
    </message>
    <message>
        <source>%1 is often missing in %2: %3 rounds of all units.</source>
        <translation>%2 में %1 की अक्सर कमी: सभी यूनिटों के %3 राउंड।</translation>
    </message>
    <message>
        <source>%1: below what chance allows around the district&apos;s %2.</source>
        <translation>%1: ज़िले के %2 के आसपास संयोग की सीमा से नीचे।</translation>
    </message>
    <message>
        <source>%1: above what chance allows around the district&apos;s %2.</source>
        <translation>%1: ज़िले के %2 के आसपास संयोग की सीमा से ऊपर।</translation>
    </message>
    <message>
        <source>%1: too few rounds to say how ready (%2).</source>
        <translation>%1: तैयारी बताने के लिए राउंड बहुत कम हैं (%2)।</translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) cannot be told apart from the district&apos;s %1.</source>
        <translation>
            <numerusform>%n यूनिट का ज़िले के %1 से फ़र्क़ संयोग से ज़्यादा नहीं।</numerusform>
            <numerusform>%n यूनिटों का ज़िले के %1 से फ़र्क़ संयोग से ज़्यादा नहीं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%1: no round for up to %n day(s) in a row.</source>
        <translation>
            <numerusform>%1: लगातार %n दिन तक कोई राउंड नहीं।</numerusform>
            <numerusform>%1: लगातार %n दिनों तक कोई राउंड नहीं।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: rounds missing, %2 done at the first.</source>
        <translation>%1: राउंड नहीं हुए, पहली में %2 हुए।</translation>
    </message>
    <message>
        <source>%1: rounds recorded late, %2 at the first: ask what stands in the way.</source>
        <translation>%1: राउंड देर से दर्ज, पहली में %2: पूछें कि क्या रुकावट है।</translation>
    </message>
    <message>
        <source>%1: the entries raise questions. Ask how rounds are walked.</source>
        <translation>%1: प्रविष्टियों पर सवाल उठते हैं। पूछें कि राउंड कैसे किए जाते हैं।</translation>
    </message>
    <message numerus="yes">
        <source>%n critical gap(s) open, the oldest for %1: %2</source>
        <translation>
            <numerusform>%n गंभीर कमी बाक़ी, सबसे पुरानी %1 से: %2</numerusform>
            <numerusform>%n गंभीर कमियाँ बाक़ी, सबसे पुरानी %1 से: %2</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 missing in %2 rounds</source>
        <translation>%2 राउंड में %1 की कमी</translation>
    </message>
    <message>
        <source>below what chance allows: %1 rounds without a critical gap</source>
        <translation>संयोग की सीमा से नीचे: बिना गंभीर कमी के राउंड %1</translation>
    </message>
    <message>
        <source>fell from %1 to %2</source>
        <translation>%1 से गिरकर %2</translation>
    </message>
    <message numerus="yes">
        <source>no round for %n day(s) in a row</source>
        <translation>
            <numerusform>लगातार %n दिन कोई राउंड नहीं</numerusform>
            <numerusform>लगातार %n दिन कोई राउंड नहीं</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n question(s) about the entries</source>
        <translation>
            <numerusform>प्रविष्टियों के बारे में %n सवाल</numerusform>
            <numerusform>प्रविष्टियों के बारे में %n सवाल</numerusform>
        </translation>
    </message>
    <message>
        <source>; </source>
        <comment>between reasons</comment>
        <translation>; </translation>
    </message>
    <message>
        <source>supplies</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>the engineer</source>
        <translation>इंजीनियर</translation>
    </message>
    <message>
        <source>you</source>
        <translation>आप</translation>
    </message>
    <message>
        <source>On each visit look at %1 of %2 items, picked by lot: with %3 or more met the room passes. A room with %4 met fails in %5 of visits, one with %6 passes in %7.</source>
        <translation>हर दौरे पर %2 में से %1 चीज़ें लॉटरी से चुनकर देखें: %3 या ज़्यादा ठीक हों तो कमरा सफल है। जिस कमरे में %4 ठीक हैं वह %5 दौरों में असफल होता है, जिसमें %6 ठीक हैं वह %7 में सफल।</translation>
    </message>
    <message>
        <source>Told apart: p adjusted for the number of units (Benjamini-Hochberg) at most %1.</source>
        <translation>अलग तब माना गया जब यूनिटों की संख्या के हिसाब से ठीक किया गया p (Benjamini-Hochberg) ज़्यादा से ज़्यादा %1 हो।</translation>
    </message>
    <message>
        <source>Limits 95% and 99.8%, exact binomial: units spread no more than chance (p %1).</source>
        <translation>सीमाएँ 95% और 99.8%, exact binomial: यूनिटें संयोग से ज़्यादा नहीं फैलतीं (p %1)।</translation>
    </message>
    <message>
        <source>Limits 95% and 99.8%, exact binomial: but for the outermost, units spread no more than chance (factor %1).</source>
        <translation>सीमाएँ 95% और 99.8%, exact binomial: सबसे बाहरी को छोड़कर यूनिटें संयोग से ज़्यादा नहीं फैलतीं (गुणक %1)।</translation>
    </message>
    <message>
        <source>Limits 95% and 99.8%, widened by random effects between units (standard deviation %1 points).</source>
        <translation>सीमाएँ 95% और 99.8%, यूनिटों के बीच random effects से चौड़ी की गईं (मानक विचलन %1 अंक)।</translation>
    </message>
    <message>
        <source>Limits 95% and 99.8%, widened by the factor of spread %1, from winsorised z.</source>
        <translation>सीमाएँ 95% और 99.8%, winsorised z के फैलाव के गुणक %1 से चौड़ी की गईं।</translation>
    </message>
    <message>
        <source>Units spread more than chance; the likelier of the two ways of widening was taken.</source>
        <translation>यूनिटें संयोग से ज़्यादा फैलती हैं; चौड़ा करने के दो तरीक़ों में से ज़्यादा संभावित लिया गया।</translation>
    </message>
    <message>
        <source>Clearly lower</source>
        <translation>साफ़ तौर पर नीचे</translation>
    </message>
    <message>
        <source>Clearly higher</source>
        <translation>साफ़ तौर पर ऊपर</translation>
    </message>
    <message>
        <source>Not to be told apart</source>
        <translation>फ़र्क़ संयोग से ज़्यादा नहीं</translation>
    </message>
    <message numerus="yes">
        <source>Stock that others can spare would help %1: %n item(s).</source>
        <translation>
            <numerusform>जो सामान दूसरे दे सकते हैं, उससे %1 को मदद मिलेगी: %n सामान।</numerusform>
            <numerusform>जो सामान दूसरे दे सकते हैं, उससे %1 को मदद मिलेगी: %n सामान।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: the last visit found too little met to reach the standard.</source>
        <translation>%1: पिछले दौरे में इतना ठीक नहीं मिला कि मानक तक पहुँचे।</translation>
    </message>
    <message numerus="yes">
        <source>%n stock item(s) out or about to run out: %1</source>
        <translation>
            <numerusform>%n सामान खत्म या खत्म होने वाला: %1</numerusform>
            <numerusform>%n सामान खत्म या खत्म होने वाले: %1</numerusform>
        </translation>
    </message>
    <message>
        <source>reaches the standard</source>
        <translation>मानक तक पहुँचता है</translation>
    </message>
    <message>
        <source>does not reach the standard</source>
        <translation>मानक तक नहीं पहुँचता</translation>
    </message>
    <message>
        <source>not decided, too few looked at</source>
        <translation>तय नहीं, बहुत कम देखे गए</translation>
    </message>
    <message>
        <source>%1: %2 met, %3</source>
        <extracomment>%1 the day of a visit, %2 &quot;13 of 18&quot;, %3 what it decided</extracomment>
        <translation>%1: %2 ठीक, %3</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n piece(s) from %2 to %3</source>
        <extracomment>%1 a stock item, %2 the unit that gives, %3 the one that takes</extracomment>
        <translation>
            <numerusform>%1: %2 से %3 को %n नग</numerusform>
            <numerusform>%1: %2 से %3 को %n नग</numerusform>
        </translation>
    </message>
    <message>
        <source>distance not known</source>
        <translation>दूरी मालूम नहीं</translation>
    </message>
    <message>
        <source>%1 km</source>
        <translation>%1 कि.मी.</translation>
    </message>
</context>
<context>
    <name>DoneSheet</name>
    <message>
        <source>in time</source>
        <translation>समय पर</translation>
    </message>
    <message>
        <source>late</source>
        <translation>देर से</translation>
    </message>
    <message>
        <source>from paper</source>
        <translation>काग़ज़ से</translation>
    </message>
    <message>
        <source>not done yet</source>
        <translation>अभी नहीं हुआ</translation>
    </message>
    <message>
        <source>missing</source>
        <translation>नहीं हुआ</translation>
    </message>
    <message>
        <source>Rounds done: %1 due</source>
        <translation>तय राउंड: %1 हुए</translation>
    </message>
    <message numerus="yes">
        <source>, %n late</source>
        <extracomment>appended to &quot;Rounds done: 88 of 93 due&quot;</extracomment>
        <translation>
            <numerusform>, %n देर से</numerusform>
            <numerusform>, %n देर से</numerusform>
        </translation>
    </message>
    <message>
        <source>In time: finished and recorded within the first %1 of the shift.</source>
        <translation>समय पर यानी शिफ्ट के पहले %1 समय में पूरा और दर्ज हुआ।</translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) amended later.</source>
        <translation>
            <numerusform>%n राउंड बाद में सुधारा गया।</numerusform>
            <numerusform>%n राउंड बाद में सुधारे गए।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) entered from paper: nothing is said of their time.</source>
        <translation>
            <numerusform>%n राउंड काग़ज़ से दर्ज हुआ: उसके समय के बारे में कुछ नहीं कहा गया।</numerusform>
            <numerusform>%n राउंड काग़ज़ से दर्ज हुए: उनके समय के बारे में कुछ नहीं कहा गया।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, amended</source>
        <translation>%1, सुधारा गया</translation>
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
    <message>
        <source>The database server does not answer.</source>
        <translation>डेटाबेस सर्वर जवाब नहीं दे रहा है।</translation>
    </message>
    <message>
        <source>The database server does not let this user in.</source>
        <translation>डेटाबेस सर्वर इस उपयोगकर्ता को अंदर नहीं आने देता।</translation>
    </message>
    <message>
        <source>The file system or the database refused.</source>
        <translation>फ़ाइल सिस्टम या डेटाबेस ने मना किया।</translation>
    </message>
    <message>
        <source>Check the network and the server, then try again. A round that is being walked is kept on this computer.</source>
        <translation>नेटवर्क और सर्वर देखें, फिर दोबारा कोशिश करें। जो राउंड चल रहा है, वह इसी कंप्यूटर पर सुरक्षित रखा गया है।</translation>
    </message>
    <message>
        <source>Check the user in the address and the password in ~/.pgpass or in the service file.</source>
        <translation>पते में उपयोगकर्ता का नाम और ~/.pgpass या सर्विस फ़ाइल में पासवर्ड देखें।</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <extracomment>%1 what went wrong, %2 what to do about it; both are whole sentences</extracomment>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>Choose another file.</source>
        <translation>दूसरी फ़ाइल चुनें।</translation>
    </message>
</context>
<context>
    <name>FigureText</name>
    <message>
        <source>%1%</source>
        <extracomment>a share; %1 a number</extracomment>
        <translation>%1%</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <extracomment>a count out of a count</extracomment>
        <translation>%2 में से %1</translation>
    </message>
    <message>
        <source>none seen</source>
        <translation>कुछ नहीं देखा</translation>
    </message>
    <message>
        <source>%1 to %2%</source>
        <extracomment>an interval of a share, %1 and %2 numbers</extracomment>
        <translation>%1 से %2%</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 मिनट</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 घंटे</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 दिन</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <extracomment>the end of a list: %1 all but the last, %2 the last</extracomment>
        <translation>%1 और %2</translation>
    </message>
    <message>
        <source>, </source>
        <comment>between the parts of a list</comment>
        <translation>, </translation>
    </message>
    <message>
        <source>Nothing was seen.</source>
        <translation>कुछ नहीं देखा गया।</translation>
    </message>
    <message>
        <source>Too few to say.</source>
        <translation>कुछ कहने के लिए आँकड़े बहुत कम हैं।</translation>
    </message>
    <message>
        <source>All the same: nothing to compare with.</source>
        <translation>सब एक जैसे हैं: तुलना के लिए कुछ नहीं।</translation>
    </message>
    <message>
        <source>Does not apply here.</source>
        <translation>यहाँ लागू नहीं है।</translation>
    </message>
    <message>
        <source>below %1</source>
        <extracomment>a p value smaller than can be told apart</extracomment>
        <translation>%1 से कम</translation>
    </message>
</context>
<context>
    <name>GapSheet</name>
    <message>
        <source>No gap opened in this time</source>
        <translation>इस समय में कोई नई कमी नहीं मिली</translation>
    </message>
    <message>
        <source>Fewer than half of the gaps were mended in this time</source>
        <translation>इस समय में आधी से कम कमियाँ ठीक हुईं</translation>
    </message>
    <message>
        <source>Half of the gaps are mended within %1</source>
        <translation>आधी कमियाँ %1 के अंदर ठीक हो जाती हैं</translation>
    </message>
    <message>
        <source>n = %1 gaps that opened, %2 mended; those still open count as long as they are known (Kaplan-Meier, 95% log-log limits).</source>
        <translation>n = %1 नई कमियाँ, %2 ठीक हुईं; जो अब भी बाक़ी हैं, वे उतने समय तक गिनी जाती हैं जितने का पता है (Kaplan-Meier, 95% log-log सीमाएँ)।</translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) open before the span are left out.</source>
        <translation>
            <numerusform>अवधि से पहले की %n बाक़ी कमी शामिल नहीं है।</numerusform>
            <numerusform>अवधि से पहले की %n बाक़ी कमियाँ शामिल नहीं हैं।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2 still open after %3</source>
        <extracomment>%1 &quot;critical&quot;, %2 a share, %3 &quot;13 h&quot;</extracomment>
        <translation>%1: %3 बाद %2 अब भी बाक़ी</translation>
    </message>
    <message>
        <source>still open</source>
        <translation>अब भी बाक़ी</translation>
    </message>
    <message>
        <source>hours since the gap was found</source>
        <translation>कमी मिलने के बाद के घंटे</translation>
    </message>
    <message>
        <source>all gaps</source>
        <translation>सब कमियाँ</translation>
    </message>
    <message>
        <source>No gap is open at the end of this time</source>
        <translation>इस समय के अंत में कोई कमी बाक़ी नहीं</translation>
    </message>
    <message numerus="yes">
        <source>%n gap(s) still open</source>
        <translation>
            <numerusform>%n कमी अब भी बाक़ी</numerusform>
            <numerusform>%n कमियाँ अब भी बाक़ी</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>, %n for more than a week</source>
        <extracomment>appended to &quot;9 gaps still open&quot;</extracomment>
        <translation>
            <numerusform>, %n एक हफ़्ते से ज़्यादा समय से</numerusform>
            <numerusform>, %n एक हफ़्ते से ज़्यादा समय से</numerusform>
        </translation>
    </message>
    <message>
        <source>Under a day %1, a week %2, a month %3, older %4.</source>
        <translation>एक दिन से कम: %1, एक हफ़्ते से कम: %2, एक महीने से कम: %3, इससे पुरानी: %4।</translation>
    </message>
    <message numerus="yes">
        <source>%n without an owner.</source>
        <translation>
            <numerusform>किसी के ज़िम्मे नहीं: %n कमी।</numerusform>
            <numerusform>किसी के ज़िम्मे नहीं: %n कमियाँ।</numerusform>
        </translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>अभी कोई नहीं</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>तय समय निकल गया</translation>
    </message>
    <message>
        <source>%1, %2: open for %3, %4</source>
        <translation>%1, %2: %3 से बाक़ी, %4</translation>
    </message>
    <message>
        <source>No equipment was out of use</source>
        <translation>कोई उपकरण बंद नहीं था</translation>
    </message>
    <message>
        <source>%1 was out of use for %2</source>
        <translation>%1: %2 तक बंद</translation>
    </message>
    <message>
        <source>Share of the time without an open gap, as far as rounds and checks saw; devices that never failed stand in the table.</source>
        <translation>समय का वह हिस्सा जब कोई कमी बाक़ी नहीं थी, जितना राउंड और जाँच में दिखा; जो उपकरण कभी खराब नहीं हुए, वे तालिका में हैं।</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n time(s), %2</source>
        <translation>
            <numerusform>%1 · %n बार, %2</numerusform>
            <numerusform>%1 · %n बार, %2</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: available %2 of the time</source>
        <translation>%1: %2 समय चालू</translation>
    </message>
    <message>
        <source>Severities compared: log-rank p %1.</source>
        <translation>गंभीरताओं की तुलना: log-rank p %1।</translation>
    </message>
    <message numerus="yes">
        <source>%n lasted longer than is shown here, up to %1.</source>
        <translation>
            <numerusform>%n यहाँ दिखाए समय से ज़्यादा चली, %1 तक।</numerusform>
            <numerusform>%n यहाँ दिखाए समय से ज़्यादा चलीं, %1 तक।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: half mended by %2 (%3 to %4)</source>
        <extracomment>%1 critical, major, minor or all gaps; times</extracomment>
        <translation>%1: आधी %2 में ठीक (%3 से %4)</translation>
    </message>
    <message>
        <source>%1: half mended by %2</source>
        <translation>%1: आधी %2 में ठीक</translation>
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
    <message numerus="yes">
        <source>; open %n time(s) before</source>
        <translation>
            <numerusform>; पहले %n बार खुली</numerusform>
            <numerusform>; पहले %n बार खुली</numerusform>
        </translation>
    </message>
    <message>
        <source> · until then: %1</source>
        <translation> · तब तक: %1</translation>
    </message>
    <message numerus="yes">
        <source>It was said to be mended and was not, %n time(s).</source>
        <translation>
            <numerusform>%n बार ठीक बताई गई पर ठीक नहीं थी।</numerusform>
            <numerusform>%n बार ठीक बताई गई पर ठीक नहीं थी।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1।</translation>
    </message>
    <message>
        <source>Mended by %1, %2</source>
        <translation>%1 ने ठीक किया, %2</translation>
    </message>
    <message>
        <source>%1; looked at by %2</source>
        <translation>%1; %2 ने देखा</translation>
    </message>
    <message>
        <source>%1; a second person has to look</source>
        <translation>%1; दूसरे व्यक्ति को देखना है</translation>
    </message>
    <message>
        <source>%1; a re-check closes it</source>
        <translation>%1; दोबारा जाँच से बंद होगी</translation>
    </message>
    <message>
        <source>who mends it</source>
        <translation>ठीक करने वाला</translation>
    </message>
    <message>
        <source>the in-charge</source>
        <translation>प्रभारी</translation>
    </message>
    <message>
        <source>the quality officer</source>
        <translation>गुणवत्ता अधिकारी</translation>
    </message>
    <message>
        <source>the district</source>
        <translation>ज़िला</translation>
    </message>
    <message>
        <source>Now for %1</source>
        <translation>अब %1 के लिए</translation>
    </message>
    <message>
        <source>for %1 from %2</source>
        <translation>%2 से %1 के लिए</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message numerus="yes">
        <source>**%1 comes back most: open %n time(s) before.**</source>
        <translation>
            <numerusform>**%1 सबसे अधिक लौटती है: पहले %n बार खुली।**</numerusform>
            <numerusform>**%1 सबसे अधिक लौटती है: पहले %n बार खुली।**</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>HandoverPaper</name>
    <message>
        <source>Signed</source>
        <translation>हस्ताक्षर</translation>
    </message>
    <message>
        <source>Given by:</source>
        <translation>सौंपा:</translation>
    </message>
    <message>
        <source>Taken by:</source>
        <translation>लिया:</translation>
    </message>
    <message>
        <source>Handover of a labour ward</source>
        <translation>प्रसव कक्ष की शिफ्ट सौंपना</translation>
    </message>
    <message>
        <source>What is open</source>
        <translation>क्या बाक़ी है</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>क्यों</translation>
    </message>
    <message>
        <source>Who mends it</source>
        <translation>किसके ज़िम्मे</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>कब तक</translation>
    </message>
</context>
<context>
    <name>HandoverText</name>
    <message>
        <source>No round in this shift</source>
        <translation>इस शिफ्ट में कोई राउंड नहीं</translation>
    </message>
    <message>
        <source>%1 of %2 items met, round finished %3</source>
        <translation>%2 में से %1 बातें पूरी, राउंड %3 पर पूरा</translation>
    </message>
    <message>
        <source>Given by %1, %2</source>
        <translation>%1 ने सौंपा, %2</translation>
    </message>
    <message>
        <source>Taken by %1, %2</source>
        <translation>%1 ने लिया, %2</translation>
    </message>
    <message>
        <source>Situation</source>
        <translation>स्थिति</translation>
    </message>
    <message numerus="yes">
        <source>**%n critical gap(s)** open</source>
        <translation>
            <numerusform>**%n गंभीर कमी** खुली</numerusform>
            <numerusform>**%n गंभीर कमियाँ** खुली</numerusform>
        </translation>
    </message>
    <message>
        <source>No critical gap is open</source>
        <translation>कोई गंभीर कमी खुली नहीं</translation>
    </message>
    <message>
        <source>No birth is on the board</source>
        <translation>बोर्ड पर कोई प्रसव नहीं</translation>
    </message>
    <message numerus="yes">
        <source>**%n birth(s)** expected</source>
        <translation>
            <numerusform>**%n प्रसव** अपेक्षित</numerusform>
            <numerusform>**%n प्रसव** अपेक्षित</numerusform>
        </translation>
    </message>
    <message>
        <source>Background</source>
        <translation>पृष्ठभूमि</translation>
    </message>
    <message>
        <source>Birth **%1**: %2; %3</source>
        <translation>प्रसव **%1**: %2; %3</translation>
    </message>
    <message numerus="yes">
        <source>and %n more birth(s)</source>
        <translation>
            <numerusform>और %n प्रसव</numerusform>
            <numerusform>और %n प्रसव</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, **%2**</source>
        <translation>%1, **%2**</translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s) left</source>
        <translation>
            <numerusform>%n पूरी किट बची</numerusform>
            <numerusform>%n पूरी किट बचीं</numerusform>
        </translation>
    </message>
    <message>
        <source>nobody yet</source>
        <translation>अभी कोई नहीं</translation>
    </message>
    <message>
        <source>Critical: %1</source>
        <translation>गंभीर: %1</translation>
    </message>
    <message numerus="yes">
        <source>Short: **%1**, %n left</source>
        <translation>
            <numerusform>कम: **%1**, %n बचा</numerusform>
            <numerusform>कम: **%1**, %n बचे</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, runs out %2</source>
        <translation>%1, %2 को खत्म</translation>
    </message>
    <message>
        <source>Assessment</source>
        <translation>आकलन</translation>
    </message>
    <message numerus="yes">
        <source>and %n more gap(s), see Gaps</source>
        <translation>
            <numerusform>और %n कमी, कमियाँ देखें</numerusform>
            <numerusform>और %n कमियाँ, कमियाँ देखें</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>and %n more item(s), see Stores</source>
        <translation>
            <numerusform>और %n वस्तु, भंडार देखें</numerusform>
            <numerusform>और %n वस्तुएँ, भंडार देखें</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 is out for repair</source>
        <translation>%1 मरम्मत के लिए गया है</translation>
    </message>
    <message>
        <source>Nothing is open and nothing runs out</source>
        <translation>कुछ भी खुला नहीं और कुछ खत्म नहीं हो रहा</translation>
    </message>
    <message>
        <source>Mend before the next birth: **%1**</source>
        <translation>अगले प्रसव से पहले ठीक करें: **%1**</translation>
    </message>
    <message>
        <source>Restock %1</source>
        <translation>%1 का भंडार भरें</translation>
    </message>
    <message>
        <source>Switch **%1** on by **%2**</source>
        <translation>**%1** को **%2** तक चालू करें</translation>
    </message>
    <message>
        <source>Make up a kit for the birth %1</source>
        <translation>प्रसव %1 के लिए किट बनाएँ</translation>
    </message>
    <message>
        <source>Read %1 before %2</source>
        <translation>%2 से पहले %1 पढ़ें</translation>
    </message>
    <message>
        <source>Ask after the repair of %1</source>
        <translation>%1 की मरम्मत के बारे में पूछें</translation>
    </message>
    <message>
        <source>Walk the round of %1 by %2</source>
        <translation>%1 का राउंड %2 तक करें</translation>
    </message>
    <message>
        <source>Recommendation</source>
        <translation>सुझाव</translation>
    </message>
    <message numerus="yes">
        <source>and %n more thing(s) to do</source>
        <translation>
            <numerusform>और %n काम</numerusform>
            <numerusform>और %n काम</numerusform>
        </translation>
    </message>
    <message>
        <source>Was: %1. Now: **%2**</source>
        <translation>पहले: %1। अब: **%2**</translation>
    </message>
    <message>
        <source>New gap: **%1**</source>
        <translation>नई कमी: **%1**</translation>
    </message>
    <message>
        <source>Other owner or time: %1</source>
        <translation>दूसरा ज़िम्मेदार या समय: %1</translation>
    </message>
    <message>
        <source>Mended: %1</source>
        <translation>ठीक हुआ: %1</translation>
    </message>
    <message>
        <source>Shorter: %1</source>
        <translation>और कम: %1</translation>
    </message>
    <message>
        <source>Restocked: %1</source>
        <translation>भंडार भरा: %1</translation>
    </message>
    <message>
        <source>Out for repair: %1</source>
        <translation>मरम्मत के लिए गया: %1</translation>
    </message>
    <message>
        <source>Back from repair: %1</source>
        <translation>मरम्मत से लौटा: %1</translation>
    </message>
    <message>
        <source>Switched on: %1</source>
        <translation>चालू किया: %1</translation>
    </message>
    <message>
        <source>Switched off: %1</source>
        <translation>बंद किया: %1</translation>
    </message>
    <message>
        <source>Newly expected: birth %1</source>
        <translation>नया अपेक्षित प्रसव %1</translation>
    </message>
    <message>
        <source>Expected otherwise: birth %1</source>
        <translation>बदला हुआ अपेक्षित प्रसव %1</translation>
    </message>
    <message>
        <source>A birth is off the board</source>
        <translation>एक प्रसव बोर्ड से हटा</translation>
    </message>
    <message>
        <source>The first handover of this ward</source>
        <translation>इस वार्ड की पहली सौंप</translation>
    </message>
    <message>
        <source>Since the handover of %1</source>
        <translation>%1 की सौंप के बाद से</translation>
    </message>
    <message numerus="yes">
        <source>and %n more change(s)</source>
        <translation>
            <numerusform>और %n बदलाव</numerusform>
            <numerusform>और %n बदलाव</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing has changed</source>
        <translation>कुछ नहीं बदला</translation>
    </message>
    <message>
        <source>by %1, late</source>
        <translation>%1 तक, देर हो गई</translation>
    </message>
    <message>
        <source>by %1</source>
        <translation>%1 तक</translation>
    </message>
</context>
<context>
    <name>ItemSheet</name>
    <message>
        <source>Nothing was lost: not one gap</source>
        <translation>तैयारी कहीं नहीं घटी: एक भी कमी नहीं</translation>
    </message>
    <message numerus="yes">
        <source>Where readiness is lost: %n item(s) carry %1 of it</source>
        <translation>
            <numerusform>तैयारी कहाँ घटती है: %1 हिस्सा %n चीज़ का</numerusform>
            <numerusform>तैयारी कहाँ घटती है: %1 हिस्सा %n चीज़ों का</numerusform>
        </translation>
    </message>
    <message>
        <source>Rounds with a gap, of those in which the item was looked at, with 95% limits (Wilson). Order: gaps times weight, critical %1, major %2, minor %3 (our own weights).</source>
        <translation>जितने राउंड में चीज़ देखी गई, उनमें से कमी वाले राउंड, 95% सीमाओं के साथ (Wilson)। क्रम: कमियाँ गुणा वज़न, अति ज़रूरी %1, ज़रूरी %2, सामान्य %3 (वज़न हमारे अपने हैं)।</translation>
    </message>
    <message>
        <source>%1 so far</source>
        <extracomment>%1 a percentage of what was lost, this item and those above it</extracomment>
        <translation>यहाँ तक %1</translation>
    </message>
    <message>
        <source>%1: missing in %2 rounds, %3 of what was lost</source>
        <translation>%1: %2 राउंड में कमी, घटी हुई तैयारी का %3</translation>
    </message>
    <message>
        <source>%1, week of %2: %3 rounds with a gap</source>
        <translation>%1, %2 वाला हफ़्ता, कमी वाले राउंड: %3</translation>
    </message>
    <message>
        <source>no</source>
        <translation>कोई नहीं</translation>
    </message>
    <message>
        <source>Which items, in which weeks</source>
        <translation>कौन-सी चीज़ें, किन हफ़्तों में</translation>
    </message>
    <message>
        <source>Rounds with a gap each week; a crossed cell: not looked at. Items without a gap are left out.</source>
        <translation>हर हफ़्ते कमी वाले राउंड; क्रॉस वाला ख़ाना: चीज़ देखी नहीं गई। जिन चीज़ों में कमी नहीं, वे शामिल नहीं हैं।</translation>
    </message>
    <message>
        <source>share of rounds with a gap</source>
        <translation>कमी वाले राउंड का हिस्सा</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>चीज़</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>हफ़्ता, इस दिन से</translation>
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
    <name>MonthDocument</name>
    <message>
        <source>Month of a labour ward</source>
        <translation>लेबर रूम की मासिक रिपोर्ट</translation>
    </message>
    <message>
        <source>The figures</source>
        <translation>आँकड़े</translation>
    </message>
    <message>
        <source>A round that was not done is no data, never 0%. A shift is ready when its round found no critical gap and left nothing critical unchecked; severity decides, not arithmetic.</source>
        <translation>जो राउंड नहीं हुआ, उसका कोई आँकड़ा नहीं है; उसे कभी 0% नहीं माना जाता। शिफ्ट तब तैयार है जब उसके राउंड में कोई गंभीर कमी न मिले और कोई अति ज़रूरी चीज़ देखे बिना न रहे; यह गंभीरता से तय होता है, जोड़-घटाव से नहीं।</translation>
    </message>
    <message>
        <source>Shares have 95% limits by Wilson&apos;s score method (E. B. Wilson, 1927). Weekly charts are p′ charts (D. B. Laney, 2002) with limits at %1 sigma from the weeks before the span; only a point beyond them or a run of %2 on one side counts as a change, since gaps last and neighbouring weeks are alike.</source>
        <translation>हिस्सों की 95% सीमाएँ Wilson की score विधि से हैं (E. B. Wilson, 1927)। हफ़्तेवार चार्ट p′ चार्ट हैं (D. B. Laney, 2002), इनकी सीमाएँ अवधि से पहले के हफ़्तों से %1 सिग्मा पर हैं; बदलाव तभी माना जाता है जब कोई बिंदु इनसे बाहर हो या लगातार %2 बिंदु एक ही ओर हों, क्योंकि कमियाँ कुछ समय चलती हैं और पास-पास के हफ़्ते एक जैसे होते हैं।</translation>
    </message>
    <message>
        <source>Time to mend: Kaplan-Meier with log-log limits; gaps still open count for as long as they are known. Two spans or two sides of a change: Newcombe&apos;s hybrid score limits, widened for how rounds spread. Spot checks: kappa and AC1 (K. L. Gwet, 2008).</source>
        <translation>ठीक होने में लगा समय: Kaplan-Meier, log-log सीमाओं के साथ; जो कमियाँ अब भी बाक़ी हैं, वे उतने समय तक गिनी जाती हैं जितने का पता है। दो अवधियाँ या बदलाव से पहले और बाद: Newcombe की hybrid score सीमाएँ, राउंडों के बिखराव के हिसाब से चौड़ी की गईं। स्वतंत्र जाँच: kappa और AC1 (K. L. Gwet, 2008)।</translation>
    </message>
    <message>
        <source>Questions about the entries are reasons to ask, never a proof; nobody is named or ranked.</source>
        <translation>एंट्री को लेकर उठे सवाल बात करने की वजह हैं, कभी सबूत नहीं; न किसी का नाम लिया जाता है, न किसी को क्रम में रखा जाता है।</translation>
    </message>
</context>
<context>
    <name>MonthScene</name>
    <message>
        <source>%1 to %2 %3</source>
        <extracomment>a span of days: %1 the first, %2 the last day, %3 the year of the last</extracomment>
        <translation>%1 से %2 %3</translation>
    </message>
</context>
<context>
    <name>MonthText</name>
    <message>
        <source>All shifts</source>
        <translation>सभी शिफ्टें</translation>
    </message>
    <message>
        <source>Days</source>
        <comment>the day shifts</comment>
        <translation>दिन की शिफ्टें</translation>
    </message>
    <message>
        <source>Nights</source>
        <comment>the night shifts</comment>
        <translation>रात की शिफ्टें</translation>
    </message>
    <message>
        <source>Mornings</source>
        <comment>the morning shifts</comment>
        <translation>सुबह की शिफ्टें</translation>
    </message>
    <message>
        <source>Evenings</source>
        <comment>the evening shifts</comment>
        <translation>शाम की शिफ्टें</translation>
    </message>
    <message>
        <source>Mondays</source>
        <translation>सोमवार</translation>
    </message>
    <message>
        <source>Tuesdays</source>
        <translation>मंगलवार</translation>
    </message>
    <message>
        <source>Wednesdays</source>
        <translation>बुधवार</translation>
    </message>
    <message>
        <source>Thursdays</source>
        <translation>गुरुवार</translation>
    </message>
    <message>
        <source>Fridays</source>
        <translation>शुक्रवार</translation>
    </message>
    <message>
        <source>Saturdays</source>
        <translation>शनिवार</translation>
    </message>
    <message>
        <source>Sundays</source>
        <translation>रविवार</translation>
    </message>
    <message>
        <source>No rounds</source>
        <translation>राउंड नहीं</translation>
    </message>
    <message>
        <source>Too little to say</source>
        <translation>कुछ कहने के लिए बहुत कम</translation>
    </message>
    <message>
        <source>%1 of shifts ready</source>
        <translation>%1 शिफ्टें तैयार</translation>
    </message>
    <message>
        <source>%1 rounds without a critical gap</source>
        <extracomment>%1 &quot;63 of 88&quot;</extracomment>
        <translation>%1 राउंड बिना गंभीर कमी के</translation>
    </message>
    <message numerus="yes">
        <source>%n shift(s) without a round</source>
        <translation>
            <numerusform>%n शिफ्ट में राउंड नहीं</numerusform>
            <numerusform>%n शिफ्टों में राउंड नहीं</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>No round was done in %n shift(s): there is nothing to say about readiness.</source>
        <translation>
            <numerusform>%n शिफ्ट में कोई राउंड नहीं हुआ: तैयारी के बारे में कुछ नहीं कहा जा सकता।</numerusform>
            <numerusform>%n शिफ्टों में कोई राउंड नहीं हुआ: तैयारी के बारे में कुछ नहीं कहा जा सकता।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 rounds were done: too little to say how ready the room was.</source>
        <translation>%1 राउंड हुए: कमरा कितना तैयार था, यह बताने के लिए बहुत कम हैं।</translation>
    </message>
    <message>
        <source>Rounds were done in %1 shifts due; of the others nothing is known.</source>
        <translation>तय %1 शिफ्टों में राउंड हुए; जिनमें नहीं हुए, उनका हाल पता नहीं।</translation>
    </message>
    <message>
        <source>%1 was outside its limits in %2 readings (%3).</source>
        <extracomment>%2 &quot;19 of 89&quot;, %3 a percentage</extracomment>
        <translation>%1: %2 रीडिंग सीमा से बाहर (%3)।</translation>
    </message>
    <message numerus="yes">
        <source>%n critical gap(s) still open, the oldest for %1: %2.</source>
        <translation>
            <numerusform>%n गंभीर कमी अब भी बाक़ी, %1 से: %2।</numerusform>
            <numerusform>%n गंभीर कमियाँ अब भी बाक़ी, सबसे पुरानी %1 से: %2।</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing critical was missing in %1 of %2 rounds (%3), nothing at all in %4.</source>
        <extracomment>%1 a percentage, %2 a count, %3 &quot;61 to 80%&quot;, %4 a percentage</extracomment>
        <translation>%2 राउंड में से %1 में (%3) कोई गंभीर कमी नहीं थी, %4 में कोई भी कमी नहीं थी।</translation>
    </message>
    <message numerus="yes">
        <source>Items met from week to week moved no more than chance explains, against the %n week(s) before.</source>
        <translation>
            <numerusform>हफ़्ते-दर-हफ़्ते ठीक चीज़ों में, पहले के %n हफ़्ते के मुक़ाबले, संयोग से ज़्यादा बदलाव नहीं हुआ।</numerusform>
            <numerusform>हफ़्ते-दर-हफ़्ते ठीक चीज़ों में, पहले के %n हफ़्तों के मुक़ाबले, संयोग से ज़्यादा बदलाव नहीं हुआ।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: fewer items met since the week of %2, more than chance explains: %3 before, %4 since.</source>
        <extracomment>%1 &quot;Nights&quot;, %2 a day, %3 and %4 percentages</extracomment>
        <translation>%1: %2 वाले हफ़्ते से कम चीज़ें ठीक, बदलाव संयोग से ज़्यादा है: पहले %3, उसके बाद %4।</translation>
    </message>
    <message>
        <source>%1: more items met since the week of %2, more than chance explains: %3 before, %4 since.</source>
        <translation>%1: %2 वाले हफ़्ते से ज़्यादा चीज़ें ठीक, बदलाव संयोग से ज़्यादा है: पहले %3, उसके बाद %4।</translation>
    </message>
    <message>
        <source>One item makes up %1 of what was lost: %2, missing in %3 rounds.</source>
        <translation>घटी हुई तैयारी में %1 हिस्सा एक ही चीज़ का है: %2, जिसकी कमी %3 राउंड में मिली।</translation>
    </message>
    <message numerus="yes">
        <source>%n items make up %1 of what was lost: %2.</source>
        <translation>
            <numerusform>घटी हुई तैयारी में %1 हिस्सा %n चीज़ का है: %2।</numerusform>
            <numerusform>घटी हुई तैयारी में %1 हिस्सा %n चीज़ों का है: %2।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 stand out, more than chance explains: %2 of items met, %3 in the others.</source>
        <translation>%1: फ़र्क़ संयोग से ज़्यादा है; इनमें %2 चीज़ें ठीक, दूसरों में %3।</translation>
    </message>
    <message numerus="yes">
        <source>%1 was out of use for %2, %n time(s).</source>
        <translation>
            <numerusform>%1: %n बार बंद, कुल %2।</numerusform>
            <numerusform>%1: %n बार बंद, कुल %2।</numerusform>
        </translation>
    </message>
    <message>
        <source>Fewer than half of the gaps were mended in this time: %1.</source>
        <translation>इस समय में आधी से कम कमियाँ ठीक हुईं: %1।</translation>
    </message>
    <message>
        <source>Half of the gaps are mended within %1 (%2 to %3).</source>
        <translation>आधी कमियाँ %1 के अंदर ठीक हो जाती हैं (%2 से %3)।</translation>
    </message>
    <message>
        <source>Half of the gaps are mended within %1.</source>
        <translation>आधी कमियाँ %1 के अंदर ठीक हो जाती हैं।</translation>
    </message>
    <message>
        <source>Since “%1” began, more items are met: %2, before it %3. That alone does not show that it was the cause.</source>
        <translation>“%1” शुरू होने के बाद से ज़्यादा चीज़ें ठीक हैं: अब %2, पहले %3। सिर्फ़ इससे यह नहीं दिखता कि वजह यही थी।</translation>
    </message>
    <message>
        <source>Since “%1” began, fewer items are met: %2, before it %3.</source>
        <translation>“%1” शुरू होने के बाद से कम चीज़ें ठीक हैं: अब %2, पहले %3।</translation>
    </message>
    <message>
        <source>“%1”: too early to say whether it changes anything (%2 of items met, before it %3).</source>
        <translation>“%1”: अभी यह कहना जल्दी होगा कि इससे कुछ बदलता है या नहीं (%2 चीज़ें ठीक, पहले %3)।</translation>
    </message>
    <message>
        <source>%1 rounds (%2) say word for word what an earlier one says: ask how rounds are walked.</source>
        <translation>%1 राउंड (%2) पहले के किसी राउंड से शब्द-दर-शब्द मिलते हैं: पूछें कि राउंड कैसे होते हैं।</translation>
    </message>
    <message>
        <source>%1 rounds (%2) were entered faster than a ward can be walked: ask how they are done.</source>
        <translation>%1 राउंड (%2) इतनी जल्दी दर्ज हुए जितने में वार्ड का चक्कर नहीं लग सकता: पूछें कि ये कैसे होते हैं।</translation>
    </message>
    <message>
        <source>%1: %2 readings (%3) lie on every fifth step of the instrument, as .0 and .5 do; by chance one in five would. Ask how it is read.</source>
        <translation>%1: %2 रीडिंग (%3) यंत्र के हर पाँचवें निशान पर हैं, जैसे .0 और .5; संयोग से पाँच में से एक ही होती। पूछें कि रीडिंग कैसे ली जाती है।</translation>
    </message>
    <message numerus="yes">
        <source>%1: %n reading(s), all the same. Ask whether the instrument works.</source>
        <translation>
            <numerusform>%1: %n रीडिंग, बदलाव नहीं। पूछें कि यंत्र ठीक काम कर रहा है या नहीं।</numerusform>
            <numerusform>%1: %n रीडिंग, सब एक जैसी। पूछें कि यंत्र ठीक काम कर रहा है या नहीं।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 rounds (%2) were finished late in their shift or after it: ask what stands in the way.</source>
        <translation>%1 राउंड (%2) शिफ्ट में देर से या उसके बाद पूरे हुए: पूछें कि रुकावट क्या है।</translation>
    </message>
    <message>
        <source>Independent spot checks agreed in %1 answers (%2); they differ most on %3. Look at these together.</source>
        <translation>स्वतंत्र जाँच में %1 जवाब मेल खाए (%2); सबसे ज़्यादा फ़र्क़ यहाँ है: %3। इन्हें साथ मिलकर देखें।</translation>
    </message>
</context>
<context>
    <name>NoticeText</name>
    <message>
        <source>No warm place in time: birth %1</source>
        <translation>समय पर गरम जगह नहीं: प्रसव %1</translation>
    </message>
    <message>
        <source>No kit is left: birth %1</source>
        <translation>कोई किट नहीं बची: प्रसव %1</translation>
    </message>
    <message>
        <source>Switch %1 on by %2</source>
        <translation>%1 को %2 तक चालू करें</translation>
    </message>
    <message>
        <source>%1 went off at %2, a birth is near</source>
        <translation>%1 %2 पर बंद हुआ, प्रसव पास है</translation>
    </message>
    <message>
        <source>Late since %1: %2</source>
        <translation>%1 से देर: %2</translation>
    </message>
    <message>
        <source>The round of this shift is due</source>
        <translation>इस शिफ्ट का राउंड करना है</translation>
    </message>
    <message>
        <source>The round of this shift is late since %1</source>
        <translation>इस शिफ्ट के राउंड में %1 से देर है</translation>
    </message>
    <message>
        <source>Read %1, due from %2</source>
        <translation>%1 पढ़ें, %2 से करना है</translation>
    </message>
    <message>
        <source>Upkeep of %1 is overdue</source>
        <translation>%1 की देखभाल में देर हो गई</translation>
    </message>
    <message>
        <source>%1 is warm since %2</source>
        <translation>%1 %2 से गरम है</translation>
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
<context>
    <name>PatternSheet</name>
    <message>
        <source>%1: %2 shifts without a critical gap</source>
        <translation>%1: %2 शिफ्टें बिना गंभीर कमी के</translation>
    </message>
    <message>
        <source>%1 stand out, more than chance explains</source>
        <translation>%1: फ़र्क़ संयोग से ज़्यादा</translation>
    </message>
    <message>
        <source>Shifts and weekdays: too few rounds to compare</source>
        <translation>शिफ्टें और हफ़्ते के दिन: तुलना के लिए राउंड बहुत कम</translation>
    </message>
    <message>
        <source>No shift and no weekday stands out</source>
        <translation>न कोई शिफ्ट अलग दिखती है, न हफ़्ते का कोई दिन</translation>
    </message>
    <message>
        <source>Shifts without a critical gap, of rounds done, with 95% limits (Wilson).</source>
        <translation>जितने राउंड हुए, उनमें से बिना गंभीर कमी वाली शिफ्टें, 95% सीमाओं के साथ (Wilson)।</translation>
    </message>
    <message>
        <source>Items met compared between shifts: chi-square widened for how rounds spread, p %1; spoken of at %2 or below.</source>
        <extracomment>%1 and %2 numbers</extracomment>
        <translation>शिफ्टों में ठीक चीज़ों की तुलना: chi-square, राउंडों के बिखराव के हिसाब से समायोजित, p %1; फ़र्क़ तभी बताया जाता है जब p %2 या उससे कम हो।</translation>
    </message>
    <message>
        <source>By shift</source>
        <translation>शिफ्ट के हिसाब से</translation>
    </message>
    <message>
        <source>By weekday</source>
        <translation>हफ़्ते के दिन के हिसाब से</translation>
    </message>
</context>
<context>
    <name>ReadingSheet</name>
    <message>
        <source>%1 to %2 %3</source>
        <extracomment>limits of a reading: %1 and %2 numbers, %3 a unit</extracomment>
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
    <message>
        <source>%1: outside its limits in %2 readings</source>
        <translation>%1: %2 रीडिंग सीमा से बाहर</translation>
    </message>
    <message>
        <source>Limits %1. n = %2</source>
        <translation>सीमा %1। n = %2</translation>
    </message>
    <message>
        <source>%1, median %2 %3</source>
        <translation>%1, मीडियन %2 %3</translation>
    </message>
    <message>
        <source>%1. Dashed: mean ± 2.66 mean moving ranges (XmR chart); neighbouring readings share their weather, so these limits are narrow.</source>
        <translation>%1। टूटी रेखाएँ: औसत ± 2.66 गुणा moving range का औसत (XmR चार्ट); पास-पास की रीडिंग का मौसम एक जैसा होता है, इसलिए ये सीमाएँ तंग हैं।</translation>
    </message>
    <message>
        <source>%1: %2 %3</source>
        <extracomment>%1 a shift, %2 a number, %3 its unit</extracomment>
        <translation>%1: %2 %3</translation>
    </message>
    <message numerus="yes">
        <source>%1 to below %2 %3: %n reading(s)</source>
        <translation>
            <numerusform>%1 से लेकर %2 %3 से कम: %n रीडिंग</numerusform>
            <numerusform>%1 से लेकर %2 %3 से कम: %n रीडिंग</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: how often each value was read</source>
        <translation>%1: कौन-सी रीडिंग कितनी बार आई</translation>
    </message>
    <message>
        <source>readings</source>
        <translation>रीडिंग</translation>
    </message>
    <message>
        <source>Bars as wide as the instrument shows, or a whole number of its steps. Limits %1.</source>
        <translation>हर पट्टी यंत्र के एक निशान जितनी चौड़ी है, या पूरे-पूरे कई निशानों जितनी। सीमा %1।</translation>
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
    <name>RefusalText</name>
    <message>
        <source>The pieces have to be %1 to %2.</source>
        <translation>नग %1 से %2 तक हो सकते हैं।</translation>
    </message>
    <message>
        <source>Count single pieces, not packs.</source>
        <translation>एक-एक नग गिनें, पैक नहीं।</translation>
    </message>
    <message>
        <source>A lot number has 1 to %1 letters and digits.</source>
        <translation>लॉट नंबर में 1 से %1 अक्षर और अंक होते हैं।</translation>
    </message>
    <message>
        <source>Copy it from the pack, or leave it empty.</source>
        <translation>इसे पैक से उतारें, या खाली छोड़ें।</translation>
    </message>
    <message>
        <source>The last day of use is missing.</source>
        <translation>उपयोग का आख़िरी दिन नहीं लिखा।</translation>
    </message>
    <message>
        <source>Read it off the pack.</source>
        <translation>इसे पैक पर पढ़ें।</translation>
    </message>
    <message>
        <source>This item is no longer kept.</source>
        <translation>यह सामान अब नहीं रखा जाता।</translation>
    </message>
    <message>
        <source>To keep it again, choose Change this shelf.</source>
        <translation>फिर से रखना हो तो “यह शेल्फ़ बदलें” चुनें।</translation>
    </message>
    <message>
        <source>The book holds %1 of these %2 pieces.</source>
        <translation>इन %2 नगों में से बही में %1 हैं।</translation>
    </message>
    <message>
        <source>Count the shelf and enter the count first.</source>
        <translation>पहले शेल्फ़ गिनें और गिनती दर्ज करें।</translation>
    </message>
    <message>
        <source>A level is 0 to %1 pieces.</source>
        <translation>हर स्तर 0 से %1 नग तक होता है।</translation>
    </message>
    <message>
        <source>Never under %1, order at %2, fill up to %3: each is at most the next.</source>
        <translation>%1 से कम कभी नहीं, %2 पर मँगाएँ, %3 तक भरें: हर संख्या अगली से ज़्यादा न हो।</translation>
    </message>
    <message>
        <source>Change the one that stands out.</source>
        <translation>जो बेमेल है उसे बदलें।</translation>
    </message>
    <message>
        <source>A name has 1 to %1 characters.</source>
        <translation>नाम में 1 से %1 अक्षर होते हैं।</translation>
    </message>
    <message>
        <source>Say what the ward calls it.</source>
        <translation>बताएँ वार्ड इसे क्या कहता है।</translation>
    </message>
    <message>
        <source>The number on a device has at most %1 characters.</source>
        <translation>उपकरण पर लिखे नंबर में ज़्यादा से ज़्यादा %1 अक्षर होते हैं।</translation>
    </message>
    <message>
        <source>Copy it from the device, or leave it empty.</source>
        <translation>इसे उपकरण से उतारें, या खाली छोड़ें।</translation>
    </message>
    <message>
        <source>The days between two services or calibrations are 1 to %1.</source>
        <translation>दो सर्विस या दो कैलिब्रेशन के बीच 1 से %1 दिन होते हैं।</translation>
    </message>
    <message>
        <source>Leave them empty when none is planned.</source>
        <translation>कोई तय न हो तो खाली छोड़ें।</translation>
    </message>
    <message>
        <source>This device is on the register already.</source>
        <translation>यह उपकरण रजिस्टर में पहले से है।</translation>
    </message>
    <message>
        <source>Look at the list again.</source>
        <translation>सूची फिर से देखें।</translation>
    </message>
    <message>
        <source>No fridge shows that: a reading is %1 to %2 °C.</source>
        <translation>कोई फ़्रिज यह नहीं दिखाता: रीडिंग %1 से %2 °C तक होती है।</translation>
    </message>
    <message>
        <source>Read the thermometer again.</source>
        <translation>थर्मामीटर फिर से पढ़ें।</translation>
    </message>
    <message>
        <source>The lowest that was kept is above the reading, or the highest is below it.</source>
        <translation>सबसे कम तापमान रीडिंग से ऊपर है, या सबसे अधिक उससे नीचे।</translation>
    </message>
    <message>
        <source>Read all three again; the reading lies between the two.</source>
        <translation>तीनों फिर से पढ़ें; रीडिंग बाक़ी दोनों के बीच होती है।</translation>
    </message>
    <message>
        <source>A known weight is 1 to %1 g, and a scale shows 0 to %1 g.</source>
        <translation>ज्ञात वज़न 1 से %1 ग्राम तक होता है, और तराज़ू 0 से %1 ग्राम तक दिखाता है।</translation>
    </message>
    <message>
        <source>Give both in grams.</source>
        <translation>दोनों ग्राम में दें।</translation>
    </message>
    <message>
        <source>No thermometer of a ward shows that: a reading is %1 to %2 °C.</source>
        <translation>वार्ड का कोई थर्मामीटर यह नहीं दिखाता: रीडिंग %1 से %2 °C तक होती है।</translation>
    </message>
    <message>
        <source>Read both again.</source>
        <translation>दोनों फिर से पढ़ें।</translation>
    </message>
    <message>
        <source>This birth is off the board already.</source>
        <translation>यह प्रसव बोर्ड से पहले ही हट चुका है।</translation>
    </message>
    <message>
        <source>Put up a new one.</source>
        <translation>नया लिखें।</translation>
    </message>
    <message>
        <source>This handover was taken already.</source>
        <translation>यह शिफ्ट पहले ही ली जा चुकी है।</translation>
    </message>
    <message>
        <source>Nothing is left to sign until the next one is given.</source>
        <translation>अगली बार सौंपे जाने तक हस्ताक्षर के लिए कुछ नहीं है।</translation>
    </message>
    <message>
        <source>Who gave the handover cannot take it.</source>
        <translation>जिसने शिफ्ट सौंपी, वही उसे नहीं ले सकता।</translation>
    </message>
    <message>
        <source>Let the one who comes sign.</source>
        <translation>आने वाला हस्ताक्षर करे।</translation>
    </message>
    <message>
        <source>This gap is closed.</source>
        <translation>यह कमी बंद हो चुकी है।</translation>
    </message>
    <message>
        <source>Choose the one that is open now.</source>
        <translation>वह चुनें जो अभी खुली है।</translation>
    </message>
    <message>
        <source>Nobody has said that it is mended.</source>
        <translation>किसी ने नहीं बताया कि यह ठीक हुआ।</translation>
    </message>
    <message>
        <source>Say first who mended it.</source>
        <translation>पहले बताएँ किसने ठीक किया।</translation>
    </message>
    <message>
        <source>Who mended it cannot be the one who looks.</source>
        <translation>जिसने ठीक किया, वही जाँच नहीं सकता।</translation>
    </message>
    <message>
        <source>Let a second person do it.</source>
        <translation>दूसरा व्यक्ति जाँचे।</translation>
    </message>
    <message>
        <source>Who mends it is said in at most %1 characters.</source>
        <translation>ज़िम्मेदार का नाम ज़्यादा से ज़्यादा %1 अक्षरों का होता है।</translation>
    </message>
    <message>
        <source>Give initials or a role.</source>
        <translation>नाम के अक्षर या पद दें।</translation>
    </message>
    <message>
        <source>A remark has at most %1 characters.</source>
        <translation>टिप्पणी में ज़्यादा से ज़्यादा %1 अक्षर होते हैं।</translation>
    </message>
    <message>
        <source>Shorten it.</source>
        <translation>इसे छोटा करें।</translation>
    </message>
    <message>
        <source>Each has to hear later than the one before.</source>
        <translation>हर एक को पहले वाले के बाद बताया जाए।</translation>
    </message>
    <message>
        <source>Give rising numbers, or “never”.</source>
        <translation>बढ़ती संख्याएँ दें, या “कभी नहीं”।</translation>
    </message>
    <message>
        <source>A way between units is 0 to %1 km.</source>
        <translation>यूनिटों के बीच की दूरी 0 से %1 किमी होती है।</translation>
    </message>
    <message>
        <source>Give it in kilometres.</source>
        <translation>इसे किलोमीटर में दें।</translation>
    </message>
    <message>
        <source>The items looked at are 1 to %1, as many as the sample has.</source>
        <translation>देखी गई चीज़ें 1 से %1 हो सकती हैं, जितनी नमूने में हैं।</translation>
    </message>
    <message>
        <source>Count them again on the sheet.</source>
        <translation>इन्हें काग़ज़ पर फिर से गिनें।</translation>
    </message>
    <message>
        <source>Not more items can be not met than the %1 looked at.</source>
        <translation>जो पूरी नहीं मिलीं, वे देखी गई %1 चीज़ों से ज़्यादा नहीं हो सकतीं।</translation>
    </message>
    <message>
        <source>Count both again.</source>
        <translation>दोनों फिर से गिनें।</translation>
    </message>
    <message>
        <source>The name of a ward is one line, and not empty.</source>
        <translation>वार्ड का नाम एक पंक्ति का होता है, और खाली नहीं।</translation>
    </message>
    <message>
        <source>Say what the ward is called.</source>
        <translation>वार्ड का नाम लिखें।</translation>
    </message>
    <message>
        <source>“%1” are no initials of 1 to 12 characters.</source>
        <translation>“%1” 1 से 12 अक्षरों के इनिशियल नहीं हैं।</translation>
    </message>
    <message>
        <source>Give initials, no full names.</source>
        <translation>इनिशियल दें, पूरा नाम नहीं।</translation>
    </message>
    <message>
        <source>The initials “%1” stand twice in the list.</source>
        <translation>इनिशियल “%1” सूची में दो बार हैं।</translation>
    </message>
    <message>
        <source>Add a letter to one of them.</source>
        <translation>एक में एक अक्षर जोड़ें।</translation>
    </message>
    <message>
        <source>The time zone “%1” is not known to this computer.</source>
        <translation>टाइम ज़ोन “%1” इस कंप्यूटर को मालूम नहीं।</translation>
    </message>
    <message>
        <source>Choose one from the list, for example Asia/Kolkata.</source>
        <translation>सूची से चुनें, जैसे Asia/Kolkata।</translation>
    </message>
    <message>
        <source>“%1” is no shift.</source>
        <translation>“%1” कोई शिफ्ट नहीं है।</translation>
    </message>
    <message>
        <source>Write start times and names, for example 07:00 day, 19:00 night.</source>
        <translation>शुरू का समय और नाम लिखें, जैसे 07:00 day, 19:00 night।</translation>
    </message>
    <message>
        <source>The shifts do not follow one another through the day.</source>
        <translation>शिफ्टें दिन में एक के बाद एक नहीं आतीं।</translation>
    </message>
    <message>
        <source>Give one to four start times in order, each with a name of its own.</source>
        <translation>क्रम से एक से चार समय दें, हर एक का अपना नाम हो।</translation>
    </message>
    <message>
        <source>This wants one line of %1 to %2 characters.</source>
        <translation>यहाँ %1 से %2 अक्षरों की एक पंक्ति चाहिए।</translation>
    </message>
    <message>
        <source>Say it in a few words; nothing about a patient.</source>
        <translation>थोड़े शब्दों में लिखें; मरीज़ के बारे में कुछ नहीं।</translation>
    </message>
    <message>
        <source>Nobody is named.</source>
        <translation>किसी का नाम नहीं दिया।</translation>
    </message>
    <message>
        <source>Give your initials, 1 to 12 characters.</source>
        <translation>अपने नाम के अक्षर दें, 1 से 12।</translation>
    </message>
    <message>
        <source>This time lies ahead of now.</source>
        <translation>यह समय अभी से आगे का है।</translation>
    </message>
    <message>
        <source>Look at the time that was typed and at the clock of this computer.</source>
        <translation>लिखा हुआ समय और इस कंप्यूटर की घड़ी देखें।</translation>
    </message>
    <message>
        <source>It is not there any more.</source>
        <translation>यह अब वहाँ नहीं है।</translation>
    </message>
    <message>
        <source>Look at the list again and choose anew.</source>
        <translation>सूची फिर से देखें और दोबारा चुनें।</translation>
    </message>
    <message>
        <source>The table does not begin as it should.</source>
        <translation>तालिका की शुरुआत सही नहीं है।</translation>
    </message>
    <message>
        <source>Its first line is %1.</source>
        <translation>इसकी पहली पंक्ति %1 होती है।</translation>
    </message>
    <message>
        <source>Line %1 of the table: “%2” cannot be taken. Nothing was.</source>
        <translation>तालिका की पंक्ति %1: “%2” नहीं लिया जा सकता। कुछ भी नहीं लिया गया।</translation>
    </message>
    <message>
        <source>Mend that line, then take in the table again.</source>
        <translation>वह पंक्ति ठीक करें, फिर तालिका दोबारा लें।</translation>
    </message>
    <message>
        <source>This ward has no shifts yet.</source>
        <translation>इस वार्ड की शिफ्टें अभी तय नहीं हैं।</translation>
    </message>
    <message>
        <source>Give them in Set-up.</source>
        <translation>उन्हें सेटिंग में दर्ज करें।</translation>
    </message>
    <message>
        <source>This ward has no checklist for that yet.</source>
        <translation>इस वार्ड में इसके लिए अभी कोई चेकलिस्ट नहीं है।</translation>
    </message>
    <message>
        <source>Take one into use in Set-up.</source>
        <translation>सेटिंग में एक चेकलिस्ट लागू करें।</translation>
    </message>
    <message>
        <source>This shift has its round already.</source>
        <translation>इस पाली का राउंड पहले से है।</translation>
    </message>
    <message>
        <source>Re-check what was mended instead.</source>
        <translation>इसके बजाय जो ठीक किया गया उसे दोबारा जाँचें।</translation>
    </message>
    <message>
        <source>Nothing is different.</source>
        <translation>कुछ भी नहीं बदला है।</translation>
    </message>
    <message>
        <source>Change an answer first.</source>
        <translation>पहले कोई जवाब बदलें।</translation>
    </message>
    <message>
        <source>This computer lacks a part that this needs.</source>
        <translation>इसके लिए ज़रूरी एक हिस्सा इस कंप्यूटर पर नहीं है।</translation>
    </message>
    <message>
        <source>Have the package %1 installed.</source>
        <translation>पैकेज %1 इंस्टॉल करवाएँ।</translation>
    </message>
    <message>
        <source>A part of this program is missing: %1.</source>
        <translation>इस प्रोग्राम का एक हिस्सा गायब है: %1।</translation>
    </message>
    <message>
        <source>Have the program installed again.</source>
        <translation>प्रोग्राम दोबारा इंस्टॉल करवाएँ।</translation>
    </message>
    <message>
        <source>The end lies before the beginning.</source>
        <translation>अंत शुरुआत से पहले का है।</translation>
    </message>
    <message>
        <source>Give the later one as the end.</source>
        <translation>बाद वाला समय या दिन अंत के लिए दें।</translation>
    </message>
</context>
<context>
    <name>ReportSaying</name>
    <message>
        <source>Report</source>
        <translation>रिपोर्ट</translation>
    </message>
    <message>
        <source>PDF (*.pdf);;Web page (*.html);;Spreadsheet (*.xlsx);;CSV (*.csv);;JSON (*.json)</source>
        <translation>PDF (*.pdf);;वेब पन्ना (*.html);;स्प्रेडशीट (*.xlsx);;CSV (*.csv);;JSON (*.json)</translation>
    </message>
    <message>
        <source>Report written: %1</source>
        <translation>रिपोर्ट लिखी गई: %1</translation>
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
    <message>
        <source>What was answered so far in &quot;%1&quot; can no longer be read; begin it anew.</source>
        <extracomment>%1 a kind of round, for example &quot;Check before a birth&quot;</extracomment>
        <translation>&quot;%1&quot; में अब तक जो जवाब दिए गए, वे अब पढ़े नहीं जा सकते; इसे नए सिरे से शुरू करें।</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Births expected</source>
        <translation>अपेक्षित प्रसव</translation>
    </message>
    <message>
        <source>none</source>
        <translation>कोई नहीं</translation>
    </message>
    <message numerus="yes">
        <source>%n whole kit(s) left</source>
        <translation>
            <numerusform>%n पूरी किट बची</numerusform>
            <numerusform>%n पूरी किट बचीं</numerusform>
        </translation>
    </message>
    <message>
        <source>kits were not counted</source>
        <translation>किट नहीं गिनी गईं</translation>
    </message>
</context>
<context>
    <name>StandingSheet</name>
    <message>
        <source>No unit stands out from the district</source>
        <translation>कोई यूनिट ज़िले से अलग नहीं दिखती</translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) stand out from the district</source>
        <translation>
            <numerusform>ज़िले के मुक़ाबले %n यूनिट में फ़र्क़ संयोग से ज़्यादा</numerusform>
            <numerusform>ज़िले के मुक़ाबले %n यूनिटों में फ़र्क़ संयोग से ज़्यादा</numerusform>
        </translation>
    </message>
    <message>
        <source>95%</source>
        <comment>limits of a funnel</comment>
        <translation>95%</translation>
    </message>
    <message>
        <source>99.8%</source>
        <comment>limits of a funnel</comment>
        <translation>99.8%</translation>
    </message>
    <message>
        <source>rounds</source>
        <translation>राउंड</translation>
    </message>
    <message>
        <source>shifts without a critical gap</source>
        <translation>शिफ्टें बिना गंभीर कमी के</translation>
    </message>
    <message>
        <source>Units side by side</source>
        <translation>यूनिटें साथ-साथ</translation>
    </message>
    <message>
        <source>Shifts without a critical gap, of rounds done, with 95% limits (Wilson). Within a band the order is the alphabet&apos;s: it ranks nobody.</source>
        <translation>जितने राउंड हुए, उनमें से बिना गंभीर कमी वाली शिफ्टें, 95% सीमाओं के साथ (Wilson)। हर समूह के भीतर क्रम वर्णमाला का है: इससे किसी की रैंकिंग नहीं होती।</translation>
    </message>
    <message>
        <source>district %1</source>
        <translation>ज़िला %1</translation>
    </message>
</context>
<context>
    <name>StockSheet</name>
    <message>
        <source>No stock book shows a shortage or a surplus</source>
        <translation>किसी सामान बही में न कमी है, न अधिकता</translation>
    </message>
    <message>
        <source>No stock that one unit lacks can be spared by another</source>
        <translation>जो सामान एक यूनिट में कम है, वह कोई दूसरी नहीं दे सकती</translation>
    </message>
    <message numerus="yes">
        <source>Stock that could move: %n transfer(s) would help</source>
        <translation>
            <numerusform>जो सामान दिया जा सकता है: %n बार भेजने से मदद मिलेगी</numerusform>
            <numerusform>जो सामान दिया जा सकता है: %n बार भेजने से मदद मिलेगी</numerusform>
        </translation>
    </message>
    <message>
        <source>From the units&apos; stock books as they stand now. A giver keeps its par, and what it uses in %1 days or until its delivery.</source>
        <translation>यूनिटों की सामान बही के अभी के हिसाब से। देने वाली यूनिट अपना तय स्टॉक रखती है, और उतना जितना वह %1 दिन में या अगली आपूर्ति तक लगाती है।</translation>
    </message>
    <message>
        <source>The least pieces times kilometres: %1.</source>
        <translation>सबसे कम नग गुणा किलोमीटर: %1।</translation>
    </message>
    <message>
        <source>No distances are known: any way counts the same.</source>
        <translation>कोई दूरी मालूम नहीं: हर रास्ता बराबर गिना जाता है।</translation>
    </message>
    <message>
        <source>Nothing to move.</source>
        <translation>भेजने को कुछ नहीं।</translation>
    </message>
</context>
<context>
    <name>StoresText</name>
    <message>
        <source>warmer</source>
        <translation>वार्मर</translation>
    </message>
    <message>
        <source>bag and mask</source>
        <translation>बैग और मास्क</translation>
    </message>
    <message>
        <source>suction</source>
        <translation>सक्शन</translation>
    </message>
    <message>
        <source>oxygen</source>
        <translation>ऑक्सीजन</translation>
    </message>
    <message>
        <source>oximeter</source>
        <translation>ऑक्सीमीटर</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>तराज़ू</translation>
    </message>
    <message>
        <source>thermometer</source>
        <translation>थर्मामीटर</translation>
    </message>
    <message>
        <source>fridge</source>
        <translation>फ़्रिज</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>घड़ी</translation>
    </message>
    <message>
        <source>other device</source>
        <translation>दूसरा उपकरण</translation>
    </message>
    <message>
        <source>in use</source>
        <translation>काम में</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>अतिरिक्त</translation>
    </message>
    <message>
        <source>out for repair</source>
        <translation>मरम्मत में</translation>
    </message>
    <message>
        <source>no longer here</source>
        <translation>अब यहाँ नहीं</translation>
    </message>
    <message>
        <source>service late since %1</source>
        <translation>सर्विस %1 से बाकी</translation>
    </message>
    <message>
        <source>calibration late since %1</source>
        <translation>कैलिब्रेशन %1 से बाकी</translation>
    </message>
    <message>
        <source>service %1</source>
        <translation>सर्विस %1</translation>
    </message>
    <message>
        <source>calibration %1</source>
        <translation>कैलिब्रेशन %1</translation>
    </message>
    <message>
        <source>reads wrong</source>
        <translation>ग़लत दिखाता है</translation>
    </message>
    <message>
        <source>not read yet</source>
        <translation>अभी तक पढ़ा नहीं गया</translation>
    </message>
    <message>
        <source>%1 °C, %2</source>
        <translation>%1 °C, %2</translation>
    </message>
    <message>
        <source>%1 to %2 °C</source>
        <translation>%1 से %2 °C</translation>
    </message>
    <message>
        <source>Too warm from %1, up to %2 °C, for %3 at least.</source>
        <translation>%1 से बहुत गर्म, %2 °C तक, कम से कम %3।</translation>
    </message>
    <message>
        <source>Too cold from %1, down to %2 °C, for %3 at least.</source>
        <translation>%1 से बहुत ठंडा, %2 °C तक, कम से कम %3।</translation>
    </message>
    <message>
        <source>An alarm would have sounded.</source>
        <translation>अलार्म बज गया होता।</translation>
    </message>
    <message>
        <source>It may have been long enough for an alarm.</source>
        <translation>हो सकता है यह अलार्म जितना लंबा रहा हो।</translation>
    </message>
    <message>
        <source>Never read outside its limits in 60 days.</source>
        <translation>60 दिनों में कभी सीमा से बाहर नहीं पढ़ा गया।</translation>
    </message>
    <message>
        <source>%1 %2 %3</source>
        <translation>%1 %2 %3</translation>
    </message>
    <message>
        <source>Inside at the last one: %1.</source>
        <translation>पिछली बार अंदर था: %1।</translation>
    </message>
    <message>
        <source>Some of it is harmed by frost.</source>
        <translation>इसमें से कुछ जमने से ख़राब होता है।</translation>
    </message>
    <message>
        <source>Mean kinetic temperature over 60 days: %1 °C. It excuses no excursion.</source>
        <translation>60 दिनों का औसत काइनेटिक तापमान: %1 °C। इससे सीमा से बाहर जाना माफ़ नहीं होता।</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) left out in 60 days; two a day are due.</source>
        <translation>
            <numerusform>60 दिनों में %n रीडिंग छूटी; दिन में दो लेनी हैं।</numerusform>
            <numerusform>60 दिनों में %n रीडिंग छूटीं; दिन में दो लेनी हैं।</numerusform>
        </translation>
    </message>
    <message>
        <source>%1: out for repair for %2.</source>
        <translation>%1: %2 से मरम्मत में।</translation>
    </message>
    <message>
        <source>%1: reads wrong.</source>
        <translation>%1: ग़लत दिखाता है।</translation>
    </message>
    <message numerus="yes">
        <source>%n device(s) with late upkeep.</source>
        <translation>
            <numerusform>%n उपकरण की देखभाल बाकी।</numerusform>
            <numerusform>%n उपकरणों की देखभाल बाकी।</numerusform>
        </translation>
    </message>
    <message>
        <source>In order in %1 rounds of the last 30 days.</source>
        <translation>पिछले 30 दिनों के %1 राउंड में ठीक।</translation>
    </message>
    <message>
        <source>Last found not in order: %1.</source>
        <translation>पिछली बार ठीक नहीं मिला: %1।</translation>
    </message>
    <message>
        <source>There for use %1 of the last year.</source>
        <translation>पिछले साल में %1 समय काम के लिए उपलब्ध।</translation>
    </message>
    <message numerus="yes">
        <source>%n failure(s), one in %1.</source>
        <translation>
            <numerusform>%n ख़राबी, %1 में एक।</numerusform>
            <numerusform>%n ख़राबियाँ, %1 में एक।</numerusform>
        </translation>
    </message>
    <message>
        <source>No shelf is kept here yet</source>
        <translation>यहाँ अभी कोई शेल्फ़ दर्ज नहीं</translation>
    </message>
    <message>
        <source>Nothing has to be ordered now</source>
        <translation>अभी कुछ मँगाना नहीं है</translation>
    </message>
    <message>
        <source>%1: none left, order %2</source>
        <translation>%1: कुछ नहीं बचा, %2 मँगाएँ</translation>
    </message>
    <message>
        <source>%1: order %2</source>
        <translation>%1: %2 मँगाएँ</translation>
    </message>
    <message>
        <source>%1: enough for %2 more, order %3</source>
        <translation>%1: %2 और चलेगा, %3 मँगाएँ</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s) to order.</source>
        <translation>
            <numerusform>%n सामान मँगाना है।</numerusform>
            <numerusform>%n सामान मँगाने हैं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n expired piece(s) to take off.</source>
        <translation>
            <numerusform>%n पुराना नग हटाना है।</numerusform>
            <numerusform>%n पुराने नग हटाने हैं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>The last round counted otherwise %n time(s).</source>
        <translation>
            <numerusform>पिछले राउंड की गिनती %n बार अलग रही।</numerusform>
            <numerusform>पिछले राउंड की गिनती %n बार अलग रही।</numerusform>
        </translation>
    </message>
    <message>
        <source>none left</source>
        <translation>कुछ नहीं बचा</translation>
    </message>
    <message>
        <source>not used lately</source>
        <translation>हाल में काम में नहीं आया</translation>
    </message>
    <message numerus="yes">
        <source>%n shift(s)</source>
        <translation>
            <numerusform>%n शिफ्ट</numerusform>
            <numerusform>%n शिफ्ट</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n day(s)</source>
        <translation>
            <numerusform>%n दिन</numerusform>
            <numerusform>%n दिन</numerusform>
        </translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%2 में से %1</translation>
    </message>
    <message>
        <source>%1 until %2</source>
        <translation>%1, %2 तक</translation>
    </message>
    <message>
        <source>%1 expired %2</source>
        <translation>%1, %2 को पुराना हुआ</translation>
    </message>
    <message>
        <source>order %1</source>
        <translation>%1 मँगाएँ</translation>
    </message>
    <message>
        <source>take off %1 expired</source>
        <translation>%1 पुराने हटाएँ</translation>
    </message>
    <message>
        <source>%1 to last until %2</source>
        <translation>%2 तक चलने की संभावना %1</translation>
    </message>
    <message>
        <source>Fill up to %1, order at %2, never under %3.</source>
        <translation>%1 तक भरें, %2 पर मँगाएँ, %3 से कम कभी नहीं।</translation>
    </message>
    <message>
        <source>Lasts about %1 shifts, %2 months.</source>
        <translation>लगभग %1 शिफ्ट, %2 महीने चलेगा।</translation>
    </message>
    <message>
        <source>Used: %1 a day.</source>
        <translation>खपत: दिन में %1।</translation>
    </message>
    <message>
        <source>At this use %1 will expire unused.</source>
        <translation>इस खपत पर %1 बिना काम आए पुराने होंगे।</translation>
    </message>
    <message>
        <source>counted %1, the book says %2</source>
        <translation>गिने %1, बही में %2</translation>
    </message>
    <message>
        <source>Kits that the shelf can make up: %1 of %2. What limits: %3.</source>
        <translation>शेल्फ़ से बन सकने वाली किट: %2 में से %1। जिसकी कमी है: %3।</translation>
    </message>
    <message>
        <source>Came in</source>
        <translation>आया</translation>
    </message>
    <message>
        <source>Used</source>
        <translation>काम में आया</translation>
    </message>
    <message>
        <source>Lost or spoiled</source>
        <translation>खोया या ख़राब</translation>
    </message>
    <message>
        <source>Expired, taken off</source>
        <translation>पुराना, हटाया</translation>
    </message>
    <message>
        <source>Counted</source>
        <translation>गिना</translation>
    </message>
    <message>
        <source>Given to another unit</source>
        <translation>दूसरी यूनिट को दिया</translation>
    </message>
    <message>
        <source>From another unit</source>
        <translation>दूसरी यूनिट से</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>टूटा-फूटा</translation>
    </message>
    <message>
        <source>opened, not used up</source>
        <translation>खुला, पूरा काम नहीं आया</translation>
    </message>
    <message>
        <source>too warm or frozen</source>
        <translation>बहुत गर्म या जमा हुआ</translation>
    </message>
    <message>
        <source>lost</source>
        <translation>खोया</translation>
    </message>
    <message>
        <source>not written down before</source>
        <translation>पहले लिखा नहीं गया</translation>
    </message>
    <message>
        <source>counted wrong before</source>
        <translation>पहले ग़लत गिना</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>पता नहीं</translation>
    </message>
    <message>
        <source>Read %1: %2 %3, about %4 min at %5 L/min; %6 min are wanted.</source>
        <translation>%1 पढ़ा: %2 %3, %5 L/min पर लगभग %4 मिनट; %6 मिनट चाहिए।</translation>
    </message>
    <message>
        <source>At this flow, change it at %1 %2.</source>
        <translation>इस बहाव पर %1 %2 रहते बदलें।</translation>
    </message>
    <message>
        <source>To have enough in %1 of 100 cases, order when %2 are left.</source>
        <translation>100 में से %1 बार पूरा पड़े, इसके लिए %2 बचने पर मँगाएँ।</translation>
    </message>
    <message numerus="yes">
        <source>Delivered every %n day(s).</source>
        <translation>
            <numerusform>हर %n दिन में आता है।</numerusform>
            <numerusform>हर %n दिन में आता है।</numerusform>
        </translation>
    </message>
    <message>
        <source>set apart what is inside, label it “do not use”, ask who is responsible.</source>
        <translation>अंदर का सामान अलग रखें, उस पर “उपयोग न करें” लिखें, ज़िम्मेदार व्यक्ति से पूछें।</translation>
    </message>
    <message>
        <source>outside its limits, read it again soon.</source>
        <translation>सीमा से बाहर, जल्द फिर पढ़ें।</translation>
    </message>
    <message>
        <source>a reading is due.</source>
        <translation>रीडिंग लेनी है।</translation>
    </message>
    <message>
        <source>within its limits.</source>
        <translation>सीमा के भीतर।</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>a fridge and what to do</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>g</source>
        <comment>grams</comment>
        <translation>ग्राम</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>Checked %1: off by %2 %4, allowed %3 %4.</source>
        <translation>जाँच %1: अंतर %2 %4, अनुमति %3 %4।</translation>
    </message>
    <message>
        <source>%1 without a day</source>
        <translation>%1 बिना तारीख़</translation>
    </message>
    <message>
        <source>Pieces that expire: %1 within 30 days, %2 in 31 to 60, %3 in 61 to 90.</source>
        <translation>जिनकी तारीख़ ख़त्म होगी: 30 दिनों में %1, 31 से 60 में %2, 61 से 90 में %3।</translation>
    </message>
    <message>
        <source>Nothing more expires within 90 days.</source>
        <translation>90 दिनों में और किसी की तारीख़ ख़त्म नहीं होगी।</translation>
    </message>
    <message>
        <source>At today&apos;s use %1 will expire unused.</source>
        <translation>आज की खपत पर %1 बिना काम आए पुराने होंगे।</translation>
    </message>
</context>
<context>
    <name>TableText</name>
    <message>
        <source>Summary</source>
        <translation>सारांश</translation>
    </message>
    <message>
        <source>Rounds, shift by shift</source>
        <translation>राउंड, शिफ्ट-दर-शिफ्ट</translation>
    </message>
    <message>
        <source>Week by week</source>
        <translation>हफ़्ते-दर-हफ़्ते</translation>
    </message>
    <message>
        <source>Limits of the weekly charts</source>
        <translation>हफ़्तेवार चार्ट की सीमाएँ</translation>
    </message>
    <message>
        <source>Signals of the weekly charts</source>
        <translation>हफ़्तेवार चार्ट के संकेत</translation>
    </message>
    <message>
        <source>Changes in the weekly charts</source>
        <translation>हफ़्तेवार चार्ट में बदलाव</translation>
    </message>
    <message>
        <source>Items by lost readiness</source>
        <translation>घटी हुई तैयारी के हिसाब से चीज़ें</translation>
    </message>
    <message>
        <source>Items by week</source>
        <translation>हफ़्ते के हिसाब से चीज़ें</translation>
    </message>
    <message>
        <source>By shift</source>
        <translation>शिफ्ट के हिसाब से</translation>
    </message>
    <message>
        <source>By weekday</source>
        <translation>हफ़्ते के दिन के हिसाब से</translation>
    </message>
    <message>
        <source>Tests of shifts and weekdays</source>
        <translation>शिफ्टों और हफ़्ते के दिनों के टेस्ट</translation>
    </message>
    <message>
        <source>Readings</source>
        <translation>रीडिंग</translation>
    </message>
    <message>
        <source>Readings against their limits</source>
        <translation>सीमाओं के मुक़ाबले रीडिंग</translation>
    </message>
    <message>
        <source>How often each value was read</source>
        <translation>कौन-सी रीडिंग कितनी बार आई</translation>
    </message>
    <message>
        <source>Gaps still open after so many hours</source>
        <translation>इतने घंटे बाद भी बाक़ी कमियाँ</translation>
    </message>
    <message>
        <source>Time to mend</source>
        <translation>ठीक होने में लगा समय</translation>
    </message>
    <message>
        <source>Gaps still open</source>
        <translation>अब भी बाक़ी कमियाँ</translation>
    </message>
    <message>
        <source>Equipment</source>
        <translation>उपकरण</translation>
    </message>
    <message>
        <source>Trust in the entries</source>
        <translation>एंट्री पर भरोसा</translation>
    </message>
    <message>
        <source>How readings are written</source>
        <translation>रीडिंग कैसे लिखी जाती हैं</translation>
    </message>
    <message>
        <source>Agreement with spot checks</source>
        <translation>स्वतंत्र जाँच से मेल</translation>
    </message>
    <message>
        <source>Change ideas</source>
        <translation>बदलाव के सुझाव</translation>
    </message>
    <message>
        <source>Findings</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>Two spans compared</source>
        <translation>दो अवधियों की तुलना</translation>
    </message>
    <message>
        <source>Items in two spans</source>
        <translation>दो अवधियों में चीज़ें</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>कौन</translation>
    </message>
    <message>
        <source>p, adjusted</source>
        <translation>p, समायोजित</translation>
    </message>
    <message>
        <source>After: of</source>
        <translation>बाद में: कुल</translation>
    </message>
    <message>
        <source>After: met</source>
        <translation>बाद में: ठीक</translation>
    </message>
    <message>
        <source>Agreed</source>
        <translation>मेल खाए</translation>
    </message>
    <message>
        <source>Amended</source>
        <translation>सुधारा गया</translation>
    </message>
    <message>
        <source>Until</source>
        <translation>कब तक</translation>
    </message>
    <message>
        <source>Still open</source>
        <translation>अब भी बाक़ी</translation>
    </message>
    <message>
        <source>Weeks that set the limits</source>
        <translation>सीमा तय करने वाले हफ़्ते</translation>
    </message>
    <message>
        <source>Times before</source>
        <translation>पहले कितनी बार</translation>
    </message>
    <message>
        <source>Before: of</source>
        <translation>पहले: कुल</translation>
    </message>
    <message>
        <source>Before: met</source>
        <translation>पहले: ठीक</translation>
    </message>
    <message>
        <source>Began</source>
        <translation>कब शुरू हुआ</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>शुरू</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>नीचे</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>ऊपर</translation>
    </message>
    <message>
        <source>Beyond the chart&apos;s limits</source>
        <translation>चार्ट की सीमाओं से बाहर</translation>
    </message>
    <message>
        <source>Seen by both</source>
        <translation>दोनों ने देखा</translation>
    </message>
    <message>
        <source>Why nothing is said</source>
        <translation>कुछ न कहने की वजह</translation>
    </message>
    <message>
        <source>Open before the span</source>
        <translation>अवधि से पहले की बाक़ी</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>बीच की रेखा</translation>
    </message>
    <message>
        <source>Chi-square</source>
        <translation>Chi-square</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>निष्कर्ष</translation>
    </message>
    <message>
        <source>Count</source>
        <translation>गिनती</translation>
    </message>
    <message>
        <source>So far</source>
        <translation>यहाँ तक</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>Degrees of freedom</source>
        <translation>Degrees of freedom</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>फ़र्क़</translation>
    </message>
    <message>
        <source>Different values</source>
        <translation>अलग-अलग मान</translation>
    </message>
    <message>
        <source>Stands out</source>
        <translation>अलग दिखता है</translation>
    </message>
    <message>
        <source>Dispersion</source>
        <translation>बिखराव</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>हुए</translation>
    </message>
    <message>
        <source>Still out of use</source>
        <translation>अब भी बंद</translation>
    </message>
    <message>
        <source>Out of use</source>
        <translation>बंद</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>तय</translation>
    </message>
    <message>
        <source>Ends</source>
        <translation>ख़त्म</translation>
    </message>
    <message>
        <source>Times out of use</source>
        <translation>कितनी बार बंद</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>आँकड़ा</translation>
    </message>
    <message>
        <source>First: gaps</source>
        <translation>पहली: कमियाँ</translation>
    </message>
    <message>
        <source>First: of</source>
        <translation>पहली: कुल</translation>
    </message>
    <message>
        <source>First</source>
        <translation>पहली</translation>
    </message>
    <message>
        <source>First: count</source>
        <translation>पहली: गिनती</translation>
    </message>
    <message>
        <source>From</source>
        <translation>से</translation>
    </message>
    <message>
        <source>Rounds with a gap</source>
        <translation>कमी वाले राउंड</translation>
    </message>
    <message>
        <source>Goes on</source>
        <translation>अब भी जारी</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>शिफ्ट</translation>
    </message>
    <message>
        <source>High</source>
        <translation>ऊपरी मान</translation>
    </message>
    <message>
        <source>Hours</source>
        <translation>घंटे</translation>
    </message>
    <message>
        <source>Between failures</source>
        <translation>दो खराबियों के बीच</translation>
    </message>
    <message>
        <source>In the span</source>
        <translation>अवधि में</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>चीज़</translation>
    </message>
    <message>
        <source>Items</source>
        <translation>चीज़ें</translation>
    </message>
    <message>
        <source>Items met</source>
        <translation>ठीक चीज़ें</translation>
    </message>
    <message>
        <source>Share of items met</source>
        <translation>ठीक चीज़ों का हिस्सा</translation>
    </message>
    <message>
        <source>Upper limit</source>
        <translation>ऊपरी सीमा</translation>
    </message>
    <message>
        <source>Lower limit</source>
        <translation>निचली सीमा</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>सीमाएँ</translation>
    </message>
    <message>
        <source>Limits from the span itself</source>
        <translation>सीमाएँ इसी अवधि से</translation>
    </message>
    <message>
        <source>Log-rank chi-square</source>
        <translation>Log-rank chi-square</translation>
    </message>
    <message>
        <source>Longest out of use</source>
        <translation>सबसे लंबे समय तक बंद</translation>
    </message>
    <message>
        <source>Longest run of equals</source>
        <translation>लगातार सबसे ज़्यादा एक जैसी</translation>
    </message>
    <message>
        <source>Loss</source>
        <translation>घटी हुई तैयारी</translation>
    </message>
    <message>
        <source>Share of the loss</source>
        <translation>घटी हुई तैयारी का हिस्सा</translation>
    </message>
    <message>
        <source>Low</source>
        <translation>निचला मान</translation>
    </message>
    <message>
        <source>Mean index</source>
        <translation>औसत इंडेक्स</translation>
    </message>
    <message>
        <source>Measure</source>
        <translation>पैमाना</translation>
    </message>
    <message>
        <source>Median</source>
        <translation>मीडियन</translation>
    </message>
    <message>
        <source>Mended</source>
        <translation>ठीक हुईं</translation>
    </message>
    <message>
        <source>Of</source>
        <translation>कुल</translation>
    </message>
    <message>
        <source>Never varies</source>
        <translation>कभी नहीं बदलती</translation>
    </message>
    <message>
        <source>Without a critical gap</source>
        <translation>बिना गंभीर कमी</translation>
    </message>
    <message>
        <source>Share without a critical gap</source>
        <translation>बिना गंभीर कमी का हिस्सा</translation>
    </message>
    <message>
        <source>Not checked</source>
        <translation>नहीं देखा</translation>
    </message>
    <message>
        <source>On .0 and .5</source>
        <translation>.0 और .5 पर</translation>
    </message>
    <message>
        <source>Opened</source>
        <translation>कब मिली</translation>
    </message>
    <message>
        <source>Outside</source>
        <translation>सीमा से बाहर</translation>
    </message>
    <message>
        <source>Overdue</source>
        <translation>तय समय निकल गया</translation>
    </message>
    <message>
        <source>p</source>
        <translation>p</translation>
    </message>
    <message>
        <source>Part</source>
        <translation>कौन-सा हिस्सा</translation>
    </message>
    <message>
        <source>Compared by</source>
        <translation>किस हिसाब से तुलना</translation>
    </message>
    <message>
        <source>Limits from</source>
        <translation>सीमाएँ कब से</translation>
    </message>
    <message>
        <source>Limits to</source>
        <translation>सीमाएँ कब तक</translation>
    </message>
    <message>
        <source>A question</source>
        <translation>सवाल</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>नतीजा</translation>
    </message>
    <message>
        <source>Ready</source>
        <translation>तैयार</translation>
    </message>
    <message>
        <source>Round gap, check met</source>
        <translation>राउंड में कमी, जाँच में ठीक</translation>
    </message>
    <message>
        <source>Round met, check gap</source>
        <translation>राउंड में ठीक, जाँच में कमी</translation>
    </message>
    <message>
        <source>Looks rounded</source>
        <translation>गोल की हुई लगती है</translation>
    </message>
    <message>
        <source>Rounds after</source>
        <translation>बाद के राउंड</translation>
    </message>
    <message>
        <source>Rounds before</source>
        <translation>पहले के राउंड</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>नियम</translation>
    </message>
    <message>
        <source>Second: gaps</source>
        <translation>दूसरी: कमियाँ</translation>
    </message>
    <message>
        <source>Second: of</source>
        <translation>दूसरी: कुल</translation>
    </message>
    <message>
        <source>Second</source>
        <translation>दूसरी</translation>
    </message>
    <message>
        <source>Second: count</source>
        <translation>दूसरी: गिनती</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>भाग</translation>
    </message>
    <message>
        <source>Severity</source>
        <translation>गंभीरता</translation>
    </message>
    <message>
        <source>Share</source>
        <translation>हिस्सा</translation>
    </message>
    <message>
        <source>Direction</source>
        <translation>दिशा</translation>
    </message>
    <message>
        <source>Signalled</source>
        <translation>संकेत कब मिला</translation>
    </message>
    <message>
        <source>Since: of</source>
        <translation>तब से: कुल</translation>
    </message>
    <message>
        <source>Since: met</source>
        <translation>तब से: ठीक</translation>
    </message>
    <message>
        <source>State</source>
        <translation>स्थिति</translation>
    </message>
    <message>
        <source>Step of the instrument</source>
        <translation>यंत्र का एक निशान</translation>
    </message>
    <message>
        <source>Share still open</source>
        <translation>अब भी बाक़ी का हिस्सा</translation>
    </message>
    <message>
        <source>What is tried</source>
        <translation>क्या आज़माया जा रहा है</translation>
    </message>
    <message>
        <source>To</source>
        <translation>तक</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>यूनिट</translation>
    </message>
    <message>
        <source>Size of the effect</source>
        <translation>असर का आकार</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>मान</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>हफ़्ता, इस दिन से</translation>
    </message>
    <message>
        <source>Weekday</source>
        <translation>हफ़्ते का दिन</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>वज़न</translation>
    </message>
    <message>
        <source>Lowest</source>
        <translation>सबसे कम</translation>
    </message>
    <message>
        <source>p of the lowest</source>
        <translation>सबसे कम का p</translation>
    </message>
    <message>
        <source>Distance (sigma)</source>
        <translation>दूरी (सिग्मा)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>हाँ</translation>
    </message>
    <message>
        <source>no</source>
        <translation>नहीं</translation>
    </message>
    <message>
        <source>Findings of the district</source>
        <translation>ज़िले में क्या मिला</translation>
    </message>
    <message>
        <source>Summary of the district</source>
        <translation>ज़िले का सार</translation>
    </message>
    <message>
        <source>Visits</source>
        <translation>दौरे</translation>
    </message>
    <message>
        <source>Why a visit</source>
        <translation>दौरा क्यों</translation>
    </message>
    <message>
        <source>Weights of visits, in points</source>
        <translation>दौरों के वज़न, अंकों में</translation>
    </message>
    <message>
        <source>Units side by side</source>
        <translation>यूनिटें साथ-साथ</translation>
    </message>
    <message>
        <source>Limits of the funnel</source>
        <translation>funnel चार्ट की सीमाएँ</translation>
    </message>
    <message>
        <source>Units within their level</source>
        <translation>यूनिटें, अपने स्तर की यूनिटों के बीच</translation>
    </message>
    <message>
        <source>Critical gaps against what the shifts worked lead to expect</source>
        <translation>गंभीर कमियाँ, हुई शिफ्टों के हिसाब से अपेक्षित के मुक़ाबले</translation>
    </message>
    <message>
        <source>Units against the span before</source>
        <translation>यूनिटें, पिछली अवधि के मुक़ाबले</translation>
    </message>
    <message>
        <source>Units by month</source>
        <translation>महीने के हिसाब से यूनिटें</translation>
    </message>
    <message>
        <source>Items by unit</source>
        <translation>यूनिट के हिसाब से चीज़ें</translation>
    </message>
    <message>
        <source>Reporting by unit</source>
        <translation>यूनिट के हिसाब से रिपोर्टिंग</translation>
    </message>
    <message>
        <source>After</source>
        <translation>बाद में</translation>
    </message>
    <message>
        <source>Against the district</source>
        <translation>ज़िले के मुक़ाबले</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>पहले</translation>
    </message>
    <message>
        <source>Days in a row</source>
        <translation>लगातार दिन</translation>
    </message>
    <message>
        <source>Difference: upper limit</source>
        <translation>फ़र्क़: ऊपरी सीमा</translation>
    </message>
    <message>
        <source>Difference: lower limit</source>
        <translation>फ़र्क़: निचली सीमा</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>अपेक्षित</translation>
    </message>
    <message>
        <source>Too few rounds</source>
        <translation>राउंड बहुत कम</translation>
    </message>
    <message>
        <source>For whom</source>
        <translation>किसके लिए</translation>
    </message>
    <message>
        <source>95%, upper</source>
        <translation>95%, ऊपरी</translation>
    </message>
    <message>
        <source>95%, lower</source>
        <translation>95%, निचली</translation>
    </message>
    <message>
        <source>Last round</source>
        <translation>आख़िरी राउंड</translation>
    </message>
    <message>
        <source>Late</source>
        <translation>देर से</translation>
    </message>
    <message>
        <source>Late, share</source>
        <translation>देर से, हिस्सा</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>स्तर</translation>
    </message>
    <message>
        <source>Longest silence, days</source>
        <translation>सबसे लंबे समय तक रिपोर्ट नहीं, दिन</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>महीना</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>देखी गईं</translation>
    </message>
    <message>
        <source>Others: of</source>
        <translation>अन्य यूनिटें: कुल</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>अन्य यूनिटें</translation>
    </message>
    <message>
        <source>99.8%, upper</source>
        <translation>99.8%, ऊपरी</translation>
    </message>
    <message>
        <source>99.8%, lower</source>
        <translation>99.8%, निचली</translation>
    </message>
    <message>
        <source>From paper</source>
        <translation>काग़ज़ से</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>क्र.</translation>
    </message>
    <message>
        <source>Points</source>
        <translation>अंक</translation>
    </message>
    <message>
        <source>Questions</source>
        <translation>सवाल</translation>
    </message>
    <message>
        <source>Seen to expected</source>
        <translation>देखी गईं / अपेक्षित</translation>
    </message>
    <message>
        <source>Reason</source>
        <translation>वजह</translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation>राउंड</translation>
    </message>
    <message>
        <source>Silent</source>
        <translation>रिपोर्ट नहीं आ रही</translation>
    </message>
    <message>
        <source>Days since the last round</source>
        <translation>आख़िरी राउंड के बाद के दिन</translation>
    </message>
    <message>
        <source>On screen</source>
        <translation>स्क्रीन पर</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>यूनिटें</translation>
    </message>
    <message>
        <source>Before: from</source>
        <translation>पहले: कब से</translation>
    </message>
    <message>
        <source>After: to</source>
        <translation>बाद: कब तक</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>दूरी</translation>
    </message>
    <message>
        <source>Items picked by lot</source>
        <translation>लॉटरी से चुनी गई चीज़ें</translation>
    </message>
    <message>
        <source>Visits and what they decided</source>
        <translation>दौरे और उनका नतीजा</translation>
    </message>
    <message>
        <source>Transfers that would help</source>
        <translation>जिन्हें भेजने से मदद मिलेगी</translation>
    </message>
    <message>
        <source>Stock lacking and to spare</source>
        <translation>सामान की कमी और अधिकता</translation>
    </message>
    <message>
        <source>Decided</source>
        <translation>नतीजा</translation>
    </message>
    <message>
        <source>From unit</source>
        <translation>इस यूनिट से</translation>
    </message>
    <message>
        <source>Lacks</source>
        <translation>कमी</translation>
    </message>
    <message>
        <source>Looked at</source>
        <translation>देखे गए</translation>
    </message>
    <message>
        <source>Met</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>Stock items</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>Keeps for itself</source>
        <translation>अपने लिए रखती है</translation>
    </message>
    <message>
        <source>Needed to reach it</source>
        <translation>पहुँचने के लिए चाहिए</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>Sample</source>
        <translation>नमूना</translation>
    </message>
    <message>
        <source>To spare</source>
        <translation>देने लायक</translation>
    </message>
    <message>
        <source>Stock item</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>To unit</source>
        <translation>इस यूनिट को</translation>
    </message>
    <message>
        <source>Still lacking</source>
        <translation>फिर भी कमी</translation>
    </message>
    <message>
        <source>In date</source>
        <translation>तारीख के भीतर</translation>
    </message>
    <message>
        <source>Visited</source>
        <translation>दौरा</translation>
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
    <name>TrustSheet</name>
    <message>
        <source>Rounds done, of those due</source>
        <translation>तय राउंड में से हुए</translation>
    </message>
    <message>
        <source>Rounds in time</source>
        <translation>समय पर हुए राउंड</translation>
    </message>
    <message>
        <source>Items looked at</source>
        <translation>देखी गई चीज़ें</translation>
    </message>
    <message>
        <source>Rounds at a pace one can walk</source>
        <translation>राउंड जो चलने लायक़ रफ़्तार से हुए</translation>
    </message>
    <message>
        <source>Rounds unlike any earlier one</source>
        <translation>राउंड जो पहले के किसी राउंड जैसे नहीं</translation>
    </message>
    <message>
        <source>Answers that agree with spot checks</source>
        <translation>स्वतंत्र जाँच से मेल खाते जवाब</translation>
    </message>
    <message>
        <source>%1: readings not on .0 or .5</source>
        <translation>%1: रीडिंग जो .0 या .5 पर नहीं</translation>
    </message>
    <message numerus="yes">
        <source>Can the entries be trusted? %n question(s) to ask</source>
        <translation>
            <numerusform>क्या एंट्री पर भरोसा कर सकते हैं? पूछने को %n सवाल</numerusform>
            <numerusform>क्या एंट्री पर भरोसा कर सकते हैं? पूछने को %n सवाल</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing in how the entries were made calls for a question</source>
        <translation>एंट्री जैसे की गईं, उसमें पूछने लायक़ कोई बात नहीं</translation>
    </message>
    <message>
        <source>Each is a question to ask, not an accusation; nobody is named or ranked.</source>
        <translation>हर बात पूछने के लिए है, आरोप नहीं; न किसी का नाम लिया जाता है, न किसी को क्रम में रखा जाता है।</translation>
    </message>
    <message numerus="yes">
        <source>Agreement with %n spot check(s): AC1 %1</source>
        <translation>
            <numerusform>%n स्वतंत्र जाँच से मेल: AC1 %1</numerusform>
            <numerusform>%n स्वतंत्र जाँचों से मेल: AC1 %1</numerusform>
        </translation>
    </message>
    <message>
        <source>, kappa %1.</source>
        <translation>, kappa %1।</translation>
    </message>
    <message>
        <source>Median pace %1 s an item.</source>
        <translation>हर चीज़ पर मीडियन समय %1 सेकंड।</translation>
    </message>
</context>
<context>
    <name>UnitSheet</name>
    <message>
        <source>Each unit over the year</source>
        <translation>साल भर में हर यूनिट</translation>
    </message>
    <message>
        <source>Shifts without a critical gap, month by month, all on one scale; a break: no rounds. The line is the district&apos;s share now.</source>
        <translation>बिना गंभीर कमी वाली शिफ्टें, महीने-दर-महीने, सब एक ही पैमाने पर; बीच में ख़ाली जगह: राउंड नहीं हुए। सीधी रेखा ज़िले का अभी का हिस्सा दिखाती है।</translation>
    </message>
    <message>
        <source>shifts without a critical gap</source>
        <translation>शिफ्टें बिना गंभीर कमी के</translation>
    </message>
    <message>
        <source>What is missing where</source>
        <translation>कहाँ क्या कमी है</translation>
    </message>
    <message numerus="yes">
        <source>Rounds with a gap, of those that looked, in per cent; a crossed cell: does not apply or nobody looked. The %n item(s) missing most by weight; all of them are in the table.</source>
        <translation>
            <numerusform>जितने राउंड में चीज़ देखी गई, उनमें से कमी वाले राउंड, प्रतिशत में; क्रॉस वाला ख़ाना: लागू नहीं या देखी नहीं गई। यहाँ वज़न के हिसाब से सबसे ज़्यादा कमी वाली %n चीज़ है; सभी चीज़ें तालिका में हैं।</numerusform>
            <numerusform>जितने राउंड में चीज़ देखी गई, उनमें से कमी वाले राउंड, प्रतिशत में; क्रॉस वाला ख़ाना: लागू नहीं या देखी नहीं गई। यहाँ वज़न के हिसाब से सबसे ज़्यादा कमी वाली %n चीज़ें हैं; सभी चीज़ें तालिका में हैं।</numerusform>
        </translation>
    </message>
    <message>
        <source>share of rounds with a gap</source>
        <translation>कमी वाले राउंड का हिस्सा</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>चीज़</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>यूनिट</translation>
    </message>
    <message>
        <source>%1, %2: missing in %3 rounds</source>
        <translation>%1, %2, कमी वाले राउंड: %3</translation>
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
    <message>
        <source>**%1**.</source>
        <extracomment>the worst of what is missing, as a sentence of its own; the stars set it in bold</extracomment>
        <translation>**%1**।</translation>
    </message>
</context>
<context>
    <name>VisitDocument</name>
    <message>
        <source>Sheet for a visit</source>
        <translation>दौरे का पर्चा</translation>
    </message>
    <message>
        <source>Visit to %1</source>
        <translation>%1 का दौरा</translation>
    </message>
    <message>
        <source>Nothing found calls for this visit before others.</source>
        <translation>ऐसा कुछ नहीं मिला कि यह दौरा दूसरों से पहले हो।</translation>
    </message>
    <message>
        <source>Critical gaps open</source>
        <translation>बाक़ी गंभीर कमियाँ</translation>
    </message>
    <message>
        <source>No critical gap was open at the end of the span.</source>
        <translation>अवधि के अंत में कोई गंभीर कमी बाक़ी नहीं थी।</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>चीज़</translation>
    </message>
    <message>
        <source>Open for</source>
        <translation>कब से बाक़ी</translation>
    </message>
    <message>
        <source>Mended, seen by me</source>
        <translation>ठीक हुई, मैंने देखी</translation>
    </message>
    <message>
        <source>Stock to take along or fetch</source>
        <translation>साथ ले जाने या लाने का सामान</translation>
    </message>
    <message>
        <source>Items to look at, picked by lot</source>
        <translation>देखने की चीज़ें, लॉटरी से चुनी गईं</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>क्र.</translation>
    </message>
    <message>
        <source>Met</source>
        <translation>ठीक</translation>
    </message>
    <message>
        <source>Not met</source>
        <translation>ठीक नहीं</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>टिप्पणी</translation>
    </message>
    <message>
        <source>There is no checklist to pick a sample from.</source>
        <translation>नमूना चुनने के लिए कोई जाँच-सूची नहीं है।</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>क्या मिला</translation>
    </message>
    <message>
        <source>Day: ____________   By: ____________   Looked at: ______   Met: ______   Not met: ______</source>
        <translation>दिन: ____________   किसने: ____________   देखे गए: ______   ठीक: ______   ठीक नहीं: ______</translation>
    </message>
    <message>
        <source>**With %1 or more of %2 met the room reaches the standard.** With %3 or more not met it does not: the rest need not be looked at to know.</source>
        <translation>**%2 में से %1 या अधिक ठीक हों तो कमरा मानक तक पहुँचता है।** %3 या अधिक ठीक न हों तो नहीं: यह जानने के लिए बाकी देखना ज़रूरी नहीं।</translation>
    </message>
    <message>
        <source>Visits before: %1</source>
        <translation>पहले के दौरे: %1</translation>
    </message>
    <message>
        <source>Enter the result on Units when you are back.</source>
        <translation>लौटकर नतीजा “यूनिट” में भरें।</translation>
    </message>
    <message>
        <source>Pieces, from and to</source>
        <translation>कितने, कहाँ से कहाँ तक</translation>
    </message>
    <message>
        <source>Way</source>
        <translation>दूरी</translation>
    </message>
    <message>
        <source>Taken along</source>
        <translation>साथ ले लिया</translation>
    </message>
</context>
<context>
    <name>VisitSheet</name>
    <message>
        <source>No unit calls for a visit before the others</source>
        <translation>किसी यूनिट में दूसरों से पहले दौरे की ज़रूरत नहीं</translation>
    </message>
    <message numerus="yes">
        <source>Whom to see first: %n unit(s) call for a visit</source>
        <translation>
            <numerusform>पहले कहाँ जाएँ: %n यूनिट में दौरे की ज़रूरत</numerusform>
            <numerusform>पहले कहाँ जाएँ: %n यूनिटों में दौरे की ज़रूरत</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing found calls for a visit before the others.</source>
        <translation>ऐसा कुछ नहीं मिला जिसके लिए किसी यूनिट का दौरा दूसरों से पहले करना पड़े।</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <extracomment>%1 a unit, %2 the reasons for a visit</extracomment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 points · %2</source>
        <extracomment>%1 points of a visit&apos;s need, %2 whom it is for</extracomment>
        <translation>%1 अंक · %2</translation>
    </message>
    <message>
        <source>Every unit reports</source>
        <translation>हर यूनिट से रिपोर्ट आ रही है</translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) fell silent</source>
        <translation>
            <numerusform>%n यूनिट से रिपोर्ट आनी बंद हुई</numerusform>
            <numerusform>%n यूनिटों से रिपोर्ट आनी बंद हुई</numerusform>
        </translation>
    </message>
    <message>
        <source>Rounds done of those due, with 95% limits (Wilson). Late, from paper, amended, days of silence and questions about the entries: in the table.</source>
        <translation>तय राउंड में से हुए, 95% सीमाओं के साथ (Wilson)। देर से हुए, काग़ज़ से दर्ज, सुधारे गए, बिना रिपोर्ट के दिन और एंट्री को लेकर सवाल: तालिका में।</translation>
    </message>
    <message>
        <source>Rounds done of those due</source>
        <translation>तय राउंड में से हुए</translation>
    </message>
    <message>
        <source>No unit changed more than chance explains</source>
        <translation>किसी यूनिट में संयोग से ज़्यादा बदलाव नहीं</translation>
    </message>
    <message numerus="yes">
        <source>%n unit(s) changed more than chance explains</source>
        <translation>
            <numerusform>%n यूनिट में संयोग से ज़्यादा बदलाव</numerusform>
            <numerusform>%n यूनिटों में संयोग से ज़्यादा बदलाव</numerusform>
        </translation>
    </message>
    <message>
        <source>Shifts without a critical gap in the span before and now. Told as a change: pooled test, widened for rounds that are alike, p adjusted for the number of units (Benjamini-Hochberg); differences with Newcombe&apos;s limits in the table.</source>
        <translation>बिना गंभीर कमी वाली शिफ्टें, पिछली अवधि में और अब। बदलाव इससे तय होता है: pooled टेस्ट, एक जैसे राउंडों के हिसाब से चौड़ा किया गया, p यूनिटों की गिनती के लिए समायोजित (Benjamini-Hochberg); फ़र्क़ Newcombe की सीमाओं के साथ तालिका में हैं।</translation>
    </message>
    <message>
        <source>before</source>
        <translation>पहले</translation>
    </message>
    <message>
        <source>now</source>
        <translation>अब</translation>
    </message>
    <message>
        <source>Points (our own weights): critical gap %1, each week of the oldest %2, critical item often missing %3, below the district %4, fell %5, each silent week %6, question about the entries %7, stock item running out %8. An order of visits, no ranking.</source>
        <translation>अंक (वज़न हमारे अपने हैं): गंभीर कमी %1, सबसे पुरानी कमी का हर हफ़्ता %2, अति ज़रूरी चीज़ में अक्सर कमी %3, ज़िले से नीचे %4, गिरावट %5, बिना रिपोर्ट का हर हफ़्ता %6, एंट्री को लेकर सवाल %7, खत्म होता सामान %8। यह दौरों का क्रम है, रैंकिंग नहीं।</translation>
    </message>
    <message>
        <source>Last visit %1</source>
        <extracomment>after the reasons for a visit; %1 &quot;3 Nov: 13 of 18 met, does not reach the standard&quot;</extracomment>
        <translation>पिछला दौरा %1</translation>
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
    <name>cradlepost::BirthForm</name>
    <message>
        <source>Put a birth on the board: when, how many, and nothing that says who</source>
        <translation>प्रसव बोर्ड पर लिखें: कब, कितने शिशु, और ऐसा कुछ नहीं जिससे पता चले कौन</translation>
    </message>
    <message>
        <source>Preterm</source>
        <translation>समय से पहले</translation>
    </message>
    <message>
        <source>Expected about, time of day</source>
        <translation>लगभग कब, समय</translation>
    </message>
    <message>
        <source>Babies</source>
        <translation>शिशु</translation>
    </message>
    <message>
        <source>Put up</source>
        <translation>लिखें</translation>
    </message>
    <message>
        <source>About</source>
        <translation>लगभग</translation>
    </message>
</context>
<context>
    <name>cradlepost::BoardPage</name>
    <message>
        <source>Back to this shift · Esc</source>
        <translation>इस शिफ्ट पर लौटें · Esc</translation>
    </message>
    <message>
        <source>Births expected</source>
        <translation>अपेक्षित प्रसव</translation>
    </message>
    <message>
        <source>Birth expected</source>
        <translation>अपेक्षित प्रसव</translation>
    </message>
    <message>
        <source>Warm place</source>
        <translation>गरम जगह</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>किट</translation>
    </message>
    <message>
        <source>In</source>
        <translation>कितनी देर में</translation>
    </message>
    <message>
        <source>No birth is expected.</source>
        <translation>कोई प्रसव अपेक्षित नहीं।</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>जन्म हुआ</translation>
    </message>
    <message>
        <source>Moved elsewhere</source>
        <translation>कहीं और भेजा</translation>
    </message>
    <message>
        <source>Called off</source>
        <translation>रद्द</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <extracomment>%1 what the button does, %2 the key that does it</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Warmers</source>
        <translation>वार्मर</translation>
    </message>
    <message>
        <source>Warmer</source>
        <translation>वार्मर</translation>
    </message>
    <message>
        <source>On for how long</source>
        <translation>कितनी देर से चालू</translation>
    </message>
    <message>
        <source>For the birth</source>
        <translation>किस प्रसव के लिए</translation>
    </message>
    <message>
        <source>Warm</source>
        <translation>गरम</translation>
    </message>
    <message>
        <source>No warmer is on the register of devices yet.</source>
        <translation>उपकरण सूची में अभी कोई वार्मर नहीं है।</translation>
    </message>
    <message>
        <source>Switched at, time of day; empty means now</source>
        <translation>कब चालू या बंद किया; खाली माने अभी</translation>
    </message>
    <message>
        <source>now</source>
        <translation>अभी</translation>
    </message>
    <message>
        <source>At</source>
        <translation>समय</translation>
    </message>
    <message>
        <source>About %1</source>
        <translation>लगभग %1</translation>
    </message>
    <message>
        <source>overdue</source>
        <translation>देर</translation>
    </message>
    <message>
        <source>spare</source>
        <translation>अतिरिक्त</translation>
    </message>
    <message>
        <source>none</source>
        <translation>कोई नहीं</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>%1 was switched off</source>
        <translation>%1 बंद किया गया</translation>
    </message>
    <message>
        <source>%1 was switched on</source>
        <translation>%1 चालू किया गया</translation>
    </message>
    <message>
        <source>First choose who is in charge, at the top.</source>
        <translation>पहले ऊपर प्रभारी चुनें।</translation>
    </message>
    <message>
        <source>Type the time of day: 16:30 or 1630.</source>
        <translation>समय लिखें: 16:30 या 1630।</translation>
    </message>
    <message>
        <source>“%1” is no time of day. Type it as 16:30 or 1630.</source>
        <translation>“%1” समय नहीं है। ऐसे लिखें: 16:30 या 1630।</translation>
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
    <name>cradlepost::DeviceForm</name>
    <message>
        <source>Goes out: does not work</source>
        <translation>बाहर: काम नहीं करता</translation>
    </message>
    <message>
        <source>Goes out: failed its test</source>
        <translation>बाहर: जाँच में फ़ेल</translation>
    </message>
    <message>
        <source>Goes out: to be serviced</source>
        <translation>बाहर: सर्विस के लिए</translation>
    </message>
    <message>
        <source>In use again</source>
        <translation>फिर काम में</translation>
    </message>
    <message>
        <source>Is the spare now</source>
        <translation>अब अतिरिक्त</translation>
    </message>
    <message>
        <source>Was serviced here</source>
        <translation>यहीं सर्विस हुई</translation>
    </message>
    <message>
        <source>Was calibrated</source>
        <translation>कैलिब्रेट हुआ</translation>
    </message>
    <message>
        <source>Check of its reading</source>
        <translation>रीडिंग की जाँच</translation>
    </message>
    <message>
        <source>Is no longer here</source>
        <translation>अब यहाँ नहीं</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>दर्ज करें</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>क्या हुआ</translation>
    </message>
    <message>
        <source>Known weight, g</source>
        <translation>ज्ञात वज़न, g</translation>
    </message>
    <message>
        <source>It shows</source>
        <translation>दिखाता है</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके नाम के अक्षर</translation>
    </message>
    <message>
        <source>The reference shows, °C</source>
        <translation>मानक दिखाता है, °C</translation>
    </message>
    <message>
        <source>The scale shows, g</source>
        <translation>तराज़ू दिखाता है, g</translation>
    </message>
    <message>
        <source>The thermometer shows, °C</source>
        <translation>थर्मामीटर दिखाता है, °C</translation>
    </message>
    <message>
        <source>Say who you are: your initials.</source>
        <translation>बताएँ आप कौन हैं: नाम के अक्षर।</translation>
    </message>
    <message>
        <source>Kept; the spare changed places with it.</source>
        <translation>दर्ज हुआ; अतिरिक्त उपकरण ने इससे जगह बदली।</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>दर्ज हुआ।</translation>
    </message>
    <message>
        <source>Give both weights in whole grams, for example 3500.</source>
        <translation>दोनों वज़न पूरे ग्राम में दें, जैसे 3500।</translation>
    </message>
    <message>
        <source>Give both readings as numbers, for example 36.8.</source>
        <translation>दोनों रीडिंग अंक में दें, जैसे 36.8।</translation>
    </message>
</context>
<context>
    <name>cradlepost::DevicesPane</name>
    <message>
        <source>Devices, first due first</source>
        <translation>उपकरण, जिसका समय पहले वह पहले</translation>
    </message>
    <message>
        <source>Device</source>
        <translation>उपकरण</translation>
    </message>
    <message>
        <source>Upkeep</source>
        <translation>देखभाल</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>प्रकार</translation>
    </message>
    <message>
        <source>State</source>
        <translation>हाल</translation>
    </message>
    <message>
        <source>No device is on the register of this unit.</source>
        <translation>इस यूनिट के रजिस्टर में कोई उपकरण नहीं।</translation>
    </message>
</context>
<context>
    <name>cradlepost::DistancePanel</name>
    <message>
        <source>Ways between units, by which stock moves</source>
        <translation>यूनिटों के बीच के रास्ते, जिनसे सामान जाता है</translation>
    </message>
    <message>
        <source>Read a table…</source>
        <translation>तालिका पढ़ें…</translation>
    </message>
    <message>
        <source>Keep the way</source>
        <translation>रास्ता रखें</translation>
    </message>
    <message>
        <source>From</source>
        <translation>कहाँ से</translation>
    </message>
    <message>
        <source>To</source>
        <translation>कहाँ तक</translation>
    </message>
    <message>
        <source>Kilometres (0: no way)</source>
        <translation>किलोमीटर (0: रास्ता नहीं)</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>इनिशियल</translation>
    </message>
    <message>
        <source>No way is known yet: any way counts the same. A table has the columns from, to and km.</source>
        <translation>अभी कोई रास्ता मालूम नहीं: हर रास्ता बराबर गिना जाता है। तालिका में from, to और km स्तंभ होते हैं।</translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) known. Stock moves only where a way is known.</source>
        <translation>
            <numerusform>%n रास्ता मालूम है। सामान वहीं जाता है जहाँ रास्ता मालूम है।</numerusform>
            <numerusform>%n रास्ते मालूम हैं। सामान वहीं जाता है जहाँ रास्ता मालूम है।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n way(s) kept.</source>
        <translation>
            <numerusform>%n रास्ता रखा गया।</numerusform>
            <numerusform>%n रास्ते रखे गए।</numerusform>
        </translation>
    </message>
    <message>
        <source>Distances</source>
        <translation>दूरियाँ</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>तालिकाएँ (*.csv)</translation>
    </message>
</context>
<context>
    <name>cradlepost::EscalationSheet</name>
    <message>
        <source>Who hears of a gap that lasts</source>
        <translation>बाक़ी रही कमी किसे बताई जाए</translation>
    </message>
    <message>
        <source>never</source>
        <translation>कभी नहीं</translation>
    </message>
    <message>
        <source> %</source>
        <comment>behind a number</comment>
        <translation> %</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके नाम के अक्षर</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>दर्ज करें</translation>
    </message>
    <message>
        <source>Say who you are: your initials.</source>
        <translation>बताएँ आप कौन हैं: नाम के अक्षर।</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>दर्ज हुआ।</translation>
    </message>
    <message>
        <source>In percent of the time that there is to mend it. Of a gap found at 8:00 and due at 20:00 they hear at 50 % by 14:00, at 100 % when it is due.</source>
        <translation>ठीक करने के समय का प्रतिशत। 8:00 पर मिली और 20:00 तक की कमी: 50 % पर 14:00 बजे बताया जाए, 100 % पर जब समय पूरा हो।</translation>
    </message>
</context>
<context>
    <name>cradlepost::FindingsList</name>
    <message>
        <source>What was found</source>
        <translation>क्या मिला</translation>
    </message>
    <message>
        <source>To ask: %1</source>
        <translation>पूछने की बात: %1</translation>
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
    <name>cradlepost::FridgePane</name>
    <message>
        <source>No fridge is on the register of this unit.</source>
        <translation>इस यूनिट के रजिस्टर में कोई फ़्रिज नहीं।</translation>
    </message>
    <message>
        <source>Write down a reading</source>
        <translation>रीडिंग लिखें</translation>
    </message>
    <message>
        <source>Reading now, °C</source>
        <translation>अभी की रीडिंग, °C</translation>
    </message>
    <message>
        <source>Lowest since the last reset, °C</source>
        <translation>पिछले रीसेट से सबसे कम, °C</translation>
    </message>
    <message>
        <source>Highest since the last reset, °C</source>
        <translation>पिछले रीसेट से सबसे अधिक, °C</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके नाम के अक्षर</translation>
    </message>
    <message>
        <source>Keep the reading</source>
        <translation>रीडिंग दर्ज करें</translation>
    </message>
    <message>
        <source>Say who you are: your initials.</source>
        <translation>बताएँ आप कौन हैं: नाम के अक्षर।</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>दर्ज हुआ।</translation>
    </message>
    <message>
        <source>Which fridge</source>
        <translation>कौन सा फ़्रिज</translation>
    </message>
    <message>
        <source>Give each reading as a number, for example 4.5.</source>
        <translation>हर रीडिंग अंक में दें, जैसे 4.5।</translation>
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
    <message>
        <source>For example: the spare from theatre</source>
        <translation>जैसे: ओटी का अतिरिक्त</translation>
    </message>
    <message>
        <source>What helps until then</source>
        <translation>तब तक क्या मदद करेगा</translation>
    </message>
    <message>
        <source>me</source>
        <translation>मैंने</translation>
    </message>
    <message>
        <source>Re-check this item · R</source>
        <translation>इसी की दोबारा जाँच · R</translation>
    </message>
    <message>
        <source>Not mended after all · M</source>
        <translation>ठीक नहीं हुआ · M</translation>
    </message>
    <message>
        <source>Mended by %1 · M</source>
        <translation>%1 ने ठीक किया · M</translation>
    </message>
    <message>
        <source>Looked at by %1 · V</source>
        <translation>%1 ने देखा · V</translation>
    </message>
    <message>
        <source>First choose who is in charge, at the top.</source>
        <translation>पहले ऊपर प्रभारी चुनें।</translation>
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
    <name>cradlepost::HandoverPage</name>
    <message>
        <source>Save as PDF</source>
        <translation>PDF में सहेजें</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>छापें</translation>
    </message>
    <message>
        <source>Back to this shift · Esc</source>
        <translation>इस शिफ्ट पर लौटें · Esc</translation>
    </message>
    <message>
        <source>Handover: %1</source>
        <translation>शिफ्ट सौंपना: %1</translation>
    </message>
    <message>
        <source>It waits for who comes: choose your initials and take it.</source>
        <translation>आने वाले की प्रतीक्षा है: अपने आद्याक्षर चुनें और लें।</translation>
    </message>
    <message>
        <source>Nobody has signed in this shift.</source>
        <translation>इस शिफ्ट में किसी ने हस्ताक्षर नहीं किए।</translation>
    </message>
    <message>
        <source>. </source>
        <translation>। </translation>
    </message>
    <message>
        <source>Take over</source>
        <translation>शिफ्ट लें</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>शिफ्ट सौंपें</translation>
    </message>
    <message>
        <source>Take over as %1</source>
        <translation>%1 के नाम से लें</translation>
    </message>
    <message>
        <source>Hand over as %1</source>
        <translation>%1 के नाम से सौंपें</translation>
    </message>
    <message>
        <source>Taken.</source>
        <translation>ले ली।</translation>
    </message>
    <message>
        <source>Given.</source>
        <translation>सौंप दी।</translation>
    </message>
    <message>
        <source>First say who signs: choose or type initials.</source>
        <translation>पहले बताएँ कौन हस्ताक्षर करता है: आद्याक्षर चुनें या लिखें।</translation>
    </message>
    <message>
        <source>Handover</source>
        <translation>शिफ्ट सौंपना</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved.</source>
        <translation>सहेजा।</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>प्रिंटर को भेजा।</translation>
    </message>
    <message>
        <source>The printer takes no pages. Look at it, then try again.</source>
        <translation>प्रिंटर पन्ने नहीं ले रहा। उसे देखें, फिर कोशिश करें।</translation>
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
    <name>cradlepost::IdeaPanel</name>
    <message>
        <source>What is tried, and since when</source>
        <translation>क्या आज़माया जा रहा है, और कब से</translation>
    </message>
    <message>
        <source>Keep the idea</source>
        <translation>सुझाव सेव करें</translation>
    </message>
    <message>
        <source>It ends today</source>
        <translation>आज ख़त्म करें</translation>
    </message>
    <message>
        <source>For example: count the kits at handover</source>
        <translation>जैसे: हैंडओवर पर किट गिनें</translation>
    </message>
    <message>
        <source>Nothing about a patient</source>
        <translation>मरीज़ के बारे में कुछ नहीं</translation>
    </message>
    <message>
        <source>Idea</source>
        <translation>सुझाव</translation>
    </message>
    <message>
        <source>What is tried</source>
        <translation>क्या आज़माया जा रहा है</translation>
    </message>
    <message>
        <source>From</source>
        <translation>कब से</translation>
    </message>
    <message>
        <source>For</source>
        <translation>किसके लिए</translation>
    </message>
    <message>
        <source>What we expect</source>
        <translation>क्या उम्मीद है</translation>
    </message>
    <message>
        <source>A new one</source>
        <translation>नया सुझाव</translation>
    </message>
    <message>
        <source>All items</source>
        <translation>सभी चीज़ें</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n चीज़</numerusform>
            <numerusform>%n चीज़ें</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>सेव हुआ।</translation>
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
    <name>cradlepost::MonthPage</name>
    <message>
        <source>all shifts</source>
        <translation>सभी शिफ्टें</translation>
    </message>
    <message>
        <source>all items</source>
        <translation>सभी चीज़ें</translation>
    </message>
    <message numerus="yes">
        <source>%n item(s)</source>
        <translation>
            <numerusform>%n चीज़</numerusform>
            <numerusform>%n चीज़ें</numerusform>
        </translation>
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
    <name>cradlepost::NewDeviceForm</name>
    <message>
        <source>A new device</source>
        <translation>नया उपकरण</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>प्रकार</translation>
    </message>
    <message>
        <source>What the ward calls it</source>
        <translation>वार्ड इसे क्या कहता है</translation>
    </message>
    <message>
        <source>Number on it, if any</source>
        <translation>इस पर नंबर, अगर हो</translation>
    </message>
    <message>
        <source>Days between services, if planned</source>
        <translation>दो सर्विस के बीच दिन, अगर तय हों</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके नाम के अक्षर</translation>
    </message>
    <message>
        <source>Put on the register</source>
        <translation>रजिस्टर में लिखें</translation>
    </message>
    <message>
        <source>Give the days as a whole number.</source>
        <translation>दिन पूरे अंक में दें।</translation>
    </message>
    <message>
        <source>Say who you are: your initials.</source>
        <translation>बताएँ आप कौन हैं: नाम के अक्षर।</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>दर्ज हुआ।</translation>
    </message>
    <message>
        <source>What of the round looks at it</source>
        <translation>राउंड में इसे कौन सी जाँच देखती है</translation>
    </message>
    <message>
        <source>Days between calibrations, if planned</source>
        <translation>दो कैलिब्रेशन के बीच दिन, अगर तय हों</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>कोई नहीं</translation>
    </message>
</context>
<context>
    <name>cradlepost::NoticeBar</name>
    <message>
        <source>Seen · Alt+0</source>
        <translation>देखा · Alt+0</translation>
    </message>
    <message>
        <source>Notice</source>
        <translation>सूचना</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n more</source>
        <extracomment>a notice, and how many more are due</extracomment>
        <translation>
            <numerusform>%1 · और %n</numerusform>
            <numerusform>%1 · और %n</numerusform>
        </translation>
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
    <name>cradlepost::PaperPanel</name>
    <message>
        <source>Rounds that were walked on paper</source>
        <translation>काग़ज़ पर किए गए राउंड</translation>
    </message>
    <message>
        <source>Write an empty sheet…</source>
        <translation>खाली शीट बनाएँ…</translation>
    </message>
    <message>
        <source>Read a filled sheet…</source>
        <translation>भरी हुई शीट खोलें…</translation>
    </message>
    <message>
        <source>Faults of the sheet</source>
        <translation>शीट में कहाँ सुधार चाहिए</translation>
    </message>
    <message>
        <source>A sheet is taken in whole or not at all. Its rounds are marked as entered from paper: nothing is said of their time and pace.</source>
        <translation>शीट या तो पूरी ली जाती है या बिल्कुल नहीं। उसके राउंड पर काग़ज़ से दर्ज होने का निशान रहता है: उनके समय और रफ़्तार के बारे में कुछ नहीं कहा जाता।</translation>
    </message>
    <message>
        <source>%1 cannot be read: %2</source>
        <translation>%1 पढ़ी नहीं जा सकी: %2</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>कहाँ</translation>
    </message>
    <message>
        <source>What is wrong, and how to write it</source>
        <translation>क्या ठीक नहीं है, और कैसे लिखें</translation>
    </message>
    <message numerus="yes">
        <source>Enter %n round(s)</source>
        <translation>
            <numerusform>%n राउंड दर्ज करें</numerusform>
            <numerusform>%n राउंड दर्ज करें</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) can be entered.</source>
        <translation>
            <numerusform>%n राउंड दर्ज हो सकता है।</numerusform>
            <numerusform>%n राउंड दर्ज हो सकते हैं।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n fault(s): nothing was entered. Mend the sheet and read it again.</source>
        <translation>
            <numerusform>%n जगह सुधार चाहिए: कुछ दर्ज नहीं हुआ। शीट ठीक करके दोबारा खोलें।</numerusform>
            <numerusform>%n जगहों पर सुधार चाहिए: कुछ दर्ज नहीं हुआ। शीट ठीक करके दोबारा खोलें।</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n round(s) entered from paper.</source>
        <translation>
            <numerusform>%n राउंड काग़ज़ से दर्ज हुआ।</numerusform>
            <numerusform>%n राउंड काग़ज़ से दर्ज हुए।</numerusform>
        </translation>
    </message>
    <message>
        <source>A filled sheet</source>
        <translation>भरी हुई शीट</translation>
    </message>
    <message>
        <source>Sheets (*.csv)</source>
        <translation>शीट (*.csv)</translation>
    </message>
    <message>
        <source>An empty sheet</source>
        <translation>खाली शीट</translation>
    </message>
    <message>
        <source>Written: %1, and beside it what its columns mean.</source>
        <translation>%1 सहेजी गई, साथ में उसके कॉलमों का मतलब भी।</translation>
    </message>
</context>
<context>
    <name>cradlepost::PutRightPane</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>What is put right</source>
        <translation>क्या सुधारा गया</translation>
    </message>
    <message>
        <source>Recorded</source>
        <translation>दर्ज था</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>अब</translation>
    </message>
    <message>
        <source>No answer is different from what was recorded.</source>
        <translation>कोई उत्तर दर्ज किए हुए से अलग नहीं है।</translation>
    </message>
    <message>
        <source>Nothing about a patient</source>
        <translation>मरीज़ के बारे में कुछ नहीं</translation>
    </message>
    <message>
        <source>Why it is put right</source>
        <translation>क्यों सुधारा जा रहा है</translation>
    </message>
    <message>
        <source>The first record stays as it is. The correction stands beside it with its reason, and from then on it is what counts.</source>
        <translation>पहला रिकॉर्ड वैसा ही रहता है। सुधार अपने कारण के साथ उसके पास दर्ज होता है, और तब से वही गिना जाता है।</translation>
    </message>
    <message>
        <source>Who puts it right</source>
        <translation>कौन सुधार रहा है</translation>
    </message>
    <message>
        <source>Record the correction</source>
        <translation>सुधार दर्ज करें</translation>
    </message>
    <message>
        <source>Back to the items</source>
        <translation>मदों पर वापस</translation>
    </message>
    <message>
        <source>Leave it as it was recorded</source>
        <translation>जैसा दर्ज था वैसा ही रहने दें</translation>
    </message>
    <message>
        <source>%1, %2: put right.</source>
        <extracomment>%1 &quot;Round of the night shift&quot;, %2 &quot;M. R., begun 19:12&quot;</extracomment>
        <translation>%1, %2: सुधार।</translation>
    </message>
    <message numerus="yes">
        <source>It was put right %n time(s) before.</source>
        <translation>
            <numerusform>इसे पहले %n बार सुधारा गया था।</numerusform>
            <numerusform>इसे पहले %n बार सुधारा गया था।</numerusform>
        </translation>
    </message>
    <message>
        <source>Say in a few words why it is put right.</source>
        <translation>थोड़े शब्दों में बताएँ कि क्यों सुधारा जा रहा है।</translation>
    </message>
    <message>
        <source>Say who puts it right: choose or type initials.</source>
        <translation>बताएँ कौन सुधार रहा है: आद्याक्षर चुनें या लिखें।</translation>
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
    <name>cradlepost::RecordedPanel</name>
    <message>
        <source>A round that was entered wrong</source>
        <translation>राउंड जो ग़लत दर्ज हुआ</translation>
    </message>
    <message>
        <source>Put it right…</source>
        <translation>सुधारें…</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>दिन</translation>
    </message>
    <message>
        <source>Shift</source>
        <translation>शिफ्ट</translation>
    </message>
    <message>
        <source>What was recorded stays; the correction stands beside it with its reason.</source>
        <translation>जो दर्ज हुआ वह रहता है; सुधार अपने कारण के साथ उसके पास रहता है।</translation>
    </message>
    <message>
        <source>No round was recorded in this shift.</source>
        <translation>इस शिफ्ट में कोई राउंड दर्ज नहीं हुआ।</translation>
    </message>
    <message>
        <source>Walked by %1, finished %2: %3.</source>
        <extracomment>%1 initials, %2 a time, %3 &quot;Ready&quot;, &quot;Not ready&quot;</extracomment>
        <translation>%1 ने किया, %2 पर पूरा: %3।</translation>
    </message>
    <message>
        <source>Put right %1 by %2: %3.</source>
        <translation>%1 को %2 ने सुधारा: %3।</translation>
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
    <name>cradlepost::ShelfForm</name>
    <message>
        <source>Has a last day of use</source>
        <translation>उपयोग का आख़िरी दिन होता है</translation>
    </message>
    <message>
        <source>Harmed by frost</source>
        <translation>जमने से ख़राब होता है</translation>
    </message>
    <message>
        <source>No longer kept</source>
        <translation>अब नहीं रखते</translation>
    </message>
    <message>
        <source>What the ward calls it</source>
        <translation>वार्ड इसे क्या कहता है</translation>
    </message>
    <message>
        <source>Fill up to, pieces</source>
        <translation>कितने नग तक भरें</translation>
    </message>
    <message>
        <source>Order when it falls to</source>
        <translation>कितने बचने पर मँगाएँ</translation>
    </message>
    <message>
        <source>Never under</source>
        <translation>इससे कम कभी नहीं</translation>
    </message>
    <message>
        <source>Pieces in a pack of the store</source>
        <translation>स्टोर के एक पैक में नग</translation>
    </message>
    <message>
        <source>Days between deliveries</source>
        <translation>दो बार आने के बीच दिन</translation>
    </message>
    <message>
        <source>as it came so far</source>
        <translation>जैसे अब तक आया</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके नाम के अक्षर</translation>
    </message>
    <message>
        <source>as usual, in 95 of 100</source>
        <translation>जैसा आम है, 100 में 95 बार</translation>
    </message>
    <message>
        <source>in %1 of 100</source>
        <translation>100 में %1 बार</translation>
    </message>
    <message>
        <source>Enough until the delivery</source>
        <translation>अगली बार आने तक पूरा पड़े</translation>
    </message>
    <message>
        <source>Kept in</source>
        <translation>कहाँ रखा है</translation>
    </message>
    <message>
        <source>Keep</source>
        <translation>दर्ज करें</translation>
    </message>
    <message>
        <source>Change this shelf</source>
        <translation>यह शेल्फ़ बदलें</translation>
    </message>
    <message>
        <source>A new shelf</source>
        <translation>नया शेल्फ़</translation>
    </message>
    <message>
        <source>no fridge</source>
        <translation>फ़्रिज में नहीं</translation>
    </message>
    <message>
        <source>There is a shelf of that name already: change that one.</source>
        <translation>इस नाम का शेल्फ़ पहले से है: उसे बदलें।</translation>
    </message>
    <message>
        <source>Say who you are: your initials.</source>
        <translation>बताएँ आप कौन हैं: नाम के अक्षर।</translation>
    </message>
    <message>
        <source>Do not keep</source>
        <translation>दर्ज न करें</translation>
    </message>
</context>
<context>
    <name>cradlepost::ShelvesPane</name>
    <message>
        <source>Keep what the checklist counts</source>
        <translation>चेकलिस्ट जो गिनती है वह रखें</translation>
    </message>
    <message>
        <source>The last round counted otherwise: Enter offers the count</source>
        <translation>पिछले राउंड ने अलग गिना: Enter से गिनती भरें</translation>
    </message>
    <message>
        <source>Shelves, what runs out first</source>
        <translation>शेल्फ़, जो पहले ख़त्म होगा</translation>
    </message>
    <message>
        <source>On the shelf</source>
        <translation>शेल्फ़ पर</translation>
    </message>
    <message>
        <source>To do</source>
        <translation>करना है</translation>
    </message>
    <message>
        <source>Lasts</source>
        <translation>चलेगा</translation>
    </message>
    <message>
        <source>In date</source>
        <translation>तारीख़ के भीतर</translation>
    </message>
    <message>
        <source>No item is kept in the stock book of this unit.</source>
        <translation>इस यूनिट की स्टॉक बही में कोई सामान नहीं।</translation>
    </message>
    <message>
        <source>Where the round and the book disagree</source>
        <translation>जहाँ राउंड और बही अलग हैं</translation>
    </message>
    <message>
        <source>Item</source>
        <translation>सामान</translation>
    </message>
    <message>
        <source>Round and book</source>
        <translation>राउंड और बही</translation>
    </message>
    <message>
        <source>Lot</source>
        <translation>लॉट</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>देखा</translation>
    </message>
    <message>
        <source>Change this shelf</source>
        <translation>यह शेल्फ़ बदलें</translation>
    </message>
    <message>
        <source>A new shelf</source>
        <translation>नया शेल्फ़</translation>
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
    <name>cradlepost::SpanBar</name>
    <message>
        <source>Month before</source>
        <translation>पिछला महीना</translation>
    </message>
    <message>
        <source>Month after</source>
        <translation>अगला महीना</translation>
    </message>
    <message>
        <source>Choose days, shifts, items</source>
        <translation>दिन, शिफ्ट, चीज़ें चुनें</translation>
    </message>
    <message>
        <source>Report…</source>
        <translation>रिपोर्ट…</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <extracomment>a span of days</extracomment>
        <translation>%1 से %2</translation>
    </message>
</context>
<context>
    <name>cradlepost::SpanPanel</name>
    <message>
        <source>Compare with</source>
        <translation>इससे तुलना करें</translation>
    </message>
    <message>
        <source>First and last day</source>
        <translation>पहला और आख़िरी दिन</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>पहला दिन</translation>
    </message>
    <message>
        <source>Last day</source>
        <translation>आख़िरी दिन</translation>
    </message>
    <message>
        <source>Compare with: first day</source>
        <translation>तुलना: पहला दिन</translation>
    </message>
    <message>
        <source>Compare with: last day</source>
        <translation>तुलना: आख़िरी दिन</translation>
    </message>
    <message>
        <source>Show this</source>
        <translation>यह दिखाएँ</translation>
    </message>
    <message>
        <source>Whole month, everything</source>
        <translation>पूरा महीना, सब कुछ</translation>
    </message>
    <message>
        <source>Sections and items</source>
        <translation>भाग और चीज़ें</translation>
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
    <name>cradlepost::StockForm</name>
    <message>
        <source>Keep</source>
        <translation>दर्ज करें</translation>
    </message>
    <message>
        <source>What happened</source>
        <translation>क्या हुआ</translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation>नग</translation>
    </message>
    <message>
        <source>Last day of use</source>
        <translation>उपयोग का आख़िरी दिन</translation>
    </message>
    <message>
        <source>Lot number</source>
        <translation>लॉट नंबर</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>क्यों</translation>
    </message>
    <message>
        <source>Your initials</source>
        <translation>आपके नाम के अक्षर</translation>
    </message>
    <message>
        <source>No shelf chosen</source>
        <translation>कोई शेल्फ़ नहीं चुना</translation>
    </message>
    <message>
        <source>Give the pieces as a whole number.</source>
        <translation>नग पूरे अंक में दें।</translation>
    </message>
    <message>
        <source>Write the date as year-month-day, 2027-03-31.</source>
        <translation>तारीख़ साल-महीना-दिन लिखें, 2027-03-31।</translation>
    </message>
    <message>
        <source>Say who you are: your initials.</source>
        <translation>बताएँ आप कौन हैं: नाम के अक्षर।</translation>
    </message>
    <message>
        <source>Kept.</source>
        <translation>दर्ज हुआ।</translation>
    </message>
</context>
<context>
    <name>cradlepost::StoresPage</name>
    <message>
        <source>Shelves</source>
        <translation>शेल्फ़</translation>
    </message>
    <message>
        <source>Devices</source>
        <translation>उपकरण</translation>
    </message>
    <message>
        <source>Fridge</source>
        <translation>फ़्रिज</translation>
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
    <message>
        <source>%1 · %2</source>
        <extracomment>%1 what the button does, %2 the key that does it</extracomment>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Births and warmers</source>
        <translation>प्रसव और वार्मर</translation>
    </message>
    <message>
        <source>Hand over</source>
        <translation>शिफ्ट सौंपें</translation>
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
    <name>cradlepost::UnitsPage</name>
    <message>
        <source>Month before</source>
        <translation>पिछला महीना</translation>
    </message>
    <message>
        <source>Month after</source>
        <translation>अगला महीना</translation>
    </message>
    <message>
        <source>Three months</source>
        <translation>तीन महीने</translation>
    </message>
    <message>
        <source>Report…</source>
        <translation>रिपोर्ट…</translation>
    </message>
    <message numerus="yes">
        <source>%1 · %n unit(s)</source>
        <extracomment>%1 a month or a span of months</extracomment>
        <translation>
            <numerusform>%1 · %n यूनिट</numerusform>
            <numerusform>%1 · %n यूनिटें</numerusform>
        </translation>
    </message>
    <message>
        <source>Level of facility</source>
        <translation>केंद्र का स्तर</translation>
    </message>
    <message>
        <source>All levels</source>
        <translation>सभी स्तर</translation>
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
    <name>cradlepost::VisitPanel</name>
    <message>
        <source>A visit: the sheet to take along, and what it found</source>
        <translation>दौरा: साथ ले जाने का पर्चा, और क्या मिला</translation>
    </message>
    <message>
        <source>Write the sheet…</source>
        <translation>पर्चा लिखें…</translation>
    </message>
    <message>
        <source>Keep the result</source>
        <translation>नतीजा रखें</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>यूनिट</translation>
    </message>
    <message>
        <source>Day of the visit</source>
        <translation>दौरे का दिन</translation>
    </message>
    <message>
        <source>Items looked at</source>
        <translation>देखी गई चीज़ें</translation>
    </message>
    <message>
        <source>Items not met</source>
        <translation>चीज़ें जो ठीक नहीं</translation>
    </message>
    <message>
        <source>Initials</source>
        <translation>इनिशियल</translation>
    </message>
    <message>
        <source>Of %1 items picked by lot at least %2 must be met.</source>
        <translation>लॉटरी से चुनी %1 चीज़ों में से कम से कम %2 ठीक होनी चाहिए।</translation>
    </message>
    <message>
        <source>No visit in the year before.</source>
        <translation>पिछले साल में कोई दौरा नहीं।</translation>
    </message>
    <message>
        <source>Kept: %1.</source>
        <translation>रखा गया: %1।</translation>
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
    <message>
        <source>It is being put right.</source>
        <translation>इसे सुधारा जा रहा है।</translation>
    </message>
    <message>
        <source>On to the reason</source>
        <translation>कारण पर आगे बढ़ें</translation>
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
    <name>cradlepost::WeightsPanel</name>
    <message>
        <source>What makes a visit needed, in points</source>
        <translation>दौरा किससे ज़रूरी बनता है, अंकों में</translation>
    </message>
    <message>
        <source>They order visits and rank nobody. 0 leaves a reason out. Kept on this computer.</source>
        <translation>ये दौरों का क्रम बनाते हैं, किसी को दर्जा नहीं देते। 0 किसी कारण को छोड़ देता है। इसी कंप्यूटर पर रखा जाता है।</translation>
    </message>
    <message>
        <source>As they come</source>
        <translation>जैसे शुरू में थे</translation>
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
</TS>
