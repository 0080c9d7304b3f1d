package counterbench.judgement;

/** How much a finding weighs. */
public enum Severity {
    /** May not be shipped, claimed or sealed over. */
    STOP,
    /** Must be put right or settled. */
    FIX,
    /** Worth knowing. */
    NOTE;

    /** The word that people and files use. */
    public String word() {
        return name().toLowerCase(java.util.Locale.ROOT);
    }
}
