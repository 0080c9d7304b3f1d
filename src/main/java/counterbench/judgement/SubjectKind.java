package counterbench.judgement;

/** What a finding is about. */
public enum SubjectKind {
    JOB,
    CORE,
    KIT,
    CLAIM,
    CREDIT,
    ACCOUNT,
    SHIPMENT;

    /** The word that people and files use. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
