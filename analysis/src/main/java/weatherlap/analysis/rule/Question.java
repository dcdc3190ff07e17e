package weatherlap.analysis.rule;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import weatherlap.sim.Check;

/**
 * A question in plain words, answered yes or no for every case.
 *
 * @param yes cases, by index; not to be changed
 */
public record Question(String words, BitSet yes) {
    public Question {
        Check.text("question", words);
    }

    /** Every question on the facts that parts the cases, without those that part them as an earlier one does. */
    static List<Question> on(List<? extends AskedFact> facts) {
        List<Question> kept = new ArrayList<>();
        Set<BitSet> seen = new HashSet<>();
        for (AskedFact fact : facts) {
            for (Question question : fact.questions()) {
                BitSet no = (BitSet) question.yes.clone();
                no.flip(0, fact.size());
                if (!question.yes.isEmpty() && !no.isEmpty() && !seen.contains(no) && seen.add(question.yes)) {
                    kept.add(question);
                }
            }
        }
        return kept;
    }
}
