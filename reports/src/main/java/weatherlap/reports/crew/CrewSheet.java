package weatherlap.reports.crew;

import java.util.List;
import java.util.Optional;
import weatherlap.reports.page.Paper;
import weatherlap.reports.page.TableView;
import weatherlap.sim.method.Method;

/**
 * The crew's sheet for one house by one method.
 *
 * @param title which house
 * @param facts of the house, in a line
 * @param job what the crew is told of the house: what, and the words
 * @param figures counts to know at a glance
 * @param days which windows on which day
 * @param cautions work that can hurt here
 * @param codes flags of the model code, in sentences
 * @param wind ratings to order by; empty where the wind of the site is not known
 * @param walls those that have windows
 * @param blankWalls a sentence on the walls that have none, or empty
 * @param laps in the order they go on, from below
 * @param fastening in the order screws are driven
 * @param pickList whole packages
 * @param labour each step of the house
 * @param footing what the numbers rest on
 * @param notPrinted what the printing font lacks; empty: nothing
 */
public record CrewSheet(
        String title,
        String facts,
        List<JobFact> job,
        Method method,
        Paper paper,
        List<String> figures,
        TableView days,
        List<String> cautions,
        List<String> codes,
        Optional<TableView> wind,
        List<WallSheet> walls,
        String blankWalls,
        List<String> laps,
        List<String> fastening,
        TableView pickList,
        TableView labour,
        List<String> footing,
        String notPrinted) {
    public CrewSheet {
        job = List.copyOf(job);
        figures = List.copyOf(figures);
        cautions = List.copyOf(cautions);
        codes = List.copyOf(codes);
        walls = List.copyOf(walls);
        laps = List.copyOf(laps);
        fastening = List.copyOf(fastening);
        footing = List.copyOf(footing);
    }

    /** Something the office knows of the job, as it was written; empty: ask the office. */
    public record JobFact(String what, String words) {}

    /**
     * One wall.
     *
     * @param heading which wall
     * @param svg the wall to scale, fitted to the paper; made by {@code weatherlap.charts}, so safe to stand in a page as it is; empty where
     *     no siding comes down
     * @param sizes to order
     * @param edges to cut back and to tape, or to cap
     * @param siding what comes down and in which order, in sentences
     */
    public record WallSheet(String heading, String svg, List<String> siding, TableView sizes, TableView edges) {
        public WallSheet {
            siding = List.copyOf(siding);
        }
    }
}
