package counterbench.job;

/** How a job ended. */
public enum Outcome {
    COMPLETED("completed"),
    NOT_NEEDED("not-needed"),
    ABANDONED("abandoned");

    private final String word;

    Outcome(String word) {
        this.word = word;
    }

    /** The word that sheets use. */
    public String word() {
        return word;
    }
}
