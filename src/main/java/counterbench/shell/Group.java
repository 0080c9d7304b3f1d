package counterbench.shell;

/** For whom a command is; help lists the commands in this order. */
public enum Group {
    EVERYBODY("Everybody"),
    LEAD("Lead"),
    CAMPAIGNS("Campaigns"),
    PARTS_COUNTER("Parts counter"),
    BENCH("Bench"),
    CORE_RACK("Core rack"),
    WARRANTY_DESK("Warranty desk"),
    MONTH("Month"),
    FILES_AND_CARE("Files and care");

    private final String title;

    Group(String title) {
        this.title = title;
    }

    /** The heading in help. */
    public String title() {
        return title;
    }
}
