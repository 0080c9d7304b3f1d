package counterbench.labels;

/** Something that a label of ours can be put on. */
public interface Labelled {
    /**
     * Its label.
     *
     * @throws counterbench.shared.Refused if its name cannot stand in a symbol
     */
    Label label();
}
