package weatherlap.analysis.rule;

import java.util.ArrayList;
import java.util.List;
import weatherlap.sim.method.Method;

/** What to do with a case: a method, or a question first. */
public sealed interface Rule {
    /** The method for a case, by index. */
    Method method(int index);

    /** How many questions it holds. */
    int questions();

    /** The rule as numbered lines, the first question first; one line where nothing is asked. */
    default List<String> lines() {
        List<String> lines = new ArrayList<>();
        if (this instanceof Ask ask) {
            ask.number(1, lines);
        } else {
            lines.add("Always " + end(1) + ".");
        }
        return lines;
    }

    /** What an answer leads to: a method, or the question of this number. */
    private String end(int next) {
        if (this instanceof Always always) {
            return always.use().label();
        }
        return "question " + next;
    }

    /** The same method whatever is seen. */
    record Always(Method use) implements Rule {
        @Override
        public Method method(int index) {
            return use;
        }

        @Override
        public int questions() {
            return 0;
        }
    }

    /** A question, and what follows from each answer. */
    record Ask(Question question, Rule yes, Rule no) implements Rule {
        @Override
        public Method method(int index) {
            return (question.yes().get(index) ? yes : no).method(index);
        }

        @Override
        public int questions() {
            return 1 + yes.questions() + no.questions();
        }

        private void number(int own, List<String> lines) {
            int ifNo = own + 1 + yes.questions();
            lines.add(own + ". " + question.words() + " Yes: " + yes.end(own + 1) + ". No: " + no.end(ifNo) + ".");
            if (yes instanceof Ask ask) {
                ask.number(own + 1, lines);
            }
            if (no instanceof Ask ask) {
                ask.number(ifNo, lines);
            }
        }
    }
}
