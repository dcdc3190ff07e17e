package weatherlap.reports.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.words.InWords;
import weatherlap.analysis.words.Numbers;
import weatherlap.datasets.shop.Letterhead;
import weatherlap.reports.page.Paper;
import weatherlap.sim.Units;
import weatherlap.sim.assumptions.Scalar;
import weatherlap.sim.assumptions.Scenario;
import weatherlap.sim.house.Elevation;
import weatherlap.sim.house.House;
import weatherlap.sim.method.Method;
import weatherlap.sim.rain.RainDays;
import weatherlap.sim.run.HouseTakeoff;
import weatherlap.sim.wind.DesignWind;
import weatherlap.sim.work.WorkTakeoff;

/** Makes the crew's sheet from a takeoff. */
public final class CrewSheets {
    /** Code points of a title at the foot of a page. */
    private static final int SHORT = 70;

    private CrewSheets() {}

    /**
     * @param shop who does the job
     * @param wind of the site; empty: not known, and nothing is said of it
     * @param rain days that it takes at the place of the house; empty: not known, and nothing is said of it
     * @param origin what was read, for the foot of the sheet
     * @param notPrinted what the printing font lacks; empty: nothing
     */
    public static CrewSheet of(
            Letterhead shop,
            HouseTakeoff takeoff,
            Optional<DesignWind> wind,
            Optional<RainDays> rain,
            Paper paper,
            String origin,
            String notPrinted) {
        House house = takeoff.house();
        WorkTakeoff work = takeoff.work();
        Scenario scenario = work.assumptions().scenario();
        List<Window> windows = Window.of(takeoff);
        return new CrewSheet(
                shop(shop),
                house.label(),
                facts(house),
                JobFacts.of(house),
                takeoff.single(),
                paper,
                figures(takeoff, windows, rain),
                takeoff.single().isPresent() ? Optional.empty() : Optional.of(WorkTables.methods(windows)),
                WorkTables.days(work, windows),
                Cautions.of(house, takeoff.methods(), windows, scenario),
                CodeFlags.of(windows, takeoff.rooms()),
                WindTable.of(takeoff, windows, wind),
                walls(takeoff, windows, paper),
                blankWalls(house),
                orders(house, windows, scenario),
                WorkTables.pickList(takeoff),
                WorkTables.labour(takeoff),
                footing(origin),
                notPrinted);
    }

    private static String shop(Letterhead shop) {
        return Stream.of(shop.name(), shop.phone(), shop.license().map(license -> "license " + license))
                .flatMap(Optional::stream)
                .collect(Collectors.joining(" \u00b7 "));
    }

    private static String facts(House house) {
        return house.id() + ": built " + house.yearBuilt() + ", " + InWords.of(house.cladding()) + ", barrier "
                + switch (house.barrier()) {
                    case HOUSEWRAP -> "housewrap";
                    case BUILDING_PAPER -> "building paper";
                    case NONE -> "none";
                    case UNKNOWN -> "not known";
                }
                + ", " + Numbers.count(house.storeys(), "story", "stories");
    }

    private static List<String> figures(HouseTakeoff takeoff, List<Window> windows, Optional<RainDays> rain) {
        WorkTakeoff work = takeoff.work();
        List<String> figures = new ArrayList<>();
        figures.add(Numbers.count(windows.size(), "window", "windows"));
        figures.add(Numbers.count(work.crewDays().days(), "day", "days") + " for "
                + Numbers.count(work.assumptions().scenario().whole(Scalar.CREW_SIZE), "person", "people"));
        rain.ifPresent(lost -> figures.add("about "
                + Numbers.plain(lost.daysFor(work.crewDays().days()), 1)
                + " working days with the days that rain takes here over a year"));
        figures.add(Numbers.plain(Units.minutesToHours(work.labour().value()), 1) + " person-hours, travel included");
        if (takeoff.methods().stream().anyMatch(Method::takesSidingDown)) {
            int down = takeoff.panelsDown().stream().mapToInt(panels -> panels).sum();
            figures.add(house(takeoff, down));
        }
        if (takeoff.methods().stream().anyMatch(Method::hasFlange)) {
            figures.add(Numbers.count(WorkTables.screws(windows), "screw", "screws"));
        }
        return figures;
    }

    private static String house(HouseTakeoff takeoff, int down) {
        if (!takeoff.house().cladding().inCourses()) {
            return "no siding down";
        }
        return (takeoff.house().cladding().hungInPanels()
                        ? Numbers.count(down, "panel", "panels")
                        : Numbers.count(down, "board", "boards"))
                + " down";
    }

    private static List<CrewSheet.Order> orders(House house, List<Window> windows, Scenario scenario) {
        Map<Method, List<Window>> byMethod = Window.byMethod(windows);
        return byMethod.entrySet().stream()
                .map(own -> new CrewSheet.Order(
                        byMethod.size() == 1 ? "" : heading(own.getKey(), own.getValue()),
                        LapOrder.of(house, own.getKey(), scenario),
                        FastenerOrder.of(own.getKey(), scenario)))
                .toList();
    }

    /** Full-frame, windows 4 and 7. */
    private static String heading(Method method, List<Window> windows) {
        return InWords.capital(method.label()) + ", " + Window.list(windows).toLowerCase(Locale.ROOT);
    }

    private static List<CrewSheet.WallSheet> walls(HouseTakeoff takeoff, List<Window> windows, Paper paper) {
        return takeoff.house().elevations().stream()
                .filter(wall -> !wall.openings().isEmpty())
                .map(wall -> WallPart.of(
                        takeoff,
                        wall,
                        windows.stream().filter(window -> window.on(wall)).toList(),
                        paper))
                .toList();
    }

    private static String blankWalls(House house) {
        List<String> blank = house.elevations().stream()
                .filter(wall -> wall.openings().isEmpty())
                .map(Elevation::id)
                .toList();
        return blank.isEmpty() ? "" : (blank.size() == 1 ? "Wall " : "Walls ") + InWords.list(blank) + ": no window.";
    }

    private static List<String> footing(String origin) {
        return List.of(
                "Order of the laps with siding: DOE Building America guidance and AAMA 2400, Method A. Screws, cut-backs, capping and the"
                        + " laps of inserts and of masonry: common practice, no source.",
                "Minutes, waste and tails come from the assumption tables, which say what each rests on; many are"
                        + " judgment calls. "
                        + origin);
    }

    /** For the foot of every page, should the sheets come apart. */
    public static String shortTitle(CrewSheet sheet) {
        String title = title(sheet);
        int end = title.offsetByCodePoints(0, Math.min(SHORT, title.codePointCount(0, title.length())));
        return title.substring(0, end) + (end < title.length() ? "…" : "");
    }

    /** Heading of a sheet: method and house. */
    public static String title(CrewSheet sheet) {
        return "Crew sheet, " + sheet.method().map(Method::label).orElse("window by window") + ": " + sheet.title();
    }
}
