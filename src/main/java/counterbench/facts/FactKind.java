package counterbench.facts;

import static counterbench.facts.Column.column;
import static counterbench.facts.Column.date;
import static counterbench.facts.Column.decimal;
import static counterbench.facts.Column.instant;
import static counterbench.facts.Column.note;
import static counterbench.facts.Column.oneOf;
import static counterbench.facts.Column.quantity;
import static counterbench.facts.Column.required;
import static counterbench.facts.Column.text;
import static counterbench.facts.ColumnType.AMOUNT;
import static counterbench.facts.ColumnType.ATTRIBUTES;
import static counterbench.facts.ColumnType.DOCUMENT;
import static counterbench.facts.ColumnType.PARTS;
import static counterbench.facts.ColumnType.ROLES;
import static counterbench.facts.ColumnType.VIN;
import static counterbench.facts.ColumnType.WHOLE;
import static counterbench.facts.Nature.commands;
import static counterbench.facts.Nature.facts;
import static counterbench.facts.Nature.keyed;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;

/**
 * Every kind of fact. The kinds that sheets may hold bear the sheets' names and headings; the last
 * ones are recorded by commands only. Kinds stand in the order in which an import reads them, so
 * that what a row names has been read before it.
 */
public enum FactKind {
    PEOPLE(keyed("name"), required(text("name"), column(ROLES, "roles"))),
    PARTS_LIST(
            keyed("part"), required(text("part"), text("name"), oneOf("unit", "each", "mL", "g"))),
    INSTRUMENTS(
            keyed("instrument"),
            required(text("instrument"), text("kind"), text("unit")),
            text("serial")),
    CALIBRATIONS(
            keyed("instrument", "calibrated_on"),
            required(text("instrument"), date("calibrated_on"), date("due_on")),
            text("certificate"),
            decimal("uncertainty_percent"),
            decimal("uncertainty")),
    RATES(
            keyed("rate", "valid_from"),
            required(
                    oneOf("rate", "labour"),
                    column(AMOUNT, "amount"),
                    text("currency"),
                    date("valid_from"))),
    VEHICLES(
            keyed("campaign", "vin"),
            required(text("campaign"), column(VIN, "vin")),
            text("model"),
            column(ATTRIBUTES, "attributes")),
    ORDERS(
            keyed("order", "part"),
            required(text("order"), text("part"), quantity("quantity"), date("ordered_on")),
            date("expected_on"),
            date("cancelled_on"),
            text("by")),
    KITS(
            keyed("kit"),
            required(text("kit"), text("kit_part"), instant("received_at")),
            text("revision"),
            date("expires_on"),
            text("lot"),
            decimal("unit_cost"),
            text("currency"),
            column(PARTS, "missing"),
            text("document"),
            text("by")),
    SHIPMENTS(
            keyed("shipment"),
            required(text("shipment"), text("carrier"), text("tracking")),
            decimal("weight"),
            oneOf("weight_unit", "kg", "lb"),
            text("by")),
    JOBS(
            keyed("job"),
            required(text("job"), text("campaign"), column(VIN, "vin"), instant("opened_at")),
            text("work_order"),
            text("technician"),
            instant("completed_at"),
            oneOf("outcome", "completed", "not-needed", "abandoned"),
            text("redo_of"),
            column(WHOLE, "mileage")),
    CONTACTS(
            facts("at"),
            required(
                    text("campaign"),
                    column(VIN, "vin"),
                    instant("at"),
                    oneOf("outcome", "reached", "declined", "unreachable", "scrapped", "exported")),
            note("reason"),
            text("by")),
    RECEIPTS(
            facts("received_at"),
            required(text("part"), quantity("quantity"), instant("received_at")),
            text("lot"),
            date("expires_on"),
            decimal("unit_cost"),
            text("currency"),
            text("document"),
            text("by")),
    ISSUES(
            facts("at"),
            required(text("job"), instant("at")),
            text("kit"),
            text("part"),
            quantity("quantity"),
            text("lot"),
            text("by")),
    USES(
            facts("at"),
            required(
                    text("job"),
                    text("part"),
                    quantity("quantity"),
                    oneOf("condition", Words.OF_USES),
                    instant("at")),
            text("kit"),
            text("lot"),
            text("core"),
            oneOf("was", "new", "reused"),
            text("by"),
            note("reason")),
    MARKS(
            facts("at"),
            required(text("job"), text("step"), instant("at")),
            decimal("value"),
            text("unit"),
            column(WHOLE, "fastener"),
            decimal("minutes"),
            text("instrument"),
            text("by")),
    CORES(
            facts("at"),
            required(text("core"), oneOf("event", Words.OF_CORES), instant("at")),
            text("job"),
            text("serial"),
            text("part"),
            quantity("quantity"),
            text("packaging"),
            text("shipment"),
            note("reason"),
            text("by"),
            decimal("weight"),
            oneOf("weight_unit", "kg", "lb"),
            text("other_site")),
    MOVES(
            facts("at"),
            required(
                    oneOf("event", "returned", "scrapped", "short", "sent", "arrived"),
                    instant("at")),
            text("kit"),
            text("part"),
            quantity("quantity"),
            text("lot"),
            text("other_site"),
            text("document"),
            note("reason"),
            text("by")),
    ACKNOWLEDGEMENTS(
            facts("at"),
            required(
                    text("shipment"),
                    instant("at"),
                    oneOf("event", "received", "accepted", "rejected")),
            text("core"),
            text("serial"),
            note("reason"),
            text("by")),
    COUNTS(
            facts("counted_at"),
            required(instant("counted_at"), quantity("quantity")),
            text("part"),
            text("kit"),
            text("by")),
    CLAIMS(
            keyed("claim"),
            required(text("claim"), text("job"), date("submitted_on")),
            decimal("labour_hours"),
            column(AMOUNT, "labour_amount"),
            column(AMOUNT, "parts_amount"),
            column(AMOUNT, "core_charge"),
            text("currency"),
            date("withdrawn_on"),
            date("denied_on"),
            note("reason"),
            text("replaces"),
            text("by")),
    CREDITS(
            keyed("remittance", "line"),
            required(text("remittance"), text("line"), column(AMOUNT, "amount"), date("paid_on")),
            text("claim"),
            column(VIN, "vin"),
            text("core"),
            text("serial"),
            text("currency"),
            oneOf("kind", "claim", "core", "reversal")),

    /** A site's name, zone, currency, patience, GS1 company prefix and limit a shipment. */
    SITES(
            commands(),
            required(text("site"), text("name"), text("zone"), text("currency")),
            column(WHOLE, "job_days"),
            column(WHOLE, "acknowledgement_days"),
            column(WHOLE, "credit_days"),
            text("company_prefix"),
            decimal("shipment_limit"),
            oneOf("shipment_limit_unit", "kg", "lb")),
    /** A campaign pack as it was loaded. */
    PACKS(
            commands(),
            required(text("campaign"), text("revision"), text("file"), column(DOCUMENT, "text"))),
    /** A finding settled by a person, on the evidence of that day. */
    SETTLEMENTS(
            commands(),
            required(
                    text("rule"),
                    text("subject_kind"),
                    text("subject"),
                    instant("at"),
                    note("reason"),
                    text("evidence_hash"),
                    note("evidence")),
            text("part"),
            text("step")),
    /**
     * A gate that the lead opened: which, for what, why, and the findings that stood against it.
     */
    OVERRIDES(
            commands(),
            required(text("gate"), text("subject"), instant("at"), note("reason")),
            note("findings")),
    /** So much of a credit that belongs to a claim, whatever the credit itself names. */
    MATCHES(
            commands(),
            required(
                    text("remittance"),
                    text("line"),
                    text("claim"),
                    column(AMOUNT, "amount"),
                    instant("at"),
                    note("reason"))),
    /** A month that is closed: nothing is booked in it any more. */
    SEALS(commands(), required(text("sealed_month"), instant("at"))),
    /** An entry, or one line of it, that is taken back. */
    REVERSALS(
            commands(),
            required(column(WHOLE, "entry"), instant("at"), note("reason")),
            column(WHOLE, "line")),
    /** A PIN that was set or changed: who, never what. */
    PINS(commands(), required(text("name"), instant("at"))),
    /** A person's roles from then on; none where the person acts no more. */
    ROLE_CHANGES(commands(), required(text("name"), instant("at")), column(ROLES, "roles"));

    private final Nature nature;
    private final List<Column> columns;
    private final int requiredCount;
    private final ColumnPlaces places;

    FactKind(Nature nature, List<Column> required, Column... optional) {
        this.nature = nature;
        List<Column> all = new ArrayList<>(required);
        all.addAll(Arrays.asList(optional));
        this.columns = List.copyOf(all);
        this.requiredCount = required.size();
        this.places = new ColumnPlaces(columns);
    }

    /** The word that files use. */
    public String word() {
        return this == PARTS_LIST ? "parts" : name().toLowerCase(Locale.ROOT);
    }

    /** Columns in their order: required ones first. */
    public List<Column> columns() {
        return columns;
    }

    /** How many of the columns every row must say; they stand first. */
    public int requiredCount() {
        return requiredCount;
    }

    /** Whether rows are known by a key of their own; otherwise they are plain facts. */
    public boolean hasKey() {
        return !nature.key().isEmpty();
    }

    /** The headings of the key; empty for plain facts. */
    public List<String> key() {
        return nature.key();
    }

    /** The heading of the time at which a plain fact happened. */
    public Optional<String> time() {
        return nature.time();
    }

    /** Whether sheets may bring rows of this kind. */
    public boolean isInSheets() {
        return nature.inSheets();
    }

    /** Whether rows belong to the whole store; the others belong to a site. */
    public boolean belongsToStore() {
        return switch (this) {
            case PEOPLE, ROLE_CHANGES, PINS, VEHICLES, PACKS -> true;
            default -> false;
        };
    }

    /** Whether rows may bear the paper's own number, {@code ref}. */
    public boolean takesRef() {
        return isInSheets() && !hasKey();
    }

    /** The place of a heading among the columns. */
    public OptionalInt find(String heading) {
        return places.find(heading);
    }

    /**
     * The place of a heading that the kind is known to have, written as the kind writes it.
     *
     * @throws IllegalArgumentException if it has no such heading
     */
    public int indexOf(String heading) {
        return places.of(heading);
    }

    /** The kind of that word, in any letter case. */
    public static Optional<FactKind> of(String word) {
        return Arrays.stream(values()).filter(k -> k.word().equalsIgnoreCase(word)).findFirst();
    }
}
