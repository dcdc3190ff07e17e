package weatherlap.analysis.tables;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import weatherlap.analysis.columns.Schemas;
import weatherlap.analysis.plan.HouseChoice;
import weatherlap.analysis.plan.Limit;
import weatherlap.sim.method.Method;
import weatherlap.sim.run.ElevationResult;
import weatherlap.sim.run.HouseResult;
import weatherlap.sim.run.MethodResult;
import weatherlap.sim.run.OpeningResult;
import weatherlap.sim.run.Summary;

/** The tables that {@code compare} writes, from the results of a run, in the order of the portfolio. */
public final class ResultTables {
    private ResultTables() {}

    /** One row an opening and method. */
    public static ResultTable openings(List<HouseResult> houses) {
        TableBuilder table = new TableBuilder(Schemas.OPENINGS);
        for (HouseResult house : houses) {
            house.openings().forEach(opening -> addOpening(table, house, opening));
        }
        return table.build();
    }

    /** One row an elevation and method. */
    public static ResultTable elevations(List<HouseChoice> choices) {
        TableBuilder table = new TableBuilder(Schemas.ELEVATIONS);
        for (HouseChoice choice : choices) {
            for (ElevationResult wall : choice.result().elevations()) {
                table.row(
                        choice.result().house().id(),
                        wall.elevation().id(),
                        wall.method().word(),
                        wall.elevation().openings().size(),
                        wall.panelsDown(),
                        wall.drivingRainLitresPerM2Year(),
                        wall.leakScore(),
                        wall.labourMinutesMean(),
                        limits(choice.closed().get(wall.elevation().id()).get(wall.method())),
                        yesNo(choice.family().byElevation().get(wall.elevation().id()) == wall.method()));
            }
        }
        return table.build();
    }

    /** One row a house and method. */
    public static ResultTable houses(List<HouseChoice> choices) {
        TableBuilder table = new TableBuilder(Schemas.HOUSES);
        for (HouseChoice choice : choices) {
            for (Method method : Method.values()) {
                addHouse(table, choice, method);
            }
        }
        return table.build();
    }

    private static void addOpening(TableBuilder table, HouseResult house, OpeningResult opening) {
        Summary labour = opening.labourMinutes();
        Summary material = opening.materialUsd();
        table.row(
                house.house().id(),
                opening.elevation().id(),
                opening.opening().id(),
                opening.method().word(),
                opening.glassExistingFt2(),
                opening.glassFt2(),
                opening.glassLostFt2(),
                100 * opening.glassLostFraction(),
                opening.clearWidthIn(),
                opening.clearHeightIn(),
                opening.clearAreaFt2(),
                String.join(";", opening.codeFlags()),
                opening.orderWidthIn(),
                opening.orderHeightIn(),
                labour.mean(),
                labour.p10(),
                labour.p50(),
                labour.p90(),
                material.mean(),
                material.p10(),
                material.p50(),
                material.p90(),
                opening.exposure().litresPerM2Year(),
                opening.exposure().shelterFraction(),
                opening.waterPastFirstLineLitresPerYear(),
                opening.leakProbability(),
                opening.leakScore().mean(),
                opening.leakScore().p10(),
                opening.leakScore().p90(),
                causes(opening.leakCauses()));
    }

    private static void addHouse(TableBuilder table, HouseChoice choice, Method method) {
        HouseResult house = choice.result();
        MethodResult result = house.method(method);
        Summary labour = result.labourHours();
        Summary material = result.materialUsd();
        Summary cost = result.costUsd();
        Summary horizon = result.horizonCostUsd();
        table.row(
                house.house().id(),
                house.house().label(),
                method.word(),
                house.house().openingCount(),
                result.glassLostFt2(),
                100 * result.glassLostFraction(),
                labour.mean(),
                labour.p10(),
                labour.p50(),
                labour.p90(),
                result.crewDays(),
                material.mean(),
                material.p10(),
                material.p50(),
                material.p90(),
                result.priceUsd(),
                cost.mean(),
                cost.p10(),
                cost.p50(),
                cost.p90(),
                result.grossProfitPerCrewDayUsd(),
                result.leakProbability(),
                result.leakScore().mean(),
                result.expectedDamageUsd(),
                horizon.mean(),
                horizon.p10(),
                horizon.p50(),
                horizon.p90(),
                yesNo(house.cheapest() == method),
                house.cheapestProbability(method),
                String.join(";", result.flags()),
                choice.wherever().get(method).horizonCostUsd(),
                limits(choice.closed(method)),
                choice.family().single().map(one -> yesNo(one == method)).orElse("part"),
                yesNo(choice.shop() == method));
    }

    private static String yesNo(boolean yes) {
        return yes ? "yes" : "no";
    }

    private static String limits(Set<Limit> limits) {
        return limits.stream().map(Limit::word).collect(Collectors.joining(";"));
    }

    private static String causes(List<OpeningResult.LeakCause> causes) {
        StringBuilder text = new StringBuilder();
        for (OpeningResult.LeakCause cause : causes) {
            long tenThousandths = Math.round(cause.contribution() * 10_000);
            if (tenThousandths > 0) {
                text.append(text.isEmpty() ? "" : ";")
                        .append(cause.faultId())
                        .append(tenThousandths < 10_000 ? " 0." : " 1.")
                        .append(Long.toString(10_000 + tenThousandths % 10_000), 1, 5);
            }
        }
        return text.toString();
    }
}
