package weatherlap.reports.callbacks;

import java.awt.Color;
import java.util.ArrayList;
import java.util.List;
import weatherlap.analysis.callbacks.CallbackFit;
import weatherlap.analysis.callbacks.KaplanMeier;
import weatherlap.analysis.callbacks.LevelFit;
import weatherlap.analysis.words.Numbers;
import weatherlap.charts.kit.MethodStyle;
import weatherlap.charts.kit.Picture;
import weatherlap.charts.kit.Tone;
import weatherlap.charts.study.Curves;
import weatherlap.charts.study.SeenCalls;

/** Calls seen and expected, how the records move the level, and how long jobs go without a call. */
record CallbackPictures(CallbackFit fit) {
    private static final int POINTS = 80;

    List<Picture> all() {
        return List.of(seen(), levels(), waiting());
    }

    private String scope() {
        return Numbers.count(fit.jobs().size(), "job", "jobs") + ", "
                + Numbers.count(fit.calls(), "leak call", "leak calls");
    }

    private Picture seen() {
        return new SeenCalls(
                scope(),
                fit.seen().stream()
                        .map(row -> new SeenCalls.Row(
                                row.factor().equals("method") ? row.level() : row.factor() + ": " + row.level(),
                                row.seen(),
                                row.expected(),
                                row.fitted()))
                        .toList());
    }

    private Picture levels() {
        double most = fit.methods().values().stream()
                .mapToDouble(m -> 1.5 * m.level().high())
                .reduce(2.5, Math::max);
        List<Double> x = new ArrayList<>();
        for (int i = 1; i <= POINTS; i++) {
            x.add(most * i / POINTS);
        }
        List<Curves.Curve> curves = new ArrayList<>();
        LevelFit before = LevelFit.of(List.of(new LevelFit.Group(List.of())), fit.prior());
        curves.add(curve(
                "before",
                Tone.MUTED.color(),
                true,
                x,
                x.stream().map(v -> before.density(0, v)).toList()));
        fit.methods().forEach((method, level) -> {
            MethodStyle style = MethodStyle.of(method);
            curves.add(curve(
                    method.label(),
                    style.color(),
                    false,
                    x,
                    x.stream()
                            .map(v -> fit.levels().density(method.ordinal(), v))
                            .toList()));
        });
        StringBuilder message = new StringBuilder("Before the records the level is 1, wide.");
        fit.methods().values().forEach(m -> message.append(" After them ")
                .append(m.method().label())
                .append(" stands at ")
                .append(Numbers.plain(m.level().mean(), 2))
                .append(" (")
                .append(Numbers.plain(m.level().low(), 2))
                .append(" to ")
                .append(Numbers.plain(m.level().high(), 2))
                .append(")."));
        return new Curves(
                "leak-level",
                "How the records move the level of the leaks",
                scope(),
                message.toString(),
                "calls over those that the tables expect",
                "density",
                false,
                curves);
    }

    private Picture waiting() {
        List<Curves.Curve> curves = new ArrayList<>();
        StringBuilder message = new StringBuilder();
        fit.methods().forEach((method, level) -> {
            MethodStyle style = MethodStyle.of(method);
            double longest = longest(level);
            steps(style, level, longest, curves);
            List<Double> x = new ArrayList<>();
            for (int i = 0; i <= POINTS; i++) {
                x.add(longest * i / POINTS);
            }
            List<Double> model = x.stream()
                    .map(t -> level.withoutCall(t, fit.lagYears().mean()))
                    .toList();
            curves.add(curve(method.label() + ", by the fit", style.color(), true, x, model));
            message.append(message.isEmpty() ? "" : " ")
                    .append("After ")
                    .append(Numbers.plain(longest, 1))
                    .append(" years ")
                    .append(Numbers.percent(level.waiting().at(longest), 0))
                    .append(" of the jobs by ")
                    .append(method.label())
                    .append(" had no leak call; the fit expects ")
                    .append(Numbers.percent(model.get(POINTS), 0))
                    .append(".");
        });
        return new Curves(
                "without-a-call",
                "Jobs without a leak call, by years since the work",
                scope(),
                message.toString(),
                "years since the work",
                "share of jobs without a leak call",
                true,
                curves);
    }

    private double longest(CallbackFit.MethodLevel level) {
        return fit.jobs().stream()
                .filter(job -> job.job().method() == level.method())
                .mapToDouble(job -> job.years())
                .reduce(0.1, Math::max);
    }

    private static void steps(
            MethodStyle style, CallbackFit.MethodLevel level, double longest, List<Curves.Curve> curves) {
        List<Double> x = new ArrayList<>(List.of(0.0));
        List<Double> y = new ArrayList<>(List.of(1.0));
        for (KaplanMeier.Step step : level.waiting().steps()) {
            x.add(step.time());
            y.add(y.get(y.size() - 1));
            x.add(step.time());
            y.add(step.survival());
        }
        x.add(longest);
        y.add(y.get(y.size() - 1));
        curves.add(curve(level.method().label() + ", seen", style.color(), false, x, y));
    }

    private static Curves.Curve curve(String label, Color color, boolean dashed, List<Double> x, List<Double> y) {
        return new Curves.Curve(label, color, dashed, x, y);
    }
}
