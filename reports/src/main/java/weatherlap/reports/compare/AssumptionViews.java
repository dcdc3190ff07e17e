package weatherlap.reports.compare;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import weatherlap.analysis.words.Numbers;
import weatherlap.reports.format.SourceNames;
import weatherlap.reports.page.Anchor;
import weatherlap.reports.page.ReportWords;
import weatherlap.reports.page.TableView;
import weatherlap.sim.assumptions.Assumptions;
import weatherlap.sim.assumptions.Choice;
import weatherlap.sim.assumptions.Condition;
import weatherlap.sim.assumptions.LapFault;
import weatherlap.sim.assumptions.Setting;
import weatherlap.sim.assumptions.Sightline;
import weatherlap.sim.assumptions.ThreePoint;
import weatherlap.sim.explain.Origin;

/** The assumptions of a run, row by row with basis and source, as tables of a page. */
final class AssumptionViews {
    private final Assumptions assumptions;
    private final SourceNames sources;

    AssumptionViews(Assumptions assumptions, SourceNames sources) {
        this.assumptions = assumptions;
        this.sources = sources;
    }

    List<TableView> all() {
        return List.of(scenario(), choices(), steps(), materials(), units(), faults(), sightlines(), wages());
    }

    private TableView scenario() {
        TableView.Builder table = TableView.of(sources.table("scenario.toml") + ": single numbers")
                .texts("name")
                .numbers("value", "low", "high")
                .texts("unit", "basis", "source");
        for (Setting setting : assumptions.scenario().settings().values()) {
            table.row(
                            setting.scalar().key(),
                            plain(setting.value()),
                            setting.range().map(range -> plain(range.low())).orElse(""),
                            setting.range().map(range -> plain(range.high())).orElse(""),
                            setting.scalar().unit(),
                            ReportWords.of(setting.origin().basis()),
                            setting.origin().source())
                    .named(anchor(setting.origin()));
        }
        return table.build();
    }

    private TableView choices() {
        TableView.Builder table =
                TableView.of(sources.table("scenario.toml") + ": choices").texts("name", "chosen", "could be");
        for (Choice choice : Choice.values()) {
            table.row(choice.key(), assumptions.scenario().choice(choice), String.join(", ", choice.allowed()));
        }
        return table.build();
    }

    private TableView steps() {
        TableView.Builder table = TableView.of(
                        sources.table("labour-steps.csv") + ": person-minutes for one unit of the driver")
                .texts("step", "trade name", "method", "driver")
                .numbers("low", "likely", "high")
                .texts("applies when", "basis", "source");
        assumptions.steps().forEach(step -> table.row(
                        step.id(),
                        step.tradeName(),
                        ReportWords.of(step.method()),
                        ReportWords.of(step.driver()),
                        plain(step.minutes().low()),
                        plain(step.minutes().likely()),
                        plain(step.minutes().high()),
                        text(step.appliesWhen()),
                        ReportWords.of(step.origin().basis()),
                        step.origin().source())
                .named(anchor(step.origin())));
        return table.build();
    }

    private TableView materials() {
        TableView.Builder table = TableView.of(sources.table("materials.csv") + ": what is bought by the package")
                .texts("item", "trade name", "method", "driver")
                .numbers("for one driver", "waste", "package", "USD a package")
                .texts("applies when", "basis", "source");
        assumptions.materials().forEach(item -> table.row(
                        item.id(),
                        item.tradeName(),
                        ReportWords.of(item.method()),
                        ReportWords.of(item.driver()),
                        plain(item.quantityPerDriver()) + " " + item.unit(),
                        ReportWords.percent(item.wasteFraction(), 0),
                        plain(item.packageSize()),
                        range(item.price()),
                        text(item.appliesWhen()),
                        ReportWords.of(item.origin().basis()),
                        item.origin().source())
                .named(anchor(item.origin())));
        return table.build();
    }

    private TableView units() {
        TableView.Builder table = TableView.of(sources.table("units.csv") + ": what a new unit costs the shop")
                .texts("method", "operation")
                .numbers("base USD", "USD per united inch")
                .texts("basis", "source");
        assumptions.unitPrices().forEach(price -> table.row(
                        ReportWords.of(price.method()),
                        ReportWords.of(price.operation()),
                        plain(price.baseUsd()),
                        plain(price.usdPerUnitedInch()),
                        ReportWords.of(price.origin().basis()),
                        price.origin().source())
                .named(anchor(price.origin())));
        return table.build();
    }

    private TableView faults() {
        TableView.Builder table = TableView.of(
                        sources.table("lap-faults.csv") + ": what can be wrong where a window meets the wall")
                .texts("fault", "joint", "what happens", "stands under", "where", "chance that it stands")
                .numbers("share of water let past")
                .texts("basis", "source");
        assumptions.faults().forEach(fault -> table.row(
                        fault.tradeName(),
                        ReportWords.of(fault.joint()),
                        fault.whatHappens(),
                        ReportWords.of(fault.method()),
                        text(fault.appliesWhen()),
                        chances(fault),
                        range(fault.admitted()),
                        ReportWords.of(fault.origin().basis()),
                        fault.origin().source())
                .named(anchor(fault.origin())));
        return table.build();
    }

    private TableView sightlines() {
        TableView.Builder table = TableView.of(sources.table("sightlines.csv") + ": widths that hide glass, in.")
                .texts("unit")
                .numbers("head", "jamb", "sill", "meeting rail", "top rail", "bottom rail", "stile", "order less")
                .texts("basis", "source");
        for (Sightline s : assumptions.sightlines()) {
            table.row(
                            ReportWords.of(s.product()) + ", " + ReportWords.of(s.material()) + ", "
                                    + ReportWords.of(s.operation()),
                            plain(s.headIn()),
                            plain(s.jambIn()),
                            plain(s.sillIn()),
                            plain(s.meetingRailIn()),
                            plain(s.topRailIn()),
                            plain(s.bottomRailIn()),
                            plain(s.stileIn()),
                            plain(s.widthDeductionIn()) + " \u00d7 " + plain(s.heightDeductionIn()),
                            ReportWords.of(s.origin().basis()),
                            s.origin().source())
                    .named(anchor(s.origin()));
        }
        return table.build();
    }

    private TableView wages() {
        TableView.Builder table = TableView.of(sources.table("wages.csv"))
                .texts("region", "role")
                .numbers("USD an hour", "burden")
                .texts("basis", "source");
        assumptions.wages().forEach(wage -> table.row(
                        wage.region(),
                        wage.role(),
                        plain(wage.usdPerHour()),
                        ReportWords.percent(wage.burdenFraction(), 1),
                        ReportWords.of(wage.origin().basis()),
                        wage.origin().source())
                .named(anchor(wage.origin())));
        return table.build();
    }

    private static String chances(LapFault fault) {
        return Stream.concat(
                        fault.priorByBarrier().entrySet().stream().sorted(java.util.Map.Entry.comparingByKey()),
                        fault.priorByWorkmanship().entrySet().stream().sorted(java.util.Map.Entry.comparingByKey()))
                .map(entry -> ReportWords.of((Enum<?>) entry.getKey()) + " " + ReportWords.percent(entry.getValue(), 0))
                .collect(Collectors.joining(", "));
    }

    private static String anchor(Origin origin) {
        return Anchor.of(origin.table(), origin.row());
    }

    private static String text(Condition condition) {
        return condition.alternatives().stream()
                .map(terms -> terms.stream().map(AssumptionViews::text).collect(Collectors.joining(" and ")))
                .collect(Collectors.joining("; or "));
    }

    private static String text(Condition.Term term) {
        String relation =
                switch (term.relation()) {
                    case IS -> " is ";
                    case IS_NOT -> " is not ";
                    case FROM -> " is from ";
                    case BELOW -> " is below ";
                };
        return term.fact().key() + relation + String.join(" or ", term.values());
    }

    private static String range(ThreePoint points) {
        return points.low() == points.high()
                ? plain(points.likely())
                : plain(points.low()) + " / " + plain(points.likely()) + " / " + plain(points.high());
    }

    /** All the digits of an assumption: 0.001, 13 954. */
    private static String plain(double value) {
        return Numbers.trimmed(value, 6);
    }
}
