package weatherlap.reports.compare;

import weatherlap.reports.page.TableView;

/** Ten words that the report uses, for who has not met them. */
final class Glossary {
    private Glossary() {}

    static TableView table() {
        return TableView.of("Ten words")
                .texts("word", "what it means here")
                .row(
                        "full-flange",
                        "The old window comes out whole. A new one with a nailing flange is lapped into the rain barrier.")
                .row(
                        "full-frame",
                        "The old window comes out whole. The new one has no flange and is sealed to the opening.")
                .row("insert", "A smaller window is set into the old frame, which stays.")
                .row("rain barrier", "The paper or wrap behind the siding that sheds the water that gets past it.")
                .row("lap", "The upper layer hangs over the lower one, like shingles, so that water runs out.")
                .row("eave", "How far the roof sticks out over the wall. A wide eave keeps rain off.")
                .row(
                        "return",
                        "The drywall or wood that turns from the room in to the window. Full-flange cuts it back.")
                .row("crew day", "One working day of a whole crew, whoever is on it.")
                .row("gross profit", "Price less labor, material and service. It still has to pay the overhead.")
                .row("run", "One time through all the numbers, each uncertain one set somewhere in its range.")
                .build();
    }
}
