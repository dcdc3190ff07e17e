package weatherlap.reports.offer;

import java.util.Locale;
import weatherlap.reports.words.FamilyWords;
import weatherlap.sim.method.Contrast;
import weatherlap.sim.method.Method;

/** What a choice is called. */
public record ChoiceWords(FamilyWords words, Contrast contrast) {
    /** As a heading. */
    public String title(OfferedPlan choice) {
        return FamilyWords.capital(inSentence(choice));
    }

    /** Within a sentence. */
    public String inSentence(OfferedPlan choice) {
        return choice.plan().single().map(method -> of("choice.all.", method)).orElseGet(() -> switch (choice.kind()) {
            case FIRST -> of("choice.mostly.", contrast.first());
            case SECOND -> of("choice.mostly.", contrast.second());
            case MIXED -> words.of("choice.mixed");
            case OWN -> words.of("choice.own");
        });
    }

    private String of(String prefix, Method method) {
        return words.of(prefix + method.name().toLowerCase(Locale.ROOT));
    }
}
