package counterbench.acts.scan;

import counterbench.acts.Situation;
import counterbench.acts.Stamp;
import counterbench.campaign.Pack;
import counterbench.campaign.Packs;
import counterbench.campaign.Vehicle;
import counterbench.campaign.yaml.PackReader;
import counterbench.cores.CoreEvent;
import counterbench.cores.CoreStory;
import counterbench.job.Job;
import counterbench.job.Outcome;
import counterbench.procedure.Calibration;
import counterbench.procedure.Instrument;
import counterbench.procedure.Mark;
import counterbench.review.Component;
import counterbench.review.JobFile;
import counterbench.review.Terms;
import counterbench.shared.Address;
import counterbench.shared.Quantity;
import counterbench.stock.Issue;
import counterbench.stock.Kit;
import counterbench.stock.LedgerFacts;
import counterbench.stock.ReceivedKit;
import counterbench.stock.Use;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * Job J-7 of the transfer pump's campaign at its bench, told fact by fact, a minute after the
 * other. Its vehicle is listed as an automatic; kit K-9 is on the shelf.
 */
final class BenchStory {
    static final String JOB = "J-7";
    static final int YEAR = 2026;
    private static final Pack PACK = pack();
    private static final Instant BEGIN = CoreStory.at("2026-03-05T08:00");

    private final List<ReceivedKit> kits = new ArrayList<>();
    private final List<Issue> issues = new ArrayList<>();
    private final List<Use> uses = new ArrayList<>();
    private final List<Mark> marks = new ArrayList<>();
    private final List<CoreEvent> cores = new ArrayList<>();
    private Map<String, String> attributes = Map.of("transmission", "automatic");
    private @Nullable Instant completedAt;
    private int line;

    private static Pack pack() {
        try (InputStream yaml =
                BenchStory.class.getResourceAsStream("/counterbench/campaign/transfer-pump.yaml")) {
            byte[] bytes = Objects.requireNonNull(yaml).readAllBytes();
            return PackReader.read(new String(bytes, StandardCharsets.UTF_8), "pack.yaml")
                    .packOrRefuse();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    BenchStory listedAs(Map<String, String> answers) {
        attributes = answers;
        return this;
    }

    /** A kit came, and went to the job. */
    BenchStory issued(String kit) {
        kits.add(received(kit, next()));
        issues.add(new Issue(address(), JOB, next(), kit, null, null, null));
        return this;
    }

    BenchStory fitted(String part, String quantity, String kit) {
        uses.add(
                new Use(
                        address(),
                        JOB,
                        part,
                        Quantity.of(quantity),
                        Use.Condition.NEW,
                        next(),
                        kit,
                        null,
                        null,
                        null,
                        null,
                        null));
        return this;
    }

    /** Plain steps, marked one after the other. */
    BenchStory marked(String... steps) {
        for (String step : steps) {
            mark(step, null, 1, null, null);
        }
        return this;
    }

    /** Readings of one fastener after the other, with an instrument. */
    BenchStory read(String step, @Nullable String instrument, String... values) {
        int fastener = 1;
        for (String value : values) {
            mark(step, value, fastener++, null, instrument);
        }
        return this;
    }

    BenchStory waited(String step, String minutes) {
        mark(step, null, 1, minutes, null);
        return this;
    }

    /** Everything that the procedure asks, as it should be. */
    BenchStory allMarked() {
        return marked("safe", "cold")
                .read("clamp", "W-1", "41", "41", "41", "41")
                .waited("purge", "1")
                .read("banjo", "W-1", "27")
                .read("idle", null, "640")
                .read("closed", null, "0.6")
                .read("open", null, "3.6");
    }

    private void mark(
            String step,
            @Nullable String value,
            int fastener,
            @Nullable String minutes,
            @Nullable String instrument) {
        marks.add(
                new Mark(
                        address(),
                        step,
                        next(),
                        value == null ? null : new BigDecimal(value),
                        null,
                        fastener,
                        minutes == null ? null : new BigDecimal(minutes),
                        instrument,
                        "Otis"));
    }

    BenchStory removed(String core, String serial) {
        cores.add(
                new CoreEvent(
                        address(),
                        core,
                        CoreEvent.Kind.REMOVED,
                        next(),
                        JOB,
                        serial,
                        "QM-4471",
                        null,
                        null,
                        null,
                        null,
                        null));
        return this;
    }

    BenchStory ended() {
        completedAt = next();
        return this;
    }

    private Address address() {
        return new Address(1, ++line);
    }

    private Instant next() {
        return BEGIN.plus(Duration.ofMinutes(++line));
    }

    private static ReceivedKit received(String kit, Instant at) {
        return new ReceivedKit(
                new Kit(
                        new Address(1, 1),
                        kit,
                        "QM-4470-K",
                        at,
                        null,
                        null,
                        null,
                        null,
                        List.of(),
                        Kit.Receiving.NOT_SAID),
                PACK.kits().get(0));
    }

    /** How it stands, with nothing in mind. */
    Bench bench() {
        return with(Mind.EMPTY);
    }

    /** How it stands, with that in mind. */
    Bench with(Mind mind) {
        Instant now = BEGIN.plus(Duration.ofHours(2));
        Situation situation =
                new Situation(
                        CoreStory.SITE,
                        now,
                        terms(),
                        List.of(ofJob(), onShelf()),
                        Map.of(),
                        new NoNames());
        return new Bench(situation, JOB, mind, new Stamp(now, "Otis"));
    }

    private static Terms terms() {
        return new Terms(
                new Packs(List.of(PACK)),
                Set.of(PACK.campaign()),
                Map.of(),
                Map.of(
                        "W-1", instrument("W-1", "N·m", "2027-01-05"),
                        "W-2", instrument("W-2", "lbf·ft", "2027-01-05"),
                        "W-3", instrument("W-3", "N·m", "2026-03-05"),
                        "W-4", instrument("W-4", "N·m", "2026-03-04"),
                        "W-5", new Instrument("W-5", "instrument", "N·m", null, List.of()),
                        "M-1", instrument("M-1", "V", "2027-01-05")),
                Map.of(),
                List.of());
    }

    private static Instrument instrument(String name, String unit, String due) {
        Calibration valid =
                new Calibration(
                        LocalDate.parse("2026-01-05"), LocalDate.parse(due), null, null, null);
        return new Instrument(name, "instrument", unit, null, List.of(valid));
    }

    private Component ofJob() {
        Outcome outcome = completedAt == null ? null : Outcome.COMPLETED;
        String vin = "0LKRF8D41RN004526";
        Job job =
                new Job(
                        7,
                        JOB,
                        PACK.campaign(),
                        vin,
                        BEGIN,
                        null,
                        "Otis",
                        completedAt,
                        outcome,
                        null,
                        null);
        JobFile file =
                new JobFile(
                        7,
                        JOB,
                        job,
                        issues,
                        uses,
                        marks,
                        cores,
                        List.of(),
                        List.of(),
                        List.of(),
                        new Vehicle(PACK.campaign(), vin, null, attributes),
                        List.of());
        LedgerFacts facts =
                new LedgerFacts(
                        kits, List.of(), List.of(), issues, uses, List.of(), List.of(), List.of());
        List<String> names = kits.stream().map(kit -> kit.kit().kit()).toList();
        return new Component(List.of(file), names, facts, Optional.empty());
    }

    private static Component onShelf() {
        LedgerFacts facts =
                new LedgerFacts(
                        List.of(received("K-9", BEGIN)),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of());
        return new Component(List.of(), List.of("K-9"), facts, Optional.empty());
    }

    /** What is in mind after some lines, of which none is recorded. */
    Mind after(String... lines) {
        return Stream.of(lines)
                .reduce(
                        Mind.EMPTY,
                        (mind, said) -> new Turn(with(mind.answered()), YEAR).take(said).mind(),
                        (first, second) -> second);
    }
}
