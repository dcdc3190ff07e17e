package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;
import weatherlap.sim.Each;
import weatherlap.sim.Sum;
import weatherlap.sim.labour.DayPlan.Run;
import weatherlap.sim.labour.DayPlan.Stint;
import weatherlap.sim.labour.DayPlan.Wall;

/** Makes a {@link DayPlan}, whose page says by which rules. */
final class DayPlanner {
    /** Minutes that a sum of rounded numbers may exceed a day by. */
    private static final double SLACK_MINUTES = 1e-6;

    private static final int TWO_TEAMS_FROM = 3;

    private static final Comparator<Team> FREE_FIRST =
            Comparator.comparingInt((Team team) -> team.day).thenComparingDouble(team -> -team.left);

    private final double dayMinutes;
    private final int crew;
    private final List<Wall> walls;
    private final List<Team> teams;
    private final List<Double> wallMinutes;
    private final double allMinutes;
    private final List<Integer> remaining;
    private final List<Stint> stints = new ArrayList<>();
    /** By wall, then by opening: its day. */
    private final List<Integer[]> begun;

    DayPlanner(double dayMinutes, int crew, List<Wall> walls) {
        this.dayMinutes = dayMinutes;
        this.crew = crew;
        this.walls = walls;
        int count = crew < TWO_TEAMS_FROM ? 1 : 2;
        teams = Each.upTo(count, team -> new Team(team + 1, (double) crew / count));
        wallMinutes = Each.of(walls, Wall::minutes);
        List<Integer> worked = Each.where(
                Each.upTo(walls.size(), wall -> wall),
                wall -> !walls.get(wall).runs().isEmpty());
        allMinutes = Sum.of(worked, wallMinutes::get);
        remaining = new ArrayList<>(worked);
        remaining.sort(Comparator.comparing(wall -> -wallMinutes.get(wall)));
        begun = Each.of(walls, DayPlanner::openings);
    }

    private static Integer[] openings(Wall wall) {
        int openings = 0;
        for (Run run : wall.runs()) {
            openings += run.openings().size();
        }
        return new Integer[openings];
    }

    DayPlan plan(double houseMinutes) {
        while (!remaining.isEmpty()) {
            Team team = Collections.min(teams, FREE_FIRST);
            Optional<Integer> wall = team.next();
            if (wall.isPresent()) {
                team.work(wall.get());
            } else {
                team.nextDay();
            }
        }
        stints.sort(Comparator.comparingInt(Stint::day).thenComparingInt(Stint::team));
        List<Integer> days = new ArrayList<>();
        for (Integer[] wall : begun) {
            Collections.addAll(days, wall);
        }
        return new DayPlan(days(houseMinutes), days, stints);
    }

    /** Days of the walls, and those that the house's own work needs beyond the time left in them. */
    private int days(double houseMinutes) {
        int days = 0;
        for (Stint stint : stints) {
            days = Math.max(days, stint.day());
        }
        double over = allMinutes + houseMinutes - days * crew * dayMinutes;
        return Math.max(1, days + (int) Math.max(0, Math.ceil((over - SLACK_MINUTES) / (crew * dayMinutes))));
    }

    private final class Team {
        private final int number;
        private final double people;
        private int day = 1;
        private double left = dayMinutes;

        Team(int number, double people) {
            this.number = number;
            this.people = people;
        }

        private boolean fits(double personMinutes) {
            return personMinutes / people <= left + SLACK_MINUTES;
        }

        void nextDay() {
            day++;
            left = dayMinutes;
        }

        Optional<Integer> next() {
            if (left == dayMinutes) {
                return Optional.of(remaining.get(0));
            }
            return first(wall -> fits(wallMinutes.get(wall)))
                    .or(() -> first(wall -> walls.get(wall).runs().size() > 1
                            && fits(walls.get(wall).setup()
                                    + walls.get(wall).runs().get(0).minutes())));
        }

        private Optional<Integer> first(Predicate<Integer> holds) {
            for (Integer wall : remaining) {
                if (holds.test(wall)) {
                    return Optional.of(wall);
                }
            }
            return Optional.empty();
        }

        void work(Integer wall) {
            remaining.remove(wall);
            double setup = walls.get(wall).setup();
            for (Run run : walls.get(wall).runs()) {
                double minutes = setup + run.minutes();
                if (!fits(minutes) && left < dayMinutes) {
                    nextDay();
                }
                if (fits(minutes)) {
                    pour(minutes);
                    for (Integer opening : run.openings()) {
                        begun.get(wall)[opening] = day;
                    }
                    stints.add(new Stint(day, number, wall, run.openings(), true, true));
                } else {
                    overnight(wall, run, setup);
                }
                setup = 0;
            }
        }

        /** A run longer than a day: half of the siding's minutes before its openings, half after them. */
        private void overnight(int wall, Run run, double setup) {
            TreeMap<Integer, List<Integer>> days = new TreeMap<>();
            days.put(day, new ArrayList<>());
            pour(setup + run.siding() / 2);
            for (int i = 0; i < run.openings().size(); i++) {
                double minutes = run.openingMinutes().get(i);
                if (!fits(minutes) && left < dayMinutes) {
                    nextDay();
                }
                begun.get(wall)[run.openings().get(i)] = day;
                days.computeIfAbsent(day, none -> new ArrayList<>())
                        .add(run.openings().get(i));
                pour(minutes);
            }
            pour(run.siding() / 2);
            int first = days.firstKey();
            for (int today = first; today <= day; today++) {
                stints.add(new Stint(
                        today, number, wall, days.getOrDefault(today, List.of()), today == first, today == day));
            }
        }

        /** Takes the minutes from today and, where they are more, from as many days as they need. */
        private void pour(double personMinutes) {
            double rest = personMinutes / people;
            while (rest > left + SLACK_MINUTES) {
                rest -= left;
                nextDay();
            }
            left -= rest;
        }
    }
}
