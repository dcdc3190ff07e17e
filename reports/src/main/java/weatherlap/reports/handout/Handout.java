package weatherlap.reports.handout;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.reports.offer.OfferTable;
import weatherlap.reports.page.Figure;
import weatherlap.reports.page.TableView;
import weatherlap.reports.words.FamilyWords;

/**
 * All that stands on a family's sheet.
 *
 * @param words of its language, for headings
 * @param shop who proposes it
 * @param priced whether it names prices
 * @param label of the house; untrusted text
 * @param facts about the house, in a line
 * @param advice of the shop, with its reason
 * @param offer the choices side by side, to sign
 * @param mixed the plan window by window; empty where one method does all
 * @param difference one window large, and the daylight of the house
 * @param methods what each is, can and cannot do
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
 * @param uncertain what nobody knows, and what is judgement
 * @param ticks the windows to choose one by one; empty on paper
 * @param notPrinted what of its names is spelt otherwise on paper; empty: nothing
 */
public record Handout(
        FamilyWords words,
        ShopHead shop,
        boolean priced,
        String label,
        String facts,
        String advice,
        OfferTable offer,
        Optional<MixedWindows> mixed,
        Difference difference,
        List<MethodColumn> methods,
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
        List<String> uncertain,
        Optional<Ticks> ticks,
        String notPrinted) {
    public Handout {
        methods = List.copyOf(methods);
        windows = List.copyOf(windows);
        behind = List.copyOf(behind);
        code = List.copyOf(code);
        cautions = List.copyOf(cautions);
        uncertain = List.copyOf(uncertain);
    }

    /** The methods that its windows are shown with; a page that lets others be ticked explains those too. */
    public List<MethodColumn> shown() {
        Set<String> styles = difference.views().stream().map(Seen::style).collect(Collectors.toSet());
        return methods.stream()
                .filter(method -> styles.contains(method.style()))
                .toList();
    }

    /** Whether it draws any of the windows that it lists. */
    public boolean draws() {
        return windows.stream().anyMatch(section -> !section.drawn().isEmpty());
    }

    /** A message of the sheet's language. */
    public String say(String key, Object... values) {
        return words.of(key, values);
    }

    /** A sentence or two with a name to find it by. */
    public record Named(String name, String words) {}

    /**
     * A plan of several methods.
     *
     * @param counts how many windows by which
     * @param windows those of a method and a reason, and the reason
     */
    public record MixedWindows(String heading, String counts, List<Named> windows) {
        public MixedWindows {
            windows = List.copyOf(windows);
        }
    }

    /**
     * What the family would see of it.
     *
     * @param window which one is drawn
     * @param views today, then by each method
     * @param squares the daylight of the house
     * @param squareNote what a square stands for
     */
    public record Difference(String window, List<Seen> views, Figure squares, String squareNote) {
        public Difference {
            views = List.copyOf(views);
        }
    }

    /**
     * One view of the window.
     *
     * @param style of the method, or today
     * @param widthPx of the drawing
     */
    public record Seen(String name, String style, Figure figure, int widthPx, String caption) {}

    /**
     * A method.
     *
     * @param lines what it is, mends, cannot mend and costs
     */
    public record MethodColumn(String name, String style, List<String> lines) {
        public MethodColumn {
            lines = List.copyOf(lines);
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
     * @param count how many
     * @param size of the frame
     * @param where rooms and walls
     * @param views today, then by each method
     */
    public record WindowGroup(String mark, String count, String size, String where, List<WindowView> views) {
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
     * @param inches its panes; empty where there is none
     */
    public record WindowView(String method, Figure figure, int widthPx, String area, String change, String inches) {}

    /**
     * Like windows in a line.
     *
     * @param mark letter by which the sheet refers to them
     * @param size of the frame
     * @param where rooms and walls
     * @param views glass and change today, then by each method
     */
    public record WindowLine(String mark, String size, String where, List<String> views) {
        public WindowLine {
            views = List.copyOf(views);
        }
    }
}
