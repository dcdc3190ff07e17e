package weatherlap.reports.crew;

import java.util.List;
import java.util.Optional;
import weatherlap.reports.page.Paper;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/**
 * The crew's sheet for one house, by one method or window by window.
 *
 * @param shop who does the job: name, phone and license, as far as known
 * @param title which house
 * @param facts of the house, in a line
 * @param job what the crew is told of the house: what, and the words
 * @param figures counts to know at a glance
 * @param method of the whole house; empty where windows get different ones
 * @param methods which window gets which; empty where all get the same
 * @param days which windows on which day
 * @param cautions work that can hurt here
 * @param codes flags of the model code, in sentences
 * @param wind ratings to order by; empty where the wind of the site is not known
 * @param walls those that have windows
 * @param blankWalls a sentence on the walls that have none, or empty
 * @param orders of work, method by method
 * @param pickList whole packages
 * @param labour each step of the house
 * @param footing what the numbers rest on
 * @param notPrinted what the printing font lacks; empty: nothing
 */
public record CrewSheet(
        String shop,
        String title,
        String facts,
        List<JobFact> job,
        Optional<Method> method,
        Paper paper,
        List<String> figures,
        Optional<TableView> methods,
        TableView days,
        List<String> cautions,
        List<String> codes,
        Optional<TableView> wind,
        List<WallSheet> walls,
        String blankWalls,
        List<Order> orders,
        TableView pickList,
        TableView labour,
        List<String> footing,
        String notPrinted) {
    private static final int MANY_DAYS = 9;
    private static final int MANY_STEPS = 30;

    public CrewSheet {
        job = List.copyOf(job);
        figures = List.copyOf(figures);
        cautions = List.copyOf(cautions);
        codes = List.copyOf(codes);
        walls = List.copyOf(walls);
        orders = List.copyOf(orders);
        footing = List.copyOf(footing);
    }

    /** Where the left half of the first page is full of days. */
    public boolean codesRight() {
        return method.isEmpty() || days.rows().size() > MANY_DAYS;
    }

    /** The steps in columns that stand beside each other: one, or two where there is room for them and the steps are many. */
    public List<TableView> labourColumns() {
        int rows = labour.rows().size();
        return method.isPresent() || rows < MANY_STEPS ? List.of(labour) : labour.parts((rows + 1) / 2);
    }

    /** Something the office knows of the job, as it was written; empty: ask the office. */
    public record JobFact(String what, String words) {}

    /**
     * In which order a method is done.
     *
     * @param heading method and windows; empty where all windows are done by it
     * @param laps in the order they go on, from below
     * @param fastening in the order screws are driven
     */
    public record Order(String heading, List<String> laps, List<String> fastening) {
        public Order {
            laps = List.copyOf(laps);
            fastening = List.copyOf(fastening);
        }
    }

    /**
     * The windows of a wall that are done by one method.
     *
     * @param sizes to order
     * @param edges to cut back and to tape, to join and to trim, or to cap
     */
    public record MethodTables(TableView sizes, TableView edges) {}

    /**
     * One wall.
     *
     * @param heading which wall
     * @param svg the wall to scale, fitted to the paper; made by {@code weatherlap.charts}, so safe to stand in a page as it is; empty where
     *     no siding comes down
     * @param siding what comes down and in which order, in sentences
     * @param tables method by method
     */
    public record WallSheet(String heading, String svg, List<String> siding, List<MethodTables> tables) {
        public WallSheet {
            siding = List.copyOf(siding);
            tables = List.copyOf(tables);
        }
    }
}
