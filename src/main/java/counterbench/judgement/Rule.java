package counterbench.judgement;

import static counterbench.judgement.Severity.FIX;
import static counterbench.judgement.Severity.NOTE;
import static counterbench.judgement.Severity.STOP;

import java.util.Arrays;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Every rule of the review, with its severity and what it says in one sentence. */
public enum Rule {
    REUSED_HARDWARE(STOP, "a single-use part was refitted"),
    HARDWARE_SHORT(STOP, "less hardware is on the vehicle than the campaign requires"),
    HARDWARE_OVER(FIX, "more hardware is on the vehicle than the campaign requires"),
    MATCHED_SET_SPLIT(STOP, "parts that belong together did not come from one kit"),
    EXPIRED_WHEN_USED(STOP, "a shelf-life part was fitted after its last usable day"),
    KIT_UNKNOWN(FIX, "a row names a kit that the site never received"),
    KIT_OF_ANOTHER_JOB(FIX, "a row names a kit that was not issued to this job"),
    LEFT_ON_BENCH(FIX, "the bench account of a closed job is not zero"),
    JOB_IDLE(NOTE, "a job is open for longer than the site's patience"),
    STEP_MISSING(STOP, "a step of the procedure has no mark"),
    STEP_EARLY(FIX, "a step was marked before a step that comes first was complete"),
    CONDITION_UNKNOWN(FIX, "the vehicle lacks an attribute that the campaign asks for"),
    STEP_NOT_FOR_VEHICLE(NOTE, "a step was marked that does not apply to the vehicle"),
    TORQUE_COUNT(STOP, "fewer fasteners were read than the step has"),
    TORQUE_OUTSIDE(STOP, "a fastener's latest torque is outside its limits"),
    TORQUE_BORDERLINE(NOTE, "a torque is nearer to a limit than the instrument is certain"),
    READING_OUTSIDE(STOP, "the latest reading is outside its limits"),
    WAIT_SHORT(STOP, "the wait was shorter than the step asks"),
    INSTRUMENT_OVERDUE(FIX, "the instrument was not in calibration on the day of use"),
    CORE_MISSING(STOP, "fewer cores were removed than the campaign wants"),
    DRAIN_NOT_LOGGED(STOP, "a core was packed or sent without an ended drain period"),
    DRAIN_SHORT(STOP, "a core was packed or sent after too short a drain period"),
    PLUGS_SHORT(STOP, "a core was packed or sent with fewer plugs than required"),
    CORE_PACKAGING(FIX, "a core was packed otherwise than the terms say"),
    CORE_OVERDUE(FIX, "a core was not shipped in time"),
    CORE_UNACKNOWLEDGED(NOTE, "a shipped core has not been acknowledged"),
    CORE_REJECTED(STOP, "the return centre refused the core"),
    CORE_SERIAL_TWICE(FIX, "two removed cores bear one serial"),
    ACKNOWLEDGEMENT_STRAY(FIX, "the return centre names a core that is not on the shipment"),
    VIN_INVALID(FIX, "the VIN cannot be right"),
    VEHICLE_NOT_LISTED(STOP, "the vehicle is not on the campaign's list"),
    VEHICLE_DONE_TWICE(STOP, "the vehicle was done before under this campaign"),
    CLAIMED_TWICE(STOP, "the job was claimed before"),
    CLAIMED_LATE(FIX, "the claim was submitted too late"),
    CLAIM_UNGROUNDED(STOP, "the claim was submitted before its job or core allowed it"),
    CLAIM_UNPAID(NOTE, "the claim has waited long for its credit"),
    PAID_DIFFERENTLY(FIX, "the credits for a claim do not add up to it"),
    CREDIT_UNMATCHED(FIX, "a credit belongs to no claim"),
    BALANCE_NEGATIVE(FIX, "a store or kit account went below zero"),
    COUNT_DIFFERENCE(FIX, "a count differs from the book"),
    KIT_INCOMPLETE(FIX, "a kit came with something missing");

    private static final Map<String, Rule> BY_WORD =
            Arrays.stream(values()).collect(Collectors.toUnmodifiableMap(Rule::word, r -> r));

    private final Severity severity;
    private final String meaning;
    private final String word;

    Rule(Severity severity, String meaning) {
        this.severity = severity;
        this.meaning = meaning;
        this.word = name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** How much a finding of this rule weighs. */
    public Severity severity() {
        return severity;
    }

    /** When the rule holds, in one sentence. */
    public String meaning() {
        return meaning;
    }

    /** The word that people and files use, such as {@code reused-hardware}. */
    public String word() {
        return word;
    }

    /** The rule of that word, in any letter case. */
    public static Optional<Rule> of(String word) {
        return Optional.ofNullable(BY_WORD.get(word.toLowerCase(Locale.ROOT)));
    }
}
