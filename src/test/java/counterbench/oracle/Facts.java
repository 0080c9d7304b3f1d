package counterbench.oracle;

import java.math.BigDecimal;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the paper says up to the as-of instant, each kind in the order of time, then of rows. */
final class Facts {

    final Map<String, Job> jobs = new LinkedHashMap<>();
    final Map<String, Kit> kits = new LinkedHashMap<>();
    final List<Receipt> receipts = new ArrayList<>();
    final List<Movement> movements = new ArrayList<>();
    final List<Issue> issues = new ArrayList<>();
    final List<Use> uses = new ArrayList<>();
    final List<Mark> marks = new ArrayList<>();
    final List<CoreEvent> coreEvents = new ArrayList<>();
    final List<Acknowledgement> acknowledgements = new ArrayList<>();
    final List<Count> counts = new ArrayList<>();
    final Map<String, Claim> claims = new LinkedHashMap<>();
    final List<Credit> credits = new ArrayList<>();
    final Map<String, Map<String, Map<String, String>>> vehicles = new LinkedHashMap<>();
    final Map<String, String> instrumentUnits = new LinkedHashMap<>();
    final List<Calibration> calibrations = new ArrayList<>();
    final Map<String, String> partUnits = new LinkedHashMap<>();

    /** Something that happened at a time; line breaks ties. */
    interface Fact {
        Instant at();

        int line();
    }

    record Job(
            String job,
            String campaign,
            String vin,
            Instant openedAt,
            Optional<Instant> endedAt,
            String outcome,
            String redoOf) {

        boolean completed() {
            return endedAt.isPresent() && outcome.equals("completed");
        }

        boolean abandoned() {
            return endedAt.isPresent() && outcome.equals("abandoned");
        }
    }

    record Kit(
            String kit,
            String kitPart,
            Instant at,
            String revision,
            Optional<LocalDate> expiresOn,
            Map<String, BigDecimal> missing,
            int line)
            implements Fact {}

    record Receipt(
            String part,
            BigDecimal quantity,
            Instant at,
            String lot,
            Optional<LocalDate> expiresOn,
            int line)
            implements Fact {}

    record Movement(
            String event,
            Instant at,
            String kit,
            String part,
            Optional<BigDecimal> quantity,
            String otherSite,
            int line)
            implements Fact {}

    record Issue(
            String job,
            Instant at,
            String kit,
            String part,
            BigDecimal quantity,
            String lot,
            int line)
            implements Fact {}

    record Use(
            String job,
            String part,
            BigDecimal quantity,
            String condition,
            Instant at,
            String kit,
            String lot,
            String core,
            String was,
            int line)
            implements Fact {}

    record Mark(
            String job,
            String step,
            Instant at,
            Optional<BigDecimal> value,
            String unit,
            int fastener,
            BigDecimal minutes,
            String instrument,
            int line)
            implements Fact {}

    record CoreEvent(
            String core,
            String event,
            Instant at,
            String job,
            String serial,
            String part,
            BigDecimal quantity,
            String packaging,
            String shipment,
            int line)
            implements Fact {}

    record Acknowledgement(
            String shipment, Instant at, String event, String core, String serial, int line)
            implements Fact {}

    record Count(Instant at, String part, String kit, BigDecimal quantity, int line)
            implements Fact {}

    record Claim(
            String claim,
            String job,
            LocalDate submittedOn,
            BigDecimal total,
            Optional<LocalDate> withdrawnOn,
            Optional<LocalDate> deniedOn) {

        boolean stands() {
            return withdrawnOn.isEmpty() && deniedOn.isEmpty();
        }
    }

    record Credit(
            String remittance,
            String line,
            BigDecimal amount,
            LocalDate paidOn,
            String claim,
            String vin,
            String core,
            String serial,
            String kind) {}

    record Calibration(
            String instrument,
            LocalDate calibratedOn,
            LocalDate dueOn,
            Optional<BigDecimal> percent,
            Optional<BigDecimal> absolute) {}
}
