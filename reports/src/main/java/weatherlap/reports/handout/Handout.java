package weatherlap.reports.handout;

import java.util.List;
import java.util.Optional;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.TableView;
import weatherlap.sim.house.Cladding;

/**
 * All that stands on a homeowner's handout.
 *
 * @param label of the house; untrusted text
 * @param facts about the house, in a line
 * @param cladding decides which method takes the old window out whole, and what it can reach
 * @param summary the comparison in a few sentences
 * @param offer both methods side by side: price, days, glass, leaks
 * @param priceHolds what is in the price of each method
 * @param third the plan window by window; empty where one method does all
 * @param windows by what they are
 * @param rest what is neither drawn nor listed; empty: nothing
 * @param footPx length of a foot in the drawings, CSS px
 * @param widestPx width of the widest drawing, CSS px
 * @param weather whose it is
 * @param rose wind-driven rain and the walls; empty where the weather is not the family's
 * @param walls rain on each wall; empty likewise
 * @param behind what was seen or is likely behind the siding
 * @param code what a building official may ask about
 * @param cautions that bear on this house
 * @param lean over the years, and how sure that is
 * @param uncertain what nobody knows, and what is judgement
 * @param notPrinted what the printing font lacks; empty: nothing
 */
public record Handout(
        String label,
        String facts,
        Cladding cladding,
        List<String> summary,
        TableView offer,
        List<String> priceHolds,
        Optional<ThirdChoice> third,
        List<WindowSection> windows,
        String rest,
        double footPx,
        int widestPx,
        String weather,
        Optional<Figure> rose,
        Optional<TableView> walls,
        List<String> behind,
        List<Named> code,
        List<Named> cautions,
        String lean,
        List<String> uncertain,
        String notPrinted) {
    public Handout {
        summary = List.copyOf(summary);
        priceHolds = List.copyOf(priceHolds);
        windows = List.copyOf(windows);
        behind = List.copyOf(behind);
        code = List.copyOf(code);
        cautions = List.copyOf(cautions);
        uncertain = List.copyOf(uncertain);
    }

    /** A sentence or two with a name to find it by. */
    public record Named(String name, String words) {}

    /**
     * A plan of several methods.
     *
     * @param offer price, glass and leaks in sentences
     * @param windows those of a method and a reason, and the reason
     */
    public record ThirdChoice(String offer, List<Named> windows) {
        public ThirdChoice {
            windows = List.copyOf(windows);
        }
    }

    /**
     * Windows of one kind and several sizes.
     *
     * @param name which kind
     * @param drawn groups of like windows
     * @param listed groups that are not drawn
     */
    public record WindowSection(String name, List<WindowGroup> drawn, List<WindowLine> listed) {
        public WindowSection {
            drawn = List.copyOf(drawn);
            listed = List.copyOf(listed);
        }
    }

    /**
     * Like windows, drawn once.
     *
     * @param mark letter by which the sheet refers to them
     * @param name how many, and the size of the frame
     * @param where rooms and walls
     * @param views today, full-flange, insert
     */
    public record WindowGroup(String mark, String name, String where, List<WindowView> views) {
        public WindowGroup {
            views = List.copyOf(views);
        }
    }

    /**
     * A window today or after the work.
     *
     * @param method as a heading
     * @param figure the drawing
     * @param widthPx of the drawing
     * @param area of the glass
     * @param change against today; empty for today
     * @param inches width and height of the glass; empty where there is none
     */
    public record WindowView(String method, Figure figure, int widthPx, String area, String change, String inches) {}

    /**
     * Like windows in a line.
     *
     * @param mark letter by which the sheet refers to them
     * @param size of the frame
     * @param where rooms and walls
     * @param views glass, change and inches today, with full-flange, with an insert
     */
    public record WindowLine(String mark, String size, String where, List<String> views) {
        public WindowLine {
            views = List.copyOf(views);
        }
    }
}
