package counterbench.intake;

import counterbench.campaign.PartUnit;
import counterbench.facts.FactKind;
import counterbench.facts.FactRow;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** Checks what a row says and names. */
public final class RowCheck {
    private static final List<String> PART_HEADINGS = List.of("part", "kit_part");

    private final Names names;

    public RowCheck(Names names) {
        this.names = names;
    }

    /** Everything that is wrong with a row. */
    public List<Complaints.Complaint> check(FactRow row) {
        return check(row, Set.of());
    }

    /**
     * Everything else that is wrong with a row.
     *
     * @param unread headings of cells that could not be read; nothing follows from these
     */
    public List<Complaints.Complaint> check(FactRow row, Set<String> unread) {
        Complaints complaints = new Complaints(row, names.zone(), unread);
        checkNames(row, complaints);
        checkPieces(row, complaints);
        checkCurrency(row, complaints);
        switch (row.kind()) {
            case JOBS -> new JobCheck(names).check(row, complaints);
            case ISSUES, USES -> HardwareCheck.check(row, names, complaints);
            case MARKS -> new MarkCheck(names).check(row, complaints);
            case CORES -> {
                CoreCheck.check(row, names, complaints);
                checkWeight(row, complaints);
            }
            case MOVES, COUNTS, RECEIPTS, KITS -> StockCheck.check(row, names, complaints);
            case ORDERS -> positive(row, "quantity", complaints);
            case CLAIMS -> {
                checkOrder(row, "submitted_on", "withdrawn_on", complaints);
                checkOrder(row, "submitted_on", "denied_on", complaints);
                checkReplaced(row, complaints);
            }
            case PARTS_LIST -> checkUnit(row, complaints);
            case CALIBRATIONS -> checkOrder(row, "calibrated_on", "due_on", complaints);
            case SHIPMENTS -> checkWeight(row, complaints);
            case CREDITS -> checkReversal(row, complaints);
            default -> {
                // Its cells are all there is to check.
            }
        }
        return complaints.all();
    }

    private void checkNames(FactRow row, Complaints complaints) {
        checkPerson(row, "by", complaints);
        checkPerson(row, "technician", complaints);
        for (String heading : PART_HEADINGS) {
            String part = row.kind().find(heading).isPresent() ? row.text(heading) : null;
            if (part != null && row.kind() != FactKind.PARTS_LIST && !names.isPart(part)) {
                complaints.of(
                        heading,
                        "no loaded pack and no list of parts names it",
                        "load its campaign's pack, or import it with a sheet called parts");
            }
        }
        if (row.kind().find("campaign").isPresent()) {
            checkCampaign(row, complaints);
        }
        if (row.kind().find("job").isPresent() && row.kind() != FactKind.JOBS) {
            checkJob(row, complaints);
        }
    }

    private void checkPerson(FactRow row, String heading, Complaints complaints) {
        String person = row.kind().find(heading).isPresent() ? row.text(heading) : null;
        if (person != null && !names.isPerson(person)) {
            complaints.of(
                    heading,
                    "nobody of that name is known",
                    "add the person, or import the name with a sheet called people");
        }
    }

    private void checkCampaign(FactRow row, Complaints complaints) {
        String campaign = row.text("campaign");
        if (campaign != null && names.revisions(campaign).isEmpty()) {
            complaints.of(
                    "campaign", "no loaded pack has it", "load its pack first: campaign load FILE");
        }
    }

    private void checkJob(FactRow row, Complaints complaints) {
        String job = row.text("job");
        if (job != null && names.campaignOf(job).isEmpty()) {
            complaints.of(
                    "job",
                    "there is no such job",
                    "correct the name, or import the job with a sheet called jobs");
        }
    }

    /** Nobody fits half a bolt. The quantity of a core's row is one of plugs. */
    private void checkPieces(FactRow row, Complaints complaints) {
        boolean ofPart =
                row.kind() != FactKind.CORES
                        && row.kind().find("part").isPresent()
                        && row.kind().find("quantity").isPresent();
        @Nullable String part = ofPart ? row.text("part") : null;
        @Nullable BigDecimal quantity = ofPart ? row.decimal("quantity") : null;
        if (part != null && quantity != null && isBroken(part, quantity, names)) {
            complaints.of(
                    "quantity",
                    "is no whole number, and " + part + " is counted in pieces",
                    "write how many pieces");
        }
    }

    /** Whether a quantity of a known part would break one of its pieces. */
    static boolean isBroken(String part, BigDecimal quantity, Names names) {
        boolean whole = quantity.stripTrailingZeros().scale() <= 0;
        return !whole && names.isPart(part) && names.isCounted(part);
    }

    private void checkUnit(FactRow row, Complaints complaints) {
        String part = row.text("part");
        String unit = row.text("unit");
        if (part == null || unit == null) {
            return;
        }
        names.packedUnit(part)
                .map(PartUnit::word)
                .filter(packed -> !packed.equals(unit))
                .ifPresent(
                        packed ->
                                complaints.of(
                                        "unit",
                                        "a loaded pack has " + part + " in " + packed,
                                        "write "
                                                + packed
                                                + ": a part is kept in one unit everywhere"));
    }

    private void checkCurrency(FactRow row, Complaints complaints) {
        String currency = row.kind().find("currency").isPresent() ? row.text("currency") : null;
        if (currency != null && !currency.equalsIgnoreCase(names.currency())) {
            complaints.of(
                    "currency",
                    "the site counts its money in " + names.currency(),
                    "convert the amount and write " + names.currency());
        }
    }

    private static void checkOrder(
            FactRow row, String earlier, String later, Complaints complaints) {
        LocalDate first = row.date(earlier);
        LocalDate last = row.date(later);
        if (first != null && last != null && last.isBefore(first)) {
            complaints.of(later, "lies before " + earlier, "exchange or correct the two days");
        }
    }

    /** An earlier claim may be from before the books began, and so need not be known. */
    private static void checkReplaced(FactRow row, Complaints complaints) {
        String replaced = row.text("replaces");
        if (replaced != null && replaced.equals(row.text("claim"))) {
            complaints.of("replaces", "a claim cannot replace itself", "name the earlier claim");
        }
    }

    private static void checkWeight(FactRow row, Complaints complaints) {
        if (row.get("weight") != null && complaints.isEmpty("weight_unit")) {
            complaints.of("weight", "has no unit", "write kg or lb under weight_unit");
        }
        positive(row, "weight", complaints);
    }

    /** A line that takes money back bears it below zero, or it would count as money that came. */
    private static void checkReversal(FactRow row, Complaints complaints) {
        boolean takesBack = "reversal".equals(row.text("kind"));
        BigDecimal amount = row.decimal("amount");
        if (takesBack && amount != null && amount.signum() >= 0) {
            complaints.of(
                    "amount",
                    "is not below zero, and a reversal takes back what was paid",
                    "write it below zero, such as -912.71; if it is money that came, correct the"
                            + " kind");
        }
    }

    /** Complains of a number that is said and is not above zero. */
    static void positive(FactRow row, String heading, Complaints complaints) {
        @Nullable BigDecimal number = row.decimal(heading);
        if (number != null && number.signum() <= 0) {
            complaints.of(heading, "is not above zero", "write how much it was");
        }
    }

    /** Complains of a cell that says nothing and must. */
    static void needed(FactRow row, String heading, String because, Complaints complaints) {
        if (row.get(heading) == null) {
            complaints.of(heading, "is empty", because);
        }
    }
}
