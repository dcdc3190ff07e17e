package weatherlap.sim.labour;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;
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
    private final double[] wallMinutes;
    private final double allMinutes;
    private final List<Integer> remaining;
    private final List<Stint> stints = new ArrayList<>();
    /** By wall, then by opening: its day. */
    private final int[][] begun;

    DayPlanner(double dayMinutes, int crew, List<Wall> walls) {
        this.dayMinutes = dayMinutes;
        this.crew = crew;
        this.walls = walls;
        int count = crew < TWO_TEAMS_FROM ? 1 : 2;
        teams = Each.upTo(count, team -> new Team(team + 1, (double) crew / count));
        wallMinutes = Each.numbers(walls, Wall::minutes);
        remaining = new ArrayList<>();
        begun = new int[walls.size()][];
        for (int wall = 0; wall < begun.length; wall++) {
            begun[wall] = new int[openings(walls.get(wall))];
            if (begun[wall].length > 0) {
                remaining.add(wall);
            }
        }
        allMinutes = Sum.of(remaining, wall -> wallMinutes[wall]);
        remaining.sort(Comparator.comparingDouble(wall -> -wallMinutes[wall]));
    }

    private static int openings(Wall wall) {
        int openings = 0;
        for (Run run : wall.runs()) {
            openings += run.openings().size();
        }
        return openings;
    }

    DayPlan plan(double houseMinutes) {
        while (!remaining.isEmpty()) {
            Team team = teams.size() == 1 ? teams.get(0) : Collections.min(teams, FREE_FIRST);
            int next = team.next();
            if (next >= 0) {
                team.work(remaining.remove(next));
            } else {
                team.nextDay();
            }
        }
        stints.sort(Comparator.comparingInt(Stint::day).thenComparingInt(Stint::team));
        List<Integer> days = new ArrayList<>();
        for (int[] wall : begun) {
            for (int day : wall) {
                days.add(day);
            }
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

        /** Place of its next wall among those that remain; below 0: none today. */
        int next() {
            if (left == dayMinutes) {
                return 0;
            }
            for (int place = 0; place < remaining.size(); place++) {
                if (fits(wallMinutes[remaining.get(place)])) {
                    return place;
                }
            }
            for (int place = 0; place < remaining.size(); place++) {
                Wall wall = walls.get(remaining.get(place));
                if (wall.runs().size() > 1
                        && fits(wall.setup() + wall.runs().get(0).minutes())) {
                    return place;
                }
            }
            return -1;
        }

        void work(int wall) {
            double setup = walls.get(wall).setup();
            for (Run run : walls.get(wall).runs()) {
                double minutes = setup + run.minutes();
                if (!fits(minutes) && left < dayMinutes) {
                    nextDay();
                }
                if (fits(minutes)) {
                    pour(minutes);
                    for (Integer opening : run.openings()) {
                        begun[wall][opening] = day;
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
                begun[wall][run.openings().get(i)] = day;
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
