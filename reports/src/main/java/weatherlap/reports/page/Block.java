package weatherlap.reports.page;

import java.util.List;

/** What a section is made of. {@code block.jte} draws each kind on screen, {@code sheetblock.jte} on paper. */
public sealed interface Block {
    /** The answer in sentences, in a frame; the first is the answer itself. Numbers lead to the section's trace on screen. */
    record Answer(List<String> sentences) implements Block {
        public Answer {
            sentences = List.copyOf(sentences);
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

    /** An index of houses on screen, a row a house on paper. */
    record Houses(List<HouseEntry> entries, TableView summary) implements Block {
        public Houses {
            entries = List.copyOf(entries);
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
