package weatherlap.reports.page;

import java.util.List;
import java.util.function.Function;

/** What a section is made of. {@code block.jte} draws each kind on screen, {@code sheetblock.jte} on paper. */
public sealed interface Block {
    /** The answer in a line or two. */
    record Headline(String text) implements Block {}

    /** The few numbers that matter most, large. */
    record Numbers(List<Number> numbers) implements Block {
        /**
         * One of them.
         *
         * @param what it is about, in a word or two above it
         * @param value with its unit
         * @param words that finish the sentence below it
         */
        public record Number(String what, String value, String words) {}

        public Numbers {
            numbers = List.copyOf(numbers);
        }
    }

    /** Questions, each with its answer. */
    record Questions(List<Question> questions) implements Block {
        public record Question(String asks, String answer) {}

        public Questions {
            questions = List.copyOf(questions);
        }
    }

    /**
     * A picture with a dot for each house, which leads to it on screen.
     *
     * @param phone the same picture, narrow
     * @param spots where the dots lie
     */
    record Dots(Figure figure, String phone, List<Spot> spots) implements Block {
        /**
         * One dot.
         *
         * @param anchor of the house within the page
         * @param words what it is, for those who cannot see it
         * @param leftPct of the width of the picture
         * @param topPct of its height
         */
        public record Spot(String anchor, String words, double leftPct, double topPct) {}

        public Dots {
            spots = List.copyOf(spots);
        }
    }

    /** @param id its name within the page; empty: none */
    record Heading(String id, String text) implements Block {
        public static Heading of(String text) {
            return new Heading("", text);
        }
    }

    record Paragraphs(List<String> texts) implements Block {
        public Paragraphs {
            texts = List.copyOf(texts);
        }
    }

    /** A list with a dot before each. */
    record Points(List<String> texts) implements Block {
        public Points {
            texts = List.copyOf(texts);
        }
    }

    /**
     * A table.
     *
     * @param screen class of it on screen; empty: none
     * @param sheet class of it on paper; empty: none
     */
    record Table(TableView table, String screen, String sheet) implements Block {
        public static Table of(TableView table) {
            return new Table(table, "", "");
        }
    }

    record Picture(Figure figure) implements Block {}

    /** An index of houses on screen, to be searched, filtered and sorted; a row a house on paper. */
    record Houses(List<HouseEntry> entries, TableView summary) implements Block {
        /**
         * A choice of houses.
         *
         * @param key within the page
         * @param title over it
         * @param values to choose from
         */
        public record Filter(String key, String title, List<String> values) {}

        public Houses {
            entries = List.copyOf(entries);
        }

        public List<Filter> filters() {
            return List.of(
                    filter("cladding", "Cladding", HouseEntry.Keys::cladding),
                    filter("stories", "Stories", HouseEntry.Keys::stories),
                    filter("plan", "Plan", HouseEntry.Keys::plan),
                    filter("gains", "Who gains", HouseEntry.Keys::gains));
        }

        private Filter filter(String key, String title, Function<HouseEntry.Keys, String> value) {
            return new Filter(
                    key,
                    title,
                    entries.stream()
                            .map(entry -> value.apply(entry.keys()))
                            .distinct()
                            .sorted()
                            .toList());
        }
    }

    /** Where numbers come from. */
    record Sources(List<Trace> traces) implements Block {
        public Sources {
            traces = List.copyOf(traces);
        }
    }

    /** A heading and a table that no page turn parts. */
    record Kept(Heading heading, Table table) implements Block {}
}
