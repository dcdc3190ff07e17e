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
 * @param figures counts to know at a glance
 * @param days which windows on which day
 * @param cautions work that can hurt here
 * @param codes flags of the model code, in sentences
 * @param sizes to order
 * @param wind ratings to order by; empty where the wind of the site is not known
 * @param edges to cut back and to tape, or to cap
 * @param walls those that have windows
 * @param blankWalls a sentence on the walls that have none, or empty
 * @param laps in the order they go on, from below
 * @param fastening in the order screws are driven
 * @param pickList whole packages
 * @param labour each step of the house, in halves that stand side by side
 * @param footing what the numbers rest on
 * @param notPrinted what the printing font lacks; empty: nothing
 */
public record CrewSheet(
        String title,
        String facts,
        Method method,
        Paper paper,
        List<String> figures,
        TableView days,
        List<String> cautions,
        List<String> codes,
        TableView sizes,
        Optional<TableView> wind,
        TableView edges,
        List<WallSheet> walls,
        String blankWalls,
        List<String> laps,
        List<String> fastening,
        TableView pickList,
        List<TableView> labour,
        List<String> footing,
        String notPrinted) {
    public CrewSheet {
        figures = List.copyOf(figures);
        cautions = List.copyOf(cautions);
        codes = List.copyOf(codes);
        walls = List.copyOf(walls);
        laps = List.copyOf(laps);
        fastening = List.copyOf(fastening);
        labour = List.copyOf(labour);
        footing = List.copyOf(footing);
    }

    /**
     * One wall.
     *
     * @param heading which wall
     * @param svg the wall to scale, fitted to the paper; made by {@code weatherlap.charts}, so safe to stand in a page as it is
     * @param siding what comes down and in which order, in sentences
     */
    public record WallSheet(String heading, String svg, List<String> siding) {
        public WallSheet {
            siding = List.copyOf(siding);
        }
    }
}
