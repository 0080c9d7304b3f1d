package counterbench.shell.rack;

import counterbench.acts.rack.Board;
import counterbench.acts.rack.BoardLine;
import counterbench.cores.CoreState;
import counterbench.shared.Minutes;
import counterbench.shared.Site;
import counterbench.shell.Invocation;
import counterbench.shell.print.Column;
import counterbench.shell.print.Format;
import counterbench.shell.print.Rows;
import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** Writes the living board: as a table for people, whole for programs. */
final class RackRows {
    private static final List<Integer> DAYS_AHEAD = List.of(7, 14, 30);

    private RackRows() {}

    static void write(Invocation in, Site site, Instant now, Board board) {
        if (in.format() == Format.TABLE) {
            new RackTable(site, now).write(in, board);
        } else {
            writeAll(in, site, now, board);
        }
        in.tell(states(board));
        in.tell(risk(board, site, site.dayOf(now)));
    }

    private static void writeAll(Invocation in, Site site, Instant now, Board board) {
        try (Rows rows =
                in.rows(
                        Column.text("core"),
                        Column.text("job"),
                        Column.text("campaign"),
                        Column.text("state"),
                        Column.text("since"),
                        Column.text("next"),
                        Column.text("drains_until"),
                        Column.number("minutes_left"),
                        Column.number("drain_minutes"),
                        Column.number("plugs"),
                        Column.number("plugs_required"),
                        Column.text("ship_by"),
                        Column.number("days_left"),
                        Column.number("charge"),
                        Column.text("shipment"),
                        Column.text("findings"),
                        Column.text("yard"))) {
            board.lines().forEach(line -> add(rows, site, now, line));
        }
    }

    private static void add(Rows rows, Site site, Instant now, BoardLine line) {
        rows.add(
                line.core(),
                line.job(),
                line.campaign(),
                line.status().state().word(),
                site.wallTime(line.status().since()),
                line.next().words(),
                line.drainsUntil() == null ? null : site.wallTime(Minutes.over(line.drainsUntil())),
                line.minutesLeft(now).orElse(null),
                line.drained() == null ? null : Minutes.number(line.drained()),
                line.plugs(),
                line.plugsRequired(),
                line.shipBy(),
                line.daysLeft(site.dayOf(now)).orElse(null),
                line.charge(),
                line.shipment(),
                findings(line),
                line.where().isGone() ? null : line.where().site());
    }

    /** What is found about a core, in one cell. */
    static String findings(BoardLine line) {
        return line.findings().stream()
                .map(f -> f.rule().severity().word() + " " + f.rule().word())
                .collect(Collectors.joining(", "));
    }

    private static String states(Board board) {
        Map<CoreState, Integer> states = board.byState();
        int all = board.lines().size();
        String counts =
                states.entrySet().stream()
                        .map(e -> e.getValue() + " " + e.getKey().word())
                        .collect(Collectors.joining(", "));
        return all == 0 ? "no cores" : (all == 1 ? "1 core: " : all + " cores: ") + counts;
    }

    private static String risk(Board board, Site site, LocalDate today) {
        String ahead =
                DAYS_AHEAD.stream()
                        .map(
                                days ->
                                        words(board.within(days, today), site)
                                                + " in "
                                                + days
                                                + " days")
                        .collect(Collectors.joining(", "));
        return "charges at risk: " + words(board.late(today), site) + " late already; " + ahead;
    }

    private static String words(Board.AtRisk risk, Site site) {
        return money(risk.charge(), site)
                + (risk.cores() == 1 ? " (1 core)" : " (" + risk.cores() + " cores)");
    }

    /** An amount of the site's money. */
    static String money(BigDecimal amount, Site site) {
        return amount.setScale(Math.max(amount.scale(), site.currency().getDefaultFractionDigits()))
                        .toPlainString()
                + " "
                + site.currency().getCurrencyCode();
    }
}
