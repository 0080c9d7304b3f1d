package counterbench.shell;

import counterbench.shared.Progress;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.Locale;
import java.util.function.LongSupplier;

/** One line on a terminal: what is done, how far, how fast and for how long yet. */
final class ProgressLine implements Progress {
    private static final long BETWEEN = Duration.ofMillis(200).toNanos();
    private static final double SECOND = 1e9;

    private final PrintWriter screen;
    private final boolean shown;
    private final int width;
    private final Stop stop;
    private final LongSupplier nanos;
    private String what = "";
    private long total;
    private long done;
    private long begun;
    private long written;
    private int length;

    ProgressLine(
            PrintWriter screen, boolean shown, int width, Stop stop, LongSupplier nanoseconds) {
        this.screen = screen;
        this.shown = shown;
        this.width = width;
        this.stop = stop;
        this.nanos = nanoseconds;
    }

    @Override
    public void begin(String newWhat, long newTotal) {
        stop.check();
        what = newWhat;
        total = newTotal;
        done = 0;
        begun = nanos.getAsLong();
        written = begun;
    }

    @Override
    public void step(long count) {
        stop.check();
        done += count;
        if (!shown) {
            return;
        }
        long now = nanos.getAsLong();
        if (now - written >= BETWEEN) {
            written = now;
            write(text(now - begun));
        }
    }

    private String text(long elapsed) {
        double rate = done * SECOND / Math.max(1, elapsed);
        String count =
                total > 0
                        ? String.format(Locale.ROOT, "%,d of %,d", done, total)
                        : String.format(Locale.ROOT, "%,d", done);
        return String.format(
                Locale.ROOT, "%s: %s, %,.0f a second%s", what, count, rate, left(rate));
    }

    private String left(double rate) {
        if (total <= done || rate <= 0) {
            return "";
        }
        Duration left = Duration.ofSeconds((long) Math.ceil((total - done) / rate));
        return String.format(Locale.ROOT, ", %d:%02d left", left.toMinutes(), left.toSecondsPart());
    }

    private void write(String text) {
        String fitting = text.length() < width ? text : text.substring(0, Math.max(0, width - 1));
        screen.print("\r" + fitting + " ".repeat(Math.max(0, length - fitting.length())));
        screen.flush();
        length = fitting.length();
    }

    /** Takes the line off the screen. */
    void clear() {
        if (length > 0) {
            screen.print("\r" + " ".repeat(length) + "\r");
            screen.flush();
            length = 0;
        }
    }
}
