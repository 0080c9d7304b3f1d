package counterbench.claims;

import counterbench.shared.Address;
import java.math.BigDecimal;
import java.time.LocalDate;
import org.jspecify.annotations.Nullable;

/** A claim for job J-1, filled in bit by bit. */
public final class ClaimSketch {
    private final String name;
    private final int row;
    private final LocalDate submittedOn;
    private String job = "J-1";
    private @Nullable BigDecimal labour;
    private @Nullable BigDecimal parts;
    private @Nullable BigDecimal coreCharge;
    private @Nullable LocalDate withdrawnOn;
    private @Nullable LocalDate deniedOn;
    private @Nullable String replaces;

    public ClaimSketch(String name, int row, String submittedOn) {
        this.name = name;
        this.row = row;
        this.submittedOn = LocalDate.parse(submittedOn);
    }

    public ClaimSketch ofJob(String itsJob) {
        job = itsJob;
        return this;
    }

    public ClaimSketch labour(String amount) {
        labour = new BigDecimal(amount);
        return this;
    }

    public ClaimSketch parts(String amount) {
        parts = new BigDecimal(amount);
        return this;
    }

    public ClaimSketch coreCharge(String amount) {
        coreCharge = new BigDecimal(amount);
        return this;
    }

    public ClaimSketch withdrawnOn(String day) {
        withdrawnOn = LocalDate.parse(day);
        return this;
    }

    public ClaimSketch deniedOn(String day) {
        deniedOn = LocalDate.parse(day);
        return this;
    }

    public ClaimSketch replacing(String other) {
        replaces = other;
        return this;
    }

    public Claim claim() {
        return new Claim(
                new Address(1, row),
                name,
                job,
                submittedOn,
                null,
                labour,
                parts,
                coreCharge,
                withdrawnOn,
                deniedOn,
                null,
                replaces);
    }
}
