package weatherlap.analysis.season;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import weatherlap.sim.run.Summary;

/**
 * What a way to choose makes of a season.
 *
 * @param housesDone over the draws; the rest wait for the next season
 * @param byMethod houses done on mean days, by {@link JobOption#by}
 * @param grossProfitUsd over the draws: of the houses done, before overhead
 * @param callbacks repairs owed under the warranty of the houses done, expected
 * @param familyUsd what a family whose house is done pays over its horizon, mean of those houses
 * @param familyExtraUsd how much that is over the families' own plans for the same houses
 * @param crewDays taken on mean days
 */
public record SeasonOutcome(
        Summary housesDone,
        Map<String, Double> byMethod,
        Summary grossProfitUsd,
        double callbacks,
        double familyUsd,
        double familyExtraUsd,
        double crewDays) {
    public SeasonOutcome {
        byMethod = java.util.Collections.unmodifiableMap(new TreeMap<>(byMethod));
    }

    /** A job and how it is done. */
    record Done(WaitingHouse job, JobOption by) {}

    /**
     * Jobs done as they come until the days are over: whichever those are, each is done with the same chance. In a draw in which all jobs
     * take longer, fewer are done.
     *
     * @param done one or more
     */
    static SeasonOutcome of(List<Done> done, int crewDays) {
        int draws = done.get(0).by().paceDraws().length;
        double[] days = new double[draws];
        double[] gross = new double[draws];
        double meanDays = 0;
        for (Done each : done) {
            each.by().addDays(days);
            meanDays += each.by().crewDays();
            double[] grossOfJob = each.by().grossDrawsUsd();
            for (int d = 0; d < draws; d++) {
                gross[d] += grossOfJob[d];
            }
        }
        double[] houses = new double[draws];
        for (int d = 0; d < draws; d++) {
            double share = share(crewDays, days[d]);
            houses[d] = share * done.size();
            gross[d] *= share;
        }
        return of(done, share(crewDays, meanDays), meanDays, Summary.of(houses), Summary.of(gross));
    }

    private static double share(int crewDays, double days) {
        return days <= crewDays ? 1 : crewDays / days;
    }

    private static SeasonOutcome of(List<Done> done, double share, double meanDays, Summary houses, Summary gross) {
        Map<String, Double> by = new TreeMap<>();
        double callbacks = 0;
        double family = 0;
        double extra = 0;
        for (Done each : done) {
            by.merge(each.by().by(), share, Double::sum);
            callbacks += share * each.by().callbacks();
            family += each.by().familyUsd() / done.size();
            extra += (each.by().familyUsd() - each.job().family().familyUsd()) / done.size();
        }
        return new SeasonOutcome(houses, by, gross, callbacks, family, extra, share * meanDays);
    }

    /** No job is done. */
    static SeasonOutcome none() {
        Summary zero = new Summary(0, 0, 0, 0);
        return new SeasonOutcome(zero, Map.of(), zero, 0, 0, 0, 0);
    }

    /** The jobs that a mix does. */
    static List<Done> done(List<WaitingHouse> jobs, List<java.util.Optional<JobOption>> mix) {
        List<Done> done = new ArrayList<>();
        for (int j = 0; j < mix.size(); j++) {
            if (mix.get(j).isPresent()) {
                done.add(new Done(jobs.get(j), mix.get(j).get()));
            }
        }
        return done;
    }
}
