package counterbench.shell.rack;

import counterbench.acts.rack.Board;
import counterbench.acts.rack.BoardLine;
import counterbench.acts.rack.NextStep;
import counterbench.cores.Whereabouts;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Rows;
import java.time.Duration;
import java.time.Instant;
import java.util.stream.Stream;

/** The living board as people see it, one line a core, narrow enough for most terminals. */
public final class RackTable {
    private static final Column[] COLUMNS = {
        Column.text("core"),
        Column.text("state"),
        Column.text("since").asSpare(),
        Column.text("next"),
        Column.text("plugs"),
        Column.number("days_left"),
        Column.number("charge").asSpare(),
        Column.text("findings")
    };
    private final Site site;
    private final Instant now;

    /**
     * The board of a site.
     *
     * @param now the moment at which it stands so
     */
    public RackTable(Site site, Instant now) {
        this.site = site;
        this.now = now;
    }

    /** Writes the whole of a board. */
    public void write(Invocation in, Board board) {
        try (Rows rows = in.rows(COLUMNS)) {
            rows.section(
                    "Cores of " + site.site() + ", " + site.wallTime(now),
                    Stream.of(COLUMNS).map(Column::key).toArray(String[]::new));
            board.lines().forEach(line -> add(rows, line));
        }
    }

    private void add(Rows rows, BoardLine line) {
        rows.add(
                line.core(),
                line.status().state().word(),
                since(line.status().since()),
                next(line),
                plugs(line),
                line.daysLeft(site.dayOf(now)).orElse(null),
                line.charge(),
                RackRows.findings(line));
    }

    /** The time of today, the day of what was before. */
    private String since(Instant at) {
        return isToday(at) ? timeOfDay(at) : site.dayOf(at).toString();
    }

    private boolean isToday(Instant at) {
        return site.dayOf(at).equals(site.dayOf(now));
    }

    private String timeOfDay(Instant at) {
        return site.wallTime(at).substring(site.dayOf(at).toString().length() + 1);
    }

    private String next(BoardLine line) {
        String words = line.next().words();
        if (line.next() == NextStep.WAIT && line.drainsUntil() != null) {
            words += drain(line, line.drainsUntil());
        } else if (line.next() == NextStep.SHIP) {
            words += " " + line.shipment();
        }
        return words + yard(line.where());
    }

    /** Another yard, where it lies in one or is to arrive. */
    private String yard(Whereabouts where) {
        boolean here = where.isIn(Whereabouts.Place.IN_YARD, site.site());
        return here || where.isGone() ? "" : " at " + where.site();
    }

    private String drain(BoardLine line, Instant until) {
        return " %s, until %s"
                .formatted(
                        Minutes.text(Duration.ofMinutes(line.minutesLeft(now).orElse(0L))),
                        isToday(until) ? timeOfDay(until) : site.wallTime(until));
    }

    private static String plugs(BoardLine line) {
        return line.plugsRequired() == null
                ? String.valueOf(line.plugs())
                : line.plugs() + " of " + line.plugsRequired();
    }
}
