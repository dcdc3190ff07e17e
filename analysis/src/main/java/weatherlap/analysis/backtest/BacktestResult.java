package weatherlap.analysis.backtest;

import java.util.ArrayList;
import java.util.List;

/**
 * What was foreseen beside what happened.
 *
 * @param jobs read
 * @param parts they were foreseen in
 * @param measured jobs whose house stands in the portfolio
 * @param trials in the order of the jobs
 * @param scores by amount and seer, in their order; amounts that no job kept are left out
 * @param curves likewise
 * @param segments bias of the tables and the calibrated ones by kind of job
 */
public record BacktestResult(
        int jobs,
        int parts,
        int measured,
        List<Trial> trials,
        List<Score> scores,
        List<CalibrationCurve> curves,
        List<SegmentBias> segments) {
    public BacktestResult {
        trials = List.copyOf(trials);
        scores = List.copyOf(scores);
        curves = List.copyOf(curves);
        segments = List.copyOf(segments);
    }

    static BacktestResult of(int jobs, int parts, int measured, List<Trial> trials) {
        List<Score> scores = new ArrayList<>();
        List<CalibrationCurve> curves = new ArrayList<>();
        List<SegmentBias> segments = new ArrayList<>();
        for (JobAmount amount : JobAmount.values()) {
            List<Trial> own =
                    trials.stream().filter(trial -> trial.amount() == amount).toList();
            if (own.isEmpty()) {
                continue;
            }
            for (Seer seer : Seer.values()) {
                scores.add(Score.of(own, seer));
                curves.add(CalibrationCurve.of(own, seer));
                segments.addAll(SegmentBias.of(own, seer));
            }
        }
        return new BacktestResult(jobs, parts, measured, trials, scores, curves, segments);
    }

    /** Amounts that jobs kept. */
    public List<JobAmount> amounts() {
        return scores.stream().map(Score::amount).distinct().toList();
    }

    /** @throws java.util.NoSuchElementException where no job kept the amount */
    public Score score(JobAmount amount, Seer seer) {
        return scores.stream()
                .filter(score -> score.amount() == amount && score.seer() == seer)
                .findFirst()
                .orElseThrow();
    }
}
