package weatherlap.reports.handout;

import java.util.List;
import java.util.stream.Stream;
import weatherlap.reports.handout.Handout.Named;
import weatherlap.sim.house.Cladding;
import weatherlap.sim.method.Contrast;

/** Sentences that are the same for every house. */
public final class Prose {
    private static final String INSERTED = " Insert: the old frame stays, and a smaller window is set inside it.";
    private static final String LAPPED =
            "Full-flange: we open the wall around the window, take it out whole, and lap a new one into the"
                    + " rain barrier of the house." + INSERTED;
    private static final String IN_MASONRY =
            "Full-frame: we take the window out whole, set a new one on a sill pan, and seal the joint"
                    + " to the brick or stucco. The wall stays shut." + INSERTED;
    public static final String DRAWN = "Seen from outside, all at one scale. Hatched: old frame that stays. Percent is"
            + " glass lost against today. Measured sizes are checked again before anything is ordered.";

    private static final List<String> FULL_FLANGE = List.of(
            "Can mend: bad laps around the window, a missing sill pan, soft wood in the opening, and a poor fit.",
            "Cannot mend: the rain barrier on the rest of the wall, or leaks from the roof or the siding.",
            "Costs you: more work and money, siding that may crack, and trimming inside. New laps done badly can leak too.");
    private static final List<String> FULL_FRAME = List.of(
            "Can mend: a missing sill pan, a dry joint, soft wood in the opening, and a poor fit.",
            "Cannot mend: old laps at the sides and the top. They sit behind the brick or stucco and stay as they are, good or bad.",
            "Costs you: more work and money, and trimming inside. The joint is the main guard against rain, so look at it now and then.");
    public static final List<String> INSERT = List.of(
            "Can mend: drafts, foggy glass, worn or stuck sashes, and a tired look outside.",
            "Cannot mend: what is hidden in the wall. Old laps stay as they are, good or bad, under new trim.",
            "Costs you: some glass. The sealant outside is the main guard against rain, so look at it now and then.");
    public static final List<String> WHEN_INSERT = List.of(
            "the old frame is sound and square, with no stains or soft wood near it",
            "a deep eave or a dry side keeps rain off the wall",
            "the wall is brick or stucco, which is costly to open, or the siding is too brittle to move",
            "money or time is short, or the house will be sold or sided again soon");
    public static final List<String> UNCERTAIN = List.of(
            "No survey says how often each fault stands in old walls. That is judgement. Use what this sheet says of leaks to compare,"
                    + " not to forecast.",
            "Prices and days come from rates for each step. A written quote settles the price; a hidden fault may change it.",
            "Glass sizes come from usual frame widths. A drawing from the maker settles them.");

    static final Named LEAD = new Named(
            "Lead paint",
            "This house is older than 1978, so old paint may hold lead. Unless a test clears it, federal rules ask for certified"
                    + " workers and a sealed work area. Keep children away from the dust.");
    static final Named LEAD_CLEAR =
            new Named("Lead paint", "A test found none in this house. Keep the test report: the rules may ask for it.");
    static final Named ASBESTOS = new Named(
            "Asbestos", "Old siding, putty and caulk may hold it. Have them tested before anyone cuts or pulls them.");
    static final Named SAFETY = new Named(
            "On the day",
            "Keep people and pets away from open walls, ladders, heavy glass and cutting dust. Mold inside a wall: stop, find"
                    + " the water, and follow local advice.");
    static final Named CODE = new Named(
            "Local code",
            "It decides, with licensed trades, on permits, ways out of bedrooms, safety glass and guards. This sheet is no ruling.");

    private Prose() {}

    /** The method that takes the old window out whole there. */
    public static String whole(Cladding cladding) {
        return Contrast.USUAL.at(cladding).first().label();
    }

    /** What the methods are, at a wall whose siding comes down or at one of masonry. */
    public static String methods(Cladding cladding) {
        return cladding.inCourses() ? LAPPED : IN_MASONRY;
    }

    /** What that method can and cannot do there. */
    public static List<String> wholeCan(Cladding cladding) {
        return cladding.inCourses() ? FULL_FLANGE : FULL_FRAME;
    }

    /** All of it. */
    static Stream<String> all() {
        return Stream.of(
                        Stream.of(LAPPED, IN_MASONRY, DRAWN),
                        FULL_FLANGE.stream(),
                        FULL_FRAME.stream(),
                        INSERT.stream(),
                        WHEN_INSERT.stream().map(line -> "An insert makes sense when " + line + "."),
                        UNCERTAIN.stream(),
                        Stream.of(LEAD, LEAD_CLEAR, ASBESTOS, SAFETY, CODE).map(Named::words))
                .flatMap(lines -> lines);
    }
}
