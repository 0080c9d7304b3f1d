package counterbench.shell.rack;

import counterbench.shell.Larkmere;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.util.ArrayDeque;
import java.util.List;
import java.util.Queue;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * Lines about two cores and a shipment, as a clerk types them who mostly works with care and is
 * disturbed all the time: a line is left out, typed for an earlier time, or followed by another.
 */
final class GateLines {
    private static final Pattern ENTRY = Pattern.compile(": entry (\\d+) of site NORTH");
    private static final DateTimeFormatter WALL =
            DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm").withZone(Larkmere.NORTH.zone());

    /** Of the campaign's required drain period of 18 minutes, all of it, more, less and nothing. */
    private static final List<Integer> MINUTES = List.of(0, 5, 17, 18, 19, 26);

    private final int seed;
    private final Random dice;
    private final Path folder;
    private final Queue<String> coming = new ArrayDeque<>();
    private Instant now;
    private int round;
    private int sheets;
    private @Nullable String newest;

    GateLines(int seed, Path folder) {
        this.seed = seed;
        this.dice = new Random(seed);
        this.folder = folder;
        this.now = Larkmere.AS_OF.plus(Duration.ofDays(seed));
    }

    int seed() {
        return seed;
    }

    Instant now() {
        return now;
    }

    String shipment() {
        return "G-" + seed + "-" + round;
    }

    List<String> removals() {
        return IntStream.rangeClosed(1, 2)
                .mapToObj(
                        no ->
                                "core remove "
                                        + tag(no)
                                        + " --job N-900 --serial G"
                                        + seed
                                        + "0"
                                        + no)
                .toList();
    }

    /** Opens another shipment, before the lines of another round. */
    String opening() {
        round++;
        coming.addAll(round());
        return "shipment open " + shipment() + " --carrier C --tracking T" + seed + round;
    }

    private String tag(int no) {
        return "GC-" + seed + "-" + no;
    }

    private String some() {
        return tag(1 + dice.nextInt(2));
    }

    private List<String> round() {
        String tag = some();
        return List.of(
                "unplug " + tag,
                "drain begin " + tag,
                "drain end " + tag,
                "plug " + tag,
                "pack " + tag + " --packaging carton",
                "shipment add " + shipment() + " " + tag,
                "ship " + shipment(),
                "ship " + shipment());
    }

    /** The next line to type, a few minutes later; null at the end of a round. */
    @Nullable String next() {
        now = now.plus(Duration.ofMinutes(MINUTES.get(dice.nextInt(MINUTES.size()))));
        if (coming.isEmpty()) {
            return null;
        }
        return switch (dice.nextInt(8)) {
            case 0, 1 -> disturbance(some());
            case 2 -> coming.remove() + earlier();
            default -> coming.remove();
        };
    }

    private String disturbance(String tag) {
        List<String> lines =
                List.of(
                        "drain begin " + tag + earlier(),
                        "drain end " + tag + earlier(),
                        "plug " + tag + " " + (1 + dice.nextInt(6)) + earlier(),
                        "unplug " + tag + " " + (1 + dice.nextInt(3)) + earlier(),
                        "core send " + tag + " --to SOUTH",
                        "core arrive " + tag + " --from NORTH --site SOUTH",
                        "core send " + tag + " --to NORTH",
                        "core arrive " + tag + " --site NORTH",
                        "shipment add " + shipment() + " " + tag,
                        "shipment take-off " + shipment() + " " + tag,
                        "ship " + shipment() + earlier(),
                        newest == null ? "plug " + tag : "reverse " + newest,
                        "import " + sheet(tag));
        return lines.get(dice.nextInt(lines.size()));
    }

    private String earlier() {
        return dice.nextInt(3) > 0
                ? ""
                : " --at \"" + WALL.format(now.minus(Duration.ofMinutes(dice.nextInt(40)))) + "\"";
    }

    /** A sheet with a fact that somebody had on paper. */
    private Path sheet(String tag) {
        List<String> events =
                List.of("drain-begun", "drain-ended", "plugged", "unplugged", "packed", "sent");
        String event = events.get(dice.nextInt(events.size()));
        Path sheet = folder.resolve("cores-" + seed + "-" + ++sheets + ".csv");
        String at = now.minus(Duration.ofMinutes(dice.nextInt(40))).toString();
        boolean plugs = event.endsWith("plugged");
        try {
            return Files.writeString(
                    sheet,
                    "core,event,at,quantity,packaging,other_site,by\n"
                            + String.join(
                                    ",",
                                    tag,
                                    event,
                                    at,
                                    plugs ? String.valueOf(1 + dice.nextInt(4)) : "",
                                    event.equals("packed") ? "bag" : "",
                                    event.equals("sent") ? "SOUTH" : "",
                                    "Otis\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Remembers the entry that a line wrote. */
    void saw(String screen) {
        Matcher entry = ENTRY.matcher(screen);
        while (entry.find()) {
            newest = entry.group(1);
        }
    }
}
