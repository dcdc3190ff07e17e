package weatherlap.reports.calibrate;

import weatherlap.analysis.calibration.FittedJob;
import weatherlap.analysis.words.Numbers;

/** Why the hours of a job were set aside: which number contradicts which, and what it looks like where that is plain. */
final class AsideText {
    /** How far a ratio may be from a half, a third or ten and still be called so: a sixth of a crew of two's (judgement). */
    private static final double ABOUT = Math.log(7 / 6.0);

    private AsideText() {}

    static String of(FittedJob job) {
        return switch (job.aside()) {
            case NOT -> "not set aside";
            case TIMINGS ->
                "its timed steps add up to " + hours(job.timedHours()) + " person-hours, person_hours says "
                        + hours(job.actualHours()) + looks(job.actualHours() / job.timedHours());
            case REST ->
                "its hours leave " + hours(job.actualHours() - job.timedHours())
                        + " for the steps that were not timed, which take " + hours(job.restHours()) + " in such a job";
            case WHOLE ->
                "took " + hours(job.actualHours()) + " person-hours where such a job by this crew takes "
                        + hours(job.fittedHours()) + looks(job.actualHours() / job.fittedHours());
        };
    }

    private static String looks(double ratio) {
        if (isAbout(ratio, 0.5)) {
            return ": about half, as if hours of the clock were written for a crew of two";
        }
        if (isAbout(ratio, 1 / 3.0)) {
            return ": about a third, as if hours of the clock were written for a crew of three";
        }
        if (isAbout(ratio, 2)) {
            return ": about twice, as if two jobs or a job and its callback were written as one";
        }
        return isAbout(ratio, 10) || isAbout(ratio, 0.1)
                ? ": about " + (ratio < 1 ? "a tenth" : "ten times") + ", as if the decimal point were in another place"
                : "";
    }

    private static boolean isAbout(double ratio, double expected) {
        return Math.abs(Math.log(ratio / expected)) <= ABOUT;
    }

    private static String hours(double hours) {
        return Numbers.plain(hours, 1);
    }
}
