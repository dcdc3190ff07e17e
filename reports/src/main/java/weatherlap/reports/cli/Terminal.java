package weatherlap.reports.cli;

import java.io.PrintWriter;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import weatherlap.reports.output.Messages;

/**
 * Messages on the streams of a command line.
 *
 * @param out for results
 * @param err for everything else
 * @param quiet whether notes and the progress bar are left out
 */
record Terminal(PrintWriter out, PrintWriter err, boolean quiet) implements Messages {
    @Override
    public void note(String line) {
        if (!quiet) {
            err.println(Terminals.plain(line));
            err.flush();
        }
    }

    @Override
    public void result(String line) {
        out.println(Terminals.plain(line));
        out.flush();
    }

    @Override
    public Progress progress(String task, int steps) {
        // a console is there only when neither standard input nor output is redirected
        return quiet || steps == 1 || System.console() == null ? new Silent() : Bar.of(task, steps);
    }

    private static final class Silent implements Progress {
        @Override
        public void step() {
            // nobody is looking
        }

        @Override
        public void close() {
            // nothing was shown
        }
    }

    private record Bar(ProgressBar bar) implements Progress {
        static Bar of(String task, int steps) {
            return new Bar(new ProgressBarBuilder()
                    .setRenderer((state, width) ->
                            ProgressLine.of(task, state.getCurrent(), steps, state.getTotalElapsed(), width))
                    .setUpdateIntervalMillis(200)
                    .clearDisplayOnFinish()
                    .build());
        }

        @Override
        public void step() {
            bar.step();
        }

        @Override
        public void close() {
            bar.close();
        }
    }
}
